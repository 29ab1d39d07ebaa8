//! Registers as sheets of one workbook: read as files of their own are, and never beside one.

use crate::workspace::Workspace;
use galleyproof::model::guide::{GUIDES, Kind};
use galleyproof::model::label::TermClass;
use galleyproof::model::registers::{FollowupKind, Oats, Processing};
use rust_xlsxwriter::{ExcelDateTime, Format, Workbook};
use std::fs;

/// A sheet: its name, and its rows as text. A day is written as a day.
type Rows<'a> = (&'a str, Vec<Vec<String>>);

fn book(sheets: &[Rows<'_>]) -> Vec<u8> {
    let days = Format::new().set_num_format("yyyy-mm-dd");
    let mut book = Workbook::new();
    for (name, rows) in sheets {
        let sheet = book.add_worksheet().set_name(*name).expect("can be named");
        for (row, cells) in (0..).zip(rows) {
            for (column, cell) in (0..).zip(cells) {
                let is_day = cell.len() == 10 && cell.parse::<chrono::NaiveDate>().is_ok();
                let day = is_day.then(|| ExcelDateTime::parse_from_str(cell).expect("is a day"));
                match day {
                    Some(day) => sheet.write_with_format(row, column, &day, &days),
                    None => sheet.write(row, column, cell),
                }
                .expect("can be written");
            }
        }
    }
    book.save_to_buffer().expect("can be built")
}

fn rows(table: &str) -> Vec<Vec<String>> {
    let reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .from_reader(table.as_bytes());
    let records = reader.into_records().map(|record| record.expect("is CSV"));
    records
        .map(|record| record.iter().map(str::to_owned).collect())
        .collect()
}

/// The demo with its registers moved into one workbook; `row` puts a row below the headings of each.
fn moved(example: bool) -> Workspace {
    let workspace = Workspace::demo();
    let names = [
        "products",
        "packages",
        "corrections",
        "followups",
        "reports",
    ];
    let sheets: Vec<Rows<'_>> = names
        .iter()
        .map(|name| {
            let path = format!("registers/{name}.csv");
            let mut rows = rows(&workspace.text(&path));
            fs::remove_file(workspace.path(&path)).expect("is there");
            if example {
                let guide = GUIDES.iter().find(|guide| guide.name == *name);
                let column = |heading: &String| {
                    let columns = guide.expect("is explained").columns;
                    let known = columns.iter().find(|column| column.name == heading);
                    known.map_or("", |column| column.example).to_owned()
                };
                let example = rows[0].iter().map(column).collect();
                rows.insert(1, example);
            }
            (*name, rows)
        })
        .collect();
    workspace.with("registers/registers.xlsx", book(&sheets));
    workspace
}

#[test]
fn registers_in_one_workbook_give_what_files_of_their_own_give() {
    // Why a sheet is held names the row of a register, which is another one in the workbook.
    let results = |workspace: &Workspace| {
        let mut results = workspace.results();
        let products = results["products"].as_array_mut().expect("a list");
        for product in products {
            product["publication"]["why"].take();
        }
        results
    };
    let plain = results(&Workspace::demo());
    for example in [false, true] {
        let workspace = moved(example);
        let together = results(&workspace);
        for part in ["products", "counts", "rule"] {
            assert_eq!(plain[part], together[part], "{part}, example {example}");
        }
    }
}

#[test]
fn a_fault_in_the_workbook_is_named_with_its_sheet_and_cell() {
    let workspace = Workspace::new();
    fs::remove_file(workspace.path("registers/products.csv")).expect("is there");
    let products = rows(
        "product_id,name,claim,oats\n(example),Oat Biscuits,gluten-free,purity-protocol\nP1,Loaf,gluten-free,wild\n",
    );
    workspace.with("registers/registers.xlsx", book(&[("Products", products)]));
    let told = workspace.run(&["check"]).exits(1).stdout();
    assert!(told.contains("registers/registers.xlsx"), "{told}");
    assert!(told.contains("sheet “Products”, cell D3"), "{told}");
    assert!(!told.contains("D2"), "{told}");
}

#[test]
fn a_register_is_not_in_a_file_and_in_the_workbook() {
    let workspace = Workspace::new();
    let headings = || rows("product_id,name,claim\n(example),Oat Biscuits,gluten-free\n");
    workspace.with(
        "registers/registers.xlsx",
        book(&[("products", headings())]),
    );
    workspace.run(&["check"]).exits(0);
    let mut with_a_row = headings();
    with_a_row.push(["P2", "Bun", "gluten-free"].map(str::to_owned).to_vec());
    workspace.with(
        "registers/registers.xlsx",
        book(&[("products", with_a_row)]),
    );
    let told = workspace.run(&["check"]).exits(2).stderr();
    assert!(told.contains("two registers of products"), "{told}");
    assert!(told.contains("a sheet of the workbook"), "{told}");
    workspace.with("registers/registers.ods", "x");
    let told = workspace.run(&["check"]).exits(2).stderr();
    assert!(
        told.contains("registers.ods cannot be read") || told.contains("two workbooks"),
        "{told}"
    );
}

#[test]
fn a_sheet_that_is_nearly_a_register_keeps_products_from_their_verdict() {
    let workspace = Workspace::new();
    let sheets = [
        ("correction", rows("file,package_code,action\n")),
        ("shopping", rows("flour\n")),
    ];
    workspace.with("registers/registers.xlsx", book(&sheets));
    let results = workspace.results();
    let problems = results["problems"].as_array().expect("are listed");
    let code_of = |sheet: &str| {
        let of = problems.iter().find(|problem| problem["sheet"] == sheet);
        of.map(|problem| problem["code"].as_str().expect("is a word").to_owned())
    };
    assert_eq!(code_of("correction").as_deref(), Some("register_error"));
    assert_eq!(code_of("shopping").as_deref(), Some("suspicious"));
}

#[test]
fn what_is_kept_in_the_workbook_is_not_written_beside_it() {
    let workspace = moved(false);
    let before = fs::read(workspace.path("registers/registers.xlsx")).expect("is there");
    let run = workspace.run(&[
        "log",
        "action",
        "TW-003",
        "--date",
        "2031-12-01",
        "--statement",
        "Recalled.",
    ]);
    let told = run.exits(2).stderr();
    assert!(told.contains("registers.xlsx is a workbook"), "{told}");
    assert!(told.contains("product_id TW-003"), "{told}");
    assert!(!workspace.path("registers/followups.csv").exists());
    let after = fs::read(workspace.path("registers/registers.xlsx")).expect("is there");
    assert_eq!(before, after);
}

#[test]
fn a_new_folder_with_a_workbook_is_read_without_a_word_and_holds_no_product() {
    let workspace = Workspace::new();
    workspace.run(&["init", "fresh", "--xlsx"]).exits(0);
    let told = workspace.run(&["check", "fresh"]).exits(0).stdout();
    assert!(told.contains("Nothing needs to be looked at"), "{told}");
    let bytes = fs::read(workspace.path("fresh/registers/registers.xlsx")).expect("is there");
    let book: calamine::Xlsx<_> =
        calamine::open_workbook_from_rs(std::io::Cursor::new(bytes)).expect("is a workbook");
    let names = calamine::Reader::sheet_names(&book);
    let kept: Vec<&str> = GUIDES.iter().map(|guide| guide.name).collect();
    assert_eq!(names, kept);
    workspace
        .run(&["init", "other", "--xlsx", "--demo"])
        .exits(2);
}

#[test]
fn the_lists_of_words_are_those_that_are_read() {
    fn words<T>(all: &'static [(T, &'static str)]) -> Vec<&'static str> {
        all.iter().map(|(_, word)| *word).collect()
    }
    let listed = |register: &str, column: &str| -> Vec<&str> {
        let guide = GUIDES
            .iter()
            .find(|guide| guide.name == register)
            .expect("is explained");
        let column = guide
            .columns
            .iter()
            .find(|one| one.name == column)
            .expect("is explained");
        match column.kind {
            Kind::Word(words) => words.to_vec(),
            _ => panic!("{} has no list", column.name),
        }
    };
    assert_eq!(listed("products", "oats"), words(Oats::ALL));
    assert_eq!(listed("products", "processing"), words(Processing::ALL));
    assert_eq!(listed("followups", "kind"), words(FollowupKind::ALL));
    assert_eq!(listed("terms", "class"), words(TermClass::ALL));
}

#[test]
fn the_page_of_explanations_is_the_same_everywhere() {
    let workspace = Workspace::new();
    workspace.run(&["init", "fresh"]).exits(0);
    let page = workspace.text("fresh/registers/READ ME FIRST.txt");
    let printed = workspace.run(&["registers"]).exits(0).stdout();
    let flat = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert_eq!(flat(&page), flat(&printed));
    let help = workspace.run(&["help", "registers"]).exits(0).stdout();
    assert!(flat(&help).contains(&flat(&page)));
}

#[test]
fn a_row_typed_over_the_example_is_not_lost_with_its_mark() {
    let workspace = Workspace::new();
    let typed = "file,package_code,extraction,action,reason,by,on\n\
        (example),A1,1,exclude,A spill,O. Fennimore,2031-03-20\n";
    let check = |workspace: &Workspace| workspace.run(&["check"]).exits(1).stdout();
    workspace.with("registers/corrections.csv", typed);
    let told = check(&workspace);
    assert!(
        told.contains("registers/corrections.csv") && told.contains("A2"),
        "{told}"
    );
    fs::remove_file(workspace.path("registers/corrections.csv")).expect("is there");
    workspace.with(
        "registers/registers.xlsx",
        book(&[("corrections", rows(typed))]),
    );
    let told = check(&workspace);
    assert!(
        told.contains("registers/registers.xlsx") && told.contains("A2"),
        "{told}"
    );
}

#[test]
fn a_file_nearly_named_as_the_workbook_lets_nothing_be_decided() {
    for name in [
        "register.xlsx",
        "registers.xlsm",
        "Registers (1).xlsx",
        "registers.csv",
    ] {
        let workspace = Workspace::new();
        workspace.with("inbox/a.csv", "Sample,Extraction,Gluten (ppm)\nA1,1,<5\nA1,2,<5\nA2,1,<5\nA2,2,<5\nA3,1,<5\nA3,2,<5\n");
        assert_eq!(
            workspace.results()["products"][0]["verdict"],
            "within_limit"
        );
        workspace.with(&format!("registers/{name}"), "x");
        let results = workspace.results();
        assert_eq!(results["products"][0]["verdict"], "no_verdict", "{name}");
        let problems = results["problems"].as_array().expect("are listed");
        let told = problems
            .iter()
            .any(|problem| problem["code"] == "register_error");
        assert!(told, "{name}: {problems:?}");
    }
}
