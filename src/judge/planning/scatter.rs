//! How far packages of a product, and extractions of a package, lie apart: the programme's own figures, or stand-ins.

use crate::judge::paper::twelve_digits;
use crate::model::planning::Scatter;
use crate::model::verdict::ProductVerdict;

/// Degrees of freedom from which on the programme's own figure is used: below, its 95 % interval spans a factor of two and
/// more.
pub const ENOUGH: usize = 10;

/// The relative standard deviation between packages where the programme has too few of its own: that of naturally
/// contaminated oat flour in the collaborative study of OMA 2018.15 (41 to 43 % at 6 and 13 mg/kg), rounded.
const BETWEEN_STAND_IN: f64 = 0.40;

/// Standard deviations of natural logarithms.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scatters {
    /// Between the packages of a product.
    pub between: Scatter,
    /// Between the extractions of a package.
    pub within: Scatter,
}

/// Both, from packages whose extractions are all figures.
///
/// within^2 = sum of squares of logarithms within packages / sum (extractions - 1). Between packages of a product and round:
/// v = sum of squares of the packages' mean logarithms / sum (packages - 1); between^2 = max(0, v - within^2 x mean of
/// 1/extractions) (unweighted means). Each needs [`ENOUGH`] degrees of freedom; else ln(1 + s^2) stands in, with s the
/// relative repeatability of the settings, or 40 % between packages. Results below quantification are in neither figure.
/// Pairs that disagree are in both: a plan asks how often such pairs will come, not how well the lab repeats itself.
pub fn scatters(verdicts: &[&ProductVerdict], relative_repeatability: f64) -> Scatters {
    let products: Vec<Vec<Vec<f64>>> = verdicts.iter().map(|verdict| measured(verdict)).collect();
    of_logarithms(&products, relative_repeatability)
}

/// The same of the logarithms of figures: products, their packages, their extractions (two at least).
pub fn of_logarithms(products: &[Vec<Vec<f64>>], relative_repeatability: f64) -> Scatters {
    let packages = || products.iter().flatten();
    let df_within: usize = packages().map(|package| package.len() - 1).sum();
    let within_squares: f64 = packages().map(|package| squares(package)).sum();
    let within = if df_within >= ENOUGH {
        own(within_squares / df_within as f64, df_within)
    } else {
        stand_in(relative_repeatability)
    };
    let means: Vec<Vec<f64>> = products
        .iter()
        .map(|packages| packages.iter().map(|package| mean(package)).collect())
        .collect();
    let df_between: usize = means
        .iter()
        .map(|means| means.len().saturating_sub(1))
        .sum();
    let between = if df_between >= ENOUGH && within.df > 0 {
        let of_means = means.iter().map(|means| squares(means)).sum::<f64>() / df_between as f64;
        let several = || {
            let with_others = products.iter().filter(|packages| packages.len() > 1);
            with_others
                .flatten()
                .map(|package| 1.0 / package.len() as f64)
        };
        let share = several().sum::<f64>() / several().count() as f64;
        own(
            (of_means - within.log_sd.powi(2) * share).max(0.0),
            df_between,
        )
    } else {
        stand_in(BETWEEN_STAND_IN)
    };
    Scatters { between, within }
}

fn own(variance: f64, df: usize) -> Scatter {
    Scatter {
        log_sd: twelve_digits(variance.sqrt()),
        df,
    }
}

/// A lognormal value with relative standard deviation s has the variance ln(1 + s^2) of its logarithm.
fn stand_in(relative: f64) -> Scatter {
    Scatter {
        log_sd: twelve_digits((relative * relative).ln_1p().sqrt()),
        df: 0,
    }
}

/// The logarithms of the packages' extractions, of packages that have two at least and all above zero.
fn measured(verdict: &ProductVerdict) -> Vec<Vec<f64>> {
    let of = |package: &crate::model::package::PackageResult| -> Option<Vec<f64>> {
        package
            .pair
            .usable()
            .map(|extraction| {
                let figure = extraction.outcome.reading()?.as_number()?.0;
                (figure > 0.0).then(|| figure.ln())
            })
            .collect()
    };
    let packages = verdict.packages.iter().filter_map(of);
    packages.filter(|package| package.len() > 1).collect()
}

fn mean(of: &[f64]) -> f64 {
    of.iter().sum::<f64>() / of.len() as f64
}

fn squares(of: &[f64]) -> f64 {
    let middle = mean(of);
    of.iter().map(|x| (x - middle).powi(2)).sum()
}
