//! The dated archive: a BagIt bag (RFC 8493) of what was issued, built beside its place and moved there whole.
//!
//! The payload is a programme folder: settings, registers, lab files and, below `out/`, the documents. Whoever has a bag
//! can run it again.

use crate::files::{self, UNFINISHED};
use crate::model::letters::commands;
use anyhow::{Result, bail};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::path::{Path, PathBuf};

/// A bag that is still being filled; dropped before [`Bag::publish`], it leaves nothing behind.
pub struct Bag {
    archive: PathBuf,
    folder: tempfile::TempDir,
    payload: BTreeMap<String, Entry>,
    renamed: Vec<InfoLine>,
}

/// What a manifest says of one file.
struct Entry {
    sha256: String,
    length: u64,
}

/// One line of `bag-info.txt`: a label and its value.
pub type InfoLine = (&'static str, String);

impl Bag {
    /// An empty bag, beside the place where it will stand.
    pub fn start(archive: &Path) -> Result<Bag> {
        files::create_folder(archive)?;
        let folder = tempfile::Builder::new()
            .prefix(UNFINISHED)
            .tempdir_in(archive)
            .map_err(|error| files::refused("write in", archive, &error))?;
        Ok(Bag {
            archive: archive.to_owned(),
            folder,
            payload: BTreeMap::new(),
            renamed: Vec::new(),
        })
    }

    /// Puts one file into the payload.
    ///
    /// # Errors
    /// Where the path leaves the bag, or the disk refuses.
    pub fn add(&mut self, path: &str, bytes: &[u8]) -> Result<()> {
        if !files::stays_below(path) {
            bail!("`{path}` cannot be archived: the path leads out of the archive");
        }
        let path = self.archived_path(path);
        files::write_new(&self.folder.path().join("data").join(&path), bytes)?;
        let entry = Entry {
            sha256: files::sha256_of(bytes),
            length: bytes.len() as u64,
        };
        self.payload.insert(path, entry);
        Ok(())
    }

    /// Whether a file of this path is in the payload.
    pub fn holds(&self, path: &str) -> bool {
        self.payload.contains_key(&portable(path))
    }

    /// The path under which a file is archived: its own, or a near one where a checker could not read it in a manifest.
    /// `bag-info.txt` then names both.
    fn archived_path(&mut self, path: &str) -> String {
        let mut archived = portable(path);
        while self.payload.contains_key(&archived) {
            archived.push('_');
        }
        if archived != path {
            let both = format!("{path} is archived as {archived}");
            self.renamed.push(("Renamed-File", both));
        }
        archived
    }

    /// Writes the manifests and moves the bag to `<archive>/<date>`, or `<date>-2`, `-3` … where that is taken.
    ///
    /// Until the last step nothing of it can be seen; after it, all of it is on the disk.
    pub fn publish(self, date: NaiveDate, info: &[InfoLine]) -> Result<PathBuf> {
        let tags = [
            ("bagit.txt", DECLARATION.to_owned()),
            ("bag-info.txt", self.info(date, info)),
            ("manifest-sha256.txt", self.manifest()),
        ];
        let mut tag_manifest = String::new();
        for (name, text) in &tags {
            files::write_new(&self.folder.path().join(name), text.as_bytes())?;
            push_line(&mut tag_manifest, &files::sha256_of(text.as_bytes()), name);
        }
        let tag_manifest_path = self.folder.path().join("tagmanifest-sha256.txt");
        files::write_new(&tag_manifest_path, tag_manifest.as_bytes())?;
        let target = free_name(&self.archive, date);
        open_to_readers(self.folder.path())?;
        files::publish_folder(self.folder.path(), &target)?;
        // The temporary folder has moved away; there is nothing left to tidy up.
        let _ = self.folder.keep();
        Ok(target)
    }

    fn manifest(&self) -> String {
        let mut text = String::new();
        for (path, entry) in &self.payload {
            push_line(&mut text, &entry.sha256, &format!("data/{path}"));
        }
        text
    }

    fn info(&self, date: NaiveDate, info: &[InfoLine]) -> String {
        let bytes: u64 = self.payload.values().map(|entry| entry.length).sum();
        let fixed = [
            ("Bagging-Date", date.to_string()),
            ("Payload-Oxum", format!("{bytes}.{}", self.payload.len())),
            (
                "Bag-Software-Agent",
                concat!("galleyproof ", env!("CARGO_PKG_VERSION")).to_owned(),
            ),
        ];
        let mut text = String::new();
        for (label, value) in fixed.iter().chain(info).chain(&self.renamed) {
            // A line break in a value, of whatever kind, would start another label, and some letters command who reads it.
            let is_gap = |c: char| c.is_whitespace() || c.is_control() || commands(c);
            let words: Vec<&str> = value
                .split(is_gap)
                .filter(|word| !word.is_empty())
                .collect();
            let value = words.join(" ");
            writeln!(text, "{label}: {value}").expect("a string takes any text");
        }
        text
    }
}

/// Every bag in an archive, in the order of their dates and numbers.
pub fn list(archive: &Path) -> Result<Vec<PathBuf>> {
    let folders = files::folders_in(archive)?;
    let mut bags: Vec<(NaiveDate, u32, PathBuf)> = folders
        .into_iter()
        .filter_map(|folder| {
            let (date, number) = read_name(folder.file_name()?.to_str()?)?;
            Some((date, number, folder))
        })
        .collect();
    bags.sort();
    Ok(bags.into_iter().map(|(_, _, folder)| folder).collect())
}

/// The programme folder in a bag: settings, registers, lab files. Bags of earlier versions have one part only.
pub fn programme(bag: &Path) -> PathBuf {
    let (whole, private) = (bag.join("data"), bag.join("data/private"));
    match private.is_dir() {
        true => private,
        false => whole,
    }
}

/// The date and number of a bag by its folder's name, which order bags by age.
pub fn age(bag: &Path) -> Option<(NaiveDate, u32)> {
    let name = bag.canonicalize().ok()?;
    read_name(name.file_name()?.to_str()?)
}

/// Removes what a run that was cut off left unfinished. To be called only by the one run that may write.
pub fn sweep(archive: &Path) -> Result<()> {
    for folder in files::folders_in(archive)? {
        let name = folder.file_name().and_then(|name| name.to_str());
        if name.is_some_and(|name| name.starts_with(UNFINISHED)) {
            files::remove_folder(&folder)?;
        }
    }
    Ok(())
}

/// RFC 8493, section 2.1.1.
const DECLARATION: &str = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

/// A path of a manifest: RFC 8493, section 2.1.3, has CR, LF and the percent sign written as `%0D`, `%0A`, `%25`.
pub fn encode_path(path: &str) -> String {
    path.replace('%', "%25")
        .replace('\r', "%0D")
        .replace('\n', "%0A")
}

/// A path of a manifest as it stands on the disk.
pub fn decode_path(path: &str) -> String {
    // In capitals alone, as other checkers read them: what they refuse is refused.
    let decoded = path.replace("%0D", "\r").replace("%0A", "\n");
    // Last, so that "%250A" comes back as "%0A" and not as a line feed.
    decoded.replace("%25", "%")
}

/// A path that every checker of bags reads alike. A percent sign is one to some and the start of a code to others; some
/// end a line at more characters than a line feed, and drop spaces at its end.
fn portable(path: &str) -> String {
    let kept: String = path
        .chars()
        .map(|c| match c {
            '%' => '\u{ff05}', // the full-width form, which still reads as a percent sign
            '\r' | '\n' => c,  // RFC 8493 has codes for these, and all read them
            '\u{2028}' | '\u{2029}' => '_',
            c if c.is_control() || commands(c) => '_',
            c => c,
        })
        .collect();
    let end = kept.trim_end_matches(|c: char| c.is_whitespace());
    let dropped = kept[end.len()..].chars().map(|_| '_');
    end.chars().chain(dropped).collect()
}

fn push_line(text: &mut String, sha256: &str, path: &str) {
    writeln!(text, "{sha256}  {}", encode_path(path)).expect("a string takes any text");
}

fn free_name(archive: &Path, date: NaiveDate) -> PathBuf {
    let first = archive.join(date.to_string());
    if !first.exists() {
        return first;
    }
    (2..)
        .map(|number: u32| archive.join(format!("{date}-{number}")))
        .find(|folder| !folder.exists())
        .expect("an archive has fewer bags a day than there are numbers")
}

/// The date and number of a bag's folder: `2031-04-22` is the first of its day, `2031-04-22-2` the second.
fn read_name(name: &str) -> Option<(NaiveDate, u32)> {
    let (date, rest) = name.split_at_checked("2031-04-22".len())?;
    let number = match rest.strip_prefix('-') {
        Some(number) => number.parse().ok().filter(|number| *number >= 2)?,
        None if rest.is_empty() => 1,
        None => return None,
    };
    Some((date.parse().ok()?, number))
}

/// A temporary folder is private to its maker; the archive is for whom the user's umask lets see it, as a folder that was
/// made in it without further ado.
fn open_to_readers(folder: &Path) -> Result<()> {
    let Ok(about) = std::fs::metadata(folder.join("data")) else {
        return Ok(());
    };
    std::fs::set_permissions(folder, about.permissions())
        .map_err(|error| files::refused("write", folder, &error))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::archive::verify::verify;
    use proptest::prelude::*;

    const DAY: NaiveDate = NaiveDate::from_ymd_opt(2031, 4, 22).expect("a date");

    fn bag_of(archive: &Path, files: &[(&str, &str)]) -> PathBuf {
        let mut bag = Bag::start(archive).expect("starts");
        for (path, text) in files {
            bag.add(path, text.as_bytes()).expect("adds");
        }
        let info = [("Source-Organization", "Tidewater\r\nForged: yes".to_owned())];
        bag.publish(DAY, &info).expect("publishes")
    }

    #[test]
    fn a_bag_is_what_the_rfc_asks_for() {
        let archive = tempfile::tempdir().expect("a folder");
        let bag = bag_of(
            archive.path(),
            &[("a/100\n sure.csv", "one"), ("b.txt", "")],
        );
        let text = |name: &str| String::from_utf8(files::read(&bag.join(name)).expect("reads"));
        assert_eq!(text("bagit.txt").expect("text"), DECLARATION);
        assert_eq!(
            text("manifest-sha256.txt").expect("text"),
            "7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed  data/a/100%0A sure.csv\n\
             e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855  data/b.txt\n"
        );
        let info = text("bag-info.txt").expect("text");
        assert!(info.contains("Payload-Oxum: 3.2\n"), "{info}");
        assert!(info.contains("Bagging-Date: 2031-04-22\n"), "{info}");
        assert!(
            info.contains("Source-Organization: Tidewater Forged: yes\n"),
            "{info}"
        );
        let tags = text("tagmanifest-sha256.txt").expect("text");
        let named: Vec<_> = tags
            .lines()
            .filter_map(|line| line.split("  ").nth(1))
            .collect();
        assert_eq!(named, ["bagit.txt", "bag-info.txt", "manifest-sha256.txt"]);
        assert!(verify(&bag).expect("verifies").faults.is_empty());
    }

    #[test]
    fn no_bag_is_ever_overwritten() {
        let archive = tempfile::tempdir().expect("a folder");
        let names: Vec<_> = ["one", "two", "three"]
            .map(|text| bag_of(archive.path(), &[("a.txt", text)]))
            .iter()
            .map(|bag| bag.file_name().expect("a name").to_owned())
            .collect();
        assert_eq!(names, ["2031-04-22", "2031-04-22-2", "2031-04-22-3"]);
        let first = files::read(&archive.path().join("2031-04-22/data/a.txt"));
        assert_eq!(first.expect("reads"), b"one");
        let listed = list(archive.path()).expect("lists");
        assert_eq!(
            listed
                .iter()
                .filter_map(|bag| bag.file_name())
                .collect::<Vec<_>>(),
            names
        );
    }

    #[test]
    fn bags_are_listed_by_number_not_by_spelling() {
        let archive = tempfile::tempdir().expect("a folder");
        for name in [
            "2031-04-22-10",
            "2031-04-22-9",
            "2031-04-22",
            "2031-04-22-1",
            "notes",
            "2030-12-31",
        ] {
            files::create_folder(&archive.path().join(name)).expect("makes");
        }
        let bags = list(archive.path()).expect("lists");
        let names: Vec<_> = bags
            .iter()
            .filter_map(|bag| bag.file_name()?.to_str())
            .collect();
        assert_eq!(
            names,
            ["2030-12-31", "2031-04-22", "2031-04-22-9", "2031-04-22-10"]
        );
    }

    #[test]
    fn an_unfinished_bag_leaves_nothing_and_a_cut_off_one_is_swept() {
        let archive = tempfile::tempdir().expect("a folder");
        let mut bag = Bag::start(archive.path()).expect("starts");
        bag.add("a.txt", b"a").expect("adds");
        drop(bag);
        assert!(files::folders_in(archive.path()).expect("lists").is_empty());
        let left = archive.path().join(".galleyproof-x1");
        files::write_new(&left.join("data/a.txt"), b"a").expect("writes");
        files::create_folder(&archive.path().join("my own")).expect("makes");
        sweep(archive.path()).expect("sweeps");
        assert!(!left.exists());
        assert!(archive.path().join("my own").exists(), "not ours to remove");
    }

    #[test]
    fn no_path_leads_out_of_the_bag() {
        let archive = tempfile::tempdir().expect("a folder");
        let mut bag = Bag::start(archive.path()).expect("starts");
        for path in ["../a", "a/../../b", "/etc/a", "", "a//b", "./a"] {
            assert!(bag.add(path, b"x").is_err(), "{path:?}");
        }
    }

    #[test]
    fn a_name_that_checkers_read_differently_is_archived_under_a_near_one() {
        let archive = tempfile::tempdir().expect("a folder");
        let names = [
            "inbox/50% off.csv",
            "inbox/50\u{ff05} off.csv ",
            "inbox/50\u{ff05} off.csv_",
            "inbox/a\u{85}b.csv",
        ];
        let bag = bag_of(archive.path(), &names.map(|name| (name, "x")));
        let manifest = files::read(&bag.join("manifest-sha256.txt")).expect("reads");
        let manifest = String::from_utf8(manifest).expect("UTF-8");
        assert_eq!(manifest.lines().count(), names.len(), "{manifest}");
        assert!(!manifest.contains(['%', '\u{85}']), "{manifest}");
        let info = String::from_utf8(files::read(&bag.join("bag-info.txt")).expect("reads"));
        let line = "Renamed-File: inbox/50% off.csv is archived as inbox/50\u{ff05} off.csv\n";
        assert!(info.expect("UTF-8").contains(line));
        assert!(verify(&bag).expect("verifies").faults.is_empty());
    }

    proptest! {
        #[test]
        fn a_path_comes_back_from_a_manifest(path in "(\\PC|[\r\n%]|%0A|%0d|%25){1,12}") {
            let encoded = encode_path(&path);
            prop_assert!(!encoded.contains(['\r', '\n']));
            prop_assert_eq!(decode_path(&encoded), path);
        }
    }
}
