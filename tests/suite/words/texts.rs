//! Label, method, where the figures come from, the newsletter: in the programme's language, and nothing in English left.

use crate::render::products;
use crate::sample;
use crate::summary::invented;
use galleyproof::config::Config;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::model::extraction::LabRecord;
use galleyproof::model::language::Language;
use galleyproof::render::facts::digest;
use galleyproof::render::facts::sheet::sheet;
use galleyproof::render::{Engine, newsletter};
use galleyproof::words::Catalogue;
use std::sync::Arc;

/// Words that stand in every other English sentence, and in no German or Spanish one.
const ENGLISH: [&str; 12] = [
    " the ",
    " of ",
    " and ",
    " is ",
    " with ",
    " package",
    " below ",
    " above ",
    " label ",
    " gluten source",
    " which ",
    " not ",
];

fn english_in(text: &str) -> Vec<&'static str> {
    let text = format!(" {} ", text.to_lowercase().replace(['\u{a0}', '\n'], " "));
    let found = ENGLISH.into_iter();
    found.filter(|word| text.contains(word)).collect()
}

fn config(tag: &str, rest: &str) -> Config {
    let rest = format!("language = \"{tag}\"\n{rest}");
    sample::config(std::path::Path::new("no/such/folder"), "a4", &rest)
}

/// What a sheet says of its label, of the method and of where its figures come from.
fn said(product: &JudgedProduct, config: &Config) -> String {
    let content = sheet(product, config).content;
    let mut said = content.method;
    said.extend(content.provenance);
    said.extend(content.label.sentences);
    said.push(content.caution);
    said.join(" ").replace('\u{200b}', "")
}

#[test]
fn a_sheet_speaks_of_label_and_method_in_its_language() {
    let terms = [
        (
            "de",
            [
                "Bestimmungsgrenze",
                "Grenzwert: weniger als",
                "Glutenquelle",
            ],
        ),
        (
            "es",
            ["cuantificación", "Límite: menos de", "fuente de gluten"],
        ),
    ];
    for (tag, wanted) in terms {
        let config = config(tag, "");
        let mut product = products::fullest(&config);
        let review = &mut product.verdict.label;
        review.terms[0].why = "why_malt".to_owned();
        let said = said(&product, &config);
        assert!(
            english_in(&said).is_empty(),
            "{:?}: {said}",
            english_in(&said)
        );
        for term in wanted {
            assert!(said.contains(term), "{term}: {said}");
        }
    }
    let config = config("de", "[rule]\nregime = \"eu\"\n");
    let said = said(&products::none_measured(&config), &config);
    assert!(
        said.contains("Höchstgehalt 20\u{a0}mg/kg (Verordnung (EU) Nr. 828/2014)"),
        "{said}"
    );
}

#[test]
fn what_a_lab_says_of_itself_is_passed_on_and_what_it_does_not_say_is_named() {
    let config = config("en", "");
    let mut product = products::none_measured(&config);
    let silent = said(&product, &config);
    let wanted = "Not stated: the lab’s address, ";
    assert!(silent.contains(wanted), "{silent}");
    assert!(
        silent.contains("day received, uncertainty and accreditation."),
        "{silent}"
    );
    let record = Arc::new(LabRecord {
        lab_address: Some("1 Weir Lane\nLower Saltmere".to_owned()),
        received_on: Some(sample::day(3, 4)),
        condition: Some("sealed, dry".to_owned()),
        uncertainty: Some("25 % (k = 2)".to_owned()),
        accredited: Some(true),
        remarks: vec!["Samples as received.".to_owned()],
        ..LabRecord::default()
    });
    for package in &mut product.verdict.packages {
        for paired in &mut package.pair.extractions {
            paired.extraction.record = Arc::clone(&record);
        }
    }
    let told = said(&product, &config);
    for part in [
        "Address: 1 Weir Lane Lower Saltmere.",
        "Received 2031-03-04 (sealed, dry).",
        "Uncertainty as the lab gives it: 25 % (k = 2).",
        "The lab says that it is accredited for this test.",
        "The lab remarks: “Samples as received”.",
    ] {
        assert!(told.contains(part), "{part}: {told}");
    }
    assert!(!told.contains("uncertainty and"), "{told}");
    assert!(!told.contains("Not stated: the lab’s address"), "{told}");
}

#[test]
fn the_newsletter_is_in_its_language_in_every_form() {
    for (language, tag, wanted) in [
        (Language::German, "de", "Etiketten"),
        (Language::Spanish, "es", "etiqueta"),
    ] {
        let mut config = invented::config("regime = \"us\"", "a4");
        config.programme.language = language;
        config.words = Arc::new(Catalogue::built_in(language));
        let mut decided = invented::decided(6, &config);
        for (number, product) in decided.products.iter_mut().enumerate() {
            product.verdict.product.name = format!("Mix {number}");
            product.verdict.product.brand = None;
            product.verdict.followups.clear();
            product.verdict.label = sample::malt_finding("Mais, ", ".");
        }
        let facts = digest::digest(&decided, &config, None).expect("its charts can be drawn");
        let own = [
            &facts.headline,
            &facts.how,
            &facts.snapshot,
            &facts.note,
            &facts.bands_note,
            &facts.caution,
        ];
        let mut text: Vec<&str> = own.iter().map(|text| text.as_str()).collect();
        text.extend(facts.silent.as_deref());
        text.extend(facts.totals.as_deref());
        text.extend(facts.mail_listed.as_deref());
        let labels = facts.labels.as_ref().expect("they have labels");
        text.extend(labels.groups.iter().map(|group| group.said.as_str()));
        text.push(&labels.last);
        for product in &facts.products {
            text.push(&product.line.label.words);
            text.extend(product.reasons.iter().map(String::as_str));
        }
        for part in facts.bars.iter().flat_map(|bar| &bar.parts) {
            text.push(&part.said);
        }
        text.extend(facts.figures_key.iter().map(|one| one.meaning.as_str()));
        let text = text.join(" ");
        assert!(
            english_in(&text).is_empty(),
            "{tag} {:?}: {text}",
            english_in(&text)
        );
        assert!(text.contains(wanted), "{text}");
        let engine = Engine::new(&config).expect("the built-in templates load");
        let plain = newsletter::text(&facts, &engine).unwrap_or_else(|fault| panic!("{fault}"));
        let plain = String::from_utf8(plain.bytes).expect("it is text");
        for head in [
            "CORRECTIONS",
            "NEW RESULTS",
            "ON THE LABELS",
            "PLEASE NOTE",
            "Sheet ",
        ] {
            assert!(!plain.contains(head), "{head}: {plain}");
        }
        let page = newsletter::html(&facts, &engine);
        let page = page.unwrap_or_else(|fault| panic!("{fault}"));
        let page = String::from_utf8(page.bytes).expect("it is text");
        assert!(page.contains(&format!("<html lang=\"{tag}-")), "{page}");
        assert!(
            !page.contains("Please note") && !page.contains("On the labels"),
            "{page}"
        );
    }
}
