//! Links, and what stands for a file and is none: nothing of the machine outside the folder gets into what is made.

use super::refused::{DAY, commands, is_told, programme};
use crate::flow::WITHIN;
use crate::workspace::{Workspace, tree};
use std::fs;
use std::os::unix::fs::symlink;

/// Who holds a lock is written into it, and never into what a link in its place leads to.
#[test]
fn a_lock_that_is_a_link_leaves_what_it_leads_to() {
    let workspace = programme();
    let text = workspace.text("registers/products.csv");
    symlink(
        "registers/products.csv",
        workspace.path(".galleyproof-out.lock"),
    )
    .expect("links");
    let run = workspace.run(&["-q", "run"]);
    run.exits(2);
    is_told(
        &run.stderr(),
        ".galleyproof-out.lock",
        "Remove it and try again",
    );
    assert_eq!(workspace.text("registers/products.csv"), text);
}

/// A folder that came in an archive can hold links: what they lead to is in nothing that is made.
#[test]
fn a_link_takes_nothing_of_the_machine_along() {
    let secret = Workspace::new();
    secret.with(
        "secret.csv",
        "Sample,Extraction,Gluten (ppm)\nA1,1,6.66\nA1,2,6.66\n",
    );
    let target = secret.path("secret.csv");
    let workspace = programme();
    symlink(&target, workspace.path("inbox/b.csv")).expect("links");
    symlink("a.csv", workspace.path("inbox/within.csv")).expect("links");
    workspace.run(&["-q", "issue", "--date", DAY]).exits(0);
    for (path, bytes) in tree(&workspace.path("archive"))
        .iter()
        .chain(&tree(&workspace.path("out")))
    {
        let held = bytes.windows(4).any(|bytes| bytes == b"6.66");
        assert!(!held || path.ends_with(".pdf"), "{path}");
    }
    let check = workspace.run(&["check"]).exits(0).stdout();
    assert!(check.contains("leads out of the programme folder") && check.contains("inbox/b.csv"));
    assert!(check.contains("the same content as inbox/a.csv"), "{check}");
    // A register that is a link out of the folder would be archived with it.
    symlink(&target, workspace.path("registers/notes.csv")).expect("links");
    workspace.with("inbox/a.csv", WITHIN.replace("7.1", "7.4"));
    let again = ["-q", "issue", "--date", DAY, "--reason", "a slip"];
    let run = workspace.run(&again);
    run.exits(2);
    is_told(
        &run.stderr(),
        "registers/notes.csv",
        "Put a copy of the file in its place",
    );
    assert!(!workspace.path("archive/2031-05-06-2").exists());
    // Settings and templates are read where they stand, and a link in the record of outputs removes nothing elsewhere.
    let record = format!(
        "{{\"../secret.csv\":{{\"sha256\":\"{}\",\"key\":null}}}}",
        "0".repeat(64)
    );
    workspace.with("out/.galleyproof.json", record);
    workspace.run(&["-q", "run"]).exits(0);
    assert!(target.exists());
}

/// What a link leads to could be anyone's, and some of the system's own files never end.
#[test]
fn a_register_or_settings_that_are_a_link_out_of_the_folder_are_not_read() {
    let secret = Workspace::new();
    for file in [
        "programme.toml",
        "registers/products.csv",
        "registers/corrections.csv",
        "registers/issued.csv",
    ] {
        let elsewhere = secret.path("registers/products.csv");
        for target in [
            elsewhere.to_str().expect("is text"),
            "/proc/kmsg",
            "/proc/self/pagemap",
        ] {
            let workspace = programme();
            let _ = fs::remove_file(workspace.path(file));
            symlink(target, workspace.path(file)).expect("links");
            for command in commands() {
                let run = workspace.run(command);
                run.exits(2);
                is_told(
                    &run.stderr(),
                    file,
                    "is a link that leads out of the programme folder. Put a copy of the file in its place",
                );
            }
            assert!(!workspace.path("archive").exists());
        }
    }
    // Within the folder a link is what it leads to.
    let workspace = programme();
    let products = workspace.text("registers/products.csv");
    workspace.with("kept/products.csv", products);
    fs::remove_file(workspace.path("registers/products.csv")).expect("removes");
    symlink(
        "../kept/products.csv",
        workspace.path("registers/products.csv"),
    )
    .expect("links");
    workspace.run(&["-q", "issue", "--date", DAY]).exits(0);
}
