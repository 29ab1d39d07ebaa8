//! Figures as they are printed: the one place that rounds.
//!
//! No figure is rounded across a limit, or onto it: 19.96 is never printed 20.0. Decisions are made elsewhere, before any
//! rounding.

use crate::model::ppm::Ppm;
use rust_decimal::prelude::FromPrimitive;
use rust_decimal::{Decimal, RoundingStrategy};
use std::cmp::Ordering;

/// A figure in as few digits as say it whole: a limit of 20, a quantification limit of 2.5.
pub fn plain(x: Ppm) -> String {
    decimal(x).normalize().to_string()
}

/// A computed figure: one decimal (none from 1000 on), more where that would move it across `fence` or onto it.
pub fn figure(x: Ppm, fence: Ppm) -> String {
    keeping_side(x, fence, least_places(x))
}

/// A reading: as reported, with one decimal at least and two at most; more where that would move it across `fence`.
pub fn reading(x: Ppm, fence: Ppm) -> String {
    let reported = decimal(x).normalize().scale();
    let least = if reported <= 2 { reported.max(1) } else { 1 };
    keeping_side(x, fence, least)
}

/// Two computed figures in as many decimals, which stand to each other as they did before.
pub fn in_order(a: Ppm, b: Ppm) -> (String, String) {
    keeping_order(a, b, least_places(a.max(b)))
}

/// Two figures with `least` decimals, or more until they stand to each other as they did before.
pub fn keeping_order(a: Ppm, b: Ppm, least: u32) -> (String, String) {
    let order = a.compare(b);
    let at = |x: Ppm, places| half_up(decimal(x), places);
    let kept =
        |places: &u32| order == Ordering::Equal || at(a, *places).cmp(&at(b, *places)) == order;
    let places = (least..=12).find(kept).unwrap_or(least);
    (rounded(a, places), rounded(b, places))
}

/// A figure with so many decimals, rounded as [`written`] does.
pub fn rounded(x: Ppm, places: u32) -> String {
    written(decimal(x), places)
}

/// A decimal as it is printed with so many decimals: halves away from zero, and what rounds to nothing has no sign.
pub fn written(exact: Decimal, places: u32) -> String {
    let rounded = half_up(exact, places);
    let unsigned = if rounded.is_zero() {
        Decimal::ZERO
    } else {
        rounded
    };
    format!("{unsigned:.*}", places as usize)
}

/// A figure in so many significant digits at most, without zeros at its end: `0.0214`, `21.4`, `124`.
pub fn significant(x: f64, digits: u32) -> String {
    let rounded = Decimal::from_f64(x).and_then(|exact| {
        exact.round_sf_with_strategy(digits, RoundingStrategy::MidpointAwayFromZero)
    });
    match rounded {
        // What a decimal holds no digit of is nothing, or is written by its power of ten.
        Some(rounded) if x == 0.0 || !rounded.is_zero() => rounded.normalize().to_string(),
        _ => format!("{x:.2e}"),
    }
}

fn least_places(x: Ppm) -> u32 {
    if x.0 >= 1000.0 { 0 } else { 1 }
}

/// Rounds half away from zero to `least` decimals, or more until the figure stands to `fence` as it did before.
fn keeping_side(x: Ppm, fence: Ppm, least: u32) -> String {
    let exact = decimal(x);
    let side = x.compare(fence);
    let kept = |places: &u32| half_up(exact, *places).cmp(&decimal(fence)) == side;
    rounded(x, (least..=12).find(kept).unwrap_or(least))
}

/// To so many decimals, halves away from zero: rule B of ISO 80000-1, Annex B.
fn half_up(exact: Decimal, places: u32) -> Decimal {
    exact.round_dp_with_strategy(places, RoundingStrategy::MidpointAwayFromZero)
}

/// The decimal that a float was read from: the shortest that reads back equal, cut after 12 places.
fn decimal(x: Ppm) -> Decimal {
    // Beyond what a decimal holds there is no gluten figure; a food holds a million ppm of itself.
    Decimal::from_f64(x.0).unwrap_or(Decimal::MAX).round_dp(12)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_printed_figure_rounds_across_the_limit() {
        let shown = [19.96, 19.996, 20.0, 20.004, 12.75, 12.3456, 0.0, 1600.4]
            .map(|x| figure(Ppm(x), Ppm(20.0)));
        assert_eq!(
            shown,
            [
                "19.96", "19.996", "20.0", "20.004", "12.8", "12.3", "0.0", "1600"
            ]
        );
        let on_paper = (17.2 + 19.9 + 22.9) / 3.0;
        assert_eq!(figure(Ppm(on_paper), Ppm(20.0)), "20.0");
    }

    #[test]
    fn two_figures_print_in_their_order_and_halves_go_up() {
        let printed = |a, b| in_order(Ppm(a), Ppm(b));
        let texts = |a: &str, b: &str| (a.to_owned(), b.to_owned());
        assert_eq!(printed(24.95, 7.92), texts("25.0", "7.9"));
        assert_eq!(printed(8.44, 8.42), texts("8.44", "8.42"));
        assert_eq!(printed(5.0, 5.0), texts("5.0", "5.0"));
    }
}
