//! Duplicates: the pairs of measured extractions from which a programme learns its own repeatability.

use crate::judge::pairs::compare;
use crate::model::package::PackageResult;
use crate::model::pair::{Comparison, PairState, Usage};
use crate::model::ppm::Ppm;
use crate::model::verdict::ProductVerdict;
use chrono::NaiveDate;

/// The first two extractions of a package, both measured as numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Duplicate {
    /// One result.
    pub first: Ppm,
    /// The other.
    pub second: Ppm,
}

impl Duplicate {
    /// First less second.
    pub fn difference(&self) -> f64 {
        self.first.0 - self.second.0
    }

    /// Mean of the two.
    pub fn mean(&self) -> f64 {
        (self.first.0 + self.second.0) / 2.0
    }

    /// Difference over mean, as a fraction; none where both are 0.
    pub fn relative(&self) -> Option<f64> {
        (self.mean() > 0.0).then(|| self.difference() / self.mean())
    }
}

/// A duplicate with where it comes from.
#[derive(Clone, Debug)]
pub struct LabDuplicate<'a> {
    /// The two results.
    pub pair: Duplicate,
    /// The package.
    pub package: &'a PackageResult,
    /// The lab.
    pub lab: &'a str,
    /// Day of the test.
    pub tested_on: Option<NaiveDate>,
    /// The two held against each other, whatever repeats the package has.
    pub comparison: Comparison,
}

impl LabDuplicate<'_> {
    /// Whether these two agree. Those that do not are flagged: they say that something else than the assay's scatter was
    /// at work, and are left out of what is learned of the scatter.
    pub fn agrees(&self) -> bool {
        self.comparison.agrees()
    }

    /// How many readings the package was decided on, and whether they agree; none where it was on these two alone.
    pub fn decided_on(&self) -> Option<(usize, bool)> {
        let n = self.package.pair.usable().count();
        (n > 2).then(|| (n, self.package.pair.state == PairState::Agree))
    }
}

/// Every duplicate of the programme, in the order of test day and package code.
///
/// `relative` is the relative repeatability that pairs are held against.
/// Readings below quantification or above range give no duplicate, since their difference is not known; neither do wells,
/// which would carry the scatter of the plate alone.
pub fn duplicates(verdicts: &[ProductVerdict], relative: f64) -> Vec<LabDuplicate<'_>> {
    let packages = verdicts.iter().flat_map(|verdict| &verdict.packages);
    let mut duplicates: Vec<LabDuplicate<'_>> = packages
        .filter_map(|package| duplicate(package, relative))
        .collect();
    duplicates.sort_by(|a, b| order(a).cmp(&order(b)));
    duplicates
}

fn order<'a>(duplicate: &LabDuplicate<'a>) -> (Option<NaiveDate>, &'a str) {
    let code = &duplicate.package.pair.package.package_code;
    (duplicate.tested_on, code)
}

fn duplicate(package: &PackageResult, relative: f64) -> Option<LabDuplicate<'_>> {
    let rows = package.pair.extractions.iter();
    let mut used = rows
        .filter(|row| row.usage == Usage::Used)
        .map(|row| &row.extraction);
    let (first, second) = (used.next()?, used.next()?);
    Some(LabDuplicate {
        pair: Duplicate {
            first: first.outcome.reading()?.as_number()?,
            second: second.outcome.reading()?.as_number()?,
        },
        package,
        lab: &first.lab,
        tested_on: first.tested_on.max(second.tested_on),
        comparison: compare(&[first, second], relative)?,
    })
}
