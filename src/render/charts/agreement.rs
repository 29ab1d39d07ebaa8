//! The two extractions of each package against each other: their difference against their mean.

use crate::config::Testing;
use crate::model::ppm::Ppm;
use crate::model::statistics::{RangeChart, RangePoint};
use crate::render::charts::Chart;
use crate::render::charts::scale::{LogScale, NOTE, VALUE, round_step, span};
use crate::render::charts::style::{
    ACCENT, Align, At, Canvas, INK, Pen, RULE, WIDTH, ZONE, at, draw, text_width,
};
use crate::render::numbers::plain;
use crate::render::terms::Terms;
use crate::words::{Catalogue, say};
use anyhow::Result;
use std::collections::BTreeSet;

/// Where the plots of pairs begin.
pub(super) const LEFT: f64 = 34.0;
/// Where they end.
pub(super) const RIGHT: f64 = 430.0;
const TOP: f64 = 22.0;
const PLOT: f64 = 126.0;
const FOOT: f64 = 32.0;

/// Codes that are written beside their marks; the text names all.
const NAMED_AT_MOST: usize = 12;

/// The plot; none where no pair has both extractions measured.
pub fn agreement(chart: &RangeChart, testing: &Testing, terms: &Terms) -> Result<Option<Chart>> {
    if chart.points.is_empty() {
        return Ok(None);
    }
    let axes = Axes::holding(chart, testing, terms);
    let height = TOP + PLOT + FOOT;
    let svg = draw(WIDTH, height, |canvas| {
        axes.envelope(canvas, testing, terms);
        axes.draw(canvas, terms);
        marks(canvas, chart, &axes);
    })?;
    let alt = alt(chart, &terms.words);
    Ok(Some(Chart::new("agreement", svg, alt, height)))
}

struct Axes {
    scale: LogScale,
    /// Half the height of the plot, in per cent.
    half: f64,
    q: f64,
}

impl Axes {
    fn holding(chart: &RangeChart, testing: &Testing, terms: &Terms) -> Axes {
        let q = terms.lloqs.last().map_or(testing.lloq, |lloq| *lloq).0;
        let means = chart.points.iter().map(|point| point.mean.0);
        let place = span(LEFT, RIGHT);
        let scale = LogScale::holding(means, terms.rule.ppm, terms.measurable(), place);
        let widest = widest(chart, 40.0);
        Axes {
            scale,
            half: 2.0 * round_step(widest * 1.12 / 2.0),
            q,
        }
    }

    fn y(&self, percent: f64) -> f64 {
        TOP + PLOT / 2.0 * (1.0 - percent / self.half)
    }

    /// What the decision allows for a pair with this mean, in per cent of it: `2.8 sqrt((q/10)^2 + (r m)^2) / m`.
    fn allowed(&self, mean: f64, testing: &Testing) -> f64 {
        let s = (self.q / 10.0).hypot(testing.relative_repeatability * mean);
        (2.8 * s / mean * 100.0).min(self.half)
    }

    fn envelope(&self, canvas: &mut Canvas<'_>, testing: &Testing, terms: &Terms) {
        const STEPS: i32 = 60;
        let allowed = terms.words.say(&say::chart_agreement_allowed());
        let (low, high) = (self.scale.low, self.scale.high);
        let edge = |sign: f64| -> Vec<At> {
            let shares = (0..=STEPS).map(|step| f64::from(step) / f64::from(STEPS));
            let means = shares.map(|share| low * (high / low).powf(share));
            let y = |mean| self.y(sign * self.allowed(mean, testing));
            means.map(|mean| at(self.scale.x(mean), y(mean))).collect()
        };
        let (upper, lower) = (edge(1.0), edge(-1.0));
        for (above, under) in upper.windows(2).zip(lower.windows(2)) {
            let foot = (under[0].y + under[1].y) / 2.0;
            canvas.fill(above[0], at(above[1].x, foot), ZONE);
        }
        for edge in [&upper, &lower] {
            canvas.line(edge, Pen::solid(1.2, ACCENT));
            let end = at(RIGHT + 6.0, edge[STEPS as usize].y + 3.0);
            canvas.text(&allowed, end, Align::Start, VALUE.inked(ACCENT));
        }
    }

    fn draw(&self, canvas: &mut Canvas<'_>, terms: &Terms) {
        let (words, bottom) = (&terms.words, TOP + PLOT);
        let up = words.say(&say::chart_agreement_up());
        canvas.text(&up, at(0.0, 8.0), Align::Start, NOTE);
        let none = self.y(0.0);
        canvas.line(&[at(LEFT, none), at(RIGHT, none)], Pen::solid(0.8, RULE));
        let figure = |percent: f64| match percent {
            0.0 => "0".to_owned(),
            under if under < 0.0 => format!("\u{2212}{:.0}", -under),
            over => format!("+{over:.0}"),
        };
        let steps = (-2..=2).map(|step| f64::from(step) * self.half / 2.0);
        let steps = steps.map(|percent| (self.y(percent), figure(percent)));
        corner(canvas, (TOP, bottom), steps);
        for (tick, numbered) in self.scale.ticks() {
            let x = self.scale.x(tick);
            canvas.line(&[at(x, bottom), at(x, bottom + 3.0)], Pen::solid(0.7, INK));
            if numbered {
                let figure = words.locale().figure(&plain(Ppm(tick)));
                canvas.text(&figure, at(x, bottom + 12.5), Align::Middle, NOTE);
            }
        }
        let along = words.say(&say::chart_agreement_along(terms.unit));
        canvas.text(&along, at(RIGHT, bottom + 25.0), Align::End, NOTE);
    }
}

/// The two axes of a plot of pairs; the upright one with ticks and their figures.
pub(super) fn corner(
    canvas: &mut Canvas<'_>,
    (top, bottom): (f64, f64),
    steps: impl Iterator<Item = (f64, String)>,
) {
    let (pen, foot) = (Pen::solid(0.9, INK), at(LEFT, bottom));
    canvas.line(&[at(LEFT, top), foot, at(RIGHT, bottom)], pen);
    for (y, figure) in steps {
        canvas.line(&[at(LEFT - 3.0, y), at(LEFT, y)], pen);
        canvas.text(&figure, at(LEFT - 6.0, y + 2.8), Align::End, NOTE);
    }
}

/// How far the extractions of the widest pair lie apart, in per cent of their mean, and `least` at the least.
pub(super) fn widest(chart: &RangeChart, least: f64) -> f64 {
    let apart = chart.points.iter().map(|point| point.signed_percent.abs());
    apart.fold(least, f64::max)
}

/// A pair whose extractions disagree.
pub(super) fn disagreeing(canvas: &mut Canvas<'_>, spot: At) {
    canvas.circle(spot, 3.6, None, Pen::dashed(1.1, INK, 2.0, 1.4));
}

fn marks(canvas: &mut Canvas<'_>, chart: &RangeChart, axes: &Axes) {
    let place = |point: &RangePoint| at(axes.scale.x(point.mean.0), axes.y(point.signed_percent));
    let (agree, differ): (Vec<_>, Vec<_>) = chart.points.iter().partition(|point| point.agrees);
    // Marks that would hide one another are drawn once: the drawing stays small, however many pairs there are.
    let mut drawn = BTreeSet::new();
    for point in agree.iter().chain(&differ).copied() {
        let spot = place(point);
        if !drawn.insert((point.agrees, (spot.x * 0.8) as i32, (spot.y * 0.8) as i32)) {
            continue;
        }
        if point.agrees {
            canvas.circle(spot, 2.5, None, Pen::solid(1.0, INK));
        } else {
            disagreeing(canvas, spot);
        }
    }
    let named = differ.into_iter();
    let named: Vec<_> = named.map(|point| (place(point), point)).collect();
    name_apart(canvas, &named, TOP + 4.0, &[]);
}

/// Writes the first codes beside their marks, where each finds a place that no other code or mark holds; the others stay
/// without, since the text names all. No code is written across one of the level `lines`.
pub(super) fn name_apart(
    canvas: &mut Canvas<'_>,
    marks: &[(At, &RangePoint)],
    top: f64,
    lines: &[f64],
) {
    // Each mark takes its own place, so that no code is written over another's mark.
    let of_mark = |(mark, _): &(At, _)| (mark.x - 4.0, mark.x + 4.0, mark.y + 3.0);
    let mut taken: Vec<(f64, f64, f64)> = marks.iter().map(of_mark).collect();
    for (mark, point) in marks.iter().take(NAMED_AT_MOST) {
        let code = &point.package_code;
        let width = text_width(code, VALUE);
        let sides = [mark.x + 7.0, mark.x - 7.0 - width];
        let places = [3.0, -7.0, 13.0]
            .into_iter()
            .flat_map(|down| sides.map(|left| (left, mark.y + down)));
        let free = |(left, y): &(f64, f64)| {
            *left > LEFT + 3.0
                && left + width < RIGHT + 4.0
                && *y > top
                && lines.iter().all(|line| *y < line - 2.0 || *y > line + 8.0)
                && taken.iter().all(|(from, to, at)| {
                    (y - at).abs() > 9.5 || left + width < from - 1.0 || *left > to + 1.0
                })
        };
        if let Some((left, y)) = places.into_iter().find(free) {
            canvas.text(code, at(left, y), Align::Start, VALUE);
            taken.push((left, left + width, y));
        }
    }
}

fn alt(chart: &RangeChart, words: &Catalogue) -> String {
    let (outside, codes) = listed(chart, |point| !point.agrees, words);
    words.say(&say::chart_agreement(
        chart.points.len() as u64,
        outside,
        codes,
    ))
}

/// How many pairs of a kind there are, and the codes of at most twelve of them, with how many more there are.
pub(super) fn listed(
    chart: &RangeChart,
    wanted: impl Fn(&RangePoint) -> bool,
    words: &Catalogue,
) -> (u64, String) {
    let points = chart.points.iter().filter(|point| wanted(point));
    let codes: Vec<&str> = points.map(|point| point.package_code.as_str()).collect();
    let shown = codes[..codes.len().min(NAMED_AT_MOST)].join(", ");
    let listed = match codes.len().saturating_sub(NAMED_AT_MOST) {
        0 => shown,
        more => words.say(&say::chart_codes_more(shown, more as u64)),
    };
    (codes.len() as u64, listed)
}
