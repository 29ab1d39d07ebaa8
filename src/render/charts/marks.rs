//! The marks of every chart of concentrations, and how they keep out of one another's way.

use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::render::charts::scale::{LogScale, VALUE};
use crate::render::charts::style::{Align, At, Canvas, FILL, INK, INK_3, Pen, Points, at};
use anyhow::Result;

/// Half the width of a package's mark.
const RADIUS: f64 = 2.8;
/// Lanes above and below the middle one, in a plot of packages.
const LANES: i32 = 3;

/// The shape of a mark: what is known of where it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Shape {
    /// At its figure.
    Circle,
    /// Below the figure at its tip.
    Left,
    /// Above the figure at its tip.
    Right,
}

/// How a mark is inked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ink {
    /// Over the limit.
    Solid,
    /// Within it.
    Outline,
    /// Undecided.
    Dashed,
    /// Set aside: crossed.
    SetAside,
    /// Reported in another way as well: a diamond.
    InConflict,
}

/// Draws a mark.
pub fn draw(
    canvas: &mut Canvas<'_>,
    shape: Shape,
    ink: Ink,
    centre: At,
    radius: f64,
) -> Result<()> {
    let pen = match ink {
        Ink::Dashed => Pen::dashed(radius * 0.38, INK, 2.0, 1.4),
        Ink::Solid | Ink::Outline => Pen::solid(radius * 0.38, INK),
        Ink::SetAside => Pen::solid(0.9, INK_3),
        Ink::InConflict => Pen::solid(1.2, INK_3),
    };
    let filled = ink == Ink::Solid;
    match shape {
        _ if ink == Ink::InConflict => canvas.diamond(centre, radius * 1.15, pen)?,
        Shape::Circle => canvas.circle(centre, radius, filled.then_some(INK), pen)?,
        Shape::Left => canvas.arrow(centre, radius, Points::Left, filled, pen)?,
        Shape::Right => canvas.arrow(centre, radius, Points::Right, filled, pen)?,
    }
    match ink {
        Ink::SetAside => canvas.cross(centre, radius * 1.25, pen),
        _ => Ok(()),
    }
}

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

/// The marks that have a place on the scale, from the left.
pub fn placed(packages: &[&PackageResult], scale: &LogScale) -> Vec<(f64, Mark)> {
    let marks = packages.iter().map(|package| Mark::of(package));
    let mut placed: Vec<(f64, Mark)> = marks
        .filter_map(|mark| Some((scale.x(mark.x()?), mark)))
        .collect();
    placed.sort_by(|a, b| a.0.total_cmp(&b.0));
    placed
}

/// The lanes of a plot of packages.
pub fn lanes_of(placed: &[(f64, Mark)]) -> Option<Vec<f64>> {
    let xs: Vec<f64> = placed.iter().map(|(x, _)| *x).collect();
    lanes(&xs, RADIUS, LANES)
}

/// A package's mark at its place.
pub fn draw_mark(canvas: &mut Canvas<'_>, mark: Mark, x: f64, y: f64) -> Result<()> {
    let shape = match mark {
        Mark::Circle(..) => Shape::Circle,
        Mark::UpTo(..) => Shape::Left,
        Mark::From(..) => Shape::Right,
        Mark::Below | Mark::Undecided => return Ok(()),
    };
    draw(canvas, shape, mark.ink(), at(x, y), RADIUS)
}

/// How far each mark is moved down (or up) so that none touches another, marks being in order from the left; none where
/// so many lanes above and below the middle one do not suffice.
pub fn lanes(xs: &[f64], radius: f64, most: i32) -> Option<Vec<f64>> {
    // The radius and half the stroke of both.
    let apart = 2.0 * radius + 1.1;
    let pitch = apart + 0.2;
    let order: Vec<i32> = (0..=most)
        .flat_map(|lane| {
            if lane == 0 {
                vec![0]
            } else {
                vec![-lane, lane]
            }
        })
        .collect();
    let mut last = vec![f64::NEG_INFINITY; 2 * most as usize + 1];
    xs.iter()
        .map(|x| {
            let clear = |lane: &&i32| {
                (-most..=most).all(|other| {
                    let up = f64::from(other - **lane) * pitch;
                    (x - last[(other + most) as usize]).hypot(up) >= apart - 1e-9
                })
            };
            let lane = *order.iter().find(clear)?;
            last[(lane + most) as usize] = *x;
            Some(f64::from(lane) * pitch)
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
    let (start, end) = (scale.place().from, scale.place().to);
    let first = ((limit - start) / BIN).ceil();
    let left_of = |bin: usize| limit + BIN * (bin as f64 - first);
    let mut bins = vec![[0usize; 3]; ((end - limit) / BIN + first) as usize + 2];
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
    let ground = [at(start - 2.0, foot), at(end, foot)];
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
        Ink::Dashed | Ink::SetAside | Ink::InConflict => {
            canvas.frame(from, to, Pen::dashed(0.7, INK, 1.6, 1.2))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_that_would_touch_are_moved_apart() {
        let xs = [10.0, 10.5, 11.0, 30.0];
        let lanes = lanes(&xs, RADIUS, LANES).expect("there is room");
        assert_eq!(lanes[3], 0.0, "alone, it stays in the middle");
        for (one, x) in xs.iter().enumerate() {
            for (other, other_x) in xs.iter().enumerate().skip(one + 1) {
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
        assert_eq!(lanes(&[10.0; 50], RADIUS, LANES), None);
    }

    #[test]
    fn what_was_set_aside_and_what_is_in_conflict_look_like_nothing_else() {
        let drawn = |ink| {
            crate::render::charts::style::draw(20.0, 20.0, |canvas| {
                draw(canvas, Shape::Circle, ink, at(10.0, 10.0), RADIUS)
            })
            .expect("draws")
        };
        let strokes = |ink| drawn(ink).matches("<polyline").count();
        assert_eq!((strokes(Ink::Outline), strokes(Ink::SetAside)), (0, 2));
        assert!(!drawn(Ink::InConflict).contains("<circle"), "a diamond");
        assert!(drawn(Ink::InConflict).contains("<polygon"));
    }
}
