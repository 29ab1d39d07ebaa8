//! A natural cubic spline: cubic between neighbours, without a bend at either end.
//!
//! Source: Burden and Faires, Numerical Analysis, section 3.5, algorithm 3.4.

use libm::sqrt;

/// Halvings of an interval: beyond these nothing of a float is left to halve.
const HALVINGS: usize = 200;

/// A spline through knots.
#[derive(Clone, Debug, PartialEq)]
pub struct Spline {
    knots: Vec<(f64, f64)>,
    /// The second derivative at each knot.
    bends: Vec<f64>,
}

impl Spline {
    /// Through these knots, whose places rise; none of fewer than two.
    pub fn natural(knots: Vec<(f64, f64)>) -> Option<Spline> {
        let rises = knots.windows(2).all(|pair| pair[0].0 < pair[1].0);
        let are_finite = knots.iter().all(|(x, y)| x.is_finite() && y.is_finite());
        if knots.len() < 2 || !rises || !are_finite {
            return None;
        }
        let bends = bends(&knots);
        Some(Spline { knots, bends })
    }

    /// The value at a place; beyond the ends, that of the outer pieces.
    pub fn value(&self, x: f64) -> f64 {
        self.value_in(self.piece(x), x)
    }

    /// The piece in which a place lies.
    fn piece(&self, x: f64) -> usize {
        let last = self.knots.len() - 2;
        let above = self.knots.iter().position(|(knot, _)| *knot > x);
        above
            .map_or(last, |above| above.saturating_sub(1))
            .min(last)
    }

    fn value_in(&self, piece: usize, x: f64) -> f64 {
        let [(x0, y0), (x1, y1)] = [self.knots[piece], self.knots[piece + 1]];
        let (m0, m1) = (self.bends[piece], self.bends[piece + 1]);
        let width = x1 - x0;
        let (left, right) = ((x1 - x) / width, (x - x0) / width);
        let bend = (left * left * left - left) * m0 + (right * right * right - right) * m1;
        left * y0 + right * y1 + bend * width * width / 6.0
    }

    /// The slope at each knot.
    pub fn slopes(&self) -> Vec<f64> {
        let count = self.knots.len();
        (0..count)
            .map(|knot| {
                let piece = knot.min(count - 2);
                let [(x0, y0), (x1, y1)] = [self.knots[piece], self.knots[piece + 1]];
                let (m0, m1) = (self.bends[piece], self.bends[piece + 1]);
                let width = x1 - x0;
                let chord = (y1 - y0) / width;
                match knot == piece {
                    true => chord - width * (2.0 * m0 + m1) / 6.0,
                    false => chord + width * (m0 + 2.0 * m1) / 6.0,
                }
            })
            .collect()
    }

    /// The second derivative at each knot.
    pub fn bends(&self) -> &[f64] {
        &self.bends
    }

    /// Whether it only rises, or only falls, between its ends: the places where a piece turns are those where its slope, a
    /// parabola, is zero.
    pub fn is_monotone(&self) -> bool {
        let rises = self.knots[self.knots.len() - 1].1 > self.knots[0].1;
        let along = |y: f64| if rises { y } else { -y };
        let knots_rise = self
            .knots
            .windows(2)
            .all(|pair| along(pair[0].1) < along(pair[1].1));
        knots_rise && (0..self.knots.len() - 1).all(|piece| !self.turns(piece))
    }

    /// Whether a piece turns between its ends.
    fn turns(&self, piece: usize) -> bool {
        let [(x0, y0), (x1, y1)] = [self.knots[piece], self.knots[piece + 1]];
        let (m0, m1) = (self.bends[piece], self.bends[piece + 1]);
        let width = x1 - x0;
        // Slope at x0 + t width: c + b t + a t^2.
        let c = (y1 - y0) / width - width * (2.0 * m0 + m1) / 6.0;
        let b = m0 * width;
        let a = (m1 - m0) * width / 2.0;
        let rest = b * b - 4.0 * a * c;
        let roots = if a == 0.0 {
            [-c / b, f64::NAN]
        } else if rest <= 0.0 {
            // It touches zero at most, and does not cross it.
            return false;
        } else {
            // The larger root first, the other by their product: no digits are lost.
            let q = -0.5 * (b + sqrt(rest).copysign(b));
            [q / a, c / q]
        };
        roots.iter().any(|root| *root > 0.0 && *root < 1.0)
    }

    /// The place of a value between the ends of a monotone spline: by halving the piece that holds it. None beyond the ends.
    pub fn inverse(&self, y: f64) -> Option<f64> {
        let piece = self.knots.windows(2).position(|pair| {
            let (a, b) = (pair[0].1, pair[1].1);
            (a.min(b)..=a.max(b)).contains(&y)
        })?;
        let [(mut low, y0), (mut high, y1)] = [self.knots[piece], self.knots[piece + 1]];
        if y == y0 {
            return Some(low);
        }
        if y == y1 {
            return Some(high);
        }
        for _ in 0..HALVINGS {
            let middle = low + (high - low) / 2.0;
            if middle <= low || middle >= high {
                break;
            }
            let is_before = (self.value_in(piece, middle) < y) == (y0 < y1);
            if is_before {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(low)
    }
}

/// The second derivative at each knot: a system in three diagonals, solved from the top and back.
fn bends(knots: &[(f64, f64)]) -> Vec<f64> {
    let last = knots.len() - 1;
    let mut bends = vec![0.0; knots.len()];
    let (mut factors, mut rights) = (vec![0.0; knots.len()], vec![0.0; knots.len()]);
    for i in 1..last {
        let [(x0, y0), (x1, y1), (x2, y2)] = [knots[i - 1], knots[i], knots[i + 1]];
        let (before, after) = (x1 - x0, x2 - x1);
        let change = 6.0 * ((y2 - y1) / after - (y1 - y0) / before);
        let pivot = 2.0 * (before + after) - before * factors[i - 1];
        factors[i] = after / pivot;
        rights[i] = (change - before * rights[i - 1]) / pivot;
    }
    for i in (1..last).rev() {
        bends[i] = rights[i] - factors[i] * bends[i + 1];
    }
    bends
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn three_knots_are_those_of_the_textbook() {
        let spline = Spline::natural(vec![(-1.0, 0.5), (0.0, 0.0), (3.0, 3.0)]).expect("rises");
        let slopes = spline.slopes();
        for (ours, theirs) in slopes.iter().zip([-0.6875, -0.125, 1.5625]) {
            assert!((ours - theirs).abs() < 1e-12, "{slopes:?}");
        }
        assert!(!spline.is_monotone());
    }

    #[test]
    fn what_turns_between_two_knots_is_not_monotone() {
        let knots = vec![(0.0, 0.08), (2.0, 0.081), (5.0, 0.083), (20.0, 0.95)];
        assert!(!Spline::natural(knots).expect("rises").is_monotone());
        let flat = vec![(0.0, 1.0), (1.0, 1.0)];
        assert!(!Spline::natural(flat).expect("rises").is_monotone());
        let line = vec![(0.0, 3.0), (1.0, 2.0), (2.0, 1.0)];
        let line = Spline::natural(line).expect("rises");
        assert!(line.is_monotone());
        let half = line.inverse(2.5).expect("lies between its ends");
        assert!((half - 0.5).abs() < 1e-12, "{half}");
        assert_eq!(line.inverse(3.5), None);
    }

    #[test]
    fn places_that_do_not_rise_make_no_spline() {
        assert_eq!(Spline::natural(vec![(1.0, 1.0)]), None);
        assert_eq!(Spline::natural(vec![(1.0, 1.0), (1.0, 2.0)]), None);
        assert_eq!(Spline::natural(vec![(0.0, f64::NAN), (1.0, 2.0)]), None);
    }
}
