//! One programme through fourteen months: what is said of each sheet on each day, and what readers see of it.

use crate::flow::public::pages;
use crate::workspace::Workspace;
use serde_json::Value;
use std::fs;

const PRODUCTS: &str = "product_id,name,brand,maker,maker_email,claim,ingredients\n\
    P1,Harbour Loaf,Saltmarsh,Saltmarsh Bakehouse,quality@saltmarsh.example,gluten-free,\"Water, rice flour, salt.\"\n\
    P2,Lantern Rolls,Lantern,Lantern Mill,hello@lantern.example,gluten-free,\"Water, maize starch, salt.\"\n";

const HEAD: &str = "Report,Tested on,Sample,Extraction,Gluten (ppm)\n";

struct Life(Workspace);

impl Life {
    fn packages(&self, sent: &str, further: &str) {
        let rows: String = ["A1,P1", "A2,P1", "A3,P1", "B1,P2", "B2,P2", "B3,P2"]
            .map(|row| format!("{row},1,2031-01-10,{sent}\n"))
            .concat();
        let head = "package_code,product_id,round,bought_on,sent_on\n";
        self.0
            .with("registers/packages.csv", format!("{head}{rows}{further}"));
    }

    fn report(&self, name: &str, day: &str, rows: &[(&str, u32, &str)]) {
        let rows: String = rows
            .iter()
            .map(|(code, number, figure)| format!("{name},{day},{code},{number},{figure}\n"))
            .collect();
        self.0
            .with(&format!("inbox/{name}.csv"), format!("{HEAD}{rows}"));
    }

    fn run(&self, day: &str) {
        let run = self.0.run(&["run", "-q", "--date", day]);
        run.exits(0);
    }

    /// State, first day of publication and revision.
    fn state(&self, day: &str, product: &str, round: &str) -> (String, Option<String>, u64) {
        let check = self.0.run(&["check", "--date", day, "--format", "json"]);
        let results: Value = serde_json::from_str(&check.stdout()).expect("is JSON");
        let products = results["products"].as_array().expect("a list");
        let of = products
            .iter()
            .find(|one| one["product_id"] == product && one["round"] == round)
            .unwrap_or_else(|| panic!("{product} is not listed on {day}"));
        let publication = &of["publication"];
        (
            publication["state"].as_str().expect("a word").to_owned(),
            publication["may_publish_on"].as_str().map(str::to_owned),
            publication["revision"].as_u64().expect("a number"),
        )
    }

    fn is(&self, day: &str, product: &str, state: &str) {
        assert_eq!(self.state(day, product, "1").0, state, "{product} on {day}");
    }

    fn says(&self, arguments: &[&str], words: &[&str]) -> String {
        let run = self.0.run(arguments);
        run.exits(0);
        let said = run.stdout();
        for words in words {
            assert!(said.contains(words), "“{words}” is not in: {said}");
        }
        said
    }

    fn has(&self, path: &str) -> bool {
        self.0.path(path).exists()
    }

    fn page(&self, path: &str, words: &[&str]) {
        let page = match path.ends_with(".pdf") {
            true => pages(&self.0.path(path)),
            false => fs::read_to_string(self.0.path(path)).expect("is text"),
        };
        // A line may break behind a hyphen.
        let page = page.replace('\u{a0}', " ").replace("- ", "-");
        for words in words {
            assert!(page.contains(words), "“{words}” is not in {path}: {page}");
        }
    }
}

#[test]
fn fourteen_months_of_a_programme() {
    let life = Life(Workspace::new());
    life.0.with("registers/products.csv", PRODUCTS);

    // Bought: on the shelf, nothing counts yet.
    life.packages("", "");
    let status = life.says(
        &["status", "--date", "2031-01-12"],
        &["Nothing may be published now", "Packages to send"],
    );
    assert!(!status.contains("P1"), "{status}");

    // With the lab: no sheet, no letter, and nothing that is published speaks of it.
    life.packages("2031-01-20", "");
    life.run("2031-01-21");
    life.is("2031-01-21", "P1", "with_lab");
    assert!(!life.has("out/sheets") && !life.has("out/drafts") && !life.has("out/queries"));
    life.page("out/web/index.html", &["No results sheet is published"]);
    life.says(
        &["issue", "--date", "2031-01-21"],
        &[
            "Nothing to issue",
            "TKW-P1-1 (Harbour Loaf): with the lab. The lab has reported nothing yet.",
        ],
    );

    // Partly reported: a proof, that waits.
    let first = [("A1", 1, "<5"), ("A1", 2, "<5"), ("A2", 1, "12.0")];
    life.report("L1", "2031-02-03", &first);
    life.run("2031-02-05");
    life.is("2031-02-05", "P1", "waiting");
    life.is("2031-02-05", "P2", "with_lab");
    life.page("out/sheets/P1--1.pdf", &["Proof of revision 1"]);
    life.page("out/summary.pdf", &["Proof, not for publication"]);
    life.page(
        "out/newsletter/digest.html",
        &["Proof, not for publication"],
    );

    // A pair that disagrees is asked about; the other product is published meanwhile, alone.
    let whole: Vec<_> = [
        &first[..],
        &[("A2", 2, "27.0"), ("A3", 1, "<5"), ("A3", 2, "<5")],
    ]
    .concat();
    life.report("L1", "2031-02-03", &whole);
    let rolls = ["B1", "B2", "B3"].map(|code| [(code, 1, "<5"), (code, 2, "<5")]);
    life.report("L2", "2031-02-10", &rolls.concat());
    life.run("2031-02-12");
    let query = fs::read_dir(life.0.path("out/queries"))
        .expect("is there")
        .flatten()
        .next();
    let query = query
        .expect("one letter")
        .file_name()
        .to_string_lossy()
        .into_owned();
    life.page(
        &format!("out/queries/{query}"),
        &["A2", "extractions 3 and 4"],
    );
    life.says(
        &["issue", "--only", "P2", "--date", "2031-02-12"],
        &["TKW-P2-1 revision 1"],
    );
    life.is("2031-02-12", "P2", "published");
    life.page(
        "archive/2031-02-12/data/public/web/index.html",
        &["Lantern Rolls", "sheets/P2--1.pdf"],
    );
    let public = life
        .0
        .text("archive/2031-02-12/data/public/data/results.json");
    assert!(
        !public.contains("Harbour") && !public.contains("A2"),
        "{public}"
    );

    // The repeat puts it over the limit: held until the maker was told.
    life.report("L3", "2031-02-18", &[("A2", 1, "27.5"), ("A2", 2, "26.0")]);
    life.0.with(
        "registers/corrections.csv",
        "file,package_code,extraction,action,reason,by,on\n\
         inbox/L3.csv,A2,,repeat,The first pair disagreed,O. Fennimore,2031-02-19\n",
    );
    life.run("2031-02-20");
    assert_eq!(
        life.state("2031-02-20", "P1", "1"),
        ("held".into(), None, 1)
    );
    life.page("out/notices/P1--1.pdf", &["Results for your Harbour Loaf"]);
    assert!(life.has("out/drafts/P1--1.eml"));
    if life.has("out/queries") {
        let letter = pages(&life.0.path(&format!("out/queries/{query}")));
        assert!(!letter.contains("extractions 3 and 4"), "{letter}");
    }
    life.says(
        &["issue", "--date", "2031-02-20"],
        &["Nothing to issue", "The maker has not been told"],
    );
    life.0
        .run(&["issue", "--only", "P1", "--date", "2031-02-20"])
        .exits(2);

    // Told; no reply; the day comes.
    let follows = ["may be published from 15 March 2031", "by 8 March 2031"];
    life.says(
        &[
            "log",
            "notice-sent",
            "P1",
            "--date",
            "2031-02-21",
            "--note",
            "Rang them first",
        ],
        &follows,
    );
    let held = ("held".into(), Some("2031-03-15".into()), 1);
    assert_eq!(life.state("2031-03-01", "P1", "1"), held);
    life.says(
        &["status", "--date", "2031-03-01"],
        &[
            "Nothing may be published now",
            "2031-03-08: the maker’s answer is due",
        ],
    );
    life.says(&["status", "--date", "2031-03-09"], &["Replies overdue"]);
    life.says(
        &["issue", "--date", "2031-03-14"],
        &["held until 2031-03-15", "15\u{a0}March\u{a0}2031"],
    );
    let status = life.says(
        &["status", "--date", "2031-03-15"],
        &["May be published now\n  P1, round 1 (Harbour Loaf)"],
    );
    assert!(!status.contains("Rang them"), "{status}");
    life.says(&["issue", "--date", "2031-03-15"], &["TKW-P1-1 revision 1"]);
    life.is("2031-03-15", "P1", "published");
    let sheet = "archive/2031-03-15/data/public/sheets/P1--1.pdf";
    life.page(sheet, &["At or above 20 ppm", "no statement on record"]);
    let issued = fs::read(life.0.path(sheet)).expect("is there");

    // The lab withdraws its report, a new one stands in its place, and the repeat of the old one is set aside: the accusation
    // is taken back at once.
    let anew = ["A1", "A2", "A3"].map(|code| [(code, 1, "<5"), (code, 2, "<5")]);
    life.report("L4", "2031-04-05", &anew.concat());
    life.0.with(
        "registers/corrections.csv",
        "file,package_code,extraction,action,reason,by,on\n\
         inbox/L3.csv,A2,,exclude,Report withdrawn,O. Fennimore,2031-04-08\n",
    );
    let replaced = "file,report,supersedes\nL4.csv,L4-31,L1.csv\n";
    life.0.with("registers/reports.csv", replaced);
    life.run("2031-04-10");
    assert_eq!(life.state("2031-04-10", "P1", "1").0, "ready");
    life.says(
        &["status", "--date", "2031-04-10"],
        &[
            "May be published now",
            "Letters of correction to send at once",
        ],
    );
    let letter = [
        "Correction of what we published on your Harbour Loaf",
        "at least one package tested at or above the limit",
        "The verdict on the sheet will read “Below 20 ppm”",
        "nothing holds it up",
    ];
    life.page("out/notices/P1--1.pdf", &letter);
    life.page(
        "out/drafts/P1--1.eml",
        &["Correction of our sheet TKW-P1-1"],
    );
    life.page(
        "out/web/index.html",
        &[
            "Lantern Rolls",
            "Harbour Loaf (Saltmarsh), sheet TKW-P1-1: under revision",
        ],
    );
    life.0.run(&["issue", "--date", "2031-04-10"]).exits(2);
    let reason = "P1=The lab withdrew its report: a dilution was entered twice";
    life.says(
        &["issue", "--date", "2031-04-10", "--reason", reason],
        &["TKW-P1-1 revision 2"],
    );
    let public = "archive/2031-04-10/data/public";
    let corrected = [
        "Correction: Harbour Loaf (Saltmarsh), sheet TKW-P1-1.",
        "Since 10 April 2031 the sheet says that no package is known",
        "a dilution was entered twice",
    ];
    life.page(&format!("{public}/web/corrections.html"), &corrected);
    life.page(&format!("{public}/newsletter/digest.txt"), &corrected);
    life.page(
        &format!("{public}/sheets/P1--1.pdf"),
        &["It replaces revision 1 of 15 March 2031", "Below 20 ppm"],
    );
    assert!(
        issued == fs::read(life.0.path(sheet)).expect("is there"),
        "the old sheet stays"
    );
    let corrected = pages(&life.0.path(&format!("{public}/sheets/P1--1.pdf")));
    assert!(
        corrected.contains("report L4-31") && !corrected.contains("L1.csv"),
        "{corrected}"
    );
    assert!(
        life.has("archive/2031-04-10/data/private/inbox/L1.csv"),
        "what was withdrawn is kept"
    );
    let told = life.says(
        &["compare", "archive/2031-03-15", "archive/2031-04-10"],
        &["Changed verdicts"],
    );
    assert!(told.contains("Harbour Loaf"), "{told}");
    let wrong = life
        .0
        .run(&["compare", "archive/2031-04-10", "archive/2031-03-15"]);
    wrong.exits(2);
    assert!(
        wrong.stderr().contains("is the later one"),
        "{}",
        wrong.stderr()
    );

    // A year on both are due again; the second round says what the first one found.
    life.says(
        &["status", "--date", "2032-02-20"],
        &["Products due again", "P2 (Lantern Rolls)"],
    );
    life.packages(
        "2031-01-20",
        "C1,P1,2,2032-02-25,2032-03-01\nC2,P1,2,2032-02-25,2032-03-01\nC3,P1,2,2032-02-25,2032-03-01\n",
    );
    life.says(&["request", "--round", "2"], &["requests/samples-2.pdf"]);
    assert_eq!(life.state("2032-03-02", "P1", "2").0, "with_lab");
    let second = ["C1", "C2", "C3"].map(|code| [(code, 1, "<5"), (code, 2, "6.1")]);
    life.report("L5", "2032-03-08", &second.concat());
    life.says(&["issue", "--date", "2032-03-12"], &["TKW-P1-2 revision 1"]);
    life.page(
        "archive/2032-03-12/data/public/sheets/P1--2.pdf",
        &["In round 1 (TKW-P1-1), all 3 packages tested below the limit"],
    );
    // Each names the other, and the earlier one is no new revision for that.
    life.page(
        "out/sheets/P1--1.pdf",
        &["It was tested again since. In round 2 (TKW-P1-2), all 3 packages tested below the limit"],
    );
    assert_eq!(life.state("2032-03-12", "P1", "1").0, "published");

    // Closed: the entry stands on the sheet, as a further revision.
    life.says(
        &[
            "log",
            "closed",
            "P1",
            "--round",
            "1",
            "--date",
            "2032-03-15",
            "-C",
            ".",
        ],
        &["Entered in registers/followups.csv"],
    );
    assert_eq!(life.state("2032-03-15", "P1", "1").0, "ready");
    // What the second round's sheet says of the first is as it was.
    assert_eq!(life.state("2032-03-15", "P1", "2").0, "published");
    life.says(
        &[
            "issue",
            "--date",
            "2032-03-15",
            "--reason",
            "The matter is closed",
        ],
        &["TKW-P1-1 revision 3"],
    );
    for round in ["1", "2"] {
        assert_eq!(life.state("2032-03-16", "P1", round).0, "published");
    }
    let issued = fs::read_to_string(life.0.path("registers/issued.csv")).expect("is text");
    assert!(!issued.contains("TKW-P1-2,P1,2,2"), "{issued}");
    for bag in fs::read_dir(life.0.path("archive"))
        .expect("lists")
        .flatten()
    {
        let bag = bag.path();
        life.0
            .run(&["verify", bag.to_str().expect("a path")])
            .exits(0);
        for (path, text) in crate::flow::public::texts(&bag.join("data/public")) {
            assert!(!text.contains("rangthem"), "{path} has a private note");
        }
    }
}
