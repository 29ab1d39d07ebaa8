//! `check --explain`: how a lab file was understood, and what became of each of its rows.

use crate::model::decided::Decided;
use crate::model::letters::in_line;
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::place::Source;
use crate::model::problem::Problem;
use crate::model::understanding::{Understanding, UnderstoodTable};
use crate::words::english;
use anyhow::{Result, bail};
use std::collections::BTreeMap;
use std::fmt::Write;

/// What became of the readings, by their cells.
type Fates<'a> = BTreeMap<&'a Source, &'a PairedExtraction>;

/// The account of each file that was asked for.
///
/// # Errors
/// Where a file is not in the inbox: the nearest one is named.
pub fn text(decided: &Decided, files: &[String]) -> Result<String> {
    let mut text = String::new();
    let fates = fates(decided);
    for file in files {
        let understanding = find(decided, file)?;
        text.push_str(&account(
            understanding,
            &fates,
            &problems_of(decided, &understanding.file),
        ));
    }
    Ok(text)
}

fn find<'a>(decided: &'a Decided, file: &str) -> Result<&'a Understanding> {
    let wanted = file.replace('\\', "/");
    let wanted = wanted.trim_start_matches("./");
    let all = &decided.understandings;
    let named = |one: &&Understanding| {
        one.file == wanted
            || one.file.strip_prefix("inbox/") == Some(wanted)
            || one.file.ends_with(&format!("/{wanted}"))
    };
    if let Some(found) = all.iter().find(named) {
        return Ok(found);
    }
    match all
        .iter()
        .min_by_key(|one| strsim::damerau_levenshtein(&one.file, &format!("inbox/{wanted}")))
    {
        Some(nearest) => bail!(
            "there is no lab file {file} in the inbox. The nearest name is {}",
            nearest.file
        ),
        None => bail!("there is no lab file {file}: the inbox is empty"),
    }
}

fn fates(decided: &Decided) -> Fates<'_> {
    let packages = decided
        .products
        .iter()
        .flat_map(|judged| &judged.verdict.packages);
    let mut fates = Fates::new();
    for paired in packages.flat_map(|package| &package.pair.extractions) {
        fates.insert(&paired.extraction.source, paired);
        fates.extend(paired.also_reported.iter().map(|source| (source, paired)));
    }
    fates
}

fn problems_of<'a>(decided: &'a Decided, file: &str) -> Vec<&'a Problem> {
    decided
        .problems
        .sorted()
        .into_iter()
        .filter(|problem| problem.place.file == file)
        .collect()
}

fn account(understanding: &Understanding, fates: &Fates<'_>, problems: &[&Problem]) -> String {
    let mut text = format!(
        "{}\n  read as {}\n",
        understanding.file, understanding.format
    );
    for reason in &understanding.passed_over {
        writeln!(text, "  passed over: {}", in_line(reason)).expect("a string takes all");
    }
    for table in &understanding.tables {
        text.push_str(&table_account(table, fates));
    }
    if !problems.is_empty() {
        text.push_str("\n  What was found:\n");
        for problem in problems {
            let place = problem
                .place
                .cell()
                .map(|cell| format!("{cell}: "))
                .unwrap_or_default();
            writeln!(
                text,
                "    {} {place}{} {}",
                problem.severity().word(),
                english().found(problem),
                english().to_do(problem)
            )
            .expect("a string takes all");
        }
    }
    text.push('\n');
    text
}

fn table_account(table: &UnderstoodTable, fates: &Fates<'_>) -> String {
    let sheet = table
        .sheet
        .as_ref()
        .map(|sheet| format!("sheet “{sheet}”, "))
        .unwrap_or_default();
    let mut text = format!(
        "\n  A table: {sheet}headings in row {}\n",
        table.heading_row
    );
    for about in &table.shape {
        writeln!(text, "    {}", in_line(about)).expect("a string takes all");
    }
    for column in &table.columns {
        writeln!(
            text,
            "    column {:<3} “{}”  is taken for: {}",
            column.letter,
            in_line(&column.heading),
            in_line(&column.taken_for)
        )
        .expect("a string takes all");
    }
    for row in &table.rows {
        let fate = row
            .source
            .as_ref()
            .and_then(|source| fates.get(source))
            .map(|paired| fate(paired));
        writeln!(
            text,
            "    row {:<4} {:<14} {}{}",
            row.row,
            in_line(&row.sample),
            in_line(&row.outcome),
            in_line(&fate.unwrap_or_default())
        )
        .expect("a string takes all");
    }
    text
}

fn fate(paired: &PairedExtraction) -> String {
    match &paired.usage {
        Usage::Used => String::new(),
        Usage::NoReading => " (gives no reading)".to_owned(),
        Usage::Excluded { reason, by, .. } => format!(" (set aside by {by}: {reason})"),
        Usage::InConflict => {
            " (not used: another cell reports this extraction differently)".to_owned()
        }
    }
}
