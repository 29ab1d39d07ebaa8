//! Workbooks -> cells: .xlsx, .xlsm, .xlsb, .ods and .xls, told apart by content.

use crate::gather::tables::{Book, Cell, Content, MOST_CELLS, Merged, Row, Sheet, Unreadable};
use calamine::{
    Data, DataRef, Dimensions, ExcelDateTime, Ods, OdsError, Reader, SheetType, SheetVisible,
    Style, Xls, XlsError, Xlsb, XlsbError, Xlsx, XlsxError,
};
use chrono::{NaiveDate, NaiveDateTime};
use ssfmt::{FormatOptions, NumberFormat};
use std::collections::BTreeMap;
use std::io::Cursor;

/// Reads what is a ZIP archive: .xlsx, .xlsm, .xlsb, .ods.
pub fn read_zip(bytes: &[u8]) -> Result<Book, Unreadable> {
    match Xlsx::new(Cursor::new(bytes)) {
        Ok(book) => read_xlsx(book),
        Err(first) => {
            if let Ok(book) = Ods::new(Cursor::new(bytes)) {
                return read_ods(book);
            }
            match (Xlsb::new(Cursor::new(bytes)), Ods::new(Cursor::new(bytes))) {
                (Ok(book), _) => read_xlsb(book),
                (_, Err(OdsError::Password)) => Err(password()),
                (_, Err(OdsError::CellLimitExceeded { .. })) => Err(Unreadable::too_large()),
                _ => Err(damaged(&first)),
            }
        }
    }
}

/// Reads what is a compound file: .xls, or a workbook that a password protects.
pub fn read_compound(bytes: &[u8]) -> Result<Book, Unreadable> {
    if matches!(Xlsx::new(Cursor::new(bytes)), Err(XlsxError::Password))
        || matches!(Xlsb::new(Cursor::new(bytes)), Err(XlsbError::Password))
    {
        return Err(password());
    }
    match Xls::new(Cursor::new(bytes)) {
        Ok(book) => read_xls(book),
        Err(XlsError::Password) => Err(password()),
        Err(error) => Err(damaged(&error)),
    }
}

fn password() -> Unreadable {
    Unreadable::new(
        "the workbook is protected by a password",
        "Ask the lab for a copy without one, or open it with the password and save it without.",
    )
}

fn damaged(error: &dyn std::fmt::Display) -> Unreadable {
    Unreadable::new(
        format!("the workbook is damaged, cut short, or of a kind that is not known ({error})"),
        "Copy it again from the lab's message, or ask the lab to send it again.",
    )
}

/// Cells in any order, with a bound on their number, as the rows of a sheet.
#[derive(Default)]
struct Cells {
    rows: BTreeMap<u32, Vec<Cell>>,
}

impl Cells {
    /// Adds a cell at a place counted from 0; an empty one is left out.
    fn add(
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

    fn into_rows(self) -> Vec<Row> {
        self.rows
            .into_iter()
            .map(|(number, mut cells)| {
                cells.sort_by_key(|cell| cell.column);
                cells.dedup_by_key(|cell| cell.column);
                Row {
                    number,
                    hidden: false,
                    cells,
                }
            })
            .collect()
    }
}

fn worksheets<R, RS>(book: &R) -> Vec<(String, bool)>
where
    R: Reader<RS>,
    RS: std::io::Read + std::io::Seek,
{
    book.sheets_metadata()
        .iter()
        .filter(|sheet| sheet.typ == SheetType::WorkSheet)
        .map(|sheet| (sheet.name.clone(), sheet.visible != SheetVisible::Visible))
        .collect()
}

fn read_xlsx(mut book: Xlsx<Cursor<&[u8]>>) -> Result<Book, Unreadable> {
    let mut room = MOST_CELLS;
    let mut sheets = Vec::new();
    let mut formats = Formats::default();
    for (name, hidden) in worksheets(&book) {
        let merged = book
            .merge_cells_by_sheet_name(&name)
            .map(|regions| merged(&regions))
            .unwrap_or_default();
        let mut cells = Cells::default();
        let mut reader = match book.worksheet_cells_reader(&name) {
            Ok(reader) => reader,
            Err(XlsxError::NotAWorksheet(_)) => continue,
            Err(error) => return Err(damaged(&error)),
        };
        loop {
            let (cell, style) = match reader.next_cell_with_style_id() {
                Ok(Some(next)) => next,
                Ok(None) => break,
                Err(error) => return Err(damaged(&error)),
            };
            let content = content(cell.get_value(), |value| {
                formats.show(value, style, reader.styles())
            });
            cells.add(cell.get_position(), content, &mut room)?;
        }
        sheets.push(Sheet {
            name: Some(name.into()),
            hidden,
            rows: cells.into_rows(),
            merged,
        });
    }
    Ok(Book {
        format: "workbook (.xlsx)".to_owned(),
        sheets,
        guessed_encoding: false,
    })
}

fn read_xlsb(mut book: Xlsb<Cursor<&[u8]>>) -> Result<Book, Unreadable> {
    let mut room = MOST_CELLS;
    let mut sheets = Vec::new();
    for (name, hidden) in worksheets(&book) {
        let mut cells = Cells::default();
        let mut reader = book
            .worksheet_cells_reader(&name)
            .map_err(|error| damaged(&error))?;
        while let Some(cell) = reader.next_cell().map_err(|error| damaged(&error))? {
            cells.add(
                cell.get_position(),
                content(cell.get_value(), general),
                &mut room,
            )?;
        }
        sheets.push(Sheet {
            name: Some(name.into()),
            hidden,
            rows: cells.into_rows(),
            merged: Vec::new(),
        });
    }
    Ok(Book {
        format: "workbook (.xlsb)".to_owned(),
        sheets,
        guessed_encoding: false,
    })
}

fn read_xls(mut book: Xls<Cursor<&[u8]>>) -> Result<Book, Unreadable> {
    let mut room = MOST_CELLS;
    let mut sheets = Vec::new();
    for (name, hidden) in worksheets(&book) {
        let merged = book
            .merge_cells_by_sheet_name(&name)
            .map(|regions| merged(&regions))
            .unwrap_or_default();
        let range = book
            .worksheet_range(&name)
            .map_err(|error| damaged(&error))?;
        sheets.push(sheet_of_range(name, hidden, &range, merged, &mut room)?);
    }
    Ok(Book {
        format: "workbook (.xls)".to_owned(),
        sheets,
        guessed_encoding: false,
    })
}

fn read_ods(mut book: Ods<Cursor<&[u8]>>) -> Result<Book, Unreadable> {
    let mut room = MOST_CELLS;
    let mut sheets = Vec::new();
    for (name, hidden) in worksheets(&book) {
        let range = book
            .worksheet_range(&name)
            .map_err(|error| damaged(&error))?;
        sheets.push(sheet_of_range(name, hidden, &range, Vec::new(), &mut room)?);
    }
    Ok(Book {
        format: "workbook (.ods)".to_owned(),
        sheets,
        guessed_encoding: false,
    })
}

fn sheet_of_range(
    name: String,
    hidden: bool,
    range: &calamine::Range<Data>,
    merged: Vec<Merged>,
    room: &mut usize,
) -> Result<Sheet, Unreadable> {
    let mut cells = Cells::default();
    // A range starts at its first used cell, wherever that is.
    let (top, left) = range.start().unwrap_or_default();
    for (row, column, value) in range.used_cells() {
        let place = (top + row as u32, left + column as u32);
        cells.add(place, content(&borrowed(value), general), room)?;
    }
    Ok(Sheet {
        name: Some(name.into()),
        hidden,
        rows: cells.into_rows(),
        merged,
    })
}

fn borrowed(value: &Data) -> DataRef<'_> {
    match value {
        Data::Int(n) => DataRef::Int(*n),
        Data::Float(n) => DataRef::Float(*n),
        Data::String(text) => DataRef::SharedString(text),
        Data::Bool(yes) => DataRef::Bool(*yes),
        Data::DateTime(stamp) => DataRef::DateTime(*stamp),
        Data::DateTimeIso(iso) => DataRef::DateTimeIso(iso.clone()),
        Data::DurationIso(iso) => DataRef::DurationIso(iso.clone()),
        Data::Error(error) => DataRef::Error(error.clone()),
        Data::Empty => DataRef::Empty,
    }
}

fn merged(regions: &[Dimensions]) -> Vec<Merged> {
    regions
        .iter()
        .map(|region| Merged {
            top: region.start.0.saturating_add(1),
            bottom: region.end.0.saturating_add(1),
            left: region.start.1.saturating_add(1),
            right: region.end.1.saturating_add(1),
        })
        .collect()
}

/// What a cell holds; none where it shows nothing.
fn content(value: &DataRef<'_>, show: impl FnOnce(f64) -> String) -> Option<Content> {
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
fn general(value: f64) -> String {
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
struct Formats {
    parsed: BTreeMap<usize, Option<NumberFormat>>,
}

impl Formats {
    /// A number as its style shows it.
    fn show(&mut self, value: f64, style: usize, styles: &[Style]) -> String {
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

    #[test]
    fn what_is_no_workbook_is_said_in_words() {
        let cut = read_zip(b"PK\x03\x04 and then nothing").expect_err("is cut short");
        assert!(cut.message.contains("cut short"), "{cut:?}");
    }
}
