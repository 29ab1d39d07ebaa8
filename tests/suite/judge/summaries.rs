//! The programme's figures, from many products.

use crate::judge::bench::{config, extraction, run};
use galleyproof::judge::Judged;
use galleyproof::model::extraction::Extraction;
use galleyproof::model::registers::{Package, Product, Registers};
use galleyproof::model::statistics::{GroupedBy, PairsOf};

/// Sixty products of three packages over six quarters: breads often over, rice never; the lab's scatter doubles half-way.
fn programme() -> Judged {
    let mut registers = Registers::default();
    let mut rows: Vec<Extraction> = Vec::new();
    for at in 0..60_u32 {
        let id = format!("FH-{at:02}");
        let bread = at % 2 == 0;
        registers.products.insert(
            id.clone(),
            Product {
                product_id: id.clone(),
                category: Some(if bread { "bread" } else { "rice" }.into()),
                certifier: (at % 3 == 0).then(|| "Kestrel Seal".to_owned()),
                claim: "gluten-free".into(),
                ..Product::default()
            },
        );
        for n in 1..=3 {
            let code = format!("{id}-{n}");
            registers.packages.push(Package {
                package_code: code.clone(),
                product_id: id.clone(),
                round: "1".into(),
                ..Package::default()
            });
            rows.extend(pair(&code, at, bread));
        }
    }
    run(&registers, rows, &config("us", "")).0
}

fn pair(code: &str, at: u32, bread: bool) -> [Extraction; 2] {
    let level = f64::from(6 + at % 7);
    let scatter = if at < 30 { 0.02 } else { 0.08 };
    let level = match bread {
        true if at % 10 >= 6 => 30.0,
        true => level,
        false => 0.0,
    };
    let text = |sign: f64| match level {
        0.0 => "<5".to_owned(),
        level => format!("{:.2}", level * (1.0 + sign * scatter)),
    };
    let month = 1 + (at / 10) % 2 * 3;
    let year = 2030 + at as i32 / 20;
    [(1, 1.0), (2, -1.0)].map(|(number, sign)| Extraction {
        tested_on: chrono::NaiveDate::from_ymd_opt(year, month, 1 + at % 28),
        ..extraction("a.csv", code, number, &text(sign))
    })
}

#[test]
fn shares_by_group_and_quarter() {
    let statistics = programme().statistics;
    let over = statistics.over_limit.expect("all have a verdict");
    assert_eq!((over.k, over.n), (12, 60));
    let by = |by| {
        statistics
            .groups
            .iter()
            .find(|grouping| grouping.by == by)
            .expect("grouped")
    };
    let names: Vec<_> = by(GroupedBy::Category)
        .groups
        .iter()
        .map(|group| group.name.as_str())
        .collect();
    assert_eq!(names, ["bread", "rice"]);
    let certified = &by(GroupedBy::Certification).groups;
    assert_eq!(
        certified
            .iter()
            .filter_map(|group| group.share)
            .map(|share| share.n)
            .sum::<u64>(),
        60
    );
    let quarters: Vec<_> = statistics
        .quarters
        .iter()
        .map(|q| (q.year, q.quarter))
        .collect();
    assert_eq!(
        quarters.len(),
        10,
        "those without tests between the first and the last are there"
    );
    assert_eq!((quarters[0], quarters[9]), ((2030, 1), (2032, 2)));
}

#[test]
fn tests_only_where_the_counts_carry_them() {
    let statistics = programme().statistics;
    let [bread, rice] = &statistics.contrasts[..] else {
        panic!("two categories: {:?}", statistics.contrasts)
    };
    assert_eq!(bread.category, "bread");
    assert_eq!(bread.p, rice.p, "each is held against the other");
    assert!(bread.p < 0.001 && bread.p_holm == bread.p * 2.0);
    let trend = statistics.trend.expect("twelve over, 48 not");
    assert_eq!(trend.quarters, 6);
    assert!(trend.p > 0.5, "the same share in each quarter");
}

#[test]
fn the_labs_own_repeatability_and_its_drift() {
    let statistics = programme().statistics;
    let all = &statistics.repeatability[0];
    assert_eq!((&all.of, all.pairs, all.flagged), (&PairsOf::All, 90, 0));
    assert!(all.interval.lower < all.relative_s && all.relative_s < all.interval.upper);
    let of: Vec<_> = statistics
        .repeatability
        .iter()
        .map(|r| r.of.clone())
        .collect();
    assert_eq!(
        of,
        [
            PairsOf::All,
            PairsOf::Lab("Harrow & Vane Analytical".into()),
            PairsOf::BelowLimit,
            PairsOf::FromLimit
        ]
    );
    let [drift] = &statistics.drift[..] else {
        panic!("one lab")
    };
    assert!(drift.late_s > 3.0 * drift.early_s && drift.f_test.p < 0.001);
    let chart = statistics.range_chart.expect("ninety pairs");
    assert_eq!(chart.points.len(), 90);
    assert!(
        chart
            .points
            .iter()
            .all(|point| !point.beyond && point.agrees)
    );
    let first = chart.points[..3].iter();
    let first: Vec<_> = first.map(|point| point.package_code.as_str()).collect();
    assert_eq!(
        first,
        ["FH-00-1", "FH-00-2", "FH-00-3"],
        "by day, then by code"
    );
}

#[test]
fn results_below_quantification_are_summarised_with_bounds() {
    let groups = programme().statistics.censored;
    let of: Vec<_> = groups.iter().map(|group| group.of.as_str()).collect();
    assert_eq!(of, ["all", "bread", "rice"]);
    let rice = &groups[2];
    assert_eq!((rice.n, rice.censored, rice.ros_mean), (90, 90, None));
    let censored = &groups[0];
    assert_eq!((censored.n, censored.censored), (180, 90));
    assert!(
        censored.lower_bound < censored.middle_bound
            && censored.middle_bound < censored.upper_bound
    );
    let ros = censored.ros_mean.expect("enough data");
    assert!(censored.lower_bound < ros && ros < censored.upper_bound);
    assert!(censored.mle.is_some());
}

#[test]
fn an_empty_programme_has_nothing_to_say() {
    let statistics = run(&Registers::default(), vec![], &config("us", ""))
        .0
        .statistics;
    assert_eq!(statistics.over_limit, None);
    assert_eq!(statistics.trend, None);
    assert!(statistics.censored.is_empty());
    assert!(statistics.repeatability.is_empty() && statistics.quarters.is_empty());
    assert_eq!(statistics.packages_needed.len(), 5, "true of any programme");
}
