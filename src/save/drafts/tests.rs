//! Who gets which words, and what is enclosed.

use super::*;
use crate::model::claim::Claim;
use crate::model::extraction::{AssayKind, Extraction, Interval, Outcome};
use crate::model::followup::FollowUpState;
use crate::model::label::{LabelFinding, LabelReview, LabelTerm, TermClass};
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::{Pair, PairState, PairedExtraction, Usage};
use crate::model::place::{LabFile, Place, Source};
use crate::model::ppm::Ppm;
use crate::model::publication::Publication;
use crate::model::registers::{Followup, FollowupKind, Package, Product};
use crate::model::rule::{Decision, Limit, Regime, Rule};
use crate::model::statistics::ProductStatistics;
use crate::model::verdict::{Grade, ProductVerdict, Verdict};
use std::path::Path;
use std::sync::Arc;

const SETTINGS: &str = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n\
    email = \"results@tidewater.example\"\ndirector = \"Ines Quay\"\n[rule]\nregime = \"us\"\n";

fn config(folder: &Path) -> Config {
    Config::parse(SETTINGS, folder).expect("the settings are sound")
}

const LIMIT: Limit = Limit::amount(Ppm(20.0), false);

const RULE: Rule = Rule {
    regime: Regime::Us,
    limit: LIMIT,
    decision: Decision::Simple,
};

fn extraction() -> PairedExtraction {
    PairedExtraction {
        extraction: Extraction {
            package_code: "B7".to_owned(),
            number: 1,
            numbered_by_lab: true,
            outcome: Outcome::Reading(Interval::number(Ppm(31.0))),
            reported: "31.0".to_owned(),
            from_gliadin: false,
            lloq: Ppm(5.0),
            lod: Ppm(3.0),
            assay_kind: AssayKind::Sandwich,
            assay: "sandwich".into(),
            lab: "Harrow & Vane Analytical".into(),
            report: None,
            record: Arc::default(),
            tested_on: None,
            tested_from: None,
            uncertainty: None,
            dilution: None,
            remark: None,
            source: Source {
                file: Arc::new(LabFile {
                    path: "inbox/a.csv".to_owned(),
                    ..LabFile::default()
                }),
                sheet: None,
                row: 2,
                column: 3,
            },
        },
        usage: Usage::Used,
        repeat: None,
        also_reported: Vec::new(),
    }
}

fn package(standing: Standing) -> PackageResult {
    PackageResult {
        pair: Pair {
            first: None,
            package: Package::default(),
            assay_kind: AssayKind::Sandwich,
            extractions: vec![extraction()],
            state: PairState::Agree,
            comparison: None,
        },
        result: ResultKind::Value { mean: Ppm(31.0) },
        standing,
        straddles_limit: false,
        other_series: None,
    }
}

fn product(over: usize, label: LabelFinding) -> JudgedProduct {
    let term = |printed: &str, class| LabelTerm {
        term: printed.to_owned(),
        printed: printed.to_owned(),
        grain: "barley".to_owned(),
        class,
        why: String::new(),
        source: String::new(),
    };
    let mut packages = vec![package(Standing::Over); over];
    packages.resize(3, package(Standing::Within));
    JudgedProduct {
        cautions: Vec::new(),
        before: Vec::new(),
        earlier: Vec::new(),
        later: Vec::new(),
        next_round: None,
        publication: Publication::of_nothing(),
        publication_said: String::new(),
        exhibits: Vec::new(),
        sheet: None,
        verdict: ProductVerdict {
            product: Product {
                product_id: "FH-01".to_owned(),
                name: "Oat <b>Biscuits</b>".to_owned(),
                brand: Some("Fernlight".to_owned()),
                maker: Some("Fernlight Bakery".to_owned()),
                maker_email: Some("quality@fernlight.example".to_owned()),
                claim: "gluten-free".to_owned(),
                ..Product::default()
            },
            round: "1".to_owned(),
            packages,
            verdict: match over {
                0 => Verdict::WithinLimit(Grade::Quantified),
                _ => Verdict::OverLimit,
            },
            reasons: Vec::new(),
            claim: Claim::gluten_free(LIMIT),
            rule: RULE,
            label: LabelReview {
                finding: label,
                terms: vec![
                    term("barley malt", TermClass::Always),
                    term("natural flavour", TermClass::Depends),
                ],
                statement: Vec::new(),
                precautionary: Vec::new(),
                languages: Vec::new(),
                unread: false,
            },
            notify_maker: true,
            method_unfit: None,
            followups: Vec::new(),
            issued: Vec::new(),
        },
        statistics: ProductStatistics::default(),
        follow_up: FollowUpState::ToSend,
    }
}

/// The draft as text, its quoted-printable lines joined.
fn drafted(judged: &JudgedProduct, made_on: Option<&str>) -> String {
    let folder = tempfile::tempdir().expect("a folder");
    let config = config(folder.path());
    let wording = Wording::read(&config).expect("our own words are well formed");
    let made_on = made_on.map(|day| day.parse().expect("a date"));
    let enclosed = vec![Enclosed {
        name: "FH-01--1.pdf".to_owned(),
        bytes: b"%PDF",
    }];
    let over = ["Package B7, lot L4: 31.0 ppm".to_owned()];
    let document = to_maker(judged, &config, made_on, &over, &wording, enclosed).expect("drafts");
    assert_eq!(document.path, "drafts/FH-01--1.eml");
    let text = String::from_utf8(document.bytes).expect("ASCII");
    text.replace("=\r\n", "")
        .replace("=E2=80=9C", "“")
        .replace("=E2=80=9D", "”")
}

#[test]
fn a_result_over_the_limit_asks_for_an_answer_by_a_day() {
    let text = drafted(&product(1, LabelFinding::None), Some("2031-04-07"));
    assert!(
        text.contains("To: \"Fernlight Bakery\" <quality@fernlight.example>"),
        "{text}"
    );
    assert!(
        text.contains("One of three packages tested at or above the limit of 20 ppm.\r\nPackage B7, lot L4: 31.0 ppm"),
        "{text}"
    );
    assert!(text.contains("Please reply by 22 April 2031."), "{text}");
    assert!(
        text.contains("We plan to publish on 29 April 2031."),
        "{text}"
    );
    assert!(
        !text.contains("barley"),
        "the label is not at issue: {text}"
    );
    assert!(text.contains("filename=\"FH-01--1.pdf\""), "{text}");
}

#[test]
fn a_label_finding_names_its_terms_and_no_test_result() {
    let text = drafted(&product(0, LabelFinding::GlutenSource), Some("2031-04-07"));
    assert!(
        text.contains("The list of ingredients names “barley malt” (barley)"),
        "{text}"
    );
    assert!(
        !text.contains("natural flavour"),
        "that term only may be one: {text}"
    );
    assert!(!text.contains("at or above"), "{text}");
    assert!(text.contains("The_label_of_Oat"), "{text}");
}

#[test]
fn both_findings_stand_in_one_mail() {
    let text = drafted(&product(2, LabelFinding::GlutenSource), Some("2031-04-07"));
    assert!(
        text.contains("Two of three packages tested at or above the limit of 20 ppm."),
        "{text}"
    );
    assert!(
        text.contains("The list of ingredients also names “barley malt”"),
        "{text}"
    );
}

#[test]
fn without_a_day_the_answer_is_asked_for_within_days() {
    let text = drafted(&product(1, LabelFinding::None), None);
    assert!(
        text.contains("Please reply within 15 days of this message."),
        "{text}"
    );
    assert!(!text.contains("We plan to publish"), "{text}");
}

#[test]
fn a_notice_on_record_fixes_the_days() {
    let mut judged = product(1, LabelFinding::None);
    judged.verdict.followups = vec![Followup {
        product_id: "FH-01".to_owned(),
        round: None,
        on: "2031-03-01".parse().expect("a date"),
        kind: FollowupKind::NoticeSent,
        due_on: Some("2031-03-20".parse().expect("a date")),
        statement: None,
        note: None,
        place: Place::default(),
    }];
    let text = drafted(&judged, Some("2031-04-07"));
    assert!(text.contains("Please reply by 20 March 2031."), "{text}");
    assert!(
        text.contains("We plan to publish on 23 March 2031."),
        "{text}"
    );
}

#[test]
fn a_maker_without_an_address_leaves_a_clear_gap() {
    for cell in [
        None,
        Some("see website".to_owned()),
        Some("a@b.example\r\nBcc: c@d.example".to_owned()),
    ] {
        let mut judged = product(1, LabelFinding::None);
        judged.verdict.product.maker_email = cell;
        let text = drafted(&judged, Some("2031-04-07"));
        let to = text
            .lines()
            .find(|line| line.starts_with("To:"))
            .expect("has a To");
        assert!(to.contains("Address of the maker goes here"), "{to}");
        assert!(!text.contains("Bcc"), "{text}");
    }
}

#[test]
fn names_are_text_in_the_page_too() {
    let text = drafted(&product(1, LabelFinding::None), Some("2031-04-07"));
    let page = text.split("text/html").nth(1).expect("has a page");
    assert!(
        page.contains("Oat &lt;b&gt;Biscuits&lt;&#x2f;b&gt;"),
        "{page}"
    );
}

#[test]
fn the_lab_is_asked_about_each_package() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = config(folder.path());
    let wording = Wording::read(&config).expect("well formed");
    let questions = ["B7", "B9"].map(|package| Question {
        package: package.to_owned(),
        asked: "the two extractions differ by more than they should. Please repeat both."
            .to_owned(),
        reported: true,
    });
    let lab = "Harrow & Vane Analytical";
    let query = Query {
        stem: "lab-query",
        number: "TKW-Q-3F9A61",
        lab,
        email: None,
        questions: &questions,
    };
    let draft = to_lab(&query, &config, None, &wording, Vec::new());
    let text = String::from_utf8(draft.expect("drafts").bytes).expect("ASCII");
    assert!(
        text.contains("Subject: Questions about your results: B7, B9 (TKW-Q-3F9A61)\r\n"),
        "{text}"
    );
    assert!(
        text.contains("Package B9: the two extractions differ"),
        "{text}"
    );
    assert!(text.contains("Address of the lab goes here"), "{text}");

    let known = Query {
        email: Some("desk@harrow-vane.example"),
        ..query
    };
    let draft = to_lab(&known, &config, None, &wording, Vec::new());
    let text = String::from_utf8(draft.expect("drafts").bytes).expect("ASCII");
    assert!(text.contains("<desk@harrow-vane.example>"), "{text}");
}

#[test]
fn a_programmes_own_template_with_a_mistake_is_named_with_its_line() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("report-templates/mail-maker.txt");
    files::write(&path, b"Hello\n{{ maker }\n").expect("writes");
    let error = Wording::read(&config(folder.path()))
        .err()
        .expect("a mistake")
        .to_string();
    assert!(
        error.contains("report-templates/mail-maker.txt, line 2"),
        "{error}"
    );
}

#[test]
fn a_regulator_has_one_article() {
    for name in ["Fenland Food Office", "the Fenland Food Office"] {
        assert_eq!(without_article(name), "Fenland Food Office");
    }
}
