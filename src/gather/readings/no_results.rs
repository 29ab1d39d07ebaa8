//! A file that holds no results, and is none the worse for it: a plate's absorbances, or controls alone.

use crate::gather::books::{Book, Content, Row, Sheet};
use crate::gather::codes::Codes;
use crate::gather::numbers::Marks;
use crate::gather::readings::marks;
use crate::gather::readings::missing::{Above, Kinship};
use crate::gather::readings::values::{self, Said, is_figure};
use crate::gather::tables::headings;
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;

/// All that a file holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Only {
    /// The signals of a plate.
    Absorbances,
    /// Controls, blanks and standards.
    Controls,
}

/// What a file without a table of results holds, where that is no loss: no package stands in it with figures that might be
/// anything else.
pub fn only(book: &Book, codes: &Codes) -> Option<Only> {
    let rows = || book.sheets.iter().flat_map(|sheet| &sheet.rows);
    if book
        .sheets
        .iter()
        .any(|sheet| may_hold_results(sheet, codes))
    {
        return None;
    }
    let is_signal = rows().any(|row| speaks_of_absorbances(row, codes))
        || book.sheets.iter().any(|sheet| holds_grid(&sheet.rows));
    if is_signal && !rows().any(|row| speaks_of_results(row, codes)) {
        return Some(Only::Absorbances);
    }
    let names_packages = rows().any(|row| names_package(row, codes));
    let mut lines = rows().filter_map(line).peekable();
    let has_lines = lines.peek().is_some();
    (!names_packages && has_lines && lines.all(|words| marks::is_control(&words)))
        .then_some(Only::Controls)
}

fn names_package(row: &Row, codes: &Codes) -> bool {
    let mut cells = row.cells.iter();
    cells.any(|cell| codes.find(&cell.content.shown()).is_some())
}

/// Whether a package stands beside a figure under no heading that says that it is no result.
fn may_hold_results(sheet: &Sheet, codes: &Codes) -> bool {
    let mut above = Above::default();
    sheet.rows.iter().enumerate().any(|(index, row)| {
        let may_be = names_package(row, codes)
            && row.cells.iter().any(|cell| {
                is_figure(&cell.content)
                    && codes.find(&cell.content.shown()).is_none()
                    && above.kinship(index, cell.column) != Kinship::Other
            });
        above.add(index, row);
        may_be
    })
}

/// The texts of a row that could be headings.
fn wordings<'a>(row: &'a Row, codes: &'a Codes) -> impl Iterator<Item = String> + 'a {
    let shown = row
        .cells
        .iter()
        .map(|cell| cell.content.shown().into_owned());
    shown.filter(|shown| headings::may_be_heading(shown) && codes.find(shown).is_none())
}

fn speaks_of_absorbances(row: &Row, codes: &Codes) -> bool {
    wordings(row, codes)
        .any(|shown| vocabulary::has_one_that_means(&text::words(&shown), Meaning::Absorbance))
}

/// Whether a row of headings names results. A title does not, nor does "Content" or "Value" beside "Absorbance".
fn speaks_of_results(row: &Row, codes: &Codes) -> bool {
    let of_signals = speaks_of_absorbances(row, codes);
    row.cells.len() > 1
        && wordings(row, codes).any(|shown| {
            headings::read(&shown).is_some_and(|heading| {
                let says_what = heading.unit.is_some() || heading.quantity.is_some();
                let is_result = heading.role.is_reported() && heading.foreign.is_none();
                is_result && (says_what || !of_signals)
            })
        })
}

/// What a row with a figure is of, as it is compared: its first text. A label of a letterhead ("Report no.") is none.
fn line(row: &Row) -> Option<String> {
    let first = row.cells.iter().find_map(|cell| match &cell.content {
        Content::Text(written) if headings::may_be_heading(written) => Some(written),
        _ => None,
    })?;
    let has_figure = row.cells.iter().any(|cell| is_figure(&cell.content));
    let label = first.trim_end_matches(':');
    (has_figure && headings::read(label).is_none()).then(|| text::words(first))
}

/// Whether the grid of a plate stands in a sheet: `1 2 3 …` over its columns, `A B C …` before its rows, and signals in it.
fn holds_grid(rows: &[Row]) -> bool {
    const FEWEST_COLUMNS: usize = 6;
    const FEWEST_ROWS: usize = 2;
    rows.iter().enumerate().any(|(at, row)| {
        let Some(first) = row.cells.iter().find(|cell| cell.content.shown() == "1") else {
            return false;
        };
        let counted = (1u32..)
            .take_while(|number| {
                let content = first
                    .column
                    .checked_add(number - 1)
                    .and_then(|at| row.at(at));
                content.is_some_and(|content| content.shown() == number.to_string())
            })
            .count();
        let Some(letters) = first
            .column
            .checked_sub(1)
            .filter(|_| counted >= FEWEST_COLUMNS)
        else {
            return false;
        };
        let below = rows[at + 1..].iter().zip('A'..='P');
        let lettered = below.take_while(|(row, letter)| {
            let own = row.at(letters).map(|content| content.shown());
            own.is_some_and(|own| own.eq_ignore_ascii_case(&letter.to_string()))
                && signals(row, letters) >= FEWEST_COLUMNS
        });
        lettered.count() >= FEWEST_ROWS
    })
}

/// How many signals stand behind a column; none where any figure is more than a reader can measure.
fn signals(row: &Row, behind: u32) -> usize {
    const HIGHEST: f64 = 10.0;
    let figures = row.cells.iter().filter(|cell| cell.column > behind);
    let read = figures.filter_map(|cell| match values::read(&cell.content, Marks::Point) {
        Ok(value) => match value.said {
            Said::Number(figure) => Some(figure.value),
            _ => None,
        },
        Err(_) => None,
    });
    let read: Vec<f64> = read.collect();
    if read.iter().all(|figure| *figure < HIGHEST) {
        read.len()
    } else {
        0
    }
}
