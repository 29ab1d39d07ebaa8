//! Where things stand with the maker, and what to bear in mind of the assay.

use crate::judge::bench::{config, extractions, judged, registers, run};
use chrono::NaiveDate;
use galleyproof::judge::{judge, method_notes};
use galleyproof::model::extraction::AssayKind;
use galleyproof::model::followup::FollowUpState;
use galleyproof::model::place::Place;
use galleyproof::model::problem::Problems;
use galleyproof::model::registers::{Followup, FollowupKind, Oats, Product};

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
    let (told_on, due_on) = (day(4), day(19));
    let sent = [(NoticeSent, 4)];
    assert_eq!(
        state(&sent, None),
        FollowUpState::Waiting { told_on, due_on }
    );
    assert_eq!(
        state(&sent, Some(day(19))),
        FollowUpState::Waiting { told_on, due_on }
    );
    assert_eq!(
        state(&sent, Some(day(20))),
        FollowUpState::Overdue { told_on, due_on }
    );
    let replied = |on, late| FollowUpState::Replied {
        told_on: Some(told_on),
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
        FollowUpState::Closed { closed_on: day(25) },
        "in order of date"
    );
    let again = [(NoticeSent, 4), (Closed, 10), (NoticeSent, 12)];
    assert!(
        matches!(state(&again, None), FollowUpState::Waiting { .. }),
        "a new notice opens it again"
    );
}

#[test]
fn a_clean_product_needs_no_notice() {
    let clean = judged(&[&["<5", "<5"]], &config("us", ""));
    assert_eq!(clean.follow_up, FollowUpState::NotNeeded);
}

#[test]
fn what_the_food_does_to_the_assay_is_said() {
    let notes = |product: Product, kind| {
        let mut rows = extractions(&[&["<5", "<5"]]);
        rows.iter_mut().for_each(|row| row.assay_kind = kind);
        let (judged, _) = run(&registers(product, 1), rows, &config("eu", ""));
        method_notes(&judged.products[0].verdict)
    };
    assert!(notes(Product::default(), AssayKind::Sandwich).is_empty());
    let chocolate = Product {
        matrix: Some("dark chocolates, oats".into()),
        ingredients: Some("cocoa, barley malt".into()),
        oats: Oats::Certified,
        ..Product::default()
    };
    let of_chocolate = notes(chocolate, AssayKind::Sandwich);
    assert_eq!(
        of_chocolate.len(),
        3,
        "barley, oats, polyphenols: {of_chocolate:?}"
    );
    let competitive = notes(Product::default(), AssayKind::Competitive);
    assert!(competitive[0].contains("not for whole gluten"));
}
