//! The marks of one row of the gluten ruler, the values beside them, and the package's result.

use crate::model::extraction::Interval;
use crate::model::package::{PackageResult, ResultKind};
use crate::model::pair::{PairState, PairedExtraction, Usage};
use crate::model::ppm::Ppm;
use crate::render::charts::marks::{self, Ink, Shape, lanes};
use crate::render::charts::ruler::{CELL, Placed, Ruler, WORDS};
use crate::render::charts::scale::VALUE;
use crate::render::charts::style::{
    Align, At, Canvas, INK, INK_3, PAPER, Pen, Type, ZONE, at, text_width,
};
use crate::render::numbers;
use crate::render::words::chapters::{Chapter, Event, MOST_LISTED};
use crate::words::say;
use std::collections::{BTreeMap, BTreeSet};

const RADIUS: f64 = 3.6;

/// Lanes above and below the middle one.
const LANES: i32 = 4;

/// More equal bounds than this are one mark, and its value says how many.
const ALIKE_AT_MOST: usize = 2;

/// More marks than this have no room in the cell, and are one that says how many.
const IN_CELL_AT_MOST: usize = 3;

/// How far the line of a range lies below the lowest mark's middle.
const BELOW_MARKS: f64 = 7.0;

/// The marks of a row.
pub(super) struct Marks {
    /// From the left.
    marks: Vec<Mark>,
    /// What joins those that count.
    join: Option<Pen>,
    /// The result of the package, where it stands in this row.
    outcome: Option<Outcome>,
    /// What is labelled: the marks on the scale, or the result where there are none.
    labels: Vec<Label>,
}

/// One reading's place on the ruler, or that of several alike.
#[derive(Clone, Debug, PartialEq)]
struct Mark {
    x: f64,
    /// How far it is moved down, or up, so that it touches no other.
    lane: f64,
    shape: Shape,
    ink: Ink,
    /// How many readings it stands for.
    count: usize,
    label: String,
    in_cell: bool,
}

/// The result of a package on the scale.
#[derive(Clone, Copy)]
enum Outcome {
    Mean(Ppm),
    Range(Interval),
}

#[derive(Clone)]
struct Label {
    x: f64,
    text: String,
    look: Type,
}

impl Marks {
    pub(super) fn of(
        chapter: &Chapter<'_>,
        package: &PackageResult,
        ruler: Ruler<'_>,
        scale: &Placed,
    ) -> Marks {
        let extractions = chapter.extractions.iter();
        let marks = extractions.filter_map(|paired| Mark::of(paired, ruler, scale));
        let marks = apart(seen(together(marks.collect())));
        let outcome = outcome(package).filter(|_| chapter.has_result);
        let labels = match outcome {
            Some(outcome) if marks.is_empty() => {
                let text = numbers::result_said(&package.result, ruler.rule.limit, ruler.words);
                let label = |x| Label {
                    x,
                    text: text.clone(),
                    look: VALUE,
                };
                outcome.ends(scale).map(label).to_vec()
            }
            _ => {
                let on_scale = marks.iter().filter(|mark| !mark.in_cell);
                on_scale.map(|mark| mark.labelled(ruler)).collect()
            }
        };
        Marks {
            join: join(chapter, package, &marks),
            marks,
            outcome,
            labels,
        }
    }

    /// How much room they need from top to bottom.
    pub(super) fn height(&self) -> f64 {
        let range = match self.outcome {
            Some(Outcome::Range(_)) if !self.marks.is_empty() => BELOW_MARKS + 3.0,
            _ => RADIUS + 2.0,
        };
        2.0 * (self.reach() + range)
    }

    /// How far the middle of the outermost mark is from the middle of the row.
    fn reach(&self) -> f64 {
        let lanes = self.marks.iter().map(|mark| mark.lane.abs());
        lanes.fold(0.0, f64::max)
    }

    pub(super) fn draw(&self, canvas: &mut Canvas<'_>, ruler: Ruler<'_>, scale: &Placed, y: f64) {
        let mut counting = self.marks.iter().filter(|mark| mark.counts());
        let ends = (counting.next(), counting.next_back());
        if let (Some(pen), (Some(first), Some(last))) = (self.join, ends) {
            canvas.line(&[at(first.x, y), at(last.x, y)], pen);
        }
        if let Some(outcome) = self.outcome {
            let below = if self.marks.is_empty() {
                0.0
            } else {
                self.reach() + BELOW_MARKS
            };
            outcome.draw(canvas, scale, (y, below, self.reach()));
        }
        self.values(canvas, ruler, scale, y);
        for mark in &self.marks {
            let place = at(mark.x, y + mark.lane);
            marks::draw(canvas, mark.shape, mark.ink, place, RADIUS);
            if mark.in_cell && mark.count > 1 {
                let said = ruler.words.say(&say::ruler_times(mark.count as u64, ""));
                let beside = at(mark.x + RADIUS + 2.0, y + 3.0);
                canvas.text(said.trim(), beside, Align::Start, VALUE);
            }
        }
    }

    /// The lowest and the highest value, left and right of the marks, or both on one side. A value never stands on the
    /// other side of the limit than its mark, nor in the words at the row's end; where there is no such place it is left to
    /// the table.
    fn values(&self, canvas: &mut Canvas<'_>, ruler: Ruler<'_>, scale: &Placed, y: f64) {
        const GAP: f64 = 7.0;
        let (Some(first), Some(last)) = (self.labels.first(), self.labels.last()) else {
            return;
        };
        let (limit, words) = (scale.scale.limit(), ruler.words);
        let joined_to_cell = self.marks.iter().any(|mark| mark.in_cell);
        let least = if scale.has_cell {
            CELL.to + 2.0
        } else {
            CELL.from + 6.0
        };
        let fits_left = |text: &str| {
            let start = first.x - GAP - text_width(text, VALUE);
            !joined_to_cell && start > least && (first.x <= limit || start > limit + 1.0)
        };
        let fits_right = |text: &str| {
            let end = last.x + GAP + text_width(text, VALUE);
            end < WORDS - 4.0 && (last.x >= limit || end < limit - 2.0)
        };
        let alone = self.labels.iter().all(|label| label.text == first.text);
        let both = match self.labels.len() {
            _ if alone => first.text.clone(),
            2 => words.say(&say::ruler_both(&first.text, &last.text)),
            _ => words.say(&say::range_in_text(&first.text, &last.text)),
        };
        let (left, right) = if !alone && fits_left(&first.text) && fits_right(&last.text) {
            (Some(&first.text), Some(&last.text))
        } else if alone && fits_right(&both) {
            (None, Some(&both))
        } else if fits_left(&both) {
            (Some(&both), None)
        } else if fits_right(&both) && (alone || first.x >= limit || last.x < limit) {
            (None, Some(&both))
        } else {
            (None, Some(&last.text).filter(|text| fits_right(text)))
        };
        if let Some(text) = left {
            let end = at(first.x - GAP, y);
            value(canvas, text, end, Align::End, (first.look, limit));
        }
        if let Some(text) = right {
            let start = at(last.x + GAP, y);
            value(canvas, text, start, Align::Start, (last.look, limit));
        }
    }
}

impl Mark {
    /// The mark of an extraction; none where there is no reading.
    fn of(paired: &PairedExtraction, ruler: Ruler<'_>, scale: &Placed) -> Option<Mark> {
        let reading = paired.extraction.outcome.reading()?;
        let tip = |x: Ppm| scale.scale.x(x.0);
        let in_cell = |n: Ppm| scale.has_cell && n.same(Ppm(scale.scale.low));
        let (shape, x, in_cell) = match (reading.as_below(), reading.as_number()) {
            (Some(n), _) if in_cell(n) => (Shape::Left, CELL.middle(), true),
            (Some(n), _) => (Shape::Left, tip(n) - RADIUS, false),
            (None, Some(number)) => (Shape::Circle, tip(number), false),
            (None, None) => (Shape::Right, tip(reading.lower) + 0.75 * RADIUS, false),
        };
        let ink = match &paired.usage {
            Usage::Excluded { .. } => Ink::SetAside,
            Usage::InConflict => Ink::InConflict,
            Usage::Used | Usage::NoReading if ruler.rule.limit.surely_over(&reading) => Ink::Solid,
            Usage::Used | Usage::NoReading => Ink::Outline,
        };
        Some(Mark {
            x,
            lane: 0.0,
            shape,
            ink,
            count: 1,
            label: numbers::interval_said(reading, ruler.rule.limit, ruler.words),
            in_cell,
        })
    }

    fn counts(&self) -> bool {
        matches!(self.ink, Ink::Solid | Ink::Outline)
    }

    fn labelled(&self, ruler: Ruler<'_>) -> Label {
        let text = match self.count {
            1 => self.label.clone(),
            n => ruler.words.say(&say::ruler_times(n as u64, &self.label)),
        };
        let aside = Type::plain(VALUE.size, INK_3);
        let look = if self.counts() { VALUE } else { aside };
        Label {
            x: self.x,
            text,
            look,
        }
    }
}

/// Equal bounds, where there are many: one mark that says how many it stands for. Those in the cell share it evenly.
fn together(marks: Vec<Mark>) -> Vec<Mark> {
    let kind = |mark: &Mark| (mark.shape, mark.ink, mark.label.clone());
    let mut counts: BTreeMap<_, usize> = BTreeMap::new();
    for mark in marks.iter().filter(|mark| mark.shape != Shape::Circle) {
        *counts.entry(kind(mark)).or_default() += 1;
    }
    let mut together: Vec<Mark> = Vec::new();
    for mark in marks {
        let most = if mark.in_cell {
            IN_CELL_AT_MOST
        } else {
            ALIKE_AT_MOST
        };
        match counts.get_mut(&kind(&mark)) {
            // The one that stands for all of its kind was there.
            Some(0) => {}
            Some(count) if *count > most => together.push(Mark {
                count: std::mem::take(count),
                ..mark
            }),
            _ => together.push(mark),
        }
    }
    let in_cell = together.iter().filter(|mark| mark.in_cell).count() as f64;
    let several = together.iter().any(|mark| mark.in_cell && mark.count > 1);
    let step = f64::min(
        15.2,
        (CELL.to - CELL.from - 12.0) / f64::max(in_cell - 1.0, 1.0),
    );
    let mut x = CELL.middle() - step * (in_cell - 1.0) / 2.0 - if several { 9.0 } else { 0.0 };
    for mark in together.iter_mut().filter(|mark| mark.in_cell) {
        mark.x = x;
        x += step;
    }
    together.sort_by(|a, b| a.x.total_cmp(&b.x));
    together
}

/// Of very many marks those that can be told apart: of those that cover one another, all but one are left out, and the
/// first and the last, which bear the values, stay.
fn seen(marks: Vec<Mark>) -> Vec<Mark> {
    if marks.len() <= MOST_LISTED {
        return marks;
    }
    let last = marks.len() - 1;
    let mut places = BTreeSet::new();
    let mut marks = marks.into_iter().enumerate().collect::<Vec<_>>();
    marks.retain(|(number, mark)| {
        // A point of the drawing is a seventh of a mark.
        let is_new = places.insert((mark.x.round() as i64, mark.shape, mark.ink));
        is_new || *number == last
    });
    marks.into_iter().map(|(_, mark)| mark).collect()
}

/// Marks that would touch lie one above the other, so that open ones never look like a filled one.
fn apart(mut marks: Vec<Mark>) -> Vec<Mark> {
    let xs: Vec<f64> = marks.iter().map(|mark| mark.x).collect();
    let Some(lanes) = lanes(&xs, RADIUS, LANES) else {
        return marks;
    };
    let highest = lanes.iter().copied().fold(0.0, f64::min);
    let lowest = lanes.iter().copied().fold(0.0, f64::max);
    for (mark, lane) in marks.iter_mut().zip(lanes) {
        mark.lane = lane - (highest + lowest) / 2.0;
    }
    marks
}

/// What joins the marks that count: dashes where they disagree; nothing where all of them are in the cell.
fn join(chapter: &Chapter<'_>, package: &PackageResult, marks: &[Mark]) -> Option<Pen> {
    let counting: Vec<&Mark> = marks.iter().filter(|mark| mark.counts()).collect();
    let first = package.pair.first.and_then(|first| first.comparison);
    let disagree = match chapter.event {
        _ if chapter.has_result => package.pair.state == PairState::Disagree,
        Event::First => first.is_some_and(|first| !first.agrees()),
        _ => false,
    };
    let pen = match disagree {
        true => Pen::dashed(1.4, INK, 3.0, 2.2),
        false => Pen::solid(1.4, INK),
    };
    let on_scale = counting.iter().any(|mark| !mark.in_cell);
    (counting.len() > 1 && on_scale).then_some(pen)
}

fn outcome(package: &PackageResult) -> Option<Outcome> {
    match package.result {
        ResultKind::Value { mean } => Some(Outcome::Mean(mean)),
        ResultKind::Range(range) => Some(Outcome::Range(range)),
        ResultKind::Below { .. } | ResultKind::None => None,
    }
}

impl Outcome {
    /// Where it begins and ends on the drawing.
    fn ends(self, scale: &Placed) -> [f64; 2] {
        let x = |figure: Ppm| scale.scale.x(figure.0);
        match self {
            Outcome::Mean(mean) => [x(mean), x(mean)],
            Outcome::Range(range) => {
                let to = range.upper.map_or(scale.scale.edge() - 2.0, x);
                [x(range.lower), to]
            }
        }
    }

    /// A stroke through the marks at the mean; a range with a stroke at each end that is known, `below` the middle.
    fn draw(self, canvas: &mut Canvas<'_>, scale: &Placed, (y, below, reach): (f64, f64, f64)) {
        let [from, to] = self.ends(scale);
        let mut stroke = |from, to| canvas.line(&[from, to], Pen::solid(1.2, INK));
        match self {
            Outcome::Mean(_) => {
                let half = reach + RADIUS + 3.2;
                stroke(at(from, y - half), at(from, y + half));
            }
            Outcome::Range(range) => {
                let y = y + below;
                stroke(at(from, y), at(to, y));
                let known = [range.lower.0 >= scale.scale.low, range.upper.is_some()];
                for (x, _) in [from, to]
                    .into_iter()
                    .zip(known)
                    .filter(|(_, known)| *known)
                {
                    stroke(at(x, y - 2.5), at(x, y + 2.5));
                }
            }
        }
    }
}

/// A value on a ground that hides the lines behind it; `align` says on which side of `place` it stands.
fn value(canvas: &mut Canvas<'_>, text: &str, place: At, align: Align, (look, limit): (Type, f64)) {
    let width = text_width(text, VALUE);
    let left = if align == Align::End { width } else { 0.0 };
    let ground = if place.x - left > limit { ZONE } else { PAPER };
    let from = place.by(-left - 1.0, -5.0);
    canvas.fill(from, place.by(width - left + 1.0, 5.0), ground);
    canvas.text(text, place.by(0.0, 3.0), align, look);
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mark(x: f64, shape: Shape, label: &str) -> Mark {
        Mark {
            x,
            lane: 0.0,
            shape,
            ink: Ink::Outline,
            count: 1,
            label: label.to_owned(),
            in_cell: false,
        }
    }

    #[test]
    fn open_marks_that_would_merge_lie_above_one_another() {
        let circles = [180.0, 180.5, 181.0, 181.4].map(|x| mark(x, Shape::Circle, "7.0"));
        let marks = apart(together(circles.to_vec()));
        for (index, one) in marks.iter().enumerate() {
            for other in &marks[index + 1..] {
                let between = (one.x - other.x).hypot(one.lane - other.lane);
                assert!(between > 2.0 * RADIUS, "{one:?} touches {other:?}");
            }
        }
        let lanes: f64 = marks.iter().map(|mark| mark.lane).fold(0.0, f64::max);
        let highest: f64 = marks.iter().map(|mark| mark.lane).fold(0.0, f64::min);
        assert!((lanes + highest).abs() < 1e-9, "in the middle of the row");
    }

    #[test]
    fn many_equal_arrows_are_one_that_says_how_many() {
        let arrows = |n: usize| vec![mark(330.0, Shape::Right, ">80"); n];
        let counts = |n| {
            let marks = together(arrows(n));
            marks.iter().map(|mark| mark.count).collect::<Vec<_>>()
        };
        assert_eq!(counts(2), [1, 1]);
        assert_eq!(counts(4), [4]);
        // Another bound is another mark.
        let mut both = arrows(3);
        both.push(mark(328.0, Shape::Right, ">77.3"));
        let counts: Vec<usize> = together(both).iter().map(|mark| mark.count).collect();
        assert_eq!(counts, [1, 3]);
    }
}
