//! `watch`: run, and again whenever something lands or changes.

mod bell;
mod folder;
mod settling;

use crate::cli::print;
use crate::cli::run::left;
use crate::cli::{Ending, issue, lock, own_fault};
use crate::config::Config;
use crate::guard;
use crate::model::problem::Severity;
use crate::pipeline::{self, Wanted};
use anyhow::Result;
use bell::Bell;
use chrono::NaiveDate;
use settling::{Change, Look, Settling};
use std::path::Path;
use std::time::{Duration, Instant};

/// Runs once, then once a change, until it is interrupted.
pub fn watch(dir: &Path, date: Option<NaiveDate>) -> Result<Ending> {
    // The settings must be sound to begin with; later mistakes are said and waited out.
    Config::read(dir)?;
    let root = dir.canonicalize().unwrap_or_else(|_| dir.to_owned());
    print::say(&format!("Watching {}. Ctrl-C ends it.", dir.display()));
    let mut say = |line: &str| {
        // A standard output that is closed is nobody's to tell; the outputs are written all the same.
        let _ = print::result(&format!("{line}\n"));
    };
    let whole_run = || guard::unless_faulty(|| one_run(dir, date));
    let mut run = |_: &[Change]| match whole_run().unwrap_or_else(|fault| Err(own_fault(&fault))) {
        Ok(line) => RunEnding::Ran(line),
        Err(error) => RunEnding::Failed(format!("Not run: {error:#}")),
    };
    let goes_on = || true;
    keep_watch(
        &root,
        &mut Duties {
            run: &mut run,
            say: &mut say,
            goes_on: &goes_on,
        },
    );
    Ok(Ending::Well)
}

/// One run, and what came of it in a line.
fn one_run(dir: &Path, date: Option<NaiveDate>) -> Result<String> {
    let config = Config::read(dir)?;
    let out = config.root.join("out");
    let _lock = lock(&out, "watch")?;
    print::tell_unfinished(&out);
    issue::put_back(&config)?;
    let decided = pipeline::decide(&config, date, &|_| {})?;
    let wanted = Wanted {
        made_on: date,
        only: &[],
        force: false,
        large_print: false,
    };
    let made = pipeline::make(&decided, &config, &wanted, &out, &|_| {})?;
    let errors = decided.problems.count(Severity::Error) + made.failures.len();
    let mut line = match made.outcome.written.len() {
        0 => "nothing to write".to_owned(),
        _ => format!("wrote {}", few(&sheets_first(made.outcome.written))),
    };
    if !made.outcome.cleared.is_empty() {
        line += &format!("; cleared away {}", few(&made.outcome.cleared));
    }
    for (path, kept) in &made.outcome.set_aside {
        line += &format!("; {path} had been changed by someone and was kept as “{kept}”");
    }
    for path in &made.outcome.left {
        print::say(&left(path));
    }
    for failure in &made.failures {
        print::say(&failure.to_string());
    }
    match errors {
        0 => {}
        1 => line += "; 1 error needs a person to look: see out/inbox-report.txt",
        n => line += &format!("; {n} errors need a person to look: see out/inbox-report.txt"),
    }
    Ok(line)
}

/// Sheets are what people wait for.
fn sheets_first(mut paths: Vec<String>) -> Vec<String> {
    paths.sort_by_key(|path| !path.starts_with("sheets/"));
    paths
}

/// A few names, the rest as a number.
fn few(names: &[String]) -> String {
    const NAMED: usize = 3;
    match names.len().checked_sub(NAMED) {
        None | Some(0) => names.join(", "),
        Some(more) => format!("{} and {more} more", names[..NAMED].join(", ")),
    }
}

/// How one run of a watch went.
#[derive(Clone, Debug, PartialEq, Eq)]
enum RunEnding {
    /// It ran; this line says what came of it.
    Ran(String),
    /// It could not run, for this reason; it is tried again after a while, or when something changes.
    Failed(String),
}

/// How often the folder is looked at when no event tells of anything.
const LOOK: Duration = Duration::from_secs(1);

/// How long a run that failed (a full disk, another run that holds the lock) waits for its next try.
const RETRY: Duration = Duration::from_secs(10);

/// What a watch does, apart from watching.
struct Duties<'a> {
    /// Makes everything anew; told what has changed.
    run: &'a mut dyn FnMut(&[Change]) -> RunEnding,
    /// Prints a line.
    say: &'a mut dyn FnMut(&str),
    /// Whether to go on.
    goes_on: &'a dyn Fn() -> bool,
}

/// Runs once, then once a change.
///
/// Ctrl-C ends it at any moment without harm: every write is whole or not at all, and the lock is the system's.
fn keep_watch(root: &Path, duties: &mut Duties<'_>) {
    let mut bell = Bell::new(root);
    let mut settling = Settling::default();
    let mut state = State {
        last_said: String::new(),
        runs: 0,
        retry_at: None,
    };
    let mut pause = Duration::ZERO;
    while (duties.goes_on)() {
        for (path, what) in bell.wait(pause) {
            settling.heard(path, what);
        }
        bell.arm();
        let began = Instant::now();
        let Ok(there) = folder::snapshot(root, settling.done()) else {
            pause = LOOK;
            state.say_once(
                duties,
                &format!(
                    "{} is not there just now; waiting for it to come back.",
                    root.display()
                ),
            );
            continue;
        };
        // A slow folder, on a network, is looked at more rarely.
        pause = LOOK.max(began.elapsed() * 20);
        let changes = match settling.look(Instant::now(), &there) {
            Look::Ready(changes) => changes,
            Look::Quiet if state.retry_at.is_some_and(|at| Instant::now() >= at) => Vec::new(),
            Look::Quiet => continue,
            Look::Wait(longest) => {
                pause = longest.min(pause);
                continue;
            }
            Look::Held(by) => {
                state.say_once(
                    duties,
                    &format!(
                        "Waiting: somebody has a file open, or it is still on its way ({}). After {} minutes without a change it is read all the same.",
                        by.join(", "),
                        settling::HELD.as_secs() / 60
                    ),
                );
                continue;
            }
        };
        state.run(duties, &changes);
        settling.after(there);
        // What changed meanwhile is seen at once.
        pause = Duration::ZERO;
    }
}

/// What a watch remembers from run to run.
struct State {
    last_said: String,
    runs: u32,
    retry_at: Option<Instant>,
}

impl State {
    fn run(&mut self, duties: &mut Duties<'_>, changes: &[Change]) {
        match (duties.run)(changes) {
            RunEnding::Ran(outcome) => {
                let why = if self.runs == 0 {
                    String::new()
                } else {
                    why(changes)
                };
                self.runs += 1;
                self.retry_at = None;
                self.last_said.clear();
                (duties.say)(&format!("Run {}: {why}{outcome}", self.runs));
            }
            RunEnding::Failed(error) => {
                self.retry_at = Some(Instant::now() + RETRY);
                self.say_once(duties, &error);
            }
        }
    }

    /// Says what may last once, not every time that it is still so.
    fn say_once(&mut self, duties: &mut Duties<'_>, line: &str) {
        if self.last_said != line {
            self.last_said = line.to_owned();
            (duties.say)(line);
        }
    }
}

/// What brought a run about.
fn why(changes: &[Change]) -> String {
    let changes: Vec<String> = changes.iter().map(Change::to_string).collect();
    match changes.is_empty() {
        true => String::new(),
        false => format!("{}: ", few(&changes)),
    }
}

#[cfg(test)]
mod tests;
