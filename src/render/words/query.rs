//! The letter to a lab: which of its messages are said about a package. It names codes, never a product.

use crate::config::Config;
use crate::model::extraction::{Extraction, Outcome};
use crate::model::package::PackageResult;
use crate::model::pair::{PairState, PairedExtraction, Usage};
use crate::model::rule::Rule;
use crate::render::numbers;
use crate::render::words::packages;
use crate::words::{Catalogue, Said, say, yes_or_no};

/// A question about one package.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// What kind it is.
    pub kind: QuestionKind,
    /// What we found.
    pub found: String,
    /// What we ask.
    pub ask: String,
}

/// The kinds of question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum QuestionKind {
    /// Two reports of one extraction differ.
    Conflict,
    /// A result that reads as no result.
    Unreadable,
    /// Extractions that differ too much.
    Disagreement,
    /// Fewer extractions than asked for, since one was set aside.
    SetAside,
    /// Fewer extractions than asked for.
    MissingExtraction,
    /// No result at all.
    MissingResult,
}

impl QuestionKind {
    /// In a few words.
    pub fn words(self, words: &Catalogue) -> String {
        words.say(&say::lab_kind(match self {
            QuestionKind::Conflict => "conflict",
            QuestionKind::Unreadable => "unreadable",
            QuestionKind::Disagreement => "disagreement",
            QuestionKind::SetAside => "set_aside",
            QuestionKind::MissingExtraction => "missing_extraction",
            QuestionKind::MissingResult => "missing_result",
        }))
    }
}

/// What is asked about a package; none where nothing is.
///
/// `is_late`: the package was sent so long ago that a report is missed.
pub fn question(
    package: &PackageResult,
    rule: Rule,
    config: &Config,
    is_late: bool,
) -> Option<Question> {
    let words = &config.words;
    let kind = kind(package, config.testing.extractions_per_package)?;
    if kind == QuestionKind::MissingResult && !is_late {
        // Nothing is wrong yet where a report may still come.
        return None;
    }
    let extractions = &package.pair.extractions;
    let reported = || reported(extractions, rule, words);
    let usable = package.pair.usable().count() as u64;
    let (found, ask) = match kind {
        QuestionKind::Conflict => (say::lab_conflict(reported()), say::lab_conflict_ask()),
        QuestionKind::Unreadable => (say::lab_unreadable(reported()), say::lab_unreadable_ask()),
        QuestionKind::Disagreement => {
            // The first pair alone: two more extractions settle it.
            let ask = match last_number(extractions) {
                1 | 2 => say::lab_disagree_repeat("3", "4"),
                _ => say::lab_disagree_check(),
            };
            (disagreement(package, rule, reported(), words), ask)
        }
        QuestionKind::SetAside => (
            say::lab_set_aside(usable, reported()),
            say::lab_set_aside_ask((last_number(extractions) + 1).to_string()),
        ),
        QuestionKind::MissingExtraction => {
            let asked_for = config.testing.extractions_per_package as u64;
            let found = say::lab_incomplete(usable, asked_for, reported());
            (found, say::lab_incomplete_ask())
        }
        QuestionKind::MissingResult => {
            let day = package.pair.package.sent_on.map(|day| words.day(day));
            let found = say::lab_missing(yes_or_no(day.is_some()), day.unwrap_or_default());
            (found, say::lab_missing_ask())
        }
    };
    Some(Question {
        kind,
        found: words.say(&found),
        ask: words.say(&ask),
    })
}

fn kind(package: &PackageResult, asked_for: usize) -> Option<QuestionKind> {
    let any = |wanted: fn(&PairedExtraction) -> bool| package.pair.extractions.iter().any(wanted);
    match package.pair.state {
        _ if any(|paired| paired.usage == Usage::InConflict) => Some(QuestionKind::Conflict),
        _ if any(|paired| paired.extraction.outcome == Outcome::Unreadable) => {
            Some(QuestionKind::Unreadable)
        }
        PairState::Disagree => Some(QuestionKind::Disagreement),
        PairState::Incomplete if are_set_aside(package, asked_for) => Some(QuestionKind::SetAside),
        PairState::Incomplete => Some(QuestionKind::MissingExtraction),
        PairState::Missing => Some(QuestionKind::MissingResult),
        PairState::Agree => None,
    }
}

/// Whether the lab sent as many extractions as were asked for, and the programme set some of them aside.
fn are_set_aside(package: &PackageResult, asked_for: usize) -> bool {
    let set_aside = |paired: &&PairedExtraction| matches!(paired.usage, Usage::Excluded { .. });
    let set_aside = package.pair.extractions.iter().filter(set_aside).count();
    set_aside > 0 && package.pair.usable().count() + set_aside >= asked_for
}

fn disagreement(
    package: &PackageResult,
    rule: Rule,
    extractions: String,
    words: &Catalogue,
) -> Said {
    let apart = package.pair.comparison.as_ref().map(numbers::apart);
    let (gap, allowed) = apart
        .map(|apart| (apart.gap, apart.allowed))
        .unwrap_or_default();
    let in_unit = |figure: &str| words.quantity(figure, rule.regime.unit());
    let usable: Vec<&Extraction> = package.pair.usable().collect();
    let bounds = yes_or_no(packages::has_bounds(&usable));
    say::lab_disagree(extractions, in_unit(&gap), in_unit(&allowed), bounds)
}

/// The highest number of an extraction; 0 where there is none.
fn last_number(extractions: &[PairedExtraction]) -> u32 {
    let numbers = extractions.iter().map(|paired| paired.extraction.number);
    numbers.max().unwrap_or_default()
}

/// Each extraction with its figure and the cell that it stands in.
fn reported(extractions: &[PairedExtraction], rule: Rule, words: &Catalogue) -> String {
    let said = |extraction: &Extraction| {
        let reading = extraction.outcome.reading();
        let figure = match reading {
            Some(reading) => numbers::interval_said(reading, rule.limit, words),
            None => extraction.reported.trim().to_owned(),
        };
        let place = extraction.source.place();
        let cell = place.cell().unwrap_or_default();
        say::lab_extraction(
            extraction.number.to_string(),
            figure,
            packages::file_name(extraction),
            place.sheet.clone().unwrap_or_default(),
            yes_or_no(place.sheet.is_some()),
            cell,
            yes_or_no(reading.is_some()),
        )
    };
    let all = extractions.iter().map(|paired| said(&paired.extraction));
    packages::first_of(&words.each(all), words)
}
