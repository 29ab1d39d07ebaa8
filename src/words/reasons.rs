//! The one place that words a reason: sheet, data files, `explain`, summary and letters take it from here.

use super::catalogue::Catalogue;
use super::locale::NBSP;
use super::messages::say;
use crate::model::package::ResultKind;
use crate::model::ppm::Ppm;
use crate::model::reason::Reason;
use crate::model::registers::{DoubtKind, Processing};
use crate::model::rule::{Limit, Rule};
use crate::model::said::Said;

/// The reasons of a verdict in words, in the unit of the regime's law. `rule` is the one that the product is judged by.
pub fn reasons(reasons: &[Reason], rule: &Rule, words: &Catalogue) -> Vec<String> {
    reasons
        .iter()
        .map(|reason| reason_in_words(reason, rule, words))
        .collect()
}

/// The same for data files and screens, where a space is a space: programs look for "20 ppm".
pub fn plain_reasons(of: &[Reason], rule: &Rule, words: &Catalogue) -> Vec<String> {
    let worded = reasons(of, rule, words).into_iter();
    worded.map(|reason| reason.replace(NBSP, " ")).collect()
}

/// One reason in words.
pub fn reason_in_words(reason: &Reason, rule: &Rule, words: &Catalogue) -> String {
    let in_unit = |figure: &str| words.locale().with_unit(figure, rule.regime.unit());
    let shown = |x: Ppm| in_unit(&rule.limit.shown(x));
    let by = side(rule.limit);
    let limit = || words.limit(rule);
    let counted = |n: usize| n as u64;
    let held = |result: &ResultKind| Holding::of(result, rule.limit, &shown);
    let said: Said = match reason {
        Reason::UnknownClaim { text } => say::reason_unknown_claim(text),
        Reason::NoClaim => say::reason_no_claim(),
        Reason::UnknownProcessing => say::reason_unknown_processing(),
        Reason::Doubt(doubt) => doubted(doubt),
        Reason::NoneMeasured { packages, below } => {
            say::reason_none_measured(counted(*packages), shown(*below), by, limit())
        }
        Reason::AllWithin { packages, guarded } => {
            let guarded = if *guarded { "yes" } else { "no" };
            say::reason_all_within(counted(*packages), guarded, by, limit())
        }
        Reason::Over { package, result } => {
            let held = held(result);
            say::reason_over(package, held.kind, held.figure, held.upper, by, limit())
        }
        Reason::EachOver { package } => say::reason_each_over(package, by, limit()),
        Reason::MedianOver { package } => say::reason_median_over(package, by, limit()),
        Reason::OverBySandwich { package, result } => {
            let held = held(result);
            say::reason_over_by_sandwich(package, held.kind, held.figure, held.upper, by, limit())
        }
        Reason::Missing { package } => say::reason_missing(package),
        Reason::TooFewExtractions {
            package,
            usable,
            asked,
        } => say::reason_too_few_extractions(package, counted(*usable), counted(*asked)),
        Reason::Conflict {
            package,
            usable,
            asked,
        } => say::reason_conflict(package, counted(*usable), counted(*asked)),
        Reason::Disagree {
            package,
            gap,
            allowed,
            exact,
        } => {
            let (gap, allowed) = in_order(gap.0, allowed.0);
            let how = if *exact { "exact" } else { "least" };
            say::reason_disagree(package, how, in_unit(&gap), in_unit(&allowed))
        }
        Reason::TooClose { package, result } => {
            let held = held(result);
            say::reason_too_close(package, held.kind, held.figure, held.upper, limit())
        }
        Reason::EitherSide { package, result } => {
            let held = held(result);
            say::reason_either_side(package, held.kind, held.figure, held.upper, by, limit())
        }
        Reason::TooFewPackages { tested, asked } => {
            say::reason_too_few_packages(counted(*tested), counted(*asked))
        }
        Reason::SandwichUnfit(processing) => say::reason_sandwich_unfit(food(*processing)),
        Reason::RecordsDecide(processing) => say::reason_records_decide(food(*processing)),
    };
    words.say(&said)
}

fn doubted(doubt: &DoubtKind) -> Said {
    match doubt {
        DoubtKind::Heading { found, meant } => say::reason_heading(found, meant),
        DoubtKind::HeadingTwice { heading } => say::reason_heading_twice(heading),
        DoubtKind::Field { column, written } => say::reason_field(column, written),
        DoubtKind::Row => say::reason_row(),
        DoubtKind::Report { file } => say::reason_report(file),
        DoubtKind::MisnamedWorkbook => say::reason_misnamed_workbook(),
        DoubtKind::Misnamed { meant } => say::reason_misnamed(meant),
    }
}

/// Which wording of the limit a message takes.
pub fn side(limit: Limit) -> &'static str {
    match (limit.detection, limit.passes) {
        (true, _) => "detection",
        (false, true) => "passes",
        (false, false) => "fails",
    }
}

fn food(processing: Processing) -> &'static str {
    if processing == Processing::Hydrolysed {
        "hydrolysed"
    } else {
        "fermented"
    }
}

/// What a package holds, as its message wants it.
struct Holding {
    kind: &'static str,
    figure: String,
    upper: String,
}

impl Holding {
    fn of(result: &ResultKind, limit: Limit, shown: &dyn Fn(Ppm) -> String) -> Holding {
        let (kind, figure, upper) = match *result {
            ResultKind::Value { mean } if limit.detection => ("detected", Some(mean), None),
            ResultKind::Value { mean } => ("mean", Some(mean), None),
            ResultKind::Below { upper } => ("below", None, Some(upper)),
            ResultKind::Range(range) => match range.upper {
                Some(upper) => ("range", Some(range.lower), Some(upper)),
                None => ("above", Some(range.lower), None),
            },
            ResultKind::None => ("nothing", None, None),
        };
        let text = |x: Option<Ppm>| x.map(shown).unwrap_or_default();
        Holding {
            kind,
            figure: text(figure),
            upper: text(upper),
        }
    }
}

/// A gap and what is allowed: one decimal, more where the gap would not print as the larger of the two.
fn in_order(gap: f64, allowed: f64) -> (String, String) {
    let printed = |decimals: usize| (format!("{gap:.decimals$}"), format!("{allowed:.decimals$}"));
    let larger = |(gap, allowed): &(String, String)| {
        let value = |text: &String| text.parse::<f64>().unwrap_or(f64::NAN);
        value(gap) > value(allowed)
    };
    (1..=9)
        .map(printed)
        .find(larger)
        .unwrap_or_else(|| printed(9))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_gap_prints_as_larger_than_what_is_allowed() {
        let printed = |gap, allowed| {
            let (gap, allowed) = in_order(gap, allowed);
            format!("{gap} > {allowed}")
        };
        assert_eq!(printed(24.9, 7.92), "24.9 > 7.9");
        assert_eq!(printed(8.44, 8.42), "8.44 > 8.42");
    }
}
