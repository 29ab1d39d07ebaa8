//! Categories held against all others: Fisher's exact test, adjusted by Holm.

use crate::judge::paper::twelve_digits;
use crate::model::statistics::{Contrast, Group, Share};

/// Products with a verdict that a category, and the rest, must each have before it is held against them.
const ENOUGH_PRODUCTS: u64 = 10;

/// A table of two groups by two outcomes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TwoByTwo {
    /// First group: over, not over.
    pub first: [u64; 2],
    /// Second group: over, not over.
    pub second: [u64; 2],
}

/// Each category that has enough products against all others together, in the order of the groups.
pub fn contrasts(categories: &[Group]) -> Vec<Contrast> {
    let shares: Vec<(&Group, Share)> = categories
        .iter()
        .filter_map(|group| Some((group, group.share?)))
        .collect();
    let over: u64 = shares.iter().map(|(_, share)| share.k).sum();
    let all: u64 = shares.iter().map(|(_, share)| share.n).sum();
    let tested: Vec<(&Group, f64)> = shares
        .iter()
        .filter(|(_, share)| {
            share.n >= ENOUGH_PRODUCTS && all - share.n >= ENOUGH_PRODUCTS && over > 0
        })
        .map(|(group, share)| {
            let table = TwoByTwo {
                first: [share.k, share.n - share.k],
                second: [over - share.k, all - share.n - (over - share.k)],
            };
            (*group, fisher(&table))
        })
        .collect();
    let p: Vec<f64> = tested.iter().map(|(_, p)| *p).collect();
    tested
        .into_iter()
        .zip(holm(&p))
        .map(|((group, p), p_holm)| Contrast {
            category: group.name.clone(),
            p,
            p_holm,
        })
        .collect()
}

/// Two-sided p value of Fisher's exact test: the sum over all tables with these margins that are no more probable than the
/// one found (1e-7 of its probability is taken for equal, as is common practice). 1 where a margin is empty.
pub fn fisher(table: &TwoByTwo) -> f64 {
    let ([a, b], [c, d]) = (table.first, table.second);
    let (row, other_row, column) = (a + b, c + d, a + c);
    let lowest = column.saturating_sub(other_row);
    let highest = column.min(row);
    // Weights relative to the most probable table: ratios of neighbours need no factorials, and none overflows.
    let ratio = |x: u64| {
        let up = (row - x) as f64 * (column - x) as f64;
        let down = (x + 1) as f64 * (other_row + x + 1 - column) as f64;
        up / down
    };
    let mode = (lowest..highest)
        .find(|x| ratio(*x) < 1.0)
        .unwrap_or(highest);
    let mut weights = vec![1.0; (highest - lowest + 1) as usize];
    let at = |x: u64| (x - lowest) as usize;
    for x in mode..highest {
        weights[at(x + 1)] = weights[at(x)] * ratio(x);
    }
    for x in (lowest..mode).rev() {
        weights[at(x)] = weights[at(x + 1)] / ratio(x);
    }
    let found = weights[at(a)] * (1.0 + 1e-7);
    let total: f64 = weights.iter().sum();
    let extreme: f64 = weights.iter().filter(|weight| **weight <= found).sum();
    twelve_digits((extreme / total).min(1.0))
}

/// Holm's step-down adjustment (Scand J Stat 6:65, 1979) in the order given: the i-th smallest of m p values is multiplied
/// by m - i + 1, is not below any smaller one's, and is at most 1.
pub fn holm(p: &[f64]) -> Vec<f64> {
    let mut order: Vec<usize> = (0..p.len()).collect();
    order.sort_by(|a, b| p[*a].total_cmp(&p[*b]));
    let mut adjusted = vec![0.0; p.len()];
    let mut largest = 0.0_f64;
    for (rank, at) in order.into_iter().enumerate() {
        largest = largest.max((p.len() - rank) as f64 * p[at]).min(1.0);
        adjusted[at] = twelve_digits(largest);
    }
    adjusted
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_tested_leaves_nothing_to_adjust() {
        assert!(holm(&[]).is_empty());
    }
}
