//! Workbooks -> cells: .xlsx, .xlsm, .xlsb, .ods and .xls, told apart by content.

mod archive;
mod cells;
mod inflate;
mod markup;
mod peek;

use crate::gather::tables::workbook::cells::{Cells, Formats, content, general};
use crate::gather::tables::workbook::inflate::Fault;
use crate::gather::tables::workbook::peek::Seen;
use crate::gather::tables::{Book, MOST_CELLS, Merged, Sheet, Unreadable};
use calamine::{
    Data, DataRef, Dimensions, Ods, OdsError, Reader, SheetType, SheetVisible, Xls, XlsError, Xlsb,
    XlsbError, Xlsx, XlsxError,
};
use std::io::Cursor;

/// Reads what is a ZIP archive: .xlsx, .xlsm, .xlsb, .ods.
pub fn read_zip(bytes: &[u8]) -> Result<Book, Unreadable> {
    let parts =
        archive::parts(bytes).ok_or_else(|| damaged(&"it has no directory of its parts"))?;
    let has = |name: &str| {
        parts
            .iter()
            .any(|part| part.name.eq_ignore_ascii_case(name))
    };
    peek::check_sizes(&parts).map_err(unbounded)?;
    if has("xl/workbook.bin") {
        read_xlsb(Xlsb::new(Cursor::new(bytes)).map_err(|error| damaged(&error))?)
    } else if has("content.xml") && has("mimetype") {
        let seen = peek::ods(&parts).map_err(unbounded)?;
        match Ods::new(Cursor::new(bytes)) {
            Ok(book) => read_ods(book, seen),
            Err(OdsError::Password) => Err(password()),
            Err(OdsError::CellLimitExceeded { .. }) => Err(Unreadable::too_large()),
            Err(OdsError::InvalidMime(_)) => Err(no_workbook()),
            Err(error) => Err(damaged(&error)),
        }
    } else if parts
        .iter()
        .any(|part| part.name.to_lowercase().starts_with("xl/"))
    {
        let seen = peek::xlsx(&parts).map_err(unbounded)?;
        read_xlsx(
            Xlsx::new(Cursor::new(bytes)).map_err(|error| damaged(&error))?,
            seen,
        )
    } else {
        Err(no_workbook())
    }
}

fn unbounded(fault: Fault) -> Unreadable {
    match fault {
        Fault::TooLarge => Unreadable::too_large(),
        Fault::Damaged => damaged(&"a part of it cannot be unpacked"),
    }
}

fn no_workbook() -> Unreadable {
    Unreadable::new(
        "the file is an archive or a document, whatever its name says, and no workbook",
        "Take the lab's file out of it, or ask the lab for the results as .csv or .xlsx.",
    )
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

/// The worksheets of a book: place among all sheets, name, whether hidden.
fn worksheets<R, RS>(book: &R) -> Vec<(usize, String, bool)>
where
    R: Reader<RS>,
    RS: std::io::Read + std::io::Seek,
{
    book.sheets_metadata()
        .iter()
        .enumerate()
        .filter(|(_, sheet)| sheet.typ == SheetType::WorkSheet)
        .map(|(index, sheet)| {
            (
                index,
                sheet.name.clone(),
                sheet.visible != SheetVisible::Visible,
            )
        })
        .collect()
}

fn read_xlsx(mut book: Xlsx<Cursor<&[u8]>>, seen: Vec<Seen>) -> Result<Book, Unreadable> {
    let mut room = MOST_CELLS;
    let mut sheets = Vec::new();
    let mut formats = Formats::default();
    let mut seen = seen;
    for (index, name, hidden) in worksheets(&book) {
        let seen = seen.get_mut(index).map(std::mem::take).unwrap_or_default();
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
            rows: cells.into_rows(&seen),
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
    for (_, name, hidden) in worksheets(&book) {
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
            rows: cells.into_rows(&Seen::default()),
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
    for (_, name, hidden) in worksheets(&book) {
        let seen = Seen {
            merged: book
                .merge_cells_by_sheet_name(&name)
                .map(|regions| merged(&regions))
                .unwrap_or_default(),
            ..Seen::default()
        };
        let range = book
            .worksheet_range(&name)
            .map_err(|error| damaged(&error))?;
        sheets.push(sheet_of_range(name, hidden, &range, seen, &mut room)?);
    }
    Ok(Book {
        format: "workbook (.xls)".to_owned(),
        sheets,
        guessed_encoding: false,
    })
}

fn read_ods(mut book: Ods<Cursor<&[u8]>>, seen: Vec<Seen>) -> Result<Book, Unreadable> {
    let mut room = MOST_CELLS;
    let mut sheets = Vec::new();
    let mut seen = seen;
    for (index, name, hidden) in worksheets(&book) {
        let seen = seen.get_mut(index).map(std::mem::take).unwrap_or_default();
        let range = book
            .worksheet_range(&name)
            .map_err(|error| damaged(&error))?;
        sheets.push(sheet_of_range(name, hidden, &range, seen, &mut room)?);
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
    seen: Seen,
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
        rows: cells.into_rows(&seen),
        merged: seen.merged,
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_no_workbook_is_said_in_words() {
        let cut = read_zip(b"PK\x03\x04 and then nothing").expect_err("is cut short");
        assert!(cut.message.contains("cut short"), "{cut:?}");
    }
}
