//! Extractions, packages and products counted by band.

use crate::judge::packages::{surely_over, surely_within};
use crate::model::package::Standing;
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::rule::Limit;
use crate::model::statistics::{Counts, ExtractionCounts, PackageCounts, ProductCounts};
use crate::model::verdict::{ProductVerdict, Verdict};

/// Counts everything by band, each thing once.
pub fn count(verdicts: &[ProductVerdict], limit: Limit) -> Counts {
    let mut counts = Counts::default();
    for verdict in verdicts {
        count_product(verdict.verdict, &mut counts.products);
        for package in &verdict.packages {
            count_package(package.standing, &mut counts.packages);
            for extraction in &package.pair.extractions {
                count_extraction(extraction, limit, &mut counts.extractions);
            }
        }
    }
    counts
}

fn count_product(verdict: Verdict, counts: &mut ProductCounts) {
    *match verdict {
        Verdict::WithinLimit(_) => &mut counts.within_limit,
        Verdict::OverLimit => &mut counts.over_limit,
        Verdict::NoVerdict => &mut counts.no_verdict,
    } += 1;
}

fn count_package(standing: Standing, counts: &mut PackageCounts) {
    *match standing {
        Standing::BelowQuantification => &mut counts.below_quantification,
        Standing::Within => &mut counts.within,
        Standing::Over => &mut counts.over,
        Standing::Unresolved => &mut counts.unresolved,
        Standing::Inconclusive => &mut counts.inconclusive,
    } += 1;
}

/// An extraction counts by its own reading; one that is set aside, in conflict, unreadable or on neither side is unusable.
fn count_extraction(row: &PairedExtraction, limit: Limit, counts: &mut ExtractionCounts) {
    let used = (row.usage == Usage::Used).then_some(&row.extraction.outcome);
    *match used.and_then(|outcome| outcome.reading()) {
        Some(reading) if surely_over(&reading, limit) => &mut counts.over,
        Some(reading) if surely_within(&reading, limit) => match reading.as_below() {
            Some(_) => &mut counts.below_quantification,
            None => &mut counts.within,
        },
        _ => &mut counts.unusable,
    } += 1;
}
