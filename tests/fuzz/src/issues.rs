//! What was issued, read back: the register of issues, bags, and the files that a sheet carries.

use crate::archive::{issued, sheet, verify};
use crate::files;
use crate::pieces;
use lopdf::{Document, Object, Stream, dictionary};
use std::fs;

/// The first piece as the living register, the second as a copy of it in the archive. Putting back what the archive has
/// must come to an end at once: a register that was mended needs no mending.
pub fn register(bytes: &[u8]) {
    let pieces = pieces::of(bytes);
    let archived = pieces.get(1).copied().unwrap_or_default();
    let Ok(rows) = issued::rows(archived) else {
        return;
    };
    let Ok(first) = issued::mended(pieces[0], rows.clone()) else {
        return;
    };
    if let Some(register) = first.register {
        let again = issued::mended(&register, rows).expect("what we wrote can be read");
        assert!(again.added.is_empty() && again.mended.is_empty() && again.register.is_none());
    }
    let grown = issued::with_rows(Some(pieces[0]), &[]).expect("could be read before");
    let known = issued::rows(pieces[0]).expect("could be read before");
    assert_eq!(
        issued::rows(&grown).expect("what we wrote can be read"),
        known
    );
}

/// The tag files of a bag in the order of their pieces; what follows is its payload.
pub const TAGS: [&str; 4] = [
    "bagit.txt",
    "manifest-sha256.txt",
    "tagmanifest-sha256.txt",
    "bag-info.txt",
];

/// A word that stands, in a manifest of an input, for the checksum of the file that its line names, so that a line can be
/// right whatever else was changed.
const RIGHT: &str = "SUM";

/// The pieces as a bag: it is checked to the end, and found sound only where each file of its payload is named.
pub fn bag(bytes: &[u8]) {
    let folder = tempfile::tempdir().expect("makes a folder");
    let bag = folder.path().join("2031-05-01");
    fs::create_dir_all(bag.join("data")).expect("makes a folder");
    let pieces = pieces::of(bytes);
    let payload: Vec<(String, &[u8])> = pieces
        .iter()
        .skip(TAGS.len())
        .zip(0..8)
        .map(|(piece, number)| (format!("data/{number}"), *piece))
        .collect();
    for (name, piece) in &payload {
        fs::write(bag.join(name), piece).expect("writes");
    }
    for (name, piece) in TAGS.into_iter().zip(&pieces) {
        let text = String::from_utf8_lossy(piece);
        let lines: Vec<String> = text.lines().map(|line| summed(line, &bag)).collect();
        let text = match text.contains(RIGHT) {
            true => (lines.join("\n") + "\n").into_bytes(),
            false => piece.to_vec(),
        };
        if !piece.is_empty() {
            fs::write(bag.join(name), text).expect("writes");
        }
    }
    if let Ok(found) = verify::verify(&bag)
        && found.faults.is_empty()
    {
        assert_eq!(found.sound, payload.len(), "a file that nobody vouches for");
    }
}

fn summed(line: &str, bag: &std::path::Path) -> String {
    let Some(name) = line.strip_prefix(RIGHT).map(str::trim) else {
        return line.to_owned();
    };
    let bytes = match files::stays_below(name) {
        true => fs::read(bag.join(name)).unwrap_or_default(),
        false => Vec::new(),
    };
    format!("{}  {name}", files::sha256_of(&bytes))
}

/// The pieces as a sheet that carries a case and, under the names that stand in their first lines, further files; a PDF is
/// taken as it is.
pub fn attachments(bytes: &[u8]) {
    let pdf = match bytes.starts_with(b"%PDF") {
        true => bytes.to_vec(),
        false => carrying(&pieces::of(bytes)),
    };
    let folder = tempfile::tempdir().expect("makes a folder");
    let path = folder.path().join("sheet.pdf");
    fs::write(&path, pdf).expect("writes");
    let _ = sheet::verify(&path);
}

fn carrying(pieces: &[&[u8]]) -> Vec<u8> {
    let mut pdf = Document::with_version("1.7");
    let mut listed = Vec::new();
    for (number, piece) in pieces.iter().enumerate() {
        let (name, content) = match number {
            0 => (&b"case.json"[..], *piece),
            _ => {
                let end = piece.iter().position(|byte| *byte == b'\n');
                let end = end.unwrap_or(piece.len());
                (&piece[..end], piece.get(end + 1..).unwrap_or_default())
            }
        };
        let stream = pdf.add_object(Stream::new(dictionary! {}, content.to_vec()));
        let file = dictionary! {
            "Type" => "Filespec",
            "UF" => Object::string_literal(name.to_vec()),
            "EF" => dictionary! { "F" => stream },
        };
        listed.push(Object::Reference(pdf.add_object(file)));
    }
    let catalog = pdf.add_object(dictionary! { "Type" => "Catalog", "AF" => listed });
    pdf.trailer.set("Root", catalog);
    let mut out = Vec::new();
    pdf.save_to(&mut out).expect("is written in memory");
    out
}
