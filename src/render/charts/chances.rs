//! What a round can show: the chance of finding a package over, and the chance of each verdict.

use crate::model::planning::{CurvePoint, FindingLine};
use crate::model::ppm::Ppm;
use crate::render::charts::Chart;
use crate::render::charts::scale::{PLAIN, VALUE};
use crate::render::charts::style::{
    ACCENT, Align, Canvas, GRID, INK, INK_2, Pen, RULE, Type, WIDTH, ZONE, at, draw, text_width,
};
use crate::render::numbers::{NBSP, percent, plain};
use crate::words::{Catalogue, say};
use anyhow::Result;

const AXIS: Type = Type::plain(8.2, INK_2);
const STRONG: Type = Type::strong(8.6, INK);

const LEFT: f64 = 36.0;
const TOP: f64 = 26.0;
const PLOT: f64 = 114.0;
const FOOT: f64 = 30.0;
const HEIGHT: f64 = TOP + PLOT + FOOT;

/// The least distance of two labels at the ends of lines.
const APART: f64 = 10.4;

fn y(share: f64) -> f64 {
    TOP + PLOT * (1.0 - share)
}

/// A frame with a grid of quarters and the two titles.
fn ground(canvas: &mut Canvas<'_>, right: f64, up: &str, along: &str) {
    for quarter in 0..=4 {
        let share = f64::from(quarter) / 4.0;
        let pen = if quarter == 0 {
            Pen::solid(0.9, RULE)
        } else {
            Pen::solid(0.5, GRID)
        };
        canvas.line(&[at(LEFT, y(share)), at(right, y(share))], pen);
        let figure = format!("{}{NBSP}%", quarter * 25);
        canvas.text(&figure, at(LEFT - 5.0, y(share) + 2.8), Align::End, AXIS);
    }
    canvas.text(up, at(0.0, 8.5), Align::Start, AXIS);
    canvas.text(along, at(right, HEIGHT - 2.0), Align::End, AXIS);
}

/// The chance that so many packages hold at least one over, against the share of all packages that is. The line of `own`
/// packages is the plan's.
pub fn finding(
    lines: &[FindingLine],
    own: usize,
    words: &FindingWords,
    catalogue: &Catalogue,
) -> Result<Chart> {
    let right = WIDTH - 96.0;
    let shares = lines.iter().flat_map(|line| &line.points);
    let most = shares.map(|point| point.share).fold(0.0, f64::max);
    let x = |share: f64| LEFT + (right - LEFT) * share / most;
    let end = |line: &FindingLine| y(line.points.last().map_or(0.0, |point| point.chance));
    let svg = draw(WIDTH, HEIGHT, |canvas| {
        ground(canvas, right, &words.up, &words.along);
        for fifth in 0..=5 {
            let share = most * f64::from(fifth) / 5.0;
            let figure = format!("{}{NBSP}%", percent(share));
            canvas.text(&figure, at(x(share), y(0.0) + 12.0), Align::Middle, AXIS);
        }
        for (line, label_at) in lines.iter().zip(spread(lines.iter().map(end).collect())) {
            let points = line.points.iter();
            let points = points.map(|point| at(x(point.share), y(point.chance)));
            let (width, ink, look) = if line.packages == own {
                (2.0, INK, STRONG)
            } else {
                (0.9, INK_2, PLAIN)
            };
            canvas.line(&points.collect::<Vec<_>>(), Pen::solid(width, ink));
            let label = catalogue.say(&say::chart_packages(line.packages as u64));
            canvas.text(&label, at(right + 6.0, label_at + 3.0), Align::Start, look);
        }
    })?;
    Ok(Chart::new("finding", svg, words.alt.clone(), HEIGHT))
}

/// What stands on [`finding`].
pub struct FindingWords {
    /// What goes up.
    pub up: String,
    /// What goes along.
    pub along: String,
    /// Its message, for who cannot see it.
    pub alt: String,
}

/// Places of labels, in order from below, moved apart upwards and kept on the drawing.
fn spread(mut places: Vec<f64>) -> Vec<f64> {
    // From the topmost down: places go down the page as y grows.
    let highest = places.len().saturating_sub(1);
    for index in (0..highest).rev() {
        places[index] = places[index].max(places[index + 1] + APART);
    }
    places
}

/// The chance of each verdict against the product's true mean, on a logarithmic scale from a tenth of the limit to ten times
/// it.
pub fn verdicts(curve: &[CurvePoint], limit: f64, words: &VerdictWords) -> Result<Chart> {
    let right = WIDTH - 8.0;
    let x = |mean: f64| {
        let tenths = (mean / limit).log10().clamp(-1.0, 1.0);
        LEFT + (right - LEFT) * (tenths + 1.0) / 2.0
    };
    let svg = draw(WIDTH, HEIGHT, |canvas| {
        let (at_limit, bottom) = (x(limit), y(0.0));
        canvas.fill(at(at_limit, TOP), at(right, bottom), ZONE);
        ground(canvas, right, &words.up, &words.along);
        for factor in [0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0] {
            let figure = plain(Ppm(limit * factor));
            let align = if factor < 10.0 {
                Align::Middle
            } else {
                Align::End
            };
            canvas.text(&figure, at(x(limit * factor), bottom + 12.0), align, AXIS);
        }
        let upright = [at(at_limit, TOP), at(at_limit, bottom)];
        canvas.line(&upright, Pen::solid(1.6, ACCENT));
        let mut along = |of: fn(&CurvePoint) -> f64, pen| {
            let points = curve.iter().map(|point| at(x(point.mean), y(of(point))));
            canvas.line(&points.collect::<Vec<_>>(), pen);
        };
        along(|point| point.chances.undecided, NO_VERDICT);
        along(|point| point.chances.within, WITHIN);
        along(|point| point.chances.over, OVER);
        key(canvas, right, words);
        let flag = at(at_limit, TOP - 3.5);
        canvas.text(&words.limit, flag, Align::Middle, VALUE.inked(ACCENT));
    })?;
    Ok(Chart::new("verdicts", svg, words.alt.clone(), HEIGHT))
}

/// The lines by name, at the upper right.
fn key(canvas: &mut Canvas<'_>, right: f64, words: &VerdictWords) {
    const SAMPLE: f64 = 20.0;
    let mut end = right;
    for (text, pen) in [
        (&words.undecided, NO_VERDICT),
        (&words.over, OVER),
        (&words.within, WITHIN),
    ] {
        canvas.text(text, at(end, 8.5), Align::End, PLAIN);
        let start = end - text_width(text, PLAIN) - 5.0;
        canvas.line(&[at(start - SAMPLE, 5.8), at(start, 5.8)], pen);
        end = start - SAMPLE - 14.0;
    }
}

const NO_VERDICT: Pen = Pen::dashed(1.4, INK, 3.0, 2.4);
const WITHIN: Pen = Pen::solid(1.2, INK);
const OVER: Pen = Pen::solid(2.6, INK);

/// What stands on [`verdicts`].
pub struct VerdictWords {
    /// What goes up.
    pub up: String,
    /// What goes along.
    pub along: String,
    /// The limit.
    pub limit: String,
    /// The verdict over the limit.
    pub over: String,
    /// The verdict within it.
    pub within: String,
    /// No verdict.
    pub undecided: String,
    /// Its message, for who cannot see it.
    pub alt: String,
}
