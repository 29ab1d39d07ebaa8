//! The corrections held against what the lab files report: one that fits no reading, or that another one takes back, may be a
//! slip that leaves a wrong reading in. The product of its package gets no verdict until it is mended.

use crate::gather::record::Reports;
use crate::model::extraction::Extraction;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Bars, Correction, CorrectionAction, Doubt, DoubtKind, Registers};
use crate::words::say;
use std::collections::{BTreeMap, BTreeSet};

/// Tells of corrections that cannot be meant, and gives the doubts that they leave. Nothing is said of a report that is replaced.
pub fn doubts(
    registers: &Registers,
    extractions: &[Extraction],
    reports: &Reports<'_>,
    problems: &mut Problems,
) -> Vec<Doubt> {
    if registers.corrections.is_empty() {
        return Vec::new();
    }
    let mut by_code: BTreeMap<&str, Vec<&Extraction>> = BTreeMap::new();
    for extraction in extractions {
        by_code
            .entry(&extraction.package_code)
            .or_default()
            .push(extraction);
    }
    let mut doubts = Vec::new();
    for correction in &registers.corrections {
        if reports.is_replaced(&correction.file) {
            continue;
        }
        let none = Vec::new();
        let rows = by_code.get(&*correction.package_code).unwrap_or(&none);
        let place = match clash(correction, &registers.corrections, rows) {
            _ if !rows.iter().any(|row| fits(correction, row)) => {
                Some(name_the_idle(correction, rows, problems))
            }
            Some(other) => Some(name_the_clash(correction, other, problems)),
            None => None,
        };
        doubts.extend(place.and_then(|place| doubt(registers, correction, place)));
    }
    doubts
}

fn doubt(registers: &Registers, correction: &Correction, place: Place) -> Option<Doubt> {
    let package = registers
        .packages
        .iter()
        .find(|package| package.package_code == correction.package_code)?;
    Some(Doubt {
        product_id: Some(package.product_id.clone()),
        round: Some(package.round.clone()),
        bars: Bars::Verdict,
        what: DoubtKind::Row,
        place,
    })
}

/// Whether a correction is about this reading, by the number that its file gives it.
fn fits(correction: &Correction, row: &Extraction) -> bool {
    below_inbox(&correction.file) == below_inbox(&row.source.file.path)
        && correction
            .extraction
            .is_none_or(|number| number == row.number)
}

fn below_inbox(path: &str) -> &str {
    path.strip_prefix("inbox/").unwrap_or(path)
}

/// The exclusions that leave nothing of a repeat: the first of their rows.
fn clash<'a>(
    correction: &Correction,
    all: &'a [Correction],
    rows: &[&Extraction],
) -> Option<&'a Correction> {
    if correction.action != CorrectionAction::Repeat {
        return None;
    }
    let excludes = |row: &Extraction| {
        all.iter().find(|other| {
            other.action == CorrectionAction::Exclude
                && other.package_code == correction.package_code
                && fits(other, row)
        })
    };
    let mut first = None;
    for row in rows.iter().filter(|row| fits(correction, row)) {
        let other = excludes(row)?;
        first = first.or(Some(other));
    }
    first
}

fn name_the_clash(repeat: &Correction, exclusion: &Correction, problems: &mut Problems) -> Place {
    let row = repeat.place.row.unwrap_or_default();
    problems.add(
        Code::RegisterError,
        exclusion.place.clone(),
        say::found_corrections_clash(row.to_string()),
        say::do_keep_one_correction(),
    );
    exclusion.place.clone()
}

fn name_the_idle(correction: &Correction, rows: &[&Extraction], problems: &mut Problems) -> Place {
    let (extraction_is, extraction) = match correction.extraction {
        Some(number) => ("one", number.to_string()),
        None => ("any", String::new()),
    };
    let files: BTreeSet<&str> = rows
        .iter()
        .map(|row| row.source.file.path.as_str())
        .collect();
    let is_of_file = |file: &&str| below_inbox(file) == below_inbox(&correction.file);
    let [file, package, number] = correction.columns;
    let column = match (files.is_empty(), files.iter().any(is_of_file)) {
        (true, _) => package,
        (false, false) => file,
        (false, true) => number,
    };
    let reported = if files.is_empty() {
        "nowhere"
    } else {
        "somewhere"
    };
    let files: Vec<&str> = files.into_iter().collect();
    let place = Place {
        column,
        ..correction.place.clone()
    };
    problems.add(
        Code::RegisterError,
        place.clone(),
        say::found_idle_correction(
            correction.file.as_str(),
            correction.package_code.as_str(),
            extraction_is,
            extraction,
        ),
        say::do_mend_correction(reported, files.join(", ")),
    );
    place
}
