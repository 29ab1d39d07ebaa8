//! The same figures as tables: `extractions.csv`, `packages.csv`, `products.csv`, and the data dictionary that says what
//! each column means (`datapackage.json`, Frictionless Data Package); and all of them, with the problems, in one workbook,
//! `results.xlsx`.
//!
//! Each table is declared once, column by column, so that the headings, the cells and the dictionary cannot part ways.

mod columns;
mod registers;
mod workbook;

pub use registers::registers as blank_registers;

use crate::config::{Config, CsvKind};
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::document::Document;
use crate::model::formula;
use crate::model::registers::IssuedRevision;
use crate::save::results;
use crate::save::tables::columns::{Column, ExtractionRow, PackageRow, ProductRow};
use anyhow::Result;
use serde_json::{Value, json};

/// A table with its cells as text: what a file of any kind is made from. Its rows are made each time they are asked for: of
/// very many, the cells of all would take more memory than what they are made from.
struct Table<'a> {
    /// Its name, and that of its file or sheet.
    name: &'static str,
    /// What a row of it is.
    describes: &'static str,
    /// The columns that tell its rows apart.
    key: &'static [&'static str],
    fields: Vec<Field>,
    rows: Rows<'a>,
    /// How many columns stay in sight where the others are moved.
    frozen: u16,
}

/// The rows of a table, from the first.
type Rows<'a> = Box<dyn Fn() -> Box<dyn Iterator<Item = Vec<String>> + 'a> + 'a>;

/// What a column holds and means.
struct Field {
    name: &'static str,
    kind: &'static str,
    unit: Option<&'static str>,
    meaning: &'static str,
}

impl<'a> Table<'a> {
    fn new<Row: 'a, I: Iterator<Item = Row> + 'a>(
        (name, describes): (&'static str, &'static str),
        key: &'static [&'static str],
        columns: Vec<Column<Row>>,
        rows: impl Fn() -> I + 'a,
    ) -> Table<'a> {
        let fields = columns.iter().map(|column| Field {
            name: column.name,
            kind: column.kind,
            unit: column.unit,
            meaning: column.meaning,
        });
        let fields = fields.collect();
        let cells: Vec<fn(&Row) -> String> = columns.iter().map(|column| column.cell).collect();
        Table {
            name,
            describes,
            key,
            fields,
            rows: Box::new(move || {
                let cells = cells.clone();
                Box::new(rows().map(move |row| cells.iter().map(|cell| cell(&row)).collect()))
            }),
            frozen: key.len() as u16,
        }
    }
}

/// Gives the tables with their dictionary, and the workbook of them, to `put`, one after another.
///
/// # Errors
/// Where `put` fails.
pub fn documents(
    decided: &Decided,
    config: &Config,
    put: &dyn Fn(Document) -> Result<()>,
) -> Result<()> {
    let kind = config.data.csv;
    let mut tables = tables(decided, config);
    for table in &tables {
        put(Document {
            path: format!("data/{}.csv", table.name),
            bytes: csv(table, kind),
        })?;
    }
    let described = dictionary(config, &decided.registers.issued, &tables);
    put(Document::text("data/datapackage.json", described))?;
    put(Document::text(
        "data/results.schema.json",
        results::JSON_SCHEMA,
    ))?;
    // In the workbook products come first.
    tables.reverse();
    tables.push(Table::new(
        ("problems", "What was found in the lab files and registers."),
        &[],
        columns::problems(),
        || decided.problems.sorted().into_iter(),
    ));
    put(Document {
        path: "data/results.xlsx".into(),
        bytes: workbook::workbook(&title(config), &tables),
    })
}

/// Extractions, packages, products.
fn tables<'a>(decided: &'a Decided, config: &'a Config) -> Vec<Table<'a>> {
    let products = || decided.products.iter();
    let packages = move || {
        products().flat_map(|product| {
            let packages = product.verdict.packages.iter();
            packages.map(move |package| -> PackageRow<'a> { (product, package) })
        })
    };
    let extractions = move || {
        packages().flat_map(|(product, package)| {
            let extractions = package.pair.extractions.iter();
            extractions.map(move |one| -> ExtractionRow<'a> { (product, package, one) })
        })
    };
    let product = |judged: &'a JudgedProduct| {
        let verdict = &judged.verdict;
        let reasons = crate::words::plain_reasons(&verdict.reasons, &verdict.rule, &config.words);
        ProductRow { judged, reasons }
    };
    vec![
        Table::new(
            (
                "extractions",
                "One row an extraction that the lab reported.",
            ),
            &["package_code", "number"],
            columns::extractions(),
            extractions,
        ),
        Table::new(
            ("packages", "One row a package that counts."),
            &["package_code"],
            columns::packages(),
            packages,
        ),
        Table::new(
            ("products", "One row a product and round."),
            &["product_id", "round"],
            columns::products(),
            move || products().map(product),
        ),
    ]
}

/// What a spreadsheet program knows a text in UTF-8 by. The tables with commas go without: programs read it as part of the
/// first column's name.
fn start(kind: CsvKind) -> Vec<u8> {
    match kind {
        CsvKind::Comma => Vec::new(),
        CsvKind::Semicolon => "\u{feff}".into(),
    }
}

fn csv(table: &Table<'_>, kind: CsvKind) -> Vec<u8> {
    let into_memory = "writing into memory does not fail";
    let mut writer = csv::WriterBuilder::new()
        .delimiter(kind.delimiter())
        .from_writer(start(kind));
    writer
        .write_record(table.fields.iter().map(|field| field.name))
        .expect(into_memory);
    for row in (table.rows)() {
        let cells = table.fields.iter().zip(&row);
        let cells = cells.map(|(field, cell)| match field.kind {
            "string" => safe(cell),
            "number" => cell.replace('.', kind.decimal_mark()),
            _ => cell.clone(),
        });
        writer.write_record(cells).expect(into_memory);
    }
    writer.into_inner().expect(into_memory)
}

/// A text that a spreadsheet program will not take for a formula: an apostrophe goes before what begins one, and
/// before a tab or a line end, which such a program may pass over to find one.
pub fn safe(text: &str) -> String {
    if text.starts_with(formula::BEGINNINGS) || text.starts_with(['\t', '\r', '\n']) {
        format!("'{text}")
    } else {
        text.to_owned()
    }
}

fn title(config: &Config) -> String {
    format!("{}: results", config.programme.name)
}

fn dictionary(config: &Config, issued: &[IssuedRevision], tables: &[Table<'_>]) -> String {
    let kind = config.data.csv;
    let resources: Vec<Value> = tables.iter().map(|table| resource(table, kind)).collect();
    let mut package = json!({
        "profile": "tabular-data-package",
        "name": format!("{}-results", config.programme.short_name.to_lowercase()),
        "title": title(config),
        "version": version(issued),
    });
    if let Some(licence) = &config.data.licence {
        package["licenses"] = json!([licence_of(licence)]);
    }
    package["resources"] = json!(resources);
    let mut text = serde_json::to_string_pretty(&package).expect("JSON values are JSON");
    text.push('\n');
    text
}

/// The version of the figures, as the pattern of the Data Package standard counts it: the columns, what was added, what was
/// amended. The first is that of `results.json`'s schema, the others count published sheets and amendments of them.
fn version(issued: &[IssuedRevision]) -> String {
    let sheets = issued.iter().filter(|one| one.revision == 1).count();
    format!("1.{sheets}.{}", issued.len() - sheets)
}

/// A licence as the Data Package standard has it: its identifier, or where its text stands.
fn licence_of(licence: &str) -> Value {
    if licence.contains("://") {
        json!({ "path": licence })
    } else {
        json!({ "name": licence })
    }
}

fn resource(table: &Table<'_>, kind: CsvKind) -> Value {
    let fields: Vec<Value> = table.fields.iter().map(|one| field(one, kind)).collect();
    json!({
        "name": table.name,
        "path": format!("{}.csv", table.name),
        "profile": "tabular-data-resource",
        "description": table.describes,
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "dialect": { "delimiter": char::from(kind.delimiter()).to_string() },
        "schema": { "fields": fields, "missingValues": [""], "primaryKey": table.key },
    })
}

fn field(field: &Field, kind: CsvKind) -> Value {
    let mut described =
        json!({ "name": field.name, "type": field.kind, "description": field.meaning });
    if let Some(unit) = field.unit {
        described["unit"] = json!(unit);
    }
    if field.kind == "number" && kind.decimal_mark() != "." {
        described["decimalChar"] = json!(kind.decimal_mark());
    }
    described
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_never_a_formula() {
        assert_eq!(safe("=1+1"), "'=1+1");
        assert_eq!(safe("@home"), "'@home");
        assert_eq!(safe("Oat & Rye"), "Oat & Rye");
    }

    #[test]
    fn the_dictionary_names_every_column_once() {
        let names: Vec<_> = columns::extractions()
            .iter()
            .map(|column| column.name)
            .collect();
        let mut unique = names.clone();
        unique.sort_unstable();
        unique.dedup();
        assert_eq!(names.len(), unique.len());
        let columns = columns::extractions();
        let none = std::iter::empty::<ExtractionRow<'_>>;
        let table = Table::new(("extractions", ""), &[], columns, none);
        let described = |kind| field(&table.fields[5], kind);
        assert_eq!(described(CsvKind::Comma)["unit"], "mg/kg gluten");
        assert!(described(CsvKind::Comma)["decimalChar"].is_null());
        assert_eq!(described(CsvKind::Semicolon)["decimalChar"], ",");
    }
}
