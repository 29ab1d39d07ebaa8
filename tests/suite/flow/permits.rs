//! Folders that may not be written to, or not be looked into: one sentence, nothing half done, and the next run finishes.

use super::refused::{DAY, WRITERS, commands, is_told, kept, programme};
use crate::workspace::{Workspace, tree};
use std::fs::{self, Permissions};
use std::os::unix::fs::{MetadataExt, PermissionsExt, chown};
use std::os::unix::process::CommandExt;
use std::process::Command;

/// Whom no file of the system's belongs to.
const NOBODY: u32 = 65534;

/// A folder whose owner is bound by its permissions: nobody, where the test is run by root.
struct Bound {
    workspace: Workspace,
    is_root: bool,
}

/// How a command came out.
struct Came {
    status: Option<i32>,
    said: String,
}

impl Bound {
    fn new() -> Bound {
        let workspace = programme();
        let owner = fs::metadata(workspace.path("")).expect("is there").uid();
        let bound = Bound {
            workspace,
            is_root: owner == 0,
        };
        bound.hand_over();
        bound
    }

    /// Gives all that the test has written itself to whom the program runs as.
    fn hand_over(&self) {
        if self.is_root {
            for entry in walkdir::WalkDir::new(self.workspace.path("")) {
                let path = entry.expect("can be listed").into_path();
                chown(path, Some(NOBODY), Some(NOBODY)).expect("changes hands");
            }
        }
    }

    fn run(&self, arguments: &[&str]) -> Came {
        let mut command = Command::new(env!("CARGO_BIN_EXE_galleyproof"));
        command
            .args(arguments)
            .current_dir(self.workspace.path(""))
            .env_remove("SOURCE_DATE_EPOCH");
        if self.is_root {
            command.uid(NOBODY).gid(NOBODY);
        }
        let output = command.output().expect("starts");
        Came {
            status: output.status.code(),
            said: String::from_utf8_lossy(&output.stderr).into_owned(),
        }
    }

    fn may(&self, path: &str, mode: u32) {
        let path = self.workspace.path(path);
        fs::set_permissions(path, Permissions::from_mode(mode)).expect("sets them");
    }

    /// The same of every folder, the innermost first where it is taken away.
    fn every_folder_may(&self, mode: u32) {
        let folders = walkdir::WalkDir::new(self.workspace.path(""));
        for entry in folders {
            let entry = entry.expect("can be listed");
            if entry.file_type().is_dir() {
                let permissions = Permissions::from_mode(mode);
                fs::set_permissions(entry.path(), permissions).expect("sets them");
            }
        }
    }
}

#[test]
fn a_folder_that_may_not_be_written_to_is_one_sentence() {
    for command in WRITERS {
        let bound = Bound::new();
        bound.every_folder_may(0o555);
        let before = tree(&bound.workspace.path(""));
        let came = bound.run(command);
        let after = tree(&bound.workspace.path(""));
        bound.every_folder_may(0o755);
        assert_eq!(came.status, Some(2), "{command:?}: {}", came.said);
        is_told(&came.said, "./", "it may be write-protected");
        assert!(before == after, "{command:?}");
        // Who only looks needs no permission to write.
        bound.every_folder_may(0o555);
        for command in [&["check"][..], &["status", "--date", DAY], &["facts", "P1"]] {
            let came = bound.run(command);
            assert_eq!(came.status, Some(0), "{command:?}: {}", came.said);
        }
        bound.every_folder_may(0o755);
        let came = bound.run(command);
        assert_eq!(came.status, Some(0), "{command:?}: {}", came.said);
    }
}

#[test]
fn a_register_that_cannot_be_written_to_once_all_is_archived_is_put_right_by_the_next_run() {
    let bound = Bound::new();
    let workspace = &bound.workspace;
    bound.may("registers", 0o555);
    let came = bound.run(&["-q", "issue", "--date", DAY]);
    bound.may("registers", 0o755);
    assert_eq!(came.status, Some(1), "{}", came.said);
    is_told(
        &came.said,
        "the sheets are issued and archived, but cannot write ./registers/issued.csv",
        "Then `galleyproof run` finishes it",
    );
    assert!(!workspace.path("registers/issued.csv").exists());
    workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
    let check = workspace.run(&["check"]).exits(0).stdout();
    assert!(check.contains("TKW-P1-1 revision 1"), "{check}");
    let came = bound.run(&["-q", "run", "--date", DAY]);
    assert_eq!(came.status, Some(0), "{}", came.said);
    assert_eq!(workspace.text("registers/issued.csv").lines().count(), 2);
    let undisturbed = programme();
    undisturbed.run(&["-q", "issue", "--date", DAY]).exits(0);
    assert!(kept(&undisturbed) == kept(workspace));
    assert!(tree(&undisturbed.path("out")) == tree(&workspace.path("out")));
}

#[test]
fn an_inbox_that_may_not_be_looked_into_is_one_sentence() {
    let bound = Bound::new();
    for command in commands() {
        bound.may("inbox", 0o000);
        let came = bound.run(command);
        bound.may("inbox", 0o755);
        assert_eq!(came.status, Some(2), "{command:?}: {}", came.said);
        is_told(&came.said, "cannot list ./inbox: ", "permission was denied");
    }
    assert!(!bound.workspace.path("archive").exists());
}

/// A place of one output that cannot be taken ends a run between two moves, as a cut would.
#[test]
fn a_note_for_people_stands_in_outputs_that_are_partly_new_and_goes_with_the_next_run() {
    let note = "out/NOT FINISHED, run again.txt";
    let bound = Bound::new();
    let workspace = &bound.workspace;
    assert_eq!(bound.run(&["-q", "run"]).status, Some(0));
    assert!(!workspace.path(note).exists());
    workspace.with("inbox/a.csv", crate::flow::OVER);
    bound.hand_over();
    let before = tree(&workspace.path("out"));
    bound.may("out/sheets", 0o555);
    let came = bound.run(&["-q", "run"]);
    bound.may("out/sheets", 0o755);
    assert_eq!(came.status, Some(2), "{}", came.said);
    is_told(
        &came.said,
        "out/sheets/P1--1.pdf",
        "it may be write-protected",
    );
    let said = workspace.text(note);
    assert!(
        said.contains("some are new and some are of the run before")
            && said.contains("Run galleyproof again"),
        "{said}"
    );
    let is_new = |path: &str| {
        let now = fs::read(workspace.path("out").join(path)).expect("is there");
        let mut old = before.iter().filter(|(known, _)| known == path);
        old.next().is_none_or(|(_, bytes)| *bytes != now)
    };
    assert!(is_new("data/results.json") && !is_new("sheets/P1--1.pdf"));
    let came = bound.run(&["-q", "run"]);
    assert_eq!(came.status, Some(0), "{}", came.said);
    assert!(!workspace.path(note).exists());
}
