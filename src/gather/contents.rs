//! Files by content: the same bytes under two names count once.

use crate::files;
use crate::gather::books::{Bound, Unreadable};
use crate::gather::inbox::{self, InboxFile};
use crate::gather::unreadable;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::words::say;
use std::collections::BTreeMap;

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
            unreadable::tell(&file.name, &Unreadable::beyond(Bound::File), problems);
            continue;
        }
        let bytes = match files::read(&file.path) {
            Ok(bytes) => bytes,
            Err(error) => {
                unreadable::tell(&file.name, &unreadable::cannot_open(&error), problems);
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

fn same_file(file: &InboxFile, first: &str, problems: &mut Problems) {
    problems.add(
        Code::SameFile,
        Place::file(file.name.clone()),
        say::found_same_file(first),
        None,
    );
}
