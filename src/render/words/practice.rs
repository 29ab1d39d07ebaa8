//! How the programme tests and decides, in words, as its settings have it.

use crate::config::{Config, Retained};
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::rule::Decision;
use crate::render::numbers::plain;
use crate::render::terms::Terms;
use crate::render::words::method::{false_alarm, law, percent};
use crate::render::words::near_limit::WORTH_SAYING;
use crate::render::words::once;
use crate::words::{say, side};
use serde::Serialize;
use std::collections::BTreeSet;

/// A head and what stands under it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Passage {
    /// The head.
    pub head: String,
    /// The text.
    pub text: String,
}

/// The methods and the decision rule.
pub fn passages(decided: &Decided, config: &Config, terms: &Terms) -> Vec<Passage> {
    let words = &config.words;
    let rule = config.rule;
    let (of, limit) = (side(rule.limit), words.limit(&rule));
    let statement = config.programme.statement.clone();
    let rule_of = say::practice_rule(law(rule.regime), of, limit.as_str());
    let passages = [
        ("buying", buying(config)),
        ("testing", testing(&decided.products, config, terms)),
        ("agreement", agreement(decided, config)),
        ("result", words.say(&say::practice_result(of, limit))),
        ("misses", words.say(&say::practice_misses())),
        ("rule", words.say(&rule_of)),
        ("deciding", deciding(config)),
        ("intervals", words.say(&say::practice_intervals())),
        ("reply", reply(config)),
        ("about", statement.unwrap_or_default()),
        ("change", words.say(&say::practice_change())),
    ];
    let said = passages.into_iter().filter(|(_, text)| !text.is_empty());
    let passage = |(passage, text)| Passage {
        head: words.say(&say::practice_head(passage)),
        text,
    };
    said.map(passage).collect()
}

/// How packages are bought: no more than the settings say.
fn buying(config: &Config) -> String {
    let words = &config.words;
    let n = config.testing.packages_per_product;
    let bought = words.say(&say::practice_buying(n as u64, words.spelt_first(n)));
    match config.programme.retains() {
        None | Some(Retained::Thing("")) => bought,
        Some(Retained::Sentence(sentence)) => format!("{bought} {sentence}"),
        Some(Retained::Thing(kept)) => format!("{bought} {}", words.say(&say::practice_kept(kept))),
    }
}

fn testing(products: &[JudgedProduct], config: &Config, terms: &Terms) -> String {
    let words = &config.words;
    let packages = || products.iter().flat_map(|one| &one.verdict.packages);
    let used = || packages().flat_map(|package| package.pair.usable());
    let or_own = |found: BTreeSet<&str>, own: &str| -> (u64, String) {
        let found = once(found);
        match found.len() {
            0 => (1, own.to_owned()),
            n => (n as u64, found.join("; ")),
        }
    };
    let labs = used().map(|extraction| &*extraction.lab).collect();
    let (n, labs) = or_own(labs, &config.lab.name);
    let labs = say::practice_labs(n, labs.trim_end_matches('.'));
    let assays = used().map(|extraction| &*extraction.assay).collect();
    let (n, assays) = or_own(assays, &config.lab.assay);
    let assays = say::practice_assays(n, assays.trim_end_matches('.'));
    let amount = |lloq: &_| words.quantity(&plain(*lloq), terms.unit);
    let amounts: Vec<String> = terms.lloqs.iter().map(amount).collect();
    let lowest = say::practice_lowest(amounts.len() as u64, words.list(&amounts));
    let times = config.testing.extractions_per_package;
    let extractions = say::practice_extractions(times as u64, words.spelt(times));
    words.text([extractions, labs, assays, lowest])
}

fn agreement(decided: &Decided, config: &Config) -> String {
    let words = &config.words;
    let share = percent(config.testing.relative_repeatability, words);
    let chance = decided.statistics.false_alarm;
    let said = words.say(&say::practice_agreement(share));
    let by_chance = false_alarm(chance, config.testing.packages_per_product, words);
    format!("{said} {by_chance}")
}

fn deciding(config: &Config) -> String {
    let words = &config.words;
    let of = side(config.rule.limit);
    let (decision, share) = match config.rule.decision {
        Decision::Simple => ("simple", WORTH_SAYING),
        Decision::Guarded {
            relative_expanded_uncertainty,
        } => ("guarded", relative_expanded_uncertainty),
    };
    let package = say::practice_package(of, decision, percent(share, words));
    words.text([package, say::practice_product(of)])
}

fn reply(config: &Config) -> String {
    let programme = &config.programme;
    config.words.say(&say::practice_reply(
        side(config.rule.limit),
        programme.reply_days,
        programme.publish_days,
    ))
}
