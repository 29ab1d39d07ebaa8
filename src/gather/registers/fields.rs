//! A register as rows of named fields, and the checks that any field may need.

use crate::gather::books::{Book, Content, Row, Sheet};
use crate::gather::dates;
use crate::gather::text;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// A register: its columns by name, and the rows below them.
pub struct Table {
    file: String,
    sheet: Sheet,
    heading_row: u32,
    columns: BTreeMap<String, u32>,
}

impl Table {
    /// The first sheet of a book; the first row that holds something has the headings.
    pub fn new(file: String, book: Book) -> Table {
        let sheet = book.sheets.into_iter().next().unwrap_or_default();
        let mut columns = BTreeMap::new();
        let mut heading_row = 1;
        if let Some(row) = sheet.rows.first() {
            heading_row = row.number;
            for cell in &row.cells {
                let name = text::plain(&cell.content.shown())
                    .to_lowercase()
                    .replace([' ', '-'], "_");
                columns.entry(name).or_insert(cell.column);
            }
        }
        Table {
            file,
            sheet,
            heading_row,
            columns,
        }
    }

    /// A register without anything.
    pub fn empty(file: String) -> Table {
        Table::new(file, Book::default())
    }

    /// Whether it has this column.
    pub fn has(&self, column: &str) -> bool {
        self.columns.contains_key(column)
    }

    /// Names every column that is needed and is not there; whether all are.
    pub fn needs(&self, columns: &[&str], problems: &mut Problems) -> bool {
        let missing: Vec<&str> = columns
            .iter()
            .copied()
            .filter(|column| !self.has(column))
            .collect();
        if self.columns.is_empty() {
            return false;
        }
        for column in &missing {
            problems.add(
                Code::RegisterError,
                Place {
                    file: self.file.clone(),
                    sheet: self.sheet_name(),
                    row: Some(self.heading_row),
                    column: None,
                },
                format!("the register has no column “{column}”, which is needed"),
                format!("Add a column with the heading {column}."),
            );
        }
        missing.is_empty()
    }

    fn sheet_name(&self) -> Option<String> {
        self.sheet.name.as_deref().map(str::to_owned)
    }

    /// Its rows, each as named fields.
    pub fn rows(&self) -> impl Iterator<Item = Fields<'_>> {
        self.sheet
            .rows
            .iter()
            .skip(1)
            .map(|row| Fields { table: self, row })
    }
}

/// One row of a register.
pub struct Fields<'a> {
    table: &'a Table,
    row: &'a Row,
}

impl Fields<'_> {
    /// Where the row stands.
    pub fn place(&self) -> Place {
        Place {
            file: self.table.file.clone(),
            sheet: self.table.sheet_name(),
            row: Some(self.row.number),
            column: None,
        }
    }

    /// Where a field stands.
    pub fn place_of(&self, column: &str) -> Place {
        Place {
            column: self.table.columns.get(column).copied(),
            ..self.place()
        }
    }

    /// Adds a problem with a field.
    pub fn fault(
        &self,
        column: &str,
        message: impl Into<String>,
        hint: impl Into<String>,
        problems: &mut Problems,
    ) {
        problems.add(Code::RegisterError, self.place_of(column), message, hint);
    }

    fn content(&self, column: &str) -> Option<&Content> {
        self.row.at(*self.table.columns.get(column)?)
    }

    /// A field as text. What a spreadsheet could take for a formula is kept, with a warning.
    pub fn text(&self, column: &str, problems: &mut Problems) -> Option<String> {
        let content = self.content(column)?;
        let written = content.shown().into_owned();
        if matches!(content, Content::Fault(_) | Content::Uncalculated) {
            self.fault(
                column,
                format!("“{written}” is a spreadsheet's error"),
                "Mend the cell.",
                problems,
            );
            return None;
        }
        let formula = written.starts_with(['=', '+', '-', '@'])
            && written.chars().count() > 1
            && written.parse::<f64>().is_err();
        if formula {
            problems.add(
                Code::Suspicious,
                self.place_of(column),
                format!(
                    "“{}” starts like a spreadsheet formula; it is kept as text",
                    text::short(&written)
                ),
                "If it should not be there, mend the cell.",
            );
        }
        Some(written)
    }

    /// A field that must say something.
    pub fn needed(&self, column: &str, problems: &mut Problems) -> Option<String> {
        let found = self.text(column, problems);
        if found.is_none()
            && !matches!(
                self.content(column),
                Some(Content::Fault(_) | Content::Uncalculated)
            )
        {
            self.fault(
                column,
                format!("“{column}” is blank, but it is needed; the row is not used"),
                "Fill it in.",
                problems,
            );
        }
        found
    }

    /// A day; a fault where something stands there that is none.
    pub fn day(&self, column: &str, problems: &mut Problems) -> Option<NaiveDate> {
        let content = self.content(column)?;
        let day = match content {
            Content::Date { day, .. } => *day,
            Content::Text(written) => dates::day(written),
            _ => None,
        };
        if day.is_none() {
            self.fault(
                column,
                format!(
                    "“{}” is no day, or can be two different ones",
                    text::short(&content.shown())
                ),
                "Write it as 2031-03-07.",
                problems,
            );
        }
        day
    }

    /// A day that must be there.
    pub fn needed_day(&self, column: &str, problems: &mut Problems) -> Option<NaiveDate> {
        if self.content(column).is_none() {
            self.needed(column, problems);
            return None;
        }
        self.day(column, problems)
    }

    /// One of several words; the default where it is blank, and a fault and the default where it is another word.
    pub fn word<T: Copy>(
        &self,
        column: &str,
        words: &[(T, &str)],
        problems: &mut Problems,
    ) -> Option<T> {
        let written = self.text(column, problems)?;
        let folded = text::plain(&written)
            .to_lowercase()
            .replace([' ', '_'], "-");
        let found = words
            .iter()
            .find(|(_, word)| *word == folded)
            .map(|(value, _)| *value);
        if found.is_none() {
            let known: Vec<&str> = words.iter().map(|(_, word)| *word).collect();
            self.fault(
                column,
                format!(
                    "“{}” is not a word that “{column}” can have",
                    text::short(&written)
                ),
                format!("Write one of these: {}.", known.join(", ")),
                problems,
            );
        }
        found
    }

    /// A whole number from 1.
    pub fn count(&self, column: &str, problems: &mut Problems) -> Result<Option<u32>, ()> {
        let Some(written) = self.text(column, problems) else {
            return Ok(None);
        };
        match text::plain(&written).parse::<u32>() {
            Ok(number) if (1..=9999).contains(&number) => Ok(Some(number)),
            _ => {
                self.fault(
                    column,
                    format!("“{}” is no whole number from 1", text::short(&written)),
                    "Write 1, 2, 3 …",
                    problems,
                );
                Err(())
            }
        }
    }
}
