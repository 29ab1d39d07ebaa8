//! Each product once: its rounds are not independent of one another.

use crate::model::verdict::{ProductVerdict, Verdict};
use std::collections::BTreeMap;

/// Each product's latest round with a verdict, or its latest one where none has; in the order of the verdicts.
///
/// A product is often tested again because it failed: counted by rounds it would stand for two products that were picked
/// apart, and every interval would be narrower than the data allow. The latest round is the one with the latest day; of
/// those without a day, or of one day, the last in the order of the register.
pub fn once(verdicts: &[ProductVerdict]) -> Vec<&ProductVerdict> {
    let mut latest: BTreeMap<&str, (usize, &ProductVerdict)> = BTreeMap::new();
    for (at, verdict) in verdicts.iter().enumerate() {
        let kept = latest
            .entry(&verdict.product.product_id)
            .or_insert((at, verdict));
        if rank(verdict) >= rank(kept.1) {
            *kept = (at, verdict);
        }
    }
    let mut chosen: Vec<(usize, &ProductVerdict)> = latest.into_values().collect();
    chosen.sort_by_key(|(at, _)| *at);
    chosen.into_iter().map(|(_, verdict)| verdict).collect()
}

fn rank(verdict: &ProductVerdict) -> (bool, Option<chrono::NaiveDate>) {
    (has_verdict(verdict), verdict.day())
}

/// Rounds with a verdict that are left out because the same product has a later one.
pub fn superseded(verdicts: &[ProductVerdict], once: &[&ProductVerdict]) -> u64 {
    let all = verdicts.iter().filter(|verdict| has_verdict(verdict));
    let kept = once.iter().filter(|verdict| has_verdict(verdict));
    (all.count() - kept.count()) as u64
}

fn has_verdict(verdict: &ProductVerdict) -> bool {
    verdict.verdict != Verdict::NoVerdict
}
