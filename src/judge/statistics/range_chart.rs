//! Range control chart of the duplicates, relative to their level.

use crate::judge::pairs::range_factor;
use crate::judge::paper::{self, twelve_digits};
use crate::judge::statistics::duplicates::LabDuplicate;
use crate::model::ppm::Ppm;
use crate::model::statistics::{RangeChart, RangePoint};

/// Mean range of two results in standard deviations: d2 = 2 / sqrt(pi).
pub const D2: f64 = std::f64::consts::FRAC_2_SQRT_PI;

/// Upper control limit of the range of two in mean ranges: D4 = 1 + 3 d3 / d2 with d3 = sqrt(2 - 4 / pi); 3.267 in print.
///
/// 3 sqrt(pi / 2 - 1) + 1: the lower limit D3 is 0 for two results.
pub fn d4() -> f64 {
    1.0 + 3.0 * (std::f64::consts::FRAC_PI_2 - 1.0).sqrt()
}

/// Fewer agreeing pairs than this make no centre line.
const ENOUGH_PAIRS: usize = 5;

/// The chart; none below five agreeing pairs.
///
/// Each range is in per cent of its pair's mean, since scatter grows with the level. The centre is the mean range of the
/// agreeing pairs: one hot spot must not hide the next.
pub fn range_chart(duplicates: &[LabDuplicate<'_>]) -> Option<RangeChart> {
    let percent =
        |duplicate: &LabDuplicate<'_>| duplicate.pair.relative().map(|share| 100.0 * share);
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
    let upper = d4() * centre;
    let points = duplicates
        .iter()
        .filter_map(|duplicate| point(duplicate, percent(duplicate)?, upper))
        .collect();
    Some(RangeChart {
        points,
        centre: twelve_digits(centre),
        upper: twelve_digits(upper),
    })
}

fn point(duplicate: &LabDuplicate<'_>, percent: f64, upper: f64) -> Option<RangePoint> {
    let s = duplicate.package.pair.comparison?.s;
    let allowed = range_factor(2)? * s.0 / duplicate.pair.mean();
    Some(RangePoint {
        package_code: duplicate.package.pair.package.package_code.clone(),
        lab: duplicate.lab.to_owned(),
        mean: paper::mean(&[duplicate.pair.first, duplicate.pair.second])?,
        signed_percent: twelve_digits(percent),
        allowed_percent: twelve_digits(100.0 * allowed),
        agrees: duplicate.agrees(),
        beyond: Ppm(percent.abs()).compare(Ppm(upper)).is_gt(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_factors_are_those_in_print() {
        assert_eq!(format!("{D2:.3} {:.3}", d4()), "1.128 3.267");
    }
}
