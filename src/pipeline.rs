//! The whole run, one line a step: start reading here.
//!
//! Only this file joins the stages: gather, judge, render, save. Everything that is decided is a pure function of the
//! programme folder; the date is handed in.

/// Publishing: numbers, revisions, the archive.
pub mod issue;

/// Archives against their manifests and against each other.
pub mod archive;

use crate::config::Config;
use crate::gather;
use crate::judge;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::document::Document;
use crate::model::problem::Problems;
pub use crate::render::facts::edition::Purpose;
use crate::render::{self, Engine, Failure, Job};
pub use crate::save::lock::{self, Lock};
use crate::save::out::{Outcome, Staging};
use crate::save::{report, results, tables};
use anyhow::{Result, bail};
use chrono::NaiveDate;
use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};

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
    let gathered = gather::gather(config, &mut problems, &|done, total| {
        listener(Progress::Reading { done, total })
    })?;
    let judged = judge::judge(
        &gathered.registers,
        gathered.extractions,
        config,
        as_of,
        &mut problems,
    );
    Ok(Decided {
        products: judged.products,
        statistics: judged.statistics,
        registers: gathered.registers,
        lab_files: gathered.lab_files,
        understandings: gathered.understandings,
        problems,
    })
}

/// What is to be made.
#[derive(Clone, Debug)]
pub struct Wanted<'a> {
    /// Why: to look at, or to publish.
    pub purpose: Purpose,
    /// These products only; none means everything.
    pub only: &'a [String],
    /// Make anew even what has not changed.
    pub force: bool,
}

/// What was made.
#[derive(Clone, Debug)]
pub struct Made {
    /// What became of the files.
    pub outcome: Outcome,
    /// Documents that could not be made, since a template has a mistake.
    pub failures: Vec<Failure>,
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
    prepare(decided, config, wanted, out, listener)?.finish()
}

/// Everything that is made, waiting beside its place.
struct Prepared {
    staging: Staging,
    failures: Vec<Failure>,
    is_partial: bool,
}

impl Prepared {
    /// Moves everything into the outputs folder together.
    fn finish(self) -> Result<Made> {
        Ok(Made {
            outcome: self.staging.finish(self.is_partial)?,
            failures: self.failures,
        })
    }
}

/// Makes every document beside its place; nothing can be seen of it yet.
fn prepare(
    decided: &Decided,
    config: &Config,
    wanted: &Wanted<'_>,
    out: &Path,
    listener: Listener<'_>,
) -> Result<Prepared> {
    let products = chosen(decided, wanted.only)?;
    let engine = Engine::new(config)?;
    let staging = Staging::open(out)?;
    let tasks = tasks(&products);
    let failures = typeset(&engine, &tasks, config, wanted, &staging, listener)?;
    for document in texts(decided, config) {
        staging.put(&document.path, &document.bytes, None)?;
    }
    Ok(Prepared {
        staging,
        failures,
        is_partial: !wanted.only.is_empty(),
    })
}

/// The products that were asked for.
fn chosen<'a>(decided: &'a Decided, only: &[String]) -> Result<Vec<&'a JudgedProduct>> {
    let is_wanted = |id: &str| only.is_empty() || only.iter().any(|wanted| wanted == id);
    for wanted in only {
        if !decided
            .products
            .iter()
            .any(|judged| judged.verdict.product.product_id == *wanted)
        {
            bail!("there is no product {wanted} with a package that was sent or tested");
        }
    }
    Ok(decided
        .products
        .iter()
        .filter(|judged| is_wanted(&judged.verdict.product.product_id))
        .collect())
}

/// One document to be typeset.
enum Task<'a> {
    Sheet(&'a JudgedProduct),
}

fn tasks<'a>(products: &[&'a JudgedProduct]) -> Vec<Task<'a>> {
    products.iter().map(|judged| Task::Sheet(judged)).collect()
}

fn job(task: &Task<'_>, config: &Config, wanted: &Wanted<'_>) -> Result<Job> {
    match task {
        Task::Sheet(judged) => {
            let facts = render::facts::sheet::facts(judged, config, &wanted.purpose);
            render::facts::sheet::job(judged, &facts, config)
        }
    }
}

/// Typesets what is not in place already and stages it.
fn typeset(
    engine: &Engine,
    tasks: &[Task<'_>],
    config: &Config,
    wanted: &Wanted<'_>,
    staging: &Staging,
    listener: Listener<'_>,
) -> Result<Vec<Failure>> {
    let (done, total) = (AtomicUsize::new(0), tasks.len());
    let step = || {
        listener(Progress::Typesetting {
            done: done.fetch_add(1, Ordering::Relaxed) + 1,
            total,
        })
    };
    listener(Progress::Typesetting { done: 0, total });
    let prepare = |task: &Task<'_>| {
        let job = job(task, config, wanted)?;
        if !wanted.force && staging.keep(&job.path, &job.content_key(engine))? {
            step();
            return Ok(None);
        }
        Ok(Some(job))
    };
    render::typeset(engine, tasks, &prepare, &|typeset| {
        staging.put(&typeset.path, &typeset.pdf, Some(typeset.content_key))?;
        step();
        Ok(())
    })
}

/// The files that need no typesetting.
fn texts(decided: &Decided, config: &Config) -> Vec<Document> {
    let mut texts = vec![
        Document::text("inbox-report.txt", report::text(decided)),
        Document::text("data/results.json", results::json(decided, config)),
    ];
    texts.extend(tables::documents(decided, config));
    texts
}

/// Everything that was decided, as the data file shows it.
pub fn results_json(decided: &Decided, config: &Config) -> String {
    results::json(decided, config)
}

/// Every problem by file, in words.
pub fn inbox_report(decided: &Decided) -> String {
    report::text(decided)
}
