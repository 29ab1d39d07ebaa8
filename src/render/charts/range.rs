//! The range control chart: how far the two extractions of each package lie apart, in the order of testing.

use crate::model::statistics::{RangeChart, RangeLines, RangePoint};
use crate::render::charts::Chart;
use crate::render::charts::agreement::{
    LEFT, RIGHT, corner, disagreeing, listed, name_apart, widest,
};
use crate::render::charts::scale::{NOTE, VALUE, round_step};
use crate::render::charts::style::{
    ACCENT, Align, Canvas, HAIRLINE, INK, Pen, RULE, WIDTH, at, draw, text_width,
};
use crate::words::{Catalogue, say};
use anyhow::Result;
use chrono::{Datelike, NaiveDate};
use std::collections::BTreeMap;

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
        axes.draw(canvas, words);
        quarters(canvas, chart, tested, &axes, words);
        limits(canvas, lines, &axes, words);
        marks(canvas, chart, lines, &axes);
    })?;
    let alt = alt(chart, lines, words);
    Ok(Some(Chart::new("range-chart", svg, alt, height)))
}

struct Axes {
    top: f64,
    step: f64,
    pitch: f64,
}

impl Axes {
    fn holding(chart: &RangeChart, lines: RangeLines) -> Axes {
        let step = round_step(widest(chart, lines.upper) * 1.15 / 4.0);
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

    fn draw(&self, canvas: &mut Canvas<'_>, words: &Catalogue) {
        let bottom = TOP + PLOT;
        let up = words.say(&say::chart_range_up());
        canvas.text(&up, at(0.0, 8.0), Align::Start, NOTE);
        let steps = (0..=4).map(|step| f64::from(step) * self.step);
        let steps = steps.map(|percent| (self.y(percent), whole(percent)));
        corner(canvas, (TOP, bottom), steps);
        let along = words.say(&say::chart_range_along());
        canvas.text(&along, at(RIGHT, bottom + 34.0), Align::End, NOTE);
    }
}

/// A tick where a quarter begins, and its name where it has room.
fn quarters(
    canvas: &mut Canvas<'_>,
    chart: &RangeChart,
    tested: &BTreeMap<&str, NaiveDate>,
    axes: &Axes,
    words: &Catalogue,
) {
    let quarter = |point: &RangePoint| {
        let day = tested.get(point.package_code.as_str())?;
        Some((day.year(), day.month0() / 3 + 1))
    };
    let bottom = TOP + PLOT;
    let (mut last, mut free) = (None, LEFT);
    for (number, point) in chart.points.iter().enumerate() {
        let now = quarter(point);
        let Some((year, quarter)) = now.filter(|_| now != last) else {
            continue;
        };
        last = now;
        let x = LEFT + axes.pitch * number as f64;
        let named = x >= free;
        let length = if named { 14.0 } else { 5.0 };
        canvas.line(
            &[at(x, bottom), at(x, bottom + length)],
            Pen::solid(0.7, RULE),
        );
        if named {
            let said = say::chart_quarter_short(quarter.to_string(), year.to_string());
            let word = words.say(&said);
            canvas.text(&word, at(x + 3.5, bottom + 12.0), Align::Start, NOTE);
            free = x + 3.5 + text_width(&word, NOTE) + 2.5;
        }
    }
}

fn limits(canvas: &mut Canvas<'_>, lines: RangeLines, axes: &Axes, words: &Catalogue) {
    let line = |y: f64| [at(LEFT, y), at(RIGHT, y)];
    let (mean, control) = (axes.y(lines.centre), axes.y(lines.upper));
    canvas.line(&line(mean), Pen::solid(0.8, RULE));
    canvas.line(&line(control), Pen::solid(1.2, ACCENT));
    let mut word = |said, y, look| {
        canvas.text(&words.say(&said), at(RIGHT + 6.0, y), Align::Start, look);
    };
    let of_control = say::chart_range_control(whole(lines.upper));
    word(of_control, control + 3.0, VALUE.inked(ACCENT));
    // Two words need ten points between them.
    let below = mean.max(control + 10.0) + 3.0;
    word(say::chart_range_mean(whole(lines.centre)), below, NOTE);
}

fn marks(canvas: &mut Canvas<'_>, chart: &RangeChart, lines: RangeLines, axes: &Axes) {
    let place = |(number, point): (usize, &RangePoint)| {
        at(axes.x(number), axes.y(point.signed_percent.abs()))
    };
    let line: Vec<_> = chart.points.iter().enumerate().map(place).collect();
    canvas.line(&line, Pen::solid(0.5, HAIRLINE));
    let radius = (axes.pitch * 0.42).clamp(1.0, 2.5);
    for (spot, point) in line.iter().zip(&chart.points) {
        if !point.agrees {
            disagreeing(canvas, *spot);
        } else if point.beyond {
            canvas.circle(*spot, 3.4, None, Pen::solid(1.4, INK));
        } else if axes.pitch >= TOLD_APART {
            canvas.circle(*spot, radius, None, Pen::solid(0.9, INK));
        }
    }
    let spots = line.into_iter().zip(&chart.points);
    let named: Vec<_> = spots
        .filter(|(_, point)| point.beyond || !point.agrees)
        .collect();
    let levels = [axes.y(lines.upper), axes.y(lines.centre)];
    name_apart(canvas, &named, TOP - 8.0, &levels);
}

fn whole(percent: f64) -> String {
    format!("{percent:.0}")
}

fn alt(chart: &RangeChart, lines: RangeLines, words: &Catalogue) -> String {
    let (beyond, codes) = listed(chart, |point| point.beyond, words);
    words.say(&say::chart_range(
        chart.points.len() as u64,
        whole(lines.centre),
        whole(lines.upper),
        beyond,
        codes,
    ))
}
