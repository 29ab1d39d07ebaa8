//! `registers/registers.xlsx`: registers kept together, a sheet each.

use crate::gather::books::{Book, Cell, Content, Row, Sheet};
use crate::gather::registers::files::shown;
use crate::gather::registers::shapes::{self, Shape, bars_word, nearly};
use crate::gather::text;
use crate::model::guide;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::Doubt;
use crate::words::{english, say};
use anyhow::{Result, bail};
use std::path::Path;

/// A workbook of registers.
pub struct Together {
    file: String,
    book: Book,
}

impl Together {
    /// Reads it; tells of sheets that hold something and are no register. One whose name is nearly that of a register is a
    /// doubt, as a file would be.
    ///
    /// # Errors
    /// Where it cannot be read, or has two sheets of one register.
    pub fn read(path: &Path, doubts: &mut Vec<Doubt>, problems: &mut Problems) -> Result<Together> {
        let file = shown(path);
        let bytes = crate::files::read(path)?;
        let book = super::book(&bytes).or_else(|why| {
            bail!(
                "{file} cannot be read. {} Save it anew from a spreadsheet program as .xlsx, or restore it from a copy.",
                english().say(&why.message)
            )
        })?;
        let together = Together { file, book };
        let mut known: Vec<&str> = Vec::new();
        for sheet in together
            .book
            .sheets
            .iter()
            .filter(|sheet| !sheet.rows.is_empty())
        {
            match shape_of(sheet) {
                Some(shape) if known.contains(&shape.name) => bail!(
                    "{} has two sheets named “{}”: keep one of them, and move the other to another file",
                    together.file,
                    shape.name
                ),
                Some(shape) => known.push(shape.name),
                None => together.stranger(sheet, doubts, problems),
            }
        }
        Ok(together)
    }

    /// A register's sheet as a file of its own, with the name of the whole; none where there is none, or nothing is in it.
    pub fn of(&self, shape: &Shape) -> Option<(String, Book)> {
        let sheet = self.sheet(shape)?;
        let of_sheet = self
            .book
            .cleaned
            .iter()
            .filter(|place| place.sheet == sheet.name);
        let book = Book {
            format: self.book.format.clone(),
            cleaned: of_sheet.cloned().collect(),
            sheets: vec![sheet.clone()],
            ..Book::default()
        };
        Some((self.file.clone(), book))
    }

    /// Whether a register's sheet has no row but headings and examples.
    pub fn is_blank(&self, shape: &Shape) -> bool {
        self.sheet(shape).is_none_or(|sheet| {
            let mut rows = sheet.rows.iter().skip(1);
            rows.all(|row| is_example(row, shape))
        })
    }

    /// A register's sheet, where something is in it.
    fn sheet(&self, shape: &Shape) -> Option<&Sheet> {
        self.book.sheets.iter().find(|sheet| {
            !sheet.rows.is_empty() && shape_of(sheet).is_some_and(|of| of.name == shape.name)
        })
    }

    fn stranger(&self, sheet: &Sheet, doubts: &mut Vec<Doubt>, problems: &mut Problems) {
        let name = name_of(sheet);
        let place = Place {
            sheet: sheet.name.as_deref().map(str::to_owned),
            ..Place::file(self.file.clone())
        };
        let near = shapes::ALL
            .into_iter()
            .find(|shape| nearly(&name, shape.name));
        let Some(shape) = near else {
            let names: Vec<&str> = guide::GUIDES.iter().map(|guide| guide.name).collect();
            problems.add(
                Code::Suspicious,
                place,
                say::found_no_register("sheet"),
                say::do_keep_sheet_elsewhere(names.join(", ")),
            );
            return;
        };
        let bars = bars_word(shape.name_bars);
        problems.add(
            Code::RegisterError,
            place.clone(),
            say::found_misnamed_sheet(shape.name, bars),
            match shape.name == shapes::ISSUED.name {
                true => say::do_take_issued_out(),
                false => say::do_rename_sheet(shape.name),
            },
        );
        doubts.push(shape.misnamed(place));
    }
}

/// Which register a sheet is. What was issued is kept by the program itself, in a file of its own.
fn shape_of(sheet: &Sheet) -> Option<&'static Shape> {
    let name = name_of(sheet);
    let mut shapes = shapes::ALL.into_iter();
    shapes.find(|shape| shape.name == name && shape.name != shapes::ISSUED.name)
}

fn name_of(sheet: &Sheet) -> String {
    let name = sheet.name.as_deref().unwrap_or_default();
    text::plain(name).trim().to_lowercase()
}

/// Whether a row is the example of a new register, as it was laid out: marked as one, and with no words but the example's. A
/// row that keeps the mark under words of a person's own is read like any other, so that nothing of theirs is lost in silence.
pub fn is_example(row: &Row, shape: &Shape) -> bool {
    let of_shape = |guide: &&guide::Guide| guide.name == shape.name;
    let Some(guide) = guide::GUIDES.iter().find(of_shape) else {
        return false;
    };
    let shown = row.cells.iter().map(|cell| cell.content.shown());
    let texts: Vec<String> = shown.map(|text| text.trim().to_owned()).collect();
    let is_of_example = |(cell, text): (&Cell, &String)| {
        let is_text = matches!(cell.content, Content::Text(_));
        !is_text || guide.columns.iter().any(|column| column.example == text)
    };
    texts.iter().any(|text| text == guide::EXAMPLE)
        && row.cells.iter().zip(&texts).all(is_of_example)
}
