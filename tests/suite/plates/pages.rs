//! The page of a plate, in each language, and where it goes.

use super::{Long, seen, six, workspace};
use crate::workspace::{Workspace, tree};
use lopdf::Document;

fn measured() -> Workspace {
    let plate = six()
        .wells("Control,QC 18-26,,,", seen(22.0))
        .wells("Sample,K-2291,,1,", seen(9.0));
    workspace(
        &format!("Plate: P-17\n{}", plate.text()),
        "A1,1,12.4\nA1,2,14.9\nA2,1,<5\nA2,2,<5\nA3,1,33.0\nA3,2,>80\n",
    )
}

fn pages(workspace: &Workspace) -> Vec<String> {
    let out = tree(&workspace.path("out"));
    let names = out.into_iter().map(|(name, _)| name.replace('\\', "/"));
    names.filter(|name| name.starts_with("plates/")).collect()
}

#[test]
fn a_plate_has_a_page_in_each_language() {
    for (tag, curve, differs) in [
        ("en", "A logistic curve of four parameters", "14.9"),
        ("de", "Eine logistische Kurve mit vier Parametern", "14.9"),
        ("es", "Una curva logística de cuatro parámetros", "14.9"),
    ] {
        let workspace = measured();
        let settings = workspace.text("programme.toml");
        workspace.with(
            "programme.toml",
            format!("{settings}language = \"{tag}\"\n"),
        );
        workspace.run(&["run"]).exits(0);
        assert_eq!(pages(&workspace), ["plates/plate--P-17.pdf"], "{tag}");
        let pdf = Document::load(workspace.path("out/plates/plate--P-17.pdf")).expect("is one");
        let numbers: Vec<u32> = pdf.get_pages().into_keys().collect();
        let text = pdf.extract_text(&numbers).expect("its pages have text");
        let text = text.replace(['\u{a0}', '\u{ad}', '\u{200b}'], " ");
        let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
        for wanted in [curve, differs, "K-2291"] {
            let is_there = text.contains(wanted);
            // A stranger's name is on no page.
            assert_eq!(is_there, wanted != "K-2291", "{tag} {wanted}: {text}");
        }
    }
}

#[test]
fn the_same_plate_gives_the_same_page() {
    let workspace = measured();
    workspace.run(&["run"]).exits(0);
    let first = tree(&workspace.path("out/plates"));
    workspace.run(&["run", "--force"]).exits(0);
    assert_eq!(first, tree(&workspace.path("out/plates")));
    // And goes where there is no plate any more.
    std::fs::remove_file(workspace.path("inbox/plate.csv")).expect("is there");
    workspace.run(&["run"]).exits(0);
    assert!(pages(&workspace).is_empty());
}

#[test]
fn plates_of_one_name_have_pages_of_their_own() {
    let workspace = Workspace::new();
    let plate = Long::new().sample("A1", 1, 12.4).text();
    workspace.with("inbox/a/plate.csv", format!("Plate: 1\n{plate}"));
    workspace.with("inbox/b/Plate.csv", format!("Plate: 1\n\n{plate}"));
    workspace.run(&["run"]).exits(0);
    let pages = pages(&workspace);
    assert_eq!(pages.len(), 2, "{pages:?}");
}

/// A plate holds samples of several makers: nothing of it is given to anyone.
#[test]
fn nothing_that_goes_to_anyone_speaks_of_a_plate() {
    let workspace = measured();
    let arguments = [
        "issue",
        "--date",
        "2031-05-01",
        "--only",
        "P1",
        "--early",
        "--reason",
        "asked for",
    ];
    workspace.run(&arguments).exits(0);
    let bag = tree(&workspace.path("archive/2031-05-01"));
    let names: Vec<&str> = bag.iter().map(|(name, _)| name.as_str()).collect();
    let plates: Vec<&&str> = names
        .iter()
        .filter(|name| name.contains("plates/"))
        .collect();
    assert_eq!(plates, [&"data/private/plates/plate--P-17.pdf"]);
    let public = bag
        .iter()
        .find(|(name, _)| name == "data/public/data/results.json")
        .expect("is in the bag");
    let public: serde_json::Value = serde_json::from_slice(&public.1).expect("reads");
    assert_eq!(public["plates"], serde_json::json!([]));
    let own: serde_json::Value =
        serde_json::from_str(&workspace.text("out/data/results.json")).unwrap_or_default();
    assert!(
        own.is_null()
            || own["plates"]
                .as_array()
                .is_some_and(|plates| plates.len() == 1)
    );
}
