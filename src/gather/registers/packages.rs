//! The register of packages.

use crate::gather::registers::fields::{Fields, Table};
use crate::gather::registers::ids;
use crate::gather::registers::products::KnownProducts;
use crate::gather::text;
use crate::model::problem::Problems;
use crate::model::registers::{Package, Registers};
use std::collections::{BTreeMap, BTreeSet};

/// Reads the packages; rows with a fault in a needed field are left out.
pub fn read(
    table: &mut Table,
    products: &KnownProducts,
    registers: &mut Registers,
    problems: &mut Problems,
) {
    registers.knows_sent_on = table.has("sent_on");
    if !table.needs(&["package_code", "product_id"], problems) {
        return;
    }
    let mut by_key: BTreeMap<String, Package> = BTreeMap::new();
    let mut unclear: BTreeSet<String> = BTreeSet::new();
    for fields in table.rows() {
        let Some(package) = package(&fields, products, problems) else {
            continue;
        };
        let key = ids::key(&package.package_code);
        let Some(first) = by_key.get(&key) else {
            by_key.insert(key, package);
            continue;
        };
        let same = (&first.product_id, &first.round) == (&package.product_id, &package.round);
        let message = if first.package_code == package.package_code {
            format!(
                "the package code “{}” is in the register twice",
                package.package_code
            )
        } else {
            format!(
                "the package codes “{}” and “{}” differ in nothing that counts",
                first.package_code, package.package_code
            )
        };
        let outcome = if same {
            "this row is not used"
        } else {
            "since they belong to different products or rounds, neither is used"
        };
        fields.fault(
            "package_code",
            format!("{message}; {outcome}"),
            "Each package has a code of its own: mend the register.",
            problems,
        );
        if !same {
            unclear.insert(key);
        }
    }
    by_key.retain(|key, _| !unclear.contains(key));
    registers.packages = by_key.into_values().collect();
    registers
        .packages
        .sort_by(|a, b| a.package_code.cmp(&b.package_code));
}

fn package(
    fields: &Fields<'_>,
    products: &KnownProducts,
    problems: &mut Problems,
) -> Option<Package> {
    let written = fields.needed("package_code", problems);
    let code = written.and_then(|written| ids::check(fields, "package_code", &written, problems));
    let product = fields.needed("product_id", problems);
    let product = product.and_then(|written| known_product(fields, &written, products, problems));
    let round = match fields.text("round", problems) {
        None => Some("1".to_owned()),
        Some(written) => ids::check(fields, "round", &written, problems),
    };
    let bought_on = fields.day("bought_on", problems);
    let sent_on = fields.day("sent_on", problems);
    let mut text = |column: &str| fields.text(column, problems);
    Some(Package {
        package_code: code?,
        product_id: product?,
        round: round?,
        lot: text("lot"),
        best_by: text("best_by"),
        bought_on,
        shop: text("shop"),
        price: text("price"),
        sent_on,
        sent_on_unreadable: false,
        place: fields.place(),
    })
}

/// The product that a row names, as the register of products spells it.
pub fn known_product(
    fields: &Fields<'_>,
    written: &str,
    products: &KnownProducts,
    problems: &mut Problems,
) -> Option<String> {
    match products.get(&ids::key(written)) {
        Some(Some(product_id)) => Some(product_id.clone()),
        // Its own row has a fault that is told there.
        Some(None) => None,
        None => {
            fields.fault(
                "product_id",
                format!(
                    "“{}” is not in the register of products; the row is not used",
                    text::short(written)
                ),
                "Add the product to registers/products, or mend its id here.",
                problems,
            );
            None
        }
    }
}
