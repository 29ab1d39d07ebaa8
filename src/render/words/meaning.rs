//! What so few packages say of all packages, and what they do not.

use crate::config::Config;
use crate::model::decided::{JudgedProduct, OtherRound};
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::ppm::Ppm;
use crate::model::verdict::{Grade, Verdict};
use crate::render::numbers;
use crate::render::words::limit::LimitWords;
use crate::render::words::method::percent;
use crate::render::words::verdict::{highest_bound, single_readings};
use crate::render::words::{guarded, verdict_word};
use crate::words::{Catalogue, Said, say, yes_or_no};
use std::iter::once;

/// What this result says.
pub fn says(product: &JudgedProduct, config: &Config) -> String {
    let words = &*config.words;
    let earlier = other_rounds(&product.earlier, product, config);
    let said = this_round(product, words).into_iter().chain(earlier);
    said.collect::<Vec<_>>().join(" ")
}

/// That the product was tested again, and what that came to; nothing where it was not.
pub fn tested_again(product: &JudgedProduct, config: &Config) -> Option<String> {
    let rounds: Vec<String> = other_rounds(&product.later, product, config).collect();
    let said = || say::tested_again(rounds.join(" "));
    (!rounds.is_empty()).then(|| config.words.say(&said()))
}

/// What other rounds of the product came to, a sentence each.
fn other_rounds(
    rounds: &[OtherRound],
    product: &JudgedProduct,
    config: &Config,
) -> impl Iterator<Item = String> {
    let said = |round| config.words.say(&other_round(round, product, config));
    rounds.iter().map(said)
}

/// What another round of the product came to: a later one does not undo an earlier one.
fn other_round(round: &OtherRound, product: &JudgedProduct, config: &Config) -> Said {
    let limit = LimitWords::of(product.verdict.rule, &config.words);
    let number = config
        .programme
        .sheet_number(&product.verdict.product.product_id, &round.round);
    say::other_round(
        &round.round,
        number,
        verdict_word(round.verdict),
        round.over as u64,
        round.packages as u64,
        limit.side(),
    )
}

fn this_round(product: &JudgedProduct, words: &Catalogue) -> Vec<String> {
    let rule = product.verdict.rule;
    let limit = LimitWords::of(rule, words);
    let packages = &product.verdict.packages;
    let all = packages.len() as u64;
    let within = || say::says_within(all, limit.side(), limit.figure());
    match product.verdict.verdict {
        Verdict::OverLimit => {
            let is_over = |package: &&PackageResult| package.standing == Standing::Over;
            let over = packages.iter().filter(is_over).count() as u64;
            let said = say::says_over(over, all, guarded(rule), limit.side(), limit.figure());
            let share = true_share(product, words);
            words.each(once(said).chain(share))
        }
        Verdict::WithinLimit(Grade::BelowQuantification) => {
            vec![words.say(&none_measured(packages, limit))]
        }
        Verdict::WithinLimit(Grade::Quantified) => {
            let highest = highest_result(packages).map(|highest| {
                let figure = numbers::result_in_text(highest, rule.limit, words);
                say::says_highest(limit.quantity(&figure))
            });
            words.each(once(within()).chain(highest))
        }
        Verdict::NoVerdict => {
            let said = words.say(&undecided(product, limit).unwrap_or_else(within));
            let has_limit = product.verdict.claim.limit.is_some();
            let single = single_readings(packages, rule, words).filter(|_| has_limit);
            once(said).chain(single).collect()
        }
    }
}

fn none_measured(packages: &[PackageResult], limit: LimitWords<'_>) -> Said {
    let highest = highest_bound(packages);
    let mut extractions = packages.iter().flat_map(|package| package.pair.usable());
    // A lab may say "below 19" of an assay that measures from 5 on: then it has a lower answer.
    let lowest = yes_or_no(extractions.all(|one| !one.lloq.compare(highest).is_lt()));
    let below = limit.quantity(&numbers::plain(highest));
    say::says_none_measured(packages.len() as u64, below, lowest)
}

fn true_share(product: &JudgedProduct, words: &Catalogue) -> Option<Said> {
    let share = product.statistics.over.as_ref()?;
    Some(say::says_share(
        numbers::percent(share.exact.lower),
        percent(share.exact.upper, words),
        product.statistics.undecided,
    ))
}

/// What undecided packages come to; nothing where every package is within the limit by an assay that is fit.
fn undecided(product: &JudgedProduct, limit: LimitWords<'_>) -> Option<Said> {
    let packages = &product.verdict.packages;
    let all = packages.len() as u64;
    let is_within = |package: &&PackageResult| {
        matches!(
            package.standing,
            Standing::Within | Standing::BelowQuantification
        )
    };
    let decided = packages.iter().filter(is_within).count() as u64;
    let unfit = product.verdict.method_unfit.is_some();
    match decided {
        0 => Some(say::says_none_decides(all)),
        k if k < all => Some(say::says_some_decide(
            k,
            all,
            all - k,
            limit.side(),
            limit.figure(),
        )),
        _ if unfit => Some(say::says_unfit(all, limit.side(), limit.figure())),
        _ => None,
    }
}

/// The package result with the highest upper end, where every package has one that ends somewhere.
fn highest_result(packages: &[PackageResult]) -> Option<&ResultKind> {
    let ends = packages
        .iter()
        .map(|one| Some((upper_end(one)?, &one.result)));
    let ends: Option<Vec<(Ppm, &ResultKind)>> = ends.collect();
    let highest = ends?.into_iter().max_by(|a, b| a.0.0.total_cmp(&b.0.0));
    highest.map(|(_, highest)| highest)
}

/// Where a package's result ends, where that is known.
pub fn upper_end(package: &PackageResult) -> Option<Ppm> {
    match package.result {
        ResultKind::Value { mean } => Some(mean),
        ResultKind::Below { upper } => Some(upper),
        ResultKind::Range(range) => range.upper,
        ResultKind::None => None,
    }
}

/// What it does not say.
pub fn says_not(product: &JudgedProduct, words: &Catalogue) -> String {
    let side = LimitWords::of(product.verdict.rule, words).side();
    let packages = product.verdict.packages.len() as u64;
    let upper = product.statistics.one_sided_upper;
    words.say(&match (product.verdict.verdict, upper) {
        (Verdict::OverLimit, _) => say::says_not_over(),
        (Verdict::WithinLimit(_), Some(upper)) => {
            say::says_not_within(packages, percent(upper, words), side)
        }
        (Verdict::WithinLimit(_), None) => say::says_not_proven(side),
        (Verdict::NoVerdict, _) => say::says_not_none(side),
    })
}
