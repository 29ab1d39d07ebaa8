//! The whole run, one line a step: start reading here.
//!
//! Only this folder joins the stages: gather, measure, judge, render, save. Everything that is decided is a pure function of the
//! programme folder; the date is handed in.

/// Documents are made beside their place, then moved in.
mod making;

/// Which documents there are.
mod papers;

/// Of which some need no typesetting.
mod texts;

/// Publishing: numbers, revisions, the archive.
pub mod issue;

/// The register of what was issued, held against the archive.
pub mod healing;

/// What goes into the archive.
mod bagging;

/// What may be published of it.
pub mod states;

/// An entry in the register of what passed between the programme and a maker.
pub mod logging;

/// What is printed for one product, or goes to the lab.
pub mod single;

/// The plan of a round.
pub mod planning;

/// The packages with their photographs.
pub mod contact_sheet;

/// Which tables a verdict rests on.
pub mod tables;

/// What published sheets have behind them.
mod behind;

/// Names of files about labs.
mod lab_names;

/// Names of files about plates.
mod plate_names;

/// Archives against their manifests and against each other.
pub mod archive;

use crate::config::Config;
use crate::gather::{self, exhibits};
use crate::guard;
use crate::judge;
use crate::measure;
use crate::model::decided::Decided;
use crate::model::problem::Problems;
use crate::model::publication::Audience;
pub use crate::render::Failure;
pub use crate::render::overrun::when_passed as when_a_template_overruns;
pub use crate::save::lock::{self, Lock};
pub use crate::save::out::unfinished;
use crate::save::{alone, report, results};
use crate::words::english;
use anyhow::Result;
use chrono::NaiveDate;
pub use making::{Made, Wanted};
use std::path::Path;

/// How far a long step has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Progress {
    /// Lab files read, of all.
    Reading {
        /// Read so far.
        done: usize,
        /// Of how many.
        total: usize,
    },
    /// Documents made, of all.
    Typesetting {
        /// Made so far.
        done: usize,
        /// Of how many.
        total: usize,
    },
}

/// Where progress is told.
pub type Listener<'a> = &'a (dyn Fn(Progress) + Sync);

/// Reads the folder and decides: all that `check` needs.
///
/// `as_of` is the day on which replies count as overdue; without one nothing is overdue.
///
/// # Errors
/// Where nothing can be read at all: no registers, no inbox. What is wrong with single files, rows and cells is in the
/// list of problems instead.
pub fn decide(
    config: &Config,
    as_of: Option<NaiveDate>,
    listener: Listener<'_>,
) -> Result<Decided> {
    let mut problems = Problems::default();
    let mut gathered = gather::gather(config, &mut problems, &|done, total| {
        listener(Progress::Reading { done, total })
    })?;
    healing::note(&mut gathered.registers, config, &mut problems)?;
    let plates = guard::naming("the plates in inbox/", || {
        let reported = (&*gathered.extractions, &*gathered.registers.corrections);
        measure::measure(gathered.plates, reported, config, &mut problems)
    });
    let judged = guard::naming(
        "the results in inbox/ and registers/ taken together",
        || {
            judge::judge(
                &gathered.registers,
                gathered.extractions,
                config,
                as_of,
                &mut problems,
            )
        },
    );
    let mut products = judged.products;
    exhibits::note(
        &mut products,
        &gathered.lab_files,
        &gathered.others,
        &mut problems,
    );
    let mut decided = Decided {
        products,
        statistics: judged.statistics,
        registers: gathered.registers,
        lab_files: gathered.lab_files,
        understandings: gathered.understandings,
        plates,
        problems,
        audience: Audience::Programme,
        under_revision: Vec::new(),
        with_lab: 0,
    };
    states::note(&mut decided, config, as_of);
    behind::note(&mut decided, config)?;
    Ok(decided)
}

/// Makes every document and moves them into the outputs folder together.
///
/// # Errors
/// Where a product that was asked for is not there, or a file cannot be read or written: then the outputs are as before.
pub fn make(
    decided: &Decided,
    config: &Config,
    wanted: &Wanted<'_>,
    out: &Path,
    listener: Listener<'_>,
) -> Result<Made> {
    making::prepare(decided, config, wanted, out, listener)?.finish()
}

/// Lays out a new programme folder.
///
/// # Errors
/// Where a file of it cannot be written.
pub fn lay_out(dir: &Path, laid_out: &[(&str, &[u8])]) -> Result<()> {
    alone::programme(dir, laid_out)
}

/// The registers as one workbook, as a new programme folder begins with it.
pub fn blank_registers() -> Vec<u8> {
    crate::save::tables::blank_registers()
}

/// Everything that was decided, as the data file shows it.
pub fn results_json(decided: &Decided, config: &Config) -> String {
    results::json(decided, config)
}

/// Every problem by file, in English, for the screen.
pub fn inbox_report(decided: &Decided) -> String {
    report::text(decided, english())
}
