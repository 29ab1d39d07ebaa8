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
    let logarithms = |censored: bool| -> Vec<f64> {
        observations
            .iter()
            .filter(|observation| observation.censored == censored)
            .map(|observation| observation.value.ln())
            .collect()
    };
    let sample = Sample {
        measured: logarithms(false),
        limits: logarithms(true),
    };
    let n = sample.measured.len() as f64;
    let centre = sample.measured.iter().sum::<f64>() / n;
    let variance = sample
        .measured
        .iter()
        .map(|y| (y - centre).powi(2))
        .sum::<f64>()
        / n;
    if sample.measured.len() < 2 || variance <= 0.0 {
        return None;
    }
    let start = Place {
        ratio: centre / variance.sqrt(),
        precision: 1.0 / variance.sqrt(),
    };
    let peak = climb(&sample, start)?;
    let (mu, sigma) = (peak.ratio / peak.precision, 1.0 / peak.precision);
    Some(LognormalFit {
        mu: twelve_digits(mu),
        sigma: twelve_digits(sigma),
        mean: Ppm(twelve_digits((mu + sigma * sigma / 2.0).exp())),
        median: Ppm(twelve_digits(mu.exp())),
    })
}

/// Logarithms of the measured values, and of the limits of the others.
struct Sample {
    measured: Vec<f64>,
    limits: Vec<f64>,
}

/// mu / sigma and 1 / sigma.
#[derive(Clone, Copy)]
struct Place {
    ratio: f64,
    precision: f64,
}

/// Value, first and second derivatives of the log-likelihood at a place.
#[derive(Default)]
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
    let mut slope = Slope::default();
    for y in &sample.measured {
        let residual = place.precision * y - place.ratio;
        slope.value += place.precision.ln() - residual * residual / 2.0;
        slope.ratio += residual;
        slope.precision += 1.0 / place.precision - residual * y;
        slope.ratio_ratio -= 1.0;
        slope.ratio_precision += y;
        slope.precision_precision -= 1.0 / place.precision.powi(2) + y * y;
    }
    for limit in &sample.limits {
        let z = place.precision * limit - place.ratio;
        let below = standard.cdf(z);
        let hazard = standard.pdf(z) / below;
        let bend = hazard * (z + hazard);
        slope.value += below.ln();
        slope.ratio -= hazard;
        slope.precision += hazard * limit;
        slope.ratio_ratio -= bend;
        slope.ratio_precision += bend * limit;
        slope.precision_precision -= bend * limit * limit;
    }
    slope
}
