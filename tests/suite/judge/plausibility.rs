//! What can hardly be so is told, and stops nothing.

use crate::judge::bench::{config, extractions, registers, run};
use chrono::NaiveDate;
use galleyproof::model::extraction::{Extraction, LabRecord};
use galleyproof::model::problem::{Code, Severity};
use galleyproof::model::registers::{Product, Registers};
use galleyproof::words::english;
use std::sync::Arc;

fn day(text: &str) -> Option<NaiveDate> {
    Some(text.parse().expect("a day"))
}

/// Three packages of two lots, bought, sent, received and tested in this order.
fn sound() -> (Registers, Vec<Extraction>) {
    let product = Product {
        barcode: Some("6291 0415 0021 3".into()),
        ..Product::default()
    };
    let mut registers = registers(product, 3);
    registers.knows_sent_on = true;
    for (package, lot) in registers.packages.iter_mut().zip(["A1", "A1", "B7"]) {
        package.lot = Some(lot.into());
        package.best_by = Some(format!("{} 2032", if lot == "A1" { "04" } else { "05" }));
        package.price = Some("3.20".into());
        package.bought_on = day("2031-03-01");
        package.sent_on = day("2031-03-05");
    }
    let record = Arc::new(LabRecord {
        received_on: day("2031-03-07"),
        issued_on: day("2031-03-14"),
        ..LabRecord::default()
    });
    let rows = extractions(&[&["<5", "<5"], &["<5", "<5"], &["6.1", "7.0"]]);
    let rows = rows.into_iter().map(|row| Extraction {
        tested_on: day("2031-03-11"),
        record: Arc::clone(&record),
        ..row
    });
    (registers, rows.collect())
}

/// What is told of the programme once `change` has been at it.
fn told(change: impl Fn(&mut Registers, &mut Vec<Extraction>)) -> Vec<String> {
    let (mut registers, mut rows) = sound();
    change(&mut registers, &mut rows);
    let (judged, problems) = run(&registers, rows, &config("us", ""));
    assert_eq!(judged.products.len(), 1, "nothing is stopped");
    assert_eq!(problems.count(Severity::Error), 0);
    let suspicious = problems
        .sorted()
        .into_iter()
        .filter(|problem| problem.code == Code::Suspicious);
    suspicious
        .inspect(|problem| assert!(problem.hint.is_some(), "{problem:?}"))
        .map(|problem| english().found(problem))
        .collect()
}

#[test]
fn a_sound_programme_is_left_in_peace() {
    assert_eq!(told(|_, _| ()), Vec::<String>::new());
}

#[test]
fn each_slip_is_told_once_with_what_stands_there() {
    type Change = fn(&mut Registers, &mut Vec<Extraction>);
    let cases: &[(&str, Change)] = &[
        (
            "was bought on 2031-03-01, after its best-by date “2031-02”",
            |r, _| {
                r.packages[2].best_by = Some("2031-02".into());
            },
        ),
        (
            "was sent on 2031-02-05, before it was bought on 2031-03-01",
            |r, _| {
                r.packages[0].sent_on = day("2031-02-05");
            },
        ),
        (
            "was received by the lab on 2031-03-07, before it was sent on 2031-03-08",
            |r, _| {
                r.packages[1].sent_on = day("2031-03-08");
            },
        ),
        (
            "was tested on 2031-03-06, before the lab received it on 2031-03-07",
            |_, rows| {
                rows[2].tested_on = day("2031-03-06");
                rows[3].tested_on = day("2031-03-06");
            },
        ),
        (
            "was reported on 2031-03-14, before its test ended on 2031-03-15",
            |_, rows| {
                rows[0].tested_on = day("2031-03-15");
            },
        ),
        (
            "All 3 packages of product “FH-01”, round “1”, are of lot “B7”",
            |r, _| {
                for package in &mut r.packages {
                    package.lot = Some("b 7".into());
                    package.best_by = Some("05 2032".into());
                }
                r.packages[0].lot = Some("B7".into());
            },
        ),
        (
            "Lot “A1” of product “FH-01” has the best-by dates “04 2032” (package “P-1”) and “09/2032”",
            |r, _| {
                r.packages[1].best_by = Some("09/2032".into());
            },
        ),
        ("ends in 4, where its other digits ask for 3", |r, _| {
            let product = r.products.get_mut("FH-01").expect("is there");
            product.barcode = Some("6291041500214".into());
        }),
        (
            "The barcode “1.” of product “FH-01” is not made of digits",
            |r, _| {
                r.products.get_mut("FH-01").expect("is there").barcode = Some("1.".into());
            },
        ),
        (
            "The price “see receipt” of package “P-2” has no figure",
            |r, _| {
                r.packages[1].price = Some("see receipt".into());
            },
        ),
        (
            "is sold as “gluten-free”, and its ingredients name “wheat flour”",
            |r, _| {
                let product = r.products.get_mut("FH-01").expect("is there");
                product.ingredients = Some("Rice, wheat flour, salt.".into());
            },
        ),
    ];
    for (wanted, change) in cases {
        let told = told(change);
        let [one] = told.as_slice() else {
            panic!("{wanted}: {told:#?}")
        };
        assert!(one.contains(wanted), "{wanted}: {one}");
    }
}

#[test]
fn what_is_no_slip_is_not_told() {
    // A precautionary statement denies no claim.
    let may_contain = told(|r, _| {
        let product = r.products.get_mut("FH-01").expect("is there");
        product.ingredients = Some("Rice, salt. May contain wheat.".into());
    });
    assert_eq!(may_contain, Vec::<String>::new());
    // One date is written in two ways; a spare that was not sent is of any lot; days that are not known are in no order.
    let written = told(|r, rows| {
        r.packages[0].best_by = Some("2032-04".into());
        r.packages[1].best_by = Some("04/2032".into());
        r.packages[2].lot = Some("A1".into());
        r.packages[2].best_by = None;
        r.packages[2].sent_on = None;
        r.packages.truncate(3);
        rows.truncate(4);
        r.packages[1].lot = Some("C3".into());
        r.packages[0].bought_on = None;
    });
    assert_eq!(written, Vec::<String>::new());
}
