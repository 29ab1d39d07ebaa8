//! OpenDocument spreadsheets (OASIS, ODF 1.3) -> cells, in one pass. A row or a cell that says that it repeats itself a
//! million times takes a line in the file: no more is made of it than a file may hold.

use crate::gather::books::bounds::LONGEST_TEXT;
use crate::gather::books::letters::is_space;
use crate::gather::books::workbook::archive::{Archive, Fault};
use crate::gather::books::workbook::cells::{Cells, general, no_number, text};
use crate::gather::books::workbook::markup::{self, Piece, Tag};
use crate::gather::books::workbook::{no_workbook, told};
use crate::gather::books::{
    Book, Bound, Cell, Content, MOST_SHEETS, Merged, Room, Sheet, Unreadable,
};
use std::collections::BTreeSet;

/// The most columns and rows that spreadsheet programs have.
const MOST_COLUMNS: u32 = 1 << 14;
const MOST_ROWS: u32 = 1 << 20;

/// Blank rows are hidden by the million; only those near anything matter.
const MOST_HIDDEN_AT_ONCE: u32 = 1000;

/// Reads a spreadsheet.
pub fn read(archive: &mut Archive<'_>) -> Result<Book, Unreadable> {
    let kind = archive.content("mimetype").map_err(told)?;
    if !kind.is_some_and(|kind| kind.starts_with(b"application/vnd.oasis.opendocument.spreadsheet"))
    {
        return Err(no_workbook());
    }
    if is_encrypted(archive).map_err(told)? {
        return Err(told(Fault::Password));
    }
    let content = archive.content("content.xml").map_err(told)?;
    let mut walk = Walk::default();
    let mut refused = None;
    let walked = markup::walk(&content.unwrap_or_default(), |piece| {
        walk.pass(piece).map_err(|why| {
            refused = Some(why);
            Fault::Damaged
        })
    });
    if let Some(why) = refused {
        return Err(why);
    }
    walked.map_err(told)?;
    Ok(Book {
        format: "workbook (.ods)".to_owned(),
        sheets: walk.sheets,
        ..Book::default()
    })
}

fn is_encrypted(archive: &mut Archive<'_>) -> Result<bool, Fault> {
    let manifest = archive
        .content("META-INF/manifest.xml")?
        .unwrap_or_default();
    let mut encrypted = false;
    markup::walk(&manifest, |piece| {
        encrypted |= matches!(piece, Piece::Open(tag) if tag.name() == "encryption-data");
        Ok(())
    })?;
    Ok(encrypted)
}

/// Where the walk through the content stands.
#[derive(Default)]
struct Walk {
    sheets: Vec<Sheet>,
    room: Room,
    /// The style that is being passed, and those under which a sheet is not shown.
    style: String,
    hiding: BTreeSet<String>,
    /// How many tables the walk is in, one inside another; only the outer one is a sheet.
    tables: u32,
    name: String,
    hidden: bool,
    cells: Cells,
    /// The last column of the sheet that was described.
    column: u32,
    row: Row,
    cell: Option<Passing>,
}

/// The row that is being passed.
#[derive(Default)]
struct Row {
    number: u32,
    times: u32,
    column: u32,
    cells: Vec<Cell>,
    room: Room,
}

/// The cell that is being passed.
#[derive(Default)]
struct Passing {
    column: u32,
    times: u32,
    kind: String,
    value: Option<String>,
    /// An extension of the format says so beside the kind.
    is_error: bool,
    formula: bool,
    /// Elements between the cell and where the walk is; in a comment or a picture, how many of them are above it.
    depth: u32,
    aside: Option<u32>,
    paragraphs: u32,
    text: String,
}

impl Walk {
    fn pass(&mut self, piece: Piece<'_>) -> Result<(), Unreadable> {
        match piece {
            Piece::Open(tag) => match &mut self.cell {
                Some(cell) => cell.open(&tag),
                None => self.open(&tag)?,
            },
            Piece::Close(name) => match &mut self.cell {
                Some(cell) if cell.depth > 0 => cell.close(),
                Some(_) => self.end_cell()?,
                None => self.close(name)?,
            },
            Piece::Text(text) => {
                if let Some(cell) = &mut self.cell {
                    cell.say(&text);
                }
            }
        }
        match &self.cell {
            Some(cell) if cell.text.len() > LONGEST_TEXT => {
                Err(Unreadable::beyond(Bound::CellText))
            }
            _ => Ok(()),
        }
    }

    fn open(&mut self, tag: &Tag<'_>) -> Result<(), Unreadable> {
        match tag.name() {
            "style" => self.style = tag.attribute("name").unwrap_or_default(),
            "table-properties" if tag.attribute("display").as_deref() == Some("false") => {
                self.hiding.insert(std::mem::take(&mut self.style));
            }
            "table" => {
                self.tables += 1;
                if self.tables == 1 {
                    if self.sheets.len() >= MOST_SHEETS {
                        return Err(Unreadable::beyond(Bound::Sheets));
                    }
                    let style = tag.attribute("style-name").unwrap_or_default();
                    self.hidden = self.hiding.contains(&style);
                    self.name = tag.attribute("name").unwrap_or_default();
                    self.cells = Cells::default();
                    self.column = 0;
                    self.row = Row::default();
                }
            }
            "table-column" if self.tables == 1 => self.describe_columns(tag),
            "table-row" if self.tables == 1 => self.start_row(tag),
            "table-cell" | "covered-table-cell" if self.tables == 1 => self.start_cell(tag),
            _ => {}
        }
        Ok(())
    }

    fn close(&mut self, name: &str) -> Result<(), Unreadable> {
        match name {
            "table" => {
                if self.tables == 1 {
                    let cells = std::mem::take(&mut self.cells);
                    let name = std::mem::take(&mut self.name);
                    self.sheets.push(cells.into_sheet(name, self.hidden));
                }
                self.tables = self.tables.saturating_sub(1);
            }
            "table-row" if self.tables == 1 => {
                let cells = std::mem::take(&mut self.row.cells);
                self.cells
                    .add_rows(self.row.number, self.row.times, &cells, &mut self.room)?;
            }
            _ => {}
        }
        Ok(())
    }

    fn describe_columns(&mut self, tag: &Tag<'_>) {
        let times = tag.number("number-columns-repeated").unwrap_or(1);
        let first = self.column.saturating_add(1);
        self.column = self.column.saturating_add(times.clamp(1, MOST_COLUMNS));
        if is_hidden(tag) {
            self.cells.hide_columns(first, self.column);
        }
    }

    fn start_row(&mut self, tag: &Tag<'_>) {
        let number = self.row.number.saturating_add(self.row.times.max(1));
        self.row = Row {
            number: if self.row.number == 0 { 1 } else { number },
            times: tag
                .number("number-rows-repeated")
                .unwrap_or(1)
                .clamp(1, MOST_ROWS),
            ..Row::default()
        };
        if is_hidden(tag) {
            let end = self
                .row
                .number
                .saturating_add(self.row.times.min(MOST_HIDDEN_AT_ONCE));
            (self.row.number..end).for_each(|row| self.cells.hide(row));
        }
    }

    fn start_cell(&mut self, tag: &Tag<'_>) {
        let times = tag
            .number("number-columns-repeated")
            .unwrap_or(1)
            .clamp(1, MOST_COLUMNS);
        let first = self.row.column.saturating_add(1);
        self.row.column = self.row.column.saturating_add(times);
        let span = |name: &str| {
            tag.number(name)
                .filter(|n| (2..=10_000).contains(n))
                .unwrap_or(1_u32)
        };
        let (down, right) = (span("number-rows-spanned"), span("number-columns-spanned"));
        if down > 1 || right > 1 {
            self.cells.merge(Merged {
                top: self.row.number,
                bottom: self.row.number.saturating_add(down - 1),
                left: first,
                right: first.saturating_add(right - 1),
            });
        }
        let value = [
            "value",
            "date-value",
            "time-value",
            "boolean-value",
            "string-value",
        ]
        .iter()
        .find_map(|name| tag.attribute(name));
        self.cell = Some(Passing {
            column: first,
            times,
            kind: tag.attribute("value-type").unwrap_or_default(),
            value,
            is_error: tag.says("value-type", "error"),
            formula: tag.attribute("formula").is_some(),
            ..Passing::default()
        });
    }

    fn end_cell(&mut self) -> Result<(), Unreadable> {
        let Some(cell) = self.cell.take() else {
            return Ok(());
        };
        let Some(content) = cell.content() else {
            return Ok(());
        };
        // A row alone can be more than a file may hold.
        self.row.room.take(&content, cell.times as usize)?;
        for column in (cell.column..).take(cell.times as usize) {
            self.row.cells.push(Cell {
                column,
                content: content.clone(),
            });
        }
        Ok(())
    }
}

/// Whether a row or a column is not shown.
fn is_hidden(tag: &Tag<'_>) -> bool {
    let visibility = tag.attribute("visibility");
    matches!(visibility.as_deref(), Some("collapse" | "filter"))
}

impl Passing {
    fn open(&mut self, tag: &Tag<'_>) {
        self.depth += 1;
        if self.aside.is_some() {
            return;
        }
        match tag.name() {
            "annotation" | "frame" => self.aside = Some(self.depth),
            name if self.depth == 1 && name != "p" => self.aside = Some(self.depth),
            "p" => {
                self.paragraphs += 1;
                if self.paragraphs > 1 {
                    self.text.push('\n');
                }
            }
            "s" => {
                let count: usize = tag.number("c").unwrap_or(1);
                self.text.push_str(&" ".repeat(count.min(1000)));
            }
            "tab" => self.text.push('\t'),
            "line-break" => self.text.push('\n'),
            _ => {}
        }
    }

    fn close(&mut self) {
        if self.aside == Some(self.depth) {
            self.aside = None;
        }
        self.depth -= 1;
    }

    fn say(&mut self, text: &str) {
        // What stands between the paragraphs is the layout of the file.
        if self.depth > 0 && self.aside.is_none() {
            self.text.push_str(text);
        }
    }

    fn content(&self) -> Option<Content> {
        let shown = self.text.trim_matches(is_space);
        // Some programs show the error alone, over a value of 0.
        let shows_error = shown.starts_with("Err:") || shown.starts_with('#');
        if self.is_error || (shows_error && self.kind != "string") {
            return Some(Content::Fault(shown.into()));
        }
        let value = self.value.as_deref();
        match self.kind.as_str() {
            "float" | "percentage" | "currency" => Some(number(value?, shown)),
            "date" => Some(Content::Date {
                day: value?.get(..10).and_then(|day| day.parse().ok()),
                shown: value?.into(),
            }),
            "time" => Some(Content::Date {
                day: None,
                shown: value?.into(),
            }),
            "boolean" => {
                let yes = value?.eq_ignore_ascii_case("true");
                Some(Content::Text(if yes { "TRUE" } else { "FALSE" }.into()))
            }
            // A formula whose result is an empty text has an empty paragraph.
            "" if self.formula && self.paragraphs == 0 && value.is_none() => {
                Some(Content::Uncalculated)
            }
            _ => text(value.filter(|_| shown.is_empty()).unwrap_or(shown)),
        }
    }
}

fn number(value: &str, shown: &str) -> Content {
    match value.trim().parse::<f64>() {
        Ok(value) if value.is_finite() => Content::Number {
            value,
            shown: if shown.is_empty() {
                general(value).into()
            } else {
                shown.into()
            },
        },
        _ => no_number(),
    }
}
