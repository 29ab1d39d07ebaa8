//! Results sheets: every state, every regime, and content that is hard to set.

use crate::render::{engine, products, sheet_job, typeset};
use crate::sample;
use galleyproof::model::rule::Regime;

#[test]
fn every_sheet_is_made() {
    let folder = tempfile::tempdir().expect("a folder");
    for paper in ["a4", "us-letter"] {
        let config = sample::config(folder.path(), paper, "");
        let engine = engine(&config);
        for product in products::all(&config) {
            typeset(&engine, &config, &sheet_job(&product, &config));
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
        typeset(&engine, &config, &sheet_job(&product, &config));
    }
}
