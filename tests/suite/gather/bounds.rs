//! Every bound on a file, in every kind of file that can pass it: what is passed is named, and the next file is read.

use super::folder::Folder;
use crate::make_binary::{BinaryCell, BinarySheet, xls, xlsb};
use crate::make_ods::{OdsCell, OdsRow, OdsSheet, ods};
use crate::workspace::Workspace;
use galleyproof::gather::books::bounds::{
    LARGEST_FILE, LONGEST_TEXT, MOST_CELLS, MOST_REPEATS, MOST_RESULTS, MOST_ROWS, MOST_SHEETS,
    MOST_TABLES, MOST_TOLD, WIDEST_ROW,
};
use galleyproof::gather::books::{self, Book, Content, Unreadable};
use galleyproof::gather::tables::headings;
use galleyproof::words::english;
use std::io::Write;
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

const RELATIONS: &str = r#"<Relationships><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>"#;
const KINDS: &str = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";

fn read(bytes: &[u8]) -> Result<Book, Unreadable> {
    books::read(bytes, &headings::likeness_of)
}

/// What is said of a file that passes a bound.
fn told(bytes: &[u8]) -> String {
    english().say(&read(bytes).expect_err("passes a bound").message)
}

fn binary(columns: usize, rows: usize) -> BinarySheet {
    BinarySheet {
        name: "a".to_owned(),
        rows: vec![vec![BinaryCell::Number(7.0); columns]; rows],
        ..BinarySheet::default()
    }
}

fn open_document(columns: usize, rows: usize) -> OdsSheet {
    let row = OdsRow {
        cells: vec![OdsCell::Number(7.0, "7".to_owned()); columns],
        hidden: false,
    };
    OdsSheet {
        hidden_columns: Vec::new(),
        name: "a".to_owned(),
        rows: vec![row; rows],
        hidden: false,
    }
}

fn xlsx(columns: usize, rows: usize) -> Vec<u8> {
    let row = format!("<row>{}</row>", "<c><v>7</v></c>".repeat(columns));
    let sheet = format!(
        "<worksheet><sheetData>{}</sheetData></worksheet>",
        row.repeat(rows)
    );
    parts("", "", &[("xl/worksheets/sheet1.xml", &sheet)])
}

/// An .ods of so many tables of a filled row that says how often it and its cell are repeated.
fn repeated(columns: u32, rows: u32, tables: usize) -> Vec<u8> {
    let row = format!(
        "<table:table-row table:number-rows-repeated=\"{rows}\"><table:table-cell table:number-columns-repeated=\"{columns}\" office:value-type=\"float\" office:value=\"7\"/></table:table-row>"
    );
    let content = format!(
        "<office:spreadsheet>{}</office:spreadsheet>",
        format!("<table:table table:name=\"a\">{row}</table:table>").repeat(tables)
    );
    crate::make_ods::zip_stored(&[
        (
            "mimetype",
            &b"application/vnd.oasis.opendocument.spreadsheet"[..],
        ),
        ("content.xml", content.as_bytes()),
    ])
}

/// An .xlsx of these parts; `xl/workbook.xml` lists one sheet, `a`, and what else is given.
fn parts(more_sheets: &str, more_relations: &str, parts: &[(&str, &str)]) -> Vec<u8> {
    let workbook = format!(
        "<workbook><sheets><sheet name=\"a\" r:id=\"rId1\"/>{more_sheets}</sheets></workbook>"
    );
    let relations = format!(
        "<Relationships><Relationship Id=\"rId1\" Type=\"{KINDS}worksheet\" Target=\"worksheets/sheet1.xml\"/>{more_relations}</Relationships>"
    );
    let mut zip = ZipWriter::new(std::io::Cursor::new(Vec::new()));
    let fixed = [
        ("_rels/.rels", RELATIONS),
        ("xl/workbook.xml", workbook.as_str()),
        ("xl/_rels/workbook.xml.rels", relations.as_str()),
    ];
    for (name, text) in fixed.iter().chain(parts) {
        let options = SimpleFileOptions::default().compression_level(Some(1));
        zip.start_file(*name, options).expect("starts");
        zip.write_all(text.as_bytes()).expect("writes");
    }
    zip.finish().expect("ends").into_inner()
}

/// An .xlsx of one sheet with this text.
pub fn with_sheet(sheet: &str) -> Vec<u8> {
    parts("", "", &[("xl/worksheets/sheet1.xml", sheet)])
}

/// A table of one reading, the cell of which has style 1.
const TABLE: &str = r#"<worksheet><sheetData><row><c t="inlineStr"><is><t>Sample</t></is></c><c t="inlineStr"><is><t>Gluten (ppm)</t></is></c></row><row><c t="inlineStr"><is><t>TKW-101</t></is></c><c s="1"><v>17.5</v></c></row></sheetData></worksheet>"#;

fn with_format(code: &str) -> Vec<u8> {
    let styles = format!(
        "<styleSheet><numFmts><numFmt numFmtId=\"164\" formatCode=\"{code}\"/></numFmts><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/></cellXfs></styleSheet>"
    );
    parts(
        "",
        "",
        &[
            ("xl/worksheets/sheet1.xml", TABLE),
            ("xl/styles.xml", &styles),
        ],
    )
}

#[test]
fn a_row_is_no_wider_than_the_bound_in_any_kind_of_file() {
    let separated = |columns: usize| vec!["7"; columns].join(",").into_bytes();
    for (columns, fits) in [(WIDEST_ROW, true), (WIDEST_ROW + 1, false)] {
        let mut files = vec![
            ("csv", separated(columns)),
            ("xlsx", xlsx(columns, 1)),
            ("xlsb", xlsb(&[binary(columns, 1)])),
            ("ods", ods(&[open_document(columns, 1)])),
        ];
        files.push(("xls", xls(&[binary(columns, 1)])));
        for (kind, bytes) in files {
            match read(&bytes) {
                Ok(book) => assert!(
                    fits && book.sheets[0].rows[0].cells.len() == columns,
                    "{kind}"
                ),
                Err(why) => {
                    assert!(!fits, "{kind}: {why:?}");
                    assert!(
                        english()
                            .say(&why.message)
                            .contains("filled cells in a row"),
                        "{kind}: {why:?}"
                    );
                }
            }
        }
    }
}

#[test]
fn a_file_holds_no_more_cells_than_the_bound_in_any_kind_of_file() {
    let rows = MOST_CELLS / 1_000 + 1;
    for (kind, bytes) in [
        (
            "csv",
            "7,7,7,7,7,7,7,7,7,7\n".repeat(rows * 100).into_bytes(),
        ),
        ("xlsx", xlsx(1_000, rows)),
        ("xls", xls(&[binary(200, rows * 5)])),
        ("xlsb", xlsb(&[binary(1_000, rows)])),
        ("ods", repeated(1_000, 1_000, 2)),
    ] {
        let message = told(&bytes);
        assert!(
            message.contains("1048576 filled cells"),
            "{kind}: {message}"
        );
    }
}

#[test]
fn a_file_has_no_more_rows_than_the_bound() {
    let most = "7\n".repeat(MOST_ROWS);
    let book = read(most.as_bytes()).expect("stays within");
    assert_eq!(book.sheets[0].rows.len(), MOST_ROWS);
    for (kind, bytes) in [
        ("csv", (most + "7\n").into_bytes()),
        ("xlsx", xlsx(1, MOST_ROWS + 1)),
        ("xlsb", xlsb(&[binary(1, MOST_ROWS + 1)])),
        ("xls", xls(&vec![binary(1, 60_000); 4])),
        ("ods", repeated(1, 1_000, MOST_ROWS / 1_000 + 1)),
    ] {
        let message = told(&bytes);
        assert!(message.contains("200000 filled rows"), "{kind}: {message}");
    }
}

#[test]
fn a_file_has_no_more_sheets_than_the_bound() {
    let many = vec![binary(1, 1); MOST_SHEETS + 1];
    for (kind, bytes) in [
        ("xls", xls(&many)),
        ("xlsb", xlsb(&many)),
        ("ods", ods(&vec![open_document(1, 1); MOST_SHEETS + 1])),
    ] {
        assert!(told(&bytes).contains("1000 sheets"), "{kind}");
    }
}

#[test]
fn a_filled_row_stands_for_no_more_rows_than_the_bound() {
    let row = |times| repeated(1, times, 1);
    let book = read(&row(MOST_REPEATS)).expect("stays within");
    assert_eq!(book.sheets[0].rows.len(), MOST_REPEATS as usize);
    for times in [MOST_REPEATS + 1, 1_000_000] {
        assert!(told(&row(times)).contains("repeated 1000 times"));
    }
}

/// Headings over and over, and rows as wide as may be that each could be headings.
#[test]
fn a_file_has_no_more_tables_and_headings_than_the_bound() {
    let mut space = Folder::new();
    space = space.with(
        "inbox/fine.csv",
        b"Sample,Extraction,Gluten (ppm)\nTKW-101,1,17.5\n",
    );
    let row = |cells: &[&str]| OdsRow {
        cells: cells
            .iter()
            .map(|text| OdsCell::Text((*text).to_owned()))
            .collect(),
        hidden: false,
    };
    let headings = vec![row(&["Sample", "Gluten (ppm)"]); MOST_TABLES + 1];
    let binary = BinarySheet {
        name: "a".to_owned(),
        rows: vec![["Sample", "Gluten (ppm)"].map(BinaryCell::of).to_vec(); MOST_TABLES + 1],
        ..BinarySheet::default()
    };
    let inline = |text: &str| format!("<c t=\"inlineStr\"><is><t>{text}</t></is></c>");
    let sheet = format!(
        "<worksheet><sheetData>{}</sheetData></worksheet>",
        format!("<row>{}{}</row>", inline("Sample"), inline("Gluten (ppm)"))
            .repeat(MOST_TABLES + 1)
    );
    let wide = format!("Sample{}\n", ",Gluten (ppm)".repeat(WIDEST_ROW - 1));
    let files = [
        (
            "a.csv",
            "Sample,Gluten (ppm)\n".repeat(200_000).into_bytes(),
        ),
        ("b.csv", wide.repeat(1_000).into_bytes()),
        (
            "c.xlsx",
            parts("", "", &[("xl/worksheets/sheet1.xml", &sheet)]),
        ),
        ("d.xls", xls(std::slice::from_ref(&binary))),
        ("e.xlsb", xlsb(&[binary])),
        (
            "f.ods",
            ods(&[OdsSheet {
                hidden_columns: Vec::new(),
                name: "a".to_owned(),
                rows: headings,
                hidden: false,
            }]),
        ),
    ];
    for (name, bytes) in &files {
        space = space.with(&format!("inbox/{name}"), bytes);
    }
    let read = space.gather();
    assert_eq!(read.readings(), ["TKW-101 1 17.5"]);
    assert_eq!(read.problems().len(), files.len());
    for at in 0..files.len() {
        let told = read.told(at);
        assert!(told.contains("1000 tables and headings"), "{told}");
    }
}

/// Each row of this file could be headings.
#[test]
fn a_long_table_whose_cells_are_words_of_headings_is_read() {
    let rows: String = (0..20_000)
        .map(|at| format!("TKW-101,Extraction {},17.5\n", at + 1))
        .collect();
    let read = Folder::new()
        .with(
            "inbox/a.csv",
            format!("Sample,Extraction,Gluten (ppm)\n{rows}").as_bytes(),
        )
        .gather();
    assert_eq!(read.readings().len(), 20_000);
}

#[test]
fn joined_cells_in_any_number_hold_up_no_headings() {
    let heading = "<c t=\"inlineStr\"><is><t>Gluten (ppm)</t></is></c>".repeat(200);
    let sheet = format!(
        "<worksheet><sheetData>{}</sheetData><mergeCells>{}</mergeCells></worksheet>",
        format!("<row>{heading}</row>").repeat(100),
        "<mergeCell ref=\"ZZ1:ZZ2\"/>".repeat(200_000)
    );
    let bytes = parts("", "", &[("xl/worksheets/sheet1.xml", &sheet)]);
    let read = Folder::new().with("inbox/a.xlsx", &bytes).gather();
    assert_eq!(read.problems(), ["no_table inbox/a.xlsx row 1"]);
}

#[test]
fn of_very_many_problems_of_a_kind_the_first_are_told_and_the_others_counted() {
    let bad = "TKW-101,seven\n".repeat(MOST_TOLD + 2);
    let read = Folder::new()
        .with(
            "inbox/a.csv",
            format!("Sample,Gluten (ppm)\n{bad}").as_bytes(),
        )
        .gather();
    assert_eq!(read.problems().len(), MOST_TOLD + 1);
    let all: Vec<String> = (0..=MOST_TOLD).map(|at| read.told(at)).collect();
    let counted = all.iter().filter(|told| {
        told.contains("2 further cells or rows of this file have a problem of this kind")
    });
    assert_eq!(counted.count(), 1);
}

#[test]
fn a_file_gives_no_more_results_than_the_bound() {
    let row = format!("TKW-101{}\n", ",7".repeat(1_000));
    let wide = format!(
        "Sample{}\n{}",
        ",Gluten (ppm)".repeat(1_000),
        row.repeat(MOST_RESULTS / 1_000 + 1)
    );
    let read = Folder::new().with("inbox/a.csv", wide.as_bytes()).gather();
    assert!(read.readings().is_empty());
    assert!(read.told(0).contains("204000 results"), "{}", read.told(0));
}

#[test]
fn a_file_and_a_text_are_no_longer_than_the_bounds() {
    let long = "x".repeat(LONGEST_TEXT + 1);
    let inline = format!(
        "<worksheet><sheetData><row><c t=\"inlineStr\"><is><t>{long}</t></is></c></row></sheetData></worksheet>"
    );
    let shared = format!("<sst><si><t>{long}</t></si></sst>");
    let empty = "<worksheet/>";
    for bytes in [
        parts("", "", &[("xl/worksheets/sheet1.xml", &inline)]),
        parts(
            "",
            "",
            &[
                ("xl/worksheets/sheet1.xml", empty),
                ("xl/sharedStrings.xml", &shared),
            ],
        ),
    ] {
        assert!(told(&bytes).contains("1 MB of text in a cell"));
    }
    let large = vec![b'7'; LARGEST_FILE as usize + 1];
    assert!(told(&large).contains("a file of 64 MB"));
    // Each byte of Western European text can become three.
    let swells = [b"a,\x80\n".repeat(9), vec![0x80; 40 << 20]].concat();
    assert!(told(&swells).contains("96 MB of text"));
}

#[test]
fn a_number_format_that_cannot_be_followed_costs_the_format() {
    for code in [
        "\u{e9}[x]General".to_owned(),
        "0.".to_owned() + &"0".repeat(1 << 20),
        "[".repeat(200),
        "\u{1f600}".repeat(60),
    ] {
        let read = Folder::new()
            .with("inbox/a.xlsx", &with_format(&code))
            .gather();
        assert_eq!(read.readings(), ["TKW-101 1 17.5"], "{code:.30}");
    }
    let huge = with_format(&"0".repeat(130 << 20));
    assert!(told(&huge).contains("128 MB in a part"));
}

#[test]
fn nothing_of_a_panic_is_printed() {
    let space = Workspace::new();
    space.with("inbox/a.xlsx", with_format("\u{e9}[x]General"));
    let run = space.run(&["check"]);
    let (out, err) = (run.stdout(), run.stderr());
    for word in ["panicked", "RUST_BACKTRACE", "src/"] {
        assert!(!out.contains(word) && !err.contains(word), "{out}{err}");
    }
}

#[test]
fn sheets_of_other_kinds_are_passed_over_and_named() {
    let more = "<sheet name=\"Macro\" r:id=\"rId2\"/><sheet name=\"Module\" r:id=\"\"/><sheet name=\"Gone\" r:id=\"rId3\"/><sheet name=\"Chart\" r:id=\"rId4\"/>";
    let relations = format!(
        "<Relationship Id=\"rId2\" Type=\"http://schemas.microsoft.com/office/2006/relationships/xlMacrosheet\" Target=\"macrosheets/sheet1.xml\"/><Relationship Id=\"rId3\" Type=\"{KINDS}worksheet\" Target=\"worksheets/none.xml\"/><Relationship Id=\"rId4\" Type=\"{KINDS}chartsheet\" Target=\"chartsheets/sheet1.xml\"/>"
    );
    let bytes = parts(
        more,
        &relations,
        &[
            ("xl/worksheets/sheet1.xml", TABLE),
            ("xl/macrosheets/sheet1.xml", TABLE),
            ("xl/chartsheets/sheet1.xml", "<chartsheet/>"),
        ],
    );
    let read = Folder::new().with("inbox/a.xlsx", &bytes).gather();
    assert_eq!(read.readings(), ["TKW-101 1 17.5"]);
    assert_eq!(read.problems(), ["passed_over inbox/a.xlsx"]);
    let message = read.told(0);
    for name in ["Macro", "Module", "Gone", "Chart"] {
        assert!(message.contains(&format!("“{name}”")), "{message}");
    }
    let nothing = parts("", "", &[("xl/worksheets/other.xml", TABLE)]);
    assert!(told(&nothing).contains("damaged"));
}

#[test]
fn control_characters_are_left_out_and_the_place_is_kept() {
    let text = "Sample,Gluten (ppm),Remark\nTKW-101,17\u{b}.5,\u{202e}left\u{7} out\nTKW-102,\u{0},\u{1}\n";
    let book = read(text.as_bytes()).expect("is text");
    let places: Vec<_> = book.cleaned.iter().map(|at| (at.row, at.column)).collect();
    assert_eq!(places, [(2, 2), (2, 3), (3, 2), (3, 3)]);
    let row = &book.sheets[0].rows[1];
    assert_eq!(row.at(2), Some(&Content::Text("17.5".into())));
    assert_eq!(row.at(3), Some(&Content::Text("left out".into())));
    assert_eq!(book.sheets[0].rows[2].cells.len(), 1);
    for (bytes, word) in [
        (
            &b"\x00\x01\x02\x03,Sample\x7f\x00"[..],
            "neither text nor a workbook",
        ),
        (
            &[&b"Sample,7\n".repeat(8_000)[..], &[0; 70_000]].concat(),
            "neither text nor a workbook",
        ),
        (&[0; 5_000], "nothing but zeros"),
    ] {
        assert!(told(bytes).contains(word), "{word}");
    }
}
