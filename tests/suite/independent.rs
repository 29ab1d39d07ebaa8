//! The demo's figures, recomputed by a script that shares no code with the program: `tests/independent/recompute.py`.
//!
//! It needs Python 3.11 and its standard library alone; where there is none, the test says so and passes. `.ci/run` asks
//! for one.

use crate::workspace::Workspace;
use std::path::Path;
use std::process::{Command, Output};

/// Products of one round each, of every kind: below quantification, measured, over, disagreeing, incomplete, fermented.
const PRODUCTS: [&str; 21] = [
    "TW-001", "TW-002", "TW-003", "TW-004", "TW-005", "TW-006", "TW-007", "TW-008", "TW-009",
    "TW-010", "TW-011", "TW-014", "TW-015", "TW-016", "TW-017", "TW-020", "TW-021", "TW-022",
    "TW-024", "TW-025", "TW-027",
];

fn python_has(module: &str) -> bool {
    let tried = Command::new("python3")
        .args(["-c", &format!("import {module}")])
        .output();
    tried.is_ok_and(|output| output.status.success())
}

fn python_there() -> bool {
    python_has("tomllib")
}

fn recompute(workspace: &Workspace, products: &[&str]) -> Output {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/independent/recompute.py");
    Command::new("python3")
        .arg("-B")
        .arg(script)
        .arg(workspace.path("."))
        .arg(workspace.path("out/data/results.json"))
        .arg(workspace.path("facts"))
        .args(products)
        .output()
        .expect("python3 runs")
}

#[test]
fn another_hand_comes_to_the_same_figures() {
    if !python_there() {
        println!("there is no Python 3.11: nothing was recomputed");
        return;
    }
    let workspace = Workspace::demo();
    workspace.run(&["run"]).exits(1);
    for product in PRODUCTS {
        let facts = workspace.run(&["facts", product]).exits(0).stdout();
        workspace.with(&format!("facts/{product}.json"), facts);
    }
    let output = recompute(&workspace, &PRODUCTS);
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(output.status.success(), "{said}");
    assert!(
        said.contains("21 products recomputed, 0 differences"),
        "{said}"
    );

    // A figure, a standing and a reason that are off are each found.
    let results = workspace.text("out/data/results.json");
    for (right, wrong) in [
        ("\"ppm\": 19.75", "\"ppm\": 19.85"),
        ("\"standing\": \"unresolved\"", "\"standing\": \"within\""),
        ("29.9 ppm", "28.9 ppm"),
        ("\"row\": 15", "\"row\": 16"),
    ] {
        assert!(results.contains(right), "{right}");
        workspace.with("out/data/results.json", results.replacen(right, wrong, 1));
        let output = recompute(&workspace, &PRODUCTS);
        assert!(!output.status.success(), "{wrong} was not found");
    }
    // A product that is not there is no product without a difference.
    workspace.with("out/data/results.json", &results);
    assert!(!recompute(&workspace, &["TW-999"]).status.success());
}

#[test]
fn another_hand_reads_the_newsletters_mail() {
    if !python_there() {
        println!("there is no Python 3.11: the newsletter's mail was not read");
        return;
    }
    let read = |workspace: &Workspace, folder: &str, kind: &str| {
        let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/independent/newsletter.py");
        let output = Command::new("python3")
            .arg("-B")
            .arg(script)
            .arg(workspace.path(&format!("{folder}/newsletter")))
            .arg(workspace.path(&format!("{folder}/data/results.json")))
            .arg(kind)
            .output()
            .expect("python3 runs");
        (
            output.status.success(),
            String::from_utf8_lossy(&output.stdout).into_owned(),
        )
    };
    let workspace = Workspace::demo();
    workspace.run(&["run"]).exits(1);
    let (is_right, said) = read(&workspace, "out", "proof");
    assert!(is_right, "{said}");
    assert!(!read(&workspace, "out", "issue").0, "a proof is no issue");

    // What anyone may have is a mail as well.
    workspace.run(&["issue", "--date", "2031-12-31"]);
    let (is_right, said) = read(&workspace, "archive/2031-12-31/data/public", "issue");
    assert!(is_right, "{said}");
    let mail = workspace.text("archive/2031-12-31/data/public/newsletter/digest.eml");
    workspace.with(
        "archive/2031-12-31/data/public/newsletter/digest.eml",
        mail.replacen("At or above", "Below", 1),
    );
    assert!(!read(&workspace, "archive/2031-12-31/data/public", "issue").0);
}

/// Another checker of bags, of which `.ci/run` asks that it be there: what it refuses is refused, and where the two differ
/// README says so.
#[cfg(unix)]
#[test]
fn another_hand_comes_to_the_same_of_bags() {
    if !python_has("bagit") {
        println!("there is no Python with bagit: no bag was held against it");
        return;
    }
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", crate::flow::WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let check = |program: &str| {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"));
        let output = Command::new("python3")
            .arg("-B")
            .arg(root.join("tests/independent/bags.py"))
            .arg(program)
            .arg(workspace.path("archive/2031-05-06"))
            .arg(root.join("README.md"))
            .output()
            .expect("python3 runs");
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        (output.status.success(), said)
    };
    let (holds, said) = check(env!("CARGO_BIN_EXE_galleyproof"));
    assert!(holds, "{said}");
    // A program that takes all of them, and one that takes none.
    for program in ["true", "false"] {
        let (holds, said) = check(program);
        assert!(
            !holds && said.contains("as it was made") == (program == "false"),
            "{said}"
        );
    }
}
