//! Extractions -> pairs: corrections applied, doubles merged, conflicts named, and the readings of a package compared.

mod compare;
mod corrections;
mod doubles;

pub use compare::{RANGE_FACTORS, characteristic, compare, range_factor};

use crate::config::Config;
use crate::model::extraction::{AssayKind, Extraction, Outcome};
use crate::model::pair::{FirstReadings, Pair, PairState, PairedExtraction, Usage};
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Package, Processing, Registers};
use crate::words::say;
use std::collections::HashMap;

/// Every package that counts with its extractions, in the order of the register.
///
/// A package counts once it was sent or has a reading; where the register doesn't say what was sent, every one counts.
/// A package that counts and of which the lab reported nothing is noted.
pub fn pair_up(
    extractions: Vec<Extraction>,
    registers: &Registers,
    config: &Config,
    problems: &mut Problems,
) -> Vec<Series> {
    let mut by_package = by_package(extractions);
    corrections::apply(&mut by_package, &registers.corrections);
    registers
        .packages
        .iter()
        .filter_map(|package| {
            let product = registers.products.get(&package.product_id)?;
            let rows = by_package.remove(&package.package_code).unwrap_or_default();
            counts(package, &rows, registers.knows_sent_on).then(|| {
                let fit = fit_assay(product.processing);
                let series = series(package, rows, fit, config, problems);
                note_if_missing(&series.deciding, problems);
                series
            })
        })
        .collect()
}

/// A package's readings: those that decide, and those by the other kind of assay.
#[derive(Clone, Debug, PartialEq)]
pub struct Series {
    /// By the kind of assay that fits the food, where there is a usable reading by it.
    pub deciding: Pair,
    /// By the other kind, where there is a usable reading by it.
    pub other: Option<Pair>,
}

/// The kind of assay that sees the gluten of a food: a competitive one where proteins may be in pieces (J AOAC 98:1346,
/// 2015), else, and where that is not known, a sandwich one.
fn fit_assay(processing: Processing) -> AssayKind {
    if processing.may_be_in_pieces() {
        AssayKind::Competitive
    } else {
        AssayKind::Sandwich
    }
}

/// Readings by two kinds of assay are two series. A series without a usable row is none, unless it is all there is.
fn series(
    package: &Package,
    rows: Vec<PairedExtraction>,
    fit: AssayKind,
    config: &Config,
    problems: &mut Problems,
) -> Series {
    let (fitting, others): (Vec<_>, Vec<_>) = rows
        .into_iter()
        .partition(|row| row.extraction.assay_kind == fit);
    let usable = |rows: &[PairedExtraction]| rows.iter().any(|row| row.usage == Usage::Used);
    let (first, second) = (usable(&fitting), usable(&others));
    let mut of = |rows, kind| pair(package, rows, kind, config, problems);
    if first && second {
        return Series {
            deciding: of(fitting, fit),
            other: Some(of(others, fit.other())),
        };
    }
    let (rows, kind) = if first || (!second && !fitting.is_empty()) {
        (fitting, fit)
    } else if others.is_empty() {
        (others, config.lab.assay_kind)
    } else {
        (others, fit.other())
    };
    Series {
        deciding: of(rows, kind),
        other: None,
    }
}

/// The extractions of each package, each counting where it has a reading.
fn by_package(extractions: Vec<Extraction>) -> HashMap<String, Vec<PairedExtraction>> {
    let mut by_package: HashMap<String, Vec<PairedExtraction>> = HashMap::new();
    for extraction in extractions {
        let usage = match extraction.outcome {
            Outcome::Reading(_) => Usage::Used,
            Outcome::NotReported | Outcome::Unreadable => Usage::NoReading,
        };
        by_package
            .entry(extraction.package_code.clone())
            .or_default()
            .push(PairedExtraction {
                repeat: None,
                extraction,
                usage,
                also_reported: Vec::new(),
            });
    }
    by_package
}

/// Whether a package counts. A spare on the shelf holds up no verdict, even where the lab's form lists it with a blank.
fn counts(package: &Package, rows: &[PairedExtraction], knows_sent_on: bool) -> bool {
    let is_sent = package.sent_on.is_some() || package.sent_on_unreadable;
    !knows_sent_on || is_sent || reported_something(rows)
}

/// Whether the lab gave more than rows that say "not reported".
fn reported_something(rows: &[PairedExtraction]) -> bool {
    rows.iter()
        .any(|row| row.extraction.outcome != Outcome::NotReported)
}

fn pair(
    package: &Package,
    rows: Vec<PairedExtraction>,
    assay_kind: AssayKind,
    config: &Config,
    problems: &mut Problems,
) -> Pair {
    let extractions = doubles::settle(rows, problems);
    let used = || extractions.iter().filter(|row| row.usage == Usage::Used);
    let readings: Vec<&Extraction> = used().map(|row| &row.extraction).collect();
    let comparison = compare(&readings, config.testing.relative_repeatability);
    let enough = readings.len() >= config.testing.extractions_per_package;
    let state = match comparison {
        Some(comparison) if enough && comparison.agrees() => PairState::Agree,
        Some(_) if enough => PairState::Disagree,
        _ if reported_something(&extractions) => PairState::Incomplete,
        _ => PairState::Missing,
    };
    Pair {
        package: package.clone(),
        assay_kind,
        first: first_readings(&extractions, config),
        extractions,
        state,
        comparison,
    }
}

/// What was made first, where a repeat or more extractions than are asked for came after it.
pub fn first_readings(extractions: &[PairedExtraction], config: &Config) -> Option<FirstReadings> {
    let asked = config.testing.extractions_per_package as u32;
    let is_first = |row: &&PairedExtraction| row.repeat.is_none() && row.extraction.number <= asked;
    let first: Vec<&PairedExtraction> = extractions.iter().filter(is_first).collect();
    let upto = first.iter().map(|row| row.extraction.number).max()?;
    let used = first.iter().filter(|row| row.usage == Usage::Used);
    let readings: Vec<&Extraction> = used.map(|row| &row.extraction).collect();
    (first.len() < extractions.len()).then(|| FirstReadings {
        upto,
        comparison: compare(&readings, config.testing.relative_repeatability),
    })
}

fn note_if_missing(pair: &Pair, problems: &mut Problems) {
    if pair.state == PairState::Missing {
        problems.add(
            Code::MissingPackage,
            pair.package.place.clone(),
            say::found_missing_package(
                pair.package.package_code.as_str(),
                pair.package.product_id.as_str(),
            ),
            say::do_wait_for_lab(),
        );
    }
}
