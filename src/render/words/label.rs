//! What the label says, in words: a finding is a question, not a result.

use crate::model::label::{LabelFinding, LabelLanguage, LabelReview, LabelTerm, Leave, TermClass};
use crate::model::registers::{Oats, Product};
use crate::model::rule::Regime;
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::words::{listed, sentence_case};
use std::collections::BTreeSet;

/// Sentences about the review of a label.
pub fn sentences(review: &LabelReview, product: &Product, regime: Regime) -> Vec<String> {
    let mut said = finding(review, product, regime);
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
    said.extend(rule_for_oats(review, regime).map(str::to_owned));
    said.extend(rule_for_wheat_starch(review, regime).map(str::to_owned));
    said.extend(read_in(review));
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

fn finding(review: &LabelReview, product: &Product, regime: Regime) -> Vec<String> {
    let claim = &product.claim;
    if review.unread {
        return vec![
            "We could not read this list: none of it, or too little, is in English, German, Spanish, French or Italian. It says \
             nothing for or against the food until somebody has read it."
                .to_owned(),
        ];
    }
    let said = match review.finding {
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
        LabelFinding::NeedsReview => return to_review(review),
        LabelFinding::None if product.ingredients.as_deref().is_none_or(|text| text.trim().is_empty()) => {
            "No ingredient list is on record for this product, so there was nothing to review.".to_owned()
        }
        LabelFinding::None => "No term in the list names a gluten source.".to_owned(),
        LabelFinding::NoIngredients => {
            "No ingredient list is on record for this product, so there was nothing to review.".to_owned()
        }
    };
    let others = match review.finding {
        LabelFinding::UnverifiedOats => not_forbidden_terms(review),
        _ => Vec::new(),
    };
    std::iter::once(said).chain(others).collect()
}

/// A gluten source that is not forbidden is one however it was made; of the others it must be asked.
fn to_review(review: &LabelReview) -> Vec<String> {
    let mut said = not_forbidden_terms(review);
    let asked = |class| matches!(class, TermClass::Always | TermClass::Depends);
    if said.is_empty() || review.terms.iter().any(|term| asked(term.class)) {
        let terms = named(review, asked);
        said.push(format!(
            "{terms}: whether this is a gluten source depends on how it was made. That is a question to the maker, not a result."
        ));
    }
    said
}

fn not_forbidden_terms(review: &LabelReview) -> Vec<String> {
    let leaves: BTreeSet<Leave> = review
        .terms
        .iter()
        .filter_map(|term| match term.class {
            TermClass::NotForbidden(leave) => Some(leave),
            _ => None,
        })
        .collect();
    let of = |leave| {
        let terms = named(review, |class| class == TermClass::NotForbidden(leave));
        not_forbidden(&terms, leave)
    };
    leaves.into_iter().map(of).collect()
}

fn not_forbidden(terms: &str, leave: Leave) -> String {
    let source = if terms.contains(" and ") {
        "gluten sources"
    } else {
        "a gluten source"
    };
    match leave {
        Leave::AmountAlone => format!(
            "{terms}: {source} that this claim rule does not forbid. Regulation (EU) No 828/2014 asks for the amount of gluten alone."
        ),
        Leave::Processed => format!(
            "{terms}: {source} that this claim rule does not forbid. Foods with this claim are made of grain that was processed to \
             reduce gluten."
        ),
        Leave::Unsaid => format!(
            "{terms}: {source}. The programme’s own rule sets a limit and says nothing about ingredients."
        ),
        Leave::UnknownClaim => format!(
            "{terms}: {source}. What the package claims about gluten is not settled, so that no rule about its ingredients is applied."
        ),
    }
}

/// What the regime says of oats, where the list names them; nothing where the finding has said so.
fn rule_for_oats(review: &LabelReview, regime: Regime) -> Option<&'static str> {
    let named = review
        .terms
        .iter()
        .any(|term| term.grain == "oats" && term.class == TermClass::Depends);
    match regime {
        _ if !named => None,
        Regime::Us => Some(
            "Oats are no gluten grain in 21 CFR 101.91; the food must still stay below 20 ppm.",
        ),
        Regime::Codex => Some("Codex CXS 118 leaves it to each country whether oats are allowed."),
        Regime::Eu | Regime::Uk => Some(
            "Under Regulation (EU) No 828/2014 oats must be produced so that other grain is kept out, and stay within 20 mg/kg.",
        ),
        Regime::Canada => Some(
            "Canada allows oats that were specially produced, hold no more than 20 ppm gluten of other grain, and are called \
             gluten-free oats (SOR/2015-114).",
        ),
        Regime::Chile => Some("Whether Chile’s rule allows oats is not settled."),
        Regime::AuNz | Regime::Argentina | Regime::Custom => None,
    }
}

/// What the regime says of starch of wheat, where the list names it.
fn rule_for_wheat_starch(review: &LabelReview, regime: Regime) -> Option<&'static str> {
    const STARCH: &[&str] = &["starch", "starke", "amidon", "almidon", "amido ", "fecula"];
    let named = review.terms.iter().any(|term| {
        term.grain == "wheat"
            && term.class == TermClass::Depends
            && STARCH.iter().any(|word| term.term.contains(word))
            && !term.term.contains("syrup")
    });
    match regime {
        _ if !named => None,
        Regime::Us => Some(
            "21 CFR 101.91 allows wheat starch that was processed to remove gluten if the food stays below 20 ppm; where the label \
             says “wheat”, it must add that the wheat was processed to meet the rule.",
        ),
        Regime::Codex => Some(
            "Codex CXS 118 allows wheat starch that was specially processed to remove gluten, within 20 mg/kg.",
        ),
        Regime::Eu | Regime::Uk => Some(
            "Regulation (EU) No 828/2014 does not forbid wheat starch in a gluten-free food; the amount of gluten decides.",
        ),
        Regime::Canada => Some("B.24.018 allows no gluten protein of wheat as an ingredient."),
        Regime::AuNz => {
            Some("Standard 1.2.7 allows no detectable gluten in a food sold as gluten-free.")
        }
        Regime::Argentina => Some("Resolución Conjunta 32/2023 allows at most 10 mg/kg."),
        Regime::Chile => Some("The Reglamento Sanitario de los Alimentos allows at most 5 mg/kg."),
        Regime::Custom => None,
    }
}

/// In which languages the list was read.
fn read_in(review: &LabelReview) -> Option<String> {
    let languages: Vec<&str> = review
        .languages
        .iter()
        .map(|language| match language {
            LabelLanguage::English => "English",
            LabelLanguage::German => "German",
            LabelLanguage::Spanish => "Spanish",
            LabelLanguage::French => "French",
            LabelLanguage::Italian => "Italian",
        })
        .collect();
    (!languages.is_empty()).then(|| format!("The list was read in {}.", listed(&languages)))
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
