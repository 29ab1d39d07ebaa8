//! Near the limit: how likely the truth is on the other side of it.

use crate::model::decided::JudgedProduct;
use crate::model::package::{PackageResult, Standing};
use crate::model::rule::Rule;
use crate::model::statistics::{OtherSide, UncertaintyBasis};
use crate::model::verdict::Verdict;
use crate::render::numbers;
use crate::render::words::limit::LimitWords;
use crate::render::words::method::percent;
use crate::words::{Catalogue, say};

/// Outside the band round the limit, a smaller chance than this is not said beside the verdict.
pub const WORTH_SAYING: f64 = 0.05;

/// Packages that are named; the others are counted.
const NAMED_AT_MOST: usize = 3;

/// The sentence beside the verdict; none where no result that decides is near the limit.
///
/// One package over the limit is enough for the verdict, so that a package near it is told of only where none is far over.
pub fn beside_the_verdict(product: &JudgedProduct, words: &Catalogue) -> Option<String> {
    let (deciding, other) = match product.verdict.verdict {
        Verdict::OverLimit => (Standing::Over, "within"),
        Verdict::WithinLimit(_) => (Standing::Within, "over"),
        Verdict::NoVerdict => return None,
    };
    let packages = product.verdict.packages.iter();
    let decided: Vec<&PackageResult> = packages
        .filter(|package| package.standing == deciding)
        .collect();
    let near = decided.iter().filter_map(|one| of_package(product, one));
    let near: Vec<&OtherSide> = near.filter(|one| is_near(product, one)).collect();
    if near.is_empty() || (deciding == Standing::Over && near.len() < decided.len()) {
        return None;
    }
    Some(said(near, other, product.verdict.rule, words))
}

/// In the band that is drawn round the limit, or likely enough on its other side where the lab's own uncertainty is larger.
fn is_near(product: &JudgedProduct, one: &OtherSide) -> bool {
    let close = product.statistics.close;
    close.is_some_and(|band| band.holds(one.figure)) || one.chance > WORTH_SAYING
}

fn of_package<'a>(product: &'a JudgedProduct, package: &PackageResult) -> Option<&'a OtherSide> {
    let code = &package.pair.package.package_code;
    let mut sides = product.statistics.other_side.iter();
    sides.find(|side| side.package_code == *code)
}

fn said(mut near: Vec<&OtherSide>, other: &'static str, rule: Rule, words: &Catalogue) -> String {
    let limit = LimitWords::of(rule, words);
    let package = |side: &&OtherSide| {
        let figure = limit.quantity(&numbers::figure(side.figure, rule.limit));
        let chance = percent(side.chance, words);
        say::near_limit_package(&side.package_code, figure, chance)
    };
    near.sort_by(|a, b| b.chance.total_cmp(&a.chance));
    let beyond = near.get(NAMED_AT_MOST..).unwrap_or_default();
    let more = beyond
        .last()
        .map(|least| say::near_limit_more(beyond.len() as u64, percent(least.chance, words)));
    let named = near.iter().take(NAMED_AT_MOST).map(package);
    let packages = words.each(named.chain(more));
    words.say(&say::near_limit(
        words.list(&packages),
        basis(&near),
        other,
        limit.side(),
        limit.figure(),
    ))
}

/// Where the uncertainty comes from; what holds for the least certain of the packages.
fn basis(near: &[&OtherSide]) -> &'static str {
    let has = |basis| near.iter().any(|side| side.basis == basis);
    if has(UncertaintyBasis::AssumedRepeatability) {
        "assumed"
    } else if has(UncertaintyBasis::LabAssumed) {
        "lab_k2"
    } else {
        "lab"
    }
}
