//! A trend of the share over the limit, quarter by quarter.

use crate::judge::paper::twelve_digits;
use crate::judge::statistics::distributions::normal_above;
use crate::model::statistics::{QuarterCounts, Trend};

/// Products over the limit, and as many not over it, below which the test's normal approximation does not hold.
const ENOUGH_EACH: u64 = 5;

/// Quarters with a verdict that a trend needs.
const ENOUGH_QUARTERS: usize = 3;

/// One group of a trend.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// How many over.
    pub k: u64,
    /// Of how many.
    pub n: u64,
    /// Where it stands on the line: the quarter's number.
    pub score: f64,
}

/// The trend over the quarters, counted on through those without tests; none where the counts do not carry it.
pub fn over_quarters(quarters: &[QuarterCounts]) -> Option<Trend> {
    let steps: Vec<Step> = quarters
        .iter()
        .zip(0_u32..)
        .map(|(quarter, at)| Step {
            k: quarter.over,
            n: quarter.over + quarter.within_quantified + quarter.within_below,
            score: at.into(),
        })
        .filter(|step| step.n > 0)
        .collect();
    let over: u64 = steps.iter().map(|step| step.k).sum();
    let not_over = steps.iter().map(|step| step.n).sum::<u64>() - over;
    if steps.len() < ENOUGH_QUARTERS || over < ENOUGH_EACH || not_over < ENOUGH_EACH {
        return None;
    }
    cochran_armitage(&steps)
}

/// Cochran-Armitage test for a trend in proportions (Biometrics 10:417, 1954; 11:375, 1955).
///
/// z = sum w (k - n p) / sqrt(p (1 - p) (sum n w^2 - (sum n w)^2 / N)), p the pooled share, w the scores; above 0 where the
/// share grows with the score. None where all or none are over, or all stand at one score.
pub fn cochran_armitage(steps: &[Step]) -> Option<Trend> {
    let sum = |of: &dyn Fn(&Step) -> f64| steps.iter().map(of).sum::<f64>();
    let total = sum(&|step| step.n as f64);
    let p = sum(&|step| step.k as f64) / total;
    // Scores are taken from their mean, so that years do not drown their differences.
    let middle = sum(&|step| step.n as f64 * step.score) / total;
    let excess = sum(&|step| (step.score - middle) * (step.k as f64 - step.n as f64 * p));
    let spread = sum(&|step| step.n as f64 * (step.score - middle).powi(2));
    let variance = p * (1.0 - p) * spread;
    if variance.is_nan() || variance <= 0.0 {
        return None;
    }
    let z = excess / variance.sqrt();
    Some(Trend {
        z: twelve_digits(z),
        p: twelve_digits(2.0 * normal_above(z.abs())),
        quarters: steps.len(),
    })
}
