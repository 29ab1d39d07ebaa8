//! Workbooks of XML parts ([ECMA-376] part 1, SpreadsheetML) -> cells, each part in one pass.

use crate::gather::books::workbook::archive::{Archive, Fault};
use crate::gather::books::workbook::cells::{Cells, Formats, no_number, text};
use crate::gather::books::workbook::markup::{self, Piece, Tag};
use crate::gather::books::workbook::relations::{self, Related};
use crate::gather::books::workbook::runs::{Runs, add, shared_strings, unescaped};
use crate::gather::books::workbook::styles::Styles;
use crate::gather::books::workbook::{Entries, told};
use crate::gather::books::{Book, Content, Merged, Room, Unreadable};

/// Reads a workbook.
pub fn read(archive: &mut Archive<'_>) -> Result<Book, Unreadable> {
    let workbook = relations::workbook(archive, "xl/workbook.xml").map_err(told)?;
    let (is_1904, entries) = listed(archive, &workbook).map_err(told)?;
    let strings = workbook.of_kind("sharedStrings", "sharedStrings.xml");
    let formats = workbook.of_kind("styles", "styles.xml");
    let shared = Shared {
        is_1904,
        strings: shared_strings(&archive.content(&strings).map_err(told)?.unwrap_or_default())
            .map_err(told)?,
        styles: styles(&archive.content(&formats).map_err(told)?.unwrap_or_default())
            .map_err(told)?,
    };
    let mut room = Room::default();
    let mut formats = Formats::default();
    entries.read("workbook (.xlsx)", archive, |part| {
        read_sheet(part, &shared, &mut formats, &mut room)
    })
}

/// Whether days count from 1904, and the sheets.
fn listed(archive: &mut Archive<'_>, workbook: &Related) -> Result<(bool, Entries), Fault> {
    let content = archive.content(&workbook.path)?.unwrap_or_default();
    let (mut is_1904, mut entries) = (false, Entries::default());
    markup::walk(&content, |piece| {
        let Piece::Open(tag) = piece else {
            return Ok(());
        };
        match tag.name() {
            "workbookPr" => is_1904 |= is_true(tag.attribute("date1904").as_deref()),
            "sheet" => {
                let name = tag.attribute("name").unwrap_or_default();
                let hidden = tag
                    .attribute("state")
                    .is_some_and(|state| state != "visible");
                let target = tag.attribute("id").and_then(|id| workbook.target(&id));
                entries.add(name, hidden, target)?;
            }
            _ => {}
        }
        Ok(())
    })?;
    Ok((is_1904, entries))
}

/// What the sheets share.
struct Shared {
    is_1904: bool,
    strings: Vec<Box<str>>,
    styles: Styles,
}

fn styles(content: &[u8]) -> Result<Styles, Fault> {
    let mut styles = Styles::default();
    let mut of_cells = false;
    markup::walk(content, |piece| {
        match piece {
            Piece::Open(tag) => match tag.name() {
                "cellXfs" => of_cells = true,
                "xf" if of_cells => styles.add(tag.number("numFmtId").unwrap_or(0))?,
                "numFmt" => {
                    if let (Some(number), Some(code)) =
                        (tag.number("numFmtId"), tag.attribute("formatCode"))
                    {
                        styles.write_out(number, code);
                    }
                }
                _ => {}
            },
            Piece::Close("cellXfs") => of_cells = false,
            _ => {}
        }
        Ok(())
    })?;
    Ok(styles)
}

fn read_sheet(
    part: &[u8],
    shared: &Shared,
    formats: &mut Formats,
    room: &mut Room,
) -> Result<Cells, Unreadable> {
    let mut walk = Walk {
        shared,
        formats,
        room,
        cells: Cells::default(),
        in_data: false,
        row: 0,
        cell: Passing::default(),
    };
    let mut refused = None;
    let walked = markup::walk(part, |piece| match walk.pass(piece) {
        Ok(()) => Ok(()),
        Err(Stop::Fault(fault)) => Err(fault),
        Err(Stop::Refused(why)) => {
            refused = Some(why);
            Err(Fault::Damaged)
        }
    });
    match refused {
        Some(why) => Err(why),
        None => walked.map(|()| walk.cells).map_err(told),
    }
}

/// Why a walk ends before its time.
enum Stop {
    Fault(Fault),
    Refused(Unreadable),
}

impl From<Fault> for Stop {
    fn from(fault: Fault) -> Stop {
        Stop::Fault(fault)
    }
}

/// A walk through a sheet.
struct Walk<'a> {
    shared: &'a Shared,
    formats: &'a mut Formats,
    room: &'a mut Room,
    cells: Cells,
    in_data: bool,
    row: u32,
    cell: Passing,
}

/// What the type of a cell says of its value (`t`).
#[derive(Clone, Copy, Default)]
enum Kind {
    #[default]
    Number,
    Shared,
    Text,
    Truth,
    Fault,
    Day,
    Unknown,
}

/// The cell that is being passed.
#[derive(Default)]
struct Passing {
    column: u32,
    /// Its row, where it tells one.
    row: u32,
    kind: Kind,
    style: usize,
    formula: bool,
    has_value: bool,
    in_value: bool,
    value: String,
    inline: Runs,
}

impl Walk<'_> {
    fn pass(&mut self, piece: Piece<'_>) -> Result<(), Stop> {
        match piece {
            Piece::Open(tag) if self.in_data => self.open(&tag),
            Piece::Open(tag) => match tag.name() {
                "sheetData" => self.in_data = true,
                "col" if is_true(tag.attribute("hidden").as_deref()) => {
                    let edge = |name: &str| tag.attribute(name)?.trim().parse().ok();
                    if let (Some(first), Some(last)) = (edge("min"), edge("max")) {
                        self.cells.hide_columns(first, last);
                    }
                }
                "mergeCell" => {
                    if let Some(merged) = tag.attribute("ref").as_deref().and_then(rectangle) {
                        self.cells.merge(merged);
                    }
                }
                _ => {}
            },
            Piece::Text(text) if self.cell.in_value => add(&mut self.cell.value, &text)?,
            Piece::Text(text) => self.cell.inline.say(&text)?,
            Piece::Close("v") => self.cell.in_value = false,
            Piece::Close("c") if self.in_data => {
                let place = (self.cell.row, self.cell.column);
                let content = self.content()?;
                self.cells
                    .add(place, content, self.room)
                    .map_err(Stop::Refused)?;
            }
            Piece::Close("sheetData") => self.in_data = false,
            Piece::Close(name) => self.cell.inline.close(name),
        }
        Ok(())
    }

    fn open(&mut self, tag: &Tag<'_>) {
        match tag.name() {
            "row" => {
                let mut number = None;
                let mut hidden = false;
                tag.attributes(|name, value| match name {
                    "r" => number = value.trim().parse().ok(),
                    "hidden" => hidden = is_true(Some(value)),
                    _ => {}
                });
                self.row = number.unwrap_or(self.row.saturating_add(1));
                self.cell.column = 0;
                if hidden {
                    self.cells.hide(self.row);
                }
            }
            "c" => self.start_cell(tag),
            "f" => self.cell.formula = true,
            "v" => {
                self.cell.in_value = true;
                self.cell.has_value = true;
            }
            name => self.cell.inline.open(name),
        }
    }

    fn start_cell(&mut self, tag: &Tag<'_>) {
        let mut place = None;
        let mut cell = Passing {
            value: std::mem::take(&mut self.cell.value),
            ..Passing::default()
        };
        cell.value.clear();
        tag.attributes(|name, value| match name {
            "r" => place = cell_place(value),
            "s" => cell.style = value.trim().parse().unwrap_or(0),
            "t" => {
                cell.kind = match value {
                    "n" => Kind::Number,
                    "s" => Kind::Shared,
                    "str" | "inlineStr" => Kind::Text,
                    "b" => Kind::Truth,
                    "e" => Kind::Fault,
                    "d" => Kind::Day,
                    _ => Kind::Unknown,
                }
            }
            _ => {}
        });
        (cell.row, cell.column) = place.unwrap_or((self.row, self.cell.column.saturating_add(1)));
        self.cell = cell;
    }

    /// What the cell holds that has been passed.
    fn content(&mut self) -> Result<Option<Content>, Fault> {
        let cell = &mut self.cell;
        let value = cell.value.trim();
        if cell.formula && !cell.has_value {
            return Ok(Some(Content::Uncalculated));
        }
        Ok(match cell.kind {
            // Programs that write formulas without calculating them leave the value out, or write 0.
            Kind::Number | Kind::Unknown if cell.formula && matches!(value, "" | "0") => {
                Some(Content::Uncalculated)
            }
            // Whatever its type says, a text that stands in the cell is one.
            Kind::Text => {
                let inline = std::mem::take(&mut cell.inline.text);
                let written = if cell.has_value {
                    cell.value.clone()
                } else {
                    inline
                };
                text(&unescaped(written))
            }
            _ if value.is_empty() => None,
            Kind::Shared => {
                let index: usize = value.parse().map_err(|_| Fault::Damaged)?;
                text(self.shared.strings.get(index).ok_or(Fault::Damaged)?)
            }
            Kind::Truth => Some(Content::Text(
                match value {
                    "0" | "false" => "FALSE",
                    _ => "TRUE",
                }
                .into(),
            )),
            Kind::Fault | Kind::Unknown => Some(Content::Fault(value.into())),
            Kind::Day => Some(Content::Date {
                day: value.get(..10).and_then(|day| day.parse().ok()),
                shown: value.into(),
            }),
            Kind::Number => Some(match value.parse::<f64>() {
                Ok(number) => {
                    let style = cell.style;
                    let shared = self.shared;
                    self.formats
                        .content(number, style, shared.is_1904, || shared.styles.code(style))
                }
                Err(_) => no_number(),
            }),
        })
    }
}

fn is_true(attribute: Option<&str>) -> bool {
    matches!(attribute, Some("1" | "true"))
}

/// `B2:C7` as its edges; `B2` alone is one cell.
fn rectangle(name: &str) -> Option<Merged> {
    let (first, last) = name.split_once(':').unwrap_or((name, name));
    let ((top, left), (bottom, right)) = (cell_place(first)?, cell_place(last)?);
    Some(Merged {
        top,
        bottom,
        left,
        right,
    })
}

/// `C7` as row 7, column 3.
fn cell_place(name: &str) -> Option<(u32, u32)> {
    let letters = name.find(|c: char| c.is_ascii_digit())?;
    let column = name[..letters].bytes().try_fold(0_u32, |column, letter| {
        let digit = u32::from(letter.to_ascii_uppercase().checked_sub(b'A')?) + 1;
        (digit <= 26).then_some(())?;
        column.checked_mul(26)?.checked_add(digit)
    })?;
    Some((name[letters..].parse().ok()?, column))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(sheet: &str) -> Vec<(u32, u32, String)> {
        let shared = Shared {
            is_1904: false,
            strings: vec!["shared".into()],
            styles: Styles::default(),
        };
        let part = format!("<worksheet>{sheet}</worksheet>");
        let (mut formats, mut room) = (Formats::default(), Room::default());
        let cells = read_sheet(part.as_bytes(), &shared, &mut formats, &mut room).expect("reads");
        let sheet = cells.into_sheet("a".to_owned(), false);
        let rows = sheet.rows.iter();
        rows.flat_map(|row| {
            let cells = row.cells.iter();
            cells.map(|cell| (row.number, cell.column, cell.content.shown().into_owned()))
        })
        .collect()
    }

    #[test]
    fn every_type_of_cell() {
        let told = cells(
            r#"<sheetData><row r="2"><c t="s"><v>0</v></c><c t="inlineStr"><is><r><t>in</t></r><r><t xml:space="preserve"> line</t></r><rPh><t>spoken</t></rPh></is></c><c t="b"><v>1</v></c><c t="e"><v>#N/A</v></c><c t="d"><v>2031-03-07T10:00:00</v></c><c t="str"><f>A1</f><v>a_x0041__x005F_x0041_</v></c><c><v>1e400</v></c><c><v>12.40</v></c><c t="x"><v>5</v></c></row></sheetData>"#,
        );
        let shown: Vec<&str> = told.iter().map(|(_, _, shown)| shown.as_str()).collect();
        assert_eq!(
            shown,
            [
                "shared",
                "in line",
                "TRUE",
                "#N/A",
                "2031-03-07T10:00:00",
                "aA_x0041_",
                "#NUM!",
                "12.4",
                "5"
            ]
        );
        assert_eq!((told[8].0, told[8].1), (2, 9));
    }

    #[test]
    fn formulas_without_result() {
        let told = cells(
            r#"<sheetData><row r="5"><c r="B5"><f>A1</f></c><c r="C5"><f>A1</f><v>0</v></c><c r="AA5"><f>A1</f><v>12</v></c><c><f>A1</f><v/></c><c t="str"><f>A1</f><v></v></c><c t="str"><f>A1</f></c></row></sheetData><extLst><c r="A1"><v>7</v></c></extLst>"#,
        );
        let without = Content::Uncalculated.shown().into_owned();
        let of = |column, shown: &str| (5, column, shown.to_owned());
        assert_eq!(
            told,
            [
                of(2, &without),
                of(3, &without),
                of(27, "12"),
                of(28, &without),
                of(30, &without)
            ]
        );
    }

    #[test]
    fn places_by_letters() {
        assert_eq!(cell_place("AA5"), Some((5, 27)));
        assert_eq!(cell_place("$A$1"), None);
        assert_eq!(rectangle("B2:C7").map(|merged| merged.right), Some(3));
    }
}
