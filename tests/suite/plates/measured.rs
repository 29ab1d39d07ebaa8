//! What comes of a plate: figures beside those that were reported, checks, differences.

use super::{Long, STANDARDS, near, plate, seen, six, told, workspace};
use crate::workspace::Workspace;
use serde_json::{Value, json};

const REPORTED: &str = "A1,1,12.4\nA1,2,13.1\nA2,1,<5\nA2,2,<5\nA3,1,33.0\nA3,2,>80\n";

fn samples(results: &Value) -> &Vec<Value> {
    plate(results)["samples"].as_array().expect("a list")
}

#[test]
fn a_good_plate_comes_to_what_was_reported() {
    let workspace = workspace(&six().text(), REPORTED);
    workspace.run(&["check"]).exits(0);
    let results = workspace.results();
    assert_eq!(told(&results), []);
    let plate = plate(&results);
    assert_eq!(plate["file"], "inbox/plate.csv");
    assert_eq!(plate["sheet"], Value::Null);
    assert_eq!(
        (&plate["plate"], &plate["curve"]),
        (&json!("1"), &json!("4pl"))
    );
    for (name, expected) in [("A", 0.05), ("B", 1.2), ("C", 45.0), ("D", 3.0)] {
        assert!(near(&plate["parameters"][name], expected), "{plate:#}");
    }
    assert!(plate["parameters"]["G"].is_null());
    assert!(plate["residual_sd"].as_f64().expect("6 - 4 are free") < 1e-4);
    let standards = plate["standards"].as_array().expect("a list");
    assert_eq!(standards.len(), 6);
    assert_eq!(standards[3]["concentration"], 20.0);
    assert!(near(&standards[3]["back_calculated"], 20.0), "{plate:#}");
    assert_eq!(
        standards[3]["absorbances"].as_array().map(Vec::len),
        Some(2)
    );
    assert!(standards.iter().all(|one| one["ok"] == true));
    let checks: Vec<&Value> = plate["checks"].as_array().expect("a list").iter().collect();
    let names: Vec<&Value> = checks.iter().map(|check| &check["name"]).collect();
    assert_eq!(
        names,
        ["monotone", "blank", "top", "well_cv", "back_calculated"]
    );
    assert!(checks.iter().all(|check| check["ok"] == true), "{plate:#}");

    let samples = samples(&results);
    assert_eq!(samples.len(), 6);
    let first = &samples[0];
    assert_eq!(
        (&first["package_code"], &first["extraction"]),
        (&json!("A1"), &json!(1))
    );
    assert_eq!(first["dilution"], 1.0);
    assert!(
        near(&first["ppm"], 12.4) && first["ppm"] == first["lower_ppm"],
        "{first:#}"
    );
    assert_eq!(
        (&first["reported_ppm"], &first["agrees"]),
        (&json!(12.4), &json!(true))
    );
    let below = &samples[2];
    assert_eq!(
        (&below["ppm"], &below["lower_ppm"]),
        (&Value::Null, &json!(0.0))
    );
    assert_eq!(
        (&below["upper_ppm"], &below["agrees"]),
        (&json!(5.0), &json!(true))
    );
    let above = &samples[5];
    assert_eq!(
        (&above["lower_ppm"], &above["upper_ppm"]),
        (&json!(80.0), &Value::Null)
    );
    assert_eq!(above["agrees"], true);
}

/// Whatever a plate says, what was reported decides.
#[test]
fn a_plate_decides_nothing() {
    let without = Workspace::new();
    without.with(
        "inbox/results.csv",
        format!("Sample,Extraction,Gluten (ppm)\n{REPORTED}"),
    );
    let otherwise = six().text().replace("A1,,1", "A3,,1");
    let with = workspace(&otherwise, REPORTED);
    assert_eq!(without.results()["products"], with.results()["products"]);
    assert_eq!(without.results()["counts"], with.results()["counts"]);
}

#[test]
fn what_was_reported_otherwise_is_told_with_both_figures() {
    let reported = REPORTED.replace("A1,2,13.1", "A1,2,13.9");
    let results = workspace(&six().text(), &reported).results();
    let [(code, message)] = &told(&results)[..] else {
        panic!("{:#}", results["problems"]);
    };
    assert_eq!(code, "plate_differs");
    assert!(
        message.contains("“A1”, extraction 2, come to 13.1 ppm"),
        "{message}"
    );
    assert!(
        message.contains("“13.9” in inbox/results.csv, cell C3"),
        "{message}"
    );
    assert_eq!(samples(&results)[1]["agrees"], false);
    // 5 % of 13.7 and half a tenth are 0.735.
    let near = REPORTED.replace("A1,2,13.1", "A1,2,13.7");
    assert_eq!(told(&workspace(&six().text(), &near).results()), []);
}

#[test]
fn what_was_not_reported_is_no_difference() {
    let results = workspace(&six().text(), "").results();
    assert_eq!(told(&results), []);
    assert!(samples(&results).iter().all(|one| one["agrees"].is_null()));
}

#[test]
fn a_dilution_multiplies_what_is_read() {
    let plate = Long::new()
        .wells("Sample,A1,,1,1:10", seen(30.0))
        .wells("Sample,A1,,2,10", seen(2.0));
    let results = workspace(&plate.text(), "").results();
    let samples = samples(&results);
    assert!(near(&samples[0]["ppm"], 300.0), "{results:#}");
    assert_eq!(samples[0]["dilution"], 10.0);
    assert_eq!(samples[1]["upper_ppm"], 50.0);
}

#[test]
fn every_curve_of_the_settings_is_fitted() {
    for (settings, five) in [
        ("curve = \"4pl\"\nweights = \"1/y^2\"", false),
        ("curve = \"5pl\"", true),
        ("curve = \"cubic-spline\"", false),
        ("curve = \"point-to-point\"", false),
    ] {
        let workspace = workspace(&six().text(), "");
        let whole = format!("{}[plate]\n{settings}\n", workspace.text("programme.toml"));
        workspace.with("programme.toml", whole);
        let results = workspace.results();
        assert_eq!(told(&results), [], "{settings}");
        let plate = plate(&results);
        assert_eq!(plate["parameters"].get("G").is_some(), five, "{plate:#}");
        let found = samples(&results)[4]["ppm"].as_f64().expect("a figure");
        assert!((found - 33.0).abs() < 2.0, "{settings}: {found}");
        if settings.contains("point") {
            // 20 + (y - y(20)) (40 - 20) / (y(40) - y(20))
            let by_hand = 20.0 + (seen(33.0) - seen(20.0)) * 20.0 / (seen(40.0) - seen(20.0));
            assert!((found - by_hand).abs() < 1e-2, "{found} {by_hand}");
            assert_eq!(plate["parameters"], json!({}));
            assert_eq!(plate["residual_sd"], Value::Null);
        }
    }
}

/// Gluten = 2 x gliadin = 2 x ng/mL x mL/g / 1000.
#[test]
fn standards_in_the_extract_are_counted_in_the_food() {
    let workspace = workspace(&six().text(), "");
    let unit = "[plate]\nstandards = \"ng/mL gliadin\"\nfactor = 400\n";
    let whole = format!("{}{unit}", workspace.text("programme.toml"));
    workspace.with("programme.toml", whole);
    let results = workspace.results();
    assert!(
        near(&samples(&results)[0]["ppm"], 12.4 * 0.8),
        "{results:#}"
    );
    assert_eq!(samples(&results)[2]["upper_ppm"], 4.0);
    assert!(near(
        &plate(&results)["standards"][3]["back_calculated"],
        20.0
    ));
}

#[test]
fn each_check_that_fails_is_named() {
    let spread = |long: Long| {
        long.row("H11,Sample,A1,,1,,0.40")
            .row("H12,Sample,A1,,1,,0.60")
    };
    let blank = |long: Long| long.row("H12,Blank,,,,,0.9");
    let low: Vec<(f64, f64)> = STANDARDS.iter().map(|x| (*x, seen(*x) / 3.0)).collect();
    let mut off: Vec<(f64, f64)> = STANDARDS.iter().map(|x| (*x, seen(*x))).collect();
    off[2].1 *= 1.4;
    let mut back: Vec<(f64, f64)> = STANDARDS.iter().map(|x| (*x, seen(*x))).collect();
    back[1].1 = 0.04;
    for (name, long) in [
        ("well_cv", spread(Long::new())),
        ("blank", blank(Long::new())),
        ("top", Long::with_standards(&low)),
        ("back_calculated", Long::with_standards(&off)),
        ("monotone", Long::with_standards(&back)),
        (
            "recovery",
            Long::new().wells("Control,QC 18-26,,,", seen(40.0)),
        ),
        (
            "recovery",
            Long::new().wells("Control,QC high,20,,", seen(30.0)),
        ),
        (
            "recovery",
            Long::new().wells("Control,QC high,20,,", seen(200.0)),
        ),
    ] {
        let results = workspace(&long.text(), "").results();
        let failed = |check: &&Value| check["ok"] == false;
        let checks = plate(&results)["checks"].as_array().expect("a list");
        let failed: Vec<&Value> = checks.iter().filter(failed).collect();
        assert!(
            failed.iter().any(|check| check["name"] == name),
            "{name}: {checks:#?}"
        );
        let told = told(&results);
        let is_named = told.iter().any(|(code, message)| {
            code == "plate_quality" && message.contains(&format!("check {name}:"))
        });
        assert!(is_named, "{name}: {told:#?}");
        assert_eq!(told.len(), failed.len(), "{name}: {told:#?}");
    }
}

#[test]
fn controls_are_held_against_value_or_range() {
    let plate = Long::new()
        .wells("Control,QC 18-26,,,", seen(22.0))
        .wells("Control,QC high,50,,", seen(55.0));
    let results = workspace(&plate.text(), "").results();
    assert_eq!(told(&results), []);
    let checks = super::plate(&results)["checks"].as_array().expect("a list");
    let recovery = checks.iter().find(|check| check["name"] == "recovery");
    // Of the two, the one that is farther out: 110 % of 80 to 120.
    let recovery = recovery.expect("is there");
    assert!(near(&recovery["value"], 1.1), "{recovery:#}");
    assert_eq!(recovery["allowed"], json!([0.8, 1.2]));
}

/// Where more of the food shows less, all goes the other way about.
#[test]
fn a_falling_curve_is_read_as_well() {
    let falling: Vec<(f64, f64)> = STANDARDS.iter().map(|x| (*x, 3.1 - seen(*x))).collect();
    let plate = Long::with_standards(&falling)
        .wells("Sample,A1,,1,", 3.1 - seen(12.4))
        .wells("Sample,A1,,2,", 3.1 - seen(2.0))
        .wells("Sample,A2,,1,", 3.1 - seen(120.0));
    let results = workspace(&plate.text(), "").results();
    assert_eq!(told(&results), []);
    let samples = samples(&results);
    assert!(near(&samples[0]["ppm"], 12.4), "{samples:#?}");
    assert_eq!(samples[1]["upper_ppm"], 5.0);
    assert_eq!(samples[2]["lower_ppm"], 80.0);
}

#[test]
fn a_curve_that_cannot_be_is_told_and_nothing_is_read_on_it() {
    let hook = [
        (0.0, 0.05),
        (5.0, 0.3),
        (10.0, 0.6),
        (40.0, 1.6),
        (80.0, 1.5),
    ];
    for (settings, standards, expected) in [
        (
            "curve = \"point-to-point\"",
            &hook[..],
            "does not only rise",
        ),
        ("curve = \"cubic-spline\"", &hook[..], "does not only rise"),
        ("", &hook[..3], "needs 4"),
        ("curve = \"5pl\"", &hook[..4], "needs 5"),
        (
            "",
            &[(0.0, 0.4), (5.0, 0.4), (10.0, 0.4), (20.0, 0.4)][..],
            "can be fitted",
        ),
    ] {
        let long = Long::with_standards(standards).wells("Sample,A1,,1,", 0.4);
        let workspace = workspace(&long.text(), "A1,1,9.0\nA1,2,9.0\n");
        let whole = format!("{}[plate]\n{settings}\n", workspace.text("programme.toml"));
        workspace.with("programme.toml", whole);
        let results = workspace.results();
        let unread: Vec<_> = told(&results)
            .into_iter()
            .filter(|(code, _)| code == "plate_unreadable")
            .collect();
        assert_eq!(unread.len(), 1, "{settings}: {:#?}", told(&results));
        assert!(unread[0].1.contains(expected), "{unread:?}");
        let sample = &samples(&results)[0];
        assert_eq!(
            (&sample["ppm"], &sample["upper_ppm"]),
            (&Value::Null, &Value::Null)
        );
        assert_eq!(sample["agrees"], Value::Null);
        workspace.run(&["run"]).exits(0);
    }
}
