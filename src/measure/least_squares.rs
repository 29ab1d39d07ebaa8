//! Least squares where the parameters do not stand in a line: Levenberg–Marquardt, ended by Gauss–Newton.
//!
//! Source: Moré, The Levenberg-Marquardt algorithm: implementation and theory (1978), for the damping by columns; the step is
//! solved by orthogonalisation (Björck 1967), which loses half as many digits as the normal equations.

use libm::{fabs, sqrt};

/// Steps at most: a fit that has not settled by then is none.
const MOST_STEPS: usize = 500;

/// Steps at most to make the last digits sure.
const MOST_POLISHING: usize = 60;

/// A fit stands where what is left is at right angles to every column, within this.
const AT_RIGHT_ANGLES: f64 = 1e-7;

/// A point that is fitted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Where.
    pub x: f64,
    /// What was seen there.
    pub y: f64,
    /// What its squared residual is multiplied by.
    pub weight: f64,
}

/// Parameters that leave the least.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit<const P: usize> {
    /// In the order of the model.
    pub parameters: [f64; P],
    /// The weighted sum of squared residuals.
    pub squares: f64,
}

/// The value of a model at a place, and how it changes with each parameter.
pub type Model<'a, const P: usize> = &'a dyn Fn(&[f64; P], f64) -> (f64, [f64; P]);

/// Fits a model from these parameters on; none where it does not settle.
pub fn fit<const P: usize>(
    points: &[Point],
    start: [f64; P],
    model: Model<'_, P>,
) -> Option<Fit<P>> {
    let settled = polish(points, descend(points, start, model)?, model);
    is_settled(points, &settled, model).then_some(settled)
}

/// Damped steps, each of which leaves less.
fn descend<const P: usize>(
    points: &[Point],
    start: [f64; P],
    model: Model<'_, P>,
) -> Option<Fit<P>> {
    const LEAST_GAIN: f64 = 1e-15;
    const MOST_DAMPING: f64 = 1e15;
    let mut at = measured(points, start, model).filter(|fit| fit.squares.is_finite())?;
    let (mut damping, mut scale) = (1e-3, [0.0_f64; P]);
    for _ in 0..MOST_STEPS {
        let here = Slope::at(points, &at.parameters, model);
        for (scale, column) in scale.iter_mut().zip(&here.columns) {
            *scale = scale.max(norm(column));
        }
        let step = here.damped(damping, &scale);
        let next = step.and_then(|step| measured(points, moved(at.parameters, step), model));
        match next.filter(|next| next.squares < at.squares) {
            Some(next) => {
                let gain = at.squares - next.squares;
                damping = (damping / 10.0).max(1e-14);
                let is_over = gain <= LEAST_GAIN * at.squares;
                at = next;
                if is_over {
                    break;
                }
            }
            None => damping *= 10.0,
        }
        if damping > MOST_DAMPING {
            break;
        }
    }
    Some(at)
}

/// Undamped steps while they shorten: sums of squares cannot tell parameters apart that differ in their last eight digits,
/// and these steps can.
fn polish<const P: usize>(points: &[Point], from: Fit<P>, model: Model<'_, P>) -> Fit<P> {
    const NO_WORSE: f64 = 1e-10;
    let (mut at, mut last) = (from, f64::INFINITY);
    for _ in 0..MOST_POLISHING {
        let Some(step) = Slope::at(points, &at.parameters, model).damped(0.0, &[0.0; P]) else {
            break;
        };
        let size = relative(&at.parameters, &step);
        let next = measured(points, moved(at.parameters, step), model);
        let no_worse = at.squares * (1.0 + NO_WORSE) + f64::MIN_POSITIVE;
        match next.filter(|next| size < last && next.squares <= no_worse) {
            Some(next) => (at, last) = (next, size),
            None => break,
        }
    }
    at
}

/// Whether nothing that the parameters can do would leave less.
fn is_settled<const P: usize>(points: &[Point], fit: &Fit<P>, model: Model<'_, P>) -> bool {
    const NOTHING_LEFT: f64 = 1e-20;
    let here = Slope::at(points, &fit.parameters, model);
    let seen: f64 = points
        .iter()
        .map(|point| point.weight * point.y * point.y)
        .sum();
    let left = norm(&here.residuals);
    let is_right = |column: &Vec<f64>| {
        let along = fabs(dot(column, &here.residuals));
        // A parameter without any effect has run away: nothing holds it where it is.
        norm(column) > 0.0 && along <= AT_RIGHT_ANGLES * norm(column) * left
    };
    fit.squares <= NOTHING_LEFT * seen || here.columns.iter().all(is_right)
}

fn measured<const P: usize>(
    points: &[Point],
    parameters: [f64; P],
    model: Model<'_, P>,
) -> Option<Fit<P>> {
    let squares: f64 = points
        .iter()
        .map(|point| {
            let residual = point.y - model(&parameters, point.x).0;
            point.weight * residual * residual
        })
        .sum();
    squares.is_finite().then_some(Fit {
        parameters,
        squares,
    })
}

fn moved<const P: usize>(parameters: [f64; P], step: [f64; P]) -> [f64; P] {
    std::array::from_fn(|index| parameters[index] + step[index])
}

/// How far a step goes, in parts of the parameters.
fn relative<const P: usize>(parameters: &[f64; P], step: &[f64; P]) -> f64 {
    let parts = parameters.iter().zip(step);
    parts
        .map(|(parameter, step)| fabs(*step) / (fabs(*parameter) + 1e-9))
        .fold(0.0, f64::max)
}

/// What is left at a place, and how it changes with each parameter: a column each.
struct Slope<const P: usize> {
    columns: [Vec<f64>; P],
    residuals: Vec<f64>,
}

impl<const P: usize> Slope<P> {
    fn at(points: &[Point], parameters: &[f64; P], model: Model<'_, P>) -> Slope<P> {
        let mut slope = Slope {
            columns: std::array::from_fn(|_| Vec::with_capacity(points.len() + P)),
            residuals: Vec::with_capacity(points.len() + P),
        };
        for point in points {
            let root = sqrt(point.weight);
            let (value, changes) = model(parameters, point.x);
            slope.residuals.push(root * (point.y - value));
            for (column, change) in slope.columns.iter_mut().zip(changes) {
                column.push(root * change);
            }
        }
        slope
    }

    /// The step that leaves least where each parameter is held back by so much of its scale.
    fn damped(&self, damping: f64, scale: &[f64; P]) -> Option<[f64; P]> {
        let (mut columns, mut right) = (self.columns.clone(), self.residuals.clone());
        if damping > 0.0 {
            for (held, scale) in scale.iter().enumerate() {
                let hold = sqrt(damping) * scale.max(f64::MIN_POSITIVE);
                right.push(0.0);
                for (index, column) in columns.iter_mut().enumerate() {
                    column.push(if index == held { hold } else { 0.0 });
                }
            }
        }
        solve(columns, right)
    }
}

/// The least squares solution of a linear system, by orthogonalising its columns one after another; none where two of them
/// say the same.
fn solve<const P: usize>(mut columns: [Vec<f64>; P], mut right: Vec<f64>) -> Option<[f64; P]> {
    const SAME: f64 = 1e-14;
    let mut upper = [[0.0; P]; P];
    let mut along = [0.0; P];
    for k in 0..P {
        let before = norm(&columns[k]);
        let (done, rest) = columns.split_at_mut(k);
        let (own, rest) = rest.split_first_mut()?;
        // Once more against those before it: rounding has left a little of them in it.
        for (index, other) in done.iter().enumerate() {
            let share = dot(other, own);
            upper[index][k] += share;
            subtract(own, share, other);
        }
        let length = norm(own);
        if !length.is_finite() || length <= SAME * before || length == 0.0 {
            return None;
        }
        own.iter_mut().for_each(|part| *part /= length);
        upper[k][k] = length;
        for (index, other) in rest.iter_mut().enumerate() {
            let share = dot(own, other);
            upper[k][k + 1 + index] = share;
            subtract(other, share, own);
        }
        along[k] = dot(own, &right);
        subtract(&mut right, along[k], own);
    }
    let mut solution = [0.0; P];
    for k in (0..P).rev() {
        let known: f64 = (k + 1..P).map(|j| upper[k][j] * solution[j]).sum();
        solution[k] = (along[k] - known) / upper[k][k];
    }
    solution
        .iter()
        .all(|part| part.is_finite())
        .then_some(solution)
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn norm(column: &[f64]) -> f64 {
    sqrt(dot(column, column))
}

fn subtract(from: &mut [f64], share: f64, column: &[f64]) {
    for (part, other) in from.iter_mut().zip(column) {
        *part -= share * other;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points(seen: &[(f64, f64)]) -> Vec<Point> {
        let weighed = |(x, y): &(f64, f64)| Point {
            x: *x,
            y: *y,
            weight: 1.0,
        };
        seen.iter().map(weighed).collect()
    }

    #[test]
    fn a_straight_line_is_found_in_its_last_digits() {
        let line = |p: &[f64; 2], x: f64| (p[0] + p[1] * x, [1.0, x]);
        let fit = fit(
            &points(&[(1.0, 1.0), (2.0, 3.0), (3.0, 2.0)]),
            [9.0, -4.0],
            &line,
        )
        .expect("settles");
        assert!((fit.parameters[0] - 1.0).abs() < 1e-13, "{fit:?}");
        assert!((fit.parameters[1] - 0.5).abs() < 1e-13, "{fit:?}");
        assert!((fit.squares - 1.5).abs() < 1e-13, "{fit:?}");
    }

    #[test]
    fn a_model_that_runs_away_gives_nothing() {
        let away = |p: &[f64; 1], x: f64| (x - libm::exp(-p[0]), [libm::exp(-p[0])]);
        assert_eq!(fit(&points(&[(1.0, 5.0), (2.0, 7.0)]), [0.0], &away), None);
        let nowhere = |_: &[f64; 1], _: f64| (f64::NAN, [1.0]);
        assert_eq!(fit(&points(&[(1.0, 5.0)]), [0.0], &nowhere), None);
    }
}
