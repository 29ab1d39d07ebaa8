//! Registers that contradict themselves or the lab's files: what they bear on has no verdict, or is held, and the true cause is
//! said where it stands.

use crate::workspace::Workspace;
use serde_json::Value;

/// Three packages, within the limit.
fn within() -> Workspace {
    let workspace = Workspace::new();
    workspace.with(
        "inbox/a.csv",
        "Sample,Extraction,Gluten (ppm)\nA1,1,6\nA1,2,7\nA2,1,6\nA2,2,7\n",
    );
    workspace.with(
        "inbox/b.csv",
        "Sample,Extraction,Gluten (ppm)\nA3,1,6\nA3,2,6.6\n",
    );
    workspace
}

const CORRECTIONS: &str = "file,package_code,extraction,action,reason,by,on\n";

fn product(results: &Value) -> (&str, &str, String) {
    let product = &results["products"][0];
    let reasons = product["reasons"].as_array().expect("is a list");
    let reasons: Vec<&str> = reasons.iter().filter_map(Value::as_str).collect();
    (
        product["verdict"].as_str().expect("is a word"),
        product["publication"]["state"].as_str().expect("is a word"),
        reasons.join(" "),
    )
}

/// The register errors of a run: `A2`, as the cell is named.
fn errors(results: &Value) -> Vec<String> {
    let problems = results["problems"].as_array().expect("is a list");
    problems
        .iter()
        .filter(|problem| problem["code"] == "register_error")
        .map(|problem| {
            let (column, row) = (&problem["column"], &problem["row"]);
            format!("{}{}", column.as_str().unwrap_or("?"), row)
        })
        .collect()
}

#[test]
fn a_correction_that_fits_no_reading_leaves_its_product_without_a_verdict() {
    assert_eq!(product(&within().results()).0, "within_limit");
    for (row, cell) in [
        ("a.csv,A3,,exclude", "A2"),
        ("a.csv,A2,33,exclude", "C2"),
        ("a.csv,A2,33,repeat", "C2"),
    ] {
        let workspace = within();
        let rows = format!("{CORRECTIONS}{row},broken seal,M. Quill,2031-03-04\n");
        workspace.with("registers/corrections.csv", rows);
        let results = workspace.results();
        let (verdict, state, reasons) = product(&results);
        assert_eq!((verdict, state), ("no_verdict", "held"), "{row}");
        assert!(reasons.contains("register"), "{reasons}");
        assert_eq!(errors(&results), [cell], "{row}");
        workspace.run(&["check"]).exits(1);
    }
    // A package of which no file speaks.
    let workspace = within();
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id\nA1,P1\nA2,P1\nA3,P1\nA4,P1\n",
    );
    let rows = format!("{CORRECTIONS}a.csv,A4,,exclude,broken seal,M. Quill,2031-03-04\n");
    workspace.with("registers/corrections.csv", rows);
    let results = workspace.results();
    assert_eq!(errors(&results), ["B2"]);
    assert_eq!(product(&results).0, "no_verdict");
}

#[test]
fn an_exclusion_of_all_that_another_row_takes_for_a_repeat_is_told() {
    let workspace = within();
    workspace.with(
        "inbox/c.csv",
        "Sample,Extraction,Gluten (ppm)\nA3,1,7\nA3,2,6.8\n",
    );
    let repeat = "c.csv,A3,,repeat,asked for,M. Quill,2031-03-04\n";
    let one = "c.csv,A3,1,exclude,spilt,M. Quill,2031-03-04\n";
    let all = "c.csv,A3,,exclude,spilt,M. Quill,2031-03-04\n";
    workspace.with(
        "registers/corrections.csv",
        format!("{CORRECTIONS}{repeat}{one}"),
    );
    let results = workspace.results();
    assert_eq!(errors(&results), Vec::<String>::new());
    assert_eq!(product(&results).0, "within_limit");
    workspace.with(
        "registers/corrections.csv",
        format!("{CORRECTIONS}{repeat}{all}"),
    );
    let results = workspace.results();
    assert_eq!(errors(&results), ["?3"]);
    assert_eq!(product(&results).0, "no_verdict");
}

#[test]
fn reports_that_replace_one_another_in_a_circle_all_stay() {
    let workspace = within();
    for rows in [
        "a.csv,R2,b.csv\nb.csv,R1,a.csv\n",
        "a.csv,R1,c.csv\nb.csv,R2,a.csv\nc.csv,R3,b.csv\n",
    ] {
        workspace.with("inbox/c.csv", "Sample,Gluten (ppm)\nZ9,7\n");
        workspace.with(
            "registers/reports.csv",
            format!("file,report,supersedes\n{rows}"),
        );
        let results = workspace.results();
        let (verdict, state, _) = product(&results);
        assert_eq!((verdict, state), ("within_limit", "held"), "{rows}");
        let told = errors(&results);
        assert_eq!(told.len(), rows.lines().count(), "{told:?}");
        assert!(told.iter().all(|cell| cell.starts_with('C')), "{told:?}");
    }
    // A chain is none.
    workspace.with(
        "registers/reports.csv",
        "file,report,supersedes\nb.csv,R2,a.csv\nc.csv,R3,b.csv\n",
    );
    let results = workspace.results();
    assert_eq!(errors(&results), Vec::<String>::new());
}

#[test]
fn a_cell_beyond_the_headings_leaves_open_what_its_row_bears_on() {
    let torn = "product_id,name,claim,oats,processing,ingredients\nP1,Harbour Loaf,gluten-free,none,none,Rice flour, wheat flour, salt\nP2,Pier Loaf,gluten-free,none,none,Rice flour\n";
    let workspace = within();
    workspace.with("registers/products.csv", torn);
    let results = workspace.results();
    assert_eq!(product(&results).0, "no_verdict");
    assert_eq!(errors(&results), ["G2"]);
    let workspace = within();
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id\nA1,P1\nA2,P1,opened\nA3,P1\n",
    );
    let results = workspace.results();
    assert_eq!(product(&results).0, "no_verdict");
    assert_eq!(errors(&results), ["C3"]);
    let workspace = within();
    workspace.with(
        "registers/followups.csv",
        "product_id,on,kind\nP1,2031-03-04,action,told by telephone\n",
    );
    let results = workspace.results();
    let (verdict, state, _) = product(&results);
    assert_eq!((verdict, state), ("within_limit", "held"));
    assert_eq!(errors(&results), ["D2"]);
    let workspace = within();
    workspace.with(
        "registers/reports.csv",
        "file,report\na.csv,R1,sent, late\n",
    );
    let results = workspace.results();
    let (verdict, state, _) = product(&results);
    assert_eq!((verdict, state), ("within_limit", "held"));
    assert_eq!(errors(&results), ["C2"]);
    // A column with a heading of its own is a note, and blanks are nothing.
    let workspace = within();
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id,shelf,,\nA1,P1,top,,\nA2,P1,,,\nA3,P1,, ,\n",
    );
    let results = workspace.results();
    assert_eq!(product(&results).0, "within_limit");
    assert_eq!(errors(&results), Vec::<String>::new());
}

#[test]
fn a_column_that_is_there_twice_is_the_reason_that_is_given() {
    let workspace = within();
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,claim\nP1,Harbour Loaf,gluten-free,gluten-free\n",
    );
    let results = workspace.results();
    let (verdict, _, reasons) = product(&results);
    assert_eq!(verdict, "no_verdict");
    assert!(reasons.contains("two columns “claim”"), "{reasons}");
}

#[test]
fn a_dash_for_ingredients_is_nothing_to_screen() {
    for dash in ["-", "—", "– –"] {
        let workspace = within();
        workspace.with(
            "registers/products.csv",
            format!("product_id,name,claim,ingredients\nP1,Harbour Loaf,gluten-free,{dash}\n"),
        );
        let results = workspace.results();
        let finding = &results["products"][0]["label"]["finding"];
        assert_eq!(finding, "no_ingredients", "{dash}");
    }
}

#[test]
fn a_notice_from_before_there_was_anything_to_tell_holds_the_sheet() {
    let workspace = Workspace::new();
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id,bought_on,sent_on\nA1,P1,2031-03-01,2031-03-02\nA2,P1,2031-03-01,2031-03-02\nA3,P1,2031-03-01,2031-03-02\n",
    );
    workspace.with(
        "inbox/a.csv",
        "Sample,Extraction,Gluten (ppm)\nA1,1,60\nA1,2,62\nA2,1,60\nA2,2,62\nA3,1,60\nA3,2,62\n",
    );
    let state = |on: &str| {
        workspace.with(
            "registers/followups.csv",
            format!("product_id,round,on,kind\nP1,1,{on},notice-sent\nP1,1,2031-04-20,reply\n"),
        );
        let run = workspace.run(&["check", "--format", "json", "--date", "2031-06-01"]);
        let results: Value = serde_json::from_str(&run.stdout()).expect("is data");
        let state = product(&results).1.to_owned();
        (state, errors(&results))
    };
    assert_eq!(state("2031-04-01"), ("ready".to_owned(), vec![]));
    assert_eq!(
        state("2031-02-01"),
        ("held".to_owned(), vec!["C2".to_owned()])
    );
}

#[test]
fn the_screen_has_figures_as_they_are_printed() {
    let workspace = Workspace::new();
    workspace.with(
        "inbox/a.csv",
        "Sample,Extraction,Gluten (ppm)\nA1,1,6\nA1,2,6.6\nA1,3,7\nA2,1,6\nA2,2,7\nA3,1,<5\nA3,2,6\n",
    );
    let shown = workspace.run(&["check"]).exits(0).stdout();
    assert!(shown.contains("6.5, 6.5, 3.0–5.5"), "{shown}");
}
