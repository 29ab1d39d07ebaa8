//! What published sheets have behind them: told where that is gone, since a sheet that anyone has read stands until it is
//! issued otherwise, whatever became of its product's row or of a lab file.

use crate::archive::sources::Now;
use crate::archive::{issued, sources};
use crate::config::Config;
use crate::model::decided::Decided;
use crate::model::place::Place;
use crate::model::problem::Code;
use crate::model::registers::IssuedRevision;
use crate::words::say;
use anyhow::Result;
use std::collections::{BTreeMap, BTreeSet};

/// Tells of published sheets whose product, or whose packages, are in no register any more, and of lab files that published
/// sheets rest on and that are not as they were.
///
/// # Errors
/// Where the archive cannot be read.
pub fn note(decided: &mut Decided, config: &Config) -> Result<()> {
    if decided.registers.issued.is_empty() {
        return Ok(());
    }
    products(decided);
    lab_files(decided, config)
}

fn products(decided: &mut Decided) {
    let stands: BTreeSet<(&str, &str)> = decided
        .products
        .iter()
        .map(|judged| {
            let verdict = &judged.verdict;
            (verdict.product.product_id.as_str(), verdict.round.as_str())
        })
        .collect();
    let mut last: BTreeMap<&str, &IssuedRevision> = BTreeMap::new();
    for row in &decided.registers.issued {
        if !stands.contains(&(row.product_id.as_str(), row.round.as_str())) {
            last.insert(&row.sheet_number, row);
        }
    }
    for row in last.into_values() {
        let what = match decided.registers.products.contains_key(&row.product_id) {
            true => "round",
            false => "product",
        };
        decided.problems.add(
            Code::Suspicious,
            Place::file(issued::FILE_NAME),
            say::found_nothing_behind(told(row), what, &row.product_id, &row.round),
            say::do_put_rows_back(),
        );
    }
}

fn lab_files(decided: &mut Decided, config: &Config) -> Result<()> {
    let registers = &decided.registers;
    let rows = registers.reports.iter();
    let replaced: BTreeSet<&str> = rows.filter_map(|row| row.supersedes.as_deref()).collect();
    let lost = sources::lost(&config.root, &decided.lab_files, &registers.issued)?;
    for file in lost {
        if replaced.contains(file.path.as_str()) {
            continue;
        }
        let sheets: Vec<String> = file.sheets.iter().map(told).collect();
        let sheets = sheets.join(", ");
        let kept = file.kept.strip_prefix(&config.root).unwrap_or(&file.kept);
        let (code, found) = match file.now {
            Now::Gone => (
                Code::UnreadableFile,
                say::found_file_gone("gone", sheets, file.sha256),
            ),
            Now::Unopened => (
                Code::UnreadableFile,
                say::found_file_gone("unopened", sheets, file.sha256),
            ),
            Now::Changed(now) => (
                Code::Suspicious,
                say::found_file_changed(sheets, file.sha256, now),
            ),
        };
        let kept = kept.display().to_string();
        decided
            .problems
            .add(code, Place::file(file.path), found, say::do_copy_back(kept));
    }
    Ok(())
}

/// A published revision: sheet, revision and day.
fn told(row: &IssuedRevision) -> String {
    format!(
        "{} / {} ({})",
        row.sheet_number, row.revision, row.issued_on
    )
}
