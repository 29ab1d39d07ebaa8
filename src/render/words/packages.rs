//! A package's extractions in words: how they agree, and what is to be noted of them.

use crate::config::Config;
use crate::model::extraction::{Extraction, Interval, Outcome};
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::{Comparison, PairState, PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::render::numbers;
use crate::render::words::chapters::{Chapter, Event};
use crate::render::words::{Named, full_stop, sentence_case};
use crate::words::{Catalogue, Said, say, yes_or_no};

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
        PairState::Agree if is_beyond(&package.pair.usable().collect::<Vec<_>>()) => {
            (say::ruler_no_sign(), apart_in(package, words))
        }
        PairState::Agree => (say::ruler_agree(), apart_in(package, words)),
        PairState::Disagree => (say::ruler_disagree(), apart_in(package, words)),
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

/// How far apart a package's extractions are, or which end of what the assay measures all of them lie beyond.
fn apart_in(package: &PackageResult, words: &Catalogue) -> Option<Said> {
    let usable: Vec<&Extraction> = package.pair.usable().collect();
    match package.pair.comparison.as_ref() {
        Some(comparison) => Some(apart(&usable, comparison, words)),
        None => beyond(&usable).map(|(side, bound)| said_beyond(usable.len(), side, bound, words)),
    }
}

/// How far apart these extractions are.
pub fn apart(usable: &[&Extraction], comparison: &Comparison, words: &Catalogue) -> Said {
    if let Some((side, bound)) = beyond(usable) {
        return said_beyond(usable.len(), side, bound, words);
    }
    let numbers::Apart { gap, allowed } = numbers::apart(comparison);
    let how = match has_bounds(usable) {
        true if comparison.gap == Ppm::ZERO => "equal",
        true => "least",
        false => "exact",
    };
    let figure = |written: &str| words.locale().figure(written);
    say::ruler_apart(usable.len() as u64, how, figure(&gap), figure(&allowed))
}

fn said_beyond(n: usize, side: &'static str, bound: Ppm, words: &Catalogue) -> Said {
    let bound = words.locale().figure(&numbers::plain(bound));
    say::ruler_beyond(n as u64, side, bound)
}

/// On which side of what the assay measures all of these lie, and the bound that holds for all: their difference is not known.
fn beyond(usable: &[&Extraction]) -> Option<(&'static str, Ppm)> {
    let all = |bound: fn(&Interval) -> Option<Ppm>| -> Option<Vec<Ppm>> {
        let readings = usable.iter().map(|extraction| extraction.outcome.reading());
        readings.map(|reading| bound(&reading?)).collect()
    };
    let below = all(Interval::as_below).and_then(|all| all.into_iter().reduce(Ppm::max));
    let above = || all(Interval::as_above)?.into_iter().reduce(Ppm::min);
    below
        .map(|bound| ("below", bound))
        .or_else(|| Some(("above", above()?)))
}

/// Whether nothing is known of how far apart these are, since all of them lie beyond what the assay measures.
pub fn is_beyond(usable: &[&Extraction]) -> bool {
    beyond(usable).is_some()
}

/// `both <5`, `both >80`: what stands in the place of a difference that is not known.
pub fn all_beyond(usable: &[&Extraction], words: &Catalogue) -> Option<String> {
    let (side, bound) = beyond(usable)?;
    let sign = if side == "below" { "<" } else { ">" };
    let bound = words.locale().figure(&numbers::plain(bound));
    Some(words.say(&say::cell_beyond(
        usable.len() as u64,
        format!("{sign}{bound}"),
    )))
}

/// Whether any of these is a bound, so that the gap is the least there can be.
pub fn has_bounds(usable: &[&Extraction]) -> bool {
    usable.iter().any(|extraction| !extraction.is_figure())
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
    let (asked, words) = (config.testing.extractions_per_package, &*config.words);
    let uses = |of: fn(&Extraction) -> bool| move |one: &PackageResult| one.pair.usable().any(of);
    let agrees = |one: &PackageResult| one.pair.state == PairState::Agree;
    let is_range = |one: &PackageResult| matches!(one.result, ResultKind::Range(_));
    let is_open = |one: &PackageResult| {
        let usable: Vec<&Extraction> = one.pair.usable().collect();
        matches!(beyond(&usable), Some(("above", _)))
    };
    let notes = packages.iter().flat_map(|one| notes_of(one, rule, words));
    let mut notes: Vec<Said> = notes.collect();
    let mut note = |holds: &dyn Fn(&PackageResult) -> bool, said: &dyn Fn(Named) -> Said| {
        let of = Named::of(packages.iter().filter(|one| holds(one)), words);
        notes.extend(of.map(said));
    };
    note(&|one| has_more(one, asked), &|of| {
        say::note_beyond(of.packages, of.by, of.named, asked as u64)
    });
    // The report that was replaced is not named: nothing of it stands any more.
    note(&uses(|one| one.record.replaces), &|of| {
        of.said(say::note_replaced)
    });
    note(
        &|one| agrees(one) && is_range(one) && !is_open(one),
        &|of| of.said(say::note_range),
    );
    note(&|one| agrees(one) && is_open(one), &|of| {
        of.said(say::note_open_end)
    });
    note(&uses(|one| one.from_gliadin), &|of| {
        let all = yes_or_no(of.packages == packages.len() as u64);
        say::note_gliadin(all, of.packages, of.by, of.named, rule.regime.unit())
    });
    if packages
        .iter()
        .any(uses(|one| one.reported.contains(" | ")))
    {
        notes.push(say::note_wells());
    }
    words.each(notes)
}

fn notes_of(package: &PackageResult, rule: Rule, words: &Catalogue) -> Vec<Said> {
    let code = &package.pair.package.package_code;
    let straddles = package.straddles_limit;
    let straddles = straddles.then(|| straddling_note(package, rule, words));
    let unused = package.pair.extractions.iter();
    let mut unused: Vec<Said> = unused
        .filter_map(|paired| unused_note(code, paired))
        .collect();
    let more = unused.len().saturating_sub(MOST_NAMED);
    unused.truncate(MOST_NAMED);
    let more = (more > 0).then(|| say::note_more_unused(code, more as u64));
    straddles.into_iter().chain(unused).chain(more).collect()
}

/// The extractions of a chapter that are not listed one by one: how many, and between which figures.
fn left_out_note(chapter: &Chapter<'_>, code: &str, rule: Rule, words: &Catalogue) -> Option<Said> {
    let left_out = chapter.left_out();
    let readings = left_out
        .iter()
        .filter_map(|paired| paired.extraction.outcome.reading());
    let ends =
        ends(readings).map(|ends| ends.map(|one| numbers::interval_said(one, rule.limit, words)));
    let [lowest, highest] = ends.clone().unwrap_or_default();
    (!left_out.is_empty()).then(|| {
        say::note_left_out(
            code,
            left_out.len() as u64,
            yes_or_no(ends.is_some()),
            lowest,
            highest,
            rule.regime.unit(),
        )
    })
}

/// The lowest and the highest of these.
fn ends(readings: impl Iterator<Item = Interval>) -> Option<[Interval; 2]> {
    let top = |one: &Interval| one.upper.map_or(f64::INFINITY, |upper| upper.0);
    readings.fold(None, |ends, one| {
        let [mut lowest, mut highest] = ends.unwrap_or([one; 2]);
        if one.lower.0 < lowest.lower.0 {
            lowest = one;
        }
        if top(&one) > top(&highest) {
            highest = one;
        }
        Some([lowest, highest])
    })
}

/// The most figures, numbers or sentences of a kind that stand in one sentence or below one table; the others are counted.
const MOST_NAMED: usize = 20;

/// What a sentence lists: the first of it, and how many more there are.
pub fn first_of(items: &[String], words: &Catalogue) -> String {
    if items.len() <= MOST_NAMED {
        return words.list(items);
    }
    let mut named = items[..MOST_NAMED].to_vec();
    named.push(words.say(&say::list_rest((items.len() - MOST_NAMED) as u64)));
    words.list(&named)
}

/// Readings as a sentence lists them, each as `said`: the first, and how many more there are between which figures.
pub fn figures(
    readings: impl Iterator<Item = Interval>,
    said: &dyn Fn(Interval) -> String,
    words: &Catalogue,
) -> Vec<String> {
    let readings: Vec<Interval> = readings.collect();
    let (named, more) = readings.split_at(readings.len().min(MOST_NAMED));
    let mut figures: Vec<String> = named.iter().map(|one| said(*one)).collect();
    if let Some(ends) = ends(more.iter().copied()) {
        let [lowest, highest] = ends.map(said);
        figures.push(words.say(&say::list_more_figures(more.len() as u64, lowest, highest)));
    }
    figures
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

/// What a chapter of a package's story is about: why, who, when; a sentence a decision. Before its row stands why it was
/// made, after it what was set aside of it, or is in conflict.
pub fn told(chapter: &Chapter<'_>, package: &PackageResult, rule: Rule, words: &Catalogue) -> Told {
    let code = &package.pair.package.package_code;
    let reason = |reason: &str| full_stop(&sentence_case(reason.trim()));
    let listed = |numbers: &[u32]| {
        let numbers: Vec<String> = numbers.iter().map(u32::to_string).collect();
        first_of(&numbers, words)
    };
    let before = match chapter.event {
        Event::Repeat(repeat) => {
            let extractions = chapter.extractions.iter();
            let numbers: Vec<u32> = extractions.map(|one| one.extraction.number).collect();
            Some(say::note_repeat(
                code,
                numbers.len() as u64,
                listed(&numbers),
                &repeat.by,
                words.day(repeat.on),
                reason(&repeat.reason),
            ))
        }
        Event::First | Event::Again | Event::Further | Event::Together => None,
    };
    let exclusions = chapter.exclusions();
    let aside = exclusions.iter().map(|one| {
        say::note_set_aside(
            code,
            one.numbers.len() as u64,
            listed(&one.numbers),
            one.by,
            words.day(one.on),
            reason(one.reason),
        )
    });
    let after = aside
        .chain(conflict_note(chapter, code, rule, words))
        .chain(left_out_note(chapter, code, rule, words));
    Told {
        before: words.each(before),
        after: words.each(after),
    }
}

/// Sentences about a chapter.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// Before its row.
    pub before: Vec<String>,
    /// After it.
    pub after: Vec<String>,
}

/// Whether there are extractions beyond those asked for, and no decision on them is in the register.
fn has_more(package: &PackageResult, asked: usize) -> bool {
    let extractions = || package.pair.extractions.iter();
    extractions().all(|paired| paired.repeat.is_none())
        && extractions().any(|paired| paired.extraction.number as usize > asked)
}

/// What the lab's reports say of extractions of which they say different things.
fn conflict_note(chapter: &Chapter<'_>, code: &str, rule: Rule, words: &Catalogue) -> Option<Said> {
    let extractions = chapter.extractions.iter();
    let in_conflict = extractions.filter(|paired| paired.usage == Usage::InConflict);
    let reports = words.each(in_conflict.map(|paired| {
        let extraction = &paired.extraction;
        let cell = extraction.source.place().cell().unwrap_or_default();
        let (number, file) = (extraction.number.to_string(), file_name(extraction));
        say::note_conflict_report(number, said(extraction, rule, words), file, cell)
    }));
    let note = || say::note_conflict(code, rule.regime.unit(), first_of(&reports, words));
    (!reports.is_empty()).then(note)
}

fn unused_note(code: &str, paired: &PairedExtraction) -> Option<Said> {
    let extraction = &paired.extraction;
    let number = extraction.number.to_string();
    let written = extraction.reported.trim();
    let empty = yes_or_no(written.is_empty());
    match &paired.usage {
        // Told in the package's own rows.
        Usage::Used | Usage::InConflict | Usage::Excluded { .. } => None,
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
