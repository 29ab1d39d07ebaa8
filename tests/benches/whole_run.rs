//! The whole run over a generated programme: everything, nothing changed, one lab file changed; its growth; and one sheet,
//! in a fresh engine and in one that is warm.

mod generated;

use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use galleyproof::config::Config;
use galleyproof::pipeline::{self, Wanted};
use galleyproof::render::{Engine, documents, facts};
use std::path::Path;
use std::time::Duration;

/// As the program has it.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn wanted(force: bool) -> Wanted<'static> {
    Wanted {
        made_on: None,
        only: &[],
        force,
        large_print: false,
    }
}

fn whole_run(folder: &Path, out: &Path, force: bool) {
    let config = Config::read(folder).expect("the generated programme is valid");
    let decided = pipeline::decide(&config, None, &|_| {}).expect("it can be read");
    pipeline::make(&decided, &config, &wanted(force), out, &|_| {}).expect("it can be made");
}

fn runs(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("whole run");
    group
        .sample_size(10)
        .measurement_time(Duration::from_secs(60));
    for products in [100, 1_000] {
        let folder = tempfile::tempdir().expect("a folder");
        generated::programme(folder.path(), products);
        group.bench_function(format!("{products} products"), |bencher| {
            let fresh = || tempfile::tempdir().expect("a folder");
            let run = |out: tempfile::TempDir| whole_run(folder.path(), out.path(), true);
            bencher.iter_batched(fresh, run, BatchSize::PerIteration);
        });
    }
}

fn changes(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("1,000 products, made before");
    group
        .sample_size(10)
        .measurement_time(Duration::from_secs(10));
    let folder = tempfile::tempdir().expect("a folder");
    generated::programme(folder.path(), 1_000);
    let out = folder.path().join("out");
    let run = || whole_run(folder.path(), &out, false);
    run();
    group.bench_function("nothing changed", |bencher| bencher.iter(run));
    // The lab sends the first file anew, each time with another figure: 8 sheets, the summary and the newsletter.
    let file = folder.path().join("inbox/000/report-00000.csv");
    let mut figure = 5.5;
    group.bench_function("one lab file of 8 products changed", |bencher| {
        let change = || {
            figure += 0.1;
            let text = generated::lab_file(0, 8).replacen("<5", &format!("{figure:.1}"), 1);
            std::fs::write(&file, text).expect("writes");
        };
        bencher.iter_batched(change, |()| run(), BatchSize::PerIteration);
    });
}

/// Reading and deciding at three sizes: four times the products, four times the time.
fn growth(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("read and decide");
    group.sample_size(10);
    for products in [1_000, 4_000, 16_000] {
        let folder = tempfile::tempdir().expect("a folder");
        generated::programme(folder.path(), products);
        let config = Config::read(folder.path()).expect("the generated programme is valid");
        group.bench_function(format!("{products} products"), |bencher| {
            bencher.iter(|| pipeline::decide(&config, None, &|_| {}).expect("it can be read"));
        });
    }
}

fn one_sheet(criterion: &mut Criterion) {
    let folder = tempfile::tempdir().expect("a folder");
    generated::programme(folder.path(), 1);
    let config = Config::read(folder.path()).expect("the generated programme is valid");
    let decided = pipeline::decide(&config, None, &|_| {}).expect("it can be read");
    let judged = &decided.products[0];
    let sheet = facts::sheet::facts(judged, &config, wanted(true).made_on);
    let job = facts::carried::job(judged, &sheet, &config).expect("its lab file is there");
    // What the typesetter remembers of a sheet would make the same one free; another gains nothing from it.
    let forget = || typst::comemo::evict(0);
    criterion.bench_function("one sheet, fresh engine", |bencher| {
        let fresh = || {
            let engine = Engine::new(&config).expect("the built-in templates are sound");
            documents::pdf(&engine, &job).expect("typesets")
        };
        bencher.iter_batched(forget, |()| fresh(), BatchSize::PerIteration);
    });
    let engine = Engine::new(&config).expect("the built-in templates are sound");
    criterion.bench_function("one sheet, warm engine", |bencher| {
        let warm = || documents::pdf(&engine, &job).expect("typesets");
        bencher.iter_batched(forget, |()| warm(), BatchSize::PerIteration);
    });
}

criterion_group!(benches, one_sheet, changes, growth, runs);
criterion_main!(benches);
