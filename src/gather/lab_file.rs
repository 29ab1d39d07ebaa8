//! A lab file from its bytes to its extractions; whatever is wrong with one file stays with that file.

use crate::config::Config;
use crate::files;
use crate::gather::codes::Codes;
use crate::gather::extractions::{self, Context};
use crate::gather::facts::{self, Facts};
use crate::gather::finding::{self, Table};
use crate::gather::headings::Role;
use crate::gather::inbox::{self, InboxFile};
use crate::gather::numbers::{self, Marks};
use crate::gather::plan::{self, Plan};
use crate::gather::tables::{self, Book, Content, Row, Sheet, Unreadable};
use crate::gather::values;
use crate::gather::{Distinct, same_file};
use crate::model::extraction::Extraction;
use crate::model::place::{LabFile, Place, column_letter};
use crate::model::problem::{Code, Problems};
use crate::model::understanding::{Understanding, UnderstoodColumn, UnderstoodTable};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Arc;

/// What one file gave.
#[derive(Debug, Default)]
pub struct Taken {
    /// The file and how it was understood, where it could be read.
    pub read: Option<(Arc<LabFile>, Understanding)>,
    /// Its extractions.
    pub extractions: Vec<Extraction>,
    /// What is wrong with it.
    pub problems: Problems,
}

/// Hashes every file; of files with the same bytes the first counts. Files that cannot be opened are told and dropped.
pub fn hash_all(listed: Vec<InboxFile>, problems: &mut Problems) -> Distinct {
    let mut first_with: BTreeMap<String, String> = BTreeMap::new();
    let mut paths = BTreeMap::new();
    let mut distinct = Vec::new();
    for file in listed {
        if inbox::is_too_large(&file) {
            unreadable(&file.name, &Unreadable::too_large(), problems);
            continue;
        }
        let bytes = match files::read(&file.path) {
            Ok(bytes) => bytes,
            Err(error) => {
                let why = Unreadable::new(
                    format!("the file cannot be opened ({})", error.root_cause()),
                    "Close it in other programs, look at its permissions, then run again.",
                );
                unreadable(&file.name, &why, problems);
                continue;
            }
        };
        let sha256 = hex(&Sha256::digest(&bytes));
        let first = first_with
            .entry(sha256.clone())
            .or_insert_with(|| file.name.clone());
        paths.insert(file.name.clone(), first.clone());
        if *first == file.name {
            distinct.push((file, sha256));
        } else if !bytes.is_empty() {
            same_file(&file, first, problems);
        }
    }
    (distinct, paths)
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

fn unreadable(name: &str, why: &Unreadable, problems: &mut Problems) {
    problems.add(
        Code::UnreadableFile,
        Place::file(name),
        why.message.clone(),
        why.hint.clone(),
    );
}

/// Reads one file. A panic in a reader becomes a problem of that file.
pub fn take(file: &InboxFile, sha256: &str, codes: &Codes, config: &Config) -> Taken {
    catch_unwind(AssertUnwindSafe(|| {
        take_unguarded(file, sha256, codes, config)
    }))
    .unwrap_or_else(|_| {
        let mut taken = Taken::default();
        let why = Unreadable::new(
            "the file is damaged in a way that the reader did not expect",
            "Ask the lab to send it again.",
        );
        unreadable(&file.name, &why, &mut taken.problems);
        taken
    })
}

fn take_unguarded(file: &InboxFile, sha256: &str, codes: &Codes, config: &Config) -> Taken {
    let mut taken = Taken::default();
    let book = files::read(&file.path)
        .map_err(|error| {
            Unreadable::new(
                format!("the file cannot be opened ({})", error.root_cause()),
                "Look at its permissions, then run again.",
            )
        })
        .and_then(|bytes| tables::read(&bytes));
    match book {
        Ok(book) => {
            let lab_file = Arc::new(LabFile {
                path: file.name.clone(),
                sha256: sha256.to_owned(),
            });
            understand(&lab_file, &book, codes, config, &mut taken);
        }
        Err(why) => unreadable(&file.name, &why, &mut taken.problems),
    }
    taken
}

/// Finds the tables of a book and reads them.
pub fn understand(
    file: &Arc<LabFile>,
    book: &Book,
    codes: &Codes,
    config: &Config,
    taken: &mut Taken,
) {
    if book.guessed_encoding {
        taken.problems.add(
            Code::Encoding,
            Place::file(file.path.clone()),
            "the text is not in UTF-8 and was read as Windows-1252",
            "If letters such as é or µ look wrong, ask the lab for the file in UTF-8.",
        );
    }
    let mut understanding = Understanding {
        file: file.path.clone(),
        format: book.format.clone(),
        ..Understanding::default()
    };
    let found: Vec<Vec<Table>> = book.sheets.iter().map(finding::find).collect();
    let marks = decimal_marks(book, &found);
    let outside = facts_outside(book, &found, marks);
    let whole = outside
        .iter()
        .fold(Facts::default(), |all, sheet| all.or(sheet));
    let mut any = false;
    for ((sheet, tables), facts) in book.sheets.iter().zip(&found).zip(&outside) {
        let facts = facts.clone().or(&whole);
        let context = Context {
            file,
            sheet,
            turned: false,
            codes,
            config,
            marks,
            facts: &facts,
        };
        for table in tables {
            any = true;
            read_table(table, &context, &mut understanding, taken);
        }
    }
    if !any {
        taken.problems.add(
            Code::NoTable,
            Place::file(file.path.clone()),
            "no table of results was recognised in this file",
            "Ask the lab for a table with a column for the sample code and one for the result.",
        );
    }
    taken.read = Some((file.clone(), understanding));
}

fn read_table(
    table: &Table,
    context: &Context<'_>,
    understanding: &mut Understanding,
    taken: &mut Taken,
) {
    let plan = match plan::plan(table, &context.sheet.rows, context.codes) {
        Ok(plan) => plan,
        Err(none) => {
            let message = if none.has_mean {
                "the table has means but no results of single extractions; a mean is not a reading"
            } else {
                "none of the table's columns holds results"
            };
            taken.problems.add(
                Code::NoResultColumn,
                Place {
                    column: None,
                    ..context.place(table.heading_row, 1)
                },
                message,
                "Ask the lab for the result of each extraction.",
            );
            return;
        }
    };
    let given = extractions::extract(table, &plan, context, &mut taken.problems);
    understanding.tables.push(UnderstoodTable {
        sheet: context.sheet.name.as_deref().map(str::to_owned),
        heading_row: table.heading_row,
        shape: shape(&plan),
        columns: understood_columns(table, &plan),
        rows: given.rows,
    });
    taken.extractions.extend(given.extractions);
}

fn shape(plan: &Plan) -> Vec<String> {
    let mut shape = vec![
        if plan.is_wide() {
            "wide: a row a package, a column an extraction"
        } else {
            "long: a row an extraction"
        }
        .to_owned(),
    ];
    if plan.wells {
        shape.push("the wells of an extraction are averaged".to_owned());
    }
    shape
}

fn understood_columns(table: &Table, plan: &Plan) -> Vec<UnderstoodColumn> {
    table
        .columns
        .iter()
        .map(|column| UnderstoodColumn {
            letter: column_letter(column.column),
            heading: column.heading.clone(),
            taken_for: taken_for(column.column, column.role(), plan),
        })
        .collect()
}

fn taken_for(column: u32, role: Option<Role>, plan: &Plan) -> String {
    if let Some(result) = plan.results.iter().find(|result| result.column == column) {
        return match result.extraction {
            Some(number) => format!("result of extraction {number}"),
            None => "result".to_owned(),
        };
    }
    let used = [
        (Some(plan.sample), "package code"),
        (plan.extraction, "number of the extraction"),
        (plan.unit, "unit"),
        (plan.lloq, "lowest quantity reported as a number"),
        (plan.uloq, "highest quantity reported as a number"),
        (plan.tested_on, "day of the test"),
        (plan.report, "report number"),
        (plan.assay, "assay"),
        (plan.dilution, "dilution"),
        (plan.remark, "remark"),
        (plan.lab, "laboratory"),
        (plan.analyte, "what was measured"),
    ];
    if let Some((_, what)) = used.iter().find(|(used, _)| *used == Some(column)) {
        return (*what).to_owned();
    }
    if plan.means.contains(&column) {
        return "mean: checked, not a reading".to_owned();
    }
    match role {
        Some(Role::Well | Role::Replicate) => "well".to_owned(),
        Some(Role::LabSample) => "the lab's own number: not used".to_owned(),
        _ => "not used".to_owned(),
    }
}

/// The decimal mark: by the figures in the tables' columns, else by any other figure of the file.
fn decimal_marks(book: &Book, found: &[Vec<Table>]) -> Marks {
    let mut inside = Marks::Unsettled;
    let mut outside = Marks::Unsettled;
    for (sheet, tables) in book.sheets.iter().zip(found) {
        let columns: Vec<u32> = tables
            .iter()
            .flat_map(|table| &table.columns)
            .filter(|column| holds_figures(column.role()))
            .map(|column| column.column)
            .collect();
        for cell in sheet.rows.iter().flat_map(|row| &row.cells) {
            let Content::Text(written) = &cell.content else {
                continue;
            };
            let Some(figure) = values::figure_in(written) else {
                continue;
            };
            let seen = numbers::marks(&figure);
            if columns.contains(&cell.column) {
                inside = inside.and(seen);
            } else {
                outside = outside.and(seen);
            }
        }
    }
    if inside == Marks::Unsettled {
        outside
    } else {
        inside
    }
}

fn holds_figures(role: Option<Role>) -> bool {
    matches!(
        role,
        Some(Role::Result(_) | Role::Final | Role::Mean | Role::Lloq | Role::Uloq)
    )
}

/// What each sheet says outside of its tables.
fn facts_outside(book: &Book, found: &[Vec<Table>], marks: Marks) -> Vec<Facts> {
    book.sheets
        .iter()
        .zip(found)
        .map(|(sheet, tables)| facts::collect(rows_outside(sheet, tables), marks))
        .collect()
}

/// Rows above the first table, and below tables those that hold a lone text or two: footnotes.
fn rows_outside<'a>(sheet: &'a Sheet, tables: &'a [Table]) -> impl Iterator<Item = &'a Row> {
    const LINES: usize = 400;
    let first = tables.first().map_or(sheet.rows.len(), |table| {
        sheet
            .rows
            .partition_point(|row| row.number < table.heading_row)
    });
    let above = sheet.rows[..first].iter().take(LINES);
    let below = tables.iter().flat_map(move |table| {
        let rows = &sheet.rows[table.rows.clone()];
        rows[rows.len().saturating_sub(LINES)..]
            .iter()
            .filter(|row| row.cells.len() <= 2)
    });
    above.chain(below)
}
