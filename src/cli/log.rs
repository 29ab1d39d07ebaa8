//! `log`: enter what passed between the programme and a maker.

use crate::cli::args::{Date, LogArguments};
use crate::cli::print;
use crate::cli::{self, Ending};
use crate::config::Config;
use crate::pipeline::logging::{self, Entry};
use anyhow::Result;
use std::path::Path;

/// Enters it, and tells what follows.
pub fn log(dir: &Path, kind: &str, product: &str, what: &LogArguments) -> Result<Ending> {
    let config = Config::read(dir)?;
    let on = Date { date: what.date }.or_today()?;
    let _lock = cli::lock(&config.root.join("out"), "log")?;
    print::tell_unfinished(&config.root.join("out"));
    let entry = Entry {
        kind,
        product,
        round: what.round.as_deref(),
        on,
        due: what.due,
        statement: what.statement.as_deref(),
        note: what.note.as_deref(),
    };
    print::result(&logging::log(&config, &entry)?)?;
    Ok(Ending::Well)
}
