//! One product, its packages and its readings, as a lab might report them.

use galleyproof::config::Config;
use galleyproof::judge::{Judged, judge};
use galleyproof::model::decided::JudgedProduct;
use galleyproof::model::extraction::{AssayKind, Extraction, Interval, Outcome};
use galleyproof::model::package::PackageResult;
use galleyproof::model::place::{LabFile, Source};
use galleyproof::model::ppm::Ppm;
use galleyproof::model::problem::{Code, Problems};
use galleyproof::model::registers::{Package, Product, Registers};
use std::path::Path;
use std::sync::Arc;

/// Settings of a programme under `regime`, with further lines of the [rule] and other tables.
pub fn config(regime: &str, more: &str) -> Config {
    let text = format!(
        "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n\
         [rule]\nregime = \"{regime}\"\n{more}\n"
    );
    Config::parse(&text, Path::new("programme")).expect("sound settings")
}

/// A reading as a lab writes it: "<5", ">80", "12.4", "-" (not reported), "?" (unreadable).
pub fn outcome(reported: &str) -> Outcome {
    let figure = |text: &str| Ppm(text.parse().expect("a figure"));
    match reported.split_at(1) {
        ("-", _) => Outcome::NotReported,
        ("?", _) => Outcome::Unreadable,
        ("<", n) => Outcome::Reading(Interval::below(figure(n))),
        (">", n) => Outcome::Reading(Interval::above(figure(n))),
        _ => Outcome::Reading(Interval::number(figure(reported))),
    }
}

/// An extraction in row `number` + 1 of a file.
pub fn extraction(file: &str, code: &str, number: u32, reported: &str) -> Extraction {
    Extraction {
        package_code: code.into(),
        number,
        numbered_by_lab: true,
        outcome: outcome(reported),
        reported: reported.into(),
        from_gliadin: false,
        lloq: Ppm(5.0),
        lod: Ppm(3.0),
        assay_kind: AssayKind::Sandwich,
        assay: "sandwich R5 ELISA, cocktail extraction".into(),
        lab: "Harrow & Vane Analytical".into(),
        report: None,
        record: Arc::default(),
        tested_from: None,
        uncertainty: None,
        tested_on: None,
        dilution: None,
        remark: None,
        source: Source {
            file: Arc::new(LabFile {
                path: format!("inbox/{file}"),
                sha256: "0".repeat(64),
                ..LabFile::default()
            }),
            sheet: None,
            row: number + 1,
            column: 3,
        },
    }
}

/// Registers of one product "FH-01" with packages P-1, P-2 …
pub fn registers(product: Product, packages: usize) -> Registers {
    let product = Product {
        product_id: "FH-01".into(),
        name: "Oat-free porridge".into(),
        claim: "gluten-free".into(),
        ..product
    };
    let packages = (1..=packages).map(|n| Package {
        package_code: format!("P-{n}"),
        product_id: "FH-01".into(),
        round: "1".into(),
        ..Package::default()
    });
    Registers {
        packages: packages.collect(),
        products: [("FH-01".to_owned(), product)].into(),
        ..Registers::default()
    }
}

/// The extractions of packages P-1, P-2 …, all of one file.
pub fn extractions(packages: &[&[&str]]) -> Vec<Extraction> {
    let of_package = |(at, readings): (usize, &&[&str])| {
        let code = format!("P-{}", at + 1);
        let rows = readings.iter().zip(1..);
        rows.map(|(reported, number)| extraction("a.csv", &code, number, reported))
            .collect::<Vec<_>>()
    };
    packages.iter().enumerate().flat_map(of_package).collect()
}

/// Judges one product with these readings a package.
pub fn judged(packages: &[&[&str]], config: &Config) -> JudgedProduct {
    let registers = registers(Product::default(), packages.len());
    let (judged, _) = run(&registers, extractions(packages), config);
    let [product] = <[JudgedProduct; 1]>::try_from(judged.products).expect("one product");
    product
}

/// Judges one package.
pub fn package(readings: &[&str], config: &Config) -> PackageResult {
    judged(&[readings], config).verdict.packages.remove(0)
}

/// Judges, and keeps the problems.
pub fn run(
    registers: &Registers,
    extractions: Vec<Extraction>,
    config: &Config,
) -> (Judged, Problems) {
    let mut problems = Problems::default();
    let judged = judge(registers, extractions, config, None, &mut problems);
    (judged, problems)
}

/// The codes of all problems, in order.
pub fn codes(problems: &Problems) -> Vec<Code> {
    problems.sorted().into_iter().map(|p| p.code).collect()
}
