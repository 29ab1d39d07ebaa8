//! Whether a sheet carries what it was made with: its case against its words, and the attached files against its case.
//!
//! A sheet bears no signature. Whoever changes all of it together is found out by the register of issues, which has the
//! checksum of what each revision says.

use crate::archive::verify::{Fault, FaultKind};
use crate::files;
use anyhow::{Context, Result, bail};
use lopdf::{Dictionary, Document, Object};
use serde_json::Value;
use std::collections::BTreeMap;
use std::path::Path;

/// The case's name in a sheet.
const CASE: &str = "case.json";

/// What a check of a sheet found.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SheetVerification {
    /// The sheet's number.
    pub sheet_number: String,
    /// SHA-256 of what the sheet says, as the register of issues has it.
    pub content_sha256: String,
    /// Attached files that are as they were.
    pub sound: usize,
    /// Everything that is not, by name.
    pub faults: Vec<Fault>,
}

/// Checks what a sheet carries; nothing is written.
///
/// # Errors
/// Where the file is no sheet that this program made.
pub fn verify(path: &Path) -> Result<SheetVerification> {
    let attached = attached(path)?;
    let Some(case) = attached.get(CASE) else {
        bail!(
            "{} carries no {CASE}: it is no results sheet, or one of an earlier version",
            path.display()
        );
    };
    let case: Value = serde_json::from_slice(case)
        .with_context(|| format!("the {CASE} of {} cannot be read", path.display()))?;
    let text = |name: &str| case[name].as_str().unwrap_or_default().to_owned();
    let mut found = SheetVerification {
        sheet_number: text("sheet_number"),
        content_sha256: text("content_sha256"),
        sound: 1,
        faults: Vec::new(),
    };
    let words = format!("{}.json", found.sheet_number);
    let mut known = vec![CASE.to_owned()];
    for carried in case["carried"].as_array().into_iter().flatten() {
        let name = carried["name"].as_str().unwrap_or_default();
        let is_same = attached.get(name).map(|bytes| {
            Some(files::sha256_of(bytes).as_str()) == carried["sha256"].as_str()
                && agrees(bytes, name, &case)
                && (name != words || content_sha256(bytes) == Some(found.content_sha256.clone()))
        });
        found.note(name, is_same);
        known.push(name.to_owned());
    }
    for name in attached.keys().filter(|name| !known.contains(name)) {
        found.faults.push(Fault {
            path: name.clone(),
            kind: FaultKind::Added,
        });
    }
    found.faults.sort();
    Ok(found)
}

impl SheetVerification {
    /// Counts an attached file: none where it is not there.
    fn note(&mut self, name: &str, is_as_it_was: Option<bool>) {
        let kind = match is_as_it_was {
            Some(true) => {
                self.sound += 1;
                return;
            }
            Some(false) => FaultKind::Changed,
            None => FaultKind::Missing,
        };
        self.faults.push(Fault {
            path: name.to_owned(),
            kind,
        });
    }
}

/// The checksum of what the sheet says, by its own data.
fn content_sha256(facts: &[u8]) -> Option<String> {
    let facts: Value = serde_json::from_slice(facts).ok()?;
    let content = serde_json::to_vec(facts.get("content")?).ok()?;
    Some(files::sha256_of(&content))
}

/// Whether the rows of an excerpt are readings of the case; of a whole file there are no rows to compare.
fn agrees(bytes: &[u8], name: &str, case: &Value) -> bool {
    if !name.ends_with(".excerpt.csv") {
        return true;
    }
    let packages = case["packages"].as_array().into_iter().flatten();
    let series = packages.flat_map(|package| [package, &package["other_series"]]);
    let readings: Vec<&Value> = series
        .flat_map(|series| series["readings"].as_array().into_iter().flatten())
        .collect();
    let mut reader = csv::Reader::from_reader(bytes);
    let Ok(headings) = reader.headers().cloned() else {
        return false;
    };
    let mut rows = reader.records();
    rows.all(|row| {
        let Ok(row) = row else { return false };
        let cell = |name: &str| {
            let column = headings.iter().position(|heading| heading == name);
            column
                .and_then(|column| row.get(column))
                .unwrap_or_default()
        };
        readings.iter().any(|reading| {
            let source = &reading["source"];
            source["file"] == cell("file")
                && source["sha256"] == cell("file_sha256")
                && source["row"].as_u64() == cell("row").parse().ok()
                && source["column"] == cell("column")
                && reading["reported"] == cell("reported").trim_start_matches('\'')
        })
    })
}

/// The files that a PDF carries, by name.
fn attached(path: &Path) -> Result<BTreeMap<String, Vec<u8>>> {
    let bytes = files::read(path)?;
    let pdf = Document::load_mem(&bytes)
        .with_context(|| format!("{} is no PDF that can be read", path.display()))?;
    let follow = |object: &Object| -> Option<Object> {
        match object {
            Object::Reference(id) => pdf.get_object(*id).ok().cloned(),
            other => Some(other.clone()),
        }
    };
    let get = |dict: &Dictionary, key: &[u8]| follow(dict.get(key).ok()?);
    let mut found = BTreeMap::new();
    let listed = pdf.catalog().ok().and_then(|catalog| get(catalog, b"AF"));
    for file in listed
        .iter()
        .filter_map(|one| one.as_array().ok())
        .flatten()
    {
        let named = || {
            let file = follow(file)?;
            let file = file.as_dict().ok()?;
            let name = text(&get(file, b"UF")?)?;
            let embedded = get(file, b"EF")?;
            let stream = get(embedded.as_dict().ok()?, b"F")?;
            let stream = stream.as_stream().ok()?;
            let content = stream
                .decompressed_content()
                .unwrap_or_else(|_| stream.content.clone());
            Some((name, content))
        };
        found.extend(named());
    }
    Ok(found)
}

/// A text string of a PDF: UTF-16 with its mark, else one letter a byte.
fn text(object: &Object) -> Option<String> {
    let bytes = object.as_str().ok()?;
    Some(match bytes {
        [0xfe, 0xff, rest @ ..] => {
            let units = rest
                .chunks_exact(2)
                .map(|pair| u16::from_be_bytes([pair[0], pair[1]]));
            String::from_utf16_lossy(&units.collect::<Vec<u16>>())
        }
        other => other.iter().map(|byte| char::from(*byte)).collect(),
    })
}
