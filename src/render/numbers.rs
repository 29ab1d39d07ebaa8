//! Figures in the words of a document: readings, results, shares, money. What rounds is [`figures`].

use crate::model::extraction::Interval;
use crate::model::figures;
pub use crate::model::figures::{plain, significant};
use crate::model::package::ResultKind;
use crate::model::pair::Comparison;
use crate::model::ppm::Ppm;
use crate::model::rule::Limit;
pub use crate::words::NBSP;
use crate::words::{Catalogue, say};

/// A computed figure, which stays on its side of the limit.
pub fn figure(x: Ppm, limit: Limit) -> String {
    figures::figure(x, limit.ppm)
}

/// A reading, which stays on its side of the limit.
pub fn reading(x: Ppm, limit: Limit) -> String {
    figures::reading(x, limit.ppm)
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
    let (gap, allowed) = figures::in_order(gap, allowed);
    Apart { gap, allowed }
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
    figures::keeping_order(Ppm(own), Ppm(limit), least)
}

/// An absorbance, in as many decimals as readers print.
pub fn absorbance(y: f64) -> String {
    figures::rounded(Ppm(y), 3)
}

/// What is read on a curve: one decimal, none from 1000 on.
pub fn read_on_curve(x: f64) -> String {
    figures::rounded(Ppm(x), if x.abs() >= 1000.0 { 0 } else { 1 })
}

/// A share of which a tenth of a per cent matters: `15`, `12.8`.
pub fn short_percent(share: f64) -> String {
    let text = figures::rounded(Ppm(share * 100.0), 1);
    text.trim_end_matches(".0").to_owned()
}

/// A sum of money: two decimals and the currency, where one is given: `1234.50 EUR`.
pub fn money(amount: f64, currency: Option<&str>) -> String {
    let figure = figures::rounded(Ppm(amount), 2);
    let currency = currency.map(|currency| format!("{NBSP}{currency}"));
    format!("{figure}{}", currency.unwrap_or_default())
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
