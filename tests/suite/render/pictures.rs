//! Pages as pictures, held against kept ones with a tolerance: what no reading of the PDF's structure would notice.
//!
//! Kept pictures are small and grey (PGM). To look at a change and keep it: run with GALLEYPROOF_REPLACE=1, then look at
//! what changed before committing it.

use crate::render::{engine, products, sheet_job, typeset};
use crate::sample;
use crate::summary::invented;
use galleyproof::model::decided::JudgedProduct;
use galleyproof::render::facts::{notice, summary};
use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::vello_cpu::color::palette::css::WHITE;
use hayro::{RenderCache, RenderSettings, render};
use std::path::PathBuf;

/// A small grey picture.
struct Picture {
    width: usize,
    height: usize,
    grey: Vec<u8>,
}

/// Pixels of the page that become one of the picture, each way: of a sheet or a letter, whose text decides how it looks.
const TEXT: usize = 4;

/// The same of a page of charts.
const CHARTS: usize = 6;

/// A page, counted from 1, at 72 pixels an inch, in grey, shrunk.
fn picture(pdf: Vec<u8>, page: usize, shrink: usize) -> Picture {
    let pdf = Pdf::new(pdf).expect("a PDF");
    let page = pdf.pages().get(page - 1).expect("a page");
    let settings = RenderSettings {
        bg_color: WHITE,
        ..RenderSettings::default()
    };
    let pixels = render(
        page,
        &RenderCache::new(),
        &InterpreterSettings::default(),
        &settings,
    );
    let (full, width, height) = (
        usize::from(pixels.width()),
        usize::from(pixels.width()) / shrink,
        usize::from(pixels.height()) / shrink,
    );
    let data = pixels.data();
    let grey_of = |x: usize, y: usize| {
        let pixel = data[y * full + x];
        (u32::from(pixel.r) * 3 + u32::from(pixel.g) * 6 + u32::from(pixel.b)) / 10
    };
    let mean = |x: usize, y: usize| {
        let cells =
            (0..shrink * shrink).map(|i| grey_of(x * shrink + i % shrink, y * shrink + i / shrink));
        (cells.sum::<u32>() / (shrink * shrink) as u32) as u8
    };
    let grey = (0..height)
        .flat_map(|y| (0..width).map(move |x| (x, y)))
        .map(|(x, y)| mean(x, y))
        .collect();
    Picture {
        width,
        height,
        grey,
    }
}

fn compare(name: &str, pdf: Vec<u8>, page: usize, shrink: usize) {
    let picture = picture(pdf, page, shrink);
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/suite/render/pictures")
        .join(format!("{name}.pgm"));
    let head = format!("P5 {} {} 255\n", picture.width, picture.height);
    if std::env::var_os("GALLEYPROOF_REPLACE").is_some() {
        galleyproof::files::write(&path, &[head.as_bytes(), &picture.grey].concat())
            .expect("writes");
    }
    let kept = galleyproof::files::read(&path).expect("the kept picture");
    let kept = kept
        .strip_prefix(head.as_bytes())
        .unwrap_or_else(|| panic!("{name}: the page has another size"));
    let differences = picture.grey.iter().zip(kept).map(|(a, b)| a.abs_diff(*b));
    let changed = differences.filter(|difference| *difference > 48).count();
    let share = changed as f64 / kept.len() as f64;
    assert!(
        share < 0.004,
        "{name}: {changed} pixels differ from the kept picture, {:.2} % of them",
        share * 100.0
    );
}

fn compare_sheet(
    name: &str,
    paper: &str,
    product: impl Fn(&galleyproof::config::Config) -> JudgedProduct,
) {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), paper, "");
    let job = sheet_job(&product(&config), &config);
    compare(name, typeset(&engine(&config), &config, &job), 1, TEXT);
}

#[test]
fn the_fullest_sheet_looks_as_it_did() {
    compare_sheet("over-letter", "us-letter", products::fullest);
}

#[test]
fn a_sheet_without_a_verdict_looks_as_it_did() {
    compare_sheet("no-verdict-a4", "a4", products::undecided);
}

#[test]
fn a_notice_looks_as_it_did() {
    let folder = tempfile::tempdir().expect("a folder");
    let config = sample::config(folder.path(), "a4", "");
    let product = products::fullest(&config);
    let facts = notice::facts(&product, &config, None);
    let job = notice::job(&product.verdict, &facts).expect("a job");
    compare(
        "notice-a4",
        typeset(&engine(&config), &config, &job),
        1,
        TEXT,
    );
}

#[test]
fn the_cover_the_plot_and_the_shares_of_the_summary_look_as_they_did() {
    let config = invented::config("regime = \"us\"", "a4");
    let decided = invented::decided(24, &config);
    let facts = summary::summary(&decided, &config, None).expect("its charts can be drawn");
    let job = summary::job(&facts).expect("the facts are JSON");
    let pdf = typeset(&engine(&config), &config, &job);
    for (page, name) in [(1, "cover"), (3, "plot"), (4, "shares")] {
        compare(&format!("summary-{name}-a4"), pdf.clone(), page, CHARTS);
    }
}
