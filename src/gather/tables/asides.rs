//! What a heading of gluten says in passing of the assay's limits: "Gluten ppm (LOQ 5)", "Gluten (ppm, LOQ 5 ppm)".

use crate::gather::numbers::{self, Marks};
use crate::gather::tables::units::{self, Unit};
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;

/// The limits of an assay, as figures with the unit that stands with them.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Limits {
    /// The lowest quantity reported as a number.
    pub lloq: Option<(f64, Option<Unit>)>,
    /// The highest one.
    pub uloq: Option<(f64, Option<Unit>)>,
    /// The lowest quantity that the assay detects.
    pub lod: Option<(f64, Option<Unit>)>,
}

/// A heading without the labels and figures of limits that stand in it, where there are any, and those limits. Only of one
/// that names what was measured: else the limit is what the column holds.
pub fn set_apart(written: &str) -> (Option<String>, Limits) {
    let mut limits = Limits::default();
    let has_figure = written.contains(|c: char| c.is_ascii_digit());
    if !has_figure || units::quantity(written).is_none() {
        return (None, limits);
    }
    let mut rest = String::new();
    let mut found = false;
    for part in parts(written) {
        match limit_behind(&part) {
            Some((before, meaning, figure)) => {
                let limit = match meaning {
                    Meaning::Lloq => &mut limits.lloq,
                    Meaning::Uloq => &mut limits.uloq,
                    _ => &mut limits.lod,
                };
                *limit = limit.or(Some(figure));
                rest.push_str(&before);
                found = true;
            }
            None => rest.push_str(&part),
        }
    }
    (found.then_some(rest), limits)
}

/// A text cut at its brackets and at the commas that stand in no figure; each part begins with its mark.
fn parts(written: &str) -> Vec<String> {
    let mut parts = vec![String::new()];
    let letters: Vec<char> = written.chars().collect();
    for (at, letter) in letters.iter().enumerate() {
        let is_digit = |at: Option<usize>| {
            at.and_then(|at| letters.get(at))
                .is_some_and(char::is_ascii_digit)
        };
        let within_figure = *letter == ',' && is_digit(at.checked_sub(1)) && is_digit(Some(at + 1));
        if matches!(letter, '(' | ')' | '[' | ']' | '{' | '}' | ',' | ';') && !within_figure {
            parts.push(String::new());
        }
        parts.last_mut().expect("starts with one").push(*letter);
    }
    parts
}

/// A part that ends in a limit's label with its figure: what stands before the label, which limit it is, and the figure.
fn limit_behind(part: &str) -> Option<(String, Meaning, (f64, Option<Unit>))> {
    const LABELS: [Meaning; 3] = [Meaning::Lloq, Meaning::Uloq, Meaning::Lod];
    let starts: Vec<usize> = part
        .char_indices()
        .filter(|(at, c)| {
            let before = part[..*at].chars().next_back();
            c.is_alphabetic() && before.is_none_or(|before| !before.is_alphanumeric())
        })
        .map(|(at, _)| at)
        .collect();
    starts.into_iter().find_map(|start| {
        let said = &part[start..];
        let figure_at = said.find(|c: char| c.is_ascii_digit())?;
        let label = text::words(said[..figure_at].trim_end_matches(['<', '=', ':', ' ', '≤']));
        let meaning = vocabulary::first(&label, &LABELS)?;
        let parted = units::part(&said[figure_at..]);
        let figure = numbers::read(parted.rest.trim(), Marks::Unsettled).ok()?;
        let is_whole = parted.foreign.is_none() && figure.value > 0.0;
        is_whole.then(|| {
            let before = part[..start].to_owned();
            (before, meaning, (figure.value, parted.unit))
        })
    })
}

#[cfg(test)]
mod tests {
    use crate::gather::tables::headings::{self, Role};

    #[test]
    fn a_limit_in_passing_says_nothing_of_what_the_column_is() {
        for (written, lloq) in [
            ("Gluten ppm (LOQ 5)", 5.0),
            ("Gluten (ppm, LOQ 5 ppm)", 5.0),
            ("Gluten [mg/kg], LOQ: 2,5 mg/kg", 2.5),
            ("Gluten (mg/kg; Bestimmungsgrenze 5)", 5.0),
            ("Gluten ppm LOQ = 10", 10.0),
            (
                "Contenido de gluten (ppm) (límite de cuantificación 5 ppm)",
                5.0,
            ),
        ] {
            let read = headings::read(written).unwrap_or_else(|| panic!("{written}"));
            assert!(
                matches!(read.role, Role::Result(part) if !part.is_numbered()),
                "{written}"
            );
            assert_eq!(
                read.limits.lloq.map(|limit| limit.0),
                Some(lloq),
                "{written}"
            );
            assert!(read.unit.is_some(), "{written}");
        }
        for written in [
            "LOQ gluten (ppm)",
            "Gluten LOQ (mg/kg)",
            "LOQ 5 ppm",
            "LOD gluten (ppm)",
        ] {
            let role = headings::read(written).map(|read| read.role);
            assert!(!role.is_some_and(Role::is_reported), "{written}: {role:?}");
        }
    }
}
