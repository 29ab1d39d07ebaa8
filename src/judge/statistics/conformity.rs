//! Near the limit: how likely a package's true content is on the other side of it than its result.
//!
//! A figure is held against the limit as it stands (simple acceptance), whose risk ILAC-G8:09/2019 puts at up to one half.
//! The chance makes that risk visible; it decides nothing.

use crate::judge::pairs::characteristic;
use crate::judge::paper::twelve_digits;
use crate::judge::statistics::distributions::normal_above;
use crate::model::extraction::Extraction;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::PairState;
use crate::model::ppm::Ppm;
use crate::model::rule::{Decision, Limit, Rule};
use crate::model::statistics::{OtherSide, UncertaintyBasis};

/// Probability that a true value is above `upper`, given a result `y` with standard uncertainty `u` (not 0):
/// 1 - Phi((upper - y) / u), a normal distribution and no prior knowledge (JCGM 106:2012, 7.2).
pub fn above(y: f64, u: f64, upper: f64) -> f64 {
    normal_above((upper - y) / u)
}

/// Probability that it is at or below `upper`: the conformance probability, Phi((upper - y) / u).
pub fn conformance(y: f64, u: f64, upper: f64) -> f64 {
    normal_above((y - upper) / u)
}

/// Every agreeing package whose figure decides, in order. None under a guarded rule, which has its own band, and where
/// the claim has no limit but detection.
///
/// Where the lab states no uncertainty it is taken from `relative_repeatability`, that of the settings, and not from the
/// programme's own pairs: a sheet would change with every other product's results.
pub fn other_sides(
    packages: &[PackageResult],
    rule: &Rule,
    relative_repeatability: f64,
) -> Vec<OtherSide> {
    if rule.decision != Decision::Simple || rule.limit.detection {
        return Vec::new();
    }
    let of = |package| other_side(package, rule.limit, relative_repeatability);
    packages.iter().filter_map(of).collect()
}

/// A range counts with the end that is nearer to the limit, so that the chance is not understated.
fn other_side(
    package: &PackageResult,
    limit: Limit,
    relative_repeatability: f64,
) -> Option<OtherSide> {
    if package.pair.state != PairState::Agree {
        return None;
    }
    let over = match package.standing {
        Standing::Over => true,
        Standing::Within => false,
        Standing::BelowQuantification | Standing::Unresolved | Standing::Inconclusive => {
            return None;
        }
    };
    let figure = match package.result {
        ResultKind::Value { mean } => mean,
        ResultKind::Range(range) if over => range.lower,
        ResultKind::Range(range) => range.upper?,
        ResultKind::Below { .. } | ResultKind::None => return None,
    };
    let (u, basis) = uncertainty(package, figure, relative_repeatability)?;
    let chance = if over {
        conformance(figure.0, u, limit.ppm.0)
    } else {
        above(figure.0, u, limit.ppm.0)
    };
    Some(OtherSide {
        package_code: package.pair.package.package_code.clone(),
        figure,
        u: Ppm(twelve_digits(u)),
        basis,
        chance: twelve_digits(chance),
    })
}

/// The standard uncertainty of a package's figure, in ppm, and where it comes from.
///
/// The lab's own goes first, where it states one for every reading: it holds what repeats share, so that the mean of
/// several is taken to have no less than one. Else s / sqrt(n) of the repeatability: what the readings do not share.
fn uncertainty(
    package: &PackageResult,
    figure: Ppm,
    relative_repeatability: f64,
) -> Option<(f64, UncertaintyBasis)> {
    let stated = package
        .pair
        .usable()
        .map(|extraction| of_lab(extraction, figure));
    let stated: Option<Vec<(f64, bool)>> = stated.collect();
    if let Some(stated) = stated.filter(|stated| !stated.is_empty()) {
        let mean = stated.iter().map(|(u, _)| u).sum::<f64>() / stated.len() as f64;
        let basis = if stated.iter().all(|(_, factor_stated)| *factor_stated) {
            UncertaintyBasis::Lab
        } else {
            UncertaintyBasis::LabAssumed
        };
        return (mean > 0.0).then_some((mean, basis));
    }
    let comparison = package.pair.comparison?;
    let root = (comparison.n as f64).sqrt();
    let s = characteristic(figure, comparison.q, relative_repeatability).0;
    (s > 0.0).then_some((s / root, UncertaintyBasis::AssumedRepeatability))
}

/// The standard uncertainty of a reading as its lab states it, in ppm at this figure: the expanded one over its coverage factor.
/// The second is whether the lab says that factor; else 2 is assumed. It may stand beside the reading, else for the whole report.
/// None where the lab says nothing, or nothing that can be read without a guess.
fn of_lab(extraction: &Extraction, figure: Ppm) -> Option<(f64, bool)> {
    let own = extraction.uncertainty.as_deref();
    let text = own.or(extraction.record.uncertainty.as_deref())?;
    let stated = read(text)?;
    let factor = stated.factor.unwrap_or(2.0);
    let u = if stated.percent {
        stated.number / 100.0 / factor * figure.0
    } else {
        stated.number / factor * scale(extraction, text)?
    };
    Some((u, stated.factor.is_some()))
}

/// From the figure that the lab wrote to ppm gluten: its unit and quantity hold for the uncertainty as well. An uncertainty
/// with a unit of its own that is ppm needs only the quantity.
fn scale(extraction: &Extraction, text: &str) -> Option<f64> {
    let lower = text.to_lowercase();
    if lower.contains("ppm") || lower.contains("mg/kg") {
        return Some(if extraction.from_gliadin { 2.0 } else { 1.0 });
    }
    let figure = extraction.outcome.reading()?.as_number()?;
    let written = numbers(&extraction.reported).first()?.0;
    (written > 0.0 && figure.0 > 0.0).then(|| figure.0 / written)
}

/// An expanded uncertainty as written.
struct Stated {
    number: f64,
    percent: bool,
    factor: Option<f64>,
}

/// Reads "± 3.7", "30 %", "U = 3,7 mg/kg (k = 2)". Nothing is read where more than one figure could be meant.
fn read(text: &str) -> Option<Stated> {
    let text = text.to_lowercase().replace("+/-", "±");
    // A standard uncertainty is half of what is read here; that is not to be guessed from a word alone.
    if text.contains("standard") && !text.contains("expanded") {
        return None;
    }
    let (factor, rest) = without_factor(&text);
    let named = rest.split_once('±').map(|(_, after)| after.to_owned());
    let found = numbers(named.as_deref().unwrap_or(&rest));
    let mut meant: Vec<(f64, bool)> = found
        .iter()
        .copied()
        .filter(|(number, percent)| !(*percent && [95.0, 95.45, 95.5].contains(number)))
        .collect();
    if named.is_some() {
        meant.truncate(1);
    }
    match meant.as_slice() {
        [(number, percent)] if *number > 0.0 && factor.is_none_or(|k| k >= 1.0) => Some(Stated {
            number: *number,
            percent: *percent,
            factor,
        }),
        _ => None,
    }
}

/// The coverage factor ("k = 2"), and the text without it.
fn without_factor(text: &str) -> (Option<f64>, String) {
    for (at, _) in text.match_indices('k') {
        let value = text[at + 1..].trim_start().strip_prefix('=');
        let alone = !text[..at].ends_with(char::is_alphanumeric);
        if let Some(value) = value.filter(|_| alone) {
            let (factor, rest) = leading_figure(value.trim_start());
            let factor = factor.replace(',', ".").parse().ok();
            return (factor, format!("{} {rest}", &text[..at]));
        }
    }
    (None, text.to_owned())
}

/// The figure that a text begins with, and what follows it.
fn leading_figure(text: &str) -> (&str, &str) {
    let end = text.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ','));
    let (figure, rest) = text.split_at(end.unwrap_or(text.len()));
    (figure.trim_end_matches(['.', ',']), rest)
}

/// The numbers of a text, and whether "%" stands behind each.
fn numbers(text: &str) -> Vec<(f64, bool)> {
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(start) = rest.find(|c: char| c.is_ascii_digit()) {
        let (written, after) = leading_figure(&rest[start..]);
        // "1,234" may be a thousand or a little over one.
        let ambiguous = written
            .split_once(',')
            .is_some_and(|(_, after)| after.len() == 3);
        if !ambiguous && let Ok(number) = written.replace(',', ".").parse() {
            found.push((number, after.trim_start().starts_with('%')));
        }
        rest = after;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn stated(text: &str) -> Option<String> {
        let stated = read(text)?;
        let percent = if stated.percent { " %" } else { "" };
        let factor = stated.factor.map(|k| format!(", k = {k}"));
        Some(format!(
            "{}{percent}{}",
            stated.number,
            factor.unwrap_or_default()
        ))
    }

    #[test]
    fn an_uncertainty_is_read_as_labs_write_it() {
        let read = |text| stated(text).expect(text);
        assert_eq!(read("± 3.7"), "3.7");
        assert_eq!(read("+/- 3,7 mg/kg"), "3.7");
        assert_eq!(read("± 30 %"), "30 %");
        assert_eq!(read("30%"), "30 %");
        assert_eq!(read("U = 3.7 mg/kg (k = 2)"), "3.7, k = 2");
        assert_eq!(read("expanded, k=2, 95 %: ± 22 %"), "22 %, k = 2");
        assert_eq!(read("22 % (k = 2, 95 % confidence)"), "22 %, k = 2");
    }

    #[test]
    fn what_could_mean_two_things_is_not_read() {
        for text in [
            "",
            "see report",
            "3.7 or 30 %",
            "standard uncertainty 2.1",
            "± 0",
            "12.4 3.7",
            "± 1,234",
        ] {
            assert_eq!(stated(text), None, "{text}");
        }
    }
}
