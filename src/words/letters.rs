//! What a maker is told first, in a letter and in the mail that goes with it: what was bought, what was found, and what the
//! list of ingredients names.

use super::catalogue::Catalogue;
use super::messages::say;
use super::reasons::side;
use super::yes_or_no;
use crate::model::label::{LabelFinding, TermClass};
use crate::model::package::{PackageResult, Standing};
use crate::model::said::Said;
use crate::model::verdict::{ProductVerdict, Verdict};

/// Whether a package is over the limit, so that the product is.
pub fn is_over(verdict: &ProductVerdict) -> bool {
    verdict.verdict == Verdict::OverLimit
}

/// Whether the list of ingredients names what the rule does not allow.
pub fn names_source(verdict: &ProductVerdict) -> bool {
    verdict.label.finding == LabelFinding::GlutenSource
}

/// The packages that the lab has reported on, and the word by which a message chooses how many of all these are.
pub fn reported(verdict: &ProductVerdict) -> (Vec<&PackageResult>, &'static str) {
    let is_reported = |package: &&PackageResult| !package.pair.extractions.is_empty();
    let reported: Vec<&PackageResult> = verdict.packages.iter().filter(is_reported).collect();
    let state = match reported.len() {
        0 => "none",
        n if n == verdict.packages.len() => "all",
        _ => "some",
    };
    (reported, state)
}

/// Why we write: what was bought, what was found, and that nothing is published yet.
pub fn opening(verdict: &ProductVerdict, words: &Catalogue) -> Vec<Said> {
    let mut said = vec![bought(verdict)];
    if !reported(verdict).0.is_empty() {
        said.push(found(verdict, words));
    }
    if names_source(verdict) {
        said.push(say::letter_label_too(yes_or_no(is_over(verdict))));
    }
    said.push(say::letter_before());
    said
}

/// What was bought, and how much of it the lab has reported on.
pub fn bought(verdict: &ProductVerdict) -> Said {
    let (tested, state) = reported(verdict);
    let mut packages = verdict.packages.iter();
    let are_known = packages.all(|package| package.pair.package.shop.is_some());
    say::letter_bought(
        verdict.packages.len() as u64,
        tested.len() as u64,
        state,
        if are_known { "shops" } else { "unknown" },
    )
}

/// What the results come to, in a sentence.
pub fn found(verdict: &ProductVerdict, words: &Catalogue) -> Said {
    let rule = verdict.rule;
    let tested = reported(verdict).0.len();
    match verdict.verdict {
        Verdict::OverLimit => {
            let over = over(verdict).count();
            let share = match (over, tested) {
                (_, 1) => "one",
                (2, 2) => "both",
                (over, all) if over == all => "all",
                _ => "some",
            };
            say::letter_found_over(
                over as u64,
                share,
                words.spelt_first(over),
                words.spelt(over),
                words.spelt(tested),
                side(rule.limit),
                words.limit(&rule),
            )
        }
        Verdict::WithinLimit(_) => say::letter_found_within(
            tested as u64,
            words.spelt(tested),
            side(rule.limit),
            words.limit(&rule),
        ),
        Verdict::NoVerdict => say::letter_found_nothing(),
    }
}

/// The packages that are over the limit.
pub fn over(verdict: &ProductVerdict) -> impl Iterator<Item = &PackageResult> {
    let packages = verdict.packages.iter();
    packages.filter(|package| package.standing == Standing::Over)
}

/// The terms that make the label finding, each once, with their grain.
pub fn terms(verdict: &ProductVerdict, words: &Catalogue) -> Vec<String> {
    let mut terms: Vec<String> = Vec::new();
    if !names_source(verdict) {
        return terms;
    }
    let always = verdict.label.terms.iter();
    for term in always.filter(|term| term.class == TermClass::Always) {
        let said = words.say(&say::letter_term(&term.printed, grain_word(&term.grain)));
        if !terms.contains(&said) {
            terms.push(said);
        }
    }
    terms
}

/// The word by which a message chooses the grain.
fn grain_word(grain: &str) -> &'static str {
    match grain {
        "wheat" => "wheat",
        "barley" => "barley",
        "rye" => "rye",
        "oats" => "oats",
        "triticale" => "triticale",
        "wheat or barley" | "barley or wheat" => "wheat_or_barley",
        "wheat or rye" => "wheat_or_rye",
        _ => "unknown",
    }
}
