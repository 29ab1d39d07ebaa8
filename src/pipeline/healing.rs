//! `registers/issued.csv` held against the archive: what an issue that was cut off left out, and what a person or a
//! spreadsheet program has made of it, is put right from the bags.

use crate::archive::{bag, issued, verify};
use crate::config::Config;
use crate::files;
use crate::model::registers::IssuedRevision;
use crate::save::alone;
use anyhow::{Result, bail};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// What was put right, and what could not be.
#[derive(Clone, Debug, Default)]
pub struct Healed {
    /// Rows that were missing and are there again.
    pub added: Vec<IssuedRevision>,
    /// Rows that said something else than when they were issued, and are again as they were.
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
    if let Some(whole) = &mended.register {
        alone::register(&config.root.join(issued::FILE_NAME), whole)?;
    }
    healed.added = mended.added;
    healed.mended = mended.mended;
    if healed.doubted.is_empty() {
        healed.unarchived = mended.unarchived;
    }
    Ok(healed)
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
            let key = (row.sheet_number.clone(), row.revision);
            let place = *at.entry(key).or_insert(rows.len());
            match rows.get_mut(place) {
                Some(known) => *known = row,
                None => rows.push(row),
            }
        }
        before = bytes;
    }
    Ok(rows)
}
