//! Workbooks: numbers, dates, number formats, hidden rows and sheets, merged cells, and what no reader may trust.

use super::folder::Folder;
use crate::make_ods::{OdsCell, OdsRow, OdsSheet, ods, zip_stored};
use rust_xlsxwriter::{ExcelDateTime, Format, Formula, Workbook, Worksheet};

/// A workbook of one sheet.
fn xlsx(fill: impl FnOnce(&mut Worksheet)) -> Vec<u8> {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    sheet.set_name("Results").expect("is a name");
    fill(sheet);
    book.save_to_buffer().expect("can be written")
}

fn text(sheet: &mut Worksheet, row: u32, cells: &[&str]) {
    for (column, cell) in (0..).zip(cells) {
        if !cell.is_empty() {
            sheet.write(row, column, *cell).expect("can be written");
        }
    }
}

fn read(name: &str, bytes: &[u8]) -> (Vec<String>, Vec<String>) {
    let read = Folder::new().with(name, bytes).gather();
    (read.readings(), read.problems())
}

#[test]
fn numbers_dates_and_formats() {
    let bytes = xlsx(|sheet| {
        let below = Format::new().set_num_format("\"<\"0.0");
        let day = Format::new().set_num_format("dd.mm.yyyy");
        let percent = Format::new().set_num_format("0.0000%");
        text(sheet, 4, &["", "Sample", "Ext", "Gluten (ppm)", "Tested"]);
        for (row, code, ext) in [
            (5, "TKW-101", 1.0),
            (6, "TKW-101", 2.0),
            (7, "TKW-102", 1.0),
            (8, "TKW-102", 2.0),
        ] {
            sheet.write(row, 1, code).expect("writes");
            sheet.write(row, 2, ext).expect("writes");
        }
        sheet.write(5, 3, 12.4).expect("writes");
        sheet.write_with_format(6, 3, 5.0, &below).expect("writes");
        sheet.write(7, 3, "1 234,5").expect("writes");
        sheet
            .write_with_format(8, 3, 0.00002, &percent)
            .expect("writes");
        let date = ExcelDateTime::from_ymd(2031, 3, 7).expect("is a day");
        sheet.write_with_format(5, 4, &date, &day).expect("writes");
    });
    let read = Folder::new().with("inbox/a.xlsx", &bytes).gather();
    assert_eq!(
        read.readings(),
        [
            "TKW-101 1 12.4",
            "TKW-101 2 <5",
            "TKW-102 1 1234.5",
            "TKW-102 2 20"
        ]
    );
    assert_eq!(
        read.problems(),
        ["suspicious inbox/a.xlsx D9"],
        "percent under a heading in ppm"
    );
    let first = &read.gathered.extractions[0];
    assert_eq!(
        first.tested_on.map(|day| day.to_string()).as_deref(),
        Some("2031-03-07")
    );
    assert_eq!(
        first.source.place().to_string(),
        "inbox/a.xlsx, sheet “Results”, cell D6"
    );
    assert_eq!(first.reported, "12.4");
}

#[test]
fn codes_that_a_spreadsheet_has_mangled() {
    let bytes = xlsx(|sheet| {
        let day = Format::new().set_num_format("d-mmm");
        text(sheet, 0, &["Sample", "Gluten (ppm)"]);
        let date = ExcelDateTime::from_ymd(2031, 1, 3).expect("is a day");
        sheet.write_with_format(1, 0, &date, &day).expect("writes");
        sheet
            .write_with_format(2, 0, 2e10, &Format::new().set_num_format("0.00E+00"))
            .expect("writes");
        sheet.write(3, 0, 77.0).expect("writes");
        sheet
            .write_with_format(4, 0, 88.0, &Format::new().set_num_format("0000"))
            .expect("writes");
        for row in 1..5 {
            sheet.write(row, 1, 9.0).expect("writes");
        }
    });
    let read = Folder::new()
        .with(
            "registers/packages.csv",
            b"package_code,product_id\n0077,oat-bar\n0088,oat-bar\n",
        )
        .with("inbox/a.xlsx", &bytes)
        .gather();
    assert_eq!(read.readings(), ["0088 1 9"]);
    assert_eq!(
        read.problems(),
        [
            "bad_code inbox/a.xlsx A2",
            "bad_code inbox/a.xlsx A3",
            "bad_code inbox/a.xlsx A4"
        ]
    );
}

#[test]
fn formulas_errors_and_cells_of_another_kind() {
    let bytes = xlsx(|sheet| {
        text(sheet, 0, &["Sample", "Extraction", "Gluten (ppm)"]);
        for (row, extraction) in [(1, 1.0), (2, 2.0), (3, 3.0), (4, 4.0)] {
            sheet.write(row, 0, "TKW-101").expect("writes");
            sheet.write(row, 1, extraction).expect("writes");
        }
        sheet
            .write(1, 2, Formula::new("=2*6.2").set_result("12.4"))
            .expect("writes");
        sheet.write(2, 2, Formula::new("=2*6.2")).expect("writes");
        sheet
            .write(3, 2, Formula::new("=1/0").set_result("#DIV/0!"))
            .expect("writes");
        sheet
            .write_with_format(4, 2, 45000.0, &Format::new().set_num_format("yyyy-mm-dd"))
            .expect("writes");
    });
    let (readings, problems) = read("inbox/a.xlsx", &bytes);
    assert_eq!(
        readings,
        [
            "TKW-101 1 12.4",
            "TKW-101 2 unreadable",
            "TKW-101 3 unreadable",
            "TKW-101 4 unreadable"
        ]
    );
    assert_eq!(
        problems,
        [
            "bad_value inbox/a.xlsx C3",
            "bad_value inbox/a.xlsx C4",
            "bad_value inbox/a.xlsx C5"
        ]
    );
}

#[test]
fn hidden_rows_and_sheets_are_read_with_a_note() {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    text(sheet, 0, &["Sample", "Extraction", "Gluten (ppm)"]);
    text(sheet, 1, &["TKW-101", "1", "6"]);
    text(sheet, 2, &["TKW-101", "2", "7"]);
    sheet.set_row_hidden(2).expect("hides");
    let hidden = book.add_worksheet();
    hidden.set_name("Rest").expect("is a name").set_hidden(true);
    text(hidden, 0, &["Sample", "Extraction", "Gluten (ppm)"]);
    text(hidden, 1, &["TKW-102", "1", "8"]);
    let bytes = book.save_to_buffer().expect("can be written");
    let (readings, problems) = read("inbox/a.xlsx", &bytes);
    assert_eq!(readings, ["TKW-101 1 6", "TKW-101 2 7", "TKW-102 1 8"]);
    assert_eq!(
        problems,
        ["hidden inbox/a.xlsx", "hidden inbox/a.xlsx row 3"]
    );
}

#[test]
fn merged_cells_and_two_rows_of_headings() {
    let bytes = xlsx(|sheet| {
        let plain = Format::new();
        sheet
            .merge_range(2, 0, 3, 0, "Sample", &plain)
            .expect("merges");
        sheet
            .merge_range(2, 1, 2, 2, "Gluten (mg/kg)", &plain)
            .expect("merges");
        text(sheet, 3, &["", "Ext 1", "Ext 2"]);
        text(sheet, 4, &["TKW-101", "<5", "6,5"]);
        sheet
            .merge_range(
                7,
                0,
                7,
                2,
                "All results apply to the samples as received.",
                &plain,
            )
            .expect("merges");
    });
    let (readings, problems) = read("inbox/a.xlsx", &bytes);
    assert_eq!(readings, ["TKW-101 1 <5", "TKW-101 2 6.5"]);
    assert_eq!(problems, [""; 0]);
}

#[test]
fn columns_under_one_merged_heading_without_a_second_row_are_told() {
    let bytes = xlsx(|sheet| {
        sheet
            .merge_range(0, 1, 0, 2, "Gluten (mg/kg)", &Format::new())
            .expect("merges");
        text(sheet, 0, &["Sample"]);
        text(sheet, 1, &["TKW-101", "6", "34"]);
        text(sheet, 2, &["TKW-101", "7", "33"]);
    });
    let (readings, problems) = read("inbox/a.xlsx", &bytes);
    assert_eq!(readings, ["TKW-101 1 unreadable", "TKW-101 2 unreadable"]);
    assert_eq!(problems, ["ambiguous_table inbox/a.xlsx C1"]);
}

#[test]
fn a_pair_over_two_sheets_is_two_extractions() {
    let mut book = rust_xlsxwriter::Workbook::new();
    for result in ["6", "34"] {
        let sheet = book.add_worksheet();
        text(sheet, 0, &["Sample", "Gluten (mg/kg)"]);
        text(sheet, 1, &["TKW-101", result]);
    }
    let bytes = book.save_to_buffer().expect("is written");
    let (readings, problems) = read("inbox/a.xlsx", &bytes);
    assert_eq!(readings, ["TKW-101 1 6", "TKW-101 2 34"]);
    // A draft and a final sheet would look the same.
    assert_eq!(problems, ["counted_on inbox/a.xlsx row 1"]);
}

#[test]
fn a_code_merged_over_its_rows_is_the_code_of_each() {
    let bytes = xlsx(|sheet| {
        text(sheet, 0, &["Sample", "Gluten (ppm)"]);
        sheet
            .merge_range(1, 0, 2, 0, "TKW-101", &Format::new())
            .expect("merges");
        text(sheet, 1, &["", "6"]);
        text(sheet, 2, &["", "7"]);
    });
    // Writing a blank over the merged code would lose it.
    let (readings, _) = read("inbox/a.xlsx", &bytes);
    assert_eq!(readings, ["TKW-101 1 6", "TKW-101 2 7"]);
}

#[test]
fn an_open_document_spreadsheet() {
    let row = |cells: Vec<OdsCell>| OdsRow {
        cells,
        hidden: false,
    };
    let text = |text: &str| OdsCell::Text(text.to_owned());
    let sheet = OdsSheet {
        hidden_columns: Vec::new(),
        name: "März".to_owned(),
        hidden: false,
        rows: vec![
            OdsRow::default(),
            row(vec![
                text("Sample"),
                text("Gluten (ppm)"),
                text("Tested on"),
            ]),
            row(vec![
                OdsCell::Down("TKW-101".to_owned(), 2),
                OdsCell::Number(12.4, "12.4".into()),
                OdsCell::Date("2031-03-07".into()),
            ]),
            OdsRow {
                hidden: true,
                ..row(vec![OdsCell::Covered, OdsCell::Number(5.0, "<5.0".into())])
            },
        ],
    };
    let read = Folder::new().with("inbox/a.ods", &ods(&[sheet])).gather();
    assert_eq!(read.readings(), ["TKW-101 1 12.4", "TKW-101 2 <5"]);
    assert_eq!(read.problems(), ["hidden inbox/a.ods row 4"]);
    assert_eq!(
        read.gathered.extractions[0].source.place().to_string(),
        "inbox/a.ods, sheet “März”, cell B3"
    );
}

#[test]
fn a_workbook_is_read_by_its_content_and_not_by_its_name() {
    let bytes = xlsx(|sheet| {
        text(sheet, 0, &["Sample", "Gluten (ppm)"]);
        text(sheet, 1, &["TKW-101", "6"]);
    });
    assert_eq!(read("inbox/a.csv", &bytes).0, ["TKW-101 1 6"]);
    assert_eq!(
        read("inbox/a.xlsx", b"Sample,Gluten (ppm)\nTKW-101,6\n").0,
        ["TKW-101 1 6"]
    );
}

#[test]
fn what_is_no_readable_workbook_is_named() {
    let whole = xlsx(|sheet| text(sheet, 0, &["Sample", "Gluten (ppm)"]));
    for (bytes, word) in [
        (&whole[..whole.len() / 2], "cut short"),
        (&b""[..], "empty"),
        (
            b"<html><table><tr><td>Sample</td></tr></table></html>",
            "web page",
        ),
        (
            &zip_stored(&[("word/document.xml", b"<w/>")])[..],
            "no workbook",
        ),
        (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1 and nothing", "damaged"),
    ] {
        let read = Folder::new().with("inbox/a.xlsx", bytes).gather();
        assert_eq!(read.problems(), ["unreadable_file inbox/a.xlsx"], "{word}");
        let message = read.told(0);
        assert!(message.contains(word), "{word}: {message}");
    }
}

#[test]
fn a_hidden_column_that_is_read_is_noted() {
    let table = |sheet: &mut Worksheet| {
        text(sheet, 0, &["Sample", "Lot", "Gluten (ppm)"]);
        text(sheet, 1, &["TKW-101", "L7", "6"]);
        for column in [1, 2] {
            sheet.set_column_hidden(column).expect("is a column");
        }
    };
    let expected = (
        vec!["TKW-101 1 6".to_owned()],
        vec!["hidden inbox/a.xlsx C1".to_owned()],
    );
    assert_eq!(read("inbox/a.xlsx", &xlsx(table)), expected);
    let row = |cells: [&str; 3]| OdsRow {
        cells: cells.map(|cell| OdsCell::Text(cell.to_owned())).to_vec(),
        hidden: false,
    };
    let sheet = OdsSheet {
        name: "Results".to_owned(),
        hidden: false,
        hidden_columns: vec![false, true, true],
        rows: vec![
            row(["Sample", "Lot", "Gluten (ppm)"]),
            row(["TKW-101", "L7", "6"]),
        ],
    };
    let expected = (
        vec!["TKW-101 1 6".to_owned()],
        vec!["hidden inbox/a.ods C1".to_owned()],
    );
    assert_eq!(read("inbox/a.ods", &ods(&[sheet])), expected);
}
