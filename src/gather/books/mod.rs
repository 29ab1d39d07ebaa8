//! Bytes -> cells as written, each with its place: delimited text and workbooks alike.

pub mod bounds;
pub mod csv;
pub mod letters;
pub mod workbook;

pub use bounds::{Bound, LARGEST_FILE, MOST_CELLS, MOST_RESULTS, MOST_SHEETS};

use crate::model::said::Said;
use crate::words::say;
use bounds::{MOST_ROWS, MOST_TEXT, WIDEST_ROW};
use chrono::NaiveDate;
use std::borrow::Cow;
use std::sync::Arc;

/// How much a row looks like headings: the reader of delimited text tries delimiters, and does not know what a heading is.
pub type Likeness<'a> = &'a dyn Fn(&Row) -> usize;

/// A file as cells.
#[derive(Clone, Debug, Default)]
pub struct Book {
    /// How the bytes were read, in words: "comma-delimited text, UTF-8".
    pub format: String,
    /// Sheets in their order; one without a name for a delimited file.
    pub sheets: Vec<Sheet>,
    /// Whether the text was in an encoding other than Unicode, so that letters beyond ASCII may be wrong.
    pub guessed_encoding: bool,
    /// Sheets that are no worksheets and were passed over, by name: charts, macros, entries that lead nowhere.
    pub passed_over: Vec<Arc<str>>,
    /// Cells from whose text control characters and the like were left out.
    pub cleaned: Vec<CellPlace>,
}

/// Where a cell stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CellPlace {
    /// Name of its sheet; none in a delimited file.
    pub sheet: Option<Arc<str>>,
    /// As [`Row::number`].
    pub row: u32,
    /// From 1.
    pub column: u32,
}

/// A sheet as its cells that hold something.
#[derive(Clone, Debug, Default)]
pub struct Sheet {
    /// Name; none in a delimited file.
    pub name: Option<Arc<str>>,
    /// Whether the spreadsheet program does not show it.
    pub hidden: bool,
    /// Rows that hold something, from the top.
    pub rows: Vec<Row>,
    /// Cells that were joined into one; the text is in the first.
    pub merged: Vec<Merged>,
    /// Columns that the spreadsheet program does not show: first and last of each run.
    pub hidden_columns: Vec<(u32, u32)>,
}

impl Sheet {
    /// Whether the spreadsheet program does not show a column.
    pub fn hides(&self, column: u32) -> bool {
        self.hidden_columns
            .iter()
            .any(|(first, last)| (*first..=*last).contains(&column))
    }
}

/// A row that holds something.
#[derive(Clone, Debug, Default)]
pub struct Row {
    /// As the spreadsheet shows it, from 1; the line where the record starts in a delimited file.
    pub number: u32,
    /// Whether the spreadsheet program does not show it.
    pub hidden: bool,
    /// Cells that hold something, from the left.
    pub cells: Vec<Cell>,
}

/// A cell that holds something.
#[derive(Clone, Debug)]
pub struct Cell {
    /// From 1.
    pub column: u32,
    /// What it holds.
    pub content: Content,
}

/// What a cell holds.
#[derive(Clone, Debug, PartialEq)]
pub enum Content {
    /// Text as typed.
    Text(Box<str>),
    /// A number, and how the spreadsheet shows it.
    Number {
        /// As stored.
        value: f64,
        /// With its number format.
        shown: Box<str>,
    },
    /// A day, and how the spreadsheet shows it.
    Date {
        /// None for a time without a day.
        day: Option<NaiveDate>,
        /// With its number format, or as an ISO date.
        shown: Box<str>,
    },
    /// An error such as `#N/A`.
    Fault(Box<str>),
    /// A formula that was never calculated.
    Uncalculated,
}

/// What a file may still hold, so that none takes all memory.
#[derive(Debug)]
pub struct Room {
    cells: usize,
    text: usize,
}

impl Default for Room {
    fn default() -> Room {
        Room {
            cells: MOST_CELLS,
            text: MOST_TEXT,
        }
    }
}

impl Room {
    /// Takes the room of so many cells that hold the same.
    pub fn take(&mut self, content: &Content, times: usize) -> Result<(), Unreadable> {
        let text = content.shown().len().saturating_mul(times);
        let cells = self.cells.checked_sub(times);
        let text = self.text.checked_sub(text);
        *self = Room {
            cells: cells.ok_or_else(|| Unreadable::beyond(Bound::Cells))?,
            text: text.ok_or_else(|| Unreadable::beyond(Bound::Text))?,
        };
        Ok(())
    }
}

impl Content {
    /// What the spreadsheet shows.
    pub fn shown(&self) -> Cow<'_, str> {
        match self {
            Content::Text(shown)
            | Content::Number { shown, .. }
            | Content::Date { shown, .. }
            | Content::Fault(shown) => Cow::Borrowed(shown),
            Content::Uncalculated => Cow::Borrowed("a formula without a result"),
        }
    }
}

/// A rectangle of cells that were joined, from 1, ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Merged {
    /// Row of the first cell.
    pub top: u32,
    /// Row of the last cell.
    pub bottom: u32,
    /// Column of the first cell.
    pub left: u32,
    /// Column of the last cell.
    pub right: u32,
}

impl Row {
    /// The cell in this column, where it holds something.
    pub fn at(&self, column: u32) -> Option<&Content> {
        self.cells
            .binary_search_by_key(&column, |cell| cell.column)
            .ok()
            .map(|index| &self.cells[index].content)
    }
}

/// Why a file cannot be read, and what to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unreadable {
    /// What is wrong with it.
    pub message: Said,
    /// What to do.
    pub hint: Said,
}

impl Unreadable {
    /// Both sentences.
    pub fn new(message: Said, hint: Said) -> Unreadable {
        Unreadable { message, hint }
    }

    /// A file that passes a bound.
    pub fn beyond(bound: Bound) -> Unreadable {
        let (word, most, part) = bound.figures();
        Unreadable::new(
            say::found_too_large(word, most.to_string(), part.to_string()),
            say::do_results_alone(),
        )
    }
}

/// What a file is, by its first bytes: names lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A ZIP archive: .xlsx, .xlsm, .xlsb or .ods.
    Zip,
    /// A compound file: .xls, or an encrypted workbook.
    Compound,
    /// Text.
    Text,
    /// None of these; what it is, as far as can be told: a word of the message that tells of it.
    Other(&'static str),
}

/// What a file is, by its first bytes.
pub fn kind(bytes: &[u8]) -> Kind {
    const COMPOUND: [u8; 8] = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
    if bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(b"PK\x05\x06") {
        return Kind::Zip;
    }
    if bytes.starts_with(&COMPOUND) {
        return Kind::Compound;
    }
    if bytes.starts_with(b"%PDF") {
        return Kind::Other("pdf");
    }
    let head = &bytes[..bytes.len().min(4096)];
    let lower: Vec<u8> = head.iter().map(u8::to_ascii_lowercase).collect();
    let says = |word: &[u8]| lower.windows(word.len()).any(|window| window == word);
    if says(b"<html") || (says(b"<table") && says(b"<tr")) {
        return Kind::Other("web");
    }
    if lower.starts_with(b"<?xml") {
        return Kind::Other("xml");
    }
    if csv::looks_like_text(bytes) {
        Kind::Text
    } else {
        Kind::Other("other")
    }
}

/// Reads a file by what it is.
pub fn read(bytes: &[u8], likeness: Likeness<'_>) -> Result<Book, Unreadable> {
    let blank = bytes.iter().all(|b| b.is_ascii_whitespace() || *b == 0);
    if blank {
        let with = if bytes.contains(&0) {
            "zeros"
        } else {
            "nothing"
        };
        return Err(Unreadable::new(
            say::found_empty_file(with),
            say::do_send_or_copy_again(),
        ));
    }
    if bytes.len() as u64 > LARGEST_FILE {
        return Err(Unreadable::beyond(Bound::File));
    }
    let mut book = match kind(bytes) {
        Kind::Zip => workbook::read_zip(bytes),
        Kind::Compound => workbook::read_compound(bytes),
        Kind::Text => csv::read(bytes, likeness),
        Kind::Other(what) => Err(Unreadable::new(
            say::found_other_kind(what),
            say::do_save_as_workbook(),
        )),
    }?;
    let rows: usize = book.sheets.iter().map(|sheet| sheet.rows.len()).sum();
    if rows > MOST_ROWS {
        return Err(Unreadable::beyond(Bound::Rows));
    }
    let mut rows = book.sheets.iter().flat_map(|sheet| &sheet.rows);
    if rows.any(|row| row.cells.len() > WIDEST_ROW) {
        return Err(Unreadable::beyond(Bound::Row));
    }
    letters::clean(&mut book);
    Ok(book)
}
