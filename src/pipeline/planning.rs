//! The plan of a round: from the registers and what was decided so far to the files of `out/plan/`.

use crate::config::Config;
use crate::files;
use crate::gather::codes;
use crate::judge::planning;
pub use crate::judge::planning::first_days::NextStep;
use crate::model::decided::Decided;
use crate::model::planning::{PlanWanted, RoundPlan};
pub use crate::render::facts::labels::LabelGrid;
use crate::render::facts::{labels, plan as facts};
use crate::render::words::plan as words;
use crate::render::{Engine, Job, documents};
use crate::save::{alone, planning as tables};
use anyhow::{Result, bail};
use chrono::NaiveDate;
use sha2::{Digest, Sha256};
use std::path::{Path, PathBuf};

/// What was typed.
#[derive(Clone, Debug)]
pub struct Request {
    /// The round; none for the next one.
    pub round: Option<String>,
    /// These products only.
    pub only: Vec<String>,
    /// Packages of each product; none for what the settings say.
    pub packages: Option<usize>,
    /// Extractions of each package, likewise.
    pub extractions: Option<usize>,
    /// What it may cost.
    pub budget: Option<f64>,
    /// What the codes are drawn from; none for the registers' content.
    pub seed: Option<u64>,
    /// Whether packages of known content go along.
    pub blinds: bool,
    /// How the labels stand on their sheet.
    pub labels: LabelGrid,
    /// Whether the rows are added to the register of packages.
    pub enter: bool,
}

/// A plan that was made.
#[derive(Clone, Debug)]
pub struct Planned {
    /// The plan.
    pub plan: RoundPlan,
    /// It in a sentence or two.
    pub lede: String,
    /// A line a product: what is bought, what is left for later, what is not.
    pub lines: Vec<String>,
    /// What was written.
    pub paths: Vec<PathBuf>,
}

/// Plans a round and writes it below the outputs folder.
///
/// # Errors
/// Where something asked for cannot be: a product that is not there, a budget without prices, a name that no round can have;
/// or where a file cannot be read or written.
pub fn plan(
    decided: &Decided,
    config: &Config,
    request: &Request,
    made_on: Option<NaiveDate>,
    out: &Path,
) -> Result<Planned> {
    let wanted = wanted(decided, config, request)?;
    let plan = planning::plan(decided, &wanted, config);
    let day = made_on.or_else(|| latest_day(decided));
    let engine = Engine::new(config)?;
    let mut written = Vec::new();
    for job in [
        facts::job(&plan, config, day)?,
        labels::job(&plan, config, request.labels, day)?,
    ] {
        written.push((out.join(&job.path), pdf(&engine, &job)?));
    }
    let folder = out.join("plan");
    written.push((folder.join("buying-list.csv"), tables::buying_list(&plan)?));
    written.push((folder.join("packages.csv"), tables::register_rows(&plan)?));
    let key = folder.join("blinds.csv");
    if plan.blinds.is_empty() {
        alone::clear(&key)?;
    } else {
        written.push((key, tables::blind_key(&plan)?));
    }
    let entered = match request.enter {
        true => entered(&config.registers(), &plan)?,
        false => Vec::new(),
    };
    for (register, _) in &entered {
        alone::refuse_open(register)?;
    }
    for (path, bytes) in &written {
        alone::document(path, bytes)?;
    }
    for (register, bytes) in entered {
        alone::register(&register, &bytes)?;
        written.push((register, bytes));
    }
    let told = words::on_screen(&plan, config);
    Ok(Planned {
        lede: told.lede,
        lines: told.lines,
        paths: written.into_iter().map(|(path, _)| path).collect(),
        plan,
    })
}

/// What a programme's first days ask for, and every round that waits to be sent or for the lab.
pub fn next_steps(decided: &Decided, report_days: u32) -> Vec<NextStep> {
    let packages = decided
        .products
        .iter()
        .flat_map(|judged| &judged.verdict.packages);
    let reported = packages
        .filter(|package| !package.pair.extractions.is_empty())
        .map(|package| package.pair.package.package_code.clone())
        .collect();
    planning::first_days::next_steps(&decided.registers, &reported, report_days)
}

fn pdf(engine: &Engine, job: &Job) -> Result<Vec<u8>> {
    documents::pdf(engine, job).map_err(|faults| {
        let faults: Vec<String> = faults.iter().map(ToString::to_string).collect();
        anyhow::anyhow!("{} could not be made. {}", job.path, faults.join(" "))
    })
}

/// The register of packages and the key of the blinds with the plan's rows: the key first, since
/// it cannot be drawn again once the registers have changed.
fn entered(registers: &Path, plan: &RoundPlan) -> Result<Vec<(PathBuf, Vec<u8>)>> {
    let (key, register) = (registers.join("blinds.csv"), registers.join("packages.csv"));
    let Some(existing) = files::read_if_there(&register)? else {
        bail!(
            "the register of packages is no CSV file: paste the rows of out/plan/packages.csv into it, or plan without --enter"
        );
    };
    let packages = (register, tables::with_register_rows(&existing, plan)?);
    if plan.blinds.is_empty() {
        return Ok(vec![packages]);
    }
    let has_key = files::read_if_there(&key)?.is_some();
    let is_workbook = |path: &str| {
        (path.starts_with("blinds.") && path != "blinds.csv")
            || (path.starts_with("registers.") && !has_key)
    };
    if let Some(other) = files::list(registers)?
        .into_iter()
        .find(|entry| is_workbook(&entry.path))
    {
        bail!(
            "registers/{} is no CSV file: paste the rows of out/plan/blinds.csv into it, or plan without --enter",
            other.path
        );
    }
    let known = files::read_if_there(&key)?;
    let blinds = tables::with_key_rows(known.as_deref(), plan)?;
    Ok(vec![(key, blinds), packages])
}

fn wanted(decided: &Decided, config: &Config, request: &Request) -> Result<PlanWanted> {
    for id in &request.only {
        if !decided.registers.products.contains_key(id) {
            let ids = decided.registers.products.keys();
            match ids.min_by_key(|known| strsim::damerau_levenshtein(known, id)) {
                Some(nearest) => {
                    bail!("there is no product {id} in the register. The nearest name is {nearest}")
                }
                None => bail!("there is no product {id}: the register of products is empty"),
            }
        }
    }
    if let Some(round) = &request.round {
        let plain = |c: char| c.is_ascii_alphanumeric() || "._-".contains(c);
        if !(1..=64).contains(&round.len()) || round.starts_with('.') || !round.chars().all(plain) {
            bail!(
                "`{round}` can be no round: 1 to 64 of the letters A to Z, digits, '.', '_' and '-', not beginning with '.'"
            );
        }
    }
    let packages = request
        .packages
        .unwrap_or(config.testing.packages_per_product);
    let extractions = request
        .extractions
        .unwrap_or(config.testing.extractions_per_package);
    if !(1..=1000).contains(&packages) {
        bail!("--packages is {packages}: a whole number from 1 to 1000 is needed");
    }
    if !(2..=100).contains(&extractions) {
        bail!(
            "--extractions is {extractions}: a whole number from 2 to 100 is needed; nothing is decided on one extraction"
        );
    }
    if let Some(budget) = request.budget {
        if !(budget.is_finite() && budget >= 0.0) {
            bail!("--budget is {budget}: a sum of money is needed");
        }
        if config.planning.extraction_price.is_none() {
            bail!(
                "a budget needs prices: put `extraction_price` into [planning] of programme.toml (what the lab takes for one extraction)"
            );
        }
    }
    let contents = contents(config)?;
    Ok(PlanWanted {
        round: request.round.clone(),
        only: request.only.clone(),
        packages,
        extractions,
        budget: request.budget,
        blinds: request.blinds,
        seed: match request.seed {
            Some(seed) => Sha256::digest(format!("seed {seed}")).into(),
            None => seed(&contents),
        },
        taken: taken(decided, &contents),
    })
}

/// Every register file with its name, in order.
fn contents(config: &Config) -> Result<Vec<(String, Vec<u8>)>> {
    let folder = config.registers();
    let listed = files::list(&folder)?.into_iter();
    let own = listed.filter(|entry| entry.is_plain_file && !entry.path.starts_with(['.', '~']));
    own.map(|entry| {
        let bytes = files::read(&folder.join(&entry.path))?;
        Ok((entry.path, bytes))
    })
    .collect()
}

fn seed(contents: &[(String, Vec<u8>)]) -> [u8; 32] {
    let mut hash = Sha256::new();
    for part in contents
        .iter()
        .flat_map(|(name, bytes)| [name.as_bytes(), bytes])
    {
        hash.update((part.len() as u64).to_be_bytes());
        hash.update(part);
    }
    hash.finalize().into()
}

/// What no code may stand in: every code that was read, and every register as text, so that a code in a row that cannot be
/// used is not given out a second time.
fn taken(decided: &Decided, contents: &[(String, Vec<u8>)]) -> Vec<String> {
    let packages = decided.registers.packages.iter();
    let read = packages.map(|package| codes::key(&package.package_code));
    let texts = contents
        .iter()
        .map(|(_, bytes)| String::from_utf8_lossy(bytes).to_lowercase());
    read.chain(texts).collect()
}

/// The latest day that the data know.
fn latest_day(decided: &Decided) -> Option<NaiveDate> {
    let packages = decided.registers.packages.iter();
    let registered = packages.flat_map(|package| [package.bought_on, package.sent_on]);
    let tested = decided
        .products
        .iter()
        .map(|judged| judged.verdict.tested_on());
    registered.chain(tested).flatten().max()
}
