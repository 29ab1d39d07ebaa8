//! The curve through the standards of a plate, and what an absorbance is on it.

use super::least_squares::Point;
use super::logistic;
use super::spline::Spline;
use crate::model::plate::{Absorbance, Concentration, CurveKind, FittedCurve, Parameters, Weights};
use crate::model::ppm::{SAME_FIGURE, twelve_digits};
use libm::{expm1, log1p, sqrt};
use std::f64::consts::LN_10;

/// Points by which a curve is drawn.
const DRAWN: usize = 121;

/// The mean absorbance of a standard.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Level {
    /// How much is in it.
    pub concentration: Concentration,
    /// The mean of its wells.
    pub absorbance: Absorbance,
}

/// A curve that only rises or only falls over its standards.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    shape: Shape,
    /// The root of the residual sum of squares over n - p, where there are more standards than parameters.
    residual_sd: Option<f64>,
    /// The lowest standard, zero or not.
    start: Level,
    /// The lowest standard above zero.
    lowest: Level,
    /// The highest one.
    highest: Level,
}

#[derive(Clone, Debug, PartialEq)]
enum Shape {
    Logistic(Parameters),
    /// In the decadic logarithm of the concentration + 1.
    Spline(Spline),
    /// Straight in the concentration.
    Straight(Vec<Level>),
}

/// Why there is no curve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoCurve {
    /// Fewer standards than the curve needs, which are so many; two of them above zero.
    TooFew(usize),
    /// It does not only rise, nor only fall.
    NotMonotone,
    /// Nothing settles.
    NotFitted,
    /// A mean absorbance that is not above zero has no weight of 1/y^2.
    NoWeight,
}

/// Where an absorbance is on a curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reading {
    /// At this concentration.
    At(Concentration),
    /// Before the lowest standard above zero.
    Below(Concentration),
    /// Beyond the highest one.
    Above(Concentration),
}

/// How many standards of different concentrations a curve needs.
fn needed(kind: CurveKind) -> usize {
    match kind {
        CurveKind::FourParameters => 4,
        CurveKind::FiveParameters => 5,
        CurveKind::CubicSpline | CurveKind::PointToPoint => 3,
    }
}

/// Lays a curve through standards, whose concentrations rise.
///
/// # Errors
/// Where there is no such curve, with the reason.
pub fn fit(kind: CurveKind, weights: Weights, levels: &[Level]) -> Result<Curve, NoCurve> {
    let mut above_zero = levels.iter().filter(|level| level.concentration.0 > 0.0);
    let (lowest, highest) = (above_zero.next(), above_zero.next_back());
    let (Some(lowest), Some(highest)) = (lowest, highest) else {
        return Err(NoCurve::TooFew(needed(kind)));
    };
    if levels.len() < needed(kind) {
        return Err(NoCurve::TooFew(needed(kind)));
    }
    let (shape, residual_sd) = match kind {
        CurveKind::FourParameters | CurveKind::FiveParameters => logistic(kind, weights, levels)?,
        CurveKind::CubicSpline => (Shape::Spline(spline(levels)?), None),
        CurveKind::PointToPoint => (straight(levels)?, None),
    };
    Ok(Curve {
        shape,
        residual_sd,
        start: levels[0],
        lowest: *lowest,
        highest: *highest,
    })
}

fn logistic(
    kind: CurveKind,
    weights: Weights,
    levels: &[Level],
) -> Result<(Shape, Option<f64>), NoCurve> {
    let point = |level: &Level| {
        let y = level.absorbance.0;
        let weight = match weights {
            Weights::None => 1.0,
            Weights::InverseSquare if y > 0.0 => 1.0 / (y * y),
            Weights::InverseSquare => return Err(NoCurve::NoWeight),
        };
        let x = level.concentration.0;
        Ok(Point { x, y, weight })
    };
    let points: Vec<Point> = levels.iter().map(point).collect::<Result<_, _>>()?;
    let found = match kind {
        CurveKind::FiveParameters => logistic::five(&points),
        _ => logistic::four(&points),
    };
    let (parameters, squares) = found.ok_or(NoCurve::NotFitted)?;
    let free = levels.len() - needed(kind);
    let residual_sd = (free > 0).then(|| sqrt(squares / free as f64));
    Ok((Shape::Logistic(parameters), residual_sd))
}

fn spline(levels: &[Level]) -> Result<Spline, NoCurve> {
    let knot = |level: &Level| (logarithm(level.concentration.0), level.absorbance.0);
    let knots = levels.iter().map(knot).collect();
    let spline = Spline::natural(knots).ok_or(NoCurve::NotFitted)?;
    match spline.is_monotone() {
        true => Ok(spline),
        false => Err(NoCurve::NotMonotone),
    }
}

fn straight(levels: &[Level]) -> Result<Shape, NoCurve> {
    match wrong_steps(levels) {
        0 => Ok(Shape::Straight(levels.to_vec())),
        _ => Err(NoCurve::NotMonotone),
    }
}

/// log10(x + 1).
fn logarithm(x: f64) -> f64 {
    log1p(x) / LN_10
}

/// Whether the absorbance rises with the concentration, from the first standard to the last.
pub fn rises(levels: &[Level]) -> bool {
    let end = |level: Option<&Level>| level.map(|level| level.absorbance);
    end(levels.last()) > end(levels.first())
}

/// How many standards do not go the way that all of them go together.
pub fn wrong_steps(levels: &[Level]) -> usize {
    let rises = rises(levels);
    let is_wrong = |pair: &&[Level]| {
        let (before, after) = (pair[0].absorbance, pair[1].absorbance);
        match rises {
            true => after <= before,
            false => after >= before,
        }
    };
    levels.windows(2).filter(is_wrong).count()
}

impl Curve {
    /// The absorbance at a concentration between the standards.
    pub fn value(&self, concentration: Concentration) -> Absorbance {
        let x = concentration.0;
        Absorbance(match &self.shape {
            Shape::Logistic(parameters) => logistic::value(parameters, x),
            Shape::Spline(spline) => spline.value(logarithm(x)),
            Shape::Straight(levels) => {
                let last = levels.len() - 2;
                let after = levels.iter().position(|level| level.concentration.0 > x);
                let piece = after.map_or(last, |after| after.saturating_sub(1));
                let [x0, x1] = [piece, piece + 1].map(|index| levels[index].concentration.0);
                let [y0, y1] = [piece, piece + 1].map(|index| levels[index].absorbance.0);
                y0 + (x - x0) * (y1 - y0) / (x1 - x0)
            }
        })
    }

    /// The concentration at an absorbance, wherever the curve has one.
    pub fn inverse(&self, absorbance: Absorbance) -> Option<Concentration> {
        let y = absorbance.0;
        let found = match &self.shape {
            Shape::Logistic(parameters) => logistic::inverse(parameters, y),
            Shape::Spline(spline) => spline.inverse(y).map(|place| expm1(place * LN_10)),
            // x1 + (y - y1) (x2 - x1) / (y2 - y1)
            Shape::Straight(levels) => levels.windows(2).find_map(|pair| {
                let [y1, y2] = [0, 1].map(|index| pair[index].absorbance.0);
                let [x1, x2] = [0, 1].map(|index| pair[index].concentration.0);
                let is_between = (y1.min(y2)..=y1.max(y2)).contains(&y);
                is_between.then(|| x1 + (y - y1) * (x2 - x1) / (y2 - y1))
            }),
        };
        found.map(|x| Concentration(twelve_digits(x)))
    }

    /// Where an absorbance is: a concentration as far as the standards above zero reach, else below or above them. What lies
    /// between zero and the lowest of the others is no figure: between them nothing was measured.
    pub fn read(&self, absorbance: Absorbance) -> Reading {
        let (low, high) = (self.lowest.concentration, self.highest.concentration);
        match self.inverse(absorbance) {
            Some(found) if found.0 < low.0 * (1.0 - SAME_FIGURE) => Reading::Below(low),
            Some(found) if found.0 > high.0 * (1.0 + SAME_FIGURE) => Reading::Above(high),
            Some(found) => Reading::At(found),
            None => match self.is_before(absorbance) {
                true => Reading::Below(low),
                false => Reading::Above(high),
            },
        }
    }

    /// Whether an absorbance that the curve does not reach lies before its start, and not beyond its end.
    fn is_before(&self, absorbance: Absorbance) -> bool {
        let (start, end) = match &self.shape {
            Shape::Logistic(parameters) => (parameters.a, parameters.d),
            _ => (self.start.absorbance.0, self.highest.absorbance.0),
        };
        let middle = start + (end - start) / 2.0;
        (absorbance.0 < middle) == (start < end)
    }

    /// What of it is told.
    pub fn told(&self) -> FittedCurve {
        let parameters = match self.shape {
            Shape::Logistic(found) => Some(Parameters {
                a: twelve_digits(found.a),
                b: twelve_digits(found.b),
                c: twelve_digits(found.c),
                d: twelve_digits(found.d),
                g: found.g.map(twelve_digits),
            }),
            _ => None,
        };
        let (first, last) = (
            log1p(self.start.concentration.0),
            log1p(self.highest.concentration.0),
        );
        let drawn = (0..DRAWN).map(|step| {
            let place = first + (last - first) * step as f64 / (DRAWN - 1) as f64;
            let x = Concentration(twelve_digits(expm1(place)));
            (x, Absorbance(twelve_digits(self.value(x).0)))
        });
        FittedCurve {
            parameters,
            residual_sd: self.residual_sd.map(twelve_digits),
            drawn: drawn.collect(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn levels(seen: &[(f64, f64)]) -> Vec<Level> {
        let level = |(x, y): &(f64, f64)| Level {
            concentration: Concentration(*x),
            absorbance: Absorbance(*y),
        };
        seen.iter().map(level).collect()
    }

    const SIX: [(f64, f64); 6] = [
        (0.0, 0.06),
        (5.0, 0.21),
        (10.0, 0.37),
        (20.0, 0.68),
        (40.0, 1.22),
        (80.0, 2.01),
    ];

    #[test]
    fn straight_lines_are_read_as_by_hand() {
        let curve =
            fit(CurveKind::PointToPoint, Weights::None, &levels(&SIX)).expect("is monotone");
        let found = curve.inverse(Absorbance(0.5)).expect("is between");
        assert!((found.0 - 14.1935).abs() < 5e-5, "{found:?}");
        assert_eq!(
            curve.read(Absorbance(0.1)),
            Reading::Below(Concentration(5.0))
        );
        assert_eq!(
            curve.read(Absorbance(0.21)),
            Reading::At(Concentration(5.0))
        );
        assert_eq!(
            curve.read(Absorbance(2.02)),
            Reading::Above(Concentration(80.0))
        );
        assert_eq!(curve.value(Concentration(30.0)), Absorbance(0.95));
    }

    #[test]
    fn every_kind_reads_its_standards_and_what_lies_beyond() {
        for (kind, _) in CurveKind::ALL {
            let falling = SIX.map(|(x, y)| (x, 2.1 - y));
            for (standards, sign) in [(SIX, 1.0), (falling, -1.0)] {
                let curve = fit(*kind, Weights::None, &levels(&standards)).expect("fits");
                for y in [-0.5, 0.0, 2.05, 2.6] {
                    let seen = Absorbance(if sign > 0.0 { y } else { 2.1 - y });
                    let expected = match y > 1.0 {
                        true => Reading::Above(Concentration(80.0)),
                        false => Reading::Below(Concentration(5.0)),
                    };
                    assert_eq!(curve.read(seen), expected, "{kind:?} {y}");
                }
                let told = curve.told();
                assert_eq!(told.drawn.len(), DRAWN);
                let at_20 = curve.inverse(Absorbance(standards[3].1)).expect("is read");
                assert!((at_20.0 - 20.0).abs() < 1.0, "{kind:?} {at_20:?}");
            }
        }
    }

    #[test]
    fn what_is_no_curve_is_told_apart() {
        let hook = levels(&[
            (0.0, 0.06),
            (5.0, 0.31),
            (10.0, 0.58),
            (40.0, 1.62),
            (80.0, 1.55),
        ]);
        for kind in [CurveKind::CubicSpline, CurveKind::PointToPoint] {
            assert_eq!(
                fit(kind, Weights::None, &hook),
                Err(NoCurve::NotMonotone),
                "{kind:?}"
            );
        }
        for (kind, least) in [(CurveKind::FourParameters, 4), (CurveKind::PointToPoint, 3)] {
            let few = levels(&SIX[..least - 1]);
            assert_eq!(fit(kind, Weights::None, &few), Err(NoCurve::TooFew(least)));
        }
        let zero = levels(&[
            (0.0, 0.0),
            (5.0, 0.3),
            (10.0, 0.6),
            (20.0, 0.9),
            (40.0, 1.1),
        ]);
        assert_eq!(
            fit(CurveKind::FourParameters, Weights::InverseSquare, &zero),
            Err(NoCurve::NoWeight)
        );
        let flat = levels(&SIX.map(|(x, _)| (x, 0.4)));
        for (kind, _) in CurveKind::ALL {
            assert!(fit(*kind, Weights::None, &flat).is_err(), "{kind:?}");
        }
    }
}
