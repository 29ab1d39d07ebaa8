//! The marks of the plots, explained once.

use crate::render::charts::Chart;
use crate::render::charts::frame::Frame;
use crate::render::charts::marks::{self, Ink, Shape};
use crate::render::charts::scale::{NOTE, ROW, wrap};
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
    let line = words.say(&say::ruler_mark_line_means(&terms.the_line, &terms.limit));
    let said = |said| words.say(&said);
    let mark = |shape, ink| Sample::Mark(shape, ink);
    let band = terms.close_means.as_ref().map(|close| {
        let name = say::ruler_mark_hatched();
        (Sample::Band, name, close.means.clone())
    });
    let entries = [
        (
            mark(Shape::Left, Ink::Outline),
            say::ruler_mark_open_arrow(),
            terms.below.clone(),
        ),
        (
            mark(Shape::Circle, Ink::Outline),
            say::ruler_mark_open_circle(),
            terms.measured.clone(),
        ),
        (
            mark(Shape::Circle, Ink::Solid),
            say::ruler_mark_filled_circle(),
            terms.over_in_text.clone(),
        ),
        (
            mark(Shape::Left, Ink::Outline),
            say::ruler_mark_arrow(),
            said(say::ruler_mark_arrow_means()),
        ),
        (
            mark(Shape::Right, Ink::Solid),
            say::ruler_mark_arrow_right(),
            said(say::ruler_mark_arrow_right_means()),
        ),
        (
            mark(Shape::Circle, Ink::Dashed),
            say::ruler_mark_dashed(),
            said(say::ruler_mark_dashed_means()),
        ),
        (Sample::Line, say::ruler_mark_line(), line),
    ];
    let entries: Vec<Entry> = entries
        .into_iter()
        .chain(band)
        .map(|(sample, name, means)| Entry {
            sample,
            lines: lines(&words.say(&name), &means),
            name: words.say(&name),
            means,
        })
        .collect();
    let rows: Vec<&[Entry]> = entries.chunks(COLUMNS).collect();
    let height = |row: usize| {
        let lines = rows[row].iter().map(|entry| entry.lines.len());
        LINE * lines.max().unwrap_or(0) as f64 + 9.0
    };
    let frame = Frame {
        head: 0.0,
        foot: 0.0,
        between: None,
        height: &height,
    };
    let told: Vec<String> = entries
        .iter()
        .map(|entry| words.say(&say::ruler_mark_alt(&entry.name, &entry.means)))
        .collect();
    let alt = words.say(&say::ruler_marks_alt(told.join(" ")));
    frame.draw(
        ("marks".to_owned(), alt),
        rows.len(),
        |_, _| Ok(()),
        |canvas, number, place| {
            rows[number]
                .iter()
                .enumerate()
                .try_for_each(|(column, entry)| {
                    entry.draw(canvas, COLUMN * column as f64, place.top + 10.0)
                })
        },
        |_, _| Ok(()),
    )
}

/// A mark, its name, and what it means.
struct Entry {
    sample: Sample,
    name: String,
    means: String,
    lines: Vec<(String, Type)>,
}

fn lines(name: &str, means: &str) -> Vec<(String, Type)> {
    let lines = |text: &str, look| {
        let lines = wrap(text, COLUMN - BESIDE - 8.0, look).into_iter();
        lines.map(move |line| (line, look))
    };
    lines(name, ROW).chain(lines(means, NOTE)).collect()
}

impl Entry {
    /// `top` is the baseline of the name.
    fn draw(&self, canvas: &mut Canvas<'_>, left: f64, top: f64) -> Result<()> {
        let (x, y) = (left + 8.0, top + 1.5);
        match self.sample {
            Sample::Mark(shape, ink) => marks::draw(canvas, shape, ink, at(x, y), 3.6)?,
            Sample::Line => {
                canvas.line(&[at(x, y - 9.0), at(x, y + 9.0)], Pen::solid(1.6, ACCENT))?
            }
            Sample::Band => canvas.hatch(at(x - 7.0, y - 8.0), at(x + 7.0, y + 8.0))?,
        }
        let left = left + BESIDE;
        for (number, (line, look)) in self.lines.iter().enumerate() {
            let baseline = top + LINE * number as f64;
            canvas.text(line, at(left, baseline), Align::Start, *look)?;
        }
        Ok(())
    }
}
