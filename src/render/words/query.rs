//! The letter to a lab: what it reported, what does not fit together, and what we ask. It names codes, never a product.

use crate::model::extraction::{Extraction, Outcome};
use crate::model::package::PackageResult;
use crate::model::pair::{PairState, PairedExtraction, Usage};
use crate::model::rule::Rule;
use crate::render::numbers;
use crate::render::words::{listed, packages};

/// What is asked about a package; none where nothing is.
///
/// `is_late`: the package was sent so long ago that a report is missed.
pub fn question(
    package: &PackageResult,
    rule: Rule,
    asked_for: usize,
    is_late: bool,
) -> Option<Question> {
    let extractions = &package.pair.extractions;
    let conflict = extractions
        .iter()
        .any(|paired| paired.usage == Usage::InConflict);
    let unreadable = extractions
        .iter()
        .any(|paired| paired.extraction.outcome == Outcome::Unreadable);
    let said = match package.pair.state {
        _ if conflict => Question {
            kind: QuestionKind::Conflict,
            found: format!("Your reports give different results for one extraction: {}.", reported(extractions, rule)),
            ask: "Which of them stands? If the later one is a repeat, please number it as a further extraction.".to_owned(),
        },
        _ if unreadable => Question {
            kind: QuestionKind::Unreadable,
            found: format!("We can’t read a result from your report: {}.", reported(extractions, rule)),
            ask: "Please send the figure with its unit, or “<” and the quantification limit.".to_owned(),
        },
        PairState::Disagree => Question {
            kind: QuestionKind::Disagreement,
            found: format!(
                "The extractions differ by more than repeats of one material do: {}. {}.",
                reported(extractions, rule),
                packages::agreement(package).detail
            ),
            ask: match further(extractions) {
                Some((first, second)) => format!(
                    "Please check the calculation and the dilution. If they are right, please extract the same ground sample \
                     twice more and report extractions {first} and {second}; the earlier ones stay in the record."
                ),
                None => "Please check the calculation and the dilution of each. The repeats are there already: we ask for no more."
                    .to_owned(),
            },
        },
        PairState::Incomplete => Question {
            kind: QuestionKind::MissingExtraction,
            found: format!(
                "We have {} of {asked_for} extractions: {}.",
                package.pair.usable().count(),
                reported(extractions, rule)
            ),
            ask: "Please report the missing extraction, or tell us why there is none.".to_owned(),
        },
        // Nothing is wrong yet where a report may still come.
        PairState::Missing if !is_late => return None,
        PairState::Missing => Question {
            kind: QuestionKind::MissingResult,
            found: match package.pair.package.sent_on {
                Some(day) => format!("Sent on {}. We have no result.", numbers::date(day)),
                None => "We have no result.".to_owned(),
            },
            ask: "Please tell us when we can expect it, or why there is none.".to_owned(),
        },
        PairState::Agree => return None,
    };
    Some(said)
}

/// The numbers of the two extractions to ask for where the first pair disagrees; none where repeats are there already.
fn further(extractions: &[PairedExtraction]) -> Option<(u32, u32)> {
    let numbers = extractions.iter().map(|paired| paired.extraction.number);
    let last = numbers.max()?;
    (last <= 2).then_some((3, 4))
}

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
    /// Fewer extractions than asked for.
    MissingExtraction,
    /// No result at all.
    MissingResult,
}

impl QuestionKind {
    /// In two or three words.
    pub fn words(self) -> &'static str {
        match self {
            QuestionKind::Conflict => "Two results for one extraction",
            QuestionKind::Unreadable => "No readable result",
            QuestionKind::Disagreement => "Extractions disagree",
            QuestionKind::MissingExtraction => "An extraction is missing",
            QuestionKind::MissingResult => "No result yet",
        }
    }
}

/// Each extraction with its figure and the cell that it stands in.
fn reported(extractions: &[PairedExtraction], rule: Rule) -> String {
    let said = |extraction: &Extraction| {
        let figure = match extraction.outcome.reading() {
            Some(reading) => numbers::interval(reading, rule.limit),
            None => format!("“{}”", extraction.reported.trim()),
        };
        let place = extraction.source.place();
        let cell = place.cell().unwrap_or_default();
        let sheet = place
            .sheet
            .map(|sheet| format!(", sheet {sheet}"))
            .unwrap_or_default();
        format!(
            "extraction {}: {figure} ({}{sheet}, {cell})",
            extraction.number,
            packages::file_name(extraction)
        )
    };
    let all: Vec<String> = extractions
        .iter()
        .map(|paired| said(&paired.extraction))
        .collect();
    listed(&all)
}
