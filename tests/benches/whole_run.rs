//! The whole run over a generated programme, and one sheet: in a fresh engine, and in one that is warm.

mod generated;

use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use galleyproof::config::Config;
use galleyproof::pipeline::{self, Purpose, Wanted};
use galleyproof::render::{Engine, documents, facts};
use std::path::Path;
use std::time::Duration;

fn wanted() -> Wanted<'static> {
    Wanted {
        purpose: Purpose::Proof { made_on: None },
        only: &[],
        force: true,
    }
}

fn whole_run(folder: &Path, out: &Path) {
    let config = Config::read(folder).expect("the generated programme is valid");
    let decided = pipeline::decide(&config, None, &|_| {}).expect("it can be read");
    pipeline::make(&decided, &config, &wanted(), out, &|_| {}).expect("it can be made");
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
            let run = |out: tempfile::TempDir| whole_run(folder.path(), out.path());
            bencher.iter_batched(fresh, run, BatchSize::PerIteration);
        });
    }
}

fn one_sheet(criterion: &mut Criterion) {
    let folder = tempfile::tempdir().expect("a folder");
    generated::programme(folder.path(), 1);
    let config = Config::read(folder.path()).expect("the generated programme is valid");
    let decided = pipeline::decide(&config, None, &|_| {}).expect("it can be read");
    let judged = &decided.products[0];
    let sheet = facts::sheet::facts(judged, &config, &wanted().purpose);
    let job = facts::sheet::job(judged, &sheet, &config).expect("its lab file is there");
    criterion.bench_function("one sheet, fresh engine", |bencher| {
        bencher.iter(|| {
            let engine = Engine::new(&config).expect("the built-in templates are sound");
            documents::pdf(&engine, &job).expect("typesets")
        });
    });
    let engine = Engine::new(&config).expect("the built-in templates are sound");
    criterion.bench_function("one sheet, warm engine", |bencher| {
        bencher.iter(|| documents::pdf(&engine, &job).expect("typesets"));
    });
}

criterion_group!(benches, one_sheet, runs);
criterion_main!(benches);
