//! OpenDocument spreadsheets for tests and the demo: the few parts that a reader needs, stored without compression.

use std::fmt::Write;

/// One cell.
pub enum Cell {
    /// Nothing.
    Empty,
    /// Text.
    Text(String),
    /// A number.
    Number(f64),
    /// A day, `2031-05-06`.
    Day(String),
}

impl Cell {
    /// A cell of text; empty text is an empty cell.
    pub fn text(text: impl Into<String>) -> Cell {
        let text = text.into();
        if text.is_empty() {
            Cell::Empty
        } else {
            Cell::Text(text)
        }
    }
}

/// A workbook of named sheets, row by row.
pub fn ods(sheets: &[(&str, Vec<Vec<Cell>>)]) -> Vec<u8> {
    let mut content = String::from(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content \
         xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" \
         xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\" \
         xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\" office:version=\"1.2\">\
         <office:body><office:spreadsheet>",
    );
    for (name, rows) in sheets {
        write!(content, "<table:table table:name=\"{}\">", escape(name))
            .expect("a string takes all");
        for row in rows {
            content.push_str("<table:table-row>");
            if row.is_empty() {
                content.push_str("<table:table-cell/>");
            }
            for cell in row {
                content.push_str(&cell_xml(cell));
            }
            content.push_str("</table:table-row>");
        }
        content.push_str("</table:table>");
    }
    content.push_str("</office:spreadsheet></office:body></office:document-content>");
    let manifest = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><manifest:manifest \
        xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\" manifest:version=\"1.2\">\
        <manifest:file-entry manifest:full-path=\"/\" manifest:media-type=\"application/vnd.oasis.opendocument.spreadsheet\"/>\
        <manifest:file-entry manifest:full-path=\"content.xml\" manifest:media-type=\"text/xml\"/></manifest:manifest>";
    zip(&[
        (
            "mimetype",
            b"application/vnd.oasis.opendocument.spreadsheet",
        ),
        ("META-INF/manifest.xml", manifest.as_bytes()),
        ("content.xml", content.as_bytes()),
    ])
}

fn cell_xml(cell: &Cell) -> String {
    match cell {
        Cell::Empty => "<table:table-cell/>".to_owned(),
        Cell::Text(text) => format!(
            "<table:table-cell office:value-type=\"string\"><text:p>{}</text:p></table:table-cell>",
            escape(text)
        ),
        Cell::Number(number) => format!(
            "<table:table-cell office:value-type=\"float\" office:value=\"{number}\"><text:p>{number}</text:p></table:table-cell>"
        ),
        Cell::Day(day) => format!(
            "<table:table-cell office:value-type=\"date\" office:date-value=\"{day}\"><text:p>{day}</text:p></table:table-cell>"
        ),
    }
}

fn escape(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}

/// A ZIP archive whose entries are stored as they are (APPNOTE 6.3.9, method 0).
pub fn zip(entries: &[(&str, &[u8])]) -> Vec<u8> {
    let (mut archive, mut directory) = (Vec::new(), Vec::new());
    for (name, bytes) in entries {
        let offset = archive.len() as u32;
        let mut common = Vec::new();
        for half in [20u16, 0, 0, 0, 0x21] {
            common.extend(half.to_le_bytes());
        }
        for word in [crc32(bytes), bytes.len() as u32, bytes.len() as u32] {
            common.extend(word.to_le_bytes());
        }
        common.extend((name.len() as u16).to_le_bytes());
        common.extend(0u16.to_le_bytes());
        archive.extend(*b"PK\x03\x04");
        archive.extend(&common);
        archive.extend(name.as_bytes());
        archive.extend(*bytes);
        directory.extend(*b"PK\x01\x02\x14\x00");
        directory.extend(&common);
        directory.extend([0u8; 10]);
        directory.extend(offset.to_le_bytes());
        directory.extend(name.as_bytes());
    }
    let (count, start, size) = (
        entries.len() as u16,
        archive.len() as u32,
        directory.len() as u32,
    );
    archive.extend(&directory);
    archive.extend(*b"PK\x05\x06\x00\x00\x00\x00");
    archive.extend(count.to_le_bytes());
    archive.extend(count.to_le_bytes());
    archive.extend(size.to_le_bytes());
    archive.extend(start.to_le_bytes());
    archive.extend([0u8; 2]);
    archive
}

/// CRC-32 of ISO 3309, bit by bit: test files are small.
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0u32, |mut crc, byte| {
        crc ^= u32::from(*byte);
        for _ in 0..8 {
            crc = if crc & 1 == 1 {
                (crc >> 1) ^ 0xEDB8_8320
            } else {
                crc >> 1
            };
        }
        crc
    })
}
