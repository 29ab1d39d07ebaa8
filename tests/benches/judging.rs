//! How long it takes to judge and summarise 100,000 packages: the mark is one second.

use chrono::NaiveDate;
use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use galleyproof::config::Config;
use galleyproof::judge::judge;
use galleyproof::model::extraction::{AssayKind, Extraction, Interval, Outcome};
use galleyproof::model::place::{LabFile, Source};
use galleyproof::model::ppm::Ppm;
use galleyproof::model::problem::Problems;
use galleyproof::model::registers::{Package, Product, Registers};
use std::hint::black_box;
use std::path::Path;
use std::sync::Arc;

/// A third of 100,000 products, each with three packages and an ordinary ingredient statement.
const PRODUCTS: u32 = 33_334;

fn registers() -> Registers {
    let mut registers = Registers::default();
    for at in 0..PRODUCTS {
        let id = format!("FH-{at:05}");
        for n in 1..=3 {
            registers.packages.push(Package {
                package_code: format!("{id}-{n}"),
                product_id: id.clone(),
                round: "1".into(),
                ..Package::default()
            });
        }
        let product = Product {
            product_id: id.clone(),
            name: format!("Crispbread no. {at}"),
            category: Some(format!("category {}", at % 12)),
            claim: "gluten-free".into(),
            ingredients: Some(
                "Maize flour (62 %), rice flour*, potato starch, sunflower oil, gluten-free oats (4 %), natural flavouring, \
                 yeast extract, salt, emulsifier (sunflower lecithin). *organic. May contain traces of milk and soya."
                    .into(),
            ),
            ..Product::default()
        };
        registers.products.insert(id, product);
    }
    registers
}

fn extractions(registers: &Registers) -> Vec<Extraction> {
    let file = Arc::new(LabFile {
        path: "inbox/march.csv".into(),
        sha256: "0".repeat(64),
        ..LabFile::default()
    });
    let (lab, assay): (Arc<str>, Arc<str>) = (
        "Fenwick Hollow Laboratory".into(),
        "sandwich R5 ELISA".into(),
    );
    let rows = registers
        .packages
        .iter()
        .zip(0_u32..)
        .flat_map(|(package, at)| {
            let (file, lab, assay) = (file.clone(), lab.clone(), assay.clone());
            (1..=2).map(move |number| Extraction {
                package_code: package.package_code.clone(),
                number,
                numbered_by_lab: true,
                outcome: Outcome::Reading(reading(at, number)),
                reported: "as read".into(),
                from_gliadin: false,
                lloq: Ppm(5.0),
                lod: Ppm(3.0),
                assay_kind: AssayKind::Sandwich,
                assay: assay.clone(),
                lab: lab.clone(),
                report: None,
                record: Arc::default(),
                tested_from: None,
                uncertainty: None,
                tested_on: NaiveDate::from_ymd_opt(2031, 1 + at % 12, 1 + at % 28),
                dilution: None,
                remark: None,
                source: Source {
                    file: file.clone(),
                    sheet: None,
                    row: 2 * at + number,
                    column: 3,
                },
            })
        });
    rows.collect()
}

/// Half below quantification, the rest from 5 to 25 ppm with a little scatter.
fn reading(at: u32, number: u32) -> Interval {
    match at % 2 {
        0 => Interval::below(Ppm(5.0)),
        _ => Interval::number(Ppm(f64::from(50 + at % 200 + 7 * number) / 10.0)),
    }
}

fn judging(criterion: &mut Criterion) {
    let settings = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n[rule]\nregime = \"us\"\n";
    let config = Config::parse(settings, Path::new("programme")).expect("sound settings");
    let registers = registers();
    let extractions = extractions(&registers);
    let mut group = criterion.benchmark_group("judging");
    group.sample_size(10);
    group.bench_function("100,000 packages", |bencher| {
        bencher.iter_batched(
            || extractions.clone(),
            |extractions| {
                let mut problems = Problems::default();
                black_box(judge(&registers, extractions, &config, None, &mut problems))
            },
            BatchSize::LargeInput,
        );
    });
    group.finish();
}

criterion_group!(benches, judging);
criterion_main!(benches);
