//! Proofs become issued sheets, amended ones say so, and the archive keeps them all.

use crate::flow::{OVER, WITHIN, with_second_product};
use crate::workspace::{Workspace, tree};
use std::fs;

fn issued(workspace: &Workspace) -> Vec<csv::StringRecord> {
    let text = workspace.text("registers/issued.csv");
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    reader
        .records()
        .map(|record| record.expect("a row"))
        .collect()
}

#[test]
fn issue_amend_issue_again_and_the_archive_tells_the_story() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let first = tree(&workspace.path("archive/2031-05-06"));
    let kept = fs::read(workspace.path("out/sheets/P2--1.pdf")).expect("is there");

    workspace.with("inbox/a.csv", OVER);
    let refused = workspace.run(&["issue", "--date", "2031-06-01"]);
    refused.exits(2);
    assert!(
        refused.stderr().contains("TKW-P1-1 (revision 2)"),
        "{}",
        refused.stderr()
    );
    assert_eq!(issued(&workspace).len(), 2, "nothing was issued");

    let reason = "The lab corrected its report, with \"quotes\", and 1,5 more";
    workspace
        .run(&["issue", "--date", "2031-06-01", "--reason", reason])
        .exits(0);
    let rows = issued(&workspace);
    let last: Vec<&str> = rows.last().expect("has rows").iter().collect();
    assert_eq!(last[..5], ["TKW-P1-1", "P1", "1", "2", "2031-06-01"]);
    assert_eq!(last[6], reason);
    assert!(
        last[7].contains("Package A2, result: now 27.7 ppm; before 7.7 ppm."),
        "{}",
        last[7]
    );
    assert!(
        last[7].contains("Verdict: now over the limit; before within the limit."),
        "{}",
        last[7]
    );
    assert_eq!(rows.len(), 3, "an unchanged sheet is not issued again");
    assert!(kept == fs::read(workspace.path("out/sheets/P2--1.pdf")).expect("is there"));
    assert!(
        first == tree(&workspace.path("archive/2031-05-06")),
        "the first bag is untouched"
    );

    let told = workspace.run(&["compare", "archive/2031-05-06", "archive/2031-06-01"]);
    told.exits(0);
    for said in [
        "Amended sheets",
        "why: The lab corrected",
        "7.7 ppm → 27.7 ppm",
        "Changed verdicts",
    ] {
        assert!(told.stdout().contains(said), "{said}: {}", told.stdout());
    }
    let told = workspace.run(&[
        "compare",
        "archive/2031-05-06",
        "archive/2031-06-01",
        "--format",
        "json",
    ]);
    let told: serde_json::Value = serde_json::from_str(&told.stdout()).expect("is JSON");
    assert_eq!(told["amended"][0]["replaces"], 1);
    assert_eq!(told["verdicts"][0]["new"], "over_limit");
    assert_eq!(told["new"], serde_json::json!([]));
}

#[test]
fn an_amended_sheet_says_what_a_reader_can_see_of_the_change() {
    let workspace = Workspace::new();
    let product = |net: &str, ingredients: &str| {
        let row = format!("P1,Harbour Loaf,gluten-free,\"{ingredients}\",{net}\n");
        workspace.with(
            "registers/products.csv",
            format!("product_id,name,claim,ingredients,net_content\n{row}"),
        );
    };
    let changed = |day: &str| {
        let reason = ["--reason", "Corrected"];
        workspace
            .run(&[&["issue", "--date", day], &reason[..]].concat())
            .exits(0);
        let rows = issued(&workspace);
        rows.last().expect("has rows")[7].to_owned()
    };
    workspace.with("inbox/a.csv", WITHIN);
    product("450 g", "Water, rice flour, salt.");
    assert_eq!(changed("2031-05-06"), "", "a first issue changes nothing");

    product("400 g", "Water, rice flour, salt.");
    assert_eq!(
        changed("2031-05-07"),
        "No figure and no verdict changed. Net content: now 400 g; before 450 g."
    );
    product("400 g", "Water, rice flour, yeast, salt.");
    workspace.with(
        "registers/followups.csv",
        "product_id,round,on,kind,due_on,statement,note\nP1,1,2031-05-08,notice-sent,,,\n",
    );
    assert_eq!(
        changed("2031-05-08"),
        "No figure and no verdict changed. These parts read otherwise: the ingredients on record and the correspondence with the maker."
    );
    workspace.with("inbox/a.csv", OVER);
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id,lot\nA1,P1,L1\nA2,P1,\nA3,P1,\n",
    );
    let last = changed("2031-05-09");
    assert!(
        last.contains("Package A2, result: now 27.7 ppm; before 7.7 ppm.")
            && last.contains(" Package A1, lot: now L1; before none."),
        "{last}"
    );
    let page = workspace.run(&["facts", "P1"]).stdout();
    assert!(
        page.contains("Net content: now 400 g; before 450 g."),
        "{page}"
    );
}

#[test]
fn what_is_issued_comes_back_byte_for_byte() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let out = tree(&workspace.path("out"));
    fs::remove_dir_all(workspace.path("out")).expect("removes");
    workspace.run(&["run", "--date", "2031-05-06"]).exits(0);
    assert!(out == tree(&workspace.path("out")), "the trees differ");
    let again = workspace.run(&["issue", "--date", "2031-05-07"]);
    again.exits(0);
    assert!(
        again.stdout().contains("Nothing to issue"),
        "{}",
        again.stdout()
    );
    assert!(!workspace.path("archive/2031-05-07").exists());
}

#[test]
fn a_bag_is_a_programme_folder_that_runs_again() {
    let workspace = Workspace::new();
    workspace.with("inbox/2031/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    workspace
        .run(&["run", "archive/2031-05-06/data/private", "--out", "again"])
        .exits(0);
    let sheet =
        |folder: &str| fs::read(workspace.path(folder).join("sheets/P1--1.pdf")).expect("is there");
    assert!(sheet("again") == sheet("archive/2031-05-06/data/public"));
    workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
}

#[test]
fn only_what_is_asked_for_is_issued_and_proofs_are_not_archived() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", WITHIN);
    workspace
        .run(&["issue", "--only", "P2", "--date", "2031-05-06"])
        .exits(0);
    assert_eq!(issued(&workspace).len(), 1);
    let sheets = workspace.path("archive/2031-05-06/data/public/sheets");
    assert!(sheets.join("P2--1.pdf").exists());
    assert!(!sheets.join("P1--1.pdf").exists());
    workspace
        .run(&["issue", "--only", "P3", "--date", "2031-05-06"])
        .exits(2);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
    workspace.run(&["verify", "archive/2031-05-06-2"]).exits(0);
}

#[test]
fn verify_names_what_is_not_as_it_was() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    workspace.with("archive/2031-05-06/data/private/inbox/a.csv", OVER);
    workspace.with("archive/2031-05-06/data/note.txt", "added");
    fs::remove_file(workspace.path("archive/2031-05-06/data/public/sheets/P1--1.pdf"))
        .expect("removes");
    let found = workspace.run(&["verify", "archive/2031-05-06"]);
    found.exits(1);
    for said in [
        "changed   data/private/inbox/a.csv",
        "added     data/note.txt",
        "missing   data/public/sheets/P1--1.pdf",
    ] {
        assert!(found.stdout().contains(said), "{said}: {}", found.stdout());
    }
    workspace.run(&["verify", "inbox"]).exits(2);
}

#[test]
fn verify_holds_what_a_sheet_carries_against_its_case() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let sheet = "archive/2031-05-06/data/public/sheets/P1--1.pdf";
    let sound = workspace.run(&["verify", sheet]);
    sound.exits(0);
    let sha256 = &issued(&workspace)[0][5];
    assert!(
        sound.stdout().contains(sha256) && sound.stdout().contains("3 files"),
        "{}",
        sound.stdout()
    );
    let said = sound.stdout();
    assert!(
        said.contains("What its pages show is not compared") && !said.contains("as it was made"),
        "what was not looked at is not called sound: {said}"
    );
    // Another figure in the excerpt, and another word in what the sheet says.
    for (kind, from, to) in [
        ("1-a.csv.excerpt.csv", ",7.1,", ",9.1,"),
        ("TKW-P1-1.json", "Below 20", "Above 20"),
    ] {
        let changed = workspace.path("changed.pdf");
        let mut pdf = lopdf::Document::load(workspace.path(sheet)).expect("a PDF");
        let mut times = 0;
        for object in pdf.objects.values_mut() {
            let Ok(stream) = object.as_stream_mut() else {
                continue;
            };
            let is_file = stream
                .dict
                .get(b"Type")
                .and_then(lopdf::Object::as_name)
                .is_ok_and(|name| name == b"EmbeddedFile");
            let content = stream
                .decompressed_content()
                .unwrap_or_else(|_| stream.content.clone());
            let text = String::from_utf8_lossy(&content).into_owned();
            let is_meant = kind.ends_with(".csv") == text.starts_with("file,");
            if is_file && is_meant && text.contains(from) {
                stream.set_plain_content(text.replacen(from, to, 1).into_bytes());
                times += 1;
            }
        }
        assert!(times > 0, "{kind}");
        pdf.save(&changed).expect("writes");
        let found = workspace.run(&["verify", "changed.pdf"]);
        found.exits(1);
        let said = format!("changed   {kind}");
        assert!(found.stdout().contains(&said), "{}", found.stdout());
    }
    workspace.run(&["verify", "out/summary.pdf"]).exits(2);
}

#[test]
fn a_template_with_a_mistake_issues_nothing() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.with("report-templates/sheet.typ", "#nonsense(");
    let refused = workspace.run(&["issue", "--date", "2031-05-06"]);
    refused.exits(2);
    assert!(
        refused.stderr().contains("sheet.typ"),
        "{}",
        refused.stderr()
    );
    assert!(!workspace.path("registers/issued.csv").exists());
    assert!(!workspace.path("archive/2031-05-06").exists());
}

#[test]
fn a_file_with_a_decomposed_name_is_attached_archived_and_issued() {
    let workspace = Workspace::new();
    workspace.with("inbox/Ma\u{308}rz.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    let archived = tree(&workspace.path("archive/2031-05-06"));
    let (_, bytes) = archived
        .iter()
        .find(|(path, _)| path.ends_with("inbox/M\u{e4}rz.csv"))
        .expect("the lab's file is in the bag, by the name that is shown");
    assert_eq!(bytes, WITHIN.as_bytes());
    workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
}

#[cfg(unix)]
#[test]
fn names_that_are_no_text_or_differ_in_their_accents_alone_are_issued() {
    use std::ffi::OsStr;
    use std::os::unix::ffi::OsStrExt;
    let lines = |code: &str| format!("Sample,Extraction,Gluten (ppm)\n{code},1,<5\n{code},2,<5\n");
    let workspace = Workspace::new();
    workspace.with("inbox/Ma\u{308}rz.csv", lines("A1"));
    workspace.with("inbox/M\u{e4}rz.csv", lines("A2"));
    let latin = workspace
        .path("inbox")
        .join(OsStr::from_bytes(b"Mai \xe4.csv"));
    if std::fs::write(latin, lines("A3")).is_err() {
        // A file system that takes no such name has none to issue.
        workspace.with("inbox/Mai.csv", lines("A3"));
    }
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    workspace.run(&["verify", "archive/2031-05-06"]).exits(0);
    let archived = tree(&workspace.path("archive/2031-05-06/data/private/inbox"));
    let archived: Vec<&[u8]> = archived.iter().map(|(_, bytes)| bytes.as_slice()).collect();
    assert_eq!(archived.len(), 3);
    for code in ["A1", "A2", "A3"] {
        assert!(archived.contains(&lines(code).as_bytes()), "{code}");
    }
    let issue = workspace.run(&["issue", "--date", "2031-05-07"]);
    issue.exits(0);
    assert!(issue.stdout().starts_with("Nothing to issue"));
}

#[test]
fn an_amendment_of_what_no_archive_has_says_that_it_cannot_be_compared() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.run(&["issue", "--date", "2031-05-06"]).exits(0);
    std::fs::rename(workspace.path("archive"), workspace.path("elsewhere")).expect("moves");
    workspace.with("inbox/a.csv", WITHIN.replace("7.1", "7.4"));
    let amended = workspace.run(&["-q", "issue", "--date", "2031-05-07", "--reason", "A slip."]);
    amended.exits(0);
    let said = amended.stderr();
    assert!(
        said.contains("no archive has") && said.contains("TKW-P1-1 revision 1"),
        "{said}"
    );
    let register = workspace.text("registers/issued.csv");
    let row = register.lines().nth(2).expect("a second row");
    assert!(
        row.contains("What revision 1 said is in no archive any more"),
        "{row}"
    );
}
