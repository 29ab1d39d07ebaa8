//! The one place that words a reason: sheet, data files, `explain`, summary and letters take it from here.

use super::catalogue::Catalogue;
use super::locale::NBSP;
use super::messages::say;
use crate::model::figures;
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
    let by = side(rule.limit);
    let limit = || words.limit(rule);
    let counted = |n: usize| n as u64;
    let held = |result: &ResultKind| Holding::of(result, rule.limit, &in_unit);
    let said: Said = match reason {
        Reason::UnknownClaim { text } => say::reason_unknown_claim(text),
        Reason::NoClaim => say::reason_no_claim(),
        Reason::UnknownProcessing => say::reason_unknown_processing(),
        Reason::Doubt(doubt) => doubted(doubt),
        Reason::NoneMeasured { packages, below } => say::reason_none_measured(
            counted(*packages),
            in_unit(&figures::plain(*below)),
            by,
            limit(),
        ),
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
            let (gap, allowed) = figures::in_order(*gap, *allowed);
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
    fn of(result: &ResultKind, limit: Limit, in_unit: &dyn Fn(&str) -> String) -> Holding {
        let figure = |x: Ppm| figures::figure(x, limit.ppm);
        let (kind, figure, upper) = match *result {
            ResultKind::Value { mean } if limit.detection => ("detected", Some(figure(mean)), None),
            ResultKind::Value { mean } => ("mean", Some(figure(mean)), None),
            ResultKind::Below { upper } => ("below", None, Some(figures::plain(upper))),
            ResultKind::Range(range) => match range.upper {
                Some(upper) => ("range", Some(figure(range.lower)), Some(figure(upper))),
                // As in a table: ">80", not ">80.0".
                None => {
                    let lower = figure(range.lower);
                    ("above", Some(lower.trim_end_matches(".0").to_owned()), None)
                }
            },
            ResultKind::None => ("nothing", None, None),
        };
        let text = |figure: Option<String>| figure.map(|one| in_unit(&one)).unwrap_or_default();
        Holding {
            kind,
            figure: text(figure),
            upper: text(upper),
        }
    }
}
