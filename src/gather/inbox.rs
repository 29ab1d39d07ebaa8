//! What the lab sent: every file below inbox/, in a fixed order; what is no lab file is passed over.

use crate::config::Config;
use crate::gather::books::LARGEST_FILE;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use anyhow::{Context, Result, bail};
use std::path::{Path, PathBuf};
use unicode_normalization::UnicodeNormalization;
use walkdir::WalkDir;

/// A file that may hold results.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InboxFile {
    /// Path below the programme folder, with `/`: `inbox/2031/march.csv`.
    pub name: String,
    /// Where to open it.
    pub path: PathBuf,
    /// Bytes.
    pub size: u64,
}

/// The endings of lab files; what is inside is told by content.
const ENDINGS: [&str; 8] = ["csv", "tsv", "txt", "xlsx", "xlsm", "xls", "xlsb", "ods"];

/// Lists the lab files, by name.
///
/// # Errors
/// Where the inbox is not there or cannot be listed at all.
pub fn list(config: &Config, problems: &mut Problems) -> Result<Vec<InboxFile>> {
    let inbox = config.inbox();
    if !inbox.is_dir() {
        bail!(
            "{} has no folder “inbox”: make one and put the lab's files into it",
            config.root.display()
        );
    }
    std::fs::read_dir(&inbox).with_context(|| format!("cannot list {}", inbox.display()))?;
    let mut files = Vec::new();
    let walk = WalkDir::new(&inbox).follow_links(false).min_depth(1);
    for entry in walk
        .into_iter()
        .filter_entry(|entry| !is_in_silence(&entry.file_name().to_string_lossy()))
    {
        match entry {
            Ok(entry) => files.extend(look_at(&entry, config, problems)),
            Err(error) => {
                let path = error.path().unwrap_or(&inbox);
                problems.add(
                    Code::UnreadableFile,
                    Place::file(name_below(&config.root, path)),
                    "the folder or file cannot be opened".to_owned(),
                    "Look at its permissions, then run again.",
                );
            }
        }
    }
    files.sort_by(|a, b| a.name.cmp(&b.name));
    Ok(files)
}

fn look_at(
    entry: &walkdir::DirEntry,
    config: &Config,
    problems: &mut Problems,
) -> Option<InboxFile> {
    let name = name_below(&config.root, entry.path());
    let mut passed_over = |why: &str, hint: &str| {
        problems.add(Code::PassedOver, Place::file(name.clone()), why, hint)
    };
    let kind = entry.file_type();
    if kind.is_dir() {
        return None;
    }
    if kind.is_symlink() {
        // A link to a file is that file; a link to a folder could lead in a circle, or out of the programme.
        match std::fs::metadata(entry.path()) {
            Ok(target) if target.is_file() => {}
            Ok(_) => {
                passed_over(
                    "a link to a folder is not followed",
                    "Copy the files themselves into the inbox.",
                );
                return None;
            }
            Err(_) => {
                passed_over(
                    "a link that leads nowhere, or in a circle",
                    "Copy the file itself into the inbox.",
                );
                return None;
            }
        }
    } else if !kind.is_file() {
        passed_over(
            "this is no ordinary file",
            "Lab files are spreadsheets or delimited text.",
        );
        return None;
    }
    if !has_lab_ending(entry.path()) {
        passed_over(
            "a file of this kind holds no table that is read (lab files end in .csv, .tsv, .txt, .xlsx, .xlsm, .xls, .xlsb or .ods)",
            "If it holds results, ask the lab for them as a spreadsheet.",
        );
        return None;
    }
    let size = std::fs::metadata(entry.path())
        .map(|meta| meta.len())
        .unwrap_or(0);
    Some(InboxFile {
        name,
        path: entry.path().to_owned(),
        size,
    })
}

/// Lock files, half-finished downloads and what operating systems leave behind.
fn is_in_silence(name: &str) -> bool {
    const ENDINGS: [&str; 6] = [
        ".tmp",
        ".part",
        ".crdownload",
        ".download",
        ".icloud",
        ".partial",
    ];
    let lower = name.to_lowercase();
    name.starts_with("~$")
        || name.starts_with('.')
        || ENDINGS.iter().any(|ending| lower.ends_with(ending))
        || matches!(
            lower.as_str(),
            "thumbs.db" | "desktop.ini" | "ehthumbs.db" | "icon\r" | "__macosx"
        )
}

fn has_lab_ending(path: &Path) -> bool {
    path.extension()
        .and_then(|ending| ending.to_str())
        .is_some_and(|ending| ENDINGS.contains(&ending.to_lowercase().as_str()))
}

/// A path below the programme folder, with `/`, in the one form that Unicode composes.
fn name_below(root: &Path, path: &Path) -> String {
    let below = path.strip_prefix(root).unwrap_or(path);
    let parts: Vec<String> = below
        .components()
        .map(|part| part.as_os_str().to_string_lossy().nfc().collect())
        .collect();
    parts.join("/")
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
            assert!(is_in_silence(name), "{name}");
        }
        assert!(!is_in_silence("march.csv"));
        assert!(has_lab_ending(Path::new("a/März.XLSX")));
        assert!(!has_lab_ending(Path::new("a/report.pdf")));
    }
}
