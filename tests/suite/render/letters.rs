//! Letters: the notice to a maker, the questions to a lab, the form that goes with samples.

use crate::render::{engine, products, typeset};
use crate::sample;
use galleyproof::model::label::LabelFinding;
use galleyproof::model::pair::{PairState, Usage};
use galleyproof::model::registers::{Package, Processing, Product, Registers};
use galleyproof::render::facts::{notice, query, request};
use std::collections::BTreeSet;

#[test]
fn a_notice_says_by_when_a_reply_is_asked_for() {
    let folder = tempfile::tempdir().expect("a folder");
    for paper in ["a4", "us-letter"] {
        let config = sample::config(folder.path(), paper, "");
        let mut product = products::fullest(&config);
        let sent = notice::facts(&product, &config, None);
        assert_eq!(
            (sent.reply_head.as_str(), sent.reply_by.as_str()),
            ("Please reply by", "15\u{a0}April\u{a0}2031")
        );
        let job = notice::job(&product.verdict, &sent).expect("a job");
        let pdf = typeset(&engine(&config), &config, &job);
        signed_on_one_page_with_its_form_behind(&pdf, &sent, paper);

        product.verdict.followups.clear();
        let dated = notice::facts(&product, &config, Some(sample::day(3, 25)));
        assert_eq!(dated.reply_by, "9\u{a0}April\u{a0}2031", "15 days on");
        let undated = notice::facts(&product, &config, None);
        assert_eq!(
            (undated.reply_head.as_str(), undated.reply_by.as_str()),
            ("Please reply within", "15 days")
        );
        assert_eq!(undated.date, None);
    }
}

fn signed_on_one_page_with_its_form_behind(pdf: &[u8], facts: &notice::NoticeFacts, paper: &str) {
    let document = lopdf::Document::load_mem(pdf).expect("a PDF");
    assert_eq!(document.get_pages().len(), 2, "letter and form on {paper}");
    for (page, word) in [(1, "letter_yours"), (2, "letter_form_signature")] {
        let text = document.extract_text(&[page]).expect("text");
        let plain = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        let word = &facts.document.words[word];
        assert!(
            plain(&text).contains(word.trim()),
            "{word} on {paper}: {text}"
        );
    }
}

/// German and Spanish run longer than English, and a second page would hold a signature alone.
#[test]
fn a_notice_stays_on_one_page_in_every_language() {
    let folder = tempfile::tempdir().expect("a folder");
    for (paper, language, dear) in [
        ("a4", "de", "Sehr geehrte Damen und Herren!"),
        ("us-letter", "de", "Sehr geehrte Damen und Herren!"),
        ("a4", "es", "Estimado equipo de calidad:"),
        ("us-letter", "es", "Estimado equipo de calidad:"),
    ] {
        let config = sample::config(
            folder.path(),
            paper,
            &format!("language = \"{language}\"\n"),
        );
        let product = products::fullest(&config);
        let facts = notice::facts(&product, &config, None);
        assert_eq!(facts.document.words["letter_dear"], dear);
        let job = notice::job(&product.verdict, &facts).expect("a job");
        let pdf = typeset(&engine(&config), &config, &job);
        signed_on_one_page_with_its_form_behind(&pdf, &facts, paper);
    }
}

/// While packages are at the lab a letter does not speak of them as tested, and offers no files that are not there.
#[test]
fn a_notice_says_what_the_lab_has_not_reported_yet() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let mut product = products::fullest(&config);
    product.verdict.packages[0].pair.extractions.clear();
    let facts = notice::facts(&product, &config, None);
    assert!(
        facts.opening.starts_with(
            "We bought 3 packages of this product. So far the laboratory has reported on 2 of them. One of two packages \
             tested at or above"
        ),
        "{}",
        facts.opening
    );
    for package in &mut product.verdict.packages {
        package.pair.extractions.clear();
    }
    let facts = notice::facts(&product, &config, None);
    assert!(
        !facts.offer.contains("laboratory’s files"),
        "{}",
        facts.offer
    );
    assert!(!facts.opening.contains("tested"), "{}", facts.opening);
}

/// A rule is quoted and a question asked; what the rule comes to for this food is not the letter's to say.
#[test]
fn a_notice_about_a_label_quotes_the_rule_and_asks() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let product = products::fullest(&config);
    let facts = notice::facts(&product, &config, None);
    let label = &facts.findings[1];
    assert!(label.contains("21 CFR 101.91 asks that"), "{label}");
    let whole = serde_json::to_string(&facts).expect("facts are JSON");
    for legal in ["can’t have it", "violates", "is not allowed", "must not"] {
        assert!(!whole.contains(legal), "{legal}: {whole}");
    }
    let ask = facts.ask.last().expect("something is asked");
    assert!(ask.starts_with("Have we read the list wrongly"), "{ask}");
}

#[test]
fn a_notice_answers_what_a_quality_manager_asks_first() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let mut product = products::fullest(&config);
    let facts = notice::facts(&product, &config, None);
    // The extractions of one package are both below 5: that these are equal is not known.
    assert!(
        facts.findings[0].contains("Nothing shows that the extractions of any package differ"),
        "{}",
        facts.findings[0]
    );
    assert_eq!(
        facts.notes,
        ["0612-B: an extraction is a bound, not a number, so that the result is a range."]
    );
    let beside = |label: &str| {
        let found = facts.beside.iter().find(|one| one.label == label);
        &found.expect("is there").text
    };
    assert_eq!(beside("Limit"), "Less than 20\u{a0}ppm (21 CFR 101.91)");
    assert!(beside("Method").starts_with("Sandwich R5 ELISA"));

    product.verdict.label.finding = LabelFinding::UnverifiedOats;
    product.verdict.packages[2].pair.state = PairState::Disagree;
    let facts = notice::facts(&product, &config, None);
    assert!(!facts.findings[0].contains("by the rule that the sheet states"));
    let ask = facts.ask.last().expect("something is asked");
    assert!(ask.starts_with("The list names oats"), "{ask}");
}

#[test]
fn what_is_kept_reads_as_a_sentence_in_every_letter() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut config = sample::config(folder.path(), "a4", "");
    let product = products::fullest(&config);
    let kept = "the other half of each package, sealed and frozen, for 90 days.";
    let offer = |config: &_| notice::facts(&product, config, None).offer;
    assert!(
        offer(&config).contains(&format!(
            "draft. We keep {kept} Ask, and we send a part of it"
        )),
        "{}",
        offer(&config)
    );
    let registers = registers();
    let packages = request::open(&registers, &BTreeSet::new(), Some("2"));
    let form = request::facts(&packages, &registers, &config, Some("2"), None);
    assert_eq!(form.asked.last(), Some(&format!("Please keep {kept}")));

    let own = "Every package is kept for a year.";
    config.programme.retained = Some(own.to_owned());
    assert!(
        offer(&config).contains(&format!("draft. {own} Ask,")),
        "{}",
        offer(&config)
    );
}

#[test]
fn a_query_names_codes_and_never_a_product() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let all = products::all(&config);
    let open = query::open(&all, &config, Some(sample::day(12, 31)));
    let labs: Vec<&String> = open.keys().collect();
    assert_eq!(
        labs,
        ["Harrow & Vane Analytical", "the laboratory"],
        "a package without a report goes to our own lab"
    );
    for (lab, questions) in open {
        let facts = query::facts(&lab, questions, &config, Some(sample::day(4, 2)));
        let text = serde_json::to_string(&facts).expect("facts are JSON");
        for product in &all {
            assert!(
                !text.contains(&product.verdict.product.name),
                "{lab}: {}",
                product.verdict.product.name
            );
        }
        typeset(
            &engine(&config),
            &config,
            &query::job(&facts, None).expect("a job"),
        );
    }
}

/// What the programme set aside was reported: the lab is not asked for it as if it were missing.
#[test]
fn a_lab_is_not_asked_for_what_was_set_aside() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let mut product = products::none_measured(&config);
    let pair = &mut product.verdict.packages[0].pair;
    pair.state = PairState::Incomplete;
    pair.extractions[1].usage = Usage::Excluded {
        reason: "spilt".to_owned(),
        by: "O. Fennimore".to_owned(),
        on: sample::day(3, 21),
    };
    let open = query::open(&[product], &config, None);
    let row = &open["Harrow & Vane Analytical"][0];
    assert_eq!(row.kind, "An extraction is set aside");
    assert!(
        row.found
            .contains("We have set aside what we could not use; 1 extraction is left."),
        "{}",
        row.found
    );
    assert!(row.ask.contains("report it as extraction 3"), "{}", row.ask);
}

/// A lab that has reported nothing is not thanked for its reports.
#[test]
fn a_query_about_missing_reports_thanks_for_none() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let mut product = products::none_measured(&config);
    for package in &mut product.verdict.packages {
        package.pair.extractions.clear();
        package.pair.state = PairState::Missing;
    }
    let open = query::open(&[product], &config, Some(sample::day(12, 31)));
    for (lab, questions) in open {
        let facts = query::facts(&lab, questions, &config, None);
        assert!(
            facts
                .opening
                .starts_with("Of 3 packages that we sent you we have no report."),
            "{}",
            facts.opening
        );
    }
}

fn registers() -> Registers {
    let product = |id: &str, matrix: &str, processing| Product {
        product_id: id.to_owned(),
        name: format!("Secret {id}"),
        matrix: Some(matrix.to_owned()),
        net_content: Some("450 g".to_owned()),
        processing,
        ..Product::default()
    };
    let products = [
        product("0612", "bread with chestnut, baked", Processing::None),
        product("0615", "chickpea flour", Processing::None),
        product("0621", "sauce", Processing::Fermented),
    ];
    let package = |id: &str, letter: &str| Package {
        package_code: format!("{id}-{letter}"),
        product_id: id.to_owned(),
        round: "2".to_owned(),
        sent_on: Some(sample::day(3, 20)),
        sent_on_unreadable: false,
        ..Package::default()
    };
    let codes = products
        .iter()
        .flat_map(|product| ["A", "B", "C"].map(|letter| package(&product.product_id, letter)));
    Registers {
        packages: codes.collect(),
        products: products
            .into_iter()
            .map(|product| (product.product_id.clone(), product))
            .collect(),
        ..Registers::default()
    }
}

#[test]
fn a_form_lists_what_is_not_reported_and_flags_what_the_food_does_to_the_assay() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let registers = registers();
    let reported = BTreeSet::from(["0612-A".to_owned()]);
    let packages = request::open(&registers, &reported, Some("2"));
    assert!(request::open(&registers, &reported, Some("1")).is_empty());

    let facts = request::facts(
        &packages,
        &registers,
        &config,
        Some("2"),
        Some(sample::day(3, 20)),
    );
    let rows = request::csv_rows(&facts);
    assert_eq!(rows[0][0], "package_code");
    // The order of the codes is drawn: it says nothing of products.
    let of = |code: &str| {
        let row = rows.iter().find(|row| row[0] == code);
        row.unwrap_or_else(|| panic!("there is a row of {code}"))[1..].to_vec()
    };
    assert_eq!(
        of("0612-B"),
        [
            "bread with chestnut, baked",
            "450 g",
            "yes",
            "no",
            "no",
            "no"
        ]
    );
    assert_eq!(
        of("0615-A"),
        ["chickpea flour", "450 g", "no", "yes", "no", "no"]
    );
    assert_eq!(of("0621-A"), ["sauce", "450 g", "no", "no", "no", "yes"]);
    let codes: Vec<&String> = rows[1..].iter().map(|row| &row[0]).collect();
    assert!(!codes.is_sorted(), "{codes:?}");
    let asks = |words: &str| facts.asked.iter().any(|line| line.contains(words));
    assert!(
        asks("disagree where they differ by more than 2.8"),
        "{:?}",
        facts.asked
    );
    assert!(asks("limit of detection"), "{:?}", facts.asked);
    assert!(facts.asked[1].contains("competitive"), "{:?}", facts.asked);
    assert!(
        !serde_json::to_string(&facts)
            .expect("facts are JSON")
            .contains("Secret")
    );
    typeset(
        &engine(&config),
        &config,
        &request::job(&facts).expect("a job"),
    );
}
