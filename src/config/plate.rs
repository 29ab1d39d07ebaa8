//! `[plate]`: how the curve of a plate is fitted again, and what is held to be a good plate.

use super::settings::{Faults, Section};
use crate::model::plate::{CurveKind, StandardUnit, Weights};

/// How the curve of a plate is fitted again, and what is held to be a good plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlateRules {
    /// The curve that is laid through the standards.
    pub curve: CurveKind,
    /// How much each of them counts.
    pub weights: Weights,
    /// What their concentrations are in.
    pub standards: StandardUnit,
    /// The largest relative standard deviation of wells that hold the same.
    pub well_cv: f64,
    /// What a standard, read back on its own curve, may differ by, as a fraction.
    pub back_calculated: f64,
    /// What a control may come to, as fractions of its stated value.
    pub recovery: (f64, f64),
}

impl Default for PlateRules {
    fn default() -> PlateRules {
        PlateRules {
            curve: CurveKind::default(),
            weights: Weights::default(),
            standards: StandardUnit::default(),
            well_cv: 0.20,
            back_calculated: 0.20,
            recovery: (0.80, 1.20),
        }
    }
}

impl PlateRules {
    /// What the lowest standard above zero and the highest one may differ by: a quarter, as in ICH M10 for ligand binding
    /// assays, or more where the others may.
    pub fn back_calculated_at_ends(&self) -> f64 {
        self.back_calculated.max(0.25)
    }
}

/// The keys of the section.
pub const KEYS: &[&str] = &[
    "curve",
    "weights",
    "standards",
    "factor",
    "well_cv",
    "back_calculated",
    "recovery",
];

/// Reads the section; what is wrong goes to `faults`.
pub fn read(section: &Section, faults: &mut Faults) -> PlateRules {
    let default = PlateRules::default();
    let curve = section.word("curve", CurveKind::ALL, faults);
    let weights = section.word("weights", Weights::ALL, faults);
    let passes_through = [CurveKind::CubicSpline, CurveKind::PointToPoint];
    if weights == Some(Weights::InverseSquare)
        && curve.is_some_and(|curve| passes_through.contains(&curve))
    {
        let wanted = "this curve passes through every standard, whatever it counts: leave weights out, or fit 4pl or 5pl";
        section.fault("weights", wanted, faults);
    }
    PlateRules {
        curve: curve.unwrap_or(default.curve),
        weights: weights.unwrap_or(default.weights),
        standards: standards(section, faults),
        well_cv: section
            .fraction("well_cv", faults)
            .unwrap_or(default.well_cv),
        back_calculated: section
            .fraction("back_calculated", faults)
            .unwrap_or(default.back_calculated),
        recovery: section
            .fractions_around_one("recovery", faults)
            .unwrap_or(default.recovery),
    }
}

fn standards(section: &Section, faults: &mut Faults) -> StandardUnit {
    const WORDS: &[(bool, &str)] = &[(false, "ppm gluten"), (true, "ng/mL gliadin")];
    let in_extract = section.word("standards", WORDS, faults).unwrap_or(false);
    let factor = section.amount("factor", faults);
    if !in_extract {
        let wanted = "it goes with standards = \"ng/mL gliadin\" alone: standards in ppm gluten are of the food already";
        section.fault("factor", wanted, faults);
        return StandardUnit::PpmGluten;
    }
    if !section.has("factor") {
        faults.missing(
            "[plate] standards is `ng/mL gliadin`: then `factor` is needed, the mL of diluted extract for each g of food, such as 500",
        );
    }
    StandardUnit::NgMlGliadin {
        factor: factor.unwrap_or(500.0),
    }
}

#[cfg(test)]
mod tests {
    use super::super::Config;
    use super::*;
    use std::path::Path;

    fn parse(rest: &str) -> Result<PlateRules, Vec<String>> {
        let text = format!(
            "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n{rest}"
        );
        Config::parse(&text, Path::new(".")).map(|config| config.plate)
    }

    #[test]
    fn what_is_left_out_is_as_most_labs_have_it() {
        assert_eq!(parse(""), Ok(PlateRules::default()));
        let own = "[plate]\ncurve = \"5pl\"\nweights = \"1/y^2\"\nstandards = \"ng/mL gliadin\"\nfactor = 400\n\
                   well_cv = 0.15\nback_calculated = 0.3\nrecovery = [0.5, 1.5]\n";
        let rules = parse(own).expect("reads");
        assert_eq!(rules.curve, CurveKind::FiveParameters);
        assert_eq!(rules.weights, Weights::InverseSquare);
        assert_eq!(rules.standards, StandardUnit::NgMlGliadin { factor: 400.0 });
        assert_eq!(rules.recovery, (0.5, 1.5));
        assert_eq!(rules.back_calculated_at_ends(), 0.3);
    }

    #[test]
    fn faults_are_named_with_what_is_wanted() {
        for (written, expected) in [
            ("curve = \"3pl\"", "it can be \"4pl\", \"5pl\""),
            ("factor = 500", "goes with standards"),
            ("standards = \"ng/mL gliadin\"", "`factor` is needed"),
            ("recovery = [1.2, 0.8]", "two fractions"),
            ("recovery = 0.8", "two fractions"),
            ("recovery = [0.9, 1.1, 1.2]", "two fractions"),
            (
                "curve = \"point-to-point\"\nweights = \"1/y^2\"",
                "passes through every standard",
            ),
            ("well_cvs = 0.1", "nearest known one is `well_cv`"),
        ] {
            let faults = parse(&format!("[plate]\n{written}\n")).expect_err(written);
            assert!(faults[0].contains(expected), "{faults:#?}");
        }
    }
}
