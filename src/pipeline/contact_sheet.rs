//! The contact sheet: from the register of packages and its photographs to `out/contact-sheet.pdf`.

use crate::config::Config;
use crate::files;
use crate::model::decided::Decided;
use crate::render::facts::contact_sheet::{self, Shown};
use crate::render::{Engine, documents};
use crate::save::alone;
use anyhow::{Result, bail};
use chrono::NaiveDate;
use std::path::{Path, PathBuf};

/// Makes the contact sheet of these products (none means all) and this round (none means every one).
///
/// # Errors
/// Where no package is one of these, or the file cannot be written.
pub fn make(
    decided: &Decided,
    config: &Config,
    only: &[String],
    round: Option<&str>,
    made_on: Option<NaiveDate>,
    out: &Path,
) -> Result<PathBuf> {
    let registers = &decided.registers;
    if let Some(unknown) = only.iter().find(|id| !registers.products.contains_key(*id)) {
        bail!("there is no product {unknown} in the register of products");
    }
    let mut shown = Vec::new();
    for package in &registers.packages {
        let is_wanted = (only.is_empty() || only.contains(&package.product_id))
            && round.is_none_or(|round| round == package.round);
        let Some(product) = registers.products.get(&package.product_id) else {
            continue;
        };
        if is_wanted {
            let photographs = package.photographs.iter();
            let bytes = photographs
                .map(|photograph| {
                    let bytes = files::read(&config.root.join(&photograph.path)).ok()?;
                    (files::sha256_of(&bytes) == photograph.sha256).then_some(bytes)
                })
                .collect();
            shown.push(Shown {
                package,
                product,
                bytes,
            });
        }
    }
    if shown.is_empty() {
        bail!(
            "no package is to be shown: registers/packages.csv has none of these products and this round"
        );
    }
    let job = contact_sheet::job(shown, config, made_on)?;
    let pdf = documents::pdf(&Engine::new(config)?, &job).map_err(|faults| {
        let faults: Vec<String> = faults.iter().map(ToString::to_string).collect();
        anyhow::anyhow!("the contact sheet could not be made. {}", faults.join(" "))
    })?;
    let path = out.join(&job.path);
    alone::document(&path, &pdf)?;
    Ok(path)
}
