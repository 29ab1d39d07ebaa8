//! Tables that need a layout, stand upright, or are not there; and what else lies in an inbox.

use super::folder::Folder;
use galleyproof::words::english;

fn read(csv: &str) -> (Vec<String>, Vec<String>) {
    let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
    (read.readings(), read.problems())
}

#[test]
fn unknown_headings_come_back_as_a_layout_that_works_when_pasted() {
    let table = "Fenwick Hollow Laboratory\n\nPot,Go,Quux\nTKW-101,1,12.4\nTKW-101,2,13.5\n";
    let first = Folder::new()
        .with("inbox/2031/fh.csv", table.as_bytes())
        .gather();
    assert_eq!(first.problems(), ["no_table inbox/2031/fh.csv row 3"]);
    let problem = first.problems.sorted()[0].clone();
    let (said, hint) = (english().found(&problem), english().to_do(&problem));
    assert!(said.contains("“Pot” (A), “Go” (B), “Quux” (C)"), "{said}");
    let block = &hint[hint.find("[[layout]]").expect("has a block")..];
    let second = Folder::new()
        .settings(block)
        .with("inbox/2031/fh.csv", table.as_bytes())
        .gather();
    assert_eq!(second.readings(), ["TKW-101 1 12.4", "TKW-101 2 13.5"]);
}

#[test]
fn a_layout_names_columns_by_sheet_and_row() {
    let folder = Folder::new()
        .settings("[[layout]]\nfiles = \"FH-*.csv\"\ncolumns = { sample = \"Pot\", result_1 = \"X\", result_2 = \"Y\" }\n")
        .with("inbox/FH-1.csv", b"Pot,X,Y\nTKW-101,12.4,<5\n")
        .with("inbox/other.csv", b"Sample,Result (ppm)\nTKW-102,7\n");
    assert_eq!(
        folder.gather().readings(),
        ["TKW-101 1 12.4", "TKW-101 2 <5", "TKW-102 1 7"]
    );
}

#[test]
fn an_upright_table() {
    let (readings, problems) = read(
        "Laboratory,Harrow & Vane Analytical\nSample,TKW-101,TKW-102\nExtraction 1 (ppm),12.4,<5\nExtraction 2 (ppm),13.5,oops\n",
    );
    assert_eq!(
        readings,
        [
            "TKW-101 1 12.4",
            "TKW-101 2 13.5",
            "TKW-102 1 <5",
            "TKW-102 2 unreadable"
        ]
    );
    assert_eq!(problems, ["bad_value inbox/a.csv C4"]);
}

#[test]
fn upright_blocks_one_below_another() {
    let (readings, problems) = read(
        "Sample:,TKW-101\nResult 1 (ppm):,12.4\nResult 2 (ppm):,<5\n\nSample:,TKW-102\nResult 1 (ppm):,7\nResult 2 (ppm):,8\n",
    );
    assert_eq!(
        readings,
        [
            "TKW-101 1 12.4",
            "TKW-101 2 <5",
            "TKW-102 1 7",
            "TKW-102 2 8"
        ]
    );
    assert_eq!(problems, [""; 0]);
}

#[test]
fn means_alone_are_no_results() {
    let (readings, problems) = read("Sample,Mean gluten (ppm)\nTKW-101,12.4\n");
    assert_eq!(readings, [""; 0]);
    assert_eq!(problems, ["no_result_column inbox/a.csv row 1"]);
    let (_, problems) = read("Sample,Extraction,Colour\nTKW-101,1,red\n");
    assert_eq!(problems, ["no_result_column inbox/a.csv row 1"]);
}

#[test]
fn a_comma_is_what_the_rest_of_the_file_says() {
    let (readings, problems) = read("Sample;Result (ppm)\nTKW-101;1,234\nTKW-101;12,5\n");
    assert_eq!(readings, ["TKW-101 1 <5", "TKW-101 2 12.5"]);
    assert_eq!(problems, [""; 0]);
    let (readings, _) = read("Sample;Result (ppm)\nTKW-101;1,234\nTKW-101;12.5\n");
    assert_eq!(readings, ["TKW-101 1 1234", "TKW-101 2 12.5"]);
    let (readings, problems) = read("Sample;Result (ppm)\nTKW-101;1,234\nTKW-101;12\n");
    assert_eq!(readings, ["TKW-101 1 unreadable", "TKW-101 2 12"]);
    assert_eq!(problems, ["bad_value inbox/a.csv B2"]);
}

#[test]
fn other_analytes_are_passed_over() {
    // Gliadin counts only where the package has no gluten.
    let (readings, problems) = read(
        "Sample,Parameter,Result,Unit\nTKW-101,Moisture,8.2,%\nTKW-101,Gluten (R5),12.4,mg/kg\nTKW-101,Gluten (R5),13.5,mg/kg\nTKW-101,Gliadin,6.2,mg/kg\nTKW-102,Gliadin,6.2,mg/kg\n",
    );
    assert_eq!(
        readings,
        ["TKW-101 1 12.4", "TKW-101 2 13.5", "TKW-102 1 12.4"]
    );
    assert_eq!(problems, [""; 0]);
}

#[test]
fn what_else_lies_in_an_inbox() {
    let table = b"Sample,Result (ppm)\nTKW-101,7\nTKW-101,8\n";
    let folder = Folder::new()
        .with("inbox/a.csv", table)
        .with("inbox/copy of a.csv", table)
        .with("inbox/~$a.xlsx", b"lock")
        .with("inbox/.DS_Store", b"\0\0")
        .with("inbox/b.csv.part", b"half")
        .with("inbox/letter.pdf", b"%PDF-1.7")
        .with(
            "inbox/\u{30c6}\u{30b9}\u{30c8}/\u{7d50}\u{679c}.csv",
            b"Sample,Result (ppm)\nTKW-102,9\n",
        )
        .with("inbox/empty.xlsx", b"");
    #[cfg(unix)]
    std::os::unix::fs::symlink(folder.path("inbox"), folder.path("inbox/round"))
        .expect("makes a link");
    let read = folder.gather();
    assert_eq!(
        read.readings(),
        ["TKW-101 1 7", "TKW-101 2 8", "TKW-102 1 9"]
    );
    let mut expected = vec![
        "same_file inbox/copy of a.csv",
        "unreadable_file inbox/empty.xlsx",
        "passed_over inbox/letter.pdf",
    ];
    if cfg!(unix) {
        expected.push("passed_over inbox/round");
    }
    assert_eq!(read.problems(), expected);
}

#[test]
fn a_correction_may_name_either_of_two_equal_files() {
    let table = b"Sample,Result (ppm)\nTKW-101,7\n";
    let read = Folder::new()
        .with("inbox/a.csv", table)
        .with("inbox/b.csv", table)
        .with("registers/corrections.csv", b"file,package_code,action,reason,by,on\nb.csv,tkw-101,exclude,spilt,E. Quill,2031-03-07\n")
        .gather();
    assert_eq!(read.gathered.registers.corrections[0].file, "inbox/a.csv");
    assert_eq!(
        read.gathered.registers.corrections[0].package_code,
        "TKW-101"
    );
}

#[test]
fn every_row_says_what_became_of_it() {
    let read = Folder::new()
        .with(
            "inbox/a.csv",
            b"Sample,Extraction,Gluten (ppm)\nTKW-101,1,12.4\nBlank,1,0\nTKW-9,1,5\n",
        )
        .gather();
    let table = &read.gathered.understandings[0].tables[0];
    let outcomes: Vec<String> = table
        .rows
        .iter()
        .map(|row| format!("{} {}: {}", row.row, row.sample, row.outcome))
        .collect();
    assert_eq!(
        outcomes,
        [
            "2 TKW-101: extraction 1: 12.4 ppm",
            "3 Blank: not used: a control, blank or standard",
            "4 TKW-9: not used: the code is not in the register of packages",
        ]
    );
    assert_eq!(table.columns[2].taken_for, "result");
}

#[test]
fn every_column_and_every_row_outside_is_accounted_for() {
    let read = Folder::new()
        .with(
            "inbox/a.csv",
            b"Fenwick Hollow Laboratory,,,,,\n\nSample,Kwz,Gluten (ppm),CV %,Unit,Unit\nTKW-101,7,12.4,3,ppm,ppm,seen\n",
        )
        .gather();
    let understanding = &read.gathered.understandings[0];
    let columns: Vec<String> = understanding.tables[0]
        .columns
        .iter()
        .map(|column| format!("{} {}: {}", column.letter, column.heading, column.taken_for))
        .collect();
    assert_eq!(
        columns,
        [
            "A Sample: package code",
            "B Kwz: nothing, since its heading is not known",
            "C Gluten (ppm): result",
            "D CV %: nothing, since it is no part of a result",
            "E Unit: unit",
            "F Unit: unit, a second time and not used",
            "G : nothing, since it has no heading",
        ]
    );
    assert_eq!(
        understanding.passed_over,
        ["row 1: outside the tables of results, used only where it speaks of the whole report"]
    );
}

#[test]
fn rows_within_a_cell_are_told() {
    let (readings, problems) = read(
        "Sample,Extraction,Gluten (ppm),Remark\nTKW-101,1,12.4,\"pan\nTKW-101,2,13.5,\nTKW-102,1,7,\"\nTKW-102,2,8,\"two\nlines\"\n",
    );
    assert_eq!(problems, ["bad_value inbox/a.csv D2"]);
    assert_eq!(readings, ["TKW-101 1 12.4", "TKW-102 2 8"]);
}
