//! A sign in a column of its own -> the figure that it goes with.
//!
//! A column that holds nothing but signs beside registered codes is one of signs. Where each of them stands right before a
//! column of results, or each right behind one, and no other figures stand at its other side, it goes with that column; so
//! does a lone one in a table without other figures. Any other sign on a row may belong to its results, or not: then none of
//! them is used.

use crate::gather::books::{Content, Row};
use crate::gather::codes::Codes;
use crate::gather::readings::values::{self, Said};
use crate::gather::tables::finding::Table;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::roles::Role;
use crate::gather::text;
use crate::model::extraction::Interval;
use std::collections::BTreeMap;

/// What a cell says of a figure beside it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sign {
    /// `<`
    Below,
    /// `>`
    Above,
    /// `=`: nothing that the figure does not say.
    Equal,
    /// `≤`, `~`: nothing that a result can be.
    Other,
}

impl Sign {
    /// The sign that is all that a cell holds.
    fn of(content: &Content) -> Option<Sign> {
        let Content::Text(written) = content else {
            return None;
        };
        const LONGEST: usize = 4;
        if written.len() > LONGEST {
            return None;
        }
        match text::plain(written).as_ref() {
            "<" => Some(Sign::Below),
            ">" => Some(Sign::Above),
            "=" => Some(Sign::Equal),
            "<=" | "=<" | ">=" | "=>" | "≤" | "≥" | "<<" | ">>" | "~" | "≈" | "<>" | "±" => {
                Some(Sign::Other)
            }
            _ => None,
        }
    }

    /// What a figure with this sign before it says; none where the two contradict one another.
    pub fn before(self, said: Said) -> Option<Said> {
        match (self, said) {
            (Sign::Equal, said) => Some(said),
            (Sign::Below, Said::Number(figure)) if figure.value > 0.0 => {
                Some(Said::Below(Some(figure.value)))
            }
            (Sign::Below, Said::Below(_) | Said::NotDetected(_)) => Some(said),
            (Sign::Above, Said::Number(figure)) if figure.value >= 0.0 => {
                Some(Said::Above(Some(figure.value)))
            }
            (Sign::Above, Said::Above(_)) => Some(said),
            _ => None,
        }
    }
}

/// A sign and what it looks like.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    /// What it says.
    pub sign: Sign,
    /// As it stands.
    pub text: String,
}

/// A cell that says something of the results of its row, and nobody can say of which.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Loose {
    /// Its column.
    pub column: u32,
    /// As it stands.
    pub written: String,
}

/// The columns of signs of a table.
#[derive(Debug, Default)]
pub struct Signs {
    /// The column of signs that goes with a column of results.
    of_result: BTreeMap<u32, u32>,
    /// Whether any cell of the table is a sign.
    any: bool,
}

/// What the cells of a column are.
#[derive(Clone, Copy, Default)]
struct Seen {
    signs: bool,
    others: bool,
    figures: bool,
}

impl Signs {
    /// Looks for them on the rows of registered packages.
    pub fn of(table: &Table, plan: &Plan, rows: &[Row], codes: &Codes) -> Signs {
        if !rows.iter().any(|row| has_one(table, plan, row)) {
            return Signs::default();
        }
        let mut seen: BTreeMap<u32, Seen> = BTreeMap::new();
        let mut is_ours = false;
        for row in rows {
            // A blank cell continues the code above.
            if let Some(content) = row.at(plan.sample) {
                is_ours = codes.find(&content.shown()).is_some();
            }
            if !is_ours {
                continue;
            }
            for (column, content) in cells(table, plan, row) {
                let seen = seen.entry(column).or_default();
                match Sign::of(content) {
                    Some(Sign::Equal) => {}
                    Some(_) => seen.signs = true,
                    None if is_dash(content) => {}
                    None => seen.others = true,
                }
                seen.figures |= values::is_figure(content);
            }
        }
        let is_result = |column: u32| plan.results.iter().any(|one| one.column == column);
        let of_signs = |seen: &Seen| seen.signs && !seen.others;
        let columns: Vec<u32> = seen
            .iter()
            .filter(|(column, seen)| of_signs(seen) && !is_result(**column))
            .map(|(column, _)| *column)
            .collect();
        let rivals = |column: u32| {
            let holds = seen.get(&column).is_some_and(|seen| seen.figures);
            let role = table.column(column).and_then(|column| column.role());
            let could_be = role.is_none_or(|role| role.is_reported());
            holds && could_be && column != plan.sample && !is_result(column)
        };
        let before = |column: u32| (column + 1, column.saturating_sub(1));
        let behind = |column: u32| (column.saturating_sub(1), column + 1);
        let all_at = |side: &dyn Fn(u32) -> (u32, u32)| {
            columns.iter().all(|column| {
                let (result, other) = side(*column);
                is_result(result) && !rivals(other)
            })
        };
        let pairs: Vec<(u32, u32)> = match (all_at(&before), all_at(&behind)) {
            (true, false) => columns.iter().map(|column| (column + 1, *column)).collect(),
            (false, true) => columns.iter().map(|column| (column - 1, *column)).collect(),
            (false, false) => match (&columns[..], &plan.results[..]) {
                ([column], [result]) if !seen.keys().any(|column| rivals(*column)) => {
                    vec![(result.column, *column)]
                }
                _ => Vec::new(),
            },
            (true, true) => Vec::new(),
        };
        Signs {
            of_result: pairs.into_iter().collect(),
            any: true,
        }
    }

    /// The sign that goes with a result of this row.
    pub fn with(&self, row: &Row, result: u32) -> Option<Written> {
        let content = row.at(*self.of_result.get(&result)?)?;
        Some(Written {
            sign: Sign::of(content)?,
            text: text::plain(&content.shown()).into_owned(),
        })
    }

    /// A sign on this row that goes with none of its results.
    pub fn loose(&self, table: &Table, plan: &Plan, row: &Row) -> Option<Loose> {
        if !self.any {
            return None;
        }
        let is_known = |column: u32| {
            self.of_result.values().any(|known| *known == column)
                || plan.results.iter().any(|result| result.column == column)
        };
        let is_loose =
            |content: &Content| Sign::of(content).is_some_and(|sign| sign != Sign::Equal);
        cells(table, plan, row)
            .find(|(column, content)| !is_known(*column) && is_loose(content))
            .map(|(column, content)| Loose {
                column,
                written: content.shown().into_owned(),
            })
    }
}

fn has_one(table: &Table, plan: &Plan, row: &Row) -> bool {
    cells(table, plan, row)
        .any(|(_, content)| Sign::of(content).is_some_and(|sign| sign != Sign::Equal))
}

/// The cells of a row within the table, and those that touch its results: where another table stands beside it or above, a
/// column of signs may have come to be the other one's.
fn cells<'a>(
    table: &'a Table,
    plan: &'a Plan,
    row: &'a Row,
) -> impl Iterator<Item = (u32, &'a Content)> {
    let (left, right) = table.span;
    let touches = |column: u32| {
        let results = plan.results.iter();
        results
            .map(|one| one.column)
            .any(|one| one.abs_diff(column) == 1)
    };
    row.cells
        .iter()
        .filter(move |cell| (left..=right).contains(&cell.column) || touches(cell.column))
        .map(|cell| (cell.column, &cell.content))
}

fn is_dash(content: &Content) -> bool {
    text::plain(&content.shown()).chars().all(text::is_dash)
}

/// Words for a result in a column of remarks, or in one without a heading: `<LOQ`, `not detected`, `above range`. They must
/// say what the result says.
pub fn in_remarks(table: &Table, row: &Row) -> Option<(Said, Loose)> {
    table.cells(row).find_map(|(column, content)| {
        let Content::Text(written) = content else {
            return None;
        };
        let headed = table.column(column);
        let may_speak = headed
            .is_none_or(|column| column.role() == Some(Role::Remark) || column.heading.is_empty());
        const LONGEST: usize = 60;
        if !may_speak || written.len() > LONGEST {
            return None;
        }
        let said = values::in_words(&text::words(written))?;
        (said != Said::NotReported).then(|| {
            let written = written.to_string();
            (said, Loose { column, written })
        })
    })
}

/// Whether a reading is what words say: below, above. What is below the lowest quantity may stand as a figure.
pub fn fits(said: Said, interval: &Interval) -> bool {
    match said {
        Said::Above(_) => interval.as_above().is_some(),
        Said::Below(_) | Said::NotDetected(_) => interval.as_below().is_some(),
        Said::Number(_) | Said::NotReported => true,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gather::numbers::Figure;

    #[test]
    fn a_sign_makes_a_bound_of_a_figure_and_contradicts_what_is_none() {
        let number = Said::Number(Figure {
            value: 20.0,
            decimals: 0,
        });
        assert_eq!(Sign::Below.before(number), Some(Said::Below(Some(20.0))));
        assert_eq!(Sign::Above.before(number), Some(Said::Above(Some(20.0))));
        assert_eq!(Sign::Equal.before(number), Some(number));
        let above = Said::Above(Some(80.0));
        assert_eq!(Sign::Above.before(above), Some(above));
        assert_eq!(Sign::Below.before(above), None);
        assert_eq!(Sign::Below.before(Said::NotReported), None);
        assert_eq!(Sign::Other.before(number), None);
    }
}
