//! Counts that several documents print: products, packages and pairs, by what became of them.

use crate::model::decided::{Decided, JudgedProduct};
use crate::model::extraction::AssayKind;
use crate::model::label::LabelFinding;
use crate::model::package::{ResultKind, Standing};
use crate::model::pair::PairState;
use crate::model::registers::Processing;
use crate::model::verdict::{Grade, Verdict};
use crate::words::{Catalogue, say};
use serde::Serialize;
use std::collections::BTreeSet;

/// One kind of thing, counted by band, under its name.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct BandRow {
    /// What is counted: "extractions", "packages" or "products".
    pub kind: &'static str,
    /// Its name in the language of the documents: "Extractions".
    pub name: String,
    /// How many there are of each.
    #[serde(flatten)]
    pub counts: BandCounts,
}

/// How many things lie in each band.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub struct BandCounts {
    /// Too little to put a number on.
    pub below: u64,
    /// Measured, within the limit.
    pub measured: u64,
    /// Over the limit.
    pub over: u64,
    /// No result, or one that decides nothing.
    pub undecided: u64,
}

impl BandCounts {
    /// All of them.
    pub fn all(&self) -> u64 {
        self.below + self.measured + self.over + self.undecided
    }
}

/// Counts of products, packages and pairs.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Tally {
    /// Products within the limit.
    pub within: u64,
    /// Of these without a package that could be measured.
    pub within_below: u64,
    /// Of these with at least one that could.
    pub within_measured: u64,
    /// Products over the limit.
    pub over: u64,
    /// Products without a verdict.
    pub none: u64,
    /// Foods: one that was tested in several rounds is one.
    pub foods: u64,
    /// Products whose label names an ingredient that the rule does not allow.
    pub against_rule: u64,
    /// Packages by band.
    pub packages: BandCounts,
    /// Packages that all extractions put below quantification, whether or not that decides.
    pub unmeasured: u64,
    /// Those of them that are of a fermented or hydrolysed food and were tested by a sandwich assay, which can miss gluten there.
    pub perhaps_missed: u64,
    /// Packages by agreement.
    pub pairs: Pairs,
}

/// Packages by the agreement of their extractions.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Pairs {
    /// They agree.
    pub agree: u64,
    /// They do not.
    pub disagree: u64,
    /// Fewer usable ones than asked for.
    pub incomplete: u64,
    /// Nothing reported.
    pub missing: u64,
}

impl Pairs {
    /// Packages of which something is reported.
    pub fn reported(&self) -> u64 {
        self.agree + self.disagree + self.incomplete
    }
}

impl Tally {
    /// Products in all.
    pub fn products(&self) -> u64 {
        self.within + self.over + self.none
    }
}

/// Counts these products.
pub fn tally<'a>(products: impl IntoIterator<Item = &'a JudgedProduct>) -> Tally {
    let mut tally = Tally::default();
    let mut foods = BTreeSet::new();
    for product in products {
        foods.insert(product.verdict.product.product_id.as_str());
        let against_rule = product.verdict.label.finding == LabelFinding::GlutenSource;
        tally.against_rule += u64::from(against_rule);
        match product.verdict.verdict {
            Verdict::OverLimit => tally.over += 1,
            Verdict::NoVerdict => tally.none += 1,
            Verdict::WithinLimit(Grade::BelowQuantification) => tally.within_below += 1,
            Verdict::WithinLimit(Grade::Quantified) => tally.within_measured += 1,
        }
        for package in &product.verdict.packages {
            match package.standing {
                Standing::BelowQuantification => tally.packages.below += 1,
                Standing::Within => tally.packages.measured += 1,
                Standing::Over => tally.packages.over += 1,
                Standing::Unresolved | Standing::Inconclusive => tally.packages.undecided += 1,
            }
            let unmeasured = matches!(package.result, ResultKind::Below { .. });
            let can_miss = package.pair.assay_kind == AssayKind::Sandwich
                && matches!(
                    product.verdict.product.processing,
                    Processing::Fermented | Processing::Hydrolysed
                );
            tally.unmeasured += u64::from(unmeasured);
            tally.perhaps_missed += u64::from(unmeasured && can_miss);
            match package.pair.state {
                PairState::Agree => tally.pairs.agree += 1,
                PairState::Disagree => tally.pairs.disagree += 1,
                PairState::Incomplete => tally.pairs.incomplete += 1,
                PairState::Missing => tally.pairs.missing += 1,
            }
        }
    }
    tally.foods = foods.len() as u64;
    tally.within = tally.within_below + tally.within_measured;
    tally
}

/// Extractions, packages and products by band, in this order.
pub fn bands(decided: &Decided, tally: &Tally, words: &Catalogue) -> [BandRow; 3] {
    let extractions = &decided.statistics.counts.extractions;
    let row = |kind, counts| BandRow {
        kind,
        name: words.say(&say::chart_bands_kind(kind)),
        counts,
    };
    [
        row(
            "extractions",
            BandCounts {
                below: extractions.below_quantification,
                measured: extractions.within,
                over: extractions.over,
                undecided: extractions.unusable,
            },
        ),
        row("packages", tally.packages),
        row(
            "products",
            BandCounts {
                below: tally.within_below,
                measured: tally.within_measured,
                over: tally.over,
                undecided: tally.none,
            },
        ),
    ]
}
