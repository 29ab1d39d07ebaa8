//! A lab file from its bytes to its extractions; whatever is wrong with one file stays with that file.

use crate::config::Config;
use crate::files;
use crate::gather::books::bounds::MOST_TOLD;
use crate::gather::books::{self, Book, Bound, MOST_RESULTS, Row, Unreadable};
use crate::gather::codes::Codes;
use crate::gather::explained;
use crate::gather::facts::Facts;
use crate::gather::inbox::InboxFile;
use crate::gather::plates;
use crate::gather::readings::extractions::{self, Context};
use crate::gather::readings::missing::{self, Only};
use crate::gather::readings::pages::Page;
use crate::gather::readings::subject::{self, Subject};
use crate::gather::record::{self, Reports};
use crate::gather::tables::finding::Table;
use crate::gather::tables::headings;
use crate::gather::tables::location::{self, Located};
use crate::gather::tables::plan::{self, NoResults, Plan};
use crate::gather::unreadable;
use crate::guard;
use crate::model::extraction::Extraction;
use crate::model::place::{LabFile, Place};
use crate::model::plate::Plate;
use crate::model::problem::{Code, Problems};
use crate::model::said::Item;
use crate::model::understanding::{Understanding, UnderstoodTable};
use crate::words::{english, say};
use std::sync::Arc;

/// What one file gave.
#[derive(Debug, Default)]
pub struct Taken {
    /// The file and how it was understood, where it could be read.
    pub read: Option<(Arc<LabFile>, Understanding)>,
    /// Its extractions.
    pub extractions: Vec<Extraction>,
    /// Its plates.
    pub plates: Vec<Plate>,
    /// What is wrong with it.
    pub problems: Problems,
}

/// Reads one file. A panic in a reader becomes a problem of that file.
pub fn take(
    file: &InboxFile,
    sha256: &str,
    codes: &Codes,
    settings: (&Config, &Reports<'_>),
) -> Taken {
    guard::guarded(|| take_unguarded(file, sha256, codes, settings)).unwrap_or_else(|| {
        let mut taken = Taken::default();
        let why = Unreadable::new(say::found_damaged(), say::do_send_again());
        unreadable::tell(&file.name, &why, &mut taken.problems);
        taken
    })
}

fn take_unguarded(
    file: &InboxFile,
    sha256: &str,
    codes: &Codes,
    (config, reports): (&Config, &Reports<'_>),
) -> Taken {
    let mut taken = Taken::default();
    let book = files::read(&file.path)
        .map_err(|error| unreadable::cannot_open(&error))
        .and_then(|bytes| {
            if files::sha256_of(&bytes) == sha256 {
                books::read(&bytes, &headings::likeness_of)
            } else {
                Err(Unreadable::new(
                    say::found_changing(),
                    say::do_wait_until_whole(),
                ))
            }
        });
    match book {
        Ok(book) => {
            let lab_file = Arc::new(LabFile {
                path: file.name.clone(),
                sha256: sha256.to_owned(),
                opened_as: file
                    .path
                    .strip_prefix(&config.root)
                    .unwrap_or(&file.path)
                    .to_owned(),
            });
            understand(&lab_file, &book, codes, (config, reports), &mut taken);
        }
        Err(why) => unreadable::tell(&file.name, &why, &mut taken.problems),
    }
    for (code, more) in taken.problems.keep_first(MOST_TOLD) {
        taken.problems.add(
            code,
            Place::file(file.name.clone()),
            say::found_more_of_a_kind(more as u64),
            say::do_mend_those_first(),
        );
    }
    taken
}

/// Finds the tables of a book and reads them.
pub fn understand(
    file: &Arc<LabFile>,
    book: &Book,
    codes: &Codes,
    (config, reports): (&Config, &Reports<'_>),
    taken: &mut Taken,
) {
    if book.guessed_encoding {
        taken.problems.add(
            Code::Encoding,
            Place::file(file.path.clone()),
            say::found_encoding(),
            say::do_ask_for_utf8(),
        );
    }
    left_out(file, book, &mut taken.problems);
    swallowed_rows(file, book, codes, &mut taken.problems);
    let mut understanding = Understanding {
        file: file.path.clone(),
        format: book.format.clone(),
        ..Understanding::default()
    };
    let found = plates::find(file, book, codes, config, &mut taken.problems);
    let rest = found.rest(book);
    let book = &*rest;
    understanding.passed_over.extend(found.explained());
    let located = match location::locate(book, &file.path, codes, config) {
        Ok(located) => located,
        Err(bound) => return beyond(file, bound, taken),
    };
    let marks = location::decimal_marks(book, &located);
    let row = reports.of(&file.path);
    let stated = record::stated(row);
    let cells = record::cells(book, &file.path, config, marks);
    let facts: Vec<Facts> = location::facts_outside(book, &located, marks)
        .into_iter()
        .zip(cells)
        .map(|(found, named)| named.or(&found))
        .collect();
    let names_gluten = located.iter().flatten().any(subject::names_gluten);
    let mut unread = Vec::new();
    let mut pages: Vec<Page<'_>> = Vec::new();
    for ((sheet, tables), facts) in book.sheets.iter().zip(&located).zip(&facts) {
        if tables.is_empty() {
            let name = sheet.name.as_deref().unwrap_or("the file");
            understanding
                .passed_over
                .push(format!("{name}: no table of results"));
        } else if let Some(outside) = explained::rows_outside(sheet, tables) {
            let name = sheet.name.as_ref().map(|name| format!("{name}: "));
            let name = name.unwrap_or_default();
            understanding.passed_over.push(format!("{name}{outside}"));
        }
        let record = Arc::new(record::record(&stated.clone().or(facts), row));
        for located in tables {
            let mut context = Context {
                file,
                sheet: &located.sheet,
                turned: located.turned,
                codes,
                config,
                marks,
                facts,
                stated: &stated,
                record: &record,
                subject: Subject::default(),
                names_gluten,
            };
            match plan::plan(
                &located.table,
                &located.sheet.rows,
                codes,
                (located.by_layout, location::parted_by_commas(book)),
            ) {
                Ok(plan) => {
                    if !located.by_layout {
                        let rows = context.rows(&located.table);
                        let of = (context.sheet.name.as_deref(), rows);
                        context.subject =
                            subject::of_table(&located.table, &plan, of, (facts, codes));
                    }
                    if let (Subject::Other(written), true) = (&context.subject, names_gluten) {
                        let place = context.place(located.table.heading_row, 1);
                        pass_over(written, place, &mut understanding, &mut taken.problems);
                        continue;
                    }
                    let start = taken.extractions.len();
                    if start + results_in(located, &plan) > MOST_RESULTS {
                        return beyond(file, Bound::Results, taken);
                    }
                    read_table(located, &plan, &context, &mut understanding, taken);
                    let part = start..taken.extractions.len();
                    let page = Page::new(located, &plan, &taken.extractions, part);
                    if let Some(table) = understanding.tables.last_mut() {
                        let codes = page.go_on_from(&pages, &mut taken.extractions, table);
                        counted_on(codes, &located.table, &context, &mut taken.problems);
                    }
                    pages.push(page);
                }
                Err(none) => unread.push((none, context.place(located.table.heading_row, 1))),
            }
        }
    }
    if understanding.tables.is_empty() && unread.is_empty() {
        match found.is_all(book, codes) {
            true if found.plates.is_empty() => {
                missing::tell_of_only(Only::Absorbances, file, &mut taken.problems)
            }
            true => {}
            false => missing::tell(file, book, codes, &mut taken.problems),
        }
    }
    if !understanding.tables.is_empty() {
        let sheets: Vec<_> = book
            .sheets
            .iter()
            .zip(&located)
            .map(|(sheet, tables)| (sheet, tables.as_slice()))
            .collect();
        missing::tell_of_lost_codes(file, &sheets, codes, &mut taken.problems);
    }
    without_results(unread, &mut understanding, taken);
    taken.plates = found.plates;
    taken.read = Some((file.clone(), understanding));
}

/// A table of another substance, in a file that has gluten in another table.
fn pass_over(
    written: &str,
    place: Place,
    understanding: &mut Understanding,
    problems: &mut Problems,
) {
    let place = Place {
        column: None,
        ..place
    };
    let found = say::found_table_of_other(written);
    let said = english().say(&found);
    understanding.passed_over.push(format!("{place}: {said}"));
    problems.add(Code::PassedOver, place, found, None);
}

/// Tells of packages whose rows on a further sheet are counted on: a draft and a final sheet look the same.
fn counted_on(codes: Vec<String>, table: &Table, context: &Context<'_>, problems: &mut Problems) {
    if codes.is_empty() {
        return;
    }
    let packages: Vec<Item> = codes.into_iter().map(Item::new).collect();
    problems.add(
        Code::CountedOn,
        Place {
            column: None,
            ..context.place(table.heading_row, 1)
        },
        say::found_counted_on(packages),
        say::do_ask_whether_further(),
    );
}

/// A file that passes a bound: nothing of it is used.
fn beyond(file: &LabFile, bound: Bound, taken: &mut Taken) {
    *taken = Taken::default();
    unreadable::tell(&file.path, &Unreadable::beyond(bound), &mut taken.problems);
}

/// How many cells of a table may give a result; those of a wide row that is empty are not among them.
fn results_in(located: &Located<'_>, plan: &Plan) -> usize {
    let rows = &located.sheet.rows[located.table.rows.clone()];
    let filled = |row: &Row| {
        let results = plan.results.iter();
        let filled = results.filter(|result| row.at(result.column).is_some());
        filled.count()
    };
    rows.iter().map(filled).sum()
}

/// Tells of what the reader of the file has left out: control characters, and sheets that are no worksheets.
fn left_out(file: &Arc<LabFile>, book: &Book, problems: &mut Problems) {
    if let Some(first) = book.cleaned.first() {
        let more = book.cleaned.len() as u64 - 1;
        problems.add(
            Code::ControlCharacter,
            Place {
                sheet: first.sheet.as_deref().map(str::to_owned),
                row: Some(first.row),
                column: Some(first.column),
                ..Place::file(file.path.clone())
            },
            say::found_control_characters(more),
            say::do_look_for_missing_text(),
        );
    }
    if !book.passed_over.is_empty() {
        let names: Vec<Item> = book
            .passed_over
            .iter()
            .map(|name| Item::new(&**name))
            .collect();
        problems.add(
            Code::PassedOver,
            Place::file(file.path.clone()),
            say::found_sheets_passed_over(names.len() as u64, names),
            say::do_open_workbook(),
        );
    }
}

/// Tells of rows that stray quotation marks have drawn into a cell of a delimited file. A remark may have several lines, but
/// none of them begins with a package's code.
fn swallowed_rows(file: &Arc<LabFile>, book: &Book, codes: &Codes, problems: &mut Problems) {
    let delimited = book.sheets.iter().filter(|sheet| sheet.name.is_none());
    for row in delimited.flat_map(|sheet| &sheet.rows) {
        for cell in &row.cells {
            let shown = cell.content.shown();
            let begins = |line: &str| {
                let first = line.split([',', ';', '\t', '|']).next().unwrap_or(line);
                codes.find(first.trim_matches('"')).map(str::to_owned)
            };
            let Some(code) = shown.lines().skip(1).find_map(begins) else {
                continue;
            };
            let place = Place {
                row: Some(row.number),
                column: Some(cell.column),
                ..Place::file(file.path.clone())
            };
            problems.add(
                Code::BadValue,
                place,
                say::found_swallowed_rows(code),
                say::do_ask_anew(),
            );
        }
    }
}

/// Tables of means: a problem where the file has no others, since their readings may stand in another table.
fn without_results(
    unread: Vec<(NoResults, Place)>,
    understanding: &mut Understanding,
    taken: &mut Taken,
) {
    for (none, place) in unread {
        let found = say::found_no_results(if none.has_mean { "means" } else { "nothing" });
        let place = Place {
            column: None,
            ..place
        };
        if understanding.tables.is_empty() {
            taken.problems.add(
                Code::NoResultColumn,
                place,
                found,
                say::do_ask_for_extractions(),
            );
        } else {
            understanding
                .passed_over
                .push(format!("{place}: {}", english().say(&found)));
        }
    }
}

fn read_table(
    located: &Located<'_>,
    plan: &Plan,
    context: &Context<'_>,
    understanding: &mut Understanding,
    taken: &mut Taken,
) {
    let given = extractions::extract(&located.table, plan, context, &mut taken.problems);
    if context.sheet.hidden && !given.extractions.is_empty() {
        taken.problems.add(
            Code::Hidden,
            Place {
                row: None,
                column: None,
                ..context.place(1, 1)
            },
            say::found_hidden("sheet"),
            say::do_ask_whether_meant(),
        );
    }
    understanding.tables.push(UnderstoodTable {
        sheet: context.sheet.name.as_deref().map(str::to_owned),
        heading_row: context.place(located.table.heading_row, 1).row.unwrap_or(1),
        shape: explained::shape(located, plan, context),
        columns: explained::columns(located, plan),
        rows: given.rows,
    });
    taken.extractions.extend(given.extractions);
}
