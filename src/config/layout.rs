//! `[[layout]]`: where the columns and lone cells of a lab file stand whose headings are not recognised.

use super::settings::{Faults, Section};
use super::{CellRef, Layout, LayoutCell, LayoutColumn, unknown};

/// Reads one block.
pub fn read(section: &Section, faults: &mut Faults) -> Layout {
    let files = section.text("files", faults);
    if !section.has("files") {
        faults.missing(format!(
            "{} needs `files`: a pattern such as \"FH-*.xlsx\"",
            section.name()
        ));
    }
    let mut columns = Vec::new();
    for (key, span, heading) in section.texts("columns", faults) {
        match column(&key) {
            Some(column) => columns.push((column, heading)),
            None => {
                let nearest = unknown::nearest(&key, &LAYOUT_COLUMNS.map(|(_, word)| word));
                faults.at(
                    &span,
                    format!(
                        "{}: unknown column `{key}`; the nearest known one is `{nearest}`",
                        section.name()
                    ),
                );
            }
        }
    }
    let mut cells = Vec::new();
    for (key, span, written) in section.texts("cells", faults) {
        let known = CELLS.iter().find(|(_, word)| *word == key);
        let place = cell(&written);
        match (known, place) {
            (Some((known, _)), Some(place)) => cells.push((*known, place)),
            (None, _) => {
                let nearest = unknown::nearest(&key, &CELLS.map(|(_, word)| word));
                faults.at(
                    &span,
                    format!(
                        "{}: unknown cell `{key}`; the nearest known one is `{nearest}`",
                        section.name()
                    ),
                );
            }
            (_, None) => faults.at(
                &span,
                format!(
                    "{} cells {key} is \"{written}\": a cell is wanted as the spreadsheet shows it, such as \"D4\"",
                    section.name()
                ),
            ),
        }
    }
    Layout {
        files: files.unwrap_or_default(),
        sheet: section.text("sheet", faults),
        header_row: section.whole(
            "header_row",
            (1, 1_048_576),
            ": rows are counted from 1",
            faults,
        ),
        columns,
        cells,
    }
}

/// The columns that a layout can name, but for the numbered results (`result_1`, `result_2` …).
pub const LAYOUT_COLUMNS: [(LayoutColumn, &str); 12] = [
    (LayoutColumn::Sample, "sample"),
    (LayoutColumn::Extraction, "extraction"),
    (LayoutColumn::Result, "result"),
    (LayoutColumn::Unit, "unit"),
    (LayoutColumn::Lloq, "lloq"),
    (LayoutColumn::Lod, "lod"),
    (LayoutColumn::Uncertainty, "uncertainty"),
    (LayoutColumn::TestedOn, "tested_on"),
    (LayoutColumn::Report, "report"),
    (LayoutColumn::Assay, "assay"),
    (LayoutColumn::Dilution, "dilution"),
    (LayoutColumn::Remark, "remark"),
];

const CELLS: [(LayoutCell, &str); 10] = [
    (LayoutCell::Report, "report"),
    (LayoutCell::Lab, "lab"),
    (LayoutCell::Assay, "assay"),
    (LayoutCell::Unit, "unit"),
    (LayoutCell::Lloq, "lloq"),
    (LayoutCell::Lod, "lod"),
    (LayoutCell::Uloq, "uloq"),
    (LayoutCell::TestedOn, "tested_on"),
    (LayoutCell::ReceivedOn, "received_on"),
    (LayoutCell::IssuedOn, "issued_on"),
];

fn column(key: &str) -> Option<LayoutColumn> {
    if let Some(number) = key.strip_prefix("result_") {
        return number
            .parse()
            .ok()
            .filter(|n| (1..=99).contains(n))
            .map(LayoutColumn::ResultOf);
    }
    LAYOUT_COLUMNS
        .iter()
        .find(|(_, word)| *word == key)
        .map(|(column, _)| *column)
}

/// `D4` or `$D$4`, in either case.
fn cell(written: &str) -> Option<CellRef> {
    let plain = written.replace('$', "").to_ascii_uppercase();
    let digits = plain.find(|c: char| c.is_ascii_digit())?;
    let (letters, row) = plain.split_at(digits);
    if !(1..=3).contains(&letters.len()) || !letters.bytes().all(|b| b.is_ascii_uppercase()) {
        return None;
    }
    let column = letters
        .bytes()
        .fold(0, |sum, letter| sum * 26 + u32::from(letter - b'A') + 1);
    let row = row.parse().ok().filter(|row| *row > 0)?;
    Some(CellRef { column, row })
}
