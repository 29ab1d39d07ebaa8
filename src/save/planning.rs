//! A round's plan as tables: the buying list, rows for the register of packages, the key of the blinds.

use crate::model::planning::{Blind, RoundPlan};
use crate::save::tables::safe;
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

/// The columns of the key of the blinds.
const KEY: [&str; 5] = ["package_code", "content", "food", "added_ppm", "round"];

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
        let text = |field: &Option<String>| safe(field.as_deref().unwrap_or_default());
        let lots = planned.candidate.known_lots.join("; ");
        planned.codes.iter().map(move |code| {
            let blank = String::new;
            vec![
                product.product_id.clone(),
                safe(&product.name),
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
                safe(&lots),
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

/// Which blind holds what, with room for the food that it looks like and the level that was added.
pub fn blind_key(plan: &RoundPlan) -> Result<Vec<u8>> {
    let rows = key_rows(plan).into_iter();
    table(&KEY, rows.map(|row| row.map(str::to_owned).to_vec()))
}

fn key_rows(plan: &RoundPlan) -> Vec<[&str; 5]> {
    let content = |blind: &Blind| {
        if blind.spiked {
            "gluten-added"
        } else {
            "no-gluten"
        }
    };
    let blinds = plan.blinds.iter();
    blinds
        .map(|blind| {
            [
                blind.code.as_str(),
                content(blind),
                "",
                "",
                plan.round.as_str(),
            ]
        })
        .collect()
}

/// The key that the registers hold with a plan's blinds at its end; a new one where there is none.
///
/// # Errors
/// As [`with_register_rows`].
pub fn with_key_rows(existing: Option<&[u8]>, plan: &RoundPlan) -> Result<Vec<u8>> {
    let Some(existing) = existing else {
        return blind_key(plan);
    };
    let rows: Vec<Vec<&str>> = key_rows(plan).iter().map(|row| row.to_vec()).collect();
    let register = Register {
        name: "blinds",
        columns: &KEY,
        needed: &["package_code", "content", "round"],
    };
    register.with_rows(existing, &rows)
}

/// The register of packages with a plan's rows at its end; what stands in it stays byte for byte.
///
/// # Errors
/// Where it is no text, or lacks a column that is needed.
pub fn with_register_rows(existing: &[u8], plan: &RoundPlan) -> Result<Vec<u8>> {
    let rows: Vec<Vec<&str>> = by_code(plan).iter().map(|row| row.to_vec()).collect();
    let register = Register {
        name: "packages",
        columns: &REGISTER,
        needed: &REGISTER[..3],
    };
    register.with_rows(existing, &rows)
}

/// A register that a plan adds rows to.
struct Register {
    name: &'static str,
    columns: &'static [&'static str],
    needed: &'static [&'static str],
}

impl Register {
    /// What stands there, byte for byte, and these rows below it: their cells are in the order of the columns.
    fn with_rows(&self, existing: &[u8], rows: &[Vec<&str>]) -> Result<Vec<u8>> {
        let name = self.name;
        if existing.contains(&0) {
            bail!(
                "registers/{name}.csv is not plain text (UTF-16?): save it as CSV in UTF-8, or paste the rows of out/plan/{name}.csv"
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
        let headings = headings(first, delimiter)?;
        let is_there = |column: &&str| headings.iter().any(|heading| heading == *column);
        if let Some(missing) = self.needed.iter().find(|column| !is_there(column)) {
            bail!(
                "registers/{name}.csv has no column {missing}: add it to the first row, then plan again"
            );
        }
        let end = match text.contains("\r\n") {
            true => "\r\n",
            false => "\n",
        };
        let mut writer = csv::WriterBuilder::new()
            .delimiter(delimiter)
            .terminator(match end {
                "\r\n" => csv::Terminator::CRLF,
                _ => csv::Terminator::Any(b'\n'),
            })
            .from_writer(Vec::new());
        for row in rows {
            let cell = |heading: &String| {
                let at = self.columns.iter().position(|column| column == heading);
                at.and_then(|at| row.get(at)).copied().unwrap_or_default()
            };
            writer.write_record(headings.iter().map(cell))?;
        }
        let rows = writer.into_inner().context("rows are built in memory")?;
        let mut whole = existing.to_vec();
        if !whole.ends_with(b"\n") {
            whole.extend_from_slice(end.as_bytes());
        }
        whole.extend(rows);
        Ok(whole)
    }
}

/// The headings of a register's first line, as its columns are named.
fn headings(first: &str, delimiter: u8) -> Result<Vec<String>> {
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter)
        .has_headers(false)
        .flexible(true)
        .from_reader(first.as_bytes());
    let headings = reader.records().next().transpose()?.unwrap_or_default();
    Ok(headings
        .iter()
        .map(|heading| heading.trim().to_lowercase().replace([' ', '-'], "_"))
        .collect())
}

fn table(headings: &[&str], rows: impl Iterator<Item = Vec<String>>) -> Result<Vec<u8>> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    writer.write_record(headings)?;
    for row in rows {
        writer.write_record(row)?;
    }
    writer.into_inner().context("a table is built in memory")
}
