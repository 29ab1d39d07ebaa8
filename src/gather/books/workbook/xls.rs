//! Binary workbooks in a compound file ([MS-XLS], and the version before it) -> cells, record by record. No rectangle of
//! blank cells is ever made, whatever size a sheet claims.

use crate::gather::books::workbook::archive::Fault;
use crate::gather::books::workbook::binary::{byte, double, error_name, long, packed, short, wide};
use crate::gather::books::workbook::cells::{Cells, Formats, built_in_format, text};
use crate::gather::books::workbook::compound::Compound;
use crate::gather::books::workbook::shared::shared_strings;
use crate::gather::books::workbook::told;
use crate::gather::books::{Book, Bound, Content, MOST_SHEETS, Merged, Room, Unreadable};
use encoding_rs::{Encoding, WINDOWS_1252};
use std::collections::BTreeMap;
use std::sync::Arc;

const START: u16 = 0x0809;
const END: u16 = 0x000a;

/// Reads a workbook, or finds that it is one under a password.
pub fn read(bytes: &[u8]) -> Result<Book, Unreadable> {
    let file = Compound::open(bytes).ok_or_else(|| told(Fault::Damaged))?;
    if file.has("EncryptedPackage") {
        return Err(told(Fault::Password));
    }
    let stream = file
        .stream("Workbook")
        .or_else(|| file.stream("Book"))
        .ok_or_else(|| told(Fault::Damaged))?;
    drop(file);
    let globals = Globals::read(&stream).map_err(told)?;
    let mut room = Room::default();
    let mut formats = Formats::default();
    let mut sheets = Vec::new();
    // The sheets stand one behind another: together they are no longer than the stream.
    let mut left = stream.len();
    for listed in &globals.sheets {
        let start = (listed.start as usize).min(stream.len());
        let mut records = Records(&stream[start..]);
        let mut walk = Walk {
            globals: &globals,
            formats: &mut formats,
            room: &mut room,
            cells: Cells::default(),
            formula: None,
        };
        walk.sheet(&mut records)?;
        let cells = walk.cells;
        let used = stream.len() - start - records.0.len();
        left = left.checked_sub(used).ok_or_else(|| told(Fault::Damaged))?;
        sheets.push(cells.into_sheet(listed.name.clone(), listed.hidden));
    }
    Ok(Book {
        format: "workbook (.xls)".to_owned(),
        sheets,
        passed_over: globals.others,
        ..Book::default()
    })
}

/// A record: its kind and what it holds.
pub type Record<'a> = (u16, &'a [u8]);

/// The records of a stream; they end where the stream is cut short.
pub struct Records<'a>(pub &'a [u8]);

impl<'a> Iterator for Records<'a> {
    type Item = Record<'a>;

    fn next(&mut self) -> Option<Record<'a>> {
        let (kind, length) = (short(self.0, 0)?, usize::from(short(self.0, 2)?));
        let data = self.0.get(4..4 + length)?;
        self.0 = &self.0[4 + length..];
        Some((kind, data))
    }
}

/// What holds for the whole workbook.
struct Globals {
    /// The version in use since 1997, with texts of two-byte letters; before it texts were bytes of an encoding.
    wide: bool,
    encoding: &'static Encoding,
    is_1904: bool,
    /// The number format of each style, and the codes of those that are written out.
    styles: Vec<u16>,
    codes: BTreeMap<u16, String>,
    strings: Vec<Box<str>>,
    sheets: Vec<Listed>,
    /// Charts, macros and modules.
    others: Vec<Arc<str>>,
}

/// A sheet in the list of sheets.
struct Listed {
    start: u32,
    name: String,
    hidden: bool,
}

impl Globals {
    fn read(stream: &[u8]) -> Result<Globals, Fault> {
        let mut globals = Globals {
            wide: true,
            encoding: WINDOWS_1252,
            is_1904: false,
            styles: Vec::new(),
            codes: BTreeMap::new(),
            strings: Vec::new(),
            sheets: Vec::new(),
            others: Vec::new(),
        };
        let mut records = Records(stream);
        let first = records.next().filter(|(kind, _)| *kind == START);
        match first.and_then(|(_, data)| short(data, 0)) {
            Some(0x0600) => {}
            Some(0x0500) => globals.wide = false,
            _ => return Err(Fault::Damaged),
        }
        loop {
            let (kind, data) = records.next().ok_or(Fault::Damaged)?;
            match kind {
                END => return Ok(globals),
                0x002f => return Err(Fault::Password),
                0x00fc => {
                    let mut parts = vec![data.get(8..).unwrap_or_default()];
                    while short(records.0, 0) == Some(0x003c) {
                        parts.extend(records.next().map(|(_, data)| data));
                    }
                    globals.strings = shared_strings(parts)?;
                }
                _ => globals.take(kind, data)?,
            }
        }
    }

    fn take(&mut self, kind: u16, data: &[u8]) -> Result<(), Fault> {
        let number = short(data, 0).unwrap_or_default();
        match kind {
            0x0042 => self.encoding = encoding(number),
            0x0022 => self.is_1904 = number == 1,
            0x00e0 => self.styles.push(short(data, 2).unwrap_or_default()),
            0x041e if self.wide => {
                self.codes.insert(number, self.long_text(data, 2));
            }
            0x041e => {
                self.codes.insert(number, self.short_text(data, 2));
            }
            0x0085 => {
                let hidden = byte(data, 4).unwrap_or_default() & 0x3f != 0;
                if byte(data, 5) != Some(0) {
                    self.others.push(self.short_text(data, 6).into());
                } else {
                    self.sheets.push(Listed {
                        start: long(data, 0).ok_or(Fault::Damaged)?,
                        name: self.short_text(data, 6),
                        hidden,
                    });
                }
                if self.sheets.len() + self.others.len() > MOST_SHEETS {
                    return Err(Fault::TooLarge(Bound::Sheets));
                }
            }
            _ => {}
        }
        Ok(())
    }

    /// A text whose length stands in one byte.
    fn short_text(&self, data: &[u8], at: usize) -> String {
        let count = usize::from(byte(data, at).unwrap_or_default());
        self.letters(data, at + 1, count)
    }

    /// A text whose length stands in two bytes.
    fn long_text(&self, data: &[u8], at: usize) -> String {
        let count = usize::from(short(data, at).unwrap_or_default());
        self.letters(data, at + 2, count)
    }

    fn letters(&self, data: &[u8], at: usize, count: usize) -> String {
        let some = |from: usize, count: usize| {
            let from = from.min(data.len());
            &data[from..(from + count).min(data.len())]
        };
        if !self.wide {
            return self
                .encoding
                .decode_without_bom_handling(some(at, count))
                .0
                .into_owned();
        }
        if byte(data, at).unwrap_or_default() & 1 == 0 {
            some(at + 1, count)
                .iter()
                .map(|byte| char::from(*byte))
                .collect()
        } else {
            wide(some(at + 1, 2 * count))
        }
    }

    fn code(&self, style: u16) -> Option<&str> {
        let format = *self.styles.get(usize::from(style))?;
        let written = self.codes.get(&format).map(String::as_str);
        written.or_else(|| built_in_format(format))
    }
}

/// The encoding of a code page; what is not known is taken for that of Western Europe.
fn encoding(page: u16) -> &'static Encoding {
    let label = match page {
        10000 | 32768 => "macintosh".to_owned(),
        932 => "shift_jis".to_owned(),
        936 => "gbk".to_owned(),
        949 => "euc-kr".to_owned(),
        950 => "big5".to_owned(),
        page => format!("windows-{page}"),
    };
    Encoding::for_label(label.as_bytes()).unwrap_or(WINDOWS_1252)
}

/// A walk through a sheet.
struct Walk<'a> {
    globals: &'a Globals,
    formats: &'a mut Formats,
    room: &'a mut Room,
    cells: Cells,
    /// The place of a formula whose result is a text: it comes in a record of its own.
    formula: Option<(u32, u32)>,
}

impl Walk<'_> {
    fn sheet(&mut self, records: &mut Records<'_>) -> Result<(), Unreadable> {
        // Charts within the sheet have a start and an end of their own, and cells that are none of the sheet's.
        let mut depth = 0_usize;
        loop {
            let (kind, data) = records.next().ok_or_else(|| told(Fault::Damaged))?;
            match kind {
                START => depth += 1,
                END if depth <= 1 => return Ok(()),
                END => depth -= 1,
                _ if depth == 0 => return Err(told(Fault::Damaged)),
                _ if depth == 1 => self.record(kind, data)?,
                _ => {}
            }
        }
    }

    fn record(&mut self, kind: u16, data: &[u8]) -> Result<(), Unreadable> {
        let place = (
            u32::from(short(data, 0).unwrap_or_default()) + 1,
            u32::from(short(data, 2).unwrap_or_default()) + 1,
        );
        let content = match kind {
            0x0208 => {
                if byte(data, 12).unwrap_or_default() & 0x20 != 0 {
                    self.cells.hide(place.0);
                }
                return Ok(());
            }
            0x007d => {
                if byte(data, 8).unwrap_or_default() & 1 != 0 {
                    // The columns stand where cells have their place.
                    self.cells.hide_columns(place.0, place.1);
                }
                return Ok(());
            }
            0x00e5 => return self.merged(data),
            0x00bd => return self.many(place, data),
            0x0207 => {
                let text = text(&self.globals.long_text(data, 0));
                return match self.formula.take() {
                    Some(place) => self.cells.add(place, text, self.room),
                    None => Ok(()),
                };
            }
            0x0006 => {
                if double(data, 6).is_none() {
                    return Err(told(Fault::Damaged));
                }
                self.formula = Some(place);
                self.result(data)
            }
            0x0203 => double(data, 6).map(|value| self.number(value, data, 4)),
            0x027e => packed(data, 6).map(|value| self.number(value, data, 4)),
            0x0205 => match (byte(data, 6), byte(data, 7)) {
                (Some(code), Some(0)) => Some(truth(code)),
                (Some(code), _) => Some(Content::Fault(error_name(code).into())),
                _ => None,
            },
            0x0204 | 0x00d6 => text(&self.globals.long_text(data, 6)),
            0x00fd => {
                let index = long(data, 6).map_or(usize::MAX, |index| index as usize);
                let string = self.globals.strings.get(index);
                text(string.ok_or_else(|| told(Fault::Damaged))?)
            }
            _ => return Ok(()),
        };
        self.cells.add(place, content, self.room)
    }

    fn number(&mut self, value: f64, data: &[u8], at: usize) -> Content {
        let style = short(data, at).unwrap_or_default();
        let globals = self.globals;
        self.formats
            .content(value, style.into(), globals.is_1904, || globals.code(style))
    }

    /// The result of a formula, where it is no text.
    fn result(&mut self, data: &[u8]) -> Option<Content> {
        if short(data, 12) != Some(0xffff) {
            let value = double(data, 6)?;
            // Programs that write formulas without calculating them write 0.
            return Some(if value == 0.0 {
                Content::Uncalculated
            } else {
                self.number(value, data, 4)
            });
        }
        let code = byte(data, 8)?;
        match byte(data, 6)? {
            1 => Some(truth(code)),
            2 => Some(Content::Fault(error_name(code).into())),
            _ => None,
        }
    }

    /// Numbers in one row, side by side.
    fn many(&mut self, (row, first): (u32, u32), data: &[u8]) -> Result<(), Unreadable> {
        let cells = data
            .get(4..data.len().saturating_sub(2))
            .unwrap_or_default();
        for (cell, column) in cells.chunks_exact(6).zip(first..) {
            if let Some(value) = packed(cell, 2) {
                let content = self.number(value, cell, 0);
                self.cells.add((row, column), Some(content), self.room)?;
            }
        }
        Ok(())
    }

    fn merged(&mut self, data: &[u8]) -> Result<(), Unreadable> {
        for region in data.get(2..).unwrap_or_default().chunks_exact(8) {
            let edge = |at| u32::from(short(region, at).unwrap_or_default()) + 1;
            self.cells.merge(Merged {
                top: edge(0),
                bottom: edge(2),
                left: edge(4),
                right: edge(6),
            });
        }
        Ok(())
    }
}

fn truth(code: u8) -> Content {
    Content::Text(if code == 0 { "FALSE" } else { "TRUE" }.into())
}
