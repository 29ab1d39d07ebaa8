//! What is read of a file: tables of wells, grids, both beside tables of results; and what is not understood.

use super::{Long, STANDARDS, near, plate, seen, told, workspace};
use crate::workspace::Workspace;
use rust_xlsxwriter::{Format, Workbook};
use serde_json::{Value, json};

/// What is in each of the 24 wells of three columns, from the top of the first: two of each.
fn layout() -> Vec<(String, f64)> {
    let standards = STANDARDS.iter().map(|x| (format!("Std {x} ppm"), seen(*x)));
    let others = [
        ("Blank".to_owned(), 0.05),
        ("QC 18-26".to_owned(), seen(22.0)),
        ("A1 E1".to_owned(), seen(12.4)),
        ("A1 E2".to_owned(), seen(13.1)),
        ("A2 E1 1:10".to_owned(), seen(30.0)),
        ("K-2291".to_owned(), seen(7.0)),
    ];
    let all = standards.chain(others);
    all.flat_map(|(what, absorbance)| [0.99, 1.01].map(|part| (what.clone(), absorbance * part)))
        .collect()
}

/// A grid of 3 across and 8 down, in cells.
fn grid(title: &str, cell: impl Fn(&(String, f64)) -> String) -> Vec<Vec<String>> {
    let layout = layout();
    let mut rows = vec![vec![title.to_owned()]];
    rows.push(["", "1", "2", "3"].map(str::to_owned).to_vec());
    for down in 0..8 {
        let mut row = vec![char::from(b'A' + down as u8).to_string()];
        row.extend((0..3).map(|across| cell(&layout[across * 8 + down])));
        rows.push(row);
    }
    rows
}

fn text(rows: &[Vec<String>], delimiter: &str) -> String {
    let lines: Vec<String> = rows.iter().map(|row| row.join(delimiter)).collect();
    lines.join("\n") + "\n"
}

fn holds_the_layout(results: &Value) {
    assert_eq!(told(results), [], "{results:#}");
    let plate = plate(results);
    assert_eq!(plate["standards"].as_array().map(Vec::len), Some(6));
    let samples = plate["samples"].as_array().expect("a list");
    let shown: Vec<(&str, u64)> = samples
        .iter()
        .map(|one| {
            let code = one["package_code"].as_str().expect("a code");
            (code, one["extraction"].as_u64().expect("a number"))
        })
        .collect();
    assert_eq!(shown, [("A1", 1), ("A1", 2), ("A2", 1)]);
    for (sample, expected) in samples.iter().zip([12.4, 13.1, 300.0]) {
        let found = sample["ppm"].as_f64().expect("a figure");
        assert!((found - expected).abs() < 2e-3 * expected, "{sample:#}");
    }
}

#[test]
fn grids_of_absorbances_and_contents_are_a_plate() {
    let point = |figure: f64| format!("{figure:.3}");
    let comma = |figure: f64| format!("{figure:.3}").replace('.', ",");
    let contents = grid("Layout", |(what, _)| what.clone());
    let one = grid("Absorbance 450 nm", |(_, figure)| point(*figure));
    let blank = vec![Vec::new()];
    for rows in [
        [one.clone(), blank.clone(), contents.clone()].concat(),
        [contents.clone(), blank.clone(), one.clone()].concat(),
        // Without a title, and close to one another.
        [one[1..].to_vec(), contents[1..].to_vec()].concat(),
    ] {
        holds_the_layout(&workspace(&text(&rows, ","), "").results());
    }
    let german = grid("Extinktion", |(_, figure)| comma(*figure));
    let rows = [german, blank, grid("Belegung", |(what, _)| what.clone())].concat();
    holds_the_layout(&workspace(&text(&rows, ";"), "").results());
    // Side by side.
    let beside: Vec<Vec<String>> = one
        .iter()
        .zip(&contents)
        .map(|(left, right)| {
            let mut row = left.clone();
            row.resize(5, String::new());
            row.extend(right.clone());
            row
        })
        .collect();
    holds_the_layout(&workspace(&text(&beside, ","), "").results());
}

#[test]
fn a_plate_in_a_workbook_is_named_with_its_sheet() {
    let mut book = Workbook::new();
    for (name, rows) in [
        (
            "Reader",
            grid("Plate: P-17", |(_, figure)| format!("{figure:.3}")),
        ),
        ("Layout", grid("Contents", |(what, _)| what.clone())),
    ] {
        let sheet = book.add_worksheet().set_name(name).expect("a name");
        for (down, row) in rows.iter().enumerate() {
            for (across, cell) in row.iter().enumerate().filter(|(_, cell)| !cell.is_empty()) {
                let place = (down as u32 + 4, across as u16 + 1);
                match cell.parse::<f64>() {
                    Ok(number) => sheet.write(place.0, place.1, number),
                    Err(_) => sheet.write(place.0, place.1, cell.as_str()),
                }
                .expect("takes all");
            }
        }
    }
    let workspace = Workspace::new();
    workspace.with(
        "inbox/plates.xlsx",
        book.save_to_buffer().expect("in memory"),
    );
    let results = workspace.results();
    holds_the_layout(&results);
    let plate = plate(&results);
    assert_eq!(
        (&plate["sheet"], &plate["plate"]),
        (&json!("Reader"), &json!("P-17"))
    );
}

#[test]
fn a_file_of_a_plate_alone_is_no_error() {
    let workspace = workspace(&Long::new().sample("A1", 1, 12.4).text(), "");
    workspace.run(&["check"]).exits(0);
    let results = workspace.results();
    let codes: Vec<&Value> = results["problems"]
        .as_array()
        .expect("a list")
        .iter()
        .map(|problem| &problem["code"])
        .filter(|code| *code != "missing_package")
        .collect();
    assert!(codes.is_empty(), "{codes:?}");
    // And no well of it is a reading.
    let package = &results["products"][0]["packages"][0];
    assert_eq!(package["extractions"], json!([]));
}

#[test]
fn a_file_of_a_plate_and_results_gives_both() {
    let plate = Long::new().sample("A1", 1, 12.4).sample("A1", 2, 13.1);
    let results = "Sample,Extraction,Gluten (ppm)\nA1,1,12.4\nA1,2,13.1\n";
    for whole in [
        format!("{}\n\n{results}", plate.text()),
        format!("{results}\n\n{}", plate.text()),
    ] {
        let workspace = workspace(&whole, "");
        workspace.run(&["check"]).exits(0);
        let all = workspace.results();
        assert_eq!(told(&all), []);
        let sample = &super::plate(&all)["samples"][0];
        assert_eq!(
            (&sample["reported_ppm"], &sample["agrees"]),
            (&json!(12.4), &json!(true))
        );
        let readings = &all["products"][0]["packages"][0]["extractions"];
        assert_eq!(readings.as_array().map(Vec::len), Some(2), "{readings:#}");
    }
}

/// The result of each well beside its absorbance: two wells of an extraction are one reading.
#[test]
fn a_table_with_absorbances_and_results_is_both() {
    let mut rows = vec!["Well,Sample,Extraction,OD 450,Gluten (ppm)".to_owned()];
    let mut well = 0;
    let mut two = |what: &str, absorbance: f64, results: [&str; 2]| {
        for (part, result) in [0.99, 1.01].into_iter().zip(results) {
            well += 1;
            let name = format!(
                "{}{}",
                char::from(b'A' + (well - 1) % 8),
                (well - 1) / 8 + 1
            );
            rows.push(format!("{name},{what},{:.3},{result}", absorbance * part));
        }
    };
    for x in STANDARDS {
        two(&format!("Std {x} ppm,"), seen(x), ["", ""]);
    }
    two("A1,1", seen(12.4), ["12.3", "12.5"]);
    two("A1,2", seen(13.1), ["13.0", "13.2"]);
    let workspace = workspace(&(rows.join("\n") + "\n"), "");
    workspace.run(&["check"]).exits(0);
    let results = workspace.results();
    assert_eq!(told(&results), []);
    let sample = &plate(&results)["samples"][1];
    assert!(near(&sample["reported_ppm"], 13.1), "{sample:#}");
    assert_eq!(sample["agrees"], true);
    let readings = results["products"][0]["packages"][0]["extractions"]
        .as_array()
        .expect("a list");
    assert_eq!(readings.len(), 2, "{readings:#?}");
    assert_eq!(readings[0]["lower_ppm"], 12.4);
}

/// A layout of the settings names the column of results, whose heading says nothing: it is read by it, and the plate as well.
#[test]
fn results_that_a_layout_names_stay_results() {
    let mut rows = vec!["Well,Sample,Extraction,OD,Quux".to_owned()];
    let mut plate = Long::new();
    for (index, x) in STANDARDS.iter().chain(&[12.4, 13.1]).enumerate() {
        let what = match index {
            6 | 7 => format!("A1,{}", index - 5),
            _ => format!("Std {x} ppm,"),
        };
        let result = if index > 5 {
            x.to_string()
        } else {
            String::new()
        };
        rows.push(format!("{},{what},{:.3},{result}", plate.well(), seen(*x)));
    }
    let workspace = workspace(&(rows.join("\n") + "\n"), "");
    let layout =
        "[[layout]]\nfiles = \"*.csv\"\ncolumns = { sample = \"Sample\", result = \"Quux\" }\n";
    let settings = format!("{}{layout}", workspace.text("programme.toml"));
    workspace.with("programme.toml", settings);
    let results = workspace.results();
    assert_eq!(told(&results), []);
    assert_eq!(super::plate(&results)["samples"][1]["agrees"], true);
    let readings = results["products"][0]["packages"][0]["extractions"]
        .as_array()
        .expect("a list");
    assert_eq!(readings.len(), 2, "{readings:#?}");
}

#[test]
fn several_plates_of_a_table_are_told_apart_by_its_column() {
    let one = Long::new().sample("A1", 1, 12.4).text();
    let named = |name: &str| -> Vec<String> {
        let rows = one.lines().skip(1);
        rows.map(|row| format!("{name},{row}")).collect()
    };
    let heading = format!("Plate,{}", one.lines().next().expect("a heading"));
    let rows = [vec![heading], named("P-1"), named("P-2")].concat();
    let results = workspace(&(rows.join("\n") + "\n"), "").results();
    assert_eq!(told(&results), []);
    let names: Vec<&Value> = results["plates"]
        .as_array()
        .expect("a list")
        .iter()
        .map(|plate| &plate["plate"])
        .collect();
    assert_eq!(names, ["P-1", "P-2"]);
}

/// What is in two wells stands once, in a cell that is joined over both.
#[test]
fn joined_cells_say_what_is_in_each_of_their_wells() {
    let long = Long::new().sample("A1", 1, 12.4).text();
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    for (row, line) in (0..).zip(long.lines()) {
        for (column, cell) in (0..).zip(line.split(',')) {
            let is_first = row % 2 == 1;
            let is_of_well = row == 0 || column == 0 || column == 6;
            match cell.parse::<f64>() {
                _ if cell.is_empty() => Ok(&mut *sheet),
                Ok(number) if is_of_well => sheet.write(row, column, number),
                _ if is_of_well => sheet.write(row, column, cell),
                _ if is_first => {
                    sheet.merge_range(row, column, row + 1, column, cell, &Format::new())
                }
                _ => Ok(&mut *sheet),
            }
            .expect("takes all");
        }
    }
    let workspace = Workspace::new();
    workspace.with(
        "inbox/plate.xlsx",
        book.save_to_buffer().expect("in memory"),
    );
    let results = workspace.results();
    assert_eq!(told(&results), []);
    let sample = &plate(&results)["samples"][0];
    assert_eq!(sample["absorbances"].as_array().map(Vec::len), Some(2));
    assert!(near(&sample["ppm"], 12.4), "{sample:#}");
}

#[test]
fn headings_in_german_and_spanish_are_known() {
    let long = Long::new().sample("A1", 1, 12.4).text();
    let (_, rows) = long.split_once('\n').expect("a heading");
    for (heading, words) in [
        (
            "Vertiefung;Typ;Probe;Konzentration (ppm);Extraktion;Verdünnung;Extinktion",
            ["Standard", "Leerwert", "Probe"],
        ),
        (
            "Pocillo;Tipo;Muestra;Concentración (mg/kg);Extracción;Dilución;Absorbancia",
            ["Estándar", "Blanco", "Muestra"],
        ),
    ] {
        let rows = rows
            .replace("Standard", words[0])
            .replace("Blank", words[1])
            .replace("Sample", words[2])
            .replace(',', ";")
            .replace('.', ",");
        let results = workspace(&format!("{heading}\n{rows}"), "").results();
        assert_eq!(told(&results), [], "{heading}");
        let sample = &plate(&results)["samples"][0];
        assert!(near(&sample["ppm"], 12.4), "{heading}: {sample:#}");
    }
}

/// What cannot be understood names file and cell, and the run goes on.
#[test]
fn what_is_not_understood_is_told_with_its_cell() {
    let long = || Long::new().sample("A1", 1, 12.4);
    for (fault, plate, place, plates) in [
        (
            "which is no figure",
            long().row("H12,Sample,A1,,2,,OVRFLW"),
            Some("G18"),
            1,
        ),
        (
            "which is no figure",
            long().row("H12,Standard,,60,,,#N/A"),
            Some("G18"),
            0,
        ),
        (
            "stands twice",
            long().row("A1,Sample,A1,,2,,0.5"),
            Some("G18"),
            0,
        ),
        (
            "no concentration",
            long().row("H12,Standard,S7,,,,0.5"),
            Some("G18"),
            0,
        ),
        (
            "dilution",
            long().row("H12,Sample,A1,,2,weak,0.5"),
            Some("G18"),
            1,
        ),
        (
            "number of the extraction",
            long().row("H12,Sample,A1,,second,,0.5"),
            Some("G18"),
            1,
        ),
        (
            "which extraction of package “A2”",
            long().row("H12,Sample,A2,,,,0.5"),
            Some("G18"),
            1,
        ),
        (
            "no well of a plate",
            long().row("J3,Sample,A1,,2,,0.5"),
            Some("A18"),
            1,
        ),
        (
            "control in well H12",
            long().row("H12,Control,QC,lots,,,0.5"),
            Some("G18"),
            0,
        ),
    ] {
        let workspace = workspace(&plate.text(), "");
        workspace.run(&["check"]).exits(0);
        let results = workspace.results();
        let told = told(&results);
        assert_eq!(told.len(), 1, "{fault}: {told:#?}");
        assert_eq!(told[0].0, "plate_unreadable", "{fault}");
        assert!(told[0].1.contains(fault), "{fault}: {}", told[0].1);
        let problems = results["problems"].as_array().expect("a list");
        let problem = problems
            .iter()
            .find(|problem| problem["code"] == "plate_unreadable")
            .expect("is there");
        let cell = format!(
            "{}{}",
            problem["column"].as_str().unwrap_or_default(),
            problem["row"]
        );
        assert_eq!(Some(cell.as_str()), place, "{fault}");
        assert!(!problem["hint"].as_str().unwrap_or_default().is_empty());
        let read = results["plates"].as_array().expect("a list").len();
        assert_eq!(read, plates, "{fault}");
    }
}

#[test]
fn doubts_about_the_plate_as_a_whole_are_told_once() {
    let one = grid("Absorbance", |(_, figure)| format!("{figure:.3}"));
    let long = Long::new().text();
    let in_extract = long.replace("Concentration", "Concentration (ng/mL)");
    let two = long.replace("Well,Type", "Well,OD 620");
    let numbers = grid("Layout", |(what, _)| {
        let of = STANDARDS
            .iter()
            .position(|x| *what == format!("Std {x} ppm"));
        of.map_or(what.clone(), |index| format!("Standard {}", index + 1))
    });
    let small = grid("Layout", |(what, _)| what.clone())[..6].to_vec();
    let none = grid("Layout", |_| "A1 E1".to_owned());
    for (fault, text) in [
        ("no second one", text(&one, ",")),
        (
            "do not go together",
            text(&[one.clone(), small].concat(), ","),
        ),
        ("has no standards", text(&[one.clone(), none].concat(), ",")),
        ("their numbers as well", text(&[one, numbers].concat(), ",")),
        ("in ng/mL gliadin", in_extract),
        ("say the same thing", two),
    ] {
        let workspace = workspace(&text, "");
        workspace.run(&["check"]).exits(0);
        let results = workspace.results();
        let told = told(&results);
        assert!(!told.is_empty(), "{fault}: {:#}", results["problems"]);
        assert!(
            told.iter().all(|(code, _)| code == "plate_unreadable"),
            "{told:#?}"
        );
        assert!(
            told.iter().any(|(_, message)| message.contains(fault)),
            "{fault}: {told:#?}"
        );
        assert_eq!(results["plates"], json!([]), "{fault}");
    }
}

/// A file can hold more than anyone will look at: it is told, and nothing of it is taken for results.
#[test]
fn more_plates_than_are_read_are_told_in_a_moment() {
    let mut long = "Well,Sample,Extraction,Absorbance\n".to_owned();
    for row in 0..20_000 {
        long.push_str(&format!("A{},A1,1,0.5\n", row % 12 + 1));
    }
    let one = grid("Absorbance", |(_, figure)| format!("{figure:.3}"));
    let grids = text(&one, ",").repeat(300);
    for (text, expected) in [(long, "208 plates"), (grids, "300 plates")] {
        let workspace = workspace(&text, "");
        let results = workspace.results();
        let told = told(&results);
        assert_eq!(told.len(), 1, "{told:#?}");
        assert!(told[0].1.contains(expected), "{told:#?}");
        assert_eq!(results["plates"], json!([]));
        let readings = &results["products"][0]["packages"][0]["extractions"];
        assert_eq!(*readings, json!([]), "{expected}");
    }
}
