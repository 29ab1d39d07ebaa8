//! Ours against tests/independent/planning.json: scipy's quadrature and binomial, python-stdnum's check characters.

use galleyproof::judge::planning::bounds::Bounds;
use galleyproof::judge::planning::chances::{Design, Ruling, at_least_one, range_at_most, verdict};
use galleyproof::judge::planning::codes::{check_character, is_sound};
use galleyproof::judge::planning::scatter::{ENOUGH, of_logarithms};
use galleyproof::judge::statistics::binomial::{CONFIDENCE, needed_to_exclude};
use galleyproof::model::planning::VerdictChances;
use galleyproof::model::ppm::Ppm;
use serde_json::Value;

/// Chances are between 0 and 1: this is an absolute difference.
const SAME: f64 = 1e-9;

fn cases(kind: &str) -> Vec<Value> {
    let all: Value = serde_json::from_str(include_str!("../../independent/planning.json"))
        .expect("the file is JSON");
    let cases = all[kind].as_array().cloned().unwrap_or_default();
    assert!(cases.len() >= 3, "{} of {kind}", cases.len());
    cases
}

fn number(case: &Value, key: &str) -> f64 {
    case[key]
        .as_f64()
        .unwrap_or_else(|| panic!("{key} of {case}"))
}

fn count(case: &Value, key: &str) -> usize {
    number(case, key) as usize
}

fn ours(case: &Value) -> VerdictChances {
    let (limit, q, guard) = (
        number(case, "limit"),
        number(case, "q"),
        number(case, "guard"),
    );
    let shows_nothing = q * (1.0 + guard) > limit * (1.0 + SAME);
    let within_below = if shows_nothing {
        0.0
    } else {
        limit / (1.0 + guard)
    };
    let ruling = Ruling {
        bounds: Bounds {
            over_from: Ppm((limit / (1.0 - guard)).max(q)),
            within_below: Ppm(within_below),
            limit: Ppm(limit.max(q)),
        },
        lloq: q,
        relative_repeatability: number(case, "r"),
    };
    let design = Design {
        packages: count(case, "packages"),
        extractions: count(case, "e"),
        between: number(case, "sb"),
        within: number(case, "sw"),
    };
    verdict(number(case, "mean"), &design, &ruling)
}

/// Each chance of ours beside theirs.
fn beside(case: &Value) -> [(f64, f64); 3] {
    let ours = ours(case);
    let theirs = |key| number(&case["chances"], key);
    [
        (ours.over, theirs("over")),
        (ours.within, theirs("within")),
        (ours.undecided, theirs("undecided")),
    ]
}

#[test]
fn exact_chances_are_those_of_another_program() {
    for case in cases("at_least_one") {
        let ours = at_least_one(number(&case, "share"), count(&case, "packages"));
        assert!(
            (ours - number(&case, "chance")).abs() < SAME,
            "{case}: {ours}"
        );
    }
    for case in cases("range") {
        let ours = range_at_most(number(&case, "width"), count(&case, "count"));
        assert!(
            (ours - number(&case, "chance")).abs() < SAME,
            "{case}: {ours}"
        );
    }
    for case in cases("needed") {
        let ours = needed_to_exclude(number(&case, "share"), CONFIDENCE);
        assert_eq!(ours, case["packages"].as_u64(), "{case}");
    }
}

#[test]
fn the_chance_of_each_verdict_is_that_of_another_program() {
    let cases = cases("verdicts");
    assert!(cases.len() > 100, "{}", cases.len());
    for case in cases {
        for (ours, theirs) in beside(&case) {
            assert!((ours - theirs).abs() < SAME, "{case}: {ours} for {theirs}");
        }
    }
}

/// The rule played reading by reading: the model takes a mean of lognormal values for lognormal and the extremes of three and
/// four readings for symmetrical, which costs less than five parts in a hundred.
#[test]
fn the_model_is_near_the_rule_played_out() {
    for case in cases("simulated") {
        for (ours, theirs) in beside(&case) {
            let allowed = 0.05 + 4.0 * number(&case, "standard_error");
            assert!(
                (ours - theirs).abs() < allowed,
                "{case}: {ours} for {theirs}"
            );
        }
    }
}

/// What is from ten degrees of freedom or more is the programme's own; else a stand-in.
#[test]
fn scatters_between_and_within_packages_are_those_of_another_program() {
    for case in cases("scatter") {
        let products: Vec<Vec<Vec<f64>>> =
            serde_json::from_value(case["products"].clone()).expect("figures");
        let ours = of_logarithms(&products, 0.15);
        let own = &case["own"];
        for (ours, key) in [(ours.within, "within"), (ours.between, "between")] {
            let df = count(own, &format!("df_{key}"));
            let (expected, behind) = match (df >= ENOUGH, key) {
                (true, _) => (number(own, key), df),
                (false, "within") => (0.15f64.powi(2).ln_1p().sqrt(), 0),
                (false, _) => (0.4f64.powi(2).ln_1p().sqrt(), 0),
            };
            assert!(
                (ours.log_sd - expected).abs() < SAME,
                "{key}: {ours:?} for {expected}"
            );
            assert_eq!(ours.df, behind, "{key}");
        }
    }
}

#[test]
fn check_characters_are_those_of_the_standard() {
    for case in cases("codes") {
        let (body, check) = (case["body"].as_str(), case["check"].as_str());
        let (body, check) = body.zip(check).expect("texts");
        assert_eq!(
            check_character(body).map(String::from).as_deref(),
            Some(check)
        );
        assert!(is_sound(&format!("{body}{check}")));
    }
    assert_eq!(
        check_character("a1"),
        None,
        "small letters are not in the alphabet"
    );
}
