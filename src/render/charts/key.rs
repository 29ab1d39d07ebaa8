//! The marks of the plots, explained once.

use crate::render::charts::Chart;
use crate::render::charts::scale::{NOTE, ROW};
use crate::render::charts::style::{ACCENT, Align, Canvas, INK, Pen, Points, WIDTH, at, draw};
use crate::render::terms::Terms;
use anyhow::Result;

const PITCH: f64 = 30.0;

/// Six marks with their meaning, in two rows.
pub fn key(terms: &Terms) -> Result<Chart> {
    let height = 2.0 * PITCH;
    let entries = [
        ("Open arrow", terms.below.clone()),
        ("Open circle", terms.measured.clone()),
        ("Filled circle", terms.over.to_lowercase()),
        (
            "Arrow on the scale",
            "below the figure at its tip".to_owned(),
        ),
        (
            "Dashed circle",
            "undecided, or extractions disagree".to_owned(),
        ),
        (
            "Upright line",
            format!("{}, {}", terms.the_line, terms.limit),
        ),
    ];
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
        .map(|(name, meaning)| format!("{name}: {meaning}."))
        .collect();
    Ok(Chart::new(
        "marks",
        svg,
        format!("The marks of the plots. {}", told.join(" ")),
        height,
    ))
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
