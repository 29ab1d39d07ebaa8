//! One mark for each package, by food group, on the scale of concentrations.
//!
//! Where a group has more packages than marks can show apart, counts and columns of equal bins take their place: the
//! drawing never grows with the number of packages, only with that of the groups.

use crate::model::decided::JudgedProduct;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::render::charts::Chart;
use crate::render::charts::marks::{Mark, columns, draw_mark, lanes};
use crate::render::charts::scale::{LogScale, NOTE, ROW, VALUE, wrap};
use crate::render::charts::style::{
    Align, Canvas, INK, Pen, Points, Type, WIDTH, at, draw, text_width,
};
use crate::render::numbers;
use crate::render::terms::Terms;
use crate::render::words::summary::group_name;
use crate::words::{say, side};
use anyhow::Result;

/// Food groups in one chart: a page of them.
pub const ROWS_A_CHART: usize = 9;

const NAME_WIDTH: f64 = 102.0;
const BELOW_LEFT: f64 = 137.0;
const BELOW_COUNT: f64 = BELOW_LEFT - 7.0;
const SCALE_LEFT: f64 = 223.0;
const SCALE_RIGHT: f64 = 438.0;
const UNDECIDED: f64 = 470.0;
const HEAD: f64 = 26.0;
const PITCH: f64 = 48.0;
const FOOT: f64 = 26.0;
const ARROWS_A_LINE: usize = 13;
const ARROWS_AT_MOST: usize = 39;

/// A food group's packages.
#[derive(Clone, Debug)]
pub struct StripRow<'a> {
    /// The group's name.
    pub name: String,
    /// Its packages.
    pub packages: Vec<&'a PackageResult>,
}

/// The rows of the plot: groups as `names` has them, each with its packages in the order of the products.
pub fn rows<'a>(
    products: &'a [JudgedProduct],
    names: &[String],
    group_of: impl Fn(&JudgedProduct) -> String,
) -> Vec<StripRow<'a>> {
    let mut rows: Vec<StripRow> = names
        .iter()
        .map(|name| StripRow {
            name: name.clone(),
            packages: Vec::new(),
        })
        .collect();
    let places: std::collections::BTreeMap<&str, usize> = names
        .iter()
        .enumerate()
        .map(|(place, name)| (name.as_str(), place))
        .collect();
    for product in products {
        if let Some(place) = places.get(group_of(product).as_str()) {
            rows[*place].packages.extend(&product.verdict.packages);
        }
    }
    rows
}

/// The plot in as many charts as the rows need.
pub struct StripPlot {
    /// The charts, all on one scale.
    pub charts: Vec<Chart>,
    /// Whether some row has columns of equal bins in place of marks that would touch.
    pub crowded: bool,
}

/// The plot in as many charts as the rows need, all on one scale.
pub fn strip(rows: &[StripRow<'_>], terms: &Terms) -> Result<StripPlot> {
    let values = rows
        .iter()
        .flat_map(|row| &row.packages)
        .filter_map(|package| Mark::of(package).x());
    let scale = LogScale::holding(values, terms, SCALE_LEFT, SCALE_RIGHT);
    let parts = rows.chunks(ROWS_A_CHART).enumerate();
    let charts = parts.map(|(number, part)| one(part, &scale, terms, number + 1));
    Ok(StripPlot {
        charts: charts.collect::<Result<_>>()?,
        crowded: rows.iter().any(|row| lanes(&placed(row, &scale)).is_none()),
    })
}

/// The marks of a row that have a place on the scale, from the left.
fn placed(row: &StripRow<'_>, scale: &LogScale) -> Vec<(f64, Mark)> {
    let marks = row.packages.iter().map(|package| Mark::of(package));
    let mut placed: Vec<(f64, Mark)> = marks
        .filter_map(|mark| Some((scale.x(mark.x()?), mark)))
        .collect();
    placed.sort_by(|a, b| a.0.total_cmp(&b.0));
    placed
}

fn one(rows: &[StripRow<'_>], scale: &LogScale, terms: &Terms, number: usize) -> Result<Chart> {
    let height = HEAD + PITCH * rows.len() as f64 + FOOT;
    let svg = draw(WIDTH, height, |canvas| {
        let bottom = height - FOOT;
        ground(canvas, rows.len(), scale, terms)?;
        for (place, row) in rows.iter().enumerate() {
            let middle = HEAD + PITCH * (place as f64 + 0.5);
            draw_row(canvas, row, scale, terms, middle)?;
        }
        feet(canvas, scale, terms, bottom + 2.0)
    })?;
    let name = if number == 1 {
        "strip-plot".to_owned()
    } else {
        format!("strip-plot-{number}")
    };
    Ok(Chart::new(name, svg, alt(rows, terms), height))
}

fn ground(canvas: &mut Canvas<'_>, rows: usize, scale: &LogScale, terms: &Terms) -> Result<()> {
    let bottom = HEAD + PITCH * rows as f64;
    let limit = scale.limit();
    scale.ground(canvas, bottom)?;
    for row in 1..rows {
        let y = HEAD + PITCH * row as f64;
        canvas.line(
            &[at(0.0, y), at(WIDTH, y)],
            Pen::solid(0.5, crate::render::charts::style::GRID),
        )?;
    }
    let half = scale.flagged_limit(canvas, terms, bottom)?;
    let words = &terms.words;
    let left = words.say(&say::chart_strip_left(side(terms.rule)));
    let right = words.say(&say::chart_strip_right(side(terms.rule)));
    let undecided = words.say(&say::chart_undecided());
    let below = terms.below_head();
    let below_end = BELOW_LEFT + text_width(&below, NOTE);
    // Where the limit stands at the start of the scale there is room for these words on one side only.
    if limit - half - 7.0 - text_width(&left, NOTE) > below_end + 8.0 {
        canvas.text(&left, at(limit - half - 7.0, 12.0), Align::End, NOTE)?;
    }
    if limit + half + 7.0 + text_width(&right, NOTE) < UNDECIDED - 22.0 {
        canvas.text(&right, at(limit + half + 7.0, 12.0), Align::Start, NOTE)?;
    }
    if limit - half > below_end + 4.0 {
        canvas.text(&below, at(BELOW_LEFT, 12.0), Align::Start, NOTE)?;
    }
    canvas.text(&undecided, at(WIDTH, 12.0), Align::End, NOTE)
}

fn feet(canvas: &mut Canvas<'_>, scale: &LogScale, terms: &Terms, top: f64) -> Result<()> {
    let (foot, unit) = (say::chart_strip_foot(), say::chart_scale(terms.unit));
    let words = [foot, unit].map(|said| terms.words.say(&said));
    let cell = (BELOW_LEFT - 27.0, SCALE_LEFT - 14.0);
    scale.foot(canvas, &words, cell, terms, top)
}

fn draw_row(
    canvas: &mut Canvas<'_>,
    row: &StripRow<'_>,
    scale: &LogScale,
    terms: &Terms,
    middle: f64,
) -> Result<()> {
    name(canvas, row, terms, middle)?;
    let marks: Vec<Mark> = row
        .packages
        .iter()
        .map(|package| Mark::of(package))
        .collect();
    let below = marks.iter().filter(|mark| **mark == Mark::Below).count();
    let undecided = marks
        .iter()
        .filter(|mark| **mark == Mark::Undecided)
        .count();
    below_column(canvas, below, marks.len(), middle)?;
    if undecided > 0 {
        canvas.circle(
            at(UNDECIDED, middle),
            3.6,
            None,
            Pen::dashed(1.2, INK, 2.0, 1.4),
        )?;
        if undecided > 1 {
            canvas.text(
                &undecided.to_string(),
                at(UNDECIDED + 8.0, middle + 3.0),
                Align::Start,
                VALUE,
            )?;
        }
    }
    let placed = placed(row, scale);
    match lanes(&placed) {
        Some(lanes) => placed
            .iter()
            .zip(lanes)
            .try_for_each(|((x, mark), lane)| draw_mark(canvas, *mark, *x, middle + lane)),
        None => columns(canvas, &placed, scale, middle),
    }
}

fn name(canvas: &mut Canvas<'_>, row: &StripRow<'_>, terms: &Terms, middle: f64) -> Result<()> {
    let group = group_name(&row.name, &terms.words);
    let lines = wrap(&group, NAME_WIDTH, ROW);
    // Up to four lines fit a row; a longer name is set smaller, and never cut.
    let look = if lines.len() > 3 {
        Type { size: 7.8, ..ROW }
    } else {
        ROW
    };
    let lines = wrap(&group, NAME_WIDTH, look);
    let pitch = (40.0 / lines.len().max(1) as f64).min(10.4);
    let first = middle + 1.0
        - pitch * (lines.len() as f64 - 1.0) / 2.0
        - if lines.len() > 3 { 3.0 } else { 1.5 };
    for (number, line) in lines.iter().enumerate() {
        canvas.text(
            line,
            at(0.0, first + pitch * number as f64),
            Align::Start,
            look,
        )?;
    }
    let packages = say::chart_packages(row.packages.len() as u64);
    canvas.text(
        &terms.words.say(&packages),
        at(0.0, first + pitch * lines.len() as f64),
        Align::Start,
        NOTE,
    )
}

/// Small arrows with their number in front; more than they have room for are a bar, whose length is their share.
fn below_column(canvas: &mut Canvas<'_>, below: usize, all: usize, middle: f64) -> Result<()> {
    canvas.text(
        &below.to_string(),
        at(BELOW_COUNT, middle + 3.0),
        Align::End,
        VALUE,
    )?;
    if below > ARROWS_AT_MOST {
        let width = (SCALE_LEFT - 22.0 - BELOW_LEFT) * below as f64 / all as f64;
        let (from, to) = (
            at(BELOW_LEFT, middle - 6.0),
            at(BELOW_LEFT + width, middle + 6.0),
        );
        return canvas.frame(from, to, Pen::solid(0.9, INK));
    }
    let lines = below.div_ceil(ARROWS_A_LINE);
    for arrow in 0..below {
        let (line, place) = (arrow / ARROWS_A_LINE, arrow % ARROWS_A_LINE);
        let x = BELOW_LEFT + 2.3 + 5.3 * place as f64;
        let y = middle + 7.6 * (line as f64 - (lines as f64 - 1.0) / 2.0);
        canvas.arrow(at(x, y), 2.3, Points::Left, false, Pen::solid(0.8, INK))?;
    }
    Ok(())
}

fn alt(rows: &[StripRow<'_>], terms: &Terms) -> String {
    let plot = say::chart_strip(terms.unit, &terms.the_line, &terms.limit);
    let mut sentences = vec![terms.words.say(&plot)];
    sentences.extend(rows.iter().map(|row| told(row, terms)));
    sentences.join(" ")
}

fn told(row: &StripRow<'_>, terms: &Terms) -> String {
    let standing = |wanted: &[Standing]| {
        row.packages
            .iter()
            .filter(|package| wanted.contains(&package.standing))
            .count()
            .to_string()
    };
    let highest = row
        .packages
        .iter()
        .filter_map(|package| match package.result {
            ResultKind::Value { mean } => Some(mean),
            _ => None,
        })
        .max_by(|a, b| a.compare(*b));
    let (any, highest) = match highest {
        Some(mean) => ("yes", numbers::figure(mean, terms.rule)),
        None => ("no", String::new()),
    };
    terms.words.say(&say::chart_strip_group(
        group_name(&row.name, &terms.words),
        row.packages.len() as u64,
        standing(&[Standing::BelowQuantification]),
        &terms.below,
        standing(&[Standing::Within]),
        &terms.measured,
        standing(&[Standing::Over]),
        standing(&[Standing::Unresolved, Standing::Inconclusive]),
        any,
        terms.words.locale().figure(&highest),
        side(terms.rule),
    ))
}
