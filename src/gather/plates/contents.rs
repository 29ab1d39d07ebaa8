//! What is in a well, as labs say it: “Std 20 ppm”, “Blank”, “Control 18–26”, “FH-114-A E1 1:10”.

use super::figures::{self, Said};
use super::inline::{behind, code_of, figures_in, range_in, value_in};
use super::{Fault, Reading};
use crate::gather::books::Content;
use crate::gather::text;
use crate::model::plate::{Concentration, Stated};
use crate::model::ppm::Ppm;

/// What is in a well.
#[derive(Clone, Debug, PartialEq)]
pub enum Contents {
    /// So much, in the unit of the settings; `numbered` where the figure may be the number of the standard as well.
    Standard {
        /// Its concentration.
        concentration: f64,
        /// Whether it is a whole number without a unit behind the word.
        numbered: bool,
    },
    /// Nothing of a food.
    Blank,
    /// A food of known content.
    Control {
        /// As the lab names it.
        name: String,
        /// What it is said to hold.
        stated: Option<Stated>,
        /// How much thinner.
        dilution: f64,
    },
    /// A package of the register.
    Sample {
        /// Its code as the register spells it.
        code: String,
        /// Which extraction.
        extraction: Option<u32>,
        /// How much thinner.
        dilution: f64,
    },
    /// A sample that is not of this programme, as it is written.
    Other(String),
    /// The well is not used.
    Empty,
    /// What stands there is not understood.
    Unclear(Fault),
}

/// What stands about a well beside its absorbance; blank cells are none.
#[derive(Clone, Copy, Debug, Default)]
pub struct Cells<'a> {
    /// What kind of thing it is.
    pub role: Option<&'a Content>,
    /// Which one.
    pub name: Option<&'a Content>,
    /// How much is in it.
    pub concentration: Option<&'a Content>,
    /// What the heading of that says of its unit.
    pub said: Option<Said>,
    /// From so much to so much.
    pub range: Option<&'a Content>,
    /// From so much ..
    pub low: Option<&'a Content>,
    /// .. to so much.
    pub high: Option<&'a Content>,
    /// How much thinner.
    pub dilution: Option<&'a Content>,
    /// Which extraction.
    pub extraction: Option<&'a Content>,
}

/// What kind of thing is in a well.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Role {
    Standard,
    Blank,
    Control,
    Sample,
    Empty,
}

const ROLES: &[(Role, &[&str])] = &[
    (
        Role::Standard,
        &[
            "standard",
            "standards",
            "std",
            "cal",
            "calibrator",
            "kal",
            "kalibrator",
            "kalibrierstandard",
            "estandar",
            "patron",
            "calibrador",
        ],
    ),
    (
        Role::Blank,
        &[
            "blank",
            "blk",
            "bl",
            "blankwert",
            "leerwert",
            "blindwert",
            "blanco",
        ],
    ),
    (
        Role::Control,
        &[
            "control",
            "controls",
            "ctrl",
            "ctl",
            "qc",
            "kontrolle",
            "kontrollprobe",
            "positivkontrolle",
            "negativkontrolle",
            "control positivo",
            "positive control",
            "negative control",
        ],
    ),
    (
        Role::Sample,
        &[
            "sample",
            "unknown",
            "unk",
            "probe",
            "unbekannt",
            "muestra",
            "desconocido",
        ],
    ),
    (
        Role::Empty,
        &["empty", "unused", "leer", "frei", "vacio", "none", "n a"],
    ),
];

/// The most letters that are taken of the name of a control.
const LONGEST: usize = 60;

/// What a well holds.
pub fn of(cells: Cells<'_>, well: &str, reading: &Reading<'_>) -> Contents {
    read(cells, well, reading).unwrap_or_else(Contents::Unclear)
}

fn read(cells: Cells<'_>, well: &str, reading: &Reading<'_>) -> Result<Contents, Fault> {
    let [role, name] = [cells.role, cells.name].map(|cell| super::shown(cell).trim().to_owned());
    // A registered code is one wherever it stands.
    for written in [&name, &role] {
        if let Some((code, rest)) = code_of(written, reading.codes) {
            return sample(code, rest, cells, well, written);
        }
    }
    let (written, found) = match (role_of(&role), role_of(&name)) {
        // The name says more where both say the same.
        (Some(one), Some(other)) if one == other => (&name, Some(other)),
        (Some(one), _) if one != Role::Sample && name.is_empty() => (&role, Some(one)),
        (Some(one), _) => (&name, Some(one)),
        (None, other) => (if name.is_empty() { &role } else { &name }, other),
    };
    match found {
        Some(Role::Standard) => standard(written, cells, well, reading),
        Some(Role::Blank) => Ok(Contents::Blank),
        Some(Role::Control) => control(written, cells, well, reading),
        Some(Role::Empty) => Ok(Contents::Empty),
        Some(Role::Sample) | None => Ok(match written.chars().any(char::is_alphanumeric) {
            true => Contents::Other(written.clone()),
            false => Contents::Empty,
        }),
    }
}

/// The kind of thing that a text begins with.
fn role_of(written: &str) -> Option<Role> {
    let words = text::words(written);
    // “S1” is a standard; “S-2291” can be anything.
    let short = ["s", "st"].iter().find_map(|word| words.strip_prefix(word));
    if short.is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit())) {
        return Some(Role::Standard);
    }
    let begins = |word: &&str| {
        let rest = words.strip_prefix(*word);
        rest.is_some_and(|rest| !rest.starts_with(char::is_alphabetic))
    };
    let known = ROLES.iter().filter_map(|(role, words)| {
        let longest = words
            .iter()
            .filter(|word| begins(word))
            .map(|word| word.len());
        Some((longest.max()?, *role))
    });
    known
        .max_by_key(|(length, _)| *length)
        .map(|(_, role)| role)
}

fn sample(
    code: String,
    rest: &str,
    cells: Cells<'_>,
    well: &str,
    written: &str,
) -> Result<Contents, Fault> {
    let (mut extraction, mut thinner) =
        behind(rest).ok_or_else(|| Fault::new("content", well, written))?;
    if let Some(cell) = filled(cells.extraction) {
        let shown = cell.shown();
        let number = figures::extraction(&shown);
        extraction = Some(number.ok_or_else(|| Fault::new("extraction", well, shown))?);
    }
    if let Some(own) = dilution(cells, well)? {
        thinner = Some(own);
    }
    Ok(Contents::Sample {
        code,
        extraction,
        dilution: thinner.unwrap_or(1.0),
    })
}

fn dilution(cells: Cells<'_>, well: &str) -> Result<Option<f64>, Fault> {
    let Some(cell) = filled(cells.dilution) else {
        return Ok(None);
    };
    let shown = cell.shown();
    let read = figures::dilution(&shown);
    read.map(Some)
        .ok_or_else(|| Fault::new("dilution", well, shown))
}

fn standard(
    written: &str,
    cells: Cells<'_>,
    well: &str,
    reading: &Reading<'_>,
) -> Result<Contents, Fault> {
    let fault = |written: &str| Fault::new("concentration", well, written);
    let (value, said, numbered) = match filled(cells.concentration) {
        Some(cell) => {
            let (value, said) = figures::amount(cell).ok_or_else(|| fault(&cell.shown()))?;
            (value, said.or(cells.said), false)
        }
        None => {
            let found = figures_in(written);
            let with_unit = found.iter().filter(|(_, said, _)| *said != Said::Nothing);
            let with_unit: Vec<_> = with_unit.copied().collect();
            match (with_unit.as_slice(), found.as_slice()) {
                ([one], _) | ([], [one]) => *one,
                // “Std 3 10”: its number, and what is in it.
                ([], [_, (value, said, _)]) => (*value, *said, false),
                _ => return Err(fault(written)),
            }
        }
    };
    if !said.goes_with(reading.unit) {
        return Err(other_unit(well, written, said));
    }
    Ok(Contents::Standard {
        concentration: value,
        numbered,
    })
}

/// A concentration in another unit than that of the settings.
fn other_unit(well: &str, written: &str, said: Said) -> Fault {
    let unit = match said {
        Said::NgMl => "ng/mL gliadin",
        _ => "ppm gluten",
    };
    Fault::new("unit", well, written).and(unit)
}

fn control(
    written: &str,
    cells: Cells<'_>,
    well: &str,
    reading: &Reading<'_>,
) -> Result<Contents, Fault> {
    let amount = |cell: Option<&Content>| -> Result<Option<(f64, Said)>, Fault> {
        let Some(cell) = filled(cell) else {
            return Ok(None);
        };
        let (value, said) =
            figures::amount(cell).ok_or_else(|| Fault::new("stated", well, cell.shown()))?;
        Ok(Some((value, said.or(cells.said))))
    };
    let (low, high) = (amount(cells.low)?, amount(cells.high)?);
    let range = match filled(cells.range) {
        Some(cell) => {
            let shown = cell.shown();
            let read = figures::range(&shown).ok_or_else(|| Fault::new("stated", well, &*shown))?;
            Some((read, figures::unit(&text::words(&shown))))
        }
        None => range_in(written),
    };
    let (bounds, said) = match (low, high, range) {
        (Some((low, said)), Some((high, _)), _) if low < high => (Some((low, high)), said),
        (_, _, Some((range, said))) => (Some(range), said),
        _ => match amount(cells.concentration)?.or_else(|| value_in(written)) {
            // Nothing can be compared with nothing.
            Some((value, said)) => ((value > 0.0).then_some((value, value)), said),
            None => (None, Said::Nothing),
        },
    };
    let in_food = |value: f64| match said {
        Said::Ppm => Ppm(value),
        Said::NgMl | Said::Nothing => reading.unit.ppm(Concentration(value)),
    };
    if said == Said::NgMl && !said.goes_with(reading.unit) {
        return Err(other_unit(well, written, said));
    }
    let stated = bounds.map(|(low, high)| match low == high {
        true => Stated::Value(in_food(low)),
        false => Stated::Range(in_food(low), in_food(high)),
    });
    Ok(Contents::Control {
        name: written.chars().take(LONGEST).collect(),
        stated,
        dilution: dilution(cells, well)?.unwrap_or(1.0),
    })
}

/// A cell that says something.
fn filled(cell: Option<&Content>) -> Option<&Content> {
    cell.filter(|cell| cell.shown().chars().any(char::is_alphanumeric))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gather::codes::Codes;
    use crate::model::place::LabFile;
    use crate::model::plate::StandardUnit;
    use std::sync::Arc;

    fn in_text(written: &str) -> Contents {
        let codes = Codes::new(["TK-01", "TK-01-B", "7"].into_iter());
        let reading = Reading {
            file: &Arc::new(LabFile::default()),
            codes: &codes,
            unit: StandardUnit::PpmGluten,
            described: Vec::new(),
            asked: Default::default(),
        };
        let name = Content::Text(written.into());
        let cells = Cells {
            name: Some(&name),
            ..Cells::default()
        };
        of(cells, "A1", &reading)
    }

    fn standard(concentration: f64, numbered: bool) -> Contents {
        Contents::Standard {
            concentration,
            numbered,
        }
    }

    #[test]
    fn standards_are_known_by_their_words() {
        for (written, expected) in [
            ("Std 20 ppm", standard(20.0, false)),
            ("Standard 3 (10 ppm)", standard(10.0, false)),
            ("S1: 2.5", standard(2.5, false)),
            ("STD1 5", standard(5.0, true)),
            ("Std 3 10", standard(10.0, false)),
            ("Standard 4", standard(4.0, true)),
            ("Standard 0", standard(0.0, true)),
            ("Estándar 40 mg/kg", standard(40.0, false)),
        ] {
            assert_eq!(in_text(written), expected, "{written}");
        }
        for (written, kind) in [
            ("S1", "concentration"),
            ("Standard", "concentration"),
            ("Std 10 ng/mL", "unit"),
        ] {
            let Contents::Unclear(fault) = in_text(written) else {
                panic!("{written}");
            };
            assert_eq!(fault.kind, kind, "{written}");
        }
    }

    #[test]
    fn samples_are_known_by_their_codes_with_extraction_and_dilution() {
        for (written, code, extraction, dilution) in [
            ("TK-01", "TK-01", None, 1.0),
            ("tk–01 e2", "TK-01", Some(2), 1.0),
            ("TK-01-B E1 1:10", "TK-01-B", Some(1), 10.0),
            ("TK-01/2/10", "TK-01", Some(2), 10.0),
            ("TK-01 (extract 2, x50)", "TK-01", Some(2), 50.0),
            ("TK-01-1", "TK-01", Some(1), 1.0),
            ("TK-01 dil 20 E2", "TK-01", Some(2), 20.0),
            ("7 1", "7", Some(1), 1.0),
        ] {
            let expected = Contents::Sample {
                code: code.to_owned(),
                extraction,
                dilution,
            };
            assert_eq!(in_text(written), expected, "{written}");
        }
        for written in ["TK-01 burnt", "TK-01 1:0", "TK-01 1 2 3", "TK-01 E"] {
            assert!(
                matches!(in_text(written), Contents::Unclear(_)),
                "{written}"
            );
        }
    }

    #[test]
    fn blanks_controls_and_strangers() {
        let control = |written: &str, stated| Contents::Control {
            name: written.to_owned(),
            stated,
            dilution: 1.0,
        };
        let range = Some(Stated::Range(Ppm(18.0), Ppm(26.0)));
        for (written, expected) in [
            ("Blank 2", Contents::Blank),
            ("BLK", Contents::Blank),
            ("", Contents::Empty),
            ("-", Contents::Empty),
            ("leer", Contents::Empty),
            ("Control 18-26", control("Control 18-26", range)),
            ("QC high 18–26 ppm", control("QC high 18–26 ppm", range)),
            ("QC 1", control("QC 1", None)),
            (
                "Control 20 ppm",
                control("Control 20 ppm", Some(Stated::Value(Ppm(20.0)))),
            ),
            ("K-2291", Contents::Other("K-2291".to_owned())),
            ("S-2291", Contents::Other("S-2291".to_owned())),
            ("Soy 4", Contents::Other("Soy 4".to_owned())),
        ] {
            assert_eq!(in_text(written), expected, "{written}");
        }
    }
}
