//! Every sheet's state of publication, and what anyone may see of all that was decided.
//!
//! Whether a sheet says what its last revision said is a question to what is printed, so that this stands where judging
//! and printing meet. The states themselves are decided in `judge::publication`.

use crate::config::Config;
use crate::judge::{self, publication};
use crate::model::decided::{Decided, JudgedProduct, OtherRound};
use crate::model::problem::Problems;
use crate::model::publication::{Audience, PublicationState, UnderRevision};
use crate::model::registers::{IssuedRevision, Registers};
use crate::model::verdict::ProductVerdict;
use crate::render::facts::sheet;
use crate::render::numbers;
use crate::render::words;
use crate::words::english;
use chrono::NaiveDate;
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// A product and a round.
pub type Key = (String, String);

/// Notes the state of every sheet. Once a sheet is issued it names only those earlier rounds that were published before
/// it; a first proof names them all, since it goes to nobody but its maker.
pub fn note(decided: &mut Decided, config: &Config, as_of: Option<NaiveDate>) {
    note_issuing(decided, config, as_of, &BTreeSet::new());
}

/// The same while these sheets are being issued: they have their row in the register, and count as published.
pub fn note_issuing(
    decided: &mut Decided,
    config: &Config,
    as_of: Option<NaiveDate>,
    issuing: &BTreeSet<Key>,
) {
    let first_issued = first_issued(&decided.registers.issued);
    let circumstances = publication::Circumstances {
        programme: &config.programme,
        doubts: &decided.registers.doubts,
        as_of,
    };
    let mut published: BTreeSet<Key> = BTreeSet::new();
    for index in oldest_first(&decided.products) {
        let judged = &mut decided.products[index];
        let own = key(&judged.verdict);
        let since = first_issued.get(&own);
        let of = |round: &OtherRound| (own.0.clone(), round.round.clone());
        // What was issued after this sheet was is no part of what this sheet says.
        let was_there = |round: &&OtherRound| {
            let first = first_issued.get(&of(round));
            since.is_none_or(|since| first.is_some_and(|first| first < since))
        };
        judged.earlier = judged.before.iter().filter(was_there).cloned().collect();
        let mut said = sheet::sheet(judged, config);
        let issued = judged.verdict.issued.last();
        let issued = issued.map(|last| last.content_sha256.clone());
        // An earlier round may be under revision. Where this sheet still says of it what was published, it stands; else it
        // is silent on that round, until the revision is published.
        let reads_otherwise = issued.as_ref().is_some_and(|issued| *issued != said.sha256);
        let is_open = |round: &OtherRound| !published.contains(&of(round));
        if reads_otherwise && judged.earlier.iter().any(is_open) {
            judged.earlier.retain(|round| !is_open(round));
            said = sheet::sheet(judged, config);
        }
        let as_issued =
            issued.is_some_and(|issued| issued == said.sha256 || issuing.contains(&own));
        judged.sheet = Some(Arc::new(said));
        judged.publication = publication::publication(&judged.verdict, &circumstances, as_issued);
        judged.publication_said = words::publication::why(&judged.publication);
        if judged.publication.is_public() {
            published.insert(own);
        }
    }
    note_later(&mut decided.products);
}

/// Notes with each round the published ones that name it. That stands beside what the sheet says, so that a retest is no
/// revision of it.
fn note_later(products: &mut [JudgedProduct]) {
    let mut later: BTreeMap<Key, Vec<OtherRound>> = BTreeMap::new();
    for index in oldest_first(products) {
        let judged = &products[index];
        let named = judged
            .earlier
            .iter()
            .filter(|_| judged.publication.is_public());
        for round in named {
            let earlier = (
                judged.verdict.product.product_id.clone(),
                round.round.clone(),
            );
            let own = judge::verdicts::as_other(&judged.verdict);
            later.entry(earlier).or_default().push(own);
        }
    }
    for judged in products {
        judged.later = later.remove(&key(&judged.verdict)).unwrap_or_default();
    }
}

/// State, day and reason of a sheet, in the words of `check`, `run`, `status` and `issue`.
pub fn standing(judged: &JudgedProduct) -> String {
    words::publication::standing(&judged.publication)
}

/// The two judgements of a product, what was measured and what its label says, in the words of `check`, `run` and `status`.
pub fn judgements(judged: &JudgedProduct) -> [String; 2] {
    let (verdict, english) = (&judged.verdict, english());
    [
        words::verdict::headline(verdict.verdict, verdict.rule, english),
        words::label::judged(verdict, english).words,
    ]
}

/// What was found in each package of a product, in figures as they are printed.
pub fn found(judged: &JudgedProduct) -> Vec<String> {
    let limit = judged.verdict.rule.limit;
    let packages = judged.verdict.packages.iter();
    packages
        .map(|package| numbers::result_said(&package.result, limit, english()))
        .collect()
}

/// What anyone may see: what was issued and still reads as it did, counted and summed up by itself.
pub fn for_anyone(decided: &Decided, config: &Config) -> Decided {
    let products: Vec<JudgedProduct> = decided
        .products
        .iter()
        .filter(|judged| judged.publication.is_public())
        .cloned()
        .collect();
    let verdicts: Vec<ProductVerdict> = products
        .iter()
        .map(|judged| judged.verdict.clone())
        .collect();
    let known: BTreeSet<&str> = verdicts
        .iter()
        .map(|verdict| verdict.product.product_id.as_str())
        .collect();
    let of_products = decided
        .registers
        .products
        .iter()
        .filter(|(id, _)| known.contains(id.as_str()));
    let registers = Registers {
        products: of_products
            .map(|(id, one)| (id.clone(), one.clone()))
            .collect(),
        packages: verdicts
            .iter()
            .flat_map(|verdict| &verdict.packages)
            .map(|package| package.pair.package.clone())
            .collect(),
        issued: verdicts
            .iter()
            .flat_map(|verdict| verdict.issued.iter().cloned())
            .collect(),
        knows_sent_on: decided.registers.knows_sent_on,
        ..Registers::default()
    };
    let read: BTreeSet<&str> = verdicts
        .iter()
        .flat_map(|verdict| &verdict.packages)
        .flat_map(|package| &package.pair.extractions)
        .map(|paired| paired.extraction.source.file.path.as_str())
        .collect();
    let lab_files = decided
        .lab_files
        .iter()
        .filter(|file| read.contains(file.path.as_str()));
    Decided {
        statistics: judge::statistics::summarise(&verdicts, config),
        lab_files: lab_files.cloned().collect(),
        understandings: Vec::new(),
        // A plate holds samples of several makers.
        plates: Vec::new(),
        problems: Problems::default(),
        audience: Audience::Anyone,
        under_revision: under_revision(decided, config),
        with_lab: 0,
        registers,
        products,
    }
}

/// What can be summed up: all of which the lab has reported something. What is still with the lab is no result, and is
/// only counted.
pub fn reported<'a>(decided: &'a Decided, config: &Config) -> Cow<'a, Decided> {
    let is_reported = |judged: &&JudgedProduct| judged.publication.is_reported();
    let products: Vec<JudgedProduct> = decided
        .products
        .iter()
        .filter(is_reported)
        .cloned()
        .collect();
    let with_lab = decided.products.len() - products.len();
    if with_lab == 0 {
        return Cow::Borrowed(decided);
    }
    let verdicts: Vec<ProductVerdict> = products
        .iter()
        .map(|judged| judged.verdict.clone())
        .collect();
    Cow::Owned(Decided {
        statistics: judge::statistics::summarise(&verdicts, config),
        products,
        with_lab,
        ..decided.clone()
    })
}

/// What was issued and now reads otherwise, or is not there any more.
fn under_revision(decided: &Decided, config: &Config) -> Vec<UnderRevision> {
    let stands: BTreeSet<Key> = decided
        .products
        .iter()
        .filter(|judged| judged.publication.is_public())
        .map(|judged| key(&judged.verdict))
        .collect();
    let mut last: BTreeMap<Key, &IssuedRevision> = BTreeMap::new();
    for row in &decided.registers.issued {
        last.insert((row.product_id.clone(), row.round.clone()), row);
    }
    let open = last.into_iter().filter(|(key, _)| !stands.contains(key));
    open.map(|((product_id, round), row)| {
        let product = decided.registers.products.get(&product_id);
        let mut one = UnderRevision {
            name: product.map_or(product_id.clone(), |product| product.name.clone()),
            brand: product.and_then(|product| product.brand.clone()),
            sheet_number: row.sheet_number.clone(),
            revision: row.revision,
            issued_on: row.issued_on,
            product_id,
            round,
            said: String::new(),
        };
        one.said = words::publication::under_revision(&one, &config.words);
        one
    })
    .collect()
}

/// Every sheet that is not published as it now stands and of which something is reported, by product and round.
pub fn unpublished(decided: &Decided) -> impl Iterator<Item = &JudgedProduct> {
    decided.products.iter().filter(|judged| {
        !matches!(
            judged.publication.state,
            PublicationState::WithLab | PublicationState::Published
        )
    })
}

fn key(verdict: &ProductVerdict) -> Key {
    (verdict.product.product_id.clone(), verdict.round.clone())
}

/// Where in the register each sheet stands first.
fn first_issued(issued: &[IssuedRevision]) -> BTreeMap<Key, usize> {
    let mut first = BTreeMap::new();
    for (at, row) in issued.iter().enumerate() {
        first
            .entry((row.product_id.clone(), row.round.clone()))
            .or_insert(at);
    }
    first
}

/// The products' places in an order in which each comes after its earlier rounds.
fn oldest_first(products: &[JudgedProduct]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..products.len()).collect();
    order.sort_by_key(|index| products[*index].verdict.day());
    order
}
