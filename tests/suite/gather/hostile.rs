//! Files that would take all memory, or never end, were they believed. Each is small here and would be large unguarded.

use super::folder::Folder;
use crate::make_binary::{record, record12, xls_stream};
use crate::make_compound::compound;
use crate::make_ods::zip_stored;
use std::io::Write;
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

const RELATIONS: &str = r#"<Relationships><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>"#;
const SHEETS: &str = r#"<Relationships><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/></Relationships>"#;
const HEADINGS: &str = r#"<row r="1"><c r="A1" t="inlineStr"><is><t>Sample</t></is></c><c r="B1" t="inlineStr"><is><t>Gluten (ppm)</t></is></c></row>"#;

/// An archive of deflated parts.
fn deflated(parts: &[(&str, &[u8])]) -> Vec<u8> {
    let mut zip = ZipWriter::new(std::io::Cursor::new(Vec::new()));
    for (name, bytes) in parts {
        let options = SimpleFileOptions::default().compression_level(Some(1));
        zip.start_file(*name, options).expect("starts");
        zip.write_all(bytes).expect("writes");
    }
    zip.finish().expect("ends").into_inner()
}

fn xlsx(sheet: &str, strings: &str, sheets: usize) -> Vec<u8> {
    let listed: String = (0..sheets)
        .map(|n| format!("<sheet name=\"s{n}\" sheetId=\"{n}\" r:id=\"rId1\"/>"))
        .collect();
    let workbook = format!("<workbook><sheets>{listed}</sheets></workbook>");
    deflated(&[
        ("_rels/.rels", RELATIONS.as_bytes()),
        ("xl/workbook.xml", workbook.as_bytes()),
        ("xl/_rels/workbook.xml.rels", SHEETS.as_bytes()),
        ("xl/worksheets/sheet1.xml", sheet.as_bytes()),
        ("xl/sharedStrings.xml", strings.as_bytes()),
    ])
}

fn data(rows: &str) -> String {
    format!(
        "<worksheet><dimension ref=\"A1:XFD1048576\"/><sheetData>{HEADINGS}{rows}</sheetData></worksheet>"
    )
}

fn ods(table: &str) -> Vec<u8> {
    let content = format!(
        "<office:document-content><office:body><office:spreadsheet><table:table table:name=\"a\">{table}</table:table></office:spreadsheet></office:body></office:document-content>"
    );
    deflated(&[
        (
            "mimetype",
            b"application/vnd.oasis.opendocument.spreadsheet",
        ),
        ("content.xml", content.as_bytes()),
    ])
}

fn xls(records: &[u8]) -> Vec<u8> {
    let mut stream = xls_stream(&[crate::make_binary::BinarySheet::default()]);
    let end = stream.len() - 4;
    stream.splice(end..end, records.iter().copied());
    compound("Workbook", &stream)
}

fn number(row: u16, column: u16) -> Vec<u8> {
    let at = [row.to_le_bytes(), column.to_le_bytes(), [0, 0]].concat();
    record(0x0203, &[&at[..], &17.5_f64.to_le_bytes()].concat())
}

fn xlsb(sheet: &[u8], strings: &[u8]) -> Vec<u8> {
    let text = |text: &str| {
        let units: Vec<u8> = text.encode_utf16().flat_map(u16::to_le_bytes).collect();
        [&(text.len() as u32).to_le_bytes()[..], &units].concat()
    };
    let listed = [&[0; 4][..], &[1, 0, 0, 0], &text("rId1"), &text("a")].concat();
    let relations = SHEETS.replace("sheet1.xml", "sheet1.bin");
    deflated(&[
        ("xl/workbook.bin", &record12(0x9c, &listed)),
        ("xl/_rels/workbook.bin.rels", relations.as_bytes()),
        ("xl/worksheets/sheet1.bin", sheet),
        ("xl/sharedStrings.bin", strings),
    ])
}

/// What is said of a file: its one problem with it.
fn told(name: &str, bytes: &[u8]) -> String {
    let read = Folder::new().with(name, bytes).gather();
    assert_eq!(read.readings(), [""; 0], "{name}");
    let problems = read.problems.sorted();
    assert_eq!(problems.len(), 1, "{name}: {:?}", read.problems());
    read.told(0)
}

#[test]
fn what_inflates_beyond_the_bounds_is_too_large() {
    let spaces = " ".repeat(257 << 20);
    let texts = format!("<sst><si><t>{}</t></si></sst>", "x".repeat(30_000));
    let cells = "<row>".to_owned() + &"<c t=\"s\"><v>0</v></c>".repeat(4_000) + "</row>";
    for (what, bytes) in [
        ("spaces", xlsx(&data(&spaces), "<sst/>", 1)),
        ("texts", xlsx(&data(&cells), &texts, 1)),
        ("sheets", xlsx(&data(""), "<sst/>", 1_001)),
        (
            "a sheet many times",
            xlsx(&data(&" ".repeat(1 << 20)), "<sst/>", 600),
        ),
        ("parts", zip_stored(&vec![("a", &b""[..]); 10_001])),
    ] {
        assert!(told("inbox/a.xlsx", &bytes).contains("too large"), "{what}");
    }
}

#[test]
fn a_sheet_as_large_as_a_program_allows_takes_no_more_than_its_cells() {
    let corner = r#"<row r="1048576"><c r="XFD1048576"><v>1</v></c></row><row r="2"><c r="A2" t="inlineStr"><is><t>TKW-101</t></is></c><c r="B2"><v>17.5</v></c></row>"#;
    let read = Folder::new()
        .with("inbox/a.xlsx", &xlsx(&data(corner), "<sst/>", 1))
        .gather();
    assert_eq!(read.readings(), ["TKW-101 1 17.5"]);
    let dimensions = record(
        0x0200,
        &[0, 0, 0, 0, 255, 255, 255, 255, 0, 0, 255, 255, 0, 0],
    );
    let far = [dimensions, number(0, 0), number(65_535, 65_535)].concat();
    let row = |n: u32| record12(0, &[&n.to_le_bytes()[..], &[0; 13]].concat());
    let cell = |n: u32| {
        record12(
            5,
            &[&n.to_le_bytes()[..], &[0; 4], &1_f64.to_le_bytes()].concat(),
        )
    };
    let far_too = [
        row(0),
        cell(0),
        row(u32::MAX - 1),
        cell(u32::MAX),
        record12(0x82, &[]),
    ]
    .concat();
    let blank = "<table:table-row table:number-rows-repeated=\"1048574\"/><table:table-row><table:table-cell table:number-columns-repeated=\"16383\"/><table:table-cell office:value-type=\"float\" office:value=\"1\"/></table:table-row>";
    for (name, bytes) in [
        ("inbox/a.xls", xls(&far)),
        ("inbox/a.xlsb", xlsb(&far_too, b"")),
        ("inbox/a.ods", ods(&blank.repeat(3))),
    ] {
        assert!(told(name, &bytes).contains("No table"), "{name}");
    }
}

#[test]
fn what_repeats_itself_without_end_is_too_large() {
    let cell = |more: &str| {
        format!(
            "<table:table-row table:number-rows-repeated=\"1000\"><table:table-cell table:number-columns-repeated=\"16384\" {more}</table:table-row>"
        )
    };
    for table in [
        cell("office:value-type=\"float\" office:value=\"1\"/>"),
        cell("table:formula=\"of:=1\"/>"),
        cell("office:value-type=\"string\"><text:p>a</text:p></table:table-cell>"),
        "<table:table-row><table:table-cell><text:p>".to_owned()
            + &"<text:s text:c=\"1000\"/>".repeat(2_000)
            + "</text:p></table:table-cell></table:table-row>",
    ] {
        let bytes = ods(&table);
        assert!(told("inbox/a.ods", &bytes).contains("too large"), "{table}");
    }
    let shared = record12(
        0x13,
        &[&[0][..], &30_000_u32.to_le_bytes(), &b"x\0".repeat(30_000)].concat(),
    );
    let cell = record12(7, &[0; 12]);
    let sheet = [
        record12(0, &[0; 17]),
        cell.repeat(4_000),
        record12(0x82, &[]),
    ]
    .concat();
    assert!(told("inbox/a.xlsb", &xlsb(&sheet, &shared)).contains("too large"));
}

#[test]
fn what_is_not_what_it_claims_is_damaged() {
    let mut circle = xls(&[]);
    // The sector of the directory is followed by itself; the table of sectors stands behind it.
    let directory = u32::from_le_bytes(circle[48..52].try_into().expect("four bytes"));
    let table = 512 * (directory as usize + 2) + 4 * directory as usize;
    circle[table..table + 4].copy_from_slice(&directory.to_le_bytes());
    assert!(told("inbox/a.xls", &circle).contains("No table"));
    let whole = xlsx(&data(""), "<sst/>", 1);
    let mut lies = whole.clone();
    let entry = lies
        .windows(4)
        .rposition(|four| four == b"PK\x01\x02")
        .expect("is there");
    lies[entry + 24..entry + 28].copy_from_slice(&3_u32.to_le_bytes());
    lies[entry + 16] ^= 1;
    for (what, bytes) in [
        ("size and checksum", lies),
        ("nesting", xlsx(&data(&"<a>".repeat(2_000)), "<sst/>", 1)),
        ("nesting", ods(&"<a>".repeat(2_000))),
        ("length of a record", xlsb(b"\x05\xff\xff\xff\x7f", b"")),
        ("end", xlsb(&record12(0, &[0; 17]), b"")),
    ] {
        assert!(told("inbox/a.xlsx", &bytes).contains("damaged"), "{what}");
    }
}
