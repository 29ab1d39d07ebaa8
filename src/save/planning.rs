//! A round's plan as tables: the buying list, rows for the register of packages, the key of the blinds.

use crate::model::planning::{Blind, RoundPlan};
use anyhow::{Context, Result, bail};

/// The columns of the register of packages.
const REGISTER: [&str; 11] = [
    "package_code",
    "product_id",
    "round",
    "lot",
    "best_by",
    "bought_on",
    "shop",
    "price",
    "sent_on",
    "photographs",
    "custody",
];

/// The buying list: a row a package, by product in the order of the plan, with room for what is seen in the shop.
pub fn buying_list(plan: &RoundPlan) -> Result<Vec<u8>> {
    let headings = [
        "product_id",
        "name",
        "brand",
        "category",
        "net_content",
        "package_code",
        "shop",
        "lot",
        "best_by",
        "bought_on",
        "price",
        "photographs",
        "lots_tested_before",
    ];
    let rows = plan.chosen.iter().flat_map(|planned| {
        let product = &planned.candidate.product;
        let text = |field: &Option<String>| field.clone().unwrap_or_default();
        let lots = planned.candidate.known_lots.join("; ");
        planned.codes.iter().map(move |code| {
            let blank = String::new;
            vec![
                product.product_id.clone(),
                product.name.clone(),
                text(&product.brand),
                text(&product.category),
                text(&product.net_content),
                code.clone(),
                blank(),
                blank(),
                blank(),
                blank(),
                blank(),
                blank(),
                lots.clone(),
            ]
        })
    });
    table(&headings, rows)
}

/// A code with its product, in the order of the codes: their order says nothing.
fn by_code(plan: &RoundPlan) -> Vec<[&str; 3]> {
    let mut rows: Vec<[&str; 3]> = plan
        .chosen
        .iter()
        .flat_map(|planned| {
            let id = planned.candidate.product.product_id.as_str();
            let round = plan.round.as_str();
            planned
                .codes
                .iter()
                .map(move |code| [code.as_str(), id, round])
        })
        .collect();
    rows.sort_unstable();
    rows
}

/// Rows ready for the register of packages, with all of its columns: what is not known yet is blank.
pub fn register_rows(plan: &RoundPlan) -> Result<Vec<u8>> {
    let rows = by_code(plan).into_iter().map(|known| {
        let mut row: Vec<String> = known.iter().map(|cell| (*cell).to_owned()).collect();
        row.resize(REGISTER.len(), String::new());
        row
    });
    table(&REGISTER, rows)
}

/// Which blind holds what, with room for the level that was added.
pub fn blind_key(blinds: &[Blind]) -> Result<Vec<u8>> {
    let rows = blinds.iter().map(|blind| {
        let content = if blind.spiked {
            "gluten added"
        } else {
            "known to hold no gluten"
        };
        vec![
            blind.code.clone(),
            content.to_owned(),
            String::new(),
            String::new(),
        ]
    });
    table(&["package_code", "content", "food", "added_ppm"], rows)
}

/// The register of packages with a plan's rows at its end; what stands in it stays byte for byte.
///
/// # Errors
/// Where it is no text, or lacks a column that is needed.
pub fn with_register_rows(existing: &[u8], plan: &RoundPlan) -> Result<Vec<u8>> {
    if existing.contains(&0) {
        bail!(
            "registers/packages.csv is not plain text (UTF-16?): save it as CSV in UTF-8, or paste the rows of out/plan/packages.csv"
        );
    }
    let text = String::from_utf8_lossy(existing);
    let text = text.trim_start_matches('\u{feff}');
    let first = text.lines().next().unwrap_or_default();
    // The comma wins where none of them stands.
    let delimiter = [b'\t', b';', b',']
        .into_iter()
        .max_by_key(|delimiter| first.bytes().filter(|byte| byte == delimiter).count())
        .expect("there are three");
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter)
        .has_headers(false)
        .flexible(true)
        .from_reader(first.as_bytes());
    let headings = reader.records().next().transpose()?.unwrap_or_default();
    let headings: Vec<String> = headings
        .iter()
        .map(|heading| heading.trim().to_lowercase().replace([' ', '-'], "_"))
        .collect();
    let mut needed = REGISTER.iter().take(3);
    if let Some(missing) = needed.find(|column| !headings.iter().any(|heading| heading == *column))
    {
        bail!(
            "registers/packages.csv has no column {missing}: add it to the first row, then plan again"
        );
    }
    let crlf = text.contains("\r\n");
    let mut writer = csv::WriterBuilder::new()
        .delimiter(delimiter)
        .terminator(if crlf {
            csv::Terminator::CRLF
        } else {
            csv::Terminator::Any(b'\n')
        })
        .from_writer(Vec::new());
    for known in by_code(plan) {
        let cell = |heading: &String| {
            let at = REGISTER.iter().position(|column| column == heading);
            at.and_then(|at| known.get(at)).copied().unwrap_or_default()
        };
        writer.write_record(headings.iter().map(cell))?;
    }
    let rows = writer.into_inner().context("rows are built in memory")?;
    let mut whole = existing.to_vec();
    if !whole.ends_with(b"\n") {
        whole.extend_from_slice(if crlf { b"\r\n" } else { b"\n" });
    }
    whole.extend(rows);
    Ok(whole)
}

fn table(headings: &[&str], rows: impl Iterator<Item = Vec<String>>) -> Result<Vec<u8>> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    writer.write_record(headings)?;
    for row in rows {
        writer.write_record(row)?;
    }
    writer.into_inner().context("a table is built in memory")
}
