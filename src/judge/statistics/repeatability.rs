//! The programme's own repeatability, from its duplicates.

use crate::judge::paper::twelve_digits;
use crate::judge::statistics::binomial::CONFIDENCE;
use crate::judge::statistics::distributions::chi_squared_quantile;
use crate::judge::statistics::duplicates::{Duplicate, LabDuplicate};
use crate::model::rule::Limit;
use crate::model::statistics::{Bounds, Repeatability};
use std::collections::BTreeSet;

/// Below so many pairs a lab or a level gets no figure of its own: its interval would span a factor of three.
const ENOUGH_PAIRS: usize = 5;

/// Repeatability of all pairs, then by lab, then below the limit and from it on.
///
/// Every pair with both extractions measured is in it, disagreeing ones too: leaving out the widest would flatter the lab.
pub fn repeatability(duplicates: &[LabDuplicate<'_>], limit: Limit) -> Vec<Repeatability> {
    let labs: BTreeSet<&str> = duplicates.iter().map(|duplicate| duplicate.lab).collect();
    let by_lab = labs.into_iter().map(|lab| {
        (
            lab.to_owned(),
            pairs(duplicates, |duplicate| duplicate.lab == lab),
        )
    });
    let low = |duplicate: &LabDuplicate<'_>| duplicate.pair.mean() < limit.ppm.0;
    let by_level = [
        (format!("below {} ppm", limit.ppm.0), pairs(duplicates, low)),
        (
            format!("{} ppm and above", limit.ppm.0),
            pairs(duplicates, |duplicate| !low(duplicate)),
        ),
    ];
    let groups = by_lab
        .chain(by_level)
        .filter(|(_, pairs)| pairs.len() >= ENOUGH_PAIRS);
    std::iter::once(("all".to_owned(), pairs(duplicates, |_| true)))
        .chain(groups)
        .filter_map(|(of, pairs)| {
            Some(Repeatability {
                of,
                pairs: pairs.len(),
                relative_s: relative_s(&pairs)?,
                interval: interval(relative_s(&pairs)?, pairs.len(), CONFIDENCE)?,
            })
        })
        .collect()
}

fn pairs(
    duplicates: &[LabDuplicate<'_>],
    of: impl Fn(&LabDuplicate<'_>) -> bool,
) -> Vec<Duplicate> {
    let chosen = duplicates.iter().filter(|duplicate| of(duplicate));
    chosen.map(|duplicate| duplicate.pair).collect()
}

/// Repeatability standard deviation of pairs at one level: s_r = sqrt(sum d^2 / 2n), in ppm, with n degrees of freedom.
/// None of no pairs.
pub fn s_r(pairs: &[Duplicate]) -> Option<f64> {
    let squares = pairs.iter().map(|pair| pair.difference().powi(2));
    root_mean_half(squares, pairs.len())
}

/// The same relative to the level: sqrt(sum (d / mean)^2 / 2n), a fraction. A pair of zeros counts as no difference; none
/// of no pairs.
pub fn relative_s(pairs: &[Duplicate]) -> Option<f64> {
    let squares = pairs
        .iter()
        .map(|pair| pair.relative().unwrap_or(0.0).powi(2));
    root_mean_half(squares, pairs.len())
}

fn root_mean_half(squares: impl Iterator<Item = f64>, n: usize) -> Option<f64> {
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
            s_r(&pairs).map(|s| format!("{s:.4}")),
            Some("2.1608".into())
        );
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
}
