//! The readers of workbooks, held cell by cell against a library that had no part in them, and against one another, over
//! workbooks that a spreadsheet program saved.

use crate::make_binary::{self, BinaryCell, BinarySheet};
use calamine::{Data, Reader, Sheets, open_workbook_auto_from_rs};
use galleyproof::gather::books::{self, Book, Content};
use galleyproof::gather::tables::headings;
use std::collections::BTreeMap;
use std::io::Cursor;
use std::path::PathBuf;

/// The workbooks, by their names without an ending.
const NAMES: [&str; 12] = [
    "dates", "formats", "formulas", "gaps", "hidden", "letters", "long", "numbers", "plain",
    "plate", "sheets", "titles",
];

/// What a cell holds, in the words of both readers.
#[derive(Debug, PartialEq)]
enum Held {
    Text(String),
    Number(f64),
    Day(Option<String>),
    Fault,
    /// The referee does not tell a formula that was not calculated from a 0.
    NoResult,
}

/// The cells of a sheet by row and column, from 1.
type Cells = BTreeMap<(u32, u32), Held>;

fn bytes(name: &str, ending: &str) -> Vec<u8> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/workbooks")
        .join(format!("{name}.{ending}"));
    std::fs::read(path).expect("is there")
}

fn read(bytes: &[u8]) -> Book {
    books::read(bytes, &headings::likeness_of).expect("can be read")
}

fn ours(book: &Book) -> Vec<(String, Cells)> {
    let held = |content: &Content| match content {
        Content::Text(text) => Held::Text(text.to_string()),
        Content::Number { value, .. } => Held::Number(*value),
        Content::Date { day, .. } => Held::Day(day.map(|day| day.to_string())),
        Content::Fault(_) => Held::Fault,
        Content::Uncalculated => Held::NoResult,
    };
    let sheets = book.sheets.iter().map(|sheet| {
        let cells = sheet.rows.iter().flat_map(|row| {
            let cells = row.cells.iter();
            cells.map(move |cell| ((row.number, cell.column), held(&cell.content)))
        });
        let name = sheet.name.as_deref().unwrap_or_default().to_owned();
        (name, cells.collect())
    });
    sheets.collect()
}

fn theirs(bytes: &[u8]) -> Vec<(String, Cells)> {
    let mut book: Sheets<_> = open_workbook_auto_from_rs(Cursor::new(bytes)).expect("opens");
    let names = book.sheet_names();
    let sheets = names.into_iter().map(|name| {
        let range = book.worksheet_range(&name).expect("has the sheet");
        let (top, left) = range.start().unwrap_or_default();
        let cells = range.used_cells().filter_map(|(row, column, data)| {
            let held = match data {
                Data::Empty => return None,
                Data::String(text) => {
                    let text = text.trim().replace("\r\n", "\n");
                    if text.is_empty() {
                        return None;
                    }
                    Held::Text(text)
                }
                Data::Int(number) => Held::Number(*number as f64),
                Data::Float(number) => Held::Number(*number),
                Data::Bool(truth) => Held::Text(if *truth { "TRUE" } else { "FALSE" }.to_owned()),
                Data::DateTime(moment) => Held::Day(
                    (moment.as_f64() >= 1.0)
                        .then(|| moment.as_datetime().expect("is a day").date().to_string()),
                ),
                Data::DateTimeIso(moment) => Held::Day(Some(moment[..10].to_owned())),
                Data::DurationIso(_) => Held::Day(None),
                Data::Error(_) => Held::Fault,
            };
            let place = (top + row as u32 + 1, left + column as u32 + 1);
            Some((place, held))
        });
        (name, cells.collect())
    });
    sheets.collect()
}

/// Holds each cell against the referee's; how many there were.
fn hold(what: &str, bytes: &[u8]) -> usize {
    let (ours, theirs) = (ours(&read(bytes)), theirs(bytes));
    assert_eq!(ours.len(), theirs.len(), "{what}: sheets");
    let mut count = 0;
    for ((name, ours), (their_name, theirs)) in ours.iter().zip(&theirs) {
        assert_eq!(name, their_name, "{what}");
        for place in ours.keys().chain(theirs.keys()) {
            let same = match (ours.get(place), theirs.get(place)) {
                (Some(Held::NoResult), Some(Held::Number(number))) => *number == 0.0,
                // In an .ods the referee takes an error for the text that shows it.
                (Some(Held::Fault), Some(Held::Text(text))) => text.starts_with('#'),
                (ours, theirs) => ours == theirs,
            };
            assert!(
                same,
                "{what}, {name}, row {} column {}: {:?} and not {:?}",
                place.0,
                place.1,
                ours.get(place),
                theirs.get(place)
            );
        }
        count += ours.len();
    }
    count
}

#[test]
fn saved_workbooks_hold_what_the_referee_finds() {
    for ending in ["xlsx", "xls", "ods"] {
        let cells: usize = NAMES
            .iter()
            .map(|name| hold(&format!("{name}.{ending}"), &bytes(name, ending)))
            .sum();
        assert!(cells > 1_400, "{ending}: {cells} cells");
    }
}

#[test]
fn made_binary_workbooks_hold_what_the_referee_finds() {
    use BinaryCell::{Blank, Number, OwnText, Shown, Text, Truth};
    let text = |text: &str| Text(text.to_owned());
    let rows = vec![
        vec![text("Sample"), Blank, text("Gluten (ppm)")],
        vec![text("TKW-101"), Number(0.1 + 0.2), Number(77.0)],
        vec![OwnText("TKW-102 µ".to_owned()), Truth(true), Number(-1e-9)],
        vec![Blank, Shown(12.4, 0), Blank, Number(1e300)],
    ];
    let sheet = |name: &str, rows| BinarySheet {
        name: name.to_owned(),
        rows,
        ..BinarySheet::default()
    };
    let sheets = [sheet("Results", rows), sheet("Empty", Vec::new())];
    assert_eq!(hold("a.xlsb", &make_binary::xlsb(&sheets)), 10);
    assert_eq!(hold("a.xls", &make_binary::xls(&sheets)), 10);
}

/// The three kinds were saved from one workbook: what is shown, hidden and joined is the same in each.
#[test]
fn the_kinds_of_workbook_agree_with_one_another() {
    for name in NAMES {
        let [xlsx, xls, ods] = ["xlsx", "xls", "ods"].map(|ending| read(&bytes(name, ending)));
        for (other, kind) in [(&xls, "xls"), (&ods, "ods")] {
            assert_eq!(xlsx.sheets.len(), other.sheets.len(), "{name}.{kind}");
            for (ours, other) in xlsx.sheets.iter().zip(&other.sheets) {
                let what = format!("{name}.{kind}, {}", ours.name.as_deref().unwrap_or("?"));
                assert_eq!(ours.name, other.name, "{what}");
                assert_eq!(ours.hidden, other.hidden, "{what}");
                assert_eq!(ours.merged, other.merged, "{what}");
                assert_eq!(shown(ours), shown(other), "{what}");
            }
        }
    }
    let titles = read(&bytes("titles", "ods"));
    assert_eq!(titles.sheets[0].merged.len(), 5);
    let hidden = read(&bytes("hidden", "xls"));
    assert!(hidden.sheets[0].rows[2].hidden && hidden.sheets[1].hidden);
}

/// Every cell as it is shown, a line each, with its row where that is hidden.
fn shown(sheet: &books::Sheet) -> Vec<String> {
    let rows = sheet.rows.iter().flat_map(|row| {
        row.cells.iter().map(move |cell| {
            let shown = match &cell.content {
                // A moment is kept in more than one way; its day is one.
                Content::Date { day, .. } => format!("{day:?}"),
                Content::Fault(_) => "an error".to_owned(),
                // One program writes three digits of an exponent where it shows a cell without a format.
                content => content.shown().replace("E+0", "E+"),
            };
            let hidden = if row.hidden { " hidden" } else { "" };
            format!("{}{hidden}, {}: {shown}", row.number, cell.column)
        })
    });
    rows.collect()
}
