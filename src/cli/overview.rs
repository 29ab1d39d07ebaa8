//! What `check` and `run` print for people: every product with its verdict, and the counts.

use crate::cli::print;
use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::package::PackageResult;
use crate::model::problem::Severity;
use crate::model::rule::Rule;
use crate::pipeline::states;
use std::fmt::Write;

/// Every product with its verdict, and the counts.
pub fn text(decided: &Decided, config: &Config) -> String {
    let mut text = format!(
        "{}: {}\n\n",
        config.programme.name,
        rule_words(&config.rule)
    );
    if decided.products.is_empty() {
        text.push_str("No product has a package that was sent or tested yet.\n");
        return text;
    }
    let width = decided
        .products
        .iter()
        .map(|judged| name(judged).chars().count())
        .max()
        .unwrap_or(0)
        .min(44);
    for judged in &decided.products {
        let [amount, label] = states::judgements(judged);
        let state = states::standing(judged);
        writeln!(
            text,
            "  {:<width$}  {amount:<18}  {label:<28}  {}\n      {state}",
            cut(&name(judged), width),
            states::found(judged).join(", "),
        )
        .expect("a string takes all");
    }
    text.push_str(&counts(decided));
    text
}

fn name(judged: &JudgedProduct) -> String {
    let verdict = &judged.verdict;
    let round = if verdict.round == "1" {
        String::new()
    } else {
        format!(" (round {})", verdict.round)
    };
    // A line break in a name would print a line of its own.
    let name: Vec<&str> = verdict.product.name.split_whitespace().collect();
    format!("{}  {}{round}", verdict.product.product_id, name.join(" "))
}

fn cut(text: &str, width: usize) -> String {
    if text.chars().count() <= width {
        return text.to_owned();
    }
    text.chars()
        .take(width.saturating_sub(1))
        .chain(['…'])
        .collect()
}

/// The rule for the claim gluten-free; other claims have their own, which their products' lines name.
fn rule_words(rule: &Rule) -> String {
    if rule.limit.detection {
        return format!(
            "rule {}, no detectable gluten (LOD {} ppm where the lab states none)",
            rule.regime.word(),
            rule.limit.ppm.0
        );
    }
    let at = if rule.limit.passes {
        "exactly the limit is within it"
    } else {
        "exactly the limit is over it"
    };
    format!(
        "rule {}, limit {} ppm ({at}), decision {}",
        rule.regime.word(),
        rule.limit.ppm.0,
        rule.decision.word()
    )
}

fn counts(decided: &Decided) -> String {
    let counts = &decided.statistics.counts;
    let products = counts.products;
    let packages: usize = decided
        .products
        .iter()
        .map(|judged| judged.verdict.packages.len())
        .sum();
    let extractions = decided
        .products
        .iter()
        .flat_map(|judged| &judged.verdict.packages);
    let extractions: usize = extractions
        .map(|package: &PackageResult| package.pair.extractions.len())
        .sum();
    let problems =
        |severity: Severity| print::counted(decided.problems.count(severity), severity.word());
    let with_lab = decided.products.iter();
    let with_lab = with_lab.filter(|judged| !judged.publication.is_reported());
    let with_lab = with_lab.count() as u64;
    let still = match with_lab {
        0 => String::new(),
        n => format!(", {n} with the lab"),
    };
    format!(
        "\n{}: {} within the limit, {} over it, {} without a verdict{still}. {}, {}.\n{}, {}, {}.\n",
        print::counted(decided.products.len(), "product"),
        products.within_limit,
        products.over_limit,
        products.no_verdict.saturating_sub(with_lab),
        print::counted(packages, "package"),
        print::counted(extractions, "extraction"),
        problems(Severity::Error),
        problems(Severity::Warning),
        problems(Severity::Note),
    )
}
