//! Logistic curves of four and five parameters: y = D + (A - D) / (1 + (x / C)^B)^G.
//!
//! Sources: Rodbard and Hutt (1974) for four parameters, Prentice (1976) and Gottschalk and Dunn (2005) for five.

use super::least_squares::{Fit, Point, fit};
use crate::model::plate::Parameters;
use libm::{exp, fabs, log, log1p, pow};

/// How steep a curve may be, and how flat: what lies beyond is a step or a line.
const SLOPES: (f64, f64) = (0.02, 50.0);

/// How far beyond the standards its middle may lie, as a multiple: what lies farther shows nothing of its bend.
const BEYOND: f64 = 1e4;

/// How asymmetric a curve may be.
const ASYMMETRY: (f64, f64) = (0.01, 100.0);

/// Starting values: each of these slopes ..
const TRIED_SLOPES: [f64; 8] = [0.4, 0.6, 0.85, 1.2, 1.7, 2.5, 4.0, 7.0];

/// .. with each of these asymmetries, and with the middle in so many places from a third of the lowest standard above zero to
/// ten times the highest.
const TRIED_ASYMMETRIES: [f64; 5] = [0.25, 0.5, 1.0, 2.0, 4.0];
const TRIED_MIDDLES: usize = 13;

/// How many of the best starting values are followed to the end.
const FOLLOWED: usize = 3;

/// Fits four parameters; none where no curve of this kind settles on the standards.
pub fn four(points: &[Point]) -> Option<(Parameters, f64)> {
    let model = |p: &[f64; 4], x: f64| {
        let (value, changes) = shape(&[p[0], p[1], p[2], p[3], 0.0], x);
        (value, [changes[0], changes[1], changes[2], changes[3]])
    };
    let fits = starts(points, &[1.0]).filter_map(|start| {
        let [a, slope, middle, d, _] = start;
        fit(points, [a, slope, middle, d], &model)
    });
    let widened = fits.map(|found| {
        let [a, slope, middle, d] = found.parameters;
        Fit {
            parameters: [a, slope, middle, d, 0.0],
            squares: found.squares,
        }
    });
    best(points, widened).map(|(parameters, squares)| {
        let symmetric = Parameters {
            g: None,
            ..parameters
        };
        (symmetric, squares)
    })
}

/// Fits five parameters, likewise.
pub fn five(points: &[Point]) -> Option<(Parameters, f64)> {
    let fits = starts(points, &TRIED_ASYMMETRIES)
        .filter_map(|start| fit(points, start, &|p: &[f64; 5], x| shape(p, x)));
    best(points, fits)
}

/// The fit that leaves least, where it is a curve that the standards show.
fn best(points: &[Point], fits: impl Iterator<Item = Fit<5>>) -> Option<(Parameters, f64)> {
    let (low, high) = range(points)?;
    let within = |figure: f64, (least, most): (f64, f64)| (least..=most).contains(&figure);
    fits.map(|found| {
        let [a, slope, middle, d, asymmetry] = found.parameters;
        let parameters = Parameters {
            a,
            b: exp(slope),
            c: exp(middle),
            d,
            g: Some(exp(asymmetry)),
        };
        (parameters, found.squares)
    })
    .filter(|(found, _)| {
        within(found.b, SLOPES)
            && within(found.c, (low / BEYOND, high * BEYOND))
            && within(found.g.unwrap_or(1.0), ASYMMETRY)
            && found.a != found.d
    })
    .min_by(|a, b| a.1.total_cmp(&b.1))
}

/// The lowest concentration above zero and the highest one.
fn range(points: &[Point]) -> Option<(f64, f64)> {
    let above_zero = || points.iter().map(|point| point.x).filter(|x| *x > 0.0);
    Some((
        above_zero().min_by(f64::total_cmp)?,
        above_zero().max_by(f64::total_cmp)?,
    ))
}

/// Starting values, the best few of a lattice: where slope, middle and asymmetry are given, the ends A and D of the curve
/// stand in a line and are solved for.
fn starts(points: &[Point], asymmetries: &[f64]) -> impl Iterator<Item = [f64; 5]> {
    let mut tried: Vec<(f64, [f64; 5])> = Vec::new();
    if let Some((low, high)) = range(points) {
        let (first, last) = (log(low / 3.0), log(high * 10.0));
        for step in 0..TRIED_MIDDLES {
            let middle = first + (last - first) * step as f64 / (TRIED_MIDDLES - 1) as f64;
            for slope in TRIED_SLOPES {
                let lattice = asymmetries.iter();
                tried.extend(lattice.filter_map(|asymmetry| {
                    ends(points, [0.0, log(slope), middle, 0.0, log(*asymmetry)])
                }));
            }
        }
    }
    tried.sort_by(|a, b| a.0.total_cmp(&b.0));
    tried.into_iter().take(FOLLOWED).map(|(_, start)| start)
}

/// The ends of the curve that leave least, and how much they leave.
fn ends(points: &[Point], curve: [f64; 5]) -> Option<(f64, [f64; 5])> {
    let (mut hh, mut hk, mut kk, mut hy, mut ky) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for point in points {
        // With A = 1 and D = 0 the curve is the share of A; the rest is that of D.
        let share = shape(&[1.0, curve[1], curve[2], 0.0, curve[4]], point.x).0;
        let (weight, rest) = (point.weight, 1.0 - share);
        hh += weight * share * share;
        hk += weight * share * rest;
        kk += weight * rest * rest;
        hy += weight * share * point.y;
        ky += weight * rest * point.y;
    }
    let det = hh * kk - hk * hk;
    if fabs(det) <= 1e-12 * hh * kk || det == 0.0 {
        return None;
    }
    let (a, d) = ((hy * kk - ky * hk) / det, (ky * hh - hy * hk) / det);
    let whole = [a, curve[1], curve[2], d, curve[4]];
    let left = points.iter().map(|point| {
        let residual = point.y - shape(&whole, point.x).0;
        point.weight * residual * residual
    });
    let left: f64 = left.sum();
    left.is_finite().then_some((left, whole))
}

/// The value at a concentration, and how it changes with A, ln B, ln C, D and ln G.
fn shape([a, slope, middle, d, asymmetry]: &[f64; 5], x: f64) -> (f64, [f64; 5]) {
    let (b, g) = (exp(*slope), exp(*asymmetry));
    if x <= 0.0 {
        return (*a, [1.0, 0.0, 0.0, 0.0, 0.0]);
    }
    let steps = b * (log(x) - middle);
    // ln(1 + e^steps), and e^steps / (1 + e^steps), without an overflow.
    let (ln_sum, part) = match steps > 0.0 {
        true => (steps + log1p(exp(-steps)), 1.0 / (1.0 + exp(-steps))),
        false => (log1p(exp(steps)), exp(steps) / (1.0 + exp(steps))),
    };
    let share = exp(-g * ln_sum);
    let height = a - d;
    let by_steps = -height * share * g * part;
    let changes = [
        share,
        by_steps * steps,
        -by_steps * b,
        1.0 - share,
        -height * share * g * ln_sum,
    ];
    (d + height * share, changes)
}

/// The absorbance at a concentration.
pub fn value(curve: &Parameters, x: f64) -> f64 {
    let ln_g = log(curve.g.unwrap_or(1.0));
    shape(&[curve.a, log(curve.b), log(curve.c), curve.d, ln_g], x).0
}

/// The concentration at an absorbance: C (((A - D) / (y - D))^(1/G) - 1)^(1/B). None where the absorbance is not between the
/// ends of the curve.
pub fn inverse(curve: &Parameters, y: f64) -> Option<f64> {
    let Parameters { a, b, c, d, g } = *curve;
    let share = (y - d) / (a - d);
    if !(share > 0.0 && share < 1.0) {
        return None;
    }
    let ratio = pow(1.0 / share, 1.0 / g.unwrap_or(1.0)) - 1.0;
    let x = c * pow(ratio, 1.0 / b);
    x.is_finite().then_some(x)
}

#[cfg(test)]
mod tests {
    use super::*;

    const FOUR: Parameters = Parameters {
        a: 0.05,
        b: 1.2,
        c: 45.0,
        d: 3.0,
        g: None,
    };

    fn near(ours: f64, theirs: f64) -> bool {
        (ours - theirs).abs() < 5e-5
    }

    #[test]
    fn values_are_those_worked_by_hand() {
        assert!(near(value(&FOUR, 20.0), 0.8591));
        assert!(near(value(&FOUR, 5.0), 0.2471));
        assert!(near(value(&FOUR, 80.0), 2.0149));
        assert!(near(inverse(&FOUR, 0.8).expect("is between"), 18.3546));
        let five = Parameters {
            g: Some(0.8),
            ..FOUR
        };
        assert!(near(value(&five, 20.0), 0.7173));
        assert!(near(inverse(&five, 0.8).expect("is between"), 22.8298));
    }

    #[test]
    fn beyond_its_ends_a_curve_says_nothing() {
        for y in [0.05, 3.0, -1.0, 4.0, f64::NAN] {
            assert_eq!(inverse(&FOUR, y), None, "{y}");
        }
        assert_eq!(value(&FOUR, 0.0), 0.05);
    }

    #[test]
    fn its_own_curve_is_found_again_from_points_on_it() {
        let points: Vec<Point> = [0.0, 5.0, 10.0, 20.0, 40.0, 80.0, 160.0]
            .into_iter()
            .map(|x| Point {
                x,
                y: value(&FOUR, x),
                weight: 1.0,
            })
            .collect();
        let (found, left) = four(&points).expect("settles");
        assert!(left < 1e-20, "{left}");
        for (ours, theirs) in [
            (found.a, 0.05),
            (found.b, 1.2),
            (found.c, 45.0),
            (found.d, 3.0),
        ] {
            assert!((ours - theirs).abs() < 1e-9 * theirs, "{found:?}");
        }
    }

    #[test]
    fn a_straight_line_and_a_flat_one_are_no_such_curve() {
        let points = |seen: &dyn Fn(f64) -> f64| -> Vec<Point> {
            [0.0, 5.0, 10.0, 20.0, 40.0, 80.0]
                .into_iter()
                .map(|x| Point {
                    x,
                    y: seen(x),
                    weight: 1.0,
                })
                .collect()
        };
        assert_eq!(four(&points(&|_| 0.3)), None);
        assert_eq!(five(&points(&|_| 0.3)), None);
        assert_eq!(four(&[]), None);
    }
}
