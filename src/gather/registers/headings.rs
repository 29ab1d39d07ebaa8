//! A register's headings: which column is which, and what is to be said of those that are none.

use crate::gather::books::Sheet;
use crate::gather::registers::shapes::{Shape, bars_word, nearly};
use crate::gather::text;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Doubt, DoubtKind};
use crate::words::say;
use anyhow::{Result, bail};
use std::collections::{BTreeMap, BTreeSet};

/// The columns of a register by name.
pub struct Headings {
    /// Each column, from 1.
    pub columns: BTreeMap<&'static str, u32>,
    /// Every column that has a heading, known or not.
    pub headed: BTreeSet<u32>,
}

/// Reads the first row that holds something.
///
/// # Errors
/// Where a column is missing that is needed.
pub fn read(
    file: &str,
    sheet: &Sheet,
    shape: &'static Shape,
    doubts: &mut Vec<Doubt>,
    problems: &mut Problems,
) -> Result<Headings> {
    let mut teller = Teller {
        file,
        sheet,
        shape,
        doubts,
        problems,
    };
    let mut columns = BTreeMap::new();
    let mut unknown = Vec::new();
    let mut headed = BTreeSet::new();
    let cells = sheet.rows.first().map_or(&[][..], |row| &row.cells);
    for cell in cells {
        let written = text::plain(&cell.content.shown()).trim().to_owned();
        if !written.is_empty() {
            headed.insert(cell.column);
        }
        let name = written.to_lowercase().replace([' ', '-'], "_");
        match shape.columns().find(|column| *column == name) {
            Some(column) if columns.contains_key(column) => {
                teller.twice(column, cell.column);
            }
            Some(column) => {
                columns.insert(column, cell.column);
            }
            None if name.is_empty() => {}
            None => unknown.push((written, name, cell.column)),
        }
    }
    let missing: Vec<&'static str> = shape
        .columns()
        .filter(|column| !columns.contains_key(column))
        .collect();
    let meant = |name: &str| {
        let near = missing.iter().filter(|column| nearly(name, column));
        near.min_by_key(|column| strsim::damerau_levenshtein(name, column))
            .copied()
    };
    refuse_without_needed(&teller, &missing, |column| {
        let near = unknown
            .iter()
            .find(|(_, name, _)| meant(name) == Some(column));
        near.map(|(written, ..)| written.clone())
    })?;
    for (written, name, column) in &unknown {
        match meant(name) {
            Some(meant) => teller.near(written, meant, *column),
            None => teller.unknown(written, *column),
        }
    }
    Ok(Headings { columns, headed })
}

fn refuse_without_needed(
    teller: &Teller<'_>,
    missing: &[&'static str],
    near: impl Fn(&str) -> Option<String>,
) -> Result<()> {
    let needed: Vec<String> = missing
        .iter()
        .filter(|column| teller.shape.needed.contains(column))
        .map(|column| match near(column) {
            Some(written) => format!("“{column}” (“{written}” is nearly that)"),
            None => format!("“{column}”"),
        })
        .collect();
    if !needed.is_empty() {
        bail!(
            "{}: the register has no column {}, which is needed. Mend the heading, or add the column",
            teller.place(None),
            needed.join(" and no column ")
        );
    }
    Ok(())
}

/// Says what is wrong with a heading.
struct Teller<'a> {
    file: &'a str,
    sheet: &'a Sheet,
    shape: &'static Shape,
    doubts: &'a mut Vec<Doubt>,
    problems: &'a mut Problems,
}

impl Teller<'_> {
    fn place(&self, column: Option<u32>) -> Place {
        Place {
            file: self.file.to_owned(),
            sheet: self.sheet.name.as_deref().map(str::to_owned),
            row: Some(self.sheet.rows.first().map_or(1, |row| row.number)),
            column,
        }
    }

    /// What a missing column keeps from being done, as the messages that tell of it say so.
    fn costs(&self, column: &str) -> &'static str {
        match (self.shape.bears(column), self.shape.heading_bars) {
            (false, _) => "column",
            (true, bars) => bars_word(bars),
        }
    }

    fn near(&mut self, written: &str, meant: &'static str, column: u32) {
        let bears = self.shape.bears(meant);
        let code = if bears {
            Code::RegisterError
        } else {
            Code::Suspicious
        };
        self.problems.add(
            code,
            self.place(Some(column)),
            say::found_near_heading(text::short(written), meant, self.costs(meant)),
            say::do_write_heading(meant),
        );
        if bears {
            let (found, meant) = (written.to_owned(), meant.to_owned());
            self.doubt(DoubtKind::Heading { found, meant }, column);
        }
    }

    fn twice(&mut self, name: &'static str, column: u32) {
        self.problems.add(
            Code::RegisterError,
            self.place(Some(column)),
            say::found_heading_twice(name, self.costs(name)),
            say::do_keep_one_column(),
        );
        if self.shape.bears(name) {
            let heading = name.to_owned();
            self.doubt(DoubtKind::HeadingTwice { heading }, column);
        }
    }

    fn unknown(&mut self, written: &str, column: u32) {
        self.problems.add(
            Code::UnknownColumn,
            self.place(Some(column)),
            say::found_unknown_column(self.shape.name, text::short(written)),
            None,
        );
    }

    fn doubt(&mut self, what: DoubtKind, column: u32) {
        let place = self.place(Some(column));
        self.doubts.push(Doubt {
            product_id: None,
            round: None,
            bars: self.shape.heading_bars,
            what,
            place,
        });
    }
}
