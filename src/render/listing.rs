//! Products as lists show them: with their packages' results, their standing and their follow-up.

use crate::model::decided::JudgedProduct;
use crate::model::package::{PackageResult, Standing};
use crate::model::pair::PairState;
use crate::model::rule::{Limit, Rule};
use crate::model::sheet::LabelJudged;
use crate::model::verdict::Verdict;
use crate::render::numbers;
use crate::render::terms::Terms;
use crate::render::words::correspondence::{self, Standing as FollowUp};
use crate::render::words::{breakable, label};
use crate::words::{Catalogue, reasons, say, side};
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};

/// What stands where the register names no food group.
pub const NO_CATEGORY: &str = "No category";

/// What the smallest food groups are called together, where a chart has no room for each.
pub const OTHERS: &str = "Other food groups";

/// Food groups that a chart shows apart: four pages of them.
const CHARTED_AT_MOST: usize = 36;

/// One product and round, as a list shows it.
#[derive(Clone, Debug, Serialize)]
pub struct Line {
    /// The product's number.
    pub number: String,
    /// As on the package.
    pub brand: Option<String>,
    /// As on the package, with the round where it is not the first.
    pub name: String,
    /// "over", "within" or "none".
    pub state: &'static str,
    /// "At or above 20 ppm", "Below 20 ppm", "No verdict", of its claim's own limit.
    pub verdict: String,
    /// Its packages' results, by package code.
    pub results: Vec<Cell>,
    /// Whether a test of one of its packages was repeated.
    pub repeated: bool,
    /// What its label comes to: it stands beside the verdict.
    pub label: LabelJudged,
    /// Why, in words.
    pub reasons: Vec<String>,
    /// Where it stands with the maker.
    pub follow_up: FollowUp,
}

/// One package's result.
#[derive(Clone, Debug, Serialize)]
pub struct Cell {
    /// "over", "within" or "none".
    pub state: &'static str,
    /// As printed.
    pub text: String,
}

/// A product as a list shows it.
pub fn line(product: &JudgedProduct, terms: &Terms) -> Line {
    let verdict = &product.verdict;
    let words = &terms.words;
    let label = label::judged(verdict, words);
    Line {
        number: breakable(&verdict.product.product_id, 11),
        brand: verdict
            .product
            .brand
            .as_deref()
            .map(|brand| breakable(brand, 18)),
        name: breakable(&name(product, words), 18),
        state: state(verdict.verdict),
        verdict: of_its_limit(verdict.verdict, &verdict.rule, words),
        results: verdict
            .packages
            .iter()
            .map(|package| cell(package, verdict.rule.limit, words))
            .collect(),
        repeated: verdict
            .packages
            .iter()
            .any(|package| package.pair.extractions.len() > 2),
        label: LabelJudged {
            words: breakable(&label.words, 20),
            ..label
        },
        reasons: reasons(&verdict.reasons, &verdict.rule, words)
            .iter()
            .map(|reason| breakable(reason, 22))
            .collect(),
        follow_up: correspondence::standing(&product.follow_up, &verdict.followups, words),
    }
}

/// A verdict with the limit that it is held against: "At or above 20 ppm".
pub fn of_its_limit(verdict: Verdict, rule: &Rule, words: &Catalogue) -> String {
    words.say(&say::list_verdict_of(
        state(verdict),
        side(rule.limit),
        words.limit(rule),
    ))
}

/// The ink of a verdict.
fn state(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::OverLimit => "over",
        Verdict::WithinLimit(_) => "within",
        Verdict::NoVerdict => "none",
    }
}

/// A product's name with the round of testing where it is not the first.
pub fn name(product: &JudgedProduct, words: &Catalogue) -> String {
    let verdict = &product.verdict;
    let name = verdict.product.name.as_str();
    match verdict.round.as_str() {
        "1" => name.to_owned(),
        round => words.say(&say::list_round(name, round)),
    }
}

fn cell(package: &PackageResult, limit: Limit, words: &Catalogue) -> Cell {
    let disagree = package.pair.state == PairState::Disagree;
    let state = match package.standing {
        Standing::Over => "over",
        Standing::BelowQuantification | Standing::Within => "within",
        Standing::Inconclusive | Standing::Unresolved => "none",
    };
    let text = match package.standing {
        Standing::Unresolved if disagree => words.say(&say::list_disagree()),
        _ => numbers::result_said(&package.result, limit, words),
    };
    Cell { state, text }
}

/// The food group of a product, as it is printed.
pub fn category(product: &JudgedProduct) -> String {
    let given = product.verdict.product.category.as_deref().map(str::trim);
    let named = given.filter(|name| !name.is_empty());
    named.unwrap_or(NO_CATEGORY).to_owned()
}

/// All food groups in the order of every chart and list: by name, those without one last.
pub fn categories(products: &[JudgedProduct]) -> Vec<String> {
    let mut names: Vec<String> = products.iter().map(category).collect();
    names.sort_by(|a, b| (a == NO_CATEGORY, a).cmp(&(b == NO_CATEGORY, b)));
    names.dedup();
    names
}

/// The food groups of a chart: all of them, or the largest and the others together.
pub struct ChartedGroups {
    names: Vec<String>,
}

impl ChartedGroups {
    /// Of these products.
    pub fn of(products: &[JudgedProduct]) -> ChartedGroups {
        let mut names = categories(products);
        if names.len() > CHARTED_AT_MOST {
            let mut sizes: BTreeMap<String, usize> = BTreeMap::new();
            for product in products {
                *sizes.entry(category(product)).or_default() += 1;
            }
            let mut largest = names.clone();
            // Stable: of groups of one size, the first by name are kept.
            largest.sort_by_key(|name| std::cmp::Reverse(sizes[name]));
            let kept: BTreeSet<&String> = largest.iter().take(CHARTED_AT_MOST - 1).collect();
            names.retain(|name| kept.contains(name));
            names.push(OTHERS.to_owned());
        }
        ChartedGroups { names }
    }

    /// Their names, in the order of the chart.
    pub fn names(&self) -> &[String] {
        &self.names
    }

    /// The group in which a product is charted.
    pub fn name_of(&self, product: &JudgedProduct) -> String {
        let name = category(product);
        if self.names.contains(&name) {
            name
        } else {
            OTHERS.to_owned()
        }
    }
}

/// By brand and name; what has the same of both, by number and round.
pub fn by_brand(product: &JudgedProduct) -> (Option<&str>, [&str; 3]) {
    let of = &product.verdict.product;
    let name = [&of.name, &of.product_id, &product.verdict.round];
    (of.brand.as_deref(), name.map(String::as_str))
}

/// Products by food group, in the order of [`categories`], and in a group by brand and name.
pub fn by_category(products: &[JudgedProduct]) -> Vec<(String, Vec<&JudgedProduct>)> {
    let mut groups: BTreeMap<String, Vec<&JudgedProduct>> = BTreeMap::new();
    for product in products {
        groups.entry(category(product)).or_default().push(product);
    }
    categories(products)
        .into_iter()
        .map(|name| {
            let mut members = groups.remove(&name).unwrap_or_default();
            members.sort_by_key(|product| by_brand(product));
            (name, members)
        })
        .collect()
}
