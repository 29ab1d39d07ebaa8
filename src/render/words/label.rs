//! What the label says, in words: a finding is a question, not a result.

use crate::model::label::{LabelFinding, LabelReview, LabelTerm, TermClass};
use crate::model::registers::{Oats, Product};
use crate::model::rule::Regime;
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::words::{listed, sentence_case};

/// Sentences about the review of a label.
pub fn sentences(review: &LabelReview, product: &Product, regime: Regime) -> Vec<String> {
    let mut said = vec![finding(review, product, regime)];
    let explained = explained(review);
    let alone = explained.len() == 1 && explained[0].len() == 1;
    let shown = explained.iter().take(MOST_EXPLAINED);
    said.extend(shown.map(|terms| explanation(terms, alone)));
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

/// The terms that are explained, each once; those of one grain and for one reason together.
fn explained(review: &LabelReview) -> Vec<Vec<&LabelTerm>> {
    let mut explained: Vec<Vec<&LabelTerm>> = Vec::new();
    let asked = |term: &&LabelTerm| term.class != TermClass::LookAlike;
    for term in review.terms.iter().filter(asked) {
        let mut known = explained.iter().flatten();
        if known.any(|known| known.term == term.term) {
            continue;
        }
        let alike = |terms: &&mut Vec<&LabelTerm>| {
            terms[0].why.trim() == term.why.trim() && terms[0].grain == term.grain
        };
        match explained.iter_mut().find(alike) {
            Some(terms) => terms.push(term),
            None => explained.push(vec![term]),
        }
    }
    explained
}

/// Why terms count; without their names where there is only one, since the finding has just named it.
fn explanation(terms: &[&LabelTerm], alone: bool) -> String {
    let first = terms[0];
    let why = for_readers(&first.why);
    let named: Vec<String> = terms
        .iter()
        .map(|term| format!("“{}”", term.printed))
        .collect();
    let named = listed(&named);
    match (alone, first.grain.is_empty()) {
        (true, _) => format!("{}.", sentence_case(&why)),
        (false, true) => format!("{named}: {why}."),
        (false, false) => format!("{named} ({}): {why}.", first.grain),
    }
}

/// A reason without what the programme is to ask, which the reader of a sheet cannot, and without its full stop.
fn for_readers(why: &str) -> String {
    let mut parts = why.split(": ask");
    let mut said = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        said += part.find('.').map_or("", |end| &part[end..]);
    }
    said.trim().trim_end_matches('.').to_owned()
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_the_programme_is_to_ask_is_not_asked_of_the_reader() {
        for (why, said) in [
            (
                "May be made of spent yeast: ask.",
                "May be made of spent yeast",
            ),
            (
                "A fibre from barley: ask how far it is purified.",
                "A fibre from barley",
            ),
            (
                "The plant is not named: ask. Plain starch is of corn.",
                "The plant is not named. Plain starch is of corn",
            ),
            ("Barley is a gluten grain.", "Barley is a gluten grain"),
        ] {
            assert_eq!(for_readers(why), said);
        }
    }
}
