//! What strangers wrote never comes to stand on a line of its own, where it could be taken for a line of the program's.

use super::hostile_texts::{HOSTILE, programme};
use crate::flow::WITHIN;
use crate::workspace::Workspace;
use std::fs;

const DAY: &str = "2031-05-06";

/// No line begins with what stood behind an end of a line in the text.
fn is_one_of_ours(command: &[&str], said: &str) {
    for line in said.lines() {
        let line = line.trim_start();
        assert!(
            !line.starts_with("Bcc:") && !line.starts_with('X'),
            "{command:?}: {line}"
        );
    }
}

#[test]
fn no_line_on_the_screen_is_a_strangers() {
    let text = HOSTILE[5];
    let workspace = programme(text);
    let early = [
        "issue", "--date", DAY, "--only", "P1", "--early", "--reason",
    ];
    let with_reason: Vec<&str> = early.into_iter().chain(["A slip."]).collect();
    let commands: [&[&str]; 14] = [
        &["check"],
        &["check", "--explain", "a.csv"],
        &["run", "--date", DAY],
        &["status", "--date", DAY],
        &["explain", "P1"],
        &["facts", "P1"],
        &["log", "notice-sent", "P1", "--date", DAY],
        &["issue", "--date", DAY],
        &with_reason,
        &["plan", "--date", DAY],
        &["plan", "--date", DAY, "--enter"],
        &["request", "--round", "1"],
        &["contact-sheet"],
        &["compare", "archive/2031-05-06", "archive/2031-05-06"],
    ];
    for command in commands {
        let run = workspace.run(command);
        is_one_of_ours(command, &run.stdout());
        is_one_of_ours(command, &run.stderr());
    }
    let report = fs::read_to_string(workspace.path("out/inbox-report.txt"));
    is_one_of_ours(&["inbox-report.txt"], &report.expect("is made"));
}

#[cfg(unix)]
#[test]
fn a_file_whose_name_has_several_lines_is_one_line_of_a_check() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["-q", "issue", "--date", DAY]).exits(0);
    let bag = "archive/2031-05-06";
    for name in ["a\nz is as it was made: 69 files.", "b\r\n  sound", "c\td"] {
        workspace.with(&format!("{bag}/data/{name}"), "x");
    }
    let run = workspace.run(&["verify", bag]);
    run.exits(1);
    let said = run.stdout();
    let lines: Vec<&str> = said.lines().collect();
    assert_eq!(
        lines[..3],
        [
            "  added     data/a<U+000A>z is as it was made: 69 files.",
            "  added     data/b<U+000D><U+000A>  sound",
            "  added     data/c<U+0009>d",
        ]
    );
    assert_eq!(lines.len(), 4, "{said}");
    assert!(lines[3].contains("is not as it was made"), "{said}");
}
