//! A table in several parts: its headings stand anew on each page or sheet, and a package's extractions on both sides of a cut.

use crate::gather::books::Row;
use crate::gather::readings::values::is_figure;
use crate::gather::tables::location::Located;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;
use crate::model::extraction::{Extraction, Outcome};
use crate::model::understanding::{UnderstoodRow, UnderstoodTable};
use std::collections::BTreeMap;
use std::ops::Range;

/// A table that was read, as far as a later one may go on from it.
pub struct Page<'a> {
    located: &'a Located<'a>,
    /// Whether rows are extractions that the lab does not number.
    counts_rows: bool,
    /// Its headings, folded: most pages are held against many.
    headings: Vec<String>,
    /// The places of each package's extractions among those of the file.
    by_code: BTreeMap<String, Vec<usize>>,
}

impl<'a> Page<'a> {
    /// A table and its part of the extractions.
    pub fn new(
        located: &'a Located<'a>,
        plan: &Plan,
        extractions: &[Extraction],
        part: Range<usize>,
    ) -> Page<'a> {
        let unnumbered = plan.extraction.is_none() && !plan.wells;
        let mut by_code: BTreeMap<String, Vec<usize>> = BTreeMap::new();
        for at in part {
            let code = &extractions[at].package_code;
            match by_code.get_mut(code) {
                Some(places) => places.push(at),
                None => {
                    by_code.insert(code.clone(), vec![at]);
                }
            }
        }
        let headings = located.table.columns.iter();
        Page {
            located,
            counts_rows: unnumbered && !plan.is_wide() && !located.turned,
            headings: headings
                .map(|column| text::plain(&column.heading).to_lowercase())
                .collect(),
            by_code,
        }
    }

    /// What it has of a package, in order.
    fn outcomes<'e>(&self, extractions: &'e [Extraction], code: &str) -> Vec<&'e Outcome> {
        let places = self.by_code.get(code).into_iter().flatten();
        places.map(|at| &extractions[*at].outcome).collect()
    }

    /// Numbers the extractions of this page after those of the pages before that have the same headings. A package whose
    /// results all stand there already is left: that is a copy. So is a page under words such as "repeat analysis": which
    /// of two analyses stands is for a person to say. Gives back those that are counted on from another sheet.
    pub fn go_on_from(
        &self,
        before: &[Page<'_>],
        extractions: &mut [Extraction],
        understood: &mut UnderstoodTable,
    ) -> Vec<String> {
        let pages: Vec<&Page<'_>> = before
            .iter()
            .filter(|page| self.goes_on_from(page))
            .collect();
        if pages.is_empty() || self.is_another_analysis() {
            return Vec::new();
        }
        let mut counted_on: Vec<String> = Vec::new();
        let mut rows: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
        for (at, row) in understood.rows.iter().enumerate() {
            rows.entry(row.row).or_default().push(at);
        }
        for code in self.codes(extractions) {
            let own = self.outcomes(extractions, &code);
            let of = |page: &&Page<'_>| page.by_code.get(&code).map_or(0, Vec::len);
            let is_copy = own.len() > 1
                && pages
                    .iter()
                    .any(|page| of(page) == own.len() && page.outcomes(extractions, &code) == own);
            let known = pages.iter().map(of).sum::<usize>() as u32;
            if known == 0 || is_copy {
                continue;
            }
            for at in &self.by_code[&code] {
                let extraction = &mut extractions[*at];
                if extraction.numbered_by_lab {
                    continue;
                }
                let (old, new) = (extraction.number, extraction.number + known);
                extraction.number = new;
                for at in rows.get(&extraction.source.row).into_iter().flatten() {
                    renumber(&mut understood.rows[*at], old, new);
                }
            }
            counted_on.push(code);
        }
        if !counted_on.is_empty() {
            understood.shape.push(format!(
                "goes on from a table above with the same headings: the rows of {} are numbered on from it",
                counted_on.join(", ")
            ));
        }
        let is_here = |page: &&Page<'_>| page.located.sheet.name == self.located.sheet.name;
        if pages.iter().all(is_here) {
            counted_on.clear();
        }
        counted_on
    }

    /// Whether this is a further part of another table: rows under the same headings.
    fn goes_on_from(&self, before: &Page<'_>) -> bool {
        self.counts_rows && before.counts_rows && self.headings == before.headings
    }

    /// Its packages with extractions that the lab does not number, each once, in their order.
    fn codes(&self, extractions: &[Extraction]) -> Vec<String> {
        let first = |(code, places): (&String, &Vec<usize>)| {
            let unnumbered = places.iter().find(|at| !extractions[**at].numbered_by_lab);
            unnumbered.map(|at| (*at, code.clone()))
        };
        let mut codes: Vec<(usize, String)> = self.by_code.iter().filter_map(first).collect();
        codes.sort_unstable();
        codes.into_iter().map(|(_, code)| code).collect()
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

fn renumber(understood: &mut UnderstoodRow, old: u32, new: u32) {
    understood.outcome = understood.outcome.replacen(
        &format!("extraction {old}"),
        &format!("extraction {new}"),
        1,
    );
}
