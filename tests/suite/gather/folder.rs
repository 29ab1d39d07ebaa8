//! A programme folder in a temporary place, and what gathering it gives.

use galleyproof::config::Config;
use galleyproof::gather::{Gathered, gather};
use galleyproof::model::extraction::{Extraction, Outcome};
use galleyproof::model::problem::Problems;
use galleyproof::words::english;
use std::path::Path;

/// A programme folder that goes away with the test.
pub struct Folder {
    root: tempfile::TempDir,
    settings: String,
}

impl Folder {
    /// With one product and the packages TKW-101 to TKW-106.
    pub fn new() -> Folder {
        let folder = Folder {
            root: tempfile::tempdir().expect("makes a folder"),
            settings: "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n"
                .to_owned(),
        };
        std::fs::create_dir_all(folder.path("inbox")).expect("makes the inbox");
        let codes: String = (101..=106).map(|n| format!("TKW-{n},oat-bar\n")).collect();
        folder
            .with(
                "registers/products.csv",
                b"product_id,name,claim\noat-bar,Oat bar,gluten-free\n",
            )
            .with(
                "registers/packages.csv",
                format!("package_code,product_id\n{codes}").as_bytes(),
            )
    }

    /// With a file in it.
    pub fn with(self, name: &str, bytes: &[u8]) -> Folder {
        let path = self.path(name);
        std::fs::create_dir_all(path.parent().expect("has a folder")).expect("makes a folder");
        std::fs::write(path, bytes).expect("writes");
        self
    }

    /// With more settings.
    pub fn settings(mut self, more: &str) -> Folder {
        self.settings.push_str(more);
        self
    }

    /// A path in it.
    pub fn path(&self, name: &str) -> std::path::PathBuf {
        self.root.path().join(name)
    }

    /// Gathers it.
    pub fn gather(&self) -> Read {
        let config =
            Config::parse(&self.settings, self.root.path()).expect("the settings are right");
        let mut problems = Problems::default();
        let gathered = gather(&config, &mut problems, &|_, _| {}).expect("can be gathered");
        Read { gathered, problems }
    }

    /// Gathers it, or says why it cannot be.
    pub fn try_gather(&self) -> Result<Read, String> {
        let config =
            Config::parse(&self.settings, self.root.path()).expect("the settings are right");
        let mut problems = Problems::default();
        gather(&config, &mut problems, &|_, _| {})
            .map(|gathered| Read { gathered, problems })
            .map_err(|error| format!("{error:#}"))
    }

    /// Why it cannot be gathered.
    pub fn refused(&self) -> String {
        let config =
            Config::parse(&self.settings, self.root.path()).expect("the settings are right");
        let error =
            gather(&config, &mut Problems::default(), &|_, _| {}).expect_err("cannot be gathered");
        format!("{error:#}")
    }
}

/// What gathering gave.
pub struct Read {
    /// All that was read.
    pub gathered: Gathered,
    /// What is wrong.
    pub problems: Problems,
}

impl Read {
    /// Each extraction as `TKW-101 1 12.4`, in order of code and number.
    pub fn readings(&self) -> Vec<String> {
        let mut lines: Vec<String> = self.gathered.extractions.iter().map(line).collect();
        lines.sort();
        lines
    }

    /// What was found, of the problem at this place in the list.
    pub fn told(&self, at: usize) -> String {
        english().found(self.problems.sorted()[at])
    }

    /// Each problem as `bad_value inbox/a.csv C7`, sorted by place.
    pub fn problems(&self) -> Vec<String> {
        self.problems
            .sorted()
            .into_iter()
            .map(|problem| {
                let cell = problem.place.cell().unwrap_or_default();
                let name = Path::new(&problem.place.file).to_string_lossy();
                format!("{} {name} {cell}", problem.code.word())
                    .trim_end()
                    .to_owned()
            })
            .collect()
    }
}

fn line(extraction: &Extraction) -> String {
    let value = match extraction.outcome {
        Outcome::NotReported => "not reported".to_owned(),
        Outcome::Unreadable => "unreadable".to_owned(),
        Outcome::Reading(interval) => {
            if let Some(number) = interval.as_number() {
                number.0.to_string()
            } else if let Some(n) = interval.as_above() {
                format!(">{}", n.0)
            } else if let Some(n) = interval.as_below() {
                format!("<{}", n.0)
            } else {
                format!(
                    "{}..{}",
                    interval.lower.0,
                    interval.upper.map_or(f64::INFINITY, |upper| upper.0)
                )
            }
        }
    };
    format!("{} {} {value}", extraction.package_code, extraction.number)
}
