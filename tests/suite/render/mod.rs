//! Documents, typeset from judged products made by hand.

/// Products with every state and with content that is hard to set.
pub mod products;

mod batch;
mod close_call;

/// Sheets in German and Spanish, and what is true of them in every language.
mod languages;

mod letters;

pub mod overflow;

mod pictures;

/// Days, pictures, a sum, large print.
mod reading;

mod sheets;

mod structure;

/// The results table of a revised sheet.
mod tables;

mod templates;

mod words;

use crate::sample;
use galleyproof::config::Config;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::render::facts::{carried, sheet};
use galleyproof::render::{Engine, Job, documents};
use std::path::Path;

/// The templates and fonts of a programme.
fn engine(config: &Config) -> Engine {
    Engine::new(config).expect("templates and fonts load")
}

/// The job of a product's sheet, as a proof.
fn sheet_job(product: &JudgedProduct, config: &Config) -> Job {
    let product = sample::with_sheet(product, config);
    let facts = sheet::facts(&product, config, None);
    carried::job(&product, &facts, config).expect("a sheet whose lab files are there has a job")
}

/// Typesets a job that has no mistake in it.
fn typeset(engine: &Engine, config: &Config, job: &Job) -> Vec<u8> {
    let pdf =
        documents::pdf(engine, job).unwrap_or_else(|faults| panic!("{}: {faults:#?}", job.path));
    keep(config.programme.paper.word(), &job.path, &pdf);
    pdf
}

/// Keeps a document to be looked at, where GALLEYPROOF_KEEP names a folder.
fn keep(paper: &str, path: &str, pdf: &[u8]) {
    if let Some(folder) = std::env::var_os("GALLEYPROOF_KEEP") {
        let path = Path::new(&folder).join(paper).join(path);
        galleyproof::files::write(&path, pdf).expect("the folder can be written to");
    }
}
