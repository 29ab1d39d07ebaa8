//! The summary in German and Spanish: whole, without English, on its pages, and its charts with room for longer words.

use crate::summary::{RULES, US, invented, pdf, touching, words};
use galleyproof::model::package::{ResultKind, Standing};
use galleyproof::model::verdict::Verdict;
use galleyproof::render::facts::summary::{self, SummaryFacts};
use galleyproof::words::say;
use lopdf::Document;
use serde::Serialize;
use serde_json::Value;

const OTHERS: [&str; 2] = ["de", "es"];

fn facts(language: &str, rule: &str, paper: &str) -> SummaryFacts {
    let config = invented::config_in(language, rule, paper);
    let decided = invented::decided(60, &config);
    summary::summary(&decided, &config, None).expect("its charts can be drawn")
}

/// Every text of some facts.
fn texts(facts: &impl Serialize) -> Vec<String> {
    fn collect(value: &Value, texts: &mut Vec<String>) {
        match value {
            Value::String(text) => texts.push(text.clone()),
            Value::Array(values) => values.iter().for_each(|value| collect(value, texts)),
            Value::Object(fields) => fields.values().for_each(|value| collect(value, texts)),
            Value::Null | Value::Bool(_) | Value::Number(_) => {}
        }
    }
    let mut found = Vec::new();
    let value = serde_json::to_value(facts).expect("the facts are JSON");
    collect(&value, &mut found);
    found
}

/// What the summary says itself; what it takes from other parts (methods, lists, the key of marks) is told of there.
fn said(facts: &SummaryFacts) -> String {
    // What is read aloud of each product has its name in it, in the language of its package.
    let is_own = |name: &str| name != "marks" && !name.starts_with("products");
    let charts = facts.charts.iter().filter(|chart| is_own(&chart.name));
    let mut told: Vec<String> = charts.map(|chart| chart.alt.clone()).collect();
    let bands = &facts.bands;
    told.extend(texts(&facts.document.words));
    told.extend(texts(&facts.captions));
    told.extend(texts(&facts.cover));
    let strip = &facts.strip;
    told.extend(texts(&strip.charts));
    told.extend([&strip.lede, &strip.note, &strip.products_lede].map(Clone::clone));
    told.extend(strip.uneven.clone());
    told.extend(texts(&facts.groups));
    told.extend(texts(&facts.duplicates));
    told.extend(texts(&(&bands.glossary, &bands.heads)));
    told.extend(bands.rows.iter().map(|row| row.name.clone()));
    told.extend([&bands.lede, &bands.note, &bands.says, &bands.does_not_say].map(Clone::clone));
    told.join("\n")
}

#[test]
fn no_english_is_left_in_it() {
    const ENGLISH: [&str; 12] = [
        " the ", "The ", " of ", " is ", " with ", "ackage", "roduct ", " below ", " above ",
        "ndecided", " none ", " this ",
    ];
    for language in OTHERS {
        for rule in RULES {
            let said = said(&facts(language, rule, "a4"));
            for word in ENGLISH {
                let at = said.find(word).map(|at| {
                    let from = said[..at]
                        .char_indices()
                        .rev()
                        .nth(40)
                        .map_or(0, |(i, _)| i);
                    said[from..].chars().take(90).collect::<String>()
                });
                assert!(at.is_none(), "{language}, {rule}: {word:?} in {at:?}");
            }
        }
    }
}

#[test]
fn it_uses_the_terms_of_the_trade_and_the_decimal_comma() {
    let german = said(&facts("de", "regime = \"eu\"", "a4"));
    for term in [
        "über dem Grenzwert",
        "Extraktion",
        "Wiederholpräzision",
        "Packung",
        "mg/kg",
        "3,267",
    ] {
        assert!(german.contains(term), "{term}");
    }
    let spanish = said(&facts("es", "regime = \"eu\"", "a4"));
    for term in [
        "por encima del límite",
        "extracción",
        "epetibilidad",
        "envase",
        "mg/kg",
        "3,267",
    ] {
        assert!(spanish.contains(term), "{term}");
    }
}

#[test]
fn labels_of_charts_have_room_in_every_language() {
    for language in OTHERS {
        for rule in RULES {
            for products in [1, 24, 300] {
                let config = invented::config_in(language, rule, "a4");
                let mut faults = touching(products, &config);
                // The key of the marks is drawn and tried with the ruler of the sheet.
                faults.retain(|fault| !fault.ends_with(" marks"));
                assert!(
                    faults.is_empty(),
                    "{language}, {products} products, {rule}: {faults:#?}"
                );
            }
        }
    }
}

#[test]
fn the_cover_is_one_page() {
    for language in ["en", "de", "es"] {
        for paper in ["a4", "us-letter"] {
            let config = invented::config_in(language, US, paper);
            let facts = facts(language, US, paper);
            let document = Document::load_mem(&pdf(&facts, &config)).expect("a PDF");
            let second = document.extract_text(&[2]).expect("its text can be read");
            let second = second.split_whitespace().collect::<Vec<_>>().join(" ");
            let title = config.words.say(&say::summary_bands_title());
            let start = second.chars().take(160).collect::<String>();
            assert!(start.contains(&title), "{language}, {paper}: {start}");
        }
    }
}

#[test]
fn chapters_share_pages_and_one_without_products_is_left_out() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(6, &config);
    let within = decided
        .products
        .iter()
        .find(|product| matches!(product.verdict.verdict, Verdict::WithinLimit(_)));
    let within = within.expect("some product is").clone();
    decided.products = vec![within];
    let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
    let document = Document::load_mem(&pdf(&facts, &config)).expect("a PDF");
    let titles: Vec<String> = document
        .get_toc()
        .expect("has an outline")
        .toc
        .into_iter()
        .map(|entry| entry.title)
        .collect();
    assert!(
        !titles.iter().any(|title| title.starts_with("Products at")),
        "{titles:?}"
    );
    // The strip plot of one food group is low: the next chapter begins below it.
    let pages = document.get_pages().len();
    assert!(pages < titles.len(), "{pages} pages for {titles:?}");
    assert!(words(&document).contains("Register of all results"));
}

/// Under guarded decisions a package at 25 ppm may be too near the limit: nobody may read that none tested at or above it.
#[test]
fn an_undecided_package_is_not_said_to_be_within_the_limit() {
    let config = invented::config(RULES[4], "a4");
    let mut decided = invented::decided(6, &config);
    decided
        .products
        .retain(|product| product.verdict.verdict != Verdict::OverLimit);
    for product in &mut decided.products {
        product.verdict.verdict = Verdict::NoVerdict;
        for package in &mut product.verdict.packages {
            package.standing = Standing::Inconclusive;
            package.result = ResultKind::Value {
                mean: galleyproof::model::ppm::Ppm(25.0),
            };
        }
    }
    let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
    assert_eq!(
        facts.cover.blocks[1].text,
        "No package was shown to be at or above the limit."
    );
    assert!(
        facts
            .bands
            .lede
            .contains("No product had a package that was shown to be at or above the limit."),
        "{}",
        facts.bands.lede
    );
    assert!(
        facts
            .strip
            .lede
            .ends_with("None is shown to be at or above the limit."),
        "{}",
        facts.strip.lede
    );
    assert_eq!(
        facts.captions.none_over,
        "No product is shown to be at or above the limit."
    );
}
