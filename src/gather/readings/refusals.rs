//! What a table gives no reading for, said once a cell: headings that clash, codes that are unknown or mangled.

use crate::gather::books::Row;
use crate::gather::codes::Mangled;
use crate::gather::facts;
use crate::gather::readings::extractions::Context;
use crate::gather::readings::rows;
use crate::gather::readings::subject::Subject;
use crate::gather::readings::withdrawn;
use crate::gather::tables::finding::Table;
use crate::gather::tables::headings::Role;
use crate::gather::tables::plan::{Ambiguous, Doubtful, Plan};
use crate::gather::text;
use crate::model::place::{Place, column_letter};
use crate::model::problem::{Code, Problems};
use crate::model::said::Item;
use crate::words::say;

/// What is wrong with the headings of a table.
pub fn headings(table: &Table, plan: &Plan, context: &Context<'_>, problems: &mut Problems) {
    if let Some(column) = plan.replicates_as_extractions {
        problems.add(
            Code::AmbiguousReplicate,
            context.place(table.heading_row, column),
            say::found_replicates(text::short(
                table.column(column).map_or("", |column| &column.heading),
            )),
            say::do_ask_whether_wells(),
        );
    }
    let used = plan.results.iter().map(|result| result.column);
    for column in [plan.sample].into_iter().chain(plan.extraction).chain(used) {
        if context.sheet.hides(column) {
            problems.add(
                Code::Hidden,
                context.place(table.heading_row, column),
                say::found_hidden(if context.turned { "row" } else { "column" }),
                say::do_ask_whether_meant(),
            );
        }
    }
    for result in &plan.results {
        let Some(column) = table.column(result.column) else {
            continue;
        };
        if let Some(foreign) = column
            .meaning
            .as_ref()
            .and_then(|meaning| meaning.foreign.as_ref())
        {
            problems.add(
                Code::BadUnit,
                context.place(table.heading_row, result.column),
                say::found_foreign_heading(text::short(&column.heading), foreign),
                say::do_ask_for_ppm("all"),
            );
        }
    }
}

/// A code that the register does not have.
pub fn unknown(
    row: &Row,
    written: &str,
    plan: &Plan,
    context: &Context<'_>,
    problems: &mut Problems,
) {
    let hint = match context.codes.nearest(written) {
        Some(code) => say::do_look_at_near_code(code),
        None => say::do_register_or_ask(),
    };
    problems.add(
        Code::UnknownPackage,
        context.place(row.number, plan.sample),
        say::found_unknown_code(text::short(written)),
        hint,
    );
}

/// A code that a spreadsheet has mangled, or none at all.
pub fn bad_code(
    row: &Row,
    found: &rows::BadCode,
    plan: &Plan,
    context: &Context<'_>,
    problems: &mut Problems,
) {
    let (message, hint) = match found {
        rows::BadCode::None => (say::found_no_code(), say::do_ask_which_package()),
        rows::BadCode::Astray(written) => (
            say::found_code_astray(text::short(written)),
            say::do_ask_what_row_says(),
        ),
        rows::BadCode::Mangled(written, how) => {
            let (into, registered, code) = match how {
                Mangled::Date => ("date", "unknown", ""),
                Mangled::Scientific => ("scientific", "unknown", ""),
                Mangled::Zeros(code) => ("zeros", "known", code.as_str()),
            };
            (
                say::found_mangled_code(text::short(written), into),
                say::do_format_as_text(registered, code),
            )
        }
    };
    problems.add(
        Code::BadCode,
        context.place(row.number, plan.sample),
        message,
        hint,
    );
}

/// A result without a code of its own, beside a word that may say that it is none of the package above.
pub fn unclear_row(
    row: &Row,
    (code, word): (&str, &str),
    plan: &Plan,
    context: &Context<'_>,
    problems: &mut Problems,
) {
    problems.add(
        Code::BadCode,
        context.place(row.number, plan.sample),
        say::found_unclear_row(text::short(word), text::short(code)),
        say::do_ask_what_result_is_of(),
    );
}

/// The day of a test, where the row has one; what is no day is named.
pub fn day(
    row: &Row,
    plan: &Plan,
    context: &Context<'_>,
    problems: &mut Problems,
) -> Option<(chrono::NaiveDate, chrono::NaiveDate)> {
    let column = plan.of(Role::TestedOn)?;
    let content = row.at(column)?;
    let day = facts::days(content);
    if day.is_none() {
        problems.add(
            Code::Suspicious,
            context.place(row.number, column),
            say::found_no_day(text::short(&content.shown()), "lab"),
            say::do_write_day("lab"),
        );
    }
    day
}

/// What the results of a table are of is not gluten, or cannot be told.
pub fn subject(table: &Table, plan: &Plan, context: &Context<'_>, problems: &mut Problems) {
    let column = plan.results.first().map_or(1, |result| result.column);
    let place = context.place(table.heading_row, column);
    match &context.subject {
        Subject::Other(written) => other_analyte(place, written, "table", problems),
        Subject::Unclear(written) => problems.add(
            Code::AmbiguousTable,
            place,
            say::found_gluten_or_gliadin(written),
            say::do_ask_gluten_or_gliadin(),
        ),
        Subject::Gluten | Subject::Gliadin => {}
    }
}

/// A row, or a table, of another substance in a file that names no gluten.
pub fn other_analyte(place: Place, written: &str, what: &'static str, problems: &mut Problems) {
    let code = match what {
        "row" => Code::BadValue,
        _ => Code::AmbiguousTable,
    };
    let message = say::found_other_analyte(what, text::short(written));
    problems.add(code, place, message, say::do_ask_for_gluten(what));
}

/// A row that says of itself that it is no result of the package.
pub fn withdrawn(place: Place, written: &str, why: withdrawn::Why, problems: &mut Problems) {
    problems.add(
        Code::BadValue,
        place,
        say::found_withdrawn(why.word(), text::short(written)),
        say::do_ask_without_row(),
    );
}

/// A sign that goes with no figure.
pub fn loose_sign(place: Place, written: &str, problems: &mut Problems) {
    problems.add(
        Code::BadValue,
        place,
        say::found_loose_sign(text::short(written)),
        say::do_ask_for_sign_before(),
    );
}

/// A remark that says something else than the result.
pub fn contradicted(place: Place, remark: &str, reported: &str, problems: &mut Problems) {
    problems.add(
        Code::BadValue,
        place,
        say::found_sign_contradicts(text::short(remark), text::short(reported)),
        say::do_ask_for_sign_before(),
    );
}

/// An extraction that is numbered 0.
pub fn zeroth(place: Place, problems: &mut Problems) {
    problems.add(
        Code::BadValue,
        place,
        say::found_zeroth(),
        say::do_ask_for_numbers(),
    );
}

/// Results without a unit.
pub fn no_unit(heading: Place, problems: &mut Problems) {
    problems.add(
        Code::AssumedUnit,
        heading,
        say::found_no_unit(),
        say::do_ask_for_unit(),
    );
}

/// A second code on the row of a package.
pub fn second_code(place: Place, code: &str, other: &str, problems: &mut Problems) {
    problems.add(
        Code::BadCode,
        place,
        say::found_second_code(code, other),
        say::do_ask_for_headings_over_each(),
    );
}

/// A row that the spreadsheet program does not show.
pub fn hidden_row(row: &Row, plan: &Plan, context: &Context<'_>, problems: &mut Problems) {
    problems.add(
        Code::Hidden,
        Place {
            column: None,
            ..context.place(row.number, plan.sample)
        },
        say::found_hidden("row"),
        say::do_ask_whether_meant(),
    );
}

/// Two columns that could be the same thing.
pub fn ambiguous_columns(
    table: &Table,
    doubt: Ambiguous,
    context: &Context<'_>,
    problems: &mut Problems,
) {
    let (left, right) = doubt.columns;
    let heading = |column: u32| table.column(column).map_or("", |column| &column.heading);
    let is_bare = heading(right).is_empty();
    let is_sample = doubt.what == Doubtful::Package;
    let other = |role: fn(Role) -> bool| {
        let found = table
            .columns
            .iter()
            .find(|column| column.role().is_some_and(role));
        found.map_or("", |column| &column.heading)
    };
    let (sample, result) = if is_sample {
        (heading(right), other(Role::is_reported))
    } else {
        let is_left = is_bare || doubt.what == Doubtful::Decimals;
        let taken = if is_left { left } else { right };
        (other(Role::names_sample), heading(taken))
    };
    let takes = if is_bare { "headed" } else { "second" };
    let mut block = String::from("[[layout]]\n");
    let path = &context.file.path;
    block.push_str(&format!(
        "files = {}\n",
        quoted(path.strip_prefix("inbox/").unwrap_or(path))
    ));
    if let Some(sheet) = &context.sheet.name {
        block.push_str(&format!("sheet = {}\n", quoted(sheet)));
    }
    block.push_str(&format!(
        "header_row = {}\ncolumns = {{ sample = {}, result = {} }}",
        table.heading_row,
        quoted(sample),
        quoted(result)
    ));
    let (message, hint) = if doubt.what == Doubtful::Decimals {
        let (left_heading, right_heading) =
            (text::short(heading(left)), text::short(heading(right)));
        let found = say::found_parted_decimals(
            left_heading,
            column_letter(left),
            right_heading,
            column_letter(right),
        );
        (found, say::do_ask_for_points(block))
    } else {
        let found = say::found_two_columns(
            doubt.what.word(),
            headed(heading(left)),
            text::short(heading(left)),
            column_letter(left),
            headed(heading(right)),
            text::short(heading(right)),
            column_letter(right),
        );
        let is_one_name = text::plain(heading(left)) == text::plain(heading(right));
        let hint = if is_one_name {
            say::do_tell_columns_apart()
        } else {
            say::do_choose_column(takes, block)
        };
        (found, hint)
    };
    let place = context.place(table.heading_row, right);
    problems.add(Code::AmbiguousTable, place, message, hint);
}

/// A row below the headings that may be the headings of another table.
pub fn ambiguous_row(row: &Row, table: &Table, context: &Context<'_>, problems: &mut Problems) {
    let shown = table.cells(row).map(|(column, content)| {
        Item::in_column(text::short(&content.shown()), column_letter(column))
    });
    problems.add(
        Code::AmbiguousTable,
        Place {
            column: None,
            ..context.place(row.number, 1)
        },
        say::found_doubtful_row(shown.collect()),
        say::do_ask_what_stands_below(),
    );
}

/// Whether a column has a heading, as the message that tells of it says so.
fn headed(heading: &str) -> &'static str {
    if heading.is_empty() { "bare" } else { "headed" }
}

/// A string as TOML writes it.
pub fn quoted(text: &str) -> String {
    toml::Value::String(text.to_owned()).to_string()
}
