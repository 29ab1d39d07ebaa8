//! The plan of a round: which of its messages are said.

use crate::config::Config;
use crate::model::planning::{
    Candidate, NextMoney, Price, PriceOf, RoundPlan, Scatter, Shows, Step, Variant, Why, WhyNot,
};
use crate::model::registers::Product;
use crate::render::numbers::{self, percent};
use crate::words::{Catalogue, NBSP, Said, english, say, yes_or_no};
use std::iter::once;

/// `25 %`.
pub fn share(of: f64, words: &Catalogue) -> String {
    words.quantity(&percent(of), "%")
}

/// A sum of money: `1234.50 EUR`.
pub fn money(amount: f64, currency: Option<&str>, words: &Catalogue) -> String {
    words.locale().figure(&numbers::money(amount, currency))
}

/// What the round is, in a sentence or two.
pub fn lede(plan: &RoundPlan, config: &Config, words: &Catalogue) -> String {
    let products = plan.chosen.len();
    if products == 0 {
        return words.say(&say::plan_nothing());
    }
    let packages = products * plan.packages + plan.blinds.len();
    let mut said = vec![say::plan_round(
        products as u64,
        packages as u64,
        plan.blinds.len() as u64,
        (packages * plan.extractions) as u64,
    )];
    if plan.budget.is_some() || plan.costs.total.is_some_and(|total| total > 0.0) {
        let sum = |amount| money(amount, config.planning.currency.as_deref(), words);
        said.push(say::plan_costs(
            sum(plan.costs.total.unwrap_or(0.0)),
            plan.budget.map(sum).unwrap_or_default(),
            yes_or_no(plan.budget.is_some()),
        ));
    }
    said.extend(unpriced(plan, words));
    words.text(said)
}

/// What is not in the sum of a plan's costs.
fn unpriced(plan: &RoundPlan, words: &Catalogue) -> Option<Said> {
    let packages = plan.chosen.iter().any(|planned| planned.price.is_none());
    let things = [
        (packages, "packages"),
        (plan.costs.lab.is_none(), "lab"),
        (plan.costs.shipping.is_none(), "shipping"),
    ];
    let missing = things.into_iter().filter(|(is_missing, _)| *is_missing);
    let things = words.each(missing.map(|(_, thing)| say::plan_unpriced_thing(thing)));
    (!things.is_empty()).then(|| say::plan_unpriced(words.list(&things)))
}

/// Why a product is worth testing.
pub fn why(candidate: &Candidate, words: &Catalogue) -> String {
    let (why, round, day) = match &candidate.why {
        Why::NeverTested => ("new", "", None),
        Why::NoVerdict { round } => ("no_verdict", round.as_str(), None),
        Why::OverAndAnswered { round } => ("answered", round.as_str(), None),
        Why::TestedBefore { on: Some(day) } => ("tested", "", Some(words.day(*day))),
        Why::TestedBefore { on: None } => ("undated", "", None),
        Why::AskedFor => ("asked_for", "", None),
    };
    words.say(&say::plan_why(
        why,
        round,
        day.unwrap_or_default(),
        yes_or_no(candidate.needs_competitive),
    ))
}

/// Why a product is not to be bought now.
pub fn why_not(why: &WhyNot, words: &Catalogue) -> String {
    let (why, round) = match why {
        WhyNot::UnderWay { round } => ("under_way", round.as_str()),
        WhyNot::NotAnswered { round } => ("not_answered", round.as_str()),
        WhyNot::NoAssayDecides => ("no_assay", ""),
        WhyNot::ProcessingUnknown => ("processing", ""),
        WhyNot::ClaimUnknown => ("claim", ""),
        WhyNot::RegisterLeavesOpen => ("open", ""),
        WhyNot::InThisRound => ("in_round", ""),
    };
    words.say(&say::plan_why_not(why, round))
}

/// What a label names that decides by itself.
pub fn label_names(terms: &[String], words: &Catalogue) -> String {
    let quoted = words.each(terms.iter().map(say::plan_quoted));
    words.say(&say::plan_label_names(words.list(&quoted)))
}

/// What a package of a product is expected to cost, and where that is from.
pub fn price(price: Option<&Price>, currency: Option<&str>, words: &Catalogue) -> String {
    let Some(price) = price else {
        return "–".to_owned();
    };
    let of = match price.of {
        PriceOf::Category => "category",
        PriceOf::Everything => "everything",
        PriceOf::Settings => "settings",
    };
    words.say(&say::plan_price(
        of,
        money(price.median, currency, words),
        money(price.lowest, None, words),
        money(price.highest, None, words),
        yes_or_no(price.lowest < price.highest),
        price.paid as u64,
    ))
}

/// What packages of a product should not be.
pub fn lots(candidate: &Candidate, packages: usize, words: &Catalogue) -> String {
    const SHOWN: usize = 4;
    let known = &candidate.known_lots;
    let apart = (packages > 1).then(say::plan_lots);
    let before = (!known.is_empty()).then(|| {
        let last = &known[known.len().saturating_sub(SHOWN)..];
        say::plan_lots_before(last.join(", "), yes_or_no(known.len() > SHOWN))
    });
    words.text(apart.into_iter().chain(before))
}

/// Head of a variant's column.
pub fn design(variant: &Variant, words: &Catalogue) -> String {
    words.say(&say::plan_design(
        variant.packages as u64,
        variant.extractions as u64,
    ))
}

/// What the first chart shows.
pub fn finding_alt(plan: &RoundPlan, words: &Catalogue) -> String {
    let finds = &plan.shows.finds;
    let own = finds.iter().find(|line| line.packages == plan.packages);
    let points = own.map_or(&[][..], |line| &line.points);
    let at = |of: f64| {
        let mut points = points.iter();
        let point = points.find(|point| (point.share - of).abs() < 1e-9);
        share(point.map_or(0.0, |point| point.chance), words)
    };
    words.say(&say::plan_finding_alt(
        plan.packages as u64,
        at(0.1),
        at(0.2),
        at(0.5),
    ))
}

/// What the second chart shows.
pub fn verdicts_alt(plan: &RoundPlan, config: &Config) -> String {
    let words = &config.words;
    let own = &plan.variants[0];
    words.say(&say::plan_verdicts_alt(
        words.limit(&config.rule),
        share(own.at_half.within, words),
        share(own.at_double.over, words),
        share(own.at_half.undecided, words),
        share(own.at_double.undecided, words),
    ))
}

/// Where the next money is best spent.
pub fn next_money(
    next: &NextMoney,
    plan: &RoundPlan,
    currency: Option<&str>,
    words: &Catalogue,
) -> String {
    let scatter = plan.shows.between.log_sd > plan.shows.within.log_sd;
    let best = match (next.package_first, scatter) {
        (true, true) => "package_scatter",
        (true, false) => "package",
        (false, _) => "extraction",
    };
    let cost = |step: &Step| {
        let cost = step.cost.map(|cost| money(cost, currency, words));
        (yes_or_no(cost.is_some()), cost.unwrap_or_default())
    };
    let (package, extraction) = (&next.package, &next.extraction);
    let ((package_priced, package_cost), (extraction_priced, extraction_cost)) =
        (cost(package), cost(extraction));
    let both = package.cost.is_some() && extraction.cost.is_some();
    let said = [
        say::plan_next(best),
        say::plan_next_package(
            share(plan.variants[0].standard_error, words),
            share(package.standard_error, words),
            package_cost,
            package_priced,
        ),
        say::plan_next_extraction(
            share(extraction.standard_error, words),
            extraction_cost,
            extraction_priced,
        ),
        say::plan_next_basis(yes_or_no(both)),
    ];
    words.text(said)
}

/// What the figures rest on.
pub fn assumptions(shows: &Shows, config: &Config) -> Vec<String> {
    let words = &config.words;
    let relative = |scatter: &Scatter| share((scatter.log_sd.powi(2).exp_m1()).sqrt(), words);
    let own = |scatter: &Scatter| (yes_or_no(scatter.df > 0), scatter.df as u64);
    let ((own_between, df_between), (own_within, df_within)) =
        (own(&shows.between), own(&shows.within));
    let lloq = numbers::plain(config.testing.lloq);
    let said = [
        say::plan_between(relative(&shows.between), own_between, df_between),
        say::plan_scatter_within(relative(&shows.within), own_within, df_within),
        say::plan_model(
            words.quantity(&lloq, config.rule.regime.unit()),
            words.limit(&config.rule),
        ),
        say::plan_random(),
        say::plan_bias(),
        say::plan_average(),
    ];
    words.each(said)
}

/// A plan on a screen, which is English as every command's is.
pub struct OnScreen {
    /// It in a sentence or two.
    pub lede: String,
    /// A line a product, below what becomes of it.
    pub lines: Vec<String>,
}

/// The plan for a screen.
pub fn on_screen(plan: &RoundPlan, config: &Config) -> OnScreen {
    let words = english();
    OnScreen {
        lede: lede(plan, config, words).replace(NBSP, " "),
        lines: lines(plan, words),
    }
}

fn lines(plan: &RoundPlan, words: &Catalogue) -> Vec<String> {
    let line = |of: &Product, what| format!("  {}  {}: {what}", of.product_id, of.name);
    let of = |candidate: &Candidate| line(&candidate.product, why(candidate, words));
    let chosen = plan.chosen.iter().map(|planned| of(&planned.candidate));
    let later = plan.later.iter().map(of);
    let write = plan.decided_by_label.iter();
    let write = write.map(|one| line(&one.product, label_names(&one.terms, words)));
    let left_out = plan.left_out.iter();
    let left_out = left_out.map(|one| line(&one.product, why_not(&one.why, words)));
    let parts: [(Said, Vec<String>); 4] = [
        (say::plan_title(&plan.round), chosen.collect()),
        (say::plan_later(), later.collect()),
        (say::plan_write(), write.collect()),
        (say::plan_not_now(), left_out.collect()),
    ];
    let parts = parts.into_iter().filter(|(_, rows)| !rows.is_empty());
    let lines = parts.flat_map(|(head, rows)| once(words.say(&head)).chain(rows));
    // In a terminal a space is a space.
    lines.map(|line| line.replace(NBSP, " ")).collect()
}
