//! A lab's means: never a reading, but recomputed, and a difference beyond their own rounding is told.

use crate::gather::books::{Content, Row};
use crate::gather::readings::extractions::Context;
use crate::gather::readings::intervals;
use crate::gather::readings::values::{self, Said};
use crate::gather::tables::finding::Table;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::units::Scale;
use crate::gather::text;
use crate::model::extraction::Interval;
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::words::say;
use std::collections::BTreeMap;

/// The means that a table claims, and the readings that they must be made of.
#[derive(Debug, Default)]
pub struct Claims {
    claims: Vec<Claim>,
    readings: BTreeMap<String, Vec<Part>>,
}

/// A cell's reading, and what it is a part of.
#[derive(Clone, Copy, Debug)]
pub struct Part {
    /// Its row.
    pub row: u32,
    /// Its extraction.
    pub number: u32,
    /// What it says, before anything is taken for "below".
    pub interval: Interval,
}

#[derive(Debug)]
struct Claim {
    code: String,
    row: u32,
    column: u32,
    content: Content,
    /// Whether it may be the mean of the whole table: a row of its own, below all.
    of_all: bool,
}

impl Claims {
    /// A cell's reading of a package.
    pub fn reading(&mut self, code: &str, part: Part) {
        self.readings.entry(code.to_owned()).or_default().push(part);
    }

    /// The readings of a package so far.
    pub fn of(&self, code: &str) -> &[Part] {
        self.readings.get(code).map_or(&[], Vec::as_slice)
    }

    /// The cells of a row that stand in columns of means.
    pub fn cells(&mut self, code: &str, row: &Row, plan: &Plan) {
        for column in &plan.means {
            self.claim(code, row, *column, false);
        }
    }

    /// A row of means.
    pub fn row(&mut self, code: &str, row: &Row, plan: &Plan) {
        for result in &plan.results {
            self.claim(code, row, result.column, true);
        }
    }

    fn claim(&mut self, code: &str, row: &Row, column: u32, of_all: bool) {
        if let Some(content) = row.at(column) {
            self.claims.push(Claim {
                code: code.to_owned(),
                row: row.number,
                column,
                content: content.clone(),
                of_all,
            });
        }
    }

    /// Holds every claim against the readings of its package.
    pub fn check(
        &self,
        table: &Table,
        plan: &Plan,
        context: &Context<'_>,
        problems: &mut Problems,
    ) {
        let every: Vec<Interval> = self
            .readings
            .values()
            .flatten()
            .map(|part| part.interval)
            .collect();
        let whole = (!every.is_empty()).then(|| intervals::mean(&every));
        for claim in &self.claims {
            let Some(readings) = self.readings.get(&claim.code) else {
                continue;
            };
            let Ok(value) = values::read(&claim.content, context.marks) else {
                continue;
            };
            let heading = table
                .columns
                .iter()
                .filter(|column| {
                    column.column == claim.column
                        || plan
                            .results
                            .iter()
                            .any(|result| result.column == column.column)
                })
                .filter_map(|column| column.meaning.as_ref());
            let own = heading.clone().find_map(|meaning| meaning.unit);
            let unit = value.unit.or(own).or(context.facts.unit);
            let scale = unit.map_or(Scale::One, |unit| unit.ppm);
            let quantity = unit
                .and_then(|unit| unit.quantity)
                .or_else(|| heading.clone().find_map(|meaning| meaning.quantity))
                .or(context.facts.quantity);
            let ppm = |figure: f64| intervals::gluten(scale.to_ppm(figure), quantity);
            let all: Vec<Interval> = readings.iter().map(|part| part.interval).collect();
            let fitting = |part: &[Interval]| {
                !part.is_empty() && fits(&value.said, &intervals::mean(part), ppm)
            };
            if fitting(&all)
                || (plan.wells && fitting(&of_extraction(readings, claim)))
                || (plan.is_wide() && fitting(&of_row(readings, claim)))
            {
                continue;
            }
            if claim.of_all
                && whole
                    .as_ref()
                    .is_some_and(|mean| fits(&value.said, mean, ppm))
            {
                continue;
            }
            let (kind, lower, upper) = figures(&intervals::mean(&all));
            problems.add(
                Code::MeanDiffers,
                context.place(claim.row, claim.column),
                say::found_mean_differs(
                    text::short(&claim.code),
                    text::short(&claim.content.shown()),
                    kind,
                    lower,
                    upper,
                ),
                say::do_ask_about_mean(),
            );
        }
    }
}

/// The wells of the extraction that the claim's row, or the last one above it, belongs to.
fn of_extraction(readings: &[Part], claim: &Claim) -> Vec<Interval> {
    let above = readings.iter().rfind(|part| part.row <= claim.row);
    let number = above.map(|part| part.number);
    let same = readings.iter().filter(|part| Some(part.number) == number);
    same.map(|part| part.interval).collect()
}

/// The readings of the claim's own row, where it has several.
fn of_row(readings: &[Part], claim: &Claim) -> Vec<Interval> {
    let same = readings.iter().filter(|part| part.row == claim.row);
    let own: Vec<Interval> = same.map(|part| part.interval).collect();
    if own.len() > 1 { own } else { Vec::new() }
}

fn fits(said: &Said, mean: &Interval, ppm: impl Fn(f64) -> Ppm) -> bool {
    let near = |a: f64, b: f64, rounding: f64| {
        (a - b).abs() <= rounding + 1e-9 * a.abs().max(b.abs()).max(1.0)
    };
    match said {
        Said::Number(figure) => {
            let claimed = ppm(figure.value).0;
            let rounding = ppm(0.5 * 10_f64.powi(-(figure.decimals.min(15) as i32))).0;
            let above = claimed > mean.lower.0 || near(claimed, mean.lower.0, rounding);
            let below = mean
                .upper
                .is_none_or(|upper| claimed < upper.0 || near(claimed, upper.0, rounding));
            above && below
        }
        Said::Below(Some(n)) => mean.lower.0 < ppm(*n).0,
        Said::Above(Some(n)) => mean.upper.is_none_or(|upper| upper.0 > ppm(*n).0),
        Said::Below(None) | Said::Above(None) | Said::NotDetected(_) | Said::NotReported => true,
    }
}

/// What a mean is, with its bounds, as the message that tells of it wants them.
fn figures(mean: &Interval) -> (&'static str, String, String) {
    match (mean.as_number(), mean.upper) {
        (Some(number), _) => ("number", rounded(number), String::new()),
        (None, Some(upper)) => ("range", rounded(mean.lower), rounded(upper)),
        (None, None) => ("above", rounded(mean.lower), String::new()),
    }
}

/// Enough digits to see a difference, without the tail of a division by three.
fn rounded(ppm: Ppm) -> String {
    ((ppm.0 * 1e4).round() / 1e4).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gather::numbers::Figure;

    fn number(value: f64, decimals: u32) -> Said {
        Said::Number(Figure { value, decimals })
    }

    #[test]
    fn a_mean_may_differ_by_its_own_rounding_only() {
        let mean = intervals::mean(&[Interval::number(Ppm(12.4)), Interval::number(Ppm(13.1))]);
        for (value, decimals, expected) in [
            (12.8, 1, true),
            (12.7, 1, true),
            (12.75, 2, true),
            (13.0, 0, true),
            (12.9, 1, false),
            (12.76, 2, false),
        ] {
            assert_eq!(
                fits(&number(value, decimals), &mean, Ppm),
                expected,
                "{value}"
            );
        }
    }

    #[test]
    fn a_mean_of_a_range_may_be_anything_within_it() {
        let mean = intervals::mean(&[Interval::below(Ppm(5.0)), Interval::number(Ppm(8.0))]);
        assert!(fits(&number(6.5, 1), &mean, Ppm));
        assert!(fits(&number(4.0, 1), &mean, Ppm));
        assert!(!fits(&number(8.0, 1), &mean, Ppm));
        assert!(fits(&Said::Below(Some(5.0)), &mean, Ppm));
    }
}
