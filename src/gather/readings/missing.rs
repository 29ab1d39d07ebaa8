//! A file in which no table was recognised: what was found, what is missing, and a `[[layout]]` to paste.

use crate::gather::books::{Book, Cell, Content, Row, Sheet};
use crate::gather::codes::Codes;
use crate::gather::readings::no_results;
pub use crate::gather::readings::no_results::Only;
use crate::gather::readings::refusals::quoted;
use crate::gather::readings::values::is_figure;
use crate::gather::tables::blocks;
use crate::gather::tables::headings::{self, Role};
use crate::gather::tables::location::Located;
use crate::gather::text;
use crate::model::place::{LabFile, Place, column_letter};
use crate::model::problem::{Code, Problems};
use crate::model::said::Item;
use crate::words::say;
use std::cell::OnceCell;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

/// Says why nothing was read, and how to help.
pub fn tell(file: &LabFile, book: &Book, codes: &Codes, problems: &mut Problems) {
    if let Some(found) = no_results::only(book, codes) {
        return tell_of_only(found, file, problems);
    }
    let best = book
        .sheets
        .iter()
        .flat_map(|sheet| (0..sheet.rows.len().min(ROWS_TRIED)).map(move |index| (sheet, index)))
        .map(|(sheet, index)| (likeness(sheet, index, codes), sheet, index))
        .rev()
        .max_by_key(|(likeness, _, _)| *likeness)
        .filter(|(likeness, _, _)| *likeness > 0);
    let Some((_, sheet, index)) = best else {
        problems.add(
            Code::NoTable,
            Place::file(file.path.clone()),
            say::found_no_table(),
            say::do_ask_for_columns(),
        );
        return;
    };
    let row = &sheet.rows[index];
    let found = Found::of(row);
    let code = if found.sample && !found.result {
        Code::NoResultColumn
    } else {
        Code::NoTable
    };
    let lacking = match (found.sample, found.result) {
        (true, false) => "result",
        (false, true) => "sample",
        _ => "both",
    };
    let (headings, more) = listed(row);
    problems.add(
        code,
        Place {
            file: file.path.clone(),
            sheet: sheet.name.as_deref().map(str::to_owned),
            row: Some(row.number),
            column: None,
        },
        say::found_headings(headings, more, lacking),
        say::do_describe_table(layout(file, sheet, index, codes)),
    );
}

/// Notes that a file holds nothing but these, which are no results.
pub fn tell_of_only(found: Only, file: &LabFile, problems: &mut Problems) {
    let (message, hint) = match found {
        Only::Absorbances => (say::found_absorbances(), Some(say::do_want_results())),
        Only::Controls => (say::found_controls(), None),
    };
    let place = Place::file(file.path.clone());
    problems.add(Code::PassedOver, place, message, hint);
}

/// Tells of packages that stand with figures where no table was recognised. Absorbances, weights and the like, under headings
/// that say so, are left alone.
pub fn tell_of_lost_codes(
    file: &LabFile,
    sheets: &[(&Sheet, &[Located<'_>])],
    codes: &Codes,
    problems: &mut Problems,
) {
    let mut told: BTreeSet<&str> = BTreeSet::new();
    for (sheet, tables) in sheets {
        if tables.iter().any(|table| table.turned) {
            continue;
        }
        let mut above = Above::default();
        for (index, row) in sheet.rows.iter().enumerate() {
            // Not what stands at the right of its last heading.
            let spans: Vec<(u32, u32)> = tables
                .iter()
                .filter(|located| located.table.rows.contains(&index))
                .filter_map(|located| blocks::span(&located.table.columns))
                .collect();
            let is_outside = |column: u32| {
                !spans
                    .iter()
                    .any(|(left, right)| (*left..=*right).contains(&column))
            };
            let outside = || row.cells.iter().filter(|cell| is_outside(cell.column));
            let named = |mut cells: Box<dyn Iterator<Item = &Cell> + '_>| {
                cells.find_map(|cell| Some((cell.column, codes.find(&cell.content.shown())?)))
            };
            let unread: Vec<Kinship> = outside()
                .filter(|cell| codes.find(&cell.content.shown()).is_none())
                .filter(|cell| is_figure(&cell.content))
                .map(|cell| above.kinship(index, cell.column))
                .collect();
            above.add(index, row);
            // A code in a table has its results there; figures under a result's heading beside it are lost all the same.
            let code = match named(Box::new(outside())) {
                Some(code) if unread.iter().any(|kin| *kin != Kinship::Other) => Some(code),
                _ if unread.contains(&Kinship::Result) => named(Box::new(row.cells.iter())),
                _ => None,
            };
            let Some((column, code)) = code else {
                continue;
            };
            if !told.insert(code) {
                continue;
            }
            problems.add(
                Code::NoResultColumn,
                Place {
                    file: file.path.clone(),
                    sheet: sheet.name.as_deref().map(str::to_owned),
                    row: Some(row.number),
                    column: Some(column),
                },
                say::found_lost_code(code),
                say::do_ask_for_headings(),
            );
        }
    }
}

/// What the heading above a figure says that it is.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Kinship {
    /// A result.
    Result,
    /// Something else.
    Other,
    /// Nothing that is known.
    Unknown,
}

/// The last text of each column that could be a heading, with its row, on the way down a sheet.
#[derive(Default)]
pub struct Above<'a>(BTreeMap<u32, Heading<'a>>);

/// A text that could be a heading, its row, and what it says, once that was asked for.
struct Heading<'a> {
    row: usize,
    written: &'a str,
    says: OnceCell<Kinship>,
}

impl<'a> Above<'a> {
    /// Goes past a row.
    pub fn add(&mut self, index: usize, row: &'a Row) {
        for cell in &row.cells {
            if let Content::Text(written) = &cell.content
                && headings::may_be_heading(written)
                && !is_figure(&cell.content)
            {
                let heading = Heading {
                    row: index,
                    written,
                    says: OnceCell::new(),
                };
                self.0.insert(cell.column, heading);
            }
        }
    }

    /// What stands above a figure of this row and column says of it.
    pub fn kinship(&self, index: usize, column: u32) -> Kinship {
        let heading = self.0.get(&column);
        let Some(heading) = heading.filter(|heading| index - heading.row <= ROWS_TRIED) else {
            return Kinship::Unknown;
        };
        *heading.says.get_or_init(|| {
            if headings::says_otherwise(heading.written) {
                Kinship::Other
            } else if headings::read(heading.written).is_some() {
                Kinship::Result
            } else {
                Kinship::Unknown
            }
        })
    }
}

/// Headings stand near the top.
const ROWS_TRIED: usize = 200;

/// What a row of headings was understood to have.
struct Found {
    sample: bool,
    result: bool,
}

impl Found {
    fn of(row: &Row) -> Found {
        let roles: Vec<Role> = row
            .cells
            .iter()
            .filter_map(|cell| headings::read(&cell.content.shown()))
            .map(|heading| heading.role)
            .collect();
        Found {
            sample: roles
                .iter()
                .any(|role| matches!(role, Role::Sample | Role::LabSample)),
            result: roles
                .iter()
                .any(|role| matches!(role, Role::Result(_) | Role::Final)),
        }
    }
}

/// How much a row looks like the headings of a table: known words count most, then texts above figures.
fn likeness(sheet: &Sheet, index: usize, codes: &Codes) -> usize {
    let row = &sheet.rows[index];
    let texts = row
        .cells
        .iter()
        .filter(|cell| matches!(&cell.content, Content::Text(written) if headings::may_be_heading(written) && codes.find(written).is_none()))
        .count();
    if texts < 2 {
        return 0;
    }
    let known = headings::likeness(row.cells.iter().map(|cell| cell.content.shown()));
    let below = sheet.rows.get(index + 1).map_or(0, |below| {
        let figures = below
            .cells
            .iter()
            .filter(|cell| is_figure(&cell.content))
            .count();
        let codes = below
            .cells
            .iter()
            .filter(|cell| codes.find(&cell.content.shown()).is_some())
            .count();
        figures + 4 * codes
    });
    known * 4 + below * 2 + usize::from(below > 0) * texts.min(8)
}

/// The cells of a row with their columns, and whether there are more than are named.
fn listed(row: &Row) -> (Vec<Item>, &'static str) {
    const MOST: usize = 12;
    let named = row.cells.iter().take(MOST).map(|cell| {
        Item::in_column(
            text::short(&cell.content.shown()),
            column_letter(cell.column),
        )
    });
    let more = if row.cells.len() > MOST { "yes" } else { "no" };
    (named.collect(), more)
}

/// The block to paste: the columns that hold registered codes and figures are proposed.
fn layout(file: &LabFile, sheet: &Sheet, index: usize, codes: &Codes) -> String {
    let row = &sheet.rows[index];
    let below = &sheet.rows[index + 1..sheet.rows.len().min(index + 1 + ROWS_TRIED)];
    let heading = |column: u32| row.at(column).map(|content| content.shown().into_owned());
    let most = |counts: &dyn Fn(&Content) -> bool, not: Option<u32>| {
        row.cells
            .iter()
            .map(|cell| cell.column)
            .filter(|column| Some(*column) != not)
            .map(|column| {
                (
                    below
                        .iter()
                        .filter_map(|row| row.at(column))
                        .filter(|content| counts(content))
                        .count(),
                    std::cmp::Reverse(column),
                )
            })
            .max()
            .filter(|(count, _)| *count > 0)
            .map(|(_, column)| column.0)
    };
    let sample = most(&|content| codes.find(&content.shown()).is_some(), None);
    let is_result = |content: &Content| is_figure(content) && !is_small_count(content);
    let result = most(&is_result, sample);
    let mut block = String::from("[[layout]]\n");
    let below_inbox = file.path.strip_prefix("inbox/").unwrap_or(&file.path);
    let _ = writeln!(block, "files = {}", quoted(below_inbox));
    if let Some(name) = &sheet.name {
        let _ = writeln!(block, "sheet = {}", quoted(name));
    }
    let _ = writeln!(block, "header_row = {}", row.number);
    let named = |column: Option<u32>| {
        let heading = column.and_then(heading);
        quoted(heading.as_deref().unwrap_or("…"))
    };
    let _ = write!(
        block,
        "columns = {{ sample = {}, result = {} }}",
        named(sample),
        named(result)
    );
    block
}

/// `1` and `2` are more likely to number extractions than to be results.
fn is_small_count(content: &Content) -> bool {
    matches!(content.shown().as_ref(), "1" | "2" | "3" | "4")
}
