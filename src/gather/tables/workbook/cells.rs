//! What a spreadsheet's cells hold and show.

use crate::gather::tables::workbook::peek::Seen;
use crate::gather::tables::{Cell, Content, Row, Unreadable};
use calamine::{DataRef, ExcelDateTime, Style};
use chrono::{NaiveDate, NaiveDateTime};
use ssfmt::{FormatOptions, NumberFormat};
use std::collections::BTreeMap;

/// Cells in any order, with a bound on their number, as the rows of a sheet.
#[derive(Default)]
pub struct Cells {
    rows: BTreeMap<u32, Vec<Cell>>,
}

impl Cells {
    /// Adds a cell at a place counted from 0; an empty one is left out.
    pub fn add(
        &mut self,
        (row, column): (u32, u32),
        content: Option<Content>,
        room: &mut usize,
    ) -> Result<(), Unreadable> {
        let Some(content) = content else {
            return Ok(());
        };
        *room = room.checked_sub(1).ok_or_else(Unreadable::too_large)?;
        let cell = Cell {
            column: column.saturating_add(1),
            content,
        };
        self.rows
            .entry(row.saturating_add(1))
            .or_default()
            .push(cell);
        Ok(())
    }

    /// The rows, with what was seen of the sheet besides.
    pub fn into_rows(mut self, seen: &Seen) -> Vec<Row> {
        for (row, column) in &seen.uncalculated {
            let cells = self.rows.entry(*row).or_default();
            cells.retain(|cell| cell.column != *column);
            cells.push(Cell {
                column: *column,
                content: Content::Uncalculated,
            });
        }
        self.rows
            .into_iter()
            .map(|(number, mut cells)| {
                // A hostile file may name a cell twice: the last one counts, as in a spreadsheet program.
                cells.reverse();
                cells.sort_by_key(|cell| cell.column);
                cells.dedup_by_key(|cell| cell.column);
                for cell in &mut cells {
                    if let Content::Number { shown, .. } = &mut cell.content
                        && let Some(text) = seen.shown.get(&(number, cell.column))
                    {
                        *shown = text.trim().into();
                    }
                }
                Row {
                    number,
                    hidden: seen.hidden_rows.contains(&number),
                    cells,
                }
            })
            .collect()
    }
}

/// What a cell holds; none where it shows nothing.
pub fn content(value: &DataRef<'_>, show: impl FnOnce(f64) -> String) -> Option<Content> {
    let text = |text: &str| {
        let text = text.trim_matches(crate::gather::text::is_space);
        (!text.is_empty()).then(|| Content::Text(text.into()))
    };
    match value {
        DataRef::Empty => None,
        DataRef::String(s) => text(s),
        DataRef::SharedString(s) => text(s),
        DataRef::Int(n) => Some(Content::Number {
            value: *n as f64,
            shown: n.to_string().into(),
        }),
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

/// The number formats of a workbook, each parsed once.
#[derive(Default)]
pub struct Formats {
    parsed: BTreeMap<usize, Option<NumberFormat>>,
}

impl Formats {
    /// A number as its style shows it.
    pub fn show(&mut self, value: f64, style: usize, styles: &[Style]) -> String {
        let format = self.parsed.entry(style).or_insert_with(|| {
            let code = styles
                .get(style)?
                .number_format
                .as_ref()?
                .format_code
                .as_str();
            let plain = code.is_empty() || code.eq_ignore_ascii_case("general") || code == "@";
            if plain {
                return None;
            }
            NumberFormat::parse(code).ok()
        });
        match format {
            Some(format) => format
                .format(value, &FormatOptions::default())
                .trim()
                .to_owned(),
            None => general(value),
        }
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
