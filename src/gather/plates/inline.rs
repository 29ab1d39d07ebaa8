//! What one text says of a well: a code with what stands behind it, figures with their units, a range.

use super::figures::{self, Said};
use crate::gather::books::Content;
use crate::gather::codes::Codes;
use crate::gather::text;

/// The registered code that a text begins with, and what stands behind it: the longest that ends where a word does.
pub fn code_of<'a>(written: &'a str, codes: &Codes) -> Option<(String, &'a str)> {
    const LONGEST: usize = 80;
    if let Some(code) = codes.find(written) {
        return Some((code.to_owned(), ""));
    }
    let ends = written
        .char_indices()
        .take(LONGEST)
        .filter(|(at, c)| *at > 0 && !c.is_alphanumeric())
        .map(|(at, _)| at);
    let ends: Vec<usize> = ends.collect();
    ends.into_iter().rev().find_map(|end| {
        let code = codes.find(written[..end].trim_end())?;
        Some((code.to_owned(), &written[end..]))
    })
}

/// Extraction and dilution behind a code: ` E1 1:10`, `/2/10`, ` (extract 2, x10)`. A bare figure is the extraction, a second
/// one the dilution. None where anything else stands there.
pub fn behind(rest: &str) -> Option<(Option<u32>, Option<f64>)> {
    let plain = text::plain(rest).to_lowercase().replace('×', "x");
    let tokens = plain.split(|c: char| !(c.is_alphanumeric() || matches!(c, ':' | '.')));
    let (mut extraction, mut dilution, mut word) = (None, None, None);
    for token in tokens.filter(|token| !token.is_empty()) {
        let is_bare = token.bytes().all(|b| b.is_ascii_digit());
        let is_dilution = matches!(
            word,
            Some("dilution" | "dil" | "df" | "verdunnung" | "verd")
        );
        if is_bare && !is_dilution && extraction.is_none() {
            extraction = Some(figures::extraction(token)?);
        } else if is_bare || token.contains(':') || token.starts_with('x') || token.ends_with('x') {
            if dilution.replace(figures::dilution(token)?).is_some() {
                return None;
            }
        } else if figures::extraction(token).is_some() && extraction.is_none() {
            extraction = figures::extraction(token);
        } else {
            let known = figures::EXTRACTION.contains(&token) || DILUTION.contains(&token);
            if !known {
                return None;
            }
            word = Some(token);
            continue;
        }
        word = None;
    }
    word.is_none().then_some((extraction, dilution))
}

/// What stands before a dilution.
const DILUTION: &[&str] = &["dilution", "dil", "df", "verdunnung", "verd", "dilucion"];

/// The figures of a text that stand by themselves, each with the unit behind it; those within a word, such as `STD1`, are its
/// number.
pub fn figures_in(written: &str) -> Vec<(f64, Said, bool)> {
    let plain = text::plain(written);
    let is_part = |c: char| c.is_alphanumeric() || matches!(c, '.' | ',');
    let mut found = Vec::new();
    let mut rest = &*plain;
    while let Some(start) = rest.find(is_part) {
        rest = &rest[start..];
        let end = rest.find(|c: char| !is_part(c)).unwrap_or(rest.len());
        let token = rest[..end].trim_end_matches(['.', ',']);
        let digits = token
            .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',')))
            .unwrap_or(token.len());
        let (number, glued) = token.split_at(digits);
        let number = Content::Text(number.into());
        if let Some((value, _)) = figures::amount(&number) {
            let behind = format!("{glued}{}", &rest[end..]);
            let words = text::words(&behind);
            // “3 (10 ppm)”: the unit is that of the second figure.
            let is_word = |word: &&str| !word.starts_with(|c: char| c.is_ascii_digit());
            let next: Vec<&str> = words.split(' ').take_while(is_word).take(2).collect();
            let said = figures::unit(&next.join(" "));
            let said = match said {
                Said::Nothing => next.first().map_or(said, |word| figures::unit(word)),
                said => said,
            };
            let is_whole = value.fract() == 0.0 && said == Said::Nothing;
            if glued.is_empty() || said != Said::Nothing {
                found.push((value, said, is_whole));
            }
        }
        rest = &rest[end..];
    }
    found
}

/// A range in a text: “QC high 18-26 ppm”.
pub fn range_in(written: &str) -> Option<((f64, f64), Said)> {
    let plain = text::plain(written);
    let from = plain.char_indices().filter(|(at, c)| {
        let before = plain[..*at].chars().next_back();
        c.is_ascii_digit()
            && before.is_none_or(|c| !(c.is_alphanumeric() || matches!(c, '.' | ',' | '-')))
    });
    let starts: Vec<usize> = from.map(|(at, _)| at).collect();
    starts.into_iter().find_map(|at| {
        let range = figures::range(&plain[at..])?;
        Some((range, figures::unit(&text::words(&plain[at..]))))
    })
}

/// A value in a text. A whole number of one digit without a unit is the number of the control.
pub fn value_in(written: &str) -> Option<(f64, Said)> {
    let found = figures_in(written);
    let values: Vec<_> = found
        .iter()
        .filter(|(value, _, is_whole)| !is_whole || *value >= 10.0)
        .collect();
    match values.as_slice() {
        [(value, said, _)] => Some((*value, *said)),
        _ => None,
    }
}
