//! Files -> tables -> registers and extractions: reading what people and labs wrote, and never guessing.

/// What the lab sent.
pub mod inbox;

/// Bytes -> cells as written.
pub mod tables;

/// Text, folded so that what looks alike is alike.
pub mod text;

/// Package codes, and what a spreadsheet does to them.
pub mod codes;

/// Days as people write them.
pub mod dates;

/// What people keep.
pub mod registers;

/// The words of lab files.
pub mod vocabulary;

/// Figures as written.
pub mod numbers;

/// Units and quantities.
pub mod units;

/// One heading and its meaning.
pub mod headings;

/// A sheet and its tables.
pub mod finding;

/// What stands outside the tables.
pub mod facts;

/// How a table is read.
pub mod plan;

/// What each row of a table is.
pub mod rows;

/// One cell and what the lab said.
pub mod values;

/// A cell as an interval in ppm gluten.
pub mod readings;

/// The lab's means, recomputed.
pub mod means;

/// A table's rows as extractions.
pub mod extractions;

/// A lab file from its bytes to its extractions.
pub mod lab_file;

use crate::config::Config;
use crate::gather::codes::Codes;
use crate::gather::inbox::InboxFile;
use crate::gather::lab_file::Taken;
use crate::model::extraction::Extraction;
use crate::model::place::{LabFile, Place};
use crate::model::problem::{Code, Problems};
use crate::model::registers::Registers;
use crate::model::understanding::Understanding;
use anyhow::Result;
use std::collections::BTreeMap;
use std::sync::Arc;

/// All that was read.
#[derive(Debug, Default)]
pub struct Gathered {
    /// What people keep.
    pub registers: Registers,
    /// The lab files that were read, by path; each content once.
    pub lab_files: Vec<Arc<LabFile>>,
    /// How each was understood, in the same order.
    pub understandings: Vec<Understanding>,
    /// Every extraction of a registered package, by file and place.
    pub extractions: Vec<Extraction>,
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
    let files = inbox::list(config, problems)?;
    let (files, paths) = lab_file::hash_all(files, problems);
    let registers = registers::read(config, &paths, problems)?;
    let codes = Codes::new(
        registers
            .packages
            .iter()
            .map(|package| package.package_code.as_str()),
    );
    let mut gathered = Gathered {
        registers,
        ..Gathered::default()
    };
    for (index, (file, sha256)) in files.iter().enumerate() {
        progress(index, files.len());
        let taken = lab_file::take(file, sha256, &codes, config);
        gathered.add(taken, problems);
    }
    progress(files.len(), files.len());
    Ok(gathered)
}

impl Gathered {
    fn add(&mut self, taken: Taken, problems: &mut Problems) {
        problems.append(taken.problems);
        if let Some((file, understanding)) = taken.read {
            self.lab_files.push(file);
            self.understandings.push(understanding);
        }
        self.extractions.extend(taken.extractions);
    }
}

/// Files by content: those to read, and each path with the one under which its content is read.
type Distinct = (Vec<(InboxFile, String)>, BTreeMap<String, String>);

fn same_file(file: &InboxFile, first: &str, problems: &mut Problems) {
    problems.add(
        Code::SameFile,
        Place::file(file.name.clone()),
        format!("this file has the same content as {first}; it counts once"),
        "",
    );
}
