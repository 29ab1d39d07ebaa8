//! Robust regression on order statistics (Helsel and Cohn, Water Resour Res 24:1997, 1988).

use crate::judge::paper::twelve_digits;
use crate::judge::statistics::censored::Observation;
use crate::judge::statistics::distributions::normal_quantile;
use crate::model::ppm::Ppm;

/// The mean, with each result below a limit replaced by a value from the line through the measured ones.
///
/// Measured results' logarithms are regressed on the normal scores of their plotting positions; the line gives the values
/// below the limits, and the plain mean of all is taken. Several limits are allowed. None below two different measured
/// results, or where one is not above 0.
pub fn ordered_mean(observations: &[Observation]) -> Option<Ppm> {
    let mut measured: Vec<f64> = of_kind(observations, false);
    let below: Vec<f64> = of_kind(observations, true);
    measured.sort_by(f64::total_cmp);
    if measured.first().is_none_or(|least| *least <= 0.0) {
        return None;
    }
    let positions = Positions::of(&measured, &below);
    let scores: Vec<f64> = positions
        .measured
        .iter()
        .map(|p| normal_quantile(*p))
        .collect();
    let logarithms: Vec<f64> = measured.iter().map(|x| x.ln()).collect();
    let line = Line::through(&scores, &logarithms)?;
    let imputed = positions
        .below
        .iter()
        .map(|p| line.at(normal_quantile(*p)).exp());
    let sum = measured.iter().sum::<f64>() + imputed.sum::<f64>();
    Some(Ppm(twelve_digits(sum / observations.len() as f64)))
}

fn of_kind(observations: &[Observation], censored: bool) -> Vec<f64> {
    observations
        .iter()
        .filter(|observation| observation.censored == censored)
        .map(|observation| observation.value)
        .collect()
}

/// Plotting positions: the probability of being below, for each result.
struct Positions {
    /// Of the measured ones, in rising order.
    measured: Vec<f64>,
    /// Of those below a limit, limit by limit.
    below: Vec<f64>,
}

impl Positions {
    /// Limit by limit from the highest down: the part above a limit is the part above the next one, and of the rest the
    /// measured ones between the two among all that lie below the next.
    fn of(measured: &[f64], below: &[f64]) -> Positions {
        let mut limits: Vec<f64> = below.to_vec();
        limits.sort_by(f64::total_cmp);
        limits.dedup();
        if limits.first().is_none_or(|lowest| measured[0] < *lowest) {
            limits.insert(0, 0.0);
        }
        let mut positions = Positions {
            measured: Vec::new(),
            below: Vec::new(),
        };
        let mut above_next = 0.0;
        for (at, limit) in limits.iter().enumerate().rev() {
            let next = limits.get(at + 1).copied().unwrap_or(f64::INFINITY);
            let between = measured
                .iter()
                .filter(|x| **x >= *limit && **x < next)
                .count();
            let lower = measured.iter().filter(|x| **x < *limit).count()
                + below.iter().filter(|x| **x <= *limit).count();
            let here = below.iter().filter(|x| *x == limit).count();
            let part = between as f64 / ((between + lower).max(1)) as f64;
            let above = above_next + part * (1.0 - above_next);
            for rank in (1..=between).rev() {
                let step = (above - above_next) * rank as f64 / (between + 1) as f64;
                positions.measured.push(1.0 - above + step);
            }
            for rank in 1..=here {
                positions
                    .below
                    .push((1.0 - above) * rank as f64 / (here + 1) as f64);
            }
            above_next = above;
        }
        positions.measured.reverse();
        positions
    }
}

/// A straight line by least squares.
struct Line {
    intercept: f64,
    slope: f64,
}

impl Line {
    fn through(x: &[f64], y: &[f64]) -> Option<Line> {
        let n = x.len() as f64;
        let (mean_x, mean_y) = (x.iter().sum::<f64>() / n, y.iter().sum::<f64>() / n);
        let spread: f64 = x.iter().map(|x| (x - mean_x).powi(2)).sum();
        let together: f64 = x
            .iter()
            .zip(y)
            .map(|(x, y)| (x - mean_x) * (y - mean_y))
            .sum();
        (x.len() >= 2 && spread > 0.0).then(|| Line {
            slope: together / spread,
            intercept: mean_y - mean_x * together / spread,
        })
    }

    fn at(&self, x: f64) -> f64 {
        self.intercept + self.slope * x
    }
}
