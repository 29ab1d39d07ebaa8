//! The program as typed: a file a command.

mod args;
mod check;
mod demo;
mod init;
mod overview;
mod print;
mod run;
mod understanding;

use crate::model::decided::Decided;
use crate::model::problem::Severity;
use anyhow::Result;
use args::{Arguments, Command};
use clap::Parser;
use std::ffi::OsString;
use std::process::ExitCode;

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
    let arguments = match Arguments::try_parse_from(arguments) {
        Ok(arguments) => arguments,
        Err(error) => {
            // Help and version come this way too; a closed pipe is no error of ours.
            let _ = error.print();
            return ExitCode::from(if error.use_stderr() { 2 } else { 0 });
        }
    };
    match dispatch(arguments) {
        Ok(Ending::Well) => ExitCode::SUCCESS,
        Ok(Ending::LookAtErrors) => ExitCode::from(1),
        Err(error) => {
            print::say(&format!("galleyproof: {error:#}"));
            ExitCode::from(2)
        }
    }
}

fn dispatch(arguments: Arguments) -> Result<Ending> {
    let quiet = arguments.quiet;
    match arguments.command {
        Command::Init { dir, demo } => init::init(&dir, demo),
        Command::Check {
            folder,
            format,
            explain,
            date,
        } => check::check(&folder.dir, format, &explain, &date, quiet),
        Command::Run {
            folder,
            out,
            only,
            date,
            force,
            format,
        } => run::run(
            &folder.dir,
            &run::Wanted {
                out,
                only,
                date: date.given()?,
                force,
                format,
                quiet,
            },
        ),
    }
}
