//! What the label says, in words: a finding is a question, not a result.

use crate::model::label::{LabelFinding, LabelLanguage, LabelReview, LabelTerm, Leave, TermClass};
use crate::model::registers::{Oats, Product};
use crate::model::rule::Regime;
use crate::model::sheet::{LabelJudged, LabelState};
use crate::model::verdict::ProductVerdict;
use crate::render::words::full_stop;
use crate::words::{Catalogue, Kind, messages, say};
use std::collections::BTreeSet;

/// Sentences about the review of a label.
pub fn sentences(
    review: &LabelReview,
    product: &Product,
    regime: Regime,
    words: &Catalogue,
) -> Vec<String> {
    let mut said = finding(review, product, regime, words);
    let explained = explained(review);
    let alone = explained.len() == 1 && explained[0].len() == 1;
    let shown = explained.iter().take(MOST_EXPLAINED);
    said.extend(shown.map(|terms| explanation(terms, alone, words)));
    if explained.len() > MOST_EXPLAINED {
        said.push(words.say(&say::label_more()));
    }
    if review.finding != LabelFinding::UnverifiedOats {
        said.extend(oats(product.oats).map(|oats| words.say(&say::label_oats_register(oats))));
    }
    let oats_rule = rule_for_oats(review, regime).map(say::label_oats_rule);
    let starch_rule = rule_for_wheat_starch(review, regime).map(say::label_starch_rule);
    said.extend(words.each(oats_rule.into_iter().chain(starch_rule)));
    said.extend(read_in(review, words));
    if !review.languages.is_empty() {
        said.push(words.say(&say::label_opinion()));
    }
    said
}

/// What a label comes to, in the words that stand beside the verdict in every document. What was not read, or must be
/// asked, is never said to be clear.
pub fn judged(product: &ProductVerdict, words: &Catalogue) -> LabelJudged {
    let review = &product.label;
    let ingredients = product.product.ingredients.as_deref();
    let has_list = ingredients.is_some_and(|list| !list.trim().is_empty());
    let source = |class| class == TermClass::Always;
    let left = review.terms.iter().find_map(|term| match term.class {
        TermClass::NotForbidden(leave) => Some(leave),
        _ => None,
    });
    let (state, kind, terms) = match (review.finding, left) {
        _ if review.unread => (LabelState::Open, "unread", Vec::new()),
        (LabelFinding::GlutenSource, _) => (LabelState::Against, "source", printed(review, source)),
        (LabelFinding::NeedsReview | LabelFinding::UnverifiedOats, Some(_)) => {
            let mut terms = printed(review, is_not_forbidden);
            terms.extend(printed(review, is_asked));
            (LabelState::Open, "allowed", terms)
        }
        (LabelFinding::UnverifiedOats, None) => (LabelState::Open, "oats", Vec::new()),
        (LabelFinding::NeedsReview, None) => (LabelState::Open, "ask", printed(review, is_asked)),
        (LabelFinding::None, _) if has_list => (LabelState::Clear, "nothing", Vec::new()),
        _ => (LabelState::Open, "no_list", Vec::new()),
    };
    let why = left.filter(|_| kind == "allowed");
    let why = why.map_or(kind, why_not_forbidden);
    let named = match terms.len() {
        0 => "none",
        1 => "one",
        _ => "more",
    };
    let more = terms.len().saturating_sub(1) as u64;
    let first = terms.into_iter().next().unwrap_or_default();
    LabelJudged {
        state,
        words: words.say(&say::label_judged(kind, first, named, more)),
        why: words.say(&say::label_judged_why(why)),
    }
}

/// Whether it must be asked of a term how it was made, or whether it stands there at all.
pub fn is_asked(class: TermClass) -> bool {
    matches!(class, TermClass::Always | TermClass::Depends)
}

/// Whether a term is a gluten source that this claim allows.
pub fn is_not_forbidden(class: TermClass) -> bool {
    matches!(class, TermClass::NotForbidden(_))
}

/// Terms as printed, each once, whatever the case of their letters.
fn printed(review: &LabelReview, wanted: impl Fn(TermClass) -> bool) -> Vec<String> {
    let mut terms: Vec<String> = Vec::new();
    for term in review.terms.iter().filter(|term| wanted(term.class)) {
        let same = |known: &String| known.to_lowercase() == term.printed.to_lowercase();
        if !terms.iter().any(same) {
            terms.push(term.printed.clone());
        }
    }
    terms
}

/// More explanations than this would crowd out the results.
const MOST_EXPLAINED: usize = 4;

fn finding(
    review: &LabelReview,
    product: &Product,
    regime: Regime,
    words: &Catalogue,
) -> Vec<String> {
    let say = |said| vec![words.say(&said)];
    if review.unread {
        return say(say::label_unread());
    }
    let ingredients = product.ingredients.as_deref().unwrap_or_default().trim();
    match review.finding {
        LabelFinding::GlutenSource => {
            let (n, terms) = named(review, |class| class == TermClass::Always, words);
            say(say::label_source(n, terms, law(regime), &product.claim))
        }
        LabelFinding::UnverifiedOats => {
            let mut said = say(say::label_oats());
            said.extend(not_forbidden_terms(review, words));
            said
        }
        LabelFinding::NeedsReview => to_review(review, words),
        LabelFinding::None if !ingredients.is_empty() => say(say::label_nothing()),
        LabelFinding::None | LabelFinding::NoIngredients => say(say::label_no_list()),
    }
}

/// A gluten source that is not forbidden is one however it was made; of the others it must be asked.
fn to_review(review: &LabelReview, words: &Catalogue) -> Vec<String> {
    let mut said = not_forbidden_terms(review, words);
    if said.is_empty() || review.terms.iter().any(|term| is_asked(term.class)) {
        let (n, terms) = named(review, is_asked, words);
        said.push(words.say(&say::label_asked(n, terms)));
    }
    said
}

fn not_forbidden_terms(review: &LabelReview, words: &Catalogue) -> Vec<String> {
    let leaves = review.terms.iter().filter_map(|term| match term.class {
        TermClass::NotForbidden(leave) => Some(leave),
        _ => None,
    });
    let leaves: BTreeSet<Leave> = leaves.collect();
    words.each(leaves.into_iter().map(|leave| {
        let own = |class| class == TermClass::NotForbidden(leave);
        let (n, terms) = named(review, own, words);
        say::label_not_forbidden(n, terms, why_not_forbidden(leave))
    }))
}

fn why_not_forbidden(leave: Leave) -> &'static str {
    match leave {
        Leave::AmountAlone => "amount",
        Leave::Processed => "processed",
        Leave::Unsaid => "unsaid",
        Leave::UnknownClaim => "unknown_claim",
    }
}

/// The regime whose rule on oats is told, where the list names them; nothing where the finding has said so.
fn rule_for_oats(review: &LabelReview, regime: Regime) -> Option<&'static str> {
    let is_oats = |term: &LabelTerm| term.grain == "oats" && term.class == TermClass::Depends;
    let silent = matches!(regime, Regime::AuNz | Regime::Argentina | Regime::Custom);
    (!silent && review.terms.iter().any(is_oats)).then(|| law(regime))
}

/// The regime whose rule on starch of wheat is told, where the list names it.
fn rule_for_wheat_starch(review: &LabelReview, regime: Regime) -> Option<&'static str> {
    const STARCH: &[&str] = &["starch", "starke", "amidon", "almidon", "amido ", "fecula"];
    let is_starch = |term: &LabelTerm| {
        term.grain == "wheat"
            && term.class == TermClass::Depends
            && STARCH.iter().any(|word| term.term.contains(word))
            && !term.term.contains("syrup")
    };
    let silent = regime == Regime::Custom;
    (!silent && review.terms.iter().any(is_starch)).then(|| law(regime))
}

/// In which languages the list was read.
fn read_in(review: &LabelReview, words: &Catalogue) -> Option<String> {
    let name = |language: &LabelLanguage| {
        say::label_language(match language {
            LabelLanguage::English => "english",
            LabelLanguage::German => "german",
            LabelLanguage::Spanish => "spanish",
            LabelLanguage::French => "french",
            LabelLanguage::Italian => "italian",
        })
    };
    let languages = words.each(review.languages.iter().map(name));
    (!languages.is_empty()).then(|| words.say(&say::label_read_in(words.list(&languages))))
}

/// The terms of some classes, as printed, in quotes, and how many they are.
fn named(
    review: &LabelReview,
    wanted: impl Fn(TermClass) -> bool,
    words: &Catalogue,
) -> (u64, String) {
    let mut terms = quoted_once(review, wanted, str::to_owned, words);
    if terms.is_empty() {
        // The finding then rests on the register, not on a word of the list.
        terms.push(words.say(&say::label_one_ingredient()));
    }
    (terms.len() as u64, words.list(&terms))
}

/// The terms of some classes in quotes, each once, `printed` in some way.
pub fn quoted_once(
    review: &LabelReview,
    wanted: impl Fn(TermClass) -> bool,
    printed: impl Fn(&str) -> String,
    words: &Catalogue,
) -> Vec<String> {
    let mut terms: Vec<String> = Vec::new();
    for term in review.terms.iter().filter(|term| wanted(term.class)) {
        let quoted = words.say(&say::quoted(printed(&term.printed)));
        if !terms.contains(&quoted) {
            terms.push(quoted);
        }
    }
    terms
}

/// The word by which the messages know the law of a regime.
pub fn law(regime: Regime) -> &'static str {
    match regime {
        Regime::Us => "us",
        Regime::Codex => "codex",
        Regime::Eu | Regime::Uk => "eu",
        Regime::Canada => "canada",
        Regime::Argentina => "argentina",
        Regime::Chile => "chile",
        Regime::AuNz => "au_nz",
        Regime::Custom => "custom",
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
fn explanation(terms: &[&LabelTerm], alone: bool, words: &Catalogue) -> String {
    let first = terms[0];
    let why = why(first, words);
    if alone {
        return why;
    }
    let named = terms.iter().map(|term| say::quoted(&term.printed));
    let named = words.list(&words.each(named));
    words.say(&match grain(first, words) {
        grain if grain.is_empty() => say::label_explained(named, why),
        grain => say::label_explained_of(named, grain, why),
    })
}

/// Why a term counts, as a sentence: the built-in table names its reason, and a programme writes its own.
pub fn why(term: &LabelTerm, words: &Catalogue) -> String {
    match known_word("label_why", &term.why) {
        Some(known) => words.say(&say::label_why(known)),
        None => full_stop(&for_readers(&term.why)),
    }
}

/// The grain of a term: that of the built-in table in the language of the catalogue, any other as the programme has it.
pub fn grain(term: &LabelTerm, words: &Catalogue) -> String {
    let key = term.grain.replace(", ", "_").replace(' ', "_");
    match known_word("label_grain", &key) {
        Some(known) => words.say(&say::label_grain(known)),
        None => term.grain.clone(),
    }
}

/// A word of the table of terms, where the message knows it.
fn known_word(message: &str, word: &str) -> Option<&'static str> {
    let mut all = messages();
    let message = all.find(|one| one.id == message)?;
    let (_, Kind::Choice(known)) = message.given.first()? else {
        return None;
    };
    known.iter().copied().find(|known| *known == word.trim())
}

/// A reason of the programme's own without what it is to ask, which the reader of a sheet cannot, and without its full stop.
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
        Oats::PurityProtocol => Some("apart"),
        Oats::Certified => Some("certified"),
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

    #[test]
    fn every_reason_and_grain_of_the_built_in_table_has_its_words() {
        let table = include_str!("../../judge/labels/terms.csv");
        let mut reader = csv::ReaderBuilder::new()
            .comment(Some(b'#'))
            .from_reader(table.as_bytes());
        let rows: Vec<csv::StringRecord> = reader.records().filter_map(Result::ok).collect();
        assert!(rows.len() > 80, "{} rows", rows.len());
        let key = |grain: &str| grain.replace(", ", "_").replace(' ', "_");
        for row in &rows {
            assert!(known_word("label_why", &row[4]).is_some(), "{}", &row[4]);
            let grain = matches!(&row[1], "none" | "other");
            assert!(
                grain || known_word("label_grain", &key(&row[1])).is_some(),
                "{}",
                &row[1]
            );
        }
    }
}
