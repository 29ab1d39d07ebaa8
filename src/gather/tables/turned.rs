//! Tables that stand upright: a row a field, a column a package. Turned round, they read like any other.

use crate::gather::books::{Bound, Cell, Row, Sheet};
use crate::gather::codes::Codes;
use crate::gather::tables::finding::{self, Table};
use crate::gather::tables::headings::{self, Role};
use std::collections::BTreeMap;
use std::sync::Arc;

/// The upright tables of a sheet, each with the part of the sheet that holds it, turned round. Only such that name
/// registered packages: a form is not a table.
///
/// # Errors
/// As [`finding::find`].
pub fn find(sheet: &Sheet, codes: &Codes) -> Result<Vec<(Arc<Sheet>, Table)>, Bound> {
    const MOST_ROWS: usize = 2000;
    const MOST_COLUMNS: u32 = 500;
    let width = sheet
        .rows
        .iter()
        .filter_map(|row| row.cells.last())
        .map(|cell| cell.column)
        .max()
        .unwrap_or(0);
    if sheet.rows.len() > MOST_ROWS || width > MOST_COLUMNS {
        return Ok(Vec::new());
    }
    let starts: Vec<usize> = (0..sheet.rows.len())
        .filter(|index| names_samples(&sheet.rows[*index]))
        .collect();
    let ends = starts.iter().skip(1).copied().chain([sheet.rows.len()]);
    let mut found = Vec::new();
    for (start, end) in starts.iter().copied().zip(ends) {
        // What stands above the first block, such as the extraction's number, belongs to it.
        let start = if found.is_empty() && starts.len() == 1 {
            0
        } else {
            start
        };
        let turned = Arc::new(turn(sheet, &sheet.rows[start..end]));
        for table in finding::find(&turned, codes)? {
            if names_packages(&turned, &table, codes) {
                found.push((Arc::clone(&turned), table));
            }
        }
    }
    Ok(found)
}

/// Whether a row starts with the word for a sample.
fn names_samples(row: &Row) -> bool {
    row.cells.first().is_some_and(|cell| {
        let shown = cell.content.shown();
        let label = shown.trim_end_matches(':');
        headings::may_be_heading(label)
            && headings::read(label)
                .is_some_and(|heading| matches!(heading.role, Role::Sample | Role::LabSample))
    })
}

fn names_packages(sheet: &Sheet, table: &Table, codes: &Codes) -> bool {
    table
        .columns
        .iter()
        .filter(|column| matches!(column.role(), Some(Role::Sample | Role::LabSample)))
        .any(|column| {
            sheet.rows[table.rows.clone()]
                .iter()
                .filter_map(|row| row.at(column.column))
                .any(|content| codes.find(&content.shown()).is_some())
        })
}

/// Rows as columns. A row number becomes a column number, so that places can be turned back.
fn turn(sheet: &Sheet, rows: &[Row]) -> Sheet {
    let mut columns: BTreeMap<u32, Vec<Cell>> = BTreeMap::new();
    for row in rows {
        for cell in &row.cells {
            columns.entry(cell.column).or_default().push(Cell {
                column: row.number,
                content: cell.content.clone(),
            });
        }
    }
    let hidden = rows.iter().filter(|row| row.hidden);
    Sheet {
        name: sheet.name.clone(),
        hidden: sheet.hidden,
        rows: columns
            .into_iter()
            .map(|(number, cells)| Row {
                number,
                hidden: sheet.hides(number),
                cells,
            })
            .collect(),
        merged: Vec::new(),
        hidden_columns: hidden.map(|row| (row.number, row.number)).collect(),
    }
}
