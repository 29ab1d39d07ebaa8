//! What the registers and the lab's files say that can hardly be so: warnings with what to do, none of which decides.

mod barcode;
mod dates;
mod lots;

use crate::model::extraction::Extraction;
use crate::model::label::{LabelFinding, TermClass};
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Package, Product, Registers};
use crate::model::verdict::ProductVerdict;

/// Looks over the registers, and the days that the lab's files state.
pub fn look_over(registers: &Registers, extractions: &[Extraction], problems: &mut Problems) {
    for product in registers.products.values() {
        if let Some(fault) = product.barcode.as_deref().and_then(barcode::fault) {
            barcode_warning(product, &fault, problems);
        }
    }
    for package in &registers.packages {
        dates::of_package(package, problems);
        price(package, problems);
    }
    dates::of_lab(registers, extractions, problems);
    lots::look_over(registers, problems);
}

/// Claims that stand beside an ingredient which denies them: once a product, whatever the round.
pub fn claims(verdicts: &[ProductVerdict], problems: &mut Problems) {
    let mut told: Option<&str> = None;
    for verdict in verdicts {
        let product = &verdict.product;
        let denies = verdict.label.finding == LabelFinding::GlutenSource;
        if !denies || told == Some(&product.product_id) {
            continue;
        }
        told = Some(&product.product_id);
        let terms = verdict.label.terms.iter();
        let named: Vec<String> = terms
            .filter(|term| term.class == TermClass::Always)
            .map(|term| format!("“{}”", term.printed))
            .collect();
        warn(
            problems,
            &product.place,
            format!(
                "product “{}” is sold as “{}”, and its ingredients name {}",
                product.product_id,
                product.claim.trim(),
                named.join(", ")
            ),
            "Hold the ingredients in the register against a photograph of the package: sheet and letter will say this of the maker.",
        );
    }
}

fn warn(problems: &mut Problems, place: &Place, message: String, hint: &str) {
    problems.add(Code::Suspicious, place.clone(), message, hint);
}

fn barcode_warning(product: &Product, fault: &str, problems: &mut Problems) {
    warn(
        problems,
        &product.place,
        format!(
            "the barcode “{}” of product “{}” {fault}",
            product.barcode.as_deref().unwrap_or_default(),
            product.product_id
        ),
        "Type it again from the package, as text: a spreadsheet program drops the zeros in front of a number. It is printed as it stands.",
    );
}

/// A price without a digit says nothing of what was paid.
fn price(package: &Package, problems: &mut Problems) {
    let Some(price) = package.price.as_deref() else {
        return;
    };
    if !price.trim().is_empty() && !price.chars().any(char::is_numeric) {
        warn(
            problems,
            &package.place,
            format!(
                "the price “{price}” of package “{}” has no figure",
                package.package_code
            ),
            "Put in what stands on the receipt, or leave the cell empty.",
        );
    }
}
