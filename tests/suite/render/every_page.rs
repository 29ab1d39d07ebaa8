//! Every kind of document of the demo, in each language and on both papers, page by page: nothing is too small to read, lies
//! on something else, stands outside the margins or leaves a page half empty, and no sentence begins with a small letter.

use crate::render::engine;
use crate::render::overflow::faults;
use crate::workspace::Workspace;
use chrono::NaiveDate;
use galleyproof::config::Config;
use galleyproof::judge::planning;
use galleyproof::model::decided::Decided;
use galleyproof::model::planning::PlanWanted;
use galleyproof::pipeline;
use galleyproof::render::facts::labels::{self, LabelGrid};
use galleyproof::render::facts::{
    carried, correction, digest, notice, plan, plate, query, request, sheet, summary,
};
use galleyproof::render::{Job, documents};
use serde_json::Value;
use std::collections::BTreeSet;
use typst::layout::{Frame, FrameItem, Point};
use typst::visualize::Geometry;
use typst_layout::PagedDocument;

/// Type below this is not set, in points.
const SMALLEST: f64 = 8.0;

/// No page but a document's last leaves more than this share of its text block empty at the foot.
const EMPTIEST: f64 = 0.4;

/// Papers, with the margin at their sides and that at their foot, in millimetres.
const PAPERS: [(&str, f64, f64); 2] = [("a4", 18.0, 19.0), ("us-letter", 20.95, 18.0)];

/// The head of a page, in millimetres.
const HEAD: f64 = 18.0;

const MILLIMETRE: f64 = 72.0 / 25.4;

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2030, 12, 1).expect("a date")
}

fn demo(language: &str, paper: &str) -> (Workspace, Config, Decided) {
    let demo = Workspace::demo();
    let settings = demo.text("programme.toml");
    let line = |line: &str| match line.starts_with("paper =") {
        true => format!("paper = \"{paper}\"\nlanguage = \"{language}\"\n"),
        false => format!("{line}\n"),
    };
    demo.with(
        "programme.toml",
        settings.lines().map(line).collect::<String>(),
    );
    let config = Config::read(&demo.path(".")).expect("the demo's settings are right");
    let decided = pipeline::decide(&config, Some(today()), &|_| ()).expect("the demo can be read");
    (demo, config, decided)
}

/// Every document that a run, a plan and a request make of it.
fn jobs(config: &Config, decided: &Decided) -> Vec<Job> {
    let day = Some(today());
    let reported = pipeline::states::reported(decided, config);
    let mut jobs = Vec::new();
    for judged in &reported.products {
        let facts = sheet::facts(judged, config, day);
        jobs.push(carried::job(judged, &facts, config).expect("a sheet"));
        if let Some(correction) = judged.publication.correction {
            let facts = correction::facts(judged, correction, config, day);
            jobs.push(correction::job(judged, &facts).expect("a correction"));
        }
        if judged.verdict.notify_maker {
            let facts = notice::facts(judged, config, day);
            jobs.push(notice::job(&judged.verdict, &facts).expect("a notice"));
        }
    }
    for measured in &decided.plates {
        jobs.push(plate::job(measured, "plate", config, day).expect("a plate"));
    }
    for (lab, questions) in query::open(&decided.products, config, day) {
        let facts = query::facts(&lab, questions, config, day);
        jobs.push(query::job(&facts, day).expect("a query"));
    }
    let facts = summary::summary(&reported, config, day).expect("a summary");
    jobs.push(summary::job(&facts).expect("a summary"));
    let facts = digest::digest(&reported, config, day).expect("a digest");
    jobs.push(digest::job(&facts).expect("a digest"));
    let open = request::open(&decided.registers, &BTreeSet::new(), Some("1"));
    let facts = request::facts(&open, &decided.registers, config, Some("1"), day);
    jobs.push(request::job(&facts).expect("a form"));
    let wanted = PlanWanted {
        round: None,
        only: Vec::new(),
        packages: 3,
        extractions: 2,
        budget: None,
        blinds: true,
        seed: [7; 32],
        taken: Vec::new(),
    };
    let planned = planning::plan(decided, &wanted, config);
    jobs.push(plan::job(&planned, config, day).expect("a plan"));
    let grid = LabelGrid {
        columns: 3,
        rows: 8,
    };
    jobs.push(labels::job(&planned, config, grid, day).expect("labels"));
    jobs
}

/// What is drawn on a page: how far down, in points, and how large it is where it is text.
struct Drawn {
    bottom: f64,
    size: Option<f64>,
    text: String,
}

fn drawn(frame: &Frame, at: Point, found: &mut Vec<Drawn>) {
    for (place, item) in frame.items() {
        let at = at + *place;
        let down = |height: f64| at.y.to_pt() + height;
        let mark = |bottom: f64| Drawn {
            bottom,
            size: None,
            text: String::new(),
        };
        match item {
            FrameItem::Group(group) => {
                let moved = Point::new(at.x + group.transform.tx, at.y + group.transform.ty);
                drawn(&group.frame, moved, found);
            }
            FrameItem::Text(text) if !text.text.trim().is_empty() => found.push(Drawn {
                bottom: down(0.0),
                size: Some(text.size.to_pt()),
                text: text.text.to_string(),
            }),
            FrameItem::Image(_, size, _) => found.push(mark(down(size.y.to_pt()))),
            FrameItem::Shape(shape, _) => {
                if let Geometry::Rect(size) = &shape.geometry {
                    found.push(mark(down(size.y.to_pt())));
                }
            }
            _ => {}
        }
    }
}

fn on(page: &typst_layout::Page) -> Vec<Drawn> {
    let mut found = Vec::new();
    drawn(&page.frame, Point::zero(), &mut found);
    found
}

/// Type that is too small, the first of each page.
fn too_small(document: &PagedDocument) -> Vec<String> {
    let of_page = |(index, page)| {
        let small = |one: &Drawn| one.size.is_some_and(|size| size < SMALLEST - 0.01);
        let found = on(page).into_iter().find(small)?;
        let size = found.size.unwrap_or_default();
        Some(format!(
            "page {}: type of {size:.1} pt: {}",
            index + 1,
            found.text
        ))
    };
    document
        .pages()
        .iter()
        .enumerate()
        .filter_map(of_page)
        .collect()
}

/// Pages before the last that are too empty.
fn too_empty(document: &PagedDocument, foot: f64) -> Vec<String> {
    let pages = document.pages();
    let before_last = pages.iter().enumerate().take(pages.len().saturating_sub(1));
    let of_page = |(index, page): (usize, &typst_layout::Page)| {
        let head = HEAD * MILLIMETRE;
        let end = page.frame.height().to_pt() - foot * MILLIMETRE;
        let found = on(page);
        let within = found
            .iter()
            .map(|one| one.bottom)
            .filter(|bottom| *bottom < end);
        let empty = (end - within.fold(head, f64::max)) / (end - head);
        (empty > EMPTIEST).then(|| format!("page {}: {:.0} % empty", index + 1, empty * 100.0))
    };
    before_last.filter_map(of_page).collect()
}

/// Type in the charts that is too small; they are drawn with ten pixels a point.
fn small_in_charts(job: &Job) -> Vec<String> {
    let mut bad = Vec::new();
    for file in job.files.iter().filter(|file| file.name.ends_with(".svg")) {
        let svg = String::from_utf8_lossy(file.bytes.as_ref()).into_owned();
        for size in svg.split("font-size=\"").skip(1) {
            let size = size.split('"').next().unwrap_or_default();
            let points = size.trim_end_matches("px").parse::<f64>().expect("a size") / 10.0;
            if points < SMALLEST - 0.05 {
                bad.push(format!("{}: type of {points:.1} pt", file.name));
            }
        }
    }
    bad.sort();
    bad.dedup();
    bad
}

/// Fields that hold what others wrote, or labels and lists, which are no sentences.
const QUOTED: &[&str] = &[
    "words",
    "statement",
    "precautionary",
    "name",
    "brand",
    "lines",
    "addressee",
    "address",
    "code",
    "lot",
    "shop",
    "programme",
    "attachments",
    "reason",
    "cells",
    "net_content",
    "alt",
    "count",
    "claim_line",
    "headline",
    "subject",
    "title",
    "description",
];

/// All texts that are sentences of our own.
fn sentences(value: &Value, found: &mut BTreeSet<String>) {
    match value {
        Value::String(text) => {
            let text = text.replace('\u{a0}', " ").replace('\u{200b}', "");
            if text.ends_with(['.', '!', '?']) && text.contains(' ') {
                found.insert(text);
            }
        }
        Value::Array(all) => all.iter().for_each(|one| sentences(one, found)),
        Value::Object(fields) => {
            let own = fields
                .iter()
                .filter(|(key, _)| !QUOTED.contains(&key.as_str()));
            own.for_each(|(_, one)| sentences(one, found));
        }
        _ => {}
    }
}

/// The text with one word in the place of each quotation.
fn unquoted(text: &str) -> String {
    let mut out = String::new();
    let mut closing = None;
    for c in text.chars() {
        match (closing, c) {
            (None, '“') => closing = Some('”'),
            (None, '„') => closing = Some('“'),
            (None, '«') => closing = Some('»'),
            (Some(end), c) if c == end => {
                closing = None;
                out.push_str("Quoted");
            }
            (Some(_), _) => {}
            (None, c) => out.push(c),
        }
    }
    out
}

/// Short forms that end in a full stop.
const SHORT: &[&str] = &[
    "z.", "B.", "Nr.", "No.", "n.", "p.", "ej.", "e.g.", "i.e.", "vs.", "d.", "h.", "usw.", "Jan.",
    "Feb.", "Apr.", "Aug.", "Sept.", "Okt.", "Nov.", "Dez.", "ene.", "feb.", "mar.", "abr.",
    "jun.", "jul.", "ago.", "sep.", "oct.", "nov.", "dic.",
];

/// Sentences that do not begin as one does.
fn ill_begun(text: &str) -> Vec<String> {
    let text = unquoted(text);
    let words: Vec<&str> = text.split(' ').collect();
    let mut bad = Vec::new();
    let mut begins = true;
    for (index, word) in words.iter().enumerate() {
        let first = word.chars().find(|c| c.is_alphanumeric());
        let is_ill = first.is_some_and(|c| c.is_lowercase() || c.is_ascii_digit());
        if begins && is_ill && !word.starts_with("http") {
            let rest: Vec<&str> = words[index..].iter().take(8).copied().collect();
            bad.push(rest.join(" "));
        }
        let is_ordinal = word
            .strip_suffix('.')
            .is_some_and(|day| day.parse::<u8>().is_ok());
        begins = word.ends_with(['.', '!', '?']) && !SHORT.contains(word) && !is_ordinal;
    }
    bad
}

/// `1 packages` and the like.
fn miscounted(text: &str) -> bool {
    const MANY: &[&str] = &[
        "packages",
        "extractions",
        "products",
        "foods",
        "days",
        "sheets",
        "results",
        "labs",
        "rows",
        "questions",
        "samples",
        "makers",
        "Packungen",
        "Extraktionen",
        "Produkte",
        "Tage",
        "Tagen",
        "Blätter",
        "Proben",
        "Fragen",
        "envases",
        "extracciones",
        "productos",
        "días",
        "hojas",
        "muestras",
        "preguntas",
    ];
    let plain = text.replace('\u{a0}', " ");
    let words: Vec<&str> = plain.split_whitespace().collect();
    words.windows(2).any(|pair| {
        pair[0] == "1" && MANY.contains(&pair[1].trim_end_matches(|c: char| !c.is_alphanumeric()))
    })
}

#[test]
fn every_page_can_be_read() {
    let mut bad = Vec::new();
    let mut seen = BTreeSet::new();
    for language in ["en", "de", "es"] {
        for (paper, side, foot) in PAPERS {
            let (_demo, config, decided) = demo(language, paper);
            let engine = engine(&config);
            for job in jobs(&config, &decided) {
                let mut told = small_in_charts(&job);
                let document = documents::pages(&engine, &job)
                    .unwrap_or_else(|faults| panic!("{}: {faults:#?}", job.path));
                // Labels fill their sheet to its edges.
                if job.template != "labels.typ" {
                    told.extend(faults(&document, side * MILLIMETRE));
                    told.extend(too_small(&document));
                }
                // The buying list is taken to the shop, without the plan before it.
                if !["labels.typ", "plan.typ"].contains(&job.template) {
                    told.extend(too_empty(&document, foot));
                }
                if paper == "a4" {
                    let facts: Value = serde_json::from_slice(&job.facts).expect("facts are JSON");
                    let mut said = BTreeSet::new();
                    sentences(&facts, &mut said);
                    told.extend(said.iter().flat_map(|text| ill_begun(text)));
                    told.extend(said.iter().filter(|text| miscounted(text)).cloned());
                }
                seen.insert(job.template);
                let named = |one| format!("{language}, {paper}, {}: {one}", job.path);
                bad.extend(told.into_iter().map(named));
                typst::comemo::evict(0);
            }
        }
    }
    assert!(seen.len() >= 8, "{seen:?}");
    assert!(bad.is_empty(), "{} faults:\n{}", bad.len(), bad.join("\n"));
}

#[test]
fn ill_begun_sentences_are_found() {
    assert_eq!(ill_begun("All is well. “lupin” is a word. Good."), [""; 0]);
    assert_eq!(ill_begun("All is well. verdict: over."), ["verdict: over."]);
    assert_eq!(
        ill_begun("3 packages were bought."),
        ["3 packages were bought."]
    );
    assert!(miscounted("In 1 packages.") && !miscounted("In 11 packages."));
}
