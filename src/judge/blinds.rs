//! Packages of known content: whether a lab that did not know them found what they hold. They are no product's packages, so
//! they bear on no verdict and no statistic; what is found goes to the programme alone.

use crate::model::extraction::{Extraction, Interval};
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{BlindContent, BlindPackage, Registers};
use crate::model::said::{Item, Said};
use crate::words::say;
use std::collections::BTreeMap;

/// The share of an added amount that is found again may lie between these: what AOAC SMPR 2017.021 allows for oats, an uneven
/// food.
const RECOVERY: (f64, f64) = (0.5, 2.0);

/// What the readings of a package come to beside its key.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Finding {
    /// There is no reading.
    NoResult,
    /// None has any gluten, and none was added.
    NoneFound,
    /// So many have some, and none was added.
    FoundWhereNone(usize),
    /// So many have none, and some was added.
    Missed(usize),
    /// Each has some, and some was added.
    Found,
    /// They have this share of what was added.
    Share(f64),
}

impl Finding {
    fn is_expected(self) -> bool {
        match self {
            Finding::NoneFound | Finding::Found => true,
            Finding::NoResult | Finding::FoundWhereNone(_) | Finding::Missed(_) => false,
            Finding::Share(share) => is_allowed(share),
        }
    }

    fn to_do(self) -> Option<Said> {
        match self {
            Finding::NoResult => Some(say::do_ask_for_blind()),
            _ if self.is_expected() => None,
            _ => Some(say::do_look_at_key()),
        }
    }
}

/// Takes the readings of packages of known content out of the others, and tells what they say.
pub fn set_apart(
    registers: &Registers,
    extractions: Vec<Extraction>,
    problems: &mut Problems,
) -> Vec<Extraction> {
    let blinds = registers.blinds.iter();
    let mut readings: BTreeMap<&str, Vec<Extraction>> = blinds
        .map(|blind| (blind.package_code.as_str(), Vec::new()))
        .collect();
    let mut others = Vec::with_capacity(extractions.len());
    for extraction in extractions {
        match readings.get_mut(extraction.package_code.as_str()) {
            Some(of_blind) => of_blind.push(extraction),
            None => others.push(extraction),
        }
    }
    for blind in &registers.blinds {
        tell(blind, &readings[blind.package_code.as_str()], problems);
    }
    others
}

fn tell(blind: &BlindPackage, extractions: &[Extraction], problems: &mut Problems) {
    let Some(first) = extractions.first() else {
        return;
    };
    let reported = extractions
        .iter()
        .map(|extraction| Item::new(extraction.reported.as_str()));
    let readings: Vec<Interval> = extractions
        .iter()
        .filter_map(|extraction| extraction.outcome.reading())
        .collect();
    let finding = finding(blind.content, &readings);
    let code = match finding.is_expected() {
        true => Code::BlindResult,
        false => Code::BlindDiffers,
    };
    let found = found(blind, finding, reported.collect(), readings.len());
    problems.add(code, first.source.place(), found, finding.to_do());
}

fn found(blind: &BlindPackage, finding: Finding, reported: Vec<Item>, all: usize) -> Said {
    let (code, all) = (blind.package_code.as_str(), all.to_string());
    let added = match blind.content {
        BlindContent::NoGluten => None,
        BlindContent::Added(added) => Some(added),
    };
    let Some(added) = added else {
        let (outcome, found) = match finding {
            Finding::FoundWhereNone(found) => ("found", found),
            Finding::NoneFound => ("none_found", 0),
            _ => ("no_result", 0),
        };
        return say::found_blind_without(code, reported, outcome, found.to_string(), all);
    };
    let amount = if added.is_some() { "known" } else { "unknown" };
    let added = added.map(|added| added.0.to_string()).unwrap_or_default();
    let (outcome, missed) = match finding {
        Finding::Share(share) => {
            let within = if finding.is_expected() { "yes" } else { "no" };
            return say::found_blind_share(code, added, reported, percent(share), within);
        }
        Finding::Missed(missed) => ("missed", missed),
        Finding::NoResult => ("no_result", 0),
        _ => ("found", 0),
    };
    say::found_blind_with(
        code,
        amount,
        added,
        reported,
        outcome,
        missed.to_string(),
        all,
    )
}

fn is_allowed(share: f64) -> bool {
    (RECOVERY.0..=RECOVERY.1).contains(&share)
}

/// A share in percent, with as many decimals as leave it on its side of what is allowed.
fn percent(share: f64) -> String {
    let printed = |decimals: usize| format!("{:.decimals$}", share * 100.0);
    let says_so = |text: &String| {
        let read = text.parse();
        read.is_ok_and(|percent: f64| is_allowed(percent / 100.0) == is_allowed(share))
    };
    (0..=9)
        .map(printed)
        .find(says_so)
        .unwrap_or_else(|| printed(9))
}

fn finding(content: BlindContent, readings: &[Interval]) -> Finding {
    if readings.is_empty() {
        return Finding::NoResult;
    }
    let found = readings.iter().filter(|reading| reading.lower > Ppm::ZERO);
    let (found, all) = (found.count(), readings.len());
    match content {
        BlindContent::NoGluten if found == 0 => Finding::NoneFound,
        BlindContent::NoGluten => Finding::FoundWhereNone(found),
        BlindContent::Added(_) if found < all => Finding::Missed(all - found),
        BlindContent::Added(added) => match added.and_then(|added| recovery(added, readings)) {
            None => Finding::Found,
            Some(share) => Finding::Share(share),
        },
    }
}

/// The mean of the figures as a share of what was added; none where a reading is no figure.
fn recovery(added: Ppm, readings: &[Interval]) -> Option<f64> {
    let figures = readings.iter().map(|reading| Some(reading.as_number()?.0));
    let sum: f64 = figures.sum::<Option<f64>>()?;
    Some(sum / readings.len() as f64 / added.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_found_is_held_against_the_key() {
        let (below, number) = (Interval::below(Ppm(5.0)), |ppm| Interval::number(Ppm(ppm)));
        let added = BlindContent::Added(Some(Ppm(20.0)));
        let holds = |content, readings: &[Interval], expected, is_expected| {
            let found = finding(content, readings);
            assert_eq!(found, expected);
            assert_eq!(found.is_expected(), is_expected, "{found:?}");
        };
        let none = BlindContent::NoGluten;
        holds(none, &[below, below], Finding::NoneFound, true);
        let one = Finding::FoundWhereNone(1);
        holds(none, &[below, number(7.0)], one, false);
        let half = Finding::Share(0.5);
        holds(added, &[number(10.0), number(10.0)], half, true);
        let less = Finding::Share(0.45);
        holds(added, &[number(9.0), number(9.0)], less, false);
        let twice = Finding::Share(2.0);
        holds(added, &[number(40.0), number(40.0)], twice, true);
        holds(added, &[below, number(20.0)], Finding::Missed(1), false);
        let unknown = BlindContent::Added(None);
        holds(unknown, &[number(9.0)], Finding::Found, true);
        holds(added, &[Interval::above(Ppm(80.0))], Finding::Found, true);
        holds(added, &[], Finding::NoResult, false);
    }

    #[test]
    fn a_printed_share_is_on_its_side_of_what_is_allowed() {
        assert_eq!(percent(0.5), "50");
        assert_eq!(percent(0.499), "49.9");
        assert_eq!(percent(0.987), "99");
        assert_eq!(percent(2.0004), "200.04");
    }
}
