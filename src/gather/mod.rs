//! Files -> tables -> registers and extractions: reading what people and labs wrote, and never guessing.

/// What the lab sent.
pub mod inbox;

/// Files by content.
pub mod contents;

/// Files that cannot be read.
pub mod unreadable;

/// Bytes -> cells as written.
pub mod books;

/// Text, folded so that what looks alike is alike.
pub mod text;

/// Package codes, and what a spreadsheet does to them.
pub mod codes;

/// Days as people write them.
pub mod dates;

/// What people keep.
pub mod registers;

/// What a lab's report says of itself.
pub mod record;

/// Corrections that fit no reading, and that take one another back.
mod corrections;

/// What follows from faults of the registers.
mod consequences;

/// Figures as written.
pub mod numbers;

/// Where tables stand, and what each column is.
pub mod tables;

/// A row of a table -> what it comes to.
pub mod readings;

/// Wells and their absorbances.
pub mod plates;

/// What stands outside the tables.
pub mod facts;

/// Sentences that stand there.
mod sentences;

/// Certificates and photographs in the inbox.
pub mod exhibits;

/// A lab file from its bytes to its extractions.
pub mod lab_file;

/// How a file was understood, in words.
mod explained;

use crate::config::Config;
use crate::gather::codes::Codes;
use crate::gather::inbox::InboxFile;
use crate::gather::lab_file::Taken;
use crate::gather::record::Reports;
use crate::gather::registers::paths::LabFiles;
use crate::model::extraction::Extraction;
use crate::model::place::LabFile;
use crate::model::plate::Plate;
use crate::model::problem::Problems;
use crate::model::registers::Registers;
use crate::model::understanding::Understanding;
use anyhow::Result;
use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::atomic::{AtomicUsize, Ordering::Relaxed};
use std::sync::{Arc, Mutex, OnceLock};

/// All that was read.
#[derive(Debug, Default)]
pub struct Gathered {
    /// What people keep.
    pub registers: Registers,
    /// The lab files that were read, by path; each content once.
    pub lab_files: Vec<Arc<LabFile>>,
    /// How each was understood, in the same order.
    pub understandings: Vec<Understanding>,
    /// Every extraction of a registered package or a blind, by file and place.
    pub extractions: Vec<Extraction>,
    /// Every plate, by file and place.
    pub plates: Vec<Plate>,
    /// Files of other kinds in the inbox (certificates, photographs) by the path that is shown, with the path to open.
    pub others: BTreeMap<String, PathBuf>,
}

/// Reads the registers and every lab file. `progress` is told how many of how many files are done.
///
/// # Errors
/// Where nothing can be done: no inbox, no register of products or packages, two files of one register.
pub fn gather(
    config: &Config,
    problems: &mut Problems,
    progress: &(dyn Fn(usize, usize) + Sync),
) -> Result<Gathered> {
    let listed = inbox::list(config, problems)?;
    let contents = contents::compare(listed.lab_files, problems);
    let named = LabFiles {
        lab_files: &contents.paths,
        others: &listed.others,
    };
    let (registers, lost) = registers::read(config, named, problems)?;
    let packages = registers.packages.iter().map(|one| &one.package_code);
    let blinds = registers.blinds.iter().map(|one| &one.package_code);
    let codes = Codes::new(packages.chain(blinds).map(String::as_str));
    let taken = {
        let reports = Reports::new(&registers, named);
        problems.take(|problem| reports.is_replaced(&problem.place.file));
        let files: Vec<_> = contents
            .distinct
            .iter()
            .filter(|(file, _)| !reports.is_replaced(&file.name))
            .collect();
        read_all(&files, (&codes, &reports), config, progress)
    };
    let mut gathered = Gathered {
        registers,
        ..Gathered::default()
    };
    for taken in taken {
        gathered.add(taken, problems);
    }
    let doubts = {
        let reports = Reports::new(&gathered.registers, named);
        corrections::doubts(
            &gathered.registers,
            &gathered.extractions,
            &reports,
            problems,
        )
    };
    gathered.registers.doubts.extend(doubts);
    gathered.others = listed.others;
    consequences::fold(&lost, problems);
    Ok(gathered)
}

/// Reads the files on as many threads as there are processors; the results stand in the order of the files.
fn read_all(
    files: &[&(InboxFile, String)],
    (codes, reports): (&Codes, &Reports<'_>),
    config: &Config,
    progress: &(dyn Fn(usize, usize) + Sync),
) -> Vec<Taken> {
    let (next, done) = (AtomicUsize::new(0), AtomicUsize::new(0));
    let large = Mutex::new(());
    let slots: Vec<OnceLock<Taken>> = files.iter().map(|_| OnceLock::new()).collect();
    let work = || {
        loop {
            let index = next.fetch_add(1, Relaxed);
            let Some((file, sha256)) = files.get(index).copied() else {
                return;
            };
            // One large file at a time: together they could hold more than any one of them may.
            let _alone = (file.size > LARGE).then(|| large.lock());
            let taken = lab_file::take(file, sha256, codes, (config, reports));
            slots[index].set(taken).expect("each index is taken once");
            progress(done.fetch_add(1, Relaxed) + 1, files.len());
        }
    };
    let threads = std::thread::available_parallelism()
        .map_or(1, usize::from)
        .min(files.len());
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(work);
        }
    });
    slots.into_iter().filter_map(OnceLock::into_inner).collect()
}

/// Bytes from which on a file is read alone.
const LARGE: u64 = 1024 * 1024;

impl Gathered {
    fn add(&mut self, taken: Taken, problems: &mut Problems) {
        problems.append(taken.problems);
        if let Some((file, understanding)) = taken.read {
            self.lab_files.push(file);
            self.understandings.push(understanding);
        }
        self.extractions.extend(taken.extractions);
        self.plates.extend(taken.plates);
    }
}
