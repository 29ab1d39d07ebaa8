//! How the programme tests and decides, in words, as its settings have it.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::rule::{Decision, Regime};
use crate::model::statistics::ProgrammeStatistics;
use crate::render::numbers::{NBSP, percent, plain};
use crate::render::terms::Terms;
use crate::render::words::duplicates::false_alarm;
use crate::render::words::near_limit::WORTH_SAYING;
use crate::render::words::summary::number;
use crate::render::words::{once, sentence_case};
use serde::Serialize;
use std::collections::BTreeSet;

/// A head and what stands under it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Passage {
    /// The head.
    pub head: &'static str,
    /// The text.
    pub text: String,
}

/// The methods and the decision rule.
pub fn passages(decided: &Decided, config: &Config, terms: &Terms) -> Vec<Passage> {
    let products = &decided.products;
    let mut passages = vec![
        ("Buying", buying(config)),
        ("Testing", testing(products, config, terms)),
        ("Agreement", agreement(&decided.statistics, config)),
        ("One result a package", package_result(terms)),
        ("What the test can miss", limits_of_the_test()),
        ("The rule", rule(config.rule.regime, terms)),
        ("Deciding", deciding(config, terms)),
        ("Intervals", intervals()),
        ("Right of reply", reply(config, terms)),
    ];
    passages.extend(
        config
            .programme
            .statement
            .clone()
            .map(|statement| ("About the programme", statement)),
    );
    passages.push((
        "What would change a verdict",
        "A correction, a repeated test or new packages. The sheet then gets a new revision, which names the one it replaces and why.".to_owned(),
    ));
    passages
        .into_iter()
        .map(|(head, text)| Passage { head, text })
        .collect()
}

fn buying(config: &Config) -> String {
    let retained = config.programme.kept().map(|kept| format!(" {kept}"));
    format!(
        "{} packages of each product are bought as anyone would buy them, and sent to the lab unopened under a code that does not tell the brand.{}",
        sentence_case(&number(config.testing.packages_per_product as u64)),
        retained.unwrap_or_default()
    )
}

fn testing(products: &[JudgedProduct], config: &Config, terms: &Terms) -> String {
    let used = || {
        products
            .iter()
            .flat_map(|product| &product.verdict.packages)
            .flat_map(|package| package.pair.usable())
    };
    let labs: BTreeSet<&str> = used().map(|extraction| &*extraction.lab).collect();
    let assays: BTreeSet<&str> = used().map(|extraction| &*extraction.assay).collect();
    let or_own = |found: BTreeSet<&str>, own: &str| {
        if found.is_empty() {
            own.to_owned()
        } else {
            once(found).join("; ")
        }
    };
    let lloqs: Vec<String> = terms.lloqs.iter().map(|lloq| plain(*lloq)).collect();
    format!(
        "Each package is ground and extracted {}; each extraction is measured on its own. Lab: {}. Assay: {}. The smallest amount given as a number is {}{NBSP}{}.",
        match config.testing.extractions_per_package {
            2 => "twice".to_owned(),
            n => format!("{} times", number(n as u64)),
        },
        or_own(labs, &config.lab.name),
        or_own(assays, &config.lab.assay),
        lloqs.join(" or "),
        terms.unit
    )
}

fn agreement(statistics: &ProgrammeStatistics, config: &Config) -> String {
    format!(
        "Extractions of one package agree where the gap between them is no more than f(n) times s. Here f(2) is 2.8 (ISO 5725-6), s is the square root of (q/10)² + (r·m)², q the smallest amount given as a number, m the mean, and r the repeatability of one extraction, {}{NBSP}%. A package whose extractions disagree is never counted as within the limit. {}",
        percent(config.testing.relative_repeatability),
        false_alarm(statistics.false_alarm, config.testing.packages_per_product)
    )
}

fn package_result(terms: &Terms) -> String {
    format!(
        "The mean of its extractions. Where one of them is too small to measure, the mean is a range. Nothing is rounded before a decision, and no printed figure is rounded across {}.",
        terms.limit
    )
}

fn limits_of_the_test() -> String {
    "An assay for wheat, rye and barley gluten does not see oats. In fermented or hydrolysed food a sandwich assay reads too low, so that such a food gets no verdict from it. Gluten that lies in a few crumbs can be missed by any portion that leaves them out.".to_owned()
}

fn rule(regime: Regime, terms: &Terms) -> String {
    let source = match regime {
        Regime::Us => {
            "United States, 21 CFR 101.91: below 20 ppm. A food at 20 ppm does not keep it."
        }
        Regime::Codex => "Codex Alimentarius, CXS 118-1979: not above 20 mg/kg.",
        Regime::Eu => {
            "European Union, Implementing Regulation (EU) No 828/2014: no more than 20 mg/kg."
        }
        Regime::Uk => {
            "United Kingdom, retained Implementing Regulation (EU) No 828/2014: no more than 20 mg/kg."
        }
        Regime::Canada => {
            "Canada, Food and Drug Regulations B.24.018 and Health Canada’s position on it: not above 20 ppm from cross-contact."
        }
        Regime::Argentina => "Argentina, Código Alimentario Argentino: at most 10 mg/kg.",
        Regime::Chile => {
            "Chile, Reglamento Sanitario de los Alimentos, article 518: not above 5 mg/kg."
        }
        Regime::AuNz => {
            return format!(
                "Australia and New Zealand, Food Standards Code, Standard 1.2.7: no detectable gluten, which is no limit on an amount. Every figure that the lab gives is a detection; “<n” is none where n is not above the assay’s limit of detection (LOD), {} unless the lab states its own.",
                terms.limit
            );
        }
        Regime::Custom => {
            return format!(
                "The programme’s own limit: {}.",
                terms.within.to_lowercase()
            );
        }
    };
    source.to_owned()
}

fn deciding(config: &Config, terms: &Terms) -> String {
    let package = match config.rule.decision {
        _ if terms.rule.detection => "A package counts as positive for gluten where the lab gives a figure, and as negative where every one of its results lies below the limit of detection. How uncertain a figure is does not enter.".to_owned(),
        Decision::Simple => format!(
            "A package counts as {} where its result is. The figure is held against the limit as it stands; no uncertainty is added or taken off. A result at the limit itself is on the wrong side in up to half of all cases; where the chance of that is more than {}{NBSP}%, the sheet says it.",
            terms.over_the_limit,
            percent(WORTH_SAYING)
        ),
        Decision::Guarded {
            relative_expanded_uncertainty,
        } => format!(
            "A package counts as {} only where its result less {uncertainty}{NBSP}% is, and as {} only where its result plus {uncertainty}{NBSP}% is (the expanded uncertainty, k = 2). Between the two it is inconclusive.",
            terms.over_the_limit,
            terms.within_the_limit,
            uncertainty = percent(relative_expanded_uncertainty)
        ),
    };
    format!(
        "{package} One package {} decides the product. A product is {} only where every package is. Everything else is no verdict.",
        terms.over_the_limit, terms.within_the_limit
    )
}

fn intervals() -> String {
    format!(
        "Shares come with exact two-sided 95{NBSP}% intervals (Clopper-Pearson). They would hold if products were picked at random, and take each product once, by its latest round with a verdict. An undecided package may be on either side: the lower end takes it for within the limit, the upper end for over it. For 0 of n packages, if they were a random pick, the one-sided 95{NBSP}% upper bound is given: 1 less the n-th root of 0.05."
    )
}

fn reply(config: &Config, terms: &Terms) -> String {
    format!(
        "The maker of a product {} is told, gets the figures, and has {} days to answer. Nothing is published before {} days have passed. Replies are printed as they were written.",
        terms.over_the_limit, config.programme.reply_days, config.programme.publish_days
    )
}
