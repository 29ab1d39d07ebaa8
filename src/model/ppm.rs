//! The one unit: parts per million, and comparison as on paper.

use std::cmp::Ordering;

/// Two figures nearer to each other than this, relative to the larger, are the same figure on paper.
///
/// Lab figures are short decimals that binary floats hold only nearly: the mean of 17.2, 19.9 and 22.9 is 20, though
/// their float sum is a little less. Two figures that differ from the tenth digit on alone count as one: 20.00000001 is 20, which
/// no assay tells apart.
pub const SAME_FIGURE: f64 = 1e-9;

/// Parts per million: milligrams of gluten in a kilogram of food (mg/kg).
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Default)]
pub struct Ppm(pub f64);

impl Ppm {
    /// All there is: a sample that is nothing but gluten.
    pub const WHOLE: Ppm = Ppm(1e6);

    /// Nothing at all: the lower end of every result that is below quantification.
    pub const ZERO: Ppm = Ppm(0.0);

    /// Compares as one would on paper: figures within [`SAME_FIGURE`] are equal.
    pub fn compare(self, other: Ppm) -> Ordering {
        let scale = self.0.abs().max(other.0.abs());
        if (self.0 - other.0).abs() <= SAME_FIGURE * scale {
            Ordering::Equal
        } else {
            self.0.total_cmp(&other.0)
        }
    }

    /// Equal as on paper.
    pub fn same(self, other: Ppm) -> bool {
        self.compare(other) == Ordering::Equal
    }

    /// The larger of two.
    pub fn max(self, other: Ppm) -> Ppm {
        Ppm(self.0.max(other.0))
    }

    /// The smaller of two.
    pub fn min(self, other: Ppm) -> Ppm {
        Ppm(self.0.min(other.0))
    }
}

/// Rounded to 12 significant digits: what was computed with roots or logarithms is then the same on every machine.
pub fn twelve_digits(x: f64) -> f64 {
    format!("{x:.11e}").parse().unwrap_or(x)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mean_that_is_the_limit_on_paper_equals_it() {
        let mean = (17.2 + 19.9 + 22.9) / 3.0;
        assert!(mean < 20.0, "binary floats say less");
        assert!(Ppm(mean).same(Ppm(20.0)));
    }

    #[test]
    fn twelve_digits_hide_the_noise_of_floats() {
        assert_eq!(twelve_digits(2.8 * 1.5), 4.2);
        assert_eq!(twelve_digits(0.0), 0.0);
        assert_eq!(twelve_digits(1.0 / 3.0), 0.333333333333);
    }

    #[test]
    fn figures_that_differ_on_paper_stay_apart() {
        assert_eq!(Ppm(19.9999).compare(Ppm(20.0)), Ordering::Less);
        assert_eq!(Ppm(0.0).compare(Ppm(1e-12)), Ordering::Less);
        assert_eq!(Ppm(0.0).compare(Ppm(0.0)), Ordering::Equal);
    }
}
