//! One package: its readings with their cells, the comparison, the result and the standing.

use crate::config::Config;
use crate::model::extraction::Interval;
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::{Comparison, PairState, PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::model::registers::Photograph;
use crate::model::rule::{Decision, Limit, Rule};
use crate::render::explain::words::{figure, line};

/// The reasoning of one package.
pub fn explain_package(out: &mut String, package: &PackageResult, rule: &Rule, config: &Config) {
    line(
        out,
        0,
        &format!("Package {}", package.pair.package.package_code),
    );
    if package.pair.extractions.is_empty() {
        line(out, 1, "No lab file has a row for it.");
    }
    for row in &package.pair.extractions {
        explain_extraction(out, row);
    }
    if let Some(comparison) = &package.pair.comparison {
        explain_comparison(out, package, comparison, config);
    }
    let state = match package.pair.state {
        PairState::Agree => "The readings agree: the gap is not larger than allowed.",
        PairState::Disagree => "The readings disagree: the gap is larger than allowed.",
        PairState::Incomplete => "Incomplete: fewer usable readings than asked for.",
        PairState::Missing => "Missing: the lab has reported nothing.",
    };
    line(out, 1, state);
    explain_result(out, package, rule);
    let bought = &package.pair.package;
    if let Some(custody) = &bought.custody {
        line(out, 1, &format!("Custody: {custody}"));
    }
    for photograph in &bought.photographs {
        let Photograph { path, sha256 } = photograph;
        line(out, 1, &format!("Photograph: {path}, SHA-256 {sha256}"));
    }
    line(out, 0, "");
}

fn explain_extraction(out: &mut String, row: &PairedExtraction) {
    let extraction = &row.extraction;
    let reading = match extraction.outcome.reading() {
        Some(reading) => format!("{} ppm", interval(&reading)),
        None => "no reading".to_owned(),
    };
    line(
        out,
        1,
        &format!(
            "Extraction {}: “{}” in {}, read as {reading} (LLOQ {} ppm)",
            extraction.number,
            extraction.reported,
            extraction.source.place(),
            figure(extraction.lloq)
        ),
    );
    if extraction.from_gliadin {
        line(out, 2, "reported as gliadin: gluten = 2 x gliadin");
    }
    for source in &row.also_reported {
        line(
            out,
            2,
            &format!("the same in {}: counted once", source.place()),
        );
    }
    match &row.usage {
        Usage::Used => {}
        Usage::NoReading => line(out, 2, "not used: it gives no reading"),
        Usage::InConflict => line(
            out,
            2,
            "not used: another cell reports this extraction otherwise",
        ),
        Usage::Excluded { reason, by } => {
            line(out, 2, &format!("not used: set aside by {by}: {reason}"));
        }
    }
}

fn explain_comparison(
    out: &mut String,
    package: &PackageResult,
    comparison: &Comparison,
    config: &Config,
) {
    let Comparison {
        n,
        q,
        gap,
        m,
        s,
        factor,
        allowed,
    } = *comparison;
    let readings: Vec<Interval> = usable(package);
    let lower = readings
        .iter()
        .map(|reading| reading.lower)
        .fold(Ppm::ZERO, Ppm::max);
    let upper = readings
        .iter()
        .filter_map(|reading| reading.upper)
        .reduce(Ppm::min);
    let upper = upper.map_or_else(|| "no end".to_owned(), figure);
    line(
        out,
        1,
        &format!("Comparison of {n} readings (ISO 5725-6, on intervals)"),
    );
    line(
        out,
        2,
        &format!(
            "gap = max(0, largest lower bound {} - smallest upper bound {upper}) = {} ppm",
            figure(lower),
            figure(gap)
        ),
    );
    let how = if gap.0 > 0.0 {
        "the mean of the readings, each at its point nearest to the middle of those two bounds"
    } else {
        "the mean of all finite bounds"
    };
    line(out, 2, &format!("m = {how} = {} ppm", figure(m)));
    line(
        out,
        2,
        &format!(
            "q = the largest quantification limit = {} ppm; s = sqrt((q / 10)^2 + ({} x m)^2) = {} ppm",
            figure(q),
            config.testing.relative_repeatability,
            figure(s)
        ),
    );
    line(
        out,
        2,
        &format!(
            "allowed = f({n}) x s = {factor} x {} = {} ppm",
            figure(s),
            figure(allowed)
        ),
    );
}

fn explain_result(out: &mut String, package: &PackageResult, rule: &Rule) {
    let how = match (package.pair.state, &package.result) {
        (_, ResultKind::None) => "no sound result".to_owned(),
        (_, ResultKind::Below { upper }) => {
            format!("below {} ppm, the largest “below n”", figure(*upper))
        }
        (_, ResultKind::Value { mean }) => {
            let figures: Vec<String> = usable(package)
                .iter()
                .map(|reading| figure(reading.lower))
                .collect();
            format!(
                "mean = ({}) / {} = {} ppm",
                figures.join(" + "),
                figures.len(),
                figure(*mean)
            )
        }
        (PairState::Disagree, ResultKind::Range(range)) => format!(
            "from the smallest to the largest bound, {} to {} ppm",
            figure(range.lower),
            end(range.upper)
        ),
        (_, ResultKind::Range(range)) => format!(
            "from the mean of the lower to the mean of the upper bounds, {} to {} ppm",
            figure(range.lower),
            end(range.upper)
        ),
    };
    line(out, 1, &format!("Result: {how}"));
    if let Decision::Guarded {
        relative_expanded_uncertainty: u,
    } = rule.decision
    {
        guard(out, &package.result, u);
    }
    if package.straddles_limit {
        line(
            out,
            1,
            "The readings stand on both sides of the limit; since they agree, their mean decides.",
        );
    }
    line(
        out,
        1,
        &format!(
            "Standing: {}{}",
            package.standing.word().replace('_', " "),
            median_note(package, rule.limit)
        ),
    );
}

fn guard(out: &mut String, result: &ResultKind, u: f64) {
    let (lower, upper) = match *result {
        ResultKind::None => return,
        ResultKind::Below { upper } => (None, Some(upper)),
        ResultKind::Value { mean } => (Some(mean), Some(mean)),
        ResultKind::Range(range) => (Some(range.lower), range.upper),
    };
    let scaled = |x: Ppm, factor: f64| figure(Ppm(x.0 * factor));
    let lower = lower.map(|x| format!("{} x (1 - {u}) = {} ppm", figure(x), scaled(x, 1.0 - u)));
    let upper = upper.map(|x| format!("{} x (1 + {u}) = {} ppm", figure(x), scaled(x, 1.0 + u)));
    let parts: Vec<String> = lower.into_iter().chain(upper).collect();
    line(out, 1, &format!("Guard band: {}", parts.join("; ")));
}

/// A disagreeing package is over only where every reading, or the median of three and more, is.
fn median_note(package: &PackageResult, limit: Limit) -> String {
    if package.pair.state != PairState::Disagree {
        return String::new();
    }
    let readings = usable(package);
    let over = readings
        .iter()
        .filter(|reading| limit.surely_over(reading))
        .count();
    format!(
        " ({over} of {} readings surely over; disagreeing readings are never within)",
        readings.len()
    )
}

fn usable(package: &PackageResult) -> Vec<Interval> {
    package
        .pair
        .usable()
        .filter_map(|extraction| extraction.outcome.reading())
        .collect()
}

/// A reading as an interval; a round bracket leaves its end out.
fn interval(reading: &Interval) -> String {
    if let Some(number) = reading.as_number() {
        return figure(number);
    }
    let open = if reading.lower_open { '(' } else { '[' };
    let close = if reading.upper_open { ')' } else { ']' };
    format!(
        "{open}{}, {}{close}",
        figure(reading.lower),
        end(reading.upper)
    )
}

fn end(upper: Option<Ppm>) -> String {
    upper.map_or_else(|| "no upper end".to_owned(), figure)
}
