//! What a table gives no reading for, said once a cell: headings that clash, codes that are unknown or mangled.

use crate::gather::books::Row;
use crate::gather::codes::Mangled;
use crate::gather::facts;
use crate::gather::readings::extractions::Context;
use crate::gather::readings::rows;
use crate::gather::tables::finding::Table;
use crate::gather::tables::headings::Role;
use crate::gather::tables::plan::{Ambiguous, Plan};
use crate::gather::text;
use crate::model::place::{Place, column_letter};
use crate::model::problem::{Code, Problems};

/// What is wrong with the headings of a table.
pub fn headings(table: &Table, plan: &Plan, context: &Context<'_>, problems: &mut Problems) {
    if let Some(column) = plan.replicates_as_extractions {
        problems.add(
            Code::AmbiguousReplicate,
            context.place(table.heading_row, column),
            format!(
                "the column “{}” may count extractions or wells; it is taken for extractions",
                text::short(table.column(column).map_or("", |column| &column.heading))
            ),
            "If they are wells of one extract, ask the lab for its extractions: wells say nothing about the package.",
        );
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
                format!("the heading “{}” gives the unit “{foreign}”, which cannot be converted to ppm", text::short(&column.heading)),
                "Ask the lab for the results in mg/kg (ppm). Results under this heading are not used.",
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
        Some(code) => format!("The register has “{code}”. If the lab mistyped it, ask for a corrected report; if the package is yours, add it to registers/packages."),
        None => "If the package is yours, add it to registers/packages (a blind: to registers/blinds); else ask the lab whose sample this is.".to_owned(),
    };
    problems.add(
        Code::UnknownPackage,
        context.place(row.number, plan.sample),
        format!(
            "“{}” is no package code of the register; its result is not used",
            text::short(written)
        ),
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
        rows::BadCode::None => (
            "there is a result here, but no package code on this row or above it".to_owned(),
            "Ask the lab which package it belongs to.".to_owned(),
        ),
        rows::BadCode::Astray(written) => (
            format!(
                "the package code “{}” stands on this row, but not in the column of codes; the row is not used",
                text::short(written)
            ),
            "Ask the lab what the row says. If another table begins above it, ask for its headings.".to_owned(),
        ),
        rows::BadCode::Mangled(written, how) => {
            let what = match how {
                Mangled::Date => "a date",
                Mangled::Scientific => "a number in scientific form",
                Mangled::Zeros(_) => "a number that has lost its zeros",
            };
            let hint = match how {
                Mangled::Zeros(code) => format!(
                    "The register has “{code}”. Ask the lab to format the column of codes as text and to send the file again."
                ),
                _ => {
                    "Ask the lab to format the column of codes as text and to send the file again."
                        .to_owned()
                }
            };
            (
                format!(
                    "“{}” stands where a package code should: a spreadsheet has made it into {what}; its result is not used",
                    text::short(written)
                ),
                hint,
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
            format!(
                "“{}” is no day, or can be two different ones; it is left out",
                text::short(&content.shown())
            ),
            "Ask the lab to write days as 2031-03-07.",
        );
    }
    day
}

/// Results without a unit.
pub fn no_unit(heading: Place, problems: &mut Problems) {
    problems.add(
        Code::AssumedUnit,
        heading,
        "no unit is stated for these results: they are read as ppm (mg/kg)",
        "Ask the lab to state the unit.",
    );
}

/// A second code on the row of a package.
pub fn second_code(place: Place, code: &str, other: &str, problems: &mut Problems) {
    problems.add(
        Code::BadCode,
        place,
        format!(
            "the package code “{other}” stands on the row of “{code}”, outside of the column of codes; nothing is read for it here"
        ),
        "If another table stands beside this one, ask the lab for headings over each that name the sample and the result.",
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
        "the row is hidden in the spreadsheet program; its results are read",
        "Ask the lab whether they were meant to be sent. A correction can set them aside.",
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
    let named = |column: u32| match heading(column) {
        "" => format!("column {}, which has no heading,", column_letter(column)),
        heading => format!(
            "“{}” (column {})",
            text::short(heading),
            column_letter(column)
        ),
    };
    let is_sample = doubt.what == "the package code";
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
        let taken = if is_bare { left } else { right };
        (other(Role::names_sample), heading(taken))
    };
    let which = if is_bare {
        "the one that has a heading"
    } else {
        "the second of the two"
    };
    let mut hint = format!(
        "Ask the lab which it is, then name it in programme.toml. This block takes {which}:\n[[layout]]\n",
    );
    let path = &context.file.path;
    hint.push_str(&format!(
        "files = {}\n",
        quoted(path.strip_prefix("inbox/").unwrap_or(path))
    ));
    if let Some(sheet) = &context.sheet.name {
        hint.push_str(&format!("sheet = {}\n", quoted(sheet)));
    }
    hint.push_str(&format!(
        "header_row = {}\ncolumns = {{ sample = {}, result = {} }}",
        table.heading_row,
        quoted(sample),
        quoted(result)
    ));
    problems.add(
        Code::AmbiguousTable,
        context.place(table.heading_row, right),
        format!(
            "both {} and {} could be {}, and they differ: no row of this table is used",
            named(left),
            named(right),
            doubt.what
        ),
        hint,
    );
}

/// A row below the headings that may be the headings of another table.
pub fn ambiguous_row(row: &Row, table: &Table, context: &Context<'_>, problems: &mut Problems) {
    let shown: Vec<String> = table
        .cells(row)
        .map(|(column, content)| {
            format!(
                "“{}” ({})",
                text::short(&content.shown()),
                column_letter(column)
            )
        })
        .collect();
    problems.add(
        Code::AmbiguousTable,
        Place {
            column: None,
            ..context.place(row.number, 1)
        },
        format!(
            "the row {} can be the headings of another table or a remark within this one: no row below it is used",
            shown.join(", ")
        ),
        "Ask the lab what stands below it. If the rows are results, ask for them without this row.",
    );
}

/// A string as TOML writes it.
pub fn quoted(text: &str) -> String {
    toml::Value::String(text.to_owned()).to_string()
}
