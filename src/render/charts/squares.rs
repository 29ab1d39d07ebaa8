//! All products at once: a square each in the ink of its verdict, or one bar where there are too many to count.

use crate::render::charts::Chart;
use crate::render::charts::scale::VALUE;
use crate::render::charts::style::{
    Align, At, Canvas, FILL, INK, PAPER, Pen, WIDTH, at, draw, text_width,
};
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::words::{say, side};
use anyhow::Result;

/// More products than this are drawn as one bar.
pub const SQUARES_AT_MOST: u64 = 384;

/// What a square, or a part of a bar, stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Over the limit.
    Over,
    /// No verdict.
    NoVerdict,
    /// Within the limit, gluten measured.
    Measured,
    /// Within the limit, too little to measure.
    Below,
}

/// Every product once; none where there is no product.
pub fn squares(tally: &Tally, terms: &Terms) -> Result<Option<Chart>> {
    if tally.products() == 0 {
        return Ok(None);
    }
    let units = [
        (Unit::Over, tally.over),
        (Unit::NoVerdict, tally.none),
        (Unit::Measured, tally.within_measured),
        (Unit::Below, tally.within_below),
    ];
    let bar = tally.products() > SQUARES_AT_MOST;
    let columns = if tally.products() <= 96 { 24 } else { 48 };
    let step = (WIDTH + 4.4 * 24.0 / columns as f64) / columns as f64;
    let rows = tally.products().div_ceil(columns);
    let height = if bar { 26.0 } else { step * rows as f64 };
    let svg = draw(WIDTH, height, |canvas| {
        if bar {
            let bar = (at(0.0, 0.0), at(WIDTH, height));
            stacked(canvas, &units, tally.products(), bar);
            return;
        }
        for (number, unit) in each(units).enumerate() {
            let (column, row) = (number as u64 % columns, number as u64 / columns);
            let corner = at(step * column as f64, step * row as f64);
            square(canvas, corner, step * 0.785, unit);
        }
    })?;
    let alt = terms.words.say(&say::chart_squares(
        tally.products(),
        tally.over.to_string(),
        tally.none.to_string(),
        tally.within_measured.to_string(),
        tally.within_below.to_string(),
        side(terms.rule),
    ));
    Ok(Some(Chart::new("all-products", svg, alt, height)))
}

/// A unit for each that is counted, in their order.
pub fn each(units: [(Unit, u64); 4]) -> impl Iterator<Item = Unit> {
    let repeated = |(unit, n)| (0..n).map(move |_| unit);
    units.into_iter().flat_map(repeated)
}

/// A bar between two corners, in parts as long as their counts are of `all`, each with its count; gives the right end and the
/// count of those that are too short for it.
pub fn stacked(
    canvas: &mut Canvas<'_>,
    units: &[(Unit, u64)],
    all: u64,
    (from, to): (At, At),
) -> Vec<(f64, String)> {
    let (mut left, mut outside) = (from.x, Vec::new());
    for (unit, n) in units.iter().filter(|(_, n)| *n > 0) {
        let right = left + (to.x - from.x) * *n as f64 / all as f64;
        part_of_bar(canvas, at(left, from.y), at(right, to.y), *unit);
        let word = n.to_string();
        if text_width(&word, VALUE) + 7.0 <= right - left {
            let ink = if *unit == Unit::Over { PAPER } else { INK };
            let place = at(left + 4.0, (from.y + to.y) / 2.0 + 3.0);
            canvas.text(&word, place, Align::Start, VALUE.inked(ink));
        } else {
            outside.push((right, word));
        }
        left = right;
    }
    outside
}

/// A square with this upper left corner.
pub fn square(canvas: &mut Canvas<'_>, corner: At, size: f64, unit: Unit) {
    let line = (size / 11.0).clamp(0.7, 1.1);
    let inner = |from: f64| corner.by(from, from);
    let (from, to) = (inner(line / 2.0), inner(size - line / 2.0));
    match unit {
        Unit::Over => canvas.fill(corner, inner(size), INK),
        Unit::NoVerdict => canvas.frame(from, to, Pen::dashed(line, INK, size / 5.0, size / 7.0)),
        Unit::Below => canvas.frame(from, to, Pen::solid(line, INK)),
        Unit::Measured => {
            canvas.frame(from, to, Pen::solid(line, INK));
            let dot = inner(size / 2.0);
            canvas.circle(dot, size / 7.5, Some(INK), Pen::solid(0.2, INK));
        }
    }
}

/// A part of a stacked bar; its stroke lies inside, so that widths stay true.
pub fn part_of_bar(canvas: &mut Canvas<'_>, from: At, to: At, unit: Unit) {
    let inner_from = from.by(0.45, 0.45);
    let inner_to = at((to.x - 0.45).max(from.x + 0.55), to.y - 0.45);
    match unit {
        Unit::Over => canvas.fill(from, to, INK),
        Unit::NoVerdict => canvas.frame(inner_from, inner_to, Pen::dashed(0.9, INK, 2.4, 1.8)),
        Unit::Below => canvas.frame(inner_from, inner_to, Pen::solid(0.9, INK)),
        Unit::Measured => {
            canvas.fill(from, to, FILL);
            canvas.frame(inner_from, inner_to, Pen::solid(0.9, INK));
        }
    }
}
