//! The summary's lists: label findings, and the register of all results.

use crate::model::decided::JudgedProduct;
use crate::model::label::LabelFinding;
use crate::model::verdict::Verdict;
use crate::render::facts::listing::{self, Cell, LabelLine};
use crate::render::facts::terms::Terms;
use serde::Serialize;

/// Labels.
#[derive(Clone, Debug, Serialize)]
pub struct Labels {
    /// Findings and how many products have each.
    pub rows: Vec<LabelRow>,
    /// Products with something to ask about.
    pub lines: Vec<LabelLine>,
}

/// One finding.
#[derive(Clone, Debug, Serialize)]
pub struct LabelRow {
    /// In words.
    pub finding: &'static str,
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
    /// Results, three to a line.
    pub results: Vec<Vec<Cell>>,
}

/// Findings with their counts, and the products with something to ask about.
pub fn labels(products: &[JudgedProduct], terms: &Terms) -> Labels {
    const ORDER: [LabelFinding; 5] = [
        LabelFinding::GlutenSource,
        LabelFinding::UnverifiedOats,
        LabelFinding::NeedsReview,
        LabelFinding::None,
        LabelFinding::NoIngredients,
    ];
    let over = |found: &[&JudgedProduct]| {
        found
            .iter()
            .filter(|product| product.verdict.verdict == Verdict::OverLimit)
            .count() as u64
    };
    let mut rows: Vec<LabelRow> = ORDER
        .iter()
        .map(|finding| {
            let found: Vec<&JudgedProduct> = products
                .iter()
                .filter(|product| product.verdict.label.finding == *finding)
                .collect();
            let example = found
                .iter()
                .find_map(|product| product.verdict.label.terms.first());
            LabelRow {
                finding: listing::finding(*finding),
                example: example
                    .filter(|_| *finding != LabelFinding::None)
                    .map(|term| term.printed.clone()),
                products: found.len() as u64,
                over: over(&found),
            }
        })
        .collect();
    let warned: Vec<&JudgedProduct> = products
        .iter()
        .filter(|product| !product.verdict.label.precautionary.is_empty())
        .collect();
    rows.push(LabelRow {
        finding: "Beside any of these: a precautionary statement",
        example: warned
            .first()
            .and_then(|product| product.verdict.label.precautionary.first().cloned()),
        products: warned.len() as u64,
        over: over(&warned),
    });
    let asked = |product: &&JudgedProduct| {
        !matches!(
            product.verdict.label.finding,
            LabelFinding::None | LabelFinding::NoIngredients
        )
    };
    let lines = products.iter().filter(asked).map(|product| LabelLine {
        line: listing::line(product, terms),
        finding: listing::finding(product.verdict.label.finding),
        terms: product
            .verdict
            .label
            .terms
            .iter()
            .map(|term| term.printed.clone())
            .collect(),
    });
    Labels {
        rows,
        lines: lines.collect(),
    }
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
            results: line.results.chunks(3).map(<[Cell]>::to_vec).collect(),
        }
    };
    listing::by_category(products)
        .into_iter()
        .map(|(name, members)| RegisterGroup {
            name,
            rows: members.iter().map(row).collect(),
        })
        .collect()
}
