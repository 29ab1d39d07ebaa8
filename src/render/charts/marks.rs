//! The marks of the strip plot: what a package's result looks like, and how marks keep out of one another's way.

use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::render::charts::scale::{LogScale, VALUE};
use crate::render::charts::style::{Align, Canvas, FILL, INK, Pen, Points, at};
use anyhow::Result;

/// Half the width of a mark.
const RADIUS: f64 = 2.8;
/// By how much a mark is moved up or down so that it does not touch the next.
const LANE: f64 = 6.9;
/// Lanes above and below the middle one.
const LANES: i32 = 3;

/// What a package's result looks like.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mark {
    /// In the column of those below quantification.
    Below,
    /// A circle at its figure.
    Circle(f64, Ink),
    /// An arrow at the figure that it is below.
    UpTo(f64, Ink),
    /// An arrow at the figure that it is above.
    From(f64, Ink),
    /// In the column of those that decide nothing.
    Undecided,
}

/// How a mark is inked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ink {
    /// Over the limit.
    Solid,
    /// Within it.
    Outline,
    /// Undecided.
    Dashed,
}

impl Mark {
    /// The mark of a package.
    pub fn of(package: &PackageResult) -> Mark {
        let ink = match package.standing {
            Standing::BelowQuantification => return Mark::Below,
            Standing::Over => Ink::Solid,
            Standing::Within => Ink::Outline,
            Standing::Inconclusive => Ink::Dashed,
            Standing::Unresolved => return Mark::Undecided,
        };
        match package.result {
            ResultKind::Value { mean } => Mark::Circle(mean.0, ink),
            ResultKind::Range(range) => match range.upper {
                Some(_) | None if ink == Ink::Solid => Mark::From(range.lower.0, ink),
                Some(upper) => Mark::UpTo(upper.0, ink),
                None => Mark::From(range.lower.0, ink),
            },
            ResultKind::Below { upper } => Mark::UpTo(upper.0, ink),
            ResultKind::None => Mark::Undecided,
        }
    }

    fn ink(self) -> Ink {
        match self {
            Mark::Circle(_, ink) | Mark::UpTo(_, ink) | Mark::From(_, ink) => ink,
            Mark::Below => Ink::Outline,
            Mark::Undecided => Ink::Dashed,
        }
    }

    /// The figure at which it stands, where it is on the scale.
    pub fn x(self) -> Option<f64> {
        match self {
            Mark::Circle(x, _) | Mark::UpTo(x, _) | Mark::From(x, _) => Some(x),
            Mark::Below | Mark::Undecided => None,
        }
    }
}

/// A mark at its place.
pub fn draw_mark(canvas: &mut Canvas<'_>, mark: Mark, x: f64, y: f64) -> Result<()> {
    let pen = |ink| match ink {
        Ink::Dashed => Pen::dashed(1.1, INK, 2.0, 1.4),
        Ink::Solid | Ink::Outline => Pen::solid(1.1, INK),
    };
    match mark {
        Mark::Circle(_, ink) => canvas.circle(
            at(x, y),
            RADIUS,
            (ink == Ink::Solid).then_some(INK),
            pen(ink),
        ),
        Mark::UpTo(_, ink) => {
            canvas.arrow(at(x, y), RADIUS, Points::Left, ink == Ink::Solid, pen(ink))
        }
        Mark::From(_, ink) => {
            canvas.arrow(at(x, y), RADIUS, Points::Right, ink == Ink::Solid, pen(ink))
        }
        Mark::Below | Mark::Undecided => Ok(()),
    }
}

/// How far each mark is moved down (or up) so that none touches another, marks being in order from the left; none where
/// the lanes do not suffice.
pub fn lanes(marks: &[(f64, Mark)]) -> Option<Vec<f64>> {
    // The radius and half the stroke of both.
    let apart = 2.0 * RADIUS + 1.1;
    let order = (0..=LANES).flat_map(|lane| {
        if lane == 0 {
            vec![0]
        } else {
            vec![-lane, lane]
        }
    });
    let order: Vec<i32> = order.collect();
    let mut last = [f64::NEG_INFINITY; 2 * LANES as usize + 1];
    marks
        .iter()
        .map(|(x, _)| {
            let clear = |lane: &&i32| {
                (-LANES..=LANES).all(|other| {
                    let up = f64::from(other - **lane) * LANE;
                    (x - last[(other + LANES) as usize]).hypot(up) >= apart - 1e-9
                })
            };
            let lane = *order.iter().find(clear)?;
            last[(lane + LANES) as usize] = *x;
            Some(f64::from(lane) * LANE)
        })
        .collect()
}

/// Columns of equal bins, as high as their number of marks, parted by ink; the tallest bears its number.
///
/// Bins begin at the limit, so that none holds marks of both sides.
pub fn columns(
    canvas: &mut Canvas<'_>,
    marks: &[(f64, Mark)],
    scale: &LogScale,
    middle: f64,
) -> Result<()> {
    const BIN: f64 = 7.2;
    const TALLEST: f64 = 32.0;
    let limit = scale.limit();
    let first = ((limit - scale.left()) / BIN).ceil();
    let left_of = |bin: usize| limit + BIN * (bin as f64 - first);
    let mut bins = vec![[0usize; 3]; ((scale.right() - limit) / BIN + first) as usize + 2];
    let last = bins.len() - 1;
    for (x, mark) in marks {
        let bin = (((x - limit) / BIN).floor() + first).max(0.0) as usize;
        bins[bin.min(last)][mark.ink() as usize] += 1;
    }
    let height = |bin: &[usize; 3]| bin.iter().sum::<usize>();
    let tallest = bins.iter().map(height).max().unwrap_or(0);
    let foot = middle + 19.0;
    for (number, bin) in bins.iter().enumerate() {
        let mut y = foot;
        for ink in [Ink::Dashed, Ink::Outline, Ink::Solid] {
            let n = bin[ink as usize];
            let top = y - TALLEST * n as f64 / tallest.max(1) as f64;
            if n > 0 {
                column(
                    canvas,
                    (left_of(number) + 0.6, top),
                    (BIN - 1.2, y - top),
                    ink,
                )?;
            }
            y = top;
        }
    }
    if let Some(number) = bins.iter().position(|bin| height(bin) == tallest) {
        let place = at(left_of(number) + BIN / 2.0, foot - TALLEST - 2.5);
        canvas.text(&tallest.to_string(), place, Align::Middle, VALUE)?;
    }
    let ground = [at(scale.left() - 2.0, foot), at(scale.right(), foot)];
    canvas.line(&ground, Pen::solid(0.7, INK))
}

fn column(
    canvas: &mut Canvas<'_>,
    (x, y): (f64, f64),
    (width, height): (f64, f64),
    ink: Ink,
) -> Result<()> {
    let (from, to) = (at(x, y), at(x + width, y + height));
    match ink {
        Ink::Solid => canvas.fill(from, to, INK),
        Ink::Outline => {
            canvas.fill(from, to, FILL)?;
            canvas.frame(from, to, Pen::solid(0.7, INK))
        }
        Ink::Dashed => canvas.frame(from, to, Pen::dashed(0.7, INK, 1.6, 1.2)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn circles(xs: &[f64]) -> Vec<(f64, Mark)> {
        xs.iter()
            .map(|x| (*x, Mark::Circle(*x, Ink::Outline)))
            .collect()
    }

    #[test]
    fn marks_that_would_touch_are_moved_apart() {
        let marks = circles(&[10.0, 10.5, 11.0, 30.0]);
        let lanes = lanes(&marks).expect("there is room");
        assert_eq!(lanes[3], 0.0, "alone, it stays in the middle");
        for (one, (x, _)) in marks.iter().enumerate() {
            for (other, (other_x, _)) in marks.iter().enumerate().skip(one + 1) {
                let up = lanes[one] - lanes[other];
                assert!(
                    (x - other_x).hypot(up) >= 2.0 * RADIUS,
                    "{one} touches {other}"
                );
            }
        }
    }

    #[test]
    fn too_many_in_one_place_have_no_lanes() {
        assert_eq!(lanes(&circles(&[10.0; 50])), None);
    }
}
