//! The reading stage and what it stands on, by path; and one lab file read as the program would.

#[path = "../../../src/model/mod.rs"]
pub mod model;

#[path = "../../../src/config/mod.rs"]
pub mod config;

#[path = "../../../src/files.rs"]
pub mod files;

#[path = "../../../src/guard.rs"]
pub mod guard;

#[path = "../../../src/gather/mod.rs"]
pub mod gather;

#[path = "../../../src/words/mod.rs"]
pub mod words;

use std::sync::{Arc, LazyLock};

static CONFIG: LazyLock<config::Config> = LazyLock::new(|| {
    let settings = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n\
        [[layout]]\nfiles = \"*\"\ncolumns = { sample = \"Pot\", result = \"Quux\" }\n";
    config::Config::parse(settings, std::path::Path::new(".")).expect("the settings are right")
});

/// Reads a lab file's bytes. Whatever they are, it must end, and every reading must be of a registered package.
pub fn read_lab_file(bytes: &[u8]) {
    let Ok(book) = gather::books::read(bytes, &gather::tables::headings::likeness_of) else {
        return;
    };
    let file = Arc::new(model::place::LabFile {
        path: "inbox/a".to_owned(),
        sha256: String::new(),
        ..model::place::LabFile::default()
    });
    let codes = gather::codes::Codes::new(["TKW-101", "TKW-102", "0077"].into_iter());
    let mut taken = gather::lab_file::Taken::default();
    gather::lab_file::understand(
        &file,
        &book,
        &codes,
        (&CONFIG, &gather::record::Reports::default()),
        &mut taken,
    );
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
