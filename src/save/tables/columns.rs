//! The columns of the tables: name, type, unit, meaning and cell, declared once.

use crate::model::decided::JudgedProduct;
use crate::model::package::PackageResult;
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::model::problem::Problem;
use crate::save::results;
use crate::words::english;
use chrono::NaiveDate;

/// One column: its name, its type in the dictionary, its meaning, and its cell in a row.
pub struct Column<Row> {
    pub name: &'static str,
    pub kind: &'static str,
    pub unit: Option<&'static str>,
    pub meaning: &'static str,
    pub cell: fn(&Row) -> String,
}

/// A row of the table of extractions.
pub type ExtractionRow<'a> = (&'a JudgedProduct, &'a PackageResult, &'a PairedExtraction);

/// A row of the table of packages.
pub type PackageRow<'a> = (&'a JudgedProduct, &'a PackageResult);

/// A row of the table of products.
pub struct ProductRow<'a> {
    /// The product.
    pub judged: &'a JudgedProduct,
    /// Why its verdict is what it is, in words.
    pub reasons: Vec<String>,
}

/// Declares one column.
macro_rules! column {
    ($name:literal, $kind:literal, $meaning:literal, $cell:expr) => {
        Column {
            name: $name,
            kind: $kind,
            unit: None,
            meaning: $meaning,
            cell: $cell,
        }
    };
    ($name:literal, $kind:literal [$unit:literal], $meaning:literal, $cell:expr) => {
        Column {
            name: $name,
            kind: $kind,
            unit: Some($unit),
            meaning: $meaning,
            cell: $cell,
        }
    };
}

/// The table of extractions.
pub fn extractions<'a>() -> Vec<Column<ExtractionRow<'a>>> {
    vec![
        column!("product_id", "string", "The product.", |r| r
            .0
            .verdict
            .product
            .product_id
            .clone()),
        column!("round", "string", "The round of testing.", |r| r
            .0
            .verdict
            .round
            .clone()),
        column!(
            "package_code",
            "string",
            "The package, as the lab knows it.",
            |r| package_code(r.1)
        ),
        column!(
            "number",
            "integer",
            "The extraction's number within its package.",
            |r| r.2.extraction.number.to_string()
        ),
        column!(
            "reported",
            "string",
            "The cell of the lab file, as it stands there.",
            |r| r.2.extraction.reported.clone()
        ),
        column!(
            "lower_ppm",
            "number"["mg/kg gluten"],
            "The lowest value that the report allows.",
            |r| {
                ppm(r
                    .2
                    .extraction
                    .outcome
                    .reading()
                    .map(|interval| interval.lower))
            }
        ),
        column!(
            "upper_ppm",
            "number"["mg/kg gluten"],
            "The highest value that the report allows; missing where it is unbounded.",
            |r| {
                ppm(r
                    .2
                    .extraction
                    .outcome
                    .reading()
                    .and_then(|interval| interval.upper))
            }
        ),
        column!(
            "lloq_ppm",
            "number"["mg/kg gluten"],
            "The lowest quantity that could have been reported as a number.",
            |r| { ppm(Some(r.2.extraction.lloq)) }
        ),
        column!(
            "usage",
            "string",
            "used, no_reading, excluded or in_conflict.",
            |r| usage(&r.2.usage).to_owned()
        ),
        column!("tested_on", "date", "Day of the test.", |r| day(r
            .2
            .extraction
            .tested_on)),
        column!("lab", "string", "The lab.", |r| r
            .2
            .extraction
            .lab
            .to_string()),
        column!("report", "string", "The lab's report number.", |r| {
            r.2.extraction
                .report
                .as_deref()
                .unwrap_or_default()
                .to_owned()
        }),
        column!("assay", "string", "The assay, in the lab's words.", |r| r
            .2
            .extraction
            .assay
            .to_string()),
        column!(
            "file",
            "string",
            "The lab file, below the programme folder.",
            |r| r.2.extraction.source.file.path.clone()
        ),
        column!("sha256", "string", "SHA-256 of that file.", |r| r
            .2
            .extraction
            .source
            .file
            .sha256
            .clone()),
        column!(
            "sheet",
            "string",
            "The sheet; missing in a delimited file.",
            |r| {
                r.2.extraction
                    .source
                    .sheet
                    .as_deref()
                    .unwrap_or_default()
                    .to_owned()
            }
        ),
        column!(
            "row",
            "integer",
            "The row, as a spreadsheet shows it.",
            |r| r.2.extraction.source.row.to_string()
        ),
        column!("column", "string", "The column's letter.", |r| {
            crate::model::place::column_letter(r.2.extraction.source.column)
        }),
    ]
}

/// The table of packages.
pub fn packages<'a>() -> Vec<Column<PackageRow<'a>>> {
    vec![
        column!("product_id", "string", "The product.", |r| r
            .0
            .verdict
            .product
            .product_id
            .clone()),
        column!("round", "string", "The round of testing.", |r| r
            .0
            .verdict
            .round
            .clone()),
        column!(
            "package_code",
            "string",
            "The package, as the lab knows it.",
            |r| package_code(r.1)
        ),
        column!("lot", "string", "The maker's lot, as printed.", |r| text(
            &r.1.pair.package.lot
        )),
        column!("best_by", "string", "Best-by, as printed.", |r| text(
            &r.1.pair.package.best_by
        )),
        column!("bought_on", "date", "Day of purchase.", |r| day(r
            .1
            .pair
            .package
            .bought_on)),
        column!("shop", "string", "Where it was bought.", |r| text(
            &r.1.pair.package.shop
        )),
        column!(
            "state",
            "string",
            "agree, disagree, incomplete or missing.",
            |r| r.1.pair.state.word().to_owned()
        ),
        column!(
            "standing",
            "string",
            "below_quantification, within, over, unresolved or inconclusive.",
            |r| { r.1.standing.word().to_owned() }
        ),
        column!(
            "straddles_limit",
            "boolean",
            "Its extractions agree and stand on both sides of the limit.",
            |r| { r.1.straddles_limit.to_string() }
        ),
        column!(
            "gap_ppm",
            "number"["mg/kg gluten"],
            "The smallest difference that the reports allow.",
            |r| { ppm(r.1.pair.comparison.map(|comparison| comparison.gap)) }
        ),
        column!(
            "allowed_ppm",
            "number"["mg/kg gluten"],
            "The largest difference that still agrees.",
            |r| { ppm(r.1.pair.comparison.map(|comparison| comparison.allowed)) }
        ),
        column!(
            "result_kind",
            "string",
            "value, below, range or none.",
            |r| r.1.result.word().to_owned()
        ),
        column!(
            "result_ppm",
            "number"["mg/kg gluten"],
            "The mean, where the result is a value.",
            |r| { figure(results::result(&r.1.result).ppm) }
        ),
        column!(
            "result_lower_ppm",
            "number"["mg/kg gluten"],
            "The lowest result that the reports allow.",
            |r| { figure(results::result(&r.1.result).lower_ppm) }
        ),
        column!(
            "result_upper_ppm",
            "number"["mg/kg gluten"],
            "The highest; missing where it is unbounded.",
            |r| { figure(results::result(&r.1.result).upper_ppm) }
        ),
    ]
}

/// The table of products and rounds.
pub fn products<'a>() -> Vec<Column<ProductRow<'a>>> {
    vec![
        column!("product_id", "string", "The product.", |r| r
            .judged
            .verdict
            .product
            .product_id
            .clone()),
        column!("round", "string", "The round of testing.", |r| r
            .judged
            .verdict
            .round
            .clone()),
        column!("name", "string", "As on the front of the package.", |r| r
            .judged
            .verdict
            .product
            .name
            .clone()),
        column!("brand", "string", "As on the front of the package.", |r| {
            text(&r.judged.verdict.product.brand)
        }),
        column!("category", "string", "Food group.", |r| text(
            &r.judged.verdict.product.category
        )),
        column!("claim", "string", "The words of the claim.", |r| r
            .judged
            .verdict
            .product
            .claim
            .clone()),
        column!(
            "certifier",
            "string",
            "Who certifies the claim, where the package names one.",
            |r| { text(&r.judged.verdict.product.certifier) }
        ),
        column!(
            "verdict",
            "string",
            "over_limit, within_limit or no_verdict.",
            |r| r.judged.verdict.verdict.word().to_owned()
        ),
        column!(
            "grade",
            "string",
            "below_quantification or quantified, where within the limit.",
            |r| {
                r.judged
                    .verdict
                    .verdict
                    .grade()
                    .unwrap_or_default()
                    .to_owned()
            }
        ),
        column!("reasons", "string", "Why, in words.", |r| r
            .reasons
            .join(" ")),
        column!(
            "label_finding",
            "string",
            "gluten_source, unverified_oats, needs_review, none or no_ingredients.",
            |r| { r.judged.verdict.label.finding.word().to_owned() }
        ),
        column!(
            "label_terms",
            "string",
            "The terms of the label that bear on it, as printed.",
            |r| {
                let terms: Vec<&str> = r
                    .judged
                    .verdict
                    .label
                    .terms
                    .iter()
                    .map(|term| term.printed.as_str())
                    .collect();
                terms.join("; ")
            }
        ),
        column!(
            "notify_maker",
            "boolean",
            "Whether the maker is to be told.",
            |r| r.judged.verdict.notify_maker.to_string()
        ),
        column!(
            "follow_up",
            "string",
            "not_needed, to_send, waiting, overdue, replied or closed.",
            |r| { r.judged.follow_up.word().to_owned() }
        ),
        column!("packages", "integer", "Packages that count.", |r| r
            .judged
            .verdict
            .packages
            .len()
            .to_string()),
        column!("tested_on", "date", "Day of the last test.", |r| day(r
            .judged
            .verdict
            .tested_on())),
    ]
}

/// The table of problems.
pub fn problems<'a>() -> Vec<Column<&'a Problem>> {
    vec![
        column!("severity", "string", "error, warning or note.", |r| r
            .severity()
            .word()
            .to_owned()),
        column!("code", "string", "The kind of problem.", |r| r
            .code
            .word()
            .to_owned()),
        column!(
            "file",
            "string",
            "The file, below the programme folder.",
            |r| r.place.file.clone()
        ),
        column!("sheet", "string", "The sheet, where there are some.", |r| {
            text(&r.place.sheet)
        }),
        column!(
            "row",
            "integer",
            "The row, as a spreadsheet shows it.",
            |r| r.place.row.map(|row| row.to_string()).unwrap_or_default()
        ),
        column!("column", "string", "The column's letter.", |r| {
            text(&r.place.column_letter())
        }),
        column!("message", "string", "What was found, in words.", |r| {
            english().found(r)
        }),
        column!("hint", "string", "What to do.", |r| english().to_do(r)),
    ]
}

fn package_code(package: &PackageResult) -> String {
    package.pair.package.package_code.clone()
}

fn usage(usage: &Usage) -> &'static str {
    match usage {
        Usage::Used => "used",
        Usage::NoReading => "no_reading",
        Usage::Excluded { .. } => "excluded",
        Usage::InConflict => "in_conflict",
    }
}

fn ppm(value: Option<Ppm>) -> String {
    value.map(|ppm| ppm.0.to_string()).unwrap_or_default()
}

fn figure(value: Option<f64>) -> String {
    value.map(|figure| figure.to_string()).unwrap_or_default()
}

fn day(value: Option<NaiveDate>) -> String {
    value.map(|day| day.to_string()).unwrap_or_default()
}

fn text(value: &Option<String>) -> String {
    value.clone().unwrap_or_default()
}
