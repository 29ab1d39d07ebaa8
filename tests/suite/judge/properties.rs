//! What must hold of any readings.

use crate::judge::bench::{config, extraction, registers, run};
use galleyproof::judge::Judged;
use galleyproof::model::extraction::{Extraction, Interval, Outcome};
use galleyproof::model::package::Standing;
use galleyproof::model::pair::PairState;
use galleyproof::model::ppm::Ppm;
use galleyproof::model::registers::Product;
use galleyproof::model::verdict::Verdict;
use proptest::prelude::*;

const REGIMES: [&str; 8] = [
    "us",
    "codex",
    "eu",
    "uk",
    "canada",
    "argentina",
    "chile",
    "au-nz",
];

/// A reading as a lab writes it, near the limits and away from them.
fn reading() -> impl Strategy<Value = String> {
    prop_oneof![
        3 => (0_u32..600).prop_map(|tenths| format!("{}.{}", tenths / 10, tenths % 10)),
        2 => prop_oneof![Just(3), Just(5), Just(10), Just(20), Just(25)].prop_map(|n| format!("<{n}")),
        1 => prop_oneof![Just(20), Just(80)].prop_map(|n| format!(">{n}")),
        1 => Just("-".to_owned()),
        1 => Just("20".to_owned()),
    ]
}

fn packages() -> impl Strategy<Value = Vec<Vec<String>>> {
    prop::collection::vec(prop::collection::vec(reading(), 0..5), 1..5)
}

fn regime() -> impl Strategy<Value = &'static str> {
    prop::sample::select(&REGIMES[..])
}

fn decision() -> impl Strategy<Value = &'static str> {
    prop::sample::select(
        &[
            "",
            "decision = \"guarded\"\nrelative_expanded_uncertainty = 0.3",
        ][..],
    )
}

fn rows(packages: &[Vec<String>]) -> Vec<Extraction> {
    let of_package = |(at, readings): (usize, &Vec<String>)| {
        let code = format!("P-{}", at + 1);
        let rows = readings.iter().zip(1..);
        rows.map(|(reported, number)| extraction("a.csv", &code, number, reported))
            .collect::<Vec<_>>()
    };
    packages.iter().enumerate().flat_map(of_package).collect()
}

fn judged(packages: &[Vec<String>], regime: &str, decision: &str) -> Judged {
    let registers = registers(Product::default(), packages.len());
    run(&registers, rows(packages), &config(regime, decision)).0
}

fn verdict(judged: &Judged) -> Verdict {
    judged.products[0].verdict.verdict
}

/// The larger, the worse.
fn rank(standing: Standing) -> u8 {
    match standing {
        Standing::BelowQuantification => 0,
        Standing::Within => 1,
        Standing::Unresolved | Standing::Inconclusive => 2,
        Standing::Over => 3,
    }
}

proptest! {
    #[test]
    fn adding_a_package_never_clears_a_product(
        packages in packages(), more in prop::collection::vec(reading(), 0..5), regime in regime(), decision in decision(),
    ) {
        let before = judged(&packages, regime, decision);
        let with_more: Vec<_> = packages.into_iter().chain([more]).collect();
        let after = judged(&with_more, regime, decision);
        if verdict(&before) == Verdict::OverLimit {
            prop_assert_eq!(verdict(&after), Verdict::OverLimit);
        }
    }

    /// As long as the readings agree before and after. Otherwise it can: 6 beside 18 disagrees and decides nothing, 17
    /// beside 18 agrees and is within; 19 beside 22 has its mean over the limit, 19 beside 40 disagrees.
    #[test]
    fn raising_a_reading_never_improves_a_standing(
        mut readings in prop::collection::vec(1_u32..600, 2..5), at in 0_usize..4, by in 1_u32..100,
        regime in regime(), decision in decision(),
    ) {
        let text = |readings: &[u32]| vec![readings.iter().map(|n| format!("{}.{}", n / 10, n % 10)).collect::<Vec<_>>()];
        let before = judged(&text(&readings), regime, decision);
        let at = at % readings.len();
        readings[at] += by;
        let after = judged(&text(&readings), regime, decision);
        let package = |judged: &Judged| {
            let package = &judged.products[0].verdict.packages[0];
            (package.pair.state, rank(package.standing))
        };
        let ((state_before, rank_before), (state_after, rank_after)) = (package(&before), package(&after));
        if state_before == PairState::Agree && state_after == PairState::Agree {
            prop_assert!(rank_after >= rank_before);
        }
    }

    #[test]
    fn the_order_of_rows_and_packages_changes_nothing(
        packages in packages(), seed in any::<prop::sample::Index>(), regime in regime(),
    ) {
        let config = config(regime, "");
        let mut registers = registers(Product::default(), packages.len());
        let mut rows = rows(&packages);
        let (before, _) = run(&registers, rows.clone(), &config);
        registers.packages.reverse();
        rows.reverse();
        let turn = if rows.is_empty() { 0 } else { seed.index(rows.len()) };
        rows.rotate_left(turn);
        let (after, _) = run(&registers, rows, &config);
        let verdicts = |judged: &Judged| judged.products.iter().map(|p| p.verdict.clone()).collect::<Vec<_>>();
        prop_assert_eq!(verdicts(&before), verdicts(&after));
        prop_assert_eq!(before.statistics, after.statistics);
    }

    #[test]
    fn disagreeing_readings_are_never_within(packages in packages(), regime in regime(), decision in decision()) {
        for package in &judged(&packages, regime, decision).products[0].verdict.packages {
            if package.pair.state == PairState::Disagree {
                prop_assert!(matches!(package.standing, Standing::Over | Standing::Unresolved));
            }
        }
    }

    /// Everything in parts per billion, the limit too: the same standings.
    #[test]
    fn a_change_of_unit_changes_nothing(packages in packages(), decision in decision()) {
        let custom = |limit: &str| format!("limit_ppm = {limit}\nlimit_passes = true\n{decision}");
        let registers = registers(Product::default(), packages.len());
        let (ppm, _) = run(&registers, rows(&packages), &config("custom", &custom("20")));
        let mut scaled = rows(&packages);
        for row in &mut scaled {
            row.lloq = Ppm(row.lloq.0 * 1000.0);
            if let Outcome::Reading(reading) = &mut row.outcome {
                *reading = Interval {
                    lower: Ppm(reading.lower.0 * 1000.0),
                    upper: reading.upper.map(|upper| Ppm(upper.0 * 1000.0)),
                    ..*reading
                };
            }
        }
        let (ppb, _) = run(&registers, scaled, &config("custom", &custom("20000")));
        let standings = |judged: &Judged| {
            let packages = judged.products[0].verdict.packages.iter();
            packages.map(|package| (package.pair.state, package.standing)).collect::<Vec<_>>()
        };
        prop_assert_eq!(standings(&ppm), standings(&ppb));
    }

    #[test]
    fn everything_is_counted_once(packages in packages(), regime in regime(), decision in decision()) {
        let judged = judged(&packages, regime, decision);
        let counts = judged.statistics.counts;
        let extractions = counts.extractions;
        let all = extractions.below_quantification + extractions.within + extractions.over + extractions.unusable;
        prop_assert_eq!(all as usize, packages.iter().map(Vec::len).sum::<usize>());
        let by = counts.packages;
        let all = by.below_quantification + by.within + by.over + by.unresolved + by.inconclusive;
        prop_assert_eq!(all as usize, packages.len());
        prop_assert!(!judged.products[0].verdict.reasons.is_empty());
    }

    /// Whatever a label says, it is screened without a panic and printed whole.
    #[test]
    fn any_statement_is_kept_whole(
        statement in "(?s)([a-zéüß ]{0,8}|wheat|malt|no |may contain |free from |gluten-free |[(),.:;*\n])*.{0,20}",
    ) {
        use galleyproof::judge::labels::{Terms, review};
        use galleyproof::model::rule::Regime;
        let product = Product { ingredients: Some(statement.clone()), ..Product::default() };
        let review = review(&product, Regime::Us, Terms::built_in());
        let joined: String = review.statement.into_iter().map(|piece| piece.text).collect();
        prop_assert_eq!(joined, statement);
    }
}
