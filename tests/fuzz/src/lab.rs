//! Lab files and tables, read as the program reads them.

use crate::config::Config;
use crate::gather::record::Reports;
use crate::gather::tables::headings::likeness_of;
use crate::gather::{books, codes, lab_file};
use crate::measure::measure;
use crate::model::place::LabFile;
use crate::model::problem::Problems;
use crate::pieces;
use std::path::Path;
use std::sync::{Arc, LazyLock};

const PROGRAMME: &str = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n";

static CONFIG: LazyLock<Config> = LazyLock::new(|| {
    let layout = "[[layout]]\nfiles = \"*\"\ncolumns = { sample = \"Pot\", result = \"Quux\" }\n";
    Config::parse(&format!("{PROGRAMME}{layout}"), Path::new(".")).expect("the settings are right")
});

/// Reads a lab file's bytes. Whatever they are, it must end, and every reading must be of a registered package.
pub fn read(bytes: &[u8]) {
    read_by(bytes, &CONFIG);
}

/// The first piece as layouts of `programme.toml`, the second as a lab file that is read by them.
pub fn read_by_layout(bytes: &[u8]) {
    let pieces = pieces::of(bytes);
    let Ok(layouts) = std::str::from_utf8(pieces[0]) else {
        return;
    };
    let settings = format!("{PROGRAMME}{layouts}");
    if let Ok(config) = Config::parse(&settings, Path::new(".")) {
        read_by(
            pieces.get(1).unwrap_or(&&b"Pot,Quux\nTKW-101,7\n"[..]),
            &config,
        );
    }
}

/// Any text as a whole `programme.toml`: settings, or faults each with its words.
pub fn settings(text: &str) {
    match Config::parse(text, Path::new(".")) {
        Ok(config) => {
            assert!(!config.programme.short_name.is_empty());
            assert!(config.testing.lloq.0.is_finite() && config.testing.uloq.0.is_finite());
            let _ = config.placeholders();
        }
        Err(faults) => assert!(
            !faults.is_empty() && faults.iter().all(|fault| !fault.is_empty()),
            "refused without a word"
        ),
    }
}

fn read_by(bytes: &[u8], config: &Config) {
    let Ok(book) = books::read(bytes, &likeness_of) else {
        return;
    };
    let file = Arc::new(LabFile {
        path: "inbox/a".to_owned(),
        sha256: String::new(),
        ..LabFile::default()
    });
    let codes = codes::Codes::new(["TKW-101", "TKW-102", "0077"].into_iter());
    let mut taken = lab_file::Taken::default();
    lab_file::understand(
        &file,
        &book,
        &codes,
        (config, &Reports::default()),
        &mut taken,
    );
    let reported = (&*taken.extractions, &[][..]);
    let mut problems = Problems::default();
    for plate in measure(taken.plates, reported, config, &mut problems) {
        let samples = plate.plate.samples.iter();
        samples.for_each(|sample| assert!(codes.find(&sample.package_code).is_some()));
    }
    for extraction in taken.extractions {
        assert!(codes.find(&extraction.package_code).is_some());
        if let Some(interval) = extraction.outcome.reading() {
            assert!(interval.lower.0.is_finite() && interval.lower.0 >= 0.0);
            assert!(
                interval
                    .upper
                    .is_none_or(|upper| upper.0.is_finite() && upper.0 >= interval.lower.0)
            );
        }
    }
}
