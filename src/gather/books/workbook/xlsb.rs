//! Binary workbooks in a ZIP archive ([MS-XLSB]) -> cells, record by record.

use crate::gather::books::bounds::MOST_TEXT;
use crate::gather::books::workbook::archive::{Archive, Fault};
use crate::gather::books::workbook::binary::{byte, double, error_name, long, packed, short, wide};
use crate::gather::books::workbook::cells::{Cells, Formats, text};
use crate::gather::books::workbook::relations::{self, Related};
use crate::gather::books::workbook::styles::Styles;
use crate::gather::books::workbook::{Entries, told};
use crate::gather::books::{Book, Bound, Content, MOST_CELLS, Merged, Room, Unreadable};

/// Reads a workbook.
pub fn read(archive: &mut Archive<'_>) -> Result<Book, Unreadable> {
    let workbook = relations::workbook(archive, "xl/workbook.bin").map_err(told)?;
    let (is_1904, entries) = listed(archive, &workbook).map_err(told)?;
    let shared = Shared {
        is_1904,
        strings: strings(archive, &workbook).map_err(told)?,
        styles: styles(archive, &workbook).map_err(told)?,
    };
    let mut room = Room::default();
    let mut formats = Formats::default();
    entries.read("workbook (.xlsb)", archive, |part| {
        read_sheet(part, &shared, &mut formats, &mut room)
    })
}

/// The records of a part; they end where the part is cut short.
struct Records<'a>(&'a [u8]);

impl<'a> Iterator for Records<'a> {
    type Item = (usize, &'a [u8]);

    fn next(&mut self) -> Option<Self::Item> {
        let mut rest = self.0;
        let kind = number(&mut rest, 2)?;
        let length = number(&mut rest, 4)?;
        let data = rest.get(..length)?;
        self.0 = &rest[length..];
        Some((kind, data))
    }
}

/// A number in up to so many bytes, seven bits each, the low ones first; the eighth says that more follow.
fn number(bytes: &mut &[u8], most: usize) -> Option<usize> {
    let mut number = 0;
    for index in 0..most {
        let (byte, rest) = bytes.split_first()?;
        *bytes = rest;
        number |= usize::from(byte & 0x7f) << (7 * index);
        if byte & 0x80 == 0 {
            break;
        }
    }
    Some(number)
}

/// A text after its length, and where it ends.
fn string(data: &[u8], at: usize) -> Option<(String, usize)> {
    let start = at.checked_add(4)?;
    let end = start.checked_add((long(data, at)? as usize).checked_mul(2)?)?;
    Some((wide(data.get(start..end)?), end))
}

/// Whether days count from 1904, and the sheets.
fn listed(archive: &mut Archive<'_>, workbook: &Related) -> Result<(bool, Entries), Fault> {
    let content = archive.content(&workbook.path)?.unwrap_or_default();
    let (mut is_1904, mut entries) = (false, Entries::default());
    for (kind, data) in Records(&content) {
        match kind {
            0x99 => is_1904 = byte(data, 0).ok_or(Fault::Damaged)? & 1 != 0,
            0x9c => {
                let hidden = long(data, 0) != Some(0);
                let two = |at| {
                    let (relation, end) = string(data, at)?;
                    Some((relation, string(data, end)?.0))
                };
                // An early version has one field more before the texts.
                let (relation, name) = two(8).or_else(|| two(12)).ok_or(Fault::Damaged)?;
                entries.add(name, hidden, workbook.target(&relation))?;
            }
            _ => {}
        }
    }
    Ok((is_1904, entries))
}

/// What the sheets share.
struct Shared {
    is_1904: bool,
    strings: Vec<Box<str>>,
    styles: Styles,
}

fn strings(archive: &mut Archive<'_>, workbook: &Related) -> Result<Vec<Box<str>>, Fault> {
    let part = workbook.of_kind("sharedStrings", "sharedStrings.bin");
    let content = archive.content(&part)?.unwrap_or_default();
    let mut left = MOST_TEXT;
    let mut strings = Vec::new();
    for (_, data) in Records(&content).filter(|(kind, _)| *kind == 0x13) {
        let (text, _) = string(data, 1).ok_or(Fault::Damaged)?;
        left = left
            .checked_sub(text.len())
            .ok_or(Fault::TooLarge(Bound::Text))?;
        strings.push(text.into());
        if strings.len() > MOST_CELLS {
            return Err(Fault::TooLarge(Bound::Cells));
        }
    }
    Ok(strings)
}

fn styles(archive: &mut Archive<'_>, workbook: &Related) -> Result<Styles, Fault> {
    let part = workbook.of_kind("styles", "styles.bin");
    let content = archive.content(&part)?.unwrap_or_default();
    let mut styles = Styles::default();
    let mut of_cells = false;
    for (kind, data) in Records(&content) {
        match kind {
            0x2c => {
                let format = short(data, 0).ok_or(Fault::Damaged)?;
                let (code, _) = string(data, 2).ok_or(Fault::Damaged)?;
                styles.write_out(format, code);
            }
            0x269 => of_cells = true,
            0x26a => of_cells = false,
            0x2f if of_cells => styles.add(short(data, 2).ok_or(Fault::Damaged)?)?,
            _ => {}
        }
    }
    Ok(styles)
}

fn read_sheet(
    part: &[u8],
    shared: &Shared,
    formats: &mut Formats,
    room: &mut Room,
) -> Result<Cells, Unreadable> {
    let mut cells = Cells::default();
    let mut row = 0_u32;
    let mut ended = false;
    for (kind, data) in Records(part) {
        match kind {
            0x00 => {
                row = long(data, 0).unwrap_or_default().saturating_add(1);
                if byte(data, 11).unwrap_or_default() & 0x10 != 0 {
                    cells.hide(row);
                }
            }
            0x01..=0x0b | 0x3e => {
                let column = long(data, 0).unwrap_or_default().saturating_add(1);
                let content = content(kind, data, shared, formats).map_err(told)?;
                cells.add((row, column), content, room)?;
            }
            0x3c if byte(data, 16).unwrap_or_default() & 1 != 0 => {
                let edge = |at| long(data, at).unwrap_or_default().saturating_add(1);
                cells.hide_columns(edge(0), edge(4));
            }
            0xb0 => {
                let edge = |at| long(data, at).unwrap_or_default().saturating_add(1);
                cells.merge(Merged {
                    top: edge(0),
                    bottom: edge(4),
                    left: edge(8),
                    right: edge(12),
                });
            }
            0x82 => ended = true,
            _ => {}
        }
    }
    if !ended {
        return Err(told(Fault::Damaged));
    }
    Ok(cells)
}

/// What a cell's record holds, its column and style apart.
fn content(
    kind: usize,
    data: &[u8],
    shared: &Shared,
    formats: &mut Formats,
) -> Result<Option<Content>, Fault> {
    const VALUE: usize = 8;
    let style = long(data, 4).unwrap_or_default() & 0x00ff_ffff;
    let mut number = |value: f64| {
        formats.content(value, style as usize, shared.is_1904, || {
            shared.styles.code(style as usize)
        })
    };
    let content = match kind {
        0x02 => packed(data, VALUE).map(number),
        0x03 | 0x0b => byte(data, VALUE).map(|code| Content::Fault(error_name(code).into())),
        0x04 | 0x0a => byte(data, VALUE)
            .map(|code| Content::Text(if code == 0 { "FALSE" } else { "TRUE" }.into())),
        0x05 => double(data, VALUE).map(number),
        // Programs that write formulas without calculating them write 0.
        0x09 => double(data, VALUE).map(|value| {
            if value == 0.0 {
                Content::Uncalculated
            } else {
                number(value)
            }
        }),
        0x06 | 0x08 => return Ok(text(&string(data, VALUE).ok_or(Fault::Damaged)?.0)),
        0x3e => return Ok(text(&string(data, VALUE + 1).ok_or(Fault::Damaged)?.0)),
        0x07 => {
            let index = long(data, VALUE).ok_or(Fault::Damaged)? as usize;
            return Ok(text(shared.strings.get(index).ok_or(Fault::Damaged)?));
        }
        // A blank cell has a style and nothing else.
        _ => return Ok(None),
    };
    content.map(Some).ok_or(Fault::Damaged)
}
