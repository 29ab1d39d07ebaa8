//! Early and late halves of each lab's duplicates: does its scatter change?

use crate::judge::grouped;
use crate::judge::paper::twelve_digits;
use crate::judge::statistics::distributions::f_above;
use crate::judge::statistics::duplicates::{Duplicate, LabDuplicate};
use crate::judge::statistics::repeatability::relative_s;
use crate::model::statistics::{Drift, FTest};

/// Fewer pairs than this in a half show nothing: F would have to pass seven.
const ENOUGH_PAIRS: usize = 5;

/// The two halves of each lab's dated duplicates, by lab; labs with fewer than ten are left out, and so are flagged pairs:
/// F takes one hot spot for a lab that has grown worse, and the lab is named.
pub fn drift(duplicates: &[LabDuplicate<'_>]) -> Vec<Drift> {
    let dated = duplicates
        .iter()
        .filter(|duplicate| duplicate.tested_on.is_some() && duplicate.agrees());
    grouped(dated, |duplicate| duplicate.lab)
        .into_iter()
        .filter_map(|(lab, duplicates)| {
            let pairs: Vec<Duplicate> = duplicates.iter().map(|one| one.pair).collect();
            let (early, late) = pairs.split_at(pairs.len() / 2);
            if early.len() < ENOUGH_PAIRS {
                return None;
            }
            Some(Drift {
                lab: lab.to_owned(),
                early: early.len(),
                late: late.len(),
                early_s: relative_s(early)?,
                late_s: relative_s(late)?,
                f_test: two_sided(early, late)?,
            })
        })
        .collect()
}

/// F = (late s / early s)^2 on (late, early) pairs, with the two-sided p value: twice the smaller tail, at most 1. None
/// where the early half does not vary at all.
fn two_sided(early: &[Duplicate], late: &[Duplicate]) -> Option<FTest> {
    let (early_s, late_s) = (relative_s(early)?, relative_s(late)?);
    if early_s <= 0.0 {
        return None;
    }
    let f = (late_s / early_s).powi(2);
    let (df1, df2) = (late.len() as f64, early.len() as f64);
    let above = f_above(f, df1, df2)?;
    Some(FTest {
        f: twelve_digits(f),
        df1,
        df2,
        p: twelve_digits((2.0 * above.min(1.0 - above)).min(1.0)),
    })
}
