//! What stands beside a result and says what it is of: the words on a row without a code, what was added before the test, the
//! decimals that a comma has moved, limits in a heading.

use super::doubt::hold;
use super::folder::Folder;

#[test]
fn a_line_of_a_control_or_of_particulars_is_no_further_extraction() {
    let pair: &[&str] = &["TKW-101 1 6", "TKW-101 2 7"];
    for line in [
        "Control,24",
        "LOQ,5 mg/kg",
        "Limit,20 mg/kg",
        "Recovery,95",
        "Kontrolle,24",
        "Grenzwert,20",
        "Blank 2,0.4",
        "Mean,6.5",
    ] {
        for gap in ["", "\n"] {
            for (headings, first, second) in [
                ("Sample,Lot,Gluten (mg/kg)", "L", "L"),
                ("Sample,Extraction,Gluten (mg/kg)", "1", "2"),
                ("Probe,Extraktion,Gluten (mg/kg)", "E1", "E2"),
            ] {
                let csv =
                    format!("{headings}\nTKW-101,{first},6\nTKW-101,{second},7\n{gap},{line}\n");
                let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
                assert_eq!(read.readings(), pair, "{csv}");
                assert_eq!(read.problems(), [""; 0], "{csv}");
            }
        }
    }
    hold(&[
        (
            "at the left of the results",
            "Lab no,Gluten (ppm),Sample\n77,6,TKW-101\n78,7,TKW-101\nLimit,20 ppm,\n",
            pair,
            &[],
        ),
        (
            "what follows a control without a code is nobody's",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,6\nTKW-101,2,7\n,Control,24\n,,25\n",
            pair,
            &["bad_code inbox/a.csv A5"],
        ),
    ]);
}

#[test]
fn a_line_that_cannot_be_told_from_a_further_extraction_is_told() {
    for (headings, first, second, line) in [
        ("Sample,Extraction,Gluten (mg/kg)", "1", "2", "QS-7,24"),
        ("Sample,Extraction,Gluten (mg/kg)", "1", "2", "Foo,24"),
        (
            "Sample,Lot,Gluten (mg/kg)",
            "L",
            "L",
            "Wiederfindung Weizen,24",
        ),
        (
            "Probe,Charge,Gluten (mg/kg)",
            "L1",
            "L1",
            "Spezifikation max,24",
        ),
    ] {
        let csv = format!("{headings}\nTKW-101,{first},6\nTKW-101,{second},7\n,{line}\n");
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        assert_eq!(
            read.readings(),
            ["TKW-101 1 6", "TKW-101 2 7", "TKW-101 3 unreadable"],
            "{csv}"
        );
        assert_eq!(read.problems(), ["bad_code inbox/a.csv A4"], "{csv}");
        let word = line.split(',').next().unwrap_or_default();
        assert!(read.told(0).contains(word), "{}", read.told(0));
    }
    hold(&[
        (
            "below a gap",
            "Sample,Lot,Gluten (ppm)\nTKW-101,L1,6\n,,\n,PS 9 wheat,24\n",
            &["TKW-101 1 6", "TKW-101 2 unreadable"],
            &["bad_code inbox/a.csv A4"],
        ),
        (
            "a control in the remark",
            "Sample,Extraction,Gluten (ppm),Remark\nTKW-101,1,6,\n,2,24,Positive control\n",
            &["TKW-101 1 6", "TKW-101 2 unreadable"],
            &["bad_code inbox/a.csv A3"],
        ),
    ]);
}

#[test]
fn a_row_without_a_code_goes_on_with_the_package_above() {
    hold(&[
        (
            "a lot that goes on",
            "Sample,Lot,Gluten (ppm)\nTKW-101,Control,6\n,Control,7\n",
            &["TKW-101 1 6", "TKW-101 2 7"],
            &[],
        ),
        (
            "a lot that counts on, below a gap",
            "Sample,Lot,Gluten (ppm)\nTKW-101,L-1,6\n,,\n,L-2,7\n",
            &["TKW-101 1 6", "TKW-101 2 7"],
            &[],
        ),
        (
            "numbers in words",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1 of 2,6\n,2 of 2,7\nTKW-102,first,8\n,second,9\n",
            &["TKW-101 1 6", "TKW-101 2 7", "TKW-102 1 8", "TKW-102 2 9"],
            &[],
        ),
        (
            "an outcome beside",
            "Sample,Gluten (ppm),Evaluation\nTKW-101,6,negative\n,70,positive\n",
            &["TKW-101 1 6", "TKW-101 2 70"],
            &[],
        ),
        (
            "merged over a gap",
            "Probe;Gluten (ppm)\nTKW-101;6\n;7\n;\n;9,5\n",
            &["TKW-101 1 6", "TKW-101 2 7", "TKW-101 3 9.5"],
            &[],
        ),
    ]);
}

#[test]
fn a_figure_that_is_the_mean_of_those_above_it_is_told() {
    hold(&[
        (
            "a mean",
            "Sample,Gluten (ppm)\nTKW-101,22\nTKW-101,24\n,23\n",
            &["TKW-101 1 22", "TKW-101 2 24", "TKW-101 3 23"],
            &["suspicious inbox/a.csv B4"],
        ),
        (
            "another figure",
            "Sample,Gluten (ppm)\nTKW-101,22\nTKW-101,24\n,25\n",
            &["TKW-101 1 22", "TKW-101 2 24", "TKW-101 3 25"],
            &[],
        ),
        (
            "a numbered one",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,22\n,2,24\n,3,23\n",
            &["TKW-101 1 22", "TKW-101 2 24", "TKW-101 3 23"],
            &[],
        ),
    ]);
}

#[test]
fn what_was_added_before_the_test_is_no_result_and_throws_doubt_on_the_one_beside() {
    for headings in [
        "Gluten added (ppm),Result",
        "Spike (mg/kg),Gluten (mg/kg)",
        "Zugesetztes Gluten (mg/kg),Ergebnis",
        "Gluten zugesetzt (mg/kg),Ergebnis",
    ] {
        let csv = format!("Sample,Extraction,{headings}\nTKW-101,1,20,8\nTKW-101,2,20,9\n");
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        assert_eq!(
            read.readings(),
            ["TKW-101 1 unreadable", "TKW-101 2 unreadable"],
            "{csv}"
        );
        let told = read.problems();
        assert!(
            told.iter().any(|one| one.starts_with("ambiguous_table")),
            "{csv}: {told:?}"
        );
    }
    hold(&[(
        "nothing was added",
        "Sample,Gluten added (ppm),Result (ppm)\nTKW-101,0,8\nTKW-101,,9\n",
        &["TKW-101 1 8", "TKW-101 2 9"],
        &[],
    )]);
    let alone = Folder::new()
        .with("inbox/a.csv", b"Sample,Gluten added (ppm)\nTKW-101,20\n")
        .gather();
    assert_eq!(alone.readings(), [""; 0]);
    assert!(
        alone.problems()[0].starts_with("no_result_column"),
        "{:?}",
        alone.problems()
    );
}

#[test]
fn decimals_that_a_comma_has_moved_are_told() {
    let lost = &["TKW-101 1 unreadable", "TKW-101 2 unreadable"];
    for csv in [
        "Sample,Extraction,Gluten (mg/kg),Remark\nTKW-101,1,20,4\nTKW-101,2,19,9\n",
        "Sample,Extraction,Gluten (mg/kg),Remark\nTKW-101,1,20,4\nTKW-101,2,19\n",
        "Probe,Extraktion,Gluten (mg/kg),Bemerkung\nTKW-101,1,20,4\nTKW-101,2,19,9\n",
        "Sample,Ext 1 (ppm),Ext 2 (ppm),Remark\nTKW-101,20,4,19,9\n",
        "Sample,Ext 1 (ppm),Ext 2 (ppm)\nTKW-101,20,4,19\n",
        "Sample,Extraction,Gluten (mg/kg),LOQ,Remark\nTKW-101,1,20,4,5\nTKW-101,2,19,9,5\n",
    ] {
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        assert_eq!(read.readings(), lost, "{csv}");
        assert!(read.problems()[0].starts_with("ambiguous_table"), "{csv}");
    }
    hold(&[
        (
            "a point shows that commas are none",
            "Sample,Extraction,Gluten (mg/kg),Remark\nTKW-101,1,20,4\nTKW-101,2,19.5,9\n",
            &["TKW-101 1 20", "TKW-101 2 19.5"],
            &[],
        ),
        (
            "a semicolon parts the cells",
            "Sample;Extraction;Gluten (mg/kg);Remark\nTKW-101;1;20;4\n",
            &["TKW-101 1 20"],
            &[],
        ),
        (
            "another analyte beside",
            ",Gluten (ppm),,Soy (ppm),\nSample,1,2,1,2\nTKW-101,22,24,2,3\n",
            &["TKW-101 1 22", "TKW-101 2 24"],
            &[],
        ),
        (
            "a remark in words",
            "Sample,Extraction,Gluten (mg/kg),Remark\nTKW-101,1,20,4 slices\n",
            &["TKW-101 1 20"],
            &[],
        ),
    ]);
}

#[test]
fn a_point_before_three_figures_is_settled_by_the_file_or_not_at_all() {
    hold(&[
        (
            "semicolons",
            "Probe;Extraktion;Gluten (µg/kg)\nTKW-101;1;60.500\nTKW-101;2;61.500\n",
            &["TKW-101 1 unreadable", "TKW-101 2 unreadable"],
            &["bad_value inbox/a.csv C2", "bad_value inbox/a.csv C3"],
        ),
        (
            "settled by another",
            "Probe;Extraktion;Gluten (µg/kg)\nTKW-101;1;60.500\nTKW-101;2;61500,5\n",
            &["TKW-101 1 60.5", "TKW-101 2 61.5005"],
            &[],
        ),
        (
            "settled by a limit",
            "LOQ;2.5\n\nSample;Gluten (ppm)\nTKW-101;60.500\n",
            &["TKW-101 1 60.5"],
            &[],
        ),
        (
            "commas part the cells",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,60.500\nTKW-101,2,61.500\n",
            &["TKW-101 1 60.5", "TKW-101 2 61.5"],
            &[],
        ),
    ]);
}

#[test]
fn a_heading_of_gluten_may_name_a_limit_a_correction_and_be_one_name() {
    for heading in [
        "Gluten ppm (LOQ 5)",
        "\"Gluten (ppm, LOQ 5 ppm)\"",
        "\"Gluten (mg/kg), corrected for recovery\"",
        "Gluten_ppm",
        "gluten.mg.kg",
        "Gluten_mg_kg",
        "gluten..mg.kg.",
        "Gluten (mg/kg) wiederfindungskorrigiert",
        "\"Gluten [mg/kg], BG 5\"",
        "Gluten (ppm) (not corrected for recovery)",
    ] {
        let csv = format!("Sample,Extraction,{heading}\nTKW-101,1,34\nTKW-101,2,30.3\n");
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        assert_eq!(read.readings(), ["TKW-101 1 34", "TKW-101 2 30.3"], "{csv}");
        assert_eq!(read.problems(), [""; 0], "{csv}");
    }
    hold(&[
        (
            "the limit is in force",
            "Sample,Gluten ppm (LOQ 10)\nTKW-101,BLQ\nTKW-102,8\n",
            &["TKW-101 1 <10", "TKW-102 1 <10"],
            &[],
        ),
        (
            "in its own unit",
            "Sample,\"Gluten (ppm, LOQ 10000 ppb)\"\nTKW-101,BLQ\n",
            &["TKW-101 1 <10"],
            &[],
        ),
        (
            "in the results' unit",
            "Probe;Gliadin (mg/kg) (BG 2,5)\nTKW-101;<BG\n",
            &["TKW-101 1 <5"],
            &[],
        ),
        (
            "the row's goes first",
            "Sample,Gluten ppm (LOQ 10),LOQ\nTKW-101,BLQ,7\n",
            &["TKW-101 1 <7"],
            &[],
        ),
        (
            "recovery is none",
            "Sample,Gluten (ppm),Gluten recovery (%)\nTKW-101,34,95\n",
            &["TKW-101 1 34"],
            &[],
        ),
    ]);
}

#[test]
fn a_file_of_a_plate_or_of_controls_is_no_error() {
    hold(&[
        (
            "a long table",
            "Well,Content,Absorbance\nA1,Std 1,0.412\nA2,TKW-101,0.398\n",
            &[],
            &["passed_over inbox/a.csv", "plate_unreadable inbox/a.csv C2"],
        ),
        (
            "a grid without a word",
            ",1,2,3,4,5,6\nA,0.41,0.39,1.20,0.4,0.4,0.4\nB,0.05,0.06,1.22,0.4,0.4,0.4\n",
            &[],
            &[
                "passed_over inbox/a.csv",
                "plate_unreadable inbox/a.csv row 1",
            ],
        ),
        (
            "a grid and what is in its wells",
            "Plate 7\n,1,2,3,4,5,6\nA,0.41,0.39,1.20,0.4,0.4,0.4\nB,0.05,0.06,1.22,0.4,0.4,0.4\n\n,1,2,3,4,5,6\nA,Std 1,TKW-101,TKW-102,Blank,Blank,Blank\nB,Std 2,TKW-101,TKW-102,Blank,Blank,Blank\n",
            &[],
            &["passed_over inbox/a.csv", "plate_unreadable inbox/a.csv B3"],
        ),
        (
            "German",
            "Kavität;Inhalt;Extinktion\nA1;Std 1;0,412\nA2;TKW-101;0,398\n",
            &[],
            &["passed_over inbox/a.csv", "plate_unreadable inbox/a.csv C2"],
        ),
        (
            "controls under headings of their own",
            "Control,Value (ppm),Expected\nLow control,5,4\nHigh control,40,44\n",
            &[],
            &["passed_over inbox/a.csv"],
        ),
        (
            "no control",
            "Quux,Value (ppm)\nLow control,5\nTKW 101,40\n",
            &[],
            &["no_table inbox/a.csv row 1"],
        ),
    ]);
}
