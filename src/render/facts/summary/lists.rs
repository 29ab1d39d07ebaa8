//! The summary's lists: label findings, and the register of all results.

use crate::model::decided::JudgedProduct;
use crate::model::label::LabelFinding;
use crate::model::sheet::LabelJudged;
use crate::model::verdict::Verdict;
use crate::render::listing::{self, Cell, Line};
use crate::render::terms::Terms;
use crate::render::words::breakable;
use crate::render::words::summary::{self as texts, group_name};
use crate::words::{Catalogue, say};
use serde::Serialize;

/// Labels.
#[derive(Clone, Debug, Serialize)]
pub struct Labels {
    /// Findings and how many products have each.
    pub rows: Vec<LabelRow>,
    /// Products with something to ask about.
    pub lines: Vec<LabelLine>,
}

/// A product with what its label names.
#[derive(Clone, Debug, Serialize)]
pub struct LabelLine {
    /// The product.
    pub line: Line,
    /// What the label review comes to, in words.
    pub finding: String,
    /// The terms, as printed on the package.
    pub terms: Vec<String>,
}

/// One finding.
#[derive(Clone, Debug, Serialize)]
pub struct LabelRow {
    /// In words.
    pub finding: String,
    /// As printed on one package.
    pub example: Option<String>,
    /// Products.
    pub products: u64,
    /// Of these over the limit.
    pub over: u64,
}

/// A food group of the register.
#[derive(Clone, Debug, Serialize)]
pub struct RegisterGroup {
    /// Its name.
    pub name: String,
    /// Its products.
    pub rows: Vec<RegisterRow>,
}

/// A product in the register, its packages three to a line.
#[derive(Clone, Debug, Serialize)]
pub struct RegisterRow {
    /// Number.
    pub number: String,
    /// Brand.
    pub brand: Option<String>,
    /// Name.
    pub name: String,
    /// "over", "within" or "none".
    pub state: &'static str,
    /// The verdict's word.
    pub verdict: String,
    /// Whether a test was repeated.
    pub repeated: bool,
    /// What its label comes to.
    pub label: LabelJudged,
    /// Results, three to a line.
    pub results: Vec<Vec<Cell>>,
}

fn said(finding: &'static str, words: &Catalogue) -> String {
    words.say(&say::summary_finding(finding))
}

/// Findings with their counts, and the products with something to ask about.
pub fn labels(products: &[JudgedProduct], terms: &Terms) -> Labels {
    let asked = |product: &&JudgedProduct| {
        let finding = product.verdict.label.finding;
        !matches!(finding, LabelFinding::None | LabelFinding::NoIngredients)
    };
    let line = |product: &JudgedProduct| {
        let label = &product.verdict.label;
        LabelLine {
            line: listing::line(product, terms),
            finding: said(texts::finding(label), &terms.words),
            terms: label
                .terms
                .iter()
                .map(|term| breakable(&term.printed, 20))
                .collect(),
        }
    };
    Labels {
        rows: findings(products, &terms.words),
        lines: products.iter().filter(asked).map(line).collect(),
    }
}

fn findings(products: &[JudgedProduct], words: &Catalogue) -> Vec<LabelRow> {
    let row = |name: String, found: &[&JudgedProduct], example: Option<&String>| LabelRow {
        finding: name,
        example: example.map(|text| breakable(text, 20)),
        products: found.len() as u64,
        over: found
            .iter()
            .filter(|product| product.verdict.verdict == Verdict::OverLimit)
            .count() as u64,
    };
    let by_finding = |finding: &'static str| {
        let with = products
            .iter()
            .filter(|product| texts::finding(&product.verdict.label) == finding);
        let found: Vec<&JudgedProduct> = with.collect();
        let terms = found
            .iter()
            .filter_map(|product| product.verdict.label.terms.first());
        let mut examples = terms
            .filter(|_| finding != "nothing")
            .map(|term| &term.printed);
        row(said(finding, words), &found, examples.next())
    };
    // What has two names of one kind is listed only where it occurs.
    let listed = |finding: &&str| {
        let occurs = |product: &JudgedProduct| texts::finding(&product.verdict.label) == *finding;
        !matches!(*finding, "allowed" | "unread") || products.iter().any(occurs)
    };
    let findings = texts::FINDINGS.into_iter().filter(listed);
    let mut rows: Vec<LabelRow> = findings.map(by_finding).collect();
    let warns = |product: &&JudgedProduct| !product.verdict.label.precautionary.is_empty();
    let warned: Vec<&JudgedProduct> = products.iter().filter(warns).collect();
    let example = warned
        .first()
        .and_then(|product| product.verdict.label.precautionary.first());
    rows.push(row(said("precaution", words), &warned, example));
    rows
}

/// All results, by food group.
pub fn register(products: &[JudgedProduct], terms: &Terms) -> Vec<RegisterGroup> {
    let row = |product: &&JudgedProduct| {
        let line = listing::line(product, terms);
        RegisterRow {
            number: line.number,
            brand: line.brand,
            name: line.name,
            state: line.state,
            verdict: line.verdict,
            repeated: line.repeated,
            label: line.label,
            results: line.results.chunks(3).map(<[Cell]>::to_vec).collect(),
        }
    };
    listing::by_category(products)
        .into_iter()
        .map(|(name, members)| RegisterGroup {
            name: breakable(&group_name(&name, &terms.words), 60),
            rows: members.iter().map(row).collect(),
        })
        .collect()
}
