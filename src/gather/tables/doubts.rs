//! Columns beside the results that throw doubt on them: figures that no heading explains, what was added before the test,
//! decimals that a comma has parted from their figures.

use crate::gather::books::{Content, Row};
use crate::gather::codes::Codes;
use crate::gather::readings::values;
use crate::gather::tables::finding::Table;
use crate::gather::tables::headings::Role;
use crate::gather::tables::plan::{Ambiguous, Doubtful, Plan, ResultColumn};
use crate::gather::tables::units;

/// A column without a heading right behind the results that holds figures beside registered codes: a heading may have stood
/// over both, and which of them is the result cannot be seen.
pub fn unheaded(table: &Table, rows: &[Row], plan: &Plan, codes: &Codes) -> Option<Ambiguous> {
    let beside = |result: &ResultColumn| {
        let next = result.column + 1;
        let is_bare = table
            .column(next)
            .is_none_or(|column| column.heading.is_empty());
        let is_within = (table.span.0..=table.span.1).contains(&next);
        (is_bare && is_within).then_some((result.column, next))
    };
    let holds_figures = |column: u32| {
        rows.iter().any(|row| {
            let is_ours = row
                .at(plan.sample)
                .is_some_and(|content| codes.find(&content.shown()).is_some());
            is_ours && row.at(column).is_some_and(values::is_figure)
        })
    };
    // A numbered extraction is known for what it is, whatever stands behind it.
    let unnumbered = plan.results.iter().filter(|result| !result.numbered);
    unnumbered
        .filter_map(beside)
        .find(|(_, next)| holds_figures(*next))
        .map(|columns| Ambiguous {
            what: Doubtful::Result,
            columns,
        })
}

/// A column that says what was put into the samples, with figures beside registered codes: whether the results beside it are
/// of the package as it was sent cannot be seen.
pub fn added(table: &Table, rows: &[Row], plan: &Plan, codes: &Codes) -> Option<Ambiguous> {
    let result = plan.results.first()?.column;
    let column = table.columns.iter().find(|column| {
        column.role() == Some(Role::Added)
            && coded(rows, plan, codes).any(|row| {
                let content = row.at(column.column);
                content.is_some_and(|content| values::is_figure(content) && !is_nought(content))
            })
    })?;
    Some(Ambiguous {
        what: Doubtful::Result,
        columns: (column.column.min(result), column.column.max(result)),
    })
}

/// A column for words, or one beyond the last heading, that holds bare figures behind whole results: in a file whose cells
/// commas part, decimal commas may have moved all that follows. A decimal point in any result shows that it has not.
pub fn parted_decimals(
    table: &Table,
    rows: &[Row],
    plan: &Plan,
    codes: &Codes,
) -> Option<Ambiguous> {
    let has_point = |content: &Content| content.shown().contains('.');
    let results = || plan.results.iter().map(|result| result.column);
    let of_packages = || coded(rows, plan, codes);
    if of_packages().any(|row| results().filter_map(|column| row.at(column)).any(has_point)) {
        return None;
    }
    let is_whole = |content: &Content| {
        let shown = content.shown();
        !shown.is_empty() && shown.len() <= 4 && shown.bytes().all(|b| b.is_ascii_digit())
    };
    let first = results().min()?;
    let last = table.columns.last().map_or(first, |column| column.column);
    // Under a heading that is unknown, only right behind a result, and not where it names a unit: that is another analyte.
    let is_for_words = |column: u32, left: u32| {
        table.column(column).is_none_or(|known| match known.role() {
            Some(role) => matches!(role, Role::Remark | Role::Lab | Role::Assay),
            None if known.heading.is_empty() => true,
            None => column == left + 1 && units::part(&known.heading).unit.is_none(),
        })
    };
    let (left, right) = of_packages().find_map(|row| {
        let left = results().find(|column| row.at(*column).is_some_and(is_whole))?;
        let right = (left + 1..=last + 1).find(|column| {
            let content = row.at(*column).filter(|content| is_whole(content));
            let is_mean = || *column > last && content.is_some_and(|it| is_mean_of(it, row, plan));
            content.is_some() && is_for_words(*column, left) && !is_mean()
        })?;
        (right <= table.span.1).then_some((left, right))
    })?;
    let is_bare = table
        .column(right)
        .is_none_or(|column| column.heading.is_empty());
    Some(Ambiguous {
        what: if is_bare {
            Doubtful::Result
        } else {
            Doubtful::Decimals
        },
        columns: (left, right),
    })
}

/// Whether a whole figure is the mean of the results of its row.
fn is_mean_of(content: &Content, row: &Row, plan: &Plan) -> bool {
    let whole = |content: &Content| content.shown().parse::<f64>().ok();
    let results = plan.results.iter().filter_map(|one| row.at(one.column));
    let figures: Vec<f64> = results.filter_map(whole).collect();
    let mean = figures.iter().sum::<f64>() / figures.len() as f64;
    figures.len() > 1 && whole(content).is_some_and(|figure| (figure - mean).abs() <= 0.5)
}

/// The rows of registered packages.
fn coded<'a>(rows: &'a [Row], plan: &Plan, codes: &'a Codes) -> impl Iterator<Item = &'a Row> {
    let sample = plan.sample;
    rows.iter().filter(move |row| {
        let content = row.at(sample);
        content.is_some_and(|content| codes.find(&content.shown()).is_some())
    })
}

/// `0`, `0.0`.
fn is_nought(content: &Content) -> bool {
    let shown = content.shown();
    shown.chars().all(|c| matches!(c, '0' | '.' | ','))
}
