//! Case by case: what ours gives for the input, path by path into the expected figures.

use crate::checks::{SAME, Tally, curves};
use crate::judge::bench::{config, package};
use galleyproof::judge::paper;
use galleyproof::judge::statistics::anova::sums_of_squares;
use galleyproof::judge::statistics::binomial::{
    clopper_pearson, needed_to_exclude, one_sided_lower, one_sided_upper, wilson,
};
use galleyproof::judge::statistics::censored::{Observation, lognormal, ordered_mean};
use galleyproof::judge::statistics::conformity::{above, conformance};
use galleyproof::judge::statistics::contrasts::{TwoByTwo, fisher, holm};
use galleyproof::judge::statistics::distributions::normal_quantile;
use galleyproof::judge::statistics::duplicates::Duplicate;
use galleyproof::judge::statistics::horwitz::{horrat, horwitz, thompson};
use galleyproof::judge::statistics::range_chart::d4;
use galleyproof::judge::statistics::repeatability::{interval, relative_s};
use galleyproof::judge::statistics::trend::{Step, cochran_armitage};
use galleyproof::model::figures::written;
use galleyproof::model::package::Standing;
use galleyproof::model::ppm::Ppm;
use galleyproof::model::rule::Limit;
use galleyproof::model::statistics::Bounds;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde_json::Value;
use std::cmp::Ordering;

/// What ours gives: figures by their path, or why there are none.
enum Ours {
    Figures(Vec<(String, Option<f64>)>),
    Text(String),
    Nothing(&'static str),
}

/// Runs every case of a file. What is compared is counted by file and kind.
pub fn run(name: &str, text: &str, tally: &mut Tally) {
    let file: Value = serde_json::from_str(text).unwrap_or_else(|error| panic!("{name}: {error}"));
    let Some(cases) = file["cases"].as_array() else {
        return;
    };
    for case in cases {
        let kind = case["kind"].as_str().expect("a kind");
        let id = case["id"].as_str().unwrap_or("a case");
        match ours(kind, &case["input"]) {
            Ours::Nothing(reason) => tally.skip(kind, reason),
            Ours::Figures(figures) => {
                for (path, figure) in figures {
                    compare(
                        &format!("{name} {kind} {id} {path}"),
                        &path,
                        figure,
                        case,
                        tally,
                    );
                }
            }
            Ours::Text(text) => {
                let what = format!("{name} {kind} {id} text");
                tally.compare_text(&what, &text, case["expected"]["text"].as_str());
            }
        }
    }
}

fn compare(what: &str, path: &str, ours: Option<f64>, case: &Value, tally: &mut Tally) {
    let Some(theirs) = case["expected"].pointer(&format!("/{path}")) else {
        return;
    };
    let theirs = match theirs {
        Value::Bool(yes) => Some(f64::from(u8::from(*yes))),
        Value::String(word) => Some(order_word(word)),
        other => other.as_f64(),
    };
    let tolerance = tolerance(path, &case["input"]);
    tally.compare(what, ours, theirs, tolerance);
    for published in case["published"].as_array().into_iter().flatten() {
        let differs = published.get("differs").is_some();
        if published["path"].as_str() == Some(path) && !differs {
            let printed = published["value"].as_f64().expect("a printed figure");
            let within = published["within"].as_f64().unwrap_or(0.0);
            let near =
                ours.filter(|ours| (ours - printed).abs() <= within.max(tolerance * printed.abs()));
            tally.compare(
                &format!("{what} as printed"),
                near.map(|_| printed),
                Some(printed),
                SAME,
            );
        }
    }
}

/// 1e-9, but where two figures on paper are one (2e-9), where an optimiser ends (1e-8 for curves, 1e-6 for likelihoods) or where 13 leading digits are alike and a float holds 16 (1e-2).
fn tolerance(path: &str, input: &Value) -> f64 {
    if input.get("level_offset").is_some() {
        1e-2
    } else if path.starts_with("mle") {
        1e-6
    } else if path == "acceptance_limit_relative_u" {
        2e-9
    } else {
        SAME
    }
}

fn ours(kind: &str, input: &Value) -> Ours {
    let figures = match kind {
        "binomial" => binomial(input),
        "zero_failures_n" if input["k"].as_u64() == Some(0) => zero_failures(input),
        "zero_failures_n" => {
            return Ours::Nothing("we say only how many are needed with none over");
        }
        "pair" => pair(input),
        "repeatability" => repeatability(input),
        "interlab" => interlab(input),
        "oneway" => oneway(input),
        "censored" => censored(input),
        "trend" => trend(input),
        "fisher" => fisher_(input),
        "holm" => holm_(input),
        "round" | "round_sig" => return rounding(kind, input),
        "conformance" if input["lower"].is_null() => conformance_(input),
        "conformance" => return Ours::Nothing("our limits are upper ones"),
        "guard_band" => at_guard_band(input),
        "guard_band_target" => guarded_decision(input),
        "horwitz" => horwitz_(input),
        "limit_after_rounding" if input["side"] == "max" => unrounded(input),
        "limit_after_rounding" => return Ours::Nothing("our limits are upper ones"),
        "curve_fit" => match input["model"].as_str() {
            Some("4pl" | "5pl") => curves::fitted(input),
            Some("logistic3") => curves::three(input),
            _ => return Ours::Nothing("no curve of ours is a line"),
        },
        "nist_nls" => {
            let mut both = curves::certified(input, "start1");
            both.extend(curves::certified(input, "start2"));
            both
        }
        "cubic_spline" if input["end"] == "natural" => curves::spline(input),
        "cubic_spline" => return Ours::Nothing("our splines are natural"),
        other => return Ours::Nothing(reason(other)),
    };
    Ours::Figures(figures)
}

fn reason(kind: &str) -> &'static str {
    match kind {
        "homogeneity" => "made for ten units and more; we have a few packages",
        "unit_chain" => "the lab works out mg/kg",
        "global_risk" => "how products are distributed is not known",
        "conformance_lognormal" | "conformance_t" => "the chance is of the normal model alone",
        _ => "not known here",
    }
}

/// Figures by their path.
pub type Figures = Vec<(String, Option<f64>)>;

/// A figure with its path.
pub fn figure(path: &str, value: Option<f64>) -> (String, Option<f64>) {
    (path.to_owned(), value)
}

fn ends(path: &str, bounds: Option<Bounds>) -> [(String, Option<f64>); 2] {
    [
        figure(&format!("{path}/0"), bounds.map(|bounds| bounds.lower)),
        figure(&format!("{path}/1"), bounds.map(|bounds| bounds.upper)),
    ]
}

fn number(value: &Value) -> f64 {
    match value {
        Value::String(text) => text.parse().expect("a figure"),
        other => other.as_f64().expect("a figure"),
    }
}

/// A list of figures.
pub fn numbers(value: &Value) -> Vec<f64> {
    let values = value.as_array().expect("figures");
    values.iter().map(number).collect()
}

fn binomial(input: &Value) -> Figures {
    let count = |name: &str| input[name].as_u64().expect("a count");
    let (k, n, confidence) = (count("k"), count("n"), number(&input["conf"]));
    let mut figures = vec![
        figure("one_sided_cp_upper", one_sided_upper(k, n, confidence)),
        figure("one_sided_cp_lower", one_sided_lower(k, n, confidence)),
    ];
    figures.extend(ends("clopper_pearson", clopper_pearson(k, n, confidence)));
    figures.extend(ends("wilson", wilson(k, n, confidence)));
    figures
}

fn zero_failures(input: &Value) -> Figures {
    let confidence = number(&input["conf"]);
    let n = needed_to_exclude(number(&input["p_max"]), confidence);
    let upper = |n: Option<u64>| one_sided_upper(0, n?, confidence);
    vec![
        figure("n", n.map(|n| n as f64)),
        figure("upper_at_n", upper(n)),
        figure("upper_at_n_minus_1", upper(n.map(|n| n - 1))),
    ]
}

/// Orders as the checks write them, as figures that can be compared.
fn order_word(word: &str) -> f64 {
    match word {
        "below" => -1.0,
        "equal" => 0.0,
        "above" => 1.0,
        other => panic!("{other} is no order"),
    }
}

fn order(a: f64, b: f64) -> Option<f64> {
    Some(match Ppm(a).compare(Ppm(b)) {
        Ordering::Less => -1.0,
        Ordering::Equal => 0.0,
        Ordering::Greater => 1.0,
    })
}

fn pair(input: &Value) -> Figures {
    let (a, b) = (Ppm(number(&input["a"])), Ppm(number(&input["b"])));
    let difference = paper::difference(a.max(b), a.min(b)).0;
    let pair = Duplicate {
        first: a,
        second: b,
    };
    let relative = pair.relative().map(|share| 100.0 * share.abs());
    let against = |value: Option<f64>, limit: &str| {
        let limit = input.get(limit).map(number);
        value
            .zip(limit)
            .and_then(|(value, limit)| order(value, limit))
    };
    vec![
        figure("mean", paper::mean(&[a, b]).map(|mean| mean.0)),
        figure("abs_diff", Some(difference)),
        figure("rel_diff_percent_of_mean", relative),
        figure(
            "abs_diff_vs_limit",
            against(Some(difference), "limit_abs_diff"),
        ),
        figure(
            "rel_diff_vs_limit",
            against(relative, "limit_rel_diff_percent"),
        ),
    ]
}

fn repeatability(input: &Value) -> Figures {
    let pairs: Vec<Duplicate> = input["pairs"]
        .as_array()
        .expect("pairs")
        .iter()
        .map(|pair| Duplicate {
            first: Ppm(number(&pair[0])),
            second: Ppm(number(&pair[1])),
        })
        .collect();
    let n = pairs.len();
    let confidence = input.get("conf").map_or(0.95, number);
    let mean_range = pairs
        .iter()
        .map(|pair| pair.difference().abs())
        .sum::<f64>()
        / n as f64;
    let mut figures = vec![
        figure("rsd_pooled_percent", relative_s(&pairs).map(|s| 100.0 * s)),
        figure("range_upper_control_limit_D4", Some(mean_range * d4())),
    ];
    // The interval is ours; the deviation that it is put around is the formula of the case, in ppm.
    let squares: f64 = pairs.iter().map(|pair| pair.difference().powi(2)).sum();
    let s = (squares / (2 * n) as f64).sqrt();
    figures.extend(ends("s_r_ci", interval(s, n, confidence)));
    figures
}

fn interlab(input: &Value) -> Figures {
    let cells: Vec<Vec<f64>> = input["cells"]
        .as_array()
        .expect("cells")
        .iter()
        .map(numbers)
        .collect();
    let sums = sums_of_squares(&cells).expect("cells of several figures");
    let (within, between) = (sums.ms_within(), sums.variance_between());
    vec![
        figure("s_r", Some(within.sqrt())),
        figure("s_L", Some(between.sqrt())),
    ]
}

fn oneway(input: &Value) -> Figures {
    let offset = input.get("level_offset").map_or(Decimal::ZERO, decimal);
    let groups: Vec<Vec<f64>> = input["groups"]
        .as_array()
        .expect("groups")
        .iter()
        .map(|group| {
            let values = group.as_array().expect("figures").iter();
            values
                .map(|value| (decimal(value) + offset).to_f64().expect("a float"))
                .collect()
        })
        .collect();
    let sums = sums_of_squares(&groups).expect("groups of several figures");
    let test = sums.f_test();
    vec![
        figure("df_between", Some(sums.df_between)),
        figure("df_within", Some(sums.df_within)),
        figure("ss_between", Some(sums.between)),
        figure("ss_within", Some(sums.within)),
        figure("ms_between", Some(sums.ms_between())),
        figure("ms_within", Some(sums.ms_within())),
        figure("F", test.map(|test| test.f)),
        figure("p", test.map(|test| test.p)),
        figure("n0", Some(sums.n0)),
        figure("s2_between", Some(sums.variance_between())),
        figure("s_within", Some(sums.ms_within().sqrt())),
        figure("s_between", Some(sums.variance_between().sqrt())),
    ]
}

fn decimal(value: &Value) -> Decimal {
    match value {
        Value::String(text) => text.parse().expect("a decimal"),
        other => other.to_string().parse().expect("a decimal"),
    }
}

fn censored(input: &Value) -> Figures {
    let flags = input["censored"].as_array().expect("marks");
    let observations: Vec<Observation> = numbers(&input["values"])
        .into_iter()
        .zip(flags)
        .map(|(value, censored)| Observation {
            value,
            censored: censored.as_bool().expect("a mark"),
        })
        .collect();
    let fit = lognormal(&observations);
    vec![
        figure("ros/mean", ordered_mean(&observations).map(|mean| mean.0)),
        figure("mle_lognormal/mu", fit.map(|fit| fit.mu)),
        figure("mle_lognormal/sigma", fit.map(|fit| fit.sigma)),
        figure("mle_lognormal/mean", fit.map(|fit| fit.mean.0)),
        figure("mle_lognormal/median", fit.map(|fit| fit.median.0)),
    ]
}

fn trend(input: &Value) -> Figures {
    let (k, n) = (numbers(&input["k"]), numbers(&input["n"]));
    let steps: Vec<Step> = k
        .into_iter()
        .zip(n)
        .zip(numbers(&input["scores"]))
        .map(|((k, n), score)| Step {
            k: k as u64,
            n: n as u64,
            score,
        })
        .collect();
    let trend = cochran_armitage(&steps);
    vec![
        figure("z", trend.map(|trend| trend.z)),
        figure("p_two_sided", trend.map(|trend| trend.p)),
    ]
}

fn fisher_(input: &Value) -> Figures {
    let row = |at: usize| {
        let row = numbers(&input["table"][at]);
        [row[0] as u64, row[1] as u64]
    };
    let table = TwoByTwo {
        first: row(0),
        second: row(1),
    };
    vec![figure("p_two_sided", Some(fisher(&table)))]
}

fn holm_(input: &Value) -> Figures {
    let adjusted = holm(&numbers(&input["p"])).into_iter().enumerate();
    adjusted
        .map(|(at, p)| figure(&format!("adjusted/{at}"), Some(p)))
        .collect()
}

/// The absolute method of ASTM E29: the value as it is against the limit.
fn unrounded(input: &Value) -> Figures {
    let limit = Limit::amount(Ppm(number(&input["limit"])), true);
    let conforms = !limit.over(Ppm(number(&input["value"])));
    vec![figure(
        "conforms_unrounded",
        Some(f64::from(u8::from(conforms))),
    )]
}

/// Printed figures round halves up, means round them to the even digit: each rule is held against the code that follows it,
/// and where there is no half both rules are one.
fn rounding(kind: &str, input: &Value) -> Ours {
    let value = decimal(&input["value"]);
    let even = input["mode"] == "half_even";
    if kind == "round_sig" {
        let figures = input["figures"].as_u64().expect("a count") as u32;
        let rounded = paper::significant(value, figures).expect("a decimal holds it");
        if !even && is_half(value, rounded) {
            return Ours::Nothing("our means round halves to the even digit");
        }
        // A carry keeps the number of figures, as the checks write them.
        let digits = rounded
            .normalize()
            .mantissa()
            .unsigned_abs()
            .to_string()
            .len() as u32;
        let places = rounded.normalize().scale() + figures.saturating_sub(digits);
        let places = if rounded.normalize().scale() == 0 && rounded.abs() >= power(figures - 1) {
            0
        } else {
            places
        };
        return Ours::Text(format!("{rounded:.*}", places as usize));
    }
    let unit = decimal(&input["unit"]);
    let steps = value.checked_div(unit).expect("the unit is not 0");
    if even && steps.fract().abs() == Decimal::new(5, 1) {
        return Ours::Nothing("printed figures round halves up");
    }
    let whole: Decimal = written(steps, 0).parse().expect("a whole number of units");
    let text = format!("{:.*}", unit.scale() as usize, whole * unit);
    if unit.scale() > 0 && unit.mantissa() == 1 {
        // A unit of the last decimal is what is printed: no step of ours between.
        return Ours::Text(written(value, unit.scale()));
    }
    Ours::Text(text)
}

fn power(exponent: u32) -> Decimal {
    (0..exponent).fold(Decimal::ONE, |power, _| power * Decimal::TEN)
}

/// Whether a value lies in the middle between two figures of the rounded one's last digit.
fn is_half(value: Decimal, rounded: Decimal) -> bool {
    let off = (value - rounded).abs().normalize();
    off.mantissa() == 5 && off.scale() == rounded.scale() + 1
}

fn conformance_(input: &Value) -> Figures {
    let (y, u, upper) = (
        number(&input["y"]),
        number(&input["u"]),
        number(&input["upper"]),
    );
    vec![
        figure("p_conform", Some(conformance(y, u, upper))),
        figure("p_nonconform", Some(above(y, u, upper))),
    ]
}

/// A result at the end of a guard band: how likely is it on the other side?
fn at_guard_band(input: &Value) -> Figures {
    let of = |name: &str| number(&input[name]);
    let at = of("upper") - of("r") * of("k") * of("u");
    vec![
        figure(
            "pfa_at_acceptance_limit",
            Some(above(at, of("u"), of("upper"))),
        ),
        figure(
            "p_conform_at_acceptance_limit",
            Some(conformance(at, of("u"), of("upper"))),
        ),
    ]
}

/// The largest result that a guarded decision takes for within the limit, where the band is that multiple of a relative
/// uncertainty which leaves the asked-for risk.
fn guarded_decision(input: &Value) -> Figures {
    let of = |name: &str| number(&input[name]);
    let z = normal_quantile(1.0 - of("pfa"));
    let settings = format!(
        "limit_ppm = {:.1}\nlimit_passes = true\ndecision = \"guarded\"\nrelative_expanded_uncertainty = {}",
        of("upper"),
        z * of("u_rel")
    );
    let config = config("custom", &settings);
    let within = |x: f64| {
        let reported = x.to_string();
        package(&[&reported, &reported], &config).standing == Standing::Within
    };
    let (mut low, mut high) = (5.0, of("upper"));
    for _ in 0..50 {
        let middle = (low + high) / 2.0;
        if within(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    vec![
        figure("z", Some(z)),
        figure("acceptance_limit_relative_u", Some(low)),
    ]
}

fn horwitz_(input: &Value) -> Figures {
    let c = number(&input["mass_fraction"]);
    let observed = input.get("observed_rsd_percent").map(number);
    vec![
        figure("sigma_horwitz", Some(horwitz(c))),
        figure("rsd_percent_horwitz", Some(100.0 * horwitz(c) / c)),
        figure("sigma_thompson", Some(thompson(c))),
        figure("rsd_percent_thompson", Some(100.0 * thompson(c) / c)),
        figure(
            "horrat",
            observed.map(|observed| horrat(observed / 100.0, c)),
        ),
    ]
}
