//! One heading -> what its column holds, by the meaning of its words.

use crate::gather::books::Row;
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
}

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Role {
    /// The package code.
    Sample,
    /// A number that the lab gave itself.
    LabSample,
    /// The number of the extraction.
    Extraction,
    /// A number that may count extractions or wells.
    Replicate,
    /// A well of the plate.
    Well,
    /// A result, or one of several side by side.
    Result(Part),
    /// A final result: a mean beside others, a reading where it stands alone.
    Final,
    /// A mean.
    Mean,
    /// The unit.
    Unit,
    /// The lowest quantity reported as a number.
    Lloq,
    /// The highest quantity reported as a number.
    Uloq,
    /// The lowest quantity that the assay detects.
    Lod,
    /// The uncertainty of a result.
    Uncertainty,
    /// Day on which the report was issued: no day of the test.
    IssuedOn,
    /// Day on which the lab received the packages.
    ReceivedOn,
    /// Day of the test.
    TestedOn,
    /// The lab's report number.
    Report,
    /// The assay.
    Assay,
    /// The dilution.
    Dilution,
    /// A remark.
    Remark,
    /// The lab's name.
    Lab,
    /// What was measured.
    Analyte,
    /// Known, and not used.
    Ignored,
}

impl Role {
    /// Whether it can name the package.
    pub fn names_sample(self) -> bool {
        matches!(self, Role::Sample | Role::LabSample)
    }

    /// Whether it holds what was found: results, or their means.
    pub fn is_reported(self) -> bool {
        matches!(self, Role::Result(_) | Role::Final | Role::Mean)
    }
}

/// Which result of a row a column holds, where there are several.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Part {
    /// Extraction n.
    pub extraction: Option<u32>,
    /// Replicate n, which may be an extraction or a well.
    pub replicate: Option<u32>,
    /// Well n.
    pub well: Option<u32>,
    /// Result n, where no word says of what.
    pub number: Option<u32>,
}

impl Part {
    /// Whether the heading numbers it at all.
    pub fn is_numbered(&self) -> bool {
        *self != Part::default()
    }
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

/// What a heading means, where it is known.
pub fn read(written: &str) -> Option<Heading> {
    let whole = text::words(written);
    if !units::may_hold_one(written) && !vocabulary::has_a_word(&whole) {
        return None;
    }
    let parted = units::part(written);
    let quantity = units::quantity(written);
    let words = text::words(&parted.rest);
    let heading = |role| Heading {
        role,
        unit: parted.unit,
        foreign: parted.foreign.clone(),
        quantity,
    };
    let bare = without_quantity(&words);
    let named = [whole.as_str(), &words, &bare].into_iter().find_map(named);
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

/// A heading that is one of the known wordings as a whole.
fn named(words: &str) -> Option<Role> {
    const KNOWN: [(Meaning, Role); 17] = [
        (Meaning::Sample, Role::Sample),
        (Meaning::Unit, Role::Unit),
        (Meaning::Lloq, Role::Lloq),
        (Meaning::Uloq, Role::Uloq),
        (Meaning::Lod, Role::Lod),
        (Meaning::Uncertainty, Role::Uncertainty),
        (Meaning::IssuedOn, Role::IssuedOn),
        (Meaning::ReceivedOn, Role::ReceivedOn),
        (Meaning::TestedOn, Role::TestedOn),
        (Meaning::Report, Role::Report),
        (Meaning::Assay, Role::Assay),
        (Meaning::Dilution, Role::Dilution),
        (Meaning::Analyte, Role::Analyte),
        (Meaning::LabSample, Role::LabSample),
        (Meaning::Lab, Role::Lab),
        (Meaning::Remark, Role::Remark),
        (Meaning::Ignored, Role::Ignored),
    ];
    let meaning = vocabulary::first(words, &KNOWN.map(|(meaning, _)| meaning))?;
    KNOWN
        .iter()
        .find(|(known, _)| *known == meaning)
        .map(|(_, role)| *role)
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
