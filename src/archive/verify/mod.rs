//! Checks a bag against its own manifests (RFC 8493, section 3): what has changed, what is missing, what was added.

use crate::archive::bag::decode_path;
use crate::files;
use anyhow::{Result, bail};
use std::collections::{BTreeMap, BTreeSet};
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
const INFO: &str = "bag-info.txt";

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
    let files: BTreeSet<String> = there
        .iter()
        .filter(|(_, is_plain_file)| **is_plain_file)
        .map(|(path, _)| path.clone())
        .collect();
    let texts = Texts { bag, files: &files };
    check_declaration(&texts, &mut found);
    if !bag.join("data").is_dir() {
        found.add("data", FaultKind::Missing);
    }
    if files.contains("fetch.txt") {
        found.unusable(
            "fetch.txt",
            "`issue` leaves no file of an archive elsewhere; what this one names is not fetched",
        );
    }
    for name in &files {
        let is_manifest = name.starts_with("manifest-") || name.starts_with("tagmanifest-");
        if is_manifest
            && name.ends_with(".txt")
            && ![MANIFEST, TAG_MANIFEST].contains(&name.as_str())
        {
            found.unusable(
                name,
                "`issue` writes checksums of SHA-256 alone; these are not looked at",
            );
        }
    }
    for name in [TAG_MANIFEST, MANIFEST] {
        check_manifest(&texts, name, &mut there, &mut found);
    }
    // Nothing can vouch for the file that vouches for all others.
    there.remove(TAG_MANIFEST);
    let added = there.into_keys().map(|path| Fault {
        path,
        kind: FaultKind::Added,
    });
    found.faults.extend(added);
    check_info(&texts, &mut found);
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

/// The files of a bag that hold text of its own.
struct Texts<'a> {
    bag: &'a Path,
    /// Plain files alone: a link or a pipe is never opened.
    files: &'a BTreeSet<String>,
}

impl Texts<'_> {
    /// Line by line, whatever ends a line, without a mark at the beginning; none, with a fault, where it cannot be read.
    fn lines(&self, name: &str, found: &mut Verification) -> Option<Vec<String>> {
        if !self.files.contains(name) {
            found.add(name, FaultKind::Missing);
            return None;
        }
        let bytes = match files::read(&self.bag.join(name)) {
            Ok(bytes) => bytes,
            Err(error) => {
                found.unusable(name, &format!("{error:#}"));
                return None;
            }
        };
        let Ok(text) = String::from_utf8(bytes) else {
            found.unusable(name, "it is not UTF-8 text");
            return None;
        };
        let text = text.strip_prefix('\u{feff}').unwrap_or(&text);
        let text = text.replace("\r\n", "\n").replace('\r', "\n");
        Some(text.lines().map(str::to_owned).collect())
    }
}

/// The declaration must read as RFC 8493 has it, whatever its checksum says.
fn check_declaration(texts: &Texts<'_>, found: &mut Verification) {
    const VERSIONS: [&str; 2] = ["1.0", "0.97"];
    let Some(lines) = texts.lines(DECLARATION, found) else {
        return;
    };
    // RFC 8493, section 2.1.1, has it without one.
    let bytes = files::read(&texts.bag.join(DECLARATION)).unwrap_or_default();
    if bytes.starts_with("\u{feff}".as_bytes()) {
        found.unusable(DECLARATION, "it begins with a byte-order mark");
    }
    let value = |at: usize, label: &str| {
        let line = lines.get(at)?;
        line.strip_prefix(label)?.strip_prefix(':').map(str::trim)
    };
    if !value(0, "BagIt-Version").is_some_and(|version| VERSIONS.contains(&version)) {
        found.unusable(DECLARATION, "its first line is not `BagIt-Version: 1.0`");
    }
    let encoding = value(1, "Tag-File-Character-Encoding");
    if !encoding.is_some_and(|encoding| encoding.eq_ignore_ascii_case("UTF-8")) {
        found.unusable(
            DECLARATION,
            "its second line is not `Tag-File-Character-Encoding: UTF-8`",
        );
    }
}

/// What stands of a bag beside its files must be labels with values, and the sum of its payload be right. It may be left
/// out (RFC 8493, section 2.2.2); its checksum tells where that was done later.
fn check_info(texts: &Texts<'_>, found: &mut Verification) {
    if !texts.files.contains(INFO) {
        return;
    }
    let lines = texts.lines(INFO, found).unwrap_or_default();
    for (index, line) in lines.iter().enumerate() {
        let goes_on = index > 0 && line.starts_with([' ', '\t']);
        if !line.trim().is_empty() && !goes_on && !line.contains(':') {
            found.unusable(
                INFO,
                &format!("line {} is not a label and a value", index + 1),
            );
        }
    }
    // What became of single files is told already.
    if found
        .faults
        .iter()
        .any(|fault| fault.path.starts_with("data/"))
    {
        return;
    }
    let stated = lines.iter().filter_map(|line| line.split_once(':'));
    let mut sums = stated.filter(|(label, _)| label.eq_ignore_ascii_case("Payload-Oxum"));
    let payload = texts.files.iter().filter(|path| path.starts_with("data/"));
    let sizes = payload.filter_map(|path| std::fs::metadata(texts.bag.join(path)).ok());
    let (bytes, count) = sizes.fold((0, 0), |(bytes, count), file| {
        (bytes + file.len(), count + 1)
    });
    if sums.any(|(_, sum)| sum.trim() != format!("{bytes}.{count}")) {
        let why =
            format!("its Payload-Oxum is not that of {count} files with {bytes} bytes in all");
        found.unusable(INFO, &why);
    }
}

fn check_manifest(
    texts: &Texts<'_>,
    name: &str,
    there: &mut BTreeMap<String, bool>,
    found: &mut Verification,
) {
    let lines = texts.lines(name, found).unwrap_or_default();
    for (index, line) in lines.iter().enumerate() {
        if line.trim().is_empty() {
            continue;
        }
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
            None if texts.files.contains(&path) => {
                found.unusable(name, &format!("line {} names `{path}` again", index + 1));
            }
            None => found.add(&path, FaultKind::Missing),
            Some(false) => found.unusable(&path, "it is a link, or no ordinary file"),
            Some(true) => match files::sha256(&texts.bag.join(&path)) {
                Ok((actual, _)) if actual.eq_ignore_ascii_case(&sha256) => {
                    found.sound += usize::from(name == MANIFEST);
                }
                Ok(_) => found.add(&path, FaultKind::Changed),
                Err(error) => found.unusable(&path, &format!("{error:#}")),
            },
        }
    }
}

/// A checksum, white space (with an asterisk where a tool wrote one for binary files), and a path.
fn read_line(line: &str) -> Option<(String, String)> {
    let (sha256, rest) = line.split_once([' ', '\t'])?;
    let path = rest.trim_start_matches([' ', '\t']);
    let path = path.strip_prefix('*').unwrap_or(path);
    let path = path.strip_prefix("./").unwrap_or(path);
    let is_checksum = sha256.len() == 64 && sha256.bytes().all(|byte| byte.is_ascii_hexdigit());
    (is_checksum && !path.is_empty()).then(|| (sha256.to_owned(), decode_path(path)))
}

impl Verification {
    /// Whether it is a bag by RFC 8493 all the same: only what the RFC allows beside the payload was added, or the manifest of
    /// the manifests taken away.
    pub fn is_valid_bag(&self) -> bool {
        self.faults.iter().all(|fault| match fault.kind {
            FaultKind::Added => !fault.path.starts_with("data/"),
            FaultKind::Missing => fault.path == TAG_MANIFEST,
            FaultKind::Changed | FaultKind::Unusable(_) => false,
        })
    }

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
mod tests;
