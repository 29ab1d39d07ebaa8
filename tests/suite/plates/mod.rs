//! Plates: read from what labs send, fitted again, held against what was reported, and printed.

/// What is read of a file.
mod reading;

/// What comes of it.
mod measured;

/// What must hold of any plate.
mod properties;

/// The page of a plate.
mod pages;

use crate::workspace::Workspace;
use serde_json::Value;

/// Concentrations of the standards.
pub const STANDARDS: [f64; 6] = [0.0, 5.0, 10.0, 20.0, 40.0, 80.0];

/// The absorbance of a concentration on a curve of four parameters.
pub fn seen(x: f64) -> f64 {
    if x <= 0.0 {
        return 0.05;
    }
    3.0 + (0.05 - 3.0) / (1.0 + (x / 45.0).powf(1.2))
}

/// A row a well, as most readers export it: two wells of everything.
pub struct Long {
    rows: Vec<String>,
    wells: usize,
}

impl Long {
    /// Six standards and a blank, on the curve.
    pub fn new() -> Long {
        Long::with_standards(&STANDARDS.map(|x| (x, seen(x))))
    }

    /// Standards with their absorbances, and a blank.
    pub fn with_standards(standards: &[(f64, f64)]) -> Long {
        let heading = "Well,Type,Sample,Concentration,Extraction,Dilution,Absorbance";
        let mut long = Long {
            rows: vec![heading.to_owned()],
            wells: 0,
        };
        for (concentration, absorbance) in standards {
            long = long.wells(&format!("Standard,,{concentration},,"), *absorbance);
        }
        long.wells("Blank,,,,", 0.05)
    }

    /// Two wells that hold this, a hundredth below and above an absorbance.
    pub fn wells(mut self, holds: &str, absorbance: f64) -> Long {
        for part in [0.99, 1.01] {
            let well = self.well();
            self.rows
                .push(format!("{well},{holds},{:.4}", absorbance * part));
        }
        self
    }

    /// Two wells of an extraction that holds so many ppm.
    pub fn sample(self, code: &str, extraction: u32, ppm: f64) -> Long {
        self.wells(&format!("Sample,{code},,{extraction},"), seen(ppm))
    }

    /// A row as it is.
    pub fn row(mut self, row: &str) -> Long {
        self.rows.push(row.to_owned());
        self
    }

    /// The name of the next well.
    pub fn well(&mut self) -> String {
        let name = format!(
            "{}{}",
            char::from(b'A' + (self.wells % 8) as u8),
            self.wells / 8 + 1
        );
        self.wells += 1;
        name
    }

    /// The text of the file.
    pub fn text(&self) -> String {
        self.rows.join("\n") + "\n"
    }
}

/// A plate of six samples of three packages: the extractions of each, one pair below the standards and one figure above them.
pub fn six() -> Long {
    Long::new()
        .sample("A1", 1, 12.4)
        .sample("A1", 2, 13.1)
        .sample("A2", 1, 2.0)
        .sample("A2", 2, 2.2)
        .sample("A3", 1, 33.0)
        .sample("A3", 2, 120.0)
}

/// A programme with three packages, what was reported of them, and a plate.
pub fn workspace(plate: &str, reported: &str) -> Workspace {
    let workspace = Workspace::new();
    workspace.with("inbox/plate.csv", plate);
    if !reported.is_empty() {
        let table = format!("Sample,Extraction,Gluten (ppm)\n{reported}");
        workspace.with("inbox/results.csv", table);
    }
    workspace
}

/// The only plate of the results.
pub fn plate(results: &Value) -> &Value {
    let plates = results["plates"].as_array().expect("a list");
    assert_eq!(plates.len(), 1, "{:#}", results["problems"]);
    &plates[0]
}

/// Problems about plates, each as its code and message.
pub fn told(results: &Value) -> Vec<(String, String)> {
    let problems = results["problems"].as_array().expect("a list");
    let text = |problem: &Value, key: &str| problem[key].as_str().unwrap_or_default().to_owned();
    problems
        .iter()
        .map(|problem| (text(problem, "code"), text(problem, "message")))
        .filter(|(code, _)| code.starts_with("plate_"))
        .collect()
}

/// Whether two figures are one, but for a thousandth.
pub fn near(figure: &Value, expected: f64) -> bool {
    let figure = figure.as_f64();
    figure.is_some_and(|figure| (figure - expected).abs() <= 1e-3 * expected.abs())
}
