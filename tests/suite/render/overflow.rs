//! Extreme content, 200 products of it: text stays on the page, lies on no other text, and no head stands alone.

use crate::render::{engine, sheet_job};
use crate::sample::{self, Sample};
use galleyproof::config::Config;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::model::registers::Package;
use galleyproof::render::facts::{notice, query};
use galleyproof::render::{Job, charts::ruler::Ruler, documents};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::test_runner::{Config as Cases, TestRng, TestRunner};
use typst::layout::{Frame, FrameItem, Point};
use typst_layout::PagedDocument;

/// What a product is made of here.
#[derive(Clone, Debug)]
struct Extreme {
    name: String,
    brand: String,
    ingredients: String,
    lot: String,
    shop: String,
    code: String,
    packages: Vec<Vec<String>>,
}

fn words(most: usize) -> impl Strategy<Value = String> {
    let word = prop_oneof![
        4 => "[a-z]{2,12}",
        2 => Just("Åsvindel".to_owned()),
        2 => Just("grün-weiß/ñandú".to_owned()),
        1 => Just("#*_$@<>\\`=[]".to_owned()),
        1 => "[A-ZWM]{20,60}",
        1 => "[0-9]{1,15}",
    ];
    vec(word, 1..=most).prop_map(|words| words.join(" "))
}

fn reading() -> impl Strategy<Value = String> {
    prop_oneof![
        3 => Just("<5".to_owned()),
        1 => Just("<10".to_owned()),
        1 => Just(">80".to_owned()),
        4 => (50..4000_u32).prop_map(|tenths| format!("{}.{}", tenths / 10, tenths % 10)),
        1 => (1900..2100_u32).prop_map(|hundredths| format!("{}.{:02}", hundredths / 100, hundredths % 100)),
        1 => Just("12345.6".to_owned()),
        1 => Just("cancelled".to_owned()),
    ]
}

fn extreme() -> impl Strategy<Value = Extreme> {
    let readings = vec(vec(reading(), 0..=10), 1..=9);
    (
        words(20),
        words(6),
        words(150),
        words(3),
        words(12),
        "[A-Z0-9._-]{1,60}",
        readings,
    )
        .prop_map(
            |(name, brand, ingredients, lot, shop, code, packages)| Extreme {
                name,
                brand,
                ingredients,
                lot,
                shop,
                code,
                packages,
            },
        )
}

fn judged(config: &Config, extreme: &Extreme) -> JudgedProduct {
    let mut sample = Sample::new(config, "X-1", &extreme.name).product(|product| {
        product.brand = Some(extreme.brand.clone());
        product.ingredients = Some(extreme.ingredients.clone());
    });
    for (index, readings) in extreme.packages.iter().enumerate() {
        let package = Package {
            package_code: format!("{}{index}", extreme.code),
            lot: Some(extreme.lot.clone()),
            best_by: Some(extreme.lot.clone()),
            bought_on: Some(sample::day(3, 4)),
            shop: Some(extreme.shop.clone()),
            ..Package::default()
        };
        let readings: Vec<&str> = readings.iter().map(String::as_str).collect();
        sample = sample.bought(package, &readings);
    }
    sample.done()
}

/// The notice and the query about a product.
fn letters(mut product: JudgedProduct, config: &Config) -> Vec<Job> {
    product.verdict.product.maker = product.verdict.product.brand.clone();
    product.verdict.product.maker_address = product.verdict.packages[0].pair.package.shop.clone();
    product.verdict.label = sample::malt_finding(&product.verdict.product.name, "");
    let facts = notice::facts(&product, config, Some(sample::day(4, 2)));
    let mut jobs = vec![notice::job(&product.verdict, &facts).expect("a job")];
    for (lab, questions) in query::open(&[product], config, Some(sample::day(12, 31))) {
        let facts = query::facts(&lab, questions, config, None);
        jobs.push(query::job(&facts, Some(sample::day(4, 2))).expect("a job"));
    }
    jobs
}

/// A run of text on a page, in points.
#[derive(Clone, Debug)]
struct Run {
    text: String,
    left: f64,
    right: f64,
    top: f64,
    bottom: f64,
    size: f64,
    head: bool,
}

/// The runs of text of a frame, and where each picture begins.
fn collect(frame: &Frame, at: Point, runs: &mut Vec<Run>, pictures: &mut Vec<f64>) {
    for (place, item) in frame.items() {
        let at = at + *place;
        match item {
            FrameItem::Group(group) => {
                let moved = Point::new(at.x + group.transform.tx, at.y + group.transform.ty);
                collect(&group.frame, moved, runs, pictures);
            }
            FrameItem::Text(text) if !text.text.trim().is_empty() => {
                let (x, y, size) = (at.x.to_pt(), at.y.to_pt(), text.size.to_pt());
                runs.push(Run {
                    text: text.text.to_string(),
                    left: x,
                    right: x + text.width().to_pt(),
                    top: y - 0.66 * size,
                    bottom: y + 0.18 * size,
                    size,
                    head: (size - 10.2).abs() < 0.01,
                });
            }
            FrameItem::Image(..) => pictures.push(at.y.to_pt()),
            _ => {}
        }
    }
}

/// The smallest type on the pages of a document, in points; pictures apart, whose words are drawn.
pub fn smallest_type(document: &PagedDocument) -> f64 {
    let mut runs = Vec::new();
    for page in document.pages() {
        collect(&page.frame, Point::zero(), &mut runs, &mut Vec::new());
    }
    runs.iter().map(|run| run.size).fold(f64::MAX, f64::min)
}

/// What is wrong with the pages of a document.
pub fn faults(document: &PagedDocument, side: f64) -> Vec<String> {
    let mut faults = Vec::new();
    for (number, page) in document.pages().iter().enumerate() {
        let (mut runs, mut pictures) = (Vec::new(), Vec::new());
        collect(&page.frame, Point::zero(), &mut runs, &mut pictures);
        let (width, height) = (page.frame.width().to_pt(), page.frame.height().to_pt());
        let number = number + 1;
        for run in &runs {
            if run.left < side - 1.0
                || run.right > width - side + 1.0
                || run.top < 0.0
                || run.bottom > height
            {
                faults.push(format!("page {number}: off the text block: {run:?}"));
            }
            if run.size < 7.999 {
                faults.push(format!("page {number}: type below 8 pt: {run:?}"));
            }
            let follows = |other: &Run| {
                other.top > run.top + 1.0
                    && other.top < run.bottom + 28.0
                    && other.left < run.right
                    && other.right > run.left - 2.0
            };
            let near = run.top..run.bottom + 28.0;
            let picture_follows = pictures.iter().any(|top| near.contains(top));
            let is_head = run.head && !run.text.ends_with('.');
            if is_head && !picture_follows && !runs.iter().any(follows) {
                faults.push(format!("page {number}: a head that stands alone: {run:?}"));
            }
        }
        for (index, one) in runs.iter().enumerate() {
            for other in &runs[index + 1..] {
                let across = one.right.min(other.right) - one.left.max(other.left);
                let down = one.bottom.min(other.bottom) - one.top.max(other.top);
                if across > 1.0 && down > 1.5 {
                    faults.push(format!("page {number}: {one:?} lies on {other:?}"));
                }
            }
        }
    }
    faults
}

#[test]
fn extreme_content_stays_on_the_page_and_off_other_text() {
    let folder = tempfile::tempdir().expect("a folder");
    let papers = [("a4", 18.0), ("us-letter", 20.95)].map(|(paper, side)| {
        let config = sample::config(folder.path(), paper, "");
        (engine(&config), config, side * 72.0 / 25.4)
    });
    let cases = Cases {
        cases: 200,
        failure_persistence: None,
        max_shrink_iters: 40,
        ..Cases::default()
    };
    // The same products each time: a page that overflows is a fault of the page, not of the day.
    let mut runner = TestRunner::new_with_rng(
        cases,
        TestRng::deterministic_rng(proptest::test_runner::RngAlgorithm::ChaCha),
    );
    let turn = std::cell::Cell::new(0_usize);
    let outcome = runner.run(&extreme(), |extreme| {
        turn.set(turn.get() + 1);
        let (engine, config, side) = &papers[turn.get() % 2];
        let product = judged(config, &extreme);
        let mut jobs = vec![sheet_job(&product, config)];
        if turn.get().is_multiple_of(3) {
            jobs.extend(letters(product, config));
        }
        for job in jobs {
            let document = documents::pages(engine, &job);
            typst::comemo::evict(0);
            let document =
                document.map_err(|faults| TestCaseError::fail(format!("{faults:#?}")))?;
            let faults = faults(&document, *side);
            prop_assert!(faults.is_empty(), "{}: {}", job.path, faults.join("\n"));
            prop_assert!(
                document.pages().len() <= 8,
                "{}: {} pages",
                job.path,
                document.pages().len()
            );
        }
        Ok(())
    });
    outcome.unwrap_or_else(|error| panic!("{error}"));
}

#[test]
fn labels_on_the_ruler_do_not_lie_on_one_another() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let mut runner = TestRunner::new_with_rng(
        Cases {
            cases: 200,
            failure_persistence: None,
            ..Cases::default()
        },
        TestRng::deterministic_rng(proptest::test_runner::RngAlgorithm::ChaCha),
    );
    let outcome = runner.run(&extreme(), |extreme| {
        let product = judged(&config, &extreme);
        let pictures = Ruler::of(&product, &config.words).draw().expect("draws");
        for svg in pictures.concat() {
            let labels = labels(&svg);
            for (index, one) in labels.iter().enumerate() {
                prop_assert!(
                    one.left > -2.0 && one.right < 4932.0 + 40.0,
                    "off the picture: {one:?}"
                );
                for other in &labels[index + 1..] {
                    let across = one.right.min(other.right) - one.left.max(other.left);
                    let down = one.bottom.min(other.bottom) - one.top.max(other.top);
                    prop_assert!(across < 15.0 || down < 15.0, "{one:?} lies on {other:?}");
                }
            }
        }
        Ok(())
    });
    outcome.unwrap_or_else(|error| panic!("{error}"));
}

/// The pieces of text in a picture, in its own pixels (ten a point).
fn labels(svg: &str) -> Vec<Run> {
    use galleyproof::render::charts::style::{INK, Type, text_width};
    let value = |tag: &str, name: &str| {
        let from = tag
            .find(&format!(" {name}=\""))
            .map(|at| at + name.len() + 3)
            .unwrap_or_else(|| panic!("{name} in {tag}"));
        tag[from..]
            .split('"')
            .next()
            .expect("a quote ends it")
            .to_owned()
    };
    let number = |tag: &str, name: &str| -> f64 { value(tag, name).parse().expect("a number") };
    svg.split("<text")
        .skip(1)
        .map(|rest| {
            let (tag, rest) = rest.split_once('>').expect("a tag ends");
            let text = rest.split("</text>").next().expect("text ends").trim();
            let text = text
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&")
                .replace("&quot;", "\"");
            let size = number(tag, "font-size") / 10.0;
            let look = if tag.contains("font-weight") {
                Type::strong(size, INK)
            } else {
                Type::plain(size, INK)
            };
            let width = text_width(&text, look) * 10.0;
            let left = match value(tag, "text-anchor").as_str() {
                "start" => number(tag, "x"),
                "middle" => number(tag, "x") - width / 2.0,
                _ => number(tag, "x") - width,
            };
            let baseline = number(tag, "y") + 7.6 * size;
            Run {
                left,
                right: left + width,
                top: baseline - 6.6 * size,
                bottom: baseline + 1.5 * size,
                size,
                head: false,
                text,
            }
        })
        .collect()
}
