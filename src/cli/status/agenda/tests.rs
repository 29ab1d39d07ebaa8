//! What the agenda lists, and in which order.

use super::*;
use crate::model::claim::Claim;
use crate::model::extraction::AssayKind;
use crate::model::label::{LabelFinding, LabelReview};
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::Pair;
use crate::model::ppm::Ppm;
use crate::model::problem::Problems;
use crate::model::publication::{Publication, PublicationState};
use crate::model::registers::{Package, Product, Registers};
use crate::model::rule::{Decision, Limit, Regime, Rule};
use crate::model::statistics::{ProductStatistics, ProgrammeStatistics};
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::words::say;

const PATIENCE: Patience = Patience {
    report_days: 21,
    retest_days: 365,
};

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

const LIMIT: Limit = Limit::amount(Ppm(20.0), false);

const RULE: Rule = Rule {
    regime: Regime::Us,
    limit: LIMIT,
    decision: Decision::Simple,
};

fn package(code: &str, state: PairState) -> PackageResult {
    PackageResult {
        pair: Pair {
            first: None,
            package: Package {
                package_code: code.to_owned(),
                sent_on: Some(day("2031-03-01")),
                ..Package::default()
            },
            assay_kind: AssayKind::Sandwich,
            extractions: Vec::new(),
            state,
            comparison: None,
        },
        result: ResultKind::None,
        standing: Standing::Unresolved,
        straddles_limit: false,
        other_series: None,
    }
}

fn product(id: &str, packages: Vec<PackageResult>, follow_up: FollowUpState) -> JudgedProduct {
    JudgedProduct {
        cautions: Vec::new(),
        before: Vec::new(),
        earlier: Vec::new(),
        later: Vec::new(),
        next_round: None,
        publication: Publication {
            state: PublicationState::Published,
            ..Publication::of_nothing()
        },
        publication_said: String::new(),
        exhibits: Vec::new(),
        sheet: None,
        verdict: ProductVerdict {
            product: Product {
                product_id: id.to_owned(),
                name: format!("Product {id}"),
                ..Product::default()
            },
            round: "1".to_owned(),
            packages,
            verdict: Verdict::NoVerdict,
            reasons: Vec::new(),
            claim: Claim::gluten_free(LIMIT),
            rule: RULE,
            label: LabelReview {
                finding: LabelFinding::None,
                terms: Vec::new(),
                statement: Vec::new(),
                precautionary: Vec::new(),
                languages: Vec::new(),
                unread: false,
            },
            notify_maker: false,
            method_unfit: None,
            followups: Vec::new(),
            issued: Vec::new(),
        },
        statistics: ProductStatistics::default(),
        follow_up,
    }
}

fn decided(products: Vec<JudgedProduct>) -> Decided {
    Decided {
        products,
        statistics: ProgrammeStatistics::default(),
        registers: Registers::default(),
        lab_files: Vec::new(),
        understandings: Vec::new(),
        plates: Vec::new(),
        problems: Problems::default(),
        audience: Default::default(),
        under_revision: Vec::new(),
        with_lab: 0,
    }
}

fn kinds(tasks: &[Task]) -> Vec<Kind> {
    tasks.iter().map(|task| task.kind).collect()
}

#[test]
fn everything_comes_in_the_order_in_which_it_is_to_be_done() {
    let overdue = FollowUpState::Overdue(Told {
        on: day("2031-03-01"),
        due_on: day("2031-03-20"),
    });
    let mut decided = decided(vec![
        product("A", vec![package("A1", PairState::Missing)], overdue),
        product(
            "B",
            vec![
                package("B1", PairState::Disagree),
                package("B2", PairState::Incomplete),
            ],
            FollowUpState::ToSend,
        ),
        product(
            "C",
            vec![package("C1", PairState::Agree)],
            FollowUpState::NotNeeded,
        ),
    ]);
    decided.problems.add(
        Code::BadValue,
        Place::file("inbox/a.csv"),
        say::found_bad_value("no_result", "12,,4"),
        say::do_bad_value("no_result"),
    );
    decided.problems.add(
        Code::Conflict,
        Place::file("inbox/b.csv"),
        say::found_counted_once("1", "A1", Place::default()),
        None,
    );
    decided.problems.add(
        Code::Hidden,
        Place::file("inbox/b.csv"),
        say::found_hidden("row"),
        None,
    );
    for file in ["inbox/b.csv", "registers/products.csv"] {
        decided.problems.add(
            Code::Suspicious,
            Place::file(file),
            say::found_formula("=1"),
            say::do_mend_formula(),
        );
    }
    decided.products[2].publication.state = PublicationState::Ready;
    let tasks = agenda(&decided, day("2031-04-01"), PATIENCE);
    assert_eq!(
        kinds(&tasks),
        [
            Kind::IssueSheet,
            Kind::Conflict,
            Kind::Error,
            Kind::Question,
            Kind::RepeatPair,
            Kind::RepeatPair,
            Kind::SendNotice,
            Kind::ReplyOverdue,
            Kind::NotReported,
        ]
    );
    assert!(
        tasks[6].what.contains("drafts/B--1.eml") && tasks[6].what.contains("no address"),
        "{:?}",
        tasks[6]
    );
    assert_eq!(
        tasks[8].what,
        "sent on 2031-03-01, 31 days ago; ask the lab"
    );
}

#[test]
fn a_report_is_missed_only_after_its_days() {
    let decided = decided(vec![product(
        "A",
        vec![package("A1", PairState::Missing)],
        FollowUpState::NotNeeded,
    )]);
    assert!(
        agenda(&decided, day("2031-03-21"), PATIENCE).is_empty(),
        "20 days"
    );
    assert_eq!(
        kinds(&agenda(&decided, day("2031-03-22"), PATIENCE)),
        [Kind::NotReported]
    );
}

#[test]
fn a_calm_day_has_nothing_to_do() {
    let decided = decided(vec![product(
        "A",
        vec![package("A1", PairState::Agree)],
        FollowUpState::NotNeeded,
    )]);
    assert_eq!(agenda(&decided, day("2031-04-01"), PATIENCE), []);
}
