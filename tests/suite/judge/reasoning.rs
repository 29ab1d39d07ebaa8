//! The reasoning as a person would check it by hand.

use crate::judge::bench::{config, extractions, judged, registers, run};
use galleyproof::model::registers::Product;
use galleyproof::render::explain::explain;

#[test]
fn each_number_formula_and_cell_is_there() {
    let us = config("us", "");
    let product = judged(&[&["12.4", "13.1"], &["<5", "6.2"], &["6", "160"]], &us);
    let text = explain(&product, &us);
    for part in [
        "over the limit is x >= 20 ppm",
        "“12.4” in inbox/a.csv, cell C2, read as 12.4 ppm (LLOQ 5 ppm)",
        "gap = max(0, largest lower bound 13.1 - smallest upper bound 12.4) = 0.7 ppm",
        "m = the mean of the readings, each at its point nearest to the middle of those two bounds = 12.75 ppm",
        "s = sqrt((q / 10)^2 + (0.15 x m)^2) = 1.97678 ppm",
        "allowed = f(2) x s = 2.8 x",
        "mean = (12.4 + 13.1) / 2 = 12.75 ppm",
        "read as [0, 5) ppm",
        "3.1 to 5.6 ppm",
        "The readings disagree",
        "1 of 2 readings surely over",
        "no verdict",
        "Finding: no ingredients",
        "0 of 3 packages over the limit",
        "1 of them undecided",
        "with 1 of 3 over the limit, up to 86.5 % of all packages could be (95 %)",
    ] {
        assert!(text.contains(part), "{part} is missing in:\n{text}");
    }
}

#[test]
fn text_from_files_steers_no_terminal() {
    let us = config("us", "");
    let product = Product {
        ingredients: Some("rice\u{1b}[31m, malt".into()),
        ..Product::default()
    };
    let (judged, _) = run(&registers(product, 1), extractions(&[&["<5", "<5"]]), &us);
    let text = explain(&judged.products[0], &us);
    assert!(text.contains("[malt]"), "{text}");
    assert!(!text.contains('\u{1b}'));
}

#[test]
fn a_guarded_decision_shows_its_band() {
    let guarded = config(
        "us",
        "decision = \"guarded\"\nrelative_expanded_uncertainty = 0.3",
    );
    let text = explain(&judged(&[&["16", "16"]], &guarded), &guarded);
    assert!(
        text.contains("16 x (1 - 0.3) = 11.2 ppm; 16 x (1 + 0.3) = 20.8 ppm"),
        "{text}"
    );
    assert!(text.contains("Standing: inconclusive"), "{text}");
}
