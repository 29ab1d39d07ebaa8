//! The program as typed: a file a command.

mod args;
mod check;
mod compare;
mod demo;
mod init;
mod issue;
mod licenses;
mod log;
mod manual;
mod overview;
mod plan;
mod print;
mod run;
mod single;
mod status;
mod understanding;
mod verify;
mod watch;
mod window;

use crate::cli::init::Filling;
use crate::guard::{self, Fault};
use crate::model::decided::Decided;
use crate::model::guide;
use crate::model::problem::Severity;
use crate::pipeline::single::Asked;
use crate::pipeline::{self, Lock, lock};
use anyhow::Result;
use args::{Arguments, Command};
use clap::Parser;
use std::ffi::{OsStr, OsString};
use std::io::{self, IsTerminal};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::time::Duration;

/// How a command ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Ending {
    /// All well: 0.
    Well,
    /// Done, and there are errors that a person must look at: 1.
    LookAtErrors,
}

impl Ending {
    fn of(decided: &Decided) -> Ending {
        if decided.problems.count(Severity::Error) > 0 {
            Ending::LookAtErrors
        } else {
            Ending::Well
        }
    }
}

/// Does what was typed and gives the exit status: 0, 1, or 2 where nothing was done.
pub fn main(arguments: impl IntoIterator<Item = OsString>) -> ExitCode {
    let arguments: Vec<OsString> = arguments.into_iter().collect();
    pipeline::when_a_template_overruns(|why| {
        print::say(&format!("galleyproof: {why}"));
        std::process::exit(2);
    });
    let at_terminal = io::stdin().is_terminal() && io::stdout().is_terminal();
    let start = window::start(&arguments, at_terminal, &args::is_command);
    if start == window::Start::Command {
        return ExitCode::from(typed(arguments));
    }
    let mut act = |command: &[&OsStr]| {
        let program = OsString::from("galleyproof");
        typed(std::iter::once(program).chain(command.iter().map(OsString::from)))
    };
    let (mut input, mut output) = (io::stdin().lock(), io::stdout());
    // A terminal that is gone has nobody to be told.
    ExitCode::from(window::open(&start, &mut input, &mut output, &mut act).unwrap_or(2))
}

/// Does one command.
fn typed(arguments: impl IntoIterator<Item = OsString>) -> u8 {
    let arguments = match Arguments::try_parse_from(arguments) {
        Ok(arguments) => arguments,
        Err(error) => {
            // Help and version come this way too; a closed pipe is no error of ours.
            let _ = error.print();
            return if error.use_stderr() { 2 } else { 0 };
        }
    };
    let ending = guard::unless_faulty(|| dispatch(arguments));
    match ending.unwrap_or_else(|fault| Err(own_fault(&fault))) {
        Ok(Ending::Well) => 0,
        Ok(Ending::LookAtErrors) => 1,
        Err(error) => {
            print::say(&format!("galleyproof: {error:#}"));
            2
        }
    }
}

/// What to tell of a fault of the program: whose it is, what was in hand, and what to send.
fn own_fault(fault: &Fault) -> anyhow::Error {
    let in_hand = match fault.in_hand.as_str() {
        "" => String::new(),
        name => format!(" at work on {name}"),
    };
    anyhow::anyhow!(
        "this is a fault of the program, not of your files. It came about{in_hand} ({}, version {}). Your files are as \
         they were, or the next run finishes what was begun. Please report it: send this line, the command that you typed \
         and, if you may, programme.toml, registers/ and the files in inbox/ that it was at work on.",
        fault.at,
        env!("CARGO_PKG_VERSION")
    )
}

fn dispatch(arguments: Arguments) -> Result<Ending> {
    let quiet = arguments.quiet;
    let at = arguments.at.as_deref();
    // A path that is no programme folder is looked for below the folder that -C names.
    let below = |path: PathBuf| at.map_or(path.clone(), |at| at.join(&path));
    match arguments.command {
        Command::Init { dir, demo, xlsx } => {
            let filling = match (demo, xlsx) {
                (true, _) => Filling::Demo,
                (false, true) => Filling::Workbook,
                (false, false) => Filling::Blank,
            };
            init::init(&below(dir), filling)
        }
        Command::Licenses { format } => licenses::licenses(format),
        Command::Registers => {
            print::result(&guide::page(100))?;
            Ok(Ending::Well)
        }
        Command::Check {
            folder,
            format,
            explain,
            date,
        } => check::check(&folder.named(at)?, format, &explain, &date, quiet),
        Command::Run {
            folder,
            out,
            only,
            date,
            force,
            large_print,
            format,
        } => run::run(
            &folder.named(at)?,
            &run::Wanted {
                out,
                only,
                date: date.given()?,
                force,
                large_print,
                format,
                quiet,
            },
        ),
        Command::Watch { folder, date } => watch::watch(&folder.named(at)?, date.given()?),
        Command::Issue { folder, what } => issue::issue(&folder.named(at)?, &what, quiet),
        Command::Completions { shell } => manual::completions(shell),
        Command::Man { command } => manual::page(command.as_deref()),
        Command::Verify { bag, format } => verify::verify(&below(bag), format),
        Command::Compare {
            first,
            second,
            format,
        } => compare::compare(&below(first), &below(second), format),
        Command::Status { folder, what } => status::status(&folder.named(at)?, &what, quiet),
        Command::Explain {
            product,
            folder,
            date,
        } => single::explain(&folder.named(at)?, &product, &date, quiet),
        Command::Facts {
            product,
            folder,
            date,
        } => single::facts(&folder.named(at)?, &product, &date, quiet),
        Command::Plan { what, folder } => plan::plan(&folder.named(at)?, &what, quiet),
        Command::Log {
            kind,
            product,
            what,
            folder,
        } => log::log(&folder.named(at)?, &kind, &product, &what),
        Command::ContactSheet {
            only,
            round,
            folder,
            date,
        } => single::contact_sheet(&folder.named(at)?, &only, round.as_deref(), &date, quiet),
        Command::Request {
            round,
            blinds,
            folder,
            date,
        } => {
            let asked = Asked {
                round: round.as_deref(),
                blinds: blinds.as_deref(),
            };
            single::request(&folder.named(at)?, &asked, &date, quiet)
        }
    }
}

/// Takes the lock of an outputs folder, waiting a while for another run to end.
///
/// # Errors
/// Where another run holds it for longer.
fn lock(out: &Path, task: &str) -> Result<Lock> {
    const PATIENCE: Duration = Duration::from_secs(60);
    lock::take(out, task, PATIENCE, &mut |holder| {
        print::say(&format!("Waiting for another run to end: {holder}."));
    })
}
