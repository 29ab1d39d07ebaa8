//! `[planning]`: what a round of tests costs.

use super::settings::{Faults, Section};

/// What a round of tests costs. Money is in the units of `currency`.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Planning {
    /// What the lab takes for one extraction.
    pub extraction_price: Option<f64>,
    /// What it costs to send the packages of a round.
    pub shipping_price: Option<f64>,
    /// What a package costs where none was paid for yet.
    pub package_price: Option<f64>,
    /// As printed behind a sum: "EUR".
    pub currency: Option<String>,
}

/// The keys of the section.
pub const KEYS: &[&str] = &[
    "extraction_price",
    "shipping_price",
    "package_price",
    "currency",
];

/// Reads the section; what is wrong goes to `faults`.
pub fn read(section: &Section, faults: &mut Faults) -> Planning {
    let mut price = |key: &str| section.not_negative(key, faults);
    Planning {
        extraction_price: price("extraction_price"),
        shipping_price: price("shipping_price"),
        package_price: price("package_price"),
        currency: section.text("currency", faults),
    }
}
