//! A person's corrections: readings set aside, and repeats numbered on from the extractions already there.

use crate::model::extraction::AssayKind;
use crate::model::pair::{PairedExtraction, Repeat, Usage};
use crate::model::registers::{Correction, CorrectionAction};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet, HashMap};

/// Applies every correction that fits a reading.
pub fn apply(by_package: &mut HashMap<String, Vec<PairedExtraction>>, corrections: &[Correction]) {
    let mut by_code: BTreeMap<&str, Vec<&Correction>> = BTreeMap::new();
    for correction in corrections {
        by_code
            .entry(&correction.package_code)
            .or_default()
            .push(correction);
    }
    for (code, corrections) in by_code {
        if let Some(rows) = by_package.get_mut(code) {
            correct(rows, &corrections);
        }
    }
}

/// Corrections speak of the numbers in their file, so all are matched before anything is numbered anew.
fn correct(rows: &mut [PairedExtraction], corrections: &[&Correction]) {
    let repeats: Vec<Option<Repeat>> = rows
        .iter()
        .map(|row| repeat_decided_on(row, corrections))
        .collect();
    let repeated: Vec<Option<NaiveDate>> = repeats
        .iter()
        .map(|repeat| repeat.as_ref().map(|repeat| repeat.on))
        .collect();
    for (row, repeat) in rows.iter_mut().zip(repeats) {
        row.repeat = repeat;
        let exclusion = corrections.iter().find(|correction| {
            correction.action == CorrectionAction::Exclude && fits(correction, row)
        });
        if let Some(exclusion) = exclusion {
            row.usage = Usage::Excluded {
                reason: exclusion.reason.clone(),
                by: exclusion.by.clone(),
                on: exclusion.on,
            };
        }
    }
    for (kind, _) in AssayKind::ALL {
        number_on(rows, &repeated, *kind);
    }
}

/// Gives repeats by one kind of assay the numbers after the last one there: in the order of the decisions, then of the files.
fn number_on(rows: &mut [PairedExtraction], repeated: &[Option<NaiveDate>], kind: AssayKind) {
    let is_of = |row: &PairedExtraction| row.extraction.assay_kind == kind;
    let last = rows
        .iter()
        .zip(repeated)
        .filter(|(row, repeat)| is_of(row) && repeat.is_none())
        .map(|(row, _)| row.extraction.number)
        .max()
        .unwrap_or(0);
    let order: BTreeSet<_> = rows
        .iter()
        .zip(repeated)
        .filter(|(row, _)| is_of(row))
        .filter_map(|(row, repeat)| repeat.map(|on| place_in_order(row, on)))
        .collect();
    let numbers: BTreeMap<_, _> = order.into_iter().zip(last.saturating_add(1)..).collect();
    for (row, repeat) in rows.iter_mut().zip(repeated) {
        if let (Some(on), true) = (repeat, is_of(row)) {
            row.extraction.number = numbers[&place_in_order(row, *on)];
        }
    }
}

fn place_in_order(row: &PairedExtraction, on: NaiveDate) -> (NaiveDate, String, u32) {
    let file = row.extraction.source.file.path.clone();
    (on, file, row.extraction.number)
}

/// The decision by which a row was declared a repeat; the first where two lines say so.
fn repeat_decided_on(row: &PairedExtraction, corrections: &[&Correction]) -> Option<Repeat> {
    corrections
        .iter()
        .filter(|correction| correction.action == CorrectionAction::Repeat && fits(correction, row))
        .min_by_key(|correction| correction.on)
        .map(|correction| Repeat {
            reason: correction.reason.clone(),
            by: correction.by.clone(),
            on: correction.on,
        })
}

/// Whether a correction is about this row.
fn fits(correction: &Correction, row: &PairedExtraction) -> bool {
    below_inbox(&correction.file) == below_inbox(&row.extraction.source.file.path)
        && correction
            .extraction
            .is_none_or(|number| number == row.extraction.number)
}

fn below_inbox(path: &str) -> &str {
    path.strip_prefix("inbox/").unwrap_or(path)
}
