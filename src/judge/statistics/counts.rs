//! Extractions, packages and products counted by band.

use crate::model::package::Standing;
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::statistics::{Counts, ExtractionCounts, PackageCounts, ProductCounts};
use crate::model::verdict::{ProductVerdict, Verdict};

/// Counts everything by band, each thing once.
pub fn count(verdicts: &[ProductVerdict]) -> Counts {
    let mut counts = Counts::default();
    for verdict in verdicts {
        count_product(verdict.verdict, &mut counts.products);
        for package in &verdict.packages {
            count_package(package.standing, &mut counts.packages);
            for extraction in &package.pair.extractions {
                count_extraction(extraction, verdict, &mut counts.extractions);
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

/// An extraction counts by its own reading; one that is set aside, in conflict, unreadable or on neither side is unusable, and
/// so is one of a product whose claim is unknown: there is nothing to hold it against.
fn count_extraction(row: &PairedExtraction, of: &ProductVerdict, counts: &mut ExtractionCounts) {
    let limit = of.rule.limit.at(row.extraction.lod);
    let used = row.usage == Usage::Used && of.claim.is_known();
    let reading = used.then(|| row.extraction.outcome.reading()).flatten();
    *match reading {
        Some(reading) if limit.surely_over(&reading) => &mut counts.over,
        Some(reading) if limit.surely_within(&reading) => match reading.as_below() {
            Some(_) => &mut counts.below_quantification,
            None => &mut counts.within,
        },
        _ => &mut counts.unusable,
    } += 1;
}
