//! The range control chart: how far the two extractions of each package lie apart, in the order of testing.

use crate::model::statistics::{RangeChart, RangeLines, RangePoint};
use crate::render::charts::Chart;
use crate::render::charts::agreement::{list, name_apart};
use crate::render::charts::scale::{NOTE, VALUE, round_step};
use crate::render::charts::style::{
    ACCENT, Align, Canvas, HAIRLINE, INK, Pen, RULE, Type, WIDTH, at, draw, text_width,
};
use crate::words::{Catalogue, say};
use anyhow::Result;
use chrono::{Datelike, NaiveDate};
use std::collections::BTreeMap;

const LEFT: f64 = 34.0;
const RIGHT: f64 = 430.0;
const TOP: f64 = 24.0;
const PLOT: f64 = 84.0;
const FOOT: f64 = 40.0;

/// Marks closer than this, in points, are no longer told apart: the line alone shows them.
const TOLD_APART: f64 = 2.2;

/// The chart; none where too few pairs agree for its lines. `tested` has the day of each package's test.
pub fn range(
    chart: &RangeChart,
    tested: &BTreeMap<&str, NaiveDate>,
    words: &Catalogue,
) -> Result<Option<Chart>> {
    let Some(lines) = chart.lines else {
        return Ok(None);
    };
    let axes = Axes::holding(chart, lines);
    let height = TOP + PLOT + FOOT;
    let svg = draw(WIDTH, height, |canvas| {
        axes.draw(canvas, words)?;
        quarters(canvas, chart, tested, &axes, words)?;
        limits(canvas, lines, &axes, words)?;
        marks(canvas, chart, lines, &axes)
    })?;
    Ok(Some(Chart::new(
        "range-chart",
        svg,
        alt(chart, lines, words),
        height,
    )))
}

struct Axes {
    top: f64,
    step: f64,
    pitch: f64,
}

impl Axes {
    fn holding(chart: &RangeChart, lines: RangeLines) -> Axes {
        let widest = chart
            .points
            .iter()
            .map(|point| point.signed_percent.abs())
            .fold(lines.upper, f64::max);
        let step = round_step(widest * 1.15 / 4.0);
        Axes {
            top: 4.0 * step,
            step,
            pitch: (RIGHT - LEFT) / chart.points.len() as f64,
        }
    }

    fn x(&self, number: usize) -> f64 {
        LEFT + self.pitch * (number as f64 + 0.5)
    }

    fn y(&self, percent: f64) -> f64 {
        TOP + PLOT * (1.0 - percent / self.top)
    }

    fn draw(&self, canvas: &mut Canvas<'_>, words: &Catalogue) -> Result<()> {
        let bottom = TOP + PLOT;
        let up = words.say(&say::chart_range_up());
        canvas.text(&up, at(0.0, 8.0), Align::Start, NOTE)?;
        canvas.line(
            &[at(LEFT, TOP), at(LEFT, bottom), at(RIGHT, bottom)],
            Pen::solid(0.9, INK),
        )?;
        for step in 0..=4 {
            let percent = f64::from(step) * self.step;
            let y = self.y(percent);
            canvas.line(&[at(LEFT - 3.0, y), at(LEFT, y)], Pen::solid(0.9, INK))?;
            canvas.text(
                &format!("{percent:.0}"),
                at(LEFT - 6.0, y + 2.8),
                Align::End,
                NOTE,
            )?;
        }
        let along = words.say(&say::chart_range_along());
        canvas.text(&along, at(RIGHT, bottom + 34.0), Align::End, NOTE)
    }
}

/// A tick where a quarter begins, and its name where it has room.
fn quarters(
    canvas: &mut Canvas<'_>,
    chart: &RangeChart,
    tested: &BTreeMap<&str, NaiveDate>,
    axes: &Axes,
    words: &Catalogue,
) -> Result<()> {
    let quarter = |point: &RangePoint| {
        let day = tested.get(point.package_code.as_str())?;
        Some((day.year(), day.month0() / 3 + 1))
    };
    let (mut last, mut free) = (None, LEFT);
    for (number, point) in chart.points.iter().enumerate() {
        let now = quarter(point);
        if now.is_none() || now == last {
            continue;
        }
        last = now;
        let x = LEFT + axes.pitch * number as f64;
        let word = now.map_or(String::new(), |(year, quarter)| {
            words.say(&say::chart_quarter_short(
                quarter.to_string(),
                year.to_string(),
            ))
        });
        let bottom = TOP + PLOT;
        let named = x >= free;
        let length = if named { 14.0 } else { 5.0 };
        canvas.line(
            &[at(x, bottom), at(x, bottom + length)],
            Pen::solid(0.7, RULE),
        )?;
        if named {
            canvas.text(&word, at(x + 3.5, bottom + 12.0), Align::Start, NOTE)?;
            free = x + 3.5 + text_width(&word, NOTE) + 2.5;
        }
    }
    Ok(())
}

fn limits(
    canvas: &mut Canvas<'_>,
    lines: RangeLines,
    axes: &Axes,
    words: &Catalogue,
) -> Result<()> {
    let line = |y: f64| [at(LEFT, y), at(RIGHT, y)];
    let (mean, control) = (axes.y(lines.centre), axes.y(lines.upper));
    canvas.line(&line(mean), Pen::solid(0.8, RULE))?;
    canvas.line(&line(control), Pen::solid(1.2, ACCENT))?;
    // Two words need ten points between them.
    let mean_word = mean.max(control + 10.0) + 3.0;
    let control_look = Type {
        ink: ACCENT,
        ..VALUE
    };
    canvas.text(
        &words.say(&say::chart_range_control(whole(lines.upper))),
        at(RIGHT + 6.0, control + 3.0),
        Align::Start,
        control_look,
    )?;
    canvas.text(
        &words.say(&say::chart_range_mean(whole(lines.centre))),
        at(RIGHT + 6.0, mean_word),
        Align::Start,
        NOTE,
    )
}

fn marks(
    canvas: &mut Canvas<'_>,
    chart: &RangeChart,
    lines: RangeLines,
    axes: &Axes,
) -> Result<()> {
    let place = |(number, point): (usize, &RangePoint)| {
        at(axes.x(number), axes.y(point.signed_percent.abs()))
    };
    let line: Vec<_> = chart.points.iter().enumerate().map(place).collect();
    canvas.line(&line, Pen::solid(0.5, HAIRLINE))?;
    let radius = (axes.pitch * 0.42).clamp(1.0, 2.5);
    for (spot, point) in line.iter().zip(&chart.points) {
        if !point.agrees {
            canvas.circle(*spot, 3.6, None, Pen::dashed(1.1, INK, 2.0, 1.4))?;
        } else if point.beyond {
            canvas.circle(*spot, 3.4, None, Pen::solid(1.4, INK))?;
        } else if axes.pitch >= TOLD_APART {
            canvas.circle(*spot, radius, None, Pen::solid(0.9, INK))?;
        }
    }
    let named: Vec<_> = line
        .iter()
        .zip(&chart.points)
        .filter(|(_, point)| point.beyond || !point.agrees)
        .map(|(spot, point)| (*spot, point.package_code.as_str()))
        .collect();
    let levels = [axes.y(lines.upper), axes.y(lines.centre)];
    name_apart(canvas, &named, (TOP - 8.0, RIGHT + 4.0), &levels)
}

fn whole(percent: f64) -> String {
    format!("{percent:.0}")
}

fn alt(chart: &RangeChart, lines: RangeLines, words: &Catalogue) -> String {
    let beyond: Vec<&str> = chart
        .points
        .iter()
        .filter(|point| point.beyond)
        .map(|point| point.package_code.as_str())
        .collect();
    words.say(&say::chart_range(
        chart.points.len() as u64,
        whole(lines.centre),
        whole(lines.upper),
        beyond.len() as u64,
        list(&beyond, words),
    ))
}
