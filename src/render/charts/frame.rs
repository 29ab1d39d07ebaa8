//! Rows with a head and a foot: what the plots by food group, by product, by share and by quarter have in common.

use crate::model::package::PackageResult;
use crate::render::charts::Chart;
use crate::render::charts::marks::Mark;
use crate::render::charts::scale::{LogScale, NOTE, Span, parts, span};
use crate::render::charts::style::{Align, Canvas, GRID, Pen, Type, WIDTH, at, draw, text_width};
use crate::render::terms::Terms;
use crate::words::{Said, say};
use anyhow::Result;

/// Where a row lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Its upper edge.
    pub top: f64,
    /// Halfway down.
    pub middle: f64,
}

/// How high each row is.
pub type Height<'a, R> = &'a dyn Fn(&R) -> f64;

/// A chart of rows between a head and a foot, in points.
pub struct Frame<'a, R> {
    /// The rows.
    pub rows: &'a [R],
    /// How high each is.
    pub height: Height<'a, R>,
    /// Room above the rows.
    pub head: f64,
    /// Room below them.
    pub foot: f64,
    /// The lines between rows, where there are any.
    pub between: Option<Pen>,
}

impl<R> Frame<'_, R> {
    /// Draws the ground (down to where the rows end), each row, and the foot (from there on).
    pub fn draw(
        &self,
        (name, alt): (String, String),
        ground: impl FnOnce(&mut Canvas<'_>, f64),
        row: impl Fn(&mut Canvas<'_>, &R, Place),
        foot: impl FnOnce(&mut Canvas<'_>, f64),
    ) -> Result<Chart> {
        let bottom = self.head + self.rows.iter().map(self.height).sum::<f64>();
        let svg = draw(WIDTH, bottom + self.foot, |canvas| {
            ground(canvas, bottom);
            let mut top = self.head;
            for (number, each) in self.rows.iter().enumerate() {
                if let Some(pen) = self.between.filter(|_| number > 0) {
                    canvas.line(&[at(0.0, top), at(WIDTH, top)], pen);
                }
                let height = (self.height)(each);
                let middle = top + height / 2.0;
                row(canvas, each, Place { top, middle });
                top += height;
            }
            foot(canvas, bottom);
        })?;
        Ok(Chart::new(name, svg, alt, bottom + self.foot))
    }
}

/// One chart for each part of the rows that fits (in the first, and in any later one), each with its file stem.
pub fn in_parts<R>(
    stem: &str,
    rows: &[R],
    most: (f64, f64),
    height: impl Fn(&R) -> f64,
    one: impl Fn(String, &[R]) -> Result<Chart>,
) -> Result<Vec<Chart>> {
    let parts = parts(rows, most, height).into_iter().zip(1..);
    parts
        .map(|(part, number)| one(numbered_stem(stem, number), part))
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
pub fn names(canvas: &mut Canvas<'_>, lines: &[(String, Type)], pitch: f64, middle: f64) {
    let first = middle + 3.0 - pitch * (lines.len() as f64 - 1.0) / 2.0;
    for (number, (text, look)) in lines.iter().enumerate() {
        let place = at(0.0, first + pitch * number as f64);
        canvas.text(text, place, Align::Start, *look);
    }
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

impl<'a> Concentrations<'a> {
    /// On a scale between these places that holds every package.
    pub fn holding<'p>(
        packages: impl Iterator<Item = &'p PackageResult>,
        (cell, place): (Span, Span),
        terms: &'a Terms,
    ) -> Concentrations<'a> {
        let values = packages.filter_map(|package| Mark::of(package).x());
        Concentrations {
            scale: LogScale::holding(values, terms.rule.ppm, terms.measurable(), place),
            cell,
            terms,
        }
    }

    /// A chart of rows on this scale. `head` stands beside the flag of the limit, below the rows what marks and scale mean.
    pub fn draw<R>(
        &self,
        named: (String, String),
        (rows, height): (&[R], Height<'_, R>),
        head: impl FnOnce(&mut Canvas<'_>, Span),
        row: impl Fn(&mut Canvas<'_>, &R, Place),
        (marks, below): (Said, f64),
    ) -> Result<Chart> {
        let frame = Frame {
            rows,
            height,
            head: 24.0,
            foot: 26.0,
            between: Some(Pen::solid(0.5, GRID)),
        };
        frame.draw(
            named,
            |canvas, bottom| {
                let flag = self.ground(canvas, bottom);
                head(canvas, flag);
            },
            row,
            |canvas, bottom| self.foot(canvas, &marks, bottom + below),
        )
    }

    /// The ground of the rows and the flag of the limit; gives where the flag begins and ends.
    fn ground(&self, canvas: &mut Canvas<'_>, bottom: f64) -> Span {
        self.scale.ground(canvas, (18.0, bottom), self.terms.close);
        self.scale.limit_line(canvas, 16.0, bottom + 2.0);
        let half = self.scale.flag(canvas, &self.terms.flag, 2.0);
        let limit = self.scale.limit();
        span(limit - half, limit + half)
    }

    /// The head of the cell, where the flag leaves room; gives where it ends.
    pub fn head_of_cell(&self, canvas: &mut Canvas<'_>, flag: Span, centre: f64) -> f64 {
        let below = self.terms.below_head();
        let half = text_width(&below, NOTE) / 2.0;
        if flag.from > centre + half + 4.0 {
            canvas.text(&below, at(centre, 12.0), Align::Middle, NOTE);
        }
        centre + half
    }

    /// What stands below the rows: two lines of words, the cell, and the scale drawn as a rule.
    fn foot(&self, canvas: &mut Canvas<'_>, marks: &Said, top: f64) {
        let words = &self.terms.words;
        for (said, down) in [(marks, 9.0), (&say::chart_scale(self.terms.unit), 19.0)] {
            canvas.text(&words.say(said), at(0.0, top + down), Align::Start, NOTE);
        }
        let cell = (self.cell, self.terms.below_short.as_str());
        self.scale.rule(canvas, top, Some(cell), words);
    }
}
