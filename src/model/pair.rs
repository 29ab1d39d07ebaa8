//! A package's extractions, brought together and held against each other.

use crate::model::extraction::{AssayKind, Extraction};
use crate::model::place::Source;
use crate::model::ppm::Ppm;
use crate::model::registers::Package;
use chrono::NaiveDate;
use std::cmp::Ordering;

/// The extractions of one package (a pair, and any repeats) and whether they agree.
#[derive(Clone, Debug, PartialEq)]
pub struct Pair {
    /// The package they are of.
    pub package: Package,
    /// The kind of assay that they are by: extractions by two kinds are two series, and never compared.
    pub assay_kind: AssayKind,
    /// Every extraction that the lab reported, used or not, by number.
    pub extractions: Vec<PairedExtraction>,
    /// Whether the usable ones agree.
    pub state: PairState,
    /// How the comparison came out; none where fewer than two are usable.
    pub comparison: Option<Comparison>,
    /// The extractions that were made first, where others came after them; none where nothing came after.
    pub first: Option<FirstReadings>,
}

impl Pair {
    /// The extractions that count.
    pub fn usable(&self) -> impl Iterator<Item = &Extraction> {
        self.extractions
            .iter()
            .filter(|paired| paired.usage == Usage::Used)
            .map(|paired| &paired.extraction)
    }
}

/// One extraction and whether it counts.
#[derive(Clone, Debug, PartialEq)]
pub struct PairedExtraction {
    /// The extraction, numbered within its package.
    pub extraction: Extraction,
    /// Whether it counts.
    pub usage: Usage,
    /// Why it was made after the others, where a person has declared it a repeat.
    pub repeat: Option<Repeat>,
    /// Other cells that report the same reading.
    pub also_reported: Vec<Source>,
}

/// The extractions of a package that were made before any others: a pair, as a rule.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FirstReadings {
    /// The largest number that one of them has: those above it came later, whether or not a decision says why.
    pub upto: u32,
    /// How they compare among themselves; none where fewer than two count.
    pub comparison: Option<Comparison>,
}

/// A person's decision that readings are a repeat of the test.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Repeat {
    /// The person's reason.
    pub reason: String,
    /// Who decided.
    pub by: String,
    /// When.
    pub on: NaiveDate,
}

/// Whether an extraction counts.
#[derive(Clone, Debug, PartialEq)]
pub enum Usage {
    /// It counts.
    Used,
    /// The lab gave no readable result.
    NoReading,
    /// A correction sets it aside, for this reason.
    Excluded {
        /// The person's reason.
        reason: String,
        /// Who decided.
        by: String,
        /// When.
        on: NaiveDate,
    },
    /// Another cell reports this extraction with another result.
    InConflict,
}

/// Whether a package's extractions agree.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PairState {
    /// The gap between them is within what repeats of one material may differ by.
    Agree,
    /// It is not.
    Disagree,
    /// Fewer usable readings than asked for, though the lab reported something.
    Incomplete,
    /// Nothing reported, or only rows that say so.
    Missing,
}

impl PairState {
    /// The word in the data files.
    pub fn word(self) -> &'static str {
        match self {
            PairState::Agree => "agree",
            PairState::Disagree => "disagree",
            PairState::Incomplete => "incomplete",
            PairState::Missing => "missing",
        }
    }
}

/// The comparison of n readings by ISO 5725-6, on intervals; each step is kept so that it can be shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Comparison {
    /// How many readings.
    pub n: usize,
    /// The largest LLOQ in force or "below n" among the readings.
    pub q: Ppm,
    /// The smallest difference that the reports allow.
    pub gap: Ppm,
    /// The level at which precision is taken.
    pub m: Ppm,
    /// Repeatability standard deviation at that level.
    pub s: Ppm,
    /// The critical range factor f(n).
    pub factor: f64,
    /// The largest gap that still agrees: `factor * s`.
    pub allowed: Ppm,
}

impl Comparison {
    /// Whether the readings agree: the gap is not larger than allowed, exactly as large included.
    pub fn agrees(&self) -> bool {
        self.gap.compare(self.allowed) != Ordering::Greater
    }
}
