//! A package's extractions in words: how they agree, and what is to be noted of them.

use crate::model::extraction::{Extraction, Outcome};
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::{PairState, PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::render::numbers;
use crate::render::words::limit::LimitWords;
use crate::render::words::{counted, full_stop, listed, sentence_case};

/// How a package's extractions agree: a word, and what it rests on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Agreement {
    /// `Agree`, `No sign they differ`, `Disagree`, `One extraction only`.
    pub head: String,
    /// `3.3 apart, 12.7 allowed`.
    pub detail: String,
}

/// How a package's extractions agree.
pub fn agreement(package: &PackageResult) -> Agreement {
    let said = |head: &str, detail: String| Agreement {
        head: head.to_owned(),
        detail,
    };
    let usable = package.pair.usable().count();
    let reported = package.pair.extractions.len();
    match package.pair.state {
        // What is beyond the assay's range may be equal and may be far apart: only that nothing speaks against it is known.
        PairState::Agree if all_beyond(package).is_some() => {
            said("No sign they differ", apart(package))
        }
        PairState::Agree => said("Agree", apart(package)),
        PairState::Disagree => said("Disagree", apart(package)),
        PairState::Missing if reported == 0 => said("No result", "nothing reported yet".to_owned()),
        PairState::Missing => said("No result", "the lab reported none".to_owned()),
        PairState::Incomplete => {
            let head = match usable {
                0 => "No sound extraction".to_owned(),
                1 => "One extraction only".to_owned(),
                n => format!("{n} extractions only"),
            };
            said(&head, what_is_lacking(&package.pair.extractions, usable))
        }
    }
}

fn apart(package: &PackageResult) -> String {
    if let ResultKind::Below { upper } = package.result {
        return format!("{} below {}", both_or_all(package), numbers::plain(upper));
    }
    let Some(comparison) = &package.pair.comparison else {
        return String::new();
    };
    if let Some(bound) = lowest_above(package) {
        return format!("{} above {}", both_or_all(package), numbers::plain(bound));
    }
    let numbers::Apart { gap, allowed } = numbers::apart(comparison);
    let n = package.pair.usable().count();
    let over = if n > 2 {
        format!("all {n}: ")
    } else {
        String::new()
    };
    let bounds = has_bounds(package);
    if bounds && comparison.gap == Ppm::ZERO {
        return format!("{over}may be equal, {allowed} allowed");
    }
    let least = if bounds { "at least " } else { "" };
    format!("{over}{least}{gap} apart, {allowed} allowed")
}

/// `both <5`, `both >80`: the difference between extractions that are all beyond the same end of the range is not known.
pub fn all_beyond(package: &PackageResult) -> Option<String> {
    let bound = match package.result {
        ResultKind::Below { upper } => format!("<{}", numbers::plain(upper)),
        _ => format!(">{}", numbers::plain(lowest_above(package)?)),
    };
    Some(format!("{} {bound}", both_or_all(package)))
}

fn both_or_all(package: &PackageResult) -> &'static str {
    if package.pair.usable().count() == 2 {
        "both"
    } else {
        "all"
    }
}

/// The lowest n, where every reading that counts is "above n".
fn lowest_above(package: &PackageResult) -> Option<Ppm> {
    let readings = package
        .pair
        .usable()
        .filter_map(|extraction| extraction.outcome.reading());
    let bounds: Option<Vec<Ppm>> = readings.map(|reading| reading.as_above()).collect();
    bounds?.into_iter().reduce(Ppm::min)
}

/// Whether any reading that counts is a bound, so that the gap is the least there can be.
pub fn has_bounds(package: &PackageResult) -> bool {
    let mut readings = package
        .pair
        .usable()
        .filter_map(|extraction| extraction.outcome.reading());
    readings.any(|reading| reading.as_number().is_none())
}

fn what_is_lacking(extractions: &[PairedExtraction], usable: usize) -> String {
    let any = |wanted: fn(&Usage) -> bool| extractions.iter().any(|paired| wanted(&paired.usage));
    if any(|usage| matches!(usage, Usage::InConflict)) {
        "two reports differ".to_owned()
    } else if any(|usage| matches!(usage, Usage::Excluded { .. })) {
        "the other was set aside".to_owned()
    } else if any(|usage| matches!(usage, Usage::NoReading)) {
        "the other has no readable result".to_owned()
    } else if usable == 1 {
        "the second was not reported".to_owned()
    } else {
        "more are asked for".to_owned()
    }
}

/// What a reader of the table must know beyond its figures.
pub fn notes(packages: &[PackageResult], rule: Rule) -> Vec<String> {
    let mut notes: Vec<String> = packages
        .iter()
        .flat_map(|package| notes_of(package, rule))
        .collect();
    notes.extend(range_note(packages));
    notes.extend(open_end_note(packages));
    if let Some(note) = gliadin_note(packages, rule) {
        notes.push(note);
    }
    if let Some(note) = wells_note(packages) {
        notes.push(note);
    }
    notes
}

fn notes_of(package: &PackageResult, rule: Rule) -> Vec<String> {
    let code = &package.pair.package.package_code;
    let limit = LimitWords::of(rule);
    let mut notes = Vec::new();
    if package.straddles_limit {
        notes.push(format!(
            "{code}: its extractions agree, but stand on both sides of the limit. Their mean decides: {}.",
            numbers::result(&package.result, rule.limit)
        ));
    }
    notes.extend(conflict_note(package, &limit, rule));
    let extractions = package.pair.extractions.iter();
    notes.extend(extractions.filter_map(|paired| unused_note(code, paired)));
    notes
}

/// What the lab's reports say of extractions of which they say different things.
fn conflict_note(package: &PackageResult, limit: &LimitWords, rule: Rule) -> Option<String> {
    let in_conflict = package
        .pair
        .extractions
        .iter()
        .filter(|paired| paired.usage == Usage::InConflict);
    let reports: Vec<String> = in_conflict
        .map(|paired| {
            let extraction = &paired.extraction;
            let cell = extraction.source.place().cell().unwrap_or_default();
            let figure = said(extraction, rule);
            format!(
                "extraction {} is {figure} in {}, {cell}",
                extraction.number,
                file_name(extraction)
            )
        })
        .collect();
    (!reports.is_empty()).then(|| {
        let code = &package.pair.package.package_code;
        format!(
            "{code}: the lab’s reports differ, so that none of them is used. In {}, {}.",
            limit.unit(),
            listed(&reports)
        )
    })
}

fn unused_note(code: &str, paired: &PairedExtraction) -> Option<String> {
    let extraction = &paired.extraction;
    let which = format!("{code}, extraction {}", extraction.number);
    match &paired.usage {
        Usage::Used => None,
        Usage::Excluded { reason, by } => Some(format!(
            "{which}: set aside by {by}. {}",
            full_stop(&sentence_case(reason.trim()))
        )),
        // One note names both reports.
        Usage::InConflict => None,
        Usage::NoReading => match extraction.outcome {
            Outcome::NotReported => Some(format!(
                "{which}: the lab gave a row without a result{}.",
                quoted(extraction)
            )),
            _ => Some(format!(
                "{which}: what the lab reported{} reads as no result.",
                quoted(extraction)
            )),
        },
    }
}

fn said(extraction: &Extraction, rule: Rule) -> String {
    match extraction.outcome.reading() {
        Some(reading) => numbers::interval(reading, rule.limit),
        None => format!("“{}”", extraction.reported),
    }
}

fn quoted(extraction: &Extraction) -> String {
    let text = extraction.reported.trim();
    if text.is_empty() {
        String::new()
    } else {
        format!(" (“{text}”)")
    }
}

/// The name of a file without its folders.
pub fn file_name(extraction: &Extraction) -> &str {
    let path = extraction.source.file.path.as_str();
    path.rsplit('/').next().unwrap_or(path)
}

/// The codes of some packages as the start of a note; a count where there are many.
fn named(packages: &[&PackageResult]) -> String {
    let codes: Vec<&str> = packages
        .iter()
        .map(|package| package.pair.package.package_code.as_str())
        .collect();
    match codes.len() {
        n if n <= 4 => listed(&codes),
        n => counted(n, "package", "packages"),
    }
}

fn range_note(packages: &[PackageResult]) -> Option<String> {
    let is_range = |package: &&PackageResult| {
        matches!(package.result, ResultKind::Range { .. })
            && package.pair.state == PairState::Agree
            && lowest_above(package).is_none()
    };
    let ranges: Vec<&PackageResult> = packages.iter().filter(is_range).collect();
    (!ranges.is_empty()).then(|| {
        format!(
            "{}: an extraction is a bound, not a number, so that the result is a range.",
            named(&ranges)
        )
    })
}

fn open_end_note(packages: &[PackageResult]) -> Option<String> {
    let is_open = |package: &&PackageResult| {
        package.pair.state == PairState::Agree && lowest_above(package).is_some()
    };
    let open: Vec<&PackageResult> = packages.iter().filter(is_open).collect();
    (!open.is_empty()).then(|| {
        format!(
            "{}: every extraction is above what the test measures, so that the result has no upper end.",
            named(&open)
        )
    })
}

fn gliadin_note(packages: &[PackageResult], rule: Rule) -> Option<String> {
    let reported = |package: &&PackageResult| {
        package
            .pair
            .usable()
            .any(|extraction| extraction.from_gliadin)
    };
    let from_gliadin: Vec<&PackageResult> = packages.iter().filter(reported).collect();
    let of = match from_gliadin.len() {
        0 => return None,
        n if n == packages.len() => String::new(),
        _ => format!(" of {}", named(&from_gliadin)),
    };
    let unit = LimitWords::of(rule).unit();
    Some(format!(
        "The lab reported gliadin. The figures{of} here are twice the reported ones: gluten in {unit}, as Codex CXS 118 counts it."
    ))
}

fn wells_note(packages: &[PackageResult]) -> Option<String> {
    let mut usable = packages.iter().flat_map(|package| package.pair.usable());
    let averaged = usable.any(|extraction| extraction.reported.contains(" | "));
    averaged.then(|| "Where the lab read an extraction in several wells, their mean is the extraction’s figure.".to_owned())
}
