//! `explain`, `facts` and `request`: what is printed for one product, and the form that goes to the lab.

use crate::cli::Ending;
use crate::cli::args::Date;
use crate::cli::print::{self, Meter};
use crate::config::Config;
use crate::model::decided::Decided;
use crate::pipeline;
use crate::pipeline::single::{self, Asked};
use anyhow::Result;
use std::path::Path;

/// Prints the reasoning for a product.
pub fn explain(dir: &Path, product: &str, date: &Date, quiet: bool) -> Result<Ending> {
    let (config, decided) = decided(dir, date, quiet)?;
    print::result(&single::explain(&decided, &config, product)?)?;
    Ok(Ending::Well)
}

/// Prints the facts of a product's sheets.
pub fn facts(dir: &Path, product: &str, date: &Date, quiet: bool) -> Result<Ending> {
    let (config, decided) = decided(dir, date, quiet)?;
    print::result(&single::sheet_facts(
        &decided,
        &config,
        product,
        date.given()?,
    )?)?;
    Ok(Ending::Well)
}

/// Makes the form that goes to the lab.
pub fn request(dir: &Path, asked: &Asked<'_>, date: &Date, quiet: bool) -> Result<Ending> {
    let (config, decided) = decided(dir, date, quiet)?;
    let out = config.root.join("out");
    for path in single::request(&decided, &config, asked, date.given()?, &out)? {
        print::result(&format!("{}\n", path.display()))?;
    }
    Ok(Ending::Well)
}

/// Makes the contact sheet.
pub fn contact_sheet(
    dir: &Path,
    only: &[String],
    round: Option<&str>,
    date: &Date,
    quiet: bool,
) -> Result<Ending> {
    let (config, decided) = decided(dir, date, quiet)?;
    let out = config.root.join("out");
    let made_on = date.given()?;
    let path = pipeline::contact_sheet::make(&decided, &config, only, round, made_on, &out)?;
    print::result(&format!("{}\n", path.display()))?;
    Ok(Ending::Well)
}

fn decided(dir: &Path, date: &Date, quiet: bool) -> Result<(Config, Decided)> {
    let config = Config::read(dir)?;
    print::tell_unfinished(&config.root.join("out"));
    let meter = Meter::new(quiet);
    let decided = pipeline::decide(&config, date.given()?, &|progress| meter.note(progress))?;
    Ok((config, decided))
}
