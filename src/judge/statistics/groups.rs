//! Shares over the limit by group, and counts by quarter.

use crate::judge::statistics::binomial::Shares;
use crate::model::registers::{Oats, Product};
use crate::model::statistics::{Group, GroupedBy, Grouping, QuarterCounts};
use crate::model::verdict::{Grade, ProductVerdict, Verdict};
use chrono::Datelike;
use std::collections::BTreeMap;

/// Products grouped by category, by certification and by what is known of their oats.
///
/// A share is over the products with a verdict. Groups without a product are left out.
pub fn groupings(verdicts: &[&ProductVerdict], shares: &mut Shares) -> Vec<Grouping> {
    [
        (GroupedBy::Category, category as fn(&Product) -> GroupName),
        (GroupedBy::Certification, certification),
        (GroupedBy::Oats, oats),
    ]
    .map(|(by, name)| Grouping {
        by,
        groups: groups(verdicts, name, shares),
    })
    .into()
}

/// A group's place in its fixed order, and its name.
type GroupName = (u8, String);

fn category(product: &Product) -> GroupName {
    match &product.category {
        Some(category) => (0, category.clone()),
        None => (1, "no category".into()),
    }
}

fn certification(product: &Product) -> GroupName {
    match product.certifier {
        Some(_) => (0, "certified".into()),
        None => (1, "not certified".into()),
    }
}

fn oats(product: &Product) -> GroupName {
    match product.oats {
        Oats::None => (0, "no oats".into()),
        Oats::Certified => (1, "certified oats".into()),
        Oats::PurityProtocol => (2, "purity-protocol oats".into()),
        Oats::Unverified => (3, "unverified oats".into()),
    }
}

fn groups(
    verdicts: &[&ProductVerdict],
    name: fn(&Product) -> GroupName,
    shares: &mut Shares,
) -> Vec<Group> {
    let mut counted: BTreeMap<GroupName, Tally> = BTreeMap::new();
    for verdict in verdicts {
        let tally = counted.entry(name(&verdict.product)).or_default();
        match verdict.verdict {
            Verdict::OverLimit => tally.over += 1,
            Verdict::WithinLimit(_) => tally.within += 1,
            Verdict::NoVerdict => tally.without += 1,
        }
    }
    counted
        .into_iter()
        .map(|((_, name), tally)| Group {
            name,
            share: shares.share(tally.over, tally.over + tally.within),
            without_verdict: tally.without,
        })
        .collect()
}

#[derive(Default)]
struct Tally {
    over: u64,
    within: u64,
    without: u64,
}

/// Verdicts by the quarter of the last test, else of the last purchase; quarters without any are there with zeros.
pub fn quarters(verdicts: &[&ProductVerdict]) -> Vec<QuarterCounts> {
    let mut counted: BTreeMap<(i32, u32), QuarterCounts> = BTreeMap::new();
    for verdict in verdicts {
        let Some(day) = verdict.day() else { continue };
        let key = (day.year(), day.month0() / 3 + 1);
        let counts = counted.entry(key).or_insert_with(|| empty(key));
        *match verdict.verdict {
            Verdict::OverLimit => &mut counts.over,
            Verdict::NoVerdict => &mut counts.no_verdict,
            Verdict::WithinLimit(Grade::Quantified) => &mut counts.within_quantified,
            Verdict::WithinLimit(Grade::BelowQuantification) => &mut counts.within_below,
        } += 1;
    }
    let (Some((first, _)), Some((last, _))) = (counted.first_key_value(), counted.last_key_value())
    else {
        return Vec::new();
    };
    let next = |(year, quarter): &(i32, u32)| match quarter {
        4 => (year + 1, 1),
        quarter => (*year, quarter + 1),
    };
    std::iter::successors(Some(*first), |key| Some(next(key)))
        .take_while(|key| key <= last)
        .map(|key| counted.get(&key).copied().unwrap_or_else(|| empty(key)))
        .collect()
}

fn empty((year, quarter): (i32, u32)) -> QuarterCounts {
    QuarterCounts {
        year,
        quarter,
        over: 0,
        no_verdict: 0,
        within_quantified: 0,
        within_below: 0,
    }
}
