//! The same figures as tables: `extractions.csv`, `packages.csv`, `products.csv`, and the data dictionary that says what
//! each column means (`datapackage.json`, Frictionless Data Package).
//!
//! Each table is declared once, column by column, so that the header, the cells and the dictionary cannot part ways.

mod columns;

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::document::Document;
use crate::save::results;
use crate::save::tables::columns::{Column, ExtractionRow, PackageRow, ProductRow};
use serde_json::{Value, json};

/// The three tables and their dictionary.
pub fn documents(decided: &Decided, config: &Config) -> Vec<Document> {
    let products: Vec<&JudgedProduct> = decided.products.iter().collect();
    let packages: Vec<PackageRow<'_>> = products
        .iter()
        .flat_map(|product| {
            product
                .verdict
                .packages
                .iter()
                .map(move |package| (*product, package))
        })
        .collect();
    let extractions: Vec<ExtractionRow<'_>> = packages
        .iter()
        .flat_map(|(product, package)| {
            package
                .pair
                .extractions
                .iter()
                .map(move |one| (*product, *package, one))
        })
        .collect();
    vec![
        Document {
            path: "data/extractions.csv".into(),
            bytes: table(&columns::extractions(), &extractions),
        },
        Document {
            path: "data/packages.csv".into(),
            bytes: table(&columns::packages(), &packages),
        },
        Document {
            path: "data/products.csv".into(),
            bytes: table(
                &columns::products(),
                &products
                    .iter()
                    .map(|judged| ProductRow {
                        judged,
                        reasons: crate::words::plain_reasons(
                            &judged.verdict.reasons,
                            &judged.verdict.rule,
                            &config.words,
                        ),
                    })
                    .collect::<Vec<_>>(),
            ),
        },
        Document::text("data/datapackage.json", dictionary(config)),
        Document::text("data/results.schema.json", results::JSON_SCHEMA),
    ]
}

fn table<Row>(columns: &[Column<Row>], rows: &[Row]) -> Vec<u8> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    let into_memory = "writing into memory does not fail";
    writer
        .write_record(columns.iter().map(|column| column.name))
        .expect(into_memory);
    for row in rows {
        let cells = columns.iter().map(|column| {
            let cell = (column.cell)(row);
            if column.kind == "string" {
                safe(&cell)
            } else {
                cell
            }
        });
        writer.write_record(cells).expect(into_memory);
    }
    writer.into_inner().expect(into_memory)
}

/// A text that a spreadsheet program will not take for a formula: an apostrophe goes before `= + - @`, tab and CR.
pub fn safe(text: &str) -> String {
    if text.starts_with(['=', '+', '-', '@', '\t', '\r']) {
        format!("'{text}")
    } else {
        text.to_owned()
    }
}

fn dictionary(config: &Config) -> String {
    let package = json!({
        "profile": "tabular-data-package",
        "name": format!("{}-results", config.programme.short_name.to_lowercase()),
        "title": format!("{}: results", config.programme.name),
        "resources": [
            resource("extractions", "One row an extraction that the lab reported.", &columns::extractions(), &["package_code", "number"]),
            resource("packages", "One row a package that counts.", &columns::packages(), &["package_code"]),
            resource("products", "One row a product and round.", &columns::products(), &["product_id", "round"]),
        ],
    });
    let mut text = serde_json::to_string_pretty(&package).expect("JSON values are JSON");
    text.push('\n');
    text
}

fn resource<Row>(name: &str, description: &str, columns: &[Column<Row>], key: &[&str]) -> Value {
    let fields: Vec<Value> = columns.iter().map(field).collect();
    json!({
        "name": name,
        "path": format!("{name}.csv"),
        "profile": "tabular-data-resource",
        "description": description,
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "schema": { "fields": fields, "missingValues": [""], "primaryKey": key },
    })
}

fn field<Row>(column: &Column<Row>) -> Value {
    let mut field =
        json!({ "name": column.name, "type": column.kind, "description": column.meaning });
    if let Some(unit) = column.unit {
        field["unit"] = json!(unit);
    }
    field
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
        let field = field(&columns::extractions()[5]);
        assert_eq!(field["unit"], "mg/kg gluten");
    }
}
