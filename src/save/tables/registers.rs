//! The registers as one workbook, empty but for an example row: a sheet a register, with a list where only certain words may
//! stand, days and figures as such, and what each column is for in a note at its heading.

use crate::model::guide::{Column, GUIDES, Guide, Kind};
use crate::save::tables::workbook::{day, settled};
use rust_xlsxwriter::{
    Color, DataValidation, DataValidationErrorStyle, DataValidationRule, ExcelDateTime, Format,
    FormatAlign, Note, Workbook, Worksheet, XlsxError,
};

/// Rows that are prepared for typing, headings included.
const PREPARED: u32 = 2_000;

/// The narrowest and the widest column, in characters.
const NARROWEST: f64 = 12.0;
const WIDEST: f64 = 44.0;

/// The workbook: the same bytes each time.
pub fn registers() -> Vec<u8> {
    built().expect("names, widths and words are within what a workbook can hold")
}

fn built() -> Result<Vec<u8>, XlsxError> {
    let mut book = Workbook::new();
    book.set_properties(&settled("Registers")?);
    for guide in GUIDES {
        write(book.add_worksheet().set_name(guide.name)?, guide)?;
    }
    book.save_to_buffer()
}

fn write(sheet: &mut Worksheet, guide: &Guide) -> Result<(), XlsxError> {
    let heading = Format::new().set_bold().set_align(FormatAlign::Top);
    for (at, column) in (0..).zip(guide.columns) {
        sheet.set_column_format(at, &format(column.kind))?;
        sheet.set_column_width(at, width(column))?;
        sheet.write_with_format(0, at, column.name, &heading)?;
        let said = match at {
            0 => format!("{}\n\n{}", guide.about, column.explained()),
            _ => column.explained(),
        };
        let note = Note::new(said)
            .set_author("galleyproof")
            .set_width(280)
            .set_height(130);
        sheet.insert_note(0, at, &note.add_author_prefix(false))?;
        if let Some(rule) = validation(column)? {
            sheet.add_data_validation(1, at, PREPARED - 1, at, &rule)?;
        }
        example(sheet, at, column)?;
    }
    sheet.set_freeze_panes(1, 1)?;
    Ok(())
}

/// How a column's cells are shown. Text is text, so that a barcode stays all its digits and a lot is no day.
fn format(kind: Kind) -> Format {
    let format = Format::new().set_align(FormatAlign::Top);
    match kind {
        Kind::Text | Kind::Code | Kind::Word(_) => format.set_num_format("@").set_text_wrap(),
        Kind::Day => format.set_num_format("yyyy-mm-dd"),
        Kind::Figure => format,
    }
}

fn example(sheet: &mut Worksheet, at: u16, column: &Column) -> Result<(), XlsxError> {
    if column.example.is_empty() {
        return Ok(());
    }
    let look = format(column.kind)
        .set_italic()
        .set_font_color(Color::RGB(0x0069_6969));
    match (
        column.kind,
        day(column.example),
        column.example.parse::<f64>(),
    ) {
        (Kind::Day, Some(day), _) => sheet.write_datetime_with_format(1, at, day, &look)?,
        (Kind::Figure, _, Ok(figure)) => sheet.write_number_with_format(1, at, figure, &look)?,
        _ => sheet.write_string_with_format(1, at, column.example, &look)?,
    };
    Ok(())
}

/// What may be typed. A word that is none of the list, or a day that is none, is refused by the spreadsheet program; a figure
/// is only doubted, since some are typed with a comma.
fn validation(column: &Column) -> Result<Option<DataValidation>, XlsxError> {
    let rule = match column.kind {
        Kind::Text | Kind::Code => return Ok(None),
        Kind::Word(words) => DataValidation::new().allow_list_strings(words)?,
        Kind::Day => DataValidation::new().allow_date(DataValidationRule::GreaterThanOrEqualTo(
            ExcelDateTime::from_ymd(2000, 1, 1)?,
        )),
        Kind::Figure => DataValidation::new()
            .allow_decimal_number(DataValidationRule::GreaterThanOrEqualTo(0.0))
            .set_error_style(DataValidationErrorStyle::Warning),
    };
    let wanted = match column.kind {
        Kind::Word(words) => format!("One of these words: {}.", words.join(", ")),
        Kind::Day => "A day, such as 2031-05-06.".to_owned(),
        Kind::Text | Kind::Code | Kind::Figure => {
            "A figure from 0 on, without its unit.".to_owned()
        }
    };
    rule.set_error_title(column.name)?
        .set_error_message(wanted)
        .map(Some)
}

fn width(column: &Column) -> f64 {
    let longest = match column.kind {
        Kind::Word(words) => words.iter().map(|word| word.len()).max().unwrap_or(0),
        _ => column.example.chars().count(),
    };
    let wanted = longest.max(column.name.len()) as f64 + 3.0;
    wanted.clamp(NARROWEST, WIDEST)
}
