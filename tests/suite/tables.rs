//! The tables for other programs: opened by readers that had no part in making them, and held against `results.json`.

use crate::workspace::Workspace;
use calamine::{Data, DataType, Range, Reader, Xlsx};
use serde_json::Value;
use std::io::Cursor;

type Book = Xlsx<Cursor<Vec<u8>>>;

fn book(workspace: &Workspace) -> Book {
    let bytes = std::fs::read(workspace.path("out/data/results.xlsx")).expect("was made");
    Xlsx::new(Cursor::new(bytes)).expect("is a workbook")
}

/// The cells of a column of a sheet, below its heading.
fn column(range: &Range<Data>, name: &str) -> Vec<Data> {
    let mut rows = range.rows();
    let headings = rows.next().expect("has headings");
    let at = headings.iter().position(|heading| *heading == *name);
    let at = at.unwrap_or_else(|| panic!("there is a column {name}"));
    rows.map(|row| row[at].clone()).collect()
}

fn demo() -> Workspace {
    let workspace = Workspace::demo();
    workspace.run(&["run"]).exits(1);
    workspace
}

#[test]
fn the_workbook_has_the_figures_of_the_data_file_as_figures_and_its_days_as_days() {
    let workspace = demo();
    let mut book = book(&workspace);
    assert_eq!(
        book.sheet_names(),
        [
            "products",
            "packages",
            "extractions",
            "problems",
            "dictionary"
        ]
    );
    let results: Value =
        serde_json::from_str(&workspace.text("out/data/results.json")).expect("JSON");
    let products = results["products"].as_array().expect("a list");
    let packages: Vec<&Value> = products
        .iter()
        .flat_map(|product| product["packages"].as_array().expect("a list"))
        .collect();
    let sheet = book.worksheet_range("extractions").expect("there is one");
    let (reported, lower, upper) = (
        column(&sheet, "reported"),
        column(&sheet, "lower_ppm"),
        column(&sheet, "upper_ppm"),
    );
    let extractions: Vec<&Value> = packages
        .iter()
        .flat_map(|package| package["extractions"].as_array().expect("a list"))
        .collect();
    // The table has every extraction in turn; the data file has those of the deciding series.
    let mut known = reported.iter().zip(lower.iter().zip(&upper));
    for extraction in &extractions {
        let same = |(text, (low, high)): &(&Data, (&Data, &Data))| {
            text.as_string().unwrap_or_default() == extraction["reported"].as_str().expect("a text")
                && low.get_float() == extraction["lower_ppm"].as_f64()
                && high.get_float() == extraction["upper_ppm"].as_f64()
        };
        assert!(known.any(|row| same(&row)), "{extraction}");
    }
    assert!(
        reported
            .iter()
            .all(|cell| cell.is_string() || cell.is_empty())
    );
    assert!(
        reported
            .iter()
            .any(|cell| cell.to_string().starts_with("<5"))
    );
    let days = column(&sheet, "tested_on");
    assert!(
        days.iter()
            .all(|cell| cell.is_datetime() || cell.is_empty())
    );
    assert!(days.iter().any(Data::is_datetime));

    let sheet = book.worksheet_range("packages").expect("there is one");
    let means: Vec<Option<f64>> = column(&sheet, "result_ppm")
        .iter()
        .map(Data::get_float)
        .collect();
    let expected: Vec<Option<f64>> = packages
        .iter()
        .map(|package| package["result"]["ppm"].as_f64())
        .collect();
    assert_eq!(means, expected);
    let sheet = book.worksheet_range("products").expect("there is one");
    let names = column(&sheet, "name");
    let expected: Vec<Data> = products
        .iter()
        .map(|product| Data::String(product["name"].as_str().expect("a name").to_owned()))
        .collect();
    assert_eq!(names, expected);
    assert!(column(&sheet, "notify_maker").iter().all(Data::is_bool));

    let sheet = book.worksheet_range("problems").expect("there is one");
    let codes: Vec<String> = column(&sheet, "code")
        .iter()
        .filter_map(Data::as_string)
        .collect();
    let expected: Vec<&str> = results["problems"]
        .as_array()
        .expect("a list")
        .iter()
        .map(|problem| problem["code"].as_str().expect("a code"))
        .collect();
    assert_eq!(codes, expected);
    // Every column of every sheet stands in the dictionary with its meaning.
    let dictionary = book.worksheet_range("dictionary").expect("there is one");
    let told: Vec<(String, String)> = dictionary
        .rows()
        .skip(1)
        .map(|row| (row[0].to_string(), row[1].to_string()))
        .collect();
    for name in ["products", "packages", "extractions", "problems"] {
        let sheet = book.worksheet_range(name).expect("there is one");
        for heading in sheet.rows().next().expect("has headings") {
            let at = (name.to_owned(), heading.to_string());
            assert!(told.contains(&at), "{at:?}");
        }
    }
    assert!(
        column(&dictionary, "meaning")
            .iter()
            .all(|cell| !cell.is_empty())
    );
}

#[test]
fn a_formula_of_a_stranger_is_a_text_in_the_workbook() {
    let workspace = Workspace::new();
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,ingredients\nP1,=1+1,gluten-free,Rice.\n",
    );
    workspace.with(
        "inbox/a.csv",
        "package,extraction,result (ppm gluten)\nA1,1,<5\nA1,2,<5\n",
    );
    workspace.with("registers/packages.csv", "package_code,product_id\nA1,P1\n");
    workspace.run(&["run"]);
    let mut book = book(&workspace);
    let sheet = book.worksheet_range("products").expect("there is one");
    assert_eq!(column(&sheet, "name"), [Data::String("=1+1".to_owned())]);
    let formulas = book.worksheet_formula("products").expect("can be read");
    assert!(formulas.used_cells().next().is_none());
}

#[test]
fn tables_are_as_programs_or_spreadsheets_want_them() {
    let workspace = demo();
    let names = ["extractions", "packages", "products"];
    let read = |delimiter: u8| -> Vec<Vec<String>> {
        let mut cells = Vec::new();
        for name in names {
            let text = workspace.text(&format!("out/data/{name}.csv"));
            let marked = text.strip_prefix('\u{feff}');
            assert_eq!(marked.is_some(), delimiter == b';', "{name}");
            let text = marked.unwrap_or(&text);
            assert!(!text.contains('\u{feff}'), "at the start alone");
            let mut reader = csv::ReaderBuilder::new()
                .delimiter(delimiter)
                .has_headers(false)
                .from_reader(text.as_bytes());
            let rows = reader.records().map(|row| row.expect("a record"));
            cells.extend(rows.map(|row| row.iter().map(str::to_owned).collect::<Vec<_>>()));
        }
        cells
    };
    let commas = read(b',');
    let settings = workspace.text("programme.toml");
    workspace.with(
        "programme.toml",
        format!("{settings}\n[data]\ncsv = \"semicolon\"\n"),
    );
    workspace.run(&["run"]).exits(1);
    let semicolons = read(b';');
    assert_eq!(commas.len(), semicolons.len());
    let mut with_tenths = 0;
    for (row, other) in commas.iter().zip(&semicolons) {
        assert_eq!(row.len(), other.len());
        for (cell, in_its_country) in row.iter().zip(other) {
            let is_figure = in_its_country.contains(',') && cell.parse::<f64>().is_ok();
            with_tenths += usize::from(is_figure);
            let expected = if is_figure {
                cell.replace('.', ",")
            } else {
                cell.clone()
            };
            assert_eq!(*in_its_country, expected);
        }
    }
    assert!(with_tenths > 50, "{with_tenths}");
    let package: Value =
        serde_json::from_str(&workspace.text("out/data/datapackage.json")).expect("JSON");
    assert_eq!(package["resources"][0]["dialect"]["delimiter"], ";");
    workspace.with(
        "programme.toml",
        format!("{settings}\n[data]\ncsv = \"tabs\"\n"),
    );
    let refused = workspace.run(&["check"]);
    assert!(
        refused
            .exits(2)
            .stderr()
            .contains("\"comma\", \"semicolon\"")
    );
}

#[test]
fn the_data_package_says_its_version_and_its_licence() {
    let workspace = Workspace::new();
    workspace.with(
        "inbox/lab.csv",
        "Sample,Extraction,Gluten (ppm)\nA1,1,<5\nA1,2,<5\nA2,1,<5\nA2,2,<5\nA3,1,<5\nA3,2,<5\n",
    );
    let package = || -> Value {
        workspace.run(&["run"]).exits(0);
        serde_json::from_str(&workspace.text("out/data/datapackage.json")).expect("JSON")
    };
    let unpublished = package();
    assert_eq!(unpublished["version"], "1.0.0");
    assert!(unpublished.get("licenses").is_none(), "none is concluded");
    workspace.run(&["issue", "--date", "2031-05-01"]).exits(0);
    let settings = workspace.text("programme.toml");
    let licensed = |licence: &str| {
        let data = format!("{settings}\n[data]\nlicence = \"{licence}\"\n");
        workspace.with("programme.toml", data);
        package()["licenses"].clone()
    };
    assert_eq!(
        licensed("CC-BY-4.0"),
        serde_json::json!([{ "name": "CC-BY-4.0" }])
    );
    let address = "https://programme.example/licence";
    assert_eq!(licensed(address), serde_json::json!([{ "path": address }]));
    assert_eq!(package()["version"], "1.1.0", "one sheet is published");
}
