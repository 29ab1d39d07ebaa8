//! Where the tables of a book are: as a layout says, as their headings say, or upright.

use crate::config::Config;
use crate::gather::books::{Book, Bound, Content, Row, Sheet};
use crate::gather::codes::Codes;
use crate::gather::facts::{self, Facts};
use crate::gather::numbers::{self, Marks};
use crate::gather::readings::values;
use crate::gather::tables::finding::{self, Table};
use crate::gather::tables::headings::Role;
use crate::gather::tables::layouts;
use crate::gather::tables::turned;
use std::collections::BTreeSet;
use std::ops::Deref;
use std::sync::Arc;

/// A table and the cells that it stands in.
#[derive(Clone, Debug)]
pub struct Located<'a> {
    /// The sheet; turned round where `turned` says so.
    pub sheet: Standing<'a>,
    /// Whether rows and columns have changed places.
    pub turned: bool,
    /// Whether `[[layout]]` describes it.
    pub by_layout: bool,
    /// The table.
    pub table: Table,
}

/// A sheet as it stands, or one that was turned round for all its tables together.
#[derive(Clone, Debug)]
pub enum Standing<'a> {
    /// As the file has it.
    Upright(&'a Sheet),
    /// Rows and columns have changed places.
    Turned(Arc<Sheet>),
}

impl Deref for Standing<'_> {
    type Target = Sheet;

    fn deref(&self) -> &Sheet {
        match self {
            Standing::Upright(sheet) => sheet,
            Standing::Turned(sheet) => sheet,
        }
    }
}

/// The tables of each sheet of a book, in order.
///
/// # Errors
/// As [`finding::find`].
pub fn locate<'a>(
    book: &'a Book,
    path: &str,
    codes: &Codes,
    config: &Config,
) -> Result<Vec<Vec<Located<'a>>>, Bound> {
    book.sheets
        .iter()
        .map(|sheet| in_sheet(sheet, path, codes, config))
        .collect()
}

fn in_sheet<'a>(
    sheet: &'a Sheet,
    path: &str,
    codes: &Codes,
    config: &Config,
) -> Result<Vec<Located<'a>>, Bound> {
    let as_it_stands = |table, by_layout| Located {
        sheet: Standing::Upright(sheet),
        turned: false,
        by_layout,
        table,
    };
    let described = config
        .layouts
        .iter()
        .filter(|layout| layouts::is_for(layout, path))
        .find_map(|layout| layouts::find(sheet, layout));
    if let Some(table) = described {
        return Ok(vec![as_it_stands(table, true)]);
    }
    let found = finding::find(sheet, codes)?;
    if !found.is_empty() {
        let standing = found.into_iter().map(|table| as_it_stands(table, false));
        return Ok(standing.collect());
    }
    let turned = turned::find(sheet, codes)?.into_iter();
    let located = turned.map(|(sheet, table)| Located {
        sheet: Standing::Turned(sheet),
        turned: true,
        by_layout: false,
        table,
    });
    Ok(located.collect())
}

/// The decimal mark of a file: by the figures in its tables' columns, else by any other figure.
pub fn decimal_marks(book: &Book, located: &[Vec<Located<'_>>]) -> Marks {
    let mut inside = Marks::Unsettled;
    let mut outside = Marks::Unsettled;
    for (sheet, tables) in book.sheets.iter().zip(located) {
        let columns: BTreeSet<u32> = tables
            .iter()
            .filter(|table| !table.turned)
            .flat_map(|table| &table.table.columns)
            .filter(|column| holds_figures(column.role()))
            .map(|column| column.column)
            .collect();
        for cell in sheet.rows.iter().flat_map(|row| &row.cells) {
            let Content::Text(written) = &cell.content else {
                continue;
            };
            let Some(figure) = values::figure_in(written) else {
                continue;
            };
            let seen = numbers::marks(&figure);
            if columns.contains(&cell.column) {
                inside = inside.and(seen);
            } else {
                outside = outside.and(seen);
            }
        }
    }
    let settled = if inside == Marks::Unsettled {
        outside
    } else {
        inside
    };
    // Where commas part the cells, a figure with a bare comma would have fallen apart: a point is what is left.
    if settled == Marks::Unsettled && !parted_by_commas(book) {
        Marks::Either
    } else {
        settled
    }
}

/// Whether commas part the cells of a file.
pub fn parted_by_commas(book: &Book) -> bool {
    book.format.starts_with("comma")
}

fn holds_figures(role: Option<Role>) -> bool {
    matches!(
        role,
        Some(Role::Result(_) | Role::Final | Role::Mean | Role::Lloq | Role::Uloq)
    )
}

/// What each sheet says outside of its tables; where it is silent, what the others say.
pub fn facts_outside(book: &Book, located: &[Vec<Located<'_>>], marks: Marks) -> Vec<Facts> {
    let own: Vec<Facts> = book
        .sheets
        .iter()
        .zip(located)
        .map(|(sheet, tables)| facts::collect(rows_outside(sheet, tables).into_iter(), marks))
        .collect();
    let whole = own
        .iter()
        .fold(Facts::default(), |all, sheet| all.or(sheet));
    own.into_iter().map(|facts| facts.or(&whole)).collect()
}

/// Rows above the first table, and below tables those that hold a text or two: footnotes. All rows around upright ones.
fn rows_outside<'a>(sheet: &'a Sheet, located: &[Located<'_>]) -> Vec<&'a Row> {
    const LINES: usize = 400;
    /// Of all tables together.
    const ALL_LINES: usize = 4_000;
    let standing: Vec<&Table> = located
        .iter()
        .filter(|table| !table.turned)
        .map(|table| &table.table)
        .collect();
    let first = standing.first().map_or(sheet.rows.len(), |table| {
        sheet
            .rows
            .partition_point(|row| row.number < table.heading_row)
    });
    let mut rows: Vec<&Row> = sheet.rows[..first].iter().take(LINES).collect();
    for table in standing {
        let below = &sheet.rows[table.rows.clone()];
        let last = below[below.len().saturating_sub(LINES)..].iter();
        rows.extend(last.filter(|row| row.cells.len() <= 2));
        if rows.len() > ALL_LINES {
            break;
        }
    }
    rows
}
