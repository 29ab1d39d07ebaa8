//! Figures on a plate as labs write them: absorbances, concentrations with a unit, dilutions, numbers of extractions.

use crate::gather::books::Content;
use crate::gather::numbers::{self, Marks, NoFigure};
use crate::gather::text;
use crate::model::plate::StandardUnit;

/// The largest absorbance that a reader gives; more is none.
const HIGHEST: f64 = 10.0;

/// The lowest: a blank was taken off.
const LOWEST: f64 = -1.0;

/// The largest dilution, and the largest number of an extraction.
const MOST_DILUTED: f64 = 1e6;
const MOST_EXTRACTIONS: u32 = 99;

/// What the decimal mark of absorbances is, as far as one of them settles it.
pub fn marks<'a>(cells: impl Iterator<Item = &'a Content>) -> Marks {
    cells.fold(Marks::Unsettled, |marks, cell| match cell {
        Content::Text(text) => {
            marks.and(numbers::marks(text.trim_start_matches(['-', '\u{2212}'])))
        }
        _ => marks,
    })
}

/// An absorbance, or the text that is none. A comma with three digits behind it is a decimal one: no reader gives a thousand.
pub fn absorbance(cell: &Content, marks: Marks) -> Result<f64, String> {
    let written = cell.shown();
    let figure = match cell {
        Content::Number { value, .. } => Some(*value),
        Content::Text(text) => signed(text, marks),
        Content::Date { .. } | Content::Fault(_) | Content::Uncalculated => None,
    };
    figure
        .filter(|figure| (LOWEST..=HIGHEST).contains(figure))
        .ok_or_else(|| written.into_owned())
}

fn signed(written: &str, marks: Marks) -> Option<f64> {
    let plain = text::plain(written);
    let (sign, rest) = match plain.strip_prefix('-') {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, plain.strip_prefix('+').unwrap_or(&plain)),
    };
    figure(rest, marks).map(|figure| sign * figure)
}

/// A figure whose comma, where nothing else settles it, is a decimal one.
fn figure(written: &str, marks: Marks) -> Option<f64> {
    match numbers::read(written, marks) {
        Ok(figure) => Some(figure.value),
        Err(NoFigure::UnclearComma) => numbers::read(written, Marks::Comma)
            .ok()
            .map(|figure| figure.value),
        Err(NoFigure::NotANumber) => None,
    }
}

/// What a concentration is in, where it is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// ppm or mg/kg: of the food.
    Ppm,
    /// ng/mL or µg/L: of the extract.
    NgMl,
    /// Nothing is said.
    Nothing,
}

impl Said {
    /// What is said here, else what is said there.
    pub fn or(self, there: Option<Said>) -> Said {
        match self {
            Said::Nothing => there.unwrap_or(Said::Nothing),
            said => said,
        }
    }

    /// Whether it goes with the settings.
    pub fn goes_with(self, unit: StandardUnit) -> bool {
        match self {
            Said::Nothing => true,
            Said::Ppm => unit == StandardUnit::PpmGluten,
            Said::NgMl => unit != StandardUnit::PpmGluten,
        }
    }
}

/// The unit that words name: `gluten ppm`, `conc ng ml`.
pub fn unit(words: &str) -> Said {
    let padded = format!(" {words} ");
    let says = |unit: &str| padded.contains(&format!(" {unit} "));
    if says("ng ml") || says("ug l") {
        Said::NgMl
    } else if says("ppm") || says("mg kg") || says("ug g") {
        Said::Ppm
    } else {
        Said::Nothing
    }
}

/// A figure from zero on with what stands behind it: `20`, `20 ppm`, `2,5 ng/mL`.
pub fn amount(cell: &Content) -> Option<(f64, Said)> {
    if let Content::Number { value, .. } = cell {
        let is_one = (0.0..=1e6).contains(value);
        return is_one.then_some((*value, Said::Nothing));
    }
    let shown = cell.shown();
    let plain = text::plain(&shown);
    let end = plain
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',')))
        .unwrap_or(plain.len());
    let value = figure(&plain[..end], Marks::Unsettled)?;
    let behind = text::words(&plain[end..]);
    let said = unit(&behind);
    let is_known = behind.is_empty() || said != Said::Nothing;
    (is_known && value <= 1e6).then_some((value, said))
}

/// From one figure to another: `16-24`, `16 – 24 ppm`, `16 to 24`, `16 bis 24`, `16 a 24`.
pub fn range(written: &str) -> Option<(f64, f64)> {
    let plain = text::plain(written);
    let folded = [" to ", " bis ", " a "]
        .iter()
        .fold(plain.into_owned(), |text, word| text.replace(word, "-"));
    let (low, high) = folded.split_once('-')?;
    let high = high.trim().trim_end_matches(|c: char| !c.is_ascii_digit());
    let [low, high] = [low.trim(), high].map(|one| figure(one, Marks::Unsettled));
    let (low, high) = (low?, high?);
    (low < high && high <= 1e6).then_some((low, high))
}

/// How much thinner: `1:10`, `1/10`, `10`, `x10`, `10x`.
pub fn dilution(written: &str) -> Option<f64> {
    let plain = text::plain(written).to_lowercase().replace('×', "x");
    let compact: String = plain.chars().filter(|c| *c != ' ').collect();
    let part = compact
        .strip_prefix("1:")
        .or_else(|| compact.strip_prefix("1/"))
        .or_else(|| compact.strip_prefix('x'))
        .or_else(|| compact.strip_suffix('x'))
        .unwrap_or(&compact);
    let value = figure(part, Marks::Unsettled)?;
    (value > 0.0 && value <= MOST_DILUTED).then_some(value)
}

/// The number of an extraction: `1`, `E2`, `Extract 1`.
pub fn extraction(written: &str) -> Option<u32> {
    let plain = text::words(written);
    let at = plain.find(|c: char| c.is_ascii_digit())?;
    let (word, number) = plain.split_at(at);
    let word = word.trim_end();
    let known = word.is_empty() || EXTRACTION.contains(&word);
    let number: u32 = number.parse().ok()?;
    (known && (1..=MOST_EXTRACTIONS).contains(&number)).then_some(number)
}

/// What stands before the number of an extraction.
pub const EXTRACTION: &[&str] = &[
    "e",
    "ex",
    "ext",
    "extr",
    "extract",
    "extraction",
    "extrakt",
    "extraktion",
    "aufarbeitung",
    "prep",
    "preparation",
    "extracto",
    "extraccion",
];

#[cfg(test)]
mod tests {
    use super::*;

    fn text(written: &str) -> Content {
        Content::Text(written.into())
    }

    #[test]
    fn absorbances_are_read_with_either_mark_and_no_others() {
        for (written, expected) in [
            ("0.061", Some(0.061)),
            ("1,234", Some(1.234)),
            ("-0.004", Some(-0.004)),
            ("+0,5", Some(0.5)),
            ("OVRFLW", None),
            (">4.0", None),
            ("12.5", None),
            ("", None),
        ] {
            let found = absorbance(&text(written), Marks::Unsettled);
            assert_eq!(found.ok(), expected, "{written}");
        }
        let fault = Content::Fault("#N/A".into());
        assert_eq!(absorbance(&fault, Marks::Point), Err("#N/A".to_owned()));
    }

    #[test]
    fn amounts_ranges_dilutions_and_extractions() {
        assert_eq!(amount(&text("20 ppm")), Some((20.0, Said::Ppm)));
        assert_eq!(amount(&text("2,5 ng/mL")), Some((2.5, Said::NgMl)));
        assert_eq!(amount(&text("20 apples")), None);
        assert_eq!(amount(&text("-5")), None);
        assert_eq!(range("16 – 24 ppm"), Some((16.0, 24.0)));
        assert_eq!(range("24-16"), None);
        assert_eq!(range("16"), None);
        for written in ["1:10", "10", "x10", "×10", "10x", "1 : 10", "1/10"] {
            assert_eq!(dilution(written), Some(10.0), "{written}");
        }
        for written in ["", "0", "1:0", "none", "-2"] {
            assert_eq!(dilution(written), None, "{written}");
        }
        assert_eq!(extraction("Extract 2"), Some(2));
        assert_eq!(extraction("E1"), Some(1));
        assert_eq!(extraction("3"), Some(3));
        assert_eq!(extraction("well 3"), None);
        assert_eq!(extraction("0"), None);
    }
}
