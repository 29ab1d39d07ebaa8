//! What published sheets have behind them: where it is gone, every command that looks says so.

use crate::flow::{WITHIN, with_second_product};
use crate::workspace::Workspace;
use std::fs;

const FILE: &str = "inbox/a.csv";

fn published() -> Workspace {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with(FILE, WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    workspace
}

/// What `check` and `status` say, in that order.
fn told(workspace: &Workspace) -> [String; 2] {
    [&["check"][..], &["status", "--date", "2031-05-07"]].map(|command| {
        let run = workspace.run(command);
        run.stdout().replace('\n', " ")
    })
}

#[test]
fn a_product_that_is_gone_after_it_was_published_is_named() {
    let workspace = published();
    let gone = "TKW-P1-1 / 1 (2031-05-06) was published, and there is no product P1";
    for said in told(&workspace) {
        assert!(!said.contains("was published, and"), "{said}");
    }
    let products = workspace.text("registers/products.csv");
    let packages = workspace.text("registers/packages.csv");
    let without = |text: &str, word: &str| -> String {
        let lines = text.lines().filter(|line| !line.contains(word));
        lines.map(|line| format!("{line}\n")).collect()
    };
    workspace.with("registers/packages.csv", without(&packages, ",P1"));
    for said in told(&workspace) {
        let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(said.contains("round 1 of P1 has no package"), "{said}");
    }
    workspace.with("registers/products.csv", without(&products, "P1,"));
    for said in told(&workspace) {
        let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(said.contains(gone), "{said}");
        assert!(!said.contains("TKW-P2-1 / 1 (2031-05-06) was published, and"));
    }
    // It keeps nobody from publishing anything else.
    let issue = workspace.run(&["issue", "--date", "2031-05-07"]);
    assert!(
        issue.stdout().starts_with("Nothing to issue"),
        "{}",
        issue.stdout()
    );
    workspace.with("registers/products.csv", products);
    workspace.with("registers/packages.csv", packages);
    for said in told(&workspace) {
        assert!(!said.contains("was published, and"), "{said}");
    }
}

#[test]
fn a_lab_file_that_is_gone_is_named_with_its_hash_and_the_sheets_that_rest_on_it() {
    let workspace = published();
    let sha256 = "8cd8eedc3b0a134a765f3c52a91ac3c2e54e520fffa321ce9503ece29d45fd19";
    fs::create_dir_all(workspace.path("inbox/2031")).expect("makes");
    fs::rename(workspace.path(FILE), workspace.path("inbox/2031/a.csv")).expect("moves");
    for said in told(&workspace) {
        assert!(!said.contains("SHA-256"), "moved is not gone: {said}");
    }
    fs::remove_file(workspace.path("inbox/2031/a.csv")).expect("removes");
    workspace.run(&["check"]).exits(1);
    for said in told(&workspace) {
        let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
        for word in [
            FILE,
            "The file is gone that what was published rests on: TKW-P1-1 / 1 (2031-05-06). Its SHA-256 was ",
            sha256,
            "archive/2031-05-06/data/private/inbox/a.csv",
        ] {
            assert!(said.contains(word), "{word}: {said}");
        }
        assert!(!said.contains("TKW-P2-1 / 1"), "{said}");
    }
    // Another file in its place.
    workspace.with(FILE, WITHIN.replace("7.1", "7.4"));
    let check = workspace.run(&["check"]).exits(0).stdout();
    let said = check.split_whitespace().collect::<Vec<_>>().join(" ");
    let changed = "The file is not as it was when this was published: TKW-P1-1 / 1 (2031-05-06)";
    assert!(said.contains(changed) && said.contains(sha256), "{said}");
    let now = "and is 3245116e75089c35b4aa65307e835bd00a074c63da919f2c18a0e592aed503b9.";
    assert!(said.contains(now), "{said}");
    // One that cannot be read has taken its place all the same.
    workspace.with(FILE, "PK\u{3}\u{4} cut");
    let check = workspace.run(&["check"]).exits(1).stdout();
    let said = check.split_whitespace().collect::<Vec<_>>().join(" ");
    let now = "and is ceaf410e206e1fd11a6ddf3cafd0fc57d9f36e19a39a828b37c0e75c8d90b1f5.";
    for word in [changed, sha256, now, "TKW-P1-1 / 1"] {
        assert!(said.contains(word), "{word}: {said}");
    }
    assert!(!said.contains("TKW-P2-1 / 1"), "{said}");
    workspace.with(FILE, WITHIN.replace("7.1", "7.4"));
    // Once the sheet is issued anew it rests on what is there.
    let issue = [
        "issue",
        "--date",
        "2031-05-08",
        "--reason",
        "A slip in the report.",
    ];
    workspace.run(&issue).exits(0);
    let check = workspace.run(&["check"]).exits(0).stdout();
    assert!(!check.contains("SHA-256"), "{check}");
    workspace.with(FILE, WITHIN);
    let check = workspace.run(&["check"]).stdout();
    assert!(check.contains("TKW-P1-1 / 2 (2031-05-08)"), "{check}");
}

#[test]
fn every_lab_has_its_own_letter_whatever_it_is_called() {
    let workspace = Workspace::new();
    let long = "Very Long Assays ".repeat(40);
    for (name, lab, code) in [
        ("a.csv", "LAB 1", "A1"),
        ("b.csv", "Lab 1", "A2"),
        ("c.csv", long.trim(), "A3"),
    ] {
        let file = format!(
            "Laboratory: {lab}\n\nSample,Extraction,Gluten (ppm)\n{code},1,<5\n{code},2,44\n"
        );
        workspace.with(&format!("inbox/{name}"), file);
    }
    workspace.run(&["-q", "run"]).exits(0);
    let listed = |folder: &str, start: &str| -> Vec<String> {
        let entries = fs::read_dir(workspace.path(folder))
            .expect("is there")
            .flatten();
        let mut names: Vec<String> = entries
            .map(|entry| entry.file_name().to_string_lossy().into_owned())
            .filter(|name| name.starts_with(start))
            .collect();
        names.sort();
        names
    };
    let letters = listed("out/queries", "");
    assert_eq!(letters.len(), 3, "{letters:?}");
    assert_eq!(
        letters
            .iter()
            .filter(|name| name.starts_with("lab-1-"))
            .count(),
        2
    );
    assert!(letters.iter().all(|name| name.len() < 100), "{letters:?}");
    assert_eq!(listed("out/drafts", "query-").len(), 3);
}
