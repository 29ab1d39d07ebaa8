//! Photographs and custody: listed, archived in the private part, explained, and drawn on the contact sheet.

use crate::workspace::{Workspace, tree};

const RESULTS: &str = "package,extraction,result (ppm gluten)\nA1,1,<5\nA1,2,<5\nA2,1,<5\nA2,2,<5\nA3,1,<5\nA3,2,<5\n";

/// A whole PNG, taken from a chart that the program draws.
fn png(workspace: &Workspace) -> Vec<u8> {
    let demo = Workspace::demo();
    let _ = workspace;
    demo.run(&["run"]);
    let found = tree(&demo.path("out/newsletter"));
    let (_, bytes) = found
        .into_iter()
        .find(|(path, _)| path.ends_with(".png"))
        .expect("the newsletter has a chart");
    bytes
}

fn with_photographs() -> Workspace {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", RESULTS);
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id,photographs,custody\nA1,P1,photos/A1,\"R. Quill, 3 March 2031, seal 0417\"\nA2,P1,photos/none,\nA3,P1,../outside,\n",
    );
    workspace.with("photos/A1/front.png", png(&workspace));
    workspace.with("photos/A1/broken.jpg", b"\xff\xd8\xff\xe0 and no more");
    workspace.with("photos/A1/back.heic", b"a picture of another kind");
    workspace
}

#[test]
fn photographs_are_archived_in_private_and_explained_and_stand_in_no_public_part() {
    let workspace = with_photographs();
    let explained = workspace.run(&["explain", "P1"]).stdout();
    assert!(explained.contains("seal 0417"), "{explained}");
    assert!(
        explained.contains("Photograph: photos/A1/front.png, SHA-256 "),
        "{explained}"
    );
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let bag = tree(&workspace.path("archive/2031-05-06/data"));
    for name in ["front.png", "broken.jpg", "back.heic"] {
        let path = format!("private/photos/A1/{name}");
        let (_, bytes) = bag
            .iter()
            .find(|(archived, _)| *archived == path)
            .unwrap_or_else(|| panic!("{path} is in the bag"));
        let kept = std::fs::read(workspace.path(&format!("photos/A1/{name}"))).expect("reads");
        assert!(*bytes == kept, "{path}");
    }
    let has = |bytes: &[u8], word: &str| bytes.windows(word.len()).any(|at| at == word.as_bytes());
    for (path, bytes) in bag.iter().filter(|(path, _)| path.starts_with("public/")) {
        for word in ["front.png", "seal 0417", "photos/A1"] {
            assert!(!has(bytes, word), "{path} names {word}");
        }
    }
    workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
}

#[test]
fn a_missing_folder_and_one_that_leads_out_are_warnings_with_what_to_do() {
    let workspace = with_photographs();
    workspace.run(&["run"]).exits(0);
    let report = workspace.text("out/inbox-report.txt");
    assert!(
        report.contains("There is no folder of photographs “photos/none”"),
        "{report}"
    );
    assert!(report.contains("leads out of the programme"), "{report}");
}

#[cfg(unix)]
#[test]
fn a_link_is_no_photograph() {
    let workspace = with_photographs();
    workspace.with("secret.png", "not to be shown");
    let link = workspace.path("photos/A1/link.png");
    std::os::unix::fs::symlink(workspace.path("secret.png"), link).expect("links");
    let explained = workspace.run(&["explain", "P1"]).stdout();
    assert!(!explained.contains("link.png"), "{explained}");
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let bag = tree(&workspace.path("archive/2031-05-06"));
    assert!(!bag.iter().any(|(path, _)| path.ends_with("link.png")));
}

#[test]
fn a_contact_sheet_draws_what_it_can_and_names_the_rest_in_both_papers() {
    for paper in ["a4", "us-letter"] {
        let workspace = with_photographs();
        workspace.with(
            "programme.toml",
            format!("[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\npaper = \"{paper}\"\n"),
        );
        workspace.run(&["contact-sheet", "--only", "P1"]).exits(0);
        let pdf = std::fs::read(workspace.path("out/contact-sheet.pdf")).expect("was written");
        let pdf = lopdf::Document::load_mem(&pdf).expect("a PDF");
        assert!(pdf.catalog().expect("has one").get(b"MarkInfo").is_ok());
        let images = pdf.objects.values().filter(|object| {
            let stream = object.as_stream();
            let kind = stream.and_then(|stream| stream.dict.get(b"Subtype"));
            kind.and_then(|kind| kind.as_name())
                .is_ok_and(|kind| kind == b"Image")
        });
        assert_eq!(images.count(), 1, "{paper}");
    }
    let workspace = with_photographs();
    workspace.run(&["contact-sheet", "--round", "9"]).exits(2);
}

/// A PNG of 50,000 x 50,000 pixels is a few kilobytes: it is named, and never unpacked.
#[test]
fn a_picture_of_too_many_pixels_is_named_and_not_decoded() {
    let workspace = with_photographs();
    let mut bomb = png(&workspace);
    bomb[16..24].copy_from_slice(&[0, 0, 0xc3, 0x50, 0, 0, 0xc3, 0x50]);
    workspace.with("photos/A1/front.png", bomb);
    workspace.run(&["-q", "contact-sheet"]).exits(0);
    let pdf = lopdf::Document::load(workspace.path("out/contact-sheet.pdf")).expect("a PDF");
    let pages: Vec<u32> = pdf.get_pages().into_keys().collect();
    let text = pdf.extract_text(&pages).expect("has text");
    let words: Vec<&str> = text.split_whitespace().collect();
    assert!(words.join(" ").contains("100 million pixels"), "{words:?}");
}
