//! What the worst files within the bounds take, each read and decided on in a process of its own:
//! `cargo run --release --manifest-path tests/fuzz/Cargo.toml --example worst`, and a word that a name must hold.

use galleyproof_fuzz::config::Config;
use galleyproof_fuzz::gather::books::bounds::{LONGEST_TEXT, MOST_ROWS, MOST_TEXT, WIDEST_ROW};
use galleyproof_fuzz::gather::gather;
use galleyproof_fuzz::judge::judge;
use galleyproof_fuzz::make_binary::{BinaryCell, BinarySheet, xls, xlsb};
use galleyproof_fuzz::make_ods::{OdsSheet, ods};
use galleyproof_fuzz::model::problem::Problems;
use galleyproof_fuzz::pieces::{XLSX, archived};
use galleyproof_fuzz::words::english;
use std::fs;
use std::path::Path;
use std::time::Instant;

/// A table, row by row.
type Rows = Vec<Vec<String>>;

/// A name and the rows of its tables.
type Case = (&'static str, fn() -> Vec<Rows>);

const CASES: [Case; 4] = [
    ("results", || results("17.5")),
    ("refused", || results("seventeen")),
    ("wide", wide),
    ("text", text),
];

/// As many rows as there may be, each a result of one package. An .xls has fewer a sheet: there are four.
fn results(value: &str) -> Vec<Rows> {
    let head = ["Sample", "Extraction", "Gluten (ppm)", "LOQ"].map(str::to_owned);
    let rows = MOST_ROWS / 4 - 1;
    let sheet = |sheet: usize| {
        let row = |at: usize| {
            let number = sheet * rows + at + 1;
            vec![
                "TKW-101".to_owned(),
                number.to_string(),
                value.to_owned(),
                "5".to_owned(),
            ]
        };
        std::iter::once(head.to_vec())
            .chain((0..rows).map(row))
            .collect()
    };
    (0..4).map(sheet).collect()
}

/// As many columns as there may be that look like results, in as many rows as cells allow.
fn wide() -> Vec<Rows> {
    let row = |first: &str, rest: &str| {
        let mut row = vec![rest.to_owned(); 255.min(WIDEST_ROW)];
        row[0] = first.to_owned();
        row
    };
    let sheet = || {
        (0..1000)
            .map(|at| match at % 2 {
                0 => row("Sample", "Gluten (ppm)"),
                _ => row("TKW-101", "17.5"),
            })
            .collect()
    };
    (0..4).map(|_| sheet()).collect()
}

/// As much text as there may be, in the longest cells.
fn text() -> Vec<Rows> {
    let mut rows: Rows = results("17.5")[0][..7].to_vec();
    for at in 0..MOST_TEXT / LONGEST_TEXT - 2 {
        rows.push(vec![
            format!("{at}"),
            "remark ".repeat(LONGEST_TEXT / 7 - 8),
        ]);
    }
    vec![rows]
}

fn delimited(tables: &[Rows]) -> Vec<u8> {
    let rows = tables.iter().flatten();
    rows.map(|row| row.join(",") + "\n")
        .collect::<String>()
        .into_bytes()
}

fn sheet_xml(rows: &[Vec<String>]) -> String {
    let cell = |text: &String| match text.parse::<f64>() {
        Ok(number) => format!("<c><v>{number}</v></c>"),
        Err(_) => format!("<c t=\"inlineStr\"><is><t>{text}</t></is></c>"),
    };
    let row =
        |row: &Vec<String>| format!("<row>{}</row>", row.iter().map(cell).collect::<String>());
    let rows: String = rows.iter().map(row).collect();
    format!("<worksheet><sheetData>{rows}</sheetData></worksheet>")
}

/// One sheet alone: there is no bound on a sheet's rows but the file's.
fn xlsx(tables: &[Rows]) -> Vec<u8> {
    archived(sheet_xml(&tables.concat()).as_bytes(), &XLSX)
}

fn binary(tables: &[Rows], own: bool) -> Vec<BinarySheet> {
    let cell = |text: &String| match text.parse() {
        Ok(number) => BinaryCell::Number(number),
        // Text of one cell stands in the record of it only where it is short.
        Err(_) if own && text.len() < 200 => BinaryCell::OwnText(text.clone()),
        Err(_) => BinaryCell::Text(text.clone()),
    };
    let sheet = |(name, rows): (usize, &Rows)| BinarySheet {
        name: name.to_string(),
        rows: rows
            .iter()
            .map(|row| row.iter().map(cell).collect())
            .collect(),
        ..BinarySheet::default()
    };
    tables.iter().enumerate().map(sheet).collect()
}

fn open_document(tables: &[Rows]) -> Vec<u8> {
    let sheet = |rows: &Rows| {
        let rows: Vec<Vec<&str>> = rows
            .iter()
            .map(|row| row.iter().map(String::as_str).collect())
            .collect();
        let rows: Vec<&[&str]> = rows.iter().map(Vec::as_slice).collect();
        OdsSheet::of("a", &rows)
    };
    ods(&tables.iter().map(sheet).collect::<Vec<_>>())
}

/// A programme folder with two products' registers and an empty inbox.
fn folder(root: &Path) {
    for name in ["registers", "inbox"] {
        fs::create_dir_all(root.join(name)).expect("makes a folder");
    }
    fs::write(
        root.join("registers/products.csv"),
        "product_id,name,claim\nP1,Harbour Loaf,gluten-free\n",
    )
    .expect("writes");
    fs::write(
        root.join("registers/packages.csv"),
        "package_code,product_id\nTKW-101,P1\nTKW-102,P1\n",
    )
    .expect("writes");
}

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    if let [word, root] = &arguments[..]
        && word == "read"
    {
        return read(Path::new(root));
    }
    // To be read by another build of the program.
    let written = match &arguments[..] {
        [word, folder] if word == "write" => Some(Path::new(folder)),
        _ => None,
    };
    let wanted = match written {
        Some(_) => "",
        None => arguments.first().map_or("", String::as_str),
    };
    for (case, tables) in CASES {
        for kind in ["csv", "xlsx", "xls", "xlsb", "ods"] {
            let name = format!("{case}.{kind}");
            // An .xls holds no text of a megabyte in a cell.
            if !name.contains(wanted) || name == "text.xls" {
                continue;
            }
            let tables = tables();
            let bytes = match kind {
                "csv" => delimited(&tables),
                "xlsx" => xlsx(&tables),
                "xls" => xls(&binary(&tables, true)),
                "xlsb" => xlsb(&binary(&tables, false)),
                _ => open_document(&tables),
            };
            if let Some(folder) = written {
                fs::write(folder.join(&name), &bytes).expect("writes");
                continue;
            }
            measured(&name, |root| {
                fs::write(root.join("inbox").join(&name), &bytes).expect("writes");
            });
        }
    }
    if written.is_none() && "20000 files".contains(wanted) {
        measured("20000 files", |root| {
            for at in 0..20_000 {
                let text = format!(
                    "Sample,Extraction,Gluten (ppm),Report\nTKW-101,{at},17.5,{at}\nTKW-102,{at},bad,{at}\n"
                );
                fs::write(root.join(format!("inbox/{at}.csv")), text).expect("writes");
            }
        });
    }
}

fn measured(name: &str, fill: impl Fn(&Path)) {
    let root = tempfile::tempdir().expect("makes a folder");
    folder(root.path());
    fill(root.path());
    let own = std::env::current_exe().expect("is known");
    let status = std::process::Command::new(own)
        .arg("read")
        .arg(root.path())
        .env("CASE", name)
        .status();
    assert!(status.expect("starts").success(), "{name}");
}

fn read(root: &Path) {
    let settings = "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n";
    let config = Config::parse(settings, root).expect("the settings are right");
    let began = Instant::now();
    let mut problems = Problems::default();
    let gathered = gather(&config, &mut problems, &|_, _| {}).expect("can be gathered");
    let readings = gathered.extractions.len();
    let (registers, extractions) = (gathered.registers, gathered.extractions);
    let judged = judge(&registers, extractions, &config, None, &mut problems);
    let took = began.elapsed().as_secs_f64();
    let status = fs::read_to_string("/proc/self/status").unwrap_or_default();
    let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let peak = peak.and_then(|peak| peak.trim().trim_end_matches(" kB").parse::<u64>().ok());
    let first = problems
        .sorted()
        .first()
        .map(|problem| english().found(problem));
    println!(
        "| {} | {took:.1} s | {} MB | {readings} readings, {} products, first: {:.60} |",
        std::env::var("CASE").unwrap_or_default(),
        peak.unwrap_or(0) / 1024,
        judged.products.len(),
        first.unwrap_or_default(),
    );
}
