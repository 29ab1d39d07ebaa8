//! Workbooks -> cells: .xlsx, .xlsm, .xlsb, .ods and .xls, told apart by content.
//!
//! Each kind has a short reader of its own here, which gives the cells that hold something and nothing else: a rectangle
//! of all cells would be as large as a file claims.

mod archive;
mod binary;
mod cells;
mod compound;
mod markup;
mod ods;
mod relations;
mod runs;
mod shared;
mod styles;
mod xls;
mod xlsb;
mod xlsx;

use crate::gather::books::workbook::archive::{Archive, Fault};
use crate::gather::books::workbook::cells::Cells;
use crate::gather::books::workbook::relations::Target;
use crate::gather::books::{Book, Bound, MOST_SHEETS, Unreadable};
use crate::words::say;
use std::sync::Arc;

/// Reads what is a ZIP archive: .xlsx, .xlsm, .xlsb, .ods.
pub fn read_zip(bytes: &[u8]) -> Result<Book, Unreadable> {
    let mut archive = Archive::open(bytes).map_err(told)?;
    if archive.has("xl/workbook.bin") {
        xlsb::read(&mut archive)
    } else if archive.has("content.xml") && archive.has("mimetype") {
        ods::read(&mut archive)
    } else if archive.has("_rels/.rels")
        && !archive.has_folder("word/")
        && !archive.has_folder("ppt/")
    {
        xlsx::read(&mut archive)
    } else {
        Err(no_workbook())
    }
}

/// Reads what is a compound file: .xls, or a workbook that a password protects.
pub fn read_compound(bytes: &[u8]) -> Result<Book, Unreadable> {
    xls::read(bytes)
}

/// A fault, as a person is told of it.
fn told(fault: Fault) -> Unreadable {
    match fault {
        Fault::TooLarge(bound) => Unreadable::beyond(bound),
        Fault::Damaged => {
            Unreadable::new(say::found_damaged_workbook(), say::do_copy_or_send_again())
        }
        Fault::Password => Unreadable::new(say::found_password(), say::do_take_off_password()),
    }
}

fn no_workbook() -> Unreadable {
    Unreadable::new(say::found_no_workbook(), say::do_take_out_of_archive())
}

/// The sheets that a workbook lists, in their order.
#[derive(Default)]
struct Entries {
    sheets: Vec<Entry>,
    /// Sheets of another kind, and entries that lead nowhere.
    others: Vec<Arc<str>>,
}

/// A worksheet in the list.
struct Entry {
    name: String,
    hidden: bool,
    part: String,
}

impl Entries {
    /// Adds a sheet by what its relation leads to.
    fn add(&mut self, name: String, hidden: bool, target: Option<&Target>) -> Result<(), Fault> {
        if self.sheets.len() + self.others.len() >= MOST_SHEETS {
            return Err(Fault::TooLarge(Bound::Sheets));
        }
        match target {
            // A relation that does not say its kind may lead to results.
            Some(target) if matches!(target.kind.as_str(), "worksheet" | "") => {
                self.sheets.push(Entry {
                    name,
                    hidden,
                    part: target.path.clone(),
                })
            }
            // Charts, macros, dialogs.
            _ => self.others.push(name.into()),
        }
        Ok(())
    }

    /// Reads every worksheet. One whose part is missing is passed over, unless nothing is left then.
    fn read(
        self,
        format: &str,
        archive: &mut Archive<'_>,
        mut read: impl FnMut(&[u8]) -> Result<Cells, Unreadable>,
    ) -> Result<Book, Unreadable> {
        let mut book = Book {
            format: format.to_owned(),
            passed_over: self.others,
            ..Book::default()
        };
        let mut missing = false;
        for entry in self.sheets {
            match archive.content(&entry.part).map_err(told)? {
                Some(part) => {
                    let cells = read(&part)?;
                    book.sheets.push(cells.into_sheet(entry.name, entry.hidden));
                }
                None => {
                    missing = true;
                    book.passed_over.push(entry.name.into());
                }
            }
        }
        if missing && book.sheets.is_empty() {
            return Err(told(Fault::Damaged));
        }
        Ok(book)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::english;

    #[test]
    fn what_is_no_workbook_is_said_in_words() {
        let cut = read_zip(b"PK\x03\x04 and then nothing").expect_err("is cut short");
        assert!(english().say(&cut.message).contains("cut short"), "{cut:?}");
    }
}
