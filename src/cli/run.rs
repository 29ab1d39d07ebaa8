//! `run`: read, decide and make every document as a proof.

use crate::cli::args::Format;
use crate::cli::print::{self, Meter};
use crate::cli::{self, Ending, issue, overview};
use crate::config::Config;
use crate::model::problem::Severity;
use crate::pipeline::{self, Failure, Made};
use anyhow::Result;
use chrono::NaiveDate;
use std::fmt::Write;
use std::path::{Path, PathBuf};

/// What was asked for.
pub struct Wanted {
    /// Another outputs folder.
    pub out: Option<PathBuf>,
    /// These products only.
    pub only: Vec<String>,
    /// The day to print as "made on".
    pub date: Option<NaiveDate>,
    /// Make everything anew.
    pub force: bool,
    /// Make the sheets in large print as well.
    pub large_print: bool,
    /// How the result is printed.
    pub format: Format,
    /// Say nothing but the result and errors.
    pub quiet: bool,
}

/// Makes every document below the outputs folder.
pub fn run(dir: &Path, wanted: &Wanted) -> Result<Ending> {
    let config = Config::read(dir)?;
    let out = wanted
        .out
        .clone()
        .unwrap_or_else(|| config.root.join("out"));
    config.refuse_as_outputs(&out)?;
    let _lock = cli::lock(&out, "run")?;
    print::tell_unfinished(&out);
    if wanted.out.is_none() {
        issue::put_back(&config)?;
    }
    let meter = Meter::new(wanted.quiet);
    let listener = |progress| meter.note(progress);
    let decided = pipeline::decide(&config, wanted.date, &listener)?;
    let request = pipeline::Wanted {
        made_on: wanted.date,
        only: &wanted.only,
        force: wanted.force,
        large_print: wanted.large_print,
    };
    let made = pipeline::make(&decided, &config, &request, &out, &listener)?;
    drop(meter);
    match wanted.format {
        Format::Json => print::result(&pipeline::results_json(&decided, &config))?,
        Format::Text if wanted.quiet => {}
        Format::Text => {
            let mut text = overview::text(&decided, &config);
            text.push_str(&closing(
                &made,
                &out,
                decided.problems.count(Severity::Error),
            ));
            print::result(&text)?;
        }
    }
    for failure in told_once(&made.failures) {
        print::say(&failure);
    }
    Ok(if made.failures.is_empty() {
        Ending::of(&decided)
    } else {
        Ending::LookAtErrors
    })
}

/// Each fault with the documents that it keeps from being made: a mistake in a template is that of every sheet.
fn told_once(failures: &[Failure]) -> Vec<String> {
    let mut told: Vec<(String, String, usize)> = Vec::new();
    for failure in failures {
        let text = failure.to_string();
        let faults = text.split_once('\n').map_or("", |(_, faults)| faults);
        match told.iter_mut().find(|(_, known, _)| known == faults) {
            Some((.., more)) => *more += 1,
            None => told.push((failure.path.clone(), faults.to_owned(), 0)),
        }
    }
    let told = told.into_iter().map(|(path, faults, more)| match more {
        0 => format!("{path} could not be made\n{faults}"),
        more => format!("{path} and {more} more could not be made\n{faults}"),
    });
    told.collect()
}

/// What to say of a file that was left where it stood.
pub fn left(path: &str) -> String {
    format!(
        "{path} had been changed by someone and is made no more; it was left as it is. Remove it when it has served."
    )
}

/// What was written, where, and what to look at.
fn closing(made: &Made, out: &Path, errors: usize) -> String {
    let mut text = format!(
        "\n{} ",
        match made.outcome.written.len() {
            1 => "1 file written".to_owned(),
            n => format!("{n} files written"),
        }
    );
    write!(
        text,
        "below {}, {} as before",
        out.display(),
        made.outcome.unchanged
    )
    .expect("a string takes all");
    if !made.outcome.cleared.is_empty() {
        write!(
            text,
            ", {} of an earlier run cleared away",
            made.outcome.cleared.len()
        )
        .expect("a string takes all");
    }
    text.push_str(".\n");
    for (path, kept) in &made.outcome.set_aside {
        writeln!(
            text,
            "{path} had been changed by someone; it was kept as “{kept}”."
        )
        .expect("a string takes all");
    }
    for path in &made.outcome.left {
        writeln!(text, "{}", left(path)).expect("a string takes all");
    }
    if errors > 0 {
        let (what, them) = if errors == 1 {
            ("1 error needs", "It is")
        } else {
            ("errors need", "They are")
        };
        let what = if errors == 1 {
            what.to_owned()
        } else {
            format!("{errors} {what}")
        };
        writeln!(
            text,
            "{what} a person to look. {them} explained in {}.",
            out.join("inbox-report.txt").display()
        )
        .expect("a string takes all");
    }
    text
}
