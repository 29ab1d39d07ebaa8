//! The marks of the plots, explained once.

use crate::render::charts::Chart;
use crate::render::charts::scale::{NOTE, ROW};
use crate::render::charts::style::{ACCENT, Align, Canvas, INK, Pen, Points, WIDTH, at, draw};
use crate::render::terms::Terms;
use crate::words::say;
use anyhow::Result;

const PITCH: f64 = 30.0;

/// Six marks with their meaning, in two rows.
pub fn key(terms: &Terms) -> Result<Chart> {
    let height = 2.0 * PITCH;
    let words = &terms.words;
    let means_line = say::ruler_mark_line_means(&terms.the_line, &terms.limit);
    let entries = [
        (say::ruler_mark_open_arrow(), terms.below.clone()),
        (say::ruler_mark_open_circle(), terms.measured.clone()),
        (say::ruler_mark_filled_circle(), terms.over_in_text.clone()),
        (
            say::ruler_mark_arrow(),
            words.say(&say::ruler_mark_arrow_means()),
        ),
        (
            say::ruler_mark_dashed(),
            words.say(&say::ruler_mark_dashed_means()),
        ),
        (say::ruler_mark_line(), words.say(&means_line)),
    ]
    .map(|(name, meaning)| (words.say(&name), meaning));
    let svg = draw(WIDTH, height, |canvas| {
        for (number, (name, meaning)) in entries.iter().enumerate() {
            let left = WIDTH / 3.0 * (number % 3) as f64;
            let middle = PITCH * ((number / 3) as f64 + 0.5) - 2.0;
            mark(canvas, number, left + 8.0, middle)?;
            canvas.text(name, at(left + 24.0, middle - 1.0), Align::Start, ROW)?;
            canvas.text(meaning, at(left + 24.0, middle + 9.0), Align::Start, NOTE)?;
        }
        Ok(())
    })?;
    let told: Vec<String> = entries
        .iter()
        .map(|(name, meaning)| words.say(&say::ruler_mark_alt(name, meaning)))
        .collect();
    let alt = words.say(&say::ruler_marks_alt(told.join(" ")));
    Ok(Chart::new("marks", svg, alt, height))
}

fn mark(canvas: &mut Canvas<'_>, number: usize, x: f64, y: f64) -> Result<()> {
    let centre = at(x, y);
    let pen = Pen::solid(1.2, INK);
    match number {
        0 => canvas.arrow(centre, 2.6, Points::Left, false, Pen::solid(0.9, INK)),
        1 => canvas.circle(centre, 3.6, None, pen),
        2 => canvas.circle(centre, 3.6, Some(INK), pen),
        3 => canvas.arrow(centre, 3.9, Points::Left, false, pen),
        4 => canvas.circle(centre, 3.6, None, Pen::dashed(1.1, INK, 2.0, 1.4)),
        _ => canvas.line(&[at(x, y - 9.0), at(x, y + 9.0)], Pen::solid(1.6, ACCENT)),
    }
}
