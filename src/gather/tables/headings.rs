//! One heading -> what its column holds, by the meaning of its words.

use crate::gather::books::Row;
use crate::gather::tables::asides::{self, Limits};
use crate::gather::tables::factors;
use crate::gather::tables::roles;
pub use crate::gather::tables::roles::{Part, Role};
use crate::gather::tables::units::{self, Quantity, Unit};
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::tables::wordings;
use crate::gather::text;
use std::borrow::Cow;

/// A heading that was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct Heading {
    /// What the column holds.
    pub role: Role,
    /// The unit in the heading.
    pub unit: Option<Unit>,
    /// A unit in the heading that cannot be converted.
    pub foreign: Option<String>,
    /// Gluten or gliadin, where the heading says so.
    pub quantity: Option<Quantity>,
    /// The limits of the assay that it gives in passing: "Gluten ppm (LOQ 5)".
    pub limits: Limits,
}

/// How much a row looks like headings: the number of different things that its cells name.
pub fn likeness<'a>(cells: impl Iterator<Item = Cow<'a, str>>) -> usize {
    let mut roles: Vec<Role> = cells
        .filter(|cell| may_be_heading(cell))
        .filter_map(|cell| read(&cell))
        .map(|heading| heading.role)
        .collect();
    roles.sort_unstable();
    roles.dedup();
    roles.len()
}

/// Whether a heading says that what stands below it is something else than results: weights, absorbances, ng/mL.
pub fn says_otherwise(written: &str) -> bool {
    if !may_be_heading(written) {
        return false;
    }
    let known = read(written);
    known.is_some_and(|heading| !heading.role.is_reported() || heading.foreign.is_some())
        || units::part(written).foreign.is_some()
}

/// As [`likeness`], of a row.
pub fn likeness_of(row: &Row) -> usize {
    likeness(row.cells.iter().map(|cell| cell.content.shown()))
}

/// Whether a text can be a heading: short, and with a letter in it.
pub fn may_be_heading(text: &str) -> bool {
    const LONGEST: usize = 90;
    text.len() <= LONGEST && text.chars().any(char::is_alphabetic)
}

/// What a heading means, where it is known. What a heading of gluten says of the assay's limits in passing, a label with its
/// figure, is set apart first: what is left says what the column is.
pub fn read(written: &str) -> Option<Heading> {
    let (rest, limits) = asides::set_apart(written);
    if let Some(rest) = rest
        && let Some(read) = read_plain(&rest)
        && read.role.is_reported()
    {
        return Some(Heading { limits, ..read });
    }
    read_plain(written)
}

fn read_plain(written: &str) -> Option<Heading> {
    let whole = text::words(written);
    if !units::may_hold_one(written) && !vocabulary::has_a_word(&whole) {
        return None;
    }
    let parted = units::part(written);
    let quantity = units::quantity(written);
    let words = text::words(&parted.rest);
    let heading = |role: Role| {
        let worked_on = role
            .is_a_figure()
            .then(|| factors::worked_on(written))
            .flatten();
        Heading {
            role,
            unit: parted.unit.filter(|_| worked_on.is_none()),
            foreign: worked_on.or_else(|| parted.foreign.clone()),
            quantity,
            limits: Limits::default(),
        }
    };
    let bare = without_quantity(&words);
    let named = [whole.as_str(), &words, &bare]
        .into_iter()
        .find_map(roles::named);
    if let Some(role) = named {
        return Some(heading(role));
    }
    if words.is_empty() {
        let is_unit = parted.unit.is_some_and(|_| text::plain(written) != "%");
        return (is_unit || parted.foreign.is_some() && quantity.is_some())
            .then(|| heading(Role::Result(Part::default())));
    }
    let has_unit = parted.unit.is_some() || parted.foreign.is_some();
    wordings::composed(&words, has_unit)
        .or_else(|| wordings::gluten_in_other_words(&words, quantity, parted.unit))
        .map(heading)
}

fn without_quantity(words: &str) -> String {
    let kept: Vec<&str> = words
        .split(' ')
        .filter(|word| !vocabulary::means(word, Meaning::Quantity))
        .collect();
    kept.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn role(written: &str) -> Option<Role> {
        read(written).map(|heading| heading.role)
    }

    fn part(written: &str) -> Option<Part> {
        match role(written) {
            Some(Role::Result(part)) => Some(part),
            _ => None,
        }
    }

    #[test]
    fn plain_headings_in_five_languages() {
        for written in [
            "Sample ID",
            "Your reference",
            "Probennummer",
            "Proben-Nr.",
            "N° échantillon",
            "Código de muestra",
            "Codice campione",
            "Client Sample #",
        ] {
            assert_eq!(role(written), Some(Role::Sample), "{written}");
        }
        for written in [
            "Result",
            "Gluten (mg/kg)",
            "Ergebnis [ppm]",
            "Teneur en gluten",
            "Contenido de gluten",
            "Contenuto di glutine (ppm)",
            "ppm",
            "Gliadin content µg/g",
        ] {
            assert_eq!(
                role(written),
                Some(Role::Result(Part::default())),
                "{written}"
            );
        }
        for written in [
            "Extraction",
            "Extract no.",
            "Prep",
            "Extraktion",
            "Extracción nº",
            "Estrazione",
        ] {
            assert_eq!(role(written), Some(Role::Extraction), "{written}");
        }
        assert_eq!(role("Replicate"), Some(Role::Replicate));
        assert_eq!(role("Well"), Some(Role::Well));
        assert_eq!(role("Mittelwert (mg/kg)"), Some(Role::Mean));
        assert_eq!(role("Mean gluten, ppm"), Some(Role::Mean));
        assert_eq!(role("LOQ (mg/kg)"), Some(Role::Lloq));
        assert_eq!(role("Bestimmungsgrenze"), Some(Role::Lloq));
        assert_eq!(role("Prüfdatum"), Some(Role::TestedOn));
        assert_eq!(role("Einheit"), Some(Role::Unit));
    }

    #[test]
    fn side_by_side_results_are_numbered() {
        for written in [
            "Extraction 1",
            "Ext. 1 (ppm)",
            "Gluten ext1 mg/kg",
            "1st extraction",
            "Extraction 1 result (mg/kg)",
            "Extrakt 1",
        ] {
            assert_eq!(
                part(written).and_then(|part| part.extraction),
                Some(1),
                "{written}"
            );
        }
        assert_eq!(part("Result B").and_then(|part| part.number), Some(2));
        assert_eq!(part("Rep 2 (ppm)").and_then(|part| part.replicate), Some(2));
        let both = part("Extraction 2 well 1").expect("is a result");
        assert_eq!((both.extraction, both.well), (Some(2), Some(1)));
        assert_eq!(
            part("Gluten R5 (ppm)"),
            Some(Part::default()),
            "R5 is no number"
        );
    }

    #[test]
    fn other_columns_are_not_taken_for_results() {
        for written in [
            "Sample description",
            "CV %",
            "Recovery (%)",
            "Number of extractions",
            "Date received",
            "LOD (mg/kg)",
            "OD 450 nm",
            "Gluten free",
        ] {
            assert!(
                !matches!(
                    role(written),
                    Some(Role::Result(_) | Role::Sample | Role::Extraction)
                ),
                "{written}: {:?}",
                role(written)
            );
        }
    }

    #[test]
    fn units_and_quantities_come_with_the_heading() {
        let gliadin = read("Gliadin (mg/kg)").expect("is known");
        assert_eq!(gliadin.quantity, Some(Quantity::Gliadin));
        assert!(gliadin.unit.is_some());
        assert_eq!(
            read("Gluten (mg/L)")
                .and_then(|heading| heading.foreign)
                .as_deref(),
            Some("mg/l")
        );
    }
}
