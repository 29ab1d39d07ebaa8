//! What people and spreadsheet programs do to `registers/issued.csv`: mended from the archive, or named.

use crate::flow::WITHIN;
use crate::workspace::{Workspace, tree};
use std::fs;

const REGISTER: &str = "registers/issued.csv";

/// A programme with two revisions of one sheet.
fn issued_twice() -> Workspace {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let products = workspace.text("registers/products.csv");
    workspace.with(
        "registers/products.csv",
        products.replace("Harbour Loaf", "Harbour Bread"),
    );
    let amended = [
        "issue",
        "--date",
        "2031-05-07",
        "--reason",
        "The name was misspelt.",
    ];
    workspace.run(&amended).exits(0);
    workspace
}

/// What people and spreadsheet programs make of the register: every kind that `run` mends.
fn changes(whole: &str) -> Vec<String> {
    let second: String = whole
        .lines()
        .enumerate()
        .filter(|(at, _)| *at != 2)
        .map(|(_, line)| format!("{line}\n"))
        .collect();
    let changes = vec![
        whole.replace("2031-05-06", "6.5.2031"),
        whole.replace("2031-05-06", "05/06/2031"),
        whole.replace("2031-05-07", "2031-05-07 00:00:00"),
        whole.replace(",1,2031", ",1.0,2031"),
        whole.replace("within_limit", "over_limit"),
        whole.replace("misspelt", "in another spelling"),
        whole.replace("TKW-P1-1,P1,1,2", "TKW-P1-1,P1,2,2"),
        second,
    ];
    assert!(changes.iter().all(|changed| changed != whole));
    changes
}

#[test]
fn a_register_that_was_changed_is_mended_from_the_archive() {
    let workspace = issued_twice();
    let whole = workspace.text(REGISTER);
    workspace.run(&["run"]).exits(0);
    let out = tree(&workspace.path("out"));
    for changed in changes(&whole) {
        workspace.with(REGISTER, &changed);
        let run = workspace.run(&["-q", "run"]);
        run.exits(0);
        assert!(
            run.stderr().contains(REGISTER) && run.stderr().contains("TKW-P1-1 revision"),
            "{}",
            run.stderr()
        );
        assert_eq!(workspace.text(REGISTER), whole);
        let again = workspace.run(&["-q", "run"]);
        assert_eq!(again.stderr(), "", "it is told once");
        let issue = workspace.run(&["issue", "--date", "2031-05-08"]);
        issue.exits(0);
        assert!(
            issue.stdout().starts_with("Nothing to issue"),
            "{}",
            issue.stdout()
        );
        workspace.run(&["run"]).exits(0);
        assert!(out == tree(&workspace.path("out")), "{changed}");
    }
}

#[test]
fn a_register_that_a_spreadsheet_program_saved_otherwise_stays_so() {
    let workspace = issued_twice();
    let register = workspace.text(REGISTER);
    let mut rows = csv::Reader::from_reader(register.as_bytes());
    let mut writer = csv::WriterBuilder::new()
        .delimiter(b';')
        .terminator(csv::Terminator::CRLF)
        .from_writer(b"\xef\xbb\xbf".to_vec());
    writer
        .write_record(rows.headers().expect("has headings"))
        .expect("takes all");
    for row in rows.records() {
        writer
            .write_record(&row.expect("is a row"))
            .expect("takes all");
    }
    let saved = String::from_utf8(writer.into_inner().expect("takes all")).expect("is text");
    workspace.with(REGISTER, &saved);
    let issue = workspace.run(&["-q", "issue", "--date", "2031-05-08"]);
    issue.exits(0);
    assert_eq!(issue.stderr(), "");
    assert_eq!(workspace.text(REGISTER), saved);
    // As a workbook it is named, with the way out.
    fs::rename(
        workspace.path(REGISTER),
        workspace.path("registers/issued.xlsx"),
    )
    .expect("moves");
    let issue = workspace.run(&["-q", "issue", "--date", "2031-05-08"]);
    issue.exits(2);
    assert!(issue.stderr().contains("issued.xlsx"), "{}", issue.stderr());
}

#[test]
fn a_history_that_cannot_be_read_lets_nothing_be_issued() {
    for (from, to) in [
        ("2031-05-06", "05/06/2031"),
        (",1,2031", ",-1,2031"),
        ("content_sha256", "content"),
    ] {
        let workspace = issued_twice();
        let changed = workspace.text(REGISTER).replace(from, to);
        workspace.with(REGISTER, &changed);
        fs::rename(workspace.path("archive"), workspace.path("elsewhere")).expect("moves");
        let issue = workspace.run(&["-q", "issue", "--date", "2031-05-08", "--reason", "none"]);
        issue.exits(2);
        let said = issue.stderr();
        assert!(said.contains(REGISTER), "{said}");
        assert!(
            !workspace.path("archive").exists(),
            "{to}: nothing was issued"
        );
        assert_eq!(workspace.text(REGISTER), changed);
    }
}

#[test]
fn a_forged_copy_of_the_register_in_a_bag_is_not_believed() {
    let workspace = issued_twice();
    let whole = workspace.text(REGISTER);
    let copy = "archive/2031-05-07/data/private/registers/issued.csv";
    let forged = whole.clone()
        + &whole
            .lines()
            .last()
            .expect("has rows")
            .replace(",2,2031", ",7,2031")
        + "\n";
    assert!(forged.contains(",7,2031"));
    workspace.with(copy, forged);
    let run = workspace.run(&["-q", "run"]);
    run.exits(0);
    assert_eq!(workspace.text(REGISTER), whole);
    let said = run.stderr();
    assert!(
        said.contains("2031-05-07") && said.contains("galleyproof verify"),
        "{said}"
    );
    workspace.run(&["verify", "archive/2031-05-07"]).exits(1);
}

#[test]
fn an_archive_that_is_gone_is_told() {
    let workspace = issued_twice();
    fs::remove_dir_all(workspace.path("archive")).expect("removes");
    let run = workspace.run(&["-q", "run"]);
    run.exits(0);
    assert!(run.stderr().contains("no archive has"), "{}", run.stderr());
}

/// What `check` and `status` say, each in one line.
fn looks(workspace: &Workspace) -> [String; 2] {
    [&["check"][..], &["status", "--date", "2031-05-08"]].map(|command| {
        let said = workspace.run(command).stdout();
        said.split_whitespace().collect::<Vec<_>>().join(" ")
    })
}

#[test]
fn who_only_looks_at_a_register_that_was_changed_is_told_so_too() {
    let workspace = issued_twice();
    let whole = workspace.text(REGISTER);
    let published = workspace.results()["products"].clone();
    for said in looks(&workspace) {
        assert!(!said.contains("TKW-P1-1 revision"), "{said}");
    }
    let mut changed: Vec<Option<String>> = changes(&whole).into_iter().map(Some).collect();
    changed.push(None);
    for changed in changed {
        match &changed {
            Some(changed) => drop(workspace.with(REGISTER, changed)),
            None => fs::remove_file(workspace.path(REGISTER)).expect("removes"),
        }
        let before = tree(&workspace.path(""));
        for said in looks(&workspace) {
            assert!(
                said.contains(REGISTER) && said.contains("TKW-P1-1 revision"),
                "{changed:?}: {said}"
            );
            assert!(said.contains("`galleyproof run` puts it right"), "{said}");
            for word in ["be published now", "is ready", " ready "] {
                let said = said.replace("Nothing may be published now", "");
                assert!(!said.contains(word), "{changed:?}: {word}: {said}");
            }
        }
        assert_eq!(
            workspace.results()["products"],
            published,
            "{changed:?}: it is decided as the archive has it"
        );
        assert!(before == tree(&workspace.path("")), "nothing is written");
    }
    workspace.with(REGISTER, &whole);
    fs::rename(workspace.path("archive"), workspace.path("elsewhere")).expect("moves");
    for said in looks(&workspace) {
        assert!(
            said.contains("no archive has it: TKW-P1-1 revision 1, TKW-P1-1 revision 2"),
            "{said}"
        );
        assert!(said.contains("Copy archive/ back"), "{said}");
    }
    assert_eq!(workspace.results()["products"], published);
    fs::rename(workspace.path("elsewhere"), workspace.path("archive")).expect("moves back");
    // The folder in a bag has no archive of its own, and lacks none.
    let bag = workspace.path("archive/2031-05-07/data/private");
    let check = workspace.run(&["check", &bag.to_string_lossy()]);
    assert!(!check.stdout().contains("no archive"), "{}", check.stdout());
    let copy = "archive/2031-05-07/data/private/registers/issued.csv";
    workspace.with(copy, whole.replace("misspelt", "in another spelling"));
    for said in looks(&workspace) {
        assert!(
            said.contains("archive/2031-05-07") && said.contains("is not as it was archived"),
            "{said}"
        );
    }
}
