//! An input as pieces. A changed byte in a deflated or checksummed file is nearly always a damaged file and nothing more;
//! the pieces are put together here, so that a change reaches what reads them.

use crate::make_compound::compound;
use crate::make_ods::zip_stored;

/// Parts the pieces of an input. A piece may be left out: then it is empty.
pub const BETWEEN: &[u8] = b"\n====\n";

/// The pieces of an input, in their order.
pub fn of(bytes: &[u8]) -> Vec<&[u8]> {
    let mut pieces = Vec::new();
    let mut rest = bytes;
    while let Some(at) = rest
        .windows(BETWEEN.len())
        .position(|window| window == BETWEEN)
    {
        pieces.push(&rest[..at]);
        rest = &rest[at + BETWEEN.len()..];
    }
    pieces.push(rest);
    pieces
}

/// The parts of an .xlsx that are read, in the order of their pieces.
pub const XLSX: [&str; 7] = [
    "xl/worksheets/sheet1.xml",
    "xl/sharedStrings.xml",
    "xl/styles.xml",
    "xl/workbook.xml",
    "xl/_rels/workbook.xml.rels",
    "_rels/.rels",
    "xl/worksheets/sheet2.xml",
];

/// Likewise of an .xlsb.
pub const XLSB: [&str; 6] = [
    "xl/worksheets/sheet1.bin",
    "xl/sharedStrings.bin",
    "xl/styles.bin",
    "xl/workbook.bin",
    "xl/_rels/workbook.bin.rels",
    "xl/worksheets/sheet2.bin",
];

/// Likewise of an .ods.
pub const ODS: [&str; 3] = ["content.xml", "styles.xml", "META-INF/manifest.xml"];

/// The least that leads to the first sheet of an .xlsx.
const LEAST: [(&str, &str); 3] = [
    (
        "_rels/.rels",
        r#"<Relationships><Relationship Id="r1" Type="/officeDocument" Target="xl/workbook.xml"/></Relationships>"#,
    ),
    (
        "xl/workbook.xml",
        r#"<workbook><sheets><sheet name="a" r:id="r1"/></sheets></workbook>"#,
    ),
    (
        "xl/_rels/workbook.xml.rels",
        r#"<Relationships><Relationship Id="r1" Type="/worksheet" Target="worksheets/sheet1.xml"/></Relationships>"#,
    ),
];

/// An archive of the pieces of an input under these names; an archive is taken as it is.
pub fn archived(bytes: &[u8], names: &[&'static str]) -> Vec<u8> {
    if bytes.starts_with(b"PK") {
        return bytes.to_vec();
    }
    let pieces = of(bytes);
    let mut parts: Vec<(&str, &[u8])> = names
        .iter()
        .copied()
        .zip(pieces)
        .filter(|(_, piece)| !piece.is_empty())
        .collect();
    if names == XLSX {
        let has = |name: &str| parts.iter().any(|(has, _)| *has == name);
        let lacks: Vec<_> = LEAST.iter().filter(|(name, _)| !has(name)).collect();
        parts.extend(lacks.iter().map(|(name, text)| (*name, text.as_bytes())));
    }
    if names == ODS {
        let kind = &b"application/vnd.oasis.opendocument.spreadsheet"[..];
        parts.insert(0, ("mimetype", kind));
    }
    zip_stored(&parts)
}

/// A compound file that holds the input as its workbook; a compound file is taken as it is.
pub fn compounded(bytes: &[u8]) -> Vec<u8> {
    if bytes.starts_with(&[0xd0, 0xcf, 0x11, 0xe0]) {
        return bytes.to_vec();
    }
    compound("Workbook", bytes)
}
