//! The command: which products, in what order, under which codes, at what cost.

use crate::workspace::{Workspace, tree};
use galleyproof::judge::planning::codes::is_sound;
use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::vello_cpu::color::palette::css::WHITE;
use hayro::{RenderCache, RenderSettings, render};
use std::collections::BTreeSet;

const PRICES: &str = "\n[planning]\nextraction_price = 40\nshipping_price = 30\npackage_price = 5\ncurrency = \"EUR\"\n";

/// A programme with one product in each state.
fn every_state() -> Workspace {
    let workspace = Workspace::new();
    settings(&workspace, "us", PRICES);
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,category,ingredients,processing\n\
         ANEW,Lantern Wafers,gluten-free,Biscuits,\"Rice flour, sugar.\",none\n\
         BOPEN,Slipway Rolls,gluten-free,Bread,\"Rice flour, water.\",none\n\
         COVER,Ferry Crackers,gluten-free,Biscuits,\"Maize, salt.\",none\n\
         DWAIT,Tideline Flakes,gluten-free,Cereals,\"Maize.\",none\n\
         EOLD,Harbour Loaf,gluten-free,Bread,\"Rice flour, water.\",none\n\
         FOLDER,Heron Noodles,gluten-free,Pasta,\"Rice flour.\",none\n\
         GMALT,Windmill Puffs,gluten-free,Cereals,\"Maize, barley malt extract.\",none\n\
         HSAUCE,Dark Sauce,gluten-free,Sauces,\"Soya beans, salt.\",fermented\n\
         ISENT,Marsh Bars,gluten-free,Bars,\"Dates, seeds.\",none\n\
         JCLAIM,Plain Puffs,wholesome,Cereals,\"Maize.\",none\n",
    );
    let package = |id: &str, n: u32| {
        let day = match id {
            "FOLDER" => "2030-01-10",
            _ => "2030-06-10",
        };
        format!("{id}-{n},{id},1,L{n},{day},{},2030-06-12\n", 3 + n)
    };
    let bought = ["BOPEN", "COVER", "DWAIT", "EOLD", "FOLDER", "ISENT"];
    let rows: String = bought
        .iter()
        .flat_map(|id| (1..=3).map(move |n| package(id, n)))
        .collect();
    workspace.with(
        "registers/packages.csv",
        format!("package_code,product_id,round,lot,bought_on,price,sent_on\n{rows}"),
    );
    let result = |id: &str, n: u32, first: &str, second: &str| {
        let day = match id {
            "FOLDER" => "2030-02-01",
            _ => "2030-07-01",
        };
        format!("{id}-{n},1,{first},{day}\n{id}-{n},2,{second},{day}\n")
    };
    let mut lab = "Sample,Extraction,Gluten (ppm),Tested on\n".to_owned();
    for n in 1..=3 {
        lab += &result("BOPEN", n, "6", if n == 1 { "19" } else { "7" });
        lab += &result("COVER", n, "40", "42");
        lab += &result("DWAIT", n, "40", "42");
        lab += &result("EOLD", n, "<5", "<5");
        lab += &result("FOLDER", n, "<5", "<5");
    }
    workspace.with("inbox/first.csv", lab);
    workspace.with(
        "registers/followups.csv",
        "product_id,round,on,kind\nCOVER,1,2030-07-10,notice-sent\nCOVER,1,2030-07-20,reply\nDWAIT,1,2030-07-10,notice-sent\n",
    );
    workspace
}

fn settings(workspace: &Workspace, regime: &str, more: &str) {
    workspace.with(
        "programme.toml",
        format!(
            "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n[rule]\nregime = \"{regime}\"\n{more}"
        ),
    );
}

/// The rows of a table without its headings.
fn rows(workspace: &Workspace, path: &str) -> Vec<Vec<String>> {
    let text = workspace.text(path);
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let records = reader.records().map(|record| record.expect("a record"));
    records
        .map(|record| record.iter().map(str::to_owned).collect())
        .collect()
}

/// The products of the buying list, in its order, each once.
fn bought(workspace: &Workspace) -> Vec<String> {
    let mut ids: Vec<String> = rows(workspace, "out/plan/buying-list.csv")
        .into_iter()
        .map(|row| row[0].clone())
        .collect();
    ids.dedup();
    ids
}

#[test]
fn products_come_in_the_order_in_which_they_are_worth_testing() {
    let workspace = every_state();
    let run = workspace.run(&["plan"]);
    let told = run.exits(0).stdout();
    assert_eq!(
        bought(&workspace),
        ["ANEW", "BOPEN", "COVER", "FOLDER", "EOLD"]
    );
    let (_, apart) = told
        .split_once("Write, do not test")
        .expect("is told apart");
    let (write, not_now) = apart.split_once("Not now").expect("is told");
    assert!(
        write.contains("GMALT") && write.contains("barley malt extract"),
        "{told}"
    );
    for id in ["DWAIT", "HSAUCE", "ISENT", "JCLAIM"] {
        assert!(not_now.contains(id), "{id}: {told}");
    }
    assert!(
        rows(&workspace, "out/plan/packages.csv")
            .iter()
            .all(|row| row[2] == "2")
    );
    // A competitive assay sees a fermented food, where the rule lets an assay decide at all.
    settings(&workspace, "eu", PRICES);
    let told = workspace.run(&["plan"]).exits(0).stdout();
    assert!(
        told.contains("Dark Sauce: Never tested; needs a competitive assay"),
        "{told}"
    );
}

#[test]
fn a_budget_takes_the_longest_beginning_of_the_list_that_it_pays_for() {
    let workspace = every_state();
    // A product costs 3 packages and 6 extractions of 40; sending 30. Paid were 4, 5 and 6 a package: 255 a product.
    for (budget, products) in [
        ("1305", 5),
        ("1304.99", 4),
        ("285", 1),
        ("284", 0),
        ("0", 0),
    ] {
        workspace.run(&["plan", "--budget", budget]).exits(0);
        assert_eq!(bought(&workspace).len(), products, "{budget}");
    }
    let told = workspace
        .run(&["plan", "--budget", "540"])
        .exits(0)
        .stdout();
    assert!(
        told.contains("It costs 540.00 EUR of a budget of 540.00 EUR."),
        "{told}"
    );
    assert!(told.contains("beyond the budget"), "{told}");
    settings(&workspace, "us", "");
    let refused = workspace.run(&["plan", "--budget", "540"]);
    assert!(refused.exits(2).stderr().contains("extraction_price"));
}

#[test]
fn codes_are_sound_and_new_and_say_nothing() {
    let workspace = every_state();
    workspace.run(&["plan", "--seed", "7"]).exits(0);
    let first = rows(&workspace, "out/plan/packages.csv");
    assert_eq!(first.len(), 15);
    let codes: Vec<&str> = first.iter().map(|row| row[0].as_str()).collect();
    assert!(codes.iter().all(|code| is_sound(code)), "{codes:?}");
    assert!(codes.is_sorted(), "the rows are in the order of the codes");
    let before = tree(&workspace.path("out/plan"));
    workspace.run(&["plan", "--seed", "7"]).exits(0);
    assert_eq!(
        tree(&workspace.path("out/plan")),
        before,
        "the same seed, the same bytes"
    );
    // A code that the register has, even in a row that cannot be used, is not drawn again.
    let mut register = workspace.text("registers/packages.csv");
    register += &format!(
        "{},NOSUCH,1,,,,\n{},EOLD,9,,,,2031-01-01\n",
        codes[0].to_lowercase(),
        codes[1]
    );
    workspace.with("registers/packages.csv", register);
    workspace
        .run(&["plan", "--seed", "7", "--round", "next"])
        .exits(1);
    let again: BTreeSet<String> = rows(&workspace, "out/plan/packages.csv")
        .into_iter()
        .map(|row| row[0].clone())
        .collect();
    assert!(
        !again.contains(codes[0]) && !again.contains(codes[1]),
        "{again:?}"
    );
    assert!(again.contains(codes[2]));
    // Without a seed the registers' content decides.
    workspace.run(&["plan"]).exits(1);
    let own = rows(&workspace, "out/plan/packages.csv");
    assert_ne!(own[0][0], codes[0]);
}

#[test]
fn what_cannot_be_planned_is_refused_in_words() {
    let workspace = every_state();
    for (arguments, word) in [
        (&["plan", "--only", "ENEW"][..], "ANEW"),
        (
            &["plan", "--extractions", "1"],
            "nothing is decided on one extraction",
        ),
        (&["plan", "--packages", "0"], "from 1"),
        (&["plan", "--round", "a b"], "can be no round"),
        (&["plan", "--labels", "9x99"], "sheet of labels"),
        (&["plan", "--budget=-1"], "budget"),
    ] {
        let run = workspace.run(arguments);
        let told = run.exits(2).stderr();
        assert!(told.contains(word), "{arguments:?}: {told}");
    }
    assert!(!workspace.path("out/plan").exists(), "nothing is written");
    workspace
        .run(&["plan", "--only", "DWAIT", "-C", "."])
        .exits(0);
    // Who asks for a product by name gets it, though its maker has not answered.
    assert_eq!(bought(&workspace), ["DWAIT"]);
}

#[test]
fn blinds_have_codes_like_the_others_and_their_key_apart() {
    let workspace = every_state();
    workspace
        .run(&["plan", "--blinds", "--packages", "9"])
        .exits(0);
    let key = rows(&workspace, "out/plan/blinds.csv");
    // 45 packages: one in twenty, rounded up.
    assert_eq!(key.len(), 3);
    let kinds: BTreeSet<&str> = key.iter().map(|row| row[1].as_str()).collect();
    assert_eq!(kinds.len(), 2, "{kinds:?}");
    let codes: BTreeSet<String> = rows(&workspace, "out/plan/packages.csv")
        .into_iter()
        .map(|row| row[0].clone())
        .collect();
    assert!(
        key.iter()
            .all(|row| is_sound(&row[0]) && !codes.contains(&row[0]))
    );
    workspace.run(&["plan", "--enter"]).exits(0);
    assert!(
        !workspace.path("out/plan/blinds.csv").exists(),
        "no key without blinds"
    );
    workspace.with("key.csv", "package_code,content\nZZ9ZZZZ,gluten added\n");
    workspace
        .run(&["request", "--round", "2", "--blinds", "key.csv"])
        .exits(0);
    let form = workspace.text("out/requests/samples-2.csv");
    assert!(
        form.contains("ZZ9ZZZZ") && !form.contains("gluten added"),
        "{form}"
    );
}

#[test]
fn what_the_lab_finds_in_blinds_is_told_to_the_programme_alone() {
    let workspace = every_state();
    workspace
        .run(&["plan", "--blinds", "--enter", "--only", "ANEW"])
        .exits(0);
    let packages = rows(&workspace, "out/plan/packages.csv");
    let key = rows(&workspace, "registers/blinds.csv");
    assert_eq!(key, rows(&workspace, "out/plan/blinds.csv"));
    let code = |content: &str| {
        let row = key.iter().find(|row| row[1] == content);
        row.expect("one of each kind")[0].clone()
    };
    let (without, added) = (code("no-gluten"), code("gluten-added"));
    // The person who made them writes down how much was added; the form has their codes without being asked.
    let filled = workspace.text("registers/blinds.csv");
    let filled = filled.replace("gluten-added,,,", "gluten-added,bread,20,");
    assert!(filled.contains(",20,"), "{filled}");
    workspace.with("registers/blinds.csv", filled);
    workspace.run(&["request", "--round", "2"]).exits(0);
    let form = workspace.text("out/requests/samples-2.csv");
    assert!(form.contains(&without) && form.contains(&added), "{form}");
    assert!(!form.contains("gluten-added"), "{form}");

    let answer = |of_none: &str, of_added: &str| {
        let mut lab = "Sample,Extraction,Gluten (ppm),Tested on\n".to_owned();
        for row in &packages {
            lab += &format!("{0},1,<5,2030-09-01\n{0},2,<5,2030-09-01\n", row[0]);
        }
        lab += &format!("{without},1,<5,2030-09-01\n{without},2,{of_none},2030-09-01\n");
        lab += &format!("{added},1,{of_added},2030-09-01\n{added},2,{of_added},2030-09-01\n");
        workspace.with("inbox/second.csv", lab);
        workspace.results()
    };
    let told = |results: &serde_json::Value| -> Vec<(String, String)> {
        let problems = results["problems"].as_array().expect("a list").iter();
        let text = |value: &serde_json::Value| value.as_str().expect("a text").to_owned();
        problems
            .map(|problem| (text(&problem["code"]), text(&problem["message"])))
            .filter(|(code, _)| code.starts_with("blind"))
            .collect()
    };
    let sound = answer("<5", "18");
    let notes = told(&sound);
    assert!(notes.iter().all(|(code, _)| code == "blind_result"));
    assert!(
        notes
            .iter()
            .any(|(_, message)| message.contains(&added) && message.contains("90 %")),
        "{notes:?}"
    );
    assert!(
        workspace
            .run(&["check"])
            .exits(0)
            .stdout()
            .contains(&without)
    );
    let doubtful = answer("9", "8");
    let warnings = told(&doubtful);
    assert_eq!(warnings.len(), 2);
    assert!(
        warnings.iter().all(|(code, _)| code == "blind_differs"),
        "{warnings:?}"
    );
    // Nothing but the list of problems has their codes, and they count nowhere.
    assert!(sound["counts"] == doubtful["counts"]);
    for part in ["products", "counts"] {
        let text = doubtful[part].to_string();
        assert!(!text.contains(&without) && !text.contains(&added), "{part}");
    }
    workspace
        .run(&["issue", "--only", "ANEW", "--date", "2030-10-01"])
        .exits(0);
    let public: Vec<u8> = tree(&workspace.path("archive"))
        .into_iter()
        .filter(|(path, _)| path.contains("public"))
        .flat_map(|(path, bytes)| [path.into_bytes(), bytes].concat())
        .collect();
    let public = String::from_utf8_lossy(&public);
    assert!(public.contains("ANEW"), "the public part was looked at");
    assert!(!public.contains(&without) && !public.contains(&added));
}

#[test]
fn a_key_that_cannot_be_used_is_named_by_its_row() {
    let workspace = every_state();
    workspace.with(
        "registers/blinds.csv",
        "package_code,content,added_ppm\nEOLD-1,no-gluten,\nBL-1,water,\nBL-2,gluten-added,much\nBL-3,gluten-added,20\nbl-3,no-gluten,\n",
    );
    let results = workspace.results();
    let faults: Vec<(u64, &str)> = results["problems"]
        .as_array()
        .expect("a list")
        .iter()
        .filter(|problem| problem["file"] == "registers/blinds.csv")
        .map(|problem| {
            assert_eq!(problem["code"], "register_error");
            (
                problem["row"].as_u64().expect("a row"),
                problem["column"].as_str().expect("a column"),
            )
        })
        .collect();
    assert_eq!(faults, [(2, "A"), (3, "B"), (4, "C"), (6, "A")]);
}

#[test]
fn an_independent_reader_reads_every_label() {
    for (paper, columns, down) in [("a4", 5, 13), ("us-letter", 3, 8)] {
        let grid = format!("{columns}x{down}");
        let workspace = every_state();
        workspace.with(
            "programme.toml",
            format!("[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\npaper = \"{paper}\"\n"),
        );
        workspace.run(&["plan", "--labels", &grid]).exits(0);
        let codes: BTreeSet<String> = rows(&workspace, "out/plan/packages.csv")
            .into_iter()
            .map(|row| row[0].clone())
            .collect();
        let pdf = std::fs::read(workspace.path("out/plan/labels.pdf")).expect("was written");
        let pdf = Pdf::new(pdf).expect("a PDF");
        let page = pdf.pages().first().expect("a page");
        let settings = RenderSettings {
            bg_color: WHITE,
            x_scale: 5.0,
            y_scale: 5.0,
            ..RenderSettings::default()
        };
        let interpreter = InterpreterSettings::default();
        let pixels = render(page, &RenderCache::new(), &interpreter, &settings);
        let (width, height) = (usize::from(pixels.width()), usize::from(pixels.height()));
        // Label by label, as one holds a telephone over it.
        let (wide, high) = (width / columns, height / down);
        let read: BTreeSet<String> = (0..codes.len())
            .map(|label| {
                let (left, top) = (label % columns * wide, label / columns * high);
                let mut picture =
                    rqrr::PreparedImage::prepare_from_greyscale(wide, high, |x, y| {
                        pixels.data()[(top + y) * width + left + x].g
                    });
                let grids = picture.detect_grids();
                assert_eq!(grids.len(), 1, "label {label} of {paper} {grid}");
                let read = grids[0].decode();
                read.unwrap_or_else(|error| panic!("label {label} of {paper} {grid}: {error}"))
                    .1
            })
            .collect();
        assert_eq!(read, codes, "{paper} {grid}");
    }
}

#[test]
fn documents_of_a_plan_are_made_in_both_papers_with_titles() {
    let workspace = every_state();
    workspace.run(&["plan", "--date", "2031-01-02"]).exits(0);
    for path in ["out/plan/plan.pdf", "out/plan/labels.pdf"] {
        let pdf = std::fs::read(workspace.path(path)).expect("was written");
        let pdf = lopdf::Document::load_mem(&pdf).expect("a PDF");
        let catalog = pdf.catalog().expect("has a catalog");
        assert!(catalog.get(b"MarkInfo").is_ok(), "{path} is tagged");
        assert!(!pdf.get_pages().is_empty());
    }
}
