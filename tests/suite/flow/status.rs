//! What needs a person, as the command lists it.

use crate::flow::{OVER, with_second_product};
use crate::workspace::Workspace;

#[test]
fn the_list_is_in_order_for_people_and_programs() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", OVER);
    workspace.with(
        "inbox/c.csv",
        "Sample,Extraction,Gluten (ppm)\nB1,1,9.4\nB1,2,<5\n",
    );
    let status = workspace.run(&["status", "--date", "2031-05-06"]);
    status.exits(1);
    let text = status.stdout();
    let headings = [
        "Conflicts to settle",
        "Notices to send",
        "Held, or waiting for the lab",
    ];
    let places: Vec<_> = headings
        .iter()
        .map(|heading| {
            text.find(heading)
                .unwrap_or_else(|| panic!("{heading}: {text}"))
        })
        .collect();
    assert!(places.is_sorted(), "{text}");
    let status = workspace.run(&["status", "--date", "2031-05-06", "--format", "json"]);
    let status: serde_json::Value = serde_json::from_str(&status.stdout()).expect("is JSON");
    assert_eq!(status["date"], "2031-05-06");
    assert_eq!(status["tasks"][0]["kind"], "conflict");
    assert!(!workspace.path("out").exists(), "nothing is written");
}
