//! Checks a bag against its own manifests (RFC 8493, section 3): what has changed, what is missing, what was added.

use crate::archive::bag::decode_path;
use crate::files;
use anyhow::{Result, bail};
use std::collections::BTreeMap;
use std::path::Path;

/// What a check of a bag found.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Verification {
    /// Files of the payload that are as their manifest says.
    pub sound: usize,
    /// Everything that is not, by path.
    pub faults: Vec<Fault>,
}

/// One way in which a bag is not what it was.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fault {
    /// Path below the bag, with `/`.
    pub path: String,
    /// What is wrong with it.
    pub kind: FaultKind,
}

/// What is wrong with a file of a bag.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FaultKind {
    /// Its content is not what the manifest says.
    Changed,
    /// The manifest names it and it is not there.
    Missing,
    /// It is there and no manifest names it.
    Added,
    /// It cannot be used, for this reason.
    Unusable(String),
}

impl FaultKind {
    /// The word on the screen and in the data.
    pub fn word(&self) -> &'static str {
        match self {
            FaultKind::Changed => "changed",
            FaultKind::Missing => "missing",
            FaultKind::Added => "added",
            FaultKind::Unusable(_) => "unusable",
        }
    }
}

const MANIFEST: &str = "manifest-sha256.txt";
const TAG_MANIFEST: &str = "tagmanifest-sha256.txt";
const DECLARATION: &str = "bagit.txt";

/// Checks every file of a bag; nothing is written.
///
/// # Errors
/// Where the folder is no bag at all or cannot be listed.
pub fn verify(bag: &Path) -> Result<Verification> {
    if !bag.is_dir() {
        bail!("there is no folder {}", bag.display());
    }
    if ![MANIFEST, TAG_MANIFEST, DECLARATION]
        .iter()
        .any(|name| bag.join(name).exists())
    {
        bail!(
            "{} is not an archive that `issue` wrote: it has no {MANIFEST}. Name one of the dated folders in archive/",
            bag.display()
        );
    }
    let mut there: BTreeMap<String, bool> = files::list(bag)?
        .into_iter()
        .map(|listed| (listed.path, listed.is_plain_file))
        .collect();
    let mut found = Verification::default();
    check_declaration(bag, &mut found);
    for name in [TAG_MANIFEST, MANIFEST] {
        check_manifest(bag, name, &mut there, &mut found)?;
    }
    // Nothing can vouch for the file that vouches for all others.
    there.remove(TAG_MANIFEST);
    let added = there.into_keys().map(|path| Fault {
        path,
        kind: FaultKind::Added,
    });
    found.faults.extend(added);
    found.faults.sort();
    found.faults.dedup();
    Ok(found)
}

/// Whether these bytes, of a file in a bag, are those that its manifest names, and the manifest is that of its own manifest.
pub fn is_as_archived(bag: &Path, path: &Path, bytes: &[u8]) -> bool {
    let Ok(below) = path.strip_prefix(bag) else {
        return false;
    };
    let names: Vec<_> = below.iter().map(|name| name.to_string_lossy()).collect();
    names_with(bag, MANIFEST, &names.join("/"), bytes)
        && files::read(&bag.join(MANIFEST))
            .is_ok_and(|manifest| names_with(bag, TAG_MANIFEST, MANIFEST, &manifest))
}

fn names_with(bag: &Path, manifest: &str, path: &str, bytes: &[u8]) -> bool {
    let text = files::read(&bag.join(manifest)).unwrap_or_default();
    let text = String::from_utf8_lossy(&text);
    let sha256 = files::sha256_of(bytes);
    let mut lines = text.lines().filter_map(read_line);
    lines.any(|(stated, named)| named == path && stated.eq_ignore_ascii_case(&sha256))
}

/// The declaration must read as RFC 8493 has it, whatever its checksum says.
fn check_declaration(bag: &Path, found: &mut Verification) {
    let text = files::read(&bag.join(DECLARATION)).unwrap_or_default();
    let text = String::from_utf8_lossy(&text);
    if bag.join(DECLARATION).exists()
        && !(text.starts_with("BagIt-Version: ")
            && text.contains("\nTag-File-Character-Encoding: UTF-8"))
    {
        found.unusable(DECLARATION, "it does not say `BagIt-Version` and `UTF-8`");
    }
}

fn check_manifest(
    bag: &Path,
    name: &str,
    there: &mut BTreeMap<String, bool>,
    found: &mut Verification,
) -> Result<()> {
    let Some(bytes) = files::read_if_there(&bag.join(name))? else {
        found.add(name, FaultKind::Missing);
        return Ok(());
    };
    let Ok(text) = String::from_utf8(bytes) else {
        found.unusable(name, "it is not UTF-8 text");
        return Ok(());
    };
    for (index, line) in text.lines().enumerate() {
        let Some((sha256, path)) = read_line(line) else {
            found.unusable(
                name,
                &format!("line {} is not a checksum and a path", index + 1),
            );
            continue;
        };
        if !files::stays_below(&path) || (name == MANIFEST && !path.starts_with("data/")) {
            let line = index + 1;
            found.unusable(
                name,
                &format!("line {line} names a file outside the archive: `{path}`"),
            );
            continue;
        }
        match there.remove(&path) {
            None => found.add(&path, FaultKind::Missing),
            Some(false) => found.unusable(&path, "it is a link, not a file"),
            Some(true) => match files::sha256(&bag.join(&path)) {
                Ok((actual, _)) if actual.eq_ignore_ascii_case(&sha256) => {
                    found.sound += usize::from(name == MANIFEST);
                }
                Ok(_) => found.add(&path, FaultKind::Changed),
                Err(error) => found.unusable(&path, &format!("{error:#}")),
            },
        }
    }
    Ok(())
}

/// A checksum, white space (with an asterisk where a tool wrote one for binary files), and a path.
fn read_line(line: &str) -> Option<(String, String)> {
    let (sha256, rest) = line.split_once([' ', '\t'])?;
    let path = rest.trim_start_matches([' ', '\t']);
    let path = path.strip_prefix('*').unwrap_or(path);
    let is_checksum = sha256.len() == 64 && sha256.bytes().all(|byte| byte.is_ascii_hexdigit());
    (is_checksum && !path.is_empty()).then(|| (sha256.to_owned(), decode_path(path)))
}

impl Verification {
    fn add(&mut self, path: &str, kind: FaultKind) {
        self.faults.push(Fault {
            path: path.to_owned(),
            kind,
        });
    }

    fn unusable(&mut self, path: &str, why: &str) {
        self.add(path, FaultKind::Unusable(why.to_owned()));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::archive::bag::Bag;
    use chrono::NaiveDate;
    use std::fs;
    use std::path::PathBuf;

    /// A sound bag in a folder of its own.
    fn sample() -> (tempfile::TempDir, PathBuf) {
        let archive = tempfile::tempdir().expect("a folder");
        let mut bag = Bag::start(archive.path()).expect("starts");
        for path in [
            "out/sheets/FH-01--1.pdf",
            "inbox/märz.csv",
            "registers/products.csv",
        ] {
            bag.add(path, path.as_bytes()).expect("adds");
        }
        let day = NaiveDate::from_ymd_opt(2031, 4, 22).expect("a date");
        let bag = bag.publish(day, &[]).expect("publishes");
        (archive, bag)
    }

    fn faults(bag: &Path) -> Vec<(String, &'static str)> {
        let found = verify(bag).expect("verifies");
        found
            .faults
            .into_iter()
            .map(|fault| (fault.path, fault.kind.word()))
            .collect()
    }

    #[test]
    fn each_change_is_named() {
        let (_archive, bag) = sample();
        assert_eq!(verify(&bag).expect("verifies").sound, 3);
        fs::write(bag.join("data/inbox/märz.csv"), "another").expect("writes");
        fs::remove_file(bag.join("data/registers/products.csv")).expect("removes");
        fs::write(bag.join("data/out/new.pdf"), "new").expect("writes");
        fs::write(bag.join("note.txt"), "hello").expect("writes");
        assert_eq!(
            faults(&bag),
            [
                ("data/inbox/märz.csv".to_owned(), "changed"),
                ("data/out/new.pdf".to_owned(), "added"),
                ("data/registers/products.csv".to_owned(), "missing"),
                ("note.txt".to_owned(), "added"),
            ]
        );
    }

    #[test]
    fn a_change_of_the_tag_files_is_named_too() {
        let (_archive, bag) = sample();
        let manifest = fs::read_to_string(bag.join(MANIFEST)).expect("reads");
        let first = manifest.lines().next().expect("has lines").to_owned();
        fs::write(bag.join(MANIFEST), manifest.replace(&first, "")).expect("writes");
        fs::remove_file(bag.join("bag-info.txt")).expect("removes");
        let found = faults(&bag);
        assert!(
            found.contains(&(MANIFEST.to_owned(), "changed")),
            "{found:?}"
        );
        assert!(
            found.contains(&("data/inbox/märz.csv".to_owned(), "added")),
            "{found:?}"
        );
        assert!(
            found.contains(&("bag-info.txt".to_owned(), "missing")),
            "{found:?}"
        );
        fs::remove_file(bag.join(TAG_MANIFEST)).expect("removes");
        assert!(faults(&bag).contains(&(TAG_MANIFEST.to_owned(), "missing")));
    }

    #[test]
    fn a_manifest_cannot_send_the_check_elsewhere() {
        let (archive, bag) = sample();
        fs::write(archive.path().join("secret"), "x").expect("writes");
        let sum = files::sha256_of(b"x");
        let mut manifest = fs::read_to_string(bag.join(MANIFEST)).expect("reads");
        manifest += &format!("{sum}  data/../../secret\n{sum}  /etc/hostname\nnonsense\n");
        fs::write(bag.join(MANIFEST), manifest).expect("writes");
        let unusable = faults(&bag)
            .into_iter()
            .filter(|(_, word)| *word == "unusable");
        assert_eq!(unusable.count(), 3);
    }

    #[cfg(unix)]
    #[test]
    fn a_link_in_the_place_of_a_file_is_found() {
        let (archive, bag) = sample();
        let file = bag.join("data/registers/products.csv");
        fs::rename(&file, archive.path().join("aside.csv")).expect("moves");
        std::os::unix::fs::symlink(archive.path().join("aside.csv"), &file).expect("links");
        assert_eq!(
            faults(&bag),
            [("data/registers/products.csv".to_owned(), "unusable")]
        );
    }

    #[test]
    fn a_folder_that_is_no_bag_is_refused() {
        let folder = tempfile::tempdir().expect("a folder");
        assert!(verify(folder.path()).is_err());
        assert!(verify(&folder.path().join("none")).is_err());
    }
}
