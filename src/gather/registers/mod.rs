//! What people keep by hand: every register, checked as a whole, with every fault named by row and column. A register fails
//! closed: what cannot be read is a doubt about the products that it bears on, never a default.

mod blinds;
mod fields;
mod files;
mod headings;
mod ids;
mod packages;
pub mod paths;
mod photographs;
mod products;
mod records;
mod reports;
mod shapes;
mod terms;
mod together;

pub use packages::LostCodes;

use crate::config::Config;
use crate::gather::books;
use crate::gather::registers::fields::Table;
use crate::gather::registers::files::Files;
use crate::gather::registers::paths::LabFiles;
use crate::gather::registers::shapes::Shape;
use crate::gather::tables::headings::likeness_of;
use crate::guard;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Doubt, Registers};
use crate::words::{english, say};
use anyhow::{Result, bail};

/// Reads every register; with it, the codes of packages whose rows are not used.
///
/// # Errors
/// Where there is no register of products or of packages, two files of one register, or a needed column is missing.
pub fn read(
    config: &Config,
    lab_files: LabFiles<'_>,
    problems: &mut Problems,
) -> Result<(Registers, LostCodes)> {
    let mut registers = Registers::default();
    let files = Files::list(&config.registers(), &mut registers.doubts, problems)?;
    let mut open = |shape| open(&files, shape, &mut registers.doubts, problems);
    let products = open(&shapes::PRODUCTS)?;
    let packages = open(&shapes::PACKAGES)?;
    let corrections = open(&shapes::CORRECTIONS)?;
    let followups = open(&shapes::FOLLOWUPS)?;
    let reports = open(&shapes::REPORTS)?;
    let issued = open(&shapes::ISSUED)?;
    let terms = open(&shapes::TERMS)?;
    let key = open(&shapes::BLINDS)?;
    let (Some(products), Some(packages)) = (products, packages) else {
        bail!(files.without(config));
    };
    let known = products::read(&products, &mut registers, problems);
    let lost = packages::read(&packages, &known, &mut registers, problems);
    photographs::add(&packages, &config.root, &mut registers, problems);
    if let Some(table) = corrections {
        records::corrections(&table, &lab_files, &mut registers, problems);
    }
    if let Some(table) = followups {
        records::followups(&table, &known, &mut registers, problems);
    }
    if let Some(table) = reports {
        reports::read(&table, lab_files, &mut registers, problems);
    }
    if let Some(table) = issued {
        records::issued(&table, &mut registers, problems);
    }
    if let Some(table) = terms {
        terms::read(&table, &mut registers, problems);
    }
    if let Some(table) = key {
        blinds::read(&table, &mut registers, problems);
    }
    Ok((registers, lost))
}

/// A register as a table; none where it is not there, or holds nothing.
fn open(
    files: &Files,
    shape: &'static Shape,
    doubts: &mut Vec<Doubt>,
    problems: &mut Problems,
) -> Result<Option<Table>> {
    let Some(path) = files.of(shape)? else {
        let together = files.together.as_ref();
        return together
            .and_then(|together| together.of(shape))
            .map(|(file, book)| Table::new(file, book, shape, doubts, problems))
            .transpose();
    };
    let file = files::shown(path);
    let bytes = crate::files::read(path)?;
    if bytes.iter().all(u8::is_ascii_whitespace) {
        if [&shapes::PRODUCTS, &shapes::PACKAGES]
            .map(|shape| shape.name)
            .contains(&shape.name)
        {
            bail!(
                "{file} is empty: put its headings into its first row ({})",
                shape.needed.join(", ")
            );
        }
        problems.add(
            Code::RegisterError,
            Place::file(file),
            say::found_empty_register(),
            say::do_put_headings(),
        );
        return Ok(None);
    }
    match book(&bytes) {
        Ok(book) => Table::new(file, book, shape, doubts, problems).map(Some),
        Err(why) => bail!(
            "{file} cannot be read. {} Save it anew from a spreadsheet program as .csv or .xlsx, or restore it from a copy.",
            english().say(&why.message)
        ),
    }
}

/// A register's bytes as a book; one that trips the reader is damaged.
fn book(bytes: &[u8]) -> Result<books::Book, books::Unreadable> {
    guard::guarded(|| books::read(bytes, &likeness_of)).unwrap_or_else(|| {
        Err(books::Unreadable::new(
            say::found_damaged_register(),
            say::do_restore(),
        ))
    })
}
