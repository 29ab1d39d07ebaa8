//! What the label says, in words: a finding is a question, not a result.

use crate::model::label::{LabelFinding, LabelReview, LabelTerm, TermClass};
use crate::model::registers::{Oats, Product};
use crate::model::rule::Regime;
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::words::{listed, sentence_case};

/// Sentences about the review of a label.
pub fn sentences(review: &LabelReview, product: &Product, regime: Regime) -> Vec<String> {
    let mut said = vec![finding(review, product, regime)];
    let mut explained: Vec<&LabelTerm> = Vec::new();
    for term in review
        .terms
        .iter()
        .filter(|term| term.class != TermClass::LookAlike)
    {
        if !explained.iter().any(|known| known.term == term.term) {
            explained.push(term);
        }
    }
    said.extend(
        explained
            .iter()
            .take(MOST_EXPLAINED)
            .map(|term| explanation(term, explained.len() == 1)),
    );
    if explained.len() > MOST_EXPLAINED {
        said.push("The data files name the rest.".to_owned());
    }
    if review.finding != LabelFinding::UnverifiedOats
        && let Some(oats) = oats(product.oats)
    {
        said.push(oats.to_owned());
    }
    said
}

/// What the reader of a verdict must know of the label, as the end of the sentence beside it; nothing where no ingredient
/// is against the rule.
pub fn beside_the_verdict(product: &ProductVerdict) -> &'static str {
    match (product.label.finding, product.verdict) {
        (LabelFinding::GlutenSource, Verdict::OverLimit) => {
            " The label also names a gluten source."
        }
        (LabelFinding::GlutenSource, _) => {
            " But the label names a gluten source, which the rule doesn’t allow."
        }
        _ => "",
    }
}

/// More explanations than this would crowd out the results.
const MOST_EXPLAINED: usize = 4;

fn finding(review: &LabelReview, product: &Product, regime: Regime) -> String {
    let claim = &product.claim;
    match review.finding {
        LabelFinding::GlutenSource => {
            let terms = named(review, |class| class == TermClass::Always);
            let verb = if terms.contains(" and ") { "name" } else { "names" };
            format!(
                "{terms} {verb} a gluten source. {} a food sold as “{claim}” can’t have it as an ingredient, whatever the test found.",
                under(regime)
            )
        }
        LabelFinding::UnverifiedOats => {
            "The list names oats, and we have nothing on record about how they were grown and milled. Oats pick up wheat, \
             rye and barley easily; the test sees those three and not oats themselves."
                .to_owned()
        }
        LabelFinding::NeedsReview => {
            let terms = named(review, |class| matches!(class, TermClass::Always | TermClass::Depends));
            format!("{terms}: whether this is a gluten source depends on how it was made. That is a question to the maker, not a result.")
        }
        LabelFinding::None => "No term in the list names a gluten source.".to_owned(),
        LabelFinding::NoIngredients => "No ingredient list is on record for this product, so there was nothing to review.".to_owned(),
    }
}

/// The terms of some classes, as printed, in quotes.
fn named(review: &LabelReview, wanted: impl Fn(TermClass) -> bool) -> String {
    let mut terms: Vec<String> = Vec::new();
    for term in review.terms.iter().filter(|term| wanted(term.class)) {
        let quoted = format!("“{}”", term.printed);
        if !terms.contains(&quoted) {
            terms.push(quoted);
        }
    }
    if terms.is_empty() {
        // The finding then rests on the register, not on a word of the list.
        return "One ingredient".to_owned();
    }
    listed(&terms)
}

fn under(regime: Regime) -> &'static str {
    match regime {
        Regime::Us => "Under 21 CFR 101.91",
        Regime::Codex => "Under Codex CXS 118",
        Regime::Eu | Regime::Uk => "Under Regulation (EU) No 828/2014",
        Regime::Canada => "Under B.24.018 of the Food and Drug Regulations",
        Regime::Argentina => "Under Resolución Conjunta 32/2023",
        Regime::Chile => "Under the Reglamento Sanitario de los Alimentos",
        Regime::AuNz => "Under Standard 1.2.7 of the Food Standards Code",
        Regime::Custom => "Under the programme’s rule",
    }
}

/// Why a term counts; without its name where it is the only one, since the finding has just named it.
fn explanation(term: &LabelTerm, alone: bool) -> String {
    let why = term.why.trim().trim_end_matches('.');
    match (alone, term.grain.is_empty()) {
        (true, _) => format!("{}.", sentence_case(why)),
        (false, true) => format!("“{}”: {why}.", term.printed),
        (false, false) => format!("“{}” ({}): {why}.", term.printed, term.grain),
    }
}

fn oats(oats: Oats) -> Option<&'static str> {
    match oats {
        Oats::None | Oats::Unverified => None,
        Oats::PurityProtocol => Some(
            "Our register says that the oats were grown and milled apart from other grain. The test doesn’t see oats themselves.",
        ),
        Oats::Certified => Some(
            "Our register says that the product’s certifier covers the oats. The test doesn’t see oats themselves.",
        ),
    }
}
