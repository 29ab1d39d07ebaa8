//! The programme's own repeatability, from its duplicates.

use crate::judge::paper::twelve_digits;
use crate::judge::statistics::binomial::{CONFIDENCE, one_sided_lower};
use crate::judge::statistics::distributions::{chi_squared_quantile, normal_quantile};
use crate::judge::statistics::duplicates::{Duplicate, LabDuplicate};
use crate::model::rule::Limit;
use crate::model::statistics::{Assumption, AssumptionFinding, Bounds, PairsOf, Repeatability};
use std::collections::BTreeSet;

/// Below so many pairs a lab or a level gets no figure of its own: its interval would span a factor of three.
pub const ENOUGH_PAIRS: usize = 5;

/// The part of sound pairs that the comparison flags: f(n) of ISO 5725-6 is the 95 % point of the range.
pub const FLAGGED_BY_CHANCE: f64 = 0.05;

/// What is left of a standard deviation where pairs wider apart than 2.8 of it are taken out: of a normal deviate cut at
/// z = 2.8 / sqrt(2) it is sqrt(1 - 2 z phi(z) / (2 Phi(z) - 1)) = 0.875.
const LEFT_WHERE_CUT: f64 = 0.875;

/// Repeatability of all pairs, then by lab, then below the limit and from it on.
///
/// Flagged pairs are out: one hot spot says nothing of the assay's scatter, and would be laid at a named lab's door. Since
/// that alone makes the figure a little small, one that wide pairs hardly move stands beside it, from every pair.
pub fn repeatability(duplicates: &[LabDuplicate<'_>], limit: Limit) -> Vec<Repeatability> {
    let chosen = |of: &dyn Fn(&LabDuplicate<'_>) -> bool| {
        let chosen = duplicates.iter().filter(|duplicate| of(duplicate));
        chosen.collect::<Vec<_>>()
    };
    let labs: BTreeSet<&str> = duplicates.iter().map(|duplicate| duplicate.lab).collect();
    let by_lab = labs.into_iter().map(|lab| {
        let of_lab = chosen(&|duplicate| duplicate.lab == lab);
        (PairsOf::Lab(lab.to_owned()), of_lab)
    });
    let low = |duplicate: &LabDuplicate<'_>| duplicate.pair.mean() < limit.ppm.0;
    let by_level = [
        (PairsOf::BelowLimit, chosen(&low)),
        (PairsOf::FromLimit, chosen(&|duplicate| !low(duplicate))),
    ];
    let groups = by_lab
        .chain(by_level)
        .filter(|(_, of)| agreeing(of).len() >= ENOUGH_PAIRS);
    std::iter::once((PairsOf::All, chosen(&|_| true)))
        .chain(groups)
        .filter_map(|(of, duplicates)| of_pairs(of, &duplicates))
        .collect()
}

fn of_pairs(of: PairsOf, duplicates: &[&LabDuplicate<'_>]) -> Option<Repeatability> {
    let agreeing = agreeing(duplicates);
    let all: Vec<Duplicate> = duplicates.iter().map(|duplicate| duplicate.pair).collect();
    let relative_s = relative_s(&agreeing)?;
    Some(Repeatability {
        of,
        pairs: agreeing.len(),
        flagged: all.len() - agreeing.len(),
        relative_s,
        interval: interval(relative_s, agreeing.len(), CONFIDENCE)?,
        resistant_s: resistant_s(&all)?,
    })
}

fn agreeing(duplicates: &[&LabDuplicate<'_>]) -> Vec<Duplicate> {
    let agreeing = duplicates.iter().filter(|duplicate| duplicate.agrees());
    agreeing.map(|duplicate| duplicate.pair).collect()
}

/// The repeatability of all pairs against the one that the settings assume; none below [`ENOUGH_PAIRS`].
///
/// They differ where the interval of the agreeing pairs does not hold the assumed figure. Leaving out flagged pairs hides
/// scatter in part, so that it must lie below by that part too to be called smaller; and where more pairs are flagged than
/// the 5 in 100 that chance gives (one-sided, 95 %), it is called larger, if the resistant figure is. The figure proposed
/// is the agreeing pairs', or the resistant one where pairs are flagged, to a whole per cent.
pub fn against_assumed(all: &Repeatability, assumed: f64) -> Option<Assumption> {
    if all.pairs < ENOUGH_PAIRS {
        return None;
    }
    let (flagged, pairs) = (all.flagged as u64, (all.flagged + all.pairs) as u64);
    let often = one_sided_lower(flagged, pairs, CONFIDENCE)? > FLAGGED_BY_CHANCE;
    let cut = if flagged > 0 { LEFT_WHERE_CUT } else { 1.0 };
    let own = if flagged > 0 {
        all.resistant_s
    } else {
        all.relative_s
    };
    // No pair scatters by nothing: a proposal of 0 would flag every difference.
    let proposal = ((own * 100.0).round() / 100.0).max(0.01);
    let finding = if all.interval.lower > assumed || (often && all.resistant_s > assumed) {
        AssumptionFinding::Larger {
            proposal: proposal.max((all.relative_s * 100.0).round() / 100.0),
        }
    } else if all.interval.upper / cut < assumed && own < assumed {
        AssumptionFinding::Smaller { proposal }
    } else {
        AssumptionFinding::Fits
    };
    Some(Assumption { assumed, finding })
}

/// The chance that at least one of so many sound packages is found to disagree: 1 - 0.95^packages, 14.3 % for three.
pub fn false_alarm(packages: usize) -> f64 {
    twelve_digits(1.0 - (1.0 - FLAGGED_BY_CHANCE).powf(packages as f64))
}

/// Relative repeatability from the median: median of |d| / mean, over 0.954, the median of the difference of two results
/// in their standard deviations (sqrt(2) times the upper quartile of the normal distribution). A few wide pairs hardly
/// move it. None of no pairs.
pub fn resistant_s(pairs: &[Duplicate]) -> Option<f64> {
    let mut relative: Vec<f64> = pairs
        .iter()
        .map(|pair| pair.relative().unwrap_or(0.0).abs())
        .collect();
    relative.sort_by(f64::total_cmp);
    let (low, high) = (
        relative.get(relative.len().checked_sub(1)? / 2)?,
        relative.get(relative.len() / 2)?,
    );
    let median = (low + high) / 2.0;
    Some(twelve_digits(
        median / (std::f64::consts::SQRT_2 * normal_quantile(0.75)),
    ))
}

/// Repeatability standard deviation of pairs, relative to the level: sqrt(sum (d / mean)^2 / 2n), a fraction, with n degrees
/// of freedom. A pair of zeros counts as no difference; none of no pairs.
pub fn relative_s(pairs: &[Duplicate]) -> Option<f64> {
    let squares = pairs
        .iter()
        .map(|pair| pair.relative().unwrap_or(0.0).powi(2));
    let n = pairs.len();
    (n > 0).then(|| twelve_digits((squares.sum::<f64>() / (2 * n) as f64).sqrt()))
}

/// Interval of a standard deviation on `df` degrees of freedom: s sqrt(df / chi squared) at both tails. None without any.
pub fn interval(s: f64, df: usize, confidence: f64) -> Option<Bounds> {
    let df = df as f64;
    let tail = (1.0 - confidence) / 2.0;
    let end = |p| {
        Some(twelve_digits(
            s * (df / chi_squared_quantile(p, df)?).sqrt(),
        ))
    };
    Some(Bounds {
        lower: end(1.0 - tail)?,
        upper: end(tail)?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ppm::Ppm;

    #[test]
    fn six_pairs_worked_by_hand() {
        let pairs = [
            (6.1, 7.3),
            (8.0, 6.8),
            (7.2, 7.6),
            (18.2, 23.9),
            (16.4, 19.5),
            (21.0, 17.7),
        ];
        let pairs = pairs.map(|(a, b)| Duplicate {
            first: Ppm(a),
            second: Ppm(b),
        });
        assert_eq!(
            relative_s(&pairs).map(|s| format!("{s:.3}")),
            Some("0.127".into())
        );
    }

    #[test]
    fn few_pairs_leave_a_wide_interval() {
        let factors =
            |n| interval(1.0, n, CONFIDENCE).map(|b| format!("{:.2} {:.2}", b.lower, b.upper));
        assert_eq!(factors(10), Some("0.70 1.75".into()));
        assert_eq!(factors(100), Some("0.88 1.16".into()));
        assert_eq!(factors(0), None);
    }

    #[test]
    fn the_median_is_not_moved_by_one_hot_spot() {
        let pair = |a, b| Duplicate {
            first: Ppm(a),
            second: Ppm(b),
        };
        let mut pairs = vec![pair(9.0, 11.0), pair(19.0, 21.0), pair(48.5, 51.5)];
        let calm = resistant_s(&pairs);
        // Median of 0.2, 0.1 and 0.06 is 0.1; 0.1 / 0.95387 = 0.10484.
        assert_eq!(calm.map(|s| format!("{s:.5}")), Some("0.10484".into()));
        pairs.push(pair(5.0, 160.0));
        assert!(relative_s(&pairs) > Some(0.6));
        assert!(resistant_s(&pairs) < Some(0.16));
        assert_eq!(resistant_s(&[]), None);
    }

    #[test]
    fn one_of_three_sound_pairs_is_flagged_in_a_seventh_of_all_cases() {
        assert_eq!(format!("{:.4}", false_alarm(3)), "0.1426");
        assert_eq!(false_alarm(0), 0.0);
    }

    #[test]
    fn what_is_left_of_a_cut_deviation_is_so_by_simpson() {
        // The variance of a normal deviate within +- z, by quadrature.
        let z = 2.8 / 2_f64.sqrt();
        let density = |x: f64| (-x * x / 2.0).exp();
        let (mut mass, mut second) = (0.0, 0.0);
        for step in 0..2_000 {
            let x = -z + (f64::from(step) + 0.5) * z / 1_000.0;
            mass += density(x);
            second += density(x) * x * x;
        }
        assert!(((second / mass).sqrt() - LEFT_WHERE_CUT).abs() < 0.001);
    }

    fn found(pairs: usize, flagged: usize, relative_s: f64, resistant_s: f64) -> Repeatability {
        Repeatability {
            of: PairsOf::All,
            pairs,
            flagged,
            relative_s,
            interval: interval(relative_s, pairs, CONFIDENCE).expect("pairs"),
            resistant_s,
        }
    }

    #[test]
    fn the_assumed_figure_is_questioned_only_where_the_pairs_exclude_it() {
        let finding = |of: Repeatability| against_assumed(&of, 0.15).map(|a| a.finding);
        use AssumptionFinding::{Fits, Larger, Smaller};
        assert_eq!(finding(found(24, 0, 0.128, 0.13)), Some(Fits));
        assert_eq!(
            finding(found(40, 0, 0.062, 0.058)),
            Some(Smaller { proposal: 0.06 })
        );
        assert_eq!(
            finding(found(30, 0, 0.24, 0.26)),
            Some(Larger { proposal: 0.24 })
        );
        // What cutting alone can do is no finding; a third of all pairs flagged is one.
        assert_eq!(finding(found(200, 10, 0.131, 0.148)), Some(Fits));
        assert_eq!(
            finding(found(20, 10, 0.13, 0.31)),
            Some(Larger { proposal: 0.31 })
        );
        assert_eq!(finding(found(4, 0, 0.01, 0.01)), None);
    }
}
