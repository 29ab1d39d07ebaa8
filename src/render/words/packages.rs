//! A package's extractions in words: how they agree, and what is to be noted of them.

use crate::config::Config;
use crate::model::extraction::{Extraction, Outcome};
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::{PairState, PairedExtraction, Repeat, Usage};
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::render::numbers;
use crate::render::words::{Named, full_stop, sentence_case};
use crate::words::{Catalogue, Said, say};

/// How a package's extractions agree: a word, and what it rests on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Agreement {
    /// `Agree`, `No sign they differ`, `Disagree`, `One extraction only`.
    pub head: String,
    /// `3.3 apart, 12.7 allowed`.
    pub detail: String,
}

/// How a package's extractions agree.
pub fn agreement(package: &PackageResult, words: &Catalogue) -> Agreement {
    let usable = package.pair.usable().count() as u64;
    let reported = package.pair.extractions.len();
    let (head, detail) = match package.pair.state {
        // What is beyond the assay's range may be equal and may be far apart: only that nothing speaks against it is known.
        PairState::Agree if beyond(package).is_some() => {
            (say::ruler_no_sign(), apart(package, words))
        }
        PairState::Agree => (say::ruler_agree(), apart(package, words)),
        PairState::Disagree => (say::ruler_disagree(), apart(package, words)),
        PairState::Missing if reported == 0 => {
            (say::ruler_no_result(), Some(say::ruler_nothing_reported()))
        }
        PairState::Missing => (say::ruler_no_result(), Some(say::ruler_none_reported())),
        PairState::Incomplete => (
            say::ruler_incomplete(usable),
            Some(what_is_lacking(&package.pair.extractions, usable)),
        ),
    };
    Agreement {
        head: words.say(&head),
        detail: detail.map(|said| words.say(&said)).unwrap_or_default(),
    }
}

fn apart(package: &PackageResult, words: &Catalogue) -> Option<Said> {
    let n = package.pair.usable().count() as u64;
    if let Some((side, bound)) = beyond(package) {
        let bound = words.locale().figure(&numbers::plain(bound));
        return Some(say::ruler_beyond(n, side, bound));
    }
    let comparison = package.pair.comparison.as_ref()?;
    let numbers::Apart { gap, allowed } = numbers::apart(comparison);
    let how = match has_bounds(package) {
        true if comparison.gap == Ppm::ZERO => "equal",
        true => "least",
        false => "exact",
    };
    let figure = |written: &str| words.locale().figure(written);
    Some(say::ruler_apart(n, how, figure(&gap), figure(&allowed)))
}

/// On which side of what the assay measures every extraction lies, and the bound: their difference is not known.
fn beyond(package: &PackageResult) -> Option<(&'static str, Ppm)> {
    match package.result {
        ResultKind::Below { upper } => Some(("below", upper)),
        _ => Some(("above", lowest_above(package)?)),
    }
}

/// Whether nothing is known of how far apart its extractions are, since all of them lie beyond what the assay measures.
pub fn is_beyond(package: &PackageResult) -> bool {
    beyond(package).is_some()
}

/// `both <5`, `both >80`: what stands in the place of a difference that is not known.
pub fn all_beyond(package: &PackageResult, words: &Catalogue) -> Option<String> {
    let (side, bound) = beyond(package)?;
    let sign = if side == "below" { "<" } else { ">" };
    let bound = words.locale().figure(&numbers::plain(bound));
    let n = package.pair.usable().count() as u64;
    Some(words.say(&say::cell_beyond(n, format!("{sign}{bound}"))))
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

fn what_is_lacking(extractions: &[PairedExtraction], usable: u64) -> Said {
    let any = |wanted: fn(&PairedExtraction) -> bool| extractions.iter().any(wanted);
    if any(|paired| paired.usage == Usage::InConflict) {
        say::ruler_reports_differ()
    } else if any(|paired| matches!(paired.usage, Usage::Excluded { .. })) {
        say::ruler_set_aside(usable)
    } else if any(|paired| paired.extraction.outcome == Outcome::NotReported) {
        say::ruler_not_given(usable)
    } else if any(|paired| paired.usage == Usage::NoReading) {
        say::ruler_unreadable(usable)
    } else if usable == 1 {
        say::ruler_second_missing()
    } else {
        say::ruler_more_asked()
    }
}

/// What a reader of the table must know beyond its figures.
pub fn remarks(packages: &[PackageResult], rule: Rule, config: &Config) -> Vec<String> {
    let asked = config.testing.extractions_per_package;
    noted(packages, rule, asked, &config.words)
}

fn noted(packages: &[PackageResult], rule: Rule, asked: usize, words: &Catalogue) -> Vec<String> {
    let mut notes: Vec<Said> = packages
        .iter()
        .flat_map(|package| notes_of(package, rule, words))
        .collect();
    notes.extend(beyond_what_was_asked(packages, asked, words));
    notes.extend(range_note(packages, words));
    notes.extend(open_end_note(packages, words));
    notes.extend(gliadin_note(packages, rule, words));
    notes.extend(wells_note(packages));
    notes.iter().map(|note| words.say(note)).collect()
}

fn notes_of(package: &PackageResult, rule: Rule, words: &Catalogue) -> Vec<Said> {
    let code = &package.pair.package.package_code;
    let mut notes = Vec::new();
    if package.straddles_limit {
        notes.push(straddling_note(package, rule, words));
    }
    notes.extend(repeat_notes(package, words));
    notes.extend(conflict_note(package, rule, words));
    let extractions = package.pair.extractions.iter();
    notes.extend(extractions.filter_map(|paired| unused_note(code, paired)));
    notes
}

/// Extractions on both sides of the limit: what they give together decides, or does not.
fn straddling_note(package: &PackageResult, rule: Rule, words: &Catalogue) -> Said {
    let standing = match package.standing {
        Standing::Over | Standing::Within | Standing::BelowQuantification => "decides",
        Standing::Inconclusive => "close",
        Standing::Unresolved => "open",
    };
    let kind = match package.result {
        ResultKind::Value { .. } => "mean",
        _ => "range",
    };
    let figure = numbers::result_said(&package.result, rule.limit, words);
    let code = &package.pair.package.package_code;
    say::note_straddles(code, standing, kind, figure)
}

/// Why extractions were repeated, and who decided it: a note a decision.
fn repeat_notes(package: &PackageResult, words: &Catalogue) -> Vec<Said> {
    let mut decided: Vec<(&Repeat, Vec<u32>)> = Vec::new();
    for paired in &package.pair.extractions {
        let Some(repeat) = &paired.repeat else {
            continue;
        };
        match decided.iter_mut().find(|(known, _)| *known == repeat) {
            Some((_, numbers)) => numbers.push(paired.extraction.number),
            None => decided.push((repeat, vec![paired.extraction.number])),
        }
    }
    let note = |(repeat, numbers): (&Repeat, Vec<u32>)| {
        let numbers: Vec<String> = numbers.iter().map(u32::to_string).collect();
        say::note_repeat(
            &package.pair.package.package_code,
            numbers.len() as u64,
            words.list(&numbers),
            &repeat.by,
            words.day(repeat.on),
            full_stop(&sentence_case(repeat.reason.trim())),
        )
    };
    decided.into_iter().map(note).collect()
}

/// Extractions beyond those asked for, of which no decision is in the register.
fn beyond_what_was_asked(
    packages: &[PackageResult],
    asked: usize,
    words: &Catalogue,
) -> Option<Said> {
    let has_more = |package: &&PackageResult| {
        let extractions = &package.pair.extractions;
        extractions.iter().all(|paired| paired.repeat.is_none())
            && extractions
                .iter()
                .any(|paired| paired.extraction.number as usize > asked)
    };
    let of = Named::of(packages.iter().filter(has_more), words)?;
    let asked = asked as u64;
    Some(say::note_beyond(of.packages, of.by, of.named, asked))
}

/// What the lab's reports say of extractions of which they say different things.
fn conflict_note(package: &PackageResult, rule: Rule, words: &Catalogue) -> Option<Said> {
    let in_conflict = package
        .pair
        .extractions
        .iter()
        .filter(|paired| paired.usage == Usage::InConflict);
    let reports: Vec<String> = in_conflict
        .map(|paired| {
            let extraction = &paired.extraction;
            let cell = extraction.source.place().cell().unwrap_or_default();
            words.say(&say::note_conflict_report(
                extraction.number.to_string(),
                said(extraction, rule, words),
                file_name(extraction),
                cell,
            ))
        })
        .collect();
    let code = &package.pair.package.package_code;
    let note = || say::note_conflict(code, rule.regime.unit(), words.list(&reports));
    (!reports.is_empty()).then(note)
}

fn unused_note(code: &str, paired: &PairedExtraction) -> Option<Said> {
    let extraction = &paired.extraction;
    let number = extraction.number.to_string();
    let written = extraction.reported.trim();
    let empty = if written.is_empty() { "yes" } else { "no" };
    match &paired.usage {
        // One note names both reports of a conflict.
        Usage::Used | Usage::InConflict => None,
        Usage::Excluded { reason, by } => {
            let reason = full_stop(&sentence_case(reason.trim()));
            Some(say::note_set_aside(code, number, by, reason))
        }
        Usage::NoReading => Some(match extraction.outcome {
            Outcome::NotReported => say::note_not_reported(code, number, written, empty),
            _ => say::note_unreadable(code, number, written, empty),
        }),
    }
}

fn said(extraction: &Extraction, rule: Rule, words: &Catalogue) -> String {
    match extraction.outcome.reading() {
        Some(reading) => numbers::interval_said(reading, rule.limit, words),
        None => words.say(&say::quoted(&extraction.reported)),
    }
}

/// The name of a file without its folders.
pub fn file_name(extraction: &Extraction) -> &str {
    let path = extraction.source.file.path.as_str();
    path.rsplit('/').next().unwrap_or(path)
}

fn range_note(packages: &[PackageResult], words: &Catalogue) -> Option<Said> {
    let is_range = |package: &&PackageResult| {
        matches!(package.result, ResultKind::Range { .. })
            && package.pair.state == PairState::Agree
            && lowest_above(package).is_none()
    };
    let of = Named::of(packages.iter().filter(is_range), words)?;
    Some(say::note_range(of.packages, of.by, of.named))
}

fn open_end_note(packages: &[PackageResult], words: &Catalogue) -> Option<Said> {
    let is_open = |package: &&PackageResult| {
        package.pair.state == PairState::Agree && lowest_above(package).is_some()
    };
    let of = Named::of(packages.iter().filter(is_open), words)?;
    Some(say::note_open_end(of.packages, of.by, of.named))
}

fn gliadin_note(packages: &[PackageResult], rule: Rule, words: &Catalogue) -> Option<Said> {
    let reported = |package: &&PackageResult| {
        let mut usable = package.pair.usable();
        usable.any(|extraction| extraction.from_gliadin)
    };
    let of = Named::of(packages.iter().filter(reported), words)?;
    let all = match of.packages == packages.len() as u64 {
        true => "yes",
        false => "no",
    };
    let unit = rule.regime.unit();
    Some(say::note_gliadin(all, of.packages, of.by, of.named, unit))
}

fn wells_note(packages: &[PackageResult]) -> Option<Said> {
    let mut usable = packages.iter().flat_map(|package| package.pair.usable());
    let averaged = usable.any(|extraction| extraction.reported.contains(" | "));
    averaged.then(say::note_wells)
}
