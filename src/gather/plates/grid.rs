//! Grids of 1 to 12 across and A to H down: absorbances, and beside or below them what is in each well.

use super::contents::{self, Cells};
use super::{Fault, RawPlate, RawWell, Reading, figures};
use crate::gather::books::{Book, Content, Row, Sheet};
use crate::gather::text;
use crate::model::place::Place;
use crate::model::problem::Problems;
use std::collections::{BTreeMap, BTreeSet};

/// Columns and rows that a grid has at least.
const NARROWEST: usize = 3;
const LOWEST: usize = 2;

/// What a grid says of its wells.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Says {
    Absorbance,
    Contents,
    Concentration,
    Dilution,
    Extraction,
}

/// A grid as it stands in a sheet.
struct Grid<'a> {
    sheet: &'a Sheet,
    sheet_index: usize,
    says: Says,
    /// The row of its numbers, as shown.
    row: u32,
    /// The name of its plate, where a line above it says so.
    name: Option<String>,
    rows: usize,
    columns: usize,
    /// By well: where, and what.
    cells: BTreeMap<(usize, usize), (u32, u32, &'a Content)>,
    /// All that it covers.
    covered: Vec<(u32, u32)>,
}

/// Finds the plates of a book that are written as grids; `taken` takes the cells that are theirs, by sheet.
pub(super) fn find<'a>(
    book: &'a Book,
    reading: &Reading<'_>,
    taken: &mut [BTreeSet<(u32, u32)>],
    problems: &mut Problems,
) -> Vec<RawPlate<'a>> {
    let mut by: BTreeMap<Says, Vec<Grid<'a>>> = BTreeMap::new();
    for (index, sheet) in book.sheets.iter().enumerate() {
        for grid in grids(sheet, index, &taken[index]) {
            by.entry(grid.says).or_default().push(grid);
        }
    }
    let Some(absorbances) = by.remove(&Says::Absorbance) else {
        return Vec::new();
    };
    for grid in absorbances.iter().chain(by.values().flatten()) {
        taken[grid.sheet_index].extend(&grid.covered);
    }
    if absorbances.len() > super::MOST_PLATES {
        let fault = Fault::new("many", "", absorbances.len().to_string());
        let place = Place::file(reading.file.path.clone());
        fault
            .and(super::MOST_PLATES.to_string())
            .tell("plate", place, problems);
        return Vec::new();
    }
    let mut plates = Vec::new();
    for (index, grid) in absorbances.iter().enumerate() {
        let fault = |kind: &'static str| Fault::new(kind, "", "");
        let of = |says: Says| beside(grid, index, absorbances.len(), by.get(&says));
        let place = reading.place(grid.sheet, grid.row, None);
        let Ok(Some(inside)) = of(Says::Contents) else {
            let kind = match by.contains_key(&Says::Contents) {
                true => "grids",
                false => "no_contents",
            };
            fault(kind).tell("plate", place, problems);
            continue;
        };
        let others = [Says::Concentration, Says::Dilution, Says::Extraction].map(of);
        let [Ok(concentrations), Ok(dilutions), Ok(extractions)] = others else {
            fault("grids").tell("plate", place, problems);
            continue;
        };
        plates.push(raw_plate(
            grid,
            inside,
            [concentrations, dilutions, extractions],
            reading,
        ));
    }
    plates
}

/// The grid that goes with one of absorbances: of the same shape, and as many of them as there are of those.
fn beside<'g, 'a>(
    grid: &Grid<'a>,
    index: usize,
    count: usize,
    others: Option<&'g Vec<Grid<'a>>>,
) -> Result<Option<&'g Grid<'a>>, ()> {
    let Some(others) = others else {
        return Ok(None);
    };
    let same = |other: &&Grid<'a>| (other.rows, other.columns) == (grid.rows, grid.columns);
    match others.get(index) {
        Some(other) if others.len() == count && same(&other) => Ok(Some(other)),
        _ => Err(()),
    }
}

fn raw_plate<'a>(
    grid: &Grid<'a>,
    inside: &Grid<'a>,
    [concentrations, dilutions, extractions]: [Option<&Grid<'a>>; 3],
    reading: &Reading<'_>,
) -> RawPlate<'a> {
    let marks = figures::marks(grid.cells.values().map(|(_, _, content)| *content));
    let at = |grid: Option<&Grid<'a>>, well: &(usize, usize)| {
        let cell = grid.and_then(|grid| grid.cells.get(well));
        cell.map(|(_, _, content)| *content)
    };
    let wells: BTreeSet<&(usize, usize)> = grid.cells.keys().chain(inside.cells.keys()).collect();
    let wells = wells.into_iter().map(|well| {
        let name = format!("{}{}", char::from(b'A' + well.0 as u8), well.1 + 1);
        let cells = Cells {
            name: at(Some(inside), well),
            concentration: at(concentrations, well),
            dilution: at(dilutions, well),
            extraction: at(extractions, well),
            ..Cells::default()
        };
        let contents = contents::of(cells, &name, reading);
        match grid.cells.get(well) {
            Some((row, column, content)) => RawWell {
                name,
                row: *row,
                column: *column,
                absorbance: figures::absorbance(content, marks),
                contents,
            },
            // Nothing was read in it: that is told where it stands among the contents.
            None => {
                let place = inside.cells.get(well);
                RawWell {
                    name,
                    row: place.map_or(inside.row, |(row, ..)| *row),
                    column: place.map_or(1, |(_, column, _)| *column),
                    absorbance: Err(String::new()),
                    contents,
                }
            }
        }
    });
    RawPlate {
        sheet: grid.sheet,
        name: grid.name.clone().or_else(|| inside.name.clone()),
        row: grid.row,
        wells: wells.collect(),
    }
}

/// The grids of a sheet from the top, and those beside one another from the left.
fn grids<'a>(sheet: &'a Sheet, sheet_index: usize, taken: &BTreeSet<(u32, u32)>) -> Vec<Grid<'a>> {
    let mut grids = Vec::new();
    for (index, row) in sheet.rows.iter().enumerate() {
        let mut from = 0;
        while let Some((first, columns)) = numbers(row, from) {
            from = first + columns;
            let left = row.cells[first].column;
            if taken.contains(&(row.number, left)) || left == 1 {
                continue;
            }
            let labels = left - 1;
            let lines = &sheet.rows[index + 1..];
            let labelled = lines
                .iter()
                .zip('A'..='H')
                .take_while(|(line, letter)| {
                    line.at(labels).is_some_and(|cell| is_letter(cell, *letter))
                })
                .count();
            if labelled < LOWEST {
                continue;
            }
            let lines = &lines[..labelled];
            grids.push(grid(sheet, sheet_index, (index, left, columns), lines));
        }
    }
    grids
}

/// The numbers of columns.
const NUMBERS: [&str; 12] = [
    "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12",
];

/// Where in a row 1, 2, 3 … stand in neighbouring columns, from a cell on: the first of them, and how many.
fn numbers(row: &Row, from: usize) -> Option<(usize, usize)> {
    let is = |cell: &Content, number: usize| match cell {
        Content::Number { value, .. } => *value == number as f64,
        other => other.shown().trim() == NUMBERS[number - 1],
    };
    let cells = &row.cells;
    (from..cells.len()).find_map(|first| {
        if !is(&cells[first].content, 1) {
            return None;
        }
        let run = cells[first..]
            .iter()
            .zip(1..=12)
            .take_while(|(cell, number)| {
                cell.column == cells[first].column + (*number as u32 - 1)
                    && is(&cell.content, *number)
            })
            .count();
        (run >= NARROWEST).then_some((first, run))
    })
}

fn is_letter(cell: &Content, letter: char) -> bool {
    let shown = cell.shown();
    let mut letters = shown.trim().chars();
    let first = letters.next().map(|c| c.to_ascii_uppercase());
    first == Some(letter) && letters.next().is_none()
}

fn grid<'a>(
    sheet: &'a Sheet,
    sheet_index: usize,
    (index, left, columns): (usize, u32, usize),
    lines: &'a [Row],
) -> Grid<'a> {
    let heading = &sheet.rows[index];
    let mut cells = BTreeMap::new();
    let mut covered: Vec<(u32, u32)> = (0..=columns as u32)
        .map(|step| (heading.number, left - 1 + step))
        .collect();
    for (down, line) in lines.iter().enumerate() {
        covered.push((line.number, left - 1));
        for across in 0..columns {
            let column = left + across as u32;
            if let Some(content) = line.at(column) {
                cells.insert((down, across), (line.number, column, content));
                covered.push((line.number, column));
            }
        }
    }
    // The corner, and up to two lines above.
    let corner = heading.at(left - 1).map(|cell| text::words(&cell.shown()));
    let above: Vec<&Row> = sheet.rows[..index]
        .iter()
        .rev()
        .take(2)
        .take_while(|row| heading.number - row.number <= 3)
        .collect();
    // Where two grids stand side by side, each has the title above it.
    let last = left + columns as u32 - 1;
    let is_alone = heading
        .cells
        .iter()
        .all(|cell| (left - 1..=last).contains(&cell.column));
    let titles = above.iter().flat_map(|row| &row.cells);
    let titles = titles
        .filter(|cell| is_alone || (left - 1..=last).contains(&cell.column))
        .map(|cell| text::words(&cell.content.shown()));
    let titles: Vec<String> = corner.into_iter().chain(titles).collect();
    let figures = cells.values().filter(|(_, _, content)| {
        let marks = figures::marks([*content].into_iter());
        figures::absorbance(content, marks).is_ok()
    });
    let mostly_figures = 2 * figures.count() >= cells.len();
    Grid {
        sheet,
        sheet_index,
        says: says(&titles, mostly_figures),
        row: heading.number,
        name: above.iter().find_map(|row| plate_name(row)),
        rows: lines.len(),
        columns,
        cells,
        covered,
    }
}

/// Words above a grid that say what it says of its wells.
const TITLES: &[(Says, &[&str])] = &[
    (
        Says::Contents,
        &[
            "layout",
            "content",
            "belegung",
            "inhalt",
            "sample",
            "proben",
            "muestra",
            "contenido",
        ],
    ),
    (
        Says::Absorbance,
        &[
            "absorb",
            "extinktion",
            "optical density",
            "od 450",
            "od450",
            "densidad optica",
        ],
    ),
    (Says::Dilution, &["dilution", "verdunnung", "dilucion"]),
    (
        Says::Extraction,
        &["extraction", "extraktion", "extraccion"],
    ),
    (
        Says::Concentration,
        &["concentration", "konzentration", "concentracion", "nominal"],
    ),
];

/// What a grid says: by the nearest words above it that say so, else by whether it holds figures.
fn says(titles: &[String], mostly_figures: bool) -> Says {
    let named = titles.iter().find_map(|title| {
        let known = TITLES
            .iter()
            .find(|(_, words)| words.iter().any(|word| title.contains(word)));
        known.map(|(says, _)| *says)
    });
    named.unwrap_or(match mostly_figures {
        true => Says::Absorbance,
        false => Says::Contents,
    })
}

/// The name of a plate in a line: “Plate: P-17”, “Plate” and “P-17” side by side, “Platte 3”.
pub(super) fn plate_name(row: &Row) -> Option<String> {
    const LONGEST: usize = 60;
    row.cells.iter().enumerate().find_map(|(index, cell)| {
        let shown = cell.content.shown();
        let plain = text::plain(&shown);
        let mut words = plain.splitn(2, |c: char| !c.is_alphanumeric());
        let first = text::words(words.next()?);
        if !["plate", "platte", "placa"].contains(&first.as_str()) {
            return None;
        }
        let behind = words.next().unwrap_or_default();
        // “Plate layout” and “Plate reader: …” name none.
        let is_named = plain.contains(':') || behind.contains(|c: char| c.is_ascii_digit());
        let next = text::words(behind);
        let next = next.split(' ').next().unwrap_or_default();
        if !(is_named || behind.is_empty()) || OTHERS.contains(&next) {
            return None;
        }
        let behind = ["no", "nr", "id", "name", "number"]
            .iter()
            .find_map(|word| {
                let rest = behind.get(..word.len())?;
                let is_word = rest.eq_ignore_ascii_case(word)
                    && !behind[word.len()..].starts_with(char::is_alphanumeric);
                is_word.then(|| &behind[word.len()..])
            })
            .unwrap_or(behind);
        let own = behind
            .trim_start_matches(|c: char| !c.is_alphanumeric())
            .trim();
        let beside = row.cells.get(index + 1).map(|cell| cell.content.shown());
        let name = match own.is_empty() {
            true => beside?.trim().to_owned(),
            false => own.to_owned(),
        };
        let name: String = name.chars().take(LONGEST).collect();
        (!name.is_empty()).then_some(name)
    })
}

/// Words behind “plate” that make something else of it.
const OTHERS: &[&str] = &[
    "reader",
    "layout",
    "map",
    "type",
    "format",
    "contents",
    "absorbance",
    "absorbances",
    "leser",
    "belegung",
    "lector",
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gather::books::Cell;

    #[test]
    fn a_plate_is_named_where_a_line_names_it() {
        for (cells, expected) in [
            (&["Plate: P-17"][..], Some("P-17")),
            (&["Plate", "P-17"], Some("P-17")),
            (&["Date 3", "Plate no. 4"], Some("4")),
            (&["Platte 3"], Some("3")),
            (&["Plate layout"], None),
            (&["Plate reader: Model 4"], None),
            (&["Plates 3"], None),
        ] {
            let row = Row {
                number: 1,
                cells: (1..)
                    .zip(cells)
                    .map(|(column, text)| Cell {
                        column,
                        content: Content::Text((*text).into()),
                    })
                    .collect(),
                ..Row::default()
            };
            assert_eq!(plate_name(&row).as_deref(), expected, "{cells:?}");
        }
    }
}
