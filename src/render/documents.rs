//! A job becomes a PDF (PDF/A-3a and PDF/UA-1); many jobs are typeset side by side with flat memory.

use crate::guard;
use crate::render::Job;
use crate::render::engine::{Engine, TEMPLATE_FOLDER};
use crate::render::overrun::{ToMake, watched};
use crate::render::world::JobWorld;
use anyhow::{Context, Result};
use chrono::Datelike;
use std::fmt;
use std::panic::resume_unwind;
use std::sync::Mutex;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use typst::diag::SourceDiagnostic;
use typst::foundations::{Datetime, Smart};
use typst::{World, WorldExt};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};
use typst_render::RenderOptions;

/// A finished document.
#[derive(Clone, Debug)]
pub struct Typeset {
    /// Path below the folder of outputs, with `/`.
    pub path: String,
    /// The PDF.
    pub pdf: Vec<u8>,
    /// The job's [`Job::content_key`].
    pub content_key: String,
}

/// A document that could not be made, because its template has a mistake.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Failure {
    /// The document that is missing.
    pub path: String,
    /// What is wrong, each with its place.
    pub faults: Vec<Fault>,
}

/// One mistake in a template, or in what it was given.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The file below the programme folder, where one is known.
    pub file: Option<String>,
    /// Line and column, from 1.
    pub at: Option<LineColumn>,
    /// What is wrong.
    pub message: String,
    /// What to do.
    pub hints: Vec<String>,
}

/// A place in a text file, from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LineColumn {
    /// The line.
    pub line: usize,
    /// The character in it.
    pub column: usize,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (&self.file, self.at) {
            (Some(file), Some(at)) => {
                write!(f, "{file}, line {}, character {}: ", at.line, at.column)?
            }
            (Some(file), None) => write!(f, "{file}: ")?,
            (None, _) => {}
        }
        f.write_str(&self.message)?;
        self.hints
            .iter()
            .try_for_each(|hint| write!(f, " Hint: {hint}."))
    }
}

impl fmt::Display for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} could not be made", self.path)?;
        self.faults
            .iter()
            .try_for_each(|fault| write!(f, "\n  {fault}"))
    }
}

/// Typesets all items on all cores and hands each document to `sink` as soon as it is done, in no fixed order.
///
/// `prepare` makes an item's job on the thread that typesets it, so that jobs do not pile up in memory; none means that
/// there is nothing to do for it. A document that fails does not stop the others: all failures come back, by path.
///
/// # Errors
/// Where `prepare` or `sink` fails: then no further documents are begun.
pub fn typeset<T: Sync>(
    engine: &Engine,
    items: &[T],
    prepare: &(dyn Fn(&T) -> Result<Option<Job>> + Sync),
    sink: &(dyn Fn(Typeset) -> Result<()> + Sync),
) -> Result<Vec<Failure>> {
    let threads = std::thread::available_parallelism()
        .map_or(1, usize::from)
        .min(items.len().max(1));
    let batch = Batch {
        engine,
        items,
        prepare,
        sink,
        threads,
        next: AtomicUsize::new(0),
        done: AtomicUsize::new(0),
        long: AtomicUsize::new(0),
        stopped: AtomicBool::new(false),
        failures: Mutex::new(Vec::new()),
    };
    let work = || batch.work();
    let outcomes: Vec<Result<()>> = std::thread::scope(|scope| {
        let spawn = |_| {
            std::thread::Builder::new()
                .stack_size(STACK)
                .spawn_scoped(scope, work)
        };
        let workers: Vec<_> = (0..threads).map(spawn).collect();
        let joined = workers.into_iter().map(|worker| {
            let handle = worker.context("cannot start a thread for typesetting")?;
            handle.join().unwrap_or_else(|panic| resume_unwind(panic))
        });
        joined.collect()
    });
    outcomes.into_iter().collect::<Result<()>>()?;
    let mut failures = batch
        .failures
        .into_inner()
        .expect("no worker panicked while it held the list");
    failures.sort_by(|a, b| a.path.cmp(&b.path));
    Ok(failures)
}

/// Typeset and PDF export recurse deeply.
const STACK: usize = 32 << 20;

struct Batch<'a, T> {
    engine: &'a Engine,
    items: &'a [T],
    prepare: &'a (dyn Fn(&T) -> Result<Option<Job>> + Sync),
    sink: &'a (dyn Fn(Typeset) -> Result<()> + Sync),
    threads: usize,
    next: AtomicUsize,
    done: AtomicUsize,
    /// How many long documents are being set just now.
    long: AtomicUsize,
    stopped: AtomicBool,
    failures: Mutex<Vec<Failure>>,
}

impl<T: Sync> Batch<'_, T> {
    fn work(&self) -> Result<()> {
        // Typst and the PDF writer use rayon inside. On a shared pool a waiting document would begin the next one on top
        // of itself until the stack ends, so each thread brings a pool of its own.
        let pool = rayon::ThreadPoolBuilder::new()
            .num_threads(1)
            .stack_size(STACK)
            .build()?;
        while !self.stopped.load(Ordering::Relaxed) {
            let next = self.next.fetch_add(1, Ordering::Relaxed);
            let Some(item) = self.items.get(next) else {
                break;
            };
            if let Err(error) = self.one(&pool, item) {
                self.stopped.store(true, Ordering::Relaxed);
                return Err(error);
            }
        }
        Ok(())
    }

    fn one(&self, pool: &rayon::ThreadPool, item: &T) -> Result<()> {
        let Some(job) = (self.prepare)(item)? else {
            return Ok(());
        };
        let long = usize::from(job.template != SHEET);
        self.long.fetch_add(long, Ordering::Relaxed);
        let made = pool.install(|| guard::naming(&job.path, || pdf(self.engine, &job)));
        self.long.fetch_sub(long, Ordering::Relaxed);
        self.forget();
        match made {
            Ok(pdf) => (self.sink)(Typeset {
                content_key: job.content_key(self.engine.fingerprint()),
                path: job.path,
                pdf,
            }),
            Err(faults) => {
                let mut failures = self
                    .failures
                    .lock()
                    .expect("no worker panicked while it held the list");
                failures.push(Failure {
                    path: job.path,
                    faults,
                });
                Ok(())
            }
        }
    }

    /// Forgets what was not used of late. Next to nothing of a document serves another one, and kept it grows by megabytes a
    /// sheet; what does serve (the style, the ends of the ruler) is in use all the time. A long document lives on what is
    /// remembered of its own pages: while one is set, this is done more rarely.
    fn forget(&self) {
        const BESIDE_A_LONG_ONE: usize = 64;
        let round = match self.long.load(Ordering::Relaxed) {
            0 => self.threads,
            _ => BESIDE_A_LONG_ONE,
        };
        if (self.done.fetch_add(1, Ordering::Relaxed) + 1).is_multiple_of(round) {
            typst::comemo::evict(1);
        }
    }
}

/// Typesets one document, watched where its template or a font is the programme's own.
///
/// # Errors
/// All mistakes that the template has, each with its place.
pub fn pdf(engine: &Engine, job: &Job) -> Result<Vec<u8>, Vec<Fault>> {
    watched(engine, to_make(job), || {
        let (world, document) = lay_out(engine, job)?;
        typst_pdf::pdf(&document, &options(job)).map_err(|found| explain(&world, &found))
    })
}

/// What is watched of a job.
fn to_make(job: &Job) -> ToMake<'_> {
    ToMake {
        path: &job.path,
        template: job.template,
        is_long: matches!(job.template, "summary.typ" | "digest.typ"),
    }
}

/// The first page of a document as a picture (PNG), `pixels` of it in a point.
///
/// # Errors
/// As [`pdf`].
pub fn png(engine: &Engine, job: &Job, pixels: f64) -> Result<Vec<u8>, Vec<Fault>> {
    let document = pages(engine, job)?;
    let page = document
        .pages()
        .first()
        .expect("a document has a page, if an empty one");
    let options = RenderOptions {
        pixel_per_pt: pixels.into(),
        ..RenderOptions::default()
    };
    let drawn = typst_render::render(page, &options);
    Ok(drawn
        .encode_png()
        .expect("a drawn page has pixels, and memory takes them"))
}

/// The pages of one document, before they are a PDF: where each piece of text and each picture stands.
///
/// # Errors
/// As [`pdf`].
pub fn pages(engine: &Engine, job: &Job) -> Result<PagedDocument, Vec<Fault>> {
    watched(engine, to_make(job), || {
        lay_out(engine, job).map(|(_, document)| document)
    })
}

/// Documents of this template are short, and there are many of them.
const SHEET: &str = "sheet.typ";

fn lay_out<'a>(
    engine: &'a Engine,
    job: &'a Job,
) -> Result<(JobWorld<'a>, PagedDocument), Vec<Fault>> {
    if job.one_page {
        let (world, document) = lay_out_as(engine, job, true)?;
        if document.pages().len() == 1 {
            return Ok((world, document));
        }
    }
    lay_out_as(engine, job, false)
}

fn lay_out_as<'a>(
    engine: &'a Engine,
    job: &'a Job,
    one_page: bool,
) -> Result<(JobWorld<'a>, PagedDocument), Vec<Fault>> {
    let world = JobWorld::new(engine, job, one_page);
    let compiled = typst::compile::<PagedDocument>(&world);
    let document = compiled.output.map_err(|found| explain(&world, &found))?;
    // A warning is a font or a glyph that is not there: on paper that is a mistake.
    if compiled.warnings.is_empty() {
        Ok((world, document))
    } else {
        Err(explain(&world, &compiled.warnings))
    }
}

fn explain(world: &JobWorld<'_>, found: &[SourceDiagnostic]) -> Vec<Fault> {
    found.iter().map(|one| fault(world, one)).collect()
}

fn options(job: &Job) -> PdfOptions {
    let date = job.date;
    // Both are below 32, so that neither cast loses anything.
    let day = Datetime::from_ymd(date.year(), date.month() as u8, date.day() as u8)
        .expect("a calendar date is one here, too");
    let standards = PdfStandards::new(&[PdfStandard::A_3a, PdfStandard::Ua_1])
        .expect("PDF/A-3a and PDF/UA-1 share PDF 1.7");
    PdfOptions {
        ident: Smart::Custom(job.ident.clone()),
        creator: Smart::Custom(Some(format!("galleyproof {}", env!("CARGO_PKG_VERSION")))),
        timestamp: Some(Timestamp::new_utc(day)),
        standards,
        ..PdfOptions::default()
    }
}

fn fault(world: &JobWorld<'_>, found: &SourceDiagnostic) -> Fault {
    let id = found.span.id();
    let range = world.range(found.span);
    let at = id.zip(range).and_then(|(id, range)| {
        let file = world.file(id).ok()?;
        let (line, column) = file.lines().ok()?.byte_to_line_column(range.start)?;
        Some(LineColumn {
            line: line + 1,
            column: column + 1,
        })
    });
    Fault {
        file: id.map(|id| format!("{TEMPLATE_FOLDER}/{}", id.vpath().get_without_slash())),
        at,
        message: found.message.to_string(),
        hints: found
            .hints
            .iter()
            .map(|hint| in_our_words(&hint.v))
            .collect(),
    }
}

/// Hints that speak of a command line that does not exist here.
fn in_our_words(hint: &str) -> String {
    if hint.contains("--root") || hint.contains("project root") {
        return format!("a template can read files of {TEMPLATE_FOLDER}/ alone");
    }
    hint.to_owned()
}
