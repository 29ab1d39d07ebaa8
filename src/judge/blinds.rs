//! Packages of known content: whether a lab that did not know them found what they hold. They are no product's packages, so
//! they bear on no verdict and no statistic; what is found goes to the programme alone.

use crate::model::extraction::{Extraction, Interval};
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{BlindContent, BlindPackage, Registers};
use std::collections::BTreeMap;

/// The share of an added amount that is found again may lie between these: what AOAC SMPR 2017.021 allows for oats, an uneven
/// food.
const RECOVERY: (f64, f64) = (0.5, 2.0);

/// What a finding comes to, in words, with whether it was expected.
struct Finding {
    is_expected: bool,
    text: String,
    hint: &'static str,
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
    let reported: Vec<String> = extractions
        .iter()
        .map(|extraction| format!("“{}”", extraction.reported))
        .collect();
    let readings: Vec<Interval> = extractions
        .iter()
        .filter_map(|extraction| extraction.outcome.reading())
        .collect();
    let finding = finding(blind.content, &readings);
    let code = match finding.is_expected {
        true => Code::BlindResult,
        false => Code::BlindDiffers,
    };
    problems.add(
        code,
        first.source.place(),
        format!(
            "{} is a blind{}; the lab reports {}: {}",
            blind.package_code,
            known(blind.content),
            reported.join(", "),
            finding.text
        ),
        finding.hint,
    );
}

fn known(content: BlindContent) -> String {
    match content {
        BlindContent::NoGluten => " that is known to hold no gluten".to_owned(),
        BlindContent::Added(None) => " with gluten added, how much the key does not say".to_owned(),
        BlindContent::Added(Some(added)) => format!(" with {} ppm of gluten added", added.0),
    }
}

fn finding(content: BlindContent, readings: &[Interval]) -> Finding {
    if readings.is_empty() {
        return Finding {
            is_expected: false,
            text: "there is no result to hold against the key".to_owned(),
            hint: "Ask the lab for the result under this code, as for any other package.",
        };
    }
    let found = readings.iter().filter(|reading| reading.lower > Ppm::ZERO);
    let (found, all) = (found.count(), readings.len());
    match content {
        BlindContent::NoGluten if found == 0 => as_expected("as expected".to_owned()),
        BlindContent::NoGluten => unexpected(format!(
            "gluten was found in {found} of {all} extractions where none is known to be"
        )),
        BlindContent::Added(_) if found < all => unexpected(format!(
            "in {} of {all} extractions nothing could be put a number on, though gluten was added",
            all - found
        )),
        BlindContent::Added(added) => match added.and_then(|added| recovery(added, readings)) {
            None => as_expected("gluten was found, as expected".to_owned()),
            Some(share) if (RECOVERY.0..=RECOVERY.1).contains(&share) => as_expected(format!(
                "{:.0} % of what was added, within 50 to 200 %",
                share * 100.0
            )),
            Some(share) => unexpected(format!(
                "{:.0} % of what was added, outside 50 to 200 %",
                share * 100.0
            )),
        },
    }
}

fn as_expected(text: String) -> Finding {
    Finding {
        is_expected: true,
        text,
        hint: "",
    }
}

fn unexpected(text: String) -> Finding {
    Finding {
        is_expected: false,
        text,
        hint: "Look at the key first: a code may have been mixed up. Then ask the lab about the whole run, without saying \
               which package it was. No verdict was changed by this; weigh what was tested with it before you issue.",
    }
}

/// The mean of the figures as a share of what was added; none where a reading is no figure.
fn recovery(added: Ppm, readings: &[Interval]) -> Option<f64> {
    let figures: Option<Vec<f64>> = readings
        .iter()
        .map(|reading| reading.as_number().map(|figure| figure.0))
        .collect();
    let figures = figures?;
    Some(figures.iter().sum::<f64>() / figures.len() as f64 / added.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(content: BlindContent, readings: &[Interval]) -> (bool, String) {
        let finding = finding(content, readings);
        (finding.is_expected, finding.text)
    }

    #[test]
    fn what_was_found_is_held_against_the_key() {
        let (below, number) = (Interval::below(Ppm(5.0)), |ppm| Interval::number(Ppm(ppm)));
        let added = BlindContent::Added(Some(Ppm(20.0)));
        let holds = |content, readings: &[Interval], is_expected, word: &str| {
            let (was, text) = text(content, readings);
            assert!(was == is_expected && text.contains(word), "{text}");
        };
        holds(BlindContent::NoGluten, &[below, below], true, "as expected");
        holds(
            BlindContent::NoGluten,
            &[below, number(7.0)],
            false,
            "1 of 2",
        );
        holds(added, &[number(10.0), number(10.0)], true, "50 %");
        holds(added, &[number(9.0), number(9.0)], false, "45 %");
        holds(added, &[number(40.0), number(40.0)], true, "200 %");
        holds(added, &[below, number(20.0)], false, "1 of 2");
        holds(
            BlindContent::Added(None),
            &[number(9.0)],
            true,
            "as expected",
        );
        holds(added, &[Interval::above(Ppm(80.0))], true, "found");
        holds(added, &[], false, "no result");
    }
}
