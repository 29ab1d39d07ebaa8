//! One mark for each package, by food group, on the scale of concentrations.
//!
//! Where a group has more packages than marks can show apart, counts and columns of equal bins take their place: the
//! drawing never grows with the number of packages, only with that of the groups.

use crate::model::decided::JudgedProduct;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::render::charts::Chart;
use crate::render::charts::frame::{Concentrations, Frame, Place, in_parts, lines};
use crate::render::charts::marks::{Ink, Mark, Shape, columns, draw, draw_mark, lanes_of, placed};
use crate::render::charts::scale::{LogScale, NOTE, ROW, Span, VALUE, wrap};
use crate::render::charts::style::{Align, Canvas, GRID, INK, Pen, Type, WIDTH, at, text_width};
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
const SCALE: Span = Span {
    from: 223.0,
    to: 438.0,
};
const CELL: Span = Span {
    from: BELOW_LEFT - 27.0,
    to: SCALE.from - 14.0,
};
const UNDECIDED: f64 = 470.0;
const PITCH: f64 = 48.0;
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
    let packages = rows.iter().flat_map(|row| &row.packages);
    let values = packages.filter_map(|package| Mark::of(package).x());
    let plot = Concentrations {
        scale: LogScale::holding(values, terms.rule.ppm, terms.measurable(), SCALE),
        cell: CELL,
        terms,
    };
    let most = PITCH * ROWS_A_CHART as f64;
    let is_crowded = |row: &StripRow<'_>| lanes_of(&placed(&row.packages, &plot.scale)).is_none();
    Ok(StripPlot {
        charts: in_parts(
            "strip-plot",
            rows,
            (most, most),
            |_| PITCH,
            |name, part, _| one(name, part, &plot),
        )?,
        crowded: rows.iter().any(is_crowded),
    })
}

fn one(name: String, rows: &[StripRow<'_>], plot: &Concentrations<'_>) -> Result<Chart> {
    let frame = Frame {
        head: Concentrations::HEAD,
        foot: Concentrations::FOOT,
        between: Some(Pen::solid(0.5, GRID)),
        height: &|_| PITCH,
    };
    let terms = plot.terms;
    let said = [say::chart_strip_foot(), say::chart_scale(terms.unit)];
    let foot = said.map(|said| terms.words.say(&said));
    frame.draw(
        (name, alt(rows, terms)),
        rows.len(),
        |canvas, bottom| ground(canvas, plot, bottom),
        |canvas, number, place| draw_row(canvas, &rows[number], plot, place),
        |canvas, bottom| plot.foot(canvas, &foot, bottom + 2.0),
    )
}

fn ground(canvas: &mut Canvas<'_>, plot: &Concentrations<'_>, bottom: f64) -> Result<()> {
    let (flag, terms) = (plot.ground(canvas, bottom)?, plot.terms);
    let words = &terms.words;
    let left = words.say(&say::chart_strip_left(side(terms.rule)));
    let right = words.say(&say::chart_strip_right(side(terms.rule)));
    let undecided = words.say(&say::chart_undecided());
    let centre = BELOW_LEFT + text_width(&terms.below_head(), NOTE) / 2.0;
    let below_end = plot.head_of_cell(canvas, flag, centre)?;
    // Where the limit stands at the start of the scale there is room for these words on one side only.
    if flag.from - 7.0 - text_width(&left, NOTE) > below_end + 8.0 {
        canvas.text(&left, at(flag.from - 7.0, 12.0), Align::End, NOTE)?;
    }
    if flag.to + 7.0 + text_width(&right, NOTE) < UNDECIDED - 22.0 {
        canvas.text(&right, at(flag.to + 7.0, 12.0), Align::Start, NOTE)?;
    }
    canvas.text(&undecided, at(WIDTH, 12.0), Align::End, NOTE)
}

fn draw_row(
    canvas: &mut Canvas<'_>,
    row: &StripRow<'_>,
    plot: &Concentrations<'_>,
    place: Place,
) -> Result<()> {
    let middle = place.middle;
    name(canvas, row, plot.terms, middle)?;
    let marks = || row.packages.iter().map(|package| Mark::of(package));
    let below = marks().filter(|mark| *mark == Mark::Below).count();
    let undecided = marks().filter(|mark| *mark == Mark::Undecided).count();
    below_column(canvas, below, row.packages.len(), middle)?;
    if undecided > 0 {
        draw(
            canvas,
            Shape::Circle,
            Ink::Dashed,
            at(UNDECIDED, middle),
            3.2,
        )?;
    }
    if undecided > 1 {
        let beside = at(UNDECIDED + 8.0, middle + 3.0);
        canvas.text(&undecided.to_string(), beside, Align::Start, VALUE)?;
    }
    let placed = placed(&row.packages, &plot.scale);
    match lanes_of(&placed) {
        Some(lanes) => placed
            .iter()
            .zip(lanes)
            .try_for_each(|((x, mark), lane)| draw_mark(canvas, *mark, *x, middle + lane)),
        None => columns(canvas, &placed, &plot.scale, middle),
    }
}

/// The group's name, in the smallest type where it is long, and never cut; below it how many packages.
fn name(canvas: &mut Canvas<'_>, row: &StripRow<'_>, terms: &Terms, middle: f64) -> Result<()> {
    let group = group_name(&row.name, &terms.words);
    let small = Type {
        size: NOTE.size,
        ..ROW
    };
    let look = if wrap(&group, NAME_WIDTH, ROW).len() > 3 {
        small
    } else {
        ROW
    };
    let packages = say::chart_packages(row.packages.len() as u64);
    let mut names: Vec<(String, Type)> = wrap(&group, NAME_WIDTH, look)
        .into_iter()
        .map(|line| (line, look))
        .collect();
    names.push((terms.words.say(&packages), NOTE));
    let pitch = (PITCH / names.len() as f64).min(10.4);
    lines(canvas, &names, pitch, middle)
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
        let width = (SCALE.from - 22.0 - BELOW_LEFT) * below as f64 / all as f64;
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
        draw(canvas, Shape::Left, Ink::Outline, at(x, y), 2.3)?;
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
