//! Maximum likelihood for a lognormal distribution of which some values are only known to be below a limit.

use crate::judge::paper::twelve_digits;
use crate::judge::statistics::censored::Observation;
use crate::model::ppm::Ppm;
use crate::model::statistics::LognormalFit;
use statrs::distribution::{Continuous, ContinuousCDF, Normal};

/// The fit: log-likelihood = sum of ln pdf over the measured + sum of ln cdf(limit) over the others.
///
/// Newton's method on 1 / sigma and mu / sigma, in which the log-likelihood has one peak (Olsen, Econometrica 46:1211,
/// 1978). None below two different measured results, or where a value is not above 0.
pub fn lognormal(observations: &[Observation]) -> Option<LognormalFit> {
    if observations
        .iter()
        .any(|observation| observation.value <= 0.0)
    {
        return None;
    }
    let logarithms = |censored: bool| {
        let chosen = observations
            .iter()
            .filter(move |observation| observation.censored == censored);
        chosen.map(|observation| observation.value.ln())
    };
    let sample = Sample::of(logarithms(false).collect(), logarithms(true).collect());
    let variance = sample.squares / sample.n;
    if sample.n < 2.0 || variance <= 0.0 {
        return None;
    }
    let start = Place {
        ratio: 0.0,
        precision: 1.0 / variance.sqrt(),
    };
    let peak = climb(&sample, start)?;
    let mu = sample.centre + peak.ratio / peak.precision;
    let sigma = 1.0 / peak.precision;
    Some(LognormalFit {
        mu: twelve_digits(mu),
        sigma: twelve_digits(sigma),
        mean: Ppm(twelve_digits((mu + sigma * sigma / 2.0).exp())),
        median: Ppm(twelve_digits(mu.exp())),
    })
}

/// All that the likelihood needs to know: logarithms, taken from the mean of the measured ones.
struct Sample {
    /// Mean of the measured ones.
    centre: f64,
    /// How many are measured.
    n: f64,
    /// Sum of their squares about the mean; their sum is 0.
    squares: f64,
    /// Each limit, and how many values are below it.
    limits: Vec<(f64, f64)>,
}

impl Sample {
    fn of(measured: Vec<f64>, mut limits: Vec<f64>) -> Sample {
        let n = measured.len() as f64;
        let centre = measured.iter().sum::<f64>() / n;
        limits.sort_by(f64::total_cmp);
        let same_limit = limits.chunk_by(|a, b| a == b);
        Sample {
            centre,
            n,
            squares: measured.iter().map(|y| (y - centre).powi(2)).sum(),
            limits: same_limit
                .map(|same| (same[0] - centre, same.len() as f64))
                .collect(),
        }
    }
}

/// mu / sigma and 1 / sigma.
#[derive(Clone, Copy)]
struct Place {
    ratio: f64,
    precision: f64,
}

/// Value, first and second derivatives of the log-likelihood at a place.
struct Slope {
    value: f64,
    ratio: f64,
    precision: f64,
    ratio_ratio: f64,
    ratio_precision: f64,
    precision_precision: f64,
}

/// Newton's steps, each halved until it climbs.
fn climb(sample: &Sample, start: Place) -> Option<Place> {
    let mut here = start;
    let mut slope = slope_at(sample, here);
    for _ in 0..200 {
        let determinant =
            slope.ratio_ratio * slope.precision_precision - slope.ratio_precision.powi(2);
        let step = Place {
            ratio: (slope.ratio_precision * slope.precision
                - slope.precision_precision * slope.ratio)
                / determinant,
            precision: (slope.ratio_precision * slope.ratio - slope.ratio_ratio * slope.precision)
                / determinant,
        };
        let mut part = 1.0;
        let (next, next_slope) = loop {
            let next = Place {
                ratio: here.ratio + part * step.ratio,
                precision: here.precision + part * step.precision,
            };
            if next.precision > 0.0 {
                let next_slope = slope_at(sample, next);
                if next_slope.value >= slope.value {
                    break (next, next_slope);
                }
            }
            part /= 2.0;
            if part < 1e-12 {
                return Some(here);
            }
        };
        let moved = (part * step.ratio).abs() + (part * step.precision).abs();
        (here, slope) = (next, next_slope);
        if moved <= 1e-15 * (here.ratio.abs() + here.precision) {
            return Some(here);
        }
    }
    None
}

fn slope_at(sample: &Sample, place: Place) -> Slope {
    let standard = Normal::standard();
    let Place { ratio, precision } = place;
    let Sample { n, squares, .. } = *sample;
    let residuals = precision * precision * squares + n * ratio * ratio;
    let mut slope = Slope {
        value: n * precision.ln() - residuals / 2.0,
        ratio: -n * ratio,
        precision: n / precision - precision * squares,
        ratio_ratio: -n,
        ratio_precision: 0.0,
        precision_precision: -n / (precision * precision) - squares,
    };
    for (limit, count) in &sample.limits {
        let z = precision * limit - ratio;
        let below = standard.cdf(z);
        let hazard = standard.pdf(z) / below;
        let bend = hazard * (z + hazard);
        slope.value += count * below.ln();
        slope.ratio -= count * hazard;
        slope.precision += count * hazard * limit;
        slope.ratio_ratio -= count * bend;
        slope.ratio_precision += count * bend * limit;
        slope.precision_precision -= count * bend * limit * limit;
    }
    slope
}
