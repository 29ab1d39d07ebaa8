//! Certificates and photographs in the inbox: which product each bears on, by path and content. Nothing is decided on them.
//!
//! A certificate is named in the register of reports, or has the name of a lab file beside it (`march.csv`, `march.pdf`). A
//! photograph begins with the code of its package (`A1 front.jpg`), or lies in a folder that does. What says of no product
//! that it is its own stands on no sheet.

use crate::files;
use crate::gather::text;
use crate::model::decided::JudgedProduct;
use crate::model::exhibit::{Exhibit, ExhibitKind};
use crate::model::package::PackageResult;
use crate::model::place::{LabFile, Place};
use crate::model::problem::{Code, Problems};
use crate::words::say;
use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The endings of certificates and photographs, small letters.
const ENDINGS: [&str; 4] = ["pdf", "jpg", "jpeg", "png"];

/// Whether a file is a certificate or a photograph by its name.
pub fn is_one(name: &str) -> bool {
    let ending = name
        .rsplit_once('.')
        .map(|(_, ending)| ending.to_lowercase());
    ending.is_some_and(|ending| ENDINGS.contains(&ending.as_str()))
}

/// Lists with each product what bears on it. `others` are the files of the inbox that are no lab files, by the path that is
/// shown, with the path to open. One that cannot be read is a warning.
pub fn note(
    products: &mut [JudgedProduct],
    lab_files: &[Arc<LabFile>],
    others: &BTreeMap<String, PathBuf>,
    problems: &mut Problems,
) {
    let mut contents = Contents {
        known: lab_files
            .iter()
            .map(|file| (file.path.clone(), Some(file.sha256.clone())))
            .collect(),
        others,
    };
    let wanted = wanted(products, others);
    for (judged, wanted) in products.iter_mut().zip(wanted) {
        let exhibits = wanted.into_iter().filter_map(|(kind, path)| {
            let sha256 = contents.sha256(&path, problems)?;
            Some(Exhibit { kind, path, sha256 })
        });
        judged.exhibits = exhibits.collect();
    }
}

type Wanted = BTreeSet<(ExhibitKind, String)>;

/// What bears on each product, in their order.
fn wanted(products: &[JudgedProduct], others: &BTreeMap<String, PathBuf>) -> Vec<Wanted> {
    let beside = Beside::new(others.keys().filter(|path| is_one(path)));
    let mut wanted: Vec<Wanted> = products
        .iter()
        .map(|one| beside.certificates(one))
        .collect();
    let mut owners: HashMap<String, usize> = HashMap::new();
    for (index, judged) in products.iter().enumerate() {
        for package in &judged.verdict.packages {
            owners.insert(folded(&package.pair.package.package_code), index);
        }
    }
    for path in others.keys().filter(|path| is_one(path)) {
        if let Some(owner) = owner(path, &owners) {
            let is_document = path.to_lowercase().ends_with(".pdf");
            let kind = match is_document {
                true => ExhibitKind::Certificate,
                false => ExhibitKind::Photograph,
            };
            wanted[owner].insert((kind, path.clone()));
        }
    }
    wanted
}

/// Documents and pictures by their path without its ending.
struct Beside<'a> {
    by_stem: BTreeMap<&'a str, Vec<&'a String>>,
}

impl<'a> Beside<'a> {
    fn new(paths: impl Iterator<Item = &'a String>) -> Beside<'a> {
        let mut by_stem: BTreeMap<&str, Vec<&String>> = BTreeMap::new();
        for path in paths {
            by_stem.entry(stem(path)).or_default().push(path);
        }
        Beside { by_stem }
    }

    /// The certificates of the lab files that a product has a reading of.
    fn certificates(&self, judged: &JudgedProduct) -> Wanted {
        let mut found = Wanted::new();
        let packages = judged.verdict.packages.iter();
        let series = packages.flat_map(PackageResult::both_series);
        for paired in series.flat_map(|package| &package.pair.extractions) {
            let extraction = &paired.extraction;
            let named = extraction.record.certificate.iter();
            let beside = self.by_stem.get(stem(&extraction.source.file.path));
            let paths = named.chain(beside.into_iter().flatten().copied());
            found.extend(paths.map(|path| (ExhibitKind::Certificate, path.clone())));
        }
        found
    }
}

fn stem(path: &str) -> &str {
    path.rsplit_once('.').map_or(path, |(stem, _)| stem)
}

fn folded(text: &str) -> String {
    text::plain(text).to_lowercase()
}

/// Whose package a path names: by its own name, else by the folder that is nearest to it.
fn owner(path: &str, owners: &HashMap<String, usize>) -> Option<usize> {
    path.rsplit('/').find_map(|part| {
        let part = folded(part);
        // The longest code that the name begins with: A1-2 is another package than A1.
        let ends = part.char_indices().filter(|(_, c)| !c.is_alphanumeric());
        let mut ends: Vec<usize> = ends.map(|(at, _)| at).chain([part.len()]).collect();
        ends.reverse();
        ends.into_iter()
            .find_map(|end| owners.get(&part[..end]).copied())
    })
}

/// The checksums of files, each read once.
struct Contents<'a> {
    known: HashMap<String, Option<String>>,
    others: &'a BTreeMap<String, PathBuf>,
}

impl Contents<'_> {
    fn sha256(&mut self, path: &str, problems: &mut Problems) -> Option<String> {
        if let Some(known) = self.known.get(path) {
            return known.clone();
        }
        let sha256 = self
            .others
            .get(path)
            .and_then(|to_open| read(path, to_open, problems));
        self.known.insert(path.to_owned(), sha256.clone());
        sha256
    }
}

fn read(path: &str, to_open: &Path, problems: &mut Problems) -> Option<String> {
    match files::sha256(to_open) {
        Ok((sha256, _)) => Some(sha256),
        Err(_) => {
            problems.add(
                Code::Suspicious,
                Place::file(path.to_owned()),
                say::found_exhibit_unreadable(),
                say::do_permit(),
            );
            None
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_belongs_to_the_longest_code_that_its_name_begins_with() {
        let owners: HashMap<String, usize> = [("a1".to_owned(), 0), ("a1-2".to_owned(), 1)].into();
        let owner = |path| owner(path, &owners);
        assert_eq!(owner("inbox/A1 front.jpg"), Some(0));
        assert_eq!(owner("inbox/A1-2.jpg"), Some(1));
        assert_eq!(owner("inbox/A1-3.jpg"), Some(0));
        assert_eq!(owner("inbox/photos/a1/front.png"), Some(0));
        assert_eq!(owner("inbox/A12.jpg"), None);
        assert_eq!(owner("inbox/front.jpg"), None);
    }
}
