//! `compare`: what a reader of one archive must know of a later one.

use crate::cli::Ending;
use crate::cli::args::Format;
use crate::cli::print;
use crate::model::letters::in_line;
use crate::pipeline::archive::{self, Comparison, Sheet};
use anyhow::Result;
use std::fmt::Write;
use std::path::Path;

/// Compares two bags.
pub fn compare(first: &Path, second: &Path, format: Format) -> Result<Ending> {
    print::tell_unfinished_above(second);
    let comparison = archive::compare(first, second)?;
    print::result(&match format {
        Format::Text => as_text(&comparison),
        Format::Json => as_json(first, second, &comparison),
    })?;
    Ok(Ending::Well)
}

fn as_json(first: &Path, second: &Path, comparison: &Comparison) -> String {
    let mut value = serde_json::json!({
        "schema": "galleyproof.compare/1",
        "first": first.display().to_string(),
        "second": second.display().to_string(),
    });
    let told = serde_json::to_value(comparison).expect("a comparison is text and numbers");
    if let (Some(all), serde_json::Value::Object(told)) = (value.as_object_mut(), told) {
        all.extend(told);
    }
    format!("{value:#}\n")
}

fn as_text(comparison: &Comparison) -> String {
    let mut text = String::new();
    section(&mut text, "New sheets", comparison.new.iter().map(line));
    let amended = comparison.amended.iter().map(|amended| {
        let mut lines = format!(
            "{}, replaces revision {}",
            line(&amended.sheet),
            amended.replaces
        );
        for reason in &amended.reasons {
            write!(lines, "\n    why: {}", in_line(reason)).expect("a string takes all");
        }
        for change in &amended.changes {
            write!(
                lines,
                "\n    {}: {} → {}",
                in_line(&change.what),
                in_line(&change.old),
                in_line(&change.new)
            )
            .expect("a string takes all");
        }
        lines
    });
    section(&mut text, "Amended sheets", amended);
    section(
        &mut text,
        "Withdrawn sheets",
        comparison.withdrawn.iter().map(line),
    );
    let verdicts = comparison.verdicts.iter().map(|verdict| {
        let (old, new) = (words(&verdict.old), words(&verdict.new));
        {
            let name = in_line(&verdict.name);
            format!("{}, {name}: {old} → {new}", verdict.sheet_number)
        }
    });
    section(&mut text, "Changed verdicts", verdicts);
    if text.is_empty() {
        text.push_str("A reader of the first has nothing new to know of the second.\n");
    }
    text
}

fn section(text: &mut String, heading: &str, lines: impl Iterator<Item = String>) {
    let mut lines = lines.peekable();
    if lines.peek().is_none() {
        return;
    }
    if !text.is_empty() {
        text.push('\n');
    }
    writeln!(text, "{heading}").expect("a string takes all");
    for line in lines {
        writeln!(text, "  {line}").expect("a string takes all");
    }
}

fn line(sheet: &Sheet) -> String {
    let name = sheet
        .name
        .as_deref()
        .map(|name| format!(", {}", in_line(name)))
        .unwrap_or_default();
    let verdict = sheet
        .verdict
        .as_deref()
        .map(|verdict| format!(": {}", words(verdict)))
        .unwrap_or_default();
    format!(
        "{} revision {}{name}{verdict}",
        sheet.sheet_number, sheet.revision
    )
}

/// A verdict's word in the data as one would say it.
fn words(verdict: &str) -> &str {
    match verdict {
        "over_limit" => "over the limit",
        "within_limit" => "within the limit",
        "no_verdict" => "no verdict",
        other => other,
    }
}
