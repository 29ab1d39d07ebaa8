//! What a reader takes from a sheet beside its verdict: days, pictures, a sum that can be done again, large print.

use crate::render::overflow::smallest_type;
use crate::render::{engine, products};
use crate::sample::{self, Sample};
use crate::workspace::Workspace;
use galleyproof::config::Config;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::model::place::Place;
use galleyproof::model::registers::{Followup, FollowupKind};
use galleyproof::model::sheet::SheetContent;
use galleyproof::model::verdict::Verdict;
use galleyproof::render::documents;
use galleyproof::render::facts::{carried, sheet};
use lopdf::Document;

fn config(rest: &str) -> Config {
    sample::config(std::path::Path::new("no/such/folder"), "a4", rest)
}

fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ").replace('\u{200b}', "")
}

fn content(product: &JudgedProduct, config: &Config) -> SheetContent {
    sheet::sheet(product, config).content
}

/// Three packages of which the first has these readings.
fn three(config: &Config, first: &[&str]) -> JudgedProduct {
    Sample::new(config, "0704", "Corn Flakes")
        .product(|product| product.serving_g = Some(75.0))
        .package("A", first)
        .package("B", &["<5", "<5"])
        .package("C", &["<5", "<5"])
        .done()
}

fn words_of(path: &std::path::Path) -> String {
    let pdf = Document::load(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let pages: Vec<u32> = pdf.get_pages().into_keys().collect();
    let text = pdf.extract_text(&pages).expect("its pages have text");
    let text = plain(&text).replace('\u{ad}', "");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn the_days_of_a_sheet_stand_in_their_order() {
    let config = config("");
    let mut product = three(&config, &["31.5", "28.2"]);
    let event = |day: u32, kind| Followup {
        product_id: "0704".to_owned(),
        round: Some("1".to_owned()),
        on: sample::day(5, day),
        kind,
        due_on: (kind == FollowupKind::NoticeSent).then(|| sample::day(5, 20)),
        statement: None,
        note: None,
        place: Place::default(),
    };
    product.verdict.followups = vec![event(2, FollowupKind::NoticeSent)];
    let lines = |product: &JudgedProduct| -> Vec<String> {
        let lines = content(product, &config).story;
        let said = |line: &galleyproof::model::sheet::StoryLine| {
            format!("{}: {}", line.what, plain(&line.when))
        };
        lines.iter().map(said).collect()
    };
    let story = lines(&product);
    let heads: Vec<&str> = story
        .iter()
        .filter_map(|line| line.split(':').next())
        .collect();
    assert_eq!(
        heads,
        [
            "Bought",
            "Sent to the lab",
            "Tested",
            "Maker told",
            "Maker answered"
        ]
    );
    assert_eq!(
        story[3],
        "Maker told: 2 May 2031; answer asked for by 20 May 2031"
    );
    assert_eq!(story[4], "Maker answered: no statement on record");
    product
        .verdict
        .followups
        .push(event(9, FollowupKind::Reply));
    assert_eq!(lines(&product)[4], "Maker answered: 9 May 2031");
    // What is to be told and was not is said, and a maker who need not be told has no line.
    product.verdict.followups.clear();
    assert_eq!(lines(&product)[3], "Maker told: no notice on record");
    assert_eq!(lines(&three(&config, &["<5", "<5"])).len(), 3);
}

#[test]
fn a_sheet_without_a_verdict_ends_in_what_comes_next() {
    let config = config("");
    let product = products::undecided(&config);
    assert_eq!(product.verdict.verdict, Verdict::NoVerdict);
    let product = sample::with_sheet(&product, &config);
    let facts = sheet::facts(&product, &config, None);
    let last = facts.story.last().expect("a sheet has its days");
    assert_eq!(last.what, "Next");
    assert!(
        last.when.contains("neither is on record yet") || last.when.contains("still to come"),
        "{}",
        last.when
    );
}

#[test]
fn what_few_packages_can_say_is_drawn_with_the_figures_of_the_sentence() {
    let config = config("");
    let within = content(&three(&config, &["7", "7"]), &config);
    let picture = within.shares.expect("a verdict has its picture");
    let most: Vec<u64> = picture.strips.iter().map(|strip| strip.at_most).collect();
    // 1 - 0.05^(1/n) for 3, 6, 14 and 59 packages.
    assert_eq!(most, [63, 39, 19, 5]);
    assert!(plain(&within.says_not).contains("up to 63 % of all packages"));
    let over = content(&three(&config, &["31.5", "28.2"]), &config);
    let strips = over.shares.expect("it has its picture").strips;
    assert_eq!(strips.len(), 1);
    assert_eq!((strips[0].at_least, strips[0].at_most), (1, 91));
    assert!(plain(&over.says).contains("from 1 to 91 %"));
    let undecided = content(&products::undecided(&config), &config);
    assert_eq!(undecided.shares, None);
}

#[test]
fn one_pair_is_worked_out_in_words() {
    let config = config("");
    let sum = |first: &[&str]| {
        let sum = content(&three(&config, first), &config).sum;
        plain(&sum.expect("two readings can be worked out"))
    };
    assert!(
        sum(&["31.5", "28.2"]).ends_with(
            "31.5 and 28.2. Their mean is 29.85, printed as 29.9. They are 3.3 apart; up to 12.6 is allowed at that level."
        ),
        "{}",
        sum(&["31.5", "28.2"])
    );
    assert!(sum(&["<5", "6.2"]).ends_with("so the mean is open too: 3.1–5.6."));
    assert!(sum(&["<5", "<5"]).ends_with("so there is no mean: the result is <5."));
    assert!(sum(&["6.1", "31"]).contains("They are 24.9 apart"));
}

#[test]
fn a_portion_is_drawn_beside_the_same_portion_at_the_limit() {
    let config = config("");
    let picture = content(&three(&config, &["31.5", "28.2"]), &config)
        .portion
        .expect("the register has a portion");
    assert!(
        plain(&picture.said).ends_with(
            "(29.9 ppm) holds 2.24 mg of gluten. At the limit it would be 1.50 mg. We call no amount safe."
        ),
        "{}",
        picture.said
    );
    assert!((picture.squares - 22.3875).abs() < 1e-9, "{picture:?}");
    assert!((picture.at_limit - 15.0).abs() < 1e-9 && !picture.at_most);
    let below = content(&three(&config, &["<5", "<5"]), &config).portion;
    assert!(below.expect("an upper end can be drawn").at_most);
    // Near the limit the two figures never read the same.
    let near = content(&three(&config, &["19.99", "19.99"]), &config).portion;
    let near = plain(&near.expect("it can be drawn").said);
    assert!(
        near.contains("1.499 mg") && near.contains("1.500 mg"),
        "{near}"
    );
    let disagree = content(&three(&config, &["6.1", "31"]), &config).portion;
    assert_eq!(disagree, None);
}

#[test]
fn no_type_of_a_sheet_in_large_print_is_below_14_points() {
    for (paper, language) in [("a4", "en"), ("us-letter", "de"), ("a4", "es")] {
        let folder = tempfile::tempdir().expect("a folder");
        let config = sample::config(
            folder.path(),
            &format!("{paper}\"\nlanguage = \"{language}"),
            "",
        );
        let engine = engine(&config);
        for product in [
            products::fullest(&config),
            products::none_measured(&config),
            products::undecided(&config),
            products::six_with_repeat(&config),
        ] {
            let product = sample::with_sheet(&product, &config);
            let facts = sheet::facts(&product, &config, None);
            let job = carried::large_print(&product, &facts).expect("facts are JSON");
            let pages = documents::pages(&engine, &job).expect("it can be set");
            let smallest = smallest_type(&pages);
            assert!(smallest >= 14.0, "{}: {smallest} pt", job.path);
            documents::pdf(&engine, &job).expect("it is PDF/A and PDF/UA");
        }
    }
}

#[test]
fn large_print_is_made_and_archived_where_it_is_asked_for() {
    let demo = Workspace::demo();
    let large = demo.path("out/sheets/TW-003--1-large-print.pdf");
    demo.run(&["run", "-q", "--only", "TW-003", "--large-print"]);
    let words = words_of(&large);
    for said in [
        "At or above 20 ppm",
        "Label: nothing found",
        "29.9 ppm",
        "Page 1 of",
    ] {
        assert!(words.contains(said), "{said}: {words}");
    }
    demo.run(&[
        "issue",
        "-q",
        "--only",
        "TW-001",
        "--large-print",
        "--date",
        "2031-12-01",
    ]);
    let public = demo.path("archive/2031-12-01/data/public/sheets");
    assert!(public.join("TW-001--1-large-print.pdf").is_file());
    demo.run(&["run", "-q"]);
    assert!(!large.exists(), "what was not asked for is cleared away");
}

#[test]
fn an_issued_sheet_leads_to_its_page_where_the_settings_name_the_site() {
    let demo = Workspace::demo();
    let settings = demo.text("programme.toml");
    let site = "https://tidewater-kitchen.example/results";
    demo.with(
        "programme.toml",
        settings.replace("[programme]", &format!("[programme]\nsite = \"{site}/\"")),
    );
    let address = format!("{site}/products/TW-001--1.html").replace(' ', "");
    let sheet = demo.path("out/sheets/TW-001--1.pdf");
    demo.run(&["run", "-q", "--only", "TW-001"]);
    let proof = words_of(&sheet);
    assert!(!proof.contains("/results/"), "a proof has no page: {proof}");
    assert!(
        proof.contains("column"),
        "the place of a figure is said: {proof}"
    );
    demo.run(&["issue", "-q", "--only", "TW-001", "--date", "2031-12-01"]);
    let issued = words_of(&sheet).replace(' ', "");
    assert!(issued.contains(&address), "{address}: {issued}");
    demo.with(
        "programme.toml",
        settings.replace("[programme]", "[programme]\nsite = \"our site\""),
    );
    let told = demo.run(&["check"]).exits(2).stderr();
    assert!(
        told.contains("an address that begins with https://"),
        "{told}"
    );
}
