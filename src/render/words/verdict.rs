//! The verdict: its words, the count below them, and the sentences beside it.

use crate::config::Config;
use crate::model::extraction::Interval;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::{PairState, Usage};
use crate::model::ppm::Ppm;
use crate::model::reason::Reason;
use crate::model::rule::{Decision, Rule};
use crate::model::verdict::{Grade, ProductVerdict, Verdict};
use crate::render::numbers;
use crate::render::words::limit::LimitWords;
use crate::render::words::method::percent;
use crate::render::words::{Named, NamedMessage, guarded};
use crate::words::{Catalogue, Said, reason_in_words, reasons, say, side};
use std::iter::once;

/// `At or above 20 ppm`, `Below 20 ppm`, `No verdict`.
pub fn headline(verdict: Verdict, rule: Rule, words: &Catalogue) -> String {
    let limit = LimitWords::of(rule, words);
    words.say(&match verdict {
        Verdict::OverLimit => say::verdict_over(limit.side(), limit.figure()),
        Verdict::WithinLimit(_) => say::verdict_within(limit.side(), limit.figure()),
        Verdict::NoVerdict => say::verdict_none(),
    })
}

/// How many packages the verdict rests on.
pub fn rests_on(product: &ProductVerdict, asked_for: usize, words: &Catalogue) -> String {
    let packages = &product.packages;
    let (all, side) = (packages.len() as u64, side(product.rule.limit));
    words.say(&match product.verdict {
        Verdict::OverLimit => {
            let over = with_standing(packages, Standing::Over).count() as u64;
            say::count_over(over, all, guarded(product.rule), side)
        }
        Verdict::WithinLimit(_) => say::count_within(all, guarded(product.rule), side),
        Verdict::NoVerdict => undecided_count(product, asked_for),
    })
}

fn undecided_count(product: &ProductVerdict, asked_for: usize) -> Said {
    let packages = &product.packages;
    let all = packages.len() as u64;
    let of = |standing| with_standing(packages, standing).count() as u64;
    let (unresolved, close) = (of(Standing::Unresolved), of(Standing::Inconclusive));
    if product.reasons.iter().any(Reason::comes_first) {
        say::count_open()
    } else if unresolved > 0 {
        say::count_unresolved(unresolved, all)
    } else if close > 0 {
        say::count_close(close, all)
    } else if packages.len() < asked_for {
        say::count_short(all, asked_for as u64)
    } else {
        say::count_unfit()
    }
}

fn with_standing(
    packages: &[PackageResult],
    standing: Standing,
) -> impl Iterator<Item = &PackageResult> {
    packages
        .iter()
        .filter(move |package| package.standing == standing)
}

/// The sentences beside the verdict.
pub fn sentence(product: &ProductVerdict, config: &Config) -> String {
    let words = &config.words;
    let said = match product.verdict {
        Verdict::OverLimit => over(product, words),
        Verdict::WithinLimit(Grade::BelowQuantification) => vec![none_measured(product, words)],
        Verdict::WithinLimit(Grade::Quantified) => measured_within(product, words),
        Verdict::NoVerdict => undecided(product, config),
    };
    said.join(" ")
}

fn over(product: &ProductVerdict, words: &Catalogue) -> Vec<String> {
    let limit = LimitWords::of(product.rule, words);
    let packages: Vec<&PackageResult> = with_standing(&product.packages, Standing::Over).collect();
    let measured = match packages.as_slice() {
        [package] => one_over(package, limit, product.rule, words),
        several => several_over(several, limit, product.rule, words),
    };
    let others = [
        (Standing::Inconclusive, say::over_too_close as NamedMessage),
        (Standing::Unresolved, say::over_unresolved),
    ];
    let others = others.into_iter().filter_map(|(standing, message)| {
        let packages = with_standing(&product.packages, standing);
        Some(Named::of(packages, words)?.said(message))
    });
    let enough = say::over_enough(limit.in_full(), limit.side());
    words.each([measured, enough].into_iter().chain(others))
}

fn one_over(package: &PackageResult, limit: LimitWords<'_>, rule: Rule, words: &Catalogue) -> Said {
    let code = &package.pair.package.package_code;
    let said = || numbers::result_said(&package.result, rule.limit, words);
    let (kind, figure) = match package.result {
        ResultKind::Range(_) if package.pair.state == PairState::Disagree => {
            return say::over_one("disagree", code, "", limit.side());
        }
        ResultKind::Range(range) if range.upper.is_none() => {
            ("above", said().trim_start_matches('>').to_owned())
        }
        ResultKind::Range(_) => {
            let range = numbers::result_in_text(&package.result, rule.limit, words);
            ("range", range)
        }
        _ => ("mean", said()),
    };
    say::over_one(kind, code, limit.quantity(&figure), limit.side())
}

fn several_over(
    packages: &[&PackageResult],
    limit: LimitWords<'_>,
    rule: Rule,
    words: &Catalogue,
) -> Said {
    let n = words.spelt_first(packages.len());
    match highest_mean(packages) {
        Some(mean) => {
            let figure = limit.quantity(&numbers::figure(mean, rule.limit));
            say::over_several(n, "known", figure, limit.side())
        }
        None => say::over_several(n, "unknown", "", limit.side()),
    }
}

/// The highest mean, where every one of the packages has one.
fn highest_mean(packages: &[&PackageResult]) -> Option<Ppm> {
    let means = packages.iter().map(|package| match package.result {
        ResultKind::Value { mean } => Some(mean),
        ResultKind::Below { .. } | ResultKind::Range(_) | ResultKind::None => None,
    });
    let means: Option<Vec<Ppm>> = means.collect();
    means?.into_iter().reduce(Ppm::max)
}

fn none_measured(product: &ProductVerdict, words: &Catalogue) -> String {
    let limit = LimitWords::of(product.rule, words);
    words.say(&say::none_measured(
        product.packages.len() as u64,
        below(product, limit),
        limit.in_full(),
        limit.side(),
    ))
}

/// The largest "below n" among package results that are that.
pub fn highest_bound(packages: &[PackageResult]) -> Ppm {
    let bounds = packages.iter().filter_map(|package| match package.result {
        ResultKind::Below { upper } => Some(upper),
        _ => None,
    });
    bounds.fold(Ppm::ZERO, |most, bound| most.max(bound))
}

fn below(product: &ProductVerdict, limit: LimitWords<'_>) -> String {
    limit.quantity(&numbers::plain(highest_bound(&product.packages)))
}

fn measured_within(product: &ProductVerdict, words: &Catalogue) -> Vec<String> {
    let limit = LimitWords::of(product.rule, words);
    let all = product.packages.len() as u64;
    let others = with_standing(&product.packages, Standing::BelowQuantification).count() as u64;
    let measured = all - others;
    let part = match (measured, all) {
        (1, 1) => "the_one",
        (k, n) if k == n => "all",
        _ => "some",
    };
    let within = say::measured_within(part, measured, all, limit.in_full(), limit.side());
    let below = || say::measured_others(others, below(product, limit));
    let mut said = words.each(once(within).chain((others > 0).then(below)));
    said.extend(single_readings(&product.packages, product.rule, words));
    said
}

fn undecided(product: &ProductVerdict, config: &Config) -> Vec<String> {
    let (rule, words) = (product.rule, &*config.words);
    let limit = LimitWords::of(rule, words);
    // What nobody can decide on comes before anything that the packages say.
    if product.reasons.iter().any(Reason::comes_first) {
        return reasons(&product.reasons, &rule, words);
    }
    let mut causes = causes(&product.packages, rule, words);
    let (tested, asked) = (product.packages.len(), config.testing.packages_per_product);
    if tested < asked {
        let few = Reason::TooFewPackages { tested, asked };
        causes.push(reason_in_words(&few, &rule, words));
    }
    let unfit = product.method_unfit.as_ref();
    let unfit = unfit.map(|unfit| reason_in_words(unfit, &rule, words));
    if causes.is_empty() {
        let why_not =
            unfit.map_or_else(|| reasons(&product.reasons, &rule, words), |one| vec![one]);
        let cannot = words.say(&say::cannot_show(limit.in_full(), limit.side()));
        return once(cannot).chain(why_not).collect();
    }
    let cannot = words.say(&say::cannot_tell(limit.in_full(), limit.side()));
    once(cannot).chain(causes).chain(unfit).collect()
}

/// Why packages have no result that decides: a sentence a cause, with the packages it holds for.
fn causes(packages: &[PackageResult], rule: Rule, words: &Catalogue) -> Vec<String> {
    let mut found: Vec<Cause> = Vec::new();
    for cause in packages.iter().filter_map(cause) {
        if !found.contains(&cause) {
            found.push(cause);
        }
    }
    let said = |wanted: Cause| {
        let held = packages.iter().filter(|one| cause(one) == Some(wanted));
        Some(words.say(&wanted.said(Named::of(held, words)?, rule, words)))
    };
    found.into_iter().filter_map(said).collect()
}

/// Why a package has no result that decides.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cause {
    /// The lab's reports say different things.
    Conflict,
    /// Its extractions differ too much.
    Disagree,
    /// Some extractions are lacking.
    Incomplete,
    /// All are.
    Missing,
    /// It may be on either side of the limit.
    EitherSide,
    /// It is too close to the limit to call.
    TooClose,
}

/// Why a package has no result that decides; none where it has one.
pub fn cause(package: &PackageResult) -> Option<Cause> {
    let mut extractions = package.pair.extractions.iter();
    Some(match (package.standing, package.pair.state) {
        (Standing::Unresolved, _) if extractions.any(|one| one.usage == Usage::InConflict) => {
            Cause::Conflict
        }
        (Standing::Inconclusive, _) => Cause::TooClose,
        (Standing::Unresolved, PairState::Disagree) => Cause::Disagree,
        (Standing::Unresolved, PairState::Incomplete) => Cause::Incomplete,
        (Standing::Unresolved, PairState::Missing) => Cause::Missing,
        (Standing::Unresolved, PairState::Agree) => Cause::EitherSide,
        _ => return None,
    })
}

impl Cause {
    fn said(self, of: Named, rule: Rule, words: &Catalogue) -> Said {
        let message: NamedMessage = match self {
            Cause::Conflict => say::cause_conflict,
            Cause::Disagree => say::cause_disagree,
            Cause::Incomplete => say::cause_incomplete,
            Cause::Missing => say::cause_missing,
            Cause::EitherSide => say::cause_either_side,
            Cause::TooClose => {
                let share = match rule.decision {
                    Decision::Guarded {
                        relative_expanded_uncertainty,
                    } => relative_expanded_uncertainty,
                    Decision::Simple => 0.0,
                };
                let uncertainty = percent(share, words);
                return say::cause_too_close(of.packages, of.by, of.named, uncertainty);
            }
        };
        of.said(message)
    }
}

/// A sentence on the single readings that are over the limit; none where there is none. So no verdict hides one.
pub fn single_readings(
    packages: &[PackageResult],
    rule: Rule,
    words: &Catalogue,
) -> Option<String> {
    let limit = LimitWords::of(rule, words);
    let over: Vec<Interval> = packages
        .iter()
        .flat_map(|package| package.pair.usable())
        .filter_map(|extraction| extraction.outcome.reading())
        .filter(|reading| rule.limit.surely_over(reading))
        .collect();
    let highest = over.iter().max_by(|a, b| a.lower.0.total_cmp(&b.lower.0))?;
    let kind = highest.upper.map_or("above", |_| "figure");
    let figure = numbers::interval_said(*highest, rule.limit, words);
    Some(words.say(&say::single_over(
        over.len() as u64,
        words.spelt_first(over.len()),
        kind,
        limit.quantity(figure.trim_start_matches('>')),
        limit.side(),
        limit.figure(),
    )))
}
