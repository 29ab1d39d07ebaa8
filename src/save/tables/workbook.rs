//! The tables as one workbook: a sheet each, and the data dictionary beside them. A figure is a number, a day a date, and
//! what a lab wrote stays text, so that a spreadsheet program in any language shows the same.

use crate::save::tables::{Field, Table};
use chrono::{Datelike, NaiveDate};
use rust_xlsxwriter::{
    DocProperties, ExcelDateTime, Format, FormatAlign, Workbook, Worksheet, XlsxError,
};

/// What a sheet holds below its headings.
const MOST_ROWS: usize = 1_048_575;

/// What a cell holds, in UTF-16 units; what is longer ends in an ellipsis.
const LONGEST: usize = 32_767;

/// The widest column, in characters: what is longer is wrapped.
const WIDEST: usize = 60;

/// Rows that a column's width is taken from.
const LOOKED_AT: usize = 200;

/// The formats of the cells.
struct Formats {
    heading: Format,
    text: Format,
    day: Format,
}

/// The workbook of these tables. The same tables give the same bytes: its day of making is a fixed one.
pub fn workbook(title: &str, tables: &[Table<'_>]) -> Vec<u8> {
    built(title, tables).expect("names, widths and lengths are within what a workbook can hold")
}

fn built(title: &str, tables: &[Table<'_>]) -> Result<Vec<u8>, XlsxError> {
    let formats = Formats {
        heading: Format::new().set_bold().set_align(FormatAlign::Top),
        text: Format::new()
            .set_num_format("@")
            .set_align(FormatAlign::Top)
            .set_text_wrap(),
        day: Format::new()
            .set_num_format("yyyy-mm-dd")
            .set_align(FormatAlign::Top),
    };
    let mut book = Workbook::new();
    book.set_properties(&settled(title)?);
    let dictionary = dictionary(tables);
    for table in tables {
        write(book.add_worksheet().set_name(table.name)?, table, &formats)?;
    }
    let sheet = book.add_worksheet().set_name(dictionary.name)?;
    write(sheet, &dictionary, &formats)?;
    book.save_to_buffer()
}

/// What a workbook says of itself: its day of making is a fixed one, so that the same content gives the same bytes.
pub fn settled(title: &str) -> Result<DocProperties, XlsxError> {
    let made = ExcelDateTime::from_ymd(2000, 1, 1)?;
    Ok(DocProperties::new()
        .set_title(title)
        .set_creation_datetime(&made))
}

fn write(sheet: &mut Worksheet, table: &Table<'_>, formats: &Formats) -> Result<(), XlsxError> {
    let first: Vec<Vec<String>> = (table.rows)().take(LOOKED_AT).collect();
    for (column, field) in (0..).zip(&table.fields) {
        let cells = first.iter().map(|row| row[usize::from(column)].as_str());
        sheet.write_with_format(0, column, field.name, &formats.heading)?;
        sheet.set_column_width(column, width(field, cells))?;
    }
    let mut rows = 0;
    for cells in (table.rows)().take(MOST_ROWS) {
        rows += 1;
        for ((column, field), cell) in (0..).zip(&table.fields).zip(&cells) {
            if !cell.is_empty() {
                put(sheet, (rows, column), (field, cell), formats)?;
            }
        }
    }
    sheet.autofilter(0, 0, rows, table.fields.len() as u16 - 1)?;
    sheet.set_freeze_panes(1, table.frozen)?;
    Ok(())
}

/// One cell, by the kind of its column.
fn put(
    sheet: &mut Worksheet,
    (row, column): (u32, u16),
    (field, cell): (&Field, &str),
    formats: &Formats,
) -> Result<(), XlsxError> {
    let number = || cell.parse::<f64>().ok();
    match field.kind {
        "number" | "integer" => match number() {
            Some(number) => sheet.write_number(row, column, number)?,
            None => sheet.write_string_with_format(row, column, held(cell), &formats.text)?,
        },
        "boolean" => sheet.write_boolean(row, column, cell == "true")?,
        "date" => match day(cell) {
            Some(day) => sheet.write_datetime_with_format(row, column, day, &formats.day)?,
            None => sheet.write_string_with_format(row, column, held(cell), &formats.text)?,
        },
        _ => sheet.write_string_with_format(row, column, held(cell), &formats.text)?,
    };
    Ok(())
}

/// A day as workbooks count days; none before 1900, where their calendar begins.
pub fn day(cell: &str) -> Option<ExcelDateTime> {
    let day: NaiveDate = cell.parse().ok()?;
    let year = u16::try_from(day.year()).ok()?;
    ExcelDateTime::from_ymd(year, day.month() as u8, day.day() as u8).ok()
}

/// As much of a text as a cell holds.
fn held(text: &str) -> String {
    if text.len() <= LONGEST || text.encode_utf16().count() <= LONGEST {
        return text.to_owned();
    }
    let mut units = 0;
    let fits = |c: &char| {
        units += c.len_utf16();
        units < LONGEST
    };
    let mut held: String = text.chars().take_while(fits).collect();
    held.push('…');
    held
}

/// A column is as wide as its longest cell, within bounds.
fn width<'a>(field: &Field, cells: impl Iterator<Item = &'a str>) -> f64 {
    let longest = cells.map(|cell| cell.chars().count()).max().unwrap_or(0);
    // A heading has the arrow of its filter beside it.
    let heading = field.name.len() + 3;
    (longest.max(heading) + 1).min(WIDEST) as f64
}

/// What each column of the tables means.
fn dictionary(tables: &[Table<'_>]) -> Table<'static> {
    let field = |name, meaning| Field {
        name,
        kind: "string",
        unit: None,
        meaning,
    };
    let rows = tables.iter().flat_map(|table| {
        table.fields.iter().map(|field| {
            let unit = field.unit.unwrap_or_default();
            [table.name, field.name, field.kind, unit, field.meaning]
                .map(str::to_owned)
                .to_vec()
        })
    });
    let rows: Vec<Vec<String>> = rows.collect();
    Table {
        name: "dictionary",
        describes: "What each column means.",
        key: &["sheet", "column"],
        fields: vec![
            field("sheet", "The sheet."),
            field("column", "The column."),
            field("type", "What its cells hold."),
            field("unit", "The unit of its figures."),
            field("meaning", "What it says."),
        ],
        rows: Box::new(move || Box::new(rows.clone().into_iter())),
        frozen: 2,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_cut_only_where_a_cell_holds_no_more() {
        let fits = "a".repeat(LONGEST);
        assert_eq!(held(&fits), fits);
        // A letter beyond the first plane is two units.
        let wide = held(&"𝔘".repeat(LONGEST));
        assert_eq!(wide.encode_utf16().count(), LONGEST);
        assert!(wide.ends_with('…'));
    }

    #[test]
    fn a_day_before_the_calendar_of_workbooks_is_left_as_text() {
        assert!(day("1899-12-30").is_none());
        assert!(day("2031-03-07").is_some());
    }
}
