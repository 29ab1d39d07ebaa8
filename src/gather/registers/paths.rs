//! Paths of lab files as people write them in a register.

use crate::gather::tables::layouts;
use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use unicode_normalization::UnicodeNormalization;

/// The files of the inbox that a register can name.
#[derive(Clone, Copy)]
pub struct LabFiles<'a> {
    /// Every lab file, with the path under which its content is read.
    pub lab_files: &'a BTreeMap<String, String>,
    /// Every other file that is shown, with the path to open.
    pub others: &'a BTreeMap<String, PathBuf>,
}

impl<'a> LabFiles<'a> {
    /// The lab file of this path, with or without `inbox/`, with either kind of slash: the path under which it is read.
    pub fn find(self, written: &str) -> Option<&'a str> {
        let [full, below] = spellings(written);
        let found = self
            .lab_files
            .get(&full)
            .or_else(|| self.lab_files.get(&below));
        found.map(String::as_str)
    }

    /// The lab files that a path or a pattern names, each by the path under which it is read. A path without `*` and `?` is
    /// one file; capital letters make no difference.
    pub fn matching(self, pattern: &str) -> Vec<&'a str> {
        if let Some(found) = self.find(pattern) {
            return vec![found];
        }
        let full = full(pattern);
        let fits = |path: &str| {
            if full.contains(['*', '?']) {
                layouts::path_fits(&full, path)
            } else {
                full.to_lowercase() == path.to_lowercase()
            }
        };
        let all = self.lab_files.iter().filter(|(path, _)| fits(path));
        let found: BTreeSet<&str> = all.map(|(_, read)| read.as_str()).collect();
        found.into_iter().collect()
    }

    /// Any file of the inbox, as it is shown.
    pub fn any(self, written: &str) -> Option<String> {
        let is_there =
            |path: &String| self.lab_files.contains_key(path) || self.others.contains_key(path);
        spellings(written).into_iter().find(is_there)
    }
}

/// A path in full; and with `inbox/` before it in any case, since a folder in the inbox may have that name too.
fn spellings(written: &str) -> [String; 2] {
    [full(written), format!("inbox/{}", below(written))]
}

/// A path below the programme folder: `inbox/…`, with `/`, composed.
pub fn full(written: &str) -> String {
    let path = below(written);
    if path.starts_with("inbox/") {
        path
    } else {
        format!("inbox/{path}")
    }
}

fn below(written: &str) -> String {
    let path: String = written.trim().replace('\\', "/").nfc().collect();
    let path = path.trim_start_matches("./").trim_start_matches('/');
    path.to_owned()
}
