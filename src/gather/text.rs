//! Text as people and spreadsheets write it, folded so that what looks alike is alike.

/// Any kind of blank: also the line breaks that a wrapped cell holds.
pub use crate::gather::books::letters::is_space;

use std::borrow::Cow;
use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// One kind of space, of dash and of digit: no-break and thin spaces, en dashes and minus signs, full-width figures.
/// Spaces around go; superscripts stay, since they are footnote marks and no figures.
pub fn plain(text: &str) -> Cow<'_, str> {
    let text = text.trim_matches(|c: char| is_space(c) || is_invisible(c));
    if text.is_ascii() && !text.bytes().any(|b| b.is_ascii_control()) {
        return Cow::Borrowed(text);
    }
    Cow::Owned(
        text.chars()
            .filter(|c| !is_invisible(*c))
            .map(plain_char)
            .collect(),
    )
}

fn plain_char(c: char) -> char {
    match c {
        c if is_space(c) => ' ',
        c if is_dash(c) => '-',
        // Full-width forms stand at a fixed distance from their ASCII twins.
        '\u{ff01}'..='\u{ff5e}' => char::from_u32(c as u32 - 0xfee0).unwrap_or(c),
        '\u{2018}' | '\u{2019}' | '\u{201b}' | '\u{2032}' | '\u{02bc}' => '\'',
        // The micro sign and the letter mu.
        '\u{03bc}' => 'µ',
        '\u{2044}' | '\u{2215}' => '/',
        '\u{fe64}' | '\u{2039}' | '\u{3008}' => '<',
        '\u{fe65}' | '\u{203a}' | '\u{3009}' => '>',
        c => c,
    }
}

/// Marks that steer the direction of writing or the width of a space, and show nothing.
fn is_invisible(c: char) -> bool {
    matches!(c, '\u{200c}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}' | '\u{ad}')
}

/// Any kind of dash, hyphen or minus sign.
pub fn is_dash(c: char) -> bool {
    matches!(
        c,
        '-' | '\u{2010}'
            ..='\u{2015}' | '\u{2212}' | '\u{fe58}' | '\u{fe63}' | '\u{ff0d}' | '\u{2043}'
    )
}

/// Words for comparing headings and phrases: lower case, no accents, runs of anything else as one space.
///
/// `Prüf-Nr. (Kunde)` becomes `pruf nr kunde`; `µ`, `%`, `<`, `>` and `#` are kept since they carry meaning.
pub fn words(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut take = |c: char| match c {
        'ß' => out.push_str("ss"),
        'µ' | '\u{3bc}' => out.push('u'),
        c if c.is_alphanumeric() || matches!(c, '%' | '<' | '>' | '#') => out.push(c),
        _ if out.is_empty() || out.ends_with(' ') => {}
        _ => out.push(' '),
    };
    if text.is_ascii() {
        // Nearly every cell: nothing to fold but the case.
        text.chars().for_each(|c| take(c.to_ascii_lowercase()));
    } else {
        plain(text)
            .nfkd()
            .filter(|c| !is_combining_mark(*c))
            .flat_map(char::to_lowercase)
            .for_each(take);
    }
    out.truncate(out.trim_end_matches(' ').len());
    out
}

/// A text shortened for a message: one line, at most 60 characters.
pub fn short(text: &str) -> String {
    const LONGEST: usize = 60;
    let line: String = text
        .chars()
        .map(|c| {
            if c.is_control() || is_space(c) {
                ' '
            } else {
                c
            }
        })
        .take(LONGEST + 1)
        .collect();
    let line = line.trim();
    if line.chars().count() <= LONGEST {
        return line.to_owned();
    }
    let mut cut: String = line.chars().take(LONGEST - 1).collect();
    cut.push('…');
    cut
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spaces_dashes_and_figures_become_plain() {
        assert_eq!(plain("\u{a0}1\u{202f}234,5 "), "1 234,5");
        assert_eq!(plain("\u{ff1c}\u{ff15}"), "<5");
        assert_eq!(plain("TKW\u{2011}1\u{2212}2"), "TKW-1-2");
        assert_eq!(
            plain("12.4\u{b9}"),
            "12.4\u{b9}",
            "a footnote mark is no figure"
        );
    }

    #[test]
    fn words_drop_case_accents_and_punctuation() {
        assert_eq!(words("Prüf-Nr. (Kunde)"), "pruf nr kunde");
        assert_eq!(words("  Teneur en\ngluten [µg/g]"), "teneur en gluten ug g");
        assert_eq!(words("%CV"), "%cv");
    }

    #[test]
    fn a_long_text_is_cut_for_a_message() {
        assert_eq!(short("a\nb"), "a b");
        assert_eq!(short(&"x".repeat(500)).chars().count(), 60);
    }
}
