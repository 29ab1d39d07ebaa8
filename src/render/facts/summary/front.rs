//! The summary's first pages: the cover, and everything by band.

use crate::config::Config;
use crate::model::decided::Decided;
use crate::render::charts::bands::bands;
use crate::render::charts::key::key;
use crate::render::charts::squares::squares;
use crate::render::facts::summary::{Charts, Figure};
use crate::render::tally::{self, BandRow, Tally};
use crate::render::terms::Terms;
use crate::render::words::summary as texts;
use crate::words::{Said, say};
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
    Ok(Cover {
        title,
        subtitle: texts::subtitle(decided.statistics.days, &config.words),
        blocks: blocks(tally, terms),
        squares: squares(tally, terms)?.map(|chart| charts.add(chart)),
        squares_note: texts::squares_note(tally, decided.with_lab, terms),
        labels: texts::labels_against_rule(tally.against_rule, &config.words),
        how: texts::how(&config.testing, &config.words),
    })
}

/// The three verdicts; none where there is no product.
fn blocks(tally: &Tally, terms: &Terms) -> Vec<Block> {
    if tally.products() == 0 {
        return Vec::new();
    }
    let said = |said: Said| terms.words.say(&said);
    let block = |state, words: String, n: u64, text: String| Block {
        state,
        words,
        count: said(say::summary_count(n.to_string(), tally.products())),
        head: said(say::summary_head(n)),
        text,
    };
    let [within, over, none] = [
        texts::within_text(tally, terms),
        texts::over_text(tally, terms),
        texts::none_text(tally, terms),
    ];
    let no_verdict = said(say::summary_no_verdict());
    vec![
        block("within", terms.within.clone(), tally.within, within),
        block("over", terms.over.clone(), tally.over, over),
        block("none", no_verdict, tally.none, none),
    ]
}

/// The table of bands with its bars, and the words and marks that the summary uses.
pub fn bands_page(
    decided: &Decided,
    tally: &Tally,
    terms: &Terms,
    config: &Config,
    charts: &mut Charts,
) -> Result<Bands> {
    let rows = tally::bands(decided, tally, &config.words);
    let said = |said: Said| config.words.say(&said);
    Ok(Bands {
        lede: texts::bands_lede(tally, terms),
        heads: vec![
            terms.below.clone(),
            terms.measured.clone(),
            terms.over_in_text.clone(),
            said(say::chart_undecided()),
            said(say::summary_bands_all()),
        ],
        chart: charts.add(bands(&rows, terms)?),
        rows: rows.to_vec(),
        note: said(say::summary_bands_note(
            &terms.below,
            &terms.measured,
            &terms.over_in_text,
        )),
        says: texts::says(
            tally,
            decided.statistics.over_limit.as_ref(),
            decided.statistics.superseded_rounds,
            terms,
        ),
        does_not_say: texts::does_not_say(config.testing.packages_per_product, terms),
        key: charts.add(key(terms)?),
        glossary: texts::glossary(terms),
    })
}
