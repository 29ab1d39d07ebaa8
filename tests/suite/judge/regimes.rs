//! Every rule, every claim, every kind of result at and around the limit: each row with where the rule is written.

use crate::judge::bench::{config, extractions, registers, run};
use galleyproof::model::claim::ClaimClass;
use galleyproof::model::extraction::AssayKind;
use galleyproof::model::package::Standing;
use galleyproof::model::place::Place;
use galleyproof::model::problem::Code;
use galleyproof::model::reason::Reason;
use galleyproof::model::registers::{Bars, Doubt, DoubtKind, Processing, Product, Registers};
use galleyproof::model::verdict::{ProductVerdict, Verdict};
use proptest::prelude::*;

/// regime | claim | class | result = verdict (w within, o over, n none), … | source
const ROWS: &str = "
us | gluten-free | gluten_free | 19.9=w 20=o 20.1=o <20=w >20=o <21=n >19=n <5=w | 21 CFR 101.91 (a) (3): below 20 ppm
us | no gluten | gluten_free | 19.9=w 20=o | 21 CFR 101.91 (b)
us | free of gluten | gluten_free | 19.9=w 20=o | 21 CFR 101.91 (b)
us | Without Gluten | gluten_free | 19.9=w 20=o | 21 CFR 101.91 (b)
us | sans gluten | gluten_free | 19.9=w 20=o | the same claim in another language of labels
us | very low gluten | unknown | 5=n 56=n <5=n | no such claim in 21 CFR 101.91
us | low gluten | unknown | 56=n | no such claim in 21 CFR 101.91
us | wheat-free | unknown | 56=n <5=n | a claim about wheat, not about gluten
us | crafted to remove gluten | unknown | <5=n | TTB Ruling 2020-2: not the claim gluten-free
codex | gluten free | gluten_free | 19.999=w 20=w 20.001=o <20=w >20=o <21=n >19=n | CXS 118-1979, 2.1.1: does not exceed 20 mg/kg
codex | reduced gluten | reduced | 56=w 100=w 100.001=o <100=w >100=o <101=n | CXS 118-1979, 2.1.2: above 20 up to 100 mg/kg
codex | Gluten-Reduced | reduced | 100=w 100.001=o | CXS 118-1979, 2.1.2
codex | very low gluten | unknown | 56=n | no such claim in CXS 118-1979
eu | glutenfrei | gluten_free | 19.999=w 20=w 20.001=o <20=w >20=o | Regulation (EU) No 828/2014, Annex A: no more than 20 mg/kg
eu | very low gluten | very_low | 56=w 100=w 100.001=o <100=w >100=o | Regulation (EU) No 828/2014, Annex A: no more than 100 mg/kg
eu | sehr geringer Glutengehalt | very_low | 100=w 100.1=o | the same (German, from memory)
eu | très faible teneur en gluten | very_low | 100=w 100.1=o | the same (French, from memory)
eu | muy bajo en gluten | very_low | 100=w 100.1=o | the same (Spanish, from memory)
eu | con contenuto di glutine molto basso | very_low | 100=w 100.1=o | the same (Italian, from memory)
eu | low gluten | unknown | 56=n | no such claim in Regulation (EU) No 828/2014
eu | no gluten | unknown | <5=n | no such claim in Regulation (EU) No 828/2014
uk | senza glutine | gluten_free | 20=w 20.001=o | Regulation (EU) No 828/2014 as kept in UK law
uk | Very-Low-Gluten | very_low | 100=w 100.001=o | the same
canada | gluten-free | gluten_free | 19.999=w 20=w 20.001=o | Health Canada on B.24.018: not exceeding 20 ppm
canada | low gluten | unknown | 56=n | no such claim
argentina | sin T.A.C.C. | gluten_free | 9.999=w 10=w 10.001=o <10=w >10=o <11=n | Resolución Conjunta 32/2023: at most 10 mg/kg
argentina | libre de gluten | gluten_free | 10=w 10.001=o | the same
chile | libre de gluten | gluten_free | 5=w 5.001=o <5=w >5=o <6=n <10=n | RSA art. 518: not above 5 mg/kg
au-nz | gluten free | gluten_free | 2.9=o 5.1=o 30=o <3=w <2=w <3.1=n <5=n >80=o | Food Standards Code 1.2.7: no detectable gluten; LOD 3
au-nz | low gluten | low | 56=w 200=w 200.001=o <200=w | Food Standards Code, Schedule 4: 20 mg in 100 g
au-nz | reduced gluten | unknown | 56=n | no such claim in the Food Standards Code
";

/// One package of this product with this claim.
fn claiming(claim: &str, product: Product) -> Registers {
    let mut registers = registers(product, 1);
    let product = registers.products.get_mut("FH-01").expect("is there");
    product.claim = claim.to_owned();
    registers
}

fn one(regime: &str, claim: &str, readings: &[&str]) -> ProductVerdict {
    let settings = config(regime, "[testing]\npackages_per_product = 1\n");
    let registers = claiming(claim, Product::default());
    let (mut judged, _) = run(&registers, extractions(&[readings]), &settings);
    judged.products.remove(0).verdict
}

#[test]
fn every_claim_is_held_against_its_own_limit() {
    let mut decided = 0;
    for row in ROWS.lines().filter(|row| !row.is_empty()) {
        let fields: Vec<&str> = row.split('|').map(str::trim).collect();
        let [regime, claim, class, results, source] = fields[..] else {
            panic!("{row}");
        };
        assert!(!source.is_empty(), "{row}");
        for result in results.split(' ') {
            let (reported, wanted) = result.split_once('=').expect("result = verdict");
            let judged = one(regime, claim, &[reported, reported]);
            assert_eq!(judged.claim.class.word(), class, "{row}");
            let letter = match judged.verdict {
                Verdict::WithinLimit(_) => "w",
                Verdict::OverLimit => "o",
                Verdict::NoVerdict => "n",
            };
            assert_eq!(
                letter, wanted,
                "{regime}, {claim}, {reported} twice: {:?}",
                judged.reasons
            );
            assert!(!judged.reasons.is_empty());
            assert_eq!(judged.notify_maker, letter == "o");
            decided += 1;
        }
    }
    assert!(decided >= 94, "{decided}");
}

#[test]
fn an_unknown_claim_accuses_nobody_and_passes_nobody() {
    for claim in ["", "  ", "wheat-free", "made without wheat"] {
        let judged = one("us", claim, &["90", "95"]);
        assert_eq!(judged.claim.class, ClaimClass::Unknown);
        assert_eq!(judged.claim.limit, None);
        assert_eq!(judged.verdict, Verdict::NoVerdict);
        assert_eq!(judged.packages[0].standing, Standing::Unresolved);
        assert!(!judged.notify_maker);
        assert!(judged.reasons[0].comes_first(), "{:?}", judged.reasons);
    }
}

#[test]
fn a_claim_that_the_rule_does_not_know_is_asked_about() {
    let asked = |regime: &str, claim: &str| {
        let registers = claiming(claim, Product::default());
        let limit = if regime == "custom" {
            "limit_ppm = 20"
        } else {
            ""
        };
        let (_, problems) = run(&registers, vec![], &config(regime, limit));
        crate::judge::bench::codes(&problems).contains(&Code::Suspicious)
    };
    for (regime, claim) in [
        ("us", "very low gluten"),
        ("eu", "low gluten"),
        ("uk", "gluten-fee"),
        ("au-nz", "wheat free"),
    ] {
        assert!(asked(regime, claim), "{regime}, {claim}");
    }
    for (regime, claim) in [
        ("us", "Gluten Free"),
        ("eu", "very low gluten"),
        ("custom", "low in gluten"),
        // A blank one is an error of the register.
        ("us", " "),
    ] {
        assert!(!asked(regime, claim), "{regime}, {claim}");
    }
}

#[test]
fn an_unknown_claim_leaves_both_series_open() {
    let mut rows = extractions(&[&["34", "35"]]);
    let mut others = extractions(&[&["34", "35"]]);
    others
        .iter_mut()
        .for_each(|row| row.assay_kind = AssayKind::Competitive);
    rows.extend(others);
    let fermented = Product {
        processing: Processing::Fermented,
        ..Product::default()
    };
    let (judged, _) = run(&claiming("wheat-free", fermented), rows, &config("eu", ""));
    let package = &judged.products[0].verdict.packages[0];
    let other = package.other_series.as_ref().expect("two series");
    assert_eq!(package.standing, Standing::Unresolved);
    assert_eq!(other.standing, Standing::Unresolved);
    assert!(!judged.products[0].verdict.notify_maker);
}

#[test]
fn a_package_without_a_row_does_not_make_the_assay_unfit() {
    let mut rows = extractions(&[&["<5", "<5"], &["<5", "<5"]]);
    rows.iter_mut()
        .for_each(|row| row.assay_kind = AssayKind::Competitive);
    let product = Product {
        processing: Processing::Fermented,
        ..Product::default()
    };
    let (judged, _) = run(&registers(product, 3), rows, &config("eu", ""));
    let reasons = &judged.products[0].verdict.reasons;
    assert!(
        matches!(reasons[..], [Reason::Missing { .. }]),
        "{reasons:?}"
    );
}

#[test]
fn a_figure_beside_a_bound_is_never_within_where_detection_decides() {
    for (readings, wanted) in [
        (["<3", "4"], Standing::Unresolved),
        (["<3", "5"], Standing::Unresolved),
        (["<1", "2"], Standing::Unresolved),
        (["<3", "<5"], Standing::Unresolved),
        (["<3", "<3"], Standing::BelowQuantification),
    ] {
        let judged = one("au-nz", "gluten free", &readings);
        assert_eq!(judged.packages[0].standing, wanted, "{readings:?}");
    }
}

#[test]
fn readings_by_two_kinds_of_assay_are_two_series() {
    use AssayKind::{Competitive, Sandwich};
    let decide = |regime: &str, processing, sandwich: &[&str], competitive: &[&str]| {
        let mut rows = extractions(&[sandwich]);
        let mut others = extractions(&[competitive]);
        others
            .iter_mut()
            .for_each(|row| row.assay_kind = Competitive);
        rows.extend(others);
        let product = Product {
            processing,
            ..Product::default()
        };
        let settings = config(regime, "[testing]\npackages_per_product = 1\n");
        let (mut judged, problems) = run(&registers(product, 1), rows, &settings);
        let codes = crate::judge::bench::codes(&problems);
        assert!(!codes.contains(&Code::Conflict), "{codes:?}");
        let verdict = judged.products.remove(0).verdict;
        let package = &verdict.packages[0];
        let numbers: Vec<u32> = package
            .pair
            .extractions
            .iter()
            .map(|row| row.extraction.number)
            .collect();
        assert_eq!(numbers, [1, 2]);
        let other = package
            .other_series
            .as_ref()
            .map(|other| other.pair.assay_kind);
        (verdict.verdict.word(), package.pair.assay_kind, other)
    };
    let low: &[&str] = &["<5", "<5"];
    let high: &[&str] = &["34", "35"];
    let fit = Processing::Fermented;
    for (regime, processing, sandwich, competitive, wanted) in [
        (
            "eu",
            fit,
            low,
            high,
            ("over_limit", Competitive, Some(Sandwich)),
        ),
        (
            "eu",
            fit,
            low,
            low,
            ("within_limit", Competitive, Some(Sandwich)),
        ),
        (
            "eu",
            Processing::Hydrolysed,
            high,
            low,
            ("over_limit", Competitive, Some(Sandwich)),
        ),
        (
            "eu",
            Processing::None,
            low,
            high,
            ("within_limit", Sandwich, Some(Competitive)),
        ),
        (
            "eu",
            Processing::Unknown,
            low,
            high,
            ("no_verdict", Sandwich, Some(Competitive)),
        ),
        (
            "us",
            fit,
            low,
            low,
            ("no_verdict", Competitive, Some(Sandwich)),
        ),
        (
            "us",
            fit,
            low,
            high,
            ("over_limit", Competitive, Some(Sandwich)),
        ),
        // A series without a usable reading is none.
        (
            "eu",
            fit,
            &["-", "-"],
            low,
            ("within_limit", Competitive, None),
        ),
        ("eu", fit, low, &["-", "?"], ("no_verdict", Sandwich, None)),
    ] {
        assert_eq!(
            decide(regime, processing, sandwich, competitive),
            wanted,
            "{regime} {processing:?} {sandwich:?} {competitive:?}"
        );
    }
}

#[test]
fn the_reading_under_judgement_does_not_widen_its_own_tolerance() {
    // 9.8, 16.9, 11.2, 12.0: mean 12.475, s = sqrt(0.5^2 + (0.15 x 12.475)^2) = 1.9369, 3.6 s = 6.9728; the gap is 7.1.
    let four = one("us", "gluten-free", &["9.8", "16.9", "11.2", "12.0"]);
    let comparison = four.packages[0].pair.comparison.expect("four readings");
    assert!((comparison.m.0 - 12.475).abs() < 1e-9, "{comparison:?}");
    assert!(
        (comparison.allowed.0 - 6.972_8).abs() < 1e-3,
        "{comparison:?}"
    );
    assert_eq!(four.verdict, Verdict::NoVerdict);
    // <5, 9, 20: the bounds 20 and 5, their middle 12.5; <5 stands at 5, 9 and 20 at themselves: mean 11.333.
    let three = one("us", "gluten-free", &["<5", "9", "20"]);
    let comparison = three.packages[0].pair.comparison.expect("three readings");
    assert!((comparison.m.0 - 34.0 / 3.0).abs() < 1e-9, "{comparison:?}");
    // >80, 60: the bounds 80 and 60; ">80" stands at 80.
    let above = one("us", "gluten-free", &[">80", "60"]);
    let comparison = above.packages[0].pair.comparison.expect("two readings");
    assert!((comparison.m.0 - 70.0).abs() < 1e-9, "{comparison:?}");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    /// What becomes unknown never makes a product pass, nor accuses its maker of an amount.
    #[test]
    fn no_verdict_gets_better_when_something_becomes_unknown(
        readings in prop::collection::vec(prop_oneof![Just("<5"), Just("7"), Just("19"), Just("21"), Just(">80"), Just("-")], 2..5),
        what in 0..4_usize,
        regime in prop_oneof![Just("us"), Just("eu"), Just("au-nz"), Just("chile")],
    ) {
        let settings = config(regime, "[testing]\npackages_per_product = 1\n");
        let mut registers = registers(Product::default(), 1);
        let product = registers.products.get_mut("FH-01").expect("is there");
        match what {
            0 => product.processing = Processing::Unknown,
            1 => product.claim = "wheat-free".to_owned(),
            2 => product.claim = String::new(),
            _ => registers.doubts.push(Doubt {
                product_id: None,
                round: None,
                bars: Bars::Verdict,
                what: DoubtKind::Row,
                place: Place::file("registers/corrections.csv"),
            }),
        }
        let (judged, _) = run(&registers, extractions(&[&readings]), &settings);
        for product in &judged.products {
            prop_assert_eq!(product.verdict.verdict, Verdict::NoVerdict);
            prop_assert!(product.verdict.reasons.iter().all(Reason::comes_first));
        }
    }
}
