//! What the results of a table are of: gluten, gliadin, or another substance.
//!
//! The heading of the results says so, or the row, in a column of analytes, methods or units; else the name of the sheet; else
//! the lines outside the tables. Who stands closest is believed. Where nobody names gluten and somebody names another
//! substance, the results are of that; where gliadin is named and it cannot be told whether the figures are of it or of
//! gluten, which is twice as much, nothing is read.

use crate::gather::books::Row;
use crate::gather::codes::Codes;
use crate::gather::facts::Facts;
use crate::gather::tables::finding::Table;
use crate::gather::tables::location::Located;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::roles::Role;
use crate::gather::tables::units::{self, Quantity};
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;
use std::collections::BTreeMap;
use std::sync::Arc;

/// What the lines outside the tables name.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Named {
    /// Whether any of them names gluten.
    gluten: bool,
    /// A title that names gliadin.
    gliadin: Option<Arc<str>>,
    /// A method, a note that names gliadin.
    beside: Option<Arc<str>>,
    /// A title, an analyte or a method that names another substance.
    other: Option<Arc<str>>,
    /// What a sentence says that the results are expressed as.
    expressed: Option<(Quantity, Arc<str>)>,
}

impl Named {
    /// These, or the others where these name nothing.
    pub fn or(self, others: &Named) -> Named {
        if self == Named::default() {
            others.clone()
        } else {
            self
        }
    }

    /// Takes in a line; `label` and the value behind it, where it has a known one.
    pub fn take(&mut self, line: &str, labelled: Option<(Role, &str)>, leads: bool) {
        let of_method = matches!(labelled, Some((Role::Analyte | Role::Assay, _)));
        let (said, is_title) = match labelled {
            Some((Role::Analyte | Role::Assay | Role::Unit, value)) => (value, false),
            Some(_) => return,
            None => (line, leads),
        };
        match quantity(said) {
            Some(Quantity::Gluten) => self.gluten = true,
            Some(Quantity::Gliadin) if is_title && is_plain_title(said) => {
                set(&mut self.gliadin, said);
            }
            Some(Quantity::Gliadin) => set(&mut self.beside, said),
            None if names_antibody(said) => self.gluten = true,
            None => {
                let other = match of_method {
                    true => names_other(said),
                    false => is_title && is_title_of_other(said),
                };
                if other {
                    set(&mut self.other, said);
                }
            }
        }
    }

    /// Takes in that a sentence says what the results are expressed as.
    pub fn express(&mut self, line: &str) {
        if let Some(quantity) = quantity(line)
            && self.expressed.is_none()
        {
            self.expressed = Some((quantity, Arc::from(text::short(line))));
        }
    }
}

fn set(known: &mut Option<Arc<str>>, said: &str) {
    known.get_or_insert_with(|| Arc::from(text::short(said)));
}

/// What the results of a table are of, where neither a heading nor a row says so.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Subject {
    /// Gluten, or nobody says.
    #[default]
    Gluten,
    /// Gliadin.
    Gliadin,
    /// Another substance, as it is named.
    Other(String),
    /// Gliadin, or the gluten that was worked out from it: what leaves it open.
    Unclear(String),
}

impl Subject {
    /// Whether nothing of the table can be used.
    pub fn refuses(&self) -> bool {
        matches!(self, Subject::Other(_) | Subject::Unclear(_))
    }

    /// What the results are of, where the file says so.
    pub fn quantity(&self) -> Option<Quantity> {
        (*self == Subject::Gliadin).then_some(Quantity::Gliadin)
    }
}

/// What the results of a table are of.
pub fn of_table(
    table: &Table,
    plan: &Plan,
    (sheet, rows): (Option<&str>, &[Row]),
    (facts, codes): (&Facts, &Codes),
) -> Subject {
    let headings: Vec<&str> = plan
        .results
        .iter()
        .filter_map(|result| table.column(result.column))
        .map(|column| column.heading.as_str())
        .collect();
    let headed = headings.iter().find_map(|heading| quantity(heading));
    let named = &facts.named;
    if headed == Some(Quantity::Gluten)
        && let Some((Quantity::Gliadin, said)) = &named.expressed
    {
        return Subject::Unclear(said.to_string());
    }
    if headed.is_some() || rows_say(plan, rows, codes) {
        return Subject::Gluten;
    }
    if let Some(other) = headings.iter().find(|heading| names_other(heading)) {
        return Subject::Other(text::short(other));
    }
    of_file(sheet.unwrap_or_default(), facts)
}

/// What the name of a sheet and the lines outside the tables say.
fn of_file(sheet: &str, facts: &Facts) -> Subject {
    let named = &facts.named;
    let stated = facts
        .quantity
        .or(named.expressed.as_ref().map(|(said, _)| *said));
    let by_sheet = quantity(sheet);
    if by_sheet.is_none() && names_only_other(sheet) {
        return Subject::Other(text::short(sheet));
    }
    let names_gluten = named.gluten || by_sheet == Some(Quantity::Gluten);
    let gliadin = match by_sheet {
        Some(Quantity::Gliadin) => Some(text::short(sheet)),
        _ => named.gliadin.as_deref().map(str::to_owned),
    };
    match (stated, gliadin, &named.beside, &named.other) {
        (Some(Quantity::Gluten), ..) => Subject::Gluten,
        (Some(Quantity::Gliadin), ..) => Subject::Gliadin,
        (None, Some(said), ..) if names_gluten => Subject::Unclear(said),
        (None, Some(_), ..) => Subject::Gliadin,
        (None, None, Some(said), _) if !names_gluten => Subject::Unclear(said.to_string()),
        (None, None, None, Some(said)) if !names_gluten => Subject::Other(said.to_string()),
        _ => Subject::Gluten,
    }
}

/// Whether a row of a registered package says what it is of.
fn rows_say(plan: &Plan, rows: &[Row], codes: &Codes) -> bool {
    let columns: Vec<u32> = [Role::Analyte, Role::Unit]
        .into_iter()
        .filter_map(|role| plan.of(role))
        .collect();
    let is_ours = |row: &Row| {
        row.at(plan.sample)
            .is_some_and(|content| codes.find(&content.shown()).is_some())
    };
    !columns.is_empty()
        && rows.iter().any(|row| {
            let says = |column: &u32| {
                row.at(*column)
                    .is_some_and(|content| units::quantity(&content.shown()).is_some())
            };
            columns.iter().any(says) && is_ours(row)
        })
}

/// Whether a table says of itself that it is of gluten or gliadin: then another table of the file may be of something else.
pub fn names_gluten(located: &Located<'_>) -> bool {
    let table = &located.table;
    let reported = table
        .columns
        .iter()
        .filter(|column| column.role().is_some_and(Role::is_reported));
    let by_heading = reported.into_iter().any(|column| {
        let meaning = column.meaning.as_ref();
        meaning.is_some_and(|meaning| meaning.quantity.is_some())
    });
    let by_row = || {
        let analytes = table
            .columns
            .iter()
            .filter(|column| column.role() == Some(Role::Analyte));
        analytes.into_iter().any(|column| {
            located.sheet.rows[table.rows.clone()].iter().any(|row| {
                row.at(column.column)
                    .is_some_and(|content| units::quantity(&content.shown()).is_some())
            })
        })
    };
    let by_sheet = || located.sheet.name.as_deref().and_then(quantity).is_some();
    by_heading || by_sheet() || by_row()
}

/// The columns of a table whose heading is not known, and which hold nothing but names of what was measured, gluten among them:
/// in such a one the name of a food is that of a substance.
pub fn unheaded(table: &Table, rows: &[Row]) -> Vec<u32> {
    const TRIED: usize = 200;
    let mut seen: BTreeMap<u32, (bool, bool)> = BTreeMap::new();
    let cells = rows.iter().take(TRIED).flat_map(|row| table.cells(row));
    for (column, content) in cells.filter(|(column, _)| is_unknown(table, *column)) {
        let (gluten, others) = seen.entry(column).or_default();
        let shown = content.shown();
        let is_gluten = quantity(&shown).is_some();
        *gluten |= is_gluten;
        *others |= !is_gluten && !names_only_other(&shown);
    }
    let telling = seen
        .into_iter()
        .filter(|(_, (gluten, others))| *gluten && !*others);
    telling.map(|(column, _)| column).collect()
}

fn is_unknown(table: &Table, column: u32) -> bool {
    let known = table.column(column).and_then(|column| column.role());
    known.is_none()
}

/// The cell by which a row is of another substance: in a column of analytes, and, where no heading of results names gluten, in
/// one of methods or one whose heading is not known.
pub fn other_on(table: &Table, plan: &Plan, row: &Row, unheaded: &[u32]) -> Option<(u32, String)> {
    let is_headed = || {
        plan.results.iter().any(|result| {
            table
                .column(result.column)
                .is_some_and(|column| quantity(&column.heading).is_some())
        })
    };
    let names = |column: Option<u32>| {
        let column = column?;
        let shown = row.at(column)?.shown();
        names_other(&shown).then(|| (column, shown.into_owned()))
    };
    names(plan.of(Role::Analyte))
        .or_else(|| names(plan.of(Role::Assay)).filter(|_| !is_headed()))
        .or_else(|| {
            let found = table
                .cells(row)
                .filter(|(column, _)| is_unknown(table, *column) && *column != plan.sample)
                .map(|(column, content)| (column, content.shown()))
                .find(|(column, shown)| tells_other(shown, unheaded.contains(column)));
            let found = found.map(|(column, shown)| (column, shown.into_owned()));
            found.filter(|_| !is_headed())
        })
}

/// Whether a cell under a heading that is not known names another substance: one that is no food, how it is measured, or,
/// where the column is one of analytes, any.
fn tells_other(shown: &str, of_analytes: bool) -> bool {
    const LONGEST: usize = 60;
    if shown.len() > LONGEST || !names_other(shown) {
        return false;
    }
    let title = title(shown);
    let by_elisa = || text::words(shown).split(' ').any(|word| word == "elisa");
    (!title.unknown && (title.analyte || of_analytes)) || by_elisa()
}

/// Gluten or gliadin, where a text names it; "gluten-free" names a claim.
fn quantity(written: &str) -> Option<Quantity> {
    const CLAIMS: [&str; 12] = [
        "gluten free",
        "free of gluten",
        "free from gluten",
        "no gluten",
        "without gluten",
        "glutenfrei",
        "glutenfreie",
        "sin gluten",
        "libre de gluten",
        "sans gluten",
        "senza glutine",
        "low gluten",
    ];
    let mut words = text::words(written);
    for claim in CLAIMS {
        words = words.replace(claim, " ");
    }
    units::quantity(&words)
}

/// Whether a text names an antibody by which nothing but gluten is measured.
fn names_antibody(written: &str) -> bool {
    text::words(written)
        .split(' ')
        .any(|word| matches!(word, "r5" | "g12"))
}

/// Whether a text names another substance and not gluten.
fn names_other(written: &str) -> bool {
    let words = text::words(written);
    let any = [Meaning::OtherAnalyte, Meaning::OtherFood]
        .into_iter()
        .any(|meaning| vocabulary::has_one_that_means(&words, meaning));
    any && quantity(written).is_none() && !names_antibody(written)
}

/// What each word of a short title is.
#[derive(Default)]
struct Title {
    analyte: bool,
    food: bool,
    titling: bool,
    unknown: bool,
}

fn title(written: &str) -> Title {
    let mut title = Title::default();
    let words = text::words(written);
    let words: Vec<&str> = words.split(' ').collect();
    let mut at = 0;
    while at < words.len() {
        let two = words[at..words.len().min(at + 2)].join(" ");
        let length = [(2, two.as_str()), (1, words[at])]
            .into_iter()
            .find(|(length, run)| {
                let is = |meaning| vocabulary::means(run, meaning);
                let analyte = is(Meaning::OtherAnalyte);
                let food = is(Meaning::OtherFood);
                let titling = is(Meaning::Titling);
                title.analyte |= analyte;
                title.food |= food;
                title.titling |= titling;
                let small =
                    *length == 1 && (is(Meaning::Filler) || is(Meaning::Result) || is_small(run));
                analyte || food || titling || small
            });
        match length {
            Some((length, _)) => at += length,
            None => {
                title.unknown = true;
                at += 1;
            }
        }
    }
    title
}

/// A word that changes nothing of what a title names.
fn is_small(word: &str) -> bool {
    const SMALL: [&str; 20] = [
        "food",
        "foods",
        "report",
        "ppm",
        "mg",
        "kg",
        "lebensmitteln",
        "mittels",
        "auf",
        "bericht",
        "durch",
        "dans",
        "par",
        "por",
        "mediante",
        "con",
        "und",
        "et",
        "y",
        "e",
    ];
    SMALL.contains(&word) || word.bytes().all(|b| b.is_ascii_digit())
}

/// A title that names another substance, and nothing else but that it was measured.
fn is_title_of_other(written: &str) -> bool {
    let title = title(written);
    !title.unknown && (title.analyte || (title.food && title.titling))
}

/// A sheet's name that names another substance and nothing else.
fn names_only_other(written: &str) -> bool {
    let title = title(written);
    !written.is_empty() && !title.unknown && (title.analyte || title.food)
}

/// Whether a line that names gliadin is a title, and no note on what a method sees or is calibrated with.
fn is_plain_title(written: &str) -> bool {
    const MOST_WORDS: usize = 6;
    const OTHERWISE: [&str; 12] = [
        "standard",
        "calibr",
        "kalibr",
        "kit",
        "antibod",
        "antikorp",
        "assay",
        "method",
        "reference",
        "material",
        "x",
        "factor",
    ];
    let words = text::words(written);
    let mut listed = words.split(' ');
    listed.clone().count() <= MOST_WORDS
        && !listed.any(|word| {
            OTHERWISE
                .iter()
                .any(|stem| word == *stem || (stem.len() > 3 && word.starts_with(stem)))
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn another_substance_is_known_by_its_name_and_not_by_the_food() {
        for written in [
            "Casein (milk) by ELISA",
            "Casein",
            "Soy ELISA",
            "Bestimmung von Kasein",
            "Análisis de caseína",
            "Allergen: Soja",
        ] {
            assert!(is_title_of_other(written), "{written}");
        }
        for written in [
            "Milk",
            "Soy drink, 1 litre",
            "Certificate of analysis, almond biscuits",
            "Milk Street 7",
            "Gluten by ELISA",
        ] {
            assert!(!is_title_of_other(written), "{written}");
        }
        for written in ["Sandwich ELISA casein", "Soja", "Egg white protein"] {
            assert!(names_other(written), "{written}");
        }
        for written in ["Gluten in soy", "R5 ELISA, milk products", "Sandwich ELISA"] {
            assert!(!names_other(written), "{written}");
        }
        assert!(names_only_other("Soy"));
        assert!(!names_only_other("Sheet1"));
        assert!(!names_only_other("Results"));
    }

    #[test]
    fn a_claim_names_no_gluten() {
        assert_eq!(quantity("Gluten-free oat drink"), None);
        assert_eq!(
            quantity("Gluten in gluten-free food"),
            Some(Quantity::Gluten)
        );
        assert_eq!(quantity("Gliadin by ELISA"), Some(Quantity::Gliadin));
    }
}
