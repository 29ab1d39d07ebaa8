//! Binary workbooks, old (.xls) and new (.xlsb): both hold the same here, and both are to read the same.

use super::folder::{Folder, Read};
use crate::make_binary::BinaryCell::{self, Blank, Error, Formula, Number, OwnText, Shown, Truth};
use crate::make_binary::{BinarySheet, record, xls, xls_stream, xlsb};
use crate::make_compound::compound;
use calamine::{Data, Reader, Xls, Xlsb};
use std::io::Cursor;

/// Reads sheets in both formats, which must not differ, and gives what the first said.
fn read(sheets: &[BinarySheet]) -> Read {
    let old = Folder::new().with("inbox/a.xls", &xls(sheets)).gather();
    let new = Folder::new().with("inbox/a.xls", &xlsb(sheets)).gather();
    assert_eq!(old.readings(), new.readings());
    assert_eq!(old.problems(), new.problems());
    assert_eq!(new.gathered.understandings[0].format, "workbook (.xlsb)");
    old
}

fn text(text: &str) -> BinaryCell {
    BinaryCell::Text(text.to_owned())
}

fn own(text: &str) -> BinaryCell {
    OwnText(text.to_owned())
}

fn formula(result: BinaryCell) -> BinaryCell {
    Formula(Box::new(result))
}

fn sheet(rows: Vec<Vec<BinaryCell>>) -> BinarySheet {
    BinarySheet {
        name: "Ergebnisse µ".to_owned(),
        rows,
        ..BinarySheet::default()
    }
}

#[test]
fn numbers_dates_texts_and_formats() {
    let day = 47_914.0; // 7 March 2031
    let read = read(&[sheet(vec![
        vec![],
        vec![
            Blank,
            text("Probe – Nr."),
            text("Ext"),
            text("Gluten (ppm)"),
            text("Tested on"),
        ],
        vec![
            Blank,
            text("TKW-101"),
            Number(1.0),
            Number(12.4),
            Shown(day, 2),
        ],
        vec![
            Blank,
            text("TKW-101"),
            Number(2.0),
            Shown(5.0, 1),
            Shown(day, 3),
        ],
        vec![
            Blank,
            own("TKW-102"),
            Number(1.0),
            Number(1234.567),
            own("07.03.2031"),
        ],
        vec![Blank, own("TKW-102"), Number(2.0), text("<5 µg/g"), Blank],
    ])]);
    assert_eq!(
        read.readings(),
        [
            "TKW-101 1 12.4",
            "TKW-101 2 <5",
            "TKW-102 1 1234.567",
            "TKW-102 2 <5"
        ]
    );
    assert_eq!(read.problems(), [""; 0]);
    let first = &read.gathered.extractions[0];
    assert_eq!(
        first.source.place().to_string(),
        "inbox/a.xls, sheet “Ergebnisse µ”, cell D3"
    );
    let days: Vec<String> = read
        .gathered
        .extractions
        .iter()
        .filter_map(|extraction| Some(extraction.tested_on?.to_string()))
        .collect();
    assert_eq!(days, ["2031-03-07"; 3]);
}

#[test]
fn formulas_and_errors() {
    let rows = [
        (formula(Number(12.4)), "12.4"),
        (formula(own("<5")), "<5"),
        (formula(Number(0.0)), "unreadable"),
        (formula(Error(0x07)), "unreadable"),
        (Error(0x2a), "unreadable"),
        (formula(Truth(true)), "unreadable"),
        (Truth(false), "unreadable"),
    ];
    let heading = vec![text("Sample"), text("Extraction"), text("Gluten (ppm)")];
    let cells = (1..)
        .zip(&rows)
        .map(|(n, (cell, _))| vec![text("TKW-101"), Number(f64::from(n)), cell.clone()]);
    let read = read(&[sheet([heading].into_iter().chain(cells).collect())]);
    let expected: Vec<String> = (1..)
        .zip(rows)
        .map(|(n, (_, outcome))| format!("TKW-101 {n} {outcome}"))
        .collect();
    assert_eq!(read.readings(), expected);
    let problems = read.problems();
    assert_eq!(problems.len(), 5, "{problems:?}");
    assert_eq!(problems[0], "bad_value inbox/a.xls C4");
    assert!(read.told(1).contains("#DIV/0!"));
    assert!(read.told(2).contains("#N/A"));
}

#[test]
fn hidden_rows_and_sheets_and_merged_cells() {
    let first = BinarySheet {
        hidden_rows: vec![2],
        merged: vec![[1, 2, 0, 0]],
        ..sheet(vec![
            vec![text("Sample"), text("Gluten (ppm)")],
            vec![text("TKW-101"), Number(6.0)],
            vec![Blank, Number(7.0)],
        ])
    };
    let second = BinarySheet {
        name: "Anhang".to_owned(),
        hidden: true,
        ..sheet(vec![
            vec![text("Sample"), text("Gluten (ppm)")],
            vec![text("TKW-102"), Number(8.0)],
        ])
    };
    let read = read(&[first, second]);
    assert_eq!(
        read.readings(),
        ["TKW-101 1 6", "TKW-101 2 7", "TKW-102 1 8"]
    );
    assert_eq!(
        read.problems(),
        ["hidden inbox/a.xls", "hidden inbox/a.xls row 3"]
    );
}

#[test]
fn a_hidden_column_that_is_read_is_noted() {
    let hidden = BinarySheet {
        hidden_columns: vec![1, 2],
        ..sheet(vec![
            vec![text("Sample"), text("Gluten (ppm)"), text("Remark")],
            vec![text("TKW-101"), Number(6.0), text("ok")],
        ])
    };
    for (name, bytes) in [
        ("a.xls", xls(std::slice::from_ref(&hidden))),
        ("a.xlsb", xlsb(std::slice::from_ref(&hidden))),
    ] {
        let path = format!("inbox/{name}");
        let read = Folder::new().with(&path, &bytes).gather();
        assert_eq!(read.readings(), ["TKW-101 1 6"]);
        assert_eq!(read.problems(), [format!("hidden {path} B1")]);
    }
}

#[test]
fn shared_texts_that_go_on_over_many_records() {
    let mut rows = vec![vec![text("Sample"), text("Gluten (ppm)"), text("Remark")]];
    for n in 0..400 {
        let remark = format!(
            "Kommentar {n} {}",
            if n % 3 == 0 { "–" } else { "-" }.repeat(n)
        );
        rows.push(vec![
            text("TKW-101"),
            text(&format!("{n}.25")),
            text(&remark),
        ]);
    }
    let sheets = [sheet(rows)];
    let records = xls_stream(&sheets);
    assert!(records.len() > 10 * 8224, "{}", records.len());
    let read = read(&sheets);
    assert_eq!(read.readings().len(), 400);
    assert!(read.readings().contains(&"TKW-101 400 399.25".to_owned()));
}

/// That the files are what others write too: an independent reader sees the same in them.
#[test]
fn another_reader_sees_the_same_in_what_is_made_here() {
    let sheets = [sheet(vec![
        vec![
            text("Sample"),
            own("Größe"),
            Number(1.0),
            Number(2.5),
            Number(0.1),
        ],
        vec![
            formula(Number(2.0)),
            formula(own("x")),
            Error(0x07),
            Truth(true),
            Shown(47_914.0, 2),
        ],
    ])];
    let mut old: Xls<_> = Xls::new(Cursor::new(xls(&sheets))).expect("is an .xls");
    let mut new: Xlsb<_> = Xlsb::new(Cursor::new(xlsb(&sheets))).expect("is an .xlsb");
    let seen = [
        old.worksheet_range("Ergebnisse µ").expect("is there"),
        new.worksheet_range("Ergebnisse µ").expect("is there"),
    ];
    for range in seen {
        let cells: Vec<String> = range
            .used_cells()
            .map(|(_, _, cell)| cell.to_string())
            .collect();
        assert_eq!(
            cells[..9],
            [
                "Sample", "Größe", "1", "2.5", "0.1", "2", "x", "#DIV/0!", "true"
            ]
        );
        assert!(matches!(range.get_value((1, 4)), Some(Data::DateTime(_))));
    }
}

#[test]
fn the_version_before_is_read_too() {
    let letters = |text: &str| [&[text.len() as u8, 0], text.as_bytes()].concat();
    let label = |row: u8, column: u8, text: &str| {
        record(
            0x0204,
            &[&[row, 0, column, 0, 0, 0][..], &letters(text)].concat(),
        )
    };
    let start = |kind: u8| record(0x0809, &[0, 5, kind, 0, 0, 0, 0, 0]);
    let end = record(0x0a, &[]);
    let head = [start(5), record(0x42, &1252_u16.to_le_bytes())].concat();
    let list = |at: u32| record(0x85, &[&at.to_le_bytes()[..], &[0, 0, 4], b"Rest"].concat());
    let at = (head.len() + list(0).len() + end.len()) as u32;
    let stream = [
        head,
        list(at),
        end.clone(),
        start(0x10),
        label(0, 0, "Sample"),
        record(0x0204, b"\0\0\x01\0\0\0\x0d\0Gluten (\xb5g/g)"),
        label(1, 0, "TKW-101"),
        record(
            0x0203,
            &[&[1, 0, 1, 0, 0, 0][..], &12.5_f64.to_le_bytes()].concat(),
        ),
        end,
    ]
    .concat();
    let read = Folder::new()
        .with("inbox/a.xls", &compound("Book", &stream))
        .gather();
    assert_eq!(read.readings(), ["TKW-101 1 12.5"], "{:?}", read.problems());
}

#[test]
fn a_password_and_what_is_cut_short_are_told() {
    let whole = xls_stream(&[sheet(vec![vec![text("Sample"), text("Gluten (ppm)")]])]);
    let locked = [&whole[..20], &record(0x2f, &[1, 0]), &whole[20..]].concat();
    for (bytes, word) in [
        (compound("EncryptedPackage", b""), "password"),
        (compound("Workbook", &locked), "password"),
        (compound("Workbook", &whole[..whole.len() - 4]), "cut short"),
        (compound("Letter", &whole), "cut short"),
    ] {
        let read = Folder::new().with("inbox/a.xls", &bytes).gather();
        assert_eq!(read.problems(), ["unreadable_file inbox/a.xls"], "{word}");
        let message = read.told(0);
        assert!(message.contains(word), "{word}: {message}");
    }
}
