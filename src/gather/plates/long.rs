//! A table with a row a well: its name, its absorbance, what is in it.

use super::contents::{self, Cells, Contents};
use super::headings::{Columns, Role};
use super::{Fault, RawPlate, RawWell, Reading, figures, shown, well_name};
use crate::gather::books::{Cell, Merged, Row, Sheet};
use crate::gather::numbers::Marks;
use crate::model::problem::Problems;
use std::borrow::Cow;
use std::collections::BTreeSet;

/// Wells of a plate.
const WELLS: usize = 96;

/// The most letters that are taken of the name of a plate.
const LONGEST: usize = 60;

/// Finds the tables of wells of a sheet; `cells` takes the cells that are theirs.
pub(super) fn find<'a>(
    sheet: &'a Sheet,
    reading: &Reading<'_>,
    cells: &mut BTreeSet<(u32, u32)>,
    problems: &mut Problems,
) -> Vec<RawPlate<'a>> {
    let mut plates = Vec::new();
    let mut at = 0;
    while at < sheet.rows.len() {
        let heading = &sheet.rows[at];
        at += 1;
        let Some(columns) = Columns::of(heading, &reading.described) else {
            continue;
        };
        let (Some(well), Some(absorbance)) = (columns.at(Role::Well), columns.at(Role::Absorbance))
        else {
            continue;
        };
        let rows = &sheet.rows[at..];
        let is_well = |row: &&Row| well_name(&shown(row.at(well))).is_some();
        let goes_on = |row: &&Row| {
            // A name that is no well, and an absorbance beside it: told as such, and no end of the table.
            let is_absorbance = |row: &Row| {
                let cell = row.at(absorbance);
                cell.is_some_and(|cell| figures::absorbance(cell, Marks::Unsettled).is_ok())
            };
            is_well(row) || (row.at(well).is_some() && is_absorbance(row))
        };
        let rows = &rows[..rows.iter().take_while(goes_on).count()];
        if rows.len() > super::MOST_PLATES * WELLS {
            for row in std::iter::once(heading).chain(rows) {
                cells.extend(row.cells.iter().map(|cell| (row.number, cell.column)));
            }
            let fault = Fault::new("many", "", (rows.len() / WELLS).to_string())
                .and(super::MOST_PLATES.to_string());
            let place = reading.place(sheet, heading.number, None);
            fault.tell("plate", place, problems);
            at += rows.len();
            continue;
        }
        if !rows.iter().any(|row| is_well(&row)) {
            continue;
        }
        at += rows.len();
        let above = &sheet.rows[..at - rows.len() - 1];
        let rows = &filled(sheet, rows, [well, absorbance])[..];
        take_cells(heading, rows, &columns, reading, cells);
        if let Some((one, other, column)) = columns.double() {
            let place = reading.place(sheet, heading.number, Some(column));
            let fault = Fault::new("columns", "", one).and(other);
            fault.tell("plate", place, problems);
            continue;
        }
        plates.extend(split(
            sheet,
            (heading, above, rows),
            &columns,
            reading,
            problems,
        ));
    }
    plates
}

/// The rows of a table with what joined cells say in each row that they reach; wells and absorbances are never joined.
fn filled<'a>(sheet: &Sheet, rows: &'a [Row], never: [u32; 2]) -> Cow<'a, [Row]> {
    const MOST_JOINED: usize = 5_000;
    let (Some(first), Some(last)) = (rows.first(), rows.last()) else {
        return Cow::Borrowed(rows);
    };
    let reaches = |joined: &&Merged| {
        joined.top < joined.bottom
            && joined.top >= first.number
            && joined.bottom <= last.number
            && !never.contains(&joined.left)
    };
    let mut filled = Cow::Borrowed(rows);
    for joined in sheet.merged.iter().filter(reaches).take(MOST_JOINED) {
        let from = rows.partition_point(|row| row.number < joined.top);
        let to = rows.partition_point(|row| row.number <= joined.bottom);
        let Some(content) = rows.get(from).and_then(|row| row.at(joined.left)) else {
            continue;
        };
        for row in &mut filled.to_mut()[from..to] {
            let place = row
                .cells
                .binary_search_by_key(&joined.left, |cell| cell.column);
            if let Err(place) = place {
                let cell = Cell {
                    column: joined.left,
                    content: content.clone(),
                };
                row.cells.insert(place, cell);
            }
        }
    }
    filled
}

/// The plates of a table: one for each name in its column of plates.
fn split<'a>(
    sheet: &'a Sheet,
    (heading, above, rows): (&Row, &[Row], &[Row]),
    columns: &Columns,
    reading: &Reading<'_>,
    problems: &mut Problems,
) -> Vec<RawPlate<'a>> {
    let marks = figures::marks(
        rows.iter()
            .filter_map(|row| row.at(columns.at(Role::Absorbance)?)),
    );
    let title = title(heading, above);
    let mut plates: Vec<RawPlate<'a>> = Vec::new();
    for row in rows {
        let named = columns.at(Role::Plate).and_then(|column| row.at(column));
        // A blank cell continues the name above.
        let name = match named {
            Some(cell) => Some(cell.shown().trim().chars().take(LONGEST).collect()),
            None => plates
                .last()
                .map_or(title.clone(), |plate| plate.name.clone()),
        };
        let written = columns
            .at(Role::Well)
            .map(|column| shown(row.at(column)))
            .unwrap_or_default();
        let known = plates.iter().position(|plate| plate.name == name);
        let index = known.unwrap_or_else(|| {
            plates.push(RawPlate {
                sheet,
                name,
                row: heading.number,
                wells: Vec::new(),
            });
            plates.len() - 1
        });
        let Some(well) = well_name(&written) else {
            let place = reading.place(sheet, row.number, columns.at(Role::Well));
            Fault::new("well", "", written.trim()).tell("nothing", place, problems);
            continue;
        };
        plates[index]
            .wells
            .push(raw_well(row, well, columns, marks, reading));
    }
    plates
}

fn raw_well(
    row: &Row,
    name: String,
    columns: &Columns,
    marks: Marks,
    reading: &Reading<'_>,
) -> RawWell {
    let cell = |role: Role| columns.at(role).and_then(|column| row.at(column));
    let cells = Cells {
        role: cell(Role::Kind),
        name: cell(Role::Name),
        concentration: cell(Role::Concentration),
        said: columns.said,
        range: cell(Role::Range),
        low: cell(Role::Low),
        high: cell(Role::High),
        dilution: cell(Role::Dilution),
        extraction: cell(Role::Extraction),
    };
    let absorbance = match cell(Role::Absorbance) {
        Some(cell) => figures::absorbance(cell, marks),
        None => Err(String::new()),
    };
    RawWell {
        contents: contents::of(cells, &name, reading),
        name,
        row: row.number,
        column: columns.at(Role::Absorbance).unwrap_or(1),
        absorbance,
    }
}

/// The name of a plate in the lines above its table: “Plate: P-17”.
fn title(heading: &Row, above: &[Row]) -> Option<String> {
    const LINES: usize = 8;
    let near = above.iter().rev().take(LINES);
    near.take_while(|row| heading.number - row.number <= 2 * LINES as u32)
        .find_map(super::grid::plate_name)
}

/// Takes the cells of a table: all of them, or, where it has a column of results, all but those that a table of results is
/// read from.
fn take_cells(
    heading: &Row,
    rows: &[Row],
    columns: &Columns,
    reading: &Reading<'_>,
    cells: &mut BTreeSet<(u32, u32)>,
) {
    let (first, last) = columns.span;
    let concentration = columns.at(Role::Concentration);
    let is_sample = |row: &Row| {
        let well = columns.at(Role::Well).map(|column| shown(row.at(column)));
        let well = well.unwrap_or_default().into_owned();
        let raw = raw_well(row, well, columns, Marks::Unsettled, reading);
        // Strangers stay with ours: a table of results knows what to do with them.
        match &raw.contents {
            Contents::Sample { .. } | Contents::Other(_) => true,
            Contents::Unclear(fault) => fault.is_of_a_sample(),
            _ => false,
        }
    };
    let has_figure = |row: &Row| concentration.is_some_and(|column| row.at(column).is_some());
    let in_concentration = rows.iter().any(|row| is_sample(row) && has_figure(row));
    let has_results = !columns.results.is_empty() || in_concentration;
    let is_of_results = |column: u32| {
        let own = [
            Role::Absorbance,
            Role::Kind,
            Role::Range,
            Role::Low,
            Role::High,
        ];
        let is_own = own.iter().any(|role| columns.at(*role) == Some(column));
        !is_own && (concentration != Some(column) || in_concentration)
    };
    for (index, row) in std::iter::once(heading).chain(rows).enumerate() {
        let stays = has_results && (index == 0 || is_sample(row));
        for cell in &row.cells {
            let is_within = (first..=last).contains(&cell.column);
            let is_result = columns.results.contains(&cell.column);
            let goes = match stays {
                true => is_within && !is_result && !is_of_results(cell.column),
                false => is_within || is_result,
            };
            if goes {
                cells.insert((row.number, cell.column));
            }
        }
    }
}
