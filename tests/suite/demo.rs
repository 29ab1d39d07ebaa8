//! The demo's lab files are made here, from one plain table of invented readings, in the layouts of two invented labs.
//!
//! `GALLEYPROOF_MAKE_DEMO=1 cargo test --test suite demo` writes them anew; without it the test holds the files in
//! `examples/` against what would be made.

use crate::make_ods::{OdsCell, OdsRow, OdsSheet, ods};
use rust_xlsxwriter::{DocProperties, ExcelDateTime, Format, Workbook};
use std::collections::BTreeMap;
use std::fmt::Write;
use std::path::Path;

/// What is in the wells of a plate, in the order of its wells.
const PLATE: &str = include_str!("demo/plate.csv");

const READINGS: &str = include_str!("demo/readings.csv");

/// The readings of one package in one file.
#[derive(Debug, Default)]
struct Row {
    package_code: String,
    /// By number of extraction.
    results: Vec<String>,
    tested_on: String,
}

#[test]
fn the_lab_files_of_the_demo_are_those_made_here() {
    let inbox = Path::new(env!("CARGO_MANIFEST_DIR")).join("examples/inbox");
    for (file, bytes) in lab_files() {
        let path = inbox.join(&file);
        if std::env::var_os("GALLEYPROOF_MAKE_DEMO").is_some() {
            std::fs::create_dir_all(path.parent().expect("is in a folder"))
                .expect("makes the folder");
            std::fs::write(&path, &bytes).expect("writes");
        }
        let there =
            std::fs::read(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        assert!(
            there == bytes,
            "{} is not what tests/suite/demo.rs makes",
            path.display()
        );
    }
}

/// Every lab file of the demo: path below the inbox, and bytes.
fn lab_files() -> Vec<(String, Vec<u8>)> {
    let mut files = Vec::new();
    for (file, rows) in readings() {
        let bytes = match file.rsplit('.').next().expect("has an ending") {
            "csv" => harrow_and_vane(&file, &rows),
            "xlsx" => fenwick_hollow_xlsx(&file, &rows),
            _ => fenwick_hollow_ods(&file, &rows),
        };
        files.push((file, bytes));
    }
    files.push(("2031/HV-31-0588-plate.csv".to_owned(), plate()));
    // A workbook that broke on its way: the first half of a good one.
    let whole = &files
        .iter()
        .find(|(file, _)| file.ends_with("131.xlsx"))
        .expect("is among them")
        .1;
    files.push((
        "2031/FH-2031-126.xlsx".to_owned(),
        whole[..whole.len() / 2].to_vec(),
    ));
    files
}

fn readings() -> BTreeMap<String, Vec<Row>> {
    let mut files: BTreeMap<String, Vec<Row>> = BTreeMap::new();
    let mut reader = csv::Reader::from_reader(READINGS.as_bytes());
    for record in reader.records() {
        let record = record.expect("the table of readings is well formed");
        let rows = files.entry(record[0].to_owned()).or_default();
        if rows.last().is_none_or(|row| row.package_code != record[1]) {
            rows.push(Row {
                package_code: record[1].to_owned(),
                results: Vec::new(),
                tested_on: record[4].to_owned(),
            });
        }
        rows.last_mut()
            .expect("was just pushed")
            .results
            .push(record[3].to_owned());
    }
    files
}

fn report_number(file: &str) -> &str {
    let name = file.rsplit('/').next().expect("a path has a name");
    name.split('.')
        .next()
        .expect("a name has a stem")
        .trim_end_matches("-repeat")
        .trim_end_matches("-competitive")
}

/// Semicolons, a row an extraction, below the lab's address.
fn harrow_and_vane(file: &str, rows: &[Row]) -> Vec<u8> {
    let assay = match file.contains("competitive") {
        true => "Competitive R5 ELISA, ethanol extraction",
        false => "Sandwich R5 ELISA, cocktail extraction",
    };
    let mut text = format!(
        "Harrow & Vane Analytical;;;;\n17 Retort Row, Harrow Quay;;;;\n;;;;\nReport no.;{};;;\n\
         Assay;{assay};;;\nLimit of quantification;5 mg/kg;;;\n;;;;\n\
         Sample code;Extraction;Gluten (mg/kg);Tested on;Remark\n",
        report_number(file)
    );
    for row in rows {
        for (index, result) in row.results.iter().enumerate() {
            let number = index + 1;
            let (result, remark) = match result.as_str() {
                "<" => ("<5.0", ""),
                "insufficient sample" => ("n/a", "insufficient sample"),
                other => (other, ""),
            };
            writeln!(
                text,
                "{};{number};{result};{};{remark}",
                row.package_code, row.tested_on
            )
            .expect("takes all");
        }
    }
    text.push_str(";;;;\nResults relate to the samples as received.;;;;\n");
    text.into_bytes()
}

/// The plate that some of the figures of a report were read on, as the reader of the lab writes it: a row a well, down the
/// columns of the plate.
fn plate() -> Vec<u8> {
    let mut text =
        "Harrow & Vane Analytical;;;;;;\nPlate;P-0588;;;;;\nRead at;450 nm;;;;;\n;;;;;;\n\
         Well;Type;Sample;Concentration (ppm);Extraction;Dilution;Absorbance\n"
            .to_owned();
    let mut reader = csv::Reader::from_reader(PLATE.as_bytes());
    for (index, record) in reader.records().enumerate() {
        let record = record.expect("the table of wells is well formed");
        let well = format!("{}{}", char::from(b'A' + (index % 8) as u8), index / 8 + 1);
        let dilution = if record[3].is_empty() { "" } else { "1" };
        writeln!(
            text,
            "{well};{};{};{};{};{dilution};{}",
            &record[0], &record[1], &record[2], &record[3], &record[4]
        )
        .expect("takes all");
    }
    text.into_bytes()
}

const FENWICK_HEADINGS: [&str; 6] = [
    "Your reference",
    "Extract 1, ppm gluten",
    "Extract 2, ppm gluten",
    "Mean, ppm",
    "Date of analysis",
    "Comment",
];

const FENWICK_TITLES: [&str; 4] = [
    "Fenwick Hollow Laboratory",
    "Gluten by sandwich R5 ELISA after cocktail extraction",
    "LOQ: 5 ppm. Two extractions of each sample.",
    "",
];

/// The mean as this lab prints it: only where both extractions are numbers.
fn printed_mean(results: &[String]) -> Option<f64> {
    let numbers: Vec<f64> = results
        .iter()
        .filter_map(|result| result.parse().ok())
        .collect();
    (numbers.len() == results.len())
        .then(|| (numbers.iter().sum::<f64>() / numbers.len() as f64 * 100.0).round() / 100.0)
}

/// A cover, and a sheet of results with a column an extraction.
fn fenwick_hollow_xlsx(file: &str, rows: &[Row]) -> Vec<u8> {
    let into_memory = "a workbook in memory takes all";
    let mut workbook = Workbook::new();
    let made = ExcelDateTime::from_ymd(2030, 1, 1).expect("is a day");
    workbook.set_properties(&DocProperties::new().set_creation_datetime(&made));
    let cover = workbook
        .add_worksheet()
        .set_name("Cover")
        .expect(into_memory);
    cover
        .write(0, 0, "Fenwick Hollow Laboratory")
        .expect(into_memory);
    cover
        .write(2, 0, "Results are on the next sheet.")
        .expect(into_memory);
    let sheet = workbook
        .add_worksheet()
        .set_name("Results")
        .expect(into_memory);
    for (row, title) in FENWICK_TITLES.iter().enumerate() {
        sheet.write(row as u32, 1, *title).expect(into_memory);
    }
    sheet
        .write(4, 1, format!("Report {}", report_number(file)))
        .expect(into_memory);
    for (column, heading) in FENWICK_HEADINGS.iter().enumerate() {
        sheet
            .write_with_format(6, column as u16 + 1, *heading, &Format::new().set_bold())
            .expect(into_memory);
    }
    let day = Format::new().set_num_format("dd/mm/yyyy");
    for (index, row) in rows.iter().enumerate() {
        let at = index as u32 + 7;
        sheet.write(at, 1, &row.package_code).expect(into_memory);
        for (column, result) in row.results.iter().enumerate() {
            let column = column as u16 + 2;
            match result.parse::<f64>() {
                Ok(number) => sheet.write(at, column, number).expect(into_memory),
                Err(_) => sheet
                    .write(at, column, result.replace('<', "< 5"))
                    .expect(into_memory),
            };
        }
        if let Some(mean) = printed_mean(&row.results) {
            sheet.write(at, 4, mean).expect(into_memory);
        }
        let tested = ExcelDateTime::parse_from_str(&row.tested_on).expect("is a day");
        sheet
            .write_with_format(at, 5, &tested, &day)
            .expect(into_memory);
    }
    workbook.save_to_buffer().expect(into_memory)
}

/// The same layout from another spreadsheet program.
fn fenwick_hollow_ods(file: &str, rows: &[Row]) -> Vec<u8> {
    let report = format!("Report {}", report_number(file));
    let mut lines: Vec<Vec<OdsCell>> = FENWICK_TITLES
        .iter()
        .map(|title| vec![OdsCell::of(title)])
        .collect();
    lines.push(vec![OdsCell::of(&report)]);
    lines.push(Vec::new());
    lines.push(
        FENWICK_HEADINGS
            .iter()
            .map(|heading| OdsCell::of(heading))
            .collect(),
    );
    for row in rows {
        let mut line = vec![OdsCell::of(&row.package_code)];
        line.extend(row.results.iter().map(|result| match result.parse() {
            Ok(number) => OdsCell::Number(number, result.clone()),
            Err(_) => OdsCell::of(&result.replace('<', "< 5")),
        }));
        let mean = printed_mean(&row.results);
        line.push(mean.map_or(OdsCell::Blank, |mean| {
            OdsCell::Number(mean, mean.to_string())
        }));
        line.push(OdsCell::Date(row.tested_on.clone()));
        lines.push(line);
    }
    ods(&[OdsSheet {
        hidden_columns: Vec::new(),
        name: "Results".to_owned(),
        rows: lines
            .into_iter()
            .map(|cells| OdsRow {
                cells,
                hidden: false,
            })
            .collect(),
        hidden: false,
    }])
}
