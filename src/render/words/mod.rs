//! The sentences of the documents: plain, exact, without blame; every count comes from the data.

pub mod chapters;
pub mod correction;
pub mod correspondence;
pub mod digest;
pub mod duplicates;
pub mod label;
pub mod limit;
pub mod meaning;
pub mod method;
pub mod near_limit;
pub mod notice;
pub mod on_labels;
pub mod packages;
pub mod pictures;
pub mod plan;
pub mod practice;
pub mod publication;
pub mod query;
pub mod source;
pub mod story;
pub mod sum;
pub mod summary;
pub mod verdict;

use crate::model::package::PackageResult;
use crate::model::rule::{Decision, Rule};
use crate::model::verdict::Verdict;
use crate::render::charts::style::{Type, text_width};
use crate::words::{Catalogue, Said};
use std::collections::BTreeSet;

/// By which a message chooses its wording of how uncertainty enters.
pub fn guarded(rule: Rule) -> &'static str {
    match rule.decision {
        Decision::Guarded { .. } => "yes",
        Decision::Simple => "no",
    }
}

/// By which a message chooses its wording of a verdict.
pub fn verdict_word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::OverLimit => "over",
        Verdict::WithinLimit(_) => "within",
        Verdict::NoVerdict => "none",
    }
}

/// A message about packages that are named, or counted where they are many.
pub type NamedMessage = fn(u64, &'static str, String) -> Said;

/// Packages as a message names them: by their codes, or counted where they are many.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Named {
    /// How many.
    pub packages: u64,
    /// `name` or `count`.
    pub by: &'static str,
    /// Their codes, where they are named.
    pub named: String,
}

impl Named {
    /// More than these are counted.
    const MOST: usize = 4;

    /// What is said of them.
    pub fn said(self, message: NamedMessage) -> Said {
        message(self.packages, self.by, self.named)
    }

    /// These packages; none where there is none.
    pub fn of<'a>(
        packages: impl IntoIterator<Item = &'a PackageResult>,
        words: &Catalogue,
    ) -> Option<Named> {
        let codes: Vec<&str> = packages
            .into_iter()
            .map(|package| package.pair.package.package_code.as_str())
            .collect();
        let (by, named) = match codes.len() {
            0 => return None,
            1..=Named::MOST => ("name", words.list(&codes)),
            _ => ("count", String::new()),
        };
        Some(Named {
            packages: codes.len() as u64,
            by,
            named,
        })
    }
}

/// Each text once: labs write the same assay with and without a capital letter.
pub fn once(texts: BTreeSet<&str>) -> Vec<&str> {
    let mut seen = BTreeSet::new();
    texts
        .into_iter()
        .filter(|text| seen.insert(text.to_lowercase()))
        .collect()
}

/// The first letter in upper case.
pub fn sentence_case(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// The text as a sentence: with a full stop where it has no end.
pub fn full_stop(text: &str) -> String {
    if text.ends_with(['.', '!', '?']) {
        text.to_owned()
    } else {
        format!("{text}.")
    }
}

/// Places for a line to break in words that are wider than a column of a table is, at the size of its type (in points).
pub fn breakable_to(text: &str, width: f64, look: Type) -> String {
    let most = |word: &str| {
        let letters = word.chars().count().max(1) as f64;
        // The widest run of so many letters still fits: W is about half as wide again as the mean of a word.
        ((width / (text_width(word, look) / letters) * 0.7) as usize).max(1)
    };
    let pieces = text.split_inclusive(char::is_whitespace);
    pieces
        .map(|word| match text_width(word.trim_end(), look) <= width {
            true => word.to_owned(),
            false => breakable(word, most(word)),
        })
        .collect()
}

/// Places for a line to break in words that are longer than `most` letters: an invisible space after each dash, dot and
/// stroke in them, and after as many letters without one.
///
/// Codes, lots and ingredient names come from outside, and none of them knows how wide a column is.
pub fn breakable(text: &str, most: usize) -> String {
    let mut out = String::with_capacity(text.len());
    for piece in text.split_inclusive(char::is_whitespace) {
        if piece.chars().count() <= most {
            out.push_str(piece);
        } else {
            break_word(piece, most, &mut out);
        }
    }
    out
}

fn break_word(word: &str, most: usize, out: &mut String) {
    const BREAK: char = '\u{200b}';
    let mut run = 0;
    for letter in word.chars() {
        if run == most {
            out.push(BREAK);
            run = 0;
        }
        out.push(letter);
        run += 1;
        if matches!(letter, '-' | '.' | '_' | '/' | ',') {
            out.push(BREAK);
            run = 0;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_words_that_are_too_long_get_a_place_to_break() {
        assert_eq!(breakable("L31-0771 B", 9), "L31-0771 B");
        assert_eq!(breakable("ABCDEFGH", 3), "ABC\u{200b}DEF\u{200b}GH");
        assert_eq!(breakable("see AB-CDEFG", 4), "see AB-\u{200b}CDEF\u{200b}G");
    }
}
