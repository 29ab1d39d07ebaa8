//! Verdicts -> what few packages can say of a product, and what the programme's results say together.
//!
//! Each file is one method: formula, units, edge cases and source stand above its public functions. Shares are fractions
//! from 0 to 1, concentrations ppm. What was computed with logarithms keeps 12 significant digits, so that every machine
//! gives the same bytes.

/// Quantiles and tail probabilities.
pub mod distributions;

/// A share of packages or products, with its intervals.
pub mod binomial;

/// Everything by band.
mod counts;

use crate::config::Config;
use crate::model::package::{PackageResult, Standing};
use crate::model::statistics::{ProductStatistics, ProgrammeStatistics};
use crate::model::verdict::ProductVerdict;

/// The programme's results taken together.
pub fn summarise(verdicts: &[ProductVerdict], config: &Config) -> ProgrammeStatistics {
    ProgrammeStatistics {
        counts: counts::count(verdicts, config.rule.limit),
        ..ProgrammeStatistics::default()
    }
}

/// What one product's packages can say of all its packages.
///
/// Packages that stand unresolved or inconclusive say nothing and are left out.
pub fn of_product(verdict: &ProductVerdict) -> ProductStatistics {
    let sound = |package: &&PackageResult| {
        !matches!(
            package.standing,
            Standing::Unresolved | Standing::Inconclusive
        )
    };
    let n = verdict.packages.iter().filter(sound).count() as u64;
    let over = |package: &&PackageResult| package.standing == Standing::Over;
    let k = verdict.packages.iter().filter(over).count() as u64;
    ProductStatistics {
        over: binomial::share(k, n),
        one_sided_upper: binomial::one_sided_upper(k, n, binomial::CONFIDENCE),
        components: None,
    }
}
