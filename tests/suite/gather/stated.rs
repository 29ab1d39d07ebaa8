//! What a report states besides its figures: signs and units in cells of their own, what was measured, what was done to the
//! figures, which rows the lab takes out. It is read, or keeps the results from being used; it is never dropped.

use super::folder::{Folder, Read};
use galleyproof::model::extraction::Outcome;
use rust_xlsxwriter::{Format, Workbook};

/// A file, the readings that it gives, and the problems.
type Case = (
    &'static str,
    &'static str,
    &'static [&'static str],
    &'static [&'static str],
);

/// Holds each case as delimited text and as a workbook.
fn hold(cases: &[Case]) {
    for (name, csv, readings, problems) in cases {
        let read = Folder::new().with("inbox/a.csv", csv.as_bytes()).gather();
        assert_eq!(read.readings(), *readings, "{name}: {:?}", read.problems);
        assert_eq!(read.problems(), *problems, "{name}");
        let read = Folder::new().with("inbox/a.xlsx", &xlsx(csv)).gather();
        let named: Vec<String> = problems
            .iter()
            .map(|problem| problem.replace("a.csv", "a.xlsx"))
            .collect();
        assert_eq!(read.readings(), *readings, "{name}: {:?}", read.problems);
        assert_eq!(read.problems(), named, "{name}");
    }
}

/// The same cells in a workbook, figures as figures.
fn xlsx(csv: &str) -> Vec<u8> {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    for (row, line) in (0..).zip(csv.lines()) {
        let parted = if csv.contains(';') { ';' } else { ',' };
        for (column, cell) in (0..).zip(line.split(parted)) {
            let written = match cell.parse::<f64>() {
                Ok(number) => sheet.write(row, column, number).map(|_| ()),
                Err(_) if cell.is_empty() => Ok(()),
                Err(_) => sheet.write(row, column, cell).map(|_| ()),
            };
            written.expect("can be written");
        }
    }
    book.save_to_buffer().expect("can be written")
}

#[test]
fn a_sign_in_a_column_of_its_own_is_the_figures() {
    hold(&[
        (
            "before",
            "Sample,Extraction,Qualifier,Gluten (mg/kg)\nTKW-101,1,<,20\nTKW-101,2,>,15\nTKW-102,1,,12\nTKW-102,2,=,13\n",
            &[
                "TKW-101 1 <20",
                "TKW-101 2 >15",
                "TKW-102 1 12",
                "TKW-102 2 13",
            ],
            &[],
        ),
        (
            "behind, without a heading",
            "Sample,Extraction,Gluten (mg/kg),\nTKW-101,1,20,<\nTKW-101,2,21,\n",
            &["TKW-101 1 <20", "TKW-101 2 21"],
            &[],
        ),
        (
            "German, the sign is the heading",
            "Probe;Extraktion;<;Gluten (mg/kg)\nTKW-101;1;<;20\nTKW-101;2;;21\n",
            &["TKW-101 1 <20", "TKW-101 2 21"],
            &[],
        ),
        (
            "a flag apart from the only figure",
            "Sample,Flag,Extraction,Gluten (mg/kg)\nTKW-101,<,1,20\nTKW-101,,2,21\n",
            &["TKW-101 1 <20", "TKW-101 2 21"],
            &[],
        ),
        (
            "before each of two",
            "Sample,Sign,Ext 1 (ppm),Sign,Ext 2 (ppm)\nTKW-101,<,20,,21\nTKW-102,,22,>,80\n",
            &[
                "TKW-101 1 <20",
                "TKW-101 2 21",
                "TKW-102 1 22",
                "TKW-102 2 >80",
            ],
            &[],
        ),
        (
            "beside the limit that it stands for",
            "Sample,LOQ (mg/kg),Qualifier,Gluten (mg/kg)\nTKW-101,5,<,5\nTKW-101,5,,21\n",
            &["TKW-101 1 <5", "TKW-101 2 21"],
            &[],
        ),
        (
            "the figure says the same",
            "Sample,Extraction,Qualifier,Gluten (mg/kg)\nTKW-101,1,<,<20\nTKW-101,2,<,ND\nTKW-102,1,>,ALQ\n",
            &["TKW-101 1 <20", "TKW-101 2 <5", "TKW-102 1 >80"],
            &[],
        ),
    ]);
}

#[test]
fn a_sign_that_could_be_anothers_keeps_the_row_from_being_used() {
    hold(&[
        (
            "between two extractions",
            "Sample,Ext 1 (ppm),,Ext 2 (ppm)\nTKW-101,20,<,21\nTKW-102,20,,21\n",
            &[
                "TKW-101 1 unreadable",
                "TKW-101 2 unreadable",
                "TKW-102 1 20",
                "TKW-102 2 21",
            ],
            &["bad_value inbox/a.csv C2"],
        ),
        (
            "between a mean and a figure",
            "Sample,Ext 1 (ppm),Ext 2 (ppm),Sign,Mean (ppm)\nTKW-101,20,21,<,20.5\n",
            &["TKW-101 1 unreadable", "TKW-101 2 unreadable"],
            &["bad_value inbox/a.csv D2"],
        ),
        (
            "among remarks",
            "Sample,Extraction,Gluten (mg/kg),Remark\nTKW-101,1,20,<\nTKW-101,2,21,seen twice\n",
            &["TKW-101 1 unreadable", "TKW-101 2 21"],
            &["bad_value inbox/a.csv D2"],
        ),
        (
            "at most and about are nothing that a result can be",
            "Sample,Extraction,Qualifier,Gluten (mg/kg)\nTKW-101,1,≤,20\nTKW-101,2,~,21\n",
            &["TKW-101 1 unreadable", "TKW-101 2 unreadable"],
            &["bad_value inbox/a.csv D2", "bad_value inbox/a.csv D3"],
        ),
        (
            "against the figure's own",
            "Sample,Extraction,Qualifier,Gluten (mg/kg)\nTKW-101,1,<,>80\nTKW-101,2,<,\n",
            &["TKW-101 1 unreadable", "TKW-101 2 not reported"],
            &["bad_value inbox/a.csv D2"],
        ),
        (
            "a word in a remark against the figure",
            "Sample,Extraction,Gluten (mg/kg),Flag\nTKW-101,1,20,<LOQ\nTKW-101,2,3,<LOQ\nTKW-102,1,90,above range\nTKW-102,2,<5,not detected\n",
            &[
                "TKW-101 1 unreadable",
                "TKW-101 2 <5",
                "TKW-102 1 unreadable",
                "TKW-102 2 <5",
            ],
            &["bad_value inbox/a.csv D2", "bad_value inbox/a.csv D4"],
        ),
    ]);
}

#[test]
fn more_than_the_lowest_quantity_is_no_result() {
    hold(&[(
        "above the LOQ",
        "Sample,Extraction,Gluten (mg/kg)\nTKW-101,1,>LOQ\nTKW-101,2,above LOQ\nTKW-102,1,ALQ\nTKW-102,2,>ULOQ\n",
        &[
            "TKW-101 1 unreadable",
            "TKW-101 2 unreadable",
            "TKW-102 1 >80",
            "TKW-102 2 >80",
        ],
        &["bad_value inbox/a.csv C2", "bad_value inbox/a.csv C3"],
    )]);
}

#[test]
fn a_unit_below_or_beside_is_read() {
    hold(&[
        (
            "below the heading",
            "Sample,Extraction,Gluten\n,,%\nTKW-101,1,0.0060\nTKW-101,2,0.0062\n",
            &["TKW-101 1 60", "TKW-101 2 62"],
            &[],
        ),
        (
            "beside, under no heading",
            "Sample,Extraction,Gluten,\nTKW-101,1,6000,ppb\nTKW-101,2,0.006,%\n",
            &["TKW-101 1 6", "TKW-101 2 60"],
            &[],
        ),
        (
            "German, before",
            "Probe;Extraktion;;Gluten\nTKW-101;1;µg/kg;6000\n",
            &["TKW-101 1 6"],
            &[],
        ),
        (
            "beside each of two",
            "Sample,Ext 1,,Ext 2,\nTKW-101,6000,ppb,7,ppm\n",
            &["TKW-101 1 6", "TKW-101 2 7"],
            &[],
        ),
        (
            "that of a recovery is not that of the gluten",
            "Sample,Extraction,Gluten (mg/kg),Recovery,\nTKW-101,1,12,95,%\n",
            &["TKW-101 1 12"],
            &[],
        ),
        (
            "another one than the heading's",
            "Sample,Extraction,Gluten (mg/kg),\nTKW-101,1,6000,ppb\nTKW-101,2,7,mg/kg\n",
            &["TKW-101 1 unreadable", "TKW-101 2 7"],
            &["bad_unit inbox/a.csv D2"],
        ),
        (
            "one that does not convert",
            "Sample,Extraction,Gluten,\nTKW-101,1,6,mg/L\n",
            &["TKW-101 1 unreadable"],
            &["bad_unit inbox/a.csv D2"],
        ),
        (
            "one that does not convert, in a line above",
            "Unit,mg/L\nReport,R-7\n,\nSample,Extraction,Gluten\nTKW-101,1,6\n",
            &["TKW-101 1 unreadable"],
            &["bad_unit inbox/a.csv C5"],
        ),
    ]);
}

#[test]
fn a_limit_without_a_unit_is_in_that_of_its_own_column() {
    let read = Folder::new()
        .with(
            "inbox/a.csv",
            b"Sample,LOQ,Gluten ext 1 (ppm),Gluten ext 2 (ppb)\nTKW-101,5,<LOQ,<LOQ\n",
        )
        .gather();
    assert_eq!(read.readings(), ["TKW-101 1 <5", "TKW-101 2 <0.005"]);
    let limits: Vec<f64> = read
        .gathered
        .extractions
        .iter()
        .map(|one| one.lloq.0)
        .collect();
    assert_eq!(limits, [5.0, 0.005]);
}

#[test]
fn a_factor_or_a_logarithm_in_a_heading_keeps_its_results_from_being_used() {
    let unreadable: &[&str] = &["TKW-101 1 unreadable"];
    let told: &[&str] = &["bad_unit inbox/a.csv C1"];
    hold(&[
        (
            "log",
            "Sample,Extraction,Gluten (log ppm)\nTKW-101,1,1.6\n",
            unreadable,
            told,
        ),
        (
            "x 10",
            "Sample,Extraction,Gluten (ppm x 10)\nTKW-101,1,6\n",
            unreadable,
            told,
        ),
        (
            "x1000",
            "Probe;Extraktion;Gluten (x1000 ppm)\nTKW-101;1;0.06\n",
            unreadable,
            told,
        ),
        (
            "power",
            "Sample,Extraction,Gluten (10^3 ppm)\nTKW-101,1,0.06\n",
            unreadable,
            told,
        ),
        (
            "gliadin and a factor in brackets",
            "Sample,Extraction,Gliadin (x 2) (mg/kg)\nTKW-101,1,11\n",
            unreadable,
            told,
        ),
        (
            "in a sentence",
            "All results in ppm x 10\n,\nSample,Extraction,Gluten\nTKW-101,1,6\n",
            unreadable,
            &["bad_unit inbox/a.csv C4"],
        ),
        (
            "twice the gliadin is gluten",
            "Sample,Extraction,Gliadin x 2 (mg/kg)\nTKW-101,1,11\n",
            &["TKW-101 1 11"],
            &[],
        ),
        (
            "a numbered extraction",
            "Sample,Gluten (ppm) ext. 2 of 2\nTKW-101,11\n",
            &["TKW-101 2 11"],
            &[],
        ),
    ]);
}

#[test]
fn gliadin_is_doubled_wherever_it_is_said_and_nothing_is_read_where_it_cannot_be_told() {
    let doubled: &[&str] = &["TKW-101 1 30", "TKW-101 2 32"];
    let none: &[&str] = &["TKW-101 1 unreadable", "TKW-101 2 unreadable"];
    hold(&[
        (
            "a title",
            "Gliadin by ELISA\n,\nSample,Extraction,Result (ppm)\nTKW-101,1,15\nTKW-101,2,16\n",
            doubled,
            &[],
        ),
        (
            "German",
            "Bestimmung von Gliadin\n;\nProbe;Extraktion;Ergebnis (ppm)\nTKW-101;1;15\nTKW-101;2;16\n",
            doubled,
            &[],
        ),
        (
            "a footer",
            "Sample,Extraction,Result (ppm)\nTKW-101,1,15\nTKW-101,2,16\n,,\nResults are expressed as gliadin,,\n",
            doubled,
            &[],
        ),
        (
            "expressed as gluten",
            "Gliadin by ELISA\nResults are expressed as gluten\n,\nSample,Extraction,Result (ppm)\nTKW-101,1,15\nTKW-101,2,16\n",
            &["TKW-101 1 15", "TKW-101 2 16"],
            &[],
        ),
        (
            "the heading says gluten",
            "Gliadin by ELISA\n,\nSample,Extraction,Gluten (ppm)\nTKW-101,1,15\nTKW-101,2,16\n",
            &["TKW-101 1 15", "TKW-101 2 16"],
            &[],
        ),
        (
            "both in titles",
            "Gluten analysis\nGliadin by ELISA\n,\nSample,Extraction,Result (ppm)\nTKW-101,1,15\nTKW-101,2,16\n",
            none,
            &["ambiguous_table inbox/a.csv C4"],
        ),
        (
            "in the method alone",
            "Method: gliadin ELISA\n,\nSample,Extraction,Result (ppm)\nTKW-101,1,15\nTKW-101,2,16\n",
            none,
            &["ambiguous_table inbox/a.csv C3"],
        ),
        (
            "heading and footer contradict one another",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,1,15\nTKW-101,2,16\n,,\nResults are expressed as gliadin,,\n",
            none,
            &["ambiguous_table inbox/a.csv C1"],
        ),
    ]);
    let read = sheets(&[(
        "Gliadin",
        "Sample,Extraction,Result (ppm)\nTKW-101,1,15\nTKW-101,2,16\n",
    )]);
    assert_eq!(read.readings(), doubled);
    assert!(read.gathered.extractions.iter().all(|one| one.from_gliadin));
}

/// A workbook of these sheets.
fn sheets(all: &[(&str, &str)]) -> Read {
    let mut book = Workbook::new();
    for (name, csv) in all {
        let sheet = book.add_worksheet();
        sheet.set_name(*name).expect("is a name");
        for (row, line) in (0..).zip(csv.lines()) {
            for (column, cell) in (0..).zip(line.split(',')) {
                sheet.write(row, column, cell).expect("can be written");
            }
        }
    }
    let bytes = book.save_to_buffer().expect("can be written");
    Folder::new().with("inbox/a.xlsx", &bytes).gather()
}

#[test]
fn another_substance_is_never_read_as_gluten() {
    let none: &[&str] = &["TKW-101 1 unreadable"];
    hold(&[
        (
            "a column of analytes",
            "Sample,Analyte,Result (ppm)\nTKW-101,Casein,2\nTKW-101,Casein,3\n",
            &[],
            &["bad_value inbox/a.csv B2", "bad_value inbox/a.csv B3"],
        ),
        (
            "a column of allergens",
            "Probe;Allergen;Ergebnis (ppm)\nTKW-101;Soja;2\n",
            &[],
            &["bad_value inbox/a.csv B2"],
        ),
        (
            "a column of methods",
            "Sample,Method,Result (ppm)\nTKW-101,Soy ELISA,2\n",
            &[],
            &["bad_value inbox/a.csv B2"],
        ),
        (
            "a heading that is not known",
            "Sample,Panel,Result (ppm)\nTKW-101,Egg ELISA,2\n",
            &[],
            &["bad_value inbox/a.csv B2"],
        ),
        (
            "a heading that is not known, over gluten too",
            "Sample,Panel,Result (ppm)\nTKW-101,Soy,2\nTKW-101,Gluten,13\nTKW-102,Casein,2\n",
            &["TKW-101 1 13"],
            &["bad_value inbox/a.csv B2", "bad_value inbox/a.csv B4"],
        ),
        (
            "a heading that is not known, over foods",
            "Sample,Item,Result (ppm)\nTKW-101,Soy,12\nTKW-102,Bread,13\n",
            &["TKW-101 1 12", "TKW-102 1 13"],
            &[],
        ),
        (
            "beside gluten in the same column",
            "Sample,Analyte,Result (ppm)\nTKW-101,Casein,2\nTKW-101,Gluten,13\n",
            &["TKW-101 1 13"],
            &[],
        ),
        (
            "a label",
            "Analyte,Casein\n,\nSample,Result (ppm)\nTKW-101,1\n",
            none,
            &["ambiguous_table inbox/a.csv B3"],
        ),
        (
            "a label in one cell",
            "Parameter: Soja\n;\nProbe;Ergebnis (ppm)\nTKW-101;1\n",
            none,
            &["ambiguous_table inbox/a.csv B3"],
        ),
        (
            "a method",
            "Assay,Sandwich ELISA casein\n,\nSample,Result (ppm)\nTKW-101,1\n",
            none,
            &["ambiguous_table inbox/a.csv B3"],
        ),
        (
            "a title",
            "Casein (milk) by ELISA\n,\nSample,Result (ppm)\nTKW-101,1\n",
            none,
            &["ambiguous_table inbox/a.csv B3"],
        ),
        (
            "the food is no analyte",
            "Milk products\nClient: Almond & Co\nMatrix,Soy drink\n,\nSample,Product,Result (ppm)\nTKW-101,Egg noodles,6\n",
            &["TKW-101 1 6"],
            &[],
        ),
        (
            "gluten is named",
            "Casein (milk) by ELISA\n,\nSample,Gluten (ppm)\nTKW-101,6\n",
            &["TKW-101 1 6"],
            &[],
        ),
        (
            "an antibody of gluten is named",
            "Method: R5 ELISA in milk products\n,\nSample,Result (ppm)\nTKW-101,6\n",
            &["TKW-101 1 6"],
            &[],
        ),
    ]);
    let soy = ("Soy", "Sample,Result (ppm)\nTKW-101,2\n");
    let read = sheets(&[soy]);
    assert_eq!(read.readings(), none);
    assert_eq!(read.problems(), ["ambiguous_table inbox/a.xlsx B1"]);
    let read = sheets(&[soy, ("Gluten", "Sample,Result (ppm)\nTKW-101,24\n")]);
    assert_eq!(read.readings(), ["TKW-101 1 24"]);
    assert_eq!(read.problems(), ["passed_over inbox/a.xlsx row 1"]);
}

#[test]
fn a_layout_says_that_the_results_are_gluten() {
    let read = Folder::new()
        .settings("[[layout]]\nfiles = \"a.csv\"\ncolumns = { sample = \"Sample\", result = \"Result (ppm)\" }\n")
        .with("inbox/a.csv", b"Casein (milk) by ELISA\n,\nSample,Result (ppm)\nTKW-101,6\n")
        .gather();
    assert_eq!(read.readings(), ["TKW-101 1 6"]);
}

#[test]
fn rows_that_the_lab_takes_out_are_told_and_not_used() {
    hold(&[
        (
            "a type",
            "Sample,Type,Gluten (ppm)\nTKW-101,spiked,26\nTKW-101,food,7\n",
            &["TKW-101 1 unreadable", "TKW-101 2 7"],
            &["bad_value inbox/a.csv B2"],
        ),
        (
            "German",
            "Probe;Status;Gluten (ppm)\nTKW-101;verworfen;26\nTKW-101;gültig;7\n",
            &["TKW-101 1 unreadable", "TKW-101 2 7"],
            &["bad_value inbox/a.csv B2"],
        ),
        (
            "a remark",
            "Sample,Gluten (ppm),Remark\nTKW-101,26,the curve was flat: run rejected by the analyst\nTKW-101,7,no invalid wells\n",
            &["TKW-101 1 unreadable", "TKW-101 2 7"],
            &["bad_value inbox/a.csv C2"],
        ),
        (
            "how much was added: to which rows it went is not for us to say",
            "Sample,Spike (ppm),Spike recovery (%),Gluten (ppm)\nTKW-101,20,95,26\nTKW-101,0,95,7\nTKW-101,,,8\n",
            &[
                "TKW-101 1 unreadable",
                "TKW-101 2 unreadable",
                "TKW-101 3 unreadable",
            ],
            &["ambiguous_table inbox/a.csv D1"],
        ),
        (
            "nothing was added",
            "Sample,Spike (ppm),Spike recovery (%),Gluten (ppm)\nTKW-101,0,95,7\nTKW-101,,,8\n",
            &["TKW-101 1 7", "TKW-101 2 8"],
            &[],
        ),
        (
            "a food may be fortified",
            "Sample,Description,Gluten (ppm)\nTKW-101,Fortified oat drink,7\n",
            &["TKW-101 1 7"],
            &[],
        ),
        (
            "an extraction that is numbered 0",
            "Sample,Extraction,Gluten (ppm)\nTKW-101,0,6\nTKW-101,2,7\n",
            &["TKW-101 1 unreadable", "TKW-101 2 7"],
            &["bad_value inbox/a.csv B2"],
        ),
    ]);
}

#[test]
fn a_number_format_makes_no_figure_say_more_than_it_does() {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    for (column, heading) in (0..).zip(["Sample", "Extraction", "Gluten (mg/kg)"]) {
        sheet.write(0, column, heading).expect("can be written");
    }
    let below = "[<10]\"<10\";0.0";
    let cells = [(4.0, below), (8.0, below), (12.0, below), (22.0, "\"n/a\"")];
    for (row, (figure, format)) in (1..).zip(cells) {
        let format = Format::new().set_num_format(format);
        sheet.write(row, 0, "TKW-101").expect("can be written");
        sheet.write(row, 1, row).expect("can be written");
        sheet
            .write_with_format(row, 2, figure, &format)
            .expect("can be written");
    }
    let bytes = book.save_to_buffer().expect("can be written");
    let read = Folder::new().with("inbox/a.xlsx", &bytes).gather();
    let expected = [
        "TKW-101 1 <10",
        "TKW-101 2 <10",
        "TKW-101 3 12",
        "TKW-101 4 22",
    ];
    assert_eq!(read.readings(), expected);
    assert_eq!(read.problems(), ["hidden inbox/a.xlsx C5"]);
    let told = read.told(0);
    assert!(told.contains("“n/a”") && told.contains("22"), "{told}");
    let readings = read.gathered.extractions.iter();
    assert!(
        readings
            .into_iter()
            .all(|one| matches!(one.outcome, Outcome::Reading(_)))
    );
}

#[test]
fn a_result_with_two_units_is_not_used() {
    hold(&[
        (
            "a line above and the heading",
            "Unit,ppb\nSample,Extraction,Gluten (ppm)\nTKW-101,1,6\n",
            &["TKW-101 1 unreadable"],
            &["bad_unit inbox/a.csv C3"],
        ),
        (
            "a column and the heading",
            "Sample,Extraction,Gluten (mg/kg),Unit\nTKW-101,1,6,ppb\n",
            &["TKW-101 1 unreadable"],
            &["bad_unit inbox/a.csv C2"],
        ),
        (
            "German",
            "Einheit;µg/kg\nProbe;Extraktion;Gluten (mg/kg)\nTKW-101;1;6\n",
            &["TKW-101 1 unreadable"],
            &["bad_unit inbox/a.csv C3"],
        ),
        (
            "one unit by two names",
            "Unit,ppm\nSample,Extraction,Gluten (mg/kg)\nTKW-101,1,6\n",
            &["TKW-101 1 6"],
            &[],
        ),
    ]);
}
