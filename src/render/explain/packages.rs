//! One package: its readings with their cells, the comparison, the result and the standing.

use crate::config::Config;
use crate::model::extraction::Interval;
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::{Comparison, PairState, PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::model::registers::Photograph;
use crate::model::rule::{Decision, Limit, Rule};
use crate::render::explain::words::{figure, line, plain, say};
use crate::words::{Said, english, say, yes_or_no};

/// The reasoning of one package.
pub fn explain_package(out: &mut String, package: &PackageResult, rule: &Rule, config: &Config) {
    let bought = &package.pair.package;
    say(out, 0, &say::explain_package(&bought.package_code));
    if package.pair.extractions.is_empty() {
        say(out, 1, &say::explain_no_row());
    }
    for row in &package.pair.extractions {
        explain_extraction(out, row);
    }
    if let Some(comparison) = &package.pair.comparison {
        explain_comparison(out, package, comparison, config);
    }
    say(out, 1, &say::explain_state(package.pair.state.word()));
    explain_result(out, package, rule);
    if let Some(custody) = &bought.custody {
        say(out, 1, &say::explain_custody(custody));
    }
    for photograph in &bought.photographs {
        let Photograph { path, sha256 } = photograph;
        say(out, 1, &say::explain_photograph(path, sha256));
    }
    line(out, 0, "");
}

fn explain_extraction(out: &mut String, row: &PairedExtraction) {
    let extraction = &row.extraction;
    let reading = extraction.outcome.reading();
    let said = say::explain_reading(
        extraction.number.to_string(),
        &extraction.reported,
        extraction.source.place().to_string(),
        yes_or_no(reading.is_some()),
        reading.as_ref().map(interval).unwrap_or_default(),
        figure(extraction.lloq),
    );
    say(out, 1, &said);
    if extraction.from_gliadin {
        say(out, 2, &say::explain_gliadin());
    }
    for source in &row.also_reported {
        say(out, 2, &say::explain_again(source.place().to_string()));
    }
    match &row.usage {
        Usage::Used => {}
        Usage::NoReading => say(out, 2, &say::explain_unused("unread")),
        Usage::InConflict => say(out, 2, &say::explain_unused("conflict")),
        Usage::Excluded { reason, by, .. } => say(out, 2, &say::explain_set_aside(by, reason)),
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
    let repeatability = config.testing.relative_repeatability.to_string();
    say(out, 1, &say::explain_comparison(n as u64));
    let steps = [
        say::explain_gap(
            figure(lower),
            yes_or_no(upper.is_some()),
            upper.map(figure).unwrap_or_default(),
            figure(gap),
        ),
        say::explain_mean(yes_or_no(gap.0 > 0.0), figure(m)),
        say::explain_scatter(figure(q), repeatability, figure(s)),
        say::explain_allowed(n as u64, factor.to_string(), figure(s), figure(allowed)),
    ];
    for step in &steps {
        say(out, 2, step);
    }
}

fn explain_result(out: &mut String, package: &PackageResult, rule: &Rule) {
    say(out, 1, &result(package));
    if let Decision::Guarded {
        relative_expanded_uncertainty: u,
    } = rule.decision
    {
        guard(out, &package.result, u);
    }
    if package.straddles_limit {
        say(out, 1, &say::explain_straddles());
    }
    say(out, 1, &standing(package, rule.limit));
}

fn result(package: &PackageResult) -> Said {
    let (kind, lower, upper) = match (package.pair.state, &package.result) {
        (_, ResultKind::None) => ("none", None, None),
        (_, ResultKind::Below { upper }) => ("below", None, Some(*upper)),
        (_, ResultKind::Value { mean }) => ("mean", Some(*mean), None),
        (PairState::Disagree, ResultKind::Range(range)) => {
            ("outer", Some(range.lower), range.upper)
        }
        (_, ResultKind::Range(range)) => ("means", Some(range.lower), range.upper),
    };
    let figures: Vec<String> = usable(package)
        .iter()
        .map(|reading| figure(reading.lower))
        .collect();
    let shown = |x: Option<Ppm>| x.map(figure).unwrap_or_default();
    say::explain_result(
        kind,
        shown(lower),
        yes_or_no(upper.is_some()),
        shown(upper),
        figures.join(" + "),
        figures.len() as u64,
    )
}

fn guard(out: &mut String, result: &ResultKind, u: f64) {
    let (lower, upper) = match *result {
        ResultKind::None => return,
        ResultKind::Below { upper } => (None, Some(upper)),
        ResultKind::Value { mean } => (Some(mean), Some(mean)),
        ResultKind::Range(range) => (Some(range.lower), range.upper),
    };
    let scaled = |x: Ppm, factor: f64| figure(Ppm(x.0 * factor));
    let lower =
        lower.map(|x| say::explain_guard_lower(figure(x), u.to_string(), scaled(x, 1.0 - u)));
    let upper =
        upper.map(|x| say::explain_guard_upper(figure(x), u.to_string(), scaled(x, 1.0 + u)));
    let ends: Vec<String> = lower
        .into_iter()
        .chain(upper)
        .map(|end| english().say(&end))
        .collect();
    say(out, 1, &say::explain_guard(ends.join("; ")));
}

/// The standing; a disagreeing package is over only where every reading, or the median of three and more, is.
fn standing(package: &PackageResult, limit: Limit) -> Said {
    let standing = plain(package.standing.word());
    if package.pair.state != PairState::Disagree {
        return say::explain_standing(standing);
    }
    let readings = usable(package);
    let over = readings
        .iter()
        .filter(|reading| limit.surely_over(reading))
        .count();
    say::explain_standing_apart(standing, over as u64, readings.len() as u64)
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
    upper.map_or_else(|| english().say(&say::explain_no_end()), figure)
}
