//! The number formats of a workbook's styles, whatever the form of the workbook.

use crate::gather::books::bounds::{Bound, MOST_STYLES};
use crate::gather::books::workbook::archive::Fault;
use crate::gather::books::workbook::cells::built_in_format;
use std::collections::BTreeMap;

/// The number format of each style of cells, and the codes of those that are written out.
#[derive(Default)]
pub struct Styles {
    formats: Vec<u16>,
    codes: BTreeMap<u16, String>,
}

impl Styles {
    /// A number format that is written out.
    pub fn write_out(&mut self, format: u16, code: String) {
        self.codes.insert(format, code);
    }

    /// The next style of cells has this number format.
    ///
    /// # Errors
    /// Where there are more styles than [`MOST_STYLES`].
    pub fn add(&mut self, format: u16) -> Result<(), Fault> {
        self.formats.push(format);
        if self.formats.len() > MOST_STYLES {
            return Err(Fault::TooLarge(Bound::Styles));
        }
        Ok(())
    }

    /// The code by which a style shows figures: as written out, else the built-in one of its number.
    pub fn code(&self, style: usize) -> Option<&str> {
        let format = *self.formats.get(style)?;
        let written = self.codes.get(&format).map(String::as_str);
        written.or_else(|| built_in_format(format))
    }
}
