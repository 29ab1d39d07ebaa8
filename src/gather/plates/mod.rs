//! Plates in a lab file: wells with their absorbances and what is in each. They are never readings.
//!
//! What was found of a plate is taken out of the book before tables of results are looked for, so that no absorbance and no
//! concentration of a standard can be taken for a result.

/// Wells one below the other.
mod long;

/// What the columns of such a table are.
mod headings;

/// Grids of 1 to 12 across and A to H down.
mod grid;

/// What is in a well.
mod contents;

/// What one text says of it.
mod inline;

/// Figures, dilutions and the like, as labs write them.
mod figures;

/// Wells -> standards, blanks, controls, samples.
mod assembly;

use crate::config::Config;
use crate::gather::books::{Book, Content, Sheet};
use crate::gather::codes::Codes;
use crate::gather::text;
use crate::model::glob::path_fits;
use crate::model::place::{LabFile, Place};
use crate::model::plate::{Plate, StandardUnit};
use crate::model::problem::{Code, Problems};
use crate::words::say;
use contents::Contents;
use std::borrow::Cow;
use std::cell::Cell;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Plates of one file that are read; a round has one or two.
const MOST_PLATES: usize = 100;

/// What a file holds of plates.
#[derive(Debug, Default)]
pub struct Found {
    /// Those that were understood.
    pub plates: Vec<Plate>,
    /// Whether anything of a plate is there, understood or not.
    pub any: bool,
    /// The cells of plates, by sheet: row as shown, and column.
    cells: Vec<BTreeSet<(u32, u32)>>,
}

/// What the readers of plates share.
pub(crate) struct Reading<'a> {
    file: &'a Arc<LabFile>,
    codes: &'a Codes,
    unit: StandardUnit,
    /// Headings that a layout of the settings names for this file: what they head is read by it.
    described: Vec<String>,
    /// How often the register was asked for a code that is like a stranger's.
    asked: Cell<usize>,
}

/// A plate as its wells stand in the file.
struct RawPlate<'a> {
    sheet: &'a Sheet,
    name: Option<String>,
    row: u32,
    wells: Vec<RawWell>,
}

/// A well as it stands in the file.
struct RawWell {
    /// `A1`.
    name: String,
    row: u32,
    column: u32,
    /// What was read in it, or the text that is no such figure.
    absorbance: Result<f64, String>,
    contents: Contents,
}

/// What is wrong with a plate.
#[derive(Clone, Debug, PartialEq)]
struct Fault {
    /// Which, a word of the message.
    kind: &'static str,
    well: String,
    written: String,
    other: String,
}

impl Fault {
    fn new(kind: &'static str, well: &str, written: impl Into<String>) -> Fault {
        Fault {
            kind,
            well: well.to_owned(),
            written: written.into(),
            other: String::new(),
        }
    }

    fn and(self, other: impl Into<String>) -> Fault {
        Fault {
            other: other.into(),
            ..self
        }
    }

    /// Whether it is of a well with a registered package: then nothing else of the plate hangs on it.
    fn is_of_a_sample(&self) -> bool {
        matches!(self.kind, "content" | "dilution" | "extraction")
    }

    /// Tells of it; `lost` is what is not read: the plate, or the sample in the well, or nothing.
    fn tell(self, lost: &'static str, place: Place, problems: &mut Problems) {
        problems.add(
            Code::PlateUnreadable,
            place,
            say::found_plate_fault(self.kind, self.well, self.written, self.other, lost),
            say::do_plate_fault(self.kind),
        );
    }
}

/// Finds the plates of a book.
pub fn find(
    file: &Arc<LabFile>,
    book: &Book,
    codes: &Codes,
    config: &Config,
    problems: &mut Problems,
) -> Found {
    let reading = Reading {
        file,
        codes,
        unit: config.plate.standards,
        described: described(&file.path, config),
        asked: Cell::new(0),
    };
    let mut found = Found {
        cells: vec![BTreeSet::new(); book.sheets.len()],
        ..Found::default()
    };
    let mut raw: Vec<RawPlate<'_>> = Vec::new();
    for (sheet, cells) in book.sheets.iter().zip(&mut found.cells) {
        raw.extend(long::find(sheet, &reading, cells, problems));
    }
    raw.extend(grid::find(book, &reading, &mut found.cells, problems));
    found.any = found.cells.iter().any(|cells| !cells.is_empty());
    if raw.len() > MOST_PLATES {
        let fault = Fault::new("many", "", raw.len().to_string()).and(MOST_PLATES.to_string());
        fault.tell("plate", Place::file(file.path.clone()), problems);
        return found;
    }
    for (index, raw) in raw.into_iter().enumerate() {
        let plate = assembly::plate(raw, index + 1, &reading, problems);
        found.plates.extend(plate);
    }
    found
}

impl Found {
    /// The book without its plates.
    pub fn rest<'b>(&self, book: &'b Book) -> Cow<'b, Book> {
        if !self.any {
            return Cow::Borrowed(book);
        }
        let mut rest = book.clone();
        for (sheet, taken) in rest.sheets.iter_mut().zip(&self.cells) {
            for row in &mut sheet.rows {
                let number = row.number;
                row.cells
                    .retain(|cell| !taken.contains(&(number, cell.column)));
            }
            sheet.rows.retain(|row| !row.cells.is_empty());
        }
        Cow::Owned(rest)
    }

    /// What was made of the plates, for who looks how a file was understood.
    pub fn explained(&self) -> impl Iterator<Item = String> {
        self.plates.iter().map(|plate| {
            let name = plate.sheet.as_deref();
            let sheet = name.map(|name| format!("{name}: ")).unwrap_or_default();
            format!(
                "{sheet}plate “{}”, {} standards and {} samples; its absorbances are no results",
                plate.name,
                plate.standards.len(),
                plate.samples.len()
            )
        })
    }

    /// Whether nothing but plates is in the file: no registered code stands outside them.
    pub fn is_all(&self, rest: &Book, codes: &Codes) -> bool {
        let mut cells = rest
            .sheets
            .iter()
            .flat_map(|sheet| &sheet.rows)
            .flat_map(|row| &row.cells);
        self.any && !cells.any(|cell| codes.find(&cell.content.shown()).is_some())
    }
}

impl Reading<'_> {
    /// The registered code that is like this one. Asking costs a look at the whole register: strangers beyond the first few
    /// hundred of a file are taken for such.
    fn nearest(&self, written: &str) -> Option<&str> {
        const MOST_ASKED: usize = 300;
        self.asked.set(self.asked.get() + 1);
        (self.asked.get() <= MOST_ASKED)
            .then(|| self.codes.nearest(written))
            .flatten()
    }

    fn place(&self, sheet: &Sheet, row: u32, column: Option<u32>) -> Place {
        Place {
            sheet: sheet.name.as_deref().map(str::to_owned),
            row: Some(row),
            column,
            ..Place::file(self.file.path.clone())
        }
    }
}

/// The headings that layouts of the settings name for a file, as words.
fn described(file: &str, config: &Config) -> Vec<String> {
    let below = file.strip_prefix("inbox/").unwrap_or(file);
    let layouts = config.layouts.iter();
    layouts
        .filter(|layout| path_fits(&layout.files, below))
        .flat_map(|layout| &layout.columns)
        .map(|(_, heading)| text::words(heading))
        .collect()
}

/// The name of a well as the standard has it (ANSI/SLAS 4-2004): `A1` to `H12`. `a01` and `A 1` are the same well.
fn well_name(written: &str) -> Option<String> {
    let written = text::plain(written);
    let mut letters = written.chars();
    let row = letters.next()?.to_ascii_uppercase();
    let number = letters.as_str().trim_start();
    let is_number = !number.is_empty() && number.len() <= 2;
    if !('A'..='H').contains(&row) || !is_number || !number.bytes().all(|b| b.is_ascii_digit()) {
        return None;
    }
    let number: u32 = number.parse().ok()?;
    (1..=12).contains(&number).then(|| format!("{row}{number}"))
}

/// The text of a cell, blank where there is none.
fn shown(content: Option<&Content>) -> Cow<'_, str> {
    content.map_or(Cow::Borrowed(""), Content::shown)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn wells_are_those_of_a_plate_of_96() {
        for (written, expected) in [
            ("A1", Some("A1")),
            (" h12 ", Some("H12")),
            ("A01", Some("A1")),
            ("C 7", Some("C7")),
            ("I1", None),
            ("A0", None),
            ("A13", None),
            ("A", None),
            ("AA1", None),
            ("A1x", None),
            ("1A", None),
            ("", None),
        ] {
            assert_eq!(well_name(written).as_deref(), expected, "{written}");
        }
    }
}
