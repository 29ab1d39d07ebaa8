//! A fault of the program itself is told in words, and costs nothing that was there.

use crate::flow::WITHIN;
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
