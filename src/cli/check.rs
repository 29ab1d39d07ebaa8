//! `check`: read and decide, print, write nothing.

use crate::cli::args::{Date, Format};
use crate::cli::print::{self, Meter};
use crate::cli::{Ending, overview, understanding};
use crate::config::Config;
use crate::pipeline;
use anyhow::Result;
use std::path::Path;

/// Reads and decides, and prints what would be published.
pub fn check(
    dir: &Path,
    format: Format,
    explain: &[String],
    date: &Date,
    quiet: bool,
) -> Result<Ending> {
    let config = Config::read(dir)?;
    print::tell_unfinished(&config.root.join("out"));
    let meter = Meter::new(quiet);
    let decided = pipeline::decide(&config, date.given()?, &|progress| meter.note(progress))?;
    drop(meter);
    let text = match format {
        _ if !explain.is_empty() => understanding::text(&decided, explain)?,
        Format::Json => pipeline::results_json(&decided, &config),
        Format::Text => format!(
            "{}\n{}",
            overview::text(&decided, &config),
            pipeline::inbox_report(&decided)
        ),
    };
    print::result(&text)?;
    Ok(Ending::of(&decided))
}
