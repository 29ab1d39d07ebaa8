//! Random realistic files: particulars right above the headings, rows of strangers first, blank cells for codes, footers and
//! controls beside blank cells, headings again. The readings are exactly those that were pasted.

use super::accounting::cases;
use super::folder::Folder;
use galleyproof::model::extraction::Outcome;
use proptest::prelude::*;
use proptest::sample::select;
use rust_xlsxwriter::Workbook;

/// A layout: its headings, and what stands under each: `s` the sample, `e` the number of the extraction, `r` a result, `l` a
/// lot, `w` a weight, `x` a remark, `u` the unit, `d` a dilution, `p` a product.
const LAYOUTS: [(&[&str], &str); 13] = [
    (&["Sample", "Extraction", "Gluten (ppm)"], "ser"),
    (&["Probe", "Extraktion", "Gluten (mg/kg)"], "ser"),
    (
        &["Sample code", "Extr. no.", "Run", "Gluten [mg/kg]"],
        "seer",
    ),
    (&["Sample", "Lot", "Gluten"], "slr"),
    (&["Sample", "Gluten (ppm)", "Remark"], "srx"),
    (&["Client ref", "Ext", "Result (mg/kg)", "Unit"], "seru"),
    (&["Lot", "Sample", "Extraction", "Gluten"], "lser"),
    (
        &[
            "Muestra",
            "Extracción",
            "Resultado (mg/kg)",
            "Observaciones",
        ],
        "serx",
    ),
    (&["Sample", "DF", "Extraction no", "Gluten (ppm)"], "sder"),
    (
        &["Sample", "Product", "Weight (g)", "Gluten (mg/kg)"],
        "spwr",
    ),
    (&["Sample", "Ext 1 (ppm)", "Ext 2 (ppm)", "Remark"], "srrx"),
    (
        &["Probe", "Charge", "Ext 1 (mg/kg)", "Ext 2 (mg/kg)"],
        "slrr",
    ),
    (&["Kennwort", "Extraction", "Gluten (ppm)"], "ser"),
];

/// What stands above: a line, or two.
const ABOVE: [&[&[&str]]; 16] = [
    &[&["LOQ", "5 ppm"]],
    &[&["LOQ", "5 ppm", "LOD", "3 ppm"]],
    &[&["Gluten analysis"], &["Unit", "ppm"]],
    &[&["Unit", "mg/kg", "Method", "R5"]],
    &[&["Report", "R-77"]],
    &[&["Results in mg/kg"]],
    &[&["Limit of quantification: 5 mg/kg"]],
    &[&["Range", "5 - 80 ppm"]],
    &[&["Kit", "K-1", "Lot", "77"]],
    &[&["Bericht", "R1"], &["Bestimmungsgrenze", "5 mg/kg"]],
    &[&["Client", "Test"], &["Unit", "ppm"]],
    &[&["Límite de cuantificación", "5 mg/kg"]],
    &[&["Gluten by ELISA (ppm)"]],
    &[&["", "Einheit", "mg/kg"]],
    &[&["Page 1 of 2"]],
    &[&["Plates", "2", "Analyst", "N. N."]],
];

/// Who else is in a table.
const STRANGERS: [&str; 10] = [
    "Z-9",
    "QC",
    "Control",
    "Blank",
    "77",
    "Std 2",
    "Positive control",
    "E1",
    "A1",
    "Kontrollprobe",
];

/// What stands beside a blank cell for the code.
const FOOTERS: [&str; 8] = [
    "LOQ",
    "Limit",
    "Control",
    "Mean",
    "Recovery",
    "QS-7",
    "Grenzwert",
    "Spezifikation",
];

/// A file: what is pasted, and how.
#[derive(Clone, Debug)]
struct File {
    layout: usize,
    above: Option<(usize, bool)>,
    /// Before each package: a stranger with his figure.
    strangers: Vec<Option<(usize, u32)>>,
    /// The figures of each package.
    figures: Vec<(u32, u32)>,
    /// Whether a package's code stands on its first row alone.
    blank: bool,
    /// Behind each package: nothing, the headings again, or a footer; and whether below a gap.
    behind: Vec<(Option<Option<usize>>, bool)>,
    format: usize,
}

fn file() -> impl Strategy<Value = File> {
    let stranger = prop::option::weighted(0.3, (0..STRANGERS.len(), 1..21_u32));
    let footer = prop::option::weighted(0.5, 0..FOOTERS.len());
    let behind = (prop::option::weighted(0.4, footer), any::<bool>());
    (
        0..LAYOUTS.len(),
        prop::option::weighted(0.7, (0..ABOVE.len(), any::<bool>())),
        prop::collection::vec(stranger, 3),
        prop::collection::vec((60..800_u32, 60..800_u32), 3),
        any::<bool>(),
        prop::collection::vec(behind, 3),
        select(vec![0, 0, 1, 2]),
    )
        .prop_map(
            |(layout, above, strangers, figures, blank, behind, format)| File {
                layout,
                above,
                strangers,
                figures,
                blank,
                behind,
                format,
            },
        )
}

/// Tenths as they are written: whole ones without a decimal.
fn written(tenths: u32) -> String {
    match tenths % 10 {
        0 | 5 => (tenths / 10).to_string(),
        rest => format!("{}.{rest}", tenths / 10),
    }
}

/// A row of a layout.
fn row(holds: &str, code: &str, number: u32, figures: &[String]) -> Vec<String> {
    let mut figures = figures.iter();
    let cells = holds.chars().map(|what| match what {
        's' => code.to_owned(),
        'e' => number.to_string(),
        'r' => figures.next().cloned().unwrap_or_default(),
        'l' => "71".to_owned(),
        'w' => "0.25".to_owned(),
        'x' => "ok".to_owned(),
        'u' => "ppm".to_owned(),
        'p' => "bread".to_owned(),
        _ => "1".to_owned(),
    });
    cells.collect()
}

/// The rows of a file.
fn rows(file: &File) -> Vec<Vec<String>> {
    let (headings, holds) = LAYOUTS[file.layout];
    let owned = |cells: &[&str]| {
        cells
            .iter()
            .map(|cell| (*cell).to_owned())
            .collect::<Vec<_>>()
    };
    let is_wide = holds.matches('r').count() == 2;
    let mut rows: Vec<Vec<String>> = Vec::new();
    if let Some((above, gap)) = file.above {
        rows.extend(ABOVE[above].iter().map(|line| owned(line)));
        if gap {
            rows.push(Vec::new());
        }
    }
    rows.push(owned(headings));
    for (at, (first, second)) in file.figures.iter().enumerate() {
        if let Some((stranger, figure)) = file.strangers[at] {
            rows.push(row(
                holds,
                STRANGERS[stranger],
                1,
                &[figure.to_string(), figure.to_string()],
            ));
        }
        let code = format!("TKW-{}", 101 + at);
        let (first, second) = (written(*first), written(*second));
        if is_wide {
            rows.push(row(holds, &code, 1, &[first, second]));
        } else {
            rows.push(row(holds, &code, 1, &[first]));
            let again = if file.blank { "" } else { &code };
            rows.push(row(holds, again, 2, &[second]));
        }
        let (behind, gap) = &file.behind[at];
        if *gap && behind.is_some() {
            rows.push(Vec::new());
        }
        match behind {
            Some(None) => rows.push(owned(headings)),
            // The word stands in a column at the left of the results, the figure under one of them.
            Some(Some(footer)) => {
                let word = holds
                    .chars()
                    .zip(0..)
                    .find(|(what, _)| matches!(what, 'e' | 'l' | 'd' | 'p'));
                let result = holds.find('r').unwrap_or_default();
                if let Some((_, place)) = word.filter(|(_, place)| *place < result) {
                    let mut line = vec![String::new(); result + 1];
                    line[place] = FOOTERS[*footer].to_owned();
                    line[result] = "5".to_owned();
                    rows.push(line);
                }
            }
            None => {}
        }
    }
    rows
}

fn workbook(rows: &[Vec<String>]) -> Vec<u8> {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    for (at, row) in (0..).zip(rows) {
        for (column, cell) in (0..).zip(row) {
            let written = match cell.parse::<f64>() {
                _ if cell.is_empty() => continue,
                Ok(figure) => sheet.write(at, column, figure),
                Err(_) => sheet.write(at, column, cell),
            };
            written.expect("fits in a sheet");
        }
    }
    book.save_to_buffer().expect("is written")
}

proptest! {
    #![proptest_config(ProptestConfig { cases: cases(), failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_readings_are_exactly_those_that_were_pasted(file in file()) {
        let rows = rows(&file);
        let delimited = |delimiter: &str| -> String {
            rows.iter().map(|row| row.join(delimiter) + "\n").collect()
        };
        let text = delimited(",");
        let (name, bytes) = match file.format {
            0 => ("inbox/a.csv", text.clone().into_bytes()),
            1 => ("inbox/a.csv", delimited(";").into_bytes()),
            _ => ("inbox/a.xlsx", workbook(&rows)),
        };
        let read = Folder::new().with(name, &bytes).gather();
        for (at, (first, second)) in file.figures.iter().enumerate() {
            let code = format!("TKW-{}", 101 + at);
            let figure = |tenths: u32| written(tenths).parse::<f64>().expect("is a figure");
            let mut pasted = vec![figure(*first), figure(*second)];
            pasted.sort_by(f64::total_cmp);
            let of_package = read.gathered.extractions.iter().filter(|one| one.package_code == code);
            let mut found: Vec<f64> = of_package
                .filter_map(|one| match one.outcome {
                    Outcome::Reading(interval) => interval.as_number().map(|number| number.0),
                    _ => None,
                })
                .collect();
            found.sort_by(f64::total_cmp);
            prop_assert_eq!(found, pasted, "{} in {}:\n{}\n{:?}", code, name, text, read.problems());
        }
        // What is told is of a stranger's row or of a footer's, and of no other.
        for problem in read.problems.sorted() {
            let row = problem.place.row.and_then(|row| rows.get(row as usize - 1));
            let is_ours = row.is_some_and(|row| row.iter().any(|cell| cell.starts_with("TKW-")));
            let is_error = problem.severity() == galleyproof::model::problem::Severity::Error;
            prop_assert!(!is_error || !is_ours && row.is_some(), "{:?}\n{}", problem, text);
        }
    }
}
