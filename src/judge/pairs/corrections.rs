//! A person's corrections: readings set aside, and repeats numbered on from the extractions already there.

use crate::judge::grouped;
use crate::model::extraction::AssayKind;
use crate::model::pair::{PairedExtraction, Repeat, Usage};
use crate::model::registers::{Correction, CorrectionAction};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet, HashMap};

/// Applies every correction that fits a reading.
pub fn apply(by_package: &mut HashMap<String, Vec<PairedExtraction>>, corrections: &[Correction]) {
    let by_code = grouped(corrections, |correction| correction.package_code.as_str());
    for (code, corrections) in by_code {
        if let Some(rows) = by_package.get_mut(code) {
            correct(rows, &corrections);
        }
    }
}

/// Corrections speak of the numbers in their file, so all are matched before anything is numbered anew.
fn correct(rows: &mut [PairedExtraction], corrections: &[&Correction]) {
    for row in rows.iter_mut() {
        row.repeat = repeat_decided_on(row, corrections);
        let mut exclusions = corrections.iter().filter(|correction| {
            correction.action == CorrectionAction::Exclude && fits(correction, row)
        });
        if let Some(exclusion) = exclusions.next() {
            row.usage = Usage::Excluded {
                reason: exclusion.reason.clone(),
                by: exclusion.by.clone(),
                on: exclusion.on,
            };
        }
    }
    for (kind, _) in AssayKind::ALL {
        number_on(rows, *kind);
    }
}

/// Gives repeats by one kind of assay the numbers after the last one there: in the order of the decisions, then of the files.
fn number_on(rows: &mut [PairedExtraction], kind: AssayKind) {
    let of_kind = || rows.iter().filter(|row| row.extraction.assay_kind == kind);
    let last = of_kind()
        .filter(|row| row.repeat.is_none())
        .map(|row| row.extraction.number)
        .max()
        .unwrap_or(0);
    let order: BTreeSet<_> = of_kind().filter_map(place_in_order).collect();
    let numbers: BTreeMap<_, _> = order.into_iter().zip(last.saturating_add(1)..).collect();
    for row in rows {
        let place = place_in_order(row).filter(|_| row.extraction.assay_kind == kind);
        if let Some(place) = place {
            row.extraction.number = numbers[&place];
        }
    }
}

/// A repeat's place among the repeats; none of what is no repeat.
fn place_in_order(row: &PairedExtraction) -> Option<(NaiveDate, String, u32)> {
    let (on, file) = (
        row.repeat.as_ref()?.on,
        row.extraction.source.file.path.clone(),
    );
    Some((on, file, row.extraction.number))
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
