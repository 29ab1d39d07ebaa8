//! Extractions, packages and products by band: one bar each, in the inks of the verdicts.

use crate::render::charts::Chart;
use crate::render::charts::scale::{NOTE, ROW, VALUE};
use crate::render::charts::style::{
    Align, Canvas, FILL, INK, PAPER, Pen, Type, WIDTH, at, draw, text_width,
};
use crate::render::tally::{BandCounts, BandRow};
use crate::render::terms::Terms;
use crate::words::say;
use anyhow::Result;

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
            canvas.text(&row.name, at(0.0, top + 11.0), Align::Start, ROW)?;
            canvas.text(
                &terms.words.say(&say::chart_bands_all(row.counts.all())),
                at(0.0, top + 20.5),
                Align::Start,
                NOTE,
            )?;
            bar(canvas, &row.counts, top)?;
        }
        Ok(())
    })?;
    Ok(Chart::new("bands", svg, alt(rows, terms), height))
}

fn bar(canvas: &mut Canvas<'_>, row: &BandCounts, top: f64) -> Result<()> {
    let whole = WIDTH - LEFT;
    let mut left = LEFT;
    let mut labelled_until = WIDTH + 8.0;
    let mut outside = Vec::new();
    for (share, look) in shares(row) {
        if share == 0 {
            continue;
        }
        let width = whole * share as f64 / row.all() as f64;
        let (from, to) = (at(left, top), at(left + width, top + BAR));
        let word = share.to_string();
        segment(canvas, from, to, look)?;
        if text_width(&word, VALUE) + 10.0 <= width {
            let ink = if look == Band::Over { PAPER } else { INK };
            canvas.text(
                &word,
                at(left + 5.0, top + 13.5),
                Align::Start,
                Type { ink, ..VALUE },
            )?;
        } else {
            outside.push((left + width, word));
        }
        left += width;
    }
    // A segment narrower than its count has it above, from the right, so that none stands on another.
    for (right, word) in outside.into_iter().rev() {
        let end = right.min(labelled_until - 8.0);
        canvas.text(&word, at(end, top - 3.0), Align::End, VALUE)?;
        labelled_until = end - text_width(&word, VALUE);
    }
    Ok(())
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Band {
    Below,
    Measured,
    Over,
    Undecided,
}

fn shares(row: &BandCounts) -> [(u64, Band); 4] {
    [
        (row.below, Band::Below),
        (row.measured, Band::Measured),
        (row.over, Band::Over),
        (row.undecided, Band::Undecided),
    ]
}

fn segment(
    canvas: &mut Canvas<'_>,
    from: crate::render::charts::style::At,
    to: crate::render::charts::style::At,
    look: Band,
) -> Result<()> {
    // A stroke lies inside its segment: widths stay true.
    let (inner_from, inner_to) = (
        at(from.x + 0.5, from.y + 0.5),
        at((to.x - 0.5).max(from.x + 0.6), to.y - 0.5),
    );
    match look {
        Band::Below => canvas.frame(inner_from, inner_to, Pen::solid(1.0, INK)),
        Band::Measured => {
            canvas.fill(from, to, FILL)?;
            canvas.frame(inner_from, inner_to, Pen::solid(1.0, INK))
        }
        Band::Over => canvas.fill(from, to, INK),
        Band::Undecided => canvas.frame(inner_from, inner_to, Pen::dashed(0.9, INK, 2.4, 1.8)),
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
    let sentences: Vec<String> = std::iter::once(say::chart_bands())
        .chain(told)
        .map(|said| terms.words.say(&said))
        .collect();
    sentences.join(" ")
}
