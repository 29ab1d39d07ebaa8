//! What is too close to the limit to call: the band that is drawn and the sentence beside the verdict say the same.

use crate::workspace::Workspace;
use serde_json::Value;

/// What a sheet says of a product with one package like this and two with too little to measure: the sentence beside the
/// verdict, and the key of its marks.
fn sheet(reading: &str, rule: &str) -> (String, String) {
    let workspace = Workspace::new();
    let settings = workspace.text("programme.toml");
    workspace.with("programme.toml", format!("{settings}{rule}"));
    workspace.with(
        "inbox/march.csv",
        format!(
            "Sample,Extraction,Gluten (ppm)\nA1,1,{reading}\nA1,2,{reading}\nA2,1,<5\nA2,2,<5\nA3,1,<5\nA3,2,<5\n"
        ),
    );
    let facts = workspace.run(&["facts", "P1"]).exits(0).stdout();
    let facts: Value = serde_json::from_str(&facts).expect("is JSON");
    let text = |value: &Value| {
        let text = value.as_str().expect("a text");
        text.replace(['\u{a0}', '\u{200b}'], " ")
    };
    let content = &facts["content"];
    (text(&content["verdict"]["sentence"]), text(&content["key"]))
}

#[test]
fn a_result_in_the_band_is_told_of_on_either_side_of_the_limit() {
    // 20 -+ 2.8 sqrt(0.5^2 + 3^2) / 2, as worked out by hand in judge::close_call.
    let band = "Hatched, 15.7 to 24.3 ppm: close to the limit";
    for (reading, near) in [
        ("15.5", false),
        ("15.8", true),
        ("19.9", true),
        ("20", true),
        ("24.2", true),
        ("24.5", false),
    ] {
        let (sentence, key) = sheet(reading, "");
        assert_eq!(sentence.contains("Close to the limit"), near, "{sentence}");
        assert!(key.contains(band), "{key}");
    }
    let (below, _) = sheet("15.8", "");
    assert!(
        below.contains("at or above the limit of 20 ppm is at least about 1 % for A1 (15.8 ppm)"),
        "{below}"
    );
    let (over, _) = sheet("24.2", "");
    assert!(
        over.contains("below the limit of 20 ppm is at least about"),
        "{over}"
    );
}

#[test]
fn the_guard_band_is_drawn_where_the_rule_guards_and_none_where_detection_decides() {
    let guarded =
        "[rule]\nregime = \"us\"\ndecision = \"guarded\"\nrelative_expanded_uncertainty = 0.3\n";
    let (sentence, key) = sheet("26", guarded);
    // 20 / 1.3 and 20 / 0.7.
    let band = "Hatched, 15.4 to 28.6 ppm: too close to the limit to call.";
    assert!(key.contains(band), "{key}");
    assert!(
        sentence.contains("is closer to the limit than the test’s uncertainty"),
        "{sentence}"
    );
    let (_, key) = sheet("6", "[rule]\nregime = \"au-nz\"\n");
    assert!(!key.contains("Hatched"), "{key}");
}
