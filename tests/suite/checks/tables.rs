//! Row by row: quantiles, and the factors that are made of them.

use crate::checks::{SAME, Tally};
use galleyproof::judge::statistics::distributions::{
    chi_squared_quantile, f_quantile, normal_quantile, t_quantile,
};
use galleyproof::judge::statistics::range_chart::{D2, d4};

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
            match ours(name, &key, head) {
                Some(ours) => {
                    let what = format!("{name} {key:?} {head}");
                    tally.compare(&what, Some(ours), Some(theirs), SAME);
                }
                None if is_key(head) => {}
                None => tally.skip(name, "a factor that we do not use"),
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
        "j_t_quantiles.csv" => t_quantile(probability()?, key("dof")?),
        "j_chi2_quantiles.csv" => chi_squared_quantile(probability()?, key("dof")?),
        "d_constants.csv" if key("n") == Some(2.0) => match head {
            "d2" => Some(D2),
            "D4" => Some(d4()),
            _ => None,
        },
        // Made of quantiles of ours, which they test.
        "e_f1_f2.csv" => {
            let m = key("m")?;
            match head {
                "F1" => Some(chi_squared_quantile(0.95, m - 1.0)? / (m - 1.0)),
                "F2" => Some((f_quantile(0.95, m - 1.0, m)? - 1.0) / 2.0),
                _ => None,
            }
        }
        "e_cochran_critical.csv" => {
            let alpha = match head {
                "crit_5" => 0.05,
                "crit_1" => 0.01,
                _ => return None,
            };
            let (p, n) = (key("p")?, key("n")?);
            let f = f_quantile(1.0 - alpha / p, n - 1.0, (p - 1.0) * (n - 1.0))?;
            Some(1.0 / (1.0 + (p - 1.0) / f))
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
        None => tally.skip("printed_tables.csv", "a factor that we do not use"),
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
            let what = format!("printed {} {} {}", cell(0), cell(1), cell(2));
            tally.compare(
                &what,
                Some(if near { printed } else { ours }),
                Some(printed),
                SAME,
            );
        }
    }
}
