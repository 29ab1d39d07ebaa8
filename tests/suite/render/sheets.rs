//! Results sheets: every state, every regime, and content that is hard to set.

use crate::render::{engine, products, typeset};
use crate::sample;
use galleyproof::model::rule::Regime;
use galleyproof::render::facts::edition::Purpose;
use galleyproof::render::facts::sheet;

const PROOF: Purpose = Purpose::Proof { made_on: None };

#[test]
fn every_sheet_is_made() {
    let folder = tempfile::tempdir().expect("a folder");
    for paper in ["a4", "us-letter"] {
        let config = sample::config(folder.path(), paper, "");
        let engine = engine(&config);
        for product in products::all(&config) {
            let facts = sheet::facts(&product, &config, &PROOF);
            let job = sheet::job(&product, &facts, &config).expect("a job");
            typeset(&engine, &config, &job);
        }
    }
}

#[test]
fn a_sheet_is_made_under_every_regime() {
    let folder = tempfile::tempdir().expect("a folder");
    for (regime, word) in Regime::ALL {
        let rule = match regime {
            Regime::Custom => "[rule]\nregime = \"custom\"\nlimit_ppm = 2.5\n".to_owned(),
            _ => format!("[rule]\nregime = \"{word}\"\n"),
        };
        let config = sample::config(folder.path(), "a4", &rule);
        let engine = engine(&config);
        let product = products::mixed(&config, &format!("R-{word}"));
        let facts = sheet::facts(&product, &config, &PROOF);
        let job = sheet::job(&product, &facts, &config).expect("a job");
        typeset(&engine, &config, &job);
    }
}
