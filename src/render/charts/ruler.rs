//! The gluten ruler: every extraction of every package on one log scale, with the limit.
//!
//! Too little to measure has a cell of its own, in which position has no meaning. Solid marks are over the limit, open
//! ones within it; a dashed line joins extractions that disagree. Every mark is doubled by words at the end of its row.

use crate::model::extraction::Interval;
use crate::model::package::PackageResult;
use crate::model::pair::{PairState, Usage};
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::render::charts::style::{
    self, ACCENT, Align, At, Canvas, GRID, HAIRLINE, INK, INK_2, INK_3, PAPER, Pen, Points, Type,
    WIDTH, ZONE, at,
};
use crate::render::{numbers, words};
use anyhow::Result;

/// Packages on one picture: more would not fit on a page.
const PACKAGES_PER_PICTURE: usize = 22;

const CELL: (f64, f64) = (62.0, 99.0);
const SCALE: (f64, f64) = (114.0, 344.0);
const WORDS: f64 = 360.0;
const ZONE_END: f64 = 352.0;
const HEAD: f64 = 24.0;
const FOOT: f64 = 23.0;
const RADIUS: f64 = 3.9;

const ROW: Type = Type::strong(8.8, INK);
const NOTE: Type = Type::plain(7.8, INK_2);
const VALUE: Type = Type::strong(8.4, INK);
const AXIS: Type = Type::plain(8.6, INK);

/// Draws the ruler, on as many pictures as its packages need.
pub fn draw(packages: &[PackageResult], rule: Rule) -> Result<Vec<String>> {
    let scale = Scale::of(packages, rule);
    let dense = packages.len() > 3;
    let pictures = packages.chunks(PACKAGES_PER_PICTURE);
    pictures
        .map(|part| picture(part, rule, &scale, dense))
        .collect()
}

/// The log scale: from a round figure below all measured ones and the limit, to one above them.
pub struct Scale {
    start: f64,
    end: f64,
    /// Whether every reading below quantification is below the start of the scale, and so has its place in the cell.
    cell: bool,
}

impl Scale {
    /// The scale that holds all readings of these packages.
    pub fn of(packages: &[PackageResult], rule: Rule) -> Scale {
        let readings: Vec<Interval> = packages.iter().flat_map(readings).collect();
        let lowest = |least: f64, reading: &Interval| {
            least.min(reading.as_below().unwrap_or(reading.lower).0)
        };
        let highest =
            |most: f64, reading: &Interval| most.max(reading.upper.unwrap_or(reading.lower).0);
        let limit = rule.limit.ppm.0;
        let least = readings.iter().fold(5.0_f64, lowest);
        // The limit needs room on both sides: at the very end of the scale its two sides would not show.
        let start = round_down(if limit <= least { limit * 0.8 } else { least });
        let most = readings.iter().fold(limit * 2.0, highest);
        let end = if most * 1.2 > 100.0 {
            round_up(most * 1.2)
        } else {
            100.0
        };
        let below: Vec<f64> = readings
            .iter()
            .filter_map(|reading| reading.as_below())
            .map(|n| n.0)
            .collect();
        Scale {
            start,
            end,
            cell: below.iter().all(|n| Ppm(*n).same(Ppm(start))) && limit > start,
        }
    }

    /// Its first and last figure in words.
    pub fn words(&self) -> String {
        format!(
            "{} to {}",
            numbers::plain(Ppm(self.start)),
            numbers::plain(Ppm(self.end))
        )
    }

    fn x(&self, figure: f64) -> f64 {
        let share = (figure.max(self.start) / self.start).ln() / (self.end / self.start).ln();
        SCALE.0 + (SCALE.1 - SCALE.0) * share.min(1.0)
    }

    /// The figures that stand at a tick with a number: 1, 2 and 5 times each power of ten.
    fn numbered(&self) -> Vec<f64> {
        self.ticks()
            .into_iter()
            .filter(|tick| [1.0, 2.0, 5.0].contains(&leading(*tick)))
            .collect()
    }

    fn ticks(&self) -> Vec<f64> {
        let mut ticks = Vec::new();
        let mut decade = 10_f64.powi(self.start.log10().floor() as i32);
        while decade <= self.end {
            let within = |tick: &f64| *tick >= self.start * 0.999 && *tick <= self.end * 1.001;
            ticks.extend((1..10).map(|i| f64::from(i) * decade).filter(within));
            decade *= 10.0;
        }
        ticks
    }
}

/// The first digit of a round figure.
fn leading(figure: f64) -> f64 {
    (figure / 10_f64.powi((figure * 1.000_001).log10().floor() as i32)).round()
}

fn round_down(figure: f64) -> f64 {
    let decade = 10_f64.powi((figure * 1.000_001).max(1e-6).log10().floor() as i32);
    [5.0, 2.0]
        .into_iter()
        .map(|i| i * decade)
        .find(|round| *round <= figure * 1.000_001)
        .unwrap_or(decade)
}

fn round_up(figure: f64) -> f64 {
    let decade = 10_f64.powi(figure.log10().floor() as i32);
    [1.0, 2.0, 5.0]
        .into_iter()
        .map(|i| i * decade)
        .find(|round| *round >= figure)
        .unwrap_or(10.0 * decade)
}

fn readings(package: &PackageResult) -> impl Iterator<Item = Interval> + '_ {
    let extractions = package.pair.extractions.iter();
    extractions.filter_map(|paired| paired.extraction.outcome.reading())
}

fn picture(packages: &[PackageResult], rule: Rule, scale: &Scale, dense: bool) -> Result<String> {
    let heights: Vec<f64> = packages
        .iter()
        .map(|package| row_height(package, dense))
        .collect();
    let bottom = HEAD + heights.iter().sum::<f64>();
    style::draw(WIDTH, bottom + FOOT, |canvas| {
        ground(canvas, rule, scale, bottom)?;
        let mut top = HEAD;
        for (index, (package, height)) in packages.iter().zip(&heights).enumerate() {
            if index > 0 {
                canvas.line(&[at(0.0, top), at(WIDTH, top)], Pen::solid(0.4, HAIRLINE))?;
            }
            limit_line(canvas, rule, scale, top, top + height)?;
            row(canvas, package, rule, scale, top, *height, dense)?;
            top += height;
        }
        strip(canvas, rule, scale, bottom)
    })
}

fn row_height(package: &PackageResult, dense: bool) -> f64 {
    let lines = code_lines(&package.pair.package.package_code).len() as f64;
    let least = if dense { 19.0 } else { 31.0 };
    f64::max(least, lines * 9.6 + if dense { 8.0 } else { 18.0 })
}

/// A code in pieces that fit beside the scale, broken after a dash or a dot where there is one.
fn code_lines(code: &str) -> Vec<String> {
    const ROOM: f64 = 58.0;
    let mut lines = vec![String::new()];
    for piece in code.split_inclusive(['-', '.', '_']) {
        for letter in std::iter::once(piece.to_owned()).flat_map(|piece| {
            let fits = style::text_width(&piece, ROW) <= ROOM;
            if fits {
                vec![piece]
            } else {
                piece.chars().map(String::from).collect()
            }
        }) {
            let last = lines.last_mut().expect("it starts with one line");
            if !last.is_empty() && style::text_width(&format!("{last}{letter}"), ROW) > ROOM {
                lines.push(letter);
            } else {
                last.push_str(&letter);
            }
        }
    }
    lines
}

fn ground(canvas: &mut Canvas<'_>, rule: Rule, scale: &Scale, bottom: f64) -> Result<()> {
    let limit = scale.x(rule.limit.ppm.0);
    canvas.fill(at(limit, HEAD), at(ZONE_END, bottom), ZONE)?;
    for figure in scale.numbered() {
        let x = scale.x(figure);
        canvas.line(&[at(x, HEAD), at(x, bottom)], Pen::solid(0.5, GRID))?;
    }
    let said = words::limit::LimitWords::of(rule);
    let flag = format!("Limit {}", said.figure());
    let half = (style::text_width(&flag, Type::strong(8.8, PAPER)) / 2.0 + 6.0).max(30.0);
    canvas.fill(at(limit - half, 6.0), at(limit + half, 20.0), ACCENT)?;
    canvas.text(
        &flag,
        at(limit, 16.0),
        Align::Middle,
        Type::strong(8.8, PAPER),
    )?;
    canvas.line(&[at(limit, 20.0), at(limit, HEAD)], Pen::solid(1.6, ACCENT))?;

    let cell_words = format!("below {}", numbers::plain(Ppm(scale.start)));
    let over = format!("{} →", said.over_the_limit());
    if limit + half + 5.0 + style::text_width(&over, NOTE) < WIDTH {
        canvas.text(&over, at(limit + half + 5.0, 15.6), Align::Start, NOTE)?;
    }
    let taken = if scale.cell {
        canvas.text(
            &cell_words,
            at((CELL.0 - 6.0 + CELL.1) / 2.0, 15.6),
            Align::Middle,
            NOTE,
        )?;
        (CELL.0 - 6.0 + CELL.1 + style::text_width(&cell_words, NOTE)) / 2.0 + 8.0
    } else {
        0.0
    };
    let within = format!("← {}", said.within_the_limit());
    if limit - half - 5.0 - style::text_width(&within, NOTE) > taken {
        canvas.text(&within, at(limit - half - 5.0, 15.6), Align::End, NOTE)?;
    }
    Ok(())
}

fn limit_line(
    canvas: &mut Canvas<'_>,
    rule: Rule,
    scale: &Scale,
    top: f64,
    bottom: f64,
) -> Result<()> {
    let limit = scale.x(rule.limit.ppm.0);
    canvas.line(
        &[at(limit, top), at(limit, bottom)],
        Pen::solid(1.6, ACCENT),
    )
}

/// The scale itself, drawn as a rule.
fn strip(canvas: &mut Canvas<'_>, rule: Rule, scale: &Scale, top: f64) -> Result<()> {
    let (from, to) = (top + 1.0, top + 22.0);
    let outline = Pen::solid(0.9, INK);
    if scale.cell {
        canvas.frame(at(CELL.0 - 6.0, from), at(CELL.1, to), outline)?;
        let middle = (CELL.0 - 6.0 + CELL.1) / 2.0;
        let label = format!("<{}", numbers::plain(Ppm(scale.start)));
        canvas.line(&[at(middle, from), at(middle, from + 4.0)], outline)?;
        canvas.text(
            &label,
            at(middle, to - 6.0),
            Align::Middle,
            Type::strong(8.6, INK),
        )?;
    }
    canvas.frame(at(SCALE.0 - 10.0, from), at(ZONE_END, to), outline)?;
    let limit = scale.x(rule.limit.ppm.0);
    let mut free_from = f64::MIN;
    let own = numbers::plain(rule.limit.ppm);
    let own_half = style::text_width(&own, Type::strong(8.6, ACCENT)) / 2.0 + 3.0;
    for tick in scale.ticks() {
        let x = scale.x(tick);
        let numbered = scale
            .numbered()
            .iter()
            .any(|figure| Ppm(*figure).same(Ppm(tick)));
        let length = if numbered { 7.0 } else { 4.0 };
        canvas.line(&[at(x, from), at(x, from + length)], Pen::solid(0.7, INK))?;
        let label = numbers::plain(Ppm(tick));
        let half = style::text_width(&label, AXIS) / 2.0;
        let hits_limit = (x - limit).abs() < half + own_half;
        if numbered && x - half > free_from && !hits_limit && x + half < ZONE_END - 1.0 {
            canvas.text(&label, at(x, to - 4.6), Align::Middle, AXIS)?;
            free_from = x + half + 3.0;
        }
    }
    canvas.line(
        &[at(limit, from - 1.0), at(limit, from + 7.0)],
        Pen::solid(1.6, ACCENT),
    )?;
    canvas.text(
        &own,
        at(limit, to - 4.6),
        Align::Middle,
        Type::strong(8.6, ACCENT),
    )?;
    let unit = match numbers::unit(rule.regime) {
        "ppm" => "ppm gluten (mg per kg)",
        other => &format!("{other} gluten (ppm)"),
    };
    canvas.text(unit, at(WORDS, from + 7.6), Align::Start, NOTE)?;
    canvas.text(
        "log scale: equal steps multiply",
        at(WORDS, from + 17.2),
        Align::Start,
        NOTE,
    )
}

fn row(
    canvas: &mut Canvas<'_>,
    package: &PackageResult,
    rule: Rule,
    scale: &Scale,
    top: f64,
    height: f64,
    dense: bool,
) -> Result<()> {
    let middle = top + height / 2.0;
    let codes = code_lines(&package.pair.package.package_code);
    let lot = package.pair.package.lot.as_deref().filter(|_| !dense);
    let lot = lot
        .map(|lot| format!("lot {lot}"))
        .filter(|lot| style::text_width(lot, NOTE) <= 60.0);
    let lines = codes.len() as f64 + if lot.is_some() { 1.0 } else { 0.0 };
    let mut baseline = middle - lines * 9.8 / 2.0 + 7.6;
    for code in &codes {
        canvas.text(code, at(0.0, baseline), Align::Start, ROW)?;
        baseline += 9.8;
    }
    if let Some(lot) = lot {
        canvas.text(&lot, at(0.0, baseline), Align::Start, NOTE)?;
    }
    marks(canvas, package, rule, scale, middle)?;

    row_words(canvas, package, middle, dense)
}

/// How the extractions agree, at the end of their row: on one line where there is room.
fn row_words(
    canvas: &mut Canvas<'_>,
    package: &PackageResult,
    middle: f64,
    dense: bool,
) -> Result<()> {
    let said = words::packages::agreement(package);
    let head = match package.pair.state {
        PairState::Agree => Type::plain(8.8, INK),
        PairState::Disagree | PairState::Incomplete | PairState::Missing => ROW,
    };
    let head_width = style::text_width(&said.head, head);
    let width = style::text_width(&said.detail, NOTE);
    if dense && WORDS + head_width + 5.0 + width <= WIDTH {
        canvas.text(&said.head, at(WORDS, middle + 3.0), Align::Start, head)?;
        return canvas.text(
            &said.detail,
            at(WORDS + head_width + 5.0, middle + 3.0),
            Align::Start,
            NOTE,
        );
    }
    let gap = if dense { 4.4 } else { 5.2 };
    // Only differences of many thousands are wider than their place.
    let fitted = Type {
        size: NOTE.size * f64::min(1.0, (WIDTH - WORDS) / width.max(1.0)),
        ..NOTE
    };
    canvas.text(
        &said.head,
        at(WORDS, middle + 2.8 - gap),
        Align::Start,
        head,
    )?;
    canvas.text(
        &said.detail,
        at(WORDS, middle + 2.6 + gap),
        Align::Start,
        fitted,
    )
}

/// One reading's place on the ruler.
struct Mark {
    x: f64,
    label: String,
    kind: MarkKind,
    over: bool,
    used: bool,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum MarkKind {
    InCell,
    Below,
    Number,
    Above,
}

fn marks_of(package: &PackageResult, rule: Rule, scale: &Scale) -> Vec<Mark> {
    let mark = |reading: Interval, used: bool| {
        let kind = match (reading.as_below(), reading.as_number()) {
            (Some(n), _) if scale.cell && n.same(Ppm(scale.start)) => MarkKind::InCell,
            (Some(_), _) => MarkKind::Below,
            (None, Some(_)) => MarkKind::Number,
            (None, None) => MarkKind::Above,
        };
        let x = match kind {
            MarkKind::InCell => 0.0,
            MarkKind::Below => scale.x(reading.upper.unwrap_or(reading.lower).0) - RADIUS,
            MarkKind::Number => scale.x(reading.lower.0),
            MarkKind::Above => scale.x(reading.lower.0) + 0.75 * RADIUS,
        };
        Mark {
            x,
            label: numbers::interval(reading, rule.limit),
            kind,
            over: rule.limit.over(reading.lower)
                || (reading.lower_open && reading.lower.same(rule.limit.ppm)),
            used,
        }
    };
    let extractions = package.pair.extractions.iter();
    let mut marks: Vec<Mark> = extractions
        .filter_map(|paired| {
            Some(mark(
                paired.extraction.outcome.reading()?,
                paired.usage == Usage::Used,
            ))
        })
        .collect();
    // Those in the cell share it evenly; three or more are drawn over one another rather than outside of it.
    let in_cell = marks
        .iter()
        .filter(|mark| mark.kind == MarkKind::InCell)
        .count() as f64;
    let room = CELL.1 - CELL.0 + 6.0;
    let step = f64::min(15.2, (room - 12.0) / f64::max(in_cell - 1.0, 1.0));
    let first = CELL.0 - 6.0 + room / 2.0 - step * (in_cell - 1.0) / 2.0;
    let cell_marks = marks
        .iter_mut()
        .filter(|mark| mark.kind == MarkKind::InCell);
    for (index, mark) in cell_marks.enumerate() {
        mark.x = first + step * index as f64;
    }
    marks.sort_by(|a, b| a.x.total_cmp(&b.x));
    spread(&mut marks);
    marks
}

/// Bounds of one figure stand beside one another, outwards from it: any place beyond it means the same.
fn spread(marks: &mut [Mark]) {
    const STEP: f64 = 8.0;
    let mut seen: Vec<String> = Vec::new();
    for mark in marks.iter_mut() {
        let outwards = match mark.kind {
            MarkKind::Below => -STEP,
            MarkKind::Above => STEP,
            MarkKind::InCell | MarkKind::Number => continue,
        };
        let before = seen.iter().filter(|label| **label == mark.label).count();
        seen.push(mark.label.clone());
        mark.x += outwards * before.min(3) as f64;
    }
    marks.sort_by(|a, b| a.x.total_cmp(&b.x));
}

fn marks(
    canvas: &mut Canvas<'_>,
    package: &PackageResult,
    rule: Rule,
    scale: &Scale,
    y: f64,
) -> Result<()> {
    let marks = marks_of(package, rule, scale);
    let used: Vec<&Mark> = marks.iter().filter(|mark| mark.used).collect();
    if let (Some(first), Some(last)) = (used.first(), used.last())
        && used.iter().any(|mark| mark.kind != MarkKind::InCell)
        && used.len() > 1
    {
        let pen = if package.pair.state == PairState::Disagree {
            Pen::dashed(1.5, INK, 3.0, 2.2)
        } else {
            Pen::solid(1.5, INK)
        };
        canvas.line(&[at(first.x, y), at(last.x, y)], pen)?;
    }
    labels(canvas, &marks, rule, scale, y)?;
    for mark in &marks {
        let (radius, pen) = if mark.used {
            (RADIUS, Pen::solid(1.4, INK))
        } else {
            (3.0, Pen::solid(0.9, INK_3))
        };
        let place = at(mark.x, y);
        match mark.kind {
            MarkKind::InCell | MarkKind::Below => {
                canvas.arrow(place, radius, Points::Left, false, pen)?
            }
            MarkKind::Number => {
                let fill = (mark.over && mark.used).then_some(INK);
                canvas.circle(place, radius, fill, pen)?;
            }
            MarkKind::Above => {
                canvas.arrow(place, radius, Points::Right, mark.over && mark.used, pen)?
            }
        }
    }
    Ok(())
}

/// The lowest and the highest value, left and right of the marks, or both on one side. A value never stands on the other
/// side of the limit than its mark, nor in the words at the row's end; where there is no such place it is left to the table.
fn labels(
    canvas: &mut Canvas<'_>,
    marks: &[Mark],
    rule: Rule,
    scale: &Scale,
    y: f64,
) -> Result<()> {
    const GAP: f64 = 7.0;
    let on_scale: Vec<&Mark> = marks
        .iter()
        .filter(|mark| mark.kind != MarkKind::InCell)
        .collect();
    let (Some(first), Some(last)) = (on_scale.first(), on_scale.last()) else {
        return Ok(());
    };
    let limit = scale.x(rule.limit.ppm.0);
    let joined_to_cell = marks.len() > on_scale.len();
    let least = if scale.cell { CELL.1 + 2.0 } else { CELL.0 };
    let fits_left = |text: &str| {
        let start = first.x - GAP - style::text_width(text, VALUE);
        !joined_to_cell && start > least && (first.x <= limit || start > limit + 1.0)
    };
    let fits_right = |text: &str| {
        let end = last.x + GAP + style::text_width(text, VALUE);
        end < WORDS - 4.0 && (last.x >= limit || end < limit - 2.0)
    };
    let alone = on_scale.iter().all(|mark| mark.label == first.label);
    let both = if alone {
        first.label.clone()
    } else {
        format!("{}, {}", first.label, last.label)
    };
    let (left, right) = if !alone && fits_left(&first.label) && fits_right(&last.label) {
        (Some(&first.label), Some(&last.label))
    } else if alone && fits_right(&both) {
        (None, Some(&both))
    } else if fits_left(&both) {
        (Some(&both), None)
    } else if fits_right(&both) && (alone || first.x >= limit || last.x < limit) {
        (None, Some(&both))
    } else if fits_right(&last.label) {
        (None, Some(&last.label))
    } else {
        (None, None)
    };
    let look = |mark: &Mark| {
        if mark.used {
            VALUE
        } else {
            Type::plain(8.4, INK_3)
        }
    };
    if let Some(text) = left {
        label(
            canvas,
            text,
            at(first.x - GAP, y),
            Align::End,
            look(first),
            limit,
        )?;
    }
    if let Some(text) = right {
        label(
            canvas,
            text,
            at(last.x + GAP, y),
            Align::Start,
            look(last),
            limit,
        )?;
    }
    Ok(())
}

/// A value on a ground that hides the lines behind it.
fn label(
    canvas: &mut Canvas<'_>,
    text: &str,
    place: At,
    align: Align,
    look: Type,
    limit: f64,
) -> Result<()> {
    let width = style::text_width(text, VALUE);
    let start = if align == Align::End {
        place.x - width
    } else {
        place.x
    };
    canvas.fill(
        at(start - 1.0, place.y - 5.0),
        at(start + width + 1.0, place.y + 5.0),
        back(start, limit),
    )?;
    canvas.text(text, at(place.x, place.y + 3.0), align, look)
}

fn back(x: f64, limit: f64) -> plotters::style::RGBColor {
    if x > limit { ZONE } else { PAPER }
}

/// What the marks mean.
pub fn key(rule: Rule) -> String {
    let said = words::limit::LimitWords::of(rule);
    format!(
        "Each mark is one extraction. Filled: {}. Open: {}. Arrow: beyond what the test measures. Dashed line: they disagree.",
        said.over_the_limit(),
        said.within_the_limit()
    )
}

/// Each picture in words, for those who cannot see it: the message, then every reading.
pub fn in_words(packages: &[PackageResult], rule: Rule) -> Vec<String> {
    let scale = Scale::of(packages, rule);
    let limit = words::limit::LimitWords::of(rule).figure();
    let said = |part: &[PackageResult]| {
        let rows: Vec<String> = part
            .iter()
            .map(|package| row_in_words(package, rule))
            .collect();
        format!(
            "Gluten ruler, log scale from {} {} with the limit at {limit}. {}",
            scale.words(),
            numbers::unit(rule.regime),
            rows.join(" ")
        )
    };
    packages.chunks(PACKAGES_PER_PICTURE).map(said).collect()
}

fn row_in_words(package: &PackageResult, rule: Rule) -> String {
    let figures: Vec<String> = readings(package)
        .map(|reading| spoken(&numbers::interval(reading, rule.limit)))
        .collect();
    let said = words::packages::agreement(package);
    let code = &package.pair.package.package_code;
    let figures = if figures.is_empty() {
        "no reading".to_owned()
    } else {
        words::listed(&figures)
    };
    format!(
        "Package {code}: {figures}; {}, {}.",
        said.head.to_lowercase(),
        said.detail
    )
}

fn spoken(figure: &str) -> String {
    figure.replace('<', "below ").replace('>', "above ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn round_figures_hold_what_they_round() {
        assert_eq!(round_down(5.0), 5.0);
        assert_eq!(round_down(2.4), 2.0);
        assert_eq!(round_down(0.9), 0.5);
        assert_eq!(round_up(108.0), 200.0);
        assert_eq!(round_up(200.0), 200.0);
        assert_eq!(round_up(560.0), 1000.0);
    }

    #[test]
    fn long_codes_are_cut_where_they_have_a_dash() {
        assert_eq!(code_lines("FH-01-A"), ["FH-01-A"]);
        let lines = code_lines("HARROW-2031-000123-REPEAT-A");
        assert_eq!(lines.concat(), "HARROW-2031-000123-REPEAT-A");
        assert!(
            lines
                .iter()
                .all(|line| style::text_width(line, ROW) <= 58.0),
            "{lines:?}"
        );
        assert!(lines[0].ends_with('-'), "{lines:?}");
    }
}
