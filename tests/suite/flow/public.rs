//! All that a reader can get out of the files that may be given to anyone.

use lopdf::{Document, Object};
use std::io::Read;
use std::path::Path;

/// The text of every file below a folder, by path: pages, attachments, metadata, cells; without spaces, in lower case.
pub fn texts(folder: &Path) -> Vec<(String, String)> {
    walkdir::WalkDir::new(folder)
        .sort_by_file_name()
        .into_iter()
        .map(|entry| entry.expect("can be listed").into_path())
        .filter(|path| path.is_file())
        .map(|path| {
            let bytes = std::fs::read(&path).expect("can be read");
            let below = path.strip_prefix(folder).expect("is below");
            let below = below.to_string_lossy().into_owned();
            let text = format!("{below} {}", text(&below, &bytes));
            (below, squeezed(&text))
        })
        .collect()
}

/// A text as it is compared: letters and figures alone, whatever stands between them.
pub fn squeezed(text: &str) -> String {
    let kept = text
        .chars()
        .filter(|c| !c.is_whitespace() && !matches!(c, '\u{200b}' | '\u{ad}' | '\u{feff}' | '\0'));
    kept.collect::<String>().to_lowercase()
}

/// The words of all pages of a document, with plain spaces.
pub fn pages(path: &Path) -> String {
    let pdf = Document::load(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let text = page_text(&pdf).replace(['\u{200b}', '\u{ad}'], "");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn text(path: &str, bytes: &[u8]) -> String {
    match path.rsplit('.').next() {
        Some("pdf") => pdf(bytes),
        Some("xlsx") => zipped(bytes),
        _ => String::from_utf8_lossy(bytes).into_owned(),
    }
}

fn page_text(pdf: &Document) -> String {
    let numbers: Vec<u32> = pdf.get_pages().into_keys().collect();
    pdf.extract_text(&numbers).expect("pages have text")
}

/// Pages, and every string and stream of a document: titles, alternative texts, metadata, attached files.
fn pdf(bytes: &[u8]) -> String {
    let pdf = Document::load_mem(bytes).expect("a PDF");
    let mut text = page_text(&pdf);
    for object in pdf.objects.values() {
        strings(object, &mut text);
    }
    text
}

fn strings(object: &Object, text: &mut String) {
    match object {
        Object::String(bytes, _) => {
            text.push(' ');
            text.push_str(&string(bytes));
        }
        Object::Array(items) => items.iter().for_each(|item| strings(item, text)),
        Object::Dictionary(fields) => fields.iter().for_each(|(_, field)| strings(field, text)),
        Object::Stream(stream) => {
            stream
                .dict
                .iter()
                .for_each(|(_, field)| strings(field, text));
            let content = stream
                .decompressed_content()
                .unwrap_or_else(|_| stream.content.clone());
            text.push(' ');
            text.push_str(&String::from_utf8_lossy(&content));
        }
        _ => {}
    }
}

fn string(bytes: &[u8]) -> String {
    match bytes {
        [0xfe, 0xff, rest @ ..] => {
            let units: Vec<u16> = rest
                .chunks_exact(2)
                .map(|pair| u16::from_be_bytes([pair[0], pair[1]]))
                .collect();
            String::from_utf16_lossy(&units)
        }
        other => String::from_utf8_lossy(other).into_owned(),
    }
}

pub fn zipped(bytes: &[u8]) -> String {
    let mut archive = zip::ZipArchive::new(std::io::Cursor::new(bytes)).expect("a workbook");
    let mut text = String::new();
    for index in 0..archive.len() {
        let mut part = archive.by_index(index).expect("a part");
        let mut content = Vec::new();
        part.read_to_end(&mut content).expect("can be read");
        text.push_str(&String::from_utf8_lossy(&content));
    }
    text
}
