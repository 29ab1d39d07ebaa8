//! Full disks, things that stand where others should, clocks, open registers: one sentence with the path and the way out,
//! and nothing half done.

use crate::flow::WITHIN;
use crate::workspace::{Workspace, tree};
use std::fs;

pub const DAY: &str = "2031-05-06";

/// Every command that writes, each with something to do.
pub const WRITERS: [&[&str]; 6] = [
    &["-q", "run"],
    &["-q", "issue", "--date", DAY],
    &["-q", "log", "notice-sent", "P1", "--date", DAY],
    &["-q", "plan", "--enter"],
    &["-q", "request", "--round", "1"],
    &["-q", "contact-sheet"],
];

/// Every command that looks at the whole programme: those that write, and those that only look.
pub fn commands() -> impl Iterator<Item = &'static [&'static str]> {
    let lookers: [&[&str]; 2] = [&["-q", "check"], &["-q", "status"]];
    WRITERS.into_iter().chain(lookers)
}

pub fn programme() -> Workspace {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id,round\nA1,P1,1\nA2,P1,1\nA3,P1,1\n",
    );
    workspace
}

/// All but the outputs, which a run makes again at any time.
pub fn kept(workspace: &Workspace) -> Vec<(String, Vec<u8>)> {
    let mut kept = tree(&workspace.path(""));
    kept.retain(|(path, _)| !path.starts_with("out/") && !path.ends_with(".lock"));
    kept
}

/// One line for people, with the path, and what to do.
pub fn is_told(said: &str, path: &str, way_out: &str) {
    let lines: Vec<&str> = said.trim().lines().collect();
    assert_eq!(lines.len(), 1, "{said}");
    assert!(
        lines[0].contains(path) && lines[0].contains(way_out),
        "{said}"
    );
    for word in ["os error", "panicked", "fault of the program"] {
        assert!(!said.contains(word), "{said}");
    }
}

#[test]
fn a_file_where_a_folder_should_be_is_named_by_every_command() {
    for folder in ["inbox", "registers", "archive", "report-templates", "fonts"] {
        let workspace = programme();
        let _ = fs::remove_dir_all(workspace.path(folder));
        workspace.with(folder, "a file");
        let before = kept(&workspace);
        for command in commands() {
            let run = workspace.run(command);
            run.exits(2);
            is_told(
                &run.stderr(),
                folder,
                "a file stands where a folder should be. Move it away and try again",
            );
        }
        assert!(before == kept(&workspace), "{folder}");
    }
}

#[test]
fn a_folder_where_a_file_should_be_is_named() {
    for file in [
        "programme.toml",
        "registers/products.csv",
        "registers/issued.csv",
        "registers/followups.csv",
    ] {
        let workspace = programme();
        let _ = fs::remove_file(workspace.path(file));
        fs::create_dir_all(workspace.path(file)).expect("makes");
        for command in WRITERS {
            let run = workspace.run(command);
            run.exits(2);
            is_told(
                &run.stderr(),
                file,
                "a folder stands where a file should be. Move it away and try again",
            );
        }
        assert!(!workspace.path("archive").exists(), "{file}");
    }
}

/// The outputs folder, where new files wait, and a file among the outputs.
#[test]
fn what_stands_in_the_place_of_outputs_is_named_by_its_own_path() {
    let file = "a file stands where a folder should be. Move it away and try again";
    let folder = "a folder stands where a file should be. Move it away and try again";
    for (path, way_out) in [
        ("out", file),
        ("out/.galleyproof-stage", file),
        ("out/summary.pdf/mine.txt", folder),
    ] {
        for command in &WRITERS[..2] {
            let workspace = programme();
            workspace.with(path, "mine");
            let before = kept(&workspace);
            let run = workspace.run(command);
            run.exits(2);
            let named = path.trim_end_matches("/mine.txt");
            is_told(&run.stderr(), &format!("/{named}: "), way_out);
            assert_eq!(workspace.text(path), "mine");
            assert!(before == kept(&workspace), "{path}");
        }
    }
}

#[test]
fn registers_that_were_moved_away_are_not_begun_anew() {
    let workspace = programme();
    workspace.run(&["-q", "issue", "--date", DAY]).exits(0);
    let whole = workspace.text("registers/issued.csv");
    fs::rename(workspace.path("registers"), workspace.path("elsewhere")).expect("moves");
    for command in WRITERS {
        let run = workspace.run(command);
        run.exits(2);
        is_told(&run.stderr(), "registers", "needs a file products.csv");
    }
    assert!(!workspace.path("registers").exists());
    fs::rename(workspace.path("elsewhere"), workspace.path("registers")).expect("moves back");
    workspace.run(&["-q", "run"]).exits(0);
    assert_eq!(workspace.text("registers/issued.csv"), whole);
}

/// The system lets no file grow beyond so many KiB, which stops a write anywhere in it as a full disk does.
#[cfg(unix)]
#[test]
fn a_disk_that_takes_no_more_leaves_all_as_it_was() {
    let whole: Vec<Workspace> = WRITERS
        .iter()
        .map(|command| {
            let workspace = programme();
            workspace.run(command).exits(0);
            workspace
        })
        .collect();
    for room in [0, 1, 2, 4, 8, 16, 32, 64, 128, 256] {
        for (command, whole) in WRITERS.iter().zip(&whole) {
            let workspace = programme();
            let before = kept(&workspace);
            let limited = format!("trap '' XFSZ; ulimit -f {room}; exec \"$0\" \"$@\"");
            let output = std::process::Command::new("bash")
                .args(["--norc", "-c", &limited, env!("CARGO_BIN_EXE_galleyproof")])
                .args(*command)
                .current_dir(workspace.path(""))
                .env_remove("SOURCE_DATE_EPOCH")
                .output();
            let Ok(output) = output else {
                println!("there is no bash: no disk was made full");
                return;
            };
            let said = String::from_utf8_lossy(&output.stderr);
            match output.status.code() {
                Some(0) => {}
                Some(2) => {
                    assert!(before == kept(&workspace), "{command:?} in {room} KiB");
                    is_told(&said, "", "cannot write");
                }
                other => panic!("{command:?} in {room} KiB: {other:?} {said}"),
            }
            let rows = workspace.path("registers/issued.csv").exists();
            assert_eq!(rows, workspace.path("archive").join(DAY).exists());
            // With room again it comes to the same as ever.
            if output.status.code() == Some(2) {
                workspace.run(command).exits(0);
            }
            assert!(
                tree(&workspace.path("")) == tree(&whole.path("")),
                "{command:?} in {room} KiB"
            );
        }
    }
}

#[test]
fn a_clock_that_was_set_back_issues_nothing() {
    let workspace = programme();
    workspace.run(&["-q", "issue", "--date", DAY]).exits(0);
    workspace.with("inbox/a.csv", WITHIN.replace("7.1", "7.4"));
    let before = kept(&workspace);
    let run = workspace.run(&["-q", "issue", "--date", "2030-01-01", "--reason", "a slip"]);
    run.exits(2);
    is_told(
        &run.stderr(),
        "2030-01-01 is before 2031-05-06, the day on which TKW-P1-1 revision 1",
        "Set the clock of this machine right, or give the day with --date",
    );
    assert!(before == kept(&workspace));
    let again = ["-q", "issue", "--date", DAY, "--reason", "a slip"];
    workspace.run(&again).exits(0);
    assert!(workspace.path("archive/2031-05-06-2").is_dir());
}

#[test]
fn a_register_that_is_open_in_a_spreadsheet_program_is_not_written_to() {
    for (register, command) in [
        ("issued.csv", WRITERS[1]),
        ("followups.csv", WRITERS[2]),
        ("packages.csv", WRITERS[3]),
    ] {
        for lock in [format!("~${register}"), format!(".~lock.{register}#")] {
            let workspace = programme();
            let lock = format!("registers/{lock}");
            workspace.with(&lock, ",someone,desk,06.05.2031 09:00;");
            let before = kept(&workspace);
            let run = workspace.run(command);
            run.exits(2);
            is_told(&run.stderr(), register, "Close it there and try again");
            assert!(run.stderr().contains(&lock), "{}", run.stderr());
            assert!(before == kept(&workspace), "{lock}");
            // Reading it does no harm, and the lock is no register.
            let check = workspace.run(&["check"]);
            check.exits(0);
            assert!(!check.stdout().contains("lock"), "{}", check.stdout());
            fs::remove_file(workspace.path(&lock)).expect("removes");
            workspace.run(command).exits(0);
        }
    }
}

/// Something stands in the way of the outputs once the bag is in its place.
#[test]
fn an_issue_that_cannot_be_finished_says_that_it_is_issued() {
    let workspace = programme();
    workspace.run(&["-q", "run"]).exits(0);
    // The outputs that are to be replaced cannot be: a folder with something in it stands in the place of one.
    workspace.with("out/NOT FINISHED, run again.txt/mine.txt", "mine");
    let run = workspace.run(&["issue", "--date", DAY]);
    run.exits(1);
    let said = run.stderr();
    assert!(
        said.contains("the sheets are issued and archived, but cannot")
            && said.contains("`galleyproof run` finishes it"),
        "{said}"
    );
    assert!(run.stdout().contains("1 sheet issued"), "{}", run.stdout());
    workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
    assert_eq!(workspace.text("registers/issued.csv").lines().count(), 2);
    fs::remove_dir_all(workspace.path("out/NOT FINISHED, run again.txt")).expect("removes");
    workspace.run(&["-q", "run", "--date", DAY]).exits(0);
    let undisturbed = programme();
    undisturbed.run(&["-q", "issue", "--date", DAY]).exits(0);
    assert!(tree(&undisturbed.path("out")) == tree(&workspace.path("out")));
}

/// The outputs folder goes while a run is at work: it says so in a line, or had ended, and the next run makes all again.
#[test]
fn a_folder_that_vanishes_half_way_is_one_sentence() {
    let model = programme();
    model.run(&["-q", "run"]).exits(0);
    let whole = tree(&model.path("out"));
    for wait in [20_u64, 60, 120, 250, 400] {
        for folder in ["out", "inbox", "registers"] {
            let workspace = programme();
            let child = std::process::Command::new(env!("CARGO_BIN_EXE_galleyproof"))
                .args(["-q", "run"])
                .current_dir(workspace.path(""))
                .env_remove("SOURCE_DATE_EPOCH")
                .stderr(std::process::Stdio::piped())
                .spawn()
                .expect("starts");
            std::thread::sleep(std::time::Duration::from_millis(wait));
            let away = workspace.path(&format!("{folder} away"));
            let _ = fs::rename(workspace.path(folder), &away);
            let output = child.wait_with_output().expect("ends");
            let said = String::from_utf8_lossy(&output.stderr);
            match output.status.code() {
                Some(0) => assert_eq!(said, ""),
                // A lab file that has gone is a problem of that file.
                Some(1) => assert_eq!(folder, "inbox", "{said}"),
                Some(2) => is_told(&said, folder, "galleyproof: "),
                other => panic!("{folder} after {wait} ms: {other:?} {said}"),
            }
            if folder != "out" && away.exists() {
                let _ = fs::remove_dir_all(workspace.path(folder));
                fs::rename(&away, workspace.path(folder)).expect("moves back");
            }
            workspace.run(&["-q", "run"]).exits(0);
            assert!(
                whole == tree(&workspace.path("out")),
                "{folder} after {wait} ms"
            );
        }
    }
}

#[cfg(unix)]
#[test]
fn what_a_person_keeps_private_stays_so() {
    use std::os::unix::fs::MetadataExt;
    for (umask, others) in [("077", 0), ("027", 0o050), ("022", 0o055)] {
        let workspace = programme();
        let private = format!("umask {umask}; exec \"$0\" \"$@\"");
        let status = std::process::Command::new("bash")
            .args(["--norc", "-c", &private, env!("CARGO_BIN_EXE_galleyproof")])
            .args(WRITERS[1])
            .current_dir(workspace.path(""))
            .status();
        let Ok(status) = status else {
            println!("there is no bash: no umask was tried");
            return;
        };
        assert!(status.success());
        for made in ["out", "archive", "registers/issued.csv"] {
            for entry in walkdir::WalkDir::new(workspace.path(made)) {
                let entry = entry.expect("can be listed");
                let mode = entry.metadata().expect("is there").mode() & 0o777;
                let expected = match entry.file_type().is_dir() {
                    true => 0o700 | others,
                    false => 0o600 | others & 0o044,
                };
                assert_eq!(mode, expected, "{umask} {}", entry.path().display());
            }
        }
    }
}

#[test]
fn outputs_are_made_in_no_folder_that_is_read() {
    let workspace = programme();
    for out in ["inbox", "registers/new", "inbox/deep/er"] {
        let run = workspace.run(&["-q", "run", "--out", out]);
        run.exits(2);
        is_told(&run.stderr(), out, "Name another folder with --out");
    }
    assert_eq!(tree(&workspace.path("inbox")).len(), 1);
    workspace
        .run(&["-q", "run", "--out", "inbox-proofs"])
        .exits(0);
    let run = workspace.run(&["check", "programme.toml"]);
    is_told(&run.stderr(), "programme.toml", "name the programme folder");
    workspace.with("programme.toml", b"[programme]\nname = \"T\xff\"\n");
    let run = workspace.run(&["check"]);
    is_told(
        &run.stderr(),
        "programme.toml: line 2",
        "Save the file as UTF-8",
    );
    let pasted = "[programme]\n".to_owned() + &"key = 1\n".repeat(100_000);
    workspace.with("programme.toml", pasted);
    let run = workspace.run(&["check"]);
    run.exits(2);
    assert!(
        run.stderr().contains("262144 are the most"),
        "{}",
        run.stderr()
    );
}

#[test]
fn a_bag_has_the_lab_files_that_its_report_speaks_of() {
    let workspace = programme();
    workspace.with("inbox/broken.xlsx", b"PK\x03\x04 cut");
    workspace.with("inbox/copy.csv", WITHIN);
    workspace.with("inbox/~$a.xlsx", "litter");
    workspace.run(&["-q", "issue", "--date", DAY]).exits(1);
    let bag = workspace.path("archive").join(DAY).join("data/private");
    let again = workspace.run(&["check", "--format", "json", &bag.to_string_lossy()]);
    let again: serde_json::Value = serde_json::from_str(&again.stdout()).expect("is JSON");
    assert_eq!(again["problems"], workspace.results()["problems"]);
    assert!(!bag.join("inbox/~$a.xlsx").exists());
}

#[test]
fn a_mistake_in_a_template_is_told_once() {
    let workspace = programme();
    crate::flow::with_second_product(&workspace);
    workspace.with("report-templates/sheet.typ", "#let x = (");
    let run = workspace.run(&["-q", "run"]);
    run.exits(1);
    let said = run.stderr();
    assert_eq!(said.matches("unclosed delimiter").count(), 1, "{said}");
    assert!(
        said.contains("sheets/P1--1.pdf and 1 more could not be made"),
        "{said}"
    );
}

#[test]
fn nothing_that_goes_to_the_lab_is_a_formula() {
    let workspace = programme();
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,category,net_content\nP1,Harbour Loaf,gluten-free,=cmd|'/C calc'!A0,+1\n",
    );
    workspace.run(&["-q", "request", "--round", "1"]).exits(0);
    let table = workspace.text("out/requests/samples-1.csv");
    assert!(
        table.contains("A1,'=cmd|") && table.contains(",'+1,"),
        "{table}"
    );
    // Programs of East Asia take the full width for the same.
    for formula in ["＝1+1", "＋1+1", "－1+1", "＠SUM(A1)"] {
        let products =
            format!("product_id,name,claim,category\nP1,Harbour Loaf,gluten-free,{formula}\n");
        workspace.with("registers/products.csv", products);
        workspace.run(&["-q", "request", "--round", "1"]).exits(0);
        let table = workspace.text("out/requests/samples-1.csv");
        assert!(table.contains(&format!(",'{formula}")), "{table}");
    }
}
