//! One cell -> what the lab said: a number, below, above, or that there is no result. Never a guess.

use crate::gather::books::Content;
use crate::gather::numbers::{self, Figure, Marks, NoFigure};
use crate::gather::readings::stored;
use crate::gather::readings::tails::{split_figure, strip_footnotes, without_uncertainty};
use crate::gather::tables::units::{self, Unit};
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;

/// What a cell says.
#[derive(Clone, Debug, PartialEq)]
pub struct Value {
    /// The statement.
    pub said: Said,
    /// The unit that stands in the cell itself.
    pub unit: Option<Unit>,
    /// Whether a footnote mark stands after it.
    pub footnote: bool,
    /// The uncertainty that stands behind the figure, as written.
    pub uncertainty: Option<String>,
    /// The text to show for it.
    pub reported: String,
    /// What the number format of a figure shows in its place, where it shows none.
    pub hidden_by: Option<String>,
}

/// A lab's statement, in the unit of its cell.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Said {
    /// A number.
    Number(Figure),
    /// Below this; below the LLOQ in force where no figure stands there.
    Below(Option<f64>),
    /// Not detected; the LOD that stands with it.
    NotDetected(Option<f64>),
    /// Above this; above the ULOQ in force where no figure stands there.
    Above(Option<f64>),
    /// There is no result.
    NotReported,
}

/// Why a cell says nothing that can be used.
#[derive(Clone, Debug, PartialEq)]
pub enum Fault {
    /// It is none of the known forms.
    NoResult,
    /// `1,234`, and nothing in the file tells what the comma is.
    UnclearComma,
    /// Less than nothing.
    Negative,
    /// More gluten than there is sample.
    MoreThanAll,
    /// `1.2E+01`.
    Scientific,
    /// A day or a time.
    Date,
    /// A spreadsheet's error, `#N/A`.
    CellError,
    /// A formula that was never calculated.
    Uncalculated,
    /// A unit that cannot be converted.
    Unit(String),
    /// A sign before the figure, by the number format, that the figure itself contradicts: `<10` over 12.
    Sign,
}

/// Whether a cell can be a result: a figure, or a word for one. "Not reported" is none.
pub fn is_figure(content: &Content) -> bool {
    read(content, Marks::Point).is_ok_and(|value| value.said != Said::NotReported)
}

/// Reads a cell.
pub fn read(content: &Content, marks: Marks) -> Result<Value, Fault> {
    match content {
        Content::Text(written) => read_text(written, marks),
        Content::Number { value, shown } => stored::read(*value, shown),
        Content::Date { .. } => Err(Fault::Date),
        Content::Fault(_) => Err(Fault::CellError),
        Content::Uncalculated => Err(Fault::Uncalculated),
    }
}

/// Reads text.
pub fn read_text(written: &str, marks: Marks) -> Result<Value, Fault> {
    let plain = text::plain(written);
    let value = |said, unit, footnote| Value {
        said,
        unit,
        footnote,
        uncertainty: None,
        reported: written.trim().to_owned(),
        hidden_by: None,
    };
    if plain.chars().all(|c| c == '-' || c == ' ') {
        return Ok(value(Said::NotReported, None, false));
    }
    if plain.starts_with('#') && plain.ends_with(['!', '?']) || plain.eq_ignore_ascii_case("#n/a") {
        return Err(Fault::CellError);
    }
    let (plain, uncertainty, unit_behind) = without_uncertainty(&plain);
    if let Some(value) = undetected_with_limit(plain, marks) {
        return Ok(Value {
            reported: written.trim().to_owned(),
            ..value
        });
    }
    let starts_with_figure = plain.starts_with(|c: char| c.is_ascii_digit());
    if !starts_with_figure && let Some(said) = in_words(&text::words(plain)) {
        return Ok(value(said, None, false));
    }
    let (lead, rest) = plain.split_at(
        plain
            .find(|c: char| c.is_ascii_digit())
            .unwrap_or(plain.len()),
    );
    // A decimal mark may lead: ".5".
    let point = lead.ends_with(['.', ','])
        && !lead
            .trim_end_matches(['.', ','])
            .ends_with(char::is_alphanumeric);
    let (lead, rest) = if point {
        plain.split_at(lead.len() - 1)
    } else {
        (lead, rest)
    };
    let qualifier = qualifier(lead)?;
    let (figure, tail) = split_figure(rest);
    // "12." is twelve.
    let figure = match figure.strip_suffix('.') {
        Some(whole) if whole.bytes().all(|b| b.is_ascii_digit()) => whole,
        _ => figure,
    };
    let (tail, footnote) = strip_footnotes(tail);
    let unit = match tail.trim() {
        "" => None,
        tail => Some(tail_unit(tail)?),
    };
    let unit = match unit_behind {
        Some(behind) if unit.is_none() => Some(tail_unit(behind)?),
        _ => unit,
    };
    let figure = numbers::read(figure, marks).map_err(|none| match none {
        NoFigure::UnclearComma => Fault::UnclearComma,
        NoFigure::NotANumber => Fault::NoResult,
    })?;
    let said = match qualifier {
        Qualifier::None => Said::Number(figure),
        Qualifier::Negative => Said::Number(Figure {
            value: -figure.value,
            ..figure
        }),
        Qualifier::Below if figure.value > 0.0 => Said::Below(Some(figure.value)),
        Qualifier::Below => return Err(Fault::NoResult),
        Qualifier::Above => Said::Above(Some(figure.value)),
    };
    Ok(Value {
        uncertainty,
        ..value(said, unit, footnote)
    })
}

/// `ND (LOD 3)`, `n.d. (<LOD 3 mg/kg)`: not detected, with the limit of detection.
fn undetected_with_limit(plain: &str, marks: Marks) -> Option<Value> {
    let (words, limit) = plain.strip_suffix(')')?.split_once('(')?;
    let said = in_words(&text::words(words))?;
    let at = limit.find(|c: char| c.is_ascii_digit())?;
    let lead = text::words(limit[..at].trim_matches([' ', '=', ':', '<']));
    let names_lod =
        vocabulary::means(&lead, Meaning::Lod) || vocabulary::means(&lead, Meaning::Undetected);
    if !names_lod || !matches!(said, Said::NotDetected(_)) {
        return None;
    }
    let (figure, tail) = split_figure(&limit[at..]);
    let figure = numbers::read(figure, marks).ok()?;
    let unit = match tail.trim() {
        "" => None,
        tail => Some(units::read(tail)?),
    };
    Some(Value {
        said: Said::NotDetected(Some(figure.value)),
        unit,
        footnote: false,
        uncertainty: None,
        reported: String::new(),
        hidden_by: None,
    })
}

/// The part of a text that is a figure, where the text is a figure with at most a sign before it and a unit behind.
/// From these a file's decimal mark is told.
pub fn figure_in(written: &str) -> Option<String> {
    let plain = text::plain(written);
    let bare = plain.trim_start_matches(['<', '>', ' ']);
    if !bare.starts_with(|c: char| c.is_ascii_digit()) {
        return None;
    }
    let (figure, tail) = split_figure(bare);
    let (tail, _) = strip_footnotes(tail);
    let tail = tail.trim();
    // A day such as 2031-03-07 starts with a figure too, and goes on with no unit.
    if tail.starts_with(|c: char| !(c.is_alphabetic() || c == '%')) {
        return None;
    }
    (tail.is_empty() || units::read(tail).is_some()).then(|| figure.to_owned())
}

enum Qualifier {
    None,
    Negative,
    Below,
    Above,
}

/// What words say as a whole, where they are words for a result.
pub fn in_words(words: &str) -> Option<Said> {
    match vocabulary::first(
        words,
        &[
            Meaning::Undetected,
            Meaning::Below,
            Meaning::Above,
            Meaning::Unreported,
        ],
    )? {
        Meaning::Undetected => Some(Said::NotDetected(None)),
        Meaning::Below => Some(Said::Below(None)),
        Meaning::Above => Some(Said::Above(None)),
        _ => Some(Said::NotReported),
    }
}

/// What stands before the figure: nothing, a sign, or words that mean one (`ND (<5)`, `less than 5`).
fn qualifier(lead: &str) -> Result<Qualifier, Fault> {
    let lead = lead.trim().trim_end_matches('(').trim();
    match lead {
        "" => return Ok(Qualifier::None),
        "<" => return Ok(Qualifier::Below),
        ">" => return Ok(Qualifier::Above),
        "+" => return Ok(Qualifier::None),
        "-" => return Ok(Qualifier::Negative),
        _ => {}
    }
    let (words, sign) = match lead.char_indices().next_back() {
        Some((at, sign @ ('<' | '>'))) => (lead[..at].trim().trim_end_matches('('), Some(sign)),
        _ => (lead, None),
    };
    let words = text::words(words);
    let meaning = vocabulary::first(
        &words,
        &[
            Meaning::Below,
            Meaning::Undetected,
            Meaning::Above,
            Meaning::Less,
            Meaning::More,
        ],
    );
    match (meaning, sign) {
        (Some(Meaning::Below | Meaning::Undetected), None | Some('<'))
        | (Some(Meaning::Less), None) => Ok(Qualifier::Below),
        (Some(Meaning::Above), None | Some('>')) | (Some(Meaning::More), None) => {
            Ok(Qualifier::Above)
        }
        _ => Err(Fault::NoResult),
    }
}

fn tail_unit(tail: &str) -> Result<Unit, Fault> {
    if let Some(unit) = units::read(tail) {
        return Ok(unit);
    }
    let exponent = tail
        .strip_prefix(['e', 'E'])
        .map(|rest| rest.trim_start_matches(['+', '-']));
    if exponent
        .is_some_and(|digits| !digits.is_empty() && digits.bytes().all(|b| b.is_ascii_digit()))
    {
        return Err(Fault::Scientific);
    }
    if units::looks_like_unit(tail) {
        return Err(Fault::Unit(tail.to_owned()));
    }
    Err(Fault::NoResult)
}

/// A stored figure with the 15 digits that a spreadsheet keeps: 0.1 + 0.2 is 0.3 there.
pub fn fifteen_digits(stored: f64) -> f64 {
    // Most figures have few decimals and are what they should be.
    const SHORT: f64 = 1e6;
    if stored.abs() < SHORT && (stored * SHORT).round() / SHORT == stored {
        return stored;
    }
    format!("{stored:.14e}").parse().unwrap_or(stored)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(written: &str) -> Result<Said, Fault> {
        read_text(written, Marks::Unsettled).map(|value| value.said)
    }

    fn number(written: &str) -> Option<f64> {
        match said(written) {
            Ok(Said::Number(figure)) => Some(figure.value),
            _ => None,
        }
    }

    #[test]
    fn numbers_with_and_without_units_and_marks() {
        for written in [
            "12.4",
            "12,4",
            " 12.4 ppm",
            "12.4mg/kg",
            "12.4*",
            "12.4 †",
            "12.4²",
            "12.4 (a)",
            "12.4 ppm*",
            "１２.４",
        ] {
            assert_eq!(number(written), Some(12.4), "{written}");
        }
        for (written, uncertainty) in [
            ("12.4 ± 3.7", Some("± 3.7")),
            ("12,4 ± 30 %", Some("± 30 %")),
            ("12.4 (U 3.7)", Some("± 3.7")),
            ("12.4 mg/kg (± 3.7)", Some("± 3.7")),
            ("12.4 +/- 3.7 mg/kg", Some("± 3.7 mg/kg")),
            ("+12.4", None),
        ] {
            let value = read_text(written, Marks::Unsettled).expect("reads");
            assert_eq!(number(written), Some(12.4), "{written}");
            assert_eq!(value.uncertainty.as_deref(), uncertainty, "{written}");
        }
        assert_eq!(number("12."), Some(12.0));
        assert_eq!(number("1 234,5 mg/kg"), Some(1234.5));
        assert!(read_text("12.4*", Marks::Unsettled).is_ok_and(|value| value.footnote));
        assert!(read_text("12.4", Marks::Unsettled).is_ok_and(|value| !value.footnote));
    }

    #[test]
    fn below_and_above_in_figures_and_words() {
        for written in [
            "<5",
            "< 5.0",
            "<5 mg/kg",
            "＜5",
            "ND (<5)",
            "<LOQ (5)",
            "less than 5 ppm",
            "< 5,0*",
        ] {
            assert_eq!(said(written), Ok(Said::Below(Some(5.0))), "{written}");
        }
        for written in ["BLQ", "<LOQ", "< LLOQ", "below LOQ", "< BG", "n.q."] {
            assert_eq!(said(written), Ok(Said::Below(None)), "{written}");
        }
        for written in ["ND", "n.d.", "not detected", "n.n.", "non rilevato", "<LOD"] {
            assert_eq!(said(written), Ok(Said::NotDetected(None)), "{written}");
        }
        for written in [
            "ND (LOD 3)",
            "n.d. (< LOD 3 mg/kg)",
            "nicht nachweisbar (NWG: 3)",
        ] {
            assert_eq!(said(written), Ok(Said::NotDetected(Some(3.0))), "{written}");
        }
        for written in [
            ">LOQ",
            "> LOQ",
            "above LOQ",
            "über Bestimmungsgrenze",
            ">LOQ (5)",
        ] {
            assert_eq!(said(written), Err(Fault::NoResult), "{written}");
        }
        assert_eq!(said("> 80.0 ppm"), Ok(Said::Above(Some(80.0))));
        assert_eq!(said("above range"), Ok(Said::Above(None)));
    }

    #[test]
    fn no_result_is_told_from_a_result_that_cannot_be_read() {
        for written in [
            "",
            "-",
            "–",
            "—",
            "n/a",
            "N.A.",
            "insufficient sample",
            "Cancelled",
            "nicht bestimmt",
        ] {
            assert_eq!(said(written), Ok(Said::NotReported), "{written}");
        }
        for written in [
            "see note",
            "≤5",
            "5-10",
            "~12",
            "1e3 ppm",
            "<<5",
            "<0",
            "12.4 apples",
            "?",
            "twelve",
            "positive",
            "12.4 b",
        ] {
            assert_eq!(said(written), Err(Fault::NoResult), "{written}");
        }
        assert_eq!(number("-3.2"), Some(-3.2));
        assert_eq!(number("\u{2212}3.2"), Some(-3.2));
        assert_eq!(said("1.24E+01"), Err(Fault::Scientific));
        assert_eq!(said("1,234"), Err(Fault::UnclearComma));
        assert_eq!(said("12.4 mg/L"), Err(Fault::Unit("mg/L".into())));
        assert_eq!(said("#N/A"), Err(Fault::CellError));
    }
}
