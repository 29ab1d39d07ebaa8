//! What the lab sent: every file below inbox/, in a fixed order; what is no lab file is passed over.

use crate::config::Config;
use crate::files;
use crate::gather::books::LARGEST_FILE;
use crate::model::letters::commands;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::said::Said;
use crate::words::say;
use anyhow::{Result, bail};
use std::collections::{BTreeMap, BTreeSet};
use std::ffi::OsStr;
use std::path::{Path, PathBuf};
use unicode_normalization::UnicodeNormalization;
use walkdir::WalkDir;

/// A file that may hold results.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InboxFile {
    /// Path below the programme folder as it is shown, with `/`: `inbox/2031/march.csv`.
    pub name: String,
    /// Where to open it: its own name, byte for byte.
    pub path: PathBuf,
    /// Bytes.
    pub size: u64,
}

/// What stands in the inbox.
#[derive(Clone, Debug, Default)]
pub struct Inbox {
    /// Files that may hold results, by name.
    pub lab_files: Vec<InboxFile>,
    /// Files of other kinds by the path that is shown, with the path to open: certificates, photographs.
    pub others: BTreeMap<String, PathBuf>,
}

/// The endings of lab files; what is inside is told by content.
const ENDINGS: [&str; 8] = ["csv", "tsv", "txt", "xlsx", "xlsm", "xls", "xlsb", "ods"];

/// Lists the files.
///
/// # Errors
/// Where the inbox is not there or cannot be listed at all.
pub fn list(config: &Config, problems: &mut Problems) -> Result<Inbox> {
    let inbox = config.inbox();
    if !inbox.is_dir() {
        bail!(
            "{} has no folder “inbox”: make one and put the lab's files into it",
            config.root.display()
        );
    }
    std::fs::read_dir(&inbox).map_err(|error| files::refused("list", &inbox, &error))?;
    let mut seen = Vec::new();
    let walk = WalkDir::new(&inbox).follow_links(false).min_depth(1);
    for entry in walk
        .into_iter()
        .filter_entry(|entry| !files::is_litter(&entry.file_name().to_string_lossy()))
    {
        match entry {
            Ok(entry) if entry.file_type().is_dir() => {}
            Ok(entry) => seen.push(entry),
            Err(error) => {
                let path = error.path().unwrap_or(&inbox);
                problems.add(
                    Code::UnreadableFile,
                    Place::file(name_below(&config.root, path)),
                    say::found_unopened(),
                    say::do_permit(),
                );
            }
        }
    }
    seen.sort_by(|a, b| a.path().cmp(b.path()));
    let mut listed = Inbox::default();
    let paths: Vec<&Path> = seen.iter().map(walkdir::DirEntry::path).collect();
    for (entry, name) in seen.iter().zip(names(&config.root, &paths)) {
        look_at(entry, name, &config.root, &mut listed, problems);
    }
    listed.lab_files.sort_by(|a, b| a.name.cmp(&b.name));
    Ok(listed)
}

/// The names under which files are shown: no two are alike, though their own names may differ in nothing that is shown. The
/// one whose own name is the shown one keeps it; the others show their letters beyond ASCII as %XX.
fn names(root: &Path, paths: &[&Path]) -> Vec<String> {
    let mut names: Vec<String> = paths.iter().map(|path| name_below(root, path)).collect();
    let mut times: BTreeMap<&str, usize> = BTreeMap::new();
    for name in &names {
        *times.entry(name).or_default() += 1;
    }
    let shared: BTreeSet<String> = times
        .into_iter()
        .filter(|(_, times)| *times > 1)
        .map(|(name, _)| name.to_owned())
        .collect();
    let mut taken = BTreeSet::new();
    for (name, path) in names.iter_mut().zip(paths) {
        let own = path.strip_prefix(root).unwrap_or(path);
        if shared.contains(name) && own.to_str() != Some(name) {
            *name = parts(own, |part| escaped(part, true));
            while shared.contains(name) || taken.contains(name) {
                name.push('~');
            }
            taken.insert(name.clone());
        }
    }
    names
}

fn look_at(
    entry: &walkdir::DirEntry,
    name: String,
    root: &Path,
    listed: &mut Inbox,
    problems: &mut Problems,
) {
    let mut passed_over = |found: Said, to_do: Said| {
        problems.add(Code::PassedOver, Place::file(name.clone()), found, to_do)
    };
    let kind = entry.file_type();
    if kind.is_symlink() {
        // A link to a file is that file; a link to a folder could lead in a circle, or out of the programme.
        match std::fs::metadata(entry.path()) {
            Ok(target) if target.is_file() && files::leads_out(root, entry.path()) => {
                passed_over(say::found_link("outward"), say::do_copy_itself("file"));
                return;
            }
            Ok(target) if target.is_file() => {}
            Ok(target) if target.is_dir() => {
                passed_over(say::found_link("folder"), say::do_copy_itself("folder"));
                return;
            }
            Ok(_) => {
                passed_over(say::found_no_file(), say::do_lab_files());
                return;
            }
            Err(_) => {
                passed_over(say::found_link("nothing"), say::do_copy_itself("nothing"));
                return;
            }
        }
    } else if !kind.is_file() {
        passed_over(say::found_no_file(), say::do_lab_files());
        return;
    }
    if !has_lab_ending(entry.path()) {
        let endings = ENDINGS.map(|ending| format!(".{ending}")).join(", ");
        passed_over(
            say::found_other_ending(endings),
            say::do_ask_for_spreadsheet(),
        );
        listed.others.insert(name, entry.path().to_owned());
        return;
    }
    let size = std::fs::metadata(entry.path())
        .map(|meta| meta.len())
        .unwrap_or(0);
    listed.lab_files.push(InboxFile {
        name,
        path: entry.path().to_owned(),
        size,
    });
}

/// Whether a file is a lab file by its name.
pub fn has_lab_ending(path: &Path) -> bool {
    path.extension()
        .and_then(|ending| ending.to_str())
        .is_some_and(|ending| ENDINGS.contains(&ending.to_lowercase().as_str()))
}

/// A path below the programme folder, with `/`, in the one form that Unicode composes, and with bytes that are no UTF-8, and
/// letters that command what shows them, as %XX.
fn name_below(root: &Path, path: &Path) -> String {
    let below = path.strip_prefix(root).unwrap_or(path);
    parts(below, shown_name)
}

/// A file's name as it is shown: as Unicode composes it, with bytes that are no UTF-8, and letters that command, as %XX.
pub fn shown_name(name: &OsStr) -> String {
    escaped(name, false).nfc().collect()
}

fn parts(path: &Path, shown: impl Fn(&OsStr) -> String) -> String {
    let parts: Vec<String> = path.iter().map(shown).collect();
    parts.join("/")
}

/// A name with each byte as %XX that is no UTF-8 or of a letter that commands; with `all`, each beyond ASCII.
fn escaped(name: &OsStr, all: bool) -> String {
    use std::fmt::Write;
    let mut shown = String::new();
    let escape = |bytes: &[u8], shown: &mut String| {
        for byte in bytes {
            write!(shown, "%{byte:02X}").expect("a text takes all");
        }
    };
    for chunk in name.as_encoded_bytes().utf8_chunks() {
        for c in chunk.valid().chars() {
            if (all && !c.is_ascii()) || c.is_control() || commands(c) {
                escape(c.encode_utf8(&mut [0; 4]).as_bytes(), &mut shown);
            } else {
                shown.push(c);
            }
        }
        escape(chunk.invalid(), &mut shown);
    }
    shown
}

/// Whether a file is beyond what is read.
pub fn is_too_large(file: &InboxFile) -> bool {
    file.size > LARGEST_FILE
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_programs_leave_behind_is_no_lab_file() {
        for name in [
            "~$march.xlsx",
            ".DS_Store",
            ".~lock.march.ods#",
            "march.xlsx.part",
            "Thumbs.db",
            "._march.csv",
        ] {
            assert!(files::is_litter(name), "{name}");
        }
        assert!(!files::is_litter("march.csv"));
        assert!(has_lab_ending(Path::new("a/März.XLSX")));
        assert!(!has_lab_ending(Path::new("a/report.pdf")));
    }
}
