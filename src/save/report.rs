//! `inbox-report.txt`: every problem, by file, in words, with what to do.

use crate::model::decided::Decided;
use crate::model::letters::in_line;
use crate::model::problem::{Problem, Severity};
use crate::words::{Catalogue, say};
use std::collections::BTreeMap;
use std::fmt::Write;

/// Widest line of the report.
const WIDTH: usize = 100;

/// What stands before the continuation of an entry; its first line has the margin's word there.
const MARGIN: &str = "           ";

/// The text of the report in the language of `words`.
pub fn text(decided: &Decided, words: &Catalogue) -> String {
    let problems = decided.problems.sorted();
    let mut text = format!(
        "{}\n\n{}\n",
        words.say(&say::report_heading()),
        opening(decided, words)
    );
    let mut by_file: BTreeMap<&str, Vec<&Problem>> = BTreeMap::new();
    for problem in problems {
        by_file
            .entry(problem.place.file.as_str())
            .or_default()
            .push(problem);
    }
    for (file, problems) in by_file {
        write!(text, "\n{}\n", in_line(file)).expect("a string takes all");
        for problem in problems {
            text.push_str(&entry(problem, words));
        }
    }
    text
}

/// The lines of one problem.
fn entry(problem: &Problem, words: &Catalogue) -> String {
    let place = words.place_in_file(&problem.place);
    let at = if place.is_empty() {
        "whole"
    } else {
        "somewhere"
    };
    let found = words.say(&say::problem_entry(at, place, words.found(problem)));
    let severity = words.severity(problem.severity());
    let mut text = wrapped(&format!("{severity:<8} {found}"), "  ", MARGIN);
    let to_do = words.to_do(problem);
    if !to_do.is_empty() {
        let to_do = words.say(&say::problem_to_do(to_do));
        text.push_str(&wrapped(&to_do, MARGIN, MARGIN));
    }
    text
}

fn opening(decided: &Decided, words: &Catalogue) -> String {
    let count = |severity| decided.problems.count(severity);
    let (errors, warnings, notes) = (
        count(Severity::Error),
        count(Severity::Warning),
        count(Severity::Note),
    );
    let files = decided.lab_files.len().to_string();
    words.say(&if errors + warnings + notes == 0 {
        say::report_clean(files)
    } else {
        say::report_counts(
            errors as u64,
            files,
            warnings.to_string(),
            notes.to_string(),
        )
    })
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
    use crate::model::language::Language;
    use crate::model::place::Place;
    use crate::model::problem::Code;

    #[test]
    fn an_entry_names_the_cell_and_what_to_do_in_the_language_asked_for() {
        let place = Place {
            file: "inbox/a.xlsx".into(),
            sheet: Some("Results".into()),
            row: Some(7),
            column: Some(3),
        };
        let problem = Problem {
            place,
            code: Code::BadValue,
            message: say::found_bad_value("no_result", "12..4"),
            hint: Some(say::do_ask_which_package()),
        };
        let entry = |language| entry(&problem, &Catalogue::built_in(language));
        assert_eq!(
            entry(Language::English),
            "  Error    sheet “Results”, cell C7: “12..4” is not a result that can be read; it is not used.\n           \
             What to do: Ask the lab which package it belongs to.\n"
        );
        assert_eq!(
            entry(Language::German),
            "  Fehler   Tabellenblatt „Results“, Zelle C7: „12..4“ ist kein lesbares Ergebnis; es wird nicht\n           \
             verwendet.\n           Was zu tun ist: Fragen Sie das Labor, zu welcher Packung es gehört.\n"
        );
        assert!(
            entry(Language::Spanish)
                .starts_with("  Error    hoja «Results», celda C7: «12..4» no es")
        );
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
