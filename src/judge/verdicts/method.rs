//! Whether the assay can see the gluten of a food at all, and what to bear in mind where it can.

use crate::model::caution::Caution;
use crate::model::extraction::AssayKind;
use crate::model::label::TermClass;
use crate::model::matrix::Matrix;
use crate::model::package::PackageResult;
use crate::model::problem::{Code, Problems};
use crate::model::reason::Reason;
use crate::model::registers::{Oats, Processing, Product, Registers};
use crate::model::rule::Regime;
use crate::model::said::Item;
use crate::model::verdict::ProductVerdict;
use crate::words::say;

/// Why no result below the limit could decide for this food; none where one can.
///
/// Fermentation and hydrolysis cut gluten into pieces. A sandwich assay needs two binding sites on one molecule and reports
/// such pieces too low; a competitive one sees them (J AOAC 98:1346, 2015). The United States hold that no assay decides
/// for such a food (85 FR 49240, 2020). A result over the limit stands in either case: the food holds at least as much.
pub fn unfit(product: &Product, packages: &[PackageResult], regime: Regime) -> Option<Reason> {
    if !product.processing.may_be_in_pieces() {
        return None;
    }
    if regime == Regime::Us {
        return Some(Reason::RecordsDecide(product.processing));
    }
    let sandwich = |package: &PackageResult| package.pair.assay_kind == AssayKind::Sandwich;
    let reported = |package: &&PackageResult| !package.pair.extractions.is_empty();
    // A package that no file has a row for says nothing of the assay, as long as another one does.
    let by_sandwich = match packages.iter().any(|package| reported(&package)) {
        true => packages.iter().filter(reported).any(sandwich),
        false => packages.iter().any(sandwich),
    };
    by_sandwich.then_some(Reason::SandwichUnfit(product.processing))
}

/// What to bear in mind about the assay and this food; nothing of it decides.
///
/// Sources: barley J Agric Food Chem 65:2155 (2017) and 70:2366 (2022); oats Food Chem 216:170 (2017); tannins J AOAC 95:1118
/// (2012); cocktail extraction Eur J Gastroenterol Hepatol 17:1053 (2005); competitive assays and proteins in pieces J AOAC
/// 98:1346 (2015).
pub fn notes(verdict: &ProductVerdict) -> Vec<Caution> {
    let product = &verdict.product;
    let food = Matrix::of(product);
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
    let figure = readings().any(|extraction| {
        let reading = extraction.outcome.reading();
        extraction.assay_kind == AssayKind::Sandwich
            && reading.is_some_and(|interval| interval.as_below().is_none())
    });
    let sandwich = any(AssayKind::Sandwich);
    let intact = product.processing == Processing::None;
    let whole = intact && food.in_pieces.is_empty();
    let oats = product.oats != Oats::None
        || !food.oats.is_empty()
        || verdict.label.terms.iter().any(|term| term.grain == "oats");
    [
        (figure && whole && barley(verdict), Caution::BarleyReadHigh),
        (oats, Caution::OatsUnseen),
        (!food.tannin.is_empty() && !says("milk"), Caution::Tannins),
        (sandwich && !says("cocktail"), Caution::NoCocktail),
        (
            whole && any(AssayKind::Competitive),
            Caution::CompetitiveOnWhole,
        ),
        (
            sandwich && may_be_in_pieces(product, &food),
            Caution::MayBeInPieces(food.in_pieces.clone()),
        ),
    ]
    .into_iter()
    .filter_map(|(holds, caution)| holds.then_some(caution))
    .collect()
}

/// Whether the label names barley as grain: what of it is only asked about says nothing of the figure.
fn barley(verdict: &ProductVerdict) -> bool {
    let mut terms = verdict.label.terms.iter();
    terms.any(|term| {
        term.grain == "barley"
            && matches!(term.class, TermClass::Always | TermClass::NotForbidden(_))
    })
}

/// Whether the row names fermented or hydrolysed ingredients, and the register says that the food is neither.
fn may_be_in_pieces(product: &Product, food: &Matrix) -> bool {
    product.processing == Processing::None && !food.in_pieces.is_empty()
}

/// Asks about every product whose row names fermented or hydrolysed ingredients while its `processing` says none.
pub fn ask_about_processing(registers: &Registers, problems: &mut Problems) {
    for product in registers.products.values() {
        let food = Matrix::of(product);
        if may_be_in_pieces(product, &food) {
            problems.add(
                Code::Suspicious,
                product.place.clone(),
                say::found_processing(
                    product.product_id.as_str(),
                    food.in_pieces.iter().map(Item::new).collect(),
                ),
                say::do_ask_about_processing(),
            );
        }
    }
}
