//! What stands behind a figure in its cell: an uncertainty, a footnote mark.

use crate::gather::tables::units;
use crate::gather::text;

/// A text without the uncertainty behind its figure: `12.4 ± 3.7 mg/kg`, `12.4 (U 3.7)`, `12.4 +/- 30 %`. The unit behind the
/// uncertainty is that of the figure as well, unless it is a percentage.
pub fn without_uncertainty(plain: &str) -> (&str, Option<String>, Option<&str>) {
    let starts = plain.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '+' | '-' | '<'));
    if !starts {
        return (plain, None, None);
    }
    for mark in ["±", "+/-", "+-", "(U", "(u", "; U", ", U ", " U=", " U ="] {
        let Some(at) = plain.find(mark).filter(|at| *at > 0) else {
            continue;
        };
        let (figure, rest) = (plain[..at].trim(), &plain[at + mark.len()..]);
        let stated = rest.trim_matches(|c: char| matches!(c, ' ' | ')' | '(' | '=' | ':'));
        let is_figure = stated.starts_with(|c: char| c.is_ascii_digit());
        if is_figure {
            let bare = figure.trim_end_matches('(').trim_end();
            let (_, behind) = split_figure(stated);
            let unit = Some(behind.trim()).filter(|unit| {
                !unit.starts_with('%')
                    && (units::read(unit).is_some() || units::looks_like_unit(unit))
            });
            return (bare, Some(format!("± {stated}")), unit);
        }
    }
    (plain, None, None)
}

/// A text that starts with a figure, parted behind it.
pub fn split_figure(text: &str) -> (&str, &str) {
    let end = text
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | ' ' | '\'')))
        .unwrap_or(text.len());
    let figure = text[..end].trim_end();
    (figure, &text[figure.len()..])
}

/// The mark of a footnote with which a line starts.
pub fn footnote_mark_before(line: &str) -> Option<&str> {
    let first = line.chars().next()?;
    let is_sign = |c: char| SIGNS.contains(&c) && c != '#' && c != '°';
    if is_sign(first) {
        let end = line.find(|c: char| !is_sign(c)).unwrap_or(line.len());
        return Some(&line[..end]);
    }
    let bracketed = first.is_ascii_alphanumeric() && line[1..].starts_with(')');
    bracketed.then(|| &line[..1])
}

/// The mark of a footnote with which a cell ends: `12.4*`, `12.4 (a)`, `12.4 1)`.
pub fn footnote_mark_behind(written: &str) -> Option<String> {
    let plain = text::plain(written);
    let bare = plain.trim_end_matches(|c: char| SIGNS.contains(&c));
    if bare.len() < plain.len() {
        return Some(plain[bare.len()..].to_owned());
    }
    let inner = plain.strip_suffix([')', ']'])?;
    let mark = inner
        .chars()
        .next_back()
        .filter(char::is_ascii_alphanumeric)?;
    let before = inner[..inner.len() - 1].chars().next_back()?;
    (matches!(before, '(' | '[' | ' ')).then(|| mark.to_string())
}

/// Signs that mark a footnote.
const SIGNS: [char; 23] = [
    '*', '†', '‡', '§', '¶', '#', '^', '¹', '²', '³', '⁰', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹', 'ᵃ', 'ᵇ',
    'ᶜ', '⁎', '°', '⁽',
];

/// Takes footnote marks off: `*`, `†`, superscripts, `(a)`, `1)`, `[2]`.
pub fn strip_footnotes(tail: &str) -> (String, bool) {
    let mut rest = tail.trim().to_owned();
    let mut found = false;
    loop {
        let before = rest.len();
        rest = rest.trim().trim_matches(SIGNS).to_owned();
        for (open, close) in [('(', ')'), ('[', ']')] {
            let inner = rest.strip_suffix(close).and_then(|rest| {
                rest.rfind(open)
                    .map(|at| (at, rest[at + 1..].trim().to_owned()))
            });
            if let Some((at, inner)) = inner {
                let mark = inner.chars().count() == 1
                    && inner
                        .chars()
                        .all(|c| c.is_ascii_alphanumeric() || SIGNS.contains(&c));
                if mark {
                    rest.truncate(at);
                }
            }
        }
        // The bracket that "ND (<5)" was opened with.
        if rest.ends_with(')') && !rest.contains('(') {
            rest.pop();
            continue;
        }
        if rest.len() == before {
            return (rest, found);
        }
        found = true;
    }
}
