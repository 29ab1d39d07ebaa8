//! What the spreadsheet reader does not tell of a workbook: hidden rows, joined cells, formulas without a result, and
//! how a number is shown. Looked up in the parts themselves, which also shows whether they stay within bounds.

use crate::gather::tables::workbook::archive::Part;
use crate::gather::tables::workbook::inflate::Fault;
use crate::gather::tables::workbook::markup::{self, Tag};
use crate::gather::tables::{MOST_CELLS, Merged};
use std::collections::{BTreeMap, BTreeSet};

/// Bytes that the parts of one workbook may inflate to together.
const LARGEST_WORKBOOK: usize = 512 * 1024 * 1024;

/// Cells of one kind that are kept in mind: formulas without a result, numbers that are shown in another way.
const MOST_KEPT: usize = 200_000;

/// What was seen of a sheet. Rows and columns count from 1.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Seen {
    /// Rows that are not shown.
    pub hidden_rows: BTreeSet<u32>,
    /// Cells with a formula that was never calculated, by row and column.
    pub uncalculated: BTreeSet<(u32, u32)>,
    /// How numbers are shown, by row and column; only where the reader does not apply number formats.
    pub shown: BTreeMap<(u32, u32), String>,
    /// Cells that were joined; only where the reader does not tell.
    pub merged: Vec<Merged>,
}

/// Inflates every part once within its bound: a part that does not stay there is found before anything relies on it.
pub fn check_sizes(parts: &[Part<'_>]) -> Result<(), Fault> {
    let mut total = 0;
    for part in parts.iter().filter(|part| is_read(&part.name)) {
        total += part.content()?.len();
        if total > LARGEST_WORKBOOK {
            return Err(Fault::TooLarge);
        }
    }
    Ok(())
}

/// Pictures and the like are never opened.
fn is_read(name: &str) -> bool {
    let lower = name.to_lowercase();
    [".xml", ".rels", ".bin"]
        .iter()
        .any(|ending| lower.ends_with(ending))
        && !lower.contains("/media/")
}

/// Looks into a workbook of the xlsx kind; what was seen of each sheet, in the order of the workbook.
pub fn xlsx(parts: &[Part<'_>]) -> Result<Vec<Seen>, Fault> {
    let text = |name: &str| -> Result<Option<String>, Fault> {
        let part = parts
            .iter()
            .find(|part| part.name.eq_ignore_ascii_case(name));
        part.map(|part| {
            part.content()
                .map(|bytes| String::from_utf8_lossy(&bytes).into_owned())
        })
        .transpose()
    };
    if let Some(strings) = text("xl/sharedStrings.xml")? {
        // The reader makes room for as many strings as are claimed, before it has seen one.
        let claimed = markup::tags(&strings)
            .find(|tag| tag.name == "sst")
            .and_then(|tag| tag.number("uniqueCount"));
        if claimed.is_some_and(|claimed| claimed > strings.len() as u64) {
            return Err(Fault::Damaged);
        }
    }
    let targets: BTreeMap<String, String> = text("xl/_rels/workbook.xml.rels")?
        .iter()
        .flat_map(|text| markup::tags(text))
        .filter(|tag| tag.name == "Relationship")
        .filter_map(|tag| {
            Some((
                tag.attribute("Id")?.to_owned(),
                tag.attribute("Target")?.to_owned(),
            ))
        })
        .collect();
    let workbook = text("xl/workbook.xml")?.unwrap_or_default();
    let mut seen = Vec::new();
    for tag in markup::tags(&workbook).filter(|tag| tag.name == "sheet" && !tag.closes) {
        let target = tag.attribute("id").and_then(|id| targets.get(id));
        let path = target.map(|target| match target.strip_prefix('/') {
            Some(absolute) => absolute.to_owned(),
            None => format!("xl/{target}"),
        });
        let sheet = path.map(|path| text(&path)).transpose()?.flatten();
        seen.push(sheet.map(|text| xlsx_sheet(&text)).unwrap_or_default());
    }
    Ok(seen)
}

/// The cell that is being passed.
#[derive(Default)]
struct Passing<'a> {
    place: Option<&'a str>,
    is_text: bool,
    formula: bool,
    value: bool,
}

fn xlsx_sheet(text: &str) -> Seen {
    let mut seen = Seen::default();
    let mut row_number = 0;
    let mut cell = Passing::default();
    for tag in markup::tags(text) {
        match (tag.name, tag.closes) {
            ("row", false) => {
                row_number = tag
                    .number("r")
                    .and_then(|n| u32::try_from(n).ok())
                    .unwrap_or(row_number + 1);
                if is_true(tag.attribute("hidden")) {
                    seen.hidden_rows.insert(row_number);
                }
            }
            ("c", false) => {
                cell = Passing {
                    place: tag.attribute("r"),
                    is_text: matches!(
                        tag.attribute("t"),
                        Some("str" | "s" | "inlineStr" | "b" | "e")
                    ),
                    ..Passing::default()
                };
            }
            ("f", false) => cell.formula = true,
            // Programs that write formulas without calculating them leave the value out, or write 0.
            ("v", false) => {
                cell.value =
                    !(tag.text.trim().is_empty() || (cell.formula && tag.text.trim() == "0"))
            }
            ("c", true)
                if cell.formula
                    && !cell.value
                    && !cell.is_text
                    && seen.uncalculated.len() < MOST_KEPT =>
            {
                seen.uncalculated.extend(cell.place.and_then(cell_place));
            }
            ("sheetData", true) => break,
            _ => {}
        }
    }
    seen
}

fn is_true(attribute: Option<&str>) -> bool {
    matches!(attribute, Some("1" | "true"))
}

/// `C7` as row 7, column 3.
fn cell_place(name: &str) -> Option<(u32, u32)> {
    let letters = name.find(|c: char| c.is_ascii_digit())?;
    let column = name[..letters].bytes().try_fold(0_u32, |column, letter| {
        let digit = u32::from(letter.to_ascii_uppercase().checked_sub(b'A')?) + 1;
        column.checked_mul(26)?.checked_add(digit)
    })?;
    Some((name[letters..].parse().ok()?, column))
}

/// Looks into an OpenDocument workbook; what was seen of each sheet, in its order.
pub fn ods(parts: &[Part<'_>]) -> Result<Vec<Seen>, Fault> {
    let Some(part) = parts.iter().find(|part| part.name == "content.xml") else {
        return Err(Fault::Damaged);
    };
    let content = part.content()?;
    let text = String::from_utf8_lossy(&content);
    let mut sheets = Vec::new();
    let mut walk = OdsWalk::default();
    for tag in markup::tags(&text) {
        walk.pass(&tag, &mut sheets)?;
    }
    Ok(sheets)
}

/// Where a walk through a sheet stands.
#[derive(Default)]
struct OdsWalk {
    seen: Seen,
    row: u64,
    rows_repeated: u64,
    column: u64,
    /// The last column of this row that holds something, and the widest of the sheet.
    last: u64,
    widest: u64,
    /// The last row that holds something.
    bottom: u64,
    number: Option<(u32, u32)>,
    depth: u32,
}

impl OdsWalk {
    fn pass(&mut self, tag: &Tag<'_>, sheets: &mut Vec<Seen>) -> Result<(), Fault> {
        match (tag.name, tag.closes) {
            ("table", false) if self.depth == 0 => {
                *self = OdsWalk {
                    depth: 1,
                    ..OdsWalk::default()
                };
            }
            ("table", true) if self.depth == 1 => {
                self.bounded()?;
                sheets.push(std::mem::take(&mut self.seen));
                self.depth = 0;
            }
            ("table-row", false) if self.depth == 1 => self.start_row(tag),
            ("table-cell" | "covered-table-cell", false) if self.depth == 1 => self.cell(tag),
            ("table-cell", true) => self.number = None,
            ("p", false) => {
                if let Some(place) = self.number.take()
                    && self.seen.shown.len() < MOST_KEPT
                {
                    self.seen.shown.insert(place, unescaped(tag.text));
                }
            }
            ("table-row", true) if self.depth == 1 => {
                if self.last > 0 {
                    self.bottom = self.row + self.rows_repeated - 1;
                    self.widest = self.widest.max(self.last);
                    self.bounded()?;
                }
                self.row += self.rows_repeated - 1;
            }
            _ => {}
        }
        Ok(())
    }

    /// The reader makes a rectangle of all cells, blank ones too.
    fn bounded(&self) -> Result<(), Fault> {
        let cells = self.bottom.saturating_mul(self.widest);
        if cells > MOST_CELLS as u64 {
            Err(Fault::TooLarge)
        } else {
            Ok(())
        }
    }

    fn start_row(&mut self, tag: &Tag<'_>) {
        self.row += 1;
        self.column = 0;
        self.last = 0;
        self.rows_repeated = tag
            .number("number-rows-repeated")
            .unwrap_or(1)
            .clamp(1, 1 << 20);
        if matches!(tag.attribute("visibility"), Some("collapse" | "filter")) {
            // Blank rows are hidden by the million; only those near anything matter.
            const NEAR: u64 = 1000;
            let end = self.row + self.rows_repeated.min(NEAR);
            self.seen
                .hidden_rows
                .extend((self.row..end).filter_map(|row| u32::try_from(row).ok()));
        }
    }

    fn cell(&mut self, tag: &Tag<'_>) {
        let repeated = tag
            .number("number-columns-repeated")
            .unwrap_or(1)
            .clamp(1, 1 << 14);
        let (first, holds) = (self.column + 1, tag.attribute("value-type").is_some());
        self.column += repeated;
        if holds {
            self.last = self.column;
        }
        let place = (
            u32::try_from(self.row).unwrap_or(u32::MAX),
            u32::try_from(first).unwrap_or(u32::MAX),
        );
        let is_number = matches!(
            tag.attribute("value-type"),
            Some("float" | "percentage" | "currency")
        );
        self.number =
            (is_number && !tag.empty && repeated == 1 && self.rows_repeated == 1).then_some(place);
        let span = |name: &str| {
            tag.number(name)
                .and_then(|n| u32::try_from(n).ok())
                .filter(|n| (2..=10_000).contains(n))
        };
        let (down, right) = (span("number-rows-spanned"), span("number-columns-spanned"));
        if down.is_some() || right.is_some() {
            self.seen.merged.push(Merged {
                top: place.0,
                bottom: place.0 + down.unwrap_or(1) - 1,
                left: place.1,
                right: place.1 + right.unwrap_or(1) - 1,
            });
        }
    }
}

/// The five entities that XML names.
fn unescaped(text: &str) -> String {
    text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&apos;", "'")
        .replace("&amp;", "&")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hidden_rows_and_formulas_without_result() {
        let seen = xlsx_sheet(
            r#"<sheetData><row r="1"><c r="A1"><v>1</v></c></row><row r="5" hidden="1"><c r="B5"><f>A1</f></c><c r="C5"><f>A1</f><v>0</v></c><c r="AA5"><f>A1</f><v>12</v></c></row></sheetData>"#,
        );
        assert_eq!(seen.hidden_rows, BTreeSet::from([5]));
        assert_eq!(seen.uncalculated, BTreeSet::from([(5, 2), (5, 3)]));
        assert_eq!(cell_place("AA5"), Some((5, 27)));
    }

    #[test]
    fn a_sheet_that_repeats_itself_without_end_is_refused() {
        let mut walk = OdsWalk::default();
        let text = r#"<table:table><table:table-row table:number-rows-repeated="1000000"><table:table-cell table:number-columns-repeated="100" office:value-type="float" office:value="1"/></table:table-row></table:table>"#;
        let ended = markup::tags(text).try_for_each(|tag| walk.pass(&tag, &mut Vec::new()));
        assert_eq!(ended, Err(Fault::TooLarge));
    }
}
