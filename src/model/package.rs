//! One result and one standing a package.

use crate::model::extraction::Interval;
use crate::model::pair::Pair;
use crate::model::ppm::Ppm;

/// A package's extractions, what they give together, and where that stands against the limit.
#[derive(Clone, Debug, PartialEq)]
pub struct PackageResult {
    /// The extractions and their agreement.
    pub pair: Pair,
    /// What they give together.
    pub result: ResultKind,
    /// Where that stands against the limit.
    pub standing: Standing,
    /// The extractions agree and stand on both sides of the limit: the mean decides, and the sheet says so.
    pub straddles_limit: bool,
    /// The package's readings by the other kind of assay, judged by themselves; they are printed beside, and decide only where
    /// a sandwich assay finds a fermented or hydrolysed food over the limit.
    pub other_series: Option<Box<PackageResult>>,
}

impl PackageResult {
    /// The result, and that of the other kind of assay where there is one.
    pub fn both_series(&self) -> impl Iterator<Item = &PackageResult> {
        std::iter::once(self).chain(self.other_series.as_deref())
    }
}

/// What a package's extractions give together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ResultKind {
    /// Every extraction is below its quantification limit; the largest of those limits.
    Below {
        /// Open upper bound.
        upper: Ppm,
    },
    /// Every extraction is a number; their mean.
    Value {
        /// The mean.
        mean: Ppm,
    },
    /// The reports leave a range: from the mean of the lower bounds to that of the upper ones where they agree, from the
    /// smallest to the largest where they do not; no upper end where one is unbounded.
    Range(Interval),
    /// No sound result.
    None,
}

impl ResultKind {
    /// The word in the data files.
    pub fn word(&self) -> &'static str {
        match self {
            ResultKind::Below { .. } => "below",
            ResultKind::Value { .. } => "value",
            ResultKind::Range(_) => "range",
            ResultKind::None => "none",
        }
    }
}

/// Where a package stands against the limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// Too little to put a number on, and that is within the limit.
    BelowQuantification,
    /// Measured, within the limit.
    Within,
    /// Over the limit.
    Over,
    /// The results do not say.
    Unresolved,
    /// Guarded decisions only: too near the limit for the assay's uncertainty.
    Inconclusive,
}

impl Standing {
    /// The word in the data files.
    pub fn word(self) -> &'static str {
        match self {
            Standing::BelowQuantification => "below_quantification",
            Standing::Within => "within",
            Standing::Over => "over",
            Standing::Unresolved => "unresolved",
            Standing::Inconclusive => "inconclusive",
        }
    }
}
