//! The summary's first pages: the cover, and everything by band.

use crate::config::Config;
use crate::model::decided::Decided;
use crate::render::charts::bands::bands;
use crate::render::charts::key::key;
use crate::render::charts::squares::squares;
use crate::render::facts::summary::{Charts, Figure};
use crate::render::tally::{self, BandRow, Tally};
use crate::render::terms::Terms;
use crate::render::words::{counted, sentence_case, summary as words};
use anyhow::Result;
use serde::Serialize;

/// Page one.
#[derive(Clone, Debug, Serialize)]
pub struct Cover {
    /// The title.
    pub title: String,
    /// What this is, and of which time.
    pub subtitle: String,
    /// The three verdicts.
    pub blocks: Vec<Block>,
    /// A square for each product.
    pub squares: Option<Figure>,
    /// What the squares mean, and how products are counted.
    pub squares_note: String,
    /// What the labels come to, whatever the tests found.
    pub labels: Option<String>,
    /// How it was done, in a few words.
    pub how: String,
}

/// One of the three verdicts on the cover.
#[derive(Clone, Debug, Serialize)]
pub struct Block {
    /// "over", "within" or "none".
    pub state: &'static str,
    /// "Below 20 ppm".
    pub words: String,
    /// "83 of 96 products".
    pub count: String,
    /// "83 products".
    pub head: String,
    /// What that means.
    pub text: String,
}

/// Everything by band.
#[derive(Clone, Debug, Serialize)]
pub struct Bands {
    /// The lede.
    pub lede: String,
    /// Heads of the columns.
    pub heads: Vec<String>,
    /// The counts.
    pub rows: Vec<BandRow>,
    /// The bars.
    pub chart: Figure,
    /// The inks of the bars.
    pub note: String,
    /// What the numbers say.
    pub says: String,
    /// What they do not say.
    pub does_not_say: String,
    /// The marks of the plots.
    pub key: Figure,
    /// Words and their meanings.
    pub glossary: Vec<[String; 2]>,
}

/// The cover.
pub fn cover(
    decided: &Decided,
    tally: &Tally,
    terms: &Terms,
    config: &Config,
    title: String,
    charts: &mut Charts,
) -> Result<Cover> {
    let block = |state, words: &str, n: u64, text: String| Block {
        state,
        words: words.to_owned(),
        count: format!(
            "{n} of {}",
            counted(tally.products() as usize, "product", "products")
        ),
        head: sentence_case(&words::number_of(n, "product")),
        text,
    };
    let blocks = vec![
        block(
            "within",
            &terms.within,
            tally.within,
            words::within_text(tally, terms),
        ),
        block(
            "over",
            &terms.over,
            tally.over,
            words::over_text(tally, terms),
        ),
        block(
            "none",
            "No verdict",
            tally.none,
            words::none_text(tally, terms),
        ),
    ];
    Ok(Cover {
        title,
        subtitle: words::subtitle(decided.statistics.days),
        blocks: if tally.products() == 0 {
            Vec::new()
        } else {
            blocks
        },
        squares: squares(tally, terms)?.map(|chart| charts.add(chart)),
        squares_note: [
            Some(words::squares_note(tally, terms)),
            words::rounds_note(tally.foods, tally.products()),
            words::with_lab(decided.with_lab),
        ]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(" "),
        labels: words::labels_against_rule(tally.against_rule),
        how: format!(
            "{} packages of each product, bought in shops. {} extractions of each package, measured on their own. Every figure can be followed back to the lab’s file.",
            sentence_case(&words::number(config.testing.packages_per_product as u64)),
            sentence_case(&words::number(
                config.testing.extractions_per_package as u64
            )),
        ),
    })
}

/// The table of bands with its bars, and the words and marks that the summary uses.
pub fn bands_page(
    decided: &Decided,
    tally: &Tally,
    terms: &Terms,
    config: &Config,
    charts: &mut Charts,
) -> Result<Bands> {
    let rows = tally::bands(decided, tally);
    let over = terms.over.to_lowercase();
    Ok(Bands {
        lede: words::bands_lede(tally, terms),
        heads: vec![
            terms.below.clone(),
            terms.measured.clone(),
            over.clone(),
            "undecided".to_owned(),
            "in all".to_owned(),
        ],
        chart: charts.add(bands(&rows, terms)?),
        rows: rows.to_vec(),
        note: format!(
            "White: {}. Grey: {}. Black: {over}. Dashed: no result, or one that does not decide. A product counts once for each round of testing: by its highest package, or as undecided where it has no verdict.",
            terms.below, terms.measured
        ),
        says: words::says(
            tally,
            decided.statistics.over_limit.as_ref(),
            decided.statistics.superseded_rounds,
            terms,
        ),
        does_not_say: words::does_not_say(config.testing.packages_per_product, terms),
        key: charts.add(key(terms)?),
        glossary: glossary(terms),
    })
}

fn glossary(terms: &Terms) -> Vec<[String; 2]> {
    let unit_meaning = if terms.unit == "ppm" {
        "Parts per million: milligrams of gluten in a kilogram of food."
    } else {
        "Milligrams of gluten in a kilogram of food, the same as parts per million (ppm)."
    };
    [
        (terms.unit.to_owned(), unit_meaning.to_owned()),
        (sentence_case(&terms.below), "Too little to put a number on. It does not mean zero.".to_owned()),
        ("Extraction".to_owned(), "One portion of a package, ground, extracted and measured on its own.".to_owned()),
        (terms.over.clone(), format!("The verdict for a product when at least one package tests {}.", terms.over_the_limit)),
        (terms.within.clone(), format!("The verdict for a product when every package tests {}.", terms.within_the_limit)),
        (
            "No verdict".to_owned(),
            format!(
                "The results do not show {}: one has no sound result or lies too near, packages are missing, or no test decides for this food.",
                terms.unshown("every package")
            ),
        ),
    ]
    .map(|(word, meaning)| [word, meaning])
    .to_vec()
}
