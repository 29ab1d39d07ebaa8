//! Our statistics against figures from elsewhere: the files of tests/checks, and of the folder named in GALLEYPROOF_CHECKS.

/// Case by case: what ours gives for the input.
mod cases;

/// Curves of plates.
mod curves;

/// Row by row: quantiles and factors.
mod tables;

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// Relative difference at which two figures are the same.
const SAME: f64 = 1e-9;

/// Absolute difference, for figures that are 0.
const SAME_NEAR_ZERO: f64 = 1e-12;

/// How a folder of checks came out.
#[derive(Default)]
struct Tally {
    /// Figures that were held against each other, by file and kind: "c_binomial.json binomial".
    compared: BTreeMap<String, usize>,
    /// What differs, in words.
    faults: Vec<String>,
    /// What nothing of ours computes: kind and reason, with how many.
    skipped: BTreeMap<String, usize>,
}

impl Tally {
    /// `what` begins with file and kind.
    fn compare(&mut self, what: &str, ours: Option<f64>, theirs: Option<f64>, tolerance: f64) {
        self.count(what);
        let same = match (ours, theirs) {
            (Some(ours), Some(theirs)) => {
                (ours - theirs).abs() <= SAME_NEAR_ZERO + tolerance * theirs.abs()
            }
            (ours, theirs) => ours == theirs,
        };
        if !same {
            self.faults
                .push(format!("{what}: ours {ours:?}, theirs {theirs:?}"));
        }
    }

    fn compare_text(&mut self, what: &str, ours: &str, theirs: Option<&str>) {
        self.count(what);
        if theirs != Some(ours) {
            self.faults
                .push(format!("{what}: ours {ours:?}, theirs {theirs:?}"));
        }
    }

    fn count(&mut self, what: &str) {
        let of: Vec<&str> = what.split(' ').take(2).collect();
        *self.compared.entry(of.join(" ")).or_default() += 1;
    }

    fn skip(&mut self, kind: &str, reason: &str) {
        *self.skipped.entry(format!("{kind}: {reason}")).or_default() += 1;
    }
}

fn run(folder: &Path) -> Tally {
    let mut tally = Tally::default();
    let mut files: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap_or_else(|error| panic!("{}: {error}", folder.display()))
        .map(|entry| entry.expect("an entry").path())
        .collect();
    files.sort();
    for file in files {
        let name = file.file_name().expect("a name").to_string_lossy();
        match file.extension().and_then(|ending| ending.to_str()) {
            Some("json") => cases::run(&name, &read(&file), &mut tally),
            Some("csv") => tables::run(&name, &read(&file), &mut tally),
            _ => {}
        }
    }
    println!("{}", folder.display());
    for (of, figures) in &tally.compared {
        println!("  compared, {figures} of {of}");
    }
    for (kind, cases) in &tally.skipped {
        println!("  skipped, {cases} of {kind}");
    }
    tally
}

fn read(file: &Path) -> String {
    fs::read_to_string(file).unwrap_or_else(|error| panic!("{}: {error}", file.display()))
}

/// How many figures of each file and kind are compared: each is of code that a run calls, and none drops out unseen.
const COMPARED: &[(&str, usize)] = &[
    ("a_curve_fit.json curve_fit", 281),
    ("a_curve_fit.json nist_nls", 68),
    ("b_spline.json cubic_spline", 164),
    ("c_binomial.json binomial", 131),
    ("c_binomial.json zero_failures_n", 12),
    ("d_constants.csv D4", 1),
    ("d_repeatability.json interlab", 2),
    ("d_repeatability.json pair", 35),
    ("d_repeatability.json repeatability", 28),
    ("e_anova_homogeneity.json oneway", 105),
    ("e_cochran_critical.csv crit_1", 38),
    ("e_cochran_critical.csv crit_5", 38),
    ("e_f1_f2.csv F1", 14),
    ("e_f1_f2.csv F2", 14),
    ("f_censored.json censored", 20),
    ("g_conformity.json conformance", 15),
    ("g_conformity.json guard_band", 16),
    ("g_conformity.json guard_band_target", 6),
    ("h_horwitz.json horwitz", 65),
    ("i_trend_fisher_holm.json fisher", 8),
    ("i_trend_fisher_holm.json holm", 12),
    ("i_trend_fisher_holm.json trend", 11),
    ("j_chi2_quantiles.csv p0.025", 12),
    ("j_chi2_quantiles.csv p0.05", 12),
    ("j_chi2_quantiles.csv p0.5", 12),
    ("j_chi2_quantiles.csv p0.95", 12),
    ("j_chi2_quantiles.csv p0.975", 12),
    ("j_chi2_quantiles.csv p0.99", 12),
    ("j_normal_quantiles.csv z", 16),
    ("k_rounding_units.json limit_after_rounding", 10),
    ("k_rounding_units.json round", 22),
    ("k_rounding_units.json round_sig", 8),
    ("printed_tables.csv d_constants.csv", 1),
    ("printed_tables.csv e_f1_f2.csv", 14),
];

#[test]
fn our_figures_are_those_of_the_checks() {
    let tally = run(Path::new(concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/tests/checks"
    )));
    assert!(tally.faults.is_empty(), "{:#?}", tally.faults);
    let compared: Vec<(&str, usize)> = tally
        .compared
        .iter()
        .map(|(of, figures)| (of.as_str(), *figures))
        .collect();
    assert_eq!(compared, COMPARED, "a figure has come or gone");
}

#[test]
fn our_figures_are_those_of_the_folder_in_galleyproof_checks() {
    let Some(folder) = std::env::var_os("GALLEYPROOF_CHECKS") else {
        println!("GALLEYPROOF_CHECKS names no folder");
        return;
    };
    let tally = run(Path::new(&folder));
    assert!(tally.faults.is_empty(), "{:#?}", tally.faults);
    assert!(!tally.compared.is_empty(), "nothing there is of our forms");
}
