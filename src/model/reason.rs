//! Why a verdict is what it is: data, worded in one place, so that no two documents can give different reasons.

use crate::model::package::ResultKind;
use crate::model::ppm::Ppm;
use crate::model::registers::{DoubtKind, Processing};

/// One reason.
#[derive(Clone, Debug, PartialEq)]
pub enum Reason {
    /// The package claims nothing that the rule knows.
    UnknownClaim {
        /// As on the package.
        text: String,
    },
    /// The register has no claim.
    NoClaim,
    /// The register's word for the food's processing is none of the known ones.
    UnknownProcessing,
    /// A register leaves something open that bears on the verdict.
    Doubt(DoubtKind),
    /// Every package held too little to measure.
    NoneMeasured {
        /// How many packages.
        packages: usize,
        /// The largest n of their "below n".
        below: Ppm,
    },
    /// Every package is within the limit.
    AllWithin {
        /// How many packages.
        packages: usize,
        /// The assay's uncertainty is included.
        guarded: bool,
    },
    /// A package is over the limit by what its agreeing extractions give.
    Over {
        /// Its code.
        package: String,
        /// What they give.
        result: ResultKind,
    },
    /// Its extractions disagree, and every one of them is over.
    EachOver {
        /// Its code.
        package: String,
    },
    /// Its extractions disagree, and their median is over.
    MedianOver {
        /// Its code.
        package: String,
    },
    /// A package of fermented or hydrolysed food is over by its sandwich assay, which sees too little there.
    OverBySandwich {
        /// Its code.
        package: String,
        /// What that assay gave.
        result: ResultKind,
    },
    /// Nothing was reported of a package.
    Missing {
        /// Its code.
        package: String,
    },
    /// A package has fewer usable extractions than asked for.
    TooFewExtractions {
        /// Its code.
        package: String,
        /// How many are usable.
        usable: usize,
        /// How many are asked for.
        asked: usize,
    },
    /// The lab's reports of an extraction differ, so that none of them is used.
    Conflict {
        /// Its code.
        package: String,
        /// How many are usable.
        usable: usize,
        /// How many are asked for.
        asked: usize,
    },
    /// A package's extractions disagree.
    Disagree {
        /// Its code.
        package: String,
        /// How far they are apart at least.
        gap: Ppm,
        /// How far they may be.
        allowed: Ppm,
        /// Whether all of them are figures, so that they are so far apart and no farther.
        exact: bool,
    },
    /// A package's result is too near the limit for the assay's uncertainty.
    TooClose {
        /// Its code.
        package: String,
        /// What its extractions give.
        result: ResultKind,
    },
    /// A package's result doesn't show on which side of the limit it lies.
    EitherSide {
        /// Its code.
        package: String,
        /// What its extractions give.
        result: ResultKind,
    },
    /// Fewer packages than asked for.
    TooFewPackages {
        /// How many were tested.
        tested: usize,
        /// How many are asked for.
        asked: usize,
    },
    /// The assay cannot see all gluten in this food; a competitive one is needed.
    SandwichUnfit(Processing),
    /// No assay decides for this food: in the United States the maker's records do (85 FR 49240, 2020).
    RecordsDecide(Processing),
}

impl Reason {
    /// Whether it keeps anything from being decided, whatever the packages say.
    pub fn comes_first(&self) -> bool {
        matches!(
            self,
            Reason::UnknownClaim { .. }
                | Reason::NoClaim
                | Reason::UnknownProcessing
                | Reason::Doubt(_)
        )
    }
}
