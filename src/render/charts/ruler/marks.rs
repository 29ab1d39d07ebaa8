//! The marks of one row of the gluten ruler, and the values beside them.

use crate::model::extraction::Interval;
use crate::model::package::PackageResult;
use crate::model::pair::{PairState, Usage};
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::render::charts::ruler::scale::{CELL, Scale, WORDS};
use crate::render::charts::style::{
    self, Align, At, Canvas, INK, INK_3, PAPER, Pen, Points, Type, ZONE, at,
};
use crate::render::numbers;
use crate::words::{Catalogue, say};
use anyhow::Result;

const RADIUS: f64 = 3.9;
const VALUE: Type = Type::strong(8.4, INK);

/// Draws one package's marks.
pub(super) fn draw(
    canvas: &mut Canvas<'_>,
    package: &PackageResult,
    rule: Rule,
    scale: &Scale,
    words: &Catalogue,
    y: f64,
) -> Result<()> {
    let marks = marks_of(package, rule, scale, words);
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
    labels(canvas, &marks, (rule, scale, words), y)?;
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

fn marks_of(package: &PackageResult, rule: Rule, scale: &Scale, words: &Catalogue) -> Vec<Mark> {
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
            label: numbers::interval_said(reading, rule.limit, words),
            kind,
            over: rule.limit.surely_over(&reading),
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
    let room = CELL.to - CELL.from;
    let step = f64::min(15.2, (room - 12.0) / f64::max(in_cell - 1.0, 1.0));
    let first = CELL.middle() - step * (in_cell - 1.0) / 2.0;
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

/// The lowest and the highest value, left and right of the marks, or both on one side. A value never stands on the other
/// side of the limit than its mark, nor in the words at the row's end; where there is no such place it is left to the table.
fn labels(
    canvas: &mut Canvas<'_>,
    marks: &[Mark],
    (rule, scale, words): (Rule, &Scale, &Catalogue),
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
    let least = if scale.cell {
        CELL.to + 2.0
    } else {
        CELL.from + 6.0
    };
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
    } else if on_scale.len() > 2 {
        words.say(&say::range_in_text(&first.label, &last.label))
    } else {
        words.say(&say::ruler_both(&first.label, &last.label))
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
