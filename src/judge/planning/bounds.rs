//! From which mean on a package is over, and up to which it is within.

use crate::model::ppm::Ppm;
use crate::model::rule::{Decision, Rule};
use std::cmp::Ordering;

/// From which mean on a package whose extractions agree is over, and up to which it is within.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// A mean above this is over.
    pub over_from: Ppm,
    /// A mean below this is within.
    pub within_below: Ppm,
    /// The limit itself: what packages that disagree are held against.
    pub limit: Ppm,
}

/// The bounds of a rule for an assay with this quantification limit; what lies exactly on one has no breadth.
///
/// A reading below quantification is never over, and where its limit of quantification is above what the rule allows it says
/// nothing. Where no gluten may be found at all, the limit is what the assay detects and every figure is over.
pub fn bounds(rule: &Rule, lloq: Ppm) -> Bounds {
    let (low, high) = match rule.decision {
        Decision::Simple => (1.0, 1.0),
        Decision::Guarded {
            relative_expanded_uncertainty: u,
        } => (1.0 - u, 1.0 + u),
    };
    let limit = rule.limit.ppm;
    if rule.limit.detection {
        return Bounds {
            over_from: lloq,
            within_below: limit,
            limit: limit.max(lloq),
        };
    }
    let shows_nothing = Ppm(lloq.0 * high).compare(limit) == Ordering::Greater;
    Bounds {
        over_from: Ppm(limit.0 / low).max(lloq),
        within_below: if shows_nothing {
            Ppm::ZERO
        } else {
            Ppm(limit.0 / high)
        },
        limit: limit.max(lloq),
    }
}
