//! An invented programme, decided by hand rules, of any size: what the summary and the newsletter are tested on.

use chrono::{Datelike, Days, NaiveDate};
use galleyproof::config::Config;
use galleyproof::model::claim::Claim;
use galleyproof::model::decided::{Decided, JudgedProduct};
use galleyproof::model::extraction::{AssayKind, Extraction, Interval, Outcome};
use galleyproof::model::followup::{FollowUpState, Told};
use galleyproof::model::label::{LabelFinding, LabelReview, LabelTerm, StatementPiece, TermClass};
use galleyproof::model::package::{PackageResult, ResultKind, Standing};
use galleyproof::model::pair::{Comparison, Pair, PairState, PairedExtraction, Usage};
use galleyproof::model::place::{LabFile, Source};
use galleyproof::model::ppm::Ppm;
use galleyproof::model::problem::Problems;
use galleyproof::model::publication::{Publication, PublicationState};
use galleyproof::model::reason::Reason;
use galleyproof::model::registers::{Followup, FollowupKind, Package, Product, Registers};
use galleyproof::model::rule::Limit;
use galleyproof::model::rule::{Decision, Regime, Rule};
use galleyproof::model::statistics::{
    Assumption, AssumptionFinding, Bounds, CensoredSummary, Counts, Drift, FTest, Group, GroupedBy,
    Grouping, Horwitz, PackagesNeeded, PairsOf, ProductStatistics, ProgrammeStatistics,
    QuarterCounts, RangeChart, RangeLines, RangePoint, Repeatability, Share, Trend,
};
use galleyproof::model::verdict::{Grade, ProductVerdict, Verdict};
use statrs::distribution::{Beta, ContinuousCDF};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

const CATEGORIES: [&str; 8] = [
    "Biscuits and crackers",
    "Breads and rolls",
    "Breakfast cereals, oats",
    "Flours, baking mixes",
    "Pasta and noodles",
    "Ready meals",
    "Sauces and soups",
    "Snack bars and crisps",
];
const BRANDS: [&str; 8] = [
    "Gråpil",
    "Tumblefern",
    "Quince & Quarrel",
    "Señora Zumbería",
    "#*_$@<>\\ Kitchen",
    "Brindle & Moth",
    "Ottergrain",
    "Åsvindel Kværn",
];
const FOODS: [&str; 8] = [
    "Digestives",
    "Seeded sandwich loaf",
    "Rolled oats",
    "Chickpea flour",
    "Brown rice fusilli",
    "Smoked Fish and Leek Pie with Crushed Potato and Toasted Crumb Topping",
    "Brown sauce",
    "Seed bar",
];

/// The settings of the invented programme, with this rule.
pub fn config(rule: &str, paper: &str) -> Config {
    config_in("en", rule, paper)
}

/// The same in one of the languages of the documents.
pub fn config_in(language: &str, rule: &str, paper: &str) -> Config {
    let text = format!(
        r#"
        [programme]
        language = "{language}"
        name = "Tidewater Kitchen Works"
        short_name = "TKW"
        email = "tests@tidewater.example"
        corrections = "corrections@tidewater.example"
        website = "tidewater.example"
        regulator = "food authority"
        statement = "No maker pays for a test or sees the list of products in advance."
        paper = "{paper}"
        [rule]
        {rule}
        [lab]
        name = "Harrow & Vane Analytical"
        "#
    );
    Config::parse(&text, Path::new("programme")).expect("the settings are sound")
}

/// A repeatable stream of numbers.
struct Dice(u64);

impl Dice {
    /// From 0 to below 1.
    fn roll(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    fn of(&mut self, n: usize) -> usize {
        (self.roll() * n as f64) as usize
    }
}

/// That many products, decided under the settings' rule.
pub fn decided(products: usize, config: &Config) -> Decided {
    let mut dice = Dice(20_310_506);
    let products: Vec<JudgedProduct> = (0..products)
        .map(|number| product(number, products, config, &mut dice))
        .collect();
    let statistics = statistics(&products);
    let lab_file = lab_file();
    Decided {
        products,
        statistics,
        registers: Registers::default(),
        lab_files: vec![lab_file],
        understandings: Vec::new(),
        plates: Vec::new(),
        problems: Problems::default(),
        audience: Default::default(),
        under_revision: Vec::new(),
        with_lab: 0,
    }
}

const RULE: Rule = Rule {
    regime: Regime::Us,
    limit: Limit::amount(Ppm(20.0), false),
    decision: Decision::Simple,
};

fn lab_file() -> Arc<LabFile> {
    Arc::new(LabFile {
        path: "inbox/2031/results.csv".into(),
        sha256: "ab".repeat(32),
        ..LabFile::default()
    })
}

fn product(number: usize, all: usize, config: &Config, dice: &mut Dice) -> JudgedProduct {
    let product_id = format!("TW-{:04}", number + 1);
    let kind = dice.of(8);
    let day = NaiveDate::from_ymd_opt(2030, 1, 8).expect("a date")
        + Days::new((number * 700 / all.max(1)) as u64);
    let level = match dice.of(10) {
        0 => 22.0 + 40.0 * dice.roll(),
        1 | 2 => 5.5 + 12.0 * dice.roll(),
        _ => 2.0,
    };
    let size = if number % 11 == 5 { 6 } else { 3 };
    let packages: Vec<PackageResult> = (0..size)
        .map(|place| package(&product_id, place, level, day, config, dice))
        .collect();
    let verdict = verdict(&packages);
    let label = label(number);
    let notify_maker = verdict == Verdict::OverLimit || label.finding == LabelFinding::GlutenSource;
    let over = packages
        .iter()
        .filter(|package| package.standing == Standing::Over)
        .count() as u64;
    let (followups, follow_up) = correspondence(number, &product_id, day, notify_maker);
    JudgedProduct {
        cautions: Vec::new(),
        before: Vec::new(),
        earlier: Vec::new(),
        later: Vec::new(),
        next_round: None,
        publication: Publication {
            state: PublicationState::Ready,
            ..Publication::of_nothing()
        },
        publication_said: String::new(),
        exhibits: Vec::new(),
        sheet: None,
        verdict: ProductVerdict {
            product: Product {
                product_id,
                name: FOODS[kind].into(),
                brand: Some(BRANDS[dice.of(8)].into()),
                maker: Some(format!("{} Ltd", BRANDS[dice.of(8)])),
                category: (number % 23 != 7).then(|| CATEGORIES[kind].into()),
                claim: "gluten-free".into(),
                ingredients: Some("Rice flour, yeast extract (contains barley)".into()),
                ..Product::default()
            },
            round: "1".into(),
            packages,
            verdict,
            reasons: match verdict {
                Verdict::NoVerdict => vec![Reason::Missing {
                    package: "QX-937".into(),
                }],
                _ => vec![Reason::AllWithin {
                    packages: 3,
                    guarded: false,
                }],
            },
            claim: Claim::gluten_free(RULE.limit),
            rule: RULE,
            label,
            notify_maker,
            method_unfit: None,
            followups,
            issued: Vec::new(),
        },
        statistics: ProductStatistics {
            over: share(over, size as u64),
            one_sided_upper: Some(0.63),
            ..ProductStatistics::default()
        },
        follow_up,
    }
}

fn package(
    product_id: &str,
    place: usize,
    level: f64,
    day: NaiveDate,
    config: &Config,
    dice: &mut Dice,
) -> PackageResult {
    let spread = |dice: &mut Dice| level * (0.7 + 0.6 * dice.roll());
    let base = spread(dice);
    let code = format!("{product_id}-{}", char::from(b'A' + place as u8));
    let mut readings: Vec<f64> = (0..2)
        .map(|_| (base * (0.92 + 0.16 * dice.roll()) * 10.0).round() / 10.0)
        .collect();
    match dice.of(40) {
        0 => readings[1] = (readings[0] * 2.4 * 10.0).round() / 10.0 + 9.0,
        1 => {
            readings.pop();
        }
        2 => readings.clear(),
        _ => {}
    }
    let q = config.testing.lloq;
    let interval = |x: f64| {
        if x < q.0 {
            Interval::below(q)
        } else {
            Interval::number(Ppm(x))
        }
    };
    let intervals: Vec<Interval> = readings.iter().map(|x| interval(*x)).collect();
    let comparison = compare(&intervals, config);
    let state = match (&comparison, intervals.len()) {
        (Some(comparison), _) if comparison.gap.0 <= comparison.allowed.0 => PairState::Agree,
        (Some(_), _) => PairState::Disagree,
        (None, 0) => PairState::Missing,
        (None, _) => PairState::Incomplete,
    };
    let (result, standing) = standing(&intervals, state, config.rule.limit);
    let extractions = intervals
        .iter()
        .enumerate()
        .map(|(n, interval)| extraction(&code, n as u32, *interval, day, q))
        .collect();
    PackageResult {
        other_series: None,
        pair: Pair {
            first: None,
            assay_kind: AssayKind::Sandwich,
            package: Package {
                package_code: code,
                product_id: product_id.into(),
                round: "1".into(),
                lot: Some(format!("L{:04}", dice.of(9999))),
                bought_on: day.checked_sub_days(Days::new(9)),
                shop: Some("Corner Shop, Little Marrow".into()),
                ..Package::default()
            },
            extractions,
            state,
            comparison,
        },
        result,
        standing,
        straddles_limit: false,
    }
}

fn extraction(
    code: &str,
    number: u32,
    interval: Interval,
    day: NaiveDate,
    lloq: Ppm,
) -> PairedExtraction {
    let reported = interval
        .as_number()
        .map_or("<5".to_owned(), |x| format!("{:.1}", x.0));
    PairedExtraction {
        repeat: None,
        extraction: Extraction {
            package_code: code.into(),
            number: number + 1,
            numbered_by_lab: true,
            outcome: Outcome::Reading(interval),
            reported,
            from_gliadin: false,
            lloq,
            lod: Ppm(3.0),
            assay_kind: AssayKind::Sandwich,
            assay: "sandwich R5 ELISA, cocktail extraction".into(),
            lab: if code.ends_with('C') {
                "Fenwick Hollow Laboratory"
            } else {
                "Harrow & Vane Analytical"
            }
            .into(),
            report: None,
            record: Arc::default(),
            tested_from: None,
            uncertainty: None,
            tested_on: Some(day),
            dilution: None,
            remark: None,
            source: Source {
                file: lab_file(),
                sheet: None,
                row: 7,
                column: 3,
            },
        },
        usage: Usage::Used,
        also_reported: Vec::new(),
    }
}

fn compare(readings: &[Interval], config: &Config) -> Option<Comparison> {
    let [a, b] = readings else { return None };
    let q = config.testing.lloq;
    let upper = |i: &Interval| i.upper.expect("none is above its range").0;
    let gap = (a.lower.0.max(b.lower.0) - upper(a).min(upper(b))).max(0.0);
    let m = if gap > 0.0 {
        (a.lower.0.max(b.lower.0) + upper(a).min(upper(b))) / 2.0
    } else {
        (a.lower.0 + b.lower.0 + upper(a) + upper(b)) / 4.0
    };
    let s = (q.0 / 10.0).hypot(config.testing.relative_repeatability * m);
    Some(Comparison {
        n: 2,
        q,
        gap: Ppm(gap),
        m: Ppm(m),
        s: Ppm(s),
        factor: 2.8,
        allowed: Ppm(2.8 * s),
    })
}

fn standing(readings: &[Interval], state: PairState, limit: Limit) -> (ResultKind, Standing) {
    let [a, b] = readings else {
        return (ResultKind::None, Standing::Unresolved);
    };
    let mean = |x: Ppm, y: Ppm| Ppm((x.0 + y.0) / 2.0);
    let uppers = (a.upper.expect("bounded"), b.upper.expect("bounded"));
    if state == PairState::Disagree {
        let (lower, upper) = (a.lower.min(b.lower), uppers.0.max(uppers.1));
        let standing = if limit.over(lower) {
            Standing::Over
        } else {
            Standing::Unresolved
        };
        return (
            ResultKind::Range(Interval {
                lower,
                upper: Some(upper),
                upper_open: false,
                lower_open: false,
            }),
            standing,
        );
    }
    match (a.as_number(), b.as_number()) {
        (Some(x), Some(y)) => {
            let mean = mean(x, y);
            (
                ResultKind::Value { mean },
                if limit.over(mean) {
                    Standing::Over
                } else {
                    Standing::Within
                },
            )
        }
        (None, None) => {
            let upper = uppers.0.max(uppers.1);
            let small = upper.0 <= limit.ppm.0;
            (
                ResultKind::Below { upper },
                if small {
                    Standing::BelowQuantification
                } else {
                    Standing::Unresolved
                },
            )
        }
        _ => {
            let (lower, upper) = (mean(a.lower, b.lower), mean(uppers.0, uppers.1));
            let standing = match (limit.over(lower), limit.over_open_above(upper)) {
                (true, _) => Standing::Over,
                (false, true) => Standing::Unresolved,
                (false, false) => Standing::Within,
            };
            (
                ResultKind::Range(Interval {
                    lower,
                    upper: Some(upper),
                    upper_open: true,
                    lower_open: false,
                }),
                standing,
            )
        }
    }
}

fn verdict(packages: &[PackageResult]) -> Verdict {
    let any = |standing| packages.iter().any(|package| package.standing == standing);
    if any(Standing::Over) {
        Verdict::OverLimit
    } else if any(Standing::Unresolved) || any(Standing::Inconclusive) {
        Verdict::NoVerdict
    } else if any(Standing::Within) {
        Verdict::WithinLimit(Grade::Quantified)
    } else {
        Verdict::WithinLimit(Grade::BelowQuantification)
    }
}

fn label(number: usize) -> LabelReview {
    let term = |term: &str, printed: &str, grain: &str, class| LabelTerm {
        term: term.into(),
        printed: printed.into(),
        grain: grain.into(),
        class,
        why: format!("{term} comes from {grain}."),
        source: "21 CFR 101.91".into(),
    };
    let (finding, terms) = match number % 13 {
        3 => (
            LabelFinding::GlutenSource,
            vec![term("barley", "barley", "barley", TermClass::Always)],
        ),
        6 => (
            LabelFinding::UnverifiedOats,
            vec![term("oats", "whole grain oats", "oats", TermClass::Depends)],
        ),
        9 => (
            LabelFinding::NeedsReview,
            vec![term(
                "yeast extract",
                "yeast extract",
                "barley",
                TermClass::Depends,
            )],
        ),
        12 => (LabelFinding::NoIngredients, Vec::new()),
        _ => (LabelFinding::None, Vec::new()),
    };
    LabelReview {
        finding,
        terms,
        languages: Vec::new(),
        unread: false,
        statement: vec![StatementPiece {
            text: "Rice flour, salt".into(),
            marked: false,
        }],
        precautionary: if number % 9 == 2 {
            vec!["May contain wheat.".into()]
        } else {
            Vec::new()
        },
    }
}

fn correspondence(
    number: usize,
    product_id: &str,
    day: NaiveDate,
    notify: bool,
) -> (Vec<Followup>, FollowUpState) {
    if !notify {
        return (Vec::new(), FollowUpState::NotNeeded);
    }
    let on = |days| day + Days::new(days);
    let event = |kind, days, note: Option<&str>| Followup {
        product_id: product_id.into(),
        round: Some("1".into()),
        on: on(days),
        kind,
        due_on: (kind == FollowupKind::NoticeSent).then(|| on(days + 15)),
        statement: note.map(str::to_owned),
        note: None,
        place: Default::default(),
    };
    let sent = event(FollowupKind::NoticeSent, 20, None);
    let told = Told {
        on: on(20),
        due_on: on(35),
    };
    match number % 4 {
        0 => (Vec::new(), FollowUpState::ToSend),
        1 => (vec![sent], FollowUpState::Waiting(told)),
        2 => (
            vec![
                sent,
                event(
                    FollowupKind::Reply,
                    30,
                    Some("We stopped the line and withdrew the lot."),
                ),
            ],
            FollowUpState::Replied {
                told: Some(told),
                replied_on: on(30),
                late: false,
            },
        ),
        _ => (
            vec![
                sent,
                event(FollowupKind::Action, 41, Some("Lot withdrawn.")),
                event(FollowupKind::Closed, 60, None),
            ],
            FollowUpState::Closed {
                told: Some(told),
                replied_on: Some(on(41)),
                closed_on: on(60),
            },
        ),
    }
}

fn statistics(products: &[JudgedProduct]) -> ProgrammeStatistics {
    let mut counts = Counts::default();
    let mut quarters: BTreeMap<(i32, u32), QuarterCounts> = BTreeMap::new();
    let mut groups: BTreeMap<String, [u64; 3]> = BTreeMap::new();
    for product in products {
        let day = product.verdict.day().expect("each has a day");
        let key = (day.year(), day.month0() / 3 + 1);
        let quarter = quarters.entry(key).or_insert(QuarterCounts {
            year: key.0,
            quarter: key.1,
            over: 0,
            no_verdict: 0,
            within_quantified: 0,
            within_below: 0,
        });
        let category = product
            .verdict
            .product
            .category
            .clone()
            .unwrap_or("no category".into());
        let group = groups.entry(category).or_default();
        match product.verdict.verdict {
            Verdict::OverLimit => {
                counts.products.over_limit += 1;
                quarter.over += 1;
                group[0] += 1;
            }
            Verdict::NoVerdict => {
                counts.products.no_verdict += 1;
                quarter.no_verdict += 1;
                group[2] += 1;
            }
            Verdict::WithinLimit(grade) => {
                counts.products.within_limit += 1;
                group[1] += 1;
                if grade == Grade::Quantified {
                    quarter.within_quantified += 1
                } else {
                    quarter.within_below += 1
                }
            }
        }
        for package in &product.verdict.packages {
            match package.standing {
                Standing::BelowQuantification => counts.packages.below_quantification += 1,
                Standing::Within => counts.packages.within += 1,
                Standing::Over => counts.packages.over += 1,
                Standing::Unresolved => counts.packages.unresolved += 1,
                Standing::Inconclusive => counts.packages.inconclusive += 1,
            }
            for one in package.pair.usable() {
                match one.outcome.reading().expect("a reading").as_number() {
                    None => counts.extractions.below_quantification += 1,
                    Some(x) if x.0 >= 20.0 => counts.extractions.over += 1,
                    Some(_) => counts.extractions.within += 1,
                }
            }
        }
    }
    let groups = groups
        .into_iter()
        .map(|(name, [over, within, none])| Group {
            name,
            share: share(over, over + within),
            without_verdict: none,
        })
        .collect();
    let days = products
        .iter()
        .filter_map(|product| product.verdict.tested_on());
    let chart = range_chart(products);
    ProgrammeStatistics {
        counts,
        days: days.clone().min().zip(days.max()),
        over_limit: share(
            counts.products.over_limit,
            counts.products.over_limit + counts.products.within_limit,
        ),
        groups: vec![
            Grouping {
                by: GroupedBy::Category,
                groups,
            },
            split(
                products,
                GroupedBy::Certification,
                ["certified", "not certified"],
            ),
            split(products, GroupedBy::Oats, ["no oats", "certified oats"]),
        ],
        trend: (products.len() > 20).then_some(Trend {
            z: -0.9,
            p: 0.37,
            quarters: 8,
        }),
        packages_needed: vec![
            PackagesNeeded {
                share: 0.05,
                packages: 59,
            },
            PackagesNeeded {
                share: 0.01,
                packages: 299,
            },
        ],
        quarters: quarters.into_values().collect(),
        repeatability: chart
            .iter()
            .map(|chart| Repeatability {
                of: PairsOf::All,
                pairs: chart.points.iter().filter(|point| point.agrees).count(),
                flagged: chart.points.iter().filter(|point| !point.agrees).count(),
                resistant_s: 0.063,
                relative_s: 0.061,
                interval: Bounds {
                    lower: 0.052,
                    upper: 0.074,
                },
            })
            .collect(),
        drift: chart
            .iter()
            .filter(|chart| chart.points.len() > 10)
            .map(|chart| Drift {
                lab: "Harrow & Vane Analytical".into(),
                early: chart.points.len() / 2,
                late: chart.points.len() / 2,
                early_s: 0.06,
                late_s: 0.062,
                f_test: FTest {
                    f: 1.07,
                    df1: 10.0,
                    df2: 10.0,
                    p: 0.92,
                },
            })
            .collect(),
        range_chart: chart,
        false_alarm: 0.142625,
        assumption: Some(Assumption {
            assumed: 0.15,
            finding: AssumptionFinding::Smaller { proposal: 0.06 },
        }),
        horwitz: Some(Horwitz {
            level: Ppm(20.0),
            between_labs: 0.1019,
            horrat_r: 0.6,
        }),
        censored: censored(products),
        ..ProgrammeStatistics::default()
    }
}

/// A row a food group, as long as there are groups.
fn censored(products: &[JudgedProduct]) -> Vec<CensoredSummary> {
    let row = |of: &str, n: usize| CensoredSummary {
        of: of.into(),
        n,
        censored: n / 2,
        lower_bound: Ppm(5.633),
        middle_bound: Ppm(6.467),
        upper_bound: Ppm(7.3),
        ros_mean: (n > 40).then_some(Ppm(6.816)),
        mle: None,
    };
    let n = 3 * products.len();
    match n {
        0 => Vec::new(),
        n => std::iter::once(row("all", n))
            .chain(CATEGORIES.iter().map(|name| row(name, n / 4)))
            .collect(),
    }
}

/// Two groups: one product in three, and the others.
fn split(products: &[JudgedProduct], by: GroupedBy, names: [&str; 2]) -> Grouping {
    let group = |name: &str, wanted: fn(usize) -> bool| {
        let members = || {
            products
                .iter()
                .enumerate()
                .filter(|(number, _)| wanted(*number))
                .map(|(_, product)| product)
        };
        let with = |verdict: fn(Verdict) -> bool| {
            members()
                .filter(|product| verdict(product.verdict.verdict))
                .count() as u64
        };
        let over = with(|verdict| verdict == Verdict::OverLimit);
        let without = with(|verdict| verdict == Verdict::NoVerdict);
        Group {
            name: name.into(),
            share: share(over, members().count() as u64 - without),
            without_verdict: without,
        }
    };
    Grouping {
        by,
        groups: vec![
            group(names[0], |number| number % 3 == 0),
            group(names[1], |number| number % 3 != 0),
        ],
    }
}

fn range_chart(products: &[JudgedProduct]) -> Option<RangeChart> {
    let mut points = Vec::new();
    for package in products
        .iter()
        .flat_map(|product| &product.verdict.packages)
    {
        let numbers: Vec<f64> = package
            .pair
            .usable()
            .filter_map(|one| one.outcome.reading()?.as_number().map(|x| x.0))
            .collect();
        if let ([a, b], Some(comparison)) = (&numbers[..], package.pair.comparison) {
            let mean = (a + b) / 2.0;
            points.push(RangePoint {
                package_code: package.pair.package.package_code.clone(),
                lab: "Harrow & Vane Analytical".into(),
                mean: Ppm(mean),
                signed_percent: (a - b) / mean * 100.0,
                allowed_percent: comparison.allowed.0 / mean * 100.0,
                agrees: package.pair.state == PairState::Agree,
                decided_on: None,
                beyond: false,
            });
        }
    }
    let agreeing: Vec<f64> = points
        .iter()
        .filter(|p| p.agrees)
        .map(|p| p.signed_percent.abs())
        .collect();
    let centre = agreeing.iter().sum::<f64>() / agreeing.len().max(1) as f64;
    let upper = 3.267 * centre;
    points
        .iter_mut()
        .for_each(|point| point.beyond = point.signed_percent.abs() > upper);
    (!points.is_empty()).then_some(RangeChart {
        points,
        lines: Some(RangeLines { centre, upper }),
    })
}

/// `k` of `n` with its Clopper-Pearson interval.
fn share(k: u64, n: u64) -> Option<Share> {
    if n == 0 {
        return None;
    }
    let quantile = |a: u64, b: u64, p| {
        Beta::new(a as f64, b as f64)
            .expect("both are above 0")
            .inverse_cdf(p)
    };
    let exact = Bounds {
        lower: if k == 0 {
            0.0
        } else {
            quantile(k, n - k + 1, 0.025)
        },
        upper: if k == n {
            1.0
        } else {
            quantile(k + 1, n - k, 0.975)
        },
    };
    Some(Share {
        k,
        n,
        exact,
        wilson: exact,
    })
}
