//! How a lab file was understood: what `check --explain` shows, so that a user can come to trust the reading.

use crate::model::place::Source;

/// One lab file.
#[derive(Clone, Debug, Default)]
pub struct Understanding {
    /// Path below the programme folder.
    pub file: String,
    /// How its bytes were read: "comma-delimited text, UTF-8", "xlsx workbook".
    pub format: String,
    /// The tables that were recognised.
    pub tables: Vec<UnderstoodTable>,
    /// Sheets or files without a table, and why.
    pub passed_over: Vec<String>,
}

/// One table of a lab file.
#[derive(Clone, Debug, Default)]
pub struct UnderstoodTable {
    /// Name of the sheet; none in a delimited file.
    pub sheet: Option<String>,
    /// Row of the (first) heading, as the spreadsheet shows it.
    pub heading_row: u32,
    /// "long" or "wide", and anything else that governs the reading (unit, LLOQ, layout).
    pub shape: Vec<String>,
    /// Heading as written, its column's letter, and what it was taken for.
    pub columns: Vec<UnderstoodColumn>,
    /// Each row of the table, in order.
    pub rows: Vec<UnderstoodRow>,
}

/// One column of a table.
#[derive(Clone, Debug, Default)]
pub struct UnderstoodColumn {
    /// `C`.
    pub letter: String,
    /// As written.
    pub heading: String,
    /// "sample", "result of extraction 1", "not used" …
    pub taken_for: String,
}

/// One row of a table.
#[derive(Clone, Debug)]
pub struct UnderstoodRow {
    /// Row as the spreadsheet shows it.
    pub row: u32,
    /// The package, as written.
    pub sample: String,
    /// The reading in words ("extraction 2: 12.4 ppm"), or why the row gave none.
    pub outcome: String,
    /// The cell of its result, where it gave a reading: links the row to what became of it.
    pub source: Option<Source>,
}
