//! The limits of the assay in force for a result, as ppm gluten.

use crate::config::Testing;
use crate::gather::readings::intervals;
use crate::gather::tables::asides;
use crate::gather::tables::units::{Quantity, Scale, Unit};
use crate::model::ppm::Ppm;

/// The limits of the assay.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// The lowest quantity reported as a number.
    pub lloq: Ppm,
    /// The highest one.
    pub uloq: Ppm,
    /// The lowest quantity that the assay detects.
    pub lod: Ppm,
}

/// What the row and the file say, in their own unit or that of the result, else what the settings say.
pub fn in_force(
    said: asides::Limits,
    testing: &Testing,
    unit: Option<Unit>,
    quantity: Option<Quantity>,
) -> Limits {
    let limit = |said, otherwise| of(said, otherwise, unit, quantity);
    Limits {
        lloq: limit(said.lloq, testing.lloq),
        uloq: limit(said.uloq, testing.uloq),
        lod: limit(said.lod, testing.lod),
    }
}

fn of(
    said: Option<(f64, Option<Unit>)>,
    otherwise: Ppm,
    results: Option<Unit>,
    quantity: Option<Quantity>,
) -> Ppm {
    let Some((figure, unit)) = said else {
        return otherwise;
    };
    let scale = unit.or(results).map_or(Scale::One, |unit| unit.ppm);
    let quantity = unit.and_then(|unit| unit.quantity).or(quantity);
    intervals::gluten(scale.to_ppm(figure), quantity)
}
