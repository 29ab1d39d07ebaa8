//! `registers/issued.csv` held against the archive: what an issue that was cut off left out, and what a person or a
//! spreadsheet program has made of it, is put right from the bags.

use crate::archive::{bag, issued, verify};
use crate::config::Config;
use crate::files;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{IssuedRevision, Registers};
use crate::save::alone;
use crate::words::say;
use anyhow::{Result, bail};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// What is to be put right, and what cannot be.
#[derive(Clone, Debug, Default)]
pub struct Healed {
    /// The register as it should be; none where it is so already.
    register: Option<Vec<u8>>,
    /// Rows that are missing, or were and are there again.
    pub added: Vec<IssuedRevision>,
    /// Rows that say something else than when they were issued, or did and are again as they were.
    pub mended: Vec<IssuedRevision>,
    /// Rows that no bag has; none while a bag is in doubt, which may have them.
    pub unarchived: Vec<IssuedRevision>,
    /// Bags whose copy of the register is not as it was archived: nothing is taken from them.
    pub doubted: Vec<PathBuf>,
}

/// Finishes an issue that was cut off, mends the register from the archive, and clears away what was still being made. To be
/// called only by the one run that may write.
///
/// # Errors
/// Where the archive cannot be read or the register cannot be written.
pub fn heal(config: &Config) -> Result<Healed> {
    if !config.registers().is_dir() {
        // What is not there was moved, and nothing is to stand in its place when it comes back.
        return Ok(Healed::default());
    }
    let archive = config.root.join("archive");
    bag::sweep(&archive)?;
    alone::sweep(&config.registers())?;
    let healed = look(config)?;
    if let Some(whole) = &healed.register {
        alone::register(&config.root.join(issued::FILE_NAME), whole)?;
    }
    Ok(healed)
}

/// Holds the register against the archive and writes nothing.
///
/// # Errors
/// Where the archive cannot be read.
pub fn look(config: &Config) -> Result<Healed> {
    let archive = config.root.join("archive");
    let Ok(living) = read(config) else {
        // A register that `issue` does not write is no register to finish.
        return Ok(Healed::default());
    };
    if is_that_of_the_last_bag(&archive, living.as_deref())? {
        return Ok(Healed::default());
    }
    let mut healed = Healed::default();
    let archived = archived(&archive, &mut healed.doubted)?;
    let mended = issued::mended(living.as_deref().unwrap_or_default(), archived)?;
    healed.register = mended.register;
    healed.added = mended.added;
    healed.mended = mended.mended;
    if healed.doubted.is_empty() {
        healed.unarchived = mended.unarchived;
    }
    Ok(healed)
}

/// Has everything that is decided rest on what was issued as the archive has it, and tells where the register says
/// otherwise: who only looks is told no other than who runs.
///
/// # Errors
/// Where the archive cannot be read.
pub fn note(registers: &mut Registers, config: &Config, problems: &mut Problems) -> Result<()> {
    let healed = look(config)?;
    if let Some(whole) = &healed.register {
        // A row that no bag has counts where the reader of registers took it.
        let unarchived: BTreeSet<_> = healed.unarchived.iter().map(key).collect();
        let taken: BTreeSet<_> = registers.issued.iter().map(key).collect();
        let mut rows = issued::rows(whole)?;
        rows.retain(|row| !unarchived.contains(&key(row)) || taken.contains(&key(row)));
        registers.issued = rows;
    }
    let mut tell = |file: &str, found, to_do| {
        problems.add(Code::Suspicious, Place::file(file), found, to_do);
    };
    for (rows, how) in [(&healed.added, "lacks"), (&healed.mended, "says")] {
        if !rows.is_empty() {
            let found = say::found_register_differs(how, few(rows));
            tell(issued::FILE_NAME, found, say::do_let_run_mend());
        }
    }
    if !healed.unarchived.is_empty() && !is_in_a_bag(&config.root) {
        let found = say::found_unarchived(few(&healed.unarchived));
        tell(issued::FILE_NAME, found, say::do_copy_archive_back());
    }
    for bag in &healed.doubted {
        let bag = bag.strip_prefix(&config.root).unwrap_or(bag);
        let bag = bag.display().to_string();
        tell(&bag, say::found_doubted_copy(), say::do_verify_bag());
    }
    Ok(())
}

fn key(row: &IssuedRevision) -> (String, u32) {
    (row.sheet_number.clone(), row.revision)
}

/// Whether a programme folder is the one in a bag, which has no archive of its own and needs none.
fn is_in_a_bag(root: &Path) -> bool {
    let root = root.canonicalize().unwrap_or_default();
    let payload = root.ancestors().take(2).find(|at| at.ends_with("data"));
    let bag = payload.and_then(Path::parent);
    bag.is_some_and(|bag| bag.join("bagit.txt").is_file())
}

/// A few revisions by their numbers, and how many more.
pub fn few(rows: &[IssuedRevision]) -> String {
    const NAMED: usize = 5;
    let named = rows.iter().take(NAMED);
    let named: Vec<String> = named
        .map(|row| format!("{} revision {}", row.sheet_number, row.revision))
        .collect();
    match rows.len().saturating_sub(NAMED) {
        0 => named.join(", "),
        more => format!("{} and {more} more", named.join(", ")),
    }
}

/// Whether nothing happened since the last issue, as before nearly every run.
fn is_that_of_the_last_bag(archive: &Path, living: Option<&[u8]>) -> Result<bool> {
    let (Some(last), Some(living)) = (bag::list(archive)?.pop(), living) else {
        return Ok(false);
    };
    let path = bag::programme(&last).join(issued::FILE_NAME);
    let is_the_same = files::read_if_there(&path)?.as_deref() == Some(living);
    Ok(is_the_same && verify::is_as_archived(&last, &path, living))
}

/// The register as it stands; none where nothing was issued yet.
///
/// # Errors
/// Where a person has saved it as a workbook, or it cannot be read.
pub fn read(config: &Config) -> Result<Option<Vec<u8>>> {
    let other = ["xlsx", "xls", "ods"]
        .map(|ending| config.registers().join(format!("issued.{ending}")))
        .into_iter()
        .find(|path| path.exists());
    if let Some(other) = other {
        bail!(
            "{} is a workbook, and `issue` writes {} alone: save it as CSV under that name and move the workbook away",
            other.display(),
            issued::FILE_NAME
        );
    }
    files::read_if_there(&config.root.join(issued::FILE_NAME))
}

/// Every revision that the bags hold, each as its latest bag has it, in the order of their issue.
fn archived(archive: &Path, doubted: &mut Vec<PathBuf>) -> Result<Vec<IssuedRevision>> {
    let mut at = BTreeMap::new();
    let mut rows: Vec<IssuedRevision> = Vec::new();
    let mut before = Vec::new();
    for bag in bag::list(archive)? {
        let path = bag::programme(&bag).join(issued::FILE_NAME);
        let Some(bytes) = files::read_if_there(&path)? else {
            continue;
        };
        if !verify::is_as_archived(&bag, &path, &bytes) {
            doubted.push(bag);
            continue;
        }
        // A register only grows, so that a bag's is nearly always the beginning of the next one's.
        let is_grown = bytes.starts_with(&before) && !before.is_empty();
        let known = if is_grown { rows.len() } else { 0 };
        for row in issued::rows(&bytes)?.into_iter().skip(known) {
            let place = *at.entry(key(&row)).or_insert(rows.len());
            match rows.get_mut(place) {
                Some(known) => *known = row,
                None => rows.push(row),
            }
        }
        before = bytes;
    }
    Ok(rows)
}
