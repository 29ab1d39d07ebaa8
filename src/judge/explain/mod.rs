//! The whole reasoning behind one verdict, step by step, as a person would check it by hand.

mod label;
mod packages;
mod shares;
mod words;

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::rule::{Decision, Rule};
use words::{figure, line};

/// The reasoning in plain text: the rule, each package with its readings, cells, comparison and standing, the verdict with
/// its reasons, the label, and what so few packages can say.
pub fn explain(judged: &JudgedProduct, config: &Config) -> String {
    let verdict = &judged.verdict;
    let mut text = String::new();
    let out = &mut text;
    line(
        out,
        0,
        &format!(
            "{} ({}), round {}",
            verdict.product.name, verdict.product.product_id, verdict.round
        ),
    );
    line(out, 0, "");
    rule(out, &config.rule, config);
    for package in &verdict.packages {
        packages::explain_package(out, package, config);
    }
    explain_verdict(out, judged, config);
    label::explain_label(out, judged);
    shares::explain_statistics(out, judged);
    text
}

fn rule(out: &mut String, rule: &Rule, config: &Config) {
    let limit = rule.limit;
    line(out, 0, "The rule");
    let sign = if limit.passes { ">" } else { ">=" };
    line(
        out,
        1,
        &format!(
            "Regime {}: over the limit is x {sign} {} ppm.",
            rule.regime.word(),
            figure(limit.ppm)
        ),
    );
    match rule.decision {
        Decision::Simple => line(out, 1, "Simple decision: the figure as it stands."),
        Decision::Guarded {
            relative_expanded_uncertainty: u,
        } => line(
            out,
            1,
            &format!(
                "Guarded decision: over where x (1 - {u}) is over, within where x (1 + {u}) is not; between them inconclusive."
            ),
        ),
    }
    line(
        out,
        1,
        &format!(
            "Asked for: {} packages with {} extractions each; relative repeatability {}.",
            config.testing.packages_per_product,
            config.testing.extractions_per_package,
            config.testing.relative_repeatability
        ),
    );
    line(out, 0, "");
}

fn explain_verdict(out: &mut String, judged: &JudgedProduct, config: &Config) {
    let verdict = &judged.verdict;
    line(out, 0, "The verdict");
    line(
        out,
        1,
        &format!(
            "{} of {} packages count; the worst one decides.",
            verdict.packages.len(),
            config.testing.packages_per_product
        ),
    );
    let grade = verdict.verdict.grade().map_or_else(String::new, |grade| {
        format!(", {}", grade.replace('_', " "))
    });
    line(
        out,
        1,
        &format!("{}{grade}", verdict.verdict.word().replace('_', " ")),
    );
    for reason in &verdict.reasons {
        line(out, 2, reason);
    }
    if let Some(unfit) = verdict
        .method_unfit
        .as_ref()
        .filter(|unfit| !verdict.reasons.contains(unfit))
    {
        line(out, 2, unfit);
    }
    for caution in &judged.cautions {
        line(out, 2, &format!("To bear in mind: {}", caution.word()));
    }
    let notify = if verdict.notify_maker { "yes" } else { "no" };
    line(out, 1, &format!("To be told to the maker: {notify}"));
    line(out, 0, "");
}
