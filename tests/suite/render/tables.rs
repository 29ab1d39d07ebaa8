//! The results table of a sheet that was revised: what was set aside stands under its own number, what came in its place
//! after it, and the key says what a thin mark is.

use crate::workspace::Workspace;
use serde_json::Value;

const HEAD: &str = "Report,Sample,Extraction,Gluten (ppm)\n";
const SET_ASIDE: &str = "file,package_code,extraction,action,by,on,reason\n";

/// A programme whose later report has these rows, with these corrections.
fn revised(later: &str, corrections: &str) -> Workspace {
    let workspace = Workspace::new();
    let first = "1,A1,1,9.5\n1,A1,2,27.0\n1,A2,1,<5\n1,A2,2,<5\n1,A3,1,<5\n1,A3,2,<5\n";
    workspace.with("inbox/march.csv", format!("{HEAD}{first}"));
    // Its name sorts before that of the first one.
    workspace.with("inbox/april.csv", format!("{HEAD}{later}"));
    workspace.with(
        "registers/corrections.csv",
        format!("{SET_ASIDE}{corrections}"),
    );
    workspace
}

fn content(workspace: &Workspace) -> Value {
    let facts = workspace.run(&["facts", "P1"]);
    facts.exits(0);
    let facts: Value = serde_json::from_str(&facts.stdout()).expect("is JSON");
    facts["content"].clone()
}

/// The lines of the first package: label and figures, those that are not used in parentheses, a dot where there is none.
fn lines(content: &Value) -> Vec<String> {
    let rows = content["table"]["packages"][0]["rows"]
        .as_array()
        .expect("a list");
    let line = |row: &Value| {
        let cells = row["cells"].as_array().expect("a list").iter();
        let cells = cells.map(
            |cell| match (cell["figure"].as_str(), cell["used"].as_bool()) {
                (Some(figure), Some(true)) => figure.to_owned(),
                (Some(figure), _) => format!("({figure})"),
                (None, _) => ".".to_owned(),
            },
        );
        let label = row["label"].as_str().map(|label| format!("{label} | "));
        if let Some(told) = row["told"].as_str() {
            return told.replace('\u{a0}', " ");
        }
        format!(
            "{}{}",
            label.unwrap_or_default(),
            cells.collect::<Vec<_>>().join(" ")
        )
    };
    rows.iter().map(line).collect()
}

#[test]
fn repeats_stand_after_what_was_set_aside() {
    let aside = "march.csv,A1,2,exclude,O. Fennimore,2031-05-22,A dilution was entered twice\n";
    let content = content(&revised("2,A1,3,10.1\n2,A1,4,9.9\n", aside));
    assert_eq!(
        lines(&content),
        [
            "9.5 (27.0)",
            "A1: extraction 2 was set aside by O. Fennimore on 22 May 2031. A dilution was entered twice.",
            "A1, further extractions 3, 4 | 10.1 9.9",
            "A1, all 3 that count, together | . .",
        ]
    );
    let key = content["key"].as_str().expect("a text");
    assert!(key.contains("Crossed, grey: set aside."), "{key}");
}

#[test]
fn what_is_reported_again_under_its_number_stands_below_it() {
    let aside = "march.csv,A1,2,exclude,O. Fennimore,2031-05-22,A dilution was entered twice\n";
    let one = content(&revised("2,A1,2,10.1\n", aside));
    assert_eq!(
        lines(&one),
        [
            "9.5 (27.0)",
            "A1: extraction 2 was set aside by O. Fennimore on 22 May 2031. A dilution was entered twice.",
            "A1, reported again: extraction 2 | . 10.1",
            "A1, both that count, together | . .",
        ]
    );
    let both = "march.csv,A1,,exclude,O. Fennimore,2031-05-22,The report was withdrawn\n";
    let both = content(&revised("2,A1,1,10.1\n2,A1,2,9.9\n", both));
    assert_eq!(
        lines(&both),
        [
            "(9.5) (27.0)",
            "A1: extractions 1 and 2 were set aside by O. Fennimore on 22 May 2031. The report was withdrawn.",
            "A1, reported again: extractions 1, 2 | 10.1 9.9",
        ]
    );
}

#[test]
fn a_key_without_crossed_marks_says_nothing_of_them() {
    let plain = content(&revised("2,A1,3,10.1\n2,A1,4,9.9\n", ""));
    assert_eq!(
        lines(&plain),
        [
            "9.5 27.0",
            "A1, further extractions 3, 4 | 10.1 9.9",
            "A1, all 4 that count, together | . .",
        ]
    );
    let key = plain["key"].as_str().expect("a text");
    assert!(!key.contains("set aside"), "{key}");
}

/// Readings by another assay are printed beside, so that their file is named and an excerpt of it carried as well.
#[test]
fn the_file_of_the_other_assay_is_named_too() {
    let workspace = Workspace::new();
    for (file, assay) in [("one", "sandwich ELISA"), ("other", "competitive ELISA")] {
        let rows: String = ["A1", "A2", "A3"]
            .map(|code| format!("{assay},{code},1,6.1\n{assay},{code},2,6.3\n"))
            .concat();
        workspace.with(
            &format!("inbox/{file}.csv"),
            format!("Assay,Sample,Extraction,Gluten (ppm)\n{rows}"),
        );
    }
    let provenance = content(&workspace)["provenance"].clone();
    let provenance = provenance.as_array().expect("a list");
    assert_eq!(provenance.len(), 2, "{provenance:?}");
    let named = provenance[1].as_str().expect("a text");
    assert!(named.contains("File other.csv."), "{named}");
}

/// A report that the lab withdrew is named with the packages that it was about, and none of its figures stands anywhere.
#[test]
fn a_report_that_was_replaced_is_told_of() {
    let workspace = Workspace::new();
    let rows = |figure: &str| format!("{HEAD}1,A1,1,{figure}\n1,A1,2,{figure}\n");
    workspace.with("inbox/first.csv", rows("27.0"));
    workspace.with("inbox/second.csv", rows("9.5"));
    let register = "file,report,supersedes\nsecond.csv,R-2,first.csv\n";
    workspace.with("registers/reports.csv", register);
    let content = content(&workspace);
    let notes = content["notes"].to_string().replace('\u{200b}', "");
    let wanted = "A1: the lab replaced an earlier report. None of its figures is used here.";
    assert!(notes.contains(wanted), "{notes}");
    let ruler = content["rulers"][0].as_str().expect("a text");
    assert!(
        ruler.contains("from a report that replaces another"),
        "{ruler}"
    );
    assert!(!content.to_string().contains("27"), "{content}");
}

/// No page ends in the middle of a package: its rows name it, and stand on one page.
#[test]
fn a_package_of_several_rows_keeps_to_one_page() {
    let workspace = Workspace::new();
    let codes: Vec<String> = (1..=18).map(|number| format!("PK{number:02}")).collect();
    let of_each =
        |row: &dyn Fn(&str) -> String| -> String { codes.iter().map(|code| row(code)).collect() };
    workspace.with(
        "registers/packages.csv",
        format!(
            "package_code,product_id\n{}",
            of_each(&|code| format!("{code},P1\n"))
        ),
    );
    for (file, figures) in [("first", ["6.1", "7.2"]), ("second", ["6.3", "7.0"])] {
        let rows =
            of_each(&|code| format!("1,{code},1,{}\n1,{code},2,{}\n", figures[0], figures[1]));
        workspace.with(&format!("inbox/{file}.csv"), format!("{HEAD}{rows}"));
    }
    let repeats = of_each(&|code| {
        format!(
            "second.csv,{code},,repeat,O. Fennimore,2031-05-22,A second look at the same sample\n"
        )
    });
    workspace.with("registers/corrections.csv", format!("{SET_ASIDE}{repeats}"));
    workspace.run(&["run", "-q"]);
    let pdf = lopdf::Document::load(workspace.path("out/sheets/P1--1.pdf")).expect("a sheet");
    let pages: Vec<String> = pdf
        .get_pages()
        .into_keys()
        .map(|page| pdf.extract_text(&[page]).expect("has text"))
        .map(|text| {
            text.replace('\u{200b}', "")
                .split_whitespace()
                .collect::<Vec<_>>()
                .join(" ")
        })
        .collect();
    for code in &codes {
        let told = format!("{code}: extractions 3 and 4 are a repeat");
        let together = format!("{code}, all 4 that count, together");
        let page_of = |words: &str| pages.iter().position(|page| page.contains(words));
        assert!(page_of(&told).is_some(), "{told} is not in {pages:?}");
        assert_eq!(page_of(&told), page_of(&together), "{code}");
    }
}
