//! The register of packages.

use crate::gather::codes;
use crate::gather::registers::fields::{Fields, Table, Unusable};
use crate::gather::registers::ids;
use crate::gather::registers::products::KnownProducts;
use crate::gather::text;
use crate::model::place::Place;
use crate::model::problem::Problems;
use crate::model::registers::{Bars, Doubt, Package, Registers};
use crate::words::say;
use std::collections::{BTreeMap, BTreeSet};

/// The codes of rows that are not used, by what makes codes equal, each with the place of its row.
pub type LostCodes = BTreeMap<String, Place>;

/// Reads the packages. A row with a fault in a needed field is left out; its product, where it is known, then gets no
/// verdict, since nobody knows what the row would have added.
pub fn read(
    table: &Table,
    products: &KnownProducts,
    registers: &mut Registers,
    problems: &mut Problems,
) -> LostCodes {
    registers.knows_sent_on = table.has("sent_on");
    let mut lost = LostCodes::new();
    let mut by_key: BTreeMap<String, Package> = BTreeMap::new();
    let mut unclear: LostCodes = BTreeMap::new();
    for fields in table.rows() {
        let Some(package) = package(&fields, products, &mut registers.doubts, problems) else {
            let key = codes::key(&fields.written("package_code"));
            if !key.is_empty() {
                lost.insert(key, fields.place());
            }
            continue;
        };
        let key = ids::key(&package.package_code);
        match by_key.get(&key) {
            None => {
                by_key.insert(key, package);
            }
            Some(first) if twice(&fields, first, &package, &mut registers.doubts, problems) => {}
            Some(_) => {
                unclear.insert(key, fields.place());
            }
        }
    }
    let alike = sheets_alike(by_key.values());
    for fields in table.rows() {
        let key = codes::key(&fields.written("package_code"));
        let own = by_key.get(&key).filter(|own| own.place == fields.place());
        if let Some((package, other)) = own.and_then(|own| Some((own, alike.get(&sheet_of(own))?)))
        {
            not_told_apart(&fields, package, other, &mut registers.doubts, problems);
            unclear.insert(key, fields.place());
        }
    }
    by_key.retain(|key, _| !unclear.contains_key(key));
    lost.append(&mut unclear);
    lost.retain(|key, _| !by_key.contains_key(key));
    registers.packages = by_key.into_values().collect();
    registers
        .packages
        .sort_by(|a, b| a.package_code.cmp(&b.package_code));
    lost
}

/// A product and a round.
type SheetOf = (String, String);

fn sheet_of(package: &Package) -> SheetOf {
    (package.product_id.clone(), package.round.clone())
}

/// The sheets that would have their number, or the name of their file, in common with another one, each with that other:
/// `a-1` in round `1` is numbered as `a` in round `1-1`. A file system may ignore case.
fn sheets_alike<'a>(packages: impl Iterator<Item = &'a Package>) -> BTreeMap<SheetOf, SheetOf> {
    let sheets: BTreeSet<SheetOf> = packages.map(sheet_of).collect();
    let mut by_name: BTreeMap<String, Vec<SheetOf>> = BTreeMap::new();
    for sheet in sheets {
        let (product, round) = &sheet;
        let names = [format!("{product}-{round}"), format!("{product}--{round}.")];
        for name in names {
            by_name
                .entry(ids::key(&name))
                .or_default()
                .push(sheet.clone());
        }
    }
    let mut alike = BTreeMap::new();
    for sheets in by_name.into_values().filter(|sheets| sheets.len() > 1) {
        for (at, sheet) in sheets.iter().enumerate() {
            let other = &sheets[usize::from(at == 0)];
            alike.insert(sheet.clone(), other.clone());
        }
    }
    alike
}

/// Tells of a package whose sheet could not be told from another one.
fn not_told_apart(
    fields: &Fields<'_>,
    package: &Package,
    (other_product, other_round): &SheetOf,
    doubts: &mut Vec<Doubt>,
    problems: &mut Problems,
) {
    let (product, round) = (&package.product_id, &package.round);
    fields.fault(
        "round",
        say::found_sheets_alike(product, round, other_product, other_round),
        say::do_rename_round(),
        problems,
    );
    doubts.push(fields.doubt("round", Some(product), Some(round), Bars::Verdict));
}

/// Tells of a code that is there twice; whether the first row can stay, since both say the same of it.
fn twice(
    fields: &Fields<'_>,
    first: &Package,
    second: &Package,
    doubts: &mut Vec<Doubt>,
    problems: &mut Problems,
) -> bool {
    let same = (&first.product_id, &first.round) == (&second.product_id, &second.round);
    let (one, other) = (&first.package_code, &second.package_code);
    let spelt = if one == other { "alike" } else { "differently" };
    let kept = if same { "first" } else { "neither" };
    fields.fault(
        "package_code",
        say::found_package_twice(one, other, spelt, kept),
        say::do_one_code_each(),
        problems,
    );
    for package in [first, second] {
        let (product, round) = (
            Some(package.product_id.as_str()),
            Some(package.round.as_str()),
        );
        doubts.push(fields.doubt("package_code", product, round, Bars::Verdict));
    }
    same
}

fn package(
    fields: &Fields<'_>,
    products: &KnownProducts,
    doubts: &mut Vec<Doubt>,
    problems: &mut Problems,
) -> Option<Package> {
    let code = ids::needed(fields, "package_code", problems);
    let product = product_of(fields, products, Bars::Verdict, doubts, problems);
    let round = ids::read(fields, "round", problems);
    let bought_on = fields.day("bought_on", problems).ok().flatten();
    let sent_on = fields.day("sent_on", problems);
    let of_row = (
        product.as_deref(),
        round
            .as_ref()
            .ok()
            .map(|round| round.as_deref().unwrap_or("1")),
    );
    if product.is_some() {
        doubts.extend(fields.beyond(of_row, Some(Bars::Verdict), problems));
    }
    if let Some(product) = &product {
        let mut doubt = |column: &str, round: Option<&str>| {
            doubts.push(fields.doubt(column, Some(product), round, Bars::Verdict));
        };
        let of_round = round
            .as_ref()
            .ok()
            .map(|round| round.as_deref().unwrap_or("1"));
        if code.is_none() {
            doubt("package_code", of_round);
        }
        if round == Err(Unusable) {
            doubt("round", None);
        }
        if sent_on == Err(Unusable) {
            doubt("sent_on", of_round);
        }
    }
    let mut text = |column: &str| fields.text(column, problems);
    Some(Package {
        package_code: code?,
        product_id: product?,
        round: round.ok()?.unwrap_or_else(|| "1".to_owned()),
        lot: text("lot"),
        best_by: text("best_by"),
        bought_on,
        shop: text("shop"),
        price: text("price"),
        custody: text("custody"),
        photographs: Vec::new(),
        sent_on_unreadable: sent_on == Err(Unusable),
        sent_on: sent_on.ok().flatten(),
        place: fields.place(),
    })
}

/// The product that a row names, as the register of products spells it. An id that is none of them leaves a doubt about
/// those that are nearly it.
pub fn product_of(
    fields: &Fields<'_>,
    products: &KnownProducts,
    bars: Bars,
    doubts: &mut Vec<Doubt>,
    problems: &mut Problems,
) -> Option<String> {
    const COLUMN: &str = "product_id";
    let written = fields.written(COLUMN);
    let id = ids::needed(fields, COLUMN, problems);
    if let Some(id) = &id {
        match products.get(&ids::key(id)) {
            Some(Some(product_id)) => return Some(product_id.clone()),
            // Its own row has a fault that is told there.
            Some(None) => return None,
            None => fields.fault(
                COLUMN,
                say::found_unknown_product(text::short(&written)),
                say::do_add_product(),
                problems,
            ),
        }
    }
    let key = ids::key(&written);
    let near = products
        .iter()
        .filter(|(known, _)| strsim::damerau_levenshtein(&key, known) <= 1)
        .filter_map(|(_, product)| product.as_deref());
    doubts.extend(near.map(|product| fields.doubt(COLUMN, Some(product), None, bars)));
    None
}
