//! The verdict: its words, the count below them, and the sentence beside it.

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
use crate::render::words::summary::{number, number_of};
use crate::render::words::{counted, listed, sentence_case, with_unit};
use crate::words::{reason_in_words, reasons};

/// `At or above 20 ppm`, `Below 20 ppm`, `No verdict`.
pub fn words(verdict: Verdict, rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    match verdict {
        Verdict::OverLimit => sentence_case(&limit.over()),
        Verdict::WithinLimit(_) => sentence_case(&limit.within()),
        Verdict::NoVerdict => "No verdict".to_owned(),
    }
}

/// How many packages the verdict rests on.
pub fn count(product: &ProductVerdict, rule: Rule, asked_for: usize) -> String {
    let limit = LimitWords::of(rule);
    let packages = &product.packages;
    let n = counted(packages.len(), "package", "packages");
    match product.verdict {
        Verdict::OverLimit => {
            format!(
                "{} of {n} tested {}.",
                with_standing(packages, Standing::Over).count(),
                limit.over_the_limit()
            )
        }
        Verdict::WithinLimit(_) if packages.len() == 1 => {
            format!("The 1 package tested {}.", limit.within_the_limit())
        }
        Verdict::WithinLimit(_) => format!("All {n} tested {}.", limit.within_the_limit()),
        Verdict::NoVerdict => undecided_count(packages, asked_for),
    }
}

fn undecided_count(packages: &[PackageResult], asked_for: usize) -> String {
    let n = counted(packages.len(), "package", "packages");
    let unresolved = with_standing(packages, Standing::Unresolved).count();
    let inconclusive = with_standing(packages, Standing::Inconclusive).count();
    if unresolved > 0 {
        let verb = if unresolved == 1 { "has" } else { "have" };
        format!("{unresolved} of {n} {verb} no result that decides.")
    } else if inconclusive > 0 {
        let verb = if inconclusive == 1 { "is" } else { "are" };
        format!("{inconclusive} of {n} {verb} too close to the limit to call.")
    } else if packages.len() < asked_for {
        format!("{} of {asked_for} packages have a result.", packages.len())
    } else {
        "The test can’t decide for this kind of food.".to_owned()
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

/// The sentence beside the verdict.
pub fn sentence(product: &ProductVerdict, config: &Config) -> String {
    let rule = product.rule;
    match product.verdict {
        Verdict::OverLimit => over(product, rule),
        Verdict::WithinLimit(Grade::BelowQuantification) => none_measured(product, rule),
        Verdict::WithinLimit(Grade::Quantified) => measured_within(product, rule),
        Verdict::NoVerdict => undecided(product, config),
    }
}

fn over(product: &ProductVerdict, rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    let packages: Vec<&PackageResult> = with_standing(&product.packages, Standing::Over).collect();
    let enough = format!(
        "One package {} is enough for this verdict.",
        limit.over_in_full()
    );
    let [package] = packages.as_slice() else {
        return format!(
            "{} tested {}{}. {enough}",
            sentence_case(&number_of(packages.len() as u64, "package")),
            limit.over_the_limit(),
            highest_mean(&packages, rule)
        );
    };
    let figure = numbers::result(&package.result, rule.limit);
    let measured = match package.result {
        ResultKind::Range(_) if package.pair.state == PairState::Disagree => {
            format!(
                "The extractions of one package ({}) differ too much to give one figure, but they put it {}.",
                package.pair.package.package_code,
                limit.over_the_limit()
            )
        }
        ResultKind::Range(range) if range.upper.is_none() => {
            format!(
                "One package measured more than {}.",
                with_unit(figure.trim_start_matches('>'), limit.unit())
            )
        }
        ResultKind::Range(_) => {
            format!(
                "One package measured {}.",
                with_unit(&figure.replace('–', " to "), limit.unit())
            )
        }
        _ => format!("One package measured {}.", with_unit(&figure, limit.unit())),
    };
    format!("{measured} {enough}")
}

/// `; the highest measured 29.9 ppm`, where every one of the packages has a figure.
fn highest_mean(packages: &[&PackageResult], rule: Rule) -> String {
    let means: Option<Vec<Ppm>> = packages
        .iter()
        .map(|package| match package.result {
            ResultKind::Value { mean } => Some(mean),
            ResultKind::Below { .. } | ResultKind::Range(_) | ResultKind::None => None,
        })
        .collect();
    let highest = means.and_then(|means| means.into_iter().reduce(Ppm::max));
    let said = highest.map(|mean| {
        with_unit(
            &numbers::figure(mean, rule.limit),
            LimitWords::of(rule).unit(),
        )
    });
    said.map_or_else(String::new, |figure| {
        format!("; the highest measured {figure}")
    })
}

fn none_measured(product: &ProductVerdict, rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    let bound = with_unit(
        &numbers::plain(highest_bound(&product.packages)),
        limit.unit(),
    );
    format!(
        "No package had enough gluten to measure: every result was below {bound}. The limit for this claim is {}.",
        limit.in_full()
    )
}

/// The largest "below n" among package results that are that.
pub fn highest_bound(packages: &[PackageResult]) -> Ppm {
    let bounds = packages.iter().filter_map(|package| match package.result {
        ResultKind::Below { upper } => Some(upper),
        _ => None,
    });
    bounds.fold(Ppm::ZERO, |most, bound| most.max(bound))
}

fn measured_within(product: &ProductVerdict, rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    let n = product.packages.len();
    let below = with_standing(&product.packages, Standing::BelowQuantification).count();
    let measured = n - below;
    let where_measured = match (measured, n) {
        (1, 1) => "Gluten was measured in the one package".to_owned(),
        (k, n) if k == n => format!("Gluten was measured in all {n} packages"),
        (k, n) => format!("Gluten was measured in {k} of the {n} packages"),
    };
    // A package's result is within the limit; one of its extractions may have measured more.
    let results = match measured {
        1 => "with a result",
        _ => "with results",
    };
    let others = match below {
        0 => String::new(),
        1 => format!(
            " In the other it was below {}.",
            bound_words(product, limit)
        ),
        _ => format!(
            " In the others it was below {}.",
            bound_words(product, limit)
        ),
    };
    format!(
        "{where_measured}, {results} {} of {}.{others}{}",
        limit.within_the_limit(),
        limit.in_full(),
        single_readings(&product.packages, rule)
    )
}

fn bound_words(product: &ProductVerdict, limit: LimitWords) -> String {
    with_unit(
        &numbers::plain(highest_bound(&product.packages)),
        limit.unit(),
    )
}

fn undecided(product: &ProductVerdict, config: &Config) -> String {
    let (rule, asked_for) = (product.rule, config.testing.packages_per_product);
    let limit = LimitWords::of(rule);
    // What nobody can decide on comes before anything that the packages say.
    if product.reasons.iter().any(Reason::comes_first) {
        return reasons(&product.reasons, &rule, &config.words).join(" ");
    }
    let mut causes = causes(&product.packages, rule);
    let tested = product.packages.len();
    if tested < asked_for {
        causes.push(format!("only {tested} of {asked_for} packages were tested"));
    }
    let why_not = product
        .method_unfit
        .as_ref()
        .map(|unfit| reason_in_words(unfit, &rule, &config.words));
    if causes.is_empty() {
        let why_not =
            why_not.unwrap_or_else(|| reasons(&product.reasons, &rule, &config.words).join(" "));
        return format!("{} {why_not}", limit.cannot_show());
    }
    let method = why_not
        .map(|why_not| format!(" {why_not}"))
        .unwrap_or_default();
    format!("{}: {}.{method}", limit.cannot_say(), listed(&causes))
}

/// Why packages have no result that decides, one cause a kind, with the packages it holds for.
fn causes(packages: &[PackageResult], rule: Rule) -> Vec<String> {
    let mut by_cause: Vec<(Cause, Vec<&str>)> = Vec::new();
    for package in packages {
        let Some(cause) = cause(package) else {
            continue;
        };
        let code = package.pair.package.package_code.as_str();
        match by_cause.iter_mut().find(|(known, _)| *known == cause) {
            Some((_, codes)) => codes.push(code),
            None => by_cause.push((cause, vec![code])),
        }
    }
    let said = |(cause, codes): &(Cause, Vec<&str>)| cause.said(codes, rule);
    by_cause.iter().map(said).collect()
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Cause {
    Conflict,
    Disagree,
    Incomplete,
    Missing,
    OpenBound,
    TooClose,
}

fn cause(package: &PackageResult) -> Option<Cause> {
    let conflict = package
        .pair
        .extractions
        .iter()
        .any(|paired| paired.usage == Usage::InConflict);
    match (package.standing, package.pair.state) {
        (Standing::Unresolved, _) if conflict => Some(Cause::Conflict),
        (Standing::Inconclusive, _) => Some(Cause::TooClose),
        (Standing::Unresolved, PairState::Disagree) => Some(Cause::Disagree),
        (Standing::Unresolved, PairState::Incomplete) => Some(Cause::Incomplete),
        (Standing::Unresolved, PairState::Missing) => Some(Cause::Missing),
        (Standing::Unresolved, PairState::Agree) => Some(Cause::OpenBound),
        _ => None,
    }
}

impl Cause {
    fn said(self, codes: &[&str], rule: Rule) -> String {
        let of = named(codes);
        let (has, is) = if codes.len() == 1 {
            ("has", "is")
        } else {
            ("have", "are")
        };
        match self {
            Cause::Conflict => format!("the lab’s reports differ about {of}"),
            Cause::Disagree => format!("the extractions of {of} disagree"),
            Cause::Incomplete => {
                format!("{of} {has} fewer usable extractions than the rule asks for")
            }
            Cause::Missing => format!("no result has come for {of}"),
            Cause::OpenBound => format!("the result of {of} may lie on either side"),
            Cause::TooClose => match rule.decision {
                Decision::Guarded {
                    relative_expanded_uncertainty,
                } => format!(
                    "{of} {is} closer to it than the test’s uncertainty ({}{}%)",
                    numbers::percent(relative_expanded_uncertainty),
                    numbers::NBSP
                ),
                Decision::Simple => format!("{of} {is} too close to it"),
            },
        }
    }
}

fn named(codes: &[&str]) -> String {
    match codes {
        [one] => format!("package {one}"),
        few if few.len() <= 4 => format!("packages {}", listed(few)),
        many => format!("{} packages", many.len()),
    }
}

/// A sentence on the single readings that are over the limit, with a space before it; nothing where there is none. So no
/// verdict hides one.
pub fn single_readings(packages: &[PackageResult], rule: Rule) -> String {
    let limit = LimitWords::of(rule);
    let over: Vec<Interval> = packages
        .iter()
        .flat_map(|package| package.pair.usable())
        .filter_map(|extraction| extraction.outcome.reading())
        .filter(|reading| rule.limit.surely_over(reading))
        .collect();
    let highest = over.iter().max_by(|a, b| a.lower.0.total_cmp(&b.lower.0));
    let Some(highest) = highest else {
        return String::new();
    };
    let figure = with_unit(&numbers::interval(*highest, rule.limit), limit.unit());
    match over.len() {
        1 => format!(" One extraction measured {figure}."),
        n => format!(
            " {} extractions measured {}, the highest {figure}.",
            sentence_case(&number(n as u64)),
            limit.over(),
        ),
    }
}
