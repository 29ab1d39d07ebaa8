//! The whole reasoning behind one verdict, step by step, as a person would check it by hand.

mod label;
mod packages;
mod shares;
mod words;

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::reason::Reason;
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
    line(
        out,
        0,
        &format!(
            "Claim: “{}” ({})",
            verdict.claim.text,
            verdict.claim.class.word()
        ),
    );
    rule(out, &verdict.rule, config);
    for package in &verdict.packages {
        packages::explain_package(out, package, &verdict.rule, config);
        if let Some(other) = &package.other_series {
            let kind = other.pair.assay_kind.word();
            line(
                out,
                0,
                &format!("The same package by the {kind} assay, printed beside"),
            );
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
    line(out, 0, "The rule");
    let sign = if limit.passes { ">" } else { ">=" };
    let over = if limit.detection {
        "over is every figure that the lab gives, and what reaches its limit of detection"
            .to_owned()
    } else {
        format!("over the limit is x {sign} {} ppm", figure(limit.ppm))
    };
    line(out, 1, &format!("Regime {}: {over}.", rule.regime.word()));
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
    let words = &config.words;
    for reason in crate::words::plain_reasons(&verdict.reasons, &verdict.rule, words) {
        line(out, 2, &reason);
    }
    let unfit = verdict.method_unfit.iter();
    let unsaid: Vec<Reason> = unfit
        .filter(|unfit| !verdict.reasons.contains(unfit))
        .cloned()
        .collect();
    for reason in crate::words::plain_reasons(&unsaid, &verdict.rule, words) {
        line(out, 2, &reason);
    }
    for caution in &judged.cautions {
        line(out, 2, &format!("To bear in mind: {}", caution.word()));
    }
    let notify = if verdict.notify_maker { "yes" } else { "no" };
    line(out, 1, &format!("To be told to the maker: {notify}"));
    line(out, 0, "");
}
