//! What stands on the sheets of the demo, read back from their pages.

use crate::workspace::Workspace;
use lopdf::Document;

/// The words of a sheet in their order, with plain spaces.
fn words(demo: &Workspace, stem: &str) -> String {
    let path = demo.path(&format!("out/sheets/{stem}.pdf"));
    let pdf = Document::load(&path).unwrap_or_else(|error| panic!("{stem}: {error}"));
    let pages: Vec<u32> = pdf.get_pages().into_keys().collect();
    let text = pdf.extract_text(&pages).expect("its pages have text");
    let text = text.replace(['\u{200b}', '\u{ad}'], "");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn a_sheet_says_what_its_food_does_to_the_assay() {
    let demo = Workspace::demo();
    let foods = ["TW-001", "TW-006", "TW-009", "TW-017"];
    let only = foods.iter().flat_map(|food| ["--only", food]);
    let arguments: Vec<&str> = ["run", "-q"].into_iter().chain(only).collect();
    demo.run(&arguments);
    let cautions = [
        ("TW-006", "a sandwich assay can miss gluten"),
        ("TW-009", "In oats the test sees only the other grain"),
        ("TW-017", "Polyphenols of cocoa, chestnut, buckwheat"),
    ];
    for food in foods {
        let page = words(&demo, &format!("{food}--1"));
        for (of, caution) in cautions {
            assert_eq!(page.contains(caution), of == food, "{caution}: {page}");
        }
    }
}

#[test]
fn the_sheet_of_a_second_round_names_what_the_first_one_found() {
    let demo = Workspace::demo();
    demo.run(&["run", "-q", "--only", "TW-018"]);
    let (first, second) = (words(&demo, "TW-018--1"), words(&demo, "TW-018--2"));
    let found = "In round 1 (TKW-TW-018-1), 2 of 3 packages tested at or above the limit.";
    // A number may be broken at its hyphens.
    assert!(second.replace("- ", "-").contains(found), "{second}");
    assert!(!first.contains("In round"), "{first}");
}

/// A table is copied out of a page row by row: each package's code, then its figures as the columns have them.
#[test]
fn the_table_of_packages_can_be_copied_with_its_figures_in_their_order() {
    let demo = Workspace::demo();
    demo.run(&["run", "-q", "--only", "TW-009", "--only", "TW-020"]);
    let rows = [
        (
            "TW-009",
            "JF-787 T310808 2032-08-07 2031-10-16, Market Hall, stall 12 9.8 16.9 7.1 5.8 \
             JF-787: extractions 3 and 4 are a repeat, decided by Ilse Marrowby on 19 November 2031. Repeat of a disagreeing pair, \
             asked for on 2031-11-11: new portions of the same ground sample. \
             JF-787, repeat: extractions 3, 4 13.1 12.9 \
             JF-787, all 4 that count, together – – 7.1 7.3 13.2",
        ),
        (
            "TW-020",
            "NH-674 SB1049A 2031-12-15 2031-04-20, Market Hall, stall 12 >80 >80 both >80 – >80",
        ),
        (
            "TW-020",
            "NX-424 SB1042B 2031-12-08 2031-04-26, Pennywhistle Stores, Lower Fen <5 6.6 ≥1.6 2.8 3.3–5.8",
        ),
    ];
    for (food, row) in rows {
        let page = words(&demo, &format!("{food}--1"));
        assert!(page.contains(row), "“{row}” is not in: {page}");
    }
}

/// The standard has no limit: what is printed under it speaks of detection, and of the limit of detection alone.
#[test]
fn where_detection_decides_no_document_speaks_of_a_limit_on_an_amount() {
    let workspace = Workspace::demo();
    let settings = workspace
        .text("programme.toml")
        .replace("regime = \"us\"", "regime = \"au-nz\"");
    workspace.with("programme.toml", settings);
    workspace.run(&["run"]).exits(1);
    let facts = ["TW-001", "TW-002", "TW-021"]
        .map(|product| workspace.run(&["facts", product]).exits(0).stdout());
    let mut texts = facts.to_vec();
    for path in [
        "out/newsletter/digest.txt",
        "out/newsletter/digest.html",
        "out/data/products.csv",
    ] {
        texts.push(workspace.text(path));
    }
    texts.push(workspace.run(&["explain", "TW-002"]).exits(0).stdout());
    for text in texts {
        let plain = text.replace('\u{a0}', " ");
        for wrong in [
            "limit of 3",
            "the limit, 3",
            "Limit 3",
            "above 3 mg",
            "below 3 mg",
            "limit is 3",
        ] {
            let at = plain.find(wrong);
            assert_eq!(
                at,
                None,
                "“{wrong}”: {}",
                &plain[at.unwrap_or(0).saturating_sub(80)..][..200]
            );
        }
    }
}

#[test]
fn a_sheet_that_a_person_edited_is_named_when_its_product_goes() {
    let workspace = Workspace::new();
    let one = workspace.text("registers/products.csv");
    let packages = workspace.text("registers/packages.csv");
    super::with_second_product(&workspace);
    workspace.with("inbox/a.csv", super::WITHIN);
    workspace.run(&["run"]).exits(0);
    workspace.with("out/sheets/P2--1.pdf", "edited");
    workspace.with("registers/products.csv", one);
    workspace.with("registers/packages.csv", packages);
    std::fs::remove_file(workspace.path("inbox/b.csv")).expect("removes");
    let run = workspace.run(&["run"]);
    run.exits(0);
    let named = "sheets/P2--1.pdf had been changed by someone and is made no more";
    assert!(run.stdout().contains(named), "{}", run.stdout());
    assert_eq!(workspace.text("out/sheets/P2--1.pdf"), "edited");
    let again = workspace.run(&["run"]).exits(0).stdout();
    assert!(!again.contains("P2--1"), "it is a person's now: {again}");
}
