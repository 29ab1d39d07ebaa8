//! The newsletter: what is new, the totals, and one page that carries its pictures.

use crate::sample;
use crate::summary::{US, invented, labels, words};
use chrono::NaiveDate;
use galleyproof::config::Config;
use galleyproof::model::decided::Decided;
use galleyproof::model::document::Document;
use galleyproof::model::followup::{FollowUpState, Told};
use galleyproof::model::label::LabelReview;
use galleyproof::model::package::{ResultKind, Standing};
use galleyproof::model::publication::PublicationState;
use galleyproof::model::reason::Reason;
use galleyproof::model::registers::IssuedRevision;
use galleyproof::model::verdict::Verdict;
use galleyproof::render::facts::digest::{self, DigestFacts};
use galleyproof::render::facts::sheet;
use galleyproof::render::{Engine, documents, newsletter};
use galleyproof::save::drafts;

fn facts(decided: &Decided, config: &Config) -> DigestFacts {
    digest::digest(decided, config, None).expect("its charts can be drawn")
}

fn files(facts: &DigestFacts, config: &Config) -> Vec<Document> {
    let engine = Engine::new(config).expect("the built-in templates load");
    newsletter::files(facts, &engine).unwrap_or_else(|failure| panic!("{failure}"))
}

fn text_of<'a>(files: &'a [Document], name: &str) -> &'a str {
    let found = files
        .iter()
        .find(|file| file.path == format!("newsletter/{name}"));
    std::str::from_utf8(&found.expect("it is made").bytes).expect("it is text")
}

/// Publishes a product's sheet as it stands.
fn publish(decided: &mut Decided, number: usize, config: &Config) {
    let product = &decided.products[number];
    let revision = IssuedRevision {
        sheet_number: sheet::sheet_number(&product.verdict, config),
        product_id: product.verdict.product.product_id.clone(),
        round: product.verdict.round.clone(),
        revision: 1,
        issued_on: product.verdict.day().expect("it was tested"),
        content_sha256: sheet::sheet(product, config).sha256,
        reason: None,
        changed: None,
        ..IssuedRevision::default()
    };
    decided.products[number].verdict.issued.push(revision);
    decided.products[number].publication.state = PublicationState::Published;
}

#[test]
fn only_what_is_not_yet_published_is_new() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(9, &config);
    for number in 0..7 {
        publish(&mut decided, number, &config);
    }
    decided.products[3].verdict.product.name = "Brown rice fusilli, new recipe".to_owned();
    decided.products[3].publication.state = PublicationState::Ready;
    let facts = facts(&decided, &config);
    assert!(
        facts.headline.starts_with("Two products are new: ")
            && facts.headline.ends_with(". One sheet is amended."),
        "{}",
        facts.headline
    );
    let sheets: Vec<&str> = facts
        .products
        .iter()
        .map(|product| product.sheet.as_str())
        .collect();
    for new in ["TKW-TW-0004-1", "TKW-TW-0008-1", "TKW-TW-0009-1"] {
        assert!(sheets.contains(&new), "{new} is missing from {sheets:?}");
    }
    assert_eq!(facts.amended.len(), 1);
    assert!(
        facts.amended[0].replace('\u{200b}', "").starts_with(
            "Brown rice fusilli, new recipe, sheet TKW-TW-0004-1: revision 2 replaces revision 1"
        ),
        "{}",
        facts.amended[0]
    );
    assert!(
        facts
            .totals
            .as_deref()
            .is_some_and(|said| said.starts_with("So far 9 products")),
        "{:?}",
        facts.totals
    );
}

#[test]
fn the_page_is_one_file_that_fetches_nothing() {
    let config = invented::config(US, "a4");
    let facts = facts(&invented::decided(24, &config), &config);
    let files = files(&facts, &config);
    let page = text_of(&files, "digest.html");
    for fetched in ["<img", "src=", "url(", "<link", "@import", "<script"] {
        assert!(!page.contains(fetched), "the page fetches by {fetched}");
    }
    for chart in &facts.charts {
        for kind in ["svg", "png"] {
            let path = format!("newsletter/{}.{kind}", chart.name);
            assert!(
                files.iter().any(|file| file.path == path),
                "{path} is missing"
            );
        }
    }
}

/// Of many products as well: beyond 102 kB some mail programs cut a mail off.
#[test]
fn page_and_mail_have_less_than_100_kb() {
    let config = invented::config(US, "a4");
    for products in [0, 24, 42, 600] {
        let mut decided = invented::decided(products, &config);
        for product in &mut decided.products {
            product.verdict.label = sample::malt_finding("Maize, ", ", salt.");
            product.verdict.notify_maker = true;
        }
        let facts = facts(&decided, &config);
        let files = files(&facts, &config);
        let day = NaiveDate::from_ymd_opt(2031, 4, 7).expect("a date");
        let mail = drafts::newsletter(&files, &facts.subject, day, &config);
        assert_eq!(mail.path, "newsletter/digest.eml");
        for (name, size) in [
            ("page", text_of(&files, "digest.html").len()),
            ("mail", mail.bytes.len()),
        ] {
            assert!(size < 100_000, "the {name} of {products} has {size} bytes");
        }
    }
}

#[test]
fn a_mail_that_cannot_list_all_says_so() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(90, &config);
    for product in &mut decided.products {
        product.verdict.notify_maker = true;
    }
    let facts = facts(&decided, &config);
    assert_eq!((facts.products.len(), facts.mail_rows), (90, 60));
    let files = files(&facts, &config);
    let text = text_of(&files, "digest.txt").replace('\n', " ");
    assert!(
        text.contains(
            "This list ends after the first 60 of these; the printed newsletter has all."
        ),
        "{text}"
    );
    assert_eq!(text.matches(" Packages: ").count(), 60);
}

#[test]
fn plain_text_has_lines_of_at_most_72_letters() {
    let config = invented::config(US, "a4");
    let facts = facts(&invented::decided(30, &config), &config);
    let files = files(&facts, &config);
    for line in text_of(&files, "digest.txt").lines() {
        assert!(line.chars().count() <= 72, "{line}");
    }
}

#[test]
fn every_verdict_has_what_the_label_says_beside_it() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(3, &config);
    let unread = LabelReview {
        unread: true,
        ..sample::no_finding(Some("読めない"))
    };
    let labels = [
        sample::malt_finding("Maize, ", ", salt."),
        sample::no_finding(Some("Rice.")),
        unread,
    ];
    for (number, (product, label)) in decided.products.iter_mut().zip(labels).enumerate() {
        product.verdict.product.name = format!("Food {number}");
        product.verdict.label = label;
    }
    let facts = facts(&decided, &config);
    let files = files(&facts, &config);
    for name in ["digest.html", "digest.txt"] {
        let text = text_of(&files, name);
        for (food, says) in [
            ("Food 0", "Label names barley malt extract"),
            ("Food 1", "Label: nothing found"),
            ("Food 2", "Label not read"),
        ] {
            let after = text.split(food).nth(1).unwrap_or_else(|| panic!("{food}"));
            let said = after.split("Label").nth(1).expect("a label");
            let wanted = says.strip_prefix("Label").expect("begins so");
            assert!(said.starts_with(wanted), "{name}, {food}: {said}");
        }
    }
}

#[test]
fn a_product_without_a_verdict_has_the_reason_beside_it() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(1, &config);
    decided.products[0].verdict.verdict = Verdict::NoVerdict;
    decided.products[0].verdict.reasons = vec![Reason::NoClaim];
    let facts = facts(&decided, &config);
    let reason = facts.products[0].reasons.join(" ");
    assert!(!reason.is_empty());
    let files = files(&facts, &config);
    for name in ["digest.html", "digest.txt"] {
        let text = text_of(&files, name).replace("\n  ", " ");
        assert!(
            text.contains(&reason.replace('\u{200b}', "")),
            "{name}: {text}"
        );
    }
}

#[test]
fn an_earlier_round_of_a_food_points_to_the_later_one() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(2, &config);
    let first = decided.products[0].clone();
    let later = &mut decided.products[1];
    later.verdict.product = first.verdict.product.clone();
    later.verdict.round = "2".to_owned();
    let day = NaiveDate::from_ymd_opt(2039, 1, 1).expect("a date");
    for package in &mut later.verdict.packages {
        for extraction in &mut package.pair.extractions {
            extraction.extraction.tested_on = Some(day);
        }
    }
    let facts = facts(&decided, &config);
    let pointers: Vec<&str> = facts
        .products
        .iter()
        .filter_map(|product| product.again.as_deref())
        .collect();
    assert_eq!(pointers.len(), 1, "{pointers:?}");
    let said = pointers[0].replace(['\u{200b}'], "");
    assert!(
        said.starts_with("Tested again in round 2: ") && said.ends_with("(sheet TKW-TW-0001-2)."),
        "{said}"
    );
}

/// A link to what is not there yet would say what is coming.
#[test]
fn published_sheets_are_linked_where_the_site_is_known() {
    let mut config = invented::config(US, "a4");
    let mut decided = invented::decided(2, &config);
    publish(&mut decided, 0, &config);
    let gluten = "https://tidewater.example/gluten";
    for (website, site, home) in [
        (None, None, None),
        (Some("our shop window"), None, None),
        (Some("javascript://x.example"), None, None),
        (
            Some("tidewater.example"),
            None,
            Some("https://tidewater.example"),
        ),
        (
            Some("http://tidewater.example/gluten/"),
            None,
            Some("http://tidewater.example/gluten"),
        ),
        (Some("tidewater.example"), Some(gluten), Some(gluten)),
    ] {
        config.programme.website = website.map(str::to_owned);
        config.programme.site = site.map(str::to_owned);
        // Only of that address is it known that the pages lie there.
        let address = site.map(|site| format!("{site}/products/TW-0001--1.html"));
        let address = address.as_deref();
        decided.products[1].publication.state = PublicationState::Ready;
        let both = facts(&decided, &config);
        assert!(both.products.iter().all(|product| product.page.is_none()));
        let mut public = decided.clone();
        public.products.truncate(1);
        let public = facts(&public, &config);
        assert_eq!(public.products[0].page.as_deref(), address, "{website:?}");
        let files = files(&public, &config);
        let page = text_of(&files, "digest.html");
        assert_eq!(
            page.contains("<a class=\"small\""),
            address.is_some(),
            "{page}"
        );
        assert_eq!(public.site.as_deref(), home, "{website:?}");
        let text = text_of(&files, "digest.txt");
        assert_eq!(text.contains("://"), home.is_some(), "{text}");
    }
}

/// The headline has said how many there are of each.
#[test]
fn what_is_all_new_is_counted_once() {
    let config = invented::config(US, "a4");
    let all_new = facts(&invented::decided(8, &config), &config);
    assert_eq!(
        all_new.totals.map(|said| said.contains("So far")),
        Some(false)
    );
    let nothing = facts(&invented::decided(0, &config), &config);
    assert_eq!(nothing.totals, None);
    assert!(nothing.bars.is_empty());
}

#[test]
fn text_from_registers_is_text_on_the_page() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(3, &config);
    decided.products[0].verdict.product.name =
        "Crackers <script>alert(1)</script> & {{ facts }}".to_owned();
    let files = files(&facts(&decided, &config), &config);
    let page = text_of(&files, "digest.html");
    assert!(!page.contains("<script"), "markup from a register");
    assert!(page.contains("&lt;script&gt;"));
    assert!(text_of(&files, "digest.txt").contains("<script>alert(1)</script> & {{ facts }}"));
}

#[test]
fn the_same_results_give_the_same_newsletter() {
    let config = invented::config(US, "us-letter");
    let made = || files(&facts(&invented::decided(12, &config), &config), &config);
    assert!(made() == made());
}

#[test]
fn the_printed_newsletter_can_be_made_of_nothing_few_and_many() {
    for (products, says) in [
        (0, "Nothing is new"),
        (1, "One product is new"),
        (8, "Eight products are new"),
        (90, "90 products are new"),
    ] {
        let config = invented::config(US, "a4");
        let facts = facts(&invented::decided(products, &config), &config);
        let engine = Engine::new(&config).expect("the built-in templates load");
        let job = digest::job(&facts).expect("the facts are JSON");
        let pdf = documents::pdf(&engine, &job).unwrap_or_else(|faults| panic!("{}", faults[0]));
        let document = lopdf::Document::load_mem(&pdf).expect("a PDF");
        let words = words(&document);
        assert!(words.contains(says), "{words}");
        assert!(words.contains("This is not medical advice"));
    }
}

#[test]
fn a_maker_who_was_not_told_is_not_said_to_be_silent() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(3, &config);
    let told = FollowUpState::Waiting(Told {
        on: NaiveDate::from_ymd_opt(2031, 3, 4).expect("a date"),
        due_on: NaiveDate::from_ymd_opt(2031, 3, 19).expect("a date"),
    });
    let states = [FollowUpState::ToSend, told, FollowUpState::NotNeeded];
    for (number, (product, state)) in decided.products.iter_mut().zip(states).enumerate() {
        product.verdict.product.name = format!("Food {number}");
        product.verdict.notify_maker = state != FollowUpState::NotNeeded;
        product.verdict.followups.clear();
        product.follow_up = state;
    }
    assert_eq!(
        facts(&decided, &config).silent.as_deref(),
        Some(
            "No statement from the maker of Food 1 is on record. We print each one that comes. The maker of Food 0 has still to be told."
        )
    );
}

#[test]
fn products_with_something_on_the_label_are_named_with_it() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(3, &config);
    for (number, product) in decided.products.iter_mut().enumerate() {
        product.verdict.product.name = format!("Food {number}");
        product.verdict.label = match number {
            1 => sample::malt_finding("Maize, ", ", salt."),
            _ => sample::no_finding(Some("Rice.")),
        };
    }
    for product in &mut decided.products {
        product.verdict.product.brand = Some("Mill".to_owned());
    }
    let labels = facts(&decided, &config).labels.expect("there are labels");
    assert_eq!(labels.groups.len(), 1);
    assert_eq!(
        labels.groups[0].said,
        "One label names a gluten source, which the rule does not allow:"
    );
    assert_eq!(
        labels.groups[0].lines,
        ["“barley malt extract”: Mill, Food 1"]
    );
    assert_eq!(
        labels.last,
        "Such words are a reason to ask, not a test result."
    );
}

/// Left of the limit, or below the marks: in the zone right of it a reader would take it for a result there.
#[test]
fn an_undecided_package_is_not_named_in_the_zone_over_the_limit() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(1, &config);
    for package in &mut decided.products[0].verdict.packages {
        package.standing = Standing::Unresolved;
        package.result = ResultKind::None;
    }
    let facts = facts(&decided, &config);
    let labels = labels(&facts.charts[0].svg);
    let place = |wanted: &str| {
        let found = labels.iter().find(|(text, _)| text.contains(wanted));
        found
            .unwrap_or_else(|| panic!("no “{wanted}”: {labels:?}"))
            .1
    };
    let [left, _, right, _] = place("Limit");
    let limit = (left + right) / 2.0;
    let [_, _, end, _] = place(": undecided");
    assert!(end < limit, "{end} is right of the limit at {limit}");
}

#[test]
fn what_was_issued_last_is_amended_only_where_it_replaces_a_sheet() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(2, &config);
    publish(&mut decided, 0, &config);
    publish(&mut decided, 1, &config);
    let day = NaiveDate::from_ymd_opt(2032, 2, 1).expect("a date");
    for product in &mut decided.products {
        product.verdict.issued[0].issued_on = day;
    }
    assert!(facts(&decided, &config).amended.is_empty(), "first issues");

    let before = NaiveDate::from_ymd_opt(2032, 1, 5).expect("a date");
    let issued = &mut decided.products[1].verdict.issued;
    issued[0].revision = 2;
    let first = IssuedRevision {
        revision: 1,
        issued_on: before,
        ..issued[0].clone()
    };
    issued.insert(0, first);
    let amended = facts(&decided, &config)
        .amended
        .join(" ")
        .replace('\u{a0}', " ");
    assert_eq!(
        amended.replace('\u{200b}', ""),
        "Seed bar, sheet TKW-TW-0002-1: revision 2 replaces revision 1 of 5 January 2032."
    );
}
