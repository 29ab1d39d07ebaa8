//! Near the limit: how likely the truth is on the other side of it.

use crate::model::decided::JudgedProduct;
use crate::model::package::{PackageResult, Standing};
use crate::model::rule::Rule;
use crate::model::statistics::{OtherSide, UncertaintyBasis};
use crate::model::verdict::Verdict;
use crate::render::numbers::{self, NBSP};
use crate::render::words::limit::LimitWords;
use crate::render::words::{listed, with_unit};

/// A smaller chance than this is not said beside the verdict.
pub const WORTH_SAYING: f64 = 0.05;

/// Packages that are named; the others are counted.
const NAMED_AT_MOST: usize = 3;

/// The sentence beside the verdict, with a space before it; nothing where no result that decides is near the limit.
///
/// One package over the limit is enough for the verdict, so that a package near it is told of only where none is far over.
pub fn beside_the_verdict(product: &JudgedProduct, rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    let (deciding, other) = match product.verdict.verdict {
        Verdict::OverLimit => (Standing::Over, limit.within()),
        Verdict::WithinLimit(_) => (Standing::Within, limit.over()),
        Verdict::NoVerdict => return String::new(),
    };
    let standing = |package: &&PackageResult| package.standing == deciding;
    let decided: Vec<&PackageResult> = product.verdict.packages.iter().filter(standing).collect();
    let near: Vec<&OtherSide> = decided
        .iter()
        .filter_map(|package| of_package(product, package))
        .filter(|one| one.chance > WORTH_SAYING)
        .collect();
    if near.is_empty() || (deciding == Standing::Over && near.len() < decided.len()) {
        return String::new();
    }
    format!(" {}", said(&near, &other, rule))
}

fn of_package<'a>(product: &'a JudgedProduct, package: &PackageResult) -> Option<&'a OtherSide> {
    let code = &package.pair.package.package_code;
    let mut sides = product.statistics.other_side.iter();
    sides.find(|side| side.package_code == *code)
}

fn said(near: &[&OtherSide], other: &str, rule: Rule) -> String {
    let unit = LimitWords::of(rule).unit();
    let one = |side: &&OtherSide| {
        format!(
            "{}{NBSP}% for {} ({})",
            numbers::percent(side.chance),
            side.package_code,
            with_unit(&numbers::figure(side.figure, rule.limit), unit)
        )
    };
    let mut packages: Vec<String> = near.iter().take(NAMED_AT_MOST).map(one).collect();
    match near.len().saturating_sub(NAMED_AT_MOST) {
        0 => {}
        1 => packages.push(format!("more than 5{NBSP}% for one more")),
        more => packages.push(format!("more than 5{NBSP}% for {more} more")),
    }
    let scatter = near
        .iter()
        .any(|side| side.basis == UncertaintyBasis::AssumedRepeatability);
    let least = if scatter { "at least about" } else { "about" };
    format!(
        "Close to the limit: the chance that the true content is {other} is {least} {} ({}).",
        listed(&packages),
        basis(near)
    )
}

/// Where the uncertainty comes from; what holds for the least certain of the packages.
fn basis(near: &[&OtherSide]) -> &'static str {
    let has = |basis| near.iter().any(|side| side.basis == basis);
    if has(UncertaintyBasis::AssumedRepeatability) {
        "from the assumed scatter within the lab alone"
    } else if has(UncertaintyBasis::LabAssumed) {
        "from the lab’s uncertainty, taken as k = 2"
    } else {
        "from the lab’s uncertainty"
    }
}
