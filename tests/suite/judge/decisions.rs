//! Readings to verdicts: agreement, results, standings, reasons.

use crate::judge::bench::{
    codes, config, extraction, extractions, judged, package, registers, run,
};
use galleyproof::model::extraction::Interval;
use galleyproof::model::package::{ResultKind, Standing};
use galleyproof::model::pair::{PairState, Usage};
use galleyproof::model::place::Place;
use galleyproof::model::ppm::Ppm;
use galleyproof::model::problem::Code;
use galleyproof::model::reason::Reason;
use galleyproof::model::registers::{
    Correction, CorrectionAction, Package, Processing, Product, Registers,
};
use galleyproof::model::verdict::{Grade, Verdict};
use galleyproof::words::english;

#[track_caller]
fn stands(regime: &str, readings: &[&str], state: PairState, standing: Standing) {
    let package = package(readings, &config(regime, ""));
    assert_eq!(
        (package.pair.state, package.standing),
        (state, standing),
        "{package:#?}"
    );
}

#[test]
fn exactly_at_the_limit_goes_by_the_regime_and_on_paper() {
    use PairState::Agree;
    stands("us", &["20", "20"], Agree, Standing::Over);
    stands("eu", &["20", "20"], Agree, Standing::Within);
    stands("us", &["17.2", "19.9", "22.9"], Agree, Standing::Over);
    stands("us", &["19.96", "19.96"], Agree, Standing::Within);
    stands("argentina", &["10", "10"], Agree, Standing::Within);
    stands("chile", &["5", "5"], Agree, Standing::Within);
}

#[test]
fn open_bounds_at_the_limit() {
    use PairState::Agree;
    stands("us", &["<20", "<20"], Agree, Standing::BelowQuantification);
    stands("chile", &["<5", "<5"], Agree, Standing::BelowQuantification);
    stands("chile", &["<10", "<10"], Agree, Standing::Unresolved);
    stands("au-nz", &["<3", "<3"], Agree, Standing::BelowQuantification);
    stands("au-nz", &["<5", "<5"], Agree, Standing::Unresolved);
    stands("eu", &[">20", ">20"], Agree, Standing::Over);
    stands("us", &[">80", ">80"], Agree, Standing::Over);
}

#[test]
fn a_censored_and_a_measured_reading_agree_where_the_reports_allow_it() {
    let near = package(&["<5", "6.2"], &config("us", ""));
    assert_eq!(near.pair.state, PairState::Agree, "gap 1.2");
    let comparison = near.pair.comparison.expect("two readings");
    assert_eq!((comparison.gap, comparison.m), (Ppm(1.2), Ppm(5.6)));
    assert_eq!(
        near.result,
        ResultKind::Range(Interval {
            lower: Ppm(3.1),
            upper: Some(Ppm(5.6)),
            upper_open: true,
            lower_open: false
        })
    );
    assert_eq!(near.standing, Standing::Within);
    stands(
        "us",
        &["<5", "9.0"],
        PairState::Disagree,
        Standing::Unresolved,
    );
}

#[test]
fn readings_that_disagree_are_never_within() {
    use PairState::Disagree;
    stands("us", &["6", "160"], Disagree, Standing::Unresolved);
    stands("us", &["25", "160"], Disagree, Standing::Over);
    stands("us", &["<5", "14"], Disagree, Standing::Unresolved);
    stands("us", &["6", "25", "26"], Disagree, Standing::Over);
    stands("us", &["6", "7", "160"], Disagree, Standing::Unresolved);
    stands("us", &["6", "18", "22", "60"], Disagree, Standing::Over);
    stands(
        "eu",
        &["6", "18", "22", "60"],
        Disagree,
        Standing::Unresolved,
    );
    let apart = package(&["6", ">80"], &config("us", ""));
    assert_eq!(
        apart.result,
        ResultKind::Range(Interval {
            lower: Ppm(6.0),
            upper: None,
            upper_open: true,
            lower_open: false
        })
    );
}

#[test]
fn an_agreeing_pair_on_both_sides_of_the_limit_says_so() {
    let pair = package(&["17.2", "22.6"], &config("us", ""));
    assert_eq!(pair.result, ResultKind::Value { mean: Ppm(19.9) });
    assert!(pair.straddles_limit);
    assert_eq!(pair.standing, Standing::Within);
    assert!(!package(&["17.2", "18.6"], &config("us", "")).straddles_limit);
}

#[test]
fn guarded_decisions_keep_a_band_on_both_sides() {
    let guarded = config(
        "us",
        "decision = \"guarded\"\nrelative_expanded_uncertainty = 0.3",
    );
    let standing = |readings: &[&str]| package(readings, &guarded).standing;
    assert_eq!(standing(&["15.3", "15.3"]), Standing::Within);
    assert_eq!(standing(&["15.4", "15.4"]), Standing::Inconclusive);
    assert_eq!(standing(&["28.5", "28.5"]), Standing::Inconclusive);
    assert_eq!(standing(&["28.6", "28.6"]), Standing::Over);
    assert_eq!(standing(&["<5", "<5"]), Standing::BelowQuantification);
    assert_eq!(standing(&["<15", "<15"]), Standing::BelowQuantification);
    assert_eq!(standing(&["<16", "<16"]), Standing::Unresolved);
    assert_eq!(
        standing(&["25", "160"]),
        Standing::Over,
        "disagreeing: as under the simple rule"
    );
}

#[test]
fn incomplete_and_missing() {
    use PairState::{Incomplete, Missing};
    stands("us", &["25"], Incomplete, Standing::Unresolved);
    stands("us", &["25", "-"], Incomplete, Standing::Unresolved);
    stands("us", &["?", "?"], Incomplete, Standing::Unresolved);
    stands("us", &["-", "-"], Missing, Standing::Unresolved);
    stands("us", &[], Missing, Standing::Unresolved);
}

#[test]
fn the_worst_package_decides() {
    let us = config("us", "");
    let verdict = |packages: &[&[&str]]| judged(packages, &us).verdict;
    let clean: &[&str] = &["<5", "<5"];
    let quantified = verdict(&[clean, clean, &["12.4", "13.1"]]);
    assert_eq!(quantified.verdict, Verdict::WithinLimit(Grade::Quantified));
    let below = verdict(&[clean, clean, clean]);
    assert_eq!(
        below.verdict,
        Verdict::WithinLimit(Grade::BelowQuantification)
    );
    assert!(!below.notify_maker);
    let over = verdict(&[clean, &["6", "160"], &["30", "32"]]);
    assert_eq!(over.verdict, Verdict::OverLimit);
    assert!(over.notify_maker);
    let open = verdict(&[clean, &["6", "160"], clean]);
    assert_eq!(open.verdict, Verdict::NoVerdict);
    assert!(
        matches!(&open.reasons[0], Reason::Disagree { package, .. } if package == "P-2"),
        "{:?}",
        open.reasons
    );
    let few = verdict(&[clean, clean]);
    assert_eq!(few.verdict, Verdict::NoVerdict);
    let (tested, asked) = (2, 3);
    assert_eq!(few.reasons, [Reason::TooFewPackages { tested, asked }]);
}

#[test]
fn a_fermented_food_is_cleared_by_no_assay_that_cannot_see_it() {
    use galleyproof::model::extraction::AssayKind;
    let clean: &[&str] = &["<5", "<5"];
    let over: &[&str] = &["30", "31"];
    let decide = |regime: &str, kind, third: &[&str]| {
        let product = Product {
            processing: Processing::Fermented,
            ..Product::default()
        };
        let mut rows = extractions(&[clean, clean, third]);
        rows.iter_mut().for_each(|row| row.assay_kind = kind);
        let (judged, _) = run(&registers(product, 3), rows, &config(regime, ""));
        judged.products[0].verdict.verdict
    };
    assert_eq!(decide("eu", AssayKind::Sandwich, clean), Verdict::NoVerdict);
    assert!(matches!(
        decide("eu", AssayKind::Competitive, clean),
        Verdict::WithinLimit(_)
    ));
    assert_eq!(
        decide("us", AssayKind::Competitive, clean),
        Verdict::NoVerdict
    );
    assert_eq!(decide("us", AssayKind::Sandwich, over), Verdict::OverLimit);
}

#[test]
fn which_packages_count() {
    let mut registers = registers(Product::default(), 3);
    registers.knows_sent_on = true;
    registers.packages[0].sent_on = chrono::NaiveDate::from_ymd_opt(2031, 3, 4);
    let rows = vec![
        extraction("a.csv", "P-2", 1, "<5"),
        extraction("a.csv", "P-3", 1, "-"),
    ];
    let (judged, problems) = run(&registers, rows, &config("us", ""));
    let codes_of = |judged: &galleyproof::judge::Judged| {
        let packages = judged.products[0].verdict.packages.iter();
        packages
            .map(|package| package.pair.package.package_code.clone())
            .collect::<Vec<_>>()
    };
    assert_eq!(
        codes_of(&judged),
        ["P-1", "P-2"],
        "P-3 is a spare that the lab's form lists"
    );
    assert_eq!(codes(&problems), [Code::MissingPackage]);
    registers.packages.remove(0);
    let (judged, problems) = run(&registers, vec![], &config("us", ""));
    assert!(judged.products.is_empty() && codes(&problems).is_empty());
}

fn correction(file: &str, extraction: Option<u32>, action: CorrectionAction) -> Correction {
    Correction {
        file: file.into(),
        package_code: "P-1".into(),
        extraction,
        action,
        reason: "the lab withdrew its report".into(),
        by: "M. Quill".into(),
        on: chrono::NaiveDate::from_ymd_opt(2031, 3, 4).expect("a day"),
        place: Place::file("registers/corrections.csv"),
        columns: [None; 3],
    }
}

/// Two files that report both extractions of P-1.
fn two_reports(second: [&str; 2]) -> Vec<galleyproof::model::extraction::Extraction> {
    vec![
        extraction("a.csv", "P-1", 1, "12.4"),
        extraction("a.csv", "P-1", 2, "13.1"),
        extraction("b.csv", "P-1", 1, second[0]),
        extraction("b.csv", "P-1", 2, second[1]),
    ]
}

#[test]
fn equal_reports_count_once_and_unequal_ones_not_at_all() {
    let registers = registers(Product::default(), 1);
    let (judged, problems) = run(
        &registers,
        two_reports(["12.40", "14.0"]),
        &config("us", ""),
    );
    let pair = &judged.products[0].verdict.packages[0].pair;
    assert_eq!(codes(&problems), [Code::CountedOnce, Code::Conflict]);
    assert_eq!(pair.state, PairState::Incomplete);
    let usages: Vec<_> = pair.extractions.iter().map(|row| &row.usage).collect();
    assert_eq!(
        usages,
        [&Usage::Used, &Usage::InConflict, &Usage::InConflict]
    );
    assert_eq!(pair.extractions[0].also_reported.len(), 1);
    let all = problems.sorted();
    let message = english().found(all[1]);
    assert!(
        message.contains("a.csv, cell C3") && message.contains("b.csv, cell C3"),
        "{message}"
    );
}

#[test]
fn a_correction_settles_a_conflict() {
    let settle = |correction| Registers {
        corrections: vec![correction],
        ..registers(Product::default(), 1)
    };
    let exclude = settle(correction("inbox/b.csv", None, CorrectionAction::Exclude));
    let (judged, problems) = run(&exclude, two_reports(["15", "16"]), &config("us", ""));
    assert!(codes(&problems).is_empty());
    let package = &judged.products[0].verdict.packages[0];
    assert_eq!(package.result, ResultKind::Value { mean: Ppm(12.75) });
    assert_eq!(judged.statistics.counts.extractions.unusable, 2);
    let repeat = settle(correction("b.csv", None, CorrectionAction::Repeat));
    let (judged, problems) = run(&repeat, two_reports(["15", "16"]), &config("us", ""));
    assert!(codes(&problems).is_empty());
    let pair = &judged.products[0].verdict.packages[0].pair;
    let numbers: Vec<_> = pair.usable().map(|row| row.number).collect();
    assert_eq!(numbers, [1, 2, 3, 4]);
    assert_eq!(
        pair.comparison.map(|comparison| comparison.factor),
        Some(3.6)
    );
}

#[test]
fn rounds_are_judged_apart() {
    let mut registers = registers(Product::default(), 1);
    registers.packages.push(Package {
        package_code: "Q-1".into(),
        product_id: "FH-01".into(),
        round: "2".into(),
        ..Package::default()
    });
    let (judged, _) = run(&registers, vec![], &config("us", ""));
    let stems: Vec<_> = judged
        .products
        .iter()
        .map(|product| product.verdict.stem())
        .collect();
    assert_eq!(stems, ["FH-01--1", "FH-01--2"]);
}
