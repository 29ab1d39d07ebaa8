//! What so few packages say of all packages, and what they do not.

use crate::config::Config;
use crate::model::decided::{EarlierRound, JudgedProduct};
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::model::verdict::{Grade, Verdict};
use crate::render::numbers::{self, NBSP};
use crate::render::words::limit::LimitWords;
use crate::render::words::verdict::{highest_bound, single_readings};
use crate::render::words::{counted, with_unit};

/// What this result says.
pub fn says(product: &JudgedProduct, config: &Config) -> String {
    let earlier = product.earlier.iter();
    let earlier = earlier.map(|round| format!(" {}", earlier_round(round, product, config)));
    let now = this_round(product, product.verdict.rule);
    std::iter::once(now).chain(earlier).collect()
}

/// What an earlier round of the product came to: a later one does not undo it.
fn earlier_round(round: &EarlierRound, product: &JudgedProduct, config: &Config) -> String {
    let limit = LimitWords::of(product.verdict.rule);
    let n = counted(round.packages, "package", "packages");
    let found = match round.verdict {
        Verdict::OverLimit => format!("{} of {n} tested {}", round.over, limit.over_the_limit()),
        Verdict::WithinLimit(_) if round.packages == 1 => {
            format!("the 1 package tested {}", limit.within_the_limit())
        }
        Verdict::WithinLimit(_) => format!("all {n} tested {}", limit.within_the_limit()),
        Verdict::NoVerdict => "there was no verdict".to_owned(),
    };
    let number = config
        .programme
        .sheet_number(&product.verdict.product.product_id, &round.round);
    format!("In round {} ({number}), {found}.", round.round)
}

fn this_round(product: &JudgedProduct, rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    let packages = &product.verdict.packages;
    let n = counted(packages.len(), "package", "packages");
    match product.verdict.verdict {
        Verdict::OverLimit => {
            let over = packages
                .iter()
                .filter(|package| package.standing == Standing::Over)
                .count();
            format!(
                "Of the {n} we bought, {over} tested {}.{}",
                limit.over(),
                true_share(product)
            )
        }
        Verdict::WithinLimit(Grade::BelowQuantification) => format!(
            "{} tested below {}. That is the lowest answer this test gives. It doesn’t mean zero.",
            all_bought(packages.len()),
            with_unit(&numbers::plain(highest_bound(packages)), limit.unit())
        ),
        Verdict::WithinLimit(Grade::Quantified) => {
            let highest = highest_result(packages, rule).map(|figure| {
                format!(
                    " The highest package result was {}.",
                    with_unit(&figure, limit.unit())
                )
            });
            format!(
                "{} tested {}.{}",
                all_bought(packages.len()),
                limit.within(),
                highest.unwrap_or_default()
            )
        }
        Verdict::NoVerdict => undecided(product, rule),
    }
}

fn all_bought(n: usize) -> String {
    match n {
        1 => "The 1 package we bought".to_owned(),
        n => format!("All {n} packages we bought"),
    }
}

fn true_share(product: &JudgedProduct) -> String {
    let Some(share) = product.statistics.over else {
        return String::new();
    };
    format!(
        " If they were a random pick, the true share could be anywhere from {} to {}{NBSP}% (95{NBSP}%{NBSP}confidence).",
        numbers::percent(share.exact.lower),
        numbers::percent(share.exact.upper)
    )
}

fn undecided(product: &JudgedProduct, rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    let packages = &product.verdict.packages;
    let n = packages.len();
    let decided = packages
        .iter()
        .filter(|package| {
            matches!(
                package.standing,
                Standing::Within | Standing::BelowQuantification
            )
        })
        .count();
    let mut said = match (decided, n) {
        (0, 1) => "The 1 package we bought gave no result that decides.".to_owned(),
        (0, n) => format!("None of the {n} packages we bought gave a result that decides."),
        (k, n) if k == n && product.verdict.method_unfit.is_some() => format!(
            "{} gave figures {}. In this kind of food the test can miss gluten, so they don’t decide.",
            all_bought(n),
            limit.within()
        ),
        (k, n) if k == n => format!("{} tested {}.", all_bought(n), limit.within()),
        (k, n) => format!(
            "{k} of the {n} packages we bought tested {}. {} gave no result that decides.",
            limit.within(),
            n - k
        ),
    };
    said += &single_readings(packages, rule);
    said
}

/// The package result with the highest upper end, where every package has one that ends somewhere.
fn highest_result(packages: &[PackageResult], rule: Rule) -> Option<String> {
    let upper = |result: &ResultKind| match *result {
        ResultKind::Value { mean } => Some(mean),
        ResultKind::Below { upper } => Some(upper),
        ResultKind::Range(range) => range.upper,
        ResultKind::None => None,
    };
    let ends: Option<Vec<(Ppm, &ResultKind)>> = packages
        .iter()
        .map(|package| Some((upper(&package.result)?, &package.result)))
        .collect();
    let (_, highest) = ends?.into_iter().max_by(|a, b| a.0.0.total_cmp(&b.0.0))?;
    Some(numbers::result(highest, rule.limit).replace('–', " to "))
}

/// What it does not say.
pub fn says_not(product: &JudgedProduct, rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    let n = product.verdict.packages.len();
    match product.verdict.verdict {
        Verdict::OverLimit => {
            "It doesn’t say that every package is like these, how the gluten got in, or that \
                               anyone was careless. Another lot may test differently."
                .to_owned()
        }
        Verdict::WithinLimit(_) => {
            let Some(upper) = product.statistics.one_sided_upper else {
                return format!(
                    "It doesn’t prove that every package is {}.",
                    limit.within_the_limit()
                );
            };
            format!(
                "It doesn’t prove that every package is {}. Even in a random pick with 0 of {n} {}, up to {}{NBSP}% of \
                 all packages could still be (95{NBSP}%{NBSP}confidence).",
                limit.within_the_limit(),
                limit.over_the_limit(),
                numbers::percent(upper)
            )
        }
        Verdict::NoVerdict => format!(
            "It gives no answer either way. It doesn’t say that the product is {}, and it doesn’t say that it is {}.",
            limit.within_the_limit(),
            limit.over_the_limit()
        ),
    }
}
