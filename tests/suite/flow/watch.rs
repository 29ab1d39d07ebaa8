//! `watch` as it is used: a file lands, a line says what came of it.

use crate::flow::{OVER, WITHIN};
use crate::workspace::Workspace;
use std::io::{BufRead, BufReader, Write};
use std::process::{Child, Command, Stdio};

/// A watch that ends with its test, however that ends.
struct Watch(Child);

impl Watch {
    fn start(workspace: &Workspace) -> Watch {
        let watch = Command::new(env!("CARGO_BIN_EXE_galleyproof"))
            .args(["watch"])
            .current_dir(workspace.path(""))
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn();
        Watch(watch.expect("starts"))
    }
}

impl Drop for Watch {
    fn drop(&mut self) {
        // It may have ended by itself.
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

#[test]
fn a_file_that_is_copied_slowly_is_one_run_and_no_false_error() {
    let workspace = Workspace::new();
    let mut watch = Watch::start(&workspace);
    let mut lines = BufReader::new(watch.0.stdout.take().expect("is piped")).lines();
    let mut next = || lines.next().expect("goes on").expect("is text");
    assert!(next().starts_with("Run 1: wrote "));
    let mut file = std::fs::File::create(workspace.path("inbox/a.csv")).expect("makes");
    for piece in WITHIN.as_bytes().chunks(16) {
        file.write_all(piece).expect("writes");
        std::thread::sleep(std::time::Duration::from_millis(100));
    }
    drop(file);
    let line = next();
    assert!(
        line.starts_with("Run 2: inbox/a.csv (new): wrote "),
        "{line}"
    );
    assert!(!line.contains("error"), "{line}");
    assert!(workspace.path("out/sheets/P1--1.pdf").exists());
    workspace.with("inbox/a.csv", OVER);
    let line = next();
    assert!(
        line.starts_with("Run 3: inbox/a.csv (changed): wrote "),
        "{line}"
    );
    assert!(line.contains("P1--1"), "{line}");
    drop(watch);
    workspace.run(&["run"]).exits(0);
}
