//! Units and quantities: everything becomes ppm gluten.

use crate::gather::tables::factors;
use crate::gather::text;
use aho_corasick::AhoCorasick;
use std::sync::LazyLock;

/// A unit of content, and the quantity that it names where it names one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unit {
    /// How many ppm one of it is.
    pub ppm: Scale,
    /// Gluten or gliadin, where the unit itself says so.
    pub quantity: Option<Quantity>,
}

/// A unit's size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scale {
    /// ppb, µg/kg: a thousandth.
    Thousandth,
    /// ppm, mg/kg, µg/g.
    One,
    /// mg/100 g.
    Ten,
    /// g/kg.
    Thousand,
    /// %.
    TenThousand,
}

impl Scale {
    /// A figure in this unit as ppm. Division by a thousand is exact where multiplication by 0.001 is not.
    pub fn to_ppm(self, figure: f64) -> f64 {
        match self {
            Scale::Thousandth => figure / 1000.0,
            Scale::One => figure,
            Scale::Ten => figure * 10.0,
            Scale::Thousand => figure * 1000.0,
            Scale::TenThousand => figure * 10_000.0,
        }
    }

    /// In words.
    pub fn word(self) -> &'static str {
        match self {
            Scale::Thousandth => "ppb (µg/kg)",
            Scale::One => "ppm (mg/kg)",
            Scale::Ten => "mg/100 g",
            Scale::Thousand => "g/kg",
            Scale::TenThousand => "%",
        }
    }
}

/// What was measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// Gluten itself.
    Gluten,
    /// Gliadin, or prolamin: by the Codex convention half of the gluten.
    Gliadin,
}

/// The spellings of each unit: lower case, no spaces, `u` for µ. Longer ones first where one holds another.
const SPELLINGS: [(&str, Scale); 47] = [
    ("mg/100g", Scale::Ten),
    ("mgper100g", Scale::Ten),
    ("mgpro100g", Scale::Ten),
    ("mg/100gram", Scale::Ten),
    ("mg/100grams", Scale::Ten),
    ("mg100g-1", Scale::Ten),
    ("milligrams/kilogram", Scale::One),
    ("milligramsperkilogram", Scale::One),
    ("milligram/kilogram", Scale::One),
    ("milligramperkilogram", Scale::One),
    ("milligrammprokilogramm", Scale::One),
    ("partspermillion", Scale::One),
    ("partsperbillion", Scale::Thousandth),
    ("mg/kg", Scale::One),
    ("mg/kilo", Scale::One),
    ("mgperkg", Scale::One),
    ("mgprokg", Scale::One),
    ("mgparkg", Scale::One),
    ("mgporkg", Scale::One),
    ("mgkg-1", Scale::One),
    ("mg.kg-1", Scale::One),
    ("mg*kg-1", Scale::One),
    ("mg·kg-1", Scale::One),
    ("mgxkg-1", Scale::One),
    ("ug/g", Scale::One),
    ("mcg/g", Scale::One),
    ("ugperg", Scale::One),
    ("ugg-1", Scale::One),
    ("ug.g-1", Scale::One),
    ("ug·g-1", Scale::One),
    ("ppm", Scale::One),
    ("ug/kg", Scale::Thousandth),
    ("mcg/kg", Scale::Thousandth),
    ("ugperkg", Scale::Thousandth),
    ("ugkg-1", Scale::Thousandth),
    ("ug.kg-1", Scale::Thousandth),
    ("ug·kg-1", Scale::Thousandth),
    ("ng/g", Scale::Thousandth),
    ("ngg-1", Scale::Thousandth),
    ("ppb", Scale::Thousandth),
    ("g/kg", Scale::Thousand),
    ("gperkg", Scale::Thousand),
    ("gkg-1", Scale::Thousand),
    ("percent", Scale::TenThousand),
    ("prozent", Scale::TenThousand),
    ("g/100g", Scale::TenThousand),
    ("%", Scale::TenThousand),
];

/// Words that may stand beside a unit without changing it.
const BESIDE: [&str; 20] = [
    "w/w",
    "m/m",
    "food",
    "foodstuff",
    "sample",
    "product",
    "lebensmittel",
    "aliment",
    "alimento",
    "probe",
    "as",
    "is",
    "received",
    "sold",
    "of",
    "in",
    "von",
    "de",
    "di",
    "en",
];

/// Reads a whole text as a unit: `mg/kg`, `µg / g gliadin`, `ppm (mg/kg)`, `mg kg⁻¹`.
pub fn read(written: &str) -> Option<Unit> {
    let folded = fold(written);
    let quantity = quantity(&folded);
    let bare = strip_quantity(&folded);
    let mut scale = None;
    for part in bare
        .split(['(', ')', '[', ']', '=', ';', ',', ':'])
        .map(str::trim)
    {
        if part.is_empty() || BESIDE.contains(&part) {
            continue;
        }
        let found = scale_of(part)?;
        if scale.is_some_and(|known| known != found) {
            return None;
        }
        scale = Some(found);
    }
    Some(Unit {
        ppm: scale?,
        quantity,
    })
}

fn scale_of(part: &str) -> Option<Scale> {
    let joined: String = part
        .split(' ')
        .filter(|word| !BESIDE.contains(word))
        .collect();
    SPELLINGS
        .iter()
        .find(|(spelling, _)| *spelling == joined)
        .map(|(_, scale)| *scale)
}

/// Lower case, plain characters, `u` for µ, `-1` for ⁻¹, no spaces around a slash.
pub fn fold(written: &str) -> String {
    let folded = text::plain(written)
        .to_lowercase()
        .replace('µ', "u")
        .replace("⁻¹", "-1")
        .replace("^-1", "-1")
        .replace("100 g", "100g");
    one_spaced(&folded)
}

/// A heading that is one name, its words joined by dots or underscores, as words: `gluten_mg_kg` as `gluten mg/kg`.
fn unjoined(folded: &str) -> String {
    let is_joined = |c: char| matches!(c, '_' | '.');
    let is_name = folded.contains(is_joined)
        && folded.contains(char::is_alphabetic)
        && !folded.contains([' ', '/', '(', '[', '{']);
    if !is_name || read(folded).is_some() {
        return folded.to_owned();
    }
    const MASSES: [&str; 5] = ["mg", "ug", "mcg", "ng", "g"];
    const PER: [&str; 6] = ["kg", "g", "kg-1", "g-1", "l", "ml"];
    let mut out = String::new();
    let mut last = "";
    for word in folded.split(is_joined).filter(|word| !word.is_empty()) {
        let is_unit = MASSES.contains(&last) && PER.contains(&word);
        if !out.is_empty() {
            out.push(if is_unit { '/' } else { ' ' });
        }
        out.push_str(if is_unit {
            word.trim_end_matches("-1")
        } else {
            word
        });
        last = word;
    }
    out
}

/// One space between words, none around a slash.
fn one_spaced(text: &str) -> String {
    let words: Vec<&str> = text.split_whitespace().collect();
    words.join(" ").replace(" /", "/").replace("/ ", "/")
}

/// Gluten where a text says gluten or twice the gliadin, gliadin where it says gliadin and not gluten.
pub fn quantity(written: &str) -> Option<Quantity> {
    if written.contains('2') && factors::is_twice_gliadin(written) {
        return Some(Quantity::Gluten);
    }
    let words = text::words(written);
    let says = |stems: &[&str]| {
        words
            .split(' ')
            .any(|word| stems.iter().any(|stem| word.starts_with(stem)))
    };
    if says(&["gluten", "glutine"]) {
        Some(Quantity::Gluten)
    } else if says(&["gliadin", "prolamin"]) {
        Some(Quantity::Gliadin)
    } else {
        None
    }
}

fn strip_quantity(folded: &str) -> String {
    const WORDS: [&str; 9] = [
        "gluten",
        "glutine",
        "gliadine",
        "gliadina",
        "gliadin",
        "prolamine",
        "prolamina",
        "prolamins",
        "prolamin",
    ];
    let mut out = folded.to_owned();
    for word in WORDS {
        out = out.replace(word, " ");
    }
    one_spaced(&out)
}

/// A heading or a sentence taken apart: the unit in it, and the words without it.
#[derive(Clone, Debug, PartialEq)]
pub struct Parted {
    /// The words without the unit.
    pub rest: String,
    /// The unit.
    pub unit: Option<Unit>,
    /// Something that stands where a unit would and is none that can be converted: `mg/L`.
    pub foreign: Option<String>,
}

/// Finds the unit in a heading or a sentence: `Gluten (mg/kg)`, `Result in ppm`, `Extraction 1, µg/g gliadin`.
pub fn part(written: &str) -> Parted {
    let folded = unjoined(&fold(written));
    let quantity = quantity(&folded);
    let mut rest = folded.clone();
    let mut scale: Option<Scale> = None;
    let mut foreign = None;
    // Anything in brackets that is a unit as a whole, or looks like one.
    for (open, close) in [('(', ')'), ('[', ']'), ('{', '}')] {
        while let Some((start, end)) = bracket(&rest, open, close) {
            let inner = rest[start + 1..end].to_owned();
            let taken = if let Some(unit) = read(&inner) {
                scale = scale.or(Some(unit.ppm));
                String::new()
            } else if looks_like_unit(&inner) && scale.is_none() {
                foreign = Some(inner.trim().to_owned());
                String::new()
            } else {
                inner
            };
            rest.replace_range(start..end + close.len_utf8(), &format!(" {taken} "));
        }
    }
    while let Some((start, end, found)) = spelled(&rest) {
        scale = scale.or(Some(found));
        rest.replace_range(start..end, " ");
    }
    if scale.is_none() && foreign.is_none() {
        foreign = rest
            .split([' ', ',', ';', ':'])
            .find(|word| looks_like_unit(word))
            .map(str::to_owned);
        if let Some(foreign) = &foreign {
            rest = rest.replacen(foreign.as_str(), " ", 1);
        }
    }
    Parted {
        rest,
        unit: scale.map(|ppm| Unit { ppm, quantity }),
        foreign: foreign.filter(|_| scale.is_none()),
    }
}

fn bracket(text: &str, open: char, close: char) -> Option<(usize, usize)> {
    let start = text.find(open)?;
    let end = start + text[start..].find(close)?;
    Some((start, end))
}

/// The spellings that stand in running text, joined and spaced, in one automaton; and the scale of each.
static IN_TEXT: LazyLock<(AhoCorasick, Vec<Scale>)> = LazyLock::new(|| {
    let in_text = SPELLINGS.iter().filter(|(spelling, _)| *spelling != "%");
    let (variants, scales): (Vec<String>, Vec<Scale>) = in_text
        .flat_map(|(spelling, scale)| {
            [((*spelling).to_owned(), *scale), (spaced(spelling), *scale)]
        })
        .unzip();
    let automaton = AhoCorasick::new(variants).expect("some short words make a small automaton");
    (automaton, scales)
});

/// Whether [`part`] could find a unit in this text. A quick look, since nearly every cell of a file is asked whether it is
/// a heading: "no" is certain, "yes" is not.
pub fn may_hold_one(written: &str) -> bool {
    const TELLING: [char; 9] = ['%', '/', '^', '(', '[', '{', '\n', '\t', '_'];
    !written.is_ascii()
        || written.contains(TELLING)
        || written.contains("  ")
        || (written.contains('.') && !written.contains(' '))
        || written
            .split([' ', ',', ';', ':'])
            .any(|word| BARE.iter().any(|unit| word.eq_ignore_ascii_case(unit)))
        || IN_TEXT.0.is_match(&written.to_ascii_lowercase())
}

/// Units that are one word and cannot be converted.
const BARE: [&str; 5] = ["od", "iu", "au", "nm", "mau"];

/// The longest unit that stands in a text as words of their own.
fn spelled(text: &str) -> Option<(usize, usize, Scale)> {
    let boundary = |c: Option<char>| {
        c.is_none_or(|c| !(c.is_alphanumeric() || matches!(c, '/' | '-' | '%' | '_')))
    };
    let (automaton, scales) = &*IN_TEXT;
    let mut best: Option<(usize, usize, Scale)> = None;
    for found in automaton.find_overlapping_iter(text) {
        let (start, end) = (found.start(), found.end());
        let alone =
            boundary(text[..start].chars().next_back()) && boundary(text[end..].chars().next());
        let longer = best.is_none_or(|(from, to, _)| to - from < end - start);
        if alone && longer {
            best = Some((start, end, scales[found.pattern()]));
        }
    }
    best
}

/// `mgkg-1` as `mg kg-1`.
fn spaced(spelling: &str) -> String {
    for unit in ["mg", "ug", "ng"] {
        if let Some(rest) = spelling.strip_prefix(unit)
            && rest.starts_with(|c: char| c.is_alphanumeric())
        {
            return format!(
                "{unit} {}",
                rest.replacen("per", "per ", 1)
                    .replacen("pro", "pro ", 1)
                    .replacen("par", "par ", 1)
                    .replacen("por", "por ", 1)
            );
        }
    }
    spelling.replacen("partsper", "parts per ", 1)
}

/// Whether a text looks like a unit, known or not: `mg/l`, `ng/ml`, `mg/serving`, `mg/kg dm`.
pub fn looks_like_unit(text: &str) -> bool {
    let text = fold(text);
    if BARE.contains(&text.as_str()) || ["iu/g", "ng/ml"].contains(&text.as_str()) {
        return true;
    }
    let Some((mass, per)) = text.split_once('/') else {
        return false;
    };
    const MASSES: [&str; 10] = ["mg", "g", "ug", "ng", "mcg", "kg", "pg", "nmol", "oz", "ml"];
    MASSES.contains(&mass.trim()) && per.starts_with(|c: char| c.is_alphanumeric())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_are_known_by_their_spellings() {
        for (written, scale) in [
            ("ppm", Scale::One),
            ("mg/kg", Scale::One),
            ("µg/g", Scale::One),
            ("μg / g", Scale::One),
            ("mg kg⁻¹", Scale::One),
            ("ppm (mg/kg)", Scale::One),
            ("mg gluten/kg", Scale::One),
            ("MG/KG", Scale::One),
            ("ppb", Scale::Thousandth),
            ("µg/kg", Scale::Thousandth),
            ("g/kg", Scale::Thousand),
            ("%", Scale::TenThousand),
            ("mg/100 g", Scale::Ten),
            ("mg pro kg", Scale::One),
            ("parts per million", Scale::One),
        ] {
            assert_eq!(read(written).map(|unit| unit.ppm), Some(scale), "{written}");
        }
        for written in ["mg/L", "ng/mL", "mg/kg dw", "", "ppm ppb", "OD", "apples"] {
            assert_eq!(read(written), None, "{written}");
        }
    }

    #[test]
    fn a_unit_may_name_the_quantity() {
        let named = |written| read(written).and_then(|unit| unit.quantity);
        assert_eq!(named("mg gliadin/kg"), Some(Quantity::Gliadin));
        assert_eq!(named("ppm gluten"), Some(Quantity::Gluten));
        assert_eq!(named("ppm"), None);
        assert_eq!(quantity("gluten (2 x gliadin)"), Some(Quantity::Gluten));
        assert_eq!(quantity("Gliadin x 2 (mg/kg)"), Some(Quantity::Gluten));
        assert_eq!(quantity("2 × Gliadin"), Some(Quantity::Gluten));
        assert_eq!(quantity("Gliadin (x 2)"), Some(Quantity::Gliadin));
    }

    #[test]
    fn a_heading_is_parted_from_its_unit() {
        let parted = |written| {
            let parted = part(written);
            (
                text::words(&parted.rest),
                parted.unit.map(|unit| unit.ppm),
                parted.foreign,
            )
        };
        assert_eq!(
            parted("Gluten (mg/kg)"),
            ("gluten".into(), Some(Scale::One), None)
        );
        assert_eq!(
            parted("Result in ppm"),
            ("result in".into(), Some(Scale::One), None)
        );
        assert_eq!(
            parted("Ext. 1 [µg/g gliadin]"),
            ("ext 1".into(), Some(Scale::One), None)
        );
        assert_eq!(
            parted("Gluten mg / kg, prep 2"),
            ("gluten prep 2".into(), Some(Scale::One), None)
        );
        assert_eq!(
            parted("Gluten (mg/L)"),
            ("gluten".into(), None, Some("mg/l".into()))
        );
        assert_eq!(parted("Result (R5)"), ("result r5".into(), None, None));
        assert_eq!(
            parted("Gluten mg kg-1"),
            ("gluten".into(), Some(Scale::One), None)
        );
    }
}
