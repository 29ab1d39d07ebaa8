//! A newcomer's first season: foods are listed, a round is planned, sent and reported, and nothing is typed twice.

use crate::workspace::Workspace;
use std::io::{Cursor, Read, Write};

/// Twelve invented foods: ten to test, one whose label decides, one that no test decides.
const FOODS: [(&str, &str, &str); 12] = [
    ("F01", "Harbour Loaf", "Water, rice flour, salt."),
    ("F02", "Slipway Rolls", "Water, maize starch, yeast."),
    ("F03", "Lantern Wafers", "Sugar, rice flour."),
    ("F04", "Ferry Crackers", "Maize flour, salt."),
    ("F05", "Heron Noodles", "Rice flour, water."),
    ("F06", "Tideline Flakes", "Maize, sugar, salt."),
    ("F07", "Windmill Puffs", "Maize, barley flour."),
    ("F08", "Marsh Bars", "Dates, sunflower seeds."),
    ("F09", "Quay Granola", "Buckwheat, honey, pears."),
    ("F10", "Dark Sauce", "Soya beans, salt, water."),
    ("F11", "Gull Pancakes", "Millet flour, milk, eggs."),
    ("F12", "Pebble Biscuits", "Rice flour, butter, sugar."),
];

#[test]
fn from_the_list_of_foods_to_results_no_figure_is_typed_twice() {
    let workspace = Workspace::new();
    let status = |day: &str| {
        let run = workspace.run(&["status", "--date", day]);
        run.exits(0).stdout()
    };
    // The least that a newcomer sets.
    workspace.with(
        "programme.toml",
        "[programme]\nname = \"Saltmarsh Table\"\nshort_name = \"SMT\"\n\
         [planning]\nextraction_price = 40.0\nshipping_price = 25.0\npackage_price = 4.5\ncurrency = \"EUR\"\n",
    );
    let headings = "package_code,product_id,round,lot,best_by,bought_on,shop,price,sent_on\r\n";
    workspace.with("registers/packages.csv", headings);
    let foods: String = FOODS
        .iter()
        .map(|(id, name, ingredients)| {
            let processing = if *id == "F10" { "fermented" } else { "none" };
            format!("{id},{name},gluten-free,\"{ingredients}\",{processing}\n")
        })
        .collect();
    workspace.with(
        "registers/products.csv",
        format!("product_id,name,claim,ingredients,processing\n{foods}"),
    );
    assert!(
        status("2031-03-01").contains("galleyproof plan"),
        "{}",
        status("2031-03-01")
    );

    // Eight products: 3 packages of 4.50 and 6 extractions of 40 are 253.50 each, with 25 for sending 2053.
    let plan = workspace.run(&["plan", "--budget", "2100", "--enter"]);
    assert!(
        plan.exits(0)
            .stdout()
            .contains("8 products, 24 packages and 48 extractions. It costs 2053.00 EUR"),
        "{}",
        plan.stdout()
    );
    let register = workspace.text("registers/packages.csv");
    assert!(register.starts_with(headings), "what stood there stays");
    assert_eq!(register.matches("\r\n").count(), 25, "{register}");
    assert!(
        !register.contains("F07") && !register.contains("F10"),
        "{register}"
    );
    assert!(
        status("2031-03-01").contains("galleyproof request --round 1"),
        "{}",
        status("2031-03-01")
    );

    workspace.run(&["request", "--round", "1"]).exits(0);
    assert!(workspace.path("out/requests/samples-1.pdf").is_file());
    // What was seen in the shop, and the day of sending.
    let rows = register.lines().skip(1);
    let sent: String = rows
        .enumerate()
        .map(|(lot, row)| {
            let known: Vec<&str> = row.split(',').collect();
            format!(
                "{},{},{},L{lot},,2031-03-04,Quayside Stores,4.20,2031-03-10\r\n",
                known[0], known[1], known[2]
            )
        })
        .collect();
    workspace.with("registers/packages.csv", format!("{headings}{sent}"));
    let waiting = status("2031-03-12");
    assert!(
        waiting.contains("2031-04-09"),
        "30 days after sending: {waiting}"
    );
    assert!(!waiting.contains("galleyproof request"), "{waiting}");

    // The lab fills in the table that came with the form, and nothing else.
    let empty = std::fs::read(workspace.path("out/requests/samples-1.xlsx")).expect("was made");
    let figures: Vec<String> = (0..48)
        .map(|row| match row % 3 {
            0 => "<5".to_owned(),
            1 => format!("{}", 6.0 + f64::from(row) / 10.0),
            _ => format!("{}", 6.5 + f64::from(row) / 10.0),
        })
        .collect();
    workspace.with("inbox/answer.xlsx", filled(&empty, &figures));
    let results = workspace.results();
    let problems: Vec<&serde_json::Value> = results["problems"]
        .as_array()
        .expect("a list")
        .iter()
        .filter(|problem| problem["severity"] != "note")
        .collect();
    assert!(problems.is_empty(), "{problems:#?}");
    let products = results["products"].as_array().expect("a list");
    assert_eq!(products.len(), 8);
    let mut reported: Vec<String> = products
        .iter()
        .flat_map(|product| product["packages"].as_array().expect("a list"))
        .flat_map(|package| package["extractions"].as_array().expect("a list"))
        .map(|extraction| extraction["reported"].as_str().expect("a text").to_owned())
        .collect();
    let mut sent = figures.clone();
    reported.sort();
    sent.sort();
    assert_eq!(
        reported, sent,
        "every reading that the lab wrote, and no other"
    );
}

/// The workbook with these results in the cells of its result column, as a spreadsheet program would save them.
fn filled(empty: &[u8], results: &[String]) -> Vec<u8> {
    let mut archive = zip::ZipArchive::new(Cursor::new(empty)).expect("a workbook is an archive");
    let mut writer = zip::ZipWriter::new(Cursor::new(Vec::new()));
    for index in 0..archive.len() {
        let mut part = archive.by_index(index).expect("a part");
        let name = part.name().expect("a name").into_owned();
        let mut bytes = Vec::new();
        part.read_to_end(&mut bytes).expect("can be read");
        if name == "xl/worksheets/sheet1.xml" {
            let mut sheet = String::from_utf8(bytes).expect("is text");
            for (row, result) in (5..).zip(results) {
                for (column, text) in [("C", result.as_str()), ("D", "5")] {
                    let start = sheet
                        .find(&format!("<c r=\"{column}{row}\""))
                        .unwrap_or_else(|| panic!("there is a cell {column}{row}"));
                    let end = start + sheet[start..].find("/>").expect("it is empty") + 2;
                    let cell = match text.strip_prefix('<') {
                        Some(n) => format!(
                            "<c r=\"{column}{row}\" t=\"inlineStr\"><is><t>&lt;{n}</t></is></c>"
                        ),
                        None => format!("<c r=\"{column}{row}\"><v>{text}</v></c>"),
                    };
                    sheet.replace_range(start..end, &cell);
                }
            }
            bytes = sheet.into_bytes();
        }
        let options = zip::write::SimpleFileOptions::default();
        writer.start_file(name, options).expect("begins");
        writer.write_all(&bytes).expect("writes");
    }
    writer.finish().expect("ends").into_inner()
}
