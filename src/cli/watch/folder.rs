//! What stands in a programme folder at one moment, as far as a run depends on it.

use crate::files;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// The folders whose content a run depends on.
pub const WATCHED: [&str; 4] = ["inbox", "registers", "report-templates", "fonts"];

/// The settings.
const SETTINGS: &str = "programme.toml";

/// The folders without which there is nothing to run on: when one of them goes, it has gone away, not been emptied.
const NEEDED: [&str; 2] = ["inbox", "registers"];

/// Every file that a run depends on, by its path below the programme folder with `/`.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Snapshot {
    /// Size and time of each.
    pub files: BTreeMap<String, Stamp>,
    /// Files that somebody still has open or is still fetching, each with the file that says so.
    pub held: BTreeMap<String, String>,
    folders: BTreeSet<&'static str>,
}

/// What tells two states of a file apart without reading it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp {
    /// Bytes.
    pub length: u64,
    /// Last change, where the file system knows it.
    pub modified: Option<SystemTime>,
    /// When the system last put anything of it down, in seconds and their billionths, where it tells: a copying program can
    /// give a file the length and the day of the one before, and cannot set this.
    pub changed: Option<(i64, i64)>,
}

/// Lists the folder.
///
/// # Errors
/// Where it has gone away: the folder itself, its settings, or one of `known`'s folders that it cannot do without.
pub fn snapshot(root: &Path, known: &Snapshot) -> io::Result<Snapshot> {
    let mut snapshot = Snapshot::default();
    snapshot.files.insert(
        SETTINGS.to_owned(),
        stamp(&fs::metadata(root.join(SETTINGS))?),
    );
    let mut signs = Vec::new();
    for folder in WATCHED {
        let path = root.join(folder);
        match fs::metadata(&path) {
            Ok(_) => snapshot.folders.insert(folder),
            Err(error) if NEEDED.contains(&folder) && known.folders.contains(folder) => {
                return Err(error);
            }
            Err(_) => continue,
        };
        // An entry that cannot be looked at now can be at the next look; what a run makes of it the run will say.
        for entry in walkdir::WalkDir::new(&path)
            .min_depth(1)
            .into_iter()
            .flatten()
        {
            let (Ok(below), Ok(metadata)) = (entry.path().strip_prefix(root), entry.metadata())
            else {
                continue;
            };
            let name = below
                .iter()
                .map(|name| name.to_string_lossy())
                .collect::<Vec<_>>()
                .join("/");
            if let Some(file) = what_it_holds(&name) {
                signs.push((file, name));
            } else if metadata.is_file() && !is_litter(&name) {
                snapshot.files.insert(name, stamp(&metadata));
            }
        }
    }
    snapshot.held = signs
        .into_iter()
        .filter(|(file, _)| snapshot.files.contains_key(file))
        .collect();
    Ok(snapshot)
}

/// The folders that are there, each with what tells it from another of the same name.
pub fn folders(root: &Path) -> Vec<(PathBuf, u64)> {
    std::iter::once(root.to_owned())
        .chain(WATCHED.map(|folder| root.join(folder)))
        .filter_map(|path| {
            let metadata = fs::metadata(&path).ok()?;
            Some((path, identity(&metadata)))
        })
        .collect()
}

#[cfg(unix)]
fn identity(metadata: &fs::Metadata) -> u64 {
    use std::os::unix::fs::MetadataExt;
    metadata.ino()
}

#[cfg(not(unix))]
fn identity(metadata: &fs::Metadata) -> u64 {
    metadata
        .created()
        .ok()
        .and_then(|at| at.duration_since(SystemTime::UNIX_EPOCH).ok())
        .map_or(0, |age| age.as_secs())
}

fn stamp(metadata: &fs::Metadata) -> Stamp {
    Stamp {
        length: metadata.len(),
        modified: metadata.modified().ok(),
        changed: changed(metadata),
    }
}

#[cfg(unix)]
fn changed(metadata: &fs::Metadata) -> Option<(i64, i64)> {
    use std::os::unix::fs::MetadataExt;
    Some((metadata.ctime(), metadata.ctime_nsec()))
}

#[cfg(not(unix))]
fn changed(_metadata: &fs::Metadata) -> Option<(i64, i64)> {
    None
}

/// The file that a lock or a partial download stands for: `~$a.xlsx` and `.~lock.a.ods#` say that `a` is open in an
/// office program, `a.part` and `a.crdownload` that `a` is still on its way.
fn what_it_holds(path: &str) -> Option<String> {
    let (folder, name) = path.rsplit_once('/').unwrap_or(("", path));
    let of = |name: &str| match folder {
        "" => name.to_owned(),
        folder => format!("{folder}/{name}"),
    };
    if let Some(open) = name.strip_prefix("~$") {
        return Some(of(open));
    }
    if let Some(open) = name
        .strip_prefix(".~lock.")
        .and_then(|rest| rest.strip_suffix('#'))
    {
        return Some(of(open));
    }
    files::PARTIAL
        .iter()
        .find_map(|ending| name.strip_suffix(ending))
        .filter(|name| !name.is_empty())
        .map(of)
}

/// What no run reads.
fn is_litter(path: &str) -> bool {
    path.split('/').any(files::is_litter)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn programme() -> tempfile::TempDir {
        let root = tempfile::tempdir().expect("a folder");
        for file in [
            "programme.toml",
            "inbox/2031/a.csv",
            "registers/products.csv",
        ] {
            let path = root.path().join(file);
            fs::create_dir_all(path.parent().expect("has one")).expect("makes");
            fs::write(path, file).expect("writes");
        }
        root
    }

    fn names(snapshot: &Snapshot) -> Vec<&str> {
        snapshot.files.keys().map(String::as_str).collect()
    }

    #[test]
    fn only_what_a_run_depends_on_is_seen() {
        let root = programme();
        for file in [
            "out/summary.pdf",
            "notes.txt",
            "inbox/.DS_Store",
            "inbox/Thumbs.db",
            "inbox/b.csv.part",
        ] {
            let path = root.path().join(file);
            fs::create_dir_all(path.parent().expect("has one")).expect("makes");
            fs::write(path, file).expect("writes");
        }
        let seen = snapshot(root.path(), &Snapshot::default()).expect("is there");
        assert_eq!(
            names(&seen),
            [
                "inbox/2031/a.csv",
                "programme.toml",
                "registers/products.csv"
            ]
        );
        assert!(
            seen.held.is_empty(),
            "nobody waits for b.csv before it is there"
        );
    }

    #[test]
    fn a_file_that_is_open_or_on_its_way_is_held() {
        let root = programme();
        fs::write(root.path().join("inbox/2031/~$a.csv"), "").expect("writes");
        fs::write(root.path().join("registers/.~lock.products.csv#"), "").expect("writes");
        let seen = snapshot(root.path(), &Snapshot::default()).expect("is there");
        assert_eq!(
            seen.held.into_iter().collect::<Vec<_>>(),
            [
                (
                    "inbox/2031/a.csv".to_owned(),
                    "inbox/2031/~$a.csv".to_owned()
                ),
                (
                    "registers/products.csv".to_owned(),
                    "registers/.~lock.products.csv#".to_owned()
                ),
            ]
        );
        assert_eq!(
            what_it_holds("inbox/a.csv.crdownload"),
            Some("inbox/a.csv".to_owned())
        );
    }

    #[cfg(unix)]
    #[test]
    fn another_file_of_the_same_length_and_day_is_seen() {
        let root = programme();
        let path = root.path().join("inbox/2031/a.csv");
        let day = fs::metadata(&path).and_then(|about| about.modified());
        let before = snapshot(root.path(), &Snapshot::default()).expect("is there");
        // The clock of a file system may tick a hundred times a second only.
        std::thread::sleep(std::time::Duration::from_millis(30));
        fs::write(&path, "INBOX/2031/A.CSV").expect("writes");
        let written = fs::File::options().append(true).open(&path);
        let dated = written.and_then(|file| file.set_modified(day?));
        dated.expect("sets the day");
        let after = snapshot(root.path(), &before).expect("is there");
        let stamps = |seen: &Snapshot| seen.files["inbox/2031/a.csv"];
        assert_eq!(stamps(&before).length, stamps(&after).length);
        assert_eq!(stamps(&before).modified, stamps(&after).modified);
        assert_ne!(before, after);
    }

    #[test]
    fn an_inbox_that_vanishes_has_gone_away_and_is_not_empty() {
        let root = programme();
        let before = snapshot(root.path(), &Snapshot::default()).expect("is there");
        fs::rename(root.path().join("inbox"), root.path().join("elsewhere")).expect("moves");
        assert!(snapshot(root.path(), &before).is_err());
        fs::rename(root.path().join("elsewhere"), root.path().join("inbox")).expect("moves");
        assert_eq!(snapshot(root.path(), &before).expect("is back"), before);
        fs::remove_file(root.path().join("programme.toml")).expect("removes");
        assert!(snapshot(root.path(), &before).is_err());
    }
}
