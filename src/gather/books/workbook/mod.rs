//! Workbooks -> cells: .xlsx, .xlsm, .xlsb, .ods and .xls, told apart by content.
//!
//! A library reads .xlsx, cell by cell, once `peek` has seen that it can. It would read the other kinds as well, but only
//! as rectangles of cells, blank ones too, as large as a file claims; so these have short readers here.

mod archive;
mod binary;
mod cells;
mod compound;
mod markup;
mod ods;
mod peek;
mod shared;
mod xls;
mod xlsb;

use crate::gather::books::workbook::archive::{Archive, Fault};
use crate::gather::books::workbook::cells::{Cells, Formats, content};
use crate::gather::books::workbook::peek::Seen;
use crate::gather::books::{Book, Content, MOST_SHEETS, Merged, Room, Sheet, Unreadable};
use calamine::{Reader, SheetType, SheetVisible, Xlsx, XlsxError};
use std::io::Cursor;

/// Reads what is a ZIP archive: .xlsx, .xlsm, .xlsb, .ods.
pub fn read_zip(bytes: &[u8]) -> Result<Book, Unreadable> {
    let mut archive = Archive::open(bytes).map_err(told)?;
    if archive.has("xl/workbook.bin") {
        xlsb::read(&mut archive)
    } else if archive.has("content.xml") && archive.has("mimetype") {
        ods::read(&mut archive)
    } else if archive.has_folder("xl/") {
        let seen = peek::xlsx(&mut archive).map_err(told)?;
        drop(archive);
        let book = Xlsx::new(Cursor::new(bytes)).map_err(|_| told(Fault::Damaged))?;
        read_xlsx(book, seen)
    } else {
        Err(no_workbook())
    }
}

/// Reads what is a compound file: .xls, or a workbook that a password protects.
pub fn read_compound(bytes: &[u8]) -> Result<Book, Unreadable> {
    xls::read(bytes)
}

/// A fault, as a person is told of it.
fn told(fault: Fault) -> Unreadable {
    match fault {
        Fault::TooLarge => Unreadable::too_large(),
        Fault::Damaged => Unreadable::new(
            "the workbook is damaged or cut short",
            "Copy it again from the lab's message, or ask the lab to send it again.",
        ),
        Fault::Password => Unreadable::new(
            "the workbook is protected by a password",
            "Ask the lab for a copy without one, or open it with the password and save it without.",
        ),
    }
}

fn no_workbook() -> Unreadable {
    Unreadable::new(
        "the file is an archive or a document, whatever its name says, and no workbook",
        "Take the lab's file out of it, or ask the lab for the results as .csv or .xlsx.",
    )
}

fn read_xlsx(mut book: Xlsx<Cursor<&[u8]>>, seen: Vec<Seen>) -> Result<Book, Unreadable> {
    let mut room = Room::default();
    let mut formats = Formats::default();
    let worksheets: Vec<(usize, String, bool)> = book
        .sheets_metadata()
        .iter()
        .enumerate()
        .filter(|(_, sheet)| sheet.typ == SheetType::WorkSheet)
        .map(|(index, sheet)| {
            let hidden = sheet.visible != SheetVisible::Visible;
            (index, sheet.name.clone(), hidden)
        })
        .collect();
    if worksheets.len() > MOST_SHEETS {
        return Err(Unreadable::too_large());
    }
    let mut sheets = Vec::new();
    let mut seen = seen;
    for (index, name, hidden) in worksheets {
        let seen = seen.get_mut(index).map(std::mem::take).unwrap_or_default();
        sheets.extend(xlsx_sheet(
            &mut book,
            name,
            hidden,
            seen,
            &mut formats,
            &mut room,
        )?);
    }
    Ok(Book {
        format: "workbook (.xlsx)".to_owned(),
        sheets,
        guessed_encoding: false,
    })
}

/// A sheet; none where it is a chart.
fn xlsx_sheet(
    book: &mut Xlsx<Cursor<&[u8]>>,
    name: String,
    hidden: bool,
    seen: Seen,
    formats: &mut Formats,
    room: &mut Room,
) -> Result<Option<Sheet>, Unreadable> {
    let damaged = |_| told(Fault::Damaged);
    let mut cells = Cells::default();
    for region in book.merge_cells_by_sheet_name(&name).unwrap_or_default() {
        cells.merge(Merged {
            top: region.start.0.saturating_add(1),
            bottom: region.end.0.saturating_add(1),
            left: region.start.1.saturating_add(1),
            right: region.end.1.saturating_add(1),
        });
    }
    let mut reader = match book.worksheet_cells_reader(&name) {
        Ok(reader) => reader,
        Err(XlsxError::NotAWorksheet(_)) => return Ok(None),
        Err(error) => return Err(damaged(error)),
    };
    while let Some((cell, style)) = reader.next_cell_with_style_id().map_err(damaged)? {
        let (row, column) = cell.get_position();
        let content = content(cell.get_value(), |value| {
            formats.show(value, style, || {
                let format = reader.styles().get(style)?.number_format.as_ref()?;
                Some(format.format_code.as_str())
            })
        });
        let place = (row.saturating_add(1), column.saturating_add(1));
        if !seen.uncalculated.contains(&place) {
            cells.add(place, content, room)?;
        }
    }
    for place in seen.uncalculated {
        cells.add(place, Some(Content::Uncalculated), room)?;
    }
    for row in seen.hidden_rows {
        cells.hide(row);
    }
    Ok(Some(cells.into_sheet(name, hidden)))
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
