//! What a spreadsheet's cells hold and show.

use crate::gather::books::{Cell, Content, Merged, Room, Row, Sheet, Unreadable};
use calamine::{DataRef, ExcelDateTime, ExcelDateTimeType};
use chrono::{NaiveDate, NaiveDateTime};
use ssfmt::{FormatOptions, NumberFormat};
use std::collections::{BTreeMap, BTreeSet};

/// Hidden rows, joined cells and the like that are kept in mind of a sheet; beyond that they are not told.
const MOST_KEPT: usize = 200_000;

/// The cells of a sheet in any order, and what else is known of it. Rows and columns count from 1.
#[derive(Debug, Default)]
pub struct Cells {
    rows: BTreeMap<u32, Vec<Cell>>,
    hidden_rows: BTreeSet<u32>,
    merged: Vec<Merged>,
}

impl Cells {
    /// Adds a cell; an empty one is left out. Where a cell is named twice, the last one counts.
    pub fn add(
        &mut self,
        (row, column): (u32, u32),
        content: Option<Content>,
        room: &mut Room,
    ) -> Result<(), Unreadable> {
        let Some(content) = content else {
            return Ok(());
        };
        room.take(&content, 1)?;
        self.rows
            .entry(row)
            .or_default()
            .push(Cell { column, content });
        Ok(())
    }

    /// Adds rows that hold the same, the first of them at this row.
    pub fn add_rows(
        &mut self,
        first: u32,
        times: u32,
        cells: &[Cell],
        room: &mut Room,
    ) -> Result<(), Unreadable> {
        if cells.is_empty() {
            return Ok(());
        }
        for cell in cells {
            room.take(&cell.content, times as usize)?;
        }
        for row in first..first.saturating_add(times) {
            self.rows.insert(row, cells.to_vec());
        }
        Ok(())
    }

    /// Tells that the spreadsheet program does not show a row.
    pub fn hide(&mut self, row: u32) {
        if self.hidden_rows.len() < MOST_KEPT {
            self.hidden_rows.insert(row);
        }
    }

    /// Tells of cells that were joined.
    pub fn merge(&mut self, merged: Merged) {
        if self.merged.len() < MOST_KEPT
            && merged.top <= merged.bottom
            && merged.left <= merged.right
        {
            self.merged.push(merged);
        }
    }

    /// The sheet.
    pub fn into_sheet(self, name: String, hidden: bool) -> Sheet {
        let rows = self.rows.into_iter().map(|(number, mut cells)| {
            cells.reverse();
            cells.sort_by_key(|cell| cell.column);
            cells.dedup_by_key(|cell| cell.column);
            cells.shrink_to_fit();
            Row {
                number,
                hidden: self.hidden_rows.contains(&number),
                cells,
            }
        });
        Sheet {
            name: Some(name.into()),
            hidden,
            rows: rows.collect(),
            merged: self.merged,
        }
    }
}

/// What a cell holds; none where it shows nothing.
pub fn content(value: &DataRef<'_>, show: impl FnOnce(f64) -> String) -> Option<Content> {
    match value {
        DataRef::Empty => None,
        DataRef::String(s) => self::text(s),
        DataRef::SharedString(s) => self::text(s),
        DataRef::Int(n) => Some(Content::Number {
            value: *n as f64,
            shown: n.to_string().into(),
        }),
        DataRef::Float(value) if !value.is_finite() => Some(no_number()),
        DataRef::Float(value) => Some(Content::Number {
            value: *value,
            shown: show(*value).into(),
        }),
        DataRef::Bool(yes) => Some(Content::Text(if *yes { "TRUE" } else { "FALSE" }.into())),
        DataRef::DateTime(stamp) => Some(date(stamp)),
        DataRef::DateTimeIso(iso) => Some(Content::Date {
            day: iso.get(..10).and_then(|day| day.parse().ok()),
            shown: iso.as_str().into(),
        }),
        DataRef::DurationIso(iso) => Some(Content::Date {
            day: None,
            shown: iso.as_str().into(),
        }),
        DataRef::Error(error) => Some(Content::Fault(error.to_string().into())),
    }
}

/// Text without the space around it; none where that is all.
pub fn text(text: &str) -> Option<Content> {
    let text = text.trim_matches(crate::gather::text::is_space);
    (!text.is_empty()).then(|| Content::Text(text.into()))
}

/// What stands for a number that is none.
pub fn no_number() -> Content {
    Content::Fault("#NUM!".into())
}

fn date(stamp: &ExcelDateTime) -> Content {
    // A time alone is a moment before the first day that a spreadsheet counts.
    let moment: Option<NaiveDateTime> = if stamp.is_duration() || stamp.as_f64() < 1.0 {
        None
    } else {
        stamp.as_datetime()
    };
    let day: Option<NaiveDate> = moment.map(|moment| moment.date());
    Content::Date {
        day,
        shown: day
            .map_or_else(|| stamp.to_string(), |day| day.to_string())
            .into(),
    }
}

/// A number without a number format, with the 15 digits that a spreadsheet keeps.
pub fn general(value: f64) -> String {
    // Through the shorter decimal, so that 0.1 + 0.2 shows as 0.3.
    let rounded: f64 = format!("{value:.14e}").parse().unwrap_or(value);
    let size = rounded.abs();
    if size >= 1e15 || (size > 0.0 && size < 1e-9) {
        format!("{rounded:E}").replacen('E', if size >= 1.0 { "E+" } else { "E" }, 1)
    } else {
        rounded.to_string()
    }
}

/// The number formats of a workbook, each understood once.
#[derive(Default)]
pub struct Formats {
    understood: BTreeMap<usize, Option<Format>>,
}

struct Format {
    format: NumberFormat,
    is_date: bool,
    is_duration: bool,
}

impl Format {
    fn of(code: &str) -> Option<Format> {
        if code.is_empty() || code.eq_ignore_ascii_case("general") || code == "@" {
            return None;
        }
        let format = NumberFormat::parse(code).ok()?;
        let lower = code.to_ascii_lowercase();
        Some(Format {
            is_date: format.is_date_format(),
            is_duration: ["[h", "[m", "[s"].iter().any(|part| lower.contains(part)),
            format,
        })
    }

    fn show(&self, value: f64) -> String {
        self.format
            .format(value, &FormatOptions::default())
            .trim()
            .to_owned()
    }
}

impl Formats {
    /// A number as its style shows it. The code of the style's number format is asked for once.
    pub fn show<C: AsRef<str>>(
        &mut self,
        value: f64,
        style: usize,
        code: impl FnOnce() -> Option<C>,
    ) -> String {
        self.format(style, code)
            .map_or_else(|| general(value), |format| format.show(value))
    }

    /// What a number stands for under its style: itself, or a day.
    pub fn content<C: AsRef<str>>(
        &mut self,
        value: f64,
        style: usize,
        is_1904: bool,
        code: impl FnOnce() -> Option<C>,
    ) -> Content {
        if !value.is_finite() {
            return no_number();
        }
        match self.format(style, code) {
            Some(format) if format.is_date => {
                let kind = if format.is_duration {
                    ExcelDateTimeType::TimeDelta
                } else {
                    ExcelDateTimeType::DateTime
                };
                date(&ExcelDateTime::new(value, kind, is_1904))
            }
            Some(format) => Content::Number {
                value,
                shown: format.show(value).into(),
            },
            None => Content::Number {
                value,
                shown: general(value).into(),
            },
        }
    }

    fn format<C: AsRef<str>>(
        &mut self,
        style: usize,
        code: impl FnOnce() -> Option<C>,
    ) -> Option<&Format> {
        self.understood
            .entry(style)
            .or_insert_with(|| Format::of(code()?.as_ref()))
            .as_ref()
    }
}

/// The code of a number format that has no code in the file, by its number.
pub fn built_in_format(number: u16) -> Option<&'static str> {
    match number {
        // Days in the ways of East Asia.
        27..=36 | 50..=58 => Some("yyyy/m/d"),
        _ => ssfmt::format_code_from_id(number.into()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bare_number_shows_as_in_a_spreadsheet() {
        assert_eq!(general(12.4), "12.4");
        assert_eq!(general(0.1 + 0.2), "0.3");
        assert_eq!(general(123.0), "123");
        assert_eq!(general(4_012_345_678_901.0), "4012345678901", "a barcode");
        assert_eq!(general(2e16), "2E+16");
    }
}
