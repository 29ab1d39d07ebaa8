//! What the labels of a newsletter's products say, by finding and by word.

use crate::model::decided::JudgedProduct;
use crate::model::label::{LabelFinding, LabelReview, TermClass};
use crate::render::listing;
use crate::render::words::breakable;
use crate::render::words::label::{is_asked, is_not_forbidden, quoted_once};
use crate::words::{Catalogue, say, yes_or_no};
use serde::Serialize;
use std::collections::BTreeMap;

/// Products that a line can name; of more it says how many.
const NAMED_AT_MOST: usize = 8;

/// Words of labels that a list has; the register in the summary has all.
const WORDS_AT_MOST: usize = 16;

/// What the labels of several products say.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct OnLabels {
    /// By what it comes to.
    pub groups: Vec<Group>,
    /// That this is a reason to ask; or that no label says anything.
    pub last: String,
}

/// Labels that come to one thing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Group {
    /// How many there are, and what they say.
    pub said: String,
    /// A word of a label with its products, a line each.
    pub lines: Vec<String>,
}

/// What the labels of these products say, by finding and by word.
pub fn of_all(products: &[&JudgedProduct], words: &Catalogue) -> OnLabels {
    let findings = [
        "gluten_source",
        "not_forbidden",
        "unverified_oats",
        "needs_review",
    ];
    let groups = findings.into_iter();
    let groups: Vec<Group> = groups
        .filter_map(|finding| group(finding, products, words))
        .collect();
    let last = match groups.is_empty() {
        true => say::newsletter_labels_none(),
        false => say::newsletter_labels_ask(),
    };
    OnLabels {
        groups,
        last: words.say(&last),
    }
}

fn group(finding: &'static str, products: &[&JudgedProduct], words: &Catalogue) -> Option<Group> {
    let is = |product: &&&JudgedProduct| told_as(&product.verdict.label) == Some(finding);
    let with: Vec<&JudgedProduct> = products.iter().filter(is).copied().collect();
    let number = words.spelt_first(with.len());
    let said = say::newsletter_labels(with.len() as u64, number, finding);
    (!with.is_empty()).then(|| Group {
        said: words.say(&said),
        lines: by_word(&with, words),
    })
}

/// A line a word, the commonest first.
fn by_word(products: &[&JudgedProduct], words: &Catalogue) -> Vec<String> {
    let mut by_word: BTreeMap<String, (String, Vec<String>)> = BTreeMap::new();
    for product in products {
        let name = breakable(&listing::name(product, words), 28);
        let of = &product.verdict.product;
        let named = match of.brand.as_deref() {
            Some(brand) => words.say(&say::newsletter_label_product(breakable(brand, 28), name)),
            None => name,
        };
        for term in asked_terms(&product.verdict.label, words) {
            let (_, with) = by_word
                .entry(term.to_lowercase())
                .or_insert_with(|| (term, Vec::new()));
            with.push(named.clone());
        }
    }
    let mut lines: Vec<(String, Vec<String>)> = by_word.into_values().collect();
    // Stable: of words that are as common, the first by letter stays the first.
    lines.sort_by_key(|(_, with)| std::cmp::Reverse(with.len()));
    let more = lines.len() > WORDS_AT_MOST;
    let shown = lines.into_iter().take(WORDS_AT_MOST);
    let said = shown.map(|(term, with)| {
        let (n, few) = (with.len(), yes_or_no(with.len() <= NAMED_AT_MOST));
        say::newsletter_label_word(n as u64, term, few, with.join("; "))
    });
    words.each(said.chain(more.then(say::newsletter_label_words_more)))
}

/// How the newsletter tells of a label. A source that is not forbidden is a source, and nothing unclear.
fn told_as(label: &LabelReview) -> Option<&'static str> {
    let any = |of: fn(TermClass) -> bool| label.terms.iter().any(|term| of(term.class));
    match label.finding {
        LabelFinding::GlutenSource => Some("gluten_source"),
        LabelFinding::UnverifiedOats => Some("unverified_oats"),
        LabelFinding::NeedsReview if any(is_not_forbidden) && !any(is_asked) => {
            Some("not_forbidden")
        }
        LabelFinding::NeedsReview => Some("needs_review"),
        LabelFinding::None | LabelFinding::NoIngredients => None,
    }
}

/// The terms that bear on a label's finding, as printed, in quotes, each once: of a label that names a source the sources.
fn asked_terms(label: &LabelReview, words: &Catalogue) -> Vec<String> {
    let is_source = |class| class == TermClass::Always || is_not_forbidden(class);
    let names_one = label.terms.iter().any(|term| is_source(term.class));
    let bears = |class| match names_one {
        true => is_source(class),
        false => class == TermClass::Depends,
    };
    quoted_once(label, bears, |term| breakable(term, 28), words)
}
