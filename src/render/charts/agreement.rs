//! The two extractions of each package against each other: their difference against their mean.

use crate::config::Testing;
use crate::model::ppm::Ppm;
use crate::model::statistics::{RangeChart, RangePoint};
use crate::render::charts::Chart;
use crate::render::charts::scale::{LogScale, NOTE, Span, VALUE, round_step};
use crate::render::charts::style::{
    ACCENT, Align, At, Canvas, INK, Pen, RULE, Type, WIDTH, ZONE, at, draw, text_width,
};
use crate::render::terms::Terms;
use crate::words::{Catalogue, say};
use anyhow::Result;
use std::collections::BTreeSet;

const LEFT: f64 = 34.0;
const RIGHT: f64 = 430.0;
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
        axes.envelope(canvas, testing, terms)?;
        axes.draw(canvas, terms)?;
        marks(canvas, chart, &axes)
    })?;
    let alt = alt(chart, &terms.words);
    Ok(Some(Chart::new("agreement", svg, alt, height)))
}

const PLACE: Span = Span {
    from: LEFT,
    to: RIGHT,
};

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
        let scale = LogScale::holding(means, terms.rule.ppm, terms.measurable(), PLACE);
        let widest = chart
            .points
            .iter()
            .map(|point| point.signed_percent.abs())
            .fold(40.0, f64::max);
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

    fn envelope(&self, canvas: &mut Canvas<'_>, testing: &Testing, terms: &Terms) -> Result<()> {
        const STEPS: i32 = 60;
        let allowed = terms.words.say(&say::chart_agreement_allowed());
        let (low, high) = (self.scale.low(), self.scale.high());
        let edge = |sign: f64| -> Vec<At> {
            (0..=STEPS)
                .map(|step| low * (high / low).powf(f64::from(step) / f64::from(STEPS)))
                .map(|mean| {
                    at(
                        self.scale.x(mean),
                        self.y(sign * self.allowed(mean, testing)),
                    )
                })
                .collect()
        };
        let (upper, lower) = (edge(1.0), edge(-1.0));
        for (above, under) in upper.windows(2).zip(lower.windows(2)) {
            canvas.fill(
                above[0],
                at(above[1].x, (under[0].y + under[1].y) / 2.0),
                ZONE,
            )?;
        }
        for edge in [&upper, &lower] {
            canvas.line(edge, Pen::solid(1.2, ACCENT))?;
            let end = edge.last().map_or(0.0, |end| end.y);
            canvas.text(
                &allowed,
                at(RIGHT + 6.0, end + 3.0),
                Align::Start,
                Type {
                    ink: ACCENT,
                    ..VALUE
                },
            )?;
        }
        Ok(())
    }

    fn draw(&self, canvas: &mut Canvas<'_>, terms: &Terms) -> Result<()> {
        let bottom = TOP + PLOT;
        let up = terms.words.say(&say::chart_agreement_up());
        canvas.text(&up, at(0.0, 8.0), Align::Start, NOTE)?;
        canvas.line(
            &[at(LEFT, self.y(0.0)), at(RIGHT, self.y(0.0))],
            Pen::solid(0.8, RULE),
        )?;
        canvas.line(
            &[at(LEFT, TOP), at(LEFT, bottom), at(RIGHT, bottom)],
            Pen::solid(0.9, INK),
        )?;
        for step in -2..=2 {
            let percent = f64::from(step) * self.half / 2.0;
            let sign = if percent > 0.0 {
                "+"
            } else if percent < 0.0 {
                "\u{2212}"
            } else {
                ""
            };
            let y = self.y(percent);
            canvas.line(&[at(LEFT - 3.0, y), at(LEFT, y)], Pen::solid(0.9, INK))?;
            canvas.text(
                &format!("{sign}{:.0}", percent.abs()),
                at(LEFT - 6.0, y + 2.8),
                Align::End,
                NOTE,
            )?;
        }
        for (tick, numbered) in self.scale.ticks() {
            let x = self.scale.x(tick);
            canvas.line(&[at(x, bottom), at(x, bottom + 3.0)], Pen::solid(0.7, INK))?;
            if numbered {
                let word = crate::render::numbers::plain(Ppm(tick));
                let word = terms.words.locale().figure(&word);
                canvas.text(&word, at(x, bottom + 12.5), Align::Middle, NOTE)?;
            }
        }
        let axis = terms.words.say(&say::chart_agreement_along(terms.unit));
        canvas.text(&axis, at(RIGHT, bottom + 25.0), Align::End, NOTE)
    }
}

fn marks(canvas: &mut Canvas<'_>, chart: &RangeChart, axes: &Axes) -> Result<()> {
    let place = |point: &RangePoint| at(axes.scale.x(point.mean.0), axes.y(point.signed_percent));
    let (agreeing, disagreeing): (Vec<_>, Vec<_>) =
        chart.points.iter().partition(|point| point.agrees);
    // Marks that would hide one another are drawn once: the drawing stays small, however many pairs there are.
    let mut drawn = BTreeSet::new();
    for point in agreeing.into_iter().chain(disagreeing.iter().copied()) {
        let spot = place(point);
        if !drawn.insert((point.agrees, (spot.x * 0.8) as i32, (spot.y * 0.8) as i32)) {
            continue;
        }
        if point.agrees {
            canvas.circle(spot, 2.5, None, Pen::solid(1.0, INK))?;
        } else {
            canvas.circle(spot, 3.6, None, Pen::dashed(1.1, INK, 2.0, 1.4))?;
        }
    }
    let named: Vec<_> = disagreeing
        .iter()
        .map(|point| (place(point), point.package_code.as_str()))
        .collect();
    name_apart(canvas, &named, (TOP + 4.0, RIGHT + 4.0), &[])
}

/// Writes the first codes beside their marks, where each finds a place that no other code or mark holds; the others stay
/// without, since the text names all. No code is written across one of the level `lines`.
pub(crate) fn name_apart(
    canvas: &mut Canvas<'_>,
    marks: &[(At, &str)],
    (top, right): (f64, f64),
    lines: &[f64],
) -> Result<()> {
    // Each mark takes its own place, so that no code is written over another's mark.
    let mut taken: Vec<(f64, f64, f64)> = marks
        .iter()
        .map(|(mark, _)| (mark.x - 4.0, mark.x + 4.0, mark.y + 3.0))
        .collect();
    for (mark, code) in marks.iter().take(NAMED_AT_MOST) {
        let width = text_width(code, VALUE);
        let sides = [mark.x + 7.0, mark.x - 7.0 - width];
        let heights = [3.0, -7.0, 13.0];
        let places = heights
            .iter()
            .flat_map(|up| sides.map(|left| (left, mark.y + up)));
        let free = |(left, y): &(f64, f64)| {
            *left > LEFT + 3.0
                && left + width < right
                && *y > top
                && lines.iter().all(|line| *y < line - 2.0 || *y > line + 8.0)
                && taken.iter().all(|(from, to, at)| {
                    (y - at).abs() > 9.5 || left + width < from - 1.0 || *left > to + 1.0
                })
        };
        if let Some((left, y)) = places.into_iter().find(free) {
            canvas.text(code, at(left, y), Align::Start, VALUE)?;
            taken.push((left, left + width, y));
        }
    }
    Ok(())
}

fn alt(chart: &RangeChart, words: &Catalogue) -> String {
    let outside: Vec<&str> = chart
        .points
        .iter()
        .filter(|point| !point.agrees)
        .map(|point| point.package_code.as_str())
        .collect();
    let (packages, count) = (chart.points.len() as u64, outside.len() as u64);
    words.say(&say::chart_agreement(
        packages,
        count,
        list(&outside, words),
    ))
}

/// At most twelve of them, and how many more there are.
pub(crate) fn list(codes: &[&str], words: &Catalogue) -> String {
    let shown: Vec<&str> = codes.iter().take(NAMED_AT_MOST).copied().collect();
    let shown = shown.join(", ");
    match codes.len().saturating_sub(NAMED_AT_MOST) {
        0 => shown,
        more => words.say(&say::chart_codes_more(shown, more as u64)),
    }
}
