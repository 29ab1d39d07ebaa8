//! Long and wide tables, wells, means, units: the shapes in which labs lay out results.

use super::folder::Folder;

fn readings(csv: &str) -> (Vec<String>, Vec<String>) {
    let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
    (read.readings(), read.problems())
}

#[test]
fn a_long_table() {
    let (readings, problems) = readings(
        "Report no.: 77\n\nSample ID,Extraction,Gluten (mg/kg)\nTKW-101,1,12.4\nTKW-101,2,< 5.0\ntkw-102 ,1,>80\nTKW-102,2,n/a\n",
    );
    assert_eq!(
        readings,
        [
            "TKW-101 1 12.4",
            "TKW-101 2 <5",
            "TKW-102 1 >80",
            "TKW-102 2 not reported"
        ]
    );
    assert_eq!(problems, [""; 0]);
}

#[test]
fn a_wide_table_with_a_mean() {
    let (readings, problems) = readings(
        "Sample ID,Ext. 1 (ppm),Ext. 2 (ppm),Mean (ppm)\nTKW-101,12.4,13.0,12.7\nTKW-102,12.4,13.0,14.0\n",
    );
    assert_eq!(
        readings,
        [
            "TKW-101 1 12.4",
            "TKW-101 2 13",
            "TKW-102 1 12.4",
            "TKW-102 2 13"
        ]
    );
    assert_eq!(problems, ["mean_differs inbox/a.csv D3"]);
}

#[test]
fn rows_are_numbered_where_no_column_does() {
    let (readings, _) = readings("Sample,Result (ppm)\nTKW-101,6\n,7\nTKW-102,8\nTKW-102,9\n");
    assert_eq!(
        readings,
        ["TKW-101 1 6", "TKW-101 2 7", "TKW-102 1 8", "TKW-102 2 9"]
    );
}

#[test]
fn wells_are_averaged_and_never_taken_for_extractions() {
    let (readings, problems) = readings(
        "Sample,Extraction,Well,Gluten (ppm)\nTKW-101,1,A1,10\nTKW-101,1,A2,12\nTKW-101,2,A3,<5\nTKW-101,2,A4,7\n",
    );
    assert_eq!(readings, ["TKW-101 1 11", "TKW-101 2 3.5..6"]);
    assert_eq!(problems, [""; 0]);
}

#[test]
fn a_lone_replicate_is_taken_for_an_extraction_with_a_note() {
    let (readings, problems) =
        readings("Sample,Replicate,Gluten (ppm)\nTKW-101,1,10\nTKW-101,2,12\n");
    assert_eq!(readings, ["TKW-101 1 10", "TKW-101 2 12"]);
    assert_eq!(problems, ["ambiguous_replicate inbox/a.csv B1"]);
}

#[test]
fn units_are_converted_and_gliadin_is_doubled() {
    let (readings, problems) = readings(
        "Sample,Extraction,Gliadin,Unit\nTKW-101,1,6.2,mg/kg\nTKW-101,2,6200,µg/kg\nTKW-102,1,0.001,%\nTKW-102,2,5,mg/L\n",
    );
    assert_eq!(
        readings,
        [
            "TKW-101 1 12.4",
            "TKW-101 2 12.4",
            "TKW-102 1 20",
            "TKW-102 2 unreadable"
        ]
    );
    assert_eq!(problems, ["bad_unit inbox/a.csv D5"]);
}

#[test]
fn problems_name_their_cells() {
    let (readings, problems) = readings(
        "Sample,Extraction,Gluten (ppm)\nTKW-101,1,abc\nTKW-999,1,7\n03-Jan,1,8\nBlank,1,0.1\nTKW-103,1,4.9\n\nNotes: results apply to the samples as received\n",
    );
    assert_eq!(readings, ["TKW-101 1 unreadable", "TKW-103 1 <5"]);
    assert_eq!(
        problems,
        [
            "bad_value inbox/a.csv C2",
            "unknown_package inbox/a.csv A3",
            "bad_code inbox/a.csv A4"
        ]
    );
}

#[test]
fn the_lloq_in_force_is_the_rows_else_the_files_else_the_programmes() {
    let table = "Sample,Extraction,Gluten (ppm),LOQ (ppm)\nTKW-101,1,8,10\nTKW-101,2,BLQ,\n";
    let titled = format!("LOQ: 6 mg/kg\n\n{table}");
    let folder = Folder::new()
        .settings("[testing]\nlloq_ppm = 7.0\n")
        .with("inbox/a.csv", table.as_bytes())
        .with("inbox/b.csv", titled.replace("101", "102").as_bytes());
    assert_eq!(
        folder.gather().readings(),
        [
            "TKW-101 1 <10",
            "TKW-101 2 <7",
            "TKW-102 1 <10",
            "TKW-102 2 <6"
        ]
    );
}

#[test]
fn a_mean_in_a_column_of_wells_is_no_well() {
    let (readings, problems) = readings(
        "Sample,Extraction,Well,Gluten (ppm)\nTKW-101,1,A1,10\nTKW-101,1,A2,12\nTKW-101,1,Mean,11\nTKW-101,2,B1,14\nTKW-101,2,B2,16\nTKW-101,2,Mean,17\n",
    );
    assert_eq!(readings, ["TKW-101 1 11", "TKW-101 2 15"]);
    assert_eq!(problems, ["mean_differs inbox/a.csv D7"]);
}

#[test]
fn a_heading_without_a_unit_has_that_of_the_headings_beside_it() {
    let (readings, problems) =
        readings("Sample,Ext 1,Ext 2,Mean (ppb)\nTKW-101,12000,13000,12500\n");
    assert_eq!(readings, ["TKW-101 1 12", "TKW-101 2 13"]);
    assert_eq!(problems, [""; 0]);
}

#[test]
fn controls_and_footnotes_are_passed_over() {
    let (readings, problems) = readings(
        "Sample,Gluten (mg/kg)\nTKW-101,12\nTKW-101,13\nQC: low control,9\nNegative control,<5\nStd 3 (20 ppb),20\nMean,13.5\n\nApproved by: Q. Marsh\nEnd of report\n",
    );
    assert_eq!(readings, ["TKW-101 1 12", "TKW-101 2 13"]);
    assert_eq!(problems, [""; 0]);
}

#[test]
fn a_pair_over_a_page_break_is_two_extractions() {
    let read = |text: &str| {
        let read = Folder::new().with("inbox/a.csv", text.as_bytes()).gather();
        read.readings()
    };
    let first = "Sample,Result (ppm)\nTKW-101,6\nTKW-101,7\nTKW-102,<5\n";
    let second = "Sample,Result (ppm)\nTKW-102,<5\nTKW-103,10\nTKW-103,11\n";
    let numbers = |text: &str| -> Vec<String> {
        let all = read(text).into_iter();
        all.filter(|line| line.starts_with("TKW-102")).collect()
    };
    assert_eq!(
        numbers(&format!("{first}\n\n{second}")),
        ["TKW-102 1 <5", "TKW-102 2 <5"]
    );
    // Other headings, and words that speak of a second analysis, leave both as the first extraction for a person to look at.
    for other in [
        format!("{first}\nRepeat analysis\n{second}"),
        format!(
            "{first}\n{}",
            second.replace("Result (ppm)", "Result (mg/kg)")
        ),
    ] {
        assert_eq!(numbers(&other), ["TKW-102 1 <5", "TKW-102 1 <5"], "{other}");
    }
    // Whatever the order of the rows is.
    for same in [
        format!("{first}\n{second}TKW-104,12\n"),
        format!(
            "{first}\n{}",
            second.replace("TKW-102,<5\n", "") + "TKW-102,<5\n"
        ),
    ] {
        assert_eq!(numbers(&same), ["TKW-102 1 <5", "TKW-102 2 <5"], "{same}");
    }
}
