//! Figures as they are printed: the one place that rounds.
//!
//! No figure is rounded across the limit, or onto it: 19.96 is never printed 20.0. Decisions are made elsewhere, before
//! any rounding.

use crate::model::extraction::Interval;
use crate::model::package::ResultKind;
use crate::model::pair::Comparison;
use crate::model::ppm::Ppm;
use crate::model::rule::Limit;
pub use crate::words::NBSP;
use crate::words::{Catalogue, say};
use rust_decimal::prelude::FromPrimitive;
use rust_decimal::{Decimal, RoundingStrategy};
use std::cmp::Ordering;

/// A figure in as few digits as say it whole: a limit of 20, a quantification limit of 2.5.
pub fn plain(x: Ppm) -> String {
    decimal(x).normalize().to_string()
}

/// A computed figure: one decimal (none from 1000 on), more where that would move it across the limit or onto it.
pub fn figure(x: Ppm, limit: Limit) -> String {
    let least = if x.0 >= 1000.0 { 0 } else { 1 };
    keeping_side(x, limit.ppm, least)
}

/// A reading: as reported, with one decimal at least and two at most; more where that would move it across the limit.
pub fn reading(x: Ppm, limit: Limit) -> String {
    let reported = decimal(x).normalize().scale();
    let least = if reported <= 2 { reported.max(1) } else { 1 };
    keeping_side(x, limit.ppm, least)
}

/// Rounds half away from zero to `least` decimals, or more until the figure stands to `fence` as it did before.
fn keeping_side(x: Ppm, fence: Ppm, least: u32) -> String {
    let exact = decimal(x);
    let side = x.compare(fence);
    let kept = |figure: &Decimal| figure.cmp(&decimal(fence)) == side;
    let places = (least..=12)
        .find(|places| kept(&half_up(exact, *places)))
        .unwrap_or(least);
    written(exact, places)
}

/// To so many decimals, halves away from zero: rule B of ISO 80000-1, Annex B.
fn half_up(exact: Decimal, places: u32) -> Decimal {
    exact.round_dp_with_strategy(places, RoundingStrategy::MidpointAwayFromZero)
}

/// A decimal as it is printed with so many decimals, rounded as every printed figure is: halves away from zero, and what
/// rounds to nothing has no sign.
pub fn written(exact: Decimal, places: u32) -> String {
    let rounded = half_up(exact, places);
    let unsigned = if rounded.is_zero() {
        Decimal::ZERO
    } else {
        rounded
    };
    format!("{unsigned:.*}", places as usize)
}

/// The decimal that a float was read from: the shortest that reads back equal, cut after 12 places.
fn decimal(x: Ppm) -> Decimal {
    // Beyond what a decimal holds there is no gluten figure; a food holds a million ppm of itself.
    Decimal::from_f64(x.0).unwrap_or(Decimal::MAX).round_dp(12)
}

/// A reading as a document prints it, in its language: `12.4`, `<5`, `>80`, `5.0–80.0`, `up to 12.0`.
pub fn interval_said(reading_of: Interval, limit: Limit, words: &Catalogue) -> String {
    let bounds = (reading_of.as_below(), reading_of.as_number());
    let written = match (bounds, reading_of.upper) {
        ((Some(n), _), _) => format!("<{}", plain(n)),
        ((_, Some(x)), _) => reading(x, limit),
        (_, Some(upper)) => return range(reading_of.lower, upper, limit, words),
        (_, None) => format!(">{}", plain(reading_of.lower)),
    };
    words.locale().figure(&written)
}

/// A package's result as a document prints it, in its language: `12.4`, `<5`, `3.1–5.6`, `up to 12.0`, `>61.3`, `>80`, `none`.
pub fn result_said(kind: &ResultKind, limit: Limit, words: &Catalogue) -> String {
    let written = match *kind {
        ResultKind::None => return words.say(&say::no_figure()),
        ResultKind::Below { upper } => format!("<{}", plain(upper)),
        ResultKind::Value { mean } => figure(mean, limit),
        ResultKind::Range(of) => match of.upper {
            Some(upper) => return range(of.lower, upper, limit, words),
            None => format!(">{}", figure(of.lower, limit).trim_end_matches(".0")),
        },
    };
    words.locale().figure(&written)
}

/// The same in a sentence, where a dash would be read as a minus: `3.1 to 5.6`.
pub fn result_in_text(kind: &ResultKind, limit: Limit, words: &Catalogue) -> String {
    match *kind {
        ResultKind::Range(Interval {
            lower,
            upper: Some(upper),
            ..
        }) if lower != Ppm::ZERO => {
            let said = |x| words.locale().figure(&figure(x, limit));
            words.say(&say::range_in_text(said(lower), said(upper)))
        }
        _ => result_said(kind, limit, words),
    }
}

/// A range. A lower end of nothing is not printed: below quantification is not zero.
fn range(lower: Ppm, upper: Ppm, limit: Limit, words: &Catalogue) -> String {
    let said = |x| words.locale().figure(&figure(x, limit));
    if lower == Ppm::ZERO {
        return words.say(&say::up_to(said(upper)));
    }
    format!("{}–{}", said(lower), said(upper))
}

/// How far apart readings are and what is allowed, in figures that keep the order of the two.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Apart {
    /// The gap between the readings.
    pub gap: String,
    /// The largest that still agrees.
    pub allowed: String,
}

/// The gap and the allowed difference, rounded so that the smaller is still the smaller.
pub fn apart(comparison: &Comparison) -> Apart {
    let Comparison { gap, allowed, .. } = *comparison;
    let least = if gap.max(allowed).0 >= 1000.0 { 0 } else { 1 };
    let (gap, allowed) = keeping_order(gap, allowed, least);
    Apart { gap, allowed }
}

/// Two figures with `least` decimals, or more until they stand to each other as they did before.
fn keeping_order(a: Ppm, b: Ppm, least: u32) -> (String, String) {
    let order = a.compare(b);
    let at = |x: Ppm, places| half_up(decimal(x), places);
    let kept =
        |places: &u32| order == Ordering::Equal || at(a, *places).cmp(&at(b, *places)) == order;
    let places = (least..=12).find(kept).unwrap_or(least);
    let print = |x| written(decimal(x), places);
    (print(a), print(b))
}

/// A share as a whole percentage, which never says none or all where that is not so: `63`, `<1`, `>99`.
pub fn percent(share: f64) -> String {
    match (share * 100.0).round() {
        0.0 if share > 0.0 => "<1".to_owned(),
        100.0 if share < 1.0 => ">99".to_owned(),
        whole => format!("{whole:.0}"),
    }
}

/// A share as packages of a hundred: as [`percent`] prints it, and neither none nor all where that is not so.
pub fn of_a_hundred(share: f64) -> u64 {
    match (share * 100.0).round() {
        0.0 if share > 0.0 => 1,
        100.0 if share < 1.0 => 99,
        whole => whole as u64,
    }
}

/// Gluten in a portion, in mg, and the same at the limit: two figures in as many decimals as keep their order, two at least
/// below 10 mg.
pub fn portions(own: f64, limit: f64) -> (String, String) {
    let least = if own.max(limit) < 10.0 { 2 } else { 1 };
    keeping_order(Ppm(own), Ppm(limit), least)
}

/// An absorbance, in as many decimals as readers print.
pub fn absorbance(y: f64) -> String {
    written(decimal(Ppm(y)), 3)
}

/// What is read on a curve: one decimal, none from 1000 on.
pub fn read_on_curve(x: f64) -> String {
    written(decimal(Ppm(x)), if x.abs() >= 1000.0 { 0 } else { 1 })
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

/// A share of which a tenth of a per cent matters: `15`, `12.8`.
pub fn short_percent(share: f64) -> String {
    let text = format!("{:.1}", share * 100.0);
    text.trim_end_matches(".0").to_owned()
}

/// A sum of money: two decimals and the currency, where one is given: `1234.50 EUR`.
pub fn money(amount: f64, currency: Option<&str>) -> String {
    let figure = half_up(decimal(Ppm(amount)), 2);
    let currency = currency.map(|currency| format!("{NBSP}{currency}"));
    format!("{figure:.2}{}", currency.unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::english;

    const US: Limit = Limit::amount(Ppm(20.0), false);

    #[test]
    fn no_figure_is_rounded_across_the_limit_or_onto_it() {
        let printed = |x| figure(Ppm(x), US);
        assert_eq!(printed(19.94), "19.9");
        assert_eq!(printed(19.96), "19.96");
        assert_eq!(printed(19.996), "19.996");
        assert_eq!(printed(20.04), "20.04");
        assert_eq!(printed((17.2 + 19.9 + 22.9) / 3.0), "20.0");
    }

    #[test]
    fn halves_are_rounded_as_on_paper() {
        assert_eq!(figure(Ppm(8.25), US), "8.3");
        assert_eq!(
            figure(Ppm((5.9 + 6.0) / 2.0), US),
            "6.0",
            "5.95 is a little less as a float"
        );
        assert_eq!(figure(Ppm(1234.5), US), "1235");
    }

    #[test]
    fn a_reading_keeps_the_decimals_that_the_lab_gave() {
        let printed = |x| reading(Ppm(x), US);
        assert_eq!(printed(12.0), "12.0");
        assert_eq!(printed(12.44), "12.44");
        assert_eq!(printed(12.443), "12.4");
        assert_eq!(printed(19.996), "19.996");
    }

    #[test]
    fn bounds_are_printed_with_their_sign() {
        let printed = |reading| interval_said(reading, US, english());
        assert_eq!(printed(Interval::below(Ppm(5.0))), "<5");
        assert_eq!(printed(Interval::below(Ppm(2.5))), "<2.5");
        assert_eq!(printed(Interval::above(Ppm(80.0))), ">80");
    }

    #[test]
    fn a_disagreement_never_looks_like_agreement() {
        let close = Comparison {
            n: 2,
            q: Ppm(5.0),
            gap: Ppm(8.44),
            m: Ppm(20.0),
            s: Ppm(3.0),
            factor: 2.8,
            allowed: Ppm(8.42),
        };
        let Apart { gap, allowed } = apart(&close);
        assert_eq!((gap.as_str(), allowed.as_str()), ("8.44", "8.42"));
    }

    #[test]
    fn shares_never_say_none_or_all_wrongly() {
        assert_eq!(percent(0.6316), "63");
        assert_eq!(percent(0.002), "<1");
        assert_eq!(percent(0.998), ">99");
        assert_eq!(percent(0.0), "0");
    }
}
