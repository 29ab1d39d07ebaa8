//! Row by row: quantiles, and the factors that are made of them.

use crate::checks::{SAME, Tally};
use galleyproof::judge::statistics::distributions::{
    chi_squared_quantile, f_above, normal_quantile,
};
use galleyproof::judge::statistics::range_chart::d4;

/// Runs every cell of a table that ours can compute.
pub fn run(name: &str, text: &str, tally: &mut Tally) {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let heads = reader.headers().expect("a heading").clone();
    for record in reader.records() {
        let record = record.expect("a row");
        if name == "printed_tables.csv" {
            printed(&record, tally);
            continue;
        }
        let key = keys(&heads, &record);
        for (head, cell) in heads.iter().zip(&record) {
            let Ok(theirs) = cell.parse() else { continue };
            let what = format!("{name} {head} {key:?}");
            if let Some(ours) = ours(name, &key, head) {
                tally.compare(&what, Some(ours), Some(theirs), SAME);
            } else if let Some((ours, tail)) = tail(name, &key, head, theirs) {
                // A critical value is one beyond which the tail is as said: that of a quantile, inverted.
                tally.compare(&what, Some(ours), Some(tail), 1e-8);
            } else if !is_key(head) {
                tally.skip(name, "a factor that we do not use");
            }
        }
    }
}

/// Columns that say what a row is about.
fn is_key(head: &str) -> bool {
    ["n", "p", "m", "dof"].contains(&head)
}

fn keys(heads: &csv::StringRecord, record: &csv::StringRecord) -> Vec<(String, f64)> {
    let cells = heads.iter().zip(record).filter(|(head, _)| is_key(head));
    cells
        .filter_map(|(head, cell)| Some((head.to_owned(), cell.parse().ok()?)))
        .collect()
}

fn ours(name: &str, key: &[(String, f64)], head: &str) -> Option<f64> {
    let key = |of: &str| {
        key.iter()
            .find(|(name, _)| name == of)
            .map(|(_, value)| *value)
    };
    let probability = || head.strip_prefix('p')?.parse::<f64>().ok();
    match name {
        "j_normal_quantiles.csv" if head == "z" => key("p").map(normal_quantile),
        "j_chi2_quantiles.csv" => chi_squared_quantile(probability()?, key("dof")?),
        "d_constants.csv" if key("n") == Some(2.0) && head == "D4" => Some(d4()),
        "e_f1_f2.csv" if head == "F1" => {
            let m = key("m")?;
            Some(chi_squared_quantile(0.95, m - 1.0)? / (m - 1.0))
        }
        _ => None,
    }
}

/// The probability that our F distribution gives to what is beyond a critical value, and the one that the table says.
fn tail(name: &str, key: &[(String, f64)], head: &str, critical: f64) -> Option<(f64, f64)> {
    let key = |of: &str| {
        key.iter()
            .find(|(name, _)| name == of)
            .map(|(_, value)| *value)
    };
    match (name, head) {
        ("e_f1_f2.csv", "F2") => {
            let m = key("m")?;
            Some((f_above(2.0 * critical + 1.0, m - 1.0, m)?, 0.05))
        }
        ("e_cochran_critical.csv", "crit_5" | "crit_1") => {
            let alpha = if head == "crit_5" { 0.05 } else { 0.01 };
            let (p, n) = (key("p")?, key("n")?);
            let f = (p - 1.0) / (1.0 / critical - 1.0);
            Some((f_above(f, n - 1.0, (p - 1.0) * (n - 1.0))?, alpha / p))
        }
        _ => None,
    }
}

/// A figure as a standard prints it: file, row ("p=3;n=2"), column, printed, where, note.
fn printed(record: &csv::StringRecord, tally: &mut Tally) {
    let cell = |at| record.get(at).unwrap_or_default();
    let key: Vec<(String, f64)> = cell(1)
        .split(';')
        .filter_map(|part| part.split_once('='))
        .filter_map(|(name, value)| Some((name.to_owned(), value.parse().ok()?)))
        .collect();
    let text = cell(3);
    match ours(cell(0), &key, cell(2)) {
        None => tally.skip(
            "printed_tables.csv",
            "a factor that we do not use, or one that is held against its exact value",
        ),
        Some(_) if !cell(5).is_empty() => {
            tally.skip("printed_tables.csv", "known to differ in print")
        }
        Some(ours) => {
            let decimals = text
                .split_once('.')
                .map_or(0, |(_, decimals)| decimals.len());
            let half = 0.5 * 10_f64.powi(-(decimals as i32)) * (1.0 + 1e-9);
            let printed: f64 = text.parse().expect("a printed figure");
            let near = (ours - printed).abs() <= half;
            let what = format!("printed_tables.csv {} {} {}", cell(0), cell(1), cell(2));
            tally.compare(
                &what,
                Some(if near { printed } else { ours }),
                Some(printed),
                SAME,
            );
        }
    }
}
