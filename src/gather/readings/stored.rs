//! A cell that stores a number -> what the lab said: the figure counts as it is stored, and means what its number format shows
//! around it.

use crate::gather::numbers::Figure;
use crate::gather::readings::values::{self, Fault, Said, Value};
use crate::gather::tables::units::{self, Scale, Unit};
use crate::gather::text;

/// A number cell: the stored figure counts, and the signs and units that its number format shows around it.
pub fn read(stored: f64, shown: &str) -> Result<Value, Fault> {
    if !stored.is_finite() {
        return Err(Fault::NoResult);
    }
    let plain = text::plain(shown);
    let first = plain
        .find(|c: char| c.is_ascii_digit())
        .unwrap_or(plain.len());
    let last = plain
        .rfind(|c: char| c.is_ascii_digit())
        .map_or(plain.len(), |at| at + 1);
    let (lead, tail) = (
        &plain[..first],
        plain
            .get(last..)
            .unwrap_or_default()
            .trim_matches([' ', ')']),
    );
    let unit = units::read(tail);
    let percent = tail.starts_with('%');
    let exact = values::fifteen_digits(if percent { stored * 100.0 } else { stored });
    if unit.is_none() && units::looks_like_unit(tail) {
        return Err(Fault::Unit(tail.to_owned()));
    }
    let inner: String = plain.get(first..last).unwrap_or_default().replace(',', "");
    let inner = if exact < 0.0 {
        format!("-{inner}")
    } else {
        inner
    };
    let drawn = inner.parse::<f64>().ok();
    let faithful = drawn == Some(exact);
    let written = if faithful {
        inner.clone()
    } else {
        exact.to_string()
    };
    let figure = Figure {
        value: exact,
        decimals: written
            .split_once('.')
            .map_or(0, |(_, fraction)| fraction.len() as u32),
    };
    let said = if lead.contains('<') {
        Said::Below(below(exact, drawn, &inner)?)
    } else if lead.contains('>') {
        Said::Above(Some(above(exact, drawn, &inner)?))
    } else {
        Said::Number(figure)
    };
    let shows_nothing = drawn.is_none() && !plain.contains(|c: char| c.is_ascii_digit());
    let reported = match said {
        Said::Number(_) if !faithful => format!("{written}{}", if percent { " %" } else { "" }),
        _ => plain.into_owned(),
    };
    Ok(Value {
        said,
        unit: if percent {
            Some(Unit {
                ppm: Scale::TenThousand,
                quantity: None,
            })
        } else {
            unit
        },
        footnote: false,
        uncertainty: None,
        reported,
        hidden_by: shows_nothing.then(|| shown.trim().to_owned()),
    })
}

/// How far a figure that is shown may lie from the one that is stored, by its last digit.
fn rounding(drawn: &str) -> f64 {
    let decimals = drawn.split_once('.').map_or(0, |(_, digits)| digits.len());
    10_f64.powi(-i32::try_from(decimals).unwrap_or(0))
}

/// What a stored figure that is shown as `<n` is below: what is shown and what is stored both, so the greater of the two.
/// A figure that is greater than what it is shown to be below, by more than its rounding, contradicts its sign.
fn below(stored: f64, drawn: Option<f64>, written: &str) -> Result<Option<f64>, Fault> {
    match drawn {
        Some(drawn) if stored - drawn >= rounding(written) => Err(Fault::Sign),
        Some(drawn) => Ok(Some(stored.max(drawn)).filter(|n| *n > 0.0)),
        None => Ok(Some(stored).filter(|n| *n > 0.0)),
    }
}

/// What a stored figure that is shown as `>n` is above, likewise the lesser.
fn above(stored: f64, drawn: Option<f64>, written: &str) -> Result<f64, Fault> {
    match drawn {
        Some(drawn) if drawn - stored >= rounding(written) => Err(Fault::Sign),
        Some(drawn) => Ok(stored.min(drawn)),
        None => Ok(stored),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_cell_counts_as_stored_and_means_what_its_format_shows() {
        let value = |stored, shown| read(stored, shown).expect("reads");
        assert!(matches!(value(0.05, "<0.05").said, Said::Below(Some(n)) if n == 0.05));
        let percent = value(0.00124, "0.12%");
        assert!(matches!(percent.said, Said::Number(figure) if figure.value == 0.124));
        assert_eq!(percent.unit.map(|unit| unit.ppm), Some(Scale::TenThousand));
        assert_eq!(value(12.4, "12.40").reported, "12.40");
        assert_eq!(
            value(12.3456, "12.3").reported,
            "12.3456",
            "what decides is shown"
        );
        assert_eq!(
            value(1234.5, "1,234.5 ppm").unit.map(|unit| unit.ppm),
            Some(Scale::One)
        );
        // What is shown and what is stored are both meant: neither makes the other say more than it does.
        assert_eq!(value(4.0, "<10").said, Said::Below(Some(10.0)));
        assert_eq!(value(8.4, "<8").said, Said::Below(Some(8.4)));
        assert_eq!(value(85.0, ">80").said, Said::Above(Some(80.0)));
        assert_eq!(read(12.0, "<10"), Err(Fault::Sign));
        assert_eq!(read(60.0, ">80"), Err(Fault::Sign));
        assert_eq!(value(22.0, "n/a").hidden_by.as_deref(), Some("n/a"));
        assert_eq!(value(22.0, "22").hidden_by, None);
        assert!(matches!(value(-1.0, "-1").said, Said::Number(figure) if figure.value == -1.0));
    }
}
