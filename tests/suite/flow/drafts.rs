//! The mails as they leave the program: drafts to the maker, with what is attached.

use crate::flow::{OVER, with_second_product};
use crate::workspace::Workspace;
use std::fs;

fn draft(workspace: &Workspace) -> String {
    fs::read_to_string(workspace.path("out/drafts/P1--1.eml")).expect("is there")
}

#[test]
fn a_product_over_the_limit_has_a_draft_with_its_sheet() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", OVER);
    workspace.run(&["run", "--date", "2031-05-06"]).exits(0);
    let draft = draft(&workspace);
    assert!(
        draft.contains("To: \"Saltmarsh Bakehouse\" <quality@saltmarsh.example>\r\n"),
        "{draft}"
    );
    assert!(draft.contains("\r\nX-Unsent: 1\r\n"), "{draft}");
    assert!(draft.contains("filename=\"P1--1.pdf\""), "{draft}");
    assert!(
        draft.contains("21 May 2031"),
        "the day of reply, 15 days on: {draft}"
    );
    assert!(
        !workspace.path("out/drafts/P2--1.eml").exists(),
        "nothing to tell its maker"
    );
}

#[test]
fn hostile_names_stay_names() {
    let workspace = Workspace::new();
    let name = format!(
        "\"Loaf\r\nBcc: all@example.org\r\n\r\n{}\"",
        "é".repeat(1200)
    );
    workspace.with(
        "registers/products.csv",
        format!("product_id,name,claim,maker,maker_email\nP1,{name},gluten-free,{name},\"a@b.example\r\nBcc: c@d.example\"\n"),
    );
    workspace.with("inbox/a.csv", OVER);
    workspace.run(&["run", "--date", "2031-05-06"]);
    let draft = draft(&workspace);
    let (head, _) = draft.split_once("\r\n\r\n").expect("has a body");
    assert!(
        !head
            .lines()
            .any(|line| line.to_lowercase().starts_with("bcc")),
        "{head}"
    );
    assert!(
        head.contains("To: \"Address of the maker goes here"),
        "{head}"
    );
    assert!(
        draft
            .split("\r\n")
            .all(|line| line.len() <= 998 && !line.contains('\n'))
    );
}
