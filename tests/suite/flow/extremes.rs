//! Figures, days and texts at the ends of what there can be: refused with a plain message or typeset, and never more.

use crate::flow::WITHIN;
use crate::gather::bounds::with_sheet;
use crate::make_binary::{BinaryCell, BinarySheet, xls, xlsb};
use crate::make_ods::{OdsCell, OdsRow, OdsSheet, ods};
use crate::workspace::{Run, Workspace};

/// What nobody may ever see.
fn is_plain(run: &Run) {
    let said = run.stdout() + &run.stderr();
    for word in ["fault of the program", "panicked", "RUST_BACKTRACE"] {
        assert!(!said.contains(word), "{said}");
    }
}

/// The kinds of lab files in which a figure is a float.
const KINDS: [&str; 4] = ["xls", "xlsb", "xlsx", "ods"];

/// A lab file of two extractions a package, whose first figures are these and whose others are 6.
fn lab_file(kind: &str, figures: &[f64]) -> Vec<u8> {
    let head = ["package", "extraction", "result (ppm gluten)"];
    let row = |at: usize| {
        let figure = figures.get(at).copied().unwrap_or(6.0);
        (format!("A{}", at / 2 + 1), (at % 2 + 1) as f64, figure)
    };
    let rows = (0..6).map(row);
    match kind {
        "csv" => {
            let lines = rows.map(|(code, number, figure)| format!("{code},{number},{figure}\n"));
            (head.join(",") + "\n" + &lines.collect::<String>()).into_bytes()
        }
        "xlsx" => {
            let text = |text: &str| format!("<c t=\"inlineStr\"><is><t>{text}</t></is></c>");
            let figure = |figure: f64| format!("<c><v>{figure:E}</v></c>");
            let lines = rows.map(|(code, number, result)| {
                format!(
                    "<row>{}{}{}</row>",
                    text(&code),
                    figure(number),
                    figure(result)
                )
            });
            let head = format!("<row>{}</row>", head.map(text).concat());
            let lines = head + &lines.collect::<String>();
            with_sheet(&format!(
                "<worksheet><sheetData>{lines}</sheetData></worksheet>"
            ))
        }
        "ods" => {
            let number = |figure: f64| OdsCell::Number(figure, figure.to_string());
            let line = |cells: [OdsCell; 3]| OdsRow {
                cells: cells.into(),
                hidden: false,
            };
            let head = line(head.map(|text| OdsCell::Text(text.to_owned())));
            let lines = rows.map(|(code, extraction, figure)| {
                line([OdsCell::Text(code), number(extraction), number(figure)])
            });
            ods(&[OdsSheet {
                name: "S".to_owned(),
                rows: std::iter::once(head).chain(lines).collect(),
                hidden: false,
                hidden_columns: Vec::new(),
            }])
        }
        _ => {
            let lines = rows.map(|(code, number, figure)| {
                let figures = [number, figure].map(BinaryCell::Number);
                std::iter::once(BinaryCell::of(&code))
                    .chain(figures)
                    .collect()
            });
            let head = head.map(BinaryCell::of).to_vec();
            let sheet = [BinarySheet {
                name: "S".to_owned(),
                rows: std::iter::once(head).chain(lines).collect(),
                ..BinarySheet::default()
            }];
            if kind == "xls" {
                xls(&sheet)
            } else {
                xlsb(&sheet)
            }
        }
    }
}

/// More than there is sample, or less than nothing; and what a food could have.
const REFUSED: [&[f64]; 4] = [
    &[1e160],
    &[1e308, 12.5],
    &[f64::MAX; 6],
    &[12345678901234567890.0, -1e307],
];
const PRINTED: [&[f64]; 4] = [
    &[5e-324],
    &[5e-324; 6],
    &[1e6; 6],
    &[12.345678901234567, 1e-300, 999_999.9],
];

fn with_their_status() -> impl Iterator<Item = (&'static [f64], i32)> {
    let refused = REFUSED.into_iter().map(|figures| (figures, 1));
    refused.chain(PRINTED.into_iter().map(|figures| (figures, 0)))
}

#[test]
fn figures_at_the_ends_of_what_a_float_holds_in_any_kind_of_file() {
    for kind in KINDS {
        for (figures, status) in with_their_status() {
            let workspace = Workspace::new();
            workspace.with(&format!("inbox/a.{kind}"), lab_file(kind, figures));
            let check = workspace.run(&["check", "--format", "json"]);
            is_plain(&check);
            check.exits(status);
            let is_refused = check.stdout().contains("more gluten than there is sample");
            assert_eq!(is_refused, status == 1, "{kind}: {figures:?}");
        }
    }
}

/// As text they have hundreds of digits, and each is read or told.
#[test]
fn figures_of_very_many_digits_are_read_or_told() {
    for (figures, _) in with_their_status() {
        let workspace = Workspace::new();
        workspace.with("inbox/a.csv", lab_file("csv", figures));
        is_plain(&workspace.run(&["check"]));
        let results = workspace.results();
        let packages = results["products"][0]["packages"].as_array();
        let extractions = packages
            .into_iter()
            .flatten()
            .flat_map(|package| package["extractions"].as_array())
            .flatten();
        let read = extractions
            .filter(|one| one["lower_ppm"].is_number())
            .count();
        let problems = results["problems"].as_array().into_iter().flatten();
        let told = problems.filter(|one| one["column"] == "C");
        assert_eq!(read + told.count(), 6, "{figures:?}: {results:#}");
    }
}

#[test]
fn figures_at_the_ends_of_what_a_float_holds_are_printed_and_issued() {
    for (figures, status) in with_their_status() {
        let workspace = Workspace::new();
        workspace.with("inbox/a.xls", lab_file("xls", figures));
        for command in [
            &["-q", "run"][..],
            &["status", "--date", "2031-05-06"],
            &["explain", "P1"],
            &["facts", "P1"],
            &["-q", "issue", "--date", "2031-05-06"],
        ] {
            is_plain(&workspace.run(command));
        }
        let sheet = workspace.path("out/sheets/P1--1.pdf");
        assert!(sheet.is_file(), "{figures:?}");
        let facts = workspace.run(&["facts", "P1"]);
        facts.exits(0);
        let facts: serde_json::Value =
            serde_json::from_str(&facts.stdout()).expect("facts are JSON");
        assert!(facts["content"].is_object());
        let is_within = figures.iter().all(|figure| *figure < 20.0);
        if status == 0 && is_within {
            assert!(workspace.path("archive/2031-05-06").is_dir(), "{figures:?}");
        }
    }
}

#[test]
fn limits_that_no_food_can_reach_are_faults_of_the_settings() {
    let workspace = Workspace::new();
    let settings = workspace.text("programme.toml");
    for line in [
        "[rule]\nregime = \"custom\"\nlimit_passes = true\nlimit_ppm = 1e308",
        "[testing]\nuloq_ppm = 12345678901234567890.0",
        "[testing]\nlod_ppm = 1e160",
    ] {
        workspace.with("programme.toml", format!("{settings}{line}\n"));
        let check = workspace.run(&["check"]);
        check.exits(2);
        assert!(
            check.stderr().contains("cannot be more than 1000000"),
            "{}",
            check.stderr()
        );
    }
}

#[test]
fn days_from_the_year_1_to_9999() {
    for day in ["0001-01-01", "1582-10-10", "9999-12-31"] {
        let workspace = Workspace::new();
        workspace.with("inbox/a.csv", WITHIN);
        workspace.with(
            "registers/packages.csv",
            format!("package_code,product_id,bought_on,sent_on\nA1,P1,{day},{day}\nA2,P1,{day},{day}\nA3,P1,{day},{day}\n"),
        );
        workspace.with(
            "registers/followups.csv",
            format!("product_id,round,on,kind,due_on\nP1,1,{day},notice-sent,{day}\n"),
        );
        for command in ["check", "run", "status", "plan", "issue"] {
            let run = workspace.run(&["-q", command, "--date", day]);
            run.exits(0);
            is_plain(&run);
        }
        assert!(workspace.path("archive").join(day).is_dir());
    }
}

#[test]
fn a_thousand_extractions_of_a_package_are_typeset() {
    let workspace = Workspace::new();
    let mut rows = "package,extraction,result (ppm gluten)\n".to_owned();
    for at in 0..1000 {
        for package in ["A1", "A2", "A3"] {
            rows += &format!("{package},{},{}.5\n", at + 1, 6 + at % 7);
        }
    }
    workspace.with("inbox/a.csv", rows);
    workspace.run(&["run"]).exits(0);
    assert_eq!(
        workspace.results()["products"][0]["verdict"],
        "within_limit"
    );
    let pages = lopdf::Document::load(workspace.path("out/sheets/P1--1.pdf"))
        .expect("a PDF")
        .get_pages();
    assert!(pages.len() < 60, "{} pages", pages.len());
}

#[test]
fn ten_thousand_characters_in_each_field() {
    let long = "Ω漢 é-".repeat(2_000);
    let fields = [
        "brand",
        "maker",
        "maker_email",
        "maker_address",
        "category",
        "certifier",
        "ingredients",
        "matrix",
        "barcode",
        "net_content",
    ];
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    workspace.with(
        "registers/products.csv",
        format!(
            "product_id,name,claim,{}\nP1,Harbour Loaf,gluten-free{}\n",
            fields.join(","),
            format!(",\"{long}\"").repeat(fields.len())
        ),
    );
    workspace.with(
        "registers/packages.csv",
        format!(
            "package_code,product_id,lot,best_by,shop,price,custody\n{}",
            ["A1", "A2", "A3"]
                .map(|code| format!("{code},P1{}\n", format!(",\"{long}\"").repeat(5)))
                .concat()
        ),
    );
    let run = workspace.run(&["-q", "run"]);
    is_plain(&run);
    assert!(
        !run.stderr().contains("could not be made"),
        "{}",
        run.stderr()
    );
    let problems = workspace.results()["problems"].to_string();
    for field in ["brand", "category", "barcode", "net_content"] {
        let message = format!("“{field}” has 10000 characters, and 2000 are the most");
        assert!(problems.contains(&message), "{field}");
    }
    assert_eq!(problems.matches("are the most").count(), 4);
    for document in ["sheets/P1--1.pdf", "summary.pdf", "newsletter/digest.pdf"] {
        assert!(workspace.path("out").join(document).is_file(), "{document}");
    }
    is_plain(&workspace.run(&["-q", "issue", "--date", "2031-05-06"]));
    // Without a name there is no product.
    workspace.with(
        "registers/products.csv",
        format!("product_id,name,claim\nP1,\"{long}\",gluten-free\n"),
    );
    let check = workspace.run(&["check"]);
    is_plain(&check);
    let problems = workspace.results()["problems"].to_string();
    assert!(problems.contains("“name” has 10000 characters"));
    let settings = format!("[programme]\nname = \"{long}\"\nshort_name = \"TKW\"\n");
    workspace.with("programme.toml", settings);
    let check = workspace.run(&["check"]);
    check.exits(2);
    assert!(
        check.stderr().contains("5000 characters at most"),
        "{}",
        check.stderr()
    );
}

/// As many letters as a field takes, none of which any font has: a page names the first of them.
#[cfg(target_os = "linux")]
#[test]
fn letters_that_no_font_has_in_the_longest_fields() {
    let workspace = Workspace::new();
    workspace.with("inbox/a.csv", WITHIN);
    let (long, short) = ("\u{1f35e}".repeat(20_000), "\u{1f35e}".repeat(2_000));
    workspace.with(
        "registers/products.csv",
        format!(
            "product_id,name,claim,brand,category,ingredients,maker_address\nP1,{short},gluten-free,{short},{short},{long},{long}\n"
        ),
    );
    let taken = workspace.measured(&["-q", "run"]);
    for document in ["sheets/P1--1.pdf", "summary.pdf", "newsletter/digest.pdf"] {
        assert!(workspace.path("out").join(document).is_file(), "{document}");
    }
    println!("{taken:?}");
    assert!(taken.megabytes < 1_000, "{taken:?}");
    assert!(taken.cpu_seconds < 30, "{taken:?}");
    let issue = workspace.run(&["-q", "issue", "--date", "2031-05-06"]);
    is_plain(&issue);
    issue.exits(0);
}
