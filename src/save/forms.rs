//! The empty table that a lab fills in: its columns are read without a doubt, and its codes need no typing.

use crate::words::{Catalogue, say, yes_or_no};
use anyhow::{Context, Result};
use rust_xlsxwriter::{DocProperties, ExcelDateTime, Format, FormatBorder, Workbook};

/// What the table is for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LabForm<'a> {
    /// Whose samples they are.
    pub programme: &'a str,
    /// Their round; none for all that are open.
    pub round: Option<&'a str>,
    /// The codes, in the order of the form on paper.
    pub codes: Vec<String>,
    /// Rows of each code.
    pub extractions: usize,
}

/// Headings and widths. The first two columns are filled in by us. They are the reader's own, in every language.
const COLUMNS: [(&str, f64); 10] = [
    ("Sample code", 16.0),
    ("Extraction", 11.0),
    ("Gluten (mg/kg)", 16.0),
    ("LLOQ (mg/kg)", 14.0),
    ("LOD (mg/kg)", 13.0),
    ("Uncertainty (mg/kg)", 20.0),
    ("Dilution", 10.0),
    ("Tested on", 13.0),
    ("Report no.", 16.0),
    ("Remark", 40.0),
];

/// The column of days.
const TESTED_ON: u16 = 7;

/// Where the headings stand, from 0.
const HEADINGS: u32 = 3;

/// The table as a workbook. The same form gives the same bytes: its day of making is a fixed one.
///
/// # Errors
/// Where there are more rows than a sheet has.
pub fn lab_form(form: &LabForm<'_>, words: &Catalogue) -> Result<Vec<u8>> {
    let above = words.say(&say::form_title(
        form.programme,
        form.round.unwrap_or_default(),
        yes_or_no(form.round.is_some()),
    ));
    let title = Format::new().set_bold().set_font_size(13);
    let heading = Format::new()
        .set_bold()
        .set_border_bottom(FormatBorder::Thin);
    let code = Format::new().set_num_format("@").set_bold();
    let cell = Format::new().set_border_bottom(FormatBorder::Hair);
    let text = Format::new()
        .set_num_format("@")
        .set_border_bottom(FormatBorder::Hair);
    let day = Format::new()
        .set_num_format("yyyy-mm-dd")
        .set_border_bottom(FormatBorder::Hair);
    let mut book = Workbook::new();
    let made = ExcelDateTime::from_ymd(2000, 1, 1).context("is a day")?;
    book.set_properties(
        &DocProperties::new()
            .set_title(&above)
            .set_creation_datetime(&made),
    );
    let sheet = book.add_worksheet().set_name("Results")?;
    sheet.write_with_format(0, 0, &above, &title)?;
    sheet.write(1, 0, words.say(&say::form_hint()))?;
    for (column, (name, width)) in (0..).zip(COLUMNS) {
        sheet.write_with_format(HEADINGS, column, name, &heading)?;
        sheet.set_column_width(column, width)?;
    }
    let mut row = HEADINGS + 1;
    for name in &form.codes {
        for extraction in 1..=form.extractions {
            sheet.write_with_format(row, 0, name, &code)?;
            sheet.write_with_format(row, 1, extraction as u32, &cell)?;
            for column in 2..COLUMNS.len() as u16 {
                let look = match column {
                    TESTED_ON => &day,
                    8 | 9 => &text,
                    _ => &cell,
                };
                sheet.write_blank(row, column, look)?;
            }
            row += 1;
        }
    }
    sheet.set_freeze_panes(HEADINGS + 1, 2)?;
    Ok(book.save_to_buffer()?)
}
