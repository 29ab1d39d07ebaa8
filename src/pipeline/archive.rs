//! What the archive says: a bag against its manifests, and two bags against each other.

pub use crate::archive::compare::{Amended, Comparison, Sheet, VerdictChange};
use crate::archive::edition::{self, Print};
pub use crate::archive::sheet::{SheetVerification, verify as verify_sheet};
pub use crate::archive::verify::{Fault, FaultKind, Verification, verify};
use crate::archive::{bag, compare as comparing};
use crate::model::ppm::Ppm;
use crate::model::rule::{Limit, Regime};
use crate::render::numbers;
use crate::words::english;
use anyhow::{Result, bail};
use std::path::Path;

/// What a reader of the first bag must know of the second.
///
/// # Errors
/// Where one of them is no bag that `issue` wrote, or the second is the older one.
pub fn compare(first: &Path, second: &Path) -> Result<Comparison> {
    let (first_bag, second_bag) = (edition::read(first)?, edition::read(second)?);
    // A register only grows: the bag that knows less is the older one.
    let is_later = first_bag.issued.len() > second_bag.issued.len()
        || bag::age(first)
            .zip(bag::age(second))
            .is_some_and(|(a, b)| a > b);
    if is_later {
        bail!(
            "{} is the later one of the two. Name the older archive first: `galleyproof compare {} {}`",
            first.display(),
            second.display(),
            first.display()
        );
    }
    let (first, second) = (first_bag, second_bag);
    let rule = second
        .rule
        .as_ref()
        .expect("a bag that was read has a rule");
    let limit = Limit::amount(Ppm(rule.limit_ppm), rule.limit_passes);
    let regime = Regime::ALL.iter().find(|(_, word)| *word == rule.regime);
    let regime = regime.map_or(Regime::Custom, |(regime, _)| *regime);
    let figure = |x| numbers::figure(Ppm(x), limit);
    let print = Print {
        figure: &figure,
        unit: regime.unit(),
        words: english(),
    };
    Ok(comparing::compare(&first, &second, &print))
}
