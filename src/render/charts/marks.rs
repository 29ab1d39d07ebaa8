//! The marks of every chart of concentrations, and how they keep out of one another's way.

use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::render::charts::scale::{LogScale, VALUE};
use crate::render::charts::style::{Align, At, Canvas, FILL, INK, INK_3, Pen, at};

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
pub fn draw(canvas: &mut Canvas<'_>, shape: Shape, ink: Ink, centre: At, radius: f64) {
    let pen = match ink {
        Ink::Dashed => Pen::dashed(radius * 0.38, INK, 2.0, 1.4),
        Ink::Solid | Ink::Outline => Pen::solid(radius * 0.38, INK),
        Ink::SetAside => Pen::solid(0.9, INK_3),
        Ink::InConflict => Pen::solid(1.2, INK_3),
    };
    let filled = ink == Ink::Solid;
    match shape {
        _ if ink == Ink::InConflict => canvas.diamond(centre, radius * 1.15, pen),
        Shape::Circle => canvas.circle(centre, radius, filled.then_some(INK), pen),
        Shape::Left => canvas.arrow(centre, radius, -1.0, filled, pen),
        Shape::Right => canvas.arrow(centre, radius, 1.0, filled, pen),
    }
    if ink == Ink::SetAside {
        canvas.cross(centre, radius * 1.25, pen);
    }
}

/// What a package's result looks like.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mark {
    /// In the column of those below quantification.
    Below,
    /// On the scale: at its figure, or at the one that it is below or above.
    At(f64, Shape, Ink),
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
        let (figure, shape) = match package.result {
            ResultKind::Value { mean } => (mean, Shape::Circle),
            ResultKind::Range(range) => match range.upper {
                Some(upper) if ink != Ink::Solid => (upper, Shape::Left),
                _ => (range.lower, Shape::Right),
            },
            ResultKind::Below { upper } => (upper, Shape::Left),
            ResultKind::None => return Mark::Undecided,
        };
        Mark::At(figure.0, shape, ink)
    }

    /// The figure at which it stands, where it is on the scale.
    pub fn x(self) -> Option<f64> {
        match self {
            Mark::At(x, ..) => Some(x),
            Mark::Below | Mark::Undecided => None,
        }
    }
}

/// A mark that has its place on the scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placed {
    /// Where on the drawing.
    pub x: f64,
    shape: Shape,
    ink: Ink,
}

impl Placed {
    /// Draws it at its place.
    pub fn draw(&self, canvas: &mut Canvas<'_>, y: f64) {
        draw(canvas, self.shape, self.ink, at(self.x, y), RADIUS);
    }
}

/// The marks that have a place on the scale, from the left.
pub fn placed<'a>(
    packages: impl IntoIterator<Item = &'a PackageResult>,
    scale: &LogScale,
) -> Vec<Placed> {
    let marks = packages.into_iter().map(Mark::of);
    let on_scale = marks.filter_map(|mark| match mark {
        Mark::At(figure, shape, ink) => Some(Placed {
            x: scale.x(figure),
            shape,
            ink,
        }),
        Mark::Below | Mark::Undecided => None,
    });
    let mut placed: Vec<Placed> = on_scale.collect();
    placed.sort_by(|a, b| a.x.total_cmp(&b.x));
    placed
}

/// The lanes of a plot of packages.
pub fn lanes_of(placed: &[Placed]) -> Option<Vec<f64>> {
    let xs: Vec<f64> = placed.iter().map(|mark| mark.x).collect();
    lanes(&xs, RADIUS, LANES)
}

/// How far each mark is moved down (or up) so that none touches another, marks being in order from the left; none where
/// so many lanes above and below the middle one do not suffice.
pub fn lanes(xs: &[f64], radius: f64, most: i32) -> Option<Vec<f64>> {
    // The radius and half the stroke of both.
    let apart = 2.0 * radius + 1.1;
    let pitch = apart + 0.2;
    // The middle one first, then from it outwards, up before down.
    let mut order: Vec<i32> = (-most..=most).collect();
    order.sort_by_key(|lane| lane.abs());
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
pub fn columns(canvas: &mut Canvas<'_>, marks: &[Placed], scale: &LogScale, middle: f64) {
    const BIN: f64 = 7.2;
    const TALLEST: f64 = 32.0;
    let limit = scale.limit();
    let (start, end) = (scale.place.from, scale.place.to);
    let first = ((limit - start) / BIN).ceil();
    let left_of = |bin: usize| limit + BIN * (bin as f64 - first);
    let mut bins = vec![[0usize; 3]; ((end - limit) / BIN + first) as usize + 2];
    let last = bins.len() - 1;
    for mark in marks {
        let bin = (((mark.x - limit) / BIN).floor() + first).max(0.0) as usize;
        bins[bin.min(last)][mark.ink as usize] += 1;
    }
    let height = |bin: &[usize; 3]| bin.iter().sum::<usize>();
    let tallest = bins.iter().map(height).max().unwrap_or(0);
    let foot = middle + 19.0;
    for (number, bin) in bins.iter().enumerate() {
        let left = left_of(number) + 0.6;
        let mut y = foot;
        for ink in [Ink::Dashed, Ink::Outline, Ink::Solid] {
            let n = bin[ink as usize];
            let top = y - TALLEST * n as f64 / tallest.max(1) as f64;
            if n > 0 {
                column(canvas, at(left, top), at(left + (BIN - 1.2), y), ink);
            }
            y = top;
        }
    }
    if let Some(number) = bins.iter().position(|bin| height(bin) == tallest) {
        let place = at(left_of(number) + BIN / 2.0, foot - TALLEST - 2.5);
        canvas.text(&tallest.to_string(), place, Align::Middle, VALUE);
    }
    let ground = [at(start - 2.0, foot), at(end, foot)];
    canvas.line(&ground, Pen::solid(0.7, INK));
}

fn column(canvas: &mut Canvas<'_>, from: At, to: At, ink: Ink) {
    match ink {
        Ink::Solid => canvas.fill(from, to, INK),
        Ink::Outline => {
            canvas.fill(from, to, FILL);
            canvas.frame(from, to, Pen::solid(0.7, INK));
        }
        Ink::Dashed | Ink::SetAside | Ink::InConflict => {
            canvas.frame(from, to, Pen::dashed(0.7, INK, 1.6, 1.2));
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
            let circle = |canvas: &mut Canvas<'_>| {
                draw(canvas, Shape::Circle, ink, at(10.0, 10.0), RADIUS);
            };
            crate::render::charts::style::draw(20.0, 20.0, circle).expect("draws")
        };
        let strokes = |ink| drawn(ink).matches("<polyline").count();
        assert_eq!((strokes(Ink::Outline), strokes(Ink::SetAside)), (0, 2));
        assert!(!drawn(Ink::InConflict).contains("<circle"), "a diamond");
        assert!(drawn(Ink::InConflict).contains("<polygon"));
    }
}
