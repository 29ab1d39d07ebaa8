//! What the spreadsheet reader does not tell of an .xlsx: hidden rows and formulas without a result. Looked up in the
//! parts themselves, which also shows whether that reader stays within bounds.

use crate::gather::books::workbook::archive::{Archive, Fault};
use crate::gather::books::workbook::markup::{self, Piece, Tag};
use crate::gather::books::{MOST_CELLS, MOST_SHEETS};
use std::collections::{BTreeMap, BTreeSet};

/// Tags of the parts that the reader keeps whole: styles, the list of sheets. Each may become hundreds of bytes.
const MOST_TAGS: usize = 1_000_000;

/// Cells with a formula without a result, and hidden rows, that are kept in mind.
const MOST_KEPT: usize = 200_000;

/// What was seen of a sheet. Rows and columns count from 1.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Seen {
    /// Rows that are not shown.
    pub hidden_rows: BTreeSet<u32>,
    /// Cells with a formula that was never calculated, by row and column.
    pub uncalculated: BTreeSet<(u32, u32)>,
}

/// Looks into a workbook; what was seen of each sheet, in the order of the workbook.
pub fn xlsx(archive: &mut Archive<'_>) -> Result<Vec<Seen>, Fault> {
    let (folder, name) = workbook(archive)?;
    if let Some(strings) = archive.content(&format!("{folder}sharedStrings.xml"))? {
        shared_strings(&strings)?;
    }
    for part in [&name, "styles.xml", "theme/theme1.xml"] {
        let content = archive.content(&format!("{folder}{part}"))?;
        let content = content.unwrap_or_default();
        if content.iter().filter(|byte| **byte == b'<').count() > MOST_TAGS {
            return Err(Fault::TooLarge);
        }
    }
    let targets = targets(archive, &folder, &name)?;
    let mut paths = Vec::new();
    let content = archive.content(&format!("{folder}{name}"))?;
    markup::walk(&content.unwrap_or_default(), |piece| {
        if let Piece::Open(tag) = piece
            && tag.name() == "sheet"
        {
            paths.push(tag.attribute("id").and_then(|id| targets.get(&id)));
        }
        Ok(())
    })?;
    if paths.len() > MOST_SHEETS {
        return Err(Fault::TooLarge);
    }
    // A part that many sheets name is unpacked as often, here and by the reader.
    archive.together(paths.iter().flatten().map(|path| path.as_str()))?;
    let mut seen = Vec::new();
    for path in paths {
        let sheet = path
            .map(|path| archive.content(path))
            .transpose()?
            .flatten();
        seen.push(xlsx_sheet(&sheet.unwrap_or_default())?);
    }
    Ok(seen)
}

/// The folder and the name of the part that lists the sheets: it need not be xl/workbook.xml.
fn workbook(archive: &mut Archive<'_>) -> Result<(String, String), Fault> {
    let mut target = None;
    markup::walk(
        &archive.content("_rels/.rels")?.unwrap_or_default(),
        |piece| {
            if let Piece::Open(tag) = piece
                && tag.name() == "Relationship"
                && let Some(kind) = tag.attribute("Type")
                && kind.ends_with("/relationships/officeDocument")
            {
                target = tag.attribute("Target");
            }
            Ok(())
        },
    )?;
    let target = target.ok_or(Fault::Damaged)?;
    let target = target.strip_prefix('/').unwrap_or(&target);
    let (folder, name) = target.split_at(target.rfind('/').map_or(0, |at| at + 1));
    Ok((folder.to_owned(), name.to_owned()))
}

/// The parts that a workbook's relations name, by their id.
pub fn targets(
    archive: &mut Archive<'_>,
    folder: &str,
    name: &str,
) -> Result<BTreeMap<String, String>, Fault> {
    let mut targets = BTreeMap::new();
    let relations = archive.content(&format!("{folder}_rels/{name}.rels"))?;
    markup::walk(&relations.unwrap_or_default(), |piece| {
        if let Piece::Open(tag) = piece
            && tag.name() == "Relationship"
            && let (Some(id), Some(target)) = (tag.attribute("Id"), tag.attribute("Target"))
        {
            let path = match target.strip_prefix('/') {
                Some(absolute) => absolute.to_owned(),
                None => format!("{folder}{target}"),
            };
            targets.insert(id, path);
        }
        Ok(())
    })?;
    Ok(targets)
}

/// The reader makes room for as many strings as are claimed, before it has seen one, and keeps them all.
fn shared_strings(content: &[u8]) -> Result<(), Fault> {
    let mut count = 0;
    markup::walk(content, |piece| {
        match piece {
            Piece::Open(tag) if tag.name() == "sst" => {
                let claimed: Option<usize> = tag.number("uniqueCount");
                if claimed.is_some_and(|claimed| claimed > MOST_CELLS) {
                    return Err(Fault::TooLarge);
                }
            }
            Piece::Open(tag) if tag.name() == "si" => count += 1,
            _ => {}
        }
        if count > MOST_CELLS {
            Err(Fault::TooLarge)
        } else {
            Ok(())
        }
    })
}

/// The cell that is being passed.
#[derive(Default)]
struct Passing {
    row: u32,
    column: u32,
    is_text: bool,
    formula: bool,
    /// Its value, where the walk is in it or past it.
    value: String,
    in_value: bool,
}

fn xlsx_sheet(content: &[u8]) -> Result<Seen, Fault> {
    let mut seen = Seen::default();
    let mut cell = Passing::default();
    markup::walk(content, |piece| {
        match piece {
            Piece::Open(tag) => open(&tag, &mut cell, &mut seen),
            Piece::Text(text) if cell.in_value && cell.value.len() < 32 => {
                cell.value.push_str(&text)
            }
            Piece::Close("v") => cell.in_value = false,
            Piece::Close("c") => {
                // Programs that write formulas without calculating them leave the value out, or write 0.
                let without = matches!(cell.value.trim(), "" | "0");
                if cell.formula && without && !cell.is_text && seen.uncalculated.len() < MOST_KEPT {
                    seen.uncalculated.insert((cell.row, cell.column));
                }
            }
            _ => {}
        }
        Ok(())
    })?;
    Ok(seen)
}

fn open(tag: &Tag<'_>, cell: &mut Passing, seen: &mut Seen) {
    match tag.name() {
        "row" => {
            cell.row = tag.number("r").unwrap_or(cell.row.saturating_add(1));
            cell.column = 0;
            if is_true(tag.attribute("hidden").as_deref()) && seen.hidden_rows.len() < MOST_KEPT {
                seen.hidden_rows.insert(cell.row);
            }
        }
        "c" => {
            let (row, column) = tag
                .attribute("r")
                .and_then(|name| cell_place(&name))
                .unwrap_or((cell.row, cell.column.saturating_add(1)));
            *cell = Passing {
                row,
                column,
                is_text: matches!(
                    tag.attribute("t").as_deref(),
                    Some("str" | "s" | "inlineStr" | "b" | "e")
                ),
                ..Passing::default()
            };
        }
        "f" => cell.formula = true,
        "v" => cell.in_value = true,
        _ => {}
    }
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hidden_rows_and_formulas_without_result() {
        let seen = xlsx_sheet(
            br#"<sheetData><row r="1"><c r="A1"><v>1</v></c></row><row r="5" hidden="1"><c r="B5"><f>A1</f></c><c r="C5"><f>A1</f><v>0</v></c><c r="AA5"><f>A1</f><v>12</v></c><c><f>A1</f><v/></c></row></sheetData>"#,
        )
        .expect("is sound");
        assert_eq!(seen.hidden_rows, BTreeSet::from([5]));
        assert_eq!(seen.uncalculated, BTreeSet::from([(5, 2), (5, 3), (5, 28)]));
        assert_eq!(cell_place("AA5"), Some((5, 27)));
    }

    #[test]
    fn more_shared_strings_than_cells_are_refused() {
        assert_eq!(
            shared_strings(b"<sst uniqueCount=\"4000000000\"><si><t>a</t></si></sst>"),
            Err(Fault::TooLarge)
        );
        let many = [b"<sst>".to_vec(), b"<si/>".repeat(MOST_CELLS + 1)].concat();
        assert_eq!(shared_strings(&many), Err(Fault::TooLarge));
    }
}
