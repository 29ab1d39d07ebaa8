//! Bars for a page or a mail, which has no drawing: shares of a whole in cells, each count with its words beside its ink.

use crate::render::tally::BandRow;
use crate::render::terms::Terms;
use crate::words::{say, side};
use serde::Serialize;

/// One bar.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bar {
    /// What is counted.
    pub name: String,
    /// How many there are in all.
    pub all: String,
    /// Its parts from left to right, those without anything left out.
    pub parts: Vec<Part>,
}

/// A part of a bar.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Part {
    /// "below", "measured", "over" or "undecided": its ink.
    pub band: &'static str,
    /// Its share of the bar in percent, to a tenth.
    pub percent: String,
    /// "54 below 5 ppm".
    pub said: String,
}

/// What the ink of a figure means.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct KeyEntry {
    /// "over", "within" or "none": its ink.
    pub state: &'static str,
    /// "at or above the limit".
    pub meaning: String,
}

/// Bars of these rows; a row without anything has none.
pub fn bars(rows: &[BandRow], terms: &Terms) -> Vec<Bar> {
    let counted = rows.iter().filter(|row| row.counts.all() > 0);
    counted.map(|row| bar(row, terms)).collect()
}

fn bar(row: &BandRow, terms: &Terms) -> Bar {
    let (words, counts) = (&terms.words, &row.counts);
    let parts = [
        ("below", counts.below, terms.below.as_str()),
        ("measured", counts.measured, terms.measured.as_str()),
        ("over", counts.over, terms.over_in_text.as_str()),
        ("undecided", counts.undecided, ""),
    ];
    let parts = parts.into_iter().filter(|(_, count, _)| *count > 0);
    let part = |(band, count, of_band): (&'static str, u64, &str)| Part {
        band,
        percent: format!("{:.1}", 100.0 * count as f64 / counts.all() as f64),
        said: words.say(&say::newsletter_bar(band, count.to_string(), of_band)),
    };
    Bar {
        name: row.name.clone(),
        all: words.say(&say::chart_bands_all(counts.all())),
        parts: parts.map(part).collect(),
    }
}

/// The inks of packages' figures, and what each means.
pub fn figures_key(terms: &Terms) -> Vec<KeyEntry> {
    let words = &terms.words;
    let entry = |state: &'static str| KeyEntry {
        state,
        meaning: words.say(&say::newsletter_figure(state, side(terms.rule))),
    };
    ["over", "within", "none"].map(entry).into()
}
