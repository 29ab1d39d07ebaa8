//! Rows with a head and a foot: what the plots by food group, by product, by share and by quarter have in common.

use crate::render::charts::Chart;
use crate::render::charts::scale::{LogScale, NOTE, Span, parts};
use crate::render::charts::style::{Align, Canvas, Pen, WIDTH, at, draw, text_width};
use crate::render::terms::Terms;
use anyhow::Result;

/// Where a row lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Its upper edge.
    pub top: f64,
    /// Halfway down.
    pub middle: f64,
    /// How high it is.
    pub height: f64,
}

/// A chart of rows between a head and a foot, in points.
pub struct Frame<'a> {
    /// Room above the rows.
    pub head: f64,
    /// Room below them.
    pub foot: f64,
    /// The lines between rows, where there are any.
    pub between: Option<Pen>,
    /// How high each row is.
    pub height: &'a dyn Fn(usize) -> f64,
}

impl Frame<'_> {
    /// Draws the ground (down to where the rows end), each row by its number, and the foot (from there on).
    pub fn draw(
        &self,
        (name, alt): (String, String),
        rows: usize,
        ground: impl FnOnce(&mut Canvas<'_>, f64) -> Result<()>,
        mut row: impl FnMut(&mut Canvas<'_>, usize, Place) -> Result<()>,
        foot: impl FnOnce(&mut Canvas<'_>, f64) -> Result<()>,
    ) -> Result<Chart> {
        let bottom = self.head + (0..rows).map(self.height).sum::<f64>();
        let svg = draw(WIDTH, bottom + self.foot, |canvas| {
            ground(canvas, bottom)?;
            let mut top = self.head;
            for number in 0..rows {
                if let Some(pen) = self.between.filter(|_| number > 0) {
                    canvas.line(&[at(0.0, top), at(WIDTH, top)], pen)?;
                }
                let height = (self.height)(number);
                let middle = top + height / 2.0;
                let place = Place {
                    top,
                    middle,
                    height,
                };
                row(canvas, number, place)?;
                top += height;
            }
            foot(canvas, bottom)
        })?;
        Ok(Chart::new(name, svg, alt, bottom + self.foot))
    }
}

/// One chart for each part of the rows that fits (in the first, and in any later one), each with its file stem; and whether it is
/// the last.
pub fn in_parts<R>(
    stem: &str,
    rows: &[R],
    most: (f64, f64),
    height: impl Fn(&R) -> f64,
    one: impl Fn(String, &[R], bool) -> Result<Chart>,
) -> Result<Vec<Chart>> {
    let parts = parts(rows, most, height);
    let last = parts.len();
    let numbered = parts.into_iter().zip(1..);
    numbered
        .map(|(part, number)| one(numbered_stem(stem, number), part, number == last))
        .collect()
}

/// `strip-plot`, `strip-plot-2`.
pub fn numbered_stem(stem: &str, number: usize) -> String {
    match number {
        1 => stem.to_owned(),
        _ => format!("{stem}-{number}"),
    }
}

/// Lines of a row's name, one below the other around its middle.
pub fn lines(
    canvas: &mut Canvas<'_>,
    lines: &[(String, crate::render::charts::style::Type)],
    pitch: f64,
    middle: f64,
) -> Result<()> {
    let first = middle + 3.0 - pitch * (lines.len() as f64 - 1.0) / 2.0;
    for (number, (text, look)) in lines.iter().enumerate() {
        let place = at(0.0, first + pitch * number as f64);
        canvas.text(text, place, Align::Start, *look)?;
    }
    Ok(())
}

/// Packages on the scale of concentrations, with a cell at its left for those with too little to measure.
pub struct Concentrations<'a> {
    /// The scale.
    pub scale: LogScale,
    /// The cell.
    pub cell: Span,
    /// The words of the limit and of the bands.
    pub terms: &'a Terms,
}

impl Concentrations<'_> {
    /// Where the flag of the limit ends and the rows may begin.
    pub const HEAD: f64 = 24.0;
    /// What the rule below the rows takes.
    pub const FOOT: f64 = 26.0;

    /// The ground of the rows and the flag of the limit; gives where the flag begins and ends.
    pub fn ground(&self, canvas: &mut Canvas<'_>, bottom: f64) -> Result<Span> {
        self.scale
            .ground(canvas, (18.0, bottom), self.terms.close)?;
        self.scale.limit_line(canvas, 16.0, bottom + 2.0)?;
        let half = self.scale.flag(canvas, &self.terms.flag, 2.0)?;
        let limit = self.scale.limit();
        Ok(Span {
            from: limit - half,
            to: limit + half,
        })
    }

    /// The head of the cell, where the flag leaves room; gives where it ends.
    pub fn head_of_cell(&self, canvas: &mut Canvas<'_>, flag: Span, centre: f64) -> Result<f64> {
        let below = self.terms.below_head();
        let half = text_width(&below, NOTE) / 2.0;
        if flag.from > centre + half + 4.0 {
            canvas.text(&below, at(centre, 12.0), Align::Middle, NOTE)?;
        }
        Ok(centre + half)
    }

    /// What stands below the rows: two lines of words, the cell, and the scale drawn as a rule.
    pub fn foot(&self, canvas: &mut Canvas<'_>, words: &[String; 2], top: f64) -> Result<()> {
        for (line, down) in words.iter().zip([9.0, 19.0]) {
            canvas.text(line, at(0.0, top + down), Align::Start, NOTE)?;
        }
        let cell = (self.cell, self.terms.below_short.as_str());
        self.scale.rule(canvas, top, Some(cell), &self.terms.words)
    }
}
