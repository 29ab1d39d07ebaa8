//! Lots: packages of one lot are no random pick, and one lot has one best-by date.

use crate::judge::plausibility::warn;
use crate::model::problem::Problems;
use crate::model::registers::{Package, Registers};
use crate::words::say;
use std::collections::BTreeMap;

/// Looks over the lots of each product.
pub fn look_over(registers: &Registers, problems: &mut Problems) {
    let mut by_round: BTreeMap<(&str, &str), Vec<&Package>> = BTreeMap::new();
    let mut by_lot: BTreeMap<(&str, String), Vec<&Package>> = BTreeMap::new();
    for package in &registers.packages {
        let (product, round) = (package.product_id.as_str(), package.round.as_str());
        if package.sent_on.is_some() || !registers.knows_sent_on {
            by_round.entry((product, round)).or_default().push(package);
        }
        if let Some(lot) = lot(package) {
            by_lot.entry((product, lot)).or_default().push(package);
        }
    }
    for packages in by_round.values() {
        one_lot(packages, problems);
    }
    for packages in by_lot.values() {
        two_dates(packages, problems);
    }
}

/// A lot as it is compared: without case and spaces.
fn lot(package: &Package) -> Option<String> {
    let lot: String = package.lot.as_deref()?.split_whitespace().collect();
    (!lot.is_empty()).then(|| lot.to_lowercase())
}

fn one_lot(packages: &[&Package], problems: &mut Problems) {
    let [first, .., last] = packages else { return };
    let lots: Option<Vec<String>> = packages.iter().map(|package| lot(package)).collect();
    if lots.is_none_or(|lots| lots.iter().any(|lot| *lot != lots[0])) {
        return;
    }
    warn(
        problems,
        &last.place,
        say::found_one_lot(
            if packages.len() == 2 { "two" } else { "more" },
            packages.len().to_string(),
            first.product_id.as_str(),
            first.round.as_str(),
            first.lot.as_deref().unwrap_or_default().trim(),
        ),
        say::do_buy_other_lots(),
    );
}

fn two_dates(packages: &[&Package], problems: &mut Problems) {
    let mut dated = packages.iter().filter(|package| !date(package).is_empty());
    let Some(first) = dated.next() else { return };
    if let Some(other) = dated.find(|package| date(package) != date(first)) {
        let written = |package: &Package| package.best_by.clone().unwrap_or_default();
        warn(
            problems,
            &other.place,
            say::found_two_dates(
                first.lot.as_deref().unwrap_or_default().trim(),
                first.product_id.as_str(),
                written(first),
                first.package_code.as_str(),
                written(other),
                other.package_code.as_str(),
            ),
            say::do_mend_lot(),
        );
    }
}

/// A best-by date as it is compared: its numbers and words in no order, since one date is written in many ways.
fn date(package: &Package) -> Vec<String> {
    let written = package
        .best_by
        .as_deref()
        .unwrap_or_default()
        .to_lowercase();
    let mut parts: Vec<String> = written
        .split(|letter: char| !letter.is_alphanumeric())
        .map(|part| part.trim_start_matches('0').to_owned())
        .filter(|part| !part.is_empty())
        .collect();
    parts.sort();
    parts
}
