//! Documents are made beside their place, then moved in together: the second half of a run.
//!
//! What is in place already and was made from the same things is not made again.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::document::Document;
use crate::model::publication::Correction;
use crate::pipeline::papers::{Paper, plates, products_papers, queries};
use crate::pipeline::texts::texts;
use crate::pipeline::{Listener, Progress, states};
use crate::render::facts::digest::DigestFacts;
use crate::render::facts::query::QueryRow;
use crate::render::overrun::{ToMake, watched};
use crate::render::{self, Engine, Failure, Job, facts, newsletter, web, words};
use crate::save::drafts::{self, Corrected, Question, Wording};
use crate::save::mail::Enclosed;
use crate::save::out::{Outcome, Staging};
use anyhow::{Result, bail};
use chrono::NaiveDate;
use rayon::prelude::*;
use std::collections::BTreeSet;
use std::path::Path;
use std::sync::OnceLock;
use std::sync::atomic::{AtomicUsize, Ordering};

/// What is to be made.
#[derive(Clone, Debug)]
pub struct Wanted<'a> {
    /// The day that a proof bears, where one is given.
    pub made_on: Option<NaiveDate>,
    /// The sheets and letters of these products only; none means everything.
    pub only: &'a [String],
    /// Make anew even what has not changed.
    pub force: bool,
    /// Make each sheet in large print as well.
    pub large_print: bool,
}

/// What was made.
#[derive(Clone, Debug)]
pub struct Made {
    /// What became of the files.
    pub outcome: Outcome,
    /// Documents that could not be made, since a template has a mistake.
    pub failures: Vec<Failure>,
}

/// Everything that is made, waiting beside its place.
pub struct Prepared {
    /// Where it waits.
    pub staging: Staging,
    /// What could not be made.
    pub failures: Vec<Failure>,
    is_partial: bool,
}

impl Prepared {
    /// Moves everything into the outputs folder together.
    ///
    /// # Errors
    /// Where a file cannot be moved.
    pub fn finish(self) -> Result<Made> {
        // A document that could not be made is no reason to clear away the one of an earlier run.
        let is_partial = self.is_partial || !self.failures.is_empty();
        Ok(Made {
            outcome: self.staging.finish(is_partial)?,
            failures: self.failures,
        })
    }
}

/// Makes every document beside its place; nothing can be seen of it yet.
///
/// # Errors
/// Where a product that was asked for is not there, or a file cannot be read or written.
pub fn prepare(
    decided: &Decided,
    config: &Config,
    wanted: &Wanted<'_>,
    out: &Path,
    listener: Listener<'_>,
) -> Result<Prepared> {
    let products = chosen(decided, wanted.only)?;
    let is_partial = !wanted.only.is_empty();
    let run = Run {
        config,
        wanted,
        engine: Engine::new(config)?,
        staging: Staging::open(out)?,
    };
    let reported = states::reported(decided, config);
    let digest = match is_partial {
        true => None,
        false => Some(facts::digest::digest(&reported, config, run.made_on())?),
    };
    let mut tasks: Vec<Task<'_>> = products_papers(&products, wanted.large_print)
        .into_iter()
        .map(Task::Typeset)
        .collect();
    if let Some(digest) = &digest {
        tasks.insert(
            summarys_place(tasks.len()),
            Task::Typeset(Paper::Summary(&reported)),
        );
        tasks.push(Task::Typeset(Paper::Digest(digest)));
        tasks.push(Task::Newsletter(digest));
        tasks.extend(
            queries(decided, config, run.made_on())
                .into_iter()
                .map(Task::Typeset),
        );
        tasks.extend(plates(decided).map(Task::Typeset));
    }
    tasks.push(Task::Texts(decided));
    let mut failures = run.make(&tasks, listener)?;
    run.drafts(&tasks, decided, &failures)?;
    if !is_partial {
        run.web(&states::for_anyone(decided, config), &mut failures)?;
    }
    Ok(Prepared {
        staging: run.staging,
        failures,
        is_partial,
    })
}

/// Makes what anyone may see beside its place, apart from the sheets, which are the same for all, and the pages.
///
/// # Errors
/// As [`prepare`].
pub fn prepare_for_anyone(
    view: &Decided,
    config: &Config,
    wanted: &Wanted<'_>,
    out: &Path,
) -> Result<Prepared> {
    let run = Run {
        config,
        wanted,
        engine: Engine::new(config)?,
        staging: Staging::open(out)?,
    };
    let digest = facts::digest::digest(view, config, run.made_on())?;
    let tasks = [
        Task::Typeset(Paper::Summary(view)),
        Task::Typeset(Paper::Digest(&digest)),
        Task::Newsletter(&digest),
        Task::Texts(view),
    ];
    Ok(Prepared {
        failures: run.make(&tasks, &|_| ())?,
        staging: run.staging,
        is_partial: false,
    })
}

/// Where the summary stands among the papers of single products: as far before their end as it takes itself (a row of its
/// register costs about a sixteenth of a sheet), so that it is not the tail. Not earlier: the typesetter's memory has grown
/// with it, and every document after it pays for that.
fn summarys_place(papers: usize) -> usize {
    papers - papers / 16
}

/// The products that were asked for.
///
/// # Errors
/// Where one of them has no package that was sent or tested.
pub fn chosen<'a>(decided: &'a Decided, only: &[String]) -> Result<Vec<&'a JudgedProduct>> {
    let products = &decided.products;
    let is = |judged: &JudgedProduct, id: &String| judged.verdict.product.product_id == *id;
    for wanted in only {
        if !products.iter().any(|judged| is(judged, wanted)) {
            bail!("there is no product {wanted} with a package that was sent or tested");
        }
    }
    let wanted = |judged: &&JudgedProduct| only.is_empty() || only.iter().any(|id| is(judged, id));
    Ok(products.iter().filter(wanted).collect())
}

/// What is made beside one another on all threads.
enum Task<'a> {
    /// A document to be typeset.
    Typeset(Paper<'a>),
    /// The newsletter's files beside its PDF.
    Newsletter(&'a DigestFacts),
    /// The data files and the report on the inbox.
    Texts(&'a Decided),
}

/// What the steps of one run share.
struct Run<'a> {
    config: &'a Config,
    wanted: &'a Wanted<'a>,
    engine: Engine,
    staging: Staging,
}

impl Run<'_> {
    fn made_on(&self) -> Option<NaiveDate> {
        self.wanted.made_on
    }

    /// A document's job, as far as its key needs it; [`Run::complete`] does the rest.
    fn outline(&self, paper: &Paper<'_>) -> Result<Job> {
        let (config, made_on) = (self.config, self.made_on());
        match paper {
            Paper::Summary(decided) => {
                facts::summary::job(&facts::summary::summary(decided, config, made_on)?)
            }
            Paper::Digest(digest) => facts::digest::job(digest),
            Paper::Sheet(judged) => {
                let facts = facts::sheet::facts(judged, config, made_on);
                facts::carried::outline(judged, &facts, config)
            }
            Paper::LargePrint(judged) => {
                let facts = facts::sheet::facts(judged, config, made_on);
                facts::carried::large_print(judged, &facts)
            }
            Paper::Notice(judged) => match judged.publication.correction {
                Some(correction) => {
                    let facts = facts::correction::facts(judged, correction, config, made_on);
                    facts::correction::job(judged, &facts)
                }
                None => {
                    let facts = facts::notice::facts(judged, config, made_on);
                    facts::notice::job(&judged.verdict, &facts)
                }
            },
            Paper::Query {
                lab,
                name,
                rows,
                latest,
            } => {
                let facts = facts::query::facts(lab, rows.clone(), config, made_on);
                let job = facts::query::job(&facts, *latest)?;
                Ok(Job {
                    path: format!("queries/{name}.pdf"),
                    ident: format!("query {name}"),
                    ..job
                })
            }
            Paper::Plate {
                measured,
                name,
                latest,
            } => facts::plate::job(measured, name, config, *latest),
        }
    }

    fn complete(&self, job: &mut Job, paper: &Paper<'_>) -> Result<()> {
        match paper {
            Paper::Sheet(judged) => facts::carried::complete(job, judged, self.config),
            _ => Ok(()),
        }
    }

    /// Makes and stages what is not in place already.
    fn make(&self, tasks: &[Task<'_>], listener: Listener<'_>) -> Result<Vec<Failure>> {
        let total = tasks
            .iter()
            .filter(|task| matches!(task, Task::Typeset(_)))
            .count();
        let done = AtomicUsize::new(0);
        let step = || {
            let done = done.fetch_add(1, Ordering::Relaxed) + 1;
            listener(Progress::Typesetting { done, total });
        };
        listener(Progress::Typesetting { done: 0, total });
        let newsletter = OnceLock::new();
        let prepare = |task: &Task<'_>| {
            match task {
                Task::Typeset(paper) => {
                    let mut job = self.outline(paper)?;
                    if !self.is_in_place(&job.path, &job.content_key(self.engine.fingerprint()))? {
                        self.complete(&mut job, paper)?;
                        return Ok(Some(job));
                    }
                    step();
                }
                Task::Newsletter(digest) => {
                    let failure = self.newsletter(digest)?;
                    newsletter.set(failure).expect("there is one newsletter");
                }
                Task::Texts(decided) => {
                    texts(decided, self.config, &|document| {
                        self.staging.put(&document.path, &document.bytes, None)
                    })?;
                }
            }
            Ok(None)
        };
        let mut failures = render::typeset(&self.engine, tasks, &prepare, &|made| {
            let key = Some(made.content_key);
            self.staging.put(&made.path, &made.pdf, key)?;
            step();
            Ok(())
        })?;
        failures.extend(newsletter.into_inner().flatten());
        Ok(failures)
    }

    /// The pages that can be put on a web site as they are: what is published, and an index to it.
    fn web(&self, view: &Decided, failures: &mut Vec<Failure>) -> Result<()> {
        let failed: BTreeSet<&str> = failures.iter().map(|one| one.path.as_str()).collect();
        let has_sheet = |stem: &str| !failed.contains(format!("sheets/{stem}.pdf").as_str());
        let pages = web::pages(view, self.config, &self.engine, &has_sheet)?;
        for page in &pages.documents {
            self.staging.put(&page.path, &page.bytes, None)?;
        }
        let stems = view.products.iter().map(|judged| judged.verdict.stem());
        for stem in stems.filter(|stem| has_sheet(stem)) {
            let bytes = self.staging.read(&format!("sheets/{stem}.pdf"))?;
            self.staging.put(&web::sheet_of(&stem), &bytes, None)?;
        }
        failures.extend(pages.failures);
        Ok(())
    }

    fn is_in_place(&self, path: &str, key: &str) -> Result<bool> {
        Ok(!self.wanted.force && self.staging.keep(path, key)?)
    }

    /// The newsletter's files beside its PDF.
    fn newsletter(&self, digest: &DigestFacts) -> Result<Option<Failure>> {
        let key = facts::digest::job(digest)?.content_key(self.engine.fingerprint());
        let mut are_in_place = true;
        for path in newsletter::paths(digest) {
            are_in_place &= self.is_in_place(&path, &key)?;
        }
        if are_in_place {
            return Ok(None);
        }
        match newsletter::files(digest, &self.engine) {
            Ok(mut files) => {
                let (about, day) = (&digest.subject, digest.date);
                files.push(drafts::newsletter(&files, about, day, self.config));
                for file in files {
                    self.staging
                        .put(&file.path, &file.bytes, Some(key.clone()))?;
                }
                Ok(None)
            }
            Err(failure) => Ok(Some(failure)),
        }
    }

    /// The mails that go with the letters; none where a letter could not be made.
    fn drafts(&self, tasks: &[Task<'_>], decided: &Decided, failures: &[Failure]) -> Result<()> {
        let wording = Wording::read(self.config)?;
        let failed: BTreeSet<&str> = failures.iter().map(|one| one.path.as_str()).collect();
        tasks.par_iter().try_for_each(|task| {
            let Task::Typeset(paper) = task else {
                return Ok(());
            };
            let letters = match paper {
                Paper::Notice(judged) => vec![
                    format!("notices/{}.pdf", judged.verdict.stem()),
                    format!("sheets/{}.pdf", judged.verdict.stem()),
                ],
                Paper::Query { .. } => vec![self.outline(paper)?.path],
                _ => return Ok(()),
            };
            if letters.iter().any(|path| failed.contains(path.as_str())) {
                return Ok(());
            }
            let mail = ToMake {
                path: "drafts",
                template: "mail.html",
                is_long: false,
            };
            let make = || self.draft(paper, &letters, decided, &wording);
            let draft = watched(&self.engine, mail, make)?;
            self.staging.put(&draft.path, &draft.bytes, None)
        })
    }

    fn draft(
        &self,
        paper: &Paper<'_>,
        letters: &[String],
        decided: &Decided,
        wording: &Wording,
    ) -> Result<Document> {
        let bytes: Vec<Vec<u8>> = letters
            .iter()
            .map(|path| self.staging.read(path))
            .collect::<Result<_>>()?;
        let enclosed = letters.iter().zip(&bytes).map(|(path, bytes)| Enclosed {
            // `notices/FH-01--1.pdf` goes out as `notice-FH-01--1.pdf`: two files of one name would be a puzzle.
            name: path
                .replace("notices/", "notice-")
                .replace("queries/", "query-")
                .replace("sheets/", ""),
            bytes,
        });
        let enclosed: Vec<Enclosed<'_>> = enclosed.collect();
        match paper {
            Paper::Query { lab, rows, .. } => {
                let stem = letters[0].replace("queries/", "query-").replace(".pdf", "");
                let questions: Vec<Question> = rows.iter().map(question).collect();
                let latest = decided.statistics.days.map(|(_, last)| last);
                let date = self.made_on().or(latest);
                let query = drafts::Query {
                    stem: &stem,
                    number: &facts::query::number(rows, self.config),
                    lab,
                    email: facts::query::email(lab, &self.config.lab),
                    questions: &questions,
                };
                drafts::to_lab(&query, self.config, date, wording, enclosed)
            }
            Paper::Notice(judged) => match judged.publication.correction {
                Some(correction) => {
                    let corrected = corrected(judged, correction, self.config, self.made_on());
                    drafts::correction(judged, self.config, &corrected, wording, enclosed)
                }
                None => {
                    let over = words::notice::over_packages(&judged.verdict, self.config);
                    let made_on = self.made_on();
                    drafts::to_maker(judged, self.config, made_on, &over, wording, enclosed)
                }
            },
            _ => unreachable!("only letters are mailed"),
        }
    }
}

/// What a correction says, in the words of its letter.
fn corrected(
    judged: &JudgedProduct,
    correction: Correction,
    config: &Config,
    made_on: Option<NaiveDate>,
) -> Corrected {
    let number = facts::sheet::sheet_number(&judged.verdict, config);
    Corrected {
        said: words::correction::said(judged, correction, &number, config),
        says: words::correction::says(judged, correction, config),
        why: words::correction::why(judged, correction, config),
        does: words::correction::does(correction, config),
        on: correction.issued_on.or(made_on),
    }
}

fn question(row: &QueryRow) -> Question {
    Question {
        package: row.code.clone(),
        asked: row.ask.clone(),
        reported: row.reported,
    }
}
