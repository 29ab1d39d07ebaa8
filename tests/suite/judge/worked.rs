//! Cases worked by hand, as a textbook would print them.

use crate::judge::bench::{config, judged, package};
use galleyproof::judge::pairs::{RANGE_FACTORS, characteristic};
use galleyproof::judge::statistics::binomial::{clopper_pearson, one_sided_upper, wilson};
use galleyproof::judge::statistics::distributions::f_above;
use galleyproof::model::pair::PairState;
use galleyproof::model::ppm::Ppm;
use galleyproof::model::statistics::Bounds;

fn percents(bounds: Option<Bounds>) -> String {
    let bounds = bounds.expect("something counted");
    format!("{:.2}-{:.2}", 100.0 * bounds.lower, 100.0 * bounds.upper)
}

#[test]
fn shares_of_few_and_of_many() {
    let upper = |n| one_sided_upper(0, n, 0.95).map(|share| format!("{:.2}", 100.0 * share));
    assert_eq!(
        [1, 2, 3, 6, 59, 100, 299].map(|n| upper(n).expect("n is not 0")),
        ["95.00", "77.64", "63.16", "39.30", "4.95", "2.95", "1.00"]
    );
    assert_eq!(percents(clopper_pearson(1, 3, 0.95)), "0.84-90.57");
    assert_eq!(percents(wilson(1, 3, 0.95)), "6.15-79.23");
    assert_eq!(percents(clopper_pearson(3, 275, 0.95)), "0.23-3.15");
    assert_eq!(percents(clopper_pearson(16, 78, 0.95)), "12.20-31.16");
}

#[test]
fn the_repeatability_limit_at_twenty() {
    // 2.8 x 15 % of 20 is 8.4; the constant part of the characteristic function, a tenth of the LLOQ, adds 0.11.
    assert_eq!(
        2.8 * characteristic(Ppm(20.0), Ppm(0.0), 0.15).0,
        8.399999999999999
    );
    let allowed = package(&["20", "20"], &config("us", "")).pair.comparison;
    assert_eq!(
        allowed.map(|c| format!("{:.2}", c.allowed.0)),
        Some("8.52".into())
    );
}

#[test]
fn the_pairs_of_the_textbook() {
    let state = |readings: &[&str]| package(readings, &config("us", "")).pair.state;
    assert_eq!(state(&["<5", "<5"]), PairState::Agree);
    // Their difference is at least 1.2 and at most 6.2, where 2.7 is allowed: they need not disagree.
    assert_eq!(state(&["<5", "6.2"]), PairState::Agree);
    assert_eq!(state(&["<5", "9.0"]), PairState::Disagree);
    assert_eq!(state(&["17.2", "22.6"]), PairState::Agree);
    assert_eq!(state(&["6", "160"]), PairState::Disagree);
    assert_eq!(state(&["70", ">80"]), PairState::Agree);
    assert_eq!(state(&["40", ">80"]), PairState::Disagree);
}

#[test]
fn the_range_factors_are_those_of_the_studentised_range() {
    let exact = [
        2.772, 3.314, 3.633, 3.858, 4.030, 4.170, 4.286, 4.387, 4.474,
    ];
    for (printed, exact) in RANGE_FACTORS.iter().zip(exact) {
        assert!(
            (printed - exact).abs() < 0.05,
            "{printed} is {exact} in one decimal"
        );
    }
}

#[test]
fn three_pairs_must_differ_by_an_f_of_nine() {
    // F table: 9.552 is the 95 % point on 2 and 3 degrees of freedom.
    assert_eq!(
        f_above(9.552, 2.0, 3.0).map(|p| format!("{p:.4}")),
        Some("0.0500".into())
    );
}

#[test]
fn three_packages_of_one_product() {
    let product = judged(
        &[&["6", "7"], &["31", "27"], &["8", "9"]],
        &config("us", ""),
    );
    let components = product.statistics.components.expect("all measured");
    let shown = format!(
        "{:.3} {:.3} {:.3} {:.3} {:.3}",
        components.mean.0,
        components.ms_between,
        components.ms_within,
        components.s_within.0,
        components.s_between.0
    );
    assert_eq!(shown, "14.667 310.167 3.000 1.732 12.393");
    let share = product.statistics.over.expect("three packages");
    assert_eq!((share.k, share.n), (1, 3));
}
