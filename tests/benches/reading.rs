//! How long reading takes: 200,000 rows of delimited text, 100,000 rows of a workbook, 2,000 small files.

use criterion::{Criterion, criterion_group, criterion_main};
use galleyproof::config::Config;
use galleyproof::gather::gather;
use galleyproof::model::problem::Problems;
use std::fmt::Write;
use std::path::Path;

/// Packages in the register of each programme.
const PACKAGES: usize = 1000;

fn programme(files: &[(String, Vec<u8>)]) -> (tempfile::TempDir, Config) {
    let folder = tempfile::tempdir().expect("makes a folder");
    let write = |name: &str, bytes: &[u8]| {
        let path = folder.path().join(name);
        std::fs::create_dir_all(path.parent().expect("has a folder")).expect("makes a folder");
        std::fs::write(path, bytes).expect("writes");
    };
    write(
        "registers/products.csv",
        b"product_id,name,claim\noat-bar,Oat bar,gluten-free\n",
    );
    let packages: String = (0..PACKAGES)
        .map(|n| format!("TKW-{n:05},oat-bar\n"))
        .collect();
    write(
        "registers/packages.csv",
        format!("package_code,product_id\n{packages}").as_bytes(),
    );
    for (name, bytes) in files {
        write(&format!("inbox/{name}"), bytes);
    }
    let settings = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n";
    let config = Config::parse(settings, folder.path()).expect("the settings are right");
    (folder, config)
}

fn csv(rows: usize) -> Vec<u8> {
    let mut text = String::from(
        "Report no.: 77\nLOQ: 5 mg/kg\n\nSample ID,Extraction,Gluten (mg/kg),Date tested,Remark\n",
    );
    for row in 0..rows {
        let _ = writeln!(
            text,
            "TKW-{:05},{},{}.{},2031-03-07,ground whole",
            row % PACKAGES,
            row / PACKAGES % 99 + 1,
            row % 90,
            row % 10
        );
    }
    text.into_bytes()
}

fn xlsx(rows: u32) -> Vec<u8> {
    let mut book = rust_xlsxwriter::Workbook::new();
    let sheet = book.add_worksheet();
    for (column, heading) in (0..).zip([
        "Sample ID",
        "Extraction",
        "Gluten (mg/kg)",
        "LOQ (mg/kg)",
        "Method",
        "Remark",
    ]) {
        sheet.write(0, column, heading).expect("writes");
    }
    for row in 0..rows {
        let code = format!("TKW-{:05}", row as usize % PACKAGES);
        sheet.write(row + 1, 0, code).expect("writes");
        sheet
            .write(row + 1, 1, row / PACKAGES as u32 % 99 + 1)
            .expect("writes");
        sheet
            .write(row + 1, 2, f64::from(row % 900) / 10.0)
            .expect("writes");
        sheet.write(row + 1, 3, 5).expect("writes");
        sheet
            .write(row + 1, 4, "sandwich R5 ELISA")
            .expect("writes");
        sheet.write(row + 1, 5, "ground whole").expect("writes");
    }
    book.save_to_buffer().expect("can be written")
}

fn read(config: &Config) -> usize {
    let mut problems = Problems::default();
    gather(config, &mut problems, &|_, _| {})
        .expect("can be gathered")
        .extractions
        .len()
}

fn reading(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("reading");
    group.sample_size(10);
    let cases = [
        (
            "200,000 rows of csv",
            vec![("a.csv".to_owned(), csv(200_000))],
        ),
        (
            "100,000 rows of xlsx",
            vec![("a.xlsx".to_owned(), xlsx(100_000))],
        ),
        (
            "2,000 csv files of 30 rows",
            (0..2000)
                .map(|n| {
                    (
                        format!("{n}.csv"),
                        [csv(30), format!("\n{n}\n").into_bytes()].concat(),
                    )
                })
                .collect(),
        ),
    ];
    for (name, files) in cases {
        let (folder, config) = programme(&files);
        assert!(Path::new(folder.path()).is_dir());
        group.bench_function(name, |bencher| bencher.iter(|| read(&config)));
    }
    group.finish();
}

criterion_group!(benches, reading);
criterion_main!(benches);
