//! The comparison of a package's readings by ISO 5725-6:1994, clause 5.2, carried over to intervals.

use crate::judge::paper;
use crate::model::extraction::Extraction;
use crate::model::pair::Comparison;
use crate::model::ppm::Ppm;

/// Critical range factors f(n) of ISO 5725-6 for n = 2 … 10 results: 95 % points of the studentised range, one decimal.
pub const RANGE_FACTORS: [f64; 9] = [2.8, 3.3, 3.6, 3.9, 4.0, 4.2, 4.3, 4.4, 4.5];

/// Holds the readings of one package against each other; none where fewer than two have a reading.
///
/// - gap = max(0, largest lower bound - smallest upper bound): the smallest difference that the reports allow;
/// - m = where there is a gap, the mean of the readings, each taken at its point that is nearest to the middle of those two
///   bounds (for two readings that is the middle, for figures their mean); else the mean of all finite bounds;
/// - s = [`characteristic`] of m; allowed = f(n) s.
///
/// All in ppm. Nothing is rounded; `s` and `allowed` keep 12 significant digits, far beyond what a decision can see.
pub fn compare(readings: &[&Extraction], relative_repeatability: f64) -> Option<Comparison> {
    let intervals: Vec<_> = readings
        .iter()
        .filter_map(|extraction| Some((extraction, extraction.outcome.reading()?)))
        .collect();
    let factor = range_factor(intervals.len())?;
    let in_force = intervals
        .iter()
        .flat_map(|(extraction, reading)| [Some(extraction.lloq), reading.as_below()]);
    let q = in_force.flatten().fold(Ppm::ZERO, Ppm::max);
    let readings = || intervals.iter().map(|(_, reading)| reading);
    let lower = readings().map(|reading| reading.lower);
    let largest_lower = lower.fold(Ppm::ZERO, Ppm::max);
    let upper = readings().filter_map(|reading| reading.upper);
    let smallest_upper = upper.reduce(Ppm::min);
    let apart = smallest_upper
        .map(|upper| (upper, paper::difference(largest_lower, upper)))
        .filter(|(_, gap)| gap.0 > 0.0);
    let (gap, m) = match apart {
        Some((upper, gap)) => {
            // Each reading where it comes nearest to the middle, so that the one under judgement does not widen its own
            // tolerance more than it must.
            let middle = paper::mean(&[largest_lower, upper])?;
            let nearest: Vec<Ppm> = readings()
                .map(|reading| {
                    let high = reading.upper.map_or(middle, |upper| middle.min(upper));
                    high.max(reading.lower)
                })
                .collect();
            (gap, paper::mean(&nearest)?)
        }
        None => {
            let bounds = readings().flat_map(|reading| [Some(reading.lower), reading.upper]);
            let finite: Vec<Ppm> = bounds.flatten().collect();
            (Ppm::ZERO, paper::mean(&finite)?)
        }
    };
    let s = characteristic(m, q, relative_repeatability);
    Some(Comparison {
        n: intervals.len(),
        q,
        gap,
        m,
        s: Ppm(paper::twelve_digits(s.0)),
        factor,
        allowed: Ppm(paper::twelve_digits(factor * s.0)),
    })
}

/// The characteristic function of precision: s(m) = sqrt((q / 10)^2 + (relative_repeatability m)^2), in ppm.
///
/// A tenth of the quantification limit q is the part that does not shrink with the level (about the standard deviation
/// at the limit itself where that is set at ten of them); the rest grows with it.
pub fn characteristic(m: Ppm, q: Ppm, relative_repeatability: f64) -> Ppm {
    let constant = q.0 / 10.0;
    let growing = relative_repeatability * m.0;
    Ppm((constant * constant + growing * growing).sqrt())
}

/// f(n); none below two results. Beyond ten the last one stands, which is a little too strict.
pub fn range_factor(n: usize) -> Option<f64> {
    let last = RANGE_FACTORS.len() - 1;
    n.checked_sub(2).map(|at| RANGE_FACTORS[at.min(last)])
}
