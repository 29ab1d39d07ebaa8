//! A register as rows of named fields, and the checks that any field may need.

use crate::gather::books::{Book, Content, Row, Sheet};
use crate::gather::dates;
use crate::gather::registers::headings::{self, Headings};
use crate::gather::registers::shapes::{Shape, bars_word};
use crate::gather::registers::together::is_example;
use crate::gather::text;
use crate::model::formula;
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::registers::{Bars, Doubt, DoubtKind};
use crate::model::said::Said;
use crate::words::say;
use anyhow::Result;
use chrono::NaiveDate;
use std::collections::BTreeSet;

/// A field with something in it that cannot be used: it is told already, and is not the same as a blank one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Unusable;

/// What a field holds: nothing, something, or something that cannot be used.
pub type Field<T> = Result<Option<T>, Unusable>;

/// A register: its columns by name, and the rows below them.
pub struct Table {
    file: String,
    sheet: Sheet,
    headings: Headings,
    shape: &'static Shape,
    /// Cells from whose text control characters were left out, by row and column.
    cleaned: BTreeSet<(u32, u32)>,
}

impl Table {
    /// The first sheet of a book; the first row that holds something has the headings. Tells of headings that are not
    /// known, with the doubts that follow, and of further sheets.
    ///
    /// # Errors
    /// Where a column is missing that is needed.
    pub fn new(
        file: String,
        book: Book,
        shape: &'static Shape,
        doubts: &mut Vec<Doubt>,
        problems: &mut Problems,
    ) -> Result<Table> {
        if book.guessed_encoding {
            problems.add(
                Code::Encoding,
                Place::file(file.clone()),
                say::found_encoding(),
                say::do_save_as_utf8(),
            );
        }
        let mut sheets = book.sheets.into_iter();
        let sheet = sheets.next().unwrap_or_default();
        let of_first = book
            .cleaned
            .iter()
            .filter(|place| place.sheet == sheet.name);
        let cleaned = of_first.map(|place| (place.row, place.column)).collect();
        for further in sheets.filter(|sheet| !sheet.rows.is_empty()) {
            let place = Place {
                sheet: further.name.as_deref().map(str::to_owned),
                ..Place::file(file.clone())
            };
            problems.add(
                Code::Suspicious,
                place,
                say::found_further_sheet(),
                say::do_one_sheet(),
            );
        }
        let headings = headings::read(&file, &sheet, shape, doubts, problems)?;
        Ok(Table {
            file,
            sheet,
            headings,
            shape,
            cleaned,
        })
    }

    /// Whether it has this column.
    pub fn has(&self, column: &str) -> bool {
        self.headings.columns.contains_key(column)
    }

    /// Its rows, each as named fields, apart from examples.
    pub fn rows(&self) -> impl Iterator<Item = Fields<'_>> {
        let rows = self.sheet.rows.iter().skip(1);
        rows.filter(|row| !is_example(row, self.shape))
            .map(|row| Fields { table: self, row })
    }
}

/// One row of a register.
pub struct Fields<'a> {
    table: &'a Table,
    row: &'a Row,
}

impl Fields<'_> {
    /// Where the row stands.
    pub fn place(&self) -> Place {
        Place {
            file: self.table.file.clone(),
            sheet: self.table.sheet.name.as_deref().map(str::to_owned),
            row: Some(self.row.number),
            column: None,
        }
    }

    /// Where a field stands.
    pub fn place_of(&self, column: &str) -> Place {
        Place {
            column: self.table.headings.columns.get(column).copied(),
            ..self.place()
        }
    }

    /// Adds a problem with a field.
    pub fn fault(&self, column: &str, message: Said, hint: Said, problems: &mut Problems) {
        problems.add(Code::RegisterError, self.place_of(column), message, hint);
    }

    /// A doubt about a field of this row; `product_id` and `round` say how far it reaches.
    pub fn doubt(
        &self,
        column: &str,
        product_id: Option<&str>,
        round: Option<&str>,
        bars: Bars,
    ) -> Doubt {
        Doubt {
            product_id: product_id.map(str::to_owned),
            round: round.map(str::to_owned),
            bars,
            what: DoubtKind::Field {
                column: column.to_owned(),
                written: text::short(&self.written(column)),
            },
            place: self.place_of(column),
        }
    }

    /// Tells of a cell that stands under no heading, and gives the doubt that it leaves: what belongs to a field may have come to
    /// stand there. `bars` is how far it reaches; none where nothing rests on the register.
    pub fn beyond(
        &self,
        (product_id, round): (Option<&str>, Option<&str>),
        bars: Option<Bars>,
        problems: &mut Problems,
    ) -> Option<Doubt> {
        let says = |content: &Content| !text::plain(&content.shown()).trim().is_empty();
        let stray = self.row.cells.iter().find(|cell| {
            !self.table.headings.headed.contains(&cell.column) && says(&cell.content)
        })?;
        let place = Place {
            column: Some(stray.column),
            ..self.place()
        };
        problems.add(
            Code::RegisterError,
            place.clone(),
            say::found_beyond_headings(
                text::short(&stray.content.shown()),
                bars.map_or("nothing", bars_word),
            ),
            say::do_mend_columns(),
        );
        bars.map(|bars| Doubt {
            product_id: product_id.map(str::to_owned),
            round: round.map(str::to_owned),
            bars,
            what: DoubtKind::Row,
            place,
        })
    }

    /// The column of a field.
    pub fn column(&self, column: &str) -> Option<u32> {
        self.table.headings.columns.get(column).copied()
    }

    fn content(&self, column: &str) -> Option<&Content> {
        self.row.at(*self.table.headings.columns.get(column)?)
    }

    /// Whether control characters were left out of a field.
    pub fn is_cleaned(&self, column: &str) -> bool {
        let column = self.table.headings.columns.get(column);
        column.is_some_and(|column| self.table.cleaned.contains(&(self.row.number, *column)))
    }

    /// Whether a spreadsheet has made a day of a field.
    pub fn is_date(&self, column: &str) -> bool {
        matches!(self.content(column), Some(Content::Date { .. }))
    }

    /// A field as it stands; empty where nothing stands there.
    pub fn written(&self, column: &str) -> String {
        self.content(column)
            .map(|content| content.shown().into_owned())
            .unwrap_or_default()
    }

    /// A field as text. What a spreadsheet could take for a formula is kept, with a warning; control characters are left
    /// out, with a note.
    pub fn field(&self, column: &str, problems: &mut Problems) -> Field<String> {
        let Some(content) = self.content(column) else {
            return Ok(None);
        };
        let written = content.shown().into_owned();
        let spoilt = match content {
            Content::Fault(_) => Some((say::found_cell_error(&written), say::do_mend_cell())),
            Content::Uncalculated => {
                let found = say::found_bad_value("uncalculated", "");
                Some((found, say::do_calculate()))
            }
            _ => None,
        };
        if let Some((found, to_do)) = spoilt {
            self.fault(column, found, to_do, problems);
            return Err(Unusable);
        }
        let (length, most) = (written.chars().count(), longest(column));
        if length > most {
            self.fault(
                column,
                say::found_too_long(column, length.to_string(), most.to_string()),
                say::do_shorten(),
                problems,
            );
            return Err(Unusable);
        }
        if self.is_cleaned(column) {
            problems.add(
                Code::ControlCharacter,
                self.place_of(column),
                say::found_control_characters_in(text::short(&written), "letters"),
                say::do_type_anew("missing"),
            );
        }
        if formula::is_one(&written) {
            problems.add(
                Code::Suspicious,
                self.place_of(column),
                say::found_formula(text::short(&written)),
                say::do_mend_formula(),
            );
        }
        let says_something = !text::plain(&written).trim().is_empty();
        Ok(says_something.then_some(written))
    }

    /// A field as text, for columns where a fault in the cell costs no more than the text.
    pub fn text(&self, column: &str, problems: &mut Problems) -> Option<String> {
        self.field(column, problems).ok().flatten()
    }

    /// A field that must say something; none, with a fault, where it does not.
    pub fn needed(&self, column: &str, problems: &mut Problems) -> Option<String> {
        let found = self.field(column, problems);
        if found == Ok(None) {
            self.fault(
                column,
                say::found_blank(column),
                say::do_fill_in(),
                problems,
            );
        }
        found.ok().flatten()
    }

    /// A day; a fault where something stands there that is none.
    pub fn day(&self, column: &str, problems: &mut Problems) -> Field<NaiveDate> {
        let Some(content) = self.content(column) else {
            return Ok(None);
        };
        let day = match content {
            Content::Date { day, .. } => *day,
            Content::Text(written) if text::plain(written).trim().is_empty() => return Ok(None),
            Content::Text(written) => dates::day(written),
            _ => None,
        };
        if day.is_none() {
            self.fault(
                column,
                say::found_no_day(text::short(&content.shown()), "register"),
                say::do_write_day("register"),
                problems,
            );
            return Err(Unusable);
        }
        Ok(day)
    }

    /// A day that must be there.
    pub fn needed_day(&self, column: &str, problems: &mut Problems) -> Option<NaiveDate> {
        let day = self.day(column, problems);
        if day == Ok(None) {
            self.needed(column, problems);
        }
        day.ok().flatten()
    }

    /// One of several words; a fault where it is another one.
    pub fn word<T: Copy>(
        &self,
        column: &str,
        words: &[(T, &str)],
        problems: &mut Problems,
    ) -> Field<T> {
        let Some(written) = self.field(column, problems)? else {
            return Ok(None);
        };
        let folded = text::plain(&written)
            .to_lowercase()
            .replace([' ', '_'], "-");
        let found = words
            .iter()
            .find(|(_, word)| *word == folded)
            .map(|(value, _)| *value);
        if found.is_none() {
            let known: Vec<&str> = words.iter().map(|(_, word)| *word).collect();
            self.fault(
                column,
                say::found_unknown_word(text::short(&written), column),
                say::do_write_one_of(known.join(", ")),
                problems,
            );
            return Err(Unusable);
        }
        Ok(found)
    }

    /// One of several words that must be there.
    pub fn needed_word<T: Copy>(
        &self,
        column: &str,
        words: &[(T, &str)],
        problems: &mut Problems,
    ) -> Option<T> {
        let word = self.word(column, words, problems);
        if matches!(word, Ok(None)) {
            self.needed(column, problems);
        }
        word.ok().flatten()
    }

    /// A whole number from 1.
    pub fn count(&self, column: &str, problems: &mut Problems) -> Field<u32> {
        let Some(written) = self.field(column, problems)? else {
            return Ok(None);
        };
        match text::plain(&written).parse::<u32>() {
            Ok(number) if (1..=9999).contains(&number) => Ok(Some(number)),
            _ => {
                self.fault(
                    column,
                    say::found_no_number(text::short(&written), "count"),
                    say::do_write_number("count"),
                    problems,
                );
                Err(Unusable)
            }
        }
    }

    /// A figure above 0 in ppm, with a point or a comma.
    pub fn figure(&self, column: &str, problems: &mut Problems) -> Field<f64> {
        let Some(written) = self.field(column, problems)? else {
            return Ok(None);
        };
        let number = text::plain(&written).replace(',', ".").parse::<f64>();
        match number {
            Ok(number) if number.is_finite() && number > 0.0 => Ok(Some(number)),
            _ => {
                self.fault(
                    column,
                    say::found_no_number(text::short(&written), "figure"),
                    say::do_write_number("figure"),
                    problems,
                );
                Err(Unusable)
            }
        }
    }
}

/// Characters of a field at most. What stands in titles and in the descriptions of pictures goes into strings of a PDF, which
/// hold 32,767 bytes, several of these together.
fn longest(column: &str) -> usize {
    match column {
        "name" | "brand" | "category" | "claim" | "barcode" | "net_content" => 2_000,
        _ => 20_000,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gather::books::{Cell, letters};
    use crate::gather::registers::{ids, shapes};

    fn sheet(rows: &[&[&str]]) -> Sheet {
        let rows = rows.iter().zip(1..).map(|(texts, number)| Row {
            number,
            cells: texts
                .iter()
                .zip(1..)
                .map(|(text, column)| Cell {
                    column,
                    content: Content::Text((*text).into()),
                })
                .collect(),
            ..Row::default()
        });
        Sheet {
            rows: rows.collect(),
            ..Sheet::default()
        }
    }

    fn table(sheets: Vec<Sheet>, problems: &mut Problems) -> Table {
        let mut book = Book {
            sheets,
            ..Book::default()
        };
        letters::clean(&mut book);
        let file = "registers/packages.csv".to_owned();
        Table::new(file, book, &shapes::PACKAGES, &mut Vec::new(), problems)
            .expect("has its columns")
    }

    #[test]
    fn characters_that_steer_a_device_go_from_a_text_and_spoil_an_id() {
        let mut problems = Problems::default();
        let rows: &[&[&str]] = &[
            &["package_code", "product_id", "lot"],
            &["TKW\u{1}-1", "oat-bar", "L\u{7} 7\nB"],
        ];
        let table = table(vec![sheet(rows)], &mut problems);
        let fields = table.rows().next().expect("has a row");
        assert_eq!(fields.text("lot", &mut problems).as_deref(), Some("L 7\nB"));
        assert_eq!(
            ids::read(&fields, "package_code", &mut problems),
            Err(Unusable)
        );
        let told: Vec<_> = problems
            .sorted()
            .iter()
            .map(|problem| (problem.code, problem.place.cell().expect("has a cell")))
            .collect();
        let expected = [
            (Code::RegisterError, "A2".to_owned()),
            (Code::ControlCharacter, "C2".to_owned()),
        ];
        assert_eq!(told, expected);
    }

    #[test]
    fn a_second_sheet_with_something_in_it_is_told() {
        let mut problems = Problems::default();
        let first = sheet(&[&["package_code", "product_id"], &["TKW-1", "oat-bar"]]);
        let more = Sheet {
            name: Some("More".into()),
            ..first.clone()
        };
        let blank = Sheet::default();
        let table = table(vec![first, blank, more], &mut problems);
        assert_eq!(table.rows().count(), 1);
        let told = problems.sorted();
        assert_eq!(told.len(), 1);
        assert_eq!(
            (told[0].code, told[0].place.sheet.as_deref()),
            (Code::Suspicious, Some("More"))
        );
    }

    #[test]
    fn a_day_that_a_spreadsheet_has_made_of_a_code_is_no_code() {
        let mut problems = Problems::default();
        let mut sheet = sheet(&[&["package_code", "product_id"], &["3-1", "oat-bar"]]);
        sheet.rows[1].cells[0].content = Content::Date {
            day: NaiveDate::from_ymd_opt(2031, 1, 3),
            shown: "2031-01-03".into(),
        };
        let table = table(vec![sheet], &mut problems);
        let fields = table.rows().next().expect("has a row");
        assert_eq!(
            ids::read(&fields, "package_code", &mut problems),
            Err(Unusable)
        );
        assert_eq!(problems.sorted()[0].code, Code::RegisterError);
    }
}
