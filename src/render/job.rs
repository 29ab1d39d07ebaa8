//! One document to be made: its template, what the template reads, and what decides its bytes.

use crate::files::hex;
use chrono::NaiveDate;
use sha2::{Digest, Sha256};
use std::sync::Arc;

/// One document to be made: everything that decides its bytes, apart from the engine.
#[derive(Clone, Debug)]
pub struct Job {
    /// Path below the folder of outputs, with `/`: `sheets/FH-01--1.pdf`.
    pub path: String,
    /// File name of the template: `sheet.typ`.
    pub template: &'static str,
    /// Whether it is tried on one page first: without counting pages and without what lets columns break, which costs less.
    pub one_page: bool,
    /// What identifies the document for good; the PDF's identifier is derived from it.
    pub ident: String,
    /// The PDF's own date: PDF/A wants one.
    pub date: NaiveDate,
    /// The facts as JSON, which the template reads as `facts.json`.
    pub facts: Vec<u8>,
    /// Charts and attachments. Names come from a fixed set (`chart-1.svg`, `source-2`): the typesetter remembers each for good.
    pub files: Vec<JobFile>,
}

/// A file that a template may read beside its facts.
#[derive(Clone, Debug)]
pub struct JobFile {
    /// The name by which the template reads it.
    pub name: String,
    /// What decides its content, where that is known before it is made: then it need not be made to see that nothing
    /// has changed.
    pub made_from: Option<String>,
    /// Its content, which what typesets it shares.
    pub bytes: Shared,
}

/// Bytes that a job and what typesets it hold together: an attached file may have many megabytes.
#[derive(Clone, Debug, Default)]
pub struct Shared(Arc<Vec<u8>>);

impl From<Vec<u8>> for Shared {
    fn from(bytes: Vec<u8>) -> Shared {
        Shared(Arc::new(bytes))
    }
}

impl AsRef<[u8]> for Shared {
    fn as_ref(&self) -> &[u8] {
        &self.0
    }
}

impl JobFile {
    /// A file whose content is there.
    pub fn made(name: impl Into<String>, bytes: impl Into<Vec<u8>>) -> JobFile {
        JobFile {
            name: name.into(),
            made_from: None,
            bytes: bytes.into().into(),
        }
    }

    /// Drawings, named `chart-1.svg` and so on.
    pub fn charts<T: Into<Vec<u8>>>(drawings: impl IntoIterator<Item = T>) -> Vec<JobFile> {
        let numbered = drawings.into_iter().enumerate();
        let file = |(index, svg)| JobFile::made(chart_name(index + 1), svg);
        numbered.map(file).collect()
    }
}

/// The name by which a template reads its n-th chart, from 1.
pub fn chart_name(number: usize) -> String {
    format!("chart-{number}.svg")
}

impl Job {
    /// SHA-256 over everything that decides the document's bytes: the same key, the same PDF.
    /// `fingerprint` is that of the templates and fonts ([`crate::render::Engine::fingerprint`]).
    pub fn content_key(&self, fingerprint: &str) -> String {
        let mut hash = Sha256::new();
        let mut part = |bytes: &[u8]| {
            // Lengths keep parts apart: "ab" + "c" is not "a" + "bc".
            hash.update((bytes.len() as u64).to_le_bytes());
            hash.update(bytes);
        };
        part(fingerprint.as_bytes());
        let date = self.date.to_string();
        for text in [&self.path, self.template, &self.ident, &date] {
            part(text.as_bytes());
        }
        part(&self.facts);
        for file in &self.files {
            let made_from = file.made_from.as_ref().map(String::as_bytes);
            part(file.name.as_bytes());
            part(made_from.unwrap_or(file.bytes.as_ref()));
        }
        hex(&hash.finalize())
    }
}
