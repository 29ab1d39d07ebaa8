//! What a sheet rests on, as data that goes with it: the registers' rows, the rule, the readings with their places, the
//! verdict; and an excerpt of each lab file. Of other products nothing is in it, and of the maker no address.

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::exhibit::Exhibit;
use crate::model::package::PackageResult;
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::place::{LabFile, column_letter};
use crate::model::registers::{FollowupKind, Oats, Processing, Product};
use crate::model::rule::Decision;
use chrono::NaiveDate;
use serde::Serialize;
use serde_json::{Value, json};

/// The name of the shape; a change that a reader must know of changes the number.
pub const SCHEMA: &str = "galleyproof.case/1";

/// A file that the sheet carries beside its case, by its name in the PDF.
pub struct Carried<'a> {
    /// Its name in the PDF.
    pub name: &'a str,
    /// SHA-256 of its bytes.
    pub sha256: String,
}

/// The case of a sheet: JSON, two spaces deep.
pub fn case(
    product: &JudgedProduct,
    config: &Config,
    sheet_number: &str,
    carried: &[Carried<'_>],
) -> Vec<u8> {
    let verdict = &product.verdict;
    let rule = &verdict.rule;
    let carried: Vec<Value> = carried
        .iter()
        .map(|file| json!({ "name": file.name, "sha256": file.sha256 }))
        .collect();
    let uncertainty = match rule.decision {
        Decision::Simple => None,
        Decision::Guarded {
            relative_expanded_uncertainty,
        } => Some(relative_expanded_uncertainty),
    };
    let case = Case {
        schema: SCHEMA,
        sheet_number,
        content_sha256: &product.sheet().sha256,
        programme: json!({ "name": config.programme.name, "short_name": config.programme.short_name }),
        rule: json!({
            "regime": rule.regime.word(),
            "limit_ppm": rule.limit.ppm.0,
            "limit_passes": rule.limit.passes,
            "decision": rule.decision.word(),
            "relative_expanded_uncertainty": uncertainty,
            "packages_per_product": config.testing.packages_per_product,
            "extractions_per_package": config.testing.extractions_per_package,
            "relative_repeatability": config.testing.relative_repeatability,
        }),
        product: of_register(&verdict.product),
        round: &verdict.round,
        packages: verdict.packages.iter().map(package).collect(),
        correspondence: correspondence(product),
        verdict: verdict.verdict.word(),
        grade: verdict.verdict.grade(),
        reasons: crate::words::plain_reasons(&verdict.reasons, &verdict.rule, &config.words),
        claim: json!({ "text": verdict.product.claim, "class": verdict.claim.class.word() }),
        label: json!({
            "finding": verdict.label.finding.word(),
            "terms": verdict.label.terms.iter().map(|term| term.printed.as_str()).collect::<Vec<_>>(),
        }),
        exhibits: product.exhibits.iter().map(exhibit).collect(),
        carried,
    };
    let mut text = serde_json::to_string_pretty(&case).expect("the case has only JSON's own types");
    text.push('\n');
    text.into_bytes()
}

/// The case. What there may be very many of has a shape of its own: as values they would take ten times the memory.
#[derive(Serialize)]
struct Case<'a> {
    schema: &'a str,
    sheet_number: &'a str,
    content_sha256: &'a str,
    programme: Value,
    rule: Value,
    product: Value,
    round: &'a str,
    packages: Vec<Package<'a>>,
    correspondence: Vec<Value>,
    verdict: &'a str,
    grade: Option<&'a str>,
    reasons: Vec<String>,
    claim: Value,
    label: Value,
    exhibits: Vec<Value>,
    carried: Vec<Value>,
}

#[derive(Serialize)]
struct Package<'a> {
    package_code: &'a str,
    lot: Option<&'a str>,
    best_by: Option<&'a str>,
    bought_on: Option<NaiveDate>,
    shop: Option<&'a str>,
    sent_on: Option<NaiveDate>,
    state: &'a str,
    standing: &'a str,
    gap_ppm: Option<f64>,
    allowed_ppm: Option<f64>,
    readings: Vec<Reading<'a>>,
    other_series: Option<Box<Package<'a>>>,
}

#[derive(Serialize)]
struct Reading<'a> {
    number: u32,
    reported: &'a str,
    lower_ppm: Option<f64>,
    upper_ppm: Option<f64>,
    lloq_ppm: f64,
    #[serde(rename = "use")]
    used_as: &'a str,
    set_aside_because: Option<&'a str>,
    assay: &'a str,
    lab: &'a str,
    report: Option<&'a str>,
    tested_on: Option<NaiveDate>,
    source: Source<'a>,
}

#[derive(Serialize)]
struct Source<'a> {
    file: &'a str,
    sha256: &'a str,
    sheet: Option<&'a str>,
    row: u32,
    column: String,
}

fn exhibit(exhibit: &Exhibit) -> Value {
    json!({ "kind": exhibit.kind.word(), "path": exhibit.path, "sha256": exhibit.sha256 })
}

fn of_register(product: &Product) -> Value {
    json!({
        "product_id": product.product_id,
        "name": product.name,
        "brand": product.brand,
        "maker": product.maker,
        "category": product.category,
        "claim": product.claim,
        "certifier": product.certifier,
        "ingredients": product.ingredients,
        "oats": word(Oats::ALL, product.oats),
        "processing": word(Processing::ALL, product.processing),
        "matrix": product.matrix,
        "barcode": product.barcode,
        "net_content": product.net_content,
        "serving_g": product.serving_g,
    })
}

fn package(result: &PackageResult) -> Package<'_> {
    let package = &result.pair.package;
    let comparison = result.pair.comparison;
    Package {
        package_code: &package.package_code,
        lot: package.lot.as_deref(),
        best_by: package.best_by.as_deref(),
        bought_on: package.bought_on,
        shop: package.shop.as_deref(),
        sent_on: package.sent_on,
        state: result.pair.state.word(),
        standing: result.standing.word(),
        gap_ppm: comparison.map(|comparison| comparison.gap.0),
        allowed_ppm: comparison.map(|comparison| comparison.allowed.0),
        readings: result.pair.extractions.iter().map(reading).collect(),
        other_series: result
            .other_series
            .as_deref()
            .map(|other| Box::new(self::package(other))),
    }
}

fn reading(paired: &PairedExtraction) -> Reading<'_> {
    let extraction = &paired.extraction;
    let interval = extraction.outcome.reading();
    let source = &extraction.source;
    Reading {
        number: extraction.number,
        reported: &extraction.reported,
        lower_ppm: interval.map(|interval| interval.lower.0),
        upper_ppm: interval
            .and_then(|interval| interval.upper)
            .map(|upper| upper.0),
        lloq_ppm: extraction.lloq.0,
        used_as: used_as(&paired.usage),
        set_aside_because: match &paired.usage {
            Usage::Excluded { reason, .. } => Some(reason.as_str()),
            _ => None,
        },
        assay: &extraction.assay,
        lab: &extraction.lab,
        report: extraction.report.as_deref(),
        tested_on: extraction.tested_on,
        source: Source {
            file: &source.file.path,
            sha256: &source.file.sha256,
            sheet: source.sheet.as_deref(),
            row: source.row,
            column: column_letter(source.column),
        },
    }
}

/// What happens to a reading, in a word of the data.
fn used_as(usage: &Usage) -> &'static str {
    match usage {
        Usage::Used => "used",
        Usage::NoReading => "no reading",
        Usage::Excluded { .. } => "set aside",
        Usage::InConflict => "in conflict",
    }
}

/// The word of the register.
fn word<T: PartialEq>(of: &[(T, &'static str)], is: T) -> Option<&'static str> {
    of.iter().find(|(one, _)| *one == is).map(|(_, word)| *word)
}

/// What may be printed of the correspondence; a note is private and stays out.
fn correspondence(product: &JudgedProduct) -> Vec<Value> {
    let told = product.verdict.followups.iter();
    told.map(|event| {
        json!({
            "on": event.on,
            "kind": word(FollowupKind::ALL, event.kind),
            "due_on": event.due_on,
            "statement": event.statement,
        })
    })
    .collect()
}

/// An excerpt of a lab file: a CSV of the cells that are used for this product, each with its place, and the SHA-256 of
/// the whole file.
pub fn excerpt(product: &JudgedProduct, file: &LabFile) -> Vec<u8> {
    const HEADINGS: &str =
        "file,file_sha256,sheet,row,column,package_code,extraction,reported,unit_read_as,use";
    let into_memory = "writing into memory does not fail";
    let mut writer = csv::Writer::from_writer(Vec::new());
    writer.write_record(HEADINGS.split(',')).expect(into_memory);
    for package in &product.verdict.packages {
        let own = package
            .both_series()
            .flat_map(|series| &series.pair.extractions)
            .filter(|paired| paired.extraction.source.file.path == file.path);
        for paired in own {
            let extraction = &paired.extraction;
            let source = &extraction.source;
            let unit = match extraction.from_gliadin {
                true => "gliadin, taken twice as gluten",
                false => "gluten",
            };
            writer
                .write_record([
                    &file.path,
                    &file.sha256,
                    source.sheet.as_deref().unwrap_or_default(),
                    &source.row.to_string(),
                    &column_letter(source.column),
                    &package.pair.package.package_code,
                    &extraction.number.to_string(),
                    &safe(&extraction.reported),
                    unit,
                    used_as(&paired.usage),
                ])
                .expect(into_memory);
        }
    }
    writer.into_inner().expect(into_memory)
}

/// A text that a spreadsheet program will not take for a formula.
fn safe(text: &str) -> String {
    if text.starts_with(['=', '+', '-', '@', '\t', '\r']) {
        format!("'{text}")
    } else {
        text.to_owned()
    }
}
