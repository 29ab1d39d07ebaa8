//! Package results -> one verdict a product and round, with its reasons.

mod method;
mod reasons;

pub use method::{ask_about_processing, notes as method_notes};

use crate::config::Config;
use crate::judge::{claims, grouped, labels};
use crate::model::decided::OtherRound;
use crate::model::label::LabelFinding;
use crate::model::package::{PackageResult, Standing};
use crate::model::pair::PairState;
use crate::model::registers::{Followup, Product, Registers};
use crate::model::verdict::{Grade, ProductVerdict, Verdict};
use std::collections::BTreeMap;

/// One verdict for every product and round that has a package that counts, by product id and round.
///
/// Packages are never averaged: the worst one decides, since each bears the claim.
pub fn decide(
    packages: Vec<PackageResult>,
    registers: &Registers,
    terms: &labels::Terms,
    config: &Config,
) -> Vec<ProductVerdict> {
    let mut by_round: BTreeMap<(String, String), Vec<PackageResult>> = BTreeMap::new();
    for result in packages {
        let package = &result.pair.package;
        let key = (package.product_id.clone(), package.round.clone());
        by_round.entry(key).or_default().push(result);
    }
    let told = grouped(&registers.followups, |row| row.product_id.as_str());
    let issued = grouped(&registers.issued, |row| row.product_id.as_str());
    by_round
        .into_iter()
        .filter_map(|((product_id, round), mut packages)| {
            let product = registers.products.get(&product_id)?;
            packages.sort_by(|a, b| code(a).cmp(code(b)));
            let told = told.get(product_id.as_str()).into_iter().flatten();
            let issued = issued.get(product_id.as_str()).into_iter().flatten();
            let issued = issued.filter(|revision| revision.round == round);
            Some(ProductVerdict {
                followups: followups(told, &round),
                issued: issued.copied().cloned().collect(),
                ..decide_one(product, round, packages, terms, registers, config)
            })
        })
        .collect()
}

/// The rounds of the same product that were tested before this one, the latest first; none where a day is not known.
///
/// `all` is in the order of [`decide`], by product.
pub fn earlier(of: &ProductVerdict, all: &[ProductVerdict]) -> Vec<OtherRound> {
    let first = all.partition_point(|other| other.product.product_id < of.product.product_id);
    let mut before: Vec<&ProductVerdict> = all[first..]
        .iter()
        .take_while(|other| other.product.product_id == of.product.product_id)
        .filter(|other| other.day().is_some() && other.day() < of.day())
        .collect();
    before.sort_by_key(|other| std::cmp::Reverse(other.day()));
    before.into_iter().map(as_other).collect()
}

/// A round as the sheets of the product's other rounds name it.
pub fn as_other(round: &ProductVerdict) -> OtherRound {
    let over = |package: &&PackageResult| package.standing == Standing::Over;
    OtherRound {
        round: round.round.clone(),
        verdict: round.verdict,
        packages: round.packages.len(),
        over: round.packages.iter().filter(over).count(),
    }
}

/// The next round of a product of which packages are on record.
pub fn next_round(of: &ProductVerdict, registers: &Registers) -> Option<String> {
    let day = of.day()?;
    let others = registers
        .packages
        .iter()
        .filter(|package| package.product_id == of.product.product_id && package.round != of.round);
    let dated = others.filter_map(|package| Some((package.bought_on?, &package.round)));
    let (_, round) = dated.filter(|(bought_on, _)| *bought_on > day).min()?;
    Some(round.clone())
}

/// Whether a round still waits for results of the lab: some package has none, and none is over the limit.
pub fn stands_under_way(verdict: &ProductVerdict) -> bool {
    let missing = |package: &PackageResult| package.pair.state == PairState::Missing;
    verdict.verdict == Verdict::NoVerdict && verdict.packages.iter().any(missing)
}

fn code(result: &PackageResult) -> &str {
    &result.pair.package.package_code
}

fn decide_one(
    product: &Product,
    round: String,
    mut packages: Vec<PackageResult>,
    terms: &labels::Terms,
    registers: &Registers,
    config: &Config,
) -> ProductVerdict {
    let claim = claims::claim(&product.claim, config.rule);
    let rule = claim.rule(config.rule);
    if !claim.is_known() {
        // There is nothing that they could be held against.
        packages.iter_mut().for_each(leave_open);
    }
    let undecided = reasons::undecided(product, &round, &claim, registers);
    let method_unfit = method::unfit(product, &packages, rule.regime);
    let enough = packages.len() >= config.testing.packages_per_product;
    let verdict = if undecided.is_empty() {
        verdict(&packages, enough && method_unfit.is_none())
    } else {
        Verdict::NoVerdict
    };
    let label = labels::review(product, rule.regime, terms);
    let reasons = if undecided.is_empty() {
        reasons::reasons(verdict, &packages, method_unfit.as_ref(), &rule, config)
    } else {
        undecided
    };
    ProductVerdict {
        reasons,
        notify_maker: verdict == Verdict::OverLimit || label.finding == LabelFinding::GlutenSource,
        followups: Vec::new(),
        issued: Vec::new(),
        product: product.clone(),
        round,
        packages,
        verdict,
        label,
        method_unfit,
        claim,
        rule,
    }
}

/// A package that nothing can be held against stands nowhere, and neither does its other series.
fn leave_open(package: &mut PackageResult) {
    package.standing = Standing::Unresolved;
    package.straddles_limit = false;
    if let Some(other) = &mut package.other_series {
        leave_open(other);
    }
}

/// The verdict; `decidable` where there are enough packages and the method can see what is in them.
fn verdict(packages: &[PackageResult], decidable: bool) -> Verdict {
    let any = |standing| packages.iter().any(|package| package.standing == standing);
    if any(Standing::Over) {
        Verdict::OverLimit
    } else if !decidable || any(Standing::Unresolved) || any(Standing::Inconclusive) {
        Verdict::NoVerdict
    } else if any(Standing::Within) {
        Verdict::WithinLimit(Grade::Quantified)
    } else {
        Verdict::WithinLimit(Grade::BelowQuantification)
    }
}

/// What passed about this round, in order of date; a line without a round is about every one.
fn followups<'a>(told: impl Iterator<Item = &'a &'a Followup>, round: &str) -> Vec<Followup> {
    let is_about = |followup: &&Followup| {
        let of = followup.round.as_deref();
        of.is_none_or(|other| other == round)
    };
    let mut followups: Vec<Followup> = told.copied().filter(is_about).cloned().collect();
    followups.sort_by_key(|followup| followup.on);
    followups
}
