//! Figures, days and texts at the ends of what there can be: refused with a plain message or typeset, and never more.

use crate::flow::WITHIN;
use crate::make_binary::{BinaryCell, BinarySheet, xls};
use crate::workspace::{Run, Workspace};

/// What nobody may ever see.
fn is_plain(run: &Run) {
    let said = run.stdout() + &run.stderr();
    for word in ["fault of the program", "panicked", "RUST_BACKTRACE"] {
        assert!(!said.contains(word), "{said}");
    }
}

/// A workbook of two extractions a package, whose first figures are these and whose others are 6.
fn workbook(figures: &[f64]) -> Vec<u8> {
    let mut rows = vec![
        ["package", "extraction", "result (ppm gluten)"]
            .map(BinaryCell::of)
            .to_vec(),
    ];
    for at in 0..6 {
        rows.push(vec![
            BinaryCell::of(&format!("A{}", at / 2 + 1)),
            BinaryCell::Number((at % 2 + 1) as f64),
            BinaryCell::Number(figures.get(at).copied().unwrap_or(6.0)),
        ]);
    }
    xls(&[BinarySheet {
        name: "S".to_owned(),
        rows,
        ..BinarySheet::default()
    }])
}

#[test]
fn figures_at_the_ends_of_what_a_float_holds() {
    let workspace = Workspace::new();
    let refused: [&[f64]; 4] = [
        &[1e160],
        &[1e308, 12.5],
        &[f64::MAX; 6],
        &[12345678901234567890.0, -1e307],
    ];
    let printed: [&[f64]; 4] = [
        &[5e-324],
        &[5e-324; 6],
        &[1e6; 6],
        &[12.345678901234567, 1e-300, 999_999.9],
    ];
    for (figures, status) in refused
        .map(|one| (one, 1))
        .into_iter()
        .chain(printed.map(|one| (one, 0)))
    {
        workspace.with("inbox/a.xls", workbook(figures));
        let check = workspace.run(&["check"]);
        check.exits(status);
        let problems = workspace.results()["problems"].to_string();
        let is_refused = problems.contains("more gluten than there is sample");
        assert_eq!(is_refused, status == 1, "{figures:?}");
        for command in [
            &["-q", "run"][..],
            &["status", "--date", "2031-05-06"],
            &["explain", "P1"],
        ] {
            is_plain(&workspace.run(command));
        }
        assert!(
            workspace.path("out/sheets/P1--1.pdf").is_file(),
            "{figures:?}"
        );
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
