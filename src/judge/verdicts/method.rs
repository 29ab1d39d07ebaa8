//! Whether the assay can see the gluten of a food at all, and what to bear in mind where it can.

use crate::config::Config;
use crate::model::extraction::AssayKind;
use crate::model::package::PackageResult;
use crate::model::registers::{Oats, Processing, Product};
use crate::model::rule::Regime;
use crate::model::verdict::ProductVerdict;

/// Why no result below the limit could decide for this food, in words; none where one can.
///
/// Fermentation and hydrolysis cut gluten into pieces. A sandwich assay needs two binding sites on one molecule and reports
/// such pieces too low; a competitive one sees them (J AOAC 98:1346, 2015). The United States hold that no assay decides
/// for such a food (85 FR 49240, 2020). A result over the limit stands in either case: the food holds at least as much.
pub fn unfit(product: &Product, packages: &[PackageResult], config: &Config) -> Option<String> {
    let food = match product.processing {
        Processing::None | Processing::Unknown => return None,
        Processing::Fermented => "fermented",
        Processing::Hydrolysed => "hydrolysed",
    };
    if config.rule.regime == Regime::Us {
        return Some(format!(
            "This food is {food}: no test shows reliably how much gluten it holds. In the United States the maker’s records \
             of what went in decide."
        ));
    }
    sandwich_used(packages, config).then(|| {
        format!(
            "This food is {food}: a sandwich assay reports too little gluten in it, since proteins in pieces escape it. A \
             competitive assay is needed."
        )
    })
}

/// What to bear in mind about the assay and this food, in words; nothing of it decides.
///
/// Sources: barley J Agric Food Chem 65:2155 (2017) and 70:2366 (2022); oats Food Chem 216:170 (2017); polyphenols
/// J AOAC 95:1118 (2012); cocktail extraction Eur J Gastroenterol Hepatol 17:1053 (2005); competitive assays J AOAC 98:1346
/// (2015).
pub fn notes(verdict: &ProductVerdict) -> Vec<&'static str> {
    let product = &verdict.product;
    let names = |grain: &str| {
        let mut terms = verdict.label.terms.iter();
        terms.any(|term| term.grain.contains(grain))
    };
    let readings = || {
        verdict
            .packages
            .iter()
            .flat_map(|package| package.pair.usable())
    };
    let any = |kind| readings().any(|extraction| extraction.assay_kind == kind);
    let says = |word: &str| {
        readings().all(|extraction| {
            let remark = extraction.remark.as_deref().unwrap_or_default();
            let text = format!("{} {remark}", extraction.assay).to_lowercase();
            text.contains(word)
        })
    };
    let sandwich = any(AssayKind::Sandwich);
    let intact = product.processing == Processing::None;
    [
        (
            sandwich && names("barley"),
            "Such an assay reports barley gluten too high, about two to six times.",
        ),
        (
            product.oats != Oats::None || names("oats"),
            "In oats the test sees other grain, unevenly spread.",
        ),
        (
            rich_in_polyphenols(product) && !says("milk"),
            "Polyphenols of cocoa, chestnut, buckwheat and the like bind gluten and can lower a figure; the lab does not say \
             that it added skimmed milk powder against that.",
        ),
        (
            sandwich && !says("cocktail"),
            "The lab does not name the cocktail extraction, without which heated food can give figures that are too low.",
        ),
        (
            intact && any(AssayKind::Competitive),
            "A competitive assay is made for proteins in pieces, not for whole gluten.",
        ),
    ]
    .into_iter()
    .filter_map(|(holds, note)| holds.then_some(note))
    .collect()
}

/// Foods whose polyphenols bind gluten; coffee, tea, carob and spices are common practice.
fn rich_in_polyphenols(product: &Product) -> bool {
    const FOODS: &[&str] = &[
        "chocolate",
        "cocoa",
        "cacao",
        "chestnut",
        "buckwheat",
        "coffee",
        "tea",
        "carob",
        "spice",
        "tannin",
        "sorghum",
    ];
    let matrix = product.matrix.as_deref().unwrap_or_default().to_lowercase();
    let mut words = matrix.split(|c: char| !c.is_alphanumeric());
    words.any(|word| FOODS.contains(&word.trim_end_matches('s')))
}

/// Whether any reading is by a sandwich assay; without readings, whether the programme's assay is one.
fn sandwich_used(packages: &[PackageResult], config: &Config) -> bool {
    let mut kinds = packages
        .iter()
        .flat_map(|package| package.pair.usable())
        .map(|extraction| extraction.assay_kind)
        .peekable();
    if kinds.peek().is_none() {
        return config.lab.assay_kind == AssayKind::Sandwich;
    }
    kinds.any(|kind| kind == AssayKind::Sandwich)
}
