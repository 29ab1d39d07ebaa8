//! The lab files that published sheets rest on, held against the inbox: what is gone, or is not what it was.

use crate::archive::{bag, edition, issued};
use crate::files;
use crate::model::place::LabFile;
use crate::model::registers::IssuedRevision;
use anyhow::Result;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// A lab file that a published sheet rests on and that is not in the inbox as it was.
#[derive(Clone, Debug, PartialEq)]
pub struct Lost {
    /// Path below the programme folder.
    pub path: String,
    /// SHA-256 of its bytes when the sheets were issued.
    pub sha256: String,
    /// What stands under its name now.
    pub now: Now,
    /// The sheets that rest on it, each as the revision that was issued last.
    pub sheets: Vec<IssuedRevision>,
    /// Where the archive has it.
    pub kept: PathBuf,
}

/// What stands under the name of a lab file that is not there as it was.
#[derive(Clone, Debug, PartialEq)]
pub enum Now {
    /// Nothing.
    Gone,
    /// Something that cannot be opened.
    Unopened,
    /// Another file, with its SHA-256, whether it can be read as a lab file or not.
    Changed(String),
}

/// How a line of `bag-info.txt` about a lab file begins, and what stands between its path and its checksum.
const LABEL: (&str, &str) = ("Source-File: ", " SHA-256 ");

/// Every lab file that the last revision of a sheet rests on and that is not among the files of the inbox as it was. A
/// file that was moved to another place in the inbox is still there: it is known by its content. A sheet that was issued
/// again since rests on what was there then.
///
/// # Errors
/// Where the archive cannot be listed, or a file of it cannot be read.
pub fn lost(root: &Path, there: &[Arc<LabFile>], issued: &[IssuedRevision]) -> Result<Vec<Lost>> {
    let contents: BTreeSet<&str> = there.iter().map(|file| file.sha256.as_str()).collect();
    let mut last: BTreeMap<&str, &IssuedRevision> = BTreeMap::new();
    for row in issued {
        last.insert(&row.sheet_number, row);
    }
    let mut lost: BTreeMap<(String, String), Lost> = BTreeMap::new();
    for bag in bag::list(&root.join("archive"))? {
        let missing: Vec<(String, String)> = named(&bag)?
            .into_iter()
            .filter(|(path, sha256)| {
                !contents.contains(sha256.as_str())
                    && now(root, path, there) != Now::Changed(sha256.clone())
            })
            .collect();
        if missing.is_empty() {
            continue;
        }
        let issued_here = issued_here(&bag)?;
        let Ok(edition) = edition::read(&bag) else {
            // `verify` names a bag that cannot be read.
            continue;
        };
        for (path, sha256) in missing {
            let rests = edition.products.iter().filter(|(_, product)| {
                let packages = product.packages.iter();
                let mut series = packages.flat_map(|package| {
                    std::iter::once(&package.series).chain(&package.other_series)
                });
                series.any(|series| {
                    let mut cells = series.extractions.iter().map(|one| &one.source);
                    cells.any(|source| source.sha256 == sha256.as_str())
                })
            });
            let sheets: Vec<IssuedRevision> = rests
                .filter_map(|(key, _)| {
                    let mut rows = last
                        .values()
                        .filter(|row| row.product_id == key.product_id && row.round == key.round);
                    rows.find(|row| issued_here.contains(&(row.sheet_number.clone(), row.revision)))
                })
                .map(|row| (*row).clone())
                .collect();
            if sheets.is_empty() {
                continue;
            }
            let known = lost
                .entry((path.clone(), sha256.clone()))
                .or_insert_with(|| Lost {
                    now: now(root, &path, there),
                    kept: bag::programme(&bag).join(&path),
                    sheets: Vec::new(),
                    path,
                    sha256,
                });
            known.sheets.extend(sheets);
        }
    }
    Ok(lost.into_values().collect())
}

/// What stands under a lab file's name, among those that were read or not: one that cannot be read is told by itself, and has
/// taken the place of the other all the same.
fn now(root: &Path, path: &str, there: &[Arc<LabFile>]) -> Now {
    if let Some(file) = there.iter().find(|file| file.path == path) {
        return Now::Changed(file.sha256.clone());
    }
    if !files::stays_below(path) {
        return Now::Gone;
    }
    match files::read_unlinked(&root.join(path)) {
        Ok(Some(bytes)) => Now::Changed(files::sha256_of(&bytes)),
        Ok(None) => Now::Gone,
        Err(_) => Now::Unopened,
    }
}

/// The lab files of a bag by path and content, as its `bag-info.txt` has them.
fn named(bag: &Path) -> Result<Vec<(String, String)>> {
    let text = files::read_if_there(&bag.join("bag-info.txt"))?.unwrap_or_default();
    let text = String::from_utf8_lossy(&text);
    let named = text.lines().filter_map(|line| {
        let (path, sha256) = line.strip_prefix(LABEL.0)?.rsplit_once(LABEL.1)?;
        Some((path.to_owned(), sha256.trim().to_owned()))
    });
    Ok(named.collect())
}

/// The revisions that a bag was the first to hold.
fn issued_here(bag: &Path) -> Result<BTreeSet<(String, u32)>> {
    let register = files::read_if_there(&bag::programme(bag).join(issued::FILE_NAME))?;
    let rows = issued::rows(&register.unwrap_or_default())?;
    let text = files::read_if_there(&bag.join("bag-info.txt"))?.unwrap_or_default();
    let text = String::from_utf8_lossy(&text);
    let named: BTreeSet<&str> = text
        .lines()
        .filter_map(|line| line.strip_prefix("Issued-Sheet: "))
        .collect();
    let here = rows.into_iter().filter(|row| {
        let name = format!("{} revision {}", row.sheet_number, row.revision);
        named.contains(name.as_str())
    });
    Ok(here.map(|row| (row.sheet_number, row.revision)).collect())
}
