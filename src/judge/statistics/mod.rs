//! Verdicts -> what few packages can say of a product, and what the programme's results say together.
//!
//! Each file is one method: formula, units, edge cases and source stand above its public functions. Shares are fractions
//! from 0 to 1, concentrations ppm. What was computed with roots or logarithms keeps 12 significant digits, so that every
//! machine gives the same bytes.

/// Quantiles and tail probabilities.
pub mod distributions;

/// A share of packages or products, with its intervals.
pub mod binomial;

/// Between and within packages.
pub mod anova;

/// Everything by band.
mod counts;

/// Shares by group, counts by quarter.
mod groups;

/// Over the quarters.
pub mod trend;

/// Between categories.
pub mod contrasts;

/// The pairs that all that follows is learned from.
pub mod duplicates;

/// The programme's own repeatability.
pub mod repeatability;

/// Which pairs lie wider apart than the rest lets expect.
pub mod range_chart;

/// Early and late.
pub mod drift;

/// With results below quantification.
pub mod censored;

use crate::config::Config;
use crate::model::package::{PackageResult, Standing};
use crate::model::statistics::{
    Group, GroupedBy, Grouping, PackagesNeeded, ProductStatistics, ProgrammeStatistics,
};
use crate::model::verdict::ProductVerdict;
use binomial::Shares;
use chrono::NaiveDate;

/// Shares of which it is told how many packages would exclude them.
const SHARES_TO_EXCLUDE: [f64; 5] = [0.5, 0.2, 0.1, 0.05, 0.01];

/// The programme's results taken together.
pub fn summarise(verdicts: &[ProductVerdict], config: &Config) -> ProgrammeStatistics {
    let limit = config.rule.limit;
    let counts = counts::count(verdicts, limit);
    let mut shares = Shares::default();
    let groups = groups::groupings(verdicts, &mut shares);
    let quarters = groups::quarters(verdicts);
    let duplicates = duplicates::duplicates(verdicts);
    let products = counts.products;
    ProgrammeStatistics {
        counts,
        days: days(verdicts),
        over_limit: shares.share(
            products.over_limit,
            products.over_limit + products.within_limit,
        ),
        trend: trend::over_quarters(&quarters),
        quarters,
        contrasts: contrasts::contrasts(of_categories(&groups)),
        groups,
        repeatability: repeatability::repeatability(&duplicates, limit),
        range_chart: range_chart::range_chart(&duplicates),
        drift: drift::drift(&duplicates),
        censored: censored::summarise(verdicts),
        packages_needed: packages_needed(),
    }
}

/// What each product's packages can say of all its packages, in the same order.
///
/// Packages that stand unresolved or inconclusive say nothing and are left out.
pub fn of_products(verdicts: &[ProductVerdict]) -> Vec<ProductStatistics> {
    let mut shares = Shares::default();
    verdicts
        .iter()
        .map(|verdict| of_product(verdict, &mut shares))
        .collect()
}

fn of_product(verdict: &ProductVerdict, shares: &mut Shares) -> ProductStatistics {
    let sound = |package: &&PackageResult| {
        !matches!(
            package.standing,
            Standing::Unresolved | Standing::Inconclusive
        )
    };
    let n = verdict.packages.iter().filter(sound).count() as u64;
    let over = |package: &&PackageResult| package.standing == Standing::Over;
    let k = verdict.packages.iter().filter(over).count() as u64;
    let measured: Option<Vec<Vec<f64>>> = verdict.packages.iter().map(measured).collect();
    ProductStatistics {
        over: shares.share(k, n),
        one_sided_upper: shares.one_sided_upper(k, n),
        components: measured.and_then(|packages| anova::components(&packages)),
    }
}

/// A package's readings, where all are numbers.
fn measured(package: &PackageResult) -> Option<Vec<f64>> {
    package
        .pair
        .usable()
        .map(|extraction| Some(extraction.outcome.reading()?.as_number()?.0))
        .collect()
}

/// First and last day of a test.
fn days(verdicts: &[ProductVerdict]) -> Option<(NaiveDate, NaiveDate)> {
    let days = || {
        let packages = verdicts.iter().flat_map(|verdict| &verdict.packages);
        let rows = packages.flat_map(|package| &package.pair.extractions);
        rows.filter_map(|row| row.extraction.tested_on)
    };
    Some((days().min()?, days().max()?))
}

fn of_categories(groupings: &[Grouping]) -> &[Group] {
    groupings
        .iter()
        .find(|grouping| grouping.by == GroupedBy::Category)
        .map_or(&[], |grouping| &grouping.groups)
}

fn packages_needed() -> Vec<PackagesNeeded> {
    let needed = |share| {
        Some(PackagesNeeded {
            share,
            packages: binomial::needed_to_exclude(share, binomial::CONFIDENCE)?,
        })
    };
    SHARES_TO_EXCLUDE.into_iter().filter_map(needed).collect()
}
