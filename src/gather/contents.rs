//! Files by content: the same bytes under two names count once.

use crate::files;
use crate::gather::books::{Bound, Unreadable};
use crate::gather::inbox::{self, InboxFile};
use crate::gather::lab_file;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use std::collections::BTreeMap;
use std::io::ErrorKind;

/// Files by content.
#[derive(Debug, Default)]
pub struct Contents {
    /// The files to read, each with its SHA-256; of those with the same bytes the first by name.
    pub distinct: Vec<(InboxFile, String)>,
    /// Every path, with the one under which its content is read.
    pub paths: BTreeMap<String, String>,
}

/// Hashes every file; of files with the same bytes the first counts. Files that cannot be opened are told and dropped.
pub fn compare(listed: Vec<InboxFile>, problems: &mut Problems) -> Contents {
    let mut first_with: BTreeMap<String, String> = BTreeMap::new();
    let mut contents = Contents::default();
    for file in listed {
        if inbox::is_too_large(&file) {
            lab_file::unreadable(&file.name, &Unreadable::beyond(Bound::File), problems);
            continue;
        }
        let bytes = match files::read(&file.path) {
            Ok(bytes) => bytes,
            Err(error) => {
                lab_file::unreadable(&file.name, &cannot_open(&error), problems);
                continue;
            }
        };
        let sha256 = files::sha256_of(&bytes);
        let is_blank = bytes.iter().all(u8::is_ascii_whitespace);
        let first = match first_with.get(&sha256) {
            // Files without anything are no copies of one another: each is told by its own name.
            Some(first) if !is_blank => first.clone(),
            _ => file.name.clone(),
        };
        contents.paths.insert(file.name.clone(), first.clone());
        if first == file.name {
            first_with.insert(sha256.clone(), first);
            contents.distinct.push((file, sha256));
        } else {
            same_file(&file, &first, problems);
        }
    }
    contents
}

/// Why a file cannot be opened, without the words of the operating system.
pub fn cannot_open(error: &anyhow::Error) -> Unreadable {
    let kind = error
        .root_cause()
        .downcast_ref::<std::io::Error>()
        .map(std::io::Error::kind);
    match kind {
        Some(ErrorKind::NotFound) => Unreadable::new(
            "the file is no longer there",
            "Run again. If it should be there, copy it into the inbox again.",
        ),
        Some(ErrorKind::PermissionDenied) => Unreadable::new(
            "the file cannot be opened: you are not permitted to read it",
            "Change its permissions, or copy it anew, then run again.",
        ),
        _ => Unreadable::new(
            "the file cannot be opened",
            "Close it in other programs and wait until it is copied whole, then run again.",
        ),
    }
}

fn same_file(file: &InboxFile, first: &str, problems: &mut Problems) {
    problems.add(
        Code::SameFile,
        Place::file(file.name.clone()),
        format!("this file has the same content as {first}; it counts once"),
        "",
    );
}
