//! What few packages can say of a product, and what the programme's results say together.
//!
//! Shares are fractions from 0 to 1; concentrations are ppm gluten. What is undefined is `None`.

use crate::model::ppm::Ppm;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;

/// What one product's packages can say of all its packages.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ProductStatistics {
    /// Packages over the limit among all that count; none where no package has a sound result. Its intervals cover both
    /// outcomes of each undecided package: lower ends with all of them within the limit, upper ends with all of them over.
    pub over: Option<Share>,
    /// Packages that stand unresolved or inconclusive.
    pub undecided: u64,
    /// One-sided 95 % upper bound of the share over the limit (exact binomial), with every undecided package over it.
    pub one_sided_upper: Option<f64>,
    /// The same bound for more packages than were tested, had none of them been over: what more of them would show.
    pub if_none_of_more: Vec<NoneOver>,
    /// The chance that at least one of so many sound packages is found to disagree.
    pub false_alarm: f64,
    /// Packages whose figure decides, and how likely their true content is on the other side of the limit; simple
    /// decisions only.
    pub other_side: Vec<OtherSide>,
    /// What is too close to the limit to call; none where detection decides.
    pub close: Option<CloseBand>,
    /// Between and within packages; only where every package has the same number of measured extractions.
    pub components: Option<VarianceComponents>,
}

/// The band round a limit in which a package's result is too close to call, both ends included.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CloseBand {
    /// Below the limit.
    pub from: Ppm,
    /// Above it.
    pub to: Ppm,
}

impl CloseBand {
    /// Whether a figure lies in it.
    pub fn holds(self, figure: Ppm) -> bool {
        figure.compare(self.from) != Ordering::Less && figure.compare(self.to) != Ordering::Greater
    }

    /// The band that holds both.
    pub fn with(self, other: CloseBand) -> CloseBand {
        CloseBand {
            from: self.from.min(other.from),
            to: self.to.max(other.to),
        }
    }
}

/// What it shows that none of so many packages is over the limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoneOver {
    /// How many.
    pub packages: u64,
    /// One-sided 95 % upper bound of the share over the limit: 1 - 0.05^(1/n).
    pub upper: f64,
}

/// How likely a package's true content is on the other side of the limit than its result.
#[derive(Clone, Debug, PartialEq)]
pub struct OtherSide {
    /// The package.
    pub package_code: String,
    /// The figure that was held against the limit.
    pub figure: Ppm,
    /// Its standard uncertainty.
    pub u: Ppm,
    /// Where that comes from.
    pub basis: UncertaintyBasis,
    /// The probability, 0 to 1.
    pub chance: f64,
}

/// Where the uncertainty of a result comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UncertaintyBasis {
    /// The lab's expanded uncertainty, halved; the lab says that k is 2.
    Lab,
    /// The same where the lab does not say its k, so that 2 is assumed.
    LabAssumed,
    /// The repeatability of the settings: the scatter within the lab alone, so that the chance is at least what is said.
    AssumedRepeatability,
}

/// `k` of `n`, with its two-sided 95 % intervals.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// How many.
    pub k: u64,
    /// Of how many; never 0.
    pub n: u64,
    /// Clopper-Pearson (exact).
    pub exact: Bounds,
    /// Wilson's score interval.
    pub wilson: Bounds,
}

impl Share {
    /// `k / n`.
    pub fn fraction(&self) -> f64 {
        self.k as f64 / self.n as f64
    }
}

/// Two ends of an interval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// The lower end.
    pub lower: f64,
    /// The upper end.
    pub upper: f64,
}

/// One-way random-effects analysis of variance, extractions within packages.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VarianceComponents {
    /// Packages.
    pub packages: usize,
    /// Extractions in each.
    pub extractions: usize,
    /// Mean of all.
    pub mean: Ppm,
    /// Mean square between packages.
    pub ms_between: f64,
    /// Mean square within packages.
    pub ms_within: f64,
    /// Standard deviation within packages.
    pub s_within: Ppm,
    /// Standard deviation between packages, 0 where the mean squares would make it negative.
    pub s_between: Ppm,
    /// F and its p value; none where all extractions of each package are equal.
    pub f_test: Option<FTest>,
}

/// An F test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FTest {
    /// The ratio.
    pub f: f64,
    /// Degrees of freedom above.
    pub df1: f64,
    /// Degrees of freedom below.
    pub df2: f64,
    /// Probability of such a ratio or a larger one by chance.
    pub p: f64,
}

/// The programme's results taken together.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ProgrammeStatistics {
    /// Everything counted by band.
    pub counts: Counts,
    /// First and last day of a test.
    pub days: Option<(NaiveDate, NaiveDate)>,
    /// Products over the limit among those with a verdict, each once, by its latest round with one; none where there are
    /// none.
    pub over_limit: Option<Share>,
    /// Rounds with a verdict that are left out of every share, since the same product has a later one.
    pub superseded_rounds: u64,
    /// Shares over the limit by group; groups in a fixed order, products without a verdict left out, each product once.
    pub groups: Vec<Grouping>,
    /// Counts by quarter of the year, without gaps.
    pub quarters: Vec<QuarterCounts>,
    /// Trend over the quarters, each product once, where the counts carry it.
    pub trend: Option<Trend>,
    /// Categories held against all others, where the counts carry it.
    pub contrasts: Vec<Contrast>,
    /// The programme's own repeatability: all pairs first, then by lab, then by level.
    pub repeatability: Vec<Repeatability>,
    /// The same held against the settings; none where the pairs are too few.
    pub assumption: Option<Assumption>,
    /// What the Horwitz function lets expect at the limit, for comparison; none where there are too few pairs.
    pub horwitz: Option<Horwitz>,
    /// The chance that at least one of a product's packages is found to disagree though all are sound.
    pub false_alarm: f64,
    /// Range control chart of the duplicates.
    pub range_chart: Option<RangeChart>,
    /// Early and late halves of each lab's duplicates.
    pub drift: Vec<Drift>,
    /// Package results with those below quantification, summarised: all first, then by food group.
    pub censored: Vec<CensoredSummary>,
    /// How many packages would be needed to say more.
    pub packages_needed: Vec<PackagesNeeded>,
}

/// Everything counted by band.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Counts {
    /// Extractions, each by its own reading.
    pub extractions: ExtractionCounts,
    /// Packages, by standing.
    pub packages: PackageCounts,
    /// Products and rounds, by verdict.
    pub products: ProductCounts,
}

/// Extractions, each by its own reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct ExtractionCounts {
    /// Below n, and n is not over the limit.
    pub below_quantification: u64,
    /// Its upper bound is not over the limit.
    pub within: u64,
    /// Its lower bound is over the limit.
    pub over: u64,
    /// The lab has a row for it, but it gives nothing.
    pub unusable: u64,
}

/// Packages, by standing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct PackageCounts {
    /// Too little to put a number on.
    pub below_quantification: u64,
    /// Measured, within the limit.
    pub within: u64,
    /// Over the limit.
    pub over: u64,
    /// The results do not say.
    pub unresolved: u64,
    /// Too near the limit (guarded decisions).
    pub inconclusive: u64,
}

/// Products and rounds, by verdict.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct ProductCounts {
    /// Every package within the limit.
    pub within_limit: u64,
    /// At least one package over it.
    pub over_limit: u64,
    /// The results do not say.
    pub no_verdict: u64,
}

/// One way of grouping products.
#[derive(Clone, Debug, PartialEq)]
pub struct Grouping {
    /// By what.
    pub by: GroupedBy,
    /// Its groups.
    pub groups: Vec<Group>,
}

/// What products are grouped by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GroupedBy {
    /// Food group.
    Category,
    /// Certified by a third party, or not.
    Certification,
    /// What is known of the oats.
    Oats,
}

/// One group of products.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// In words, as printed.
    pub name: String,
    /// Over the limit among those with a verdict; none where none has one.
    pub share: Option<Share>,
    /// Products without a verdict, left out of the share.
    pub without_verdict: u64,
}

/// One quarter of a year.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct QuarterCounts {
    /// The year.
    pub year: i32,
    /// 1 to 4.
    pub quarter: u32,
    /// Over the limit.
    pub over: u64,
    /// No verdict.
    pub no_verdict: u64,
    /// Within the limit, gluten measured.
    pub within_quantified: u64,
    /// Within the limit, too little to measure.
    pub within_below: u64,
}

/// Cochran-Armitage test for a trend in proportions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trend {
    /// Standard normal deviate; above 0 where the share grows.
    pub z: f64,
    /// Two-sided p value.
    pub p: f64,
    /// Quarters with products that have a verdict.
    pub quarters: usize,
}

/// One category held against all others: Fisher's exact test, adjusted by Holm.
#[derive(Clone, Debug, PartialEq)]
pub struct Contrast {
    /// The category.
    pub category: String,
    /// Two-sided p value.
    pub p: f64,
    /// The same, adjusted for the number of categories.
    pub p_holm: f64,
}

/// Repeatability from duplicates, relative to the level.
#[derive(Clone, Debug, PartialEq)]
pub struct Repeatability {
    /// Which pairs.
    pub of: PairsOf,
    /// How many pairs, all with both extractions measured, that agree.
    pub pairs: usize,
    /// Pairs that were flagged as too wide apart, and are left out.
    pub flagged: usize,
    /// Relative repeatability standard deviation: sqrt(sum (difference / mean)^2 / 2n).
    pub relative_s: f64,
    /// Its 95 % interval.
    pub interval: Bounds,
    /// The same from the median difference of all pairs, flagged ones too, which a few wide ones do not move.
    pub resistant_s: f64,
}

/// Which pairs a repeatability is of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PairsOf {
    /// All of them.
    All,
    /// Those of a lab, by its name.
    Lab(String),
    /// Those with a mean below the limit.
    BelowLimit,
    /// Those with a mean at or above it.
    FromLimit,
}

/// The programme's own repeatability against the one that its settings assume.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Assumption {
    /// `relative_repeatability` of the settings.
    pub assumed: f64,
    /// What the pairs say of it.
    pub finding: AssumptionFinding,
}

/// What the pairs say of the assumed repeatability.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AssumptionFinding {
    /// The interval holds it.
    Fits,
    /// The pairs scatter less.
    Smaller {
        /// What to set in its place, rounded to a whole per cent.
        proposal: f64,
    },
    /// The pairs scatter more.
    Larger {
        /// What to set in its place, rounded to a whole per cent.
        proposal: f64,
    },
}

/// Relative standard deviations that the Horwitz function gives at a level, and how the programme's own compares.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Horwitz {
    /// The level: the limit.
    pub level: Ppm,
    /// Between laboratories, a fraction.
    pub between_labs: f64,
    /// The programme's own, within the lab, over the one between laboratories.
    pub horrat_r: f64,
}

/// Range control chart of duplicates, in per cent of each pair's mean, in the order of test day and package code.
#[derive(Clone, Debug, PartialEq)]
pub struct RangeChart {
    /// The pairs.
    pub points: Vec<RangePoint>,
    /// The chart's lines; none where too few pairs agree.
    pub lines: Option<RangeLines>,
}

/// The lines of a range control chart, in per cent.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RangeLines {
    /// Mean range of the agreeing pairs.
    pub centre: f64,
    /// Upper control limit: 3.267 times the centre.
    pub upper: f64,
}

/// One pair on the chart.
#[derive(Clone, Debug, PartialEq)]
pub struct RangePoint {
    /// The package.
    pub package_code: String,
    /// Its lab.
    pub lab: String,
    /// Mean of the two.
    pub mean: Ppm,
    /// First less second, in per cent of the mean.
    pub signed_percent: f64,
    /// What is allowed between these two, in per cent of the mean.
    pub allowed_percent: f64,
    /// Whether these two agree.
    pub agrees: bool,
    /// How many readings the package was decided on, and whether they agree; none where it was on these two alone.
    pub decided_on: Option<(usize, bool)>,
    /// Whether it crosses the control limit; never where there is none.
    pub beyond: bool,
}

/// One lab's early duplicates against its late ones.
#[derive(Clone, Debug, PartialEq)]
pub struct Drift {
    /// The lab.
    pub lab: String,
    /// Pairs in the early half.
    pub early: usize,
    /// Pairs in the late half.
    pub late: usize,
    /// Relative repeatability of the early half.
    pub early_s: f64,
    /// Relative repeatability of the late half.
    pub late_s: f64,
    /// Two-sided F test of their ratio.
    pub f_test: FTest,
}

/// Package results with those below quantification, summarised without pretending to know them.
#[derive(Clone, Debug, PartialEq)]
pub struct CensoredSummary {
    /// Which packages: "all", or a food group.
    pub of: String,
    /// Packages.
    pub n: usize,
    /// Of these below quantification.
    pub censored: usize,
    /// Mean with 0 for each of those.
    pub lower_bound: Ppm,
    /// Mean with half the quantification limit.
    pub middle_bound: Ppm,
    /// Mean with the quantification limit.
    pub upper_bound: Ppm,
    /// Robust regression on order statistics, where the data allow it.
    pub ros_mean: Option<Ppm>,
    /// Censored lognormal maximum likelihood, where the data allow it.
    pub mle: Option<LognormalFit>,
}

/// A lognormal distribution fitted to partly censored results.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LognormalFit {
    /// Mean of the logarithms.
    pub mu: f64,
    /// Standard deviation of the logarithms.
    pub sigma: f64,
    /// Mean: exp(mu + sigma^2 / 2).
    pub mean: Ppm,
    /// Median: exp(mu).
    pub median: Ppm,
}

/// How many packages, all within the limit, would show that the share over it is below `share`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PackagesNeeded {
    /// The share to be excluded.
    pub share: f64,
    /// Packages, at 95 % confidence.
    pub packages: u64,
}
