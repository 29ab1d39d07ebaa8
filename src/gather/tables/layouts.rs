//! `[[layout]]`: tables that a person has described, for files whose headings are not recognised.

use crate::config::Layout;
use crate::gather::books::{Row, Sheet};
use crate::gather::tables::finding::{Column, Table};
use crate::gather::tables::headings::{self, Heading, Role};
use crate::gather::tables::roles;
use crate::gather::text;
pub use crate::model::glob::path_fits;

/// The table that a layout describes, where its headings stand in this sheet.
pub fn find(sheet: &Sheet, layout: &Layout) -> Option<Table> {
    if !names_sheet(layout, sheet) {
        return None;
    }
    let candidates = sheet
        .rows
        .iter()
        .enumerate()
        .filter(|(_, row)| layout.header_row.is_none_or(|wanted| row.number == wanted));
    for (index, row) in candidates {
        if let Some(columns) = columns(row, layout) {
            return Some(Table {
                heading_row: row.number,
                columns,
                rows: index + 1..sheet.rows.len(),
                span: (1, u32::MAX),
            });
        }
    }
    None
}

/// Whether a layout is for this sheet of its file.
pub fn names_sheet(layout: &Layout, sheet: &Sheet) -> bool {
    layout
        .sheet
        .as_ref()
        .is_none_or(|wanted| same_name(wanted, sheet.name.as_deref().unwrap_or_default()))
}

fn same_name(a: &str, b: &str) -> bool {
    text::plain(a).to_lowercase() == text::plain(b).to_lowercase()
}

/// The columns of a row of headings, where it holds every heading of the layout.
fn columns(row: &Row, layout: &Layout) -> Option<Vec<Column>> {
    if layout.columns.is_empty() {
        return None;
    }
    let names = |wanted: fn(Role) -> bool| {
        let mut roles = layout
            .columns
            .iter()
            .map(|(column, _)| roles::of_layout(*column));
        roles.any(wanted)
    };
    let (has_sample, has_result) = (names(is_sample), names(is_result));
    let may_add = |role: Role| {
        roles::kind(role).is_some_and(|kind| kind.joins_layout)
            || (!has_sample && is_sample(role))
            || (!has_result && (is_result(role) || is_number(role)))
    };
    let mut columns: Vec<Column> = row
        .cells
        .iter()
        .map(|cell| {
            let heading = cell.content.shown().into_owned();
            Column {
                column: cell.column,
                meaning: headings::read(&heading).filter(|meaning| may_add(meaning.role)),
                heading,
                spread: false,
            }
        })
        .collect();
    let mut taken = Vec::new();
    for (wanted, heading) in &layout.columns {
        let column = columns.iter_mut().find(|column| {
            !taken.contains(&column.column) && same_name(&column.heading, heading)
        })?;
        taken.push(column.column);
        let read = headings::read(&column.heading);
        let parted = crate::gather::tables::units::part(&column.heading);
        column.meaning = Some(Heading {
            role: roles::of_layout(*wanted),
            unit: parted.unit,
            foreign: parted.foreign,
            limits: read.as_ref().map(|read| read.limits).unwrap_or_default(),
            quantity: read
                .and_then(|read| read.quantity)
                .or(crate::gather::tables::units::quantity(&column.heading)),
        });
    }
    // What the layout names is not named a second time by our own reading.
    let named: Vec<Role> = layout
        .columns
        .iter()
        .map(|(wanted, _)| roles::of_layout(*wanted))
        .collect();
    for column in &mut columns {
        if !taken.contains(&column.column)
            && column.role().is_some_and(|role| named.contains(&role))
        {
            column.meaning = None;
        }
    }
    let holds = |wanted: fn(Role) -> bool| columns.iter().filter_map(Column::role).any(wanted);
    (holds(is_sample) && holds(is_result)).then_some(columns)
}

fn is_sample(role: Role) -> bool {
    role == Role::Sample
}

fn is_result(role: Role) -> bool {
    matches!(role, Role::Result(_) | Role::Final)
}

fn is_number(role: Role) -> bool {
    matches!(
        role,
        Role::Extraction | Role::Replicate | Role::Well | Role::Mean
    )
}

/// Whether a layout is for this file.
pub fn is_for(layout: &Layout, path: &str) -> bool {
    path_fits(&layout.files, path)
}
