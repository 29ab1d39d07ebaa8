//! Makes binary workbooks: .xls ([MS-XLS] in a compound file, [MS-CFB]) and .xlsb ([MS-XLSB] in a ZIP archive), with as
//! much of either as a lab file needs.

use crate::make_compound::{bytes, compound};
use crate::make_ods::zip_stored;

/// A sheet to be made.
#[derive(Clone, Debug, Default)]
pub struct BinarySheet {
    /// Its name.
    pub name: String,
    /// Its cells, row by row.
    pub rows: Vec<Vec<BinaryCell>>,
    /// Whether it is hidden.
    pub hidden: bool,
    /// Rows that are hidden, from 0.
    pub hidden_rows: Vec<u32>,
    /// Columns that are hidden, from 0.
    pub hidden_columns: Vec<u16>,
    /// Cells that are joined: first and last row, first and last column, from 0.
    pub merged: Vec<[u32; 4]>,
}

/// A cell.
#[derive(Clone, Debug, Default)]
pub enum BinaryCell {
    /// Nothing.
    #[default]
    Blank,
    /// Text among those that cells share.
    Text(String),
    /// Text of this cell alone.
    OwnText(String),
    /// A number.
    Number(f64),
    /// A number with one of [`FORMATS`].
    Shown(f64, u16),
    /// A truth value.
    Truth(bool),
    /// An error, by its code.
    Error(u8),
    /// A formula and its result.
    Formula(Box<BinaryCell>),
}

/// The number formats of every workbook that is made: numbers of built-in formats, and codes of others.
pub const FORMATS: [(u16, &str); 4] = [(0, ""), (164, "\"<\"0.0"), (165, "dd.mm.yyyy"), (14, "")];

impl BinaryCell {
    /// Text, a number or nothing, by what is written.
    pub fn of(text: &str) -> BinaryCell {
        match text.parse::<f64>() {
            _ if text.is_empty() => BinaryCell::Blank,
            Ok(number) if number.to_string() == text => BinaryCell::Number(number),
            _ => BinaryCell::Text(text.to_owned()),
        }
    }
}

impl BinarySheet {
    /// A sheet of texts and numbers.
    pub fn of<S: AsRef<str>>(name: &str, rows: &[Vec<S>]) -> BinarySheet {
        let cells = |row: &Vec<S>| {
            row.iter()
                .map(|cell| BinaryCell::of(cell.as_ref()))
                .collect()
        };
        BinarySheet {
            name: name.to_owned(),
            rows: rows.iter().map(cells).collect(),
            ..BinarySheet::default()
        }
    }
}

/// The texts that cells share, each once.
fn shared(sheets: &[BinarySheet]) -> Vec<String> {
    let mut texts: Vec<String> = Vec::new();
    for cell in sheets.iter().flat_map(|sheet| sheet.rows.iter().flatten()) {
        if let BinaryCell::Text(text) = cell
            && !texts.contains(text)
        {
            texts.push(text.clone());
        }
    }
    texts
}

fn place(texts: &[String], text: &str) -> u32 {
    texts.iter().position(|one| one == text).expect("is shared") as u32
}

/// A number in four bytes, where it can be: a whole one, or one in hundredths.
fn packed(number: f64) -> Option<u32> {
    let fits = |n: f64| n.fract() == 0.0 && n.abs() < f64::from(1 << 29);
    if fits(number) {
        return Some(((number as i32) << 2) as u32 | 2);
    }
    let hundredths = (number * 100.0).round();
    (fits(hundredths) && hundredths / 100.0 == number)
        .then_some(((hundredths as i32) << 2) as u32 | 3)
}

fn utf16(text: &str) -> Vec<u8> {
    text.encode_utf16().flat_map(u16::to_le_bytes).collect()
}

/// A record of an .xls.
pub fn record(kind: u16, data: &[u8]) -> Vec<u8> {
    bytes![kind.to_le_bytes(), (data.len() as u16).to_le_bytes(), data]
}

/// The records of the texts that cells share: a text may go on in the next record, which says anew how wide letters are.
fn shared_records(texts: &[String]) -> Vec<u8> {
    const MOST: usize = 8224;
    let count = (texts.len() as u32).to_le_bytes();
    let mut parts = vec![bytes![count, count]];
    for text in texts {
        let letters = letters(text);
        let (flag, mut rest) = (letters[0], &letters[1..]);
        if parts[parts.len() - 1].len() + 4 > MOST {
            parts.push(Vec::new());
        }
        let last = parts.len() - 1;
        parts[last].extend(bytes![units(text).to_le_bytes(), [flag]]);
        while !rest.is_empty() {
            let last = parts.len() - 1;
            let fit = (MOST - parts[last].len()) & !1;
            let (now, later) = rest.split_at(fit.min(rest.len()));
            parts[last].extend(now);
            rest = later;
            if !rest.is_empty() {
                parts.push(vec![flag]);
            }
        }
    }
    let kinds = [0xfc].into_iter().chain(std::iter::repeat(0x3c));
    kinds
        .zip(parts)
        .flat_map(|(kind, part)| record(kind, &part))
        .collect()
}

/// Letters as an .xls keeps them: a byte each where that is enough.
fn letters(text: &str) -> Vec<u8> {
    let latin: Option<Vec<u8>> = text.chars().map(|c| u8::try_from(c as u32).ok()).collect();
    match latin {
        Some(latin) => bytes![[0], latin],
        None => bytes![[1], utf16(text)],
    }
}

fn units(text: &str) -> u16 {
    text.encode_utf16().count() as u16
}

/// An .xls.
pub fn xls(sheets: &[BinarySheet]) -> Vec<u8> {
    compound("Workbook", &xls_stream(sheets))
}

/// The stream of records in an .xls.
pub fn xls_stream(sheets: &[BinarySheet]) -> Vec<u8> {
    let texts = shared(sheets);
    let start = |kind: u16| {
        record(
            0x0809,
            &bytes![0x0600_u16.to_le_bytes(), kind.to_le_bytes(), [0; 12]],
        )
    };
    let end = record(0x000a, &[]);
    let parts: Vec<Vec<u8>> = sheets
        .iter()
        .map(|sheet| bytes![start(0x10), xls_cells(sheet, &texts), end])
        .collect();
    let mut head = bytes![start(5), record(0x42, &1200_u16.to_le_bytes())];
    for (number, code) in FORMATS.iter().filter(|(_, code)| !code.is_empty()) {
        head.extend(record(
            0x041e,
            &bytes![
                number.to_le_bytes(),
                units(code).to_le_bytes(),
                letters(code)
            ],
        ));
    }
    for (number, _) in FORMATS {
        head.extend(record(0xe0, &bytes![[0; 2], number.to_le_bytes(), [0; 16]]));
    }
    let strings = shared_records(&texts);
    let listed = |sheet: &BinarySheet, at: usize| {
        let count = [units(&sheet.name) as u8];
        record(
            0x85,
            &bytes![
                (at as u32).to_le_bytes(),
                [u8::from(sheet.hidden), 0],
                count,
                letters(&sheet.name)
            ],
        )
    };
    let list: usize = sheets.iter().map(|sheet| listed(sheet, 0).len()).sum();
    let mut at = head.len() + list + strings.len() + end.len();
    for (sheet, part) in sheets.iter().zip(&parts) {
        head.extend(listed(sheet, at));
        at += part.len();
    }
    bytes![head, strings, end, parts.concat()]
}

fn xls_cells(sheet: &BinarySheet, texts: &[String]) -> Vec<u8> {
    let hidden = sheet.hidden_columns.iter().map(|column| {
        let edge = column.to_le_bytes();
        record(0x007d, &bytes![edge, edge, [0, 8], [15, 0], [1, 0], [0, 0]])
    });
    let mut out: Vec<u8> = hidden.flatten().collect();
    for (row, cells) in (0_u16..).zip(&sheet.rows) {
        let flags = if sheet.hidden_rows.contains(&row.into()) {
            0x20
        } else {
            0
        };
        out.extend(record(
            0x0208,
            &bytes![row.to_le_bytes(), [0; 10], [flags, 1, 0, 0]],
        ));
        let mut column = 0_u16;
        while let Some(cell) = cells.get(usize::from(column)) {
            // Small numbers side by side share a record.
            let run: Vec<u32> = cells[usize::from(column)..]
                .iter()
                .map_while(|cell| match cell {
                    BinaryCell::Number(number) => packed(*number),
                    _ => None,
                })
                .collect();
            if run.len() > 1 {
                let last = column + run.len() as u16 - 1;
                let pairs: Vec<u8> = run
                    .iter()
                    .flat_map(|raw| bytes![[0; 2], raw.to_le_bytes()])
                    .collect();
                out.extend(record(
                    0xbd,
                    &bytes![
                        row.to_le_bytes(),
                        column.to_le_bytes(),
                        pairs,
                        last.to_le_bytes()
                    ],
                ));
                column = last + 1;
                continue;
            }
            out.extend(xls_cell(row, column, cell, texts));
            column += 1;
        }
    }
    if !sheet.merged.is_empty() {
        let regions: Vec<u8> = sheet
            .merged
            .iter()
            .flatten()
            .flat_map(|edge| (*edge as u16).to_le_bytes())
            .collect();
        out.extend(record(
            0xe5,
            &bytes![(sheet.merged.len() as u16).to_le_bytes(), regions],
        ));
    }
    out
}

/// The records of a cell.
pub fn xls_cell(row: u16, column: u16, cell: &BinaryCell, texts: &[String]) -> Vec<u8> {
    let at = |style: u16| bytes![row.to_le_bytes(), column.to_le_bytes(), style.to_le_bytes()];
    let formula = |result: [u8; 8]| record(0x06, &bytes![at(0), result, [0; 8]]);
    match cell {
        BinaryCell::Blank => Vec::new(),
        BinaryCell::Text(text) => record(0xfd, &bytes![at(0), place(texts, text).to_le_bytes()]),
        BinaryCell::OwnText(text) => record(
            0x0204,
            &bytes![at(0), units(text).to_le_bytes(), letters(text)],
        ),
        BinaryCell::Number(number) => match packed(*number) {
            Some(raw) => record(0x027e, &bytes![at(0), raw.to_le_bytes()]),
            None => record(0x0203, &bytes![at(0), number.to_le_bytes()]),
        },
        BinaryCell::Shown(number, style) => {
            record(0x0203, &bytes![at(*style), number.to_le_bytes()])
        }
        BinaryCell::Truth(yes) => record(0x0205, &bytes![at(0), [u8::from(*yes), 0]]),
        BinaryCell::Error(code) => record(0x0205, &bytes![at(0), [*code, 1]]),
        BinaryCell::Formula(result) => match &**result {
            BinaryCell::Number(number) => formula(number.to_le_bytes()),
            BinaryCell::Error(code) => formula([2, 0, *code, 0, 0, 0, 0xff, 0xff]),
            BinaryCell::Truth(yes) => formula([1, 0, u8::from(*yes), 0, 0, 0, 0xff, 0xff]),
            BinaryCell::OwnText(text) => bytes![
                formula([0, 0, 0, 0, 0, 0, 0xff, 0xff]),
                record(0x0207, &bytes![units(text).to_le_bytes(), letters(text)])
            ],
            other => panic!("a formula with the result {other:?} is not made"),
        },
    }
}

/// A record of an .xlsb.
pub fn record12(kind: u16, data: &[u8]) -> Vec<u8> {
    let kind = match kind {
        0..0x80 => vec![kind as u8],
        _ => vec![kind as u8 | 0x80, (kind >> 7) as u8],
    };
    let mut length = Vec::new();
    let mut left = data.len();
    while left >= 0x80 {
        length.push(left as u8 | 0x80);
        left >>= 7;
    }
    length.push(left as u8);
    bytes![kind, length, data]
}

fn string12(text: &str) -> Vec<u8> {
    bytes![u32::from(units(text)).to_le_bytes(), utf16(text)]
}

/// An .xlsb.
pub fn xlsb(sheets: &[BinarySheet]) -> Vec<u8> {
    let texts = shared(sheets);
    let mut strings = record12(0x9f, &[(texts.len() as u32).to_le_bytes(); 2].concat());
    for text in &texts {
        strings.extend(record12(0x13, &bytes![[0], string12(text)]));
    }
    let written = FORMATS.iter().filter(|(_, code)| !code.is_empty()).count() as u32;
    let mut styles = record12(0x267, &written.to_le_bytes());
    for (number, code) in FORMATS.iter().filter(|(_, code)| !code.is_empty()) {
        styles.extend(record12(
            0x2c,
            &bytes![number.to_le_bytes(), string12(code)],
        ));
    }
    styles.extend(record12(0x268, &[]));
    styles.extend(record12(0x269, &(FORMATS.len() as u32).to_le_bytes()));
    for (number, _) in FORMATS {
        styles.extend(record12(
            0x2f,
            &bytes![[0; 2], number.to_le_bytes(), [0; 12]],
        ));
    }
    styles.extend(record12(0x26a, &[]));
    let mut workbook = bytes![
        record12(0x83, &[]),
        record12(0x99, &[0; 12]),
        record12(0x8f, &[])
    ];
    let mut relations = String::from("<Relationships>");
    for (sheet, n) in sheets.iter().zip(1_u32..) {
        let id = format!("rId{n}");
        workbook.extend(record12(
            0x9c,
            &bytes![
                u32::from(sheet.hidden).to_le_bytes(),
                n.to_le_bytes(),
                string12(&id),
                string12(&sheet.name)
            ],
        ));
        relations.push_str(&format!(
            "<Relationship Id=\"{id}\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet{n}.bin\"/>"
        ));
    }
    relations.push_str("</Relationships>");
    workbook.extend(bytes![
        record12(0x90, &[]),
        record12(0x9d, &[0; 26]),
        record12(0x84, &[])
    ]);
    let sheets: Vec<(String, Vec<u8>)> = sheets
        .iter()
        .zip(1..)
        .map(|(sheet, n)| {
            (
                format!("xl/worksheets/sheet{n}.bin"),
                xlsb_sheet(sheet, &texts),
            )
        })
        .collect();
    let mut parts: Vec<(&str, &[u8])> = vec![
        ("xl/workbook.bin", &workbook),
        ("xl/_rels/workbook.bin.rels", relations.as_bytes()),
        ("xl/sharedStrings.bin", &strings),
        ("xl/styles.bin", &styles),
    ];
    parts.extend(
        sheets
            .iter()
            .map(|(name, part)| (name.as_str(), part.as_slice())),
    );
    zip_stored(&parts)
}

fn xlsb_sheet(sheet: &BinarySheet, texts: &[String]) -> Vec<u8> {
    let hidden = sheet.hidden_columns.iter().flat_map(|column| {
        let edge = u32::from(*column).to_le_bytes();
        record12(0x3c, &bytes![edge, edge, [0, 8, 0, 0], [0; 4], [1, 0]])
    });
    let hidden: Vec<u8> = hidden.collect();
    let mut out = bytes![
        record12(0x81, &[]),
        record12(0x94, &[0; 16]),
        hidden,
        record12(0x91, &[])
    ];
    for (row, cells) in (0_u32..).zip(&sheet.rows) {
        let hidden = if sheet.hidden_rows.contains(&row) {
            0x10
        } else {
            0
        };
        out.extend(record12(
            0,
            &bytes![row.to_le_bytes(), [0; 7], [hidden, 0], [0; 4]],
        ));
        for (column, cell) in (0_u32..).zip(cells) {
            out.extend(xlsb_cell(column, cell, texts));
        }
    }
    out.extend(record12(0x92, &[]));
    for edges in &sheet.merged {
        let edges: Vec<u8> = edges.iter().flat_map(|edge| edge.to_le_bytes()).collect();
        out.extend(record12(0xb0, &edges));
    }
    bytes![out, record12(0x82, &[])]
}

fn xlsb_cell(column: u32, cell: &BinaryCell, texts: &[String]) -> Vec<u8> {
    let at = |style: u16| bytes![column.to_le_bytes(), u32::from(style).to_le_bytes()];
    match cell {
        BinaryCell::Blank => record12(1, &at(0)),
        BinaryCell::Text(text) => record12(7, &bytes![at(0), place(texts, text).to_le_bytes()]),
        BinaryCell::OwnText(text) => record12(6, &bytes![at(0), string12(text)]),
        BinaryCell::Number(number) => match packed(*number) {
            Some(raw) => record12(2, &bytes![at(0), raw.to_le_bytes()]),
            None => record12(5, &bytes![at(0), number.to_le_bytes()]),
        },
        BinaryCell::Shown(number, style) => record12(5, &bytes![at(*style), number.to_le_bytes()]),
        BinaryCell::Truth(yes) => record12(4, &bytes![at(0), [u8::from(*yes)]]),
        BinaryCell::Error(code) => record12(3, &bytes![at(0), [*code]]),
        BinaryCell::Formula(result) => {
            let after = [0; 10];
            match &**result {
                BinaryCell::Number(number) => {
                    record12(9, &bytes![at(0), number.to_le_bytes(), after])
                }
                BinaryCell::Error(code) => record12(11, &bytes![at(0), [*code], after]),
                BinaryCell::Truth(yes) => record12(10, &bytes![at(0), [u8::from(*yes)], after]),
                BinaryCell::OwnText(text) => record12(8, &bytes![at(0), string12(text), after]),
                other => panic!("a formula with the result {other:?} is not made"),
            }
        }
    }
}
