//! What holds a sheet up, what overrides that, and what cannot be overridden.

use crate::flow::public::pages;
use crate::flow::{OVER, WITHIN, with_second_product};
use crate::workspace::Workspace;

fn state(workspace: &Workspace, product: &str) -> String {
    let results = workspace.results();
    let products = results["products"].as_array().expect("a list");
    let of = products.iter().find(|one| one["product_id"] == product);
    of.expect("it is listed")["publication"]["state"]
        .as_str()
        .expect("a word")
        .to_owned()
}

#[test]
fn a_held_sheet_is_issued_early_only_by_name_and_with_a_reason_that_it_prints() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", OVER);
    let issue = |arguments: &[&str]| {
        workspace.run(&[&["issue", "--date", "2031-05-06"], arguments].concat())
    };
    issue(&["--early"]).exits(2);
    issue(&["--only", "P1"]).exits(2);
    issue(&["--only", "P1", "--early"]).exits(2);
    issue(&["--early", "--reason", "People could be harmed"]).exits(2);
    assert!(!workspace.path("archive").exists());
    issue(&[
        "--only",
        "P1",
        "--early",
        "--reason",
        "People could be harmed",
    ])
    .exits(0);
    let sheet = pages(&workspace.path("archive/2031-05-06/data/public/sheets/P1--1.pdf"));
    let said = "Issued before the maker was told. People could be harmed.";
    assert!(sheet.contains(said), "{sheet}");
    assert_eq!(state(&workspace, "P1"), "published");
    assert_eq!(state(&workspace, "P2"), "ready");
    let public = workspace.path("archive/2031-05-06/data/public/sheets/P2--1.pdf");
    assert!(!public.exists(), "it was not asked for");
}

#[test]
fn what_the_registers_or_its_own_readings_leave_open_holds_a_sheet_and_no_other() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", WITHIN.replace("7.1", "seven"));
    let issued = workspace.run(&["issue", "--date", "2031-05-06"]);
    issued.exits(1);
    let said = issued.stdout();
    assert!(said.contains("TKW-P2-1 revision 1"), "{said}");
    assert!(said.contains("TKW-P1-1 (Harbour Loaf): held"), "{said}");
    assert!(said.contains("inbox/a.csv"), "the place is named: {said}");

    workspace.with("inbox/a.csv", WITHIN);
    assert_eq!(state(&workspace, "P1"), "ready");
    let row = "P1,1,soon,notice-sent,,,\n";
    workspace.with(
        "registers/followups.csv",
        format!("product_id,round,on,kind,due_on,statement,note\n{row}"),
    );
    assert_eq!(state(&workspace, "P1"), "held");
    assert_eq!(state(&workspace, "P2"), "published");
}

#[test]
fn programs_are_told_what_is_held_and_from_when_it_may_be_issued() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", OVER);
    workspace.with(
        "registers/followups.csv",
        "product_id,round,on,kind,due_on,statement,note\nP1,1,2031-05-01,notice-sent,,,\n",
    );
    let issued = workspace.run(&["issue", "--date", "2031-05-06", "--format", "json"]);
    let told: serde_json::Value = serde_json::from_str(&issued.stdout()).expect("is JSON");
    let held = &told["held"][0];
    assert_eq!(held["product_id"], "P1", "{told}");
    assert_eq!(held["state"], "held");
    assert_eq!(
        held["may_publish_on"], "2031-05-23",
        "22 days after the notice"
    );
    assert_eq!(told["issued"][0]["product_id"], "P2");
}

#[test]
fn what_init_wrote_can_be_run_and_not_issued() {
    let workspace = Workspace::new();
    workspace.run(&["init", "new"]).exits(0);
    for register in ["products.csv", "packages.csv"] {
        workspace.with(
            &format!("new/registers/{register}"),
            workspace.text(&format!("registers/{register}")),
        );
    }
    workspace.with("new/inbox/a.csv", WITHIN);
    workspace.run(&["run", "new"]).exits(0);
    let refused = workspace.run(&["issue", "-C", "new", "--date", "2031-05-06"]);
    refused.exits(2);
    assert!(refused.stderr().contains("init"), "{}", refused.stderr());
    assert!(!workspace.path("new/archive").exists());
}

#[test]
fn certificates_stay_private_and_are_named_with_their_checksum() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.with("inbox/Certificate 7.PDF", "%PDF-1.7 invented");
    workspace.with("inbox/photos/front.jpeg", "invented");
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let bag = "archive/2031-05-06";
    let info = workspace.text(&format!("{bag}/bag-info.txt"));
    for name in ["Certificate 7.PDF", "photos/front.jpeg"] {
        let path = format!("{bag}/data/private/inbox/{name}");
        assert!(workspace.path(&path).exists(), "{path}");
        let line = format!("Certificate: inbox/{name} SHA-256 ");
        assert!(info.contains(&line), "{info}");
        assert!(!workspace.path(&format!("{bag}/data/public/inbox")).exists());
    }
    workspace.run(&["verify", bag]).exits(0);
}

#[test]
fn an_entry_is_checked_and_the_register_is_as_it_was_where_it_is_refused() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", OVER);
    let log = |arguments: &[&str]| workspace.run(&[&["log"], arguments].concat());
    let refusals: [(&[&str], &str); 7] = [
        (&["notice", "P1"], "notice-sent, reply, action, closed"),
        (
            &["reply", "P1", "--date", "2031-05-06"],
            "notice-sent first",
        ),
        (&["notice-sent", "P9"], "nearest name is P1"),
        (&["notice-sent", "P1", "--round", "2"], "no round 2"),
        (
            &[
                "notice-sent",
                "P1",
                "--date",
                "2031-05-06",
                "--due",
                "2031-05-01",
            ],
            "cannot be due",
        ),
        (
            &["closed", "P1", "--due", "2031-05-01"],
            "notice-sent alone",
        ),
        (&["notice-sent", "P1", "a", "b"], "unexpected argument"),
    ];
    for (arguments, said) in refusals {
        let refused = log(arguments);
        refused.exits(2);
        assert!(
            refused.stderr().contains(said),
            "{said}: {}",
            refused.stderr()
        );
        assert!(!workspace.path("registers/followups.csv").exists());
    }
    log(&["notice-sent", "P1", "--date", "2031-05-06"]).exits(0);
    let before = workspace.text("registers/followups.csv");
    let early = log(&["reply", "P1", "--date", "2031-05-01"]);
    early.exits(2);
    assert!(
        early.stderr().contains("before the last entry"),
        "{}",
        early.stderr()
    );
    let reply = "We are sorry, and \"have\" withdrawn; the lot,\nall of it";
    let told = log(&["reply", "P1", "--date", "2031-05-08", "--statement", reply]);
    told.exits(0);
    assert!(
        told.stdout().contains("It may be published now."),
        "{}",
        told.stdout()
    );
    let after = workspace.text("registers/followups.csv");
    assert!(after.starts_with(&before), "only ever added to");
    workspace.run(&["issue", "--date", "2031-05-08"]).exits(0);
    let sheet = pages(&workspace.path("out/sheets/P1--1.pdf"));
    assert!(
        sheet.contains("and \"have\" withdrawn; the lot, all of it"),
        "{sheet}"
    );

    std::fs::remove_file(workspace.path("registers/followups.csv")).expect("removes");
    workspace.with("registers/followups.ods", "kept by hand");
    let refused = log(&["notice-sent", "P1", "--date", "2031-05-09"]);
    refused.exits(2);
    assert!(!workspace.path("registers/followups.csv").exists());
}

/// A word that cannot be read, a claim that no rule knows: no verdict, and nothing is published on it.
#[test]
fn what_is_unknown_of_a_product_holds_its_sheet() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", WITHIN);
    let products = workspace.text("registers/products.csv");
    for claim in ["wheat-free", "made in a mill"] {
        workspace.with(
            "registers/products.csv",
            products.replacen("gluten-free", claim, 1),
        );
        let states = [state(&workspace, "P1"), state(&workspace, "P2")];
        assert_eq!(states, ["held", "ready"], "{claim}");
    }
}
