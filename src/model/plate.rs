//! A plate: the wells that a lab has read, what is in each, and what comes of them when its curve is fitted again.
//!
//! It never replaces what the lab reported, and decides nothing: it is printed beside it.

use crate::model::place::{LabFile, Place};
use crate::model::ppm::Ppm;
use std::sync::Arc;

/// The curve that is laid through the standards.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum CurveKind {
    /// The logistic curve of four parameters.
    #[default]
    FourParameters,
    /// The logistic curve of five parameters, which need not be symmetric.
    FiveParameters,
    /// A natural cubic spline in the logarithm of the concentration + 1.
    CubicSpline,
    /// Straight from each standard to the next.
    PointToPoint,
}

impl CurveKind {
    /// Every curve with its word in the settings and the data.
    pub const ALL: &'static [(CurveKind, &'static str)] = &[
        (CurveKind::FourParameters, "4pl"),
        (CurveKind::FiveParameters, "5pl"),
        (CurveKind::CubicSpline, "cubic-spline"),
        (CurveKind::PointToPoint, "point-to-point"),
    ];

    /// The word in the settings and the data.
    pub fn word(self) -> &'static str {
        let known = Self::ALL.iter().find(|(kind, _)| *kind == self);
        known.expect("every curve has a word").1
    }
}

/// How much each standard counts where the curve is fitted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Weights {
    /// All alike.
    #[default]
    None,
    /// By the reciprocal of its mean absorbance squared.
    InverseSquare,
}

impl Weights {
    /// Every kind with its word in the settings.
    pub const ALL: &'static [(Weights, &'static str)] =
        &[(Weights::None, "none"), (Weights::InverseSquare, "1/y^2")];
}

/// What the concentrations of standards are in.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum StandardUnit {
    /// Gluten in the food.
    #[default]
    PpmGluten,
    /// Gliadin in the extract.
    NgMlGliadin {
        /// Millilitres of extract, diluted as the method has it, for each gram of food.
        factor: f64,
    },
}

impl StandardUnit {
    /// What a concentration comes to in the food: mg/kg gliadin = ng/mL x factor / 1000, and gluten = 2 x gliadin
    /// (Codex Stan 118-1979, 5.1).
    pub fn ppm(self, concentration: Concentration) -> Ppm {
        match self {
            StandardUnit::PpmGluten => Ppm(concentration.0),
            StandardUnit::NgMlGliadin { factor } => Ppm(concentration.0 * 2.0 * factor / 1000.0),
        }
    }
}

/// What of a substance is in a standard, in the unit of the settings.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Concentration(pub f64);

/// How much light a well holds back: a decadic logarithm, without a unit.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Absorbance(pub f64);

/// A well that was read.
#[derive(Clone, Debug, PartialEq)]
pub struct Well {
    /// `A1` to `H12`.
    pub name: String,
    /// What was read in it.
    pub absorbance: Absorbance,
    /// Row of its cell, as the spreadsheet shows it.
    pub row: u32,
    /// Column of its cell, from 1.
    pub column: u32,
}

/// Wells that hold the same.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Wells(pub Vec<Well>);

impl Wells {
    /// The mean absorbance; none of no well.
    pub fn mean(&self) -> Option<Absorbance> {
        let sum: f64 = self.0.iter().map(|well| well.absorbance.0).sum();
        (!self.0.is_empty()).then(|| Absorbance(sum / self.0.len() as f64))
    }

    /// The standard deviation (n - 1) of the wells over their mean; none of fewer than two, and where the mean is not above
    /// zero.
    pub fn relative_deviation(&self) -> Option<f64> {
        let mean = self.mean()?.0;
        let others = self.0.len().checked_sub(1).filter(|others| *others > 0)?;
        let squares = self.0.iter().map(|well| {
            let residual = well.absorbance.0 - mean;
            residual * residual
        });
        let deviation = (squares.sum::<f64>() / others as f64).sqrt();
        (mean > 0.0).then_some(deviation / mean)
    }

    /// The names of the wells.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        self.0.iter().map(|well| well.name.as_str())
    }
}

/// Wells of a known concentration.
#[derive(Clone, Debug, PartialEq)]
pub struct Standard {
    /// How much is in them.
    pub concentration: Concentration,
    /// Where.
    pub wells: Wells,
}

/// What a control is said to hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stated {
    /// So much; what is read may differ by as much as the settings allow.
    Value(Ppm),
    /// From so much to so much.
    Range(Ppm, Ppm),
}

/// Wells of a food whose content is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Control {
    /// As the lab names it.
    pub name: String,
    /// What it is said to hold, where the file says.
    pub stated: Option<Stated>,
    /// How much thinner than the method has it.
    pub dilution: f64,
    /// Where.
    pub wells: Wells,
}

/// Wells of one extraction of a package.
#[derive(Clone, Debug, PartialEq)]
pub struct Sample {
    /// The package's code as the register spells it.
    pub package_code: String,
    /// Which extraction, where the file says.
    pub extraction: Option<u32>,
    /// How much thinner than the method has it.
    pub dilution: f64,
    /// Where.
    pub wells: Wells,
}

/// A plate as the lab read it.
#[derive(Clone, Debug, PartialEq)]
pub struct Plate {
    /// The file that holds it.
    pub file: Arc<LabFile>,
    /// Name of its sheet; none in a delimited file.
    pub sheet: Option<Arc<str>>,
    /// As the lab names it, else its number in the file.
    pub name: String,
    /// Row in which it begins, as the spreadsheet shows it.
    pub row: u32,
    /// By concentration.
    pub standards: Vec<Standard>,
    /// Wells with nothing of a food in them.
    pub blanks: Wells,
    /// In the order in which they stand.
    pub controls: Vec<Control>,
    /// In the order in which they stand.
    pub samples: Vec<Sample>,
    /// Wells of samples that are not of this programme.
    pub others: usize,
}

impl Plate {
    /// Where it stands.
    pub fn place(&self) -> Place {
        Place {
            sheet: self.sheet.as_deref().map(str::to_owned),
            row: Some(self.row),
            ..Place::file(self.file.path.clone())
        }
    }

    /// Where the first of these wells stands, else the plate.
    pub fn place_of(&self, wells: &Wells) -> Place {
        let first = wells.0.first();
        Place {
            row: first.map_or(Some(self.row), |well| Some(well.row)),
            column: first.map(|well| well.column),
            ..self.place()
        }
    }
}

/// What a curve says of an absorbance, in the food and with the dilution: at most as far as the standards reach.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Recomputed {
    /// Between the lowest standard above zero and the highest one.
    Figure(Ppm),
    /// Less than the lowest standard above zero comes to.
    Below(Ppm),
    /// More than the highest standard comes to.
    Above(Ppm),
}

/// The parameters of a logistic curve: y = D + (A - D) / (1 + (x / C)^B)^G.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parameters {
    /// Absorbance at no concentration.
    pub a: f64,
    /// Slope; above zero.
    pub b: f64,
    /// Concentration in the middle.
    pub c: f64,
    /// Absorbance at concentrations without end.
    pub d: f64,
    /// Asymmetry; none for four parameters, where it is 1.
    pub g: Option<f64>,
}

/// What was fitted to the standards.
#[derive(Clone, Debug, PartialEq)]
pub struct FittedCurve {
    /// Of a logistic curve.
    pub parameters: Option<Parameters>,
    /// The root of the residual sum of squares over n - p; none where the curve passes through every standard.
    pub residual_sd: Option<f64>,
    /// Points of it from the lowest to the highest standard, to draw it by.
    pub drawn: Vec<(Concentration, Absorbance)>,
}

/// A standard, read back on its own curve.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadBack {
    /// What the curve says of its mean absorbance; none where it says nothing.
    pub back_calculated: Option<Concentration>,
    /// Whether that is near enough; the zero standard is not held to it.
    pub ok: bool,
}

/// What is looked at on a plate.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CheckKind {
    /// Each standard is above (or each below) the one before it.
    Monotone,
    /// What holds nothing shows little.
    Blank,
    /// The strongest standard shows enough.
    Top,
    /// Wells that hold the same agree.
    WellCv,
    /// Standards, read back, are what they are.
    BackCalculated,
    /// Controls, read, are what they are said to be.
    Recovery,
}

impl CheckKind {
    /// The word in the data and in messages.
    pub fn word(self) -> &'static str {
        match self {
            CheckKind::Monotone => "monotone",
            CheckKind::Blank => "blank",
            CheckKind::Top => "top",
            CheckKind::WellCv => "well_cv",
            CheckKind::BackCalculated => "back_calculated",
            CheckKind::Recovery => "recovery",
        }
    }
}

/// What a check allows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Allowed {
    /// So much at most.
    Most(f64),
    /// So much at least.
    Least(f64),
    /// From so much to so much.
    Between(f64, f64),
}

impl Allowed {
    /// Whether a figure is allowed; on paper, where a little more than nothing is nothing.
    pub fn allows(self, figure: f64) -> bool {
        const SLACK: f64 = 1e-9;
        let most = |most: f64| figure <= most + SLACK * most.abs();
        let least = |least: f64| figure >= least - SLACK * least.abs();
        match self {
            Allowed::Most(bound) => most(bound),
            Allowed::Least(bound) => least(bound),
            Allowed::Between(low, high) => least(low) && most(high),
        }
    }
}

/// A check and how it came out. Where several things are looked at, it is that of the worst.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    /// Which.
    pub kind: CheckKind,
    /// Whether all is well.
    pub ok: bool,
    /// What was found; none where nothing could be read.
    pub value: Option<f64>,
    /// What it may be.
    pub allowed: Allowed,
    /// Whether value and bounds are in ppm, as those of a control with a range; else they are shares or absorbances.
    pub in_ppm: bool,
    /// What that is the value of: a standard, a control, wells; empty where it is of the plate.
    pub of: String,
    /// Where that stands.
    pub place: Place,
}

/// What the lab reported of a sample, held against what its absorbances come to.
#[derive(Clone, Debug, PartialEq)]
pub struct Reported {
    /// The figure, where it is one.
    pub ppm: Option<Ppm>,
    /// As the lab wrote it.
    pub text: String,
    /// Where it stands.
    pub place: Place,
    /// Whether they agree, as far as both say.
    pub agrees: bool,
}

/// A sample, read on the curve.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadSample {
    /// What its absorbances come to; none where there is no curve.
    pub recomputed: Option<Recomputed>,
    /// What the lab said of it, where it said anything.
    pub reported: Option<Reported>,
}

/// A plate whose curve was fitted again, as far as that can be done.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredPlate {
    /// As the lab read it.
    pub plate: Plate,
    /// Which curve was asked for.
    pub kind: CurveKind,
    /// How its standards counted.
    pub weights: Weights,
    /// What their concentrations are in.
    pub unit: StandardUnit,
    /// None where none can be fitted, or it does not only rise or only fall.
    pub curve: Option<FittedCurve>,
    /// One for each standard.
    pub standards: Vec<ReadBack>,
    /// In the order of their kinds.
    pub checks: Vec<Check>,
    /// What each control comes to; none where there is no curve.
    pub controls: Vec<Option<Recomputed>>,
    /// One for each sample.
    pub samples: Vec<ReadSample>,
}
