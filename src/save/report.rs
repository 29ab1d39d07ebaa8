//! `inbox-report.txt`: every problem, by file, in words, with what to do.

use crate::model::decided::Decided;
use crate::model::problem::{Problem, Severity};
use std::collections::BTreeMap;
use std::fmt::Write;

/// Widest line of the report.
const WIDTH: usize = 100;

/// The text of the report.
pub fn text(decided: &Decided) -> String {
    let problems = decided.problems.sorted();
    let mut text = format!(
        "What was found in the lab files and registers\n\n{}\n",
        opening(decided)
    );
    let mut by_file: BTreeMap<&str, Vec<&Problem>> = BTreeMap::new();
    for problem in problems {
        by_file
            .entry(problem.place.file.as_str())
            .or_default()
            .push(problem);
    }
    for (file, problems) in by_file {
        // A line break in a file's name would print a line of its own.
        let file: Vec<&str> = file.split(['\n', '\r']).collect();
        write!(text, "\n{}\n", file.join(" ")).expect("a string takes all");
        for problem in problems {
            text.push_str(&entry(problem));
        }
    }
    text
}

/// The lines of one problem, in the report and on the screen.
pub fn entry(problem: &Problem) -> String {
    let place = [
        problem
            .place
            .sheet
            .as_ref()
            .map(|sheet| format!("sheet “{sheet}”")),
        problem.place.cell().map(|cell| {
            if cell.starts_with("row") {
                cell
            } else {
                format!("cell {cell}")
            }
        }),
    ];
    let place: Vec<String> = place.into_iter().flatten().collect();
    let at = if place.is_empty() {
        String::new()
    } else {
        format!("{}: ", place.join(", "))
    };
    let mut text = wrapped(
        &format!("{} {at}{}", heading(problem.severity()), problem.message),
        "  ",
        "           ",
    );
    if !problem.hint.is_empty() {
        text.push_str(&wrapped(
            &format!("What to do: {}", problem.hint),
            "           ",
            "           ",
        ));
    }
    text
}

fn heading(severity: Severity) -> &'static str {
    match severity {
        Severity::Error => "Error   ",
        Severity::Warning => "Warning ",
        Severity::Note => "Note    ",
    }
}

fn opening(decided: &Decided) -> String {
    let count = |severity| decided.problems.count(severity);
    let (errors, warnings, notes) = (
        count(Severity::Error),
        count(Severity::Warning),
        count(Severity::Note),
    );
    let files = counted(decided.lab_files.len(), "lab file was", "lab files were");
    if errors + warnings + notes == 0 {
        return format!("{files} read. Nothing needs to be looked at.");
    }
    let verdict = match errors {
        0 => "Nothing was left out.".to_owned(),
        _ => "An error means that something was left out and a person must look at it.".to_owned(),
    };
    format!(
        "{files} read: {}, {}, {}. {verdict}",
        counted(errors, "error", "errors"),
        counted(warnings, "warning", "warnings"),
        counted(notes, "note", "notes"),
    )
}

/// "1 error", "2 errors".
pub fn counted(n: usize, one: &str, many: &str) -> String {
    format!("{n} {}", if n == 1 { one } else { many })
}

/// Breaks prose at spaces; lines of a block ready to paste (they start with two spaces or stand after a line feed) stay.
fn wrapped(text: &str, first: &str, rest: &str) -> String {
    let mut out = String::new();
    for (index, paragraph) in text.split('\n').enumerate() {
        let indent = if index == 0 { first } else { rest };
        if index > 0 {
            out.push_str(indent);
            out.push_str(paragraph);
            out.push('\n');
            continue;
        }
        let mut line = String::from(indent);
        let mut is_empty = true;
        for word in paragraph.split(' ') {
            if !is_empty && line.chars().count() + 1 + word.chars().count() > WIDTH {
                out.push_str(line.trim_end());
                out.push('\n');
                line = String::from(rest);
                is_empty = true;
            }
            if !is_empty {
                line.push(' ');
            }
            line.push_str(word);
            is_empty = false;
        }
        out.push_str(line.trim_end());
        out.push('\n');
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::place::Place;
    use crate::model::problem::Code;

    #[test]
    fn an_entry_names_the_cell_and_what_to_do() {
        let place = Place {
            file: "inbox/a.xlsx".into(),
            sheet: Some("Results".into()),
            row: Some(7),
            column: Some(3),
        };
        let problem = Problem {
            place,
            code: Code::BadValue,
            message: "“12..4” is not a result.".into(),
            hint: "Ask the lab what was meant.".into(),
        };
        let text = entry(&problem);
        assert!(
            text.contains("Error    sheet “Results”, cell C7: “12..4” is not a result."),
            "{text}"
        );
        assert!(text.contains("What to do: Ask the lab"), "{text}");
    }

    #[test]
    fn long_messages_are_broken_and_blocks_to_paste_are_not() {
        let text = wrapped(
            &format!("{}\n[[layout]]\n{}", "word ".repeat(40), "x".repeat(150)),
            "",
            "  ",
        );
        assert!(
            text.lines()
                .take(2)
                .all(|line| line.chars().count() <= WIDTH),
            "{text}"
        );
        assert!(text.contains(&"x".repeat(150)));
    }
}
