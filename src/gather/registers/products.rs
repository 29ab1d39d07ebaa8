//! The register of products.

use crate::gather::registers::fields::{Fields, Table, Unusable};
use crate::gather::registers::ids;
use crate::gather::text;
use crate::model::address;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Bars, Doubt, DoubtKind, Oats, Processing, Product, Registers};
use crate::words::say;
use std::collections::BTreeMap;

/// The ids of the register, by what makes them equal: the spelling, or none where the row has a fault of its own.
pub type KnownProducts = BTreeMap<String, Option<String>>;

/// Reads the products; rows without an id or a name are left out. A field that bears on the verdict and cannot be read
/// leaves a doubt, never a default that would make it easier to pass.
pub fn read(table: &Table, registers: &mut Registers, problems: &mut Problems) -> KnownProducts {
    let mut known = KnownProducts::new();
    for fields in table.rows() {
        let Some(product_id) = ids::needed(&fields, "product_id", problems) else {
            let written = fields.written("product_id");
            if !written.is_empty() {
                known.entry(ids::key(&written)).or_insert(None);
            }
            continue;
        };
        let key = ids::key(&product_id);
        if let Some(Some(first)) = known.get(&key) {
            twice(&fields, first, &product_id, registers, problems);
            continue;
        }
        let of = (Some(product_id.as_str()), None);
        let beyond = fields.beyond(of, Some(Bars::Verdict), problems);
        registers.doubts.extend(beyond);
        let product = product(&fields, product_id.clone(), &mut registers.doubts, problems);
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

/// A second row of one product: which of the two is right nobody knows.
fn twice(
    fields: &Fields<'_>,
    first: &str,
    product_id: &str,
    registers: &mut Registers,
    problems: &mut Problems,
) {
    let message = if first == product_id {
        say::found_product_twice(product_id)
    } else {
        say::found_product_alike(text::short(&fields.written("product_id")), first)
    };
    fields.fault("product_id", message, say::do_one_id_each(), problems);
    registers.doubts.push(Doubt {
        what: DoubtKind::Row,
        ..fields.doubt("product_id", Some(first), None, Bars::Verdict)
    });
}

fn product(
    fields: &Fields<'_>,
    product_id: String,
    doubts: &mut Vec<Doubt>,
    problems: &mut Problems,
) -> Option<Product> {
    let name = fields.needed("name", problems);
    let claim = claim(fields, problems);
    let mut bearing = |column: &str| match fields.field(column, problems) {
        Ok(found) => found,
        Err(Unusable) => {
            doubts.push(fields.doubt(column, Some(&product_id), None, Bars::Verdict));
            None
        }
    };
    // A dash says that there is nothing to say.
    let says = |written: &String| {
        !text::plain(written)
            .chars()
            .all(|c| text::is_dash(c) || c == ' ')
    };
    let (certifier, ingredients) = (
        bearing("certifier").filter(says),
        bearing("ingredients").filter(says),
    );
    let oats = fields.word("oats", Oats::ALL, problems);
    let processing = fields.word("processing", Processing::ALL, problems);
    if oats == Ok(Some(Oats::Certified)) && certifier.is_none() {
        fields.fault(
            "oats",
            say::found_no_certifier(),
            say::do_name_certifier(),
            problems,
        );
    }
    let oats = match oats {
        // Nobody stands for them.
        Ok(Some(Oats::Certified)) if certifier.is_none() => Oats::Unverified,
        Ok(found) => found.unwrap_or_default(),
        Err(Unusable) => Oats::Unverified,
    };
    let processing = match processing {
        Ok(found) => found.unwrap_or_default(),
        Err(Unusable) => Processing::Unknown,
    };
    // A portion that cannot be read is told, and only its picture is missing.
    let serving_g = fields.figure("serving_g", problems).unwrap_or_default();
    let maker_email = fields.text("maker_email", problems);
    if let Some(written) = &maker_email
        && address::addresses(written).is_none()
    {
        problems.add(
            Code::Suspicious,
            fields.place_of("maker_email"),
            say::found_no_address(text::short(written)),
            say::do_write_address(),
        );
    }
    let mut text = |column: &str| fields.text(column, problems);
    Some(Product {
        product_id,
        name: name?,
        brand: text("brand"),
        maker: text("maker"),
        maker_email,
        maker_address: text("maker_address"),
        category: text("category"),
        claim,
        certifier,
        ingredients,
        oats,
        processing,
        matrix: text("matrix"),
        barcode: text("barcode"),
        net_content: text("net_content"),
        serving_g,
        place: fields.place(),
    })
}

/// The claim; empty, with a fault, where there is none: the product stays, and an unknown claim gets no verdict.
fn claim(fields: &Fields<'_>, problems: &mut Problems) -> String {
    let claim = fields.field("claim", problems);
    if claim == Ok(None) {
        fields.fault(
            "claim",
            say::found_no_claim(),
            say::do_write_claim(),
            problems,
        );
    }
    claim.ok().flatten().unwrap_or_default()
}
