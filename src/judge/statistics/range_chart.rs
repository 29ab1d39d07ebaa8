//! Range control chart of the duplicates, relative to their level.

use crate::judge::paper::{self, twelve_digits};
use crate::judge::statistics::duplicates::LabDuplicate;
use crate::model::ppm::Ppm;
use crate::model::statistics::{RangeChart, RangeLines, RangePoint};

/// Upper control limit of the range of two in mean ranges: D4 = 1 + 3 d3 / d2 with d2 = 2 / sqrt(pi) and
/// d3 = sqrt(2 - 4 / pi); 3.267 in print.
///
/// 3 sqrt(pi / 2 - 1) + 1: the lower limit D3 is 0 for two results.
pub fn d4() -> f64 {
    1.0 + 3.0 * (std::f64::consts::FRAC_PI_2 - 1.0).sqrt()
}

/// Fewer agreeing pairs than this make no centre line.
const ENOUGH_PAIRS: usize = 5;

/// The chart; none without a pair, and without lines below five agreeing pairs.
///
/// Each range is in per cent of its pair's mean, since scatter grows with the level, and is held against what two readings
/// of that mean may differ by, whatever repeats the package has. The centre is the mean range of the agreeing pairs: one
/// hot spot must not hide the next.
pub fn range_chart(duplicates: &[LabDuplicate<'_>]) -> Option<RangeChart> {
    let lines = lines(duplicates);
    let points: Vec<RangePoint> = duplicates
        .iter()
        .filter_map(|duplicate| point(duplicate, percent(duplicate)?, lines))
        .collect();
    (!points.is_empty()).then(|| RangeChart {
        points,
        lines: lines.map(|lines| RangeLines {
            centre: twelve_digits(lines.centre),
            upper: twelve_digits(lines.upper),
        }),
    })
}

fn percent(duplicate: &LabDuplicate<'_>) -> Option<f64> {
    duplicate.pair.relative().map(|share| 100.0 * share)
}

fn lines(duplicates: &[LabDuplicate<'_>]) -> Option<RangeLines> {
    let agreeing: Vec<f64> = duplicates
        .iter()
        .filter(|duplicate| duplicate.agrees())
        .filter_map(percent)
        .map(f64::abs)
        .collect();
    if agreeing.len() < ENOUGH_PAIRS {
        return None;
    }
    let centre = agreeing.iter().sum::<f64>() / agreeing.len() as f64;
    Some(RangeLines {
        centre,
        upper: d4() * centre,
    })
}

fn point(
    duplicate: &LabDuplicate<'_>,
    percent: f64,
    lines: Option<RangeLines>,
) -> Option<RangePoint> {
    let allowed = duplicate.comparison.allowed.0 / duplicate.pair.mean();
    let beyond = |lines: RangeLines| Ppm(percent.abs()).compare(Ppm(lines.upper)).is_gt();
    Some(RangePoint {
        package_code: duplicate.package.pair.package.package_code.clone(),
        lab: duplicate.lab.to_owned(),
        mean: paper::mean(&[duplicate.pair.first, duplicate.pair.second])?,
        signed_percent: twelve_digits(percent),
        allowed_percent: twelve_digits(100.0 * allowed),
        agrees: duplicate.agrees(),
        decided_on: duplicate.decided_on(),
        beyond: lines.is_some_and(beyond),
    })
}
