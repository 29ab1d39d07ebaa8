//! Where a figure or a problem stands, as the spreadsheet program shows it.

use std::fmt;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// A lab file, by its path and content.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct LabFile {
    /// Path below the programme folder as it is shown, with `/`: `inbox/2031/march.csv`. Composed, and with bytes that are no
    /// UTF-8, and letters that command, as %XX; no file is opened by it.
    pub path: String,
    /// SHA-256 of the bytes, lower-case hexadecimal.
    pub sha256: String,
    /// Path below the programme folder by which the file is opened: its own name, byte for byte. Empty means the shown one.
    pub opened_as: PathBuf,
}

impl LabFile {
    /// Where to open the file, in the programme folder `root`.
    pub fn real_path(&self, root: &Path) -> PathBuf {
        if self.opened_as.as_os_str().is_empty() {
            root.join(&self.path)
        } else {
            root.join(&self.opened_as)
        }
    }
}

/// A cell, a row, a sheet or a whole file.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// Path below the programme folder, with `/`.
    pub file: String,
    /// Name of the sheet; none in a delimited file.
    pub sheet: Option<String>,
    /// Row as the spreadsheet shows it, from 1; in a delimited file the line on which the record starts.
    pub row: Option<u32>,
    /// Column, from 1; shown as a letter.
    pub column: Option<u32>,
}

impl Place {
    /// A whole file.
    pub fn file(path: impl Into<String>) -> Place {
        Place {
            file: path.into(),
            ..Place::default()
        }
    }

    /// The column as its letter, `C`.
    pub fn column_letter(&self) -> Option<String> {
        self.column.map(column_letter)
    }

    /// The cell as a spreadsheet names it, `C7`; the row alone where no column is known.
    pub fn cell(&self) -> Option<String> {
        let row = self.row?;
        Some(match self.column_letter() {
            Some(letter) => format!("{letter}{row}"),
            None => format!("row {row}"),
        })
    }
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.file)?;
        if let Some(sheet) = &self.sheet {
            write!(f, ", sheet “{sheet}”")?;
        }
        match (self.row, self.column_letter()) {
            (Some(row), Some(letter)) => write!(f, ", cell {letter}{row}"),
            (Some(row), None) => write!(f, ", row {row}"),
            (None, Some(letter)) => write!(f, ", column {letter}"),
            (None, None) => Ok(()),
        }
    }
}

/// A figure's way back: the cell of a lab file that holds it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Source {
    /// The file that holds the cell.
    pub file: Arc<LabFile>,
    /// Name of the sheet; none in a delimited file.
    pub sheet: Option<Arc<str>>,
    /// Row as the spreadsheet shows it, from 1.
    pub row: u32,
    /// Column of the result, from 1.
    pub column: u32,
}

impl Source {
    /// The place of the cell, for a message.
    pub fn place(&self) -> Place {
        Place {
            file: self.file.path.clone(),
            sheet: self.sheet.as_deref().map(str::to_owned),
            row: Some(self.row),
            column: Some(self.column),
        }
    }
}

/// The letter of a column counted from 1: 1 is `A`, 27 is `AA`.
pub fn column_letter(column: u32) -> String {
    let mut rest = column;
    let mut letters = Vec::new();
    while rest > 0 {
        let digit = (rest - 1) % 26;
        letters.push(char::from(b'A' + digit as u8));
        rest = (rest - 1) / 26;
    }
    letters.iter().rev().collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_are_named_as_in_a_spreadsheet() {
        let names: Vec<_> = [1, 26, 27, 52, 703]
            .into_iter()
            .map(column_letter)
            .collect();
        assert_eq!(names, ["A", "Z", "AA", "AZ", "AAA"]);
    }

    #[test]
    fn a_place_reads_as_one_would_say_it() {
        let cell = Place {
            file: "inbox/a.xlsx".into(),
            sheet: Some("Results".into()),
            row: Some(7),
            column: Some(3),
        };
        assert_eq!(cell.to_string(), "inbox/a.xlsx, sheet “Results”, cell C7");
        assert_eq!(Place::file("inbox/b.csv").to_string(), "inbox/b.csv");
    }
}
