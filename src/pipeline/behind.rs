//! What published sheets have behind them: told where that is gone, since a sheet that anyone has read stands until it is
//! issued otherwise, whatever became of its product's row or of a lab file.

use crate::archive::{issued, sources};
use crate::config::Config;
use crate::model::decided::Decided;
use crate::model::place::Place;
use crate::model::problem::Code;
use crate::model::registers::IssuedRevision;
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
        let is_known = decided.registers.products.contains_key(&row.product_id);
        let what = match is_known {
            true => format!("round {} of {} has no package", row.round, row.product_id),
            false => format!("there is no product {}", row.product_id),
        };
        decided.problems.add(
            Code::Suspicious,
            Place::file(issued::FILE_NAME),
            format!("{} was published, and {what} in the registers any more", told(row)),
            "If the rows were taken out by mistake, put them back: the archive has the registers as they were. If not, what \
             was published stays in the archive, and this line reminds of it.",
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
        let (code, message) = match file.now {
            None => (
                Code::UnreadableFile,
                format!(
                    "the file is gone that {sheets} rests on (SHA-256 {})",
                    file.sha256
                ),
            ),
            Some(now) => (
                Code::Suspicious,
                format!(
                    "the file is not as it was when {sheets} was published (SHA-256 {} then, {now} now)",
                    file.sha256
                ),
            ),
        };
        decided.problems.add(
            code,
            Place::file(file.path),
            message,
            format!(
                "It stands in {} as it was. Copy it back, or issue anew what it bears on, with the reason.",
                kept.display()
            ),
        );
    }
    Ok(())
}

fn told(row: &IssuedRevision) -> String {
    format!(
        "{} revision {} of {}",
        row.sheet_number, row.revision, row.issued_on
    )
}
