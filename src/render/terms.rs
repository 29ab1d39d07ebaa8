//! The words of the limit and of the bands, as one regime and one programme's assays have them.

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::extraction::Extraction;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::ppm::Ppm;
use crate::model::rule::Limit;
use crate::model::statistics::CloseBand;
use crate::render::numbers;
use crate::render::words::limit::{CloseWords, LimitWords};
use crate::render::words::sentence_case;
use crate::words::{Catalogue, Said, say};
use serde::Serialize;
use std::sync::Arc;

/// The words of the limit and of the bands.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Terms {
    /// "ppm" or "mg/kg".
    pub unit: &'static str,
    /// "20 ppm".
    pub limit: String,
    /// "Limit 20 ppm", "LOD 3 mg/kg": what a line at the limit is called.
    pub flag: String,
    /// The same in a sentence: "the limit", "the limit of detection".
    pub the_line: String,
    /// "At or above 20 ppm", "Above 20 mg/kg".
    pub over: String,
    /// The same in a sentence: "at or above 20 ppm".
    pub over_in_text: String,
    /// "at or above", "above".
    pub over_short: String,
    /// "at or above the limit", "above the limit".
    pub over_the_limit: String,
    /// "Below 20 ppm", "At or below 20 mg/kg".
    pub within: String,
    /// The same in a sentence: "below 20 ppm".
    pub within_in_text: String,
    /// "below", "at or below".
    pub within_short: String,
    /// "below the limit", "at or below the limit".
    pub within_the_limit: String,
    /// "below 5 ppm"; "too little to measure" where assays differ in what they measure, or measure less than the limit.
    pub below: String,
    /// "<5", "too little": the same in a column head.
    pub below_short: String,
    /// "5 to below 20 ppm", "measured, at or below 5 mg/kg".
    pub measured: String,
    /// Some product's claim has a limit of its own: then words about all of them name no figure, and what is said of one
    /// product names that product's.
    pub mixed: bool,
    /// What the limit is held against.
    #[serde(skip)]
    pub rule: Limit,
    /// The words of the documents.
    #[serde(skip)]
    pub words: Arc<Catalogue>,
    /// What is too close to the limit to call: of all products whose claim has this limit.
    #[serde(skip)]
    pub close: Option<CloseBand>,
    /// The same in words, for keys.
    #[serde(skip)]
    pub close_means: Option<CloseWords>,
    /// The one quantification limit in force, where there is one.
    #[serde(skip)]
    pub lloq: Option<Ppm>,
    /// All quantification limits in force, from the lowest on.
    #[serde(skip)]
    pub lloqs: Vec<Ppm>,
}

impl Terms {
    /// From where on gluten is measured, at the least; the limit where that is not known.
    pub fn measurable(&self) -> Ppm {
        self.lloqs.first().copied().unwrap_or(self.rule.ppm)
    }

    /// A note on marks, with what is hatched where something is.
    pub fn with_band(&self, note: String) -> String {
        match &self.close_means {
            Some(said) => format!("{note} {}", said.sentence),
            None => note,
        }
    }

    /// `below 5`, `too little`: the head of a column of packages that could not be measured, where the unit is plain.
    pub fn below_head(&self) -> String {
        let figure = |n| self.words.locale().figure(&numbers::plain(n));
        self.words.say(&match self.lloq {
            Some(lloq) => say::band_below_short("one", figure(lloq)),
            None => say::band_below_short("several", ""),
        })
    }
}

/// The words for these products under this programme's rule.
pub fn terms(products: &[JudgedProduct], config: &Config) -> Terms {
    let (limit, words) = (config.rule.limit, &config.words);
    let own = LimitWords::of(config.rule, words);
    let own_limit = |product: &JudgedProduct| {
        let claim = &product.verdict.claim;
        claim.limit.is_some_and(|own| own != limit)
    };
    let mixed = products.iter().any(own_limit);
    let either = |of_all: Said, of_one: String| if mixed { words.say(&of_all) } else { of_one };
    let lloqs = quantification_limits(products, config.testing.lloq);
    // "Below 5" names a band only where every assay measures from 5 on, 5 is not over the limit, and no lab said more
    // loosely "below 19".
    let named = lloqs.len() == 1
        && lloqs[0].compare(limit.ppm).is_le()
        && loosest_bound(products).is_none_or(|bound| bound.compare(lloqs[0]).is_le());
    let lloq = named.then(|| lloqs[0]);
    let from_lloq = lloq.filter(|n| *n < limit.ppm && !reaches_below(products, *n));
    let close = products
        .iter()
        .filter(|product| product.verdict.rule.limit == limit)
        .filter_map(|product| product.statistics.close)
        .reduce(CloseBand::with);
    let over_in_text = either(say::over_its_own_limit(), own.over());
    let within_in_text = either(say::within_its_own_limit(), own.within());
    Terms {
        unit: own.unit(),
        over: sentence_case(&over_in_text),
        over_in_text,
        over_short: own.over_short(),
        over_the_limit: own.over_the_limit(),
        within: sentence_case(&within_in_text),
        within_in_text,
        within_short: own.within_short(),
        within_the_limit: own.within_the_limit(),
        below: words.say(&match lloq {
            Some(n) => say::band_below("one", own.quantity(&numbers::plain(n))),
            None => say::band_below("several", ""),
        }),
        below_short: match lloq {
            Some(n) => words.locale().figure(&format!("<{}", numbers::plain(n))),
            None => words.say(&say::band_below_short("several", "")),
        },
        measured: either(say::band_measured_mixed(), measured(from_lloq, own, words)),
        mixed,
        limit: own.figure(),
        flag: either(say::mixed_flag(own.figure()), own.flag()),
        the_line: either(say::mixed_line(), own.the_line()),
        rule: limit,
        close,
        close_means: close.map(|close| CloseWords::of(close, config.rule, words)),
        words: Arc::clone(words),
        lloq,
        lloqs,
    }
}

/// "5 to below 20 ppm"; "measured, below 20 ppm" where the band does not begin at one quantification limit.
fn measured(from_lloq: Option<Ppm>, own: LimitWords<'_>, words: &Catalogue) -> String {
    let (from, below) = match from_lloq {
        Some(n) => ("lloq", words.locale().figure(&numbers::plain(n))),
        None => ("unsaid", String::new()),
    };
    words.say(&say::band_measured(from, own.side(), below, own.figure()))
}

fn packages(products: &[JudgedProduct]) -> impl Iterator<Item = &PackageResult> {
    let verdicts = products.iter().map(|product| &product.verdict);
    verdicts.flat_map(|verdict| &verdict.packages)
}

/// The extractions that count.
fn usable(products: &[JudgedProduct]) -> impl Iterator<Item = &Extraction> {
    packages(products).flat_map(|package| package.pair.usable())
}

/// The largest n of the readings that count and are "below n".
fn loosest_bound(products: &[JudgedProduct]) -> Option<Ppm> {
    usable(products)
        .filter_map(|extraction| extraction.outcome.reading()?.as_below())
        .reduce(Ppm::max)
}

/// Whether a package that was measured has a range which begins below the quantification limit: "5 to below 20" is then
/// no name for its band.
fn reaches_below(products: &[JudgedProduct], lloq: Ppm) -> bool {
    packages(products).any(|package| {
        package.standing == Standing::Within
            && matches!(package.result, ResultKind::Range(range) if range.lower < lloq)
    })
}

/// The different quantification limits among the readings that count, from the lowest on; the programme's own where
/// there is no reading.
fn quantification_limits(products: &[JudgedProduct], own: Ppm) -> Vec<Ppm> {
    let mut found: Vec<Ppm> = usable(products).map(|extraction| extraction.lloq).collect();
    found.sort_by(|a, b| a.compare(*b));
    found.dedup_by(|a, b| a.same(*b));
    if found.is_empty() { vec![own] } else { found }
}
