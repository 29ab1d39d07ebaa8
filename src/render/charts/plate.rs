//! The chart of a plate: its curve, the wells of its standards, and where controls and samples come to lie on it.

use crate::model::plate::{Concentration, MeasuredPlate, Recomputed, StandardUnit, Wells};
use crate::model::ppm::Ppm;
use crate::render::charts::Chart;
use crate::render::charts::scale::{NOTE, VALUE};
use crate::render::charts::style::{
    Align, At, Canvas, GRID, HAIRLINE, INK, INK_2, Pen, RULE, WIDTH, at, draw, text_width,
};
use crate::render::numbers::{plain, significant};
use crate::words::{Catalogue, say};
use anyhow::Result;
use libm::{exp10, log1p, log10};

const LEFT: f64 = 30.0;
const RIGHT: f64 = WIDTH - 6.0;
const TOP: f64 = 20.0;
const PLOT: f64 = 140.0;
const FOOT: f64 = 28.0;
const HEIGHT: f64 = TOP + PLOT + FOOT;

/// Marks that are named at most.
const NAMED_AT_MOST: usize = 12;

/// Room between the frame and the first and the last standard: what lies beyond them is marked there.
const EDGE: f64 = 16.0;

/// The chart of a plate; amounts in the food are in `amount`.
///
/// # Errors
/// None that data can cause.
pub fn plate(measured: &MeasuredPlate, amount: &str, words: &Catalogue) -> Result<Chart> {
    let scales = Scales::holding(measured);
    let svg = draw(WIDTH, HEIGHT, |canvas| {
        scales.ground(canvas, measured, amount, words);
        if let Some(curve) = &measured.curve {
            let points = curve.drawn.iter();
            let points: Vec<At> = points.map(|(x, y)| scales.at(x.0, y.0)).collect();
            canvas.line(&points, Pen::solid(1.1, INK));
        }
        standards(canvas, measured, &scales);
        read(canvas, measured, &scales);
    })?;
    let alt = words.say(&alt(measured, words));
    Ok(Chart::new("plate", svg, alt, HEIGHT))
}

fn alt(measured: &MeasuredPlate, words: &Catalogue) -> crate::words::Said {
    let ends = |standard: Option<&crate::model::plate::Standard>| {
        let shown = standard.map(|one| plain(Ppm(one.concentration.0)));
        words.locale().figure(&shown.unwrap_or_default())
    };
    let standards = &measured.plate.standards;
    let reported = measured
        .samples
        .iter()
        .filter_map(|one| one.reported.as_ref());
    say::plate_chart(
        standards.len() as u64,
        ends(standards.first()),
        ends(standards.last()),
        measured.samples.len() as u64,
        reported.filter(|reported| !reported.agrees).count() as u64,
    )
}

/// Concentrations along, as log10(x + 1); absorbances up.
struct Scales {
    first: f64,
    last: f64,
    top: f64,
    bottom: f64,
    step: f64,
}

impl Scales {
    fn holding(measured: &MeasuredPlate) -> Scales {
        let plate = &measured.plate;
        let standards = plate.standards.iter().map(|one| &one.wells);
        let controls = plate.controls.iter().map(|one| &one.wells);
        let samples = plate.samples.iter().map(|one| &one.wells);
        let wells = standards.chain(controls).chain(samples);
        let seen = wells.flat_map(|wells| wells.0.iter().map(|well| well.absorbance.0));
        let (least, most) = seen.fold((0.0_f64, 0.1_f64), |(least, most), y| {
            (least.min(y), most.max(y))
        });
        let step = step((most - least) / 5.0);
        let ends = |standard: Option<&crate::model::plate::Standard>| {
            log1p(standard.map_or(0.0, |one| one.concentration.0))
        };
        let (first, last) = (ends(plate.standards.first()), ends(plate.standards.last()));
        Scales {
            first,
            last: if last > first { last } else { first + 1.0 },
            top: (most / step).ceil() * step,
            bottom: (least / step).floor() * step,
            step,
        }
    }

    fn x(&self, concentration: f64) -> f64 {
        let share = (log1p(concentration.max(0.0)) - self.first) / (self.last - self.first);
        let (left, right) = (LEFT + EDGE, RIGHT - EDGE);
        // What lies beyond the standards is marked at the edge of the frame.
        (left + (right - left) * share).clamp(LEFT + 4.0, RIGHT - 4.0)
    }

    fn y(&self, absorbance: f64) -> f64 {
        let share = (absorbance - self.bottom) / (self.top - self.bottom);
        TOP + PLOT * (1.0 - share.clamp(0.0, 1.0))
    }

    fn at(&self, concentration: f64, absorbance: f64) -> At {
        at(self.x(concentration), self.y(absorbance))
    }

    fn ground(
        &self,
        canvas: &mut Canvas<'_>,
        measured: &MeasuredPlate,
        amount: &str,
        words: &Catalogue,
    ) {
        let lines = ((self.top - self.bottom) / self.step).round() as i32;
        for line in 0..=lines {
            let absorbance = self.bottom + f64::from(line) * self.step;
            let y = self.y(absorbance);
            canvas.line(&[at(LEFT, y), at(RIGHT, y)], Pen::solid(0.5, GRID));
            let figure = words.locale().figure(&significant(absorbance, 3));
            canvas.text(&figure, at(LEFT - 5.0, y + 2.8), Align::End, NOTE);
        }
        let bottom = TOP + PLOT;
        let frame = [at(LEFT, TOP), at(LEFT, bottom), at(RIGHT, bottom)];
        canvas.line(&frame, Pen::solid(0.9, RULE));
        let mut free = f64::NEG_INFINITY;
        for standard in &measured.plate.standards {
            let x = self.x(standard.concentration.0);
            canvas.line(&[at(x, bottom), at(x, bottom + 3.0)], Pen::solid(0.7, RULE));
            let figure = plain(Ppm(standard.concentration.0));
            let figure = words.locale().figure(&figure);
            let half = text_width(&figure, NOTE) / 2.0;
            if x - half >= free {
                canvas.text(&figure, at(x, bottom + 12.0), Align::Middle, NOTE);
                free = x + half + 4.0;
            }
        }
        let unit = match measured.unit {
            StandardUnit::PpmGluten => "food",
            StandardUnit::NgMlGliadin { .. } => "extract",
        };
        let (up, along) = (
            words.say(&say::plate_up()),
            words.say(&say::plate_along(unit, amount)),
        );
        canvas.text(&up, at(0.0, 8.5), Align::Start, NOTE);
        canvas.text(&along, at(RIGHT, bottom + 25.0), Align::End, NOTE);
    }
}

/// A circle for each well.
fn standards(canvas: &mut Canvas<'_>, measured: &MeasuredPlate, scales: &Scales) {
    for standard in &measured.plate.standards {
        for well in &standard.wells.0 {
            let spot = scales.at(standard.concentration.0, well.absorbance.0);
            canvas.circle(spot, 2.4, None, Pen::solid(0.9, INK));
        }
    }
}

/// A diamond for each control, a cross for each sample, and a triangle for what was reported of it. Those that differ are
/// named.
fn read(canvas: &mut Canvas<'_>, measured: &MeasuredPlate, scales: &Scales) {
    let plate = &measured.plate;
    for (control, found) in plate.controls.iter().zip(&measured.controls) {
        if let Some(spot) = spot(measured, *found, control.dilution, &control.wells, scales) {
            canvas.diamond(spot, 3.6, Pen::solid(1.0, INK));
        }
    }
    let mut named: Vec<(At, &str)> = Vec::new();
    for (sample, found) in plate.samples.iter().zip(&measured.samples) {
        let own = spot(
            measured,
            found.recomputed,
            sample.dilution,
            &sample.wells,
            scales,
        );
        let Some(own) = own else {
            continue;
        };
        if let Some(reported) = &found.reported
            && let Some(ppm) = reported.ppm
        {
            let x = scales.x(in_unit(measured, ppm, sample.dilution).0);
            let there = at(x, own.y);
            canvas.line(&[own, there], Pen::solid(0.5, HAIRLINE));
            canvas.arrow(there, 3.0, 1.0, false, Pen::solid(0.8, INK_2));
        }
        canvas.cross(own, 2.6, Pen::solid(1.2, INK));
        if found.reported.as_ref().is_some_and(|one| !one.agrees) {
            named.push((own, sample.package_code.as_str()));
        }
    }
    name(canvas, named);
}

/// Names marks above them, on the side on which the curve is not, and none over another.
fn name(canvas: &mut Canvas<'_>, mut named: Vec<(At, &str)>) {
    const LIFT: f64 = 9.0;
    const APART: f64 = 10.0;
    named.sort_by(|a, b| a.0.x.total_cmp(&b.0.x));
    let mut taken: Vec<(f64, f64, f64)> = Vec::new();
    for (spot, code) in named.into_iter().take(NAMED_AT_MOST) {
        let width = text_width(code, VALUE);
        let right = (spot.x - 4.0).max(LEFT + 4.0 + width);
        let left = right - width;
        let mut y = spot.y - LIFT;
        while taken
            .iter()
            .any(|(from, to, at)| left < to + 4.0 && right > from - 4.0 && (y - at).abs() < APART)
        {
            y -= APART;
        }
        // Where there is no room above, the table below the chart names it.
        if y < TOP {
            continue;
        }
        taken.push((left, right, y));
        canvas.line(&[spot, at(right + 1.0, y - 2.0)], Pen::solid(0.4, HAIRLINE));
        canvas.text(code, at(right, y), Align::End, VALUE);
    }
}

/// The least of 1, 2 and 5 times a power of ten that is no smaller.
fn step(least: f64) -> f64 {
    let power = exp10(log10(least).floor());
    let steps = [1.0, 2.0, 5.0, 10.0].map(|times| times * power);
    let wanted = steps.into_iter().find(|step| *step >= least * (1.0 - 1e-9));
    wanted.unwrap_or(least)
}

/// Where wells lie on the curve: by their mean absorbance, and by what they come to before their dilution is counted.
fn spot(
    measured: &MeasuredPlate,
    found: Option<Recomputed>,
    dilution: f64,
    wells: &Wells,
    scales: &Scales,
) -> Option<At> {
    let mean = wells.mean()?.0;
    Some(match found? {
        Recomputed::Figure(ppm) => scales.at(in_unit(measured, ppm, dilution).0, mean),
        Recomputed::Below(_) => at(LEFT + 4.0, scales.y(mean)),
        Recomputed::Above(_) => at(RIGHT - 4.0, scales.y(mean)),
    })
}

/// What is in the food, as a standard of the same has it.
fn in_unit(measured: &MeasuredPlate, ppm: Ppm, dilution: f64) -> Concentration {
    let one = measured.unit.ppm(Concentration(1.0));
    Concentration(ppm.0 / dilution / one.0)
}
