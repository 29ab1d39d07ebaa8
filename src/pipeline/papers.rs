//! The documents of a run: which there are, before any is made.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::plate::MeasuredPlate;
use crate::pipeline::{lab_names, plate_names};
use crate::render::facts;
use crate::render::facts::digest::DigestFacts;
use crate::render::facts::query::QueryRow;
use chrono::NaiveDate;

/// One document to be typeset.
pub enum Paper<'a> {
    /// The programme's summary.
    Summary(&'a Decided),
    /// The newsletter's page.
    Digest(&'a DigestFacts),
    /// A results sheet.
    Sheet(&'a JudgedProduct),
    /// The same in large print.
    LargePrint(&'a JudgedProduct),
    /// A letter to a maker.
    Notice(&'a JudgedProduct),
    /// The questions to a lab.
    Query {
        /// Whom to.
        lab: String,
        /// Of its file, which no other lab's has.
        name: String,
        /// What is asked.
        rows: Vec<QueryRow>,
        /// The latest date in the results.
        latest: Option<NaiveDate>,
    },
    /// A plate with its curve.
    Plate {
        /// As it was fitted again.
        measured: &'a MeasuredPlate,
        /// Of its file.
        name: String,
        /// The latest date in the results.
        latest: Option<NaiveDate>,
    },
}

/// The sheets and letters of products.
pub fn products_papers<'a>(products: &[&'a JudgedProduct], large_print: bool) -> Vec<Paper<'a>> {
    let reported = products
        .iter()
        .filter(|judged| judged.publication.is_reported());
    let papers = reported.flat_map(|judged| {
        let is_owed = judged.verdict.notify_maker || judged.publication.correction.is_some();
        let notice = is_owed.then_some(Paper::Notice(judged));
        let large = large_print.then_some(Paper::LargePrint(judged));
        std::iter::once(Paper::Sheet(judged))
            .chain(large)
            .chain(notice)
    });
    papers.collect()
}

/// The plates, each with the name of its file.
pub fn plates(decided: &Decided) -> impl Iterator<Item = Paper<'_>> {
    let latest = decided.statistics.days.map(|(_, last)| last);
    let names = plate_names::file_names(&decided.plates);
    let named = decided.plates.iter().zip(names);
    named.map(move |(measured, name)| Paper::Plate {
        measured,
        name,
        latest,
    })
}

/// The questions that are open, a letter a lab.
pub fn queries(
    decided: &Decided,
    config: &Config,
    as_of: Option<NaiveDate>,
) -> Vec<Paper<'static>> {
    let latest = decided.statistics.days.map(|(_, last)| last);
    let queries = facts::query::open(&decided.products, config, as_of);
    let names = lab_names::file_names(queries.keys().map(String::as_str));
    let names: Vec<String> = names.into_values().collect();
    let named = queries.into_iter().zip(names);
    named
        .map(|((lab, rows), name)| Paper::Query {
            lab,
            name,
            rows,
            latest,
        })
        .collect()
}
