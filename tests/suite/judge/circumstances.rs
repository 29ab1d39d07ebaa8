//! Where things stand with the maker, and what to bear in mind of the assay.

use crate::judge::bench::{codes, config, extractions, judged, registers, run};
use chrono::NaiveDate;
use galleyproof::judge::{judge, method_notes};
use galleyproof::model::caution::Caution;
use galleyproof::model::extraction::AssayKind;
use galleyproof::model::followup::{FollowUpState, Told};
use galleyproof::model::place::Place;
use galleyproof::model::problem::{Code, Problems};
use galleyproof::model::registers::{Followup, FollowupKind, Oats, Processing, Product};

fn day(day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(2031, 3, day).expect("a day of March")
}

/// The state after these events of a product that is over the limit.
fn state(events: &[(FollowupKind, u32)], as_of: Option<NaiveDate>) -> FollowUpState {
    let mut registers = registers(Product::default(), 1);
    registers.followups = events
        .iter()
        .map(|(kind, on)| Followup {
            product_id: "FH-01".into(),
            round: None,
            on: day(*on),
            kind: *kind,
            due_on: None,
            statement: None,
            note: None,
            place: Place::file("registers/followups.csv"),
        })
        .collect();
    let rows = extractions(&[&["30", "31"]]);
    let judged = judge(
        &registers,
        rows,
        &config("us", ""),
        as_of,
        &mut Problems::default(),
    );
    judged.products[0].follow_up
}

#[test]
fn a_notice_is_sent_awaited_overdue_answered_and_closed() {
    use FollowupKind::{Action, Closed, NoticeSent, Reply};
    assert_eq!(state(&[], None), FollowUpState::ToSend);
    let told = Told {
        on: day(4),
        due_on: day(19),
    };
    let sent = [(NoticeSent, 4)];
    assert_eq!(state(&sent, None), FollowUpState::Waiting(told));
    assert_eq!(state(&sent, Some(day(19))), FollowUpState::Waiting(told));
    assert_eq!(state(&sent, Some(day(20))), FollowUpState::Overdue(told));
    let replied = |on, late| FollowUpState::Replied {
        told: Some(told),
        replied_on: day(on),
        late,
    };
    assert_eq!(
        state(&[(NoticeSent, 4), (Reply, 10)], None),
        replied(10, false)
    );
    assert_eq!(
        state(&[(NoticeSent, 4), (Action, 21)], None),
        replied(21, true)
    );
    let closed = [(Closed, 25), (NoticeSent, 4), (Reply, 10)];
    assert_eq!(
        state(&closed, None),
        FollowUpState::Closed {
            told: Some(told),
            replied_on: Some(day(10)),
            closed_on: day(25)
        },
        "in order of date"
    );
    let again = [(NoticeSent, 4), (Closed, 10), (NoticeSent, 12)];
    assert!(
        matches!(state(&again, None), FollowUpState::Waiting(_)),
        "a new notice opens it again"
    );
}

#[test]
fn a_clean_product_needs_no_notice() {
    let clean = judged(&[&["<5", "<5"]], &config("us", ""));
    assert_eq!(clean.follow_up, FollowUpState::NotNeeded);
}

/// The cautions of one package with these readings of this product, under the rule of the European Union.
fn cautions(product: Product, kind: AssayKind, readings: &[&str]) -> Vec<Caution> {
    let mut rows = extractions(&[readings]);
    rows.iter_mut().for_each(|row| row.assay_kind = kind);
    let (judged, _) = run(&registers(product, 1), rows, &config("eu", ""));
    method_notes(&judged.products[0].verdict)
}

fn of(ingredients: &str) -> Product {
    Product {
        ingredients: Some(ingredients.into()),
        ..Product::default()
    }
}

#[test]
fn what_the_food_does_to_the_assay_is_said() {
    let below = &["<5", "<5"];
    let sandwich = |product| cautions(product, AssayKind::Sandwich, below);
    assert_eq!(sandwich(Product::default()), []);
    let chocolate = Product {
        matrix: Some("dark chocolates, oats".into()),
        oats: Oats::Certified,
        ..Product::default()
    };
    assert_eq!(sandwich(chocolate), [Caution::OatsUnseen, Caution::Tannins]);
    assert_eq!(
        cautions(Product::default(), AssayKind::Competitive, below),
        [Caution::CompetitiveOnWhole]
    );
    for cocoa in ["cocoa", "Kakaopulver", "harina de trigo sarraceno"] {
        assert!(sandwich(of(cocoa)).contains(&Caution::Tannins), "{cocoa}");
    }
    assert_eq!(
        sandwich(of("pear, peach, steak seasoning, oatless goat")),
        []
    );
}

/// J Agric Food Chem 65:2155 (2017), 70:2366 (2022): barley grain; J AOAC 98:1346 (2015): malt and the like read too low.
#[test]
fn barley_is_read_high_only_as_grain_and_where_a_figure_is_shown() {
    let high = |ingredients: &str, readings: &[&str]| {
        cautions(of(ingredients), AssayKind::Sandwich, readings).contains(&Caution::BarleyReadHigh)
    };
    assert!(high("pearl barley", &["12", "14"]));
    assert!(high("Gerste, Salz", &[">80", ">80"]));
    assert!(!high("pearl barley", &["<5", "<5"]), "no figure");
    for other in [
        "barley malt extract",
        "malt vinegar",
        "yeast extract",
        "barley, malt",
        "barley miso",
        "barley grass",
        "Gerstenmalz",
    ] {
        assert!(!high(other, &["12", "14"]), "{other}");
    }
    let fermented = Product {
        processing: Processing::Fermented,
        ..of("barley")
    };
    let notes = cautions(fermented, AssayKind::Sandwich, &["12", "14"]);
    assert!(!notes.contains(&Caution::BarleyReadHigh));
}

#[test]
fn a_label_that_names_fermented_food_is_asked_about() {
    for (ingredients, named) in [
        ("rice, soy sauce", "soy sauce"),
        ("Reis, Sojasoße", "sojasosse"),
        ("riz, sauce soja", "sauce soja"),
        ("arroz, salsa de soja", "salsa de soja"),
        ("riso, salsa di soia", "salsa di soia"),
        ("miso", "miso"),
        ("corn, malt flavouring", "malt"),
        ("hydrolysed vegetable protein", "hydrolysed"),
        ("beer batter", "beer"),
        ("rice sourdough", "sourdough"),
        ("Sauerteig (Reis)", "sauerteig"),
        ("levadura de cerveza", "levadura de cerveza"),
    ] {
        let rows = extractions(&[&["<5", "<5"]]);
        let registers = registers(of(ingredients), 1);
        let (judged, problems) = run(&registers, rows, &config("eu", ""));
        let asked = codes(&problems).contains(&Code::Suspicious);
        assert!(asked, "{ingredients}");
        let caution = Caution::MayBeInPieces(vec![named.to_owned()]);
        let cautions = method_notes(&judged.products[0].verdict);
        assert!(cautions.contains(&caution), "{ingredients}: {cautions:?}");
    }
    for not in [
        "rice malt syrup",
        "ginger beer",
        "maltodextrin",
        "malt-free",
        "rice, without malt",
    ] {
        let (_, problems) = run(&registers(of(not), 1), vec![], &config("eu", ""));
        assert!(!codes(&problems).contains(&Code::Suspicious), "{not}");
    }
    let known = Product {
        processing: Processing::Fermented,
        ..of("miso")
    };
    let (_, problems) = run(&registers(known, 1), vec![], &config("eu", ""));
    assert!(
        !codes(&problems).contains(&Code::Suspicious),
        "the register says so"
    );
}
