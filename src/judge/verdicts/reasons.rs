//! A verdict's reasons, in plain words.

use crate::config::Config;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::PairState;
use crate::model::rule::{Decision, Limit, Rule};
use crate::model::verdict::{Grade, Verdict};

/// Why the verdict is what it is; never empty.
pub fn reasons(
    verdict: Verdict,
    packages: &[PackageResult],
    method_unfit: Option<&str>,
    config: &Config,
) -> Vec<String> {
    let rule = &config.rule;
    if let Verdict::WithinLimit(grade) = verdict {
        return vec![within(grade, packages, rule)];
    }
    let over = packages
        .iter()
        .filter(|package| package.standing == Standing::Over)
        .map(|package| over(package, rule.limit));
    let open = packages
        .iter()
        .filter(|package| {
            matches!(
                package.standing,
                Standing::Unresolved | Standing::Inconclusive
            )
        })
        .map(|package| open(package, config));
    let mut reasons: Vec<String> = over.chain(open).collect();
    if verdict == Verdict::NoVerdict {
        let asked = config.testing.packages_per_product;
        if packages.len() < asked {
            reasons.push(format!(
                "{} of {asked} packages {} been tested.",
                packages.len(),
                if packages.len() == 1 { "has" } else { "have" }
            ));
        }
        reasons.extend(method_unfit.map(str::to_owned));
    }
    reasons
}

fn within(grade: Grade, packages: &[PackageResult], rule: &Rule) -> String {
    let all = match packages.len() {
        1 => "The one package".to_owned(),
        n => format!("Each of the {n} packages"),
    };
    let limit = limit_kept(rule.limit);
    match grade {
        Grade::BelowQuantification => {
            let most = packages
                .iter()
                .filter_map(|package| match package.result {
                    ResultKind::Below { upper } => Some(upper),
                    _ => None,
                })
                .reduce(|a, b| a.max(b));
            let most = most.map_or_else(String::new, |upper| {
                format!(" (below {} ppm)", rule.limit.shown(upper))
            });
            format!("{all} held too little gluten to measure{most}, which is {limit}.")
        }
        Grade::Quantified => match rule.decision {
            Decision::Simple => format!("{all} is {limit}."),
            Decision::Guarded { .. } => {
                format!("{all} is {limit}, the assay’s uncertainty included.")
            }
        },
    }
}

fn over(package: &PackageResult, limit: Limit) -> String {
    let code = &package.pair.package.package_code;
    let reached = limit_broken(limit);
    if package.pair.state == PairState::Disagree {
        let all = package
            .pair
            .usable()
            .filter_map(|extraction| extraction.outcome.reading())
            .all(|reading| crate::judge::packages::surely_over(&reading, limit));
        return if all {
            format!(
                "The extractions of package {code} disagree, and every one of them is {reached}."
            )
        } else {
            format!("The extractions of package {code} disagree, and their median is {reached}.")
        };
    }
    format!(
        "Package {code} holds {}, which is {reached}.",
        held(package, limit)
    )
}

/// A package's result in words.
fn held(package: &PackageResult, limit: Limit) -> String {
    match package.result {
        ResultKind::Value { mean } => format!("{} ppm (mean)", limit.shown(mean)),
        ResultKind::Below { upper } => format!("less than {} ppm", limit.shown(upper)),
        ResultKind::Range {
            lower,
            upper: Some(upper),
            ..
        } => format!("{} to {} ppm", limit.shown(lower), limit.shown(upper)),
        ResultKind::Range { lower, .. } => format!("more than {} ppm", limit.shown(lower)),
        ResultKind::None => "no sound result".to_owned(),
    }
}

/// Why a package decides nothing.
fn open(package: &PackageResult, config: &Config) -> String {
    let limit = config.rule.limit;
    let code = &package.pair.package.package_code;
    match package.pair.state {
        PairState::Missing => format!("The lab has reported nothing of package {code} yet."),
        PairState::Incomplete => format!(
            "Package {code} has {} of the {} usable extractions that a result needs.",
            package.pair.usable().count(),
            config.testing.extractions_per_package,
        ),
        PairState::Disagree => {
            let comparison = package.pair.comparison.as_ref();
            let by = comparison.map_or_else(String::new, |comparison| {
                let (gap, allowed) = in_order(comparison.gap.0, comparison.allowed.0);
                format!(": they are at least {gap} ppm apart, where {allowed} ppm is allowed")
            });
            format!("The extractions of package {code} disagree{by}.")
        }
        PairState::Agree if package.standing == Standing::Inconclusive => format!(
            "Package {code} holds {}, too near the limit of {} ppm for the assay’s uncertainty.",
            held(package, limit),
            short(limit.ppm.0)
        ),
        PairState::Agree => format!(
            "Package {code} holds {}, which does not show on which side of {} ppm it lies.",
            held(package, limit),
            short(limit.ppm.0)
        ),
    }
}

fn limit_kept(limit: Limit) -> String {
    let word = if limit.passes { "not above" } else { "below" };
    format!("{word} the limit of {} ppm", short(limit.ppm.0))
}

fn limit_broken(limit: Limit) -> String {
    let word = if limit.passes { "above" } else { "at or above" };
    format!("{word} the limit of {} ppm", short(limit.ppm.0))
}

/// A gap and what is allowed: one decimal, more where the gap would not print as the larger of the two.
fn in_order(gap: f64, allowed: f64) -> (String, String) {
    let printed = |decimals: usize| (format!("{gap:.decimals$}"), format!("{allowed:.decimals$}"));
    let larger = |(gap, allowed): &(String, String)| {
        let value = |text: &String| text.parse::<f64>().unwrap_or(f64::NAN);
        value(gap) > value(allowed)
    };
    (1..=9)
        .map(printed)
        .find(larger)
        .unwrap_or_else(|| printed(9))
}

/// Two decimals at most, since these figures are compared with one another, not with the limit.
fn short(x: f64) -> String {
    format!("{}", (x * 100.0).round() / 100.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_gap_prints_as_larger_than_what_is_allowed() {
        let printed = |gap, allowed| {
            let (gap, allowed) = in_order(gap, allowed);
            format!("{gap} > {allowed}")
        };
        assert_eq!(printed(24.9, 7.92), "24.9 > 7.9");
        assert_eq!(printed(8.44, 8.42), "8.44 > 8.42");
    }
}
