//! Pairs -> one result and standing a package.

use crate::judge::pairs::Series;
use crate::judge::paper;
use crate::model::extraction::{AssayKind, Interval};
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::{Pair, PairState};
use crate::model::ppm::Ppm;
use crate::model::registers::{Package, Product};
use crate::model::rule::{Decision, Limit, Rule};
use std::cmp::Ordering;

/// One result and standing for every package, in the same order. `rule` is the one that the package's product is judged by.
pub fn accept<'a>(
    packages: Vec<Series>,
    rule: &dyn Fn(&Package) -> Option<(Rule, &'a Product)>,
) -> Vec<PackageResult> {
    packages
        .into_iter()
        .filter_map(|series| {
            let (rule, product) = rule(&series.deciding.package)?;
            let mut result = one(series.deciding, &rule);
            if let Some(other) = series.other.map(|other| one(other, &rule)) {
                // In such a food a sandwich assay sees too little: what it does see is there.
                if product.processing.may_be_in_pieces()
                    && other.pair.assay_kind == AssayKind::Sandwich
                    && other.standing == Standing::Over
                {
                    result.standing = Standing::Over;
                }
                result.other_series = Some(Box::new(other));
            }
            Some(result)
        })
        .collect()
}

/// A reading with the limit that is in force for it.
#[derive(Clone, Copy)]
struct Held {
    reading: Interval,
    limit: Limit,
}

impl Held {
    fn over(&self) -> bool {
        self.limit.surely_over(&self.reading)
    }

    fn within(&self) -> bool {
        self.limit.surely_within(&self.reading)
    }
}

/// One series by itself.
fn one(pair: Pair, rule: &Rule) -> PackageResult {
    let held = held(&pair, rule);
    let result = together(&pair, &held);
    PackageResult {
        straddles_limit: pair.state == PairState::Agree
            && held.iter().any(Held::over)
            && held.iter().any(Held::within),
        standing: standing(&pair, &result, &held, rule),
        pair,
        result,
        other_series: None,
    }
}

/// Whether a package is over the limit by its deciding series alone.
pub fn over_by_itself(package: &PackageResult, rule: &Rule) -> bool {
    let held = held(&package.pair, rule);
    standing(&package.pair, &package.result, &held, rule) == Standing::Over
}

fn held(pair: &Pair, rule: &Rule) -> Vec<Held> {
    pair.usable()
        .filter_map(|extraction| {
            Some(Held {
                reading: extraction.outcome.reading()?,
                limit: rule.limit.at(extraction.lod),
            })
        })
        .collect()
}

fn together(pair: &Pair, held: &[Held]) -> ResultKind {
    let readings: Vec<Interval> = held.iter().map(|held| held.reading).collect();
    match pair.state {
        PairState::Agree => combine(&readings),
        PairState::Disagree => span(&readings),
        PairState::Incomplete | PairState::Missing => ResultKind::None,
    }
}

fn standing(pair: &Pair, result: &ResultKind, held: &[Held], rule: &Rule) -> Standing {
    match pair.state {
        PairState::Disagree => stand_apart(held, limit_of(held, rule)),
        _ => stand(result, held, rule),
    }
}

/// The limit for a package's result: where detection decides, the largest LOD in force among its readings.
fn limit_of(held: &[Held], rule: &Rule) -> Limit {
    let limits = held.iter().map(|held| held.limit);
    limits
        .reduce(|a, b| Limit {
            ppm: a.ppm.max(b.ppm),
            ..a
        })
        .unwrap_or(rule.limit)
}

/// What agreeing readings give together.
fn combine(readings: &[Interval]) -> ResultKind {
    let below: Option<Vec<Ppm>> = readings.iter().map(Interval::as_below).collect();
    if let Some(upper) = below.and_then(|below| below.into_iter().reduce(Ppm::max)) {
        return ResultKind::Below { upper };
    }
    let numbers: Option<Vec<Ppm>> = readings.iter().map(Interval::as_number).collect();
    if let Some(mean) = numbers.and_then(|numbers| paper::mean(&numbers)) {
        return ResultKind::Value { mean };
    }
    let lower: Vec<Ppm> = readings.iter().map(|reading| reading.lower).collect();
    let upper: Option<Vec<Ppm>> = readings.iter().map(|reading| reading.upper).collect();
    match paper::mean(&lower) {
        Some(lower) => ResultKind::Range(Interval {
            lower,
            upper: upper.and_then(|upper| paper::mean(&upper)),
            // A sum misses its end where one of its terms misses its own.
            upper_open: readings.iter().any(|reading| reading.upper_open),
            lower_open: readings.iter().any(|reading| reading.lower_open),
        }),
        None => ResultKind::None,
    }
}

/// From the smallest lower to the largest upper bound of disagreeing readings; an end is left out where all that reach
/// it leave it out.
fn span(readings: &[Interval]) -> ResultKind {
    let Some(lower) = readings
        .iter()
        .map(|reading| reading.lower)
        .reduce(Ppm::min)
    else {
        return ResultKind::None;
    };
    let upper: Option<Vec<Ppm>> = readings.iter().map(|reading| reading.upper).collect();
    let upper = upper.and_then(|upper| upper.into_iter().reduce(Ppm::max));
    let mut at_lower = readings.iter().filter(|reading| reading.lower.same(lower));
    let mut at_upper = readings.iter().filter(|reading| reading.upper == upper);
    ResultKind::Range(Interval {
        lower,
        upper,
        lower_open: at_lower.all(|reading| reading.lower_open),
        upper_open: at_upper.all(|reading| reading.upper_open),
    })
}

/// Where a sound result stands; "below n" is never over.
///
/// Under a guarded rule a result is held against the limit with the expanded uncertainty added and taken off. Where detection
/// decides there is no amount to guard: a figure is a detection, however uncertain.
fn stand(result: &ResultKind, held: &[Held], rule: &Rule) -> Standing {
    let limit = limit_of(held, rule);
    let guard = match rule.decision {
        Decision::Guarded {
            relative_expanded_uncertainty: u,
        } if !limit.detection => Some(u),
        Decision::Guarded { .. } | Decision::Simple => None,
    };
    let u = guard.unwrap_or(0.0);
    let interval = match *result {
        ResultKind::None => return Standing::Unresolved,
        ResultKind::Below { upper } => {
            let fits = if limit.detection {
                held.iter().all(Held::within)
            } else {
                Ppm(upper.0 * (1.0 + u)).compare(limit.ppm) != Ordering::Greater
            };
            return if fits {
                Standing::BelowQuantification
            } else {
                Standing::Unresolved
            };
        }
        ResultKind::Value { mean } => Interval::number(mean),
        ResultKind::Range(interval) => interval,
    };
    let guarded = Interval {
        lower: Ppm(interval.lower.0 * (1.0 - u)),
        upper: interval.upper.map(|upper| Ppm(upper.0 * (1.0 + u))),
        ..interval
    };
    if limit.surely_over(&guarded) {
        Standing::Over
    } else if limit.surely_within(&guarded) {
        Standing::Within
    } else if guard.is_some() {
        Standing::Inconclusive
    } else {
        Standing::Unresolved
    }
}

/// Where disagreeing readings stand: over where all are, or, from three on, where their median is. Never within.
fn stand_apart(held: &[Held], limit: Limit) -> Standing {
    let all_over = held.iter().all(Held::over);
    let readings: Vec<Interval> = held.iter().map(|held| held.reading).collect();
    let median_over = readings.len() >= 3
        && median_lower(&readings).is_some_and(|median| limit.surely_over(&median));
    if all_over || median_over {
        Standing::Over
    } else {
        Standing::Unresolved
    }
}

/// The median of the lower bounds: what the median is at least. Of an even number, the mean of the middle two.
fn median_lower(readings: &[Interval]) -> Option<Interval> {
    let mut sorted: Vec<&Interval> = readings.iter().collect();
    sorted.sort_by(|a, b| {
        let by_bound = a.lower.0.total_cmp(&b.lower.0);
        by_bound.then(a.lower_open.cmp(&b.lower_open))
    });
    let (low, high) = (
        sorted.get((sorted.len().checked_sub(1)?) / 2)?,
        sorted.get(sorted.len() / 2)?,
    );
    let lower = paper::mean(&[low.lower, high.lower])?;
    if low.as_number().is_some() && high.as_number().is_some() {
        return Some(Interval::number(lower));
    }
    Some(Interval {
        lower,
        lower_open: low.lower_open || high.lower_open,
        upper: None,
        upper_open: true,
    })
}
