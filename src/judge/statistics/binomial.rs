//! A share, and how far the true share may be from it.
//!
//! All assume that what was counted was drawn at random from everything of its kind.

use crate::judge::paper::twelve_digits;
use crate::judge::statistics::distributions::{beta_quantile, normal_quantile};
use crate::model::statistics::{Bounds, Share};
use std::collections::BTreeMap;

/// The confidence of every printed interval.
pub const CONFIDENCE: f64 = 0.95;

/// `k` of `n` with its two-sided 95 % intervals; none where there is nothing to count.
pub fn share(k: u64, n: u64) -> Option<Share> {
    Some(Share {
        k,
        n,
        exact: clopper_pearson(k, n, CONFIDENCE)?,
        wilson: wilson(k, n, CONFIDENCE)?,
    })
}

/// Shares already worked out: a programme has few different ones, and the exact bounds are dear.
#[derive(Debug, Default)]
pub struct Shares {
    two_sided: BTreeMap<(u64, u64), Option<Share>>,
    one_sided: BTreeMap<(u64, u64), Option<f64>>,
}

impl Shares {
    /// As [`share`].
    pub fn share(&mut self, k: u64, n: u64) -> Option<Share> {
        *self.two_sided.entry((k, n)).or_insert_with(|| share(k, n))
    }

    /// `least` of `n` where up to `most` may be: each interval goes from the lower end for `least` to the upper end for `most`.
    pub fn share_between(&mut self, least: u64, most: u64, n: u64) -> Option<Share> {
        let (least, most) = (self.share(least, n)?, self.share(most, n)?);
        let from = |low: Bounds, high: Bounds| Bounds {
            lower: low.lower,
            upper: high.upper,
        };
        Some(Share {
            exact: from(least.exact, most.exact),
            wilson: from(least.wilson, most.wilson),
            ..least
        })
    }

    /// As [`one_sided_upper`], at the confidence of every interval.
    pub fn one_sided_upper(&mut self, k: u64, n: u64) -> Option<f64> {
        *self
            .one_sided
            .entry((k, n))
            .or_insert_with(|| one_sided_upper(k, n, CONFIDENCE))
    }
}

/// Exact two-sided interval (Clopper and Pearson, Biometrika 26:404, 1934); none where `n` is 0 or `k` above it.
///
/// lower = Beta(a/2; k, n - k + 1), upper = Beta(1 - a/2; k + 1, n - k), a = 1 - confidence; 0 at k = 0 and 1 at k = n.
pub fn clopper_pearson(k: u64, n: u64, confidence: f64) -> Option<Bounds> {
    let tail = (1.0 - confidence) / 2.0;
    Some(Bounds {
        lower: exact_lower(k, n, tail)?,
        upper: exact_upper(k, n, tail)?,
    })
}

/// Exact one-sided upper bound: the share that would still give so few in `1 - confidence` of all cases.
///
/// With none of n over it is 1 - (1 - confidence)^(1/n): 63.2 % for 0 of 3. None where `n` is 0 or `k` above it.
pub fn one_sided_upper(k: u64, n: u64, confidence: f64) -> Option<f64> {
    exact_upper(k, n, 1.0 - confidence)
}

/// Exact one-sided lower bound, likewise.
pub fn one_sided_lower(k: u64, n: u64, confidence: f64) -> Option<f64> {
    exact_lower(k, n, 1.0 - confidence)
}

/// Score interval (Wilson, J Am Stat Assoc 22:209, 1927): it is narrower than the exact one and holds on average.
///
/// (p + z^2/2n ± z sqrt(p (1 - p)/n + z^2/4n^2)) / (1 + z^2/n). None where `n` is 0 or `k` above it.
pub fn wilson(k: u64, n: u64, confidence: f64) -> Option<Bounds> {
    if n == 0 || k > n {
        return None;
    }
    let z = normal_quantile(1.0 - (1.0 - confidence) / 2.0);
    let (p, n_) = (k as f64 / n as f64, n as f64);
    let z2 = z * z;
    let middle = p + z2 / (2.0 * n_);
    let reach = z * (p * (1.0 - p) / n_ + z2 / (4.0 * n_ * n_)).sqrt();
    let scale = 1.0 + z2 / n_;
    Some(Bounds {
        lower: if k == 0 {
            0.0
        } else {
            twelve_digits((middle - reach) / scale)
        },
        upper: if k == n {
            1.0
        } else {
            twelve_digits((middle + reach) / scale)
        },
    })
}

/// How many, none of them over, would show at this confidence that the share over is below `share`: ceil(ln(1 -
/// confidence) / ln(1 - share)). None where `share` is not between 0 and 1.
pub fn needed_to_exclude(share: f64, confidence: f64) -> Option<u64> {
    if !(share > 0.0 && share < 1.0) {
        return None;
    }
    let exact = (1.0 - confidence).ln() / (1.0 - share).ln();
    // A whole number that floats miss by a hair is that number.
    let nearest = exact.round();
    let needed = if (exact - nearest).abs() <= 1e-9 * nearest {
        nearest
    } else {
        exact.ceil()
    };
    Some(needed as u64)
}

fn exact_lower(k: u64, n: u64, tail: f64) -> Option<f64> {
    match k {
        _ if n == 0 || k > n => None,
        0 => Some(0.0),
        _ => beta_quantile(tail, k as f64, (n - k) as f64 + 1.0).map(twelve_digits),
    }
}

fn exact_upper(k: u64, n: u64, tail: f64) -> Option<f64> {
    match k {
        _ if n == 0 || k > n => None,
        _ if k == n => Some(1.0),
        _ => beta_quantile(1.0 - tail, k as f64 + 1.0, (n - k) as f64).map(twelve_digits),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_counted_is_no_share() {
        assert_eq!(share(0, 0), None);
        assert_eq!(share(2, 1), None);
        assert_eq!(needed_to_exclude(0.0, CONFIDENCE), None);
    }

    #[test]
    fn so_many_are_needed_to_exclude_a_share() {
        let needed = [0.5, 0.3, 0.2, 0.1, 0.05, 0.02, 0.01]
            .map(|share| needed_to_exclude(share, CONFIDENCE));
        assert_eq!(needed, [5, 9, 14, 29, 59, 149, 299].map(Some));
    }
}
