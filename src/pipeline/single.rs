//! What is printed for one product, and the form that goes to the lab.

use crate::config::Config;
use crate::files;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::registers::{BlindPackage, Package};
use crate::render::facts::request::BlindSample;
use crate::render::{self, Engine, explain, facts};
use crate::save::alone::document;
use crate::save::forms::{self, LabForm};
use crate::save::tables::safe;
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

/// What goes to the lab.
#[derive(Clone, Copy, Debug)]
pub struct Asked<'a> {
    /// The round; none for every package that is open.
    pub round: Option<&'a str>,
    /// The key of the packages of known content that go along.
    pub blinds: Option<&'a Path>,
}

/// Writes the form that goes to the lab, its table and the empty table for the results below the outputs folder; their
/// paths.
///
/// # Errors
/// Where no package waits to be sent, or a file cannot be written.
pub fn request(
    decided: &Decided,
    config: &Config,
    what: &Asked<'_>,
    made_on: Option<NaiveDate>,
    out: &Path,
) -> Result<Vec<PathBuf>> {
    let round = what.round;
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
            "no package{of} is to be sent: list what you bought in registers/packages.csv first; to print the form of a round again, name it with --round"
        );
    }
    let request = facts::request::facts(&open, &decided.registers, config, round, made_on);
    let along = match what.blinds {
        Some(key) => blinds(&files::read(key)?, key)?,
        None => registered_blinds(decided, &open),
    };
    let request = request.with_blinds(&along, config);
    let job = facts::request::job(&request)?;
    let pdf = render::documents::pdf(&Engine::new(config)?, &job);
    let pdf = pdf.map_err(|faults| {
        let faults: Vec<String> = faults.iter().map(ToString::to_string).collect();
        anyhow::anyhow!("the form could not be made. {}", faults.join(" "))
    })?;
    let form = out.join(&job.path);
    let table = form.with_extension("csv");
    let results = form.with_extension("xlsx");
    let form_of_results = LabForm {
        programme: &config.programme.name,
        round,
        codes: request.codes(),
        extractions: config.testing.extractions_per_package,
    };
    let empty = forms::lab_form(&form_of_results, &config.words)?;
    document(&results, &empty)?;
    document(&form, &pdf)?;
    document(&table, &csv(&facts::request::csv_rows(&request))?)?;
    Ok(vec![form, table, results])
}

/// The blinds of the registers that go along with these packages.
fn registered_blinds(decided: &Decided, open: &[&Package]) -> Vec<BlindSample> {
    let rounds: BTreeSet<&str> = open.iter().map(|package| package.round.as_str()).collect();
    let goes_along = |blind: &&BlindPackage| {
        let round = blind.round.as_deref();
        round.is_some_and(|round| rounds.contains(round))
    };
    let blinds = decided.registers.blinds.iter().filter(goes_along);
    blinds
        .map(|blind| BlindSample {
            code: blind.package_code.clone(),
            food: blind.food.clone(),
        })
        .collect()
}

/// The packages of a key of blinds.
fn blinds(bytes: &[u8], path: &Path) -> Result<Vec<BlindSample>> {
    let mut reader = csv::Reader::from_reader(bytes);
    let headings = reader.headers()?.clone();
    let column = |name: &str| headings.iter().position(|heading| heading.trim() == name);
    let Some(code) = column("package_code") else {
        bail!(
            "{} has no column package_code: it is no key of blinds",
            path.display()
        );
    };
    let food = column("food");
    let mut blinds = Vec::new();
    for record in reader.records() {
        let record = record?;
        let text = |at: usize| {
            let cell = record
                .get(at)
                .map(str::trim)
                .filter(|cell| !cell.is_empty());
            cell.map(str::to_owned)
        };
        if let Some(code) = text(code) {
            let food = food.and_then(text);
            blinds.push(BlindSample { code, food });
        }
    }
    Ok(blinds)
}

fn csv(rows: &[Vec<String>]) -> Result<Vec<u8>> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    for row in rows {
        // The code is what the lab reports back; all else is text of the register's.
        let texts = row.iter().skip(1).map(|text| safe(text));
        writer.write_record(row.iter().take(1).cloned().chain(texts))?;
    }
    Ok(writer.into_inner()?)
}
