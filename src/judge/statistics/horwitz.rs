//! What the Horwitz function lets expect: a yardstick from chemical analysis, which gluten assays seldom meet.

use crate::judge::paper::twelve_digits;
use crate::model::ppm::Ppm;
use crate::model::statistics::{Horwitz, Repeatability};

/// Standard deviation between laboratories at mass fraction `c`, as a mass fraction: 0.02 c^0.8495 (Horwitz, Kamps and
/// Boyer, J AOAC 63:1344, 1980).
pub fn horwitz(c: f64) -> f64 {
    0.02 * c.powf(0.8495)
}

/// The same as Thompson bounds it (Analyst 125:385, 2000): 0.22 c below 1.2e-7, 0.01 sqrt(c) above 0.138.
pub fn thompson(c: f64) -> f64 {
    if c < 1.2e-7 {
        0.22 * c
    } else if c <= 0.138 {
        horwitz(c)
    } else {
        0.01 * c.sqrt()
    }
}

/// HorRat: a relative standard deviation over the one that the Horwitz function gives at `c`.
pub fn horrat(relative: f64, c: f64) -> f64 {
    relative / (horwitz(c) / c)
}

/// The programme's own repeatability against the function at the limit.
///
/// Within one laboratory a HorRat of 0.3 to 1.3 is usual for chemical methods (AOAC Appendix F); above that the assay or
/// the samples scatter more than such methods do.
pub fn at_limit(all: &Repeatability, limit: Ppm) -> Horwitz {
    let c = limit.0 * 1e-6;
    Horwitz {
        level: limit,
        between_labs: twelve_digits(thompson(c) / c),
        horrat_r: twelve_digits(horrat(all.relative_s, c)),
    }
}
