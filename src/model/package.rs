//! One result and one standing a package.

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
    /// The reports leave a range.
    Range {
        /// Mean of the lower bounds (agreeing), or the smallest (disagreeing).
        lower: Ppm,
        /// Mean of the upper bounds (agreeing), or the largest; none where unbounded.
        upper: Option<Ppm>,
        /// Whether the upper bound itself is left out.
        upper_open: bool,
        /// Whether the lower bound itself is left out.
        lower_open: bool,
    },
    /// No sound result.
    None,
}

impl ResultKind {
    /// The word in the data files.
    pub fn word(&self) -> &'static str {
        match self {
            ResultKind::Below { .. } => "below",
            ResultKind::Value { .. } => "value",
            ResultKind::Range { .. } => "range",
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
