//! The letter to a maker: which of its messages are said. Facts, a rule quoted, a question, a day; it accuses nobody.

use crate::config::{Attach, Config};
use crate::model::decided::JudgedProduct;
use crate::model::followup::NoticeDays;
use crate::model::label::LabelFinding;
use crate::model::package::PackageResult;
use crate::model::pair::PairState;
use crate::model::rule::{Regime, Rule};
use crate::model::verdict::ProductVerdict;
use crate::render::{numbers, words};
use crate::words::letters::{self, is_over, names_source};
use crate::words::{Said, say, side, yes_or_no};

/// Why we write.
pub fn opening(verdict: &ProductVerdict, config: &Config) -> String {
    config.words.text(letters::opening(verdict, &config.words))
}

/// What the results come to, in a sentence: the description of the letter as well.
pub fn found_in_short(verdict: &ProductVerdict, config: &Config) -> String {
    config.words.say(&letters::found(verdict, &config.words))
}

/// Each package over the limit with its lot and its result, a line each, as the mail lists them.
pub fn over_packages(verdict: &ProductVerdict, config: &Config) -> Vec<String> {
    let (words, rule) = (&config.words, verdict.rule);
    letters::over(verdict)
        .map(|package| {
            let bought = &package.pair.package;
            let result = numbers::result_said(&package.result, rule.limit, words);
            words.say(&say::mail_package(
                &bought.package_code,
                bought.lot.clone().unwrap_or_default(),
                yes_or_no(bought.lot.is_some()),
                words.quantity(&result, rule.regime.unit()),
            ))
        })
        .collect()
}

/// What the results and the label come to.
pub fn findings(product: &JudgedProduct, config: &Config) -> Vec<String> {
    let (verdict, words) = (&product.verdict, &config.words);
    let sentence = words::verdict::sentence(verdict, config);
    let on_the_sheet = words::verdict::headline(verdict.verdict, verdict.rule, words);
    let shown = say::letter_verdict(on_the_sheet);
    let said = agreement(verdict).into_iter().chain([shown]);
    let mut findings = vec![format!("{sentence} {}", words.text(said))];
    if names_source(verdict) {
        let terms = words.list(&letters::terms(verdict, words));
        let named = say::letter_label_names(terms, &verdict.product.claim);
        let rule = say::letter_label_rule(ingredient_rule(config.rule.regime));
        findings.push(words.text([named, rule]));
    }
    findings
}

/// The law that is quoted on ingredients; those of the others ask for the amount of gluten alone.
fn ingredient_rule(regime: Regime) -> &'static str {
    match regime {
        Regime::Eu | Regime::Uk | Regime::Custom => "other",
        quoted => quoted.word(),
    }
}

/// That the extractions agree, where a package is over the limit and those of every package do.
fn agreement(verdict: &ProductVerdict) -> Option<Said> {
    let mut packages = verdict.packages.iter();
    let agree = packages.all(|package| package.pair.state == PairState::Agree);
    // What is beyond the assay's range may be equal and may be far apart.
    let is_beyond = |package: &PackageResult| {
        words::packages::is_beyond(&package.pair.usable().collect::<Vec<_>>())
    };
    let sure = !verdict.packages.iter().any(is_beyond);
    (is_over(verdict) && agree).then(|| say::letter_agree(yes_or_no(sure)))
}

/// What we ask.
pub fn ask(verdict: &ProductVerdict, config: &Config) -> Vec<String> {
    let further = match verdict.label.finding {
        LabelFinding::GlutenSource => Some(say::letter_ask_ingredient()),
        LabelFinding::UnverifiedOats => Some(say::letter_ask_oats()),
        _ => None,
    };
    let all = std::iter::once(say::letter_ask()).chain(further);
    config.words.each(all)
}

/// What the maker can have.
pub fn offer(verdict: &ProductVerdict, config: &Config) -> String {
    let (state, attach) = (
        letters::reported(verdict).1,
        attached(config.publishing.attach),
    );
    let files = (state != "none").then(|| say::letter_offer_files(attach, state));
    let mut offered = config.words.each(files);
    if let Some(kept) = config.kept() {
        offered.push(kept);
        offered.push(config.words.say(&say::letter_offer_kept()));
    }
    if offered.is_empty() {
        offered.push(config.words.say(&say::letter_offer_nothing()));
    }
    offered.join(" ")
}

/// The word by which a message chooses what goes along.
pub fn attached(attach: Attach) -> &'static str {
    match attach {
        Attach::Whole => "whole",
        Attach::Excerpt => "excerpt",
        Attach::None => "none",
    }
}

/// What happens without an answer.
pub fn without_reply(days: Option<NoticeDays>, config: &Config) -> String {
    let words = &config.words;
    let day = days.map(|days| words.day(days.reply_by));
    words.say(&say::letter_without_reply(
        yes_or_no(day.is_some()),
        day.unwrap_or_default(),
        u64::from(config.programme.reply_days),
    ))
}

/// What the letter does not say: `over`, `label` are what it says against the product.
pub fn says_not(over: bool, label: bool, rule: Rule, config: &Config) -> String {
    config.words.say(&say::letter_says_not(
        yes_or_no(over),
        yes_or_no(label),
        side(rule.limit),
    ))
}

/// The same of a notice.
pub fn notice_says_not(verdict: &ProductVerdict, config: &Config) -> String {
    says_not(
        is_over(verdict),
        names_source(verdict),
        verdict.rule,
        config,
    )
}
