//! The titles, heads and notes of the summary that name a limit, a unit or a day: what the template prints beside the words
//! that are the same in every summary.

use crate::config::Config;
use crate::model::decided::Decided;
use crate::model::sheet::ProgrammeFacts;
use crate::render::terms::Terms;
use crate::words::{Said, say, side};
use chrono::NaiveDate;
use serde::Serialize;

/// Published sheets under revision that the cover names; the others are counted.
const NAMED_AT_MOST: usize = 6;

/// Titles, heads and notes.
#[derive(Clone, Debug, Serialize)]
pub struct Captions {
    /// Where mistakes are reported, at the foot of each page; the programme's name where that is not known.
    pub foot: String,
    /// The day of making, where the run was given one.
    pub made_on: Option<String>,
    /// How many published sheets under revision are not named.
    pub more_revised: Option<String>,
    /// Below the shares.
    pub shares: String,
    /// Head of the column of means.
    pub mean: String,
    /// Below the plot of differences.
    pub agreement: String,
    /// Title of the chapter on products over the limit.
    pub over: String,
    /// What stands there where there is none.
    pub none_over: String,
    /// Head of the column of package results.
    pub results: String,
    /// Head of the column of labels with a finding whose product is over the limit.
    pub labels_over: String,
    /// How to read the register.
    pub register: String,
}

impl Captions {
    /// Of this summary.
    pub fn new(
        decided: &Decided,
        config: &Config,
        terms: &Terms,
        made_on: Option<NaiveDate>,
    ) -> Captions {
        let words = &config.words;
        let rule = side(terms.rule);
        let said = |said: Said| words.say(&said);
        let chart = decided.statistics.range_chart.as_ref();
        let pairs = chart.map_or(0, |chart| chart.points.len());
        let more = decided.under_revision.len().saturating_sub(NAMED_AT_MOST);
        let shown = if terms.mixed { "claims" } else { "limit" };
        Captions {
            foot: ProgrammeFacts::new(&config.programme)
                .corrections
                .map_or(config.programme.name.clone(), |address| {
                    said(say::summary_mistakes(address))
                }),
            made_on: made_on.map(|day| said(say::summary_made_on(words.day(day)))),
            more_revised: (more > 0).then(|| said(say::summary_revised_more(more.to_string()))),
            shares: said(say::summary_shares_note(rule)),
            mean: said(say::summary_means_mean(terms.unit)),
            agreement: said(say::summary_agreement_note(pairs as u64)),
            over: said(say::summary_over_title(rule)),
            none_over: said(say::summary_over_empty(rule)),
            results: said(say::summary_list_results(terms.unit)),
            labels_over: said(say::summary_labels_over(rule, shown, &terms.limit)),
            register: said(say::summary_register_lede(&terms.over_in_text)),
        }
    }
}
