//! Statistics that stay true: products once, both outcomes of what is undecided, flagged pairs apart, and the chance that
//! the truth is on the other side of the limit.

use crate::judge::bench::{config, extraction, judged, run};
use chrono::NaiveDate;
use galleyproof::judge::Judged;
use galleyproof::model::extraction::{Extraction, LabRecord};
use galleyproof::model::registers::{Package, Product, Registers};
use galleyproof::model::statistics::{AssumptionFinding, OtherSide, UncertaintyBasis};
use galleyproof::model::verdict::Verdict;
use proptest::prelude::*;
use std::sync::Arc;

/// A round of a product: its id, the round, the month of its test, and the readings of its packages.
type Round<'a> = (&'a str, &'a str, u32, &'a [[&'a str; 2]]);

fn programme(rounds: &[Round<'_>]) -> Judged {
    let mut registers = Registers::default();
    let mut rows: Vec<Extraction> = Vec::new();
    for (id, round, month, packages) in rounds {
        let product = Product {
            product_id: (*id).into(),
            claim: "gluten-free".into(),
            ..Product::default()
        };
        registers.products.insert((*id).into(), product);
        for (n, readings) in packages.iter().enumerate() {
            let code = format!("{id}-{round}-{n}");
            registers.packages.push(Package {
                package_code: code.clone(),
                product_id: (*id).into(),
                round: (*round).into(),
                ..Package::default()
            });
            rows.extend(
                readings
                    .iter()
                    .zip(1..)
                    .map(|(reported, number)| Extraction {
                        tested_on: NaiveDate::from_ymd_opt(2031, *month, 3),
                        ..extraction("a.csv", &code, number, reported)
                    }),
            );
        }
    }
    run(&registers, rows, &config("us", "")).0
}

const LOW: &[[&str; 2]] = &[["<5", "<5"], ["6", "6.5"], ["7", "7.1"]];
const HIGH: &[[&str; 2]] = &[["30", "31"], ["6", "6.5"], ["7", "7.1"]];
const OPEN: &[[&str; 2]] = &[["6", "160"], ["6", "6.5"], ["7", "7.1"]];

#[test]
fn a_product_is_taken_once_by_its_latest_round_with_a_verdict() {
    let judged = programme(&[
        ("A", "1", 1, HIGH),
        ("A", "2", 6, LOW),
        ("B", "1", 2, HIGH),
        ("B", "2", 7, OPEN),
        ("C", "1", 3, OPEN),
        ("D", "1", 3, LOW),
    ]);
    let statistics = &judged.statistics;
    let share = statistics.over_limit.expect("three have a verdict");
    // A by its second round, B by its first, since the second has none; C has none at all.
    assert_eq!((share.k, share.n), (1, 3));
    assert_eq!(statistics.superseded_rounds, 1);
    let [group] = &statistics.groups[0].groups[..] else {
        panic!("one category")
    };
    assert_eq!((group.share, group.without_verdict), (Some(share), 1));
    let counted = statistics.counts.products;
    assert_eq!(
        counted.within_limit + counted.over_limit + counted.no_verdict,
        6,
        "counts are of every round"
    );
    let quarters: u64 = statistics
        .quarters
        .iter()
        .map(|q| q.over + q.no_verdict + q.within_quantified + q.within_below)
        .sum();
    assert_eq!(quarters, 6);
}

#[test]
fn an_undecided_package_may_be_on_either_side() {
    let us = config("us", "");
    let statistics = judged(&[&["30", "31"], &["6", "6.5"], &["6", "160"]], &us).statistics;
    let share = statistics.over.expect("two are decided");
    // Clopper-Pearson: the lower end of 1 of 3 is 0.84 %, the upper end of 2 of 3 is 99.16 % (R, binom.test).
    assert_eq!((share.k, share.n, statistics.undecided), (1, 3, 1));
    assert_eq!(
        format!("{:.4} {:.4}", share.exact.lower, share.exact.upper),
        "0.0084 0.9916"
    );
    let none = judged(&[&["6", "160"], &["6", "160"], &["6", "160"]], &us).statistics;
    assert_eq!((none.over, none.one_sided_upper), (None, None));
}

proptest! {
    /// However the undecided packages turn out, the share that they would give lies within the bounds.
    #[test]
    fn the_bounds_hold_both_outcomes(over in 0_usize..4, within in 0_usize..4, open in 0_usize..4) {
        prop_assume!(over + within > 0);
        let us = config("us", "");
        let of = |over: usize, within: usize, open: usize| {
            let mut packages: Vec<&[&str]> = vec![&["30", "31"]; over];
            packages.extend(vec![&["6", "6.5"] as &[&str]; within]);
            packages.extend(vec![&["6", "160"] as &[&str]; open]);
            judged(&packages, &us).statistics
        };
        let bounds = of(over, within, open).over.expect("some are decided").exact;
        for turned in 0..=open {
            let share = of(over + turned, within + open - turned, 0).over.expect("all are decided");
            prop_assert!(bounds.lower <= share.exact.lower && share.exact.upper <= bounds.upper);
        }
    }
}

/// Ten products of three pairs, which scatter by about 3 %; in the last months one pair a product is a hot spot.
fn hot_spots(spots: usize) -> Judged {
    let ids: Vec<String> = (0..10).map(|at| format!("P{at}")).collect();
    let calm: &[[&str; 2]] = &[["10.0", "10.4"], ["12.6", "12.0"], ["8.1", "8.4"]];
    let hot: &[[&str; 2]] = &[["10.0", "10.4"], ["12.6", "12.0"], ["6.1", "38"]];
    let rounds: Vec<Round<'_>> = ids
        .iter()
        .zip(1..)
        .map(|(id, month)| {
            let packages = if 10 - month < spots { hot } else { calm };
            (id.as_str(), "1", month as u32, packages)
        })
        .collect();
    programme(&rounds)
}

#[test]
fn flagged_pairs_are_laid_at_no_labs_door() {
    let with = hot_spots(2).statistics;
    let without = hot_spots(0).statistics;
    let (all, calm) = (&with.repeatability[0], &without.repeatability[0]);
    assert_eq!((all.pairs, all.flagged), (28, 2));
    assert_eq!((calm.pairs, calm.flagged), (30, 0));
    assert!(
        (all.relative_s - calm.relative_s).abs() < 0.001,
        "{all:?} {calm:?}"
    );
    assert!(
        (all.resistant_s - calm.resistant_s).abs() < 0.005,
        "{all:?} {calm:?}"
    );
    assert!(with.drift[0].f_test.p > 0.3, "{:?}", with.drift[0]);
    let chart = with.range_chart.expect("thirty pairs");
    let flagged: Vec<&str> = chart
        .points
        .iter()
        .filter(|point| !point.agrees)
        .map(|point| point.package_code.as_str())
        .collect();
    assert_eq!(flagged, ["P8-1-2", "P9-1-2"]);
}

#[test]
fn the_settings_are_questioned_where_the_pairs_exclude_them() {
    let assumption = hot_spots(0).statistics.assumption.expect("thirty pairs");
    assert_eq!(assumption.assumed, 0.15);
    // sqrt((3 x 10) relative squares / 60): 3.9, 4.9 and 3.6 % of the mean give s = 2.97 %.
    assert_eq!(
        assumption.finding,
        AssumptionFinding::Smaller { proposal: 0.03 }
    );
}

#[test]
fn a_repeated_package_is_judged_on_all_and_its_pair_on_two() {
    let registers = crate::judge::bench::registers(Product::default(), 6);
    let repeated: &[&str] = &["9.8", "16.9", "12.9", "13.4"];
    let calm: &[&str] = &["10", "10.4"];
    let rows = crate::judge::bench::extractions(&[repeated, calm, calm, calm, calm, calm]);
    let (judged, _) = run(&registers, rows, &config("us", ""));
    let chart = judged.statistics.range_chart.expect("six pairs");
    let point = &chart.points[0];
    // 7.1 apart with a mean of 13.35: 2.8 sqrt(0.5^2 + (0.15 x 13.35)^2) = 5.78 is allowed between two, 43 % of the mean.
    assert_eq!(
        format!(
            "{:.0} {:.0}",
            point.signed_percent.abs(),
            point.allowed_percent
        ),
        "53 43"
    );
    assert!(!point.agrees && point.beyond);
    // Between four 3.6 s is allowed, 7.2 or more: they agree.
    assert_eq!(point.decided_on, Some((4, true)));
    assert_eq!(judged.statistics.repeatability[0].flagged, 1);
}

#[test]
fn a_few_pairs_are_plotted_and_have_no_lines() {
    let chart = programme(&[("A", "1", 1, LOW)]).statistics.range_chart;
    let chart = chart.expect("two pairs");
    assert_eq!((chart.points.len(), chart.lines), (2, None));
    assert!(chart.points.iter().all(|point| !point.beyond));
}

fn side(readings: [&str; 2], uncertainty: Option<&str>, regime: &str) -> Option<OtherSide> {
    let (registers, rows) = one(readings, uncertainty);
    let (judged, _) = run(&registers, rows, &config(regime, ""));
    judged.products[0].statistics.other_side.first().cloned()
}

fn one(readings: [&str; 2], uncertainty: Option<&str>) -> (Registers, Vec<Extraction>) {
    let registers = crate::judge::bench::registers(Product::default(), 1);
    let rows = readings
        .iter()
        .zip(1..)
        .map(|(reported, number)| Extraction {
            uncertainty: uncertainty.map(Into::into),
            ..extraction("a.csv", "P-1", number, reported)
        });
    (registers, rows.collect())
}

#[test]
fn the_labs_uncertainty_goes_first_and_k_is_said_to_be_assumed() {
    // 19.65 with U = 30 %, k = 2: u = 2.9475, z = 0.35 / 2.9475 = 0.1187, 1 - Phi = 0.4527 (JCGM 106).
    let stated = side(["18.9", "20.4"], Some("± 30 %"), "us").expect("near the limit");
    assert_eq!(stated.basis, UncertaintyBasis::LabAssumed);
    assert_eq!(
        format!("{:.4} {:.4}", stated.u.0, stated.chance),
        "2.9475 0.4527"
    );
    let known = side(["18.9", "20.4"], Some("U = 5.895 ppm (k = 2)"), "us").expect("near");
    assert_eq!(known.basis, UncertaintyBasis::Lab);
    assert_eq!(format!("{:.4}", known.chance), "0.4527");
    // Without one: 15 % of 19.65 and a tenth of the LLOQ, over the root of two.
    let assumed = side(["18.9", "20.4"], None, "us").expect("near the limit");
    assert_eq!(assumed.basis, UncertaintyBasis::AssumedRepeatability);
    assert_eq!(format!("{:.3}", assumed.u.0), "2.114");
    // Over the limit the other side is below it.
    let over = side(["24", "26"], Some("± 40 %"), "us").expect("over");
    assert_eq!(format!("{:.4}", over.chance), "0.1587");
}

#[test]
fn an_uncertainty_for_the_whole_report_holds_for_each_reading() {
    let (registers, mut rows) = one(["18.9", "20.4"], None);
    let record = Arc::new(LabRecord {
        uncertainty: Some("30 % (k = 2)".into()),
        ..LabRecord::default()
    });
    for row in &mut rows {
        row.record = Arc::clone(&record);
    }
    let (judged, _) = run(&registers, rows, &config("us", ""));
    let side = &judged.products[0].statistics.other_side[0];
    assert_eq!(format!("{:?} {:.4}", side.basis, side.chance), "Lab 0.4527");
}

#[test]
fn nothing_is_said_where_no_figure_is_held_against_a_limit() {
    assert_eq!(side(["<5", "<5"], None, "us"), None);
    assert_eq!(side(["6", "160"], None, "us"), None, "they disagree");
    assert_eq!(side(["6", "7"], None, "au-nz"), None, "a detection is one");
    let guarded = config(
        "us",
        "decision = \"guarded\"\nrelative_expanded_uncertainty = 0.3",
    );
    let (registers, rows) = one(["10", "10"], None);
    let (judged, _) = run(&registers, rows, &guarded);
    assert!(judged.products[0].statistics.other_side.is_empty());
    assert!(
        matches!(judged.products[0].verdict.verdict, Verdict::NoVerdict),
        "one of three"
    );
}

proptest! {
    /// The nearer to the limit, the likelier the other side; at most one half on the side where the figure stands.
    #[test]
    fn the_chance_grows_towards_the_limit(far in 6.0_f64..19.0, step in 0.01_f64..0.9) {
        let near = (far + step).min(19.99);
        let chance = |x: f64| {
            let text = format!("{x:.3}");
            side([&text, &text], Some("± 30 %"), "us").expect("a figure").chance
        };
        let (far, near) = (chance(far), chance(near));
        prop_assert!(far <= near && near <= 0.5 + 1e-9);
    }
}
