//! Our statistics against figures from elsewhere: the files of tests/checks, and of the folder named in GALLEYPROOF_CHECKS.

/// Case by case: what ours gives for the input.
mod cases;

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
    /// Figures that were held against each other.
    compared: usize,
    /// What differs, in words.
    faults: Vec<String>,
    /// What nothing of ours computes: kind and reason, with how many.
    skipped: BTreeMap<String, usize>,
}

impl Tally {
    fn compare(&mut self, what: &str, ours: Option<f64>, theirs: Option<f64>, tolerance: f64) {
        self.compared += 1;
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
    println!("{}: {} figures compared", folder.display(), tally.compared);
    for (kind, cases) in &tally.skipped {
        println!("  skipped, {cases} of {kind}");
    }
    tally
}

fn read(file: &Path) -> String {
    fs::read_to_string(file).unwrap_or_else(|error| panic!("{}: {error}", file.display()))
}

#[test]
fn our_figures_are_those_of_the_checks() {
    let tally = run(Path::new(concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/tests/checks"
    )));
    assert!(tally.faults.is_empty(), "{:#?}", tally.faults);
    assert!(tally.compared > 700, "only {} compared", tally.compared);
}

#[test]
fn our_figures_are_those_of_the_folder_in_galleyproof_checks() {
    let Some(folder) = std::env::var_os("GALLEYPROOF_CHECKS") else {
        println!("GALLEYPROOF_CHECKS names no folder");
        return;
    };
    let tally = run(Path::new(&folder));
    assert!(tally.faults.is_empty(), "{:#?}", tally.faults);
}
