//! Tables that stand side by side, and columns that name the sample by what they hold.

use crate::gather::books::Row;
use crate::gather::codes::Codes;
use crate::gather::tables::asides::Limits;
use crate::gather::tables::finding::{self, Column, Table};
use crate::gather::tables::headings::{Heading, Role};
use std::collections::{BTreeMap, HashSet};

/// Rows below a heading that are looked at to learn what its columns hold.
const ROWS_TRIED: usize = 200;

/// The cells of each row that hold a registered code, found out once a row.
pub struct Coded<'a> {
    rows: &'a [Row],
    codes: &'a Codes,
    found: Vec<Option<Vec<CodeCell>>>,
}

/// A cell that holds a registered code.
#[derive(Clone, Copy)]
struct CodeCell {
    column: u32,
    /// Codes that are mere numbers stand in many a column: one of them in a column shows nothing.
    telling: bool,
}

impl<'a> Coded<'a> {
    /// Of a sheet; nothing is looked at yet.
    pub fn new(rows: &'a [Row], codes: &'a Codes) -> Coded<'a> {
        Coded {
            rows,
            codes,
            found: vec![None; rows.len()],
        }
    }

    fn of(&mut self, index: usize) -> &[CodeCell] {
        let (rows, codes) = (self.rows, self.codes);
        self.found[index].get_or_insert_with(|| {
            let cells = rows[index].cells.iter();
            let coded = cells.filter_map(|cell| {
                let code = codes.find(&cell.content.shown())?;
                Some(CodeCell {
                    column: cell.column,
                    telling: code.bytes().any(|b| !b.is_ascii_digit()),
                })
            });
            coded.collect()
        })
    }
}

/// A further column that names the sample begins a table of its own, where results stand before it, and behind it or
/// across a gap.
pub fn split(columns: Vec<Column>) -> Vec<Vec<Column>> {
    let roles: Vec<Option<Role>> = columns.iter().map(Column::role).collect();
    let parted: Vec<bool> = columns
        .iter()
        .enumerate()
        .map(|(at, column)| at > 0 && column.column > columns[at - 1].column + 1)
        .collect();
    let starts = starts(&roles, &parted);
    let mut blocks: Vec<Vec<Column>> = vec![Vec::new()];
    for (at, column) in columns.into_iter().enumerate() {
        if starts.contains(&at) {
            blocks.push(Vec::new());
        }
        blocks.last_mut().expect("starts with one").push(column);
    }
    blocks
}

/// Where each table but the first begins.
fn starts(roles: &[Option<Role>], parted: &[bool]) -> Vec<usize> {
    let is = |at: usize, wanted: fn(Role) -> bool| roles[at].is_some_and(wanted);
    let first_sample = (0..roles.len()).find(|at| is(*at, Role::names_sample));
    let mut starts = Vec::new();
    let (mut named, mut reported, mut plain_sample) = (false, false, false);
    for at in 0..roles.len() {
        let is_sample = roles[at] == Some(Role::Sample);
        let sample_follows = || {
            let behind = (at + 1..roles.len()).take_while(|at| !is(*at, Role::is_reported));
            behind.into_iter().any(|at| roles[at] == Some(Role::Sample))
        };
        let names = is_sample
            || (roles[at] == Some(Role::LabSample) && (!plain_sample || sample_follows()));
        let results_follow = (at + 1..roles.len()).any(|at| is(at, Role::is_reported));
        if names && reported && (results_follow || (named && parted[at])) {
            // Columns that lead the first table before its sample lead this one too.
            let lead = first_sample.unwrap_or(0);
            let since = starts.last().copied().unwrap_or(0);
            let leads_results = (0..lead).any(|at| is(at, Role::is_reported));
            let fits = named
                && lead > 0
                && !leads_results
                && lead <= at - since
                && roles[at - lead..at] == roles[..lead];
            // Results behind a gap and before their codes are those codes' own.
            let run = (since + 1..=at).rev().find(|at| parted[*at]).unwrap_or(at);
            let is_mirrored = (run..at).all(|at| is(at, Role::is_reported));
            starts.push(match (fits, is_mirrored) {
                (true, _) => at - lead,
                (false, true) => run,
                (false, false) => at,
            });
            (named, reported, plain_sample) = (true, is_mirrored && !fits, is_sample);
            continue;
        }
        named |= is(at, Role::names_sample);
        plain_sample |= is_sample;
        reported |= is(at, Role::is_reported);
    }
    starts
}

/// The first and the last column of a table.
pub fn span(columns: &[Column]) -> Option<(u32, u32)> {
    Some((columns.first()?.column, columns.last()?.column))
}

/// The columns that name the sample; the lab's own numbers only where there is nothing better.
pub fn samples(columns: &[Column]) -> Vec<u32> {
    let of = |role: Role| -> Vec<u32> {
        let all = columns.iter().filter(|column| column.role() == Some(role));
        all.map(|column| column.column).collect()
    };
    let samples = of(Role::Sample);
    if samples.is_empty() {
        of(Role::LabSample)
    } else {
        samples
    }
}

/// Headings without the cells beside them that belong to a table which stands there already and goes on.
pub fn without_others<'a>(
    columns: Vec<Column>,
    open: impl Iterator<Item = &'a Table>,
) -> Vec<Column> {
    let says = |column: &Column| {
        let role = column.role();
        role.is_some_and(|role| !matches!(role, Role::Ignored | Role::Remark))
    };
    let core: Vec<u32> = columns
        .iter()
        .filter(|column| says(column))
        .map(|column| column.column)
        .collect();
    let (Some(left), Some(right)) = (core.first(), core.last()) else {
        return columns;
    };
    // Up to the next table at either side.
    let (mut from, mut to) = (0, u32::MAX);
    for (first, last) in open.map(|table| table.span) {
        if last < *left {
            from = from.max(last + 1);
        } else if first > *right {
            to = to.min(first - 1);
        }
    }
    columns
        .into_iter()
        .filter(|column| (from..=to).contains(&column.column))
        .collect()
}

/// Columns without a heading belong to the table at their left.
pub fn widen(tables: &mut [Table]) {
    let spans: Vec<((u32, u32), u32, usize)> = tables
        .iter()
        .map(|table| (table.span, table.heading_row, table.rows.end))
        .collect();
    for table in tables {
        let next = spans
            .iter()
            .filter(|(span, heading_row, end)| {
                let beside = *heading_row == table.heading_row
                    || (*end > table.rows.start && span.0 > table.span.1);
                beside && span.0 > table.span.1
            })
            .map(|(span, _, _)| span.0)
            .min();
        table.span.1 = next.map_or(u32::MAX, |next| next - 1);
    }
}

/// Whether a column without a heading stands before one that has one, and holds a code at once.
fn is_close(columns: &[Column], below: &[Row], column: u32, codes: &Codes) -> bool {
    const ROWS: usize = 3;
    let is_beside = columns.iter().any(|known| known.column == column + 1);
    let mut first = below.iter().take(ROWS).filter_map(|row| row.at(column));
    is_beside && first.any(|content| codes.find(&content.shown()).is_some())
}

/// How many kinds of headings stand in one run with a column: two and more are headings, and no row of a table above.
fn kinds_beside(columns: &[Column], column: u32) -> usize {
    let runs = columns.chunk_by(|a, b| b.column == a.column + 1);
    let own = runs
        .into_iter()
        .find(|run| run.iter().any(|other| other.column == column));
    let roles = own.into_iter().flatten().filter_map(Column::role);
    let kinds: HashSet<std::mem::Discriminant<Role>> = roles
        .filter(|role| *role != Role::Ignored)
        .map(|role| std::mem::discriminant(&role))
        .collect();
    kinds.len()
}

/// A column that holds registered codes names the sample, though its heading is unknown or missing; those that
/// are `taken` already name it for a table above, and in
/// those of `data` the row of headings holds none. `from` is the first row below. Gives back how many cells were looked at.
pub fn name_samples(
    columns: &mut Vec<Column>,
    from: usize,
    coded: &mut Coded<'_>,
    (taken, data): (&[u32], &[u32]),
) -> usize {
    if !columns
        .iter()
        .filter_map(Column::role)
        .any(Role::is_reported)
    {
        return 0;
    }
    let below = from..coded.rows.len().min(from + ROWS_TRIED);
    let mut looks = below.len();
    let mut held: BTreeMap<u32, (usize, bool)> = BTreeMap::new();
    let mut named_well = false;
    for index in below.clone() {
        let cells = coded.of(index);
        looks += cells.len();
        for cell in cells {
            let known = finding::at(columns, cell.column).and_then(Column::role);
            named_well |= known.is_some_and(Role::names_sample);
            if known.is_some_and(|role| role != Role::Ignored) {
                continue;
            }
            let (registered, telling) = held.entry(cell.column).or_default();
            *registered += 1;
            *telling |= cell.telling;
        }
    }
    let rows = &coded.rows[below];
    let mut bare = Vec::new();
    for (column, (registered, telling)) in held {
        let filled = || rows.iter().filter(|row| row.at(column).is_some()).count();
        let enough = telling || registered * 2 >= filled();
        // A lone word beside nothing is no heading, and one kind of heading may be a row of a table above.
        let needed = if taken.contains(&column) { 2 } else { 1 };
        let is_headed = finding::at(columns, column).is_some();
        let stands_alone = is_headed && kinds_beside(columns, column) < needed;
        if !enough || stands_alone || data.contains(&column) {
            continue;
        }
        let meaning = Some(Heading {
            role: Role::Sample,
            unit: None,
            foreign: None,
            quantity: None,
            limits: Limits::default(),
        });
        let close = is_close(columns, rows, column, coded.codes);
        match columns.iter_mut().find(|known| known.column == column) {
            // A lot or a product that looks like a code is none where a column for codes holds some.
            Some(known) if known.role().is_some() && named_well => {}
            Some(known) => known.meaning = meaning,
            // Without a heading, only right beside one and right below.
            None if named_well || !close || taken.contains(&column) => {}
            None => bare.push(Column {
                column,
                heading: String::new(),
                meaning,
                spread: true,
            }),
        }
    }
    columns.extend(bare);
    columns.sort_by_key(|column| column.column);
    looks
}
