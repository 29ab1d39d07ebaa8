//! A lab file holds several products: what happens to one of them is nothing to the others.

use crate::flow::public::pages;
use crate::flow::{WITHIN, with_second_product};
use crate::workspace::Workspace;
use serde_json::Value;

/// P1 near the limit, so that its sheet says how sure that is, and P2, in one lab file.
const SHARED: &str =
    "Sample,Extraction,Gluten (ppm)\nA1,1,19.1\nA1,2,18.9\nA2,1,7.1\nA2,2,8.3\nA3,1,<5\nA3,2,<5\n";

fn publication(workspace: &Workspace, product: &str) -> Value {
    let results = workspace.results();
    let products = results["products"].as_array().expect("a list");
    let of = products.iter().find(|one| one["product_id"] == product);
    of.expect("it is listed")["publication"].clone()
}

fn issue(workspace: &Workspace, arguments: &[&str]) -> String {
    let issued = workspace.run(&[&["issue"], arguments].concat());
    issued.exits(0);
    issued.stdout()
}

/// Two products with a shared file, the first of them reported, and published.
fn published() -> Workspace {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    std::fs::remove_file(workspace.path("inbox/b.csv")).expect("removes");
    workspace.with("inbox/a.csv", SHARED);
    issue(&workspace, &["--only", "P1", "--date", "2031-05-06"]);
    workspace
}

#[test]
fn a_further_products_rows_put_no_other_sheet_under_revision() {
    let workspace = published();
    let before = publication(&workspace, "P1");
    assert_eq!(
        (&before["state"], &before["revision"]),
        (&"published".into(), &1.into())
    );
    // The new rows stand above the others, which move down; there are pairs enough to learn a scatter of one's own from.
    let further: String = ["B1", "B2", "B3"]
        .map(|code| format!("{code},1,11.0\n{code},2,15.0\n"))
        .concat();
    let head = "Sample,Extraction,Gluten (ppm)\n";
    workspace.with(
        "inbox/a.csv",
        SHARED.replacen(head, &format!("{head}{further}"), 1),
    );
    assert_eq!(publication(&workspace, "P1"), before);
    let status = workspace.run(&["status", "--date", "2031-05-10"]).stdout();
    assert!(status.contains("P2") && !status.contains("P1"), "{status}");
    workspace.run(&["run", "--date", "2031-05-10"]).exits(0);
    let sheet = pages(&workspace.path("out/sheets/P1--1.pdf"));
    assert!(sheet.contains("revision 1 · 6 May 2031"), "{sheet}");
    assert!(sheet.contains("Rows 8 to 13. SHA-256"), "{sheet}");
    let index = workspace.text("out/web/index.html");
    assert!(!index.contains("under revision"), "{index}");
    let told = issue(&workspace, &["--date", "2031-05-10"]);
    assert!(
        told.contains("TKW-P2-1 revision 1") && !told.contains("TKW-P1-1 revision"),
        "{told}"
    );
    workspace.run(&["verify", "out/sheets/P1--1.pdf"]).exits(0);
}

#[test]
fn a_figure_of_its_own_still_makes_a_revision() {
    let workspace = published();
    workspace.with("inbox/a.csv", SHARED.replace("8.3", "8.4"));
    let now = publication(&workspace, "P1");
    assert_eq!(
        (&now["state"], &now["revision"]),
        (&"ready".into(), &2.into())
    );
}

#[test]
fn certificates_and_photographs_stand_in_the_provenance_of_their_own_sheet() {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", WITHIN);
    workspace.with("inbox/a.pdf", "%PDF-1.7 invented");
    workspace.with("inbox/scans/7.pdf", "%PDF-1.7 of the other");
    workspace.with("inbox/photos/A1 front.jpeg", "invented");
    workspace.with("inbox/photos/shelf.jpeg", "of neither");
    workspace.with(
        "registers/reports.csv",
        "file,certificate\nb.csv,scans/7.pdf\n",
    );
    issue(&workspace, &["--date", "2031-05-06"]);
    let public = "archive/2031-05-06/data/public/sheets";
    let one = pages(&workspace.path(&format!("{public}/P1--1.pdf")));
    let other = pages(&workspace.path(&format!("{public}/P2--1.pdf")));
    assert!(one.contains("Certificate a.pdf. SHA-256"), "{one}");
    assert!(one.contains("Photograph A1 front.jpeg. SHA-256"), "{one}");
    assert!(!one.contains("7.pdf") && !one.contains("shelf"), "{one}");
    assert!(other.contains("Certificate 7.pdf. SHA-256"), "{other}");
    assert!(
        !other.contains("a.pdf") && !other.contains("front"),
        "{other}"
    );
    workspace
        .run(&["verify", &format!("{public}/P1--1.pdf")])
        .exits(0);

    // One that comes later is named from then on, and is no new statement about the product.
    workspace.with("inbox/A2.png", "invented");
    assert_eq!(publication(&workspace, "P1")["state"], "published");
    workspace.run(&["run"]).exits(0);
    let later = pages(&workspace.path("out/sheets/P1--1.pdf"));
    assert!(later.contains("Photograph A2.png. SHA-256"), "{later}");
}
