//! Makes an OpenDocument spreadsheet: a ZIP archive of three small parts, stored without compression.

/// A sheet to be made.
#[derive(Clone, Debug, Default)]
pub struct OdsSheet {
    /// Its name.
    pub name: String,
    /// Its rows, from the top.
    pub rows: Vec<OdsRow>,
    /// Whether it is hidden.
    pub hidden: bool,
    /// Its columns from the left, as far as they are described: whether each is hidden.
    pub hidden_columns: Vec<bool>,
}

/// A row.
#[derive(Clone, Debug, Default)]
pub struct OdsRow {
    /// Its cells, from the left.
    pub cells: Vec<OdsCell>,
    /// Whether it is hidden.
    pub hidden: bool,
}

/// A cell.
#[derive(Clone, Debug, Default)]
pub enum OdsCell {
    /// Nothing.
    #[default]
    Blank,
    /// Text.
    Text(String),
    /// A number, and how it is shown.
    Number(f64, String),
    /// A day, as 2031-03-07.
    Date(String),
    /// Text that spans this many rows; the cells below are to be [`OdsCell::Covered`].
    Down(String, u32),
    /// Part of a cell above.
    Covered,
}

impl OdsSheet {
    /// A sheet of texts; what reads as a number is one.
    #[allow(dead_code, reason = "for whoever makes a plain sheet")]
    pub fn of(name: &str, rows: &[&[&str]]) -> OdsSheet {
        OdsSheet {
            hidden_columns: Vec::new(),
            name: name.to_owned(),
            rows: rows
                .iter()
                .map(|cells| OdsRow {
                    cells: cells.iter().map(|text| OdsCell::of(text)).collect(),
                    hidden: false,
                })
                .collect(),
            hidden: false,
        }
    }
}

impl OdsCell {
    /// Text, a number or nothing, by what is written.
    pub fn of(text: &str) -> OdsCell {
        match text.parse::<f64>() {
            _ if text.is_empty() => OdsCell::Blank,
            Ok(number) if number.to_string() == text => OdsCell::Number(number, text.to_owned()),
            _ => OdsCell::Text(text.to_owned()),
        }
    }

    fn xml(&self) -> String {
        match self {
            OdsCell::Blank => "<table:table-cell/>".to_owned(),
            OdsCell::Covered => "<table:covered-table-cell/>".to_owned(),
            OdsCell::Text(text) => format!(
                "<table:table-cell office:value-type=\"string\">{}</table:table-cell>",
                paragraphs(text)
            ),
            OdsCell::Number(value, shown) => {
                format!(
                    "<table:table-cell office:value-type=\"float\" office:value=\"{value}\">{}</table:table-cell>",
                    paragraphs(shown)
                )
            }
            OdsCell::Date(day) => {
                format!(
                    "<table:table-cell office:value-type=\"date\" office:date-value=\"{day}\">{}</table:table-cell>",
                    paragraphs(day)
                )
            }
            OdsCell::Down(text, rows) => format!(
                "<table:table-cell office:value-type=\"string\" table:number-rows-spanned=\"{rows}\" table:number-columns-spanned=\"1\">{}</table:table-cell>",
                paragraphs(text)
            ),
        }
    }
}

fn paragraphs(text: &str) -> String {
    text.lines()
        .map(|line| format!("<text:p>{}</text:p>", escaped(line)))
        .collect()
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}

/// The bytes of a spreadsheet; the same sheets give the same bytes.
pub fn ods(sheets: &[OdsSheet]) -> Vec<u8> {
    const MIME: &str = "application/vnd.oasis.opendocument.spreadsheet";
    const MANIFEST: &str = r#"<?xml version="1.0" encoding="UTF-8"?><manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.2"><manifest:file-entry manifest:full-path="/" manifest:version="1.2" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>"#;
    zip_stored(&[
        ("mimetype", MIME.as_bytes()),
        ("content.xml", content(sheets).as_bytes()),
        ("META-INF/manifest.xml", MANIFEST.as_bytes()),
    ])
}

fn content(sheets: &[OdsSheet]) -> String {
    let mut xml = String::from(
        r#"<?xml version="1.0" encoding="UTF-8"?><office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.2"><office:automatic-styles><style:style style:name="shown" style:family="table"><style:table-properties table:display="true"/></style:style><style:style style:name="hidden" style:family="table"><style:table-properties table:display="false"/></style:style></office:automatic-styles><office:body><office:spreadsheet>"#,
    );
    for sheet in sheets {
        let style = if sheet.hidden { "hidden" } else { "shown" };
        xml.push_str(&format!(
            "<table:table table:name=\"{}\" table:style-name=\"{style}\">",
            escaped(&sheet.name)
        ));
        for hidden in &sheet.hidden_columns {
            let visibility = match hidden {
                true => " table:visibility=\"collapse\"",
                false => "",
            };
            xml.push_str(&format!("<table:table-column{visibility}/>"));
        }
        xml.push_str("<table:table-column/>");
        for row in &sheet.rows {
            let visibility = if row.hidden {
                " table:visibility=\"collapse\""
            } else {
                ""
            };
            xml.push_str(&format!("<table:table-row{visibility}>"));
            xml.extend(row.cells.iter().map(OdsCell::xml));
            // A row has a cell in every spreadsheet program.
            if row.cells.is_empty() {
                xml.push_str("<table:table-cell/>");
            }
            xml.push_str("</table:table-row>");
        }
        xml.push_str("</table:table>");
    }
    xml.push_str("</office:spreadsheet></office:body></office:document-content>");
    xml
}

/// A ZIP archive of parts stored as they are (APPNOTE.TXT 4.3), dated 1 January 1980 so that bytes never differ.
pub fn zip_stored(parts: &[(&str, &[u8])]) -> Vec<u8> {
    let parts: Vec<ZipPart<'_>> = parts
        .iter()
        .map(|(name, bytes)| ZipPart {
            name,
            method: 0,
            bytes,
            size: bytes.len() as u32,
            crc: crc32(bytes),
        })
        .collect();
    zip(&parts)
}

/// A part of an archive as it is written, whatever is inside.
pub struct ZipPart<'a> {
    /// Its path in the archive.
    pub name: &'a str,
    /// 0 is stored, 8 is deflated.
    pub method: u16,
    /// As they stand in the archive.
    pub bytes: &'a [u8],
    /// The size that is claimed for what comes out.
    pub size: u32,
    /// The checksum that is claimed for it.
    pub crc: u32,
}

/// A ZIP archive of such parts.
pub fn zip(parts: &[ZipPart<'_>]) -> Vec<u8> {
    const NEW_YEAR_1980: u16 = 0x21;
    let mut out = Vec::new();
    let mut directory = Vec::new();
    for part in parts {
        let start = out.len() as u32;
        let mut head = Vec::new();
        for short in [20_u16, 0, part.method, 0, NEW_YEAR_1980] {
            head.extend(short.to_le_bytes());
        }
        for long in [part.crc, part.bytes.len() as u32, part.size] {
            head.extend(long.to_le_bytes());
        }
        head.extend((part.name.len() as u16).to_le_bytes());
        head.extend(0_u16.to_le_bytes());
        out.extend(b"PK\x03\x04");
        out.extend(&head);
        out.extend(part.name.as_bytes());
        out.extend(part.bytes);
        directory.extend(b"PK\x01\x02\x14\x00");
        directory.extend(&head);
        directory.extend([0; 10]);
        directory.extend(start.to_le_bytes());
        directory.extend(part.name.as_bytes());
    }
    let start = out.len() as u32;
    out.extend(&directory);
    out.extend(b"PK\x05\x06\0\0\0\0");
    for _ in 0..2 {
        out.extend((parts.len() as u16).to_le_bytes());
    }
    out.extend((directory.len() as u32).to_le_bytes());
    out.extend(start.to_le_bytes());
    out.extend([0; 2]);
    out
}

fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0_u32, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
            (crc >> 1) ^ (0xedb8_8320 & 0_u32.wrapping_sub(crc & 1))
        })
    })
}

#[test]
fn the_checksum_is_the_published_one() {
    // The check value of CRC-32 in the catalogue of parametrised CRC algorithms.
    assert_eq!(crc32(b"123456789"), 0xcbf4_3926);
}
