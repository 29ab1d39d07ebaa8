//! One mark for each package, by food group, on the scale of concentrations.
//!
//! Where a group has more packages than marks can show apart, counts and columns of equal bins take their place: the
//! drawing never grows with the number of packages, only with that of the groups.

use crate::model::decided::JudgedProduct;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::render::charts::Chart;
use crate::render::charts::frame::{Concentrations, Place, in_parts, names};
use crate::render::charts::marks::{Ink, Mark, Shape, columns, draw, lanes_of, placed};
use crate::render::charts::scale::{NOTE, ROW, Span, VALUE, span, wrapped};
use crate::render::charts::style::{Align, Canvas, INK, Pen, Type, WIDTH, at, text_width};
use crate::render::numbers;
use crate::render::terms::Terms;
use crate::render::words::summary::group_name;
use crate::words::{Said, say, side, yes_or_no};
use anyhow::Result;
use std::collections::BTreeMap;
use std::iter::once;

/// Food groups in one chart: a page of them.
pub const ROWS_A_CHART: usize = 9;

const NAME_WIDTH: f64 = 102.0;
const BELOW_LEFT: f64 = 137.0;
const BELOW_COUNT: f64 = BELOW_LEFT - 7.0;
const SCALE: Span = span(223.0, 438.0);
const CELL: Span = span(BELOW_LEFT - 27.0, SCALE.from - 14.0);
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
    let mut of_group: BTreeMap<String, Vec<&PackageResult>> = BTreeMap::new();
    for product in products {
        let packages = of_group.entry(group_of(product)).or_default();
        packages.extend(&product.verdict.packages);
    }
    let row = |name: &String| StripRow {
        name: name.clone(),
        packages: of_group.remove(name).unwrap_or_default(),
    };
    names.iter().map(row).collect()
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
    let packages = rows.iter().flat_map(|row| row.packages.iter().copied());
    let plot = Concentrations::holding(packages, (CELL, SCALE), terms);
    let most = PITCH * ROWS_A_CHART as f64;
    let is_crowded = |row: &StripRow<'_>| {
        let marks = placed(row.packages.iter().copied(), &plot.scale);
        lanes_of(&marks).is_none()
    };
    let one = |name, rows: &[StripRow<'_>]| {
        plot.draw(
            (name, alt(rows, terms)),
            (rows, &|_| PITCH),
            |canvas, flag| head(canvas, &plot, flag),
            |canvas, row, place| draw_row(canvas, row, &plot, place),
            (say::chart_strip_foot(), 2.0),
        )
    };
    Ok(StripPlot {
        charts: in_parts("strip-plot", rows, (most, most), |_| PITCH, one)?,
        crowded: rows.iter().any(is_crowded),
    })
}

fn head(canvas: &mut Canvas<'_>, plot: &Concentrations<'_>, flag: Span) {
    let terms = plot.terms;
    let words = &terms.words;
    let left = words.say(&say::chart_strip_left(side(terms.rule)));
    let right = words.say(&say::chart_strip_right(side(terms.rule)));
    let undecided = words.say(&say::chart_undecided());
    let centre = BELOW_LEFT + text_width(&terms.below_head(), NOTE) / 2.0;
    let below_end = plot.head_of_cell(canvas, flag, centre);
    // Where the limit stands at the start of the scale there is room for these words on one side only.
    if flag.from - 7.0 - text_width(&left, NOTE) > below_end + 8.0 {
        canvas.text(&left, at(flag.from - 7.0, 12.0), Align::End, NOTE);
    }
    if flag.to + 7.0 + text_width(&right, NOTE) < UNDECIDED - 22.0 {
        canvas.text(&right, at(flag.to + 7.0, 12.0), Align::Start, NOTE);
    }
    canvas.text(&undecided, at(WIDTH, 12.0), Align::End, NOTE);
}

fn draw_row(
    canvas: &mut Canvas<'_>,
    row: &StripRow<'_>,
    plot: &Concentrations<'_>,
    Place { middle, .. }: Place,
) {
    name(canvas, row, plot.terms, middle);
    let packages = || row.packages.iter().copied();
    let count = |wanted| packages().filter(|one| Mark::of(one) == wanted).count();
    let (below, undecided) = (count(Mark::Below), count(Mark::Undecided));
    below_column(canvas, below, row.packages.len(), middle);
    if undecided > 0 {
        let place = at(UNDECIDED, middle);
        draw(canvas, Shape::Circle, Ink::Dashed, place, 3.2);
    }
    if undecided > 1 {
        let beside = at(UNDECIDED + 8.0, middle + 3.0);
        canvas.text(&undecided.to_string(), beside, Align::Start, VALUE);
    }
    let marks = placed(packages(), &plot.scale);
    match lanes_of(&marks) {
        Some(lanes) => marks
            .iter()
            .zip(lanes)
            .for_each(|(mark, lane)| mark.draw(canvas, middle + lane)),
        None => columns(canvas, &marks, &plot.scale, middle),
    }
}

/// The group's name, in the smallest type where it is long, and never cut; below it how many packages.
fn name(canvas: &mut Canvas<'_>, row: &StripRow<'_>, terms: &Terms, middle: f64) {
    let group = group_name(&row.name, &terms.words);
    let mut lines: Vec<_> = wrapped(&group, NAME_WIDTH, ROW).collect();
    if lines.len() > 3 {
        let small = Type::strong(NOTE.size, INK);
        lines = wrapped(&group, NAME_WIDTH, small).collect();
    }
    let packages = say::chart_packages(row.packages.len() as u64);
    lines.push((terms.words.say(&packages), NOTE));
    let pitch = (PITCH / lines.len() as f64).min(10.4);
    names(canvas, &lines, pitch, middle);
}

/// Small arrows with their number in front; more than they have room for are a bar, whose length is their share.
fn below_column(canvas: &mut Canvas<'_>, below: usize, all: usize, middle: f64) {
    let count = at(BELOW_COUNT, middle + 3.0);
    canvas.text(&below.to_string(), count, Align::End, VALUE);
    if below > ARROWS_AT_MOST {
        let width = (SCALE.from - 22.0 - BELOW_LEFT) * below as f64 / all as f64;
        let from = at(BELOW_LEFT, middle - 6.0);
        return canvas.frame(from, from.by(width, 12.0), Pen::solid(0.9, INK));
    }
    let lines = below.div_ceil(ARROWS_A_LINE);
    for arrow in 0..below {
        let (line, place) = (arrow / ARROWS_A_LINE, arrow % ARROWS_A_LINE);
        let x = BELOW_LEFT + 2.3 + 5.3 * place as f64;
        let y = middle + 7.6 * (line as f64 - (lines as f64 - 1.0) / 2.0);
        draw(canvas, Shape::Left, Ink::Outline, at(x, y), 2.3);
    }
}

fn alt(rows: &[StripRow<'_>], terms: &Terms) -> String {
    let plot = say::chart_strip(terms.unit, &terms.the_line, &terms.limit);
    let rows = rows.iter().map(|row| told(row, terms));
    terms.words.text(once(plot).chain(rows))
}

fn told(row: &StripRow<'_>, terms: &Terms) -> Said {
    let standing = |wanted: &[Standing]| {
        let packages = row.packages.iter();
        let held = packages.filter(|package| wanted.contains(&package.standing));
        held.count().to_string()
    };
    let means = row.packages.iter().filter_map(|one| match one.result {
        ResultKind::Value { mean } => Some(mean),
        _ => None,
    });
    let highest = means.max_by(|a, b| a.compare(*b));
    let figure = highest.map(|mean| numbers::figure(mean, terms.rule));
    say::chart_strip_group(
        group_name(&row.name, &terms.words),
        row.packages.len() as u64,
        standing(&[Standing::BelowQuantification]),
        &terms.below,
        standing(&[Standing::Within]),
        &terms.measured,
        standing(&[Standing::Over]),
        standing(&[Standing::Unresolved, Standing::Inconclusive]),
        yes_or_no(figure.is_some()),
        terms.words.locale().figure(&figure.unwrap_or_default()),
        side(terms.rule),
    )
}
