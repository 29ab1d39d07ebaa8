//! A sheet -> its tables: where the headings stand, what each column holds, which rows are below them.

use crate::gather::books::bounds::{MOST_LOOKS, MOST_TABLES};
use crate::gather::books::{Bound, Content, Merged, Row, Sheet};
use crate::gather::codes::Codes;
use crate::gather::tables::blocks;
use crate::gather::tables::headings::{self, Heading, Part, Role};
use crate::gather::tables::stacked;
use crate::gather::tables::units::Unit;
use std::collections::BTreeMap;
use std::ops::Range;

/// A table that was found in a sheet.
#[derive(Clone, Debug)]
pub struct Table {
    /// Row of the first heading, as the spreadsheet shows it.
    pub heading_row: u32,
    /// Columns with a heading, from the left.
    pub columns: Vec<Column>,
    /// Its rows, as indices into the sheet's.
    pub rows: Range<usize>,
    /// Its first and last column: another table may stand beside it.
    pub span: (u32, u32),
}

impl Table {
    /// The column that stands there, where it has a heading.
    pub fn column(&self, column: u32) -> Option<&Column> {
        at(&self.columns, column)
    }

    /// The unit that headings of results and means give, for those of them that give none; none where they differ.
    pub fn unit(&self) -> Option<Unit> {
        let mut units = self
            .columns
            .iter()
            .filter(|column| column.role().is_some_and(Role::is_reported))
            .filter_map(|column| column.meaning.as_ref()?.unit);
        let first = units.next()?;
        // What the other column is of, gluten or gliadin, says nothing about this one.
        units.all(|unit| unit.ppm == first.ppm).then_some(Unit {
            quantity: None,
            ..first
        })
    }

    /// The cells of a row that stand within the table.
    pub fn cells<'a>(&self, row: &'a Row) -> impl Iterator<Item = (u32, &'a Content)> + use<'a> {
        let (left, right) = self.span;
        row.cells
            .iter()
            .filter(move |cell| (left..=right).contains(&cell.column))
            .map(|cell| (cell.column, &cell.content))
    }
}

/// A column with a heading.
#[derive(Clone, Debug)]
pub struct Column {
    /// From 1.
    pub column: u32,
    /// As written; both rows where there are two.
    pub heading: String,
    /// What it means, where it is known.
    pub meaning: Option<Heading>,
    /// Whether no heading stands in the column itself: one beside it reaches over it.
    pub spread: bool,
}

impl Column {
    /// What the column holds, where it is known.
    pub fn role(&self) -> Option<Role> {
        self.meaning.as_ref().map(|meaning| meaning.role)
    }
}

/// The column that stands there, of columns from the left.
pub fn at(columns: &[Column], column: u32) -> Option<&Column> {
    columns
        .binary_search_by_key(&column, |known| known.column)
        .ok()
        .map(|at| &columns[at])
}

/// Finds every table of a sheet, from the top; those that stand side by side from the left.
///
/// # Errors
/// Where there are more tables, or more that could be headings of one, than any report has.
pub fn find(sheet: &Sheet, codes: &Codes) -> Result<Vec<Table>, Bound> {
    let mut known = Known {
        headings: BTreeMap::new(),
        spans: spans(&sheet.merged),
        coded: blocks::Coded::new(&sheet.rows, codes),
        looks: 0,
    };
    let mut tables: Vec<Table> = Vec::new();
    let mut index = 0;
    while index < sheet.rows.len() {
        if tables.len() > MOST_TABLES || known.looks > MOST_LOOKS {
            return Err(Bound::Tables);
        }
        if !could_be_headings(&sheet.rows[index], &mut known) {
            index += 1;
            continue;
        }
        // A column that names the sample of a table above names that of its rows, whatever they hold.
        let taken: Vec<u32> = tables
            .iter()
            .filter(|above| above.rows.contains(&index))
            .flat_map(|above| blocks::samples(&above.columns))
            .collect();
        let found = stacked::headings_at(sheet, index, (codes, &taken), &mut known);
        let Some((height, columns)) = found else {
            index += 1;
            continue;
        };
        let end = index + height;
        for block in blocks::split(columns) {
            if score(&block).is_none() {
                continue;
            }
            let open = tables.iter().filter(|above| above.rows.contains(&index));
            let block = blocks::without_others(block, open);
            let Some(span) = blocks::span(&block) else {
                continue;
            };
            // What stands above in the same columns ends here.
            for above in &mut tables {
                let overlaps = above.span.0 <= span.1 && span.0 <= above.span.1;
                if overlaps && above.rows.end > index && above.rows.start <= index {
                    above.rows.end = index;
                }
            }
            tables.push(Table {
                heading_row: sheet.rows[index].number,
                columns: block,
                rows: end..sheet.rows.len(),
                span,
            });
        }
        index = end;
    }
    if tables.len() > MOST_TABLES {
        return Err(Bound::Tables);
    }
    blocks::widen(&mut tables);
    Ok(tables)
}

/// What is known of a sheet while its tables are looked for.
pub struct Known<'a> {
    /// Headings are read once a wording, since long files repeat them.
    headings: BTreeMap<String, Option<Heading>>,
    /// Joined cells, by their first column and row.
    spans: BTreeMap<(u32, u32), Merged>,
    /// Where registered codes stand.
    pub coded: blocks::Coded<'a>,
    /// Cells that were looked at so far: [`MOST_LOOKS`].
    pub looks: usize,
}

/// Joined cells by their first column and row: no two of them share a cell.
fn spans(merged: &[Merged]) -> BTreeMap<(u32, u32), Merged> {
    let placed = merged.iter().rev();
    placed.map(|one| ((one.left, one.top), *one)).collect()
}

impl Known<'_> {
    /// What a text means as a heading.
    pub fn read(&mut self, written: &str) -> Option<Heading> {
        if !headings::may_be_heading(written) && !stacked::numbers_a_column(written) {
            return None;
        }
        if let Some(known) = self.headings.get(written) {
            return known.clone();
        }
        let read = headings::read(written);
        // Codes and remarks come in any number; headings do not.
        const MOST: usize = 2000;
        if self.headings.len() < MOST {
            self.headings.insert(written.to_owned(), read.clone());
        }
        read
    }

    /// The last column of the joined cells that start in this column and reach over this row.
    pub fn spans_to(&self, row: u32, column: u32) -> Option<u32> {
        let above = self.spans.range((column, 0)..=(column, row)).next_back();
        above
            .filter(|(_, merged)| row <= merged.bottom)
            .map(|(_, merged)| merged.right)
    }
}

/// Whether any cell of a row is a known heading: most rows are data, and this tells them apart cheaply.
fn could_be_headings(row: &Row, known: &mut Known<'_>) -> bool {
    row.cells
        .iter()
        .any(|cell| known.read(&cell.content.shown()).is_some())
}

/// Whether a unit says something of what a column holds.
fn has_a_unit(role: Role) -> bool {
    let is_limit = matches!(
        role,
        Role::Lloq | Role::Uloq | Role::Lod | Role::Uncertainty
    );
    is_limit || role.is_reported()
}

/// How much a set of columns says; none where it is no table of results.
pub fn score(columns: &[Column]) -> Option<usize> {
    let has = |wanted: fn(Role) -> bool| columns.iter().filter_map(Column::role).any(wanted);
    if !(has(Role::names_sample) && has(Role::is_reported)) {
        return None;
    }
    let understood = columns
        .iter()
        .filter(|column| column.meaning.is_some())
        .count();
    let mut parts: Vec<Part> = columns
        .iter()
        .filter_map(|column| match column.role() {
            Some(Role::Result(part)) => Some(part),
            _ => None,
        })
        .collect();
    parts.sort_unstable();
    parts.dedup();
    let units = columns
        .iter()
        .filter(|column| {
            column
                .meaning
                .as_ref()
                .is_some_and(|meaning| meaning.unit.is_some() && has_a_unit(meaning.role))
        })
        .count();
    // A column that only a heading beside it covers is half understood: a second row may say more.
    let own = columns
        .iter()
        .filter(|column| column.meaning.is_some() && !column.spread)
        .count();
    Some(understood * 4 + own * 4 + parts.len() * 2 + units)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gather::books::csv;

    fn tables(text: &str) -> (Sheet, Vec<Table>) {
        let sheet = csv::read(text.as_bytes(), &headings::likeness_of)
            .expect("reads")
            .sheets
            .remove(0);
        let tables = find(&sheet, &Codes::default()).expect("stays within bounds");
        (sheet, tables)
    }

    #[test]
    fn a_table_is_found_below_a_letterhead() {
        let (_, tables) = tables(
            "Fenwick Hollow Laboratory\n1 Mill Lane\n\nReport no.: 77\n\nSample ID,Extraction,Gluten (mg/kg)\nTKW-1,1,12.4\n",
        );
        assert_eq!(tables.len(), 1);
        assert_eq!(tables[0].heading_row, 6);
        assert_eq!(tables[0].rows.len(), 1);
    }

    #[test]
    fn two_rows_of_headings_are_read_together() {
        let (_, tables) =
            tables(",Gluten (mg/kg),\nSample ID,Extraction 1,Extraction 2\nTKW-1,12.4,13\n");
        assert_eq!(tables.len(), 1);
        assert_eq!(tables[0].heading_row, 1);
        assert_eq!(tables[0].columns[1].heading, "Gluten (mg/kg) Extraction 1");
        assert!(
            tables[0].columns[2]
                .meaning
                .as_ref()
                .is_some_and(|meaning| meaning.unit.is_some())
        );
    }

    #[test]
    fn a_row_of_units_belongs_to_the_headings() {
        let (_, tables) = tables("Sample,Extraction,Result\n,,mg/kg\nTKW-1,1,12.4\n");
        assert_eq!(tables[0].columns[2].heading, "Result mg/kg");
        assert_eq!(tables[0].rows.len(), 1);
    }

    #[test]
    fn several_tables_end_where_the_next_begins() {
        let (_, tables) = tables("Sample,Result\nTKW-1,5\n\nSample,Result\nTKW-2,6\nTKW-3,7\n");
        let lengths: Vec<usize> = tables.iter().map(|table| table.rows.len()).collect();
        assert_eq!(lengths, [1, 2]);
    }
}
