//! How the programme tests and decides, in words, as its settings have it.

use crate::config::Config;
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
    let passages = [
        ("buying", Some(buying(config))),
        ("testing", Some(testing(&decided.products, config, terms))),
        ("agreement", Some(agreement(decided, config))),
        (
            "result",
            Some(words.say(&say::practice_result(of, limit.as_str()))),
        ),
        ("misses", Some(words.say(&say::practice_misses()))),
        (
            "rule",
            Some(words.say(&say::practice_rule(law(rule.regime), of, limit))),
        ),
        ("deciding", Some(deciding(config))),
        ("intervals", Some(words.say(&say::practice_intervals()))),
        ("reply", Some(reply(config))),
        ("about", statement),
        ("change", Some(words.say(&say::practice_change()))),
    ];
    passages
        .into_iter()
        .filter_map(|(passage, text)| {
            Some(Passage {
                head: words.say(&say::practice_head(passage)),
                text: text?,
            })
        })
        .collect()
}

/// How packages are bought: no more than the settings say.
fn buying(config: &Config) -> String {
    let words = &config.words;
    let n = config.testing.packages_per_product;
    let bought = words.say(&say::practice_buying(n as u64, words.spelt_first(n)));
    let retained = config.programme.retained.as_deref().unwrap_or_default();
    match retained.trim().trim_end_matches('.') {
        "" => bought,
        sentence if sentence.starts_with(char::is_uppercase) => format!("{bought} {sentence}."),
        kept => format!("{bought} {}", words.say(&say::practice_kept(kept))),
    }
}

fn testing(products: &[JudgedProduct], config: &Config, terms: &Terms) -> String {
    let words = &config.words;
    let used = || {
        products
            .iter()
            .flat_map(|product| &product.verdict.packages)
            .flat_map(|package| package.pair.usable())
    };
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
    let said = [extractions, labs, assays, lowest];
    said.map(|said| words.say(&said)).join(" ")
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
    let package = words.say(&say::practice_package(of, decision, percent(share, words)));
    let product = words.say(&say::practice_product(of));
    format!("{package} {product}")
}

fn reply(config: &Config) -> String {
    let programme = &config.programme;
    config.words.say(&say::practice_reply(
        side(config.rule.limit),
        programme.reply_days,
        programme.publish_days,
    ))
}
