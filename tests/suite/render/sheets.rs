//! Results sheets: every state, and content that is hard to set.

use crate::sample::{self, Sample};
use galleyproof::config::Config;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::render::facts::edition::Purpose;
use galleyproof::render::facts::sheet;
use galleyproof::render::{Engine, documents};
use std::path::Path;

const PROOF: Purpose = Purpose::Proof { made_on: None };

fn sheets(config: &Config) -> Vec<JudgedProduct> {
    let name = "Stone-Baked Buckwheat, Teff and Toasted Chestnut Sandwich Loaf, Sliced";
    let over = Sample::new(config, "0612", name)
        .package("A", &["<5", "<5"])
        .package("B", &["<5", "6.2"])
        .package("C", &["31.5", "28.2"])
        .done();
    vec![over]
}

#[test]
fn every_sheet_is_made() {
    let folder = tempfile::tempdir().expect("a folder");
    for paper in ["a4", "us-letter"] {
        let config = sample::config(folder.path(), paper, "");
        let engine = Engine::new(&config).expect("templates and fonts load");
        for product in sheets(&config) {
            let facts = sheet::facts(&product, &config, &PROOF);
            let job = sheet::job(&product, &facts, &config).expect("a job");
            let pdf = documents::pdf(&engine, &job).unwrap_or_else(|faults| panic!("{faults:#?}"));
            keep(paper, &job.path, &pdf);
        }
    }
}

/// Keeps a document to be looked at, where GALLEYPROOF_KEEP names a folder.
fn keep(paper: &str, path: &str, pdf: &[u8]) {
    if let Some(folder) = std::env::var_os("GALLEYPROOF_KEEP") {
        let path = Path::new(&folder).join(paper).join(path);
        galleyproof::files::write(&path, pdf).expect("the folder can be written to");
    }
}
