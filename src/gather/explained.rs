//! How a file was understood, in words: what an explanation shows of each table, column and row, used or not.

use crate::gather::books::Sheet;
use crate::gather::numbers::Marks;
use crate::gather::readings::extractions::Context;
use crate::gather::tables::finding::Table;
use crate::gather::tables::location::Located;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::roles::{self, Role};
use crate::model::place::column_letter;
use crate::model::understanding::UnderstoodColumn;
use std::collections::BTreeSet;

/// All that governs the reading of a table, in words.
pub fn shape(located: &Located<'_>, plan: &Plan, context: &Context<'_>) -> Vec<String> {
    let mut shape = vec![
        if plan.is_wide() {
            "wide: a row a package, a column an extraction"
        } else {
            "long: a row an extraction"
        }
        .to_owned(),
    ];
    if located.turned {
        shape = vec!["upright: a row a field, a column a package".to_owned()];
    }
    if located.by_layout {
        shape.push("its columns are named by [[layout]] in programme.toml".to_owned());
    }
    if plan.wells {
        shape.push("the wells of an extraction are averaged".to_owned());
    }
    match context.marks {
        Marks::Comma => {
            shape.push("a comma is the decimal mark, as other figures of the file show".to_owned())
        }
        Marks::Mixed => {
            shape.push("both comma and point are decimal marks in this file".to_owned())
        }
        Marks::Point | Marks::Unsettled | Marks::Either => {}
    }
    let facts = context.facts;
    let said = [
        ("laboratory", facts.lab.clone()),
        ("report", facts.report.clone()),
        (
            "day of the test",
            facts.tested.map(|(_, day)| day.to_string().into()),
        ),
        ("assay", facts.assay.clone()),
        (
            "LLOQ",
            facts.lloq.map(|(figure, _)| figure.to_string().into()),
        ),
        ("unit", facts.unit.map(|unit| unit.ppm.word().into())),
    ];
    shape.extend(
        said.into_iter()
            .filter_map(|(what, said)| Some(format!("{what} as the file says: {}", said?))),
    );
    shape
}

/// Every column of a table in which anything stands, and what it was taken for.
pub fn columns(located: &Located<'_>, plan: &Plan) -> Vec<UnderstoodColumn> {
    let table = &located.table;
    // In an upright table the headings stand in rows.
    let letter = |column: u32| {
        if located.turned {
            format!("row {column}")
        } else {
            column_letter(column)
        }
    };
    let headed = table.columns.iter().map(|column| {
        (
            column.column,
            column.heading.clone(),
            taken_for(column.column, column.role(), plan),
        )
    });
    let bare = bare_columns(table, &located.sheet).into_iter();
    let bare = bare.map(|column| {
        (
            column,
            String::new(),
            "nothing, since it has no heading".to_owned(),
        )
    });
    let mut columns: Vec<_> = headed.chain(bare).collect();
    columns.sort_by_key(|(column, ..)| *column);
    columns
        .into_iter()
        .map(|(column, heading, taken_for)| UnderstoodColumn {
            letter: letter(column),
            heading,
            taken_for,
        })
        .collect()
}

/// Columns within a table that hold something under no heading.
fn bare_columns(table: &Table, sheet: &Sheet) -> BTreeSet<u32> {
    let rows = sheet.rows[table.rows.clone()].iter();
    rows.flat_map(|row| table.cells(row))
        .map(|(column, _)| column)
        .filter(|column| table.column(*column).is_none())
        .collect()
}

/// The rows of a sheet that belong to none of its tables: titles, addresses, remarks, tables of something else.
pub fn rows_outside(sheet: &Sheet, tables: &[Located<'_>]) -> Option<String> {
    if tables.iter().any(|located| located.turned) {
        return None;
    }
    let is_inside = |index: usize, number: u32| {
        tables.iter().any(|located| {
            let table = &located.table;
            table.rows.contains(&index) || (index < table.rows.start && number >= table.heading_row)
        })
    };
    let outside = sheet.rows.iter().enumerate();
    let numbers: Vec<u32> = outside
        .map(|(index, row)| (index, row.number))
        .filter(|(index, number)| !is_inside(*index, *number))
        .map(|(_, number)| number)
        .collect();
    let runs = numbers.chunk_by(|a, b| b - a == 1).map(|run| match run {
        [one] => one.to_string(),
        [first, .., last] => format!("{first} to {last}"),
        [] => String::new(),
    });
    let runs: Vec<String> = runs.collect();
    let plural = if numbers.len() == 1 { "" } else { "s" };
    (!runs.is_empty()).then(|| {
        format!(
            "row{plural} {}: outside the tables of results, used only where it speaks of the whole report",
            runs.join(", ")
        )
    })
}

fn taken_for(column: u32, role: Option<Role>, plan: &Plan) -> String {
    if let Some(result) = plan.results.iter().find(|result| result.column == column) {
        return match result.extraction {
            Some(number) => format!("result of extraction {number}"),
            None => "result".to_owned(),
        };
    }
    if plan.sample == column {
        return called(Role::Sample);
    }
    if plan.extraction == Some(column) {
        return called(Role::Extraction);
    }
    if plan.means.contains(&column) {
        return called(Role::Mean);
    }
    match role {
        None => "nothing, since its heading is not known".to_owned(),
        Some(Role::Result(_)) => "nothing, since another column holds the result".to_owned(),
        Some(role) if is_second(column, role, plan) => {
            format!("{}, a second time and not used", called(role))
        }
        Some(role) => called(role),
    }
}

fn called(role: Role) -> String {
    roles::kind(role).map_or_else(String::new, |kind| kind.called.to_owned())
}

/// Whether another column is read for this role. Wells and the like are read from all of their columns.
fn is_second(column: u32, role: Role, plan: &Plan) -> bool {
    let every = matches!(
        role,
        Role::Well | Role::Replicate | Role::Ignored | Role::LabSample
    );
    !every && plan.of(role) != Some(column)
}
