//! Judged products made by hand, so that documents can be tested without reading or deciding anything.
//!
//! Verdicts, shares and allowed differences are set to what the rules give for the readings; nothing is computed here that
//! the program computes, apart from the characteristic function, which the ruler and the table print.

use chrono::NaiveDate;
use galleyproof::config::Config;
use galleyproof::model::claim::Claim;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::model::extraction::{AssayKind, Extraction, Interval, Outcome};
use galleyproof::model::followup::FollowUpState;
use galleyproof::model::label::{LabelFinding, LabelReview, LabelTerm, StatementPiece, TermClass};
use galleyproof::model::package::{PackageResult, ResultKind, Standing};
use galleyproof::model::pair::{Comparison, Pair, PairState, PairedExtraction, Usage};
use galleyproof::model::place::{LabFile, Source};
use galleyproof::model::ppm::Ppm;
use galleyproof::model::publication::{Publication, PublicationState};
use galleyproof::model::registers::{Package, Product};
use galleyproof::model::rule::Rule;
use galleyproof::model::statistics::{Bounds, NoneOver, ProductStatistics, Share};
use galleyproof::model::verdict::{Grade, ProductVerdict, Verdict};
use galleyproof::render::facts::sheet;
use std::path::Path;
use std::sync::Arc;

/// A programme's settings, with further lines for the sections after [programme].
pub fn config(root: &Path, paper: &str, rest: &str) -> Config {
    let text = format!(
        "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\npaper = \"{paper}\"\n\
         email = \"notices@tidewater.example\"\naddress = \"The Old Net Loft, 3 Quay Steps, Lower Saltmere\"\n\
         director = \"Odile Fennimore\"\ncorrections = \"corrections@tidewater.example\"\n\
         regulator = \"Saltmere Food Office\"\nretained = \"the other half of each package, sealed and frozen, for 90 days\"\n\
         statement = \"Tidewater Kitchen Works buys every package in shops at its own cost. No maker pays for a test or a sheet.\"\n{rest}"
    );
    Config::parse(&text, root).expect("the sample's settings are right")
}

/// A day of 2031.
pub fn day(month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(2031, month, day).expect("a date")
}

/// A reading as a lab writes it: `12.4`, `<5`, `>80`; anything else is no result.
fn outcome(reported: &str) -> Outcome {
    let number = |text: &str| text.trim().parse().ok().map(Ppm);
    let interval = match reported.as_bytes().first() {
        Some(b'<') => number(&reported[1..]).map(Interval::below),
        Some(b'>') => number(&reported[1..]).map(Interval::above),
        _ => number(reported).map(Interval::number),
    };
    interval.map_or(Outcome::NotReported, Outcome::Reading)
}

/// A package with its readings, judged under a rule.
pub struct Sample {
    rule: Rule,
    file: Arc<LabFile>,
    next_row: u32,
    asked_for: usize,
    product: Product,
    packages: Vec<PackageResult>,
}

impl Sample {
    /// A product without packages yet.
    pub fn new(config: &Config, product_id: &str, name: &str) -> Sample {
        Sample {
            rule: config.rule,
            file: Arc::new(LabFile {
                path: "inbox/HV-31-00418.csv".to_owned(),
                sha256: "9f2c41d0".repeat(8),
                ..LabFile::default()
            }),
            next_row: 14,
            asked_for: config.testing.packages_per_product,
            product: Product {
                product_id: product_id.to_owned(),
                name: name.to_owned(),
                claim: "gluten-free".to_owned(),
                brand: Some("Åsvindel Kværn".to_owned()),
                maker: Some("Åsvindel Kværn Bageri".to_owned()),
                maker_email: Some("quality@asvindel.example".to_owned()),
                maker_address: Some("4 Lysmose Quay, Lysmose".to_owned()),
                net_content: Some("450 g".to_owned()),
                barcode: Some("0000 0712 0612 6".to_owned()),
                matrix: Some("bread, baked".to_owned()),
                ingredients: Some("Rice flour, water, salt.".to_owned()),
                ..Product::default()
            },
            packages: Vec::new(),
        }
    }

    /// Changes what was bought.
    pub fn product(mut self, change: impl FnOnce(&mut Product)) -> Sample {
        change(&mut self.product);
        self
    }

    /// The lab file that the next packages' readings come from.
    pub fn file(mut self, path: &str, sha256: &str) -> Sample {
        self.file = Arc::new(LabFile {
            path: path.to_owned(),
            sha256: sha256.to_owned(),
            ..LabFile::default()
        });
        self
    }

    /// A package with its readings as the lab writes them.
    pub fn package(self, letter: &str, readings: &[&str]) -> Sample {
        let package = Package {
            package_code: format!("{}-{letter}", self.product.product_id),
            product_id: self.product.product_id.clone(),
            round: "1".to_owned(),
            lot: Some("L31-0771".to_owned()),
            best_by: Some("2031-04-18".to_owned()),
            bought_on: Some(day(3, 4 + 7 * (self.packages.len() as u32 % 3))),
            shop: Some("Pennywhistle Stores, Lower Fen".to_owned()),
            sent_on: Some(day(3, 20)),
            sent_on_unreadable: false,
            ..Package::default()
        };
        self.bought(package, readings)
    }

    /// A package bought as given, with its readings.
    pub fn bought(mut self, package: Package, readings: &[&str]) -> Sample {
        let mut extractions = Vec::new();
        for (index, reported) in readings.iter().enumerate() {
            let outcome = outcome(reported);
            let extraction =
                self.extraction(&package.package_code, index as u32 + 1, reported, outcome);
            extractions.push(PairedExtraction {
                repeat: None,
                usage: if outcome.reading().is_some() {
                    Usage::Used
                } else {
                    Usage::NoReading
                },
                also_reported: Vec::new(),
                extraction,
            });
        }
        self.packages.push(judge(package, extractions, self.rule));
        self
    }

    /// Changes the last package.
    pub fn last(mut self, change: impl FnOnce(&mut PackageResult)) -> Sample {
        change(
            self.packages
                .last_mut()
                .expect("a package was added before"),
        );
        self
    }

    fn extraction(
        &mut self,
        code: &str,
        number: u32,
        reported: &str,
        outcome: Outcome,
    ) -> Extraction {
        let row = self.next_row;
        self.next_row += 1;
        Extraction {
            package_code: code.to_owned(),
            number,
            numbered_by_lab: true,
            outcome,
            reported: reported.to_owned(),
            from_gliadin: false,
            lloq: Ppm(5.0),
            lod: Ppm(3.0),
            assay_kind: AssayKind::Sandwich,
            assay: "Sandwich R5 ELISA, cocktail extraction".into(),
            lab: "Harrow & Vane Analytical".into(),
            report: Some("HV-31-00418".into()),
            record: Arc::default(),
            tested_from: None,
            uncertainty: None,
            tested_on: Some(day(3, 24)),
            dilution: None,
            remark: None,
            source: Source {
                file: Arc::clone(&self.file),
                sheet: None,
                row,
                column: 3,
            },
        }
    }

    /// The product with its verdict, what so few packages can say, and a label review.
    pub fn done(self) -> JudgedProduct {
        let standing = |wanted| {
            self.packages
                .iter()
                .filter(|package| package.standing == wanted)
                .count() as u64
        };
        let over = standing(Standing::Over);
        let within = standing(Standing::Within) + standing(Standing::BelowQuantification);
        let n = self.packages.len() as u64;
        let verdict = if over > 0 {
            Verdict::OverLimit
        } else if within < n || (n as usize) < self.asked_for {
            Verdict::NoVerdict
        } else if standing(Standing::BelowQuantification) == n {
            Verdict::WithinLimit(Grade::BelowQuantification)
        } else {
            Verdict::WithinLimit(Grade::Quantified)
        };
        let label = no_finding(self.product.ingredients.as_deref());
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
                notify_maker: verdict == Verdict::OverLimit,
                product: self.product,
                round: "1".to_owned(),
                packages: self.packages,
                verdict,
                reasons: Vec::new(),
                claim: Claim::gluten_free(self.rule.limit),
                rule: self.rule,
                label,
                method_unfit: None,
                followups: Vec::new(),
                issued: Vec::new(),
            },
            statistics: ProductStatistics {
                over: (n > 0).then(|| share(over, n)),
                // Exact: 0 of n, one-sided 95 %.
                one_sided_upper: (over == 0 && n > 0).then(|| 1.0 - 0.05_f64.powf(1.0 / n as f64)),
                if_none_of_more: [6, 14, 59]
                    .map(|packages| NoneOver {
                        packages,
                        upper: 1.0 - 0.05_f64.powf(1.0 / packages as f64),
                    })
                    .to_vec(),
                ..ProductStatistics::default()
            },
            follow_up: FollowUpState::NotNeeded,
        }
    }
}

/// Clopper-Pearson for the shares that the samples have; wide open for others.
fn share(k: u64, n: u64) -> Share {
    let (lower, upper) = match (k, n) {
        (0, n) => (0.0, 1.0 - 0.025_f64.powf(1.0 / n as f64)),
        (1, 3) => (0.0084, 0.9057),
        (2, 3) => (0.0943, 0.9916),
        (3, 3) => (0.2924, 1.0),
        _ => (0.0, 1.0),
    };
    let exact = Bounds { lower, upper };
    Share {
        k,
        n,
        exact,
        wilson: exact,
    }
}

fn judge(package: Package, extractions: Vec<PairedExtraction>, rule: Rule) -> PackageResult {
    let readings: Vec<Interval> = extractions
        .iter()
        .filter_map(|paired| paired.extraction.outcome.reading())
        .collect();
    let n = readings.len();
    let lower: Vec<f64> = readings.iter().map(|reading| reading.lower.0).collect();
    let upper: Vec<f64> = readings
        .iter()
        .map(|reading| reading.upper.map_or(f64::INFINITY, |upper| upper.0))
        .collect();
    let largest = |values: &[f64]| values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let smallest = |values: &[f64]| values.iter().copied().fold(f64::INFINITY, f64::min);
    let comparison = (n >= 2).then(|| compare(&lower, &upper));
    let state = match &comparison {
        Some(comparison) if comparison.gap.0 <= comparison.allowed.0 => PairState::Agree,
        Some(_) => PairState::Disagree,
        None if n == 1 => PairState::Incomplete,
        None => PairState::Missing,
    };
    let mean = |values: &[f64]| values.iter().sum::<f64>() / n as f64;
    let finite = |value: f64| value.is_finite().then_some(Ppm(value));
    let result = match state {
        PairState::Incomplete | PairState::Missing => ResultKind::None,
        PairState::Disagree => ResultKind::Range(Interval {
            lower: Ppm(smallest(&lower)),
            upper: finite(largest(&upper)),
            upper_open: false,
            lower_open: false,
        }),
        PairState::Agree if readings.iter().all(|reading| reading.as_below().is_some()) => {
            ResultKind::Below {
                upper: Ppm(largest(&upper)),
            }
        }
        PairState::Agree if readings.iter().all(|reading| reading.as_number().is_some()) => {
            ResultKind::Value {
                mean: Ppm(mean(&lower)),
            }
        }
        PairState::Agree => ResultKind::Range(Interval {
            lower: Ppm(mean(&lower)),
            upper: finite(mean(&upper)),
            upper_open: true,
            lower_open: false,
        }),
    };
    let standing = standing(&result, state, &readings, rule);
    let over = readings
        .iter()
        .filter(|reading| rule.limit.over(reading.lower))
        .count();
    PackageResult {
        straddles_limit: state == PairState::Agree
            && over > 0
            && over < n
            && matches!(result, ResultKind::Value { .. }),
        other_series: None,
        pair: Pair {
            first: None,
            assay_kind: AssayKind::Sandwich,
            package,
            extractions,
            state,
            comparison,
        },
        result,
        standing,
    }
}

fn compare(lower: &[f64], upper: &[f64]) -> Comparison {
    let n = lower.len();
    let top = lower.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let bottom = upper.iter().copied().fold(f64::INFINITY, f64::min);
    let bounds: Vec<f64> = lower
        .iter()
        .chain(upper)
        .copied()
        .filter(|bound| bound.is_finite())
        .collect();
    let m = if top > bottom {
        (top + bottom) / 2.0
    } else {
        bounds.iter().sum::<f64>() / bounds.len() as f64
    };
    let s = (0.25 + (0.15 * m).powi(2)).sqrt();
    let factor = [2.8, 3.3, 3.6, 3.9, 4.0, 4.2, 4.3, 4.4, 4.5][(n - 2).min(8)];
    Comparison {
        n,
        q: Ppm(5.0),
        gap: Ppm((top - bottom).max(0.0)),
        m: Ppm(m),
        s: Ppm(s),
        factor,
        allowed: Ppm(factor * s),
    }
}

fn standing(result: &ResultKind, state: PairState, readings: &[Interval], rule: Rule) -> Standing {
    let limit = rule.limit;
    match *result {
        _ if state == PairState::Disagree => {
            let all_over = readings.iter().all(|reading| limit.over(reading.lower));
            if all_over {
                Standing::Over
            } else {
                Standing::Unresolved
            }
        }
        ResultKind::None => Standing::Unresolved,
        ResultKind::Below { upper } if limit.over_open_above(upper) => Standing::Unresolved,
        ResultKind::Below { .. } => Standing::BelowQuantification,
        ResultKind::Value { mean } if limit.over(mean) => Standing::Over,
        ResultKind::Value { .. } => Standing::Within,
        ResultKind::Range(range) if limit.over(range.lower) => Standing::Over,
        ResultKind::Range(range)
            if range
                .upper
                .is_some_and(|upper| !limit.over_open_above(upper)) =>
        {
            Standing::Within
        }
        ResultKind::Range(_) => Standing::Unresolved,
    }
}

/// A label on which nothing was found.
pub fn no_finding(statement: Option<&str>) -> LabelReview {
    LabelReview {
        finding: if statement.is_some() {
            LabelFinding::None
        } else {
            LabelFinding::NoIngredients
        },
        terms: Vec::new(),
        statement: statement
            .map(|text| StatementPiece {
                text: text.to_owned(),
                marked: false,
            })
            .into_iter()
            .collect(),
        precautionary: Vec::new(),
        languages: Vec::new(),
        unread: false,
    }
}

/// A label with barley malt extract in it.
pub fn malt_finding(before: &str, after: &str) -> LabelReview {
    let piece = |text: &str, marked| StatementPiece {
        text: text.to_owned(),
        marked,
    };
    LabelReview {
        finding: LabelFinding::GlutenSource,
        terms: vec![LabelTerm {
            term: "malt extract".to_owned(),
            printed: "barley malt extract".to_owned(),
            grain: "barley".to_owned(),
            class: TermClass::Always,
            why: "Malt extract is made from sprouted barley and keeps some of its protein"
                .to_owned(),
            source: "21 CFR 101.91".to_owned(),
        }],
        statement: vec![
            piece(before, false),
            piece("barley malt extract", true),
            piece(after, false),
        ],
        precautionary: vec!["May contain traces of soya, milk and tree nuts.".to_owned()],
        languages: Vec::new(),
        unread: false,
    }
}

/// The product with what its sheet says, as it is once the states of publication are noted.
pub fn with_sheet(product: &JudgedProduct, config: &Config) -> JudgedProduct {
    JudgedProduct {
        sheet: Some(Arc::new(sheet::sheet(product, config))),
        ..product.clone()
    }
}
