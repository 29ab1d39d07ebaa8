//! What a lab's report says of itself, from three hands: the register of reports, the cells that a `[[layout]]` names, and
//! the lines outside the tables.

use crate::config::{Config, LayoutCell};
use crate::gather::books::Book;
use crate::gather::facts::{self, Facts};
use crate::gather::numbers::Marks;
use crate::gather::registers::paths::LabFiles;
use crate::gather::tables::headings::Role;
use crate::gather::tables::layouts;
use crate::gather::tables::units::{Quantity, Scale, Unit};
use crate::model::extraction::LabRecord;
use crate::model::registers::{Registers, ReportRow};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// What the register of reports says, by lab file.
#[derive(Debug, Default)]
pub struct Reports<'a> {
    rows: BTreeMap<&'a str, &'a ReportRow>,
    replaced: BTreeSet<&'a str>,
}

impl<'a> Reports<'a> {
    /// Which row is for which file, and which files are replaced.
    pub fn new(registers: &'a Registers, files: LabFiles<'a>) -> Reports<'a> {
        let mut reports = Reports::default();
        for row in &registers.reports {
            for path in files.matching(&row.file) {
                reports.rows.entry(path).or_insert(row);
            }
            reports.replaced.extend(row.supersedes.as_deref());
        }
        reports
    }

    /// Whether a later file replaces this one: then it is not read, and nothing is said of it.
    pub fn is_replaced(&self, path: &str) -> bool {
        self.replaced.contains(path)
    }

    /// The row for a file.
    pub fn of(&self, path: &str) -> Option<&'a ReportRow> {
        self.rows.get(path).copied()
    }
}

/// What a row says of all results of its files. Its limits are in ppm gluten.
pub fn stated(row: Option<&ReportRow>) -> Facts {
    let Some(row) = row else {
        return Facts::default();
    };
    let gluten = Unit {
        ppm: Scale::One,
        quantity: Some(Quantity::Gluten),
    };
    let to = row.tested_to.or(row.tested_from);
    Facts {
        report: row.report.as_deref().map(Arc::from),
        tested: to.map(|to| (row.tested_from.unwrap_or(to), to)),
        issued_on: row.issued_on,
        received_on: row.received_on,
        accredited: row.accredited,
        lloq: row.lloq.map(|limit| (limit.0, Some(gluten))),
        lod: row.lod.map(|limit| (limit.0, Some(gluten))),
        uncertainty: row.uncertainty.as_deref().map(Arc::from),
        ..Facts::default()
    }
}

/// What the cells say that the layouts of a file name, for each of its sheets.
pub fn cells(book: &Book, path: &str, config: &Config, marks: Marks) -> Vec<Facts> {
    let layouts = || {
        let all = config.layouts.iter();
        all.filter(|layout| layouts::is_for(layout, path) && !layout.cells.is_empty())
    };
    let of_sheet = |sheet| {
        let mut said = Facts::default();
        for layout in layouts().filter(|layout| layouts::names_sheet(layout, sheet)) {
            for (what, at) in &layout.cells {
                let row = sheet.rows.binary_search_by_key(&at.row, |row| row.number);
                let Some(content) = row.ok().and_then(|row| sheet.rows[row].at(at.column)) else {
                    continue;
                };
                facts::of_cell(&mut said, role(*what), content, marks);
            }
        }
        said
    };
    book.sheets.iter().map(of_sheet).collect()
}

fn role(cell: LayoutCell) -> Role {
    match cell {
        LayoutCell::Report => Role::Report,
        LayoutCell::Lab => Role::Lab,
        LayoutCell::Assay => Role::Assay,
        LayoutCell::Unit => Role::Unit,
        LayoutCell::Lloq => Role::Lloq,
        LayoutCell::Lod => Role::Lod,
        LayoutCell::Uloq => Role::Uloq,
        LayoutCell::TestedOn => Role::TestedOn,
        LayoutCell::ReceivedOn => Role::ReceivedOn,
        LayoutCell::IssuedOn => Role::IssuedOn,
    }
}

/// What the report says of itself, as it goes with each of its results.
pub fn record(said: &Facts, row: Option<&ReportRow>) -> LabRecord {
    let owned = |text: &Option<Arc<str>>| text.as_deref().map(str::to_owned);
    LabRecord {
        lab_address: owned(&said.address),
        issued_on: said.issued_on,
        received_on: said.received_on,
        condition: row.and_then(|row| row.condition.clone()),
        uncertainty: owned(&said.uncertainty),
        accredited: said.accredited,
        remarks: said.remarks.iter().map(|line| line.to_string()).collect(),
        certificate: row.and_then(|row| row.certificate.clone()),
        replaces: row.is_some_and(|row| row.supersedes.is_some()),
    }
}
