//! The shape of `results.json`: what is written of everything that was decided, and read back from an archive.
//!
//! Keys stand in this order, and what is absent is `null`. An archive of an earlier version may lack a key: then it reads as
//! nothing.

use crate::model::statistics::Counts;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use std::collections::BTreeMap;

/// A text: borrowed where the file is written, owned where it was read.
type Text<'a> = Cow<'a, str>;

/// The whole file.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Results<'a> {
    /// `galleyproof.results/1`.
    pub schema: Text<'a>,
    /// Whose results they are.
    #[serde(default)]
    pub programme: Programme<'a>,
    /// What they are held against.
    pub rule: Rule<'a>,
    /// By product and round.
    pub products: Vec<Product<'a>>,
    /// Plates whose curves were fitted again.
    #[serde(default)]
    pub plates: Vec<Plate<'a>>,
    /// All of it by band.
    #[serde(default)]
    pub counts: Counts,
    /// What is wrong with the data.
    #[serde(default)]
    pub problems: Vec<Problem<'a>>,
}

/// Whose results they are.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Programme<'a> {
    /// In full.
    pub name: Text<'a>,
    /// As it leads each sheet number.
    pub short_name: Text<'a>,
}

/// What results are held against.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Rule<'a> {
    /// `us`, `codex` …
    pub regime: Text<'a>,
    /// The limit in ppm.
    pub limit_ppm: f64,
    /// Whether exactly the limit is within it.
    pub limit_passes: bool,
    /// `simple` or `guarded`.
    pub decision: Text<'a>,
}

/// A product in one round.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Product<'a> {
    /// The programme's own name for it.
    pub product_id: Text<'a>,
    /// The round of testing.
    pub round: Text<'a>,
    /// As on the front of the package.
    pub name: Text<'a>,
    /// `over_limit`, `within_limit`, `no_verdict`.
    pub verdict: Text<'a>,
    /// `below_quantification` or `quantified`, where it is within the limit.
    pub grade: Option<Text<'a>>,
    /// Why there is no verdict.
    pub reasons: Vec<String>,
    /// The words on the package that a limit goes with.
    pub claim: Claim<'a>,
    /// What the label says.
    pub label: Label<'a>,
    /// Whether its maker is to be told.
    pub notify_maker: bool,
    /// Whether it may be published.
    pub publication: Publication<'a>,
    /// By code.
    pub packages: Vec<Package<'a>>,
}

/// The words on the package that a limit goes with.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Claim<'a> {
    /// As written in the register.
    pub text: Text<'a>,
    /// `gluten_free`, `very_low` …
    pub class: Text<'a>,
    /// Its limit in ppm; none where the claim is unknown.
    pub limit_ppm: Option<f64>,
    /// Whether exactly the limit is within it.
    pub limit_passes: Option<bool>,
}

/// The state of a sheet.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Publication<'a> {
    /// `with_lab` … `published`, or [`UNDER_REVISION`].
    pub state: Text<'a>,
    /// The first day on which it may be published, where the maker was told.
    pub may_publish_on: Option<NaiveDate>,
    /// The revision that is published, or that the proof is one of.
    pub revision: u32,
    /// What the state rests on, in words.
    pub why: Text<'a>,
}

/// The word for a sheet that was issued and does not stand any more.
pub const UNDER_REVISION: &str = "under_revision";

/// What a label says.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Label<'a> {
    /// `gluten_source`, `none` …
    pub finding: Text<'a>,
    /// The terms, as printed.
    pub terms: Vec<Text<'a>>,
}

/// A package.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Package<'a> {
    /// What the lab is given.
    pub package_code: Text<'a>,
    /// The series that decides.
    #[serde(flatten)]
    pub series: Series<'a>,
    /// The readings by the other kind of assay, where there are any.
    pub other_series: Option<Series<'a>>,
}

/// The readings by one kind of assay and what they come to.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Series<'a> {
    /// `sandwich` or `competitive`.
    pub assay_kind: Text<'a>,
    /// `agree`, `disagree`, `incomplete`, `missing`.
    pub state: Text<'a>,
    /// `within`, `over` …
    pub standing: Text<'a>,
    /// Whether readings of an agreeing package lie on both sides of the limit.
    pub straddles_limit: bool,
    /// The smallest difference that the reports allow.
    pub gap_ppm: Option<f64>,
    /// What the readings may differ by.
    pub allowed_ppm: Option<f64>,
    /// What they give together.
    pub result: Figures<'a>,
    /// By number.
    pub extractions: Vec<Extraction<'a>>,
}

/// A package's result: the bounds are always there where something is known, the single figure only where there is one.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Figures<'a> {
    /// `value`, `below`, `range` or `none`.
    pub kind: Text<'a>,
    /// The mean, for a value.
    pub ppm: Option<f64>,
    /// The lowest that the reports allow.
    pub lower_ppm: Option<f64>,
    /// The highest that the reports allow; none where unbounded.
    pub upper_ppm: Option<f64>,
}

/// One extraction.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Extraction<'a> {
    /// 1, 2, …
    pub number: u32,
    /// The text of the cell.
    pub reported: Text<'a>,
    /// The lowest that it allows.
    pub lower_ppm: Option<f64>,
    /// The highest that it allows.
    pub upper_ppm: Option<f64>,
    /// Set aside by a person.
    pub excluded: bool,
    /// Where it stands.
    pub source: Source<'a>,
}

/// The cell of a reading.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Source<'a> {
    /// Path below the programme folder.
    pub file: Text<'a>,
    /// SHA-256 of the file.
    pub sha256: Text<'a>,
    /// The sheet of a workbook.
    pub sheet: Option<Text<'a>>,
    /// As a spreadsheet shows it.
    pub row: u32,
    /// Its letter.
    pub column: String,
}

/// A plate whose curve was fitted again: beside what the lab reported, and never in its place.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Plate<'a> {
    /// Path below the programme folder.
    pub file: Text<'a>,
    /// The sheet of a workbook.
    pub sheet: Option<Text<'a>>,
    /// As the lab names it, else its number in the file.
    pub plate: Text<'a>,
    /// `4pl`, `5pl`, `cubic-spline`, `point-to-point`.
    pub curve: Text<'a>,
    /// Those of a logistic curve, by their letters; empty for others, and where no curve can be fitted.
    pub parameters: BTreeMap<Text<'a>, f64>,
    /// The root of the residual sum of squares over n - p.
    pub residual_sd: Option<f64>,
    /// By concentration.
    pub standards: Vec<PlateStandard>,
    /// What was looked at.
    pub checks: Vec<PlateCheck<'a>>,
    /// In the order of the plate.
    pub samples: Vec<PlateSample<'a>>,
}

/// A standard of a plate.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct PlateStandard {
    /// In the unit of the settings.
    pub concentration: f64,
    /// Of its wells.
    pub absorbances: Vec<f64>,
    /// What its own curve says of them.
    pub back_calculated: Option<f64>,
    /// Whether that is near enough.
    pub ok: bool,
}

/// A check of a plate.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct PlateCheck<'a> {
    /// `monotone`, `blank` …
    pub name: Text<'a>,
    /// Whether all is well.
    pub ok: bool,
    /// What was found; of the worst, where several things are looked at.
    pub value: Option<f64>,
    /// What is allowed.
    pub allowed: PlateAllowed,
}

/// What a check allows: so much, or from so much to so much.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(untagged)]
pub enum PlateAllowed {
    /// At most, or for `top` at least.
    Bound(f64),
    /// Both bounds.
    Between([f64; 2]),
}

impl Default for PlateAllowed {
    fn default() -> PlateAllowed {
        PlateAllowed::Bound(0.0)
    }
}

/// A sample of a plate.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct PlateSample<'a> {
    /// What the lab is given.
    pub package_code: Text<'a>,
    /// Which extraction, where the file says.
    pub extraction: Option<u32>,
    /// How much thinner than the method has it.
    pub dilution: f64,
    /// Of its wells.
    pub absorbances: Vec<f64>,
    /// What they come to, where that lies between the standards.
    pub ppm: Option<f64>,
    /// The lowest that they allow.
    pub lower_ppm: Option<f64>,
    /// The highest that they allow; none above the highest standard.
    pub upper_ppm: Option<f64>,
    /// What the lab reported, where that is a figure.
    pub reported_ppm: Option<f64>,
    /// Whether both agree; none where nothing was reported.
    pub agrees: Option<bool>,
}

/// What is wrong at one place of the data.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Problem<'a> {
    /// `error`, `warning` or `note`.
    pub severity: Text<'a>,
    /// What people filter on.
    pub code: Text<'a>,
    /// Path below the programme folder.
    pub file: Text<'a>,
    /// The sheet of a workbook.
    pub sheet: Option<Text<'a>>,
    /// As a spreadsheet shows it.
    pub row: Option<u32>,
    /// Its letter.
    pub column: Option<String>,
    /// What was found.
    pub message: Text<'a>,
    /// What to do.
    pub hint: Text<'a>,
}
