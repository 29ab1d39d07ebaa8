//! A table in several parts: its headings stand anew on each page or sheet, and a package's extractions on both sides of a cut.

use crate::gather::books::Row;
use crate::gather::readings::values::is_figure;
use crate::gather::tables::location::Located;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;
use crate::model::extraction::{Extraction, Outcome};
use crate::model::understanding::UnderstoodTable;
use std::ops::Range;

/// A table that was read, as far as a later one may go on from it.
pub struct Page<'a> {
    located: &'a Located<'a>,
    /// Whether rows are extractions that the lab does not number.
    counts_rows: bool,
    /// Its part of the extractions of the file.
    part: Range<usize>,
}

impl<'a> Page<'a> {
    /// A table and its part of the extractions.
    pub fn new(located: &'a Located<'a>, plan: &Plan, part: Range<usize>) -> Page<'a> {
        let unnumbered = plan.extraction.is_none() && !plan.wells;
        Page {
            located,
            counts_rows: unnumbered && !plan.is_wide() && !located.turned,
            part,
        }
    }

    /// Numbers the extractions of this page after those of the pages before that have the same headings. A package whose
    /// results all stand there already is left: that is a copy. So is a page under words such as "repeat analysis": which
    /// of two analyses stands is for a person to say.
    pub fn go_on_from(
        &self,
        before: &[Page<'_>],
        extractions: &mut [Extraction],
        understood: &mut UnderstoodTable,
    ) {
        let pages: Vec<&Page<'_>> = before
            .iter()
            .filter(|page| self.goes_on_from(page))
            .collect();
        if pages.is_empty() || self.is_another_analysis() {
            return;
        }
        let mut counted_on: Vec<String> = Vec::new();
        for code in codes(&extractions[self.part.clone()]) {
            let outcomes = |page: &Page<'_>| outcomes(&extractions[page.part.clone()], &code);
            let own = outcomes(self);
            let is_copy = own.len() > 1 && pages.iter().any(|page| outcomes(page) == own);
            let known = pages.iter().map(|page| outcomes(page).len()).sum::<usize>() as u32;
            if known == 0 || is_copy {
                continue;
            }
            let ours = extractions[self.part.clone()]
                .iter_mut()
                .filter(|one| one.package_code == code && !one.numbered_by_lab);
            for extraction in ours {
                let (old, new) = (extraction.number, extraction.number + known);
                extraction.number = new;
                renumber(understood, extraction.source.row, old, new);
            }
            counted_on.push(code);
        }
        if !counted_on.is_empty() {
            understood.shape.push(format!(
                "goes on from a table above with the same headings: the rows of {} are numbered on from it",
                counted_on.join(", ")
            ));
        }
    }

    /// Whether this is a further part of another table: rows under the same headings.
    fn goes_on_from(&self, before: &Page<'_>) -> bool {
        let headings = |page: &Page<'_>| -> Vec<String> {
            let columns = page.located.table.columns.iter();
            columns
                .map(|column| text::plain(&column.heading).to_lowercase())
                .collect()
        };
        self.counts_rows && before.counts_rows && headings(self) == headings(before)
    }

    /// Whether the words above its headings, up to the table before, or the sheet's name, speak of a repeat.
    fn is_another_analysis(&self) -> bool {
        let sheet = &self.located.sheet;
        let above = sheet
            .rows
            .iter()
            .rev()
            .skip_while(|row| row.number >= self.located.table.heading_row)
            .take_while(|row| !is_data(row));
        let words = above.flat_map(|row| row.cells.iter().map(|cell| cell.content.shown()));
        let mut said = words.chain(sheet.name.as_deref().map(Into::into));
        said.any(|said| vocabulary::has_one_that_means(&text::words(&said), Meaning::Again))
    }
}

/// A row that ends the words above a table: it holds a figure beside other cells.
fn is_data(row: &Row) -> bool {
    row.cells.len() > 1 && row.cells.iter().any(|cell| is_figure(&cell.content))
}

/// The packages of a part, each once, in their order.
fn codes(part: &[Extraction]) -> Vec<String> {
    let mut codes: Vec<String> = Vec::new();
    for extraction in part.iter().filter(|one| !one.numbered_by_lab) {
        if !codes.contains(&extraction.package_code) {
            codes.push(extraction.package_code.clone());
        }
    }
    codes
}

fn outcomes<'a>(part: &'a [Extraction], code: &str) -> Vec<&'a Outcome> {
    part.iter()
        .filter(|one| one.package_code == code)
        .map(|one| &one.outcome)
        .collect()
}

fn renumber(understood: &mut UnderstoodTable, row: u32, old: u32, new: u32) {
    for understood in understood.rows.iter_mut().filter(|one| one.row == row) {
        understood.outcome = understood.outcome.replacen(
            &format!("extraction {old}"),
            &format!("extraction {new}"),
            1,
        );
    }
}
