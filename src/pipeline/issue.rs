//! Publishing: each sheet that differs from its last revision gets a number, a revision and a day, and goes into the
//! archive.
//!
//! The order makes every moment safe to be cut off at. Everything is made beside its place; then the bag moves into the
//! archive, which is the moment of publication; then the register is written; then the outputs move. A bag carries the
//! register as it will be, so that [`heal`] can finish what was cut off between the second step and the third; the fourth
//! is a plain run.

use crate::config::{self, Config};
use crate::files;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::registers::IssuedRevision;
use crate::pipeline::Listener;
use crate::pipeline::archive::Published;
use crate::pipeline::making::{self, Prepared, Wanted, prepare};
use crate::render::facts::sheet;
use crate::render::numbers;
use crate::save::bag::{self, Bag, InfoLine};
use crate::save::edition::{self, SheetKey};
use crate::save::out::Outcome;
use crate::save::{issued, results};
use anyhow::{Result, bail};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// What is to be issued.
#[derive(Clone, Debug)]
pub struct Order<'a> {
    /// These products only; none means all.
    pub only: &'a [String],
    /// Day of issue.
    pub on: NaiveDate,
    /// The day that a proof of the rest bears, where one is given.
    pub made_on: Option<NaiveDate>,
    /// Why; needed from the second revision of a sheet on.
    pub reason: Option<String>,
}

/// What was issued.
#[derive(Clone, Debug)]
pub struct Issued {
    /// The new bag; none where nothing was pending.
    pub bag: Option<PathBuf>,
    /// The new revisions.
    pub revisions: Vec<IssuedRevision>,
    /// What became of the outputs.
    pub outcome: Outcome,
}

/// A sheet that differs from its last revision.
#[derive(Clone, Debug)]
pub struct Pending<'a> {
    /// What it says.
    pub judged: &'a JudgedProduct,
    /// Its number.
    pub sheet_number: String,
    /// What its next revision will be.
    pub revision: u32,
    /// SHA-256 of its content.
    content_sha256: String,
}

/// Every sheet that differs from its last revision, by product and round.
pub fn pending<'a>(decided: &'a Decided, config: &Config) -> Vec<Pending<'a>> {
    let differing = decided.products.iter().filter_map(|judged| {
        let facts = sheet::facts(judged, config, None);
        let content_sha256 = sheet::content_sha256(&facts);
        let last = judged.verdict.issued.last();
        let differs = last.is_none_or(|last| last.content_sha256 != content_sha256);
        differs.then(|| Pending {
            judged,
            sheet_number: sheet::sheet_number(&judged.verdict, config),
            revision: last.map_or(1, |last| last.revision + 1),
            content_sha256,
        })
    });
    differing.collect()
}

/// Issues what is pending, and leaves the outputs as a run would.
///
/// # Errors
/// Where an amended sheet has no reason, a product that was asked for is not there, a template has a mistake, or a file
/// cannot be read or written: then nothing is issued, or the next run finishes what was.
pub fn issue(
    mut decided: Decided,
    config: &Config,
    order: &Order<'_>,
    listener: Listener<'_>,
) -> Result<Issued> {
    let register = Register::read(config)?;
    let revisions = revisions(&decided, config, order)?;
    enter(&mut decided, &revisions);
    let wanted = Wanted {
        made_on: order.made_on,
        only: &[],
        force: false,
    };
    let out = config.root.join("out");
    let prepared = prepare(&decided, config, &wanted, &out, listener)?;
    if let Some(failure) = prepared.failures.first() {
        bail!("nothing was issued, since a document could not be made. {failure}");
    }
    let bag = match revisions.is_empty() {
        true => None,
        false => {
            let register = issued::with_rows(register.bytes.as_deref(), &revisions)?;
            let bag = archive_all(&decided, config, order.on, &prepared, &register)?;
            files::write_durably(&config.root.join(issued::FILE_NAME), &register)?;
            Some(bag)
        }
    };
    Ok(Issued {
        bag,
        revisions,
        outcome: prepared.finish()?.outcome,
    })
}

/// Finishes an issue that was cut off: what a bag holds and the register does not is put back, and what was still being
/// made is cleared away. To be called only by the one run that may write.
///
/// # Errors
/// Where the archive cannot be read or the register cannot be written.
pub fn heal(config: &Config) -> Result<Vec<IssuedRevision>> {
    let archive = config.root.join("archive");
    bag::sweep(&archive)?;
    files::sweep_unfinished(&config.registers())?;
    let Ok(register) = Register::read(config) else {
        // A register that `issue` does not write is no register to finish.
        return Ok(Vec::new());
    };
    let living = register.bytes.unwrap_or_default();
    let mut missing = Vec::new();
    for bag in bag::list(&archive)? {
        let archived = files::read_if_there(&bag.join("data").join(issued::FILE_NAME))?;
        let archived = archived.unwrap_or_default();
        // A register only grows, so that a bag's is nearly always its beginning.
        if !living.starts_with(&archived) {
            let mut known = issued::rows(&living)?;
            known.extend(missing.iter().cloned());
            missing.extend(issued::missing_from(&known, &issued::rows(&archived)?));
        }
    }
    if !missing.is_empty() {
        let existing = (!living.is_empty()).then_some(living.as_slice());
        let whole = issued::with_rows(existing, &missing)?;
        files::write_durably(&config.root.join(issued::FILE_NAME), &whole)?;
    }
    Ok(missing)
}

/// The register of what was issued, as it stands.
struct Register {
    bytes: Option<Vec<u8>>,
}

impl Register {
    fn read(config: &Config) -> Result<Register> {
        let other = ["xlsx", "xls", "ods"]
            .map(|ending| config.registers().join(format!("issued.{ending}")))
            .into_iter()
            .find(|path| path.exists());
        if let Some(other) = other {
            bail!(
                "{} is a workbook, and `issue` writes {} alone: save it as CSV under that name and move the workbook away",
                other.display(),
                issued::FILE_NAME
            );
        }
        Ok(Register {
            bytes: files::read_if_there(&config.root.join(issued::FILE_NAME))?,
        })
    }
}

/// The rows for the register: what is pending and was asked for.
fn revisions(decided: &Decided, config: &Config, order: &Order<'_>) -> Result<Vec<IssuedRevision>> {
    making::chosen(decided, order.only)?;
    let mut pending = pending(decided, config);
    pending.retain(|one| {
        let id = &one.judged.verdict.product.product_id;
        order.only.is_empty() || order.only.contains(id)
    });
    let reason = order.reason.as_deref().map(str::trim);
    let reason = reason.filter(|reason| !reason.is_empty());
    let amended = pending.iter().filter(|one| one.revision > 1);
    let amended: Vec<String> = amended
        .map(|one| format!("{} (revision {})", one.sheet_number, one.revision))
        .collect();
    if reason.is_none() && !amended.is_empty() {
        bail!(
            "nothing was issued: an amended sheet says why it was amended. Give the reason with --reason \"…\" for {}",
            amended.join(", ")
        );
    }
    let now = edition::products(results::json(decided, config).as_bytes())?;
    let before = Published::read(&config.root.join("archive"), &pending)?;
    let revisions = pending.into_iter().map(|one| {
        let verdict = &one.judged.verdict;
        let key = SheetKey {
            product_id: verdict.product.product_id.clone(),
            round: verdict.round.clone(),
        };
        IssuedRevision {
            sheet_number: one.sheet_number,
            revision: one.revision,
            issued_on: order.on,
            content_sha256: one.content_sha256,
            reason: reason.filter(|_| one.revision > 1).map(str::to_owned),
            changed: (one.revision > 1)
                .then(|| before.changed(&key, now.get(&key), one.judged, config))
                .flatten(),
            product_id: key.product_id,
            round: key.round,
        }
    });
    Ok(revisions.collect())
}

/// Enters the new rows as a fresh look at the register would find them.
fn enter(decided: &mut Decided, revisions: &[IssuedRevision]) {
    decided.registers.issued.extend(revisions.iter().cloned());
    for judged in &mut decided.products {
        let verdict = &mut judged.verdict;
        let own = revisions.iter().filter(|row| {
            row.product_id == verdict.product.product_id && row.round == verdict.round
        });
        verdict.issued.extend(own.cloned());
    }
}

/// Fills and publishes the bag: a programme folder with what it gave.
fn archive_all(
    decided: &Decided,
    config: &Config,
    on: NaiveDate,
    prepared: &Prepared,
    register: &[u8],
) -> Result<PathBuf> {
    let archive = config.root.join("archive");
    let mut bag = Bag::start(&archive)?;
    bag.add(
        config::FILE_NAME,
        &files::read(&config.root.join(config::FILE_NAME))?,
    )?;
    bag.add(issued::FILE_NAME, register)?;
    for folder in ["registers", "report-templates", "fonts"] {
        add_folder(&mut bag, &config.root, folder)?;
    }
    for file in &decided.lab_files {
        let bytes = files::read(&file.real_path(&config.root))?;
        if files::sha256_of(&bytes) != file.sha256 {
            bail!(
                "nothing was issued: {} was changed meanwhile. Try again",
                file.path
            );
        }
        bag.add(&file.path, &bytes)?;
    }
    let proofs: BTreeSet<String> = pending(decided, config)
        .iter()
        .map(|one| one.judged.verdict.stem())
        .collect();
    for path in prepared.staging.paths() {
        if is_published(&path, &proofs) {
            bag.add(&format!("out/{path}"), &prepared.staging.read(&path)?)?;
        }
    }
    bag.publish(on, &info(decided, config, on))
}

/// Drafts are nobody's yet, and what belongs to a sheet that is still a proof is not published.
fn is_published(path: &str, proofs: &BTreeSet<String>) -> bool {
    let (folder, name) = path.split_once('/').unwrap_or(("", path));
    let stem = name.rsplit_once('.').map_or(name, |(stem, _)| stem);
    match folder {
        "drafts" => false,
        "sheets" | "notices" => !proofs.contains(stem),
        _ => true,
    }
}

fn add_folder(bag: &mut Bag, root: &Path, folder: &str) -> Result<()> {
    let path = root.join(folder);
    if !path.is_dir() {
        return Ok(());
    }
    for listed in files::list(&path)? {
        let name = listed.path.rsplit('/').next().unwrap_or_default();
        let whole = format!("{folder}/{}", listed.path);
        // Litter is nobody's record; the register is added as it will be.
        if !files::is_litter(name)
            && whole != issued::FILE_NAME
            && path.join(&listed.path).is_file()
        {
            bag.add(&whole, &files::read(&path.join(&listed.path))?)?;
        }
    }
    Ok(())
}

fn info(decided: &Decided, config: &Config, on: NaiveDate) -> Vec<InfoLine> {
    let programme = &config.programme;
    let rule = format!(
        "rule {}, limit {} {}",
        config.rule.regime.word(),
        numbers::plain(config.rule.limit.ppm),
        config.rule.regime.unit()
    );
    let mut info = vec![
        ("Source-Organization", programme.name.clone()),
        (
            "External-Identifier",
            format!("{} {on}", programme.short_name),
        ),
        (
            "External-Description",
            format!("Results sheets as they stood on {on}, with what they rest on; {rule}"),
        ),
    ];
    info.extend(
        programme
            .email
            .clone()
            .map(|email| ("Contact-Email", email)),
    );
    let issued = decided
        .registers
        .issued
        .iter()
        .filter(|row| row.issued_on == on);
    info.extend(issued.map(|row| {
        (
            "Issued-Sheet",
            format!("{} revision {}", row.sheet_number, row.revision),
        )
    }));
    info.extend(decided.lab_files.iter().map(|file| {
        (
            "Source-File",
            format!("{} SHA-256 {}", file.path, file.sha256),
        )
    }));
    info
}
