//! What the longest files of each kind take: a process of its own, looked at while it works.
#![cfg(target_os = "linux")]

use crate::make_binary::{BinaryCell, BinarySheet, xls, xlsb};
use crate::make_ods::{OdsSheet, ods};
use crate::workspace::Workspace;
use galleyproof::gather::books::bounds::MOST_ROWS;
use std::io::Cursor;
use zip::write::SimpleFileOptions;
use zip::{ZipArchive, ZipWriter};

/// A table of as many rows as a file may have, in four sheets, since a sheet of an .xls holds no more.
fn tables(value: &str) -> Vec<Vec<[String; 4]>> {
    let rows = MOST_ROWS / 4 - 1;
    let table = |sheet: usize| {
        let head = ["Sample", "Extraction", "Gluten (ppm)", "LOQ"].map(str::to_owned);
        let row = |at: usize| {
            let number = sheet * rows + at + 1;
            [
                "A1".to_owned(),
                number.to_string(),
                value.to_owned(),
                "5".to_owned(),
            ]
        };
        std::iter::once(head).chain((0..rows).map(row)).collect()
    };
    (0..4).map(table).collect()
}

fn binary(tables: &[Vec<[String; 4]>]) -> Vec<BinarySheet> {
    let cell = |text: &String| match text.parse() {
        Ok(number) => BinaryCell::Number(number),
        Err(_) => BinaryCell::Text(text.clone()),
    };
    let sheet = |(name, rows): (usize, &Vec<[String; 4]>)| BinarySheet {
        name: name.to_string(),
        rows: rows
            .iter()
            .map(|row| row.iter().map(cell).collect())
            .collect(),
        ..BinarySheet::default()
    };
    tables.iter().enumerate().map(sheet).collect()
}

fn xlsx(tables: &[Vec<[String; 4]>]) -> Vec<u8> {
    let cell = |text: &String| match text.parse::<f64>() {
        Ok(number) => format!("<c><v>{number}</v></c>"),
        Err(_) => format!("<c t=\"inlineStr\"><is><t>{text}</t></is></c>"),
    };
    let rows: String = tables
        .concat()
        .iter()
        .map(|row| format!("<row>{}</row>", row.iter().map(cell).collect::<String>()))
        .collect();
    super::bounds::with_sheet(&format!(
        "<worksheet><sheetData>{rows}</sheetData></worksheet>"
    ))
}

fn open_document(tables: &[Vec<[String; 4]>]) -> Vec<u8> {
    let sheet = |rows: &Vec<[String; 4]>| {
        let rows: Vec<Vec<&str>> = rows
            .iter()
            .map(|row| row.iter().map(String::as_str).collect())
            .collect();
        OdsSheet::of("a", &rows.iter().map(Vec::as_slice).collect::<Vec<_>>())
    };
    packed(&ods(&tables.iter().map(sheet).collect::<Vec<_>>()))
}

/// The same archive with its parts packed: as it is, it is larger than a file may be.
fn packed(archive: &[u8]) -> Vec<u8> {
    let mut from = ZipArchive::new(Cursor::new(archive)).expect("an archive");
    let mut packed = ZipWriter::new(Cursor::new(Vec::new()));
    for at in 0..from.len() {
        let mut part = from.by_index(at).expect("a part");
        let name = part.name().expect("a name").into_owned();
        let options = SimpleFileOptions::default().compression_level(Some(1));
        packed.start_file(name, options).expect("starts");
        std::io::copy(&mut part, &mut packed).expect("writes");
    }
    packed.finish().expect("ends").into_inner()
}

#[test]
fn the_longest_file_of_each_kind_takes_no_more_than_512_megabytes() {
    for (what, value) in [("results", "17.5"), ("refused", "seventeen")] {
        let tables = tables(value);
        let delimited: String = tables
            .concat()
            .iter()
            .map(|row| row.join(",") + "\n")
            .collect();
        for (kind, bytes) in [
            ("csv", delimited.into_bytes()),
            ("xlsx", xlsx(&tables)),
            ("xls", xls(&binary(&tables))),
            ("xlsb", xlsb(&binary(&tables))),
            ("ods", open_document(&tables)),
        ] {
            let workspace = Workspace::new();
            workspace.with(&format!("inbox/a.{kind}"), bytes);
            let taken = workspace.measured(&["check"]);
            println!("{what}.{kind}: {taken:?}");
            assert!(taken.megabytes <= 512, "{what}.{kind}: {taken:?}");
            // Without optimisation of ours, and beside whatever else the machine does: the 10 s of the bounds are those of
            // the program as it is given away.
            assert!(taken.cpu_seconds <= 25, "{what}.{kind}: {taken:?}");
            assert!(
                taken.megabytes >= 60,
                "it was read: {what}.{kind}: {taken:?}"
            );
        }
    }
}
