//! Arithmetic as on paper: means and differences of short decimals come out as a person with a pencil has them.

use crate::model::ppm::Ppm;
pub use crate::model::ppm::twelve_digits;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// Significant digits that a mean keeps: all that a float can give back.
const DIGITS: u32 = 15;

/// The mean, as on paper: of 12.4 and 13.1 it is 12.75. None of nothing.
///
/// Figures too large for decimal arithmetic (above 7.9e28) are averaged as floats.
pub fn mean(figures: &[Ppm]) -> Option<Ppm> {
    if figures.is_empty() {
        return None;
    }
    let exact = || {
        let sum = figures.iter().try_fold(Decimal::ZERO, |sum, figure| {
            sum.checked_add(decimal(*figure)?)
        })?;
        float(sum.checked_div(Decimal::from(figures.len()))?)
    };
    let binary = || figures.iter().map(|figure| figure.0).sum::<f64>() / figures.len() as f64;
    Some(Ppm(exact().unwrap_or_else(binary)))
}

/// `a - b`, as on paper: 13.1 less 12.4 is 0.7.
pub fn difference(a: Ppm, b: Ppm) -> Ppm {
    let exact = || float(decimal(a)?.checked_sub(decimal(b)?)?);
    Ppm(exact().unwrap_or(a.0 - b.0))
}

fn decimal(figure: Ppm) -> Option<Decimal> {
    Decimal::try_from(figure.0).ok()
}

fn float(exact: Decimal) -> Option<f64> {
    significant(exact, DIGITS)?.to_f64()
}

/// Rounded to so many significant digits, halves to the even one (rule A of ISO 80000-1, Annex B): a sum of many figures is
/// then not pushed to one side. None beyond what a decimal holds.
pub fn significant(exact: Decimal, digits: u32) -> Option<Decimal> {
    exact.round_sf(digits)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_come_out_as_with_a_pencil() {
        assert_eq!(mean(&[Ppm(12.4), Ppm(13.1)]), Some(Ppm(12.75)));
        assert_eq!(mean(&[Ppm(17.2), Ppm(19.9), Ppm(22.9)]), Some(Ppm(20.0)));
        assert_eq!(difference(Ppm(13.1), Ppm(12.4)), Ppm(0.7));
        assert_eq!(mean(&[]), None);
    }

    #[test]
    fn figures_too_large_for_decimals_are_averaged_all_the_same() {
        assert!(mean(&[Ppm(1e40), Ppm(3e40)]).is_some_and(|mean| mean.same(Ppm(2e40))));
        assert!(difference(Ppm(3e40), Ppm(1e40)).same(Ppm(2e40)));
    }
}
