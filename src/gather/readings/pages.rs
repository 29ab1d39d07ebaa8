//! A table that page breaks have cut: its headings stand anew on each page, and a pair may stand on both sides of a cut.

use crate::gather::books::{Row, Sheet};
use crate::gather::tables::location::Located;
use crate::gather::tables::plan::Plan;
use crate::model::extraction::Extraction;
use crate::model::understanding::UnderstoodTable;
use std::ops::Range;

/// A table that was read, as far as the next one may go on from it.
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
        Page {
            located,
            counts_rows: !plan.is_wide() && !located.turned && plan.extraction.is_none(),
            part,
        }
    }

    /// Numbers the extraction at the head of this page after the one at the foot of the page before, where they are the
    /// two of one package. That is safe only where nothing but blank rows stands between the pages, the headings are the
    /// same, and every other package has its extractions together: else the second table may be another analysis.
    pub fn go_on_from(
        &self,
        before: &Page<'_>,
        extractions: &mut [Extraction],
        understood: &mut UnderstoodTable,
    ) {
        if !self.counts_rows || !before.counts_rows || !self.follows(before) {
            return;
        }
        let (foot, head) = (
            &extractions[before.part.clone()],
            &extractions[self.part.clone()],
        );
        let (Some(last), Some(first)) = (foot.last(), head.first()) else {
            return;
        };
        let code = first.package_code.clone();
        let count = |part: &[Extraction], code: &str| {
            part.iter().filter(|one| one.package_code == code).count()
        };
        let others_are_together = [foot, head].iter().all(|part| {
            let mut others = part.iter().filter(|one| one.package_code != code);
            others.all(|one| count(part, &one.package_code) > 1)
        });
        let any_other = count(foot, &code) < foot.len() || count(head, &code) < head.len();
        let are_a_pair = last.package_code == code
            && [last, first]
                .iter()
                .all(|one| one.number == 1 && !one.numbered_by_lab)
            && count(foot, &code) == 1
            && count(head, &code) == 1
            && rows(before.located).last().map(|row| row.number) == Some(last.source.row)
            && rows(self.located).first().map(|row| row.number) == Some(first.source.row);
        if !(are_a_pair && others_are_together && any_other) {
            return;
        }
        let row = first.source.row;
        extractions[self.part.start].number = 2;
        for understood in understood.rows.iter_mut().filter(|one| one.row == row) {
            understood.outcome = understood
                .outcome
                .replacen("extraction 1", "extraction 2", 1);
        }
        understood.shape.push(format!(
            "goes on from the table above, as after a page break: row {row} is extraction 2 of {code}"
        ));
    }

    /// Whether the same headings stand in the next row that holds something.
    fn follows(&self, before: &Page<'_>) -> bool {
        let sheet: &Sheet = &self.located.sheet;
        let next = sheet.rows.get(before.located.table.rows.end);
        let headings = |page: &Page<'_>| -> Vec<(u32, String)> {
            let columns = page.located.table.columns.iter();
            columns
                .map(|column| (column.column, column.heading.clone()))
                .collect()
        };
        next.map(|row| row.number) == Some(self.located.table.heading_row)
            && headings(self) == headings(before)
    }
}

fn rows<'a>(located: &'a Located<'_>) -> &'a [Row] {
    &located.sheet.rows[located.table.rows.clone()]
}
