//! What `programme.toml` says, word for word: every key that there is, nothing checked yet.

use serde::Deserialize;
use std::collections::BTreeMap;

#[derive(Debug, Default, Deserialize)]
pub struct Raw {
    #[serde(default)]
    pub programme: RawProgramme,
    #[serde(default)]
    pub rule: RawRule,
    #[serde(default)]
    pub testing: RawTesting,
    #[serde(default)]
    pub lab: RawLab,
    #[serde(default)]
    pub layout: Vec<RawLayout>,
}

#[derive(Debug, Default, Deserialize)]
pub struct RawProgramme {
    pub name: Option<String>,
    pub short_name: Option<String>,
    pub email: Option<String>,
    pub address: Option<String>,
    pub website: Option<String>,
    pub director: Option<String>,
    pub regulator: Option<String>,
    pub corrections: Option<String>,
    pub reply_days: Option<i64>,
    pub publish_days: Option<i64>,
    pub statement: Option<String>,
    pub retained: Option<String>,
    pub paper: Option<String>,
}

#[derive(Debug, Default, Deserialize)]
pub struct RawRule {
    pub regime: Option<String>,
    pub limit_ppm: Option<f64>,
    pub limit_passes: Option<bool>,
    pub decision: Option<String>,
    pub relative_expanded_uncertainty: Option<f64>,
}

#[derive(Debug, Default, Deserialize)]
pub struct RawTesting {
    pub packages_per_product: Option<i64>,
    pub extractions_per_package: Option<i64>,
    pub lloq_ppm: Option<f64>,
    pub lod_ppm: Option<f64>,
    pub uloq_ppm: Option<f64>,
    pub relative_repeatability: Option<f64>,
}

#[derive(Debug, Default, Deserialize)]
pub struct RawLab {
    pub name: Option<String>,
    pub assay: Option<String>,
    pub assay_kind: Option<String>,
}

#[derive(Debug, Default, Deserialize)]
pub struct RawLayout {
    pub files: Option<String>,
    pub sheet: Option<String>,
    pub header_row: Option<i64>,
    #[serde(default)]
    pub columns: BTreeMap<String, String>,
}

/// The keys of each section, as the deserialiser above knows them.
pub const KEYS: &[(&str, &[&str])] = &[
    (
        "programme",
        &[
            "name",
            "short_name",
            "email",
            "address",
            "website",
            "director",
            "regulator",
            "corrections",
            "reply_days",
            "publish_days",
            "statement",
            "retained",
            "paper",
        ],
    ),
    (
        "rule",
        &[
            "regime",
            "limit_ppm",
            "limit_passes",
            "decision",
            "relative_expanded_uncertainty",
        ],
    ),
    (
        "testing",
        &[
            "packages_per_product",
            "extractions_per_package",
            "lloq_ppm",
            "lod_ppm",
            "uloq_ppm",
            "relative_repeatability",
        ],
    ),
    ("lab", &["name", "assay", "assay_kind"]),
    ("layout", &["files", "sheet", "header_row", "columns"]),
];
