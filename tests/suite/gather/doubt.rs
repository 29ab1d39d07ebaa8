//! Tables that a hurried eye reads wrongly: what cannot be told apart is told, and nothing is given to another package.

use super::folder::Folder;
use galleyproof::words::english;

/// A file, the readings that it gives, and the problems.
pub type Case = (
    &'static str,
    &'static str,
    &'static [&'static str],
    &'static [&'static str],
);

/// Holds what each file gives.
pub fn hold(cases: &[Case]) {
    for (name, csv, readings, problems) in cases {
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        assert_eq!(read.readings(), *readings, "{name}: {:?}", read.problems);
        assert_eq!(read.problems(), *problems, "{name}");
    }
}

#[test]
fn the_result_is_gluten_in_a_unit_that_converts_whatever_stands_beside_it() {
    hold(&[
        (
            "a column without a unit",
            "Sample,Extraction,Value,Gluten in food (mg/kg)\nTKW-101,1,8,24\nTKW-101,2,8.6,25\n",
            &["TKW-101 1 24", "TKW-101 2 25"],
            &[],
        ),
        (
            "a unit that does not convert",
            "Sample,Extraction,Gluten (ng/mL),Gluten (ppm)\nTKW-101,1,8,24\n",
            &["TKW-101 1 24"],
            &[],
        ),
        (
            "German",
            "Probe;Extraktion;Messwert;Gluten im Lebensmittel (mg/kg)\nTKW-101;1;8;24\n",
            &["TKW-101 1 24"],
            &[],
        ),
        (
            "Spanish",
            "Muestra;Extracción;Lectura;Gluten en el producto tal cual (mg/kg)\nTKW-101;1;8;24\n",
            &["TKW-101 1 24"],
            &[],
        ),
        (
            "French",
            "Échantillon;Extraction;Valeur;Gluten dans l'aliment (mg/kg)\nTKW-101;1;8;24\n",
            &["TKW-101 1 24"],
            &[],
        ),
        (
            "Italian",
            "Campione;Estrazione;Valore;Glutine nell'alimento (mg/kg)\nTKW-101;1;8;24\n",
            &["TKW-101 1 24"],
            &[],
        ),
        (
            "gliadin gives way to gluten, rounding apart",
            "Sample,Gliadin (ppm),Gluten (ppm)\nTKW-101,12.3,25\n",
            &["TKW-101 1 25"],
            &[],
        ),
        (
            "gliadin gives way to gluten",
            "Sample,Gliadin (ppm),Gluten (ppm)\nTKW-101,12,24\n",
            &["TKW-101 1 24"],
            &[],
        ),
        (
            "a limit is none",
            "Sample,Gluten (ppm),Gluten limit (ppm),LOD gluten (ppm)\nTKW-101,12,20,3\n",
            &["TKW-101 1 12"],
            &[],
        ),
    ]);
}

#[test]
fn two_columns_that_could_be_the_result_and_differ_are_told_and_none_is_used() {
    let lost = &["TKW-101 1 unreadable", "TKW-101 2 unreadable"];
    for headings in [
        "Gluten in extract (ppm),Gluten in food (ppm)",
        "Gluten raw (mg/kg),Gluten corrected (mg/kg)",
        "Gluten (ppm),Result (ppm)",
        "Result,Value",
        "Gluten R5 (mg/kg),Gluten G12 (mg/kg)",
    ] {
        let csv = format!("Sample,Extraction,{headings}\nTKW-101,1,12,22\nTKW-101,2,13,23\n");
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        assert_eq!(read.readings(), lost, "{headings}");
        let told = read.problems.sorted();
        let found = told.iter().find(|one| one.code.word() == "ambiguous_table");
        let found = found.unwrap_or_else(|| panic!("{headings}: {told:?}"));
        for heading in headings.split(',') {
            let said = english().found(found);
            assert!(said.contains(heading), "{said}");
        }
        let hint = english().to_do(found);
        assert!(hint.contains("[[layout]]"), "{hint}");
        // The block decides.
        let block = &hint[hint.find("[[layout]]").expect("is there")..];
        let read = Folder::new()
            .settings(block)
            .with("inbox/a.csv", csv.as_bytes())
            .gather();
        assert_eq!(read.readings(), ["TKW-101 1 22", "TKW-101 2 23"], "{block}");
    }
    hold(&[
        (
            "equal columns are no doubt",
            "Sample,Result (ppm),Value (ppm)\nTKW-101,12,12.0\n",
            &["TKW-101 1 12"],
            &[],
        ),
        (
            "one that is blank is none",
            "Sample,Result (ppm),Value (ppm)\nTKW-101,,12\n",
            &["TKW-101 1 12"],
            &[],
        ),
        (
            "samples that differ",
            "Sample,Gluten (ppm),Sample\nTKW-101,12,TKW-102\n",
            &["TKW-101 1 unreadable"],
            &["ambiguous_table inbox/a.csv C1"],
        ),
    ]);
}

#[test]
fn tables_beside_and_below_one_another_keep_their_own_results() {
    hold(&[
        (
            "beside",
            "Sample,Gluten (ppm),,Sample,Gluten (ppm)\nTKW-101,6,,TKW-103,6.4\nTKW-102,7,,TKW-104,7.2\n",
            &[
                "TKW-101 1 6",
                "TKW-102 1 7",
                "TKW-103 1 6.4",
                "TKW-104 1 7.2",
            ],
            &[],
        ),
        (
            "beside, no gap",
            "Sample,Extraction,Gluten (ppm),Sample,Extraction,Gluten mg/kg\nTKW-101,1,6,TKW-102,1,30\nTKW-101,2,6.1,TKW-102,2,31\n",
            &[
                "TKW-101 1 6",
                "TKW-101 2 6.1",
                "TKW-102 1 30",
                "TKW-102 2 31",
            ],
            &[],
        ),
        (
            "three beside",
            "Probe;Gluten (mg/kg);Probe;Gluten (mg/kg);Probe;Gluten (mg/kg)\nTKW-101;6;TKW-102;7;TKW-103;8\n",
            &["TKW-101 1 6", "TKW-102 1 7", "TKW-103 1 8"],
            &[],
        ),
        (
            "the second with an unknown heading",
            "Sample,Gluten (ppm),,Kennwort,Gluten (ppm)\nTKW-101,6,,TKW-103,30\n",
            &["TKW-101 1 6", "TKW-103 1 30"],
            &[],
        ),
        (
            "numbers of the lab before each",
            "Lab no,Sample,Gluten (ppm),Lab no,Sample,Gluten (ppm)\nL1,TKW-101,6,L2,TKW-102,30\n",
            &["TKW-101 1 6", "TKW-102 1 30"],
            &[],
        ),
        (
            "one longer than the other",
            "Sample,Gluten (ppm),,Sample,Gluten (ppm)\nTKW-101,6,,TKW-103,6.4\n,,,TKW-104,30\n",
            &["TKW-101 1 6", "TKW-103 1 6.4", "TKW-104 1 30"],
            &[],
        ),
        (
            "starting lower",
            "Sample,Gluten (ppm),,,\nTKW-101,6,,,\nTKW-102,7,,Sample,Gluten (ppm)\nTKW-104,8,,TKW-103,30\n",
            &["TKW-101 1 6", "TKW-102 1 7", "TKW-103 1 30", "TKW-104 1 8"],
            &[],
        ),
        (
            "absorbances below",
            "Sample,Gluten (ppm)\nTKW-101,24\nTKW-101,19\n\nOptical densities\nStandard,OD\nStd 1,0.25\nTKW-101,0.51\n",
            &["TKW-101 1 24", "TKW-101 2 19"],
            &[],
        ),
        (
            "a curve below",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,7\n\nCurve\nCalibrator,ng/mL,OD\nC0,0,0.05\n",
            &["TKW-101 1 7"],
            &[],
        ),
        (
            "weights below",
            "Sample,Gluten (ppm)\nTKW-101,7\n\nSample,Weight (g)\nTKW-101,0.25\n",
            &["TKW-101 1 7"],
            &[],
        ),
        (
            "unknown headings below",
            "Sample,Gluten (ppm)\nTKW-101,7\n\nEichprobe,Ausschlag\nTKW-102,0.25\n",
            &["TKW-101 1 7", "TKW-102 1 unreadable"],
            &["ambiguous_table inbox/a.csv row 4"],
        ),
    ]);
}

#[test]
fn rows_are_read_whatever_stands_above_them() {
    hold(&[
        (
            "a stranger's row after a gap",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,7\n\nZZ-9,1,see note\nTKW-102,1,40\n",
            &["TKW-101 1 7", "TKW-102 1 40"],
            &[],
        ),
        (
            "a group's heading",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,7\n\nSecond batch,,received 9 May\nTKW-102,1,40\n",
            &["TKW-101 1 7", "TKW-102 1 40"],
            &[],
        ),
        (
            "a group's heading alone",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,7\nBatch two\nTKW-102,1,40\n",
            &["TKW-101 1 7", "TKW-102 1 40"],
            &[],
        ),
        (
            "a page's footer",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,7\nPage 1 of 2,,\n\nSample,Extraction,Gluten (ppm)\nTKW-101,2,40\n",
            &["TKW-101 1 7", "TKW-101 2 40"],
            &[],
        ),
        (
            "a result below a group's heading without a code",
            "Sample,Gluten (ppm)\nBatch two,\n,40\nTKW-101,7\n",
            &["TKW-101 1 7"],
            &["bad_code inbox/a.csv A3"],
        ),
        (
            "a heading that is unknown over registered codes",
            "Kennwort,Extraction,Gluten (ppm)\nTKW-101,1,7\n",
            &["TKW-101 1 7"],
            &[],
        ),
        (
            "no heading over registered codes",
            ",Extraction,Gluten (ppm)\nTKW-101,1,7\n",
            &["TKW-101 1 7"],
            &[],
        ),
        (
            "a name of the food in the column called sample",
            "Sample,Kennwort,Gluten (ppm)\nOat bar,TKW-101,7\n",
            &["TKW-101 1 7"],
            &[],
        ),
    ]);
}

#[test]
fn a_second_row_of_headings_says_what_stands_under_a_spread_one() {
    hold(&[
        (
            "a mean under it",
            "Sample,Gluten (mg/kg),,,Analyst\n,Ext. A,Ext. B,Average,initials\nTKW-101,12,20,16,MQ\n",
            &["TKW-101 1 12", "TKW-101 2 20"],
            &[],
        ),
        (
            "German",
            "Probe;Gluten (mg/kg);;\n;Extrakt 1;Extrakt 2;Mittelwert\nTKW-101;12;20;16\n",
            &["TKW-101 1 12", "TKW-101 2 20"],
            &[],
        ),
        (
            "titles above are none",
            "Report no.,HV-77\nSample,Gluten mg/kg 1,Gluten mg/kg 2\nTKW-101,12,20\n",
            &["TKW-101 1 12", "TKW-101 2 20"],
            &[],
        ),
    ]);
}

#[test]
fn figures_below_zero_limits_without_a_unit_and_uncertainties() {
    hold(&[
        (
            "a little below zero",
            "Sample,Gluten (ppm)\nTKW-101,-0.7\n",
            &["TKW-101 1 <5"],
            &["below_zero inbox/a.csv B2"],
        ),
        (
            "further than the limit",
            "Sample,Gluten (ppm)\nTKW-101,-7\n",
            &["TKW-101 1 unreadable"],
            &["bad_value inbox/a.csv B2"],
        ),
        (
            "a well",
            "Sample,Extraction,Well,Gluten (ppm)\nTKW-101,1,1,\u{2212}0.4\nTKW-101,1,2,1.1\n",
            &["TKW-101 1 <5"],
            &["below_zero inbox/a.csv D2"],
        ),
        (
            "a limit in g/kg",
            "Sample,Gluten (g/kg),ULOQ\nTKW-101,ALQ,0.08\n",
            &["TKW-101 1 >80"],
            &[],
        ),
        (
            "a limit in gliadin",
            "ULOQ,40\n\nSample,Extraction,Gliadin (mg/kg)\nTKW-101,1,above range\n",
            &["TKW-101 1 >80"],
            &[],
        ),
        (
            "a limit in ppb",
            "Sample,Gluten (µg/kg),LOQ\nTKW-101,BLQ,6000\n",
            &["TKW-101 1 <6"],
            &[],
        ),
        (
            "uncertainties",
            "Sample,Gluten (ppm)\nTKW-101,12.4 ± 3.7\nTKW-101,12.4 (U 3.7)\nTKW-102,+12.4\nTKW-102,12.\n",
            &[
                "TKW-101 1 12.4",
                "TKW-101 2 12.4",
                "TKW-102 1 12.4",
                "TKW-102 2 12",
            ],
            &[],
        ),
        (
            "not detected",
            "Sample,Gluten (ppm)\nTKW-101,ND (LOD 3)\nTKW-102,n.d.\n",
            &["TKW-101 1 <5", "TKW-102 1 <5"],
            &[],
        ),
    ]);
    let read = Folder::new()
        .settings("[rule]\nregime = \"au-nz\"\n")
        .with(
            "inbox/a.csv",
            b"Sample,Gluten (ppm)\nTKW-101,ND\nTKW-102,ND (LOD 2)\nTKW-103,<5\n",
        )
        .gather();
    assert_eq!(
        read.readings(),
        ["TKW-101 1 <3", "TKW-102 1 <2", "TKW-103 1 <5"]
    );
}

#[test]
fn a_mean_is_held_against_all_readings_and_a_median_against_none() {
    hold(&[
        (
            "a mean that is one reading",
            "Sample,Ext 1 (ppm),Ext 2 (ppm),Mean (ppm)\nTKW-101,12,19,12.0\n",
            &["TKW-101 1 12", "TKW-101 2 19"],
            &["mean_differs inbox/a.csv D2"],
        ),
        (
            "a median",
            "Sample,Ext 1 (ppm),Ext 2 (ppm),Ext 3 (ppm),Median (ppm)\nTKW-101,6,8,12.4,7\n",
            &["TKW-101 1 6", "TKW-101 2 8", "TKW-101 3 12.4"],
            &[],
        ),
        (
            "a median of gluten",
            "Sample,Ext 1 (ppm),Ext 2 (ppm),Median gluten (ppm)\nTKW-101,6,8,9\n",
            &["TKW-101 1 6", "TKW-101 2 8"],
            &[],
        ),
    ]);
}

/// A file, the report number, the days of the test, the day of issue, the uncertainty and the remark of its first reading.
#[test]
fn the_report_says_what_it_is_in_one_cell_beside_or_below() {
    let day = |text: Option<chrono::NaiveDate>| text.map_or("-".to_owned(), |day| day.to_string());
    let table = "Sample,Gluten (ppm)\nTKW-101,12.4*\n";
    for (name, above, below, expected) in [
        (
            "one cell",
            "Report no.: HV-77\nDate of analysis: 21.-22.09.2031\nDate of issue: 30.09.2031\n\n",
            "",
            "HV-77 2031-09-21 2031-09-22 2031-09-30 - -",
        ),
        (
            "beside",
            "Report no.,HV-77\nTested on,2031-09-22\nReceived on,2031-09-20\n\n",
            "",
            "HV-77 - 2031-09-22 - - -",
        ),
        (
            "below",
            "Report No.:,Date of issue:\nHV-77,2031-09-30\n\n",
            "",
            "HV-77 - - 2031-09-30 - -",
        ),
        (
            "German",
            "Prüfbericht Nr.: HV-77\nPrüfdatum: 21. bis 22.09.2031\nAusgestellt am: 30.09.2031\n\n",
            "",
            "HV-77 2031-09-21 2031-09-22 2031-09-30 - -",
        ),
        (
            "a letter's date is no test day",
            "Date: 2031-09-30\n\n",
            "",
            "- - - - - -",
        ),
        (
            "a printing date is none",
            "Printed on: 2031-09-30\n\n",
            "",
            "- - - - - -",
        ),
        (
            "uncertainty and footnote",
            "",
            "\nMeasurement uncertainty: 30 % (k = 2)\n* re-homogenised before the second extraction\n",
            "- - - - 30 % (k = 2) re-homogenised before the second extraction",
        ),
    ] {
        let csv = format!("{above}{table}{below}");
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        let one = &read.gathered.extractions[0];
        let shown = format!(
            "{} {} {} {} {} {}",
            one.report.as_deref().unwrap_or("-"),
            day(one.tested_from),
            day(one.tested_on),
            day(one.record.issued_on),
            one.uncertainty.as_deref().unwrap_or("-"),
            one.remark.as_deref().unwrap_or("-"),
        );
        assert_eq!(shown, expected, "{name}");
    }
}

#[test]
fn the_register_of_reports_goes_first_and_a_replaced_file_is_quiet() {
    let reports = "file,report,lloq_ppm,tested_from,tested_to,accredited,supersedes\n\
        b.csv,HV-78,10,2031-09-21,2031-09-22,yes,a.csv\n";
    let read = Folder::new()
        .with("registers/reports.csv", reports.as_bytes())
        .with(
            "inbox/a.csv",
            b"Sample,Gluten (ppm)\nTKW-101,nonsense\nTKW-999,12\n",
        )
        .with(
            "inbox/b.csv",
            b"Report no.: HV-77\nLOQ: 4 ppm\nSample,Gliadin (ppm)\nTKW-101,4.5\n",
        )
        .gather();
    assert_eq!(read.readings(), ["TKW-101 1 <10"]);
    assert_eq!(read.problems(), [""; 0]);
    let one = &read.gathered.extractions[0];
    assert_eq!(one.report.as_deref(), Some("HV-78"));
    assert_eq!(one.record.accredited, Some(true));
    assert_eq!(
        one.tested_from.map(|day| day.to_string()).as_deref(),
        Some("2031-09-21")
    );
}

#[test]
fn cells_of_a_layout_say_what_the_file_says_once() {
    let read = Folder::new()
        .settings("[[layout]]\nfiles = \"a.csv\"\ncells = { report = \"B1\", lloq = \"B2\" }\n")
        .with(
            "inbox/a.csv",
            b"Quux,HV-79\nQuuux,6\n\nSample,Gluten (ppm)\nTKW-101,BLQ\n",
        )
        .gather();
    assert_eq!(read.readings(), ["TKW-101 1 <6"]);
    assert_eq!(
        read.gathered.extractions[0].report.as_deref(),
        Some("HV-79")
    );
}

#[test]
fn gluten_that_is_not_twice_the_gliadin_beside_it_is_told_and_none_is_used() {
    hold(&[
        (
            "another factor",
            "Sample,Extraction,Gliadin (ppm),Gluten (ppm)\nTKW-101,1,15,15\nTKW-101,2,15,30\n",
            &["TKW-101 1 unreadable", "TKW-101 2 unreadable"],
            &["ambiguous_table inbox/a.csv D1"],
        ),
        (
            "side by side, of different extractions",
            "Sample,Gluten ext. 1 (ppm),Gliadin ext. 1 (ppm),Gluten ext. 2 (ppm),Gliadin ext. 2 (ppm)\nTKW-101,30,15,24,12\n",
            &["TKW-101 1 30", "TKW-101 2 24"],
            &[],
        ),
    ]);
}

#[test]
fn figures_without_a_heading_right_behind_the_result_are_told() {
    hold(&[
        (
            "long",
            "Sample,Gluten (ppm),\nTKW-101,12,34\nTKW-101,13,33\n",
            &["TKW-101 1 unreadable", "TKW-101 2 unreadable"],
            &["ambiguous_table inbox/a.csv C1"],
        ),
        (
            "behind numbered extractions",
            "Sample,Extraction 1 (ppm),Extraction 2 (ppm),\nTKW-101,12,14,13\n",
            &["TKW-101 1 12", "TKW-101 2 14"],
            &[],
        ),
        (
            "a mark is no figure",
            "Sample,Gluten (ppm),\nTKW-101,12,*\nTKW-101,13,ok\n",
            &["TKW-101 1 12", "TKW-101 2 13"],
            &[],
        ),
    ]);
}

#[test]
fn absorbances_or_controls_alone_are_no_error() {
    hold(&[
        (
            "absorbances",
            "Well,Sample,OD 450 nm\nA1,TKW-101,0.412\nA2,TKW-101,0.398\n",
            &[],
            &[
                "passed_over inbox/a.csv",
                "plate_unreadable inbox/a.csv row 1",
            ],
        ),
        (
            "absorbances of a plate",
            "Plate 1,Absorbance\nA1,0.412\nA2,0.398\n",
            &[],
            &["passed_over inbox/a.csv"],
        ),
        (
            "absorbances as a plate stands",
            "Absorbance 450 nm\n,1,2,3\nA,0.41,0.39,1.20\nB,0.05,0.06,1.22\n",
            &[],
            &[
                "passed_over inbox/a.csv",
                "plate_unreadable inbox/a.csv row 2",
            ],
        ),
        (
            "controls",
            "Sample,Gluten (ppm)\nNegative control,<5\nPositive control,41\nBlank,<5\n",
            &[],
            &[],
        ),
    ]);
}

#[test]
fn rows_under_repeated_headings_are_counted_on() {
    hold(&[
        (
            "over a page with a footer",
            "Sample,Gluten (ppm)\nTKW-101,7\nPage 1 of 2,\n\nFenwick Hollow Laboratory\nSample,Gluten (ppm)\nTKW-101,40\nTKW-102,<5\nTKW-102,<5\n",
            &[
                "TKW-101 1 7",
                "TKW-101 2 40",
                "TKW-102 1 <5",
                "TKW-102 2 <5",
            ],
            &[],
        ),
        (
            "two of the same",
            "Sample,Gluten (ppm)\nTKW-101,<5\n\nSample,Gluten (ppm)\nTKW-101,<5\n",
            &["TKW-101 1 <5", "TKW-101 2 <5"],
            &[],
        ),
        (
            "a copy of a whole pair stays a copy",
            "Sample,Gluten (ppm)\nTKW-101,7\nTKW-101,8\n\nSample,Gluten (ppm)\nTKW-101,7\nTKW-101,8\n",
            &["TKW-101 1 7", "TKW-101 1 7", "TKW-101 2 8", "TKW-101 2 8"],
            &[],
        ),
        (
            "a second analysis is for a person to judge",
            "Sample,Gluten (ppm)\nTKW-101,7\n\nRepeat analysis of 9 May\nSample,Gluten (ppm)\nTKW-101,40\n",
            &["TKW-101 1 40", "TKW-101 1 7"],
            &[],
        ),
    ]);
}
