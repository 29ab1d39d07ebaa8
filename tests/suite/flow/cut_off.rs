//! Cut off at any moment, the folder is as before or as after, and the next run finishes what was begun.

use crate::flow::{OVER, WITHIN};
use crate::workspace::{Workspace, tree};
use std::fs;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// How often the program is killed here, each time at another moment of its run; GALLEYPROOF_KILLS asks for more.
fn kills() -> u32 {
    const KILLS: u32 = 20;
    let asked = std::env::var("GALLEYPROOF_KILLS").ok();
    asked.and_then(|kills| kills.parse().ok()).unwrap_or(KILLS)
}

fn program(workspace: &Workspace, arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_galleyproof"));
    command
        .args(arguments)
        .current_dir(workspace.path(""))
        .env_remove("SOURCE_DATE_EPOCH")
        .stdout(Stdio::null())
        .stderr(Stdio::null());
    command
}

fn whole(workspace: &Workspace, arguments: &[&str]) -> Duration {
    let began = Instant::now();
    assert!(
        program(workspace, arguments)
            .status()
            .expect("starts")
            .success()
    );
    began.elapsed()
}

fn killed_after(workspace: &Workspace, arguments: &[&str], moment: Duration) {
    let mut child = program(workspace, arguments).spawn().expect("starts");
    std::thread::sleep(moment);
    // It may have ended by itself.
    let _ = child.kill();
    child.wait().expect("ends");
}

fn rows(workspace: &Workspace) -> usize {
    match fs::read_to_string(workspace.path("registers/issued.csv")) {
        Ok(text) => text.lines().count() - 1,
        Err(_) => 0,
    }
}

#[test]
fn an_issue_that_is_killed_is_before_or_after() {
    let model = Workspace::new();
    model.with("inbox/a.csv", WITHIN);
    let issue = ["issue", "--date", "2031-05-06"];
    let length = whole(&model, &issue);
    for kill in 0..kills() {
        let workspace = Workspace::new();
        workspace.with("inbox/a.csv", WITHIN);
        killed_after(&workspace, &issue, length * (kill + 1) / kills());
        let published = workspace.path("archive/2031-05-06").exists();
        if published {
            workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
        } else {
            assert_eq!(rows(&workspace), 0, "no row without its bag");
        }
        workspace.run(&["run"]).exits(0);
        assert_eq!(
            rows(&workspace),
            usize::from(published),
            "a bag has its rows once a run has healed them"
        );
        workspace.run(&issue).exits(0);
        assert_eq!(rows(&workspace), 1);
        assert!(
            tree(&model.path("out")) == tree(&workspace.path("out")),
            "kill {kill}"
        );
        assert!(model.text("registers/issued.csv") == workspace.text("registers/issued.csv"));
        assert_eq!(
            fs::read_dir(workspace.path("archive"))
                .expect("lists")
                .count(),
            1,
            "one bag, no remains"
        );
    }
}

#[test]
fn a_run_that_is_killed_leaves_no_half_file() {
    let (before, after) = (Workspace::new(), Workspace::new());
    before.with("inbox/a.csv", WITHIN);
    after.with("inbox/a.csv", OVER);
    whole(&before, &["run"]);
    let length = whole(&after, &["run"]);
    let whole_files = |folder: &Workspace| tree(&folder.path("out"));
    let (old, new) = (whole_files(&before), whole_files(&after));
    for kill in 0..kills() {
        before.with("inbox/a.csv", WITHIN);
        whole(&before, &["run"]);
        before.with("inbox/a.csv", OVER);
        killed_after(&before, &["run"], length * (kill + 1) / kills());
        let left = whole_files(&before);
        let is_of = |files: &[(String, Vec<u8>)], other: &[(String, Vec<u8>)]| {
            let outputs = left.iter().filter(|(path, _)| !path.starts_with('.'));
            let mut own = outputs.filter(|file| files.contains(file) && !other.contains(file));
            own.next().is_some()
        };
        let has_note = left
            .iter()
            .any(|(path, _)| path.starts_with("NOT FINISHED"));
        assert!(
            has_note || !(is_of(&old, &new) && is_of(&new, &old)),
            "kill {kill}: partly new, and no note says so"
        );
        for file in left
            .iter()
            // The note that the folder is not finished is told of in its own test.
            .filter(|(path, _)| !path.starts_with(['.', 'N']))
        {
            assert!(
                old.contains(file) || new.contains(file),
                "{} is neither old nor new",
                file.0
            );
        }
        whole(&before, &["run"]);
        assert!(whole_files(&before) == new, "kill {kill}");
    }
}

#[test]
fn a_row_that_its_bag_has_and_the_register_lacks_is_put_back() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let (register, out) = (
        workspace.text("registers/issued.csv"),
        tree(&workspace.path("out")),
    );
    // As if the power had failed after the bag was in its place.
    fs::remove_file(workspace.path("registers/issued.csv")).expect("removes");
    let run = workspace.run(&["run", "--date", "2031-05-06"]);
    run.exits(0);
    assert!(
        run.stderr().contains("TKW-P1-1 revision 1"),
        "{}",
        run.stderr()
    );
    assert_eq!(workspace.text("registers/issued.csv"), register);
    assert!(out == tree(&workspace.path("out")));
}

#[test]
fn of_two_runs_at_once_one_waits() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    let mut children: Vec<_> = (0..3)
        .map(|_| program(&workspace, &["run"]).spawn().expect("starts"))
        .collect();
    for child in &mut children {
        assert!(child.wait().expect("ends").success());
    }
    let alone = Workspace::new();
    alone.with("inbox/a.csv", WITHIN);
    whole(&alone, &["run"]);
    assert!(tree(&alone.path("out")) == tree(&workspace.path("out")));
    // A run beside an issue: whichever was first, the next run comes to the same.
    let commands: [&[&str]; 2] = [&["issue", "--date", "2031-05-06"], &["run"]];
    let mut children =
        commands.map(|command| program(&workspace, command).spawn().expect("starts"));
    for child in &mut children {
        assert!(child.wait().expect("ends").success());
    }
    for command in commands {
        whole(&alone, command);
    }
    whole(&workspace, &["run"]);
    workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
    let kept = |folder: &Workspace| {
        (
            tree(&folder.path("out")),
            folder.text("registers/issued.csv"),
        )
    };
    assert!(kept(&alone) == kept(&workspace));
    let locks = fs::read_dir(workspace.path("")).expect("lists").flatten();
    let left = locks.filter(|entry| entry.file_name().to_string_lossy().ends_with(".lock"));
    assert_eq!(left.count(), 0, "no lock is left");
}

/// A place that nobody can write to, whoever runs the test: its folder is a file.
#[test]
fn a_place_that_cannot_be_written_to_is_one_clear_line_and_loses_nothing() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["run"]).exits(0);
    let out = tree(&workspace.path("out"));
    workspace.with("archive", "a file, not a folder");
    let refused = workspace.run(&["-q", "issue", "--date", "2031-05-06"]);
    refused.exits(2);
    let said = refused.stderr();
    assert!(
        said.contains("archive") && said.trim().lines().count() <= 2,
        "{said}"
    );
    assert!(!workspace.path("registers/issued.csv").exists());
    assert!(
        out.iter()
            .filter(|(path, _)| !path.starts_with('.'))
            .eq(tree(&workspace.path("out"))
                .iter()
                .filter(|(path, _)| !path.starts_with('.')))
    );
    // Every command names the one that stands in the programme folder.
    fs::remove_file(workspace.path("archive")).expect("removes");
    workspace.with("blocked", "a file, not a folder");
    let refused = workspace.run(&["-q", "run", "--out", "blocked/out"]);
    refused.exits(2);
    assert!(refused.stderr().contains("blocked"), "{}", refused.stderr());
}

#[test]
fn every_command_tells_of_outputs_that_are_partly_new() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let sheet = "out/sheets/P1--1.pdf";
    let commands: [&[&str]; 13] = [
        &["check"],
        &["explain", "P1"],
        &["facts", "P1"],
        &["request", "--round", "1"],
        &["contact-sheet"],
        &["plan", "--date", "2031-05-06"],
        &["log", "notice-sent", "P1", "--date", "2031-05-06"],
        &["compare", "archive/2031-05-06", "archive/2031-05-06"],
        &["status", "--date", "2031-05-06"],
        &["verify", "archive/2031-05-06"],
        &["verify", sheet],
        &["issue", "--date", "2031-05-06"],
        &["run"],
    ];
    let told = |arguments: &[&str]| {
        workspace
            .run(arguments)
            .stderr()
            .contains("is not finished")
    };
    for arguments in commands {
        assert!(!told(arguments), "{arguments:?}: nothing was cut off");
        // What a run leaves that was killed between two moves.
        let record = workspace.text("out/.galleyproof.json");
        workspace.with("out/.galleyproof-planned.json", record);
        assert!(told(arguments), "{arguments:?}");
        workspace.run(&["run"]).exits(0);
        assert!(!told(&["check"]), "a run finishes it");
    }
}

#[test]
fn an_entry_that_is_killed_is_there_or_not() {
    let log = ["log", "notice-sent", "P1", "--date", "2031-05-06"];
    let model = Workspace::new();
    let length = whole(&model, &log);
    let after = model.text("registers/followups.csv");
    for kill in 0..kills() {
        let workspace = Workspace::new();
        killed_after(&workspace, &log, length * (kill + 1) / kills());
        let register = workspace.path("registers/followups.csv");
        let entered = register.exists();
        if entered {
            assert!(
                workspace.text("registers/followups.csv") == after,
                "kill {kill}"
            );
        } else {
            whole(&workspace, &log);
            assert!(
                workspace.text("registers/followups.csv") == after,
                "kill {kill}"
            );
        }
        workspace.run(&["check"]).exits(0);
    }
}
