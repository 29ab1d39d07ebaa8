//! Extractions, packages and products by band: one bar each, in the inks of the verdicts.

use crate::render::charts::Chart;
use crate::render::charts::scale::{NOTE, ROW, VALUE};
use crate::render::charts::squares::{Unit, stacked};
use crate::render::charts::style::{Align, Canvas, WIDTH, at, draw, text_width};
use crate::render::tally::{BandCounts, BandRow};
use crate::render::terms::Terms;
use crate::words::say;
use anyhow::Result;
use std::iter::once;

const LEFT: f64 = 72.0;
const PITCH: f64 = 33.0;
const BAR: f64 = 20.0;
const TOP: f64 = 13.0;

/// The bars, one under another; a row without anything has no bar.
pub fn bands(rows: &[BandRow], terms: &Terms) -> Result<Chart> {
    let height = TOP + PITCH * rows.len() as f64 - 4.0;
    let svg = draw(WIDTH, height, |canvas| {
        for (number, row) in rows.iter().enumerate() {
            let top = TOP + PITCH * number as f64;
            canvas.text(&row.name, at(0.0, top + 11.0), Align::Start, ROW);
            let all = terms.words.say(&say::chart_bands_all(row.counts.all()));
            canvas.text(&all, at(0.0, top + 20.5), Align::Start, NOTE);
            bar(canvas, &row.counts, top);
        }
    })?;
    Ok(Chart::new("bands", svg, alt(rows, terms), height))
}

fn bar(canvas: &mut Canvas<'_>, row: &BandCounts, top: f64) {
    let units = [
        (Unit::Below, row.below),
        (Unit::Measured, row.measured),
        (Unit::Over, row.over),
        (Unit::NoVerdict, row.undecided),
    ];
    let bar = (at(LEFT, top), at(WIDTH, top + BAR));
    let outside = stacked(canvas, &units, row.all(), bar);
    // A part narrower than its count has it above, from the right, so that none stands on another.
    let mut labelled_until = WIDTH + 8.0;
    for (right, word) in outside.into_iter().rev() {
        let end = right.min(labelled_until - 8.0);
        canvas.text(&word, at(end, top - 3.0), Align::End, VALUE);
        labelled_until = end - text_width(&word, VALUE);
    }
}

fn alt(rows: &[BandRow], terms: &Terms) -> String {
    let told = rows.iter().map(|row| {
        let counts = &row.counts;
        say::chart_bands_row(
            row.kind,
            counts.all(),
            counts.below.to_string(),
            &terms.below,
            counts.measured.to_string(),
            &terms.measured,
            counts.over.to_string(),
            &terms.over_in_text,
            counts.undecided.to_string(),
        )
    });
    terms.words.text(once(say::chart_bands()).chain(told))
}
