//! A fault of the program itself is told in words, and costs nothing that was there.

use crate::flow::WITHIN;
#[cfg(debug_assertions)]
use crate::flow::watch::Watch;
use crate::workspace::{Workspace, tree};

/// Builds for tests fail on request; others know no such request.
#[cfg(debug_assertions)]
#[test]
fn a_fault_of_the_program_is_told_with_what_was_in_hand_and_shows_no_panic() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["run"]).exits(0);
    let before = tree(&workspace.path("out"));
    let steps = [
        "sheets/P1--1.pdf",
        "summary.pdf",
        "the results in inbox/ and registers/ taken together",
    ];
    for step in steps {
        let faulty = workspace.run_with(
            &["-q", "run", "--force"],
            &[("GALLEYPROOF_FAIL_AT", step), ("RUST_BACKTRACE", "1")],
        );
        faulty.exits(2);
        let said = faulty.stderr();
        assert!(said.contains("a fault of the program"), "{said}");
        assert!(said.contains(&format!("at work on {step}")), "{said}");
        assert!(said.contains("send this line"), "{said}");
        for word in ["panicked", "on request", "backtrace", "unwrap"] {
            assert!(!said.contains(word), "{word}: {said}");
        }
        assert_eq!(said.trim().lines().count(), 1, "{said}");
        assert!(before == tree(&workspace.path("out")), "{step}");
    }
    workspace.run(&["run"]).exits(0);
}

/// The line that tells of it, and nothing that a panic would print.
#[cfg(debug_assertions)]
fn is_told_once(said: &str, step: &str) {
    assert!(
        said.contains("this is a fault of the program") && said.contains(step),
        "{said}"
    );
    for word in ["panicked", "on request", "backtrace", "unwrap"] {
        assert!(!said.contains(word), "{word}: {said}");
    }
    assert_eq!(said.trim().lines().count(), 1, "{said}");
}

#[cfg(debug_assertions)]
#[test]
fn a_fault_of_the_program_prints_no_half_result_and_issues_nothing() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    let together = "the results in inbox/ and registers/ taken together";
    let faulty = |arguments: &[&str], step: &str| {
        let run = workspace.run_with(arguments, &[("GALLEYPROOF_FAIL_AT", step)]);
        run.exits(2);
        is_told_once(&run.stderr(), step);
        run.stdout()
    };
    assert_eq!(faulty(&["-q", "check", "--format", "json"], together), "");
    let issue = ["-q", "issue", "--date", "2031-05-06"];
    for step in [together, "sheets/P1--1.pdf", "summary.pdf"] {
        assert_eq!(faulty(&issue, step), "");
        for made in ["archive", "registers/issued.csv", "out/summary.pdf"] {
            assert!(!workspace.path(made).exists(), "{step}: {made}");
        }
    }
    workspace.run(&issue).exits(0);
}

#[cfg(debug_assertions)]
#[test]
fn a_watch_outlives_a_fault_of_the_program() {
    let workspace = Workspace::new();
    let step = "sheets/P1--1.pdf";
    let mut watch = Watch::start(&workspace, &[("GALLEYPROOF_FAIL_AT", step)]);
    assert!(watch.line().starts_with("Run 1: wrote "));
    workspace.with("inbox/a.csv", WITHIN);
    let line = watch.line();
    assert!(line.starts_with("Not run: this is a fault"), "{line}");
    is_told_once(&line, step);
    std::fs::remove_file(workspace.path("inbox/a.csv")).expect("removes");
    let line = watch.line();
    assert!(
        line.starts_with("Run 2: inbox/a.csv (gone)") || line.starts_with("Run 2: "),
        "{line}"
    );
    let said = watch.ended();
    assert!(!said.contains("panicked"), "{said}");
}
