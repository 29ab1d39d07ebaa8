//! The programme summary and the newsletter, read back.

pub mod invented;

/// The summary in German and Spanish.
mod languages;

/// What is said of the statistics.
mod statistics;

use crate::render::overflow;
use galleyproof::config::Config;
use galleyproof::model::decided::Decided;
use galleyproof::model::label::LabelFinding;
use galleyproof::model::reason::Reason;
use galleyproof::model::sheet::LabelState;
use galleyproof::render::charts::style::{INK, Type, text_width};
use galleyproof::render::facts::digest;
use galleyproof::render::facts::summary::{self, SummaryFacts};
use galleyproof::render::{Engine, documents};
use lopdf::{Dictionary, Document};

const US: &str = "regime = \"us\"";

/// Rules that differ in what reaching the limit means, in where the limit lies, and in how it is held.
const RULES: [&str; 6] = [
    US,
    "regime = \"eu\"",
    "regime = \"chile\"",
    "regime = \"au-nz\"",
    "regime = \"us\"\ndecision = \"guarded\"\nrelative_expanded_uncertainty = 0.3",
    "regime = \"custom\"\nlimit_ppm = 100.0\nlimit_passes = true",
];

fn facts(products: usize, config: &Config) -> SummaryFacts {
    let decided = invented::decided(products, config);
    summary::summary(&decided, config, None).expect("its charts can be drawn")
}

fn pdf(facts: &SummaryFacts, config: &Config) -> Vec<u8> {
    let engine = Engine::new(config).expect("the built-in templates load");
    let job = summary::job(facts).expect("the facts are JSON");
    documents::pdf(&engine, &job).unwrap_or_else(|faults| panic!("{}", faults[0]))
}

fn read(facts: &SummaryFacts, config: &Config) -> Document {
    Document::load_mem(&pdf(facts, config)).expect("a PDF that can be read back")
}

/// All words, those that were broken over two lines with a space between.
fn words(document: &Document) -> String {
    let pages: Vec<u32> = document.get_pages().into_keys().collect();
    let text = document.extract_text(&pages).expect("its text can be read");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The dictionaries of structure elements of one kind.
fn elements<'a>(document: &'a Document, kind: &str) -> Vec<&'a Dictionary> {
    let is_kind = |found: &&Dictionary| {
        found
            .get(b"S")
            .and_then(|name| name.as_name())
            .is_ok_and(|name| name == kind.as_bytes())
    };
    let objects = document
        .objects
        .values()
        .filter_map(|object| object.as_dict().ok());
    objects
        .filter(|found| found.has(b"P"))
        .filter(is_kind)
        .collect()
}

#[test]
fn a_summary_says_what_it_is_and_has_bookmarks() {
    let config = invented::config(US, "a4");
    let facts = facts(24, &config);
    let document = read(&facts, &config);
    let catalog = document.catalog().expect("has one");
    let lang = catalog
        .get(b"Lang")
        .and_then(|lang| lang.as_str())
        .expect("has a language");
    assert_eq!(lang, b"en-GB");
    let contents = document.get_toc().expect("has an outline");
    let titles: Vec<&str> = contents
        .toc
        .iter()
        .filter(|entry| entry.level == 2)
        .map(|entry| entry.title.as_str())
        .collect();
    assert_eq!(
        titles,
        [
            "The results in one table",
            "Where each package landed",
            "Each product on the scale",
            "By food group, and by quarter",
            "How well the extractions agree",
            "Products at or above the limit",
            "What the labels say",
            "How we test and decide",
            "Register of all results",
        ]
    );
    assert_eq!(elements(&document, "H1").len(), 1, "one title");
    let words = words(&document);
    assert!(
        words.contains("What we found in 24 foods labelled gluten-free"),
        "{words}"
    );
}

#[test]
fn a_food_of_two_rounds_is_one_food_and_two_products() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(12, &config);
    let first = decided.products[0].verdict.product.clone();
    decided.products[1].verdict.product = first.clone();
    decided.products[1].verdict.round = "2".to_owned();
    let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
    assert_eq!(
        facts.cover.title,
        "What we found in 11 foods labelled gluten-free"
    );
    let note = &facts.cover.squares_note;
    assert!(note.contains("The 12 products are 11 foods"), "{note}");
    let rows = facts.register.iter().flat_map(|group| &group.rows);
    let names: Vec<&str> = rows.map(|row| row.name.as_str()).collect();
    let second = format!("{} (round 2)", first.name);
    assert!(names.contains(&first.name.as_str()) && names.contains(&second.as_str()));
}

#[test]
fn labels_against_the_rule_stand_on_the_cover_and_in_the_register() {
    let config = invented::config(US, "a4");
    let mut decided = invented::decided(12, &config);
    for (number, product) in decided.products.iter_mut().enumerate() {
        product.verdict.label.finding = match number {
            3 => LabelFinding::GlutenSource,
            _ => LabelFinding::None,
        };
    }
    let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
    let said = facts.cover.labels.as_deref().unwrap_or_default();
    assert!(
        said.contains("the label of one product names a gluten source"),
        "{said}"
    );
    let rows = facts.register.iter().flat_map(|group| &group.rows);
    let marked: Vec<&String> = rows
        .filter(|row| row.label.state == LabelState::Against)
        .map(|row| &row.number)
        .collect();
    assert_eq!(marked, [&decided.products[3].verdict.product.product_id]);
}

#[test]
fn what_more_packages_would_say_is_a_table() {
    let config = invented::config(US, "a4");
    let facts = facts(24, &config);
    let needed = facts.groups.needed.as_ref().expect("there are products");
    // Exact one-sided bound for 0 of 3: 1 - 0.05^(1/3) = 63.2 %.
    assert!(
        needed.lede.contains("fewer than 63\u{a0}%"),
        "{}",
        needed.lede
    );
    let words = words(&read(&facts, &config)).replace('\u{a0}', " ");
    assert!(
        words.contains("Fewer than 5 % 1 % Packages to test 59 299"),
        "{words}"
    );
}

#[test]
fn every_product_is_in_the_register_with_its_results() {
    let config = invented::config(US, "us-letter");
    let facts = facts(40, &config);
    let words = words(&read(&facts, &config));
    let register = words
        .rsplit("Register of all results")
        .next()
        .expect("the last part");
    for row in facts.register.iter().flat_map(|group| &group.rows) {
        assert!(register.contains(&row.number), "{} is missing", row.number);
        for cell in row.results.iter().flatten() {
            assert!(
                register.contains(&cell.text),
                "{} of {} is missing",
                cell.text,
                row.number
            );
        }
    }
}

#[test]
fn every_chart_tells_its_message_and_every_table_has_heads() {
    let config = invented::config(US, "a4");
    let facts = facts(24, &config);
    let document = read(&facts, &config);
    let figures = elements(&document, "Figure");
    assert_eq!(figures.len(), facts.charts.len());
    assert!(figures.iter().all(|figure| figure.has(b"Alt")));
    assert!(elements(&document, "TH").len() >= 6 * elements(&document, "Table").len() / 2);
    let over = facts.cover.blocks[1]
        .count
        .split(' ')
        .next()
        .expect("a number");
    let squares = facts.cover.squares.as_ref().expect("there are products");
    assert!(
        squares
            .alt
            .contains(&format!("{over} at or above the limit")),
        "{}",
        squares.alt
    );
}

#[test]
fn the_counts_of_the_cover_add_up_under_every_rule() {
    for rule in RULES {
        let config = invented::config(rule, "a4");
        let facts = facts(60, &config);
        let first = |block: &summary::Block| block.count.split(' ').next().map(str::parse::<u64>);
        let counts: Vec<u64> = facts
            .cover
            .blocks
            .iter()
            .map(|block| first(block).expect("a word").expect("a number"))
            .collect();
        assert_eq!(counts.iter().sum::<u64>(), 60, "{rule}");
        assert_eq!(counts[1] as usize, facts.over.len(), "{rule}");
        assert_eq!(counts[2] as usize, facts.undecided.len(), "{rule}");
    }
}

#[test]
fn a_summary_can_be_made_of_nothing_and_of_one_product_under_every_rule() {
    for (rule, paper) in RULES
        .into_iter()
        .zip(["a4", "us-letter"].into_iter().cycle())
    {
        let config = invented::config(rule, paper);
        for products in [0, 1, 24] {
            let words = words(&read(&facts(products, &config), &config));
            assert!(
                words.contains("How we test and decide"),
                "{products} products, {rule}"
            );
        }
    }
}

#[test]
fn the_same_results_give_the_same_bytes() {
    let config = invented::config(US, "a4");
    let made = || pdf(&facts(24, &config), &config);
    assert!(made() == made());
}

#[test]
fn the_drawings_do_not_grow_with_the_number_of_products() {
    let config = invented::config(US, "a4");
    let size = |products| -> usize {
        let facts = facts(products, &config);
        // The control chart has a point for each pair, and its alternative text names the first twelve.
        facts
            .charts
            .iter()
            .filter(|chart| chart.name != "range-chart")
            .map(|chart| chart.svg.len())
            .sum()
    };
    let (few, many) = (size(500), size(4000));
    assert!(
        many < 3 * few,
        "{few} bytes for 500 products, {many} for 4,000"
    );
}

/// A programme whose every text is as long as it may be, without a place to break.
fn extreme(config: &Config) -> Decided {
    let long = |n: usize| {
        "Wurzelgemüse_"
            .repeat(n.div_ceil(13))
            .chars()
            .take(n)
            .collect::<String>()
    };
    let mut decided = invented::decided(24, config);
    for (number, product) in decided.products.iter_mut().enumerate() {
        let of = &mut product.verdict.product;
        of.product_id = format!("{:02}{}", number, "X".repeat(62));
        of.name = long(70);
        of.brand = Some(long(40));
        of.category = Some(format!("{} {}", number % 4, long(58)));
        product.verdict.round = "R".repeat(64);
        product.verdict.reasons = vec![Reason::UnknownClaim { text: long(200) }];
        for followup in &mut product.verdict.followups {
            followup.note = Some(long(250));
        }
        for term in &mut product.verdict.label.terms {
            term.printed = long(60);
        }
        for package in &mut product.verdict.packages {
            let code = format!("{}{}", package.pair.package.package_code, "Y".repeat(55));
            package.pair.package.package_code = code;
        }
    }
    if let Some(chart) = &mut decided.statistics.range_chart {
        chart
            .points
            .iter_mut()
            .for_each(|point| point.package_code = "Y".repeat(64));
    }
    for group in decided
        .statistics
        .groups
        .iter_mut()
        .flat_map(|grouping| &mut grouping.groups)
    {
        group.name = long(58);
    }
    decided
}

#[test]
fn long_texts_stay_on_the_page_and_off_one_another() {
    for (paper, side) in [("a4", 51.02), ("us-letter", 59.39)] {
        let config = invented::config(US, paper);
        let engine = Engine::new(&config).expect("the built-in templates load");
        let decided = extreme(&config);
        let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
        let printed = digest::digest(&decided, &config, None).expect("its charts can be drawn");
        for chart in facts.charts.iter().chain(&printed.charts) {
            assert!(
                chart.height_mm < 215.0,
                "{} is higher than a page",
                chart.name
            );
        }
        let jobs = [summary::job(&facts), digest::job(&printed)];
        for job in jobs.map(|job| job.expect("the facts are JSON")) {
            let pages =
                documents::pages(&engine, &job).unwrap_or_else(|faults| panic!("{}", faults[0]));
            let faults = overflow::faults(&pages, side);
            // Heads are told by their size there, and other text of these documents has it.
            let faults: Vec<_> = faults
                .iter()
                .filter(|fault| !fault.contains("stands alone"))
                .collect();
            assert!(faults.is_empty(), "{} on {paper}: {faults:#?}", job.path);
        }
    }
}

/// The labels of a chart: each with the box that it fills.
fn labels(svg: &str) -> Vec<(String, [f64; 4])> {
    let attribute = |tag: &str, name: &str| -> Option<String> {
        let value = tag.split_once(&format!(" {name}=\""))?.1;
        Some(value.split_once('"')?.0.to_owned())
    };
    let number = |tag: &str, name| attribute(tag, name).and_then(|text| text.parse::<f64>().ok());
    svg.split("<text")
        .skip(1)
        .map(|rest| {
            let (tag, after) = rest.split_once('>').expect("a tag ends");
            let text = after
                .split("</text>")
                .next()
                .unwrap_or_default()
                .trim()
                .to_owned();
            let [x, y, size] =
                ["x", "y", "font-size"].map(|name| number(tag, name).expect("a number") / 10.0);
            let look = if tag.contains("bold") {
                Type::strong(size, INK)
            } else {
                Type::plain(size, INK)
            };
            let plain = text
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&");
            let width = text_width(&plain, look);
            let left = match attribute(tag, "text-anchor").as_deref() {
                Some("end") => x - width,
                Some("middle") => x - width / 2.0,
                _ => x,
            };
            // plotters writes the top of a text; its baseline is 0.76 of the size below, its letters 0.7 high.
            (plain, [left, y + 0.06 * size, left + width, y + 0.9 * size])
        })
        .collect()
}

/// Labels of the summary's and the newsletter's charts that leave their drawing or touch one another.
fn touching(products: usize, config: &Config) -> Vec<String> {
    let decided = invented::decided(products, config);
    let news = digest::digest(&decided, config, None).expect("its charts can be drawn");
    let charts = facts(products, config).charts.into_iter();
    let mut faults = Vec::new();
    for chart in charts.chain(news.charts) {
        let labels = labels(&chart.svg);
        for (number, (text, [left, top, right, bottom])) in labels.iter().enumerate() {
            if *left < -0.5 || *right > 493.7 {
                faults.push(format!("{text:?} leaves {}", chart.name));
            }
            for (other, [l, t, r, b]) in &labels[number + 1..] {
                let apart = right <= l || r <= left || bottom <= t || b <= top;
                if !apart {
                    faults.push(format!("{text:?} touches {other:?} in {}", chart.name));
                }
            }
        }
    }
    faults
}

#[test]
fn no_two_labels_of_a_chart_touch() {
    for rule in RULES {
        for products in [1, 24, 300] {
            let faults = touching(products, &invented::config(rule, "a4"));
            assert!(
                faults.is_empty(),
                "{products} products, {rule}: {faults:#?}"
            );
        }
    }
}

mod newsletter;
