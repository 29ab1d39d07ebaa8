//! Pairs -> one result and standing a package.

use crate::judge::paper;
use crate::model::extraction::Interval;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::{Pair, PairState};
use crate::model::ppm::Ppm;
use crate::model::rule::{Decision, Limit, Rule};
use std::cmp::Ordering;

/// One result and standing for every pair, in the same order.
pub fn accept(pairs: Vec<Pair>, rule: &Rule) -> Vec<PackageResult> {
    pairs
        .into_iter()
        .map(|pair| {
            let readings: Vec<Interval> = pair
                .usable()
                .filter_map(|extraction| extraction.outcome.reading())
                .collect();
            let agree = pair.state == PairState::Agree;
            let result = match pair.state {
                PairState::Agree => combine(&readings),
                PairState::Disagree => span(&readings),
                PairState::Incomplete | PairState::Missing => ResultKind::None,
            };
            let standing = match (pair.state, &result) {
                (PairState::Disagree, _) => stand_apart(&readings, rule.limit),
                (_, result) => stand(result, rule),
            };
            PackageResult {
                straddles_limit: agree && straddles(&readings, rule.limit),
                pair,
                result,
                standing,
            }
        })
        .collect()
}

/// Whether every value that a reading allows is over the limit. A lower bound that is itself left out is over the limit
/// where it is the limit: ">20" is over 20.
pub fn surely_over(reading: &Interval, limit: Limit) -> bool {
    let at_or_above = reading.lower.compare(limit.ppm) != Ordering::Less;
    limit.over(reading.lower) || (reading.lower_open && at_or_above)
}

/// Whether no value that a reading allows is over the limit.
pub fn surely_within(reading: &Interval, limit: Limit) -> bool {
    match reading.upper {
        Some(upper) if reading.upper_open => !limit.over_open_above(upper),
        Some(upper) => !limit.over(upper),
        None => false,
    }
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
        Some(lower) => ResultKind::Range {
            lower,
            upper: upper.and_then(|upper| paper::mean(&upper)),
            // A sum misses its end where one of its terms misses its own.
            upper_open: readings.iter().any(|reading| reading.upper_open),
            lower_open: readings.iter().any(|reading| reading.lower_open),
        },
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
    ResultKind::Range {
        lower,
        upper,
        lower_open: at_lower.all(|reading| reading.lower_open),
        upper_open: at_upper.all(|reading| reading.upper_open),
    }
}

/// Where a sound result stands; "below n" is never over.
fn stand(result: &ResultKind, rule: &Rule) -> Standing {
    let (low, high, between) = match rule.decision {
        Decision::Simple => (1.0, 1.0, Standing::Unresolved),
        Decision::Guarded {
            relative_expanded_uncertainty: u,
        } => (1.0 - u, 1.0 + u, Standing::Inconclusive),
    };
    let interval = match *result {
        ResultKind::None => return Standing::Unresolved,
        ResultKind::Below { upper } => {
            let fits = Ppm(upper.0 * high).compare(rule.limit.ppm) != Ordering::Greater;
            return if fits {
                Standing::BelowQuantification
            } else {
                Standing::Unresolved
            };
        }
        ResultKind::Value { mean } => Interval::number(mean),
        ResultKind::Range {
            lower,
            upper,
            upper_open,
            lower_open,
        } => Interval {
            lower,
            lower_open,
            upper,
            upper_open,
        },
    };
    let guarded = Interval {
        lower: Ppm(interval.lower.0 * low),
        upper: interval.upper.map(|upper| Ppm(upper.0 * high)),
        ..interval
    };
    if surely_over(&guarded, rule.limit) {
        Standing::Over
    } else if surely_within(&guarded, rule.limit) {
        Standing::Within
    } else {
        between
    }
}

/// Where disagreeing readings stand: over where all are, or, from three on, where their median is. Never within.
fn stand_apart(readings: &[Interval], limit: Limit) -> Standing {
    let all_over = readings.iter().all(|reading| surely_over(reading, limit));
    let median_over = readings.len() >= 3
        && median_lower(readings).is_some_and(|median| surely_over(&median, limit));
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
    Some(Interval {
        lower: paper::mean(&[low.lower, high.lower])?,
        lower_open: low.lower_open || high.lower_open,
        upper: None,
        upper_open: true,
    })
}

/// Whether there are readings on both sides of the limit.
fn straddles(readings: &[Interval], limit: Limit) -> bool {
    readings.iter().any(|reading| surely_over(reading, limit))
        && readings.iter().any(|reading| surely_within(reading, limit))
}
