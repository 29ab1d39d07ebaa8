//! A cell of results on the row of a package: what is in force for it, what stands beside it, and what keeps it from being used.

use crate::gather::books::Row;
use crate::gather::readings::intervals::{self, InForce, Reading, UnitCell};
use crate::gather::readings::limits::{self, Limits};
use crate::gather::readings::marks;
use crate::gather::readings::nearby;
use crate::gather::readings::outcomes::{CellRead, RowFacts, RowReader};
use crate::gather::readings::refusals;
use crate::gather::readings::signs;
use crate::gather::readings::tails;
use crate::gather::tables::asides;
use crate::gather::tables::headings::Role;
use crate::gather::tables::plan::ResultColumn;
use crate::gather::tables::units::{self, Quantity, Unit};
use crate::model::place::Place;
use crate::model::problem::Problems;
use crate::model::rule::Regime;

impl RowReader<'_> {
    /// Whether something on a row keeps all of its results from being used: a sign that goes with none of them, or words that
    /// say that they are none of the package.
    pub(super) fn refuse_row(&self, row: &Row, problems: &mut Problems) -> bool {
        if self.plan.ambiguous.is_some() {
            return false;
        }
        let place = |column: u32| self.context.place(row.number, column);
        if let Some((why, found)) = self.withdrawing.on(row) {
            refusals::withdrawn(place(found.column), &found.written, why, problems);
            return true;
        }
        if let Some(found) = self.signs.loose(self.table, self.plan, row) {
            refusals::loose_sign(place(found.column), &found.written, problems);
            return true;
        }
        if let Some(column) = self.zeroth(row) {
            refusals::zeroth(place(column), problems);
            return true;
        }
        false
    }

    /// The column in which a row is numbered as extraction 0, where others have their number there.
    fn zeroth(&self, row: &Row) -> Option<u32> {
        let column = self.plan.extraction?;
        let shown = row.at(column)?.shown();
        marks::is_zero(&shown).then_some(column)
    }

    /// Words in a remark that are words for a result must say what the results say; else none of the row's is used.
    pub(super) fn hold_against_remarks(
        &self,
        row: &Row,
        cells: &mut [CellRead],
        problems: &mut Problems,
    ) {
        let Some((said, found)) = signs::in_remarks(self.table, row) else {
            return;
        };
        let readings = || cells.iter().filter_map(|cell| cell.reading.as_ref());
        let figures = || readings().filter_map(|reading| reading.interval);
        if figures().next().is_none() || figures().any(|interval| signs::fits(said, &interval)) {
            return;
        }
        let place = self.context.place(row.number, found.column);
        let reported = readings().find_map(|reading| reading.reported.as_deref());
        refusals::contradicted(
            place,
            &found.written,
            reported.unwrap_or_default(),
            problems,
        );
        for cell in cells {
            cell.reading = None;
        }
    }

    /// A cell of results of which nothing is read.
    pub(super) fn without_reading(
        &self,
        row: &Row,
        result: &ResultColumn,
        facts: &RowFacts,
    ) -> CellRead {
        let content = row.at(result.column);
        CellRead {
            reading: None,
            reported: content
                .map(|content| content.shown().into_owned())
                .unwrap_or_default(),
            row: row.number,
            number: None,
            numbered: false,
            footnote: None,
            limits: self.limits(row, result, facts),
            ambiguous: self.doubtful || self.plan.ambiguous.is_some(),
            apart: false,
            source: self.context.source(row.number, result.column),
        }
    }

    pub(super) fn cell(
        &self,
        row: &Row,
        result: &ResultColumn,
        facts: &RowFacts,
        problems: &mut Problems,
    ) -> CellRead {
        let content = row.at(result.column);
        let mut cell = self.without_reading(row, result, facts);
        if cell.ambiguous {
            return cell;
        }
        let Some(content) = content else {
            cell.reading = Some(Reading::not_reported());
            return cell;
        };
        let (unit, unit_place) = self.unit_nearby(row, result);
        let mut report = intervals::Report {
            place: cell.source.place(),
            unit_place,
            problems,
        };
        let mark = tails::footnote_mark_behind(&cell.reported);
        cell.footnote = mark.and_then(|mark| {
            let notes = facts.facts.footnotes.iter();
            notes
                .rev()
                .find(|(known, _)| *known == mark)
                .map(|(_, note)| note.clone())
        });
        let in_force = self.in_force(row, result, facts, (unit, cell.limits));
        cell.reading = intervals::read(content, self.context.marks, &in_force, &mut report);
        if let Some(shown) = cell
            .reading
            .as_ref()
            .and_then(|reading| reading.reported.clone())
        {
            cell.reported = shown;
        }
        cell
    }

    /// The unit that stands by a result besides its heading, and where: in the column of units, beside it, or right below the
    /// heading.
    fn unit_nearby(&self, row: &Row, result: &ResultColumn) -> (Option<UnitCell>, Option<Place>) {
        if let Some(content) = self.at_role(row, Role::Unit) {
            let written = content.shown().into_owned();
            let column = self.plan.of(Role::Unit);
            let place = column.map(|column| self.context.place(row.number, column));
            return (Some(UnitCell::Headed(written)), place);
        }
        let beside = nearby::beside(self.table, self.plan, row, result.column);
        let Some(found) = beside.or_else(|| self.below.get(&result.column).cloned()) else {
            return (None, None);
        };
        let place = self.context.place(found.row, found.column);
        (Some(UnitCell::Bare(found.written)), Some(place))
    }

    /// What is in force for a cell: the column's own, then what the row and the file say.
    fn in_force(
        &self,
        row: &Row,
        result: &ResultColumn,
        facts: &RowFacts,
        (unit_cell, limits): (Option<UnitCell>, Limits),
    ) -> InForce {
        let meaning = self
            .table
            .column(result.column)
            .and_then(|column| column.meaning.as_ref());
        let (heading, quantity) = self.headed(row, result, facts);
        InForce {
            heading,
            foreign: meaning.is_some_and(|meaning| meaning.foreign.is_some()),
            quantity,
            unit_cell,
            facts: facts.facts.unit,
            facts_foreign: facts.facts.foreign.clone(),
            sign: self.signs.with(row, result.column),
            limits,
            lod_decides: self.context.config.rule.regime == Regime::AuNz,
        }
    }

    /// The unit of a column of results by its heading, and what it is of: each column's own.
    fn headed(
        &self,
        row: &Row,
        result: &ResultColumn,
        facts: &RowFacts,
    ) -> (Option<Unit>, Option<Quantity>) {
        let meaning = self
            .table
            .column(result.column)
            .and_then(|column| column.meaning.as_ref());
        let analyte = self
            .at_role(row, Role::Analyte)
            .map(|content| content.shown());
        let of_analyte = analyte.as_deref().map(units::part);
        let foreign = meaning.is_some_and(|meaning| meaning.foreign.is_some());
        let unit = meaning
            .and_then(|meaning| meaning.unit)
            .or(of_analyte.and_then(|parted| parted.unit))
            .or(self.unit.filter(|_| !foreign));
        let quantity = meaning
            .and_then(|meaning| meaning.quantity)
            .or(analyte.as_deref().and_then(units::quantity))
            .or(facts.facts.quantity)
            .or(self.context.subject.quantity());
        (unit, quantity)
    }

    /// The limits of the assay in force for a result. One without a unit of its own is in the unit and quantity of that result.
    fn limits(&self, row: &Row, result: &ResultColumn, facts: &RowFacts) -> Limits {
        let (heading, quantity) = self.headed(row, result, facts);
        let (nearby, _) = self.unit_nearby(row, result);
        let unit = nearby
            .and_then(|cell| units::read(cell.written()))
            .or(heading)
            .or(facts.facts.unit);
        let quantity = unit.and_then(|unit| unit.quantity).or(quantity);
        let said = self.limits_said(row, result, facts);
        limits::in_force(said, &self.context.config.testing, unit, quantity)
    }

    /// What is said of the limits: on the row or of its file in the register, else in the heading of the results, else in the file.
    fn limits_said(&self, row: &Row, result: &ResultColumn, facts: &RowFacts) -> asides::Limits {
        let column = self.table.column(result.column);
        let meaning = column.and_then(|column| column.meaning.as_ref());
        let heading = meaning.map(|meaning| meaning.limits).unwrap_or_default();
        let (stated, all) = (&self.context.stated, &facts.facts);
        let first = |role, stated: Option<_>, heading: Option<_>, all: Option<_>| {
            let is_of_row = stated.is_some() || self.at_role(row, role).is_some();
            if is_of_row { all } else { heading.or(all) }
        };
        asides::Limits {
            lloq: first(Role::Lloq, stated.lloq, heading.lloq, all.lloq),
            uloq: first(Role::Uloq, stated.uloq, heading.uloq, all.uloq),
            lod: first(Role::Lod, stated.lod, heading.lod, all.lod),
        }
    }
}
