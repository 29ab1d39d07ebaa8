//! The marks of the plots, explained once.

use crate::render::charts::Chart;
use crate::render::charts::frame::{Frame, Place};
use crate::render::charts::marks::{self, Ink, Shape};
use crate::render::charts::scale::{NOTE, ROW, wrapped};
use crate::render::charts::style::{ACCENT, Align, Canvas, Pen, Type, WIDTH, at};
use crate::render::terms::Terms;
use crate::words::say;
use anyhow::Result;

const COLUMNS: usize = 3;
const COLUMN: f64 = WIDTH / COLUMNS as f64;
const LINE: f64 = 9.8;
const BESIDE: f64 = 24.0;

/// What stands beside a mark.
#[derive(Clone, Copy)]
enum Sample {
    Mark(Shape, Ink),
    Line,
    Band,
}

/// The marks with their meaning, in rows of three; what is hatched only where something is.
pub fn key(terms: &Terms) -> Result<Chart> {
    let words = &terms.words;
    let arrow = words.say(&say::ruler_mark_arrow_means());
    let beyond = words.say(&say::ruler_mark_arrow_right_means());
    let undecided = words.say(&say::ruler_mark_dashed_means());
    let line = words.say(&say::ruler_mark_line_means(&terms.the_line, &terms.limit));
    let left = Sample::Mark(Shape::Left, Ink::Outline);
    let right = Sample::Mark(Shape::Right, Ink::Solid);
    let inks = [Ink::Outline, Ink::Solid, Ink::Dashed];
    let [open, filled, dashed] = inks.map(|ink| Sample::Mark(Shape::Circle, ink));
    let band = terms.close_means.as_ref();
    let band = band.map(|close| (Sample::Band, say::ruler_mark_hatched(), &close.means));
    let entries: Vec<Entry> = [
        (left, say::ruler_mark_open_arrow(), &terms.below),
        (open, say::ruler_mark_open_circle(), &terms.measured),
        (filled, say::ruler_mark_filled_circle(), &terms.over_in_text),
        (left, say::ruler_mark_arrow(), &arrow),
        (right, say::ruler_mark_arrow_right(), &beyond),
        (dashed, say::ruler_mark_dashed(), &undecided),
        (Sample::Line, say::ruler_mark_line(), &line),
    ]
    .into_iter()
    .chain(band)
    .map(|(sample, name, means)| Entry::new(sample, &words.say(&name), means))
    .collect();
    let rows: Vec<&[Entry]> = entries.chunks(COLUMNS).collect();
    let height = |row: &&[Entry]| {
        let lines = row.iter().map(|entry| entry.lines.len());
        LINE * lines.max().unwrap_or(0) as f64 + 9.0
    };
    let frame = Frame {
        rows: &rows,
        height: &height,
        head: 0.0,
        foot: 0.0,
        between: None,
    };
    let told = entries
        .iter()
        .map(|entry| say::ruler_mark_alt(&entry.name, &entry.means));
    let alt = words.say(&say::ruler_marks_alt(words.text(told)));
    let nothing = |_: &mut Canvas<'_>, _| ();
    let row = |canvas: &mut Canvas<'_>, row: &&[Entry], place: Place| {
        for (column, entry) in row.iter().enumerate() {
            entry.draw(canvas, COLUMN * column as f64, place.top + 10.0);
        }
    };
    frame.draw(("marks".to_owned(), alt), nothing, row, nothing)
}

/// A mark, its name, and what it means.
struct Entry {
    sample: Sample,
    name: String,
    means: String,
    lines: Vec<(String, Type)>,
}

impl Entry {
    fn new(sample: Sample, name: &str, means: &str) -> Entry {
        let lines = |text, look| wrapped(text, COLUMN - BESIDE - 8.0, look);
        Entry {
            sample,
            lines: lines(name, ROW).chain(lines(means, NOTE)).collect(),
            name: name.to_owned(),
            means: means.to_owned(),
        }
    }

    /// `top` is the baseline of the name.
    fn draw(&self, canvas: &mut Canvas<'_>, left: f64, top: f64) {
        let centre = at(left + 8.0, top + 1.5);
        match self.sample {
            Sample::Mark(shape, ink) => marks::draw(canvas, shape, ink, centre, 3.6),
            Sample::Line => {
                let ends = [centre.by(0.0, -9.0), centre.by(0.0, 9.0)];
                canvas.line(&ends, Pen::solid(1.6, ACCENT));
            }
            Sample::Band => canvas.hatch(centre.by(-7.0, -8.0), centre.by(7.0, 8.0)),
        }
        for (number, (line, look)) in self.lines.iter().enumerate() {
            let place = at(left + BESIDE, top + LINE * number as f64);
            canvas.text(line, place, Align::Start, *look);
        }
    }
}
