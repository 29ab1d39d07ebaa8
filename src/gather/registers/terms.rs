//! `registers/terms.csv`: ingredient terms that a programme adds to the built-in table.

use crate::gather::registers::fields::{Fields, Table};
use crate::model::label::TermRow;
use crate::model::problem::Problems;
use crate::model::registers::{Bars, Registers};

/// Reads the register; a row without a term, grain or class is named and left out.
pub fn read(table: &Table, registers: &mut Registers, problems: &mut Problems) {
    for fields in table.rows() {
        let beyond = fields.beyond((None, None), Some(Bars::Verdict), problems);
        registers.doubts.extend(beyond);
        registers.terms.extend(row(&fields, problems));
    }
}

fn row(fields: &Fields<'_>, problems: &mut Problems) -> Option<TermRow> {
    let term = fields.needed("term", problems);
    let grain = fields.needed("grain", problems);
    let class = fields.needed("class", problems);
    Some(TermRow {
        term: term?,
        grain: grain?,
        class: class?,
        exceptions: fields.text("exceptions", problems).unwrap_or_default(),
        why: fields.text("why", problems).unwrap_or_default(),
        source: fields.text("source", problems).unwrap_or_default(),
        place: fields.place(),
    })
}
