//! What is printed for one product, and the form that goes to the lab.

use crate::config::Config;
use crate::files;
use crate::model::decided::{Decided, JudgedProduct};
use crate::render::{self, Engine, explain, facts};
use anyhow::{Result, bail};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// The reasoning for a product, every round, step by step.
///
/// # Errors
/// Where there is no such product.
pub fn explain(decided: &Decided, config: &Config, product: &str) -> Result<String> {
    let rounds = rounds(decided, product)?;
    let texts: Vec<String> = rounds
        .iter()
        .map(|judged| explain::explain(judged, config))
        .collect();
    Ok(texts.join("\n"))
}

/// The facts that a product's sheets are made of, one JSON object a round, each as its template gets it.
///
/// # Errors
/// Where there is no such product.
pub fn sheet_facts(
    decided: &Decided,
    config: &Config,
    product: &str,
    made_on: Option<NaiveDate>,
) -> Result<String> {
    let mut text = String::new();
    for judged in rounds(decided, product)? {
        let facts = facts::sheet::facts(judged, config, made_on);
        text.push_str(&serde_json::to_string_pretty(&facts)?);
        text.push('\n');
    }
    Ok(text)
}

fn rounds<'a>(decided: &'a Decided, product: &str) -> Result<Vec<&'a JudgedProduct>> {
    let is = |judged: &&JudgedProduct| judged.verdict.product.product_id == product;
    let rounds: Vec<&JudgedProduct> = decided.products.iter().filter(is).collect();
    if !rounds.is_empty() {
        return Ok(rounds);
    }
    let ids = decided
        .products
        .iter()
        .map(|judged| judged.verdict.product.product_id.as_str());
    match ids.min_by_key(|id| strsim::damerau_levenshtein(id, product)) {
        Some(nearest) => bail!(
            "there is no product {product} with a package that was sent or tested. The nearest name is {nearest}"
        ),
        None => bail!("there is no product {product}: no package was sent or tested yet"),
    }
}

/// Writes the form that goes to the lab, and its table, below the outputs folder; the paths of both.
///
/// # Errors
/// Where no package waits to be sent, or a file cannot be written.
pub fn request(
    decided: &Decided,
    config: &Config,
    round: Option<&str>,
    made_on: Option<NaiveDate>,
    out: &Path,
) -> Result<Vec<PathBuf>> {
    let packages = decided
        .products
        .iter()
        .flat_map(|judged| &judged.verdict.packages);
    let reported = packages.filter(|package| !package.pair.extractions.is_empty());
    let reported: BTreeSet<String> = reported
        .map(|package| package.pair.package.package_code.clone())
        .collect();
    let open = facts::request::open(&decided.registers, &reported, round);
    if open.is_empty() {
        let of = round
            .map(|round| format!(" of round {round}"))
            .unwrap_or_default();
        bail!(
            "no package{of} waits for a result: list what you bought in registers/packages.csv first"
        );
    }
    let request = facts::request::facts(&open, &decided.registers, config, round, made_on);
    let job = facts::request::job(&request)?;
    let pdf = render::documents::pdf(&Engine::new(config)?, &job);
    let pdf = pdf.map_err(|faults| {
        let faults: Vec<String> = faults.iter().map(ToString::to_string).collect();
        anyhow::anyhow!("the form could not be made. {}", faults.join(" "))
    })?;
    let form = out.join(&job.path);
    let table = form.with_extension("csv");
    files::write(&form, &pdf)?;
    files::write(&table, &csv(&facts::request::csv_rows(&request))?)?;
    Ok(vec![form, table])
}

fn csv(rows: &[Vec<String>]) -> Result<Vec<u8>> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    for row in rows {
        writer.write_record(row)?;
    }
    Ok(writer.into_inner()?)
}
