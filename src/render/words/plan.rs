//! The sentences of a round's plan.

use crate::config::Config;
use crate::model::planning::{
    Blind, Candidate, NextMoney, Price, PriceOf, RoundPlan, Scatter, Shows, Variant, Why, WhyNot,
};
use crate::render::numbers::{self, NBSP, money, percent};
use crate::render::words::limit::LimitWords;
use crate::render::words::{counted, listed};

/// `25 %`.
pub fn share(of: f64) -> String {
    format!("{}{NBSP}%", percent(of))
}

/// What the round is, in a sentence or two.
pub fn lede(plan: &RoundPlan, config: &Config) -> String {
    let products = plan.chosen.len();
    let packages = products * plan.packages + plan.blinds.len();
    if products == 0 {
        return "No product of the register is to be bought now; the lists below say why."
            .to_owned();
    }
    let blinds = match plan.blinds.len() {
        0 => String::new(),
        n => format!(", {n} of them of known content"),
    };
    let what = format!(
        "{}, {}{blinds}, {}.",
        counted(products, "product", "products"),
        counted(packages, "package", "packages"),
        counted(packages * plan.extractions, "extraction", "extractions"),
    );
    let currency = config.planning.currency.as_deref();
    let total = money(plan.costs.total, currency);
    let missing = missing_prices(plan);
    let costs = match (plan.budget, plan.costs.total > 0.0) {
        (Some(budget), _) => format!(
            " It costs {total} of a budget of {}.",
            money(budget, currency)
        ),
        (None, true) => format!(" It costs {total}."),
        (None, false) => String::new(),
    };
    format!("{what}{costs}{missing}")
}

/// What is not in the sum of a plan's costs.
fn missing_prices(plan: &RoundPlan) -> String {
    let unpriced = plan
        .chosen
        .iter()
        .filter(|planned| planned.price.is_none())
        .count();
    let mut missing = Vec::new();
    if unpriced > 0 {
        missing.push("the packages, since none has a price in the register yet".to_owned());
    }
    if plan.costs.lab.is_none() {
        missing.push("the lab’s work (extraction_price)".to_owned());
    }
    if plan.costs.shipping.is_none() {
        missing.push("sending (shipping_price)".to_owned());
    }
    if missing.is_empty() {
        return String::new();
    }
    format!(" Not in any sum here: {}.", listed(&missing))
}

/// Why a product is worth testing.
pub fn why(candidate: &Candidate) -> String {
    let why = match &candidate.why {
        Why::NeverTested => "never tested".to_owned(),
        Why::NoVerdict { round } => format!("no verdict in round {round}"),
        Why::OverAndAnswered { round } => {
            format!("over the limit in round {round}, and the maker has answered")
        }
        Why::TestedBefore { on: Some(day) } => format!("last tested {}", numbers::date(*day)),
        Why::TestedBefore { on: None } => "tested before, on a day that is not known".to_owned(),
        Why::AskedFor => "asked for; it was over the limit".to_owned(),
    };
    if candidate.needs_competitive {
        format!("{why}; needs a competitive assay")
    } else {
        why
    }
}

/// Why a product is not to be bought now.
pub fn why_not(why: &WhyNot) -> String {
    match why {
        WhyNot::UnderWay { round } => {
            format!("Packages of round {round} are bought or with the lab.")
        }
        WhyNot::NotAnswered { round } => format!(
            "It was over the limit in round {round}, and no answer of the maker is registered."
        ),
        WhyNot::NoAssayDecides => {
            "It is fermented or hydrolysed: under this rule no test decides for it. Ask the maker for the records of what \
             went in."
                .to_owned()
        }
        WhyNot::ProcessingUnknown => {
            "The register has a word for its processing that is none of the known ones: mend it first.".to_owned()
        }
        WhyNot::ClaimUnknown => {
            "Its claim in the register is none that the rule knows, so there is no limit to hold a result against.".to_owned()
        }
        WhyNot::RegisterLeavesOpen => {
            "The register leaves something open without which there would be no verdict: `galleyproof check` says what."
                .to_owned()
        }
        WhyNot::InThisRound => "It has packages in this round already.".to_owned(),
    }
}

/// What a package of a product is expected to cost, and where that is from.
pub fn price(price: Option<&Price>, currency: Option<&str>) -> String {
    let Some(price) = price else {
        return "–".to_owned();
    };
    let median = money(price.median, currency);
    let range = if price.lowest < price.highest {
        format!(
            ", {} to {}",
            money(price.lowest, None),
            money(price.highest, None)
        )
    } else {
        String::new()
    };
    match price.of {
        PriceOf::Category => format!("{median} ({} paid{range})", price.paid),
        PriceOf::Everything => format!("{median} (all foods, {} paid{range})", price.paid),
        PriceOf::Settings => format!("{median} (programme.toml)"),
    }
}

/// What packages of a product should not be.
pub fn lots(candidate: &Candidate, packages: usize) -> String {
    let mut text = if packages > 1 {
        "Of different lots and shops, where they can be had; note it where not.".to_owned()
    } else {
        String::new()
    };
    const SHOWN: usize = 4;
    let known = &candidate.known_lots;
    if !known.is_empty() {
        let of = if known.len() > SHOWN {
            " among others"
        } else {
            ""
        };
        let last = &known[known.len().saturating_sub(SHOWN)..];
        text.push_str(&format!(" Tested before{of}: {}.", last.join(", ")));
    }
    text.trim().to_owned()
}

/// Head of a variant's column.
pub fn design(variant: &Variant) -> String {
    format!(
        "{} × {}",
        counted(variant.packages, "package", "packages"),
        counted(variant.extractions, "extraction", "extractions")
    )
}

/// What blinds are and how they are used.
pub fn blinds(blinds: &[Blind]) -> Option<String> {
    (!blinds.is_empty()).then(|| {
        format!(
            "{} of known content go along under codes like the others: one kind known to hold no gluten, the other with a \
             known amount added. Their key is in blinds.csv: keep it where the lab cannot see it. In registers/blinds.csv \
             (plan --blinds --enter puts it there) it also puts their codes on the form, and what the lab finds in them is held against it and told to \
             you alone: no sheet, no count and no verdict has them.",
            counted(blinds.len(), "package", "packages")
        )
    })
}

/// What the first chart shows.
pub fn finding_alt(plan: &RoundPlan) -> String {
    let at = |share: f64| {
        let own = plan
            .shows
            .finds
            .iter()
            .find(|line| line.packages == plan.packages);
        let points = own.map_or(&[][..], |line| &line.points);
        let point = points
            .iter()
            .find(|point| (point.share - share).abs() < 1e-9);
        point.map_or(0.0, |point| point.chance)
    };
    format!(
        "Curves of the chance that packages drawn at random hold at least one over the limit, against the share of all packages \
         that is. With {}: {} where 10 % are over, {} where 20 % are, {} where half are.",
        counted(plan.packages, "package", "packages"),
        share(at(0.1)),
        share(at(0.2)),
        share(at(0.5)),
    )
}

/// What the second chart shows.
pub fn verdicts_alt(plan: &RoundPlan, limit: &LimitWords) -> String {
    let own = &plan.variants[0];
    format!(
        "Curves of the chance of each verdict against the true mean of a product, with the limit of {} in the middle. At half the \
         limit the verdict is within it in {} of all cases; at twice the limit it is over it in {}; without a verdict {} and {}.",
        limit.figure(),
        share(own.at_half.within),
        share(own.at_double.over),
        share(own.at_half.undecided),
        share(own.at_double.undecided),
    )
}

/// Where the next money is best spent.
pub fn next_money(next: &NextMoney, plan: &RoundPlan, currency: Option<&str>) -> String {
    let now = share(plan.variants[0].standard_error);
    let step = |what: &str, step: &crate::model::planning::Step| {
        let cost = step
            .cost
            .map(|cost| format!(" for {} a product", money(cost, currency)))
            .unwrap_or_default();
        format!("{what} lowers it to {}{cost}", share(step.standard_error))
    };
    let package = step("a further package of each product", &next.package);
    let extraction = step("a further extraction of each package", &next.extraction);
    let (better, why) = if next.package_first {
        (
            "a further package",
            "the packages of a product differ more than the extractions of a package",
        )
    } else {
        (
            "a further extraction of each package",
            "the extractions of a package differ more than its price is worth",
        )
    };
    let priced = next.package.cost.is_some() && next.extraction.cost.is_some();
    let basis = if priced {
        "for the same money"
    } else {
        "by itself, prices not counted"
    };
    let because = if next.package_first && plan.shows.between.log_sd > plan.shows.within.log_sd {
        format!(": {why}")
    } else {
        String::new()
    };
    format!(
        "The next money is best spent on {better}{because}. The standard error of a product’s mean is {now} now; {package}, and \
         {extraction}. The comparison is {basis}."
    )
}

/// What the figures rest on.
pub fn assumptions(shows: &Shows, config: &Config) -> Vec<String> {
    let of = |what: &str, scatter: &Scatter, stand_in: &str| {
        let relative = share((scatter.log_sd.powi(2).exp_m1()).sqrt());
        match scatter.df {
            0 => format!(
                "{what}: {relative}, a stand-in ({stand_in}), since the programme has too few figures of its own."
            ),
            df => format!(
                "{what}: {relative}, from the programme’s own results ({df} degrees of freedom)."
            ),
        }
    };
    let limit = LimitWords::of(config.rule);
    vec![
        of(
            "Relative standard deviation between the packages of a product",
            &shows.between,
            "naturally contaminated oat flour in a collaborative study of 19 laboratories, 41 to 43 %",
        ),
        of(
            "Relative standard deviation between the extractions of a package",
            &shows.within,
            "relative_repeatability in programme.toml",
        ),
        format!(
            "Packages scatter about a product’s true mean, and extractions about their package’s content, lognormally and \
             independently. The pair rule, the quantification limit of {} and the limit of {} are applied as they stand; a claim \
             with a limit of its own is not drawn.",
            numbers::plain(config.testing.lloq),
            limit.figure(),
        ),
        "The packages are taken for a random pick of all packages. Three from one shelf or one lot speak for less.".to_owned(),
        "A lab’s own bias is not in these figures: no number of packages or extractions shows it.".to_owned(),
        "A plan says what a round can show of many products on average, and nothing of any product. What a food may be called \
         is for the regulator to decide."
            .to_owned(),
    ]
}

/// The plan for a screen: a line a product.
pub fn lines(plan: &RoundPlan) -> Vec<String> {
    let mut lines = Vec::new();
    let mut part = |head: &str, rows: Vec<String>| {
        if !rows.is_empty() {
            lines.push(head.to_owned());
            lines.extend(rows.into_iter().map(|row| format!("  {row}")));
        }
    };
    let of = |candidate: &Candidate| {
        let product = &candidate.product;
        format!(
            "{}  {}: {}",
            product.product_id,
            product.name,
            why(candidate)
        )
    };
    part(
        &format!("To test in round {}", plan.round),
        plan.chosen
            .iter()
            .map(|planned| of(&planned.candidate))
            .collect(),
    );
    part(
        "Next in line, beyond the budget",
        plan.later.iter().map(of).collect(),
    );
    part(
        "Write, do not test",
        plan.decided_by_label
            .iter()
            .map(|label| {
                let product = &label.product;
                let terms = listed(&label.terms);
                format!(
                    "{}  {}: the label names {terms}",
                    product.product_id, product.name
                )
            })
            .collect(),
    );
    part(
        "Not now",
        plan.left_out
            .iter()
            .map(|left| {
                let product = &left.product;
                format!(
                    "{}  {}: {}",
                    product.product_id,
                    product.name,
                    why_not(&left.why)
                )
            })
            .collect(),
    );
    lines
}
