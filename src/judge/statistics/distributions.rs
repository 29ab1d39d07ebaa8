//! Quantiles, to nearly the last digit of a float.
//!
//! The library's distribution functions are exact enough, but some of its inverses stop early: here a safeguarded Newton
//! iteration inverts them.

use statrs::distribution::{Beta, ChiSquared, Continuous, ContinuousCDF, FisherSnedecor, Normal};

/// The value that a standard normal deviate stays below with probability `p`; `p` between 0 and 1, both excluded.
pub fn normal_quantile(p: f64) -> f64 {
    let standard = Normal::standard();
    let first = standard.inverse_cdf(p);
    // One Newton step takes the library's value to the last digit.
    first - (standard.cdf(first) - p) / standard.pdf(first)
}

/// Probability that a standard normal deviate is above `z`.
pub fn normal_above(z: f64) -> f64 {
    Normal::standard().sf(z)
}

/// Density of a standard normal deviate.
pub fn normal_density(z: f64) -> f64 {
    Normal::standard().pdf(z)
}

/// Quantile of the beta distribution; none where a parameter isn't positive.
pub fn beta_quantile(p: f64, a: f64, b: f64) -> Option<f64> {
    Some(invert(&Beta::new(a, b).ok()?, p, 0.0, 1.0))
}

/// Quantile of chi squared on `df` degrees of freedom; none where they aren't positive.
pub fn chi_squared_quantile(p: f64, df: f64) -> Option<f64> {
    Some(invert_positive(&ChiSquared::new(df).ok()?, p))
}

/// Probability that F on `df1` and `df2` degrees of freedom is above `f`; none where either isn't positive, or `f` no
/// number that there can be.
pub fn f_above(f: f64, df1: f64, df2: f64) -> Option<f64> {
    if !(f * df1).is_finite() {
        return None;
    }
    Some(FisherSnedecor::new(df1, df2).ok()?.sf(f))
}

/// Inverts on the positive half line: doubles the upper end until it encloses `p`.
fn invert_positive<D>(distribution: &D, p: f64) -> f64
where
    D: ContinuousCDF<f64, f64> + Continuous<f64, f64>,
{
    let mut upper = 1.0;
    while distribution.cdf(upper) < p && upper < f64::MAX / 2.0 {
        upper *= 2.0;
    }
    invert(distribution, p, 0.0, upper)
}

/// Newton's iteration inside a bracket that shrinks with each step; a step that would leave it halves it instead.
fn invert<D>(distribution: &D, p: f64, lower: f64, upper: f64) -> f64
where
    D: ContinuousCDF<f64, f64> + Continuous<f64, f64>,
{
    let (mut low, mut high) = (lower, upper);
    let mut x = (low + high) / 2.0;
    for _ in 0..200 {
        let miss = distribution.cdf(x) - p;
        if miss == 0.0 {
            break;
        }
        if miss > 0.0 {
            high = x;
        } else {
            low = x;
        }
        let newton = x - miss / distribution.pdf(x);
        let next = if newton > low && newton < high {
            newton
        } else {
            (low + high) / 2.0
        };
        if (next - x).abs() <= f64::EPSILON * x.abs() {
            x = next;
            break;
        }
        x = next;
    }
    x
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_distribution_without_degrees_of_freedom_has_no_quantile() {
        assert_eq!(chi_squared_quantile(0.5, 0.0), None);
        assert_eq!(f_above(0.5, 0.0, 1.0), None);
        for f in [f64::NAN, f64::INFINITY, 1e308] {
            assert_eq!(f_above(f, 2.0, 3.0), None, "{f}");
        }
        assert_eq!(beta_quantile(0.5, 1.0, 0.0), None);
    }
}
