//! A programme of any size, for measuring: the same folder for the same number, in plain invented figures.

use std::fmt::Write;
use std::fs;
use std::path::Path;

/// Products that one lab file reports.
const PRODUCTS_A_FILE: usize = 8;

const CATEGORIES: [&str; 8] = [
    "Breads and rolls",
    "Biscuits and crackers",
    "Breakfast cereals and oats",
    "Pasta and noodles",
    "Flours and baking mixes",
    "Sauces and seasonings",
    "Snacks and bars",
    "Ready meals",
];

/// Writes a programme folder of `products` products, three packages each, two extractions a package.
pub fn programme(folder: &Path, products: usize) {
    write(
        folder,
        "programme.toml",
        "[programme]\nname = \"Generated Programme\"\nshort_name = \"GEN\"\n",
    );
    let mut rows = String::from(
        "product_id,name,brand,maker,category,claim,ingredients,barcode,net_content\n",
    );
    let mut packages =
        String::from("package_code,product_id,round,lot,best_by,bought_on,shop,sent_on\n");
    for product in 0..products {
        let id = format!("G{product:05}");
        writeln!(
            rows,
            "{id},Generated Food Number {product},Brand {},Maker {},{},gluten-free,\
             \"Rice flour, potato starch (12 %), sunflower oil, sugar, salt, raising agent (sodium bicarbonate).\",\
             0000 {product:08},400 g",
            product % 40,
            product % 25,
            CATEGORIES[product % CATEGORIES.len()]
        )
        .expect("a string takes all");
        for package in 0..3 {
            let day = 1 + product % 27;
            writeln!(
                packages,
                "{},{id},1,L{:04},2032-01-{day:02},2031-{:02}-{day:02},Market Hall stall {},2031-{:02}-28",
                code(product, package),
                product % 97,
                month(product),
                product % 12,
                month(product)
            )
            .expect("a string takes all");
        }
    }
    write(folder, "registers/products.csv", &rows);
    write(folder, "registers/packages.csv", &packages);
    for first in (0..products).step_by(PRODUCTS_A_FILE) {
        let last = (first + PRODUCTS_A_FILE).min(products);
        write(
            folder,
            &format!("inbox/{:03}/report-{first:05}.csv", first / 800),
            &lab_file(first, last),
        );
    }
}

/// One lab file, as the lab of the generated programme lays it out.
pub fn lab_file(first: usize, last: usize) -> String {
    let mut text = format!(
        "Report no.,GEN-{first}\nLOQ,5 mg/kg\n\nSample,Extraction,Gluten (mg/kg),Tested on\n"
    );
    for product in first..last {
        for package in 0..3 {
            for extraction in 1..=2 {
                writeln!(
                    text,
                    "{},{extraction},{},2031-{:02}-28",
                    code(product, package),
                    reading(product, package, extraction),
                    month(product)
                )
                .expect("a string takes all");
            }
        }
    }
    text
}

fn code(product: usize, package: usize) -> String {
    format!("GP-{product:05}-{}", ["A", "B", "C"][package])
}

fn month(product: usize) -> usize {
    1 + product % 12
}

/// Mostly too little to measure, some measured, some over the limit, a few that disagree.
fn reading(product: usize, package: usize, extraction: usize) -> String {
    let seed = product * 31 + package * 7;
    match seed % 20 {
        0..=13 => "<5".to_owned(),
        14..=17 => format!(
            "{:.1}",
            5.5 + (seed % 83) as f64 / 10.0 + extraction as f64 * 0.4
        ),
        18 => format!(
            "{:.1}",
            24.0 + (seed % 190) as f64 / 10.0 + extraction as f64 * 0.7
        ),
        _ if extraction == 1 => "6.2".to_owned(),
        _ => "19.4".to_owned(),
    }
}

fn write(folder: &Path, path: &str, text: &str) {
    let path = folder.join(path);
    fs::create_dir_all(path.parent().expect("is in a folder")).expect("makes the folder");
    fs::write(path, text).expect("writes");
}
