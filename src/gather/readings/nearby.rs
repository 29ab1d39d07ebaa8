//! A unit that stands beside the results under no known heading, or in a row right below their heading.
//!
//! What is a unit as a whole, right behind a result or right before it, is that result's; so is the only one of a row with one
//! result, unless it stands behind another figure. What is a unit as a whole above the first row of a package, in a column of
//! results, is that column's.

use crate::gather::books::{Content, Row};
use crate::gather::readings::values;
use crate::gather::tables::finding::Table;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::units;
use std::collections::BTreeMap;

/// A unit and where it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Nearby {
    /// As written.
    pub written: String,
    /// Its row.
    pub row: u32,
    /// Its column.
    pub column: u32,
}

/// The units below the headings of results, by column.
pub fn below_headings(plan: &Plan, rows: &[Row]) -> BTreeMap<u32, Nearby> {
    const ROWS: usize = 3;
    let mut found = BTreeMap::new();
    let before = rows.iter().take_while(|row| row.at(plan.sample).is_none());
    for row in before.take(ROWS) {
        for result in &plan.results {
            if let Some(content) = row.at(result.column).filter(|content| is_unit(content)) {
                found
                    .entry(result.column)
                    .or_insert_with(|| nearby(row, result.column, content));
            }
        }
    }
    found
}

/// The unit beside a result of this row.
pub fn beside(table: &Table, plan: &Plan, row: &Row, result: u32) -> Option<Nearby> {
    let is_free = |column: u32| {
        let known = table.column(column).and_then(|column| column.role());
        known.is_none() && column != plan.sample && (table.span.0..=table.span.1).contains(&column)
    };
    let unit_at = |column: u32| {
        let content = row.at(column).filter(|_| is_free(column))?;
        is_unit(content).then(|| nearby(row, column, content))
    };
    if let Some(found) = unit_at(result + 1).or_else(|| unit_at(result.saturating_sub(1))) {
        return Some(found);
    }
    if plan.results.len() > 1 {
        return None;
    }
    let is_of_another = |column: u32| {
        row.at(column.saturating_sub(1))
            .is_some_and(values::is_figure)
    };
    let mut free = table
        .cells(row)
        .filter_map(|(column, _)| unit_at(column))
        .filter(|found| !is_of_another(found.column));
    free.next().filter(|_| free.next().is_none())
}

fn nearby(row: &Row, column: u32, content: &Content) -> Nearby {
    Nearby {
        written: content.shown().into_owned(),
        row: row.number,
        column,
    }
}

/// Whether a cell is a unit as a whole, one that converts or not.
fn is_unit(content: &Content) -> bool {
    const LONGEST: usize = 40;
    let Content::Text(written) = content else {
        return false;
    };
    written.len() <= LONGEST && (units::read(written).is_some() || units::looks_like_unit(written))
}
