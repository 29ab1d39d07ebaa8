//! What a spreadsheet's cells hold and show.

use crate::gather::books::bounds::{Bound, LONGEST_FORMAT, MOST_KEPT, MOST_REPEATS};
use crate::gather::books::letters::is_space;
use crate::gather::books::{Cell, Content, Merged, Room, Row, Sheet, Unreadable};
use crate::guard::guarded;
use chrono::{Days, NaiveDate};
use ssfmt::{FormatOptions, NumberFormat};
use std::collections::{BTreeMap, BTreeSet};

/// The cells of a sheet in any order, and what else is known of it. Rows and columns count from 1.
#[derive(Debug, Default)]
pub struct Cells {
    /// Rows as they come; one may come in several parts.
    rows: Vec<(u32, Vec<Cell>)>,
    hidden_rows: BTreeSet<u32>,
    hidden_columns: Vec<(u32, u32)>,
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
        let cell = Cell { column, content };
        match self.rows.last_mut() {
            Some((number, cells)) if *number == row => cells.push(cell),
            _ => self.rows.push((row, vec![cell])),
        }
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
        if times > MOST_REPEATS {
            return Err(Unreadable::beyond(Bound::Repeats));
        }
        for cell in cells {
            room.take(&cell.content, times as usize)?;
        }
        for row in first..first.saturating_add(times) {
            self.rows.push((row, cells.to_vec()));
        }
        Ok(())
    }

    /// Tells that the spreadsheet program does not show a row.
    pub fn hide(&mut self, row: u32) {
        if self.hidden_rows.len() < MOST_KEPT {
            self.hidden_rows.insert(row);
        }
    }

    /// Tells that the spreadsheet program does not show these columns, ends included.
    pub fn hide_columns(&mut self, first: u32, last: u32) {
        const MOST: usize = 1_000;
        if self.hidden_columns.len() < MOST && first <= last {
            self.hidden_columns.push((first, last));
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
        let mut parts = self.rows;
        if !parts.is_sorted_by(|a, b| a.0 < b.0) {
            // Equal rows stay in the order in which they came.
            parts.sort_by_key(|(number, _)| *number);
        }
        let mut rows: Vec<Row> = Vec::with_capacity(parts.len());
        for (number, cells) in parts {
            match rows.last_mut() {
                Some(row) if row.number == number => row.cells.extend(cells),
                _ => rows.push(Row {
                    number,
                    hidden: self.hidden_rows.contains(&number),
                    cells,
                }),
            }
        }
        for row in &mut rows {
            if !row.cells.is_sorted_by(|a, b| a.column < b.column) {
                row.cells.reverse();
                row.cells.sort_by_key(|cell| cell.column);
                row.cells.dedup_by_key(|cell| cell.column);
            }
            row.cells.shrink_to_fit();
        }
        Sheet {
            name: Some(name.into()),
            hidden,
            rows,
            merged: self.merged,
            hidden_columns: self.hidden_columns,
        }
    }
}

/// Text without the space around it; none where that is all.
pub fn text(text: &str) -> Option<Content> {
    let text = text.trim_matches(is_space);
    (!text.is_empty()).then(|| Content::Text(text.into()))
}

/// What stands for a number that is none.
pub fn no_number() -> Content {
    Content::Fault("#NUM!".into())
}

/// A day, or a time alone: a moment before the first day that a spreadsheet counts, or a span.
fn date(value: f64, is_1904: bool, is_duration: bool) -> Content {
    let day = if is_duration || value < 1.0 {
        None
    } else {
        day(value, is_1904)
    };
    Content::Date {
        day,
        shown: day
            .map_or_else(|| value.to_string(), |day| day.to_string())
            .into(),
    }
}

/// The day of a serial number (ECMA-376 part 1, 18.17.4.1). Counted from 1900, the programs have a 29 February 1900 that
/// never was, so that the days before it are one off.
fn day(value: f64, is_1904: bool) -> Option<NaiveDate> {
    const DAYS_FROM_1900_TO_1904: f64 = 1462.0;
    const MILLISECONDS: f64 = 24.0 * 60.0 * 60.0 * 1000.0;
    const MOST_DAYS: f64 = 2_958_466.0; // the year 10000
    let serial = if is_1904 {
        value + DAYS_FROM_1900_TO_1904
    } else {
        value
    };
    let serial = if serial >= 60.0 { serial } else { serial + 1.0 };
    // A moment is kept in parts of a day: the last half millisecond of a day is the next one.
    let days = ((serial * MILLISECONDS).round() / MILLISECONDS).floor();
    if !(0.0..MOST_DAYS).contains(&days) {
        return None;
    }
    NaiveDate::from_ymd_opt(1899, 12, 30)?.checked_add_days(Days::new(days as u64))
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
        // What is longer than any program writes would take time that grows with its square.
        if code.chars().nth(LONGEST_FORMAT).is_some() {
            return None;
        }
        let format = guarded(|| NumberFormat::parse(code).ok()).flatten()?;
        let lower = code.to_ascii_lowercase();
        Some(Format {
            is_date: format.is_date_format(),
            is_duration: ["[h", "[m", "[s"].iter().any(|part| lower.contains(part)),
            format,
        })
    }

    /// A number under this format; without it where the format cannot be followed.
    fn show(&self, value: f64) -> String {
        let shown = guarded(|| self.format.format(value, &FormatOptions::default()));
        shown.map_or_else(|| general(value), |shown| shown.trim().to_owned())
    }
}

impl Formats {
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
            Some(format) if format.is_date => date(value, is_1904, format.is_duration),
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
    fn days_by_their_numbers() {
        let told = |value, is_1904| day(value, is_1904).map(|day| day.to_string());
        assert_eq!(told(1.0, false).as_deref(), Some("1900-01-01"));
        assert_eq!(told(61.0, false).as_deref(), Some("1900-03-01"));
        assert_eq!(told(47_914.75, false).as_deref(), Some("2031-03-07"));
        assert_eq!(told(46_452.0, true).as_deref(), Some("2031-03-07"));
        assert_eq!(told(2_958_465.0, false).as_deref(), Some("9999-12-31"));
        assert_eq!(told(1e300, false), None);
    }

    #[test]
    fn a_format_that_cannot_be_followed_costs_the_format_alone() {
        let long = "0.".to_owned() + &"0".repeat(1 << 20);
        for code in ["\u{e9}[x]General", long.as_str(), "[[[", "\u{1f600}[\u{e9}"] {
            let content = Formats::default().content(17.5, 0, false, || Some(code));
            assert!(
                matches!(content, Content::Number { value, .. } if value == 17.5),
                "{code:.20}"
            );
        }
        let mut formats = Formats::default();
        let shown = formats.content(17.5, 0, false, || Some(long.as_str()));
        assert_eq!(shown.shown(), "17.5");
    }

    #[test]
    fn a_bare_number_shows_as_in_a_spreadsheet() {
        assert_eq!(general(12.4), "12.4");
        assert_eq!(general(0.1 + 0.2), "0.3");
        assert_eq!(general(123.0), "123");
        assert_eq!(general(4_012_345_678_901.0), "4012345678901", "a barcode");
        assert_eq!(general(2e16), "2E+16");
    }
}
