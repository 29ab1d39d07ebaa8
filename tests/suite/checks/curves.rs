//! Curves of plates and what is read on them, case by case.

use super::cases::{Figures, figure, numbers};
use galleyproof::measure::least_squares::{Fit, Model, Point, fit};
use galleyproof::measure::logistic::{five, four, inverse, value};
use galleyproof::measure::spline::Spline;
use galleyproof::model::plate::Parameters;
use serde_json::Value;

fn points(input: &Value) -> Vec<Point> {
    let (x, y) = (numbers(&input["x"]), numbers(&input["y"]));
    let weights = match input["weights"].is_array() {
        true => numbers(&input["weights"]),
        false => vec![1.0; x.len()],
    };
    x.into_iter()
        .zip(y)
        .zip(weights)
        .map(|((x, y), weight)| Point { x, y, weight })
        .collect()
}

/// A logistic curve as a run fits it, from its own starting values.
pub fn fitted(input: &Value) -> Figures {
    let points = points(input);
    let is_five = input["model"] == "5pl";
    let found = if is_five {
        five(&points)
    } else {
        four(&points)
    };
    let Some((curve, squares)) = found else {
        return vec![figure("wrss", None)];
    };
    let free = points.len() - if is_five { 5 } else { 4 };
    let Parameters { a, b, c, d, g } = curve;
    let mut figures = vec![
        figure("params/a", Some(a)),
        figure("params/b", Some(b)),
        figure("params/c", Some(c)),
        figure("params/d", Some(d)),
        figure("wrss", Some(squares)),
        figure("resid_sd", Some((squares / free as f64).sqrt())),
    ];
    figures.extend(g.map(|g| figure("params/g", Some(g))));
    for (index, y) in numbers(&input["inverse_at"]).into_iter().enumerate() {
        figures.push(figure(&format!("inverse/{index}"), inverse(&curve, y)));
    }
    for (index, x) in numbers(&input["predict_at"]).into_iter().enumerate() {
        let predicted = figure(&format!("predict/{index}"), Some(value(&curve, x)));
        figures.push(predicted);
    }
    figures
}

fn named<const P: usize>(
    names: [&str; P],
    points: &[Point],
    found: Option<Fit<P>>,
    sum: &str,
) -> Figures {
    let Some(found) = found else {
        return vec![figure(sum, None)];
    };
    let sd = (found.squares / (points.len() - P) as f64).sqrt();
    let parameters = names.iter().zip(found.parameters);
    parameters
        .map(|(name, value)| figure(&format!("params/{name}"), Some(value)))
        .chain([
            figure(sum, Some(found.squares)),
            figure("resid_sd", Some(sd)),
        ])
        .collect()
}

fn start<const P: usize>(value: &Value) -> [f64; P] {
    let all = numbers(value);
    all.try_into().expect("a start of each parameter")
}

/// The fit that curves rest on, from the starting values of the case.
pub fn three(input: &Value) -> Figures {
    let points = points(input);
    let model: Model<'_, 3> = &|p, x| {
        let e = ((p[1] - x.ln()) / p[2]).exp();
        let y = p[0] / (1.0 + e);
        let by = -y * e / (1.0 + e);
        (
            y,
            [y / p[0], by / p[2], -by * (p[1] - x.ln()) / (p[2] * p[2])],
        )
    };
    let found = fit(&points, start(&input["start"]), model);
    named(["Asym", "xmid", "scal"], &points, found, "wrss")
}

/// Certified sets of the NIST, from both of their starting values where these lead there.
pub fn certified(input: &Value, from: &str) -> Figures {
    let points = points(input);
    match input["model"].as_str() {
        Some("Rat42") => {
            let model: Model<'_, 3> = &|p, x| {
                let e = (p[1] - p[2] * x).exp();
                let y = p[0] / (1.0 + e);
                let by = -y * e / (1.0 + e);
                (y, [y / p[0], by, -by * x])
            };
            let found = fit(&points, start(&input[from]), model);
            named(["0", "1", "2"], &points, found, "rss")
        }
        Some("Rat43") => {
            let model: Model<'_, 4> = &|p, x| {
                let e = (p[1] - p[2] * x).exp();
                let y = p[0] * (1.0 + e).powf(-1.0 / p[3]);
                let by = -y * e / (1.0 + e) / p[3];
                let by_power = y * (1.0 + e).ln() / (p[3] * p[3]);
                (y, [y / p[0], by, -by * x, by_power])
            };
            let found = fit(&points, start(&input[from]), model);
            named(["0", "1", "2", "3"], &points, found, "rss")
        }
        _ => {
            let model: Model<'_, 4> = &|p, x| {
                let (above, below) = (x * x + p[1] * x, x * x + p[2] * x + p[3]);
                let y = p[0] * above / below;
                (y, [y / p[0], p[0] * x / below, -y * x / below, -y / below])
            };
            let found = fit(&points, start(&input[from]), model);
            named(["0", "1", "2", "3"], &points, found, "rss")
        }
    }
}

/// From concentrations to the axis of a spline, or back.
type Axis = fn(f64) -> f64;

/// A natural spline in the axis of the case.
pub fn spline(input: &Value) -> Figures {
    let (to, back): (Axis, Axis) = match input["x_transform"].as_str() {
        Some("ln") => (f64::ln, f64::exp),
        Some("log10") => (f64::log10, |t| 10_f64.powf(t)),
        _ => (|x| x, |t| t),
    };
    let knots: Vec<(f64, f64)> = numbers(&input["x"])
        .into_iter()
        .map(to)
        .zip(numbers(&input["y"]))
        .collect();
    let spline = Spline::natural(knots).expect("knots rise");
    let is_monotone = spline.is_monotone();
    let mut figures = vec![figure("monotone", Some(f64::from(u8::from(is_monotone))))];
    let each = |path: &str, values: Vec<f64>| -> Figures {
        let numbered = values.into_iter().enumerate();
        numbered
            .map(|(index, value)| figure(&format!("{path}/{index}"), Some(value)))
            .collect()
    };
    let at = numbers(&input["eval_at"]);
    let values = at.into_iter().map(|x| spline.value(to(x))).collect();
    figures.extend(each("value", values));
    figures.extend(each("slope_wrt_spline_axis_at_knots", spline.slopes()));
    figures.extend(each("second_derivative_at_knots", spline.bends().to_vec()));
    if is_monotone {
        for (index, y) in numbers(&input["inverse_at"]).into_iter().enumerate() {
            let found = spline.inverse(y).map(back);
            // Nothing is expected where the curve does not reach: then there is no first place.
            figures.extend(found.map(|x| figure(&format!("all_inverse/{index}/0"), Some(x))));
        }
    }
    figures
}
