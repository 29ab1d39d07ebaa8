//! The whole reasoning behind one verdict, step by step, as a person would check it by hand.

mod label;
mod packages;
mod shares;
mod words;

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::reason::Reason;
use crate::model::rule::{Decision, Rule};
use crate::words::{english, plain_reasons, say, side, yes_or_no};
use words::{figure, line, plain, say};

/// The reasoning in plain text: the rule, each package with its readings, cells, comparison and standing, the verdict with
/// its reasons, the label, and what so few packages can say. A command's words are English, whatever the documents are.
pub fn explain(judged: &JudgedProduct, config: &Config) -> String {
    let verdict = &judged.verdict;
    let mut text = String::new();
    let out = &mut text;
    let product = &verdict.product;
    let head = say::explain_product(&product.name, &product.product_id, &verdict.round);
    say(out, 0, &head);
    line(out, 0, "");
    let class = verdict.claim.class.word();
    say(out, 0, &say::explain_claim(&verdict.claim.text, class));
    rule(out, &verdict.rule, config);
    for package in &verdict.packages {
        packages::explain_package(out, package, &verdict.rule, config);
        if let Some(other) = &package.other_series {
            let assay = other.pair.assay_kind.word();
            say(out, 0, &say::explain_beside(assay));
            packages::explain_package(out, other, &verdict.rule, config);
        }
    }
    explain_verdict(out, judged, config);
    label::explain_label(out, judged);
    shares::explain_statistics(out, judged);
    text
}

fn rule(out: &mut String, rule: &Rule, config: &Config) {
    let limit = rule.limit;
    say(out, 0, &say::explain_rule());
    let over = say::explain_over(rule.regime.word(), side(limit), figure(limit.ppm));
    say(out, 1, &over);
    let decision = match rule.decision {
        Decision::Simple => say::explain_simple(),
        Decision::Guarded {
            relative_expanded_uncertainty: u,
        } => say::explain_guarded(u.to_string()),
    };
    say(out, 1, &decision);
    let testing = &config.testing;
    let asked = say::explain_asked(
        testing.packages_per_product as u64,
        testing.extractions_per_package as u64,
        testing.relative_repeatability.to_string(),
    );
    say(out, 1, &asked);
    line(out, 0, "");
}

fn explain_verdict(out: &mut String, judged: &JudgedProduct, config: &Config) {
    let verdict = &judged.verdict;
    say(out, 0, &say::explain_verdict());
    let asked = config.testing.packages_per_product as u64;
    let count = say::explain_count(verdict.packages.len() as u64, asked);
    say(out, 1, &count);
    let grade = verdict.verdict.grade();
    let words = [Some(verdict.verdict.word()), grade].into_iter().flatten();
    let words: Vec<String> = words.map(plain).collect();
    line(out, 1, &words.join(", "));
    let unfit = verdict.method_unfit.iter();
    let unsaid = unfit.filter(|unfit| !verdict.reasons.contains(unfit));
    let reasons: Vec<Reason> = verdict.reasons.iter().chain(unsaid).cloned().collect();
    for reason in plain_reasons(&reasons, &verdict.rule, english()) {
        line(out, 2, &reason);
    }
    for caution in &judged.cautions {
        say(out, 2, &say::explain_bear(caution.word()));
    }
    say(out, 1, &say::explain_told(yes_or_no(verdict.notify_maker)));
    line(out, 0, "");
}
