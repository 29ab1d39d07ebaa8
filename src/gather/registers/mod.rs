//! What people keep by hand: every register, checked as a whole, with every fault named by row and column.

mod fields;
mod ids;
mod packages;
mod products;
mod records;
mod terms;

use crate::config::Config;
use crate::gather::books;
use crate::gather::registers::fields::Table;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::Registers;
use anyhow::{Result, bail};
use std::collections::BTreeMap;
use std::path::PathBuf;

/// The forms a register may have.
const ENDINGS: [&str; 4] = ["csv", "xlsx", "xls", "ods"];

/// Reads every register. `lab_files` holds the lab files' paths, each with the path under which its content is read.
///
/// # Errors
/// Where there is no register of products or of packages, or two files of one register.
pub fn read(
    config: &Config,
    lab_files: &BTreeMap<String, String>,
    problems: &mut Problems,
) -> Result<Registers> {
    let mut registers = Registers::default();
    let mut products = needed("products", config, problems)?;
    let mut packages = needed("packages", config, problems)?;
    let known = products::read(&mut products, &mut registers, problems);
    packages::read(&mut packages, &known, &mut registers, problems);
    if let Some(mut table) = optional("corrections", config, problems)? {
        records::corrections(&mut table, lab_files, &mut registers, problems);
    }
    if let Some(mut table) = optional("followups", config, problems)? {
        records::followups(&mut table, &known, &mut registers, problems);
    }
    if let Some(mut table) = optional("issued", config, problems)? {
        records::issued(&mut table, &mut registers, problems);
    }
    if let Some(mut table) = optional("terms", config, problems)? {
        terms::read(&mut table, &mut registers, problems);
    }
    Ok(registers)
}

/// The file of a register, where there is one.
fn find(name: &str, config: &Config) -> Result<Option<PathBuf>> {
    let folder = config.registers();
    let mut found = Vec::new();
    for entry in std::fs::read_dir(&folder).into_iter().flatten().flatten() {
        let path = entry.path();
        let is = |part: Option<&std::ffi::OsStr>, wanted: &[&str]| {
            part.and_then(|part| part.to_str())
                .is_some_and(|part| wanted.contains(&part.to_lowercase().as_str()))
        };
        if is(path.file_stem(), &[name]) && is(path.extension(), &ENDINGS) && path.is_file() {
            found.push(path);
        }
    }
    found.sort();
    if let [first, second, ..] = found.as_slice() {
        bail!(
            "there are two registers of {name}, {} and {}: keep one of them and move the other away",
            first.display(),
            second.display()
        );
    }
    Ok(found.pop())
}

fn needed(name: &str, config: &Config, problems: &mut Problems) -> Result<Table> {
    match optional(name, config, problems)? {
        Some(table) => Ok(table),
        None => bail!(
            "there is no register of {name}: {} needs a file {name}.csv (or .xlsx, .xls, .ods)",
            config.registers().display()
        ),
    }
}

fn optional(name: &str, config: &Config, problems: &mut Problems) -> Result<Option<Table>> {
    let Some(path) = find(name, config)? else {
        return Ok(None);
    };
    let file = format!(
        "registers/{}",
        path.file_name().unwrap_or_default().to_string_lossy()
    );
    let bytes = crate::files::read(&path)?;
    if bytes.iter().all(u8::is_ascii_whitespace) {
        problems.add(
            Code::RegisterError,
            Place::file(file.clone()),
            "the register is empty: it has no headings",
            "Put the headings into its first row, as README shows them.",
        );
        return Ok(Some(Table::empty(file)));
    }
    let book = std::panic::catch_unwind(|| books::read(&bytes)).unwrap_or_else(|_| {
        Err(books::Unreadable::new(
            "the register is damaged",
            "Restore it from a copy.",
        ))
    });
    match book {
        Ok(book) => Ok(Some(Table::new(file, book))),
        Err(why) => bail!(
            "{file} cannot be read: {}. Save it anew from a spreadsheet program as .csv or .xlsx, or restore it from a copy.",
            why.message
        ),
    }
}
