//! Bytes -> cells as written, each with its place: delimited text and workbooks alike.

pub mod csv;
pub mod workbook;

use chrono::NaiveDate;
use std::borrow::Cow;
use std::sync::Arc;

/// Files above this size are not read. Lab files are a thousand times smaller.
pub const LARGEST_FILE: u64 = 128 * 1024 * 1024;

/// Filled cells that one file may hold. The bounds together keep the reading of any file below 1 GiB of memory.
pub const MOST_CELLS: usize = 1 << 20;

/// Bytes of text that the cells of one file may hold together: a text that many cells share counts for each of them.
const MOST_TEXT: usize = 96 * 1024 * 1024;

/// Results that one file may give: each keeps its source and its settings.
pub const MOST_RESULTS: usize = 400_000;

/// Sheets that one file may have.
pub const MOST_SHEETS: usize = 1_000;

/// A file as cells.
#[derive(Clone, Debug, Default)]
pub struct Book {
    /// How the bytes were read, in words: "comma-delimited text, UTF-8".
    pub format: String,
    /// Sheets in their order; one without a name for a delimited file.
    pub sheets: Vec<Sheet>,
    /// Whether the text was in an encoding other than Unicode, so that letters beyond ASCII may be wrong.
    pub guessed_encoding: bool,
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
        match (self.cells.checked_sub(times), self.text.checked_sub(text)) {
            (Some(cells), Some(text)) => {
                *self = Room { cells, text };
                Ok(())
            }
            _ => Err(Unreadable::too_large()),
        }
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

/// Why a file cannot be read, and what to do, in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unreadable {
    /// What is wrong with it.
    pub message: String,
    /// What to do.
    pub hint: String,
}

impl Unreadable {
    /// Both sentences.
    pub fn new(message: impl Into<String>, hint: impl Into<String>) -> Unreadable {
        Unreadable {
            message: message.into(),
            hint: hint.into(),
        }
    }

    /// A file beyond what is read.
    pub fn too_large() -> Unreadable {
        Unreadable::new(
            format!(
                "the file is too large: at most {} MB, {MOST_SHEETS} sheets, a million filled cells and {} thousand results are read",
                LARGEST_FILE / (1024 * 1024),
                MOST_RESULTS / 1000
            ),
            "Ask the lab for a file that holds the results alone.",
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
    /// None of these; what it is, as far as can be told.
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
        return Kind::Other("a PDF");
    }
    let head = &bytes[..bytes.len().min(4096)];
    let lower: Vec<u8> = head.iter().map(u8::to_ascii_lowercase).collect();
    let says = |word: &[u8]| lower.windows(word.len()).any(|window| window == word);
    if says(b"<html") || (says(b"<table") && says(b"<tr")) {
        return Kind::Other("a web page");
    }
    if lower.starts_with(b"<?xml") {
        return Kind::Other("an XML file");
    }
    if csv::looks_like_text(bytes) {
        Kind::Text
    } else {
        Kind::Other("neither text nor a workbook")
    }
}

/// Reads a file by what it is.
pub fn read(bytes: &[u8]) -> Result<Book, Unreadable> {
    if bytes.iter().all(|b| b.is_ascii_whitespace() || *b == 0) {
        return Err(Unreadable::new(
            "the file is empty",
            "Ask the lab to send it again, or copy it again if the copy was cut short.",
        ));
    }
    match kind(bytes) {
        Kind::Zip => workbook::read_zip(bytes),
        Kind::Compound => workbook::read_compound(bytes),
        Kind::Text => csv::read(bytes),
        Kind::Other(what) => Err(Unreadable::new(
            format!(
                "the file is {what}, whatever its name says: it holds no table that can be read"
            ),
            "Ask the lab for the results as .csv or .xlsx, or open it in a spreadsheet program and save it as .xlsx.",
        )),
    }
}
