//! `watch` as it is used: a file lands, a line says what came of it.

use crate::flow::{OVER, WITHIN};
use crate::workspace::Workspace;
use std::io::{BufRead, BufReader, Lines, Read, Write};
use std::process::{Child, ChildStdout, Command, Stdio};

/// A watch that ends with its test, however that ends.
pub struct Watch {
    child: Child,
    lines: Lines<BufReader<ChildStdout>>,
}

impl Watch {
    /// Starts one with these variables set.
    pub fn start(workspace: &Workspace, variables: &[(&str, &str)]) -> Watch {
        let watch = Command::new(env!("CARGO_BIN_EXE_galleyproof"))
            .args(["watch"])
            .current_dir(workspace.path(""))
            .envs(variables.iter().copied())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn();
        let mut child = watch.expect("starts");
        let lines = BufReader::new(child.stdout.take().expect("is piped")).lines();
        Watch { child, lines }
    }

    /// The next line that it prints.
    pub fn line(&mut self) -> String {
        self.lines.next().expect("goes on").expect("is text")
    }

    /// Ends it, which it has not done by itself; all that it said on standard error.
    pub fn ended(&mut self) -> String {
        assert!(self.child.try_wait().expect("is ours").is_none());
        self.child.kill().expect("ends");
        let mut said = String::new();
        let mut errors = self.child.stderr.take().expect("is piped");
        errors.read_to_string(&mut said).expect("is text");
        said
    }
}

impl Drop for Watch {
    fn drop(&mut self) {
        // It may have ended by itself.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

#[test]
fn a_file_that_is_copied_slowly_is_one_run_and_no_false_error() {
    let workspace = Workspace::new();
    let mut watch = Watch::start(&workspace, &[]);
    assert!(watch.line().starts_with("Run 1: wrote "));
    let mut file = std::fs::File::create(workspace.path("inbox/a.csv")).expect("makes");
    for piece in WITHIN.as_bytes().chunks(16) {
        file.write_all(piece).expect("writes");
        std::thread::sleep(std::time::Duration::from_millis(100));
    }
    drop(file);
    let line = watch.line();
    assert!(
        line.starts_with("Run 2: inbox/a.csv (new): wrote "),
        "{line}"
    );
    assert!(!line.contains("error"), "{line}");
    assert!(workspace.path("out/sheets/P1--1.pdf").exists());
    workspace.with("inbox/a.csv", OVER);
    let line = watch.line();
    assert!(
        line.starts_with("Run 3: inbox/a.csv (changed): wrote "),
        "{line}"
    );
    assert!(line.contains("P1--1"), "{line}");
    drop(watch);
    workspace.run(&["run"]).exits(0);
}

#[test]
fn outputs_that_are_partly_new_are_told_of_and_finished() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["run"]).exits(0);
    // What a run leaves that was killed between two moves.
    let record = workspace.text("out/.galleyproof.json");
    workspace.with("out/.galleyproof-planned.json", record);
    let mut watch = Watch::start(&workspace, &[]);
    assert!(watch.line().starts_with("Run 1: "));
    let said = watch.ended();
    assert!(said.contains("is not finished"), "{said}");
    assert!(!workspace.path("out/.galleyproof-planned.json").exists());
}
