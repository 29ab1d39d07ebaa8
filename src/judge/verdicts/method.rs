//! Whether the assay can see the gluten of a food at all.

use crate::config::Config;
use crate::model::extraction::AssayKind;
use crate::model::package::PackageResult;
use crate::model::registers::{Processing, Product};
use crate::model::rule::Regime;

/// Why no result below the limit could decide for this food, in words; none where one can.
///
/// Fermentation and hydrolysis cut gluten into pieces. A sandwich assay needs two binding sites on one molecule and reports
/// such pieces too low; a competitive one sees them (J AOAC 98:1346, 2015). The United States hold that no assay decides
/// for such a food (85 FR 49240, 2020). A result over the limit stands in either case: the food holds at least as much.
pub fn unfit(product: &Product, packages: &[PackageResult], config: &Config) -> Option<String> {
    let food = match product.processing {
        Processing::None => return None,
        Processing::Fermented => "fermented",
        Processing::Hydrolysed => "hydrolysed",
    };
    if config.rule.regime == Regime::Us {
        return Some(format!(
            "This food is {food}: in the United States no test clears such a food; the maker's records of what went in, \
             before it was {food}, do."
        ));
    }
    sandwich_used(packages, config).then(|| {
        format!(
            "This food is {food}: a sandwich assay reports too little gluten in it, since proteins in pieces escape it. A \
             competitive assay is needed."
        )
    })
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
