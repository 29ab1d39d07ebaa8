//! One verdict a product and round, with its reasons.

use crate::model::claim::Claim;
use crate::model::label::LabelReview;
use crate::model::package::PackageResult;
use crate::model::reason::Reason;
use crate::model::registers::{Followup, IssuedRevision, Product};
use crate::model::rule::Rule;
use chrono::NaiveDate;

/// What one product's packages of one round say, and what its label says.
#[derive(Clone, Debug, PartialEq)]
pub struct ProductVerdict {
    /// The product.
    pub product: Product,
    /// The round of testing.
    pub round: String,
    /// Its packages, by code: those that count.
    pub packages: Vec<PackageResult>,
    /// What they say.
    pub verdict: Verdict,
    /// Why; for every verdict.
    pub reasons: Vec<Reason>,
    /// What the package claims, and the limit that goes with it.
    pub claim: Claim,
    /// The rule by which the product is judged: the programme's, with the claim's own limit.
    pub rule: Rule,
    /// What the label says.
    pub label: LabelReview,
    /// Whether the maker is to be told.
    pub notify_maker: bool,
    /// The assay cannot see all gluten in this food, or no assay decides for it.
    pub method_unfit: Option<Reason>,
    /// What passed between the programme and the maker about this round, in order of date.
    pub followups: Vec<Followup>,
    /// The published revisions of this round's sheet, oldest first.
    pub issued: Vec<IssuedRevision>,
}

impl ProductVerdict {
    /// `product_id--round`, the stem of every file that is made of it.
    pub fn stem(&self) -> String {
        format!("{}--{}", self.product.product_id, self.round)
    }

    /// The latest day of a test among its extractions.
    pub fn tested_on(&self) -> Option<NaiveDate> {
        let extractions = self
            .packages
            .iter()
            .flat_map(|package| &package.pair.extractions);
        extractions
            .filter_map(|paired| paired.extraction.tested_on)
            .max()
    }

    /// The first and the last day of purchase among its packages.
    pub fn bought(&self) -> Option<(NaiveDate, NaiveDate)> {
        let days = || {
            self.packages
                .iter()
                .filter_map(|package| package.pair.package.bought_on)
        };
        Some((days().min()?, days().max()?))
    }

    /// The day that places it in a quarter: of the last test, else of the last purchase.
    pub fn day(&self) -> Option<NaiveDate> {
        self.tested_on()
            .or_else(|| self.bought().map(|(_, last)| last))
    }
}

/// What the packages say against the limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// At least one package is over the limit.
    OverLimit,
    /// Every package is within it.
    WithinLimit(Grade),
    /// The results do not say; the reasons do.
    NoVerdict,
}

impl Verdict {
    /// The word in the data files.
    pub fn word(self) -> &'static str {
        match self {
            Verdict::OverLimit => "over_limit",
            Verdict::WithinLimit(_) => "within_limit",
            Verdict::NoVerdict => "no_verdict",
        }
    }

    /// The grade's word in the data files, where there is one.
    pub fn grade(self) -> Option<&'static str> {
        match self {
            Verdict::WithinLimit(Grade::BelowQuantification) => Some("below_quantification"),
            Verdict::WithinLimit(Grade::Quantified) => Some("quantified"),
            Verdict::OverLimit | Verdict::NoVerdict => None,
        }
    }
}

/// How far within the limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Grade {
    /// Every package had too little to put a number on.
    BelowQuantification,
    /// Gluten was measured in at least one.
    Quantified,
}
