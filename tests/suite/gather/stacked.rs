//! Lines that stand right above the headings, and rows that stand right below: neither is taken for headings.

use super::doubt::{Case, hold};
use super::folder::Folder;
use rust_xlsxwriter::{Format, Workbook};

/// Lines of particulars, as they stand in a letterhead.
const LINES: [&str; 14] = [
    "LOQ,5 ppm,LOD,3 ppm",
    "Gluten analysis\nUnit,ppm",
    "Unit,mg/kg,Method,R5",
    "Client,Test\nUnit,ppm",
    "Limit of quantification,5 mg/kg,",
    "Range,5 - 80 ppm",
    "Kit,K-1,Lot,77",
    "Harrow,\nReport,R1,\nLOQ: 5 mg/kg,",
    "Results in mg/kg",
    "Bestimmungsgrenze,5 mg/kg",
    "Einheit,mg/kg\nMessbereich,5 - 80 mg/kg",
    "Límite de cuantificación,< 5 mg/kg",
    "Analyst,2 persons\nMethod,R5 ELISA",
    "Gluten by ELISA (ppm)",
];

#[test]
fn lines_of_particulars_right_above_the_headings_are_none_of_them() {
    for lines in LINES {
        for (headings, rows) in [
            (
                "Sample,Extr. no.,Run,Gluten [mg/kg]",
                "TKW-101,1,24,34\nTKW-101,2,84,30.3\n",
            ),
            (
                "Sample,Extraction,Gluten (ppm)",
                "TKW-101,1,34\nTKW-101,2,30.3\n",
            ),
            (
                "Sample,Lot,Gluten,Unit",
                "TKW-101,771,34,ppm\nTKW-101,772,30.3,ppm\n",
            ),
            (
                "Sample,DF,Gluten (mg/kg),Remark",
                "TKW-101,1,34,\nTKW-101,1,30.3,\n",
            ),
            (
                "Probe,Extraktion,Gluten (mg/kg)",
                "TKW-101,1,34\nTKW-101,2,30.3\n",
            ),
            ("Sample,Ext 1 (ppm),Ext 2 (ppm)", "TKW-101,34,30.3\n"),
            (
                "Kennwort,Extraction,Gluten (ppm)",
                "TKW-101,1,34\nTKW-101,2,30.3\n",
            ),
        ] {
            for gap in ["", "\n"] {
                let csv = format!("{lines}\n{gap}{headings}\n{rows}");
                let semicolons = csv.replace(',', ";");
                for text in [csv, semicolons] {
                    let read = Folder::new().with("inbox/a.csv", text.as_bytes()).gather();
                    assert_eq!(
                        read.readings(),
                        ["TKW-101 1 34", "TKW-101 2 30.3"],
                        "{text}"
                    );
                    assert_eq!(read.problems(), [""; 0], "{text}");
                }
            }
        }
    }
}

#[test]
fn a_workbook_with_a_line_above_its_headings_and_a_strangers_row_below_is_read() {
    for merged in [false, true] {
        let mut book = Workbook::new();
        let sheet = book.add_worksheet();
        let written = "fits in a sheet";
        if merged {
            let format = Format::new();
            sheet
                .merge_range(0, 0, 0, 2, "Einheit: ppm", &format)
                .expect(written);
        } else {
            sheet.write(0, 0, "Einheit").expect(written);
            sheet.write(0, 1, "ppm").expect(written);
        }
        for (column, heading) in (0..).zip(["Probe", "Extraktion", "Gluten (mg/kg)"]) {
            sheet.write(1, column, heading).expect(written);
        }
        let rows = [
            ("Z-9", 1.0, 20.0),
            ("TKW-101", 1.0, 60.0),
            ("TKW-101", 2.0, 62.0),
        ];
        for (row, (code, number, figure)) in (2..).zip(rows) {
            sheet.write(row, 0, code).expect(written);
            sheet.write(row, 1, number).expect(written);
            sheet.write(row, 2, figure).expect(written);
        }
        let bytes = book.save_to_buffer().expect("is written");
        let read = Folder::new().with("inbox/a.xlsx", &bytes).gather();
        assert_eq!(
            read.readings(),
            ["TKW-101 1 60", "TKW-101 2 62"],
            "{merged}"
        );
        assert_eq!(
            read.problems(),
            ["unknown_package inbox/a.xlsx A3"],
            "{merged}"
        );
    }
}

#[test]
fn a_row_of_a_stranger_right_below_the_headings_is_a_row() {
    for (stranger, problems) in [
        ("Control", &[][..]),
        ("Std 1", &[]),
        ("Kontrollprobe", &[]),
        ("Z-9", &["unknown_package inbox/a.csv A2"]),
        ("A1", &["unknown_package inbox/a.csv A2"]),
        ("E1", &["unknown_package inbox/a.csv A2"]),
        ("TKW 101", &["unknown_package inbox/a.csv A2"]),
        ("TKW-101 to TKW-103", &["unknown_package inbox/a.csv A2"]),
    ] {
        for headings in [
            "Sample,Extraction,Gluten (mg/kg)",
            "Probe,Extraktion,Gluten (mg/kg)",
        ] {
            for figures in ["1,20", "1,2", "2,7"] {
                let csv = format!("{headings}\n{stranger},{figures}\nTKW-101,1,7\nTKW-101,2,9\n");
                let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
                assert_eq!(read.readings(), ["TKW-101 1 7", "TKW-101 2 9"], "{csv}");
                assert_eq!(read.problems(), problems, "{csv}");
            }
        }
    }
}

#[test]
fn headings_over_two_rows_say_what_they_did() {
    let pair: &[&str] = &["TKW-101 1 34", "TKW-101 2 30"];
    let cases: [Case; 7] = [
        (
            "numbers under one heading",
            "Sample,Gluten (ppm),\n,1,2\nTKW-101,34,30\n",
            pair,
            &[],
        ),
        (
            "and a mean",
            "Sample,Gluten (mg/kg),,\ncode,1,2,mean\nTKW-101,34,30,32\n",
            pair,
            &[],
        ),
        (
            "of the same words",
            "Sample,Extraction,Extraction\n,1,2\n,ppm,ppm\nTKW-101,34,30\n",
            pair,
            &[],
        ),
        (
            "units below",
            "Sample,Extraction,Result,LOQ\n,,ppb,ppb\nTKW-101,1,34000,5000\nTKW-101,2,30000,5000\n",
            pair,
            &[],
        ),
        (
            "a group of several kinds",
            ",Gluten (µg/kg),,\nSample,Extraction,Result,OD\nTKW-101,1,34000,1\nTKW-101,2,30000,1\n",
            pair,
            &[],
        ),
        (
            "a title with the unit",
            "Gluten (µg/kg)\nSample,Extraction,Result\nTKW-101,1,34000\nTKW-101,2,30000\n",
            pair,
            &[],
        ),
        (
            "groups of both kinds",
            "Sample,,Gluten (mg/kg),\nLot,Code,Ext 1,Ext 2\nL1,TKW-101,34,30\n",
            pair,
            &[],
        ),
    ];
    hold(&cases);
}

#[test]
fn columns_of_one_name_beside_a_column_of_numbers_are_told() {
    for headings in [
        "Sample,Extraction,Gluten (ppm),Gluten (ppm)",
        "Probe,Bestimmung,Gluten (mg/kg),Gluten (mg/kg)",
    ] {
        let csv = format!("{headings}\nTKW-101,1,6,9\n");
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        assert_eq!(read.readings(), ["TKW-101 1 unreadable"], "{csv}");
        let told = read.problems();
        assert!(
            told.contains(&"ambiguous_table inbox/a.csv D1".to_owned()),
            "{told:?}"
        );
    }
    hold(&[
        (
            "without one they are extractions",
            "Sample,Gluten (ppm),Gluten (ppm)\nTKW-101,6,9\n",
            &["TKW-101 1 6", "TKW-101 2 9"],
            &[],
        ),
        (
            "equal ones are no doubt",
            "Sample,Extraction,Gluten (ppm),Gluten (ppm)\nTKW-101,1,6,6.0\n",
            &["TKW-101 1 6"],
            &[],
        ),
    ]);
}
