//! What the registers and the lab's files say that can hardly be so: warnings with what to do, none of which decides.

mod barcode;
mod dates;
mod lots;

use crate::model::extraction::Extraction;
use crate::model::label::{LabelFinding, TermClass};
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Package, Product, Registers};
use crate::model::said::{Item, Said};
use crate::model::verdict::ProductVerdict;
use crate::words::say;

/// Looks over the registers, and the days that the lab's files state.
pub fn look_over(registers: &Registers, extractions: &[Extraction], problems: &mut Problems) {
    for product in registers.products.values() {
        if let Some(fault) = product.barcode.as_deref().and_then(barcode::fault) {
            barcode_warning(product, fault, problems);
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
        let named = terms
            .filter(|term| term.class == TermClass::Always)
            .map(|term| Item::new(term.printed.as_str()));
        warn(
            problems,
            &product.place,
            say::found_denied_claim(
                product.product_id.as_str(),
                product.claim.trim(),
                named.collect(),
            ),
            say::do_look_at_ingredients(),
        );
    }
}

fn warn(problems: &mut Problems, place: &Place, found: Said, to_do: Said) {
    problems.add(Code::Suspicious, place.clone(), found, to_do);
}

fn barcode_warning(product: &Product, fault: barcode::Fault, problems: &mut Problems) {
    let (word, digits, check, wanted) = match fault {
        barcode::Fault::Letters => ("letters", 0, String::new(), String::new()),
        barcode::Fault::Length(digits) => ("length", digits, String::new(), String::new()),
        barcode::Fault::Check(check, wanted) => ("check", 0, check.to_string(), wanted.to_string()),
    };
    warn(
        problems,
        &product.place,
        say::found_barcode(
            product.barcode.as_deref().unwrap_or_default(),
            product.product_id.as_str(),
            word,
            digits as u64,
            check,
            wanted,
        ),
        say::do_type_barcode(),
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
            say::found_price(price, package.package_code.as_str()),
            say::do_write_price(),
        );
    }
}
