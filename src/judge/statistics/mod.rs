//! Verdicts -> what few packages can say of a product, and what the programme's results say together.
//!
//! Each file is one method: formula, units, edge cases and source stand above its public functions. Shares are fractions
//! from 0 to 1, concentrations ppm. What was computed with roots or logarithms keeps 12 significant digits, so that every
//! machine gives the same bytes.

pub mod anova;
pub mod binomial;
pub mod censored;
pub mod conformity;
pub mod contrasts;
mod counts;
pub mod distributions;
pub mod drift;
pub mod duplicates;
mod groups;
pub mod horwitz;
pub mod once;
pub mod range_chart;
pub mod repeatability;
pub mod trend;

use crate::config::Config;
use crate::judge::close_call;
use crate::model::package::{PackageResult, Standing};
use crate::model::statistics::{
    Group, GroupedBy, Grouping, NoneOver, PackagesNeeded, ProductStatistics, ProgrammeStatistics,
    Share,
};
use crate::model::verdict::{ProductVerdict, Verdict};
use binomial::Shares;
use chrono::NaiveDate;

/// Shares of which it is told how many packages would exclude them.
const SHARES_TO_EXCLUDE: [f64; 5] = [0.5, 0.2, 0.1, 0.05, 0.01];

/// The programme's results taken together.
///
/// What is counted is every round; what is a share, an interval or a test takes each product once (see [`once`]).
pub fn summarise(verdicts: &[ProductVerdict], config: &Config) -> ProgrammeStatistics {
    let limit = config.rule.limit;
    let assumed = config.testing.relative_repeatability;
    let all: Vec<&ProductVerdict> = verdicts.iter().collect();
    let once = once::once(verdicts);
    let mut shares = Shares::default();
    let groups = groups::groupings(&once, &mut shares);
    let duplicates = duplicates::duplicates(verdicts, assumed);
    let repeatability = repeatability::repeatability(&duplicates, limit);
    let own = repeatability
        .first()
        .filter(|all| all.pairs >= repeatability::ENOUGH_PAIRS);
    ProgrammeStatistics {
        counts: counts::count(verdicts),
        days: days(verdicts),
        over_limit: over_limit(&once, &mut shares),
        superseded_rounds: once::superseded(verdicts, &once),
        trend: trend::over_quarters(&groups::quarters(&once)),
        quarters: groups::quarters(&all),
        contrasts: contrasts::contrasts(of_categories(&groups)),
        groups,
        assumption: own.and_then(|own| repeatability::against_assumed(own, assumed)),
        horwitz: own.map(|own| horwitz::at_limit(own, limit.ppm)),
        false_alarm: repeatability::false_alarm(config.testing.packages_per_product),
        repeatability,
        range_chart: range_chart::range_chart(&duplicates),
        drift: drift::drift(&duplicates),
        censored: censored::summarise(verdicts),
        packages_needed: packages_needed(),
    }
}

/// Products over the limit among those with a verdict.
fn over_limit(once: &[&ProductVerdict], shares: &mut Shares) -> Option<Share> {
    let with = |wanted: fn(Verdict) -> bool| {
        let products = once.iter().filter(|product| wanted(product.verdict));
        products.count() as u64
    };
    let over = with(|verdict| verdict == Verdict::OverLimit);
    shares.share(over, with(|verdict| verdict != Verdict::NoVerdict))
}

/// What each product's packages can say of all its packages, in the same order. A result without an uncertainty of the lab's
/// takes the repeatability of the settings.
pub fn of_products(verdicts: &[ProductVerdict], config: &Config) -> Vec<ProductStatistics> {
    let mut shares = Shares::default();
    let relative_repeatability = config.testing.relative_repeatability;
    verdicts
        .iter()
        .map(|verdict| ProductStatistics {
            other_side: conformity::other_sides(
                &verdict.packages,
                &verdict.rule,
                relative_repeatability,
            ),
            close: close_call::of_packages(
                &verdict.packages,
                &verdict.rule,
                relative_repeatability,
                config.testing.lloq,
            ),
            ..of_product(verdict, &mut shares)
        })
        .collect()
}

/// Numbers of packages beside which a sheet sets its own: twice as many as usual, and those that leave a fifth and a twentieth
/// open.
const MORE_PACKAGES: [u64; 3] = [6, 14, 59];

/// Every package counts, and one that stands undecided may be on either side: lower ends take all of these for within the
/// limit, upper ends take all for over it. Leaving them out would be a claim that they are like the others.
fn of_product(verdict: &ProductVerdict, shares: &mut Shares) -> ProductStatistics {
    let standing = |of: &[Standing]| {
        let packages = verdict.packages.iter();
        let with = packages.filter(|package| of.contains(&package.standing));
        with.count() as u64
    };
    let n = verdict.packages.len() as u64;
    let k = standing(&[Standing::Over]);
    let undecided = standing(&[Standing::Unresolved, Standing::Inconclusive]);
    let measured: Option<Vec<Vec<f64>>> = verdict.packages.iter().map(measured).collect();
    let decided = undecided < n;
    ProductStatistics {
        over: shares
            .share_between(k, k + undecided, n)
            .filter(|_| decided),
        undecided,
        one_sided_upper: shares.one_sided_upper(k + undecided, n).filter(|_| decided),
        if_none_of_more: MORE_PACKAGES
            .into_iter()
            .filter(|packages| *packages > n)
            .filter_map(|packages| {
                let upper = shares.one_sided_upper(0, packages)?;
                Some(NoneOver { packages, upper })
            })
            .collect(),
        false_alarm: repeatability::false_alarm(verdict.packages.len()),
        other_side: Vec::new(),
        close: None,
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
