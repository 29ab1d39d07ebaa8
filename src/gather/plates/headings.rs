//! What the columns of a long table of wells are, by their headings in English, German and Spanish.

use super::figures::{self, Said};
use crate::gather::books::{Cell, Content, Row};
use crate::gather::text;

/// What a column of a table of wells is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Role {
    /// `A1` to `H12`.
    Well,
    /// What was read.
    Absorbance,
    /// Which plate.
    Plate,
    /// What kind of thing is in the well.
    Kind,
    /// Which one.
    Name,
    /// How much is in it.
    Concentration,
    /// How much thinner.
    Dilution,
    /// Which extraction.
    Extraction,
    /// From so much to so much.
    Range,
    /// From so much ..
    Low,
    /// .. to so much.
    High,
}

/// Headings as they are, accents and signs left out.
const EXACT: &[(Role, &[&str])] = &[
    (
        Role::Well,
        &[
            "well",
            "wells",
            "well position",
            "well id",
            "well no",
            "position",
            "pos",
            "kavitat",
            "vertiefung",
            "napf",
            "pocillo",
            "pozo",
            "posicion",
        ],
    ),
    (
        Role::Plate,
        &[
            "plate",
            "plate id",
            "plate no",
            "plate number",
            "plate name",
            "platte",
            "platten nr",
            "placa",
            "placa n",
        ],
    ),
    (
        Role::Kind,
        &[
            "type",
            "well type",
            "sample type",
            "kind",
            "role",
            "content",
            "contents",
            "well content",
            "well contents",
            "typ",
            "art",
            "inhalt",
            "belegung",
            "tipo",
            "contenido",
        ],
    ),
    (
        Role::Name,
        &[
            "sample",
            "sample id",
            "sample code",
            "sample name",
            "sample no",
            "name",
            "code",
            "id",
            "package",
            "package code",
            "your reference",
            "client reference",
            "client ref",
            "probe",
            "probencode",
            "proben code",
            "proben id",
            "proben nr",
            "probenname",
            "bezeichnung",
            "packung",
            "muestra",
            "codigo",
            "codigo de muestra",
            "nombre",
            "envase",
        ],
    ),
    (
        Role::Dilution,
        &[
            "dilution",
            "dilution factor",
            "dil",
            "df",
            "factor",
            "sample dilution",
            "verdunnung",
            "verdunnungsfaktor",
            "faktor",
            "dilucion",
            "factor de dilucion",
        ],
    ),
    (
        Role::Extraction,
        &[
            "extraction",
            "extraction no",
            "extraction number",
            "extract",
            "extract no",
            "extr",
            "prep",
            "preparation",
            "extraktion",
            "extraktion nr",
            "extrakt",
            "aufarbeitung",
            "extraccion",
            "extracto",
        ],
    ),
    (
        Role::Range,
        &[
            "range",
            "target range",
            "control range",
            "stated range",
            "bereich",
            "sollbereich",
            "rango",
            "intervalo",
        ],
    ),
    (
        Role::Low,
        &[
            "low",
            "lower",
            "min",
            "minimum",
            "range low",
            "lower limit",
            "von",
            "untergrenze",
            "minimo",
        ],
    ),
    (
        Role::High,
        &[
            "high",
            "upper",
            "max",
            "maximum",
            "range high",
            "upper limit",
            "bis",
            "obergrenze",
            "maximo",
        ],
    ),
];

/// First words of a heading of concentrations; a unit may follow.
const CONCENTRATION: &[&str] = &[
    "concentration",
    "conc",
    "konzentration",
    "konz",
    "concentracion",
    "nominal",
    "stated",
    "sollwert",
    "standard concentration",
    "std conc",
    "nominal concentration",
    "stated concentration",
    "expected concentration",
    "target",
];

/// Words that a heading of absorbances has.
const ABSORBANCE: &[&str] = &[
    "absorbance",
    "absorbances",
    "absorbancia",
    "absorption",
    "absorbanz",
    "extinktion",
    "extinction",
    "od",
    "do",
    "abs",
    "optische dichte",
    "densidad optica",
    "optical density",
];

/// Words of figures that were worked out of absorbances.
const WORKED_OUT: &[&str] = &[
    "mean",
    "average",
    "avg",
    "mittelwert",
    "mw",
    "media",
    "promedio",
    "cv",
    "sd",
    "stdev",
    "ratio",
    "b0",
    "reference",
    "blank",
];

/// The columns of a table of wells, and what is said of their concentrations.
#[derive(Clone, Debug, Default)]
pub struct Columns {
    roles: Vec<(Role, u32, String)>,
    /// The unit in the heading of the concentrations.
    pub said: Option<Said>,
    /// Columns that are none of these and hold results, by their headings.
    pub results: Vec<u32>,
    /// From its first column to its last.
    pub span: (u32, u32),
}

impl Columns {
    /// Those of a row, where it can be the headings of a table of wells: wells and absorbances are there.
    pub fn of(row: &Row, described: &[String]) -> Option<Columns> {
        // Nearly no row names wells: all others cost a look at the first letters of their cells.
        let names_wells = |cell: &Cell| match &cell.content {
            Content::Text(text) => {
                may_name_wells(text) && role(&text::words(text)) == Some(Role::Well)
            }
            _ => false,
        };
        if !row.cells.iter().any(names_wells) {
            return None;
        }
        let mut columns = Columns::default();
        let mut unit_of = None;
        for cell in &row.cells {
            let shown = cell.content.shown();
            let words = text::words(&shown);
            match role(&words) {
                Some(role) => {
                    if role == Role::Concentration {
                        unit_of = Some(figures::unit(&words));
                    }
                    columns
                        .roles
                        .push((role, cell.column, shown.trim().to_owned()));
                }
                None if is_result(&words) || described.contains(&words) => {
                    columns.results.push(cell.column)
                }
                None => {}
            }
        }
        columns.said = unit_of;
        let all = || columns.roles.iter().map(|(_, column, _)| *column);
        columns.span = (all().min()?, all().max()?);
        let has = |wanted: Role| columns.roles.iter().any(|(role, ..)| *role == wanted);
        (has(Role::Well) && has(Role::Absorbance)).then_some(columns)
    }

    /// The first column of a role.
    pub fn at(&self, wanted: Role) -> Option<u32> {
        let mut of_role = self.roles.iter().filter(|(role, ..)| *role == wanted);
        of_role.next().map(|(_, column, _)| *column)
    }

    /// Two columns that say the same, by their headings: absorbances, or wells.
    pub fn double(&self) -> Option<(&str, &str, u32)> {
        let once = [Role::Well, Role::Absorbance, Role::Concentration];
        once.iter().find_map(|wanted| {
            let mut of_role = self.roles.iter().filter(|(role, ..)| role == wanted);
            let (first, second) = (of_role.next()?, of_role.next()?);
            Some((first.2.as_str(), second.2.as_str(), second.1))
        })
    }
}

/// Whether a cell begins as a heading of wells does.
fn may_name_wells(text: &str) -> bool {
    const LONGEST: usize = 40;
    let first = text
        .trim_start()
        .chars()
        .next()
        .map(|c| c.to_ascii_lowercase());
    text.len() <= LONGEST && matches!(first, Some('w' | 'p' | 'k' | 'v' | 'n'))
}

fn role(words: &str) -> Option<Role> {
    let exact = EXACT.iter().find(|(_, known)| known.contains(&words));
    if let Some((role, _)) = exact {
        return Some(*role);
    }
    let begins = |known: &&&str| {
        let rest = words.strip_prefix(**known);
        rest.is_some_and(|rest| rest.is_empty() || rest.starts_with(' '))
    };
    if CONCENTRATION.iter().any(|known| begins(&known)) {
        return Some(Role::Concentration);
    }
    let has = |list: &[&str]| {
        let padded = format!(" {words} ");
        list.iter()
            .any(|word| padded.contains(&format!(" {word} ")))
    };
    let is_wavelength = |word: &str| {
        let digits = ["od", "abs", "a", "e", "do"]
            .iter()
            .find_map(|letters| word.strip_prefix(letters));
        digits.is_some_and(|digits| {
            digits.len() == 3 && digits.bytes().all(|byte| byte.is_ascii_digit())
        })
    };
    let is_absorbance = has(ABSORBANCE) || words.split(' ').any(is_wavelength);
    (is_absorbance && !has(WORKED_OUT)).then_some(Role::Absorbance)
}

/// Whether a heading is of results.
fn is_result(words: &str) -> bool {
    let stems = ["gluten", "gliadin", "result", "ergebnis", "befund"];
    figures::unit(words) == Said::Ppm || stems.iter().any(|stem| words.contains(stem))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_of_wells_are_known_in_three_languages() {
        for (heading, expected) in [
            ("Well", Some(Role::Well)),
            ("Kavität", Some(Role::Well)),
            ("Posición", Some(Role::Well)),
            ("Absorbance (450 nm)", Some(Role::Absorbance)),
            ("OD450", Some(Role::Absorbance)),
            ("Extinktion", Some(Role::Absorbance)),
            ("Densidad óptica", Some(Role::Absorbance)),
            ("Mean OD", None),
            ("CV of OD %", None),
            ("Conc. (ng/mL)", Some(Role::Concentration)),
            ("Konzentration", Some(Role::Concentration)),
            ("Gluten (ppm)", None),
            ("Verdünnung", Some(Role::Dilution)),
            ("Extraction no.", Some(Role::Extraction)),
            ("Sample code", Some(Role::Name)),
            ("Content", Some(Role::Kind)),
            ("Remark", None),
        ] {
            assert_eq!(role(&text::words(heading)), expected, "{heading}");
        }
        let wells = EXACT.iter().find(|(role, _)| *role == Role::Well);
        let (_, wells) = wells.expect("is in the list");
        assert!(wells.iter().all(|heading| may_name_wells(heading)));
        assert!(is_result(&text::words("Gluten (ppm)")));
        assert!(!is_result(&text::words("Remark")));
    }
}
