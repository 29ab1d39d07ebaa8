//! The register of products.

use crate::gather::registers::fields::{Fields, Table};
use crate::gather::registers::ids;
use crate::gather::text;
use crate::model::problem::Problems;
use crate::model::registers::{Oats, Processing, Product, Registers};
use std::collections::BTreeMap;

/// The ids of the register, by what makes them equal: the spelling, or none where the row has a fault of its own.
pub type KnownProducts = BTreeMap<String, Option<String>>;

/// Reads the products; rows with a fault in a needed field are left out.
pub fn read(
    table: &mut Table,
    registers: &mut Registers,
    problems: &mut Problems,
) -> KnownProducts {
    let mut known = KnownProducts::new();
    if !table.needs(&["product_id", "name", "claim"], problems) {
        return known;
    }
    for fields in table.rows() {
        let Some(written) = fields.needed("product_id", problems) else {
            continue;
        };
        let Some(product_id) = ids::check(&fields, "product_id", &written, problems) else {
            known.entry(ids::key(&written)).or_insert(None);
            continue;
        };
        let key = ids::key(&product_id);
        if let Some(Some(first)) = known.get(&key) {
            let message = if *first == product_id {
                format!("“{product_id}” is in the register twice; this row is not used")
            } else {
                format!(
                    "“{}” differs from “{first}” in nothing that counts, and their files would overwrite each other; this row is not used",
                    text::short(&written)
                )
            };
            fields.fault(
                "product_id",
                message,
                "Give each product an id of its own.",
                problems,
            );
            continue;
        }
        let product = product(&fields, product_id.clone(), problems);
        known.insert(
            key,
            product.as_ref().map(|product| product.product_id.clone()),
        );
        if let Some(product) = product {
            registers.products.insert(product_id, product);
        }
    }
    known
}

fn product(fields: &Fields<'_>, product_id: String, problems: &mut Problems) -> Option<Product> {
    let name = fields.needed("name", problems);
    let claim = fields.needed("claim", problems);
    let mut text = |column: &str| fields.text(column, problems);
    let product = Product {
        product_id,
        name: name?,
        brand: text("brand"),
        maker: text("maker"),
        maker_email: text("maker_email"),
        maker_address: text("maker_address"),
        category: text("category"),
        claim: claim?,
        certifier: text("certifier"),
        ingredients: text("ingredients"),
        matrix: text("matrix"),
        barcode: text("barcode"),
        net_content: text("net_content"),
        place: fields.place(),
        ..Product::default()
    };
    Some(Product {
        oats: fields.word("oats", Oats::ALL, problems).unwrap_or_default(),
        processing: fields
            .word("processing", Processing::ALL, problems)
            .unwrap_or_default(),
        ..product
    })
}
