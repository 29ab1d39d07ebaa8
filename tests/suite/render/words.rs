//! The sentences of a sheet, for every state: exact, and with nothing in them that the data do not say.

use crate::render::{engine, products, sheet_job, typeset};
use crate::sample::{self, Sample};
use galleyproof::config::Config;
use galleyproof::model::caution::Caution;
use galleyproof::model::decided::{JudgedProduct, OtherRound};
use galleyproof::model::label::{LabelFinding, LabelTerm, TermClass};
use galleyproof::model::reason::Reason;
use galleyproof::model::registers::Processing;
use galleyproof::model::sheet::{LabelState, SheetContent};
use galleyproof::model::verdict::Verdict;
use galleyproof::render::facts::sheet::sheet;

fn config(rest: &str) -> Config {
    sample::config(std::path::Path::new("no/such/folder"), "a4", rest)
}

/// What a sheet says, with plain spaces and without places to break.
fn said(product: &JudgedProduct, config: &Config) -> SheetContent {
    let mut content = sheet(product, config).content;
    let plain = |text: &mut String| *text = text.replace('\u{a0}', " ").replace('\u{200b}', "");
    for text in [
        &mut content.verdict.words,
        &mut content.verdict.count,
        &mut content.verdict.sentence,
    ] {
        plain(text);
    }
    for text in [
        &mut content.says,
        &mut content.says_not,
        &mut content.product.claim_line,
    ] {
        plain(text);
    }
    for lines in [
        &mut content.notes,
        &mut content.method,
        &mut content.correspondence,
        &mut content.label.sentences,
    ] {
        lines.iter_mut().for_each(plain);
    }
    content
}

#[test]
fn over_the_limit() {
    let config = config("");
    let content = said(&products::fullest(&config), &config);
    assert_eq!(content.verdict.words, "At or above 20 ppm");
    assert_eq!(
        content.verdict.count,
        "1 of 3 packages tested at or above the limit."
    );
    assert_eq!(
        content.verdict.sentence,
        "One package measured 29.9 ppm. One package at or above the limit of 20 parts per million (ppm) is enough for this verdict."
    );
    assert_eq!(
        content.says,
        "Of the 3 packages we bought, 1 tested at or above 20 ppm. If they were a random pick, the true share could be anywhere \
         from 1 to 91 % (95 % confidence)."
    );
    assert!(content.says_not.contains("that anyone was careless"));
    assert_eq!(
        content.correspondence,
        [
            "The maker answered on 11 April 2031: “We have stopped sales of lot L31-0802 and are checking our chestnut supplier.”",
        ]
    );
}

#[test]
fn nothing_measured_is_not_zero() {
    let config = config("");
    let content = said(&products::none_measured(&config), &config);
    assert_eq!(content.verdict.words, "Below 20 ppm");
    assert_eq!(
        content.verdict.count,
        "All 3 packages tested below the limit."
    );
    assert_eq!(
        content.says,
        "All 3 packages we bought tested below 5 ppm. That is the lowest answer this test gives. It doesn’t mean zero."
    );
    // Exact one-sided bound for 0 of 3: 1 - 0.05^(1/3) = 63.2 %.
    assert_eq!(
        content.says_not,
        "It doesn’t prove that every package is below the limit. Even in a random pick with 0 of 3 at or above the limit, up to \
         63 % of all packages could still be (95 % confidence)."
    );
}

#[test]
fn no_verdict_names_each_cause_and_hides_no_high_reading() {
    let config = config("");
    let content = said(&products::undecided(&config), &config);
    assert_eq!(
        content.verdict.count,
        "2 of 3 packages have no result that decides."
    );
    assert_eq!(
        content.verdict.sentence,
        "We can’t say on which side of the limit of 20 parts per million (ppm) this product is. The extractions of package 0660-B \
         disagree. Package 0660-C has fewer usable extractions than the programme asks for."
    );
    assert_eq!(
        content.says,
        "Of the 3 packages we bought, 1 tested below 20 ppm, and 2 gave no result that decides. One extraction measured 27.6 ppm."
    );
}

#[test]
fn a_conflict_names_both_reports_and_an_unfit_method_says_so() {
    let config = config("");
    let content = said(&products::conflicting(&config), &config);
    let told = content.table.packages[0].rows.iter();
    let told: Vec<String> = told.filter_map(|row| row.told.clone()).collect();
    assert_eq!(
        told.concat().replace('\u{200b}', ""),
        "0701-A: the lab’s reports differ on what stands here, and none of the figures is used. In ppm, extraction 1 is 8.0 in HV-31-00418.csv, C14 and \
         extraction 1 is 9.0 in HV-31-00418.csv, C15.",
    );
    assert_eq!(content.notes, [""; 0]);
    assert!(
        content
            .verdict
            .sentence
            .contains("No result has come for package 0701-B."),
        "{}",
        content.verdict.sentence
    );
    assert!(
        content.verdict.sentence.ends_with(
            "This food is fermented: a sandwich assay reports too little gluten in it, since proteins in pieces escape it. A \
             competitive assay is needed."
        ),
        "{}",
        content.verdict.sentence
    );
}

#[test]
fn figures_that_decide_nothing_are_not_said_to_be_below_the_limit() {
    let config = config("");
    let mut miso = Sample::new(&config, "0703", "Rice Miso")
        .package("A", &["<5", "<5"])
        .package("B", &["<5", "<5"])
        .package("C", &["<5", "<5"])
        .done();
    miso.verdict.verdict = Verdict::NoVerdict;
    miso.verdict.method_unfit = Some(Reason::RecordsDecide(Processing::Fermented));
    let unfit = "This food is fermented: no test shows reliably how much gluten it holds. In the United States the maker’s \
                 records of what went in decide.";
    let content = said(&miso, &config);
    assert_eq!(
        content.says,
        "All 3 packages we bought gave figures below 20 ppm. In this kind of food the test can miss gluten, so they don’t decide."
    );
    assert!(
        content.verdict.sentence.ends_with(unfit),
        "{}",
        content.verdict.sentence
    );
    assert!(
        !content.method.iter().any(|line| line == unfit),
        "said once, beside the verdict: {:?}",
        content.method
    );
}

#[test]
fn amount_and_label_are_two_judgements_of_one_rank() {
    let config = config("");
    let judged = |change: &dyn Fn(&mut galleyproof::model::decided::JudgedProduct)| {
        let mut product = Sample::new(&config, "0704", "Corn Flakes")
            .package("A", &["<5", "<5"])
            .package("B", &["<5", "<5"])
            .package("C", &["<5", "<5"])
            .done();
        change(&mut product);
        let content = said(&product, &config);
        let label = content.label.judged;
        (content.verdict.words, label.state, label.words)
    };
    let below = "Below 20 ppm".to_owned();
    assert_eq!(
        judged(&|product| product.verdict.label = sample::malt_finding("Maize, ", ", salt.")),
        (
            below.clone(),
            LabelState::Against,
            "Label names barley malt extract".to_owned()
        )
    );
    // What nobody could read, or must ask about, is never said to be clear.
    let open = |said: &str| (below.clone(), LabelState::Open, said.to_owned());
    assert_eq!(
        judged(&|product| product.verdict.label.unread = true),
        open("Label not read yet")
    );
    assert_eq!(
        judged(&|product| product.verdict.label.finding = LabelFinding::UnverifiedOats),
        open("Label: oats of unknown origin")
    );
    assert_eq!(
        judged(&|product| product.verdict.label.finding = LabelFinding::NeedsReview),
        open("Label unclear")
    );
    assert_eq!(
        judged(&|product| product.verdict.product.ingredients = None),
        open("No label on record")
    );
    assert_eq!(
        judged(&|product| product.verdict.product.ingredients = Some("Maize, salt.".to_owned())),
        (
            below.clone(),
            LabelState::Clear,
            "Label: nothing found".to_owned()
        )
    );
}

#[test]
fn terms_of_one_reason_are_explained_together() {
    let config = config("");
    let mut product = products::none_measured(&config);
    let term = |printed: &str, why: &str| LabelTerm {
        term: printed.to_lowercase(),
        printed: printed.to_owned(),
        grain: "wheat or barley".to_owned(),
        class: TermClass::Depends,
        why: why.to_owned(),
        source: "common knowledge".to_owned(),
    };
    product.verdict.label.finding = LabelFinding::NeedsReview;
    product.verdict.label.terms = vec![
        term("Caramel", "May carry wheat: ask."),
        term("bran", "The grain is not named: ask."),
        term("flavouring", "May carry wheat: ask."),
    ];
    assert_eq!(
        said(&product, &config).label.sentences[1..],
        [
            "“Caramel” and “flavouring” (wheat or barley): May carry wheat.",
            "“bran” (wheat or barley): The grain is not named.",
        ]
    );
}

#[test]
fn an_earlier_round_stays_on_the_sheet_of_a_later_one() {
    let config = config("");
    let mut product = products::none_measured(&config);
    product.verdict.round = "2".to_owned();
    product.earlier = vec![OtherRound {
        round: "1".to_owned(),
        verdict: Verdict::OverLimit,
        packages: 3,
        over: 2,
    }];
    let content = said(&product, &config);
    assert!(
        content
            .says
            .ends_with("In round 1 (TKW-0637-1), 2 of 3 packages tested at or above the limit."),
        "{}",
        content.says
    );
    assert!(
        content.product.claim_line.contains("Round 2: 3 packages"),
        "{}",
        content.product.claim_line
    );
}

#[test]
fn what_is_above_the_range_has_no_upper_end() {
    let config = config("");
    let content = said(
        &Sample::new(&config, "0705", "Sorghum Flour")
            .package("A", &[">80", ">80"])
            .package("B", &["<5", "6.6"])
            .package("C", &["<5", "<5"])
            .done(),
        &config,
    );
    let package = &content.table.packages[0];
    let row = &package.rows[0];
    assert_eq!(
        (
            row.found.as_deref(),
            row.allowed.as_deref(),
            package.result.as_str()
        ),
        (Some("both >80"), None, ">80")
    );
    assert_eq!(
        content.notes,
        [
            "0705-B: an extraction is a bound, not a number, so that the result is a range.",
            "0705-A: every extraction is above what the test measures, so that the result has no upper end.",
        ]
    );
}

#[test]
fn what_the_food_does_to_the_assay_stands_in_the_method() {
    let config = config("");
    let mut product = products::six_with_repeat(&config);
    product.cautions = vec![Caution::OatsUnseen];
    let content = said(&product, &config);
    assert_eq!(
        content.method.last().map(String::as_str),
        Some("In oats the test sees only the other grain among them, which lies unevenly.")
    );
    assert!(
        content.method[1].contains("ISO 5725-6; the formula is in our summary"),
        "the rule in words: {:?}",
        content.method
    );
}

#[test]
fn a_guarded_decision_says_how_much_was_added() {
    let config = config("[rule]\ndecision = \"guarded\"\nrelative_expanded_uncertainty = 0.30\n");
    let content = said(&products::too_close(&config), &config);
    assert_eq!(
        content.verdict.count,
        "1 of 3 packages is too close to the limit to call."
    );
    assert!(
        content
            .verdict
            .sentence
            .ends_with("The result of package 0702-A is closer to the limit than the test’s uncertainty (30 %)."),
        "{}",
        content.verdict.sentence
    );
    assert!(
        content
            .method
            .iter()
            .any(|said| said.contains("30 % added or taken off")),
        "{:?}",
        content.method
    );
}

#[test]
fn the_words_follow_the_regime() {
    let config = config("[rule]\nregime = \"eu\"\n");
    let exactly = Sample::new(&config, "E-1", "Puffs")
        .package("A", &["20.0", "20.0"])
        .package("B", &["<5", "<5"])
        .package("C", &["<5", "<5"]);
    let content = said(&exactly.done(), &config);
    assert_eq!(content.verdict.words, "At or below 20 mg/kg");
    assert_eq!(content.table.packages[0].result, "20.0");
    assert!(
        content.method.ends_with(&[
            "Limit: no more than 20 mg/kg (Regulation (EU) No 828/2014).".to_owned(),
            "The verdict is ours: the lab has not seen it, and its accreditation does not cover it."
                .to_owned(),
        ]),
        "{:?}",
        content.method
    );
}

#[test]
fn no_printed_figure_is_rounded_across_the_limit() {
    let config = config("");
    let near = Sample::new(&config, "N-1", "Puffs")
        .package("A", &["19.96", "19.98"])
        .package("B", &["19.99", "20.05"])
        .package("C", &["19.0", "21.2"])
        .done();
    let content = said(&near, &config);
    let figures: Vec<&str> = content
        .table
        .packages
        .iter()
        .map(|package| package.result.as_str())
        .collect();
    assert_eq!(figures, ["19.97", "20.02", "20.1"]);
    assert!(
        content.notes[0]
            .starts_with("N-1-B: its extractions agree, but stand on both sides of the limit."),
        "{:?}",
        content.notes
    );
}

#[test]
fn no_sentence_blames_or_promises() {
    let config = config("");
    let forbidden = [
        "refused",
        "failed",
        "guilty",
        " safe",
        "unsafe",
        "contaminated",
        "passed",
        "pass ",
        " fail",
        "gluten detected",
        "free of gluten",
    ];
    for product in products::all(&config) {
        let content = said(&product, &config);
        let mut all = vec![
            content.verdict.words,
            content.verdict.count,
            content.verdict.sentence,
            content.says,
            content.says_not,
        ];
        all.extend(
            [
                content.notes,
                content.method,
                content.correspondence,
                content.label.sentences,
            ]
            .concat(),
        );
        let text = all.join(" ").to_lowercase();
        for word in forbidden {
            assert!(!text.contains(word), "“{word}” in: {text}");
        }
    }
}

#[test]
fn the_sheets_of_these_states_are_made() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(
        folder.path(),
        "a4",
        "[rule]\ndecision = \"guarded\"\nrelative_expanded_uncertainty = 0.30\n",
    );
    for product in [products::too_close(&config), products::conflicting(&config)] {
        typeset(&engine(&config), &config, &sheet_job(&product, &config));
    }
}
