//! One programme with a product in each state of publication: `check`, `status` and `issue` say the same of it, and what is
//! with the lab is no result.

use crate::flow::public::pages;
use crate::workspace::Workspace;

const PRODUCTS: &str = "product_id,name,claim,maker,maker_email\n\
    P1,Harbour Loaf,gluten-free,Saltmarsh Bakehouse,quality@saltmarsh.example\n\
    P2,Lantern Rolls,gluten-free,Lantern Mill,hello@lantern.example\n\
    P3,Quay Crackers,gluten-free,,\n\
    P4,Tern Oats,gluten-free,,\n\
    P5,Wharf Flour,gluten-free,,\n";

/// P1 published, P2 over the limit, P3 ready, P4 reported in part, P5 with the lab.
fn programme() -> Workspace {
    let workspace = Workspace::new();
    workspace.with("registers/products.csv", PRODUCTS);
    let mut packages = "package_code,product_id,sent_on\n".to_owned();
    let mut reported = "Sample,Extraction,Gluten (ppm)\n".to_owned();
    for product in 1..=5 {
        for package in 1..=3 {
            let code = format!("{}{package}", char::from(b'@' + product));
            packages.push_str(&format!("{code},P{product},2031-04-20\n"));
            let figure = match (product, package) {
                (2, 2) => "31.0",
                (4, 3) | (5, _) => continue,
                _ => "<5",
            };
            reported.push_str(&format!("{code},1,{figure}\n{code},2,{figure}\n"));
        }
    }
    workspace.with("registers/packages.csv", packages);
    workspace.with("inbox/a.csv", reported);
    let issue = ["issue", "--only", "P1", "--date", "2031-05-06"];
    workspace.run(&issue).exits(0);
    workspace
}

#[test]
fn check_status_and_issue_say_the_same_of_each_state() {
    let workspace = programme();
    let said = [
        "published. Revision 1 was issued on 6 May 2031 and says the same.",
        "held. The maker has not been told: no notice is on record.",
        "ready. Nothing is to be told the maker first.",
        "waiting for the lab. The lab has not reported 1 package yet: D3.",
        "with the lab. The lab has reported nothing yet.",
    ];
    let spaced = |text: String| text.replace('\u{a0}', " ");
    let told = |arguments: &[&str]| {
        let arguments = [arguments, &["--date", "2031-05-10"]].concat();
        let run = workspace.run(&arguments);
        run.exits(0);
        spaced(run.stdout())
    };
    let check = told(&["check"]);
    let lines: Vec<&str> = check.lines().collect();
    for (number, said) in said.iter().enumerate() {
        let at = lines.iter().position(|line| line.trim() == *said);
        let at = at.unwrap_or_else(|| panic!("{said}: {check}"));
        let id = format!("P{} ", number + 1);
        assert!(lines[at - 1].trim_start().starts_with(&id), "{check}");
    }
    let status = told(&["status"]);
    for said in &said[1..4] {
        assert!(status.contains(said), "{said}: {status}");
    }
    workspace
        .run(&["log", "notice-sent", "P2", "--date", "2031-05-08"])
        .exits(0);
    let until = "held until 2031-05-30. The maker was told on 8 May 2031 and has not answered";
    for command in ["check", "status", "issue"] {
        let said = told(&[command]);
        assert!(said.contains(until), "{command}: {said}");
    }
}

#[test]
fn what_is_with_the_lab_counts_as_no_result() {
    let workspace = programme();
    let run = workspace.run(&["run"]);
    run.exits(0);
    let counts = "5 products: 2 within the limit, 1 over it, 1 without a verdict, 1 with the lab.";
    assert!(run.stdout().contains(counts), "{}", run.stdout());
    let with_lab = "One more product is with the lab and counted nowhere here.";
    let summary = pages(&workspace.path("out/summary.pdf"));
    for said in ["What we found in 4 foods", "1 of 4 products", with_lab] {
        assert!(summary.contains(said), "{said}: {summary}");
    }
    assert!(!summary.contains("Wharf Flour"), "{summary}");
    let digest = workspace.text("out/newsletter/digest.txt");
    let digest = digest.split_whitespace().collect::<Vec<_>>().join(" ");
    let totals = "So far 4 products: 2 below the limit, 1 at or above the limit, 1 without a verdict. Counted are 12 packages in all";
    for said in [totals, with_lab] {
        assert!(digest.contains(said), "{said}: {digest}");
    }
    // What a lab has reported for nobody is still listed, with its state.
    let results = workspace.results();
    let last = results["products"].as_array().expect("a list").last();
    assert_eq!(last.expect("is listed")["publication"]["state"], "with_lab");
}

/// The letter to the lab that the settings know has its address; another lab is not written to under it.
#[test]
fn a_query_is_addressed_to_the_lab_of_the_settings() {
    let workspace = programme();
    let settings = workspace.text("programme.toml");
    let lab = "[lab]\nname = \"Saltgrass Analytical\"\naddress = \"7 Pier Road, Saltmarsh\"\nemail = \"desk@saltgrass.example\"\n";
    workspace.with("programme.toml", format!("{settings}{lab}"));
    workspace.with(
        "inbox/d.csv",
        "Lab,Sample,Extraction,Gluten (ppm)\nSaltgrass  analytical,D3,1,7.5\nSaltgrass  analytical,D3,2,35.0\n",
    );
    workspace.with(
        "inbox/e.csv",
        "Lab,Sample,Extraction,Gluten (ppm)\nHarrow & Vane,E1,1,6.0\nHarrow & Vane,E1,2,37.0\n",
    );
    workspace.run(&["run"]).exits(0);
    let own = pages(&workspace.path("out/queries/saltgrass-analytical.pdf"));
    let lines = "7 Pier Road Saltmarsh desk@saltgrass.example";
    assert!(own.contains(lines) && own.contains("D3"), "{own}");
    let other = pages(&workspace.path("out/queries/harrow-vane.pdf"));
    assert!(
        other.contains("E1") && !other.contains("Pier Road"),
        "{other}"
    );
}

/// A maker who is told again has the whole time again: letter, draft, `status` and the state count from the last notice.
#[test]
fn the_last_notice_counts() {
    let workspace = programme();
    for day in ["2031-05-08", "2031-05-12"] {
        workspace
            .run(&["log", "notice-sent", "P2", "--date", day])
            .exits(0);
    }
    workspace.run(&["run", "--date", "2031-05-20"]).exits(0);
    let letter = pages(&workspace.path("out/notices/P2--1.pdf"));
    for said in ["12 May 2031", "27 May 2031", "3 June 2031"] {
        assert!(letter.contains(said), "{said}: {letter}");
    }
    for first in ["8 May 2031", "23 May 2031", "30 May 2031"] {
        assert!(!letter.contains(first), "{first}: {letter}");
    }
    let draft = workspace.text("out/drafts/P2--1.eml");
    assert!(
        !draft.contains("23 May") && !draft.contains("30 May"),
        "{draft}"
    );
    let state = workspace.run(&["status", "--date", "2031-05-20"]).stdout();
    assert!(state.contains("held until 2031-06-03"), "{state}");
    assert!(
        state.contains("2031-05-27: the maker’s answer is due"),
        "{state}"
    );
    // On a day between the two the first one counts.
    let between = workspace.run(&["status", "--date", "2031-05-10"]).stdout();
    assert!(between.contains("held until 2031-05-30"), "{between}");
    assert!(
        between.contains("2031-05-23: the maker’s answer is due"),
        "{between}"
    );
}
