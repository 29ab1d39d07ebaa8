//! A lab that sends very many readings of a package: all of them are in the data, a sheet lists the first, and no other
//! product waits for it.

use crate::flow::public::pages;
use crate::flow::with_second_product;
use crate::workspace::Workspace;

/// So many readings of each of three packages, and what each cell says.
fn long_file(each: usize, cell: fn(usize) -> String) -> String {
    let mut rows = "package,extraction,result (ppm gluten)\n".to_owned();
    for at in 0..each {
        for package in ["A1", "A2", "A3"] {
            rows += &format!("{package},{},{}\n", at + 1, cell(at));
        }
    }
    rows
}

fn figure(at: usize) -> String {
    format!("{}.5", 6 + at % 7)
}

/// Two products, of which the first has these readings.
fn workspace(each: usize, cell: fn(usize) -> String) -> Workspace {
    let workspace = Workspace::new();
    with_second_product(&workspace);
    workspace.with("inbox/a.csv", long_file(each, cell));
    workspace
}

#[test]
fn a_long_package_holds_up_no_other_product() {
    let workspace = workspace(4_000, figure);
    workspace
        .run(&["-q", "issue", "--date", "2031-05-06"])
        .exits(0);
    for sheet in ["P1--1", "P2--1"] {
        let issued = format!("archive/2031-05-06/data/public/sheets/{sheet}.pdf");
        assert!(workspace.path(&issued).is_file(), "{issued}");
    }
    assert_eq!(workspace.text("registers/issued.csv").lines().count(), 3);
    let rows = workspace.text("out/data/extractions.csv").lines().count();
    assert_eq!(rows, 1 + 3 * 4_000 + 6);
}

#[test]
fn a_sheet_lists_the_first_readings_of_a_package_and_counts_the_others() {
    let workspace = workspace(4_000, figure);
    workspace.run(&["-q", "run", "--only", "P1"]).exits(0);
    let sheet = pages(&workspace.path("out/sheets/P1--1.pdf"));
    for package in ["A1", "A2", "A3"] {
        for first in (3..200).step_by(2) {
            let row = format!("{package}, further extractions {first}, {}", first + 1);
            assert!(sheet.contains(&row), "{row}");
        }
        assert!(!sheet.contains(&format!("{package}, further extractions 201")));
        let rest = format!(
            "{package}: 3800 further extractions are not listed here, from 6.5 to 12.5 ppm. The data file extractions.csv has every one."
        );
        assert!(sheet.contains(&rest), "{rest}");
    }
    assert!(sheet.contains("and 3980 more from 6.5 to 12.5."));
}

/// Of each kind of thing that a sheet says of single extractions.
#[test]
fn what_is_said_of_very_many_readings_stays_short() {
    for (cell, said) in [
        (
            (|_| "seventeen".to_owned()) as fn(usize) -> String,
            "A1: 2980 further extractions have no result that can be used.",
        ),
        (
            |at| if at % 2 == 0 { "<5" } else { "3.1" }.to_owned(),
            "A1: 2800 further extractions are not listed here, from",
        ),
    ] {
        let workspace = workspace(3_000, cell);
        workspace.run(&["-q", "run"]);
        let sheet = pages(&workspace.path("out/sheets/P1--1.pdf"));
        assert!(sheet.contains(said), "{said}");
        assert!(sheet.len() < 60_000, "{} letters", sheet.len());
    }
    let workspace = workspace(3_000, figure);
    let other = long_file(3_000, |at| format!("{}.5", 60 + at % 7));
    workspace.with("inbox/c.csv", other);
    workspace.run(&["-q", "run"]);
    let sheet = pages(&workspace.path("out/sheets/P1--1.pdf"));
    assert!(sheet.contains("and 5980 more"), "two reports that differ");
    assert!(workspace.path("out/sheets/P2--1.pdf").is_file());
}

/// 200,000 rows are the most that one file may hold.
#[cfg(target_os = "linux")]
#[test]
fn a_run_over_the_longest_file_has_its_bounds() {
    let workspace = workspace(66_650, |at| match at % 2 {
        0 => figure(at),
        _ => "seventeen".to_owned(),
    });
    let taken = workspace.measured(&["-q", "run"]);
    assert!(workspace.path("out/sheets/P2--1.pdf").is_file());
    // Without optimisation of ours; the figures measured stand in DEVELOPERS.md.
    assert!(taken.megabytes < 1_700, "{taken:?}");
    assert!(taken.cpu_seconds < 120, "{taken:?}");
}
