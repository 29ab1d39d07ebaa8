//! What goes into a bag: a part that may be given to anyone, and a part with what that rests on.
//!
//! `public/` is made of a view that holds published products alone, so that nothing of any other can stand in it.
//! `private/` is a programme folder: whoever has it can run it again.

use crate::archive::bag::{Bag, InfoLine};
use crate::archive::issued;
use crate::config::{self, Config};
use crate::files;
use crate::gather::books::LARGEST_FILE;
use crate::gather::{exhibits, inbox};
use crate::model::decided::Decided;
use crate::pipeline::making::{self, Prepared, Wanted};
use crate::pipeline::states;
use crate::render::facts::carried;
use crate::render::numbers;
use crate::save::alone;
use anyhow::{Result, bail};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

/// Fills a bag and moves it into the archive.
///
/// `decided` has the new revisions already, `prepared` the documents of it, `register` is the register as it will be.
///
/// # Errors
/// Where a file cannot be read or written, or a document cannot be made: then there is no bag.
pub fn archive(
    decided: &Decided,
    config: &Config,
    on: NaiveDate,
    prepared: &Prepared,
    register: &[u8],
) -> Result<PathBuf> {
    let archive = config.root.join("archive");
    let mut bag = Bag::start(&archive)?;
    add_public(&mut bag, decided, config, on, prepared)?;
    add_private(&mut bag, decided, config, prepared, register)?;
    let mut info = info(decided, config, on);
    info.extend(certificates(config)?.into_iter().map(|(path, bytes)| {
        let sha256 = files::sha256_of(&bytes);
        ("Certificate", format!("{path} SHA-256 {sha256}"))
    }));
    bag.publish(on, &info)
}

/// Sheets, summary, newsletter, data and pages, of published products alone.
fn add_public(
    bag: &mut Bag,
    decided: &Decided,
    config: &Config,
    on: NaiveDate,
    prepared: &Prepared,
) -> Result<()> {
    let view = states::for_anyone(decided, config);
    for judged in &view.products {
        let path = format!("sheets/{}.pdf", judged.verdict.stem());
        bag.add(&format!("public/{path}"), &prepared.staging.read(&path)?)?;
        let large = carried::large_print_path(&judged.verdict);
        if prepared.staging.paths().contains(&large) {
            bag.add(&format!("public/{large}"), &prepared.staging.read(&large)?)?;
        }
    }
    let folder = alone::scratch()?;
    let wanted = Wanted {
        made_on: Some(on),
        only: &[],
        force: true,
        large_print: false,
    };
    let made = making::prepare_for_anyone(&view, config, &wanted, folder.path())?;
    if let Some(failure) = made.failures.first() {
        bail!("nothing was issued, since a document could not be made. {failure}");
    }
    for path in made.staging.paths() {
        bag.add(&format!("public/{path}"), &made.staging.read(&path)?)?;
    }
    for path in prepared.staging.paths() {
        if path.starts_with("web/") {
            bag.add(&format!("public/{path}"), &prepared.staging.read(&path)?)?;
        }
    }
    Ok(())
}

/// Settings, registers, whole lab files and certificates, letters, templates.
fn add_private(
    bag: &mut Bag,
    decided: &Decided,
    config: &Config,
    prepared: &Prepared,
    register: &[u8],
) -> Result<()> {
    let settings = files::read(&config.root.join(config::FILE_NAME))?;
    bag.add(&private(config::FILE_NAME), &settings)?;
    bag.add(&private(issued::FILE_NAME), register)?;
    for folder in ["registers", "report-templates", "fonts"] {
        add_folder(bag, &config.root, folder)?;
    }
    for file in &decided.lab_files {
        let bytes = files::read(&file.real_path(&config.root))?;
        if files::sha256_of(&bytes) != file.sha256 {
            bail!(
                "nothing was issued: {} was changed meanwhile. Try again",
                file.path
            );
        }
        bag.add(&private(&file.path), &bytes)?;
    }
    add_replaced(bag, decided, config)?;
    add_unread(bag, decided, config)?;
    for (path, bytes) in certificates(config)? {
        bag.add(&private(&path), &bytes)?;
    }
    add_photographs(bag, decided, config)?;
    let published: BTreeSet<String> = decided
        .products
        .iter()
        .filter(|judged| judged.publication.is_public())
        .map(|judged| judged.verdict.stem())
        .collect();
    for path in prepared.staging.paths() {
        // A plate holds samples of several makers: it goes to nobody.
        let kept = match path.starts_with("plates/") {
            true => Some(path.clone()),
            false => is_letter(&path, &published).then(|| format!("letters/{path}")),
        };
        if let Some(kept) = kept {
            bag.add(&private(&kept), &prepared.staging.read(&path)?)?;
        }
    }
    Ok(())
}

/// Lab files that a later one replaces: nothing rests on them, and the register of reports names them.
fn add_replaced(bag: &mut Bag, decided: &Decided, config: &Config) -> Result<()> {
    let rows = decided.registers.reports.iter();
    for replaced in rows.filter_map(|row| row.supersedes.as_deref()) {
        let path = private(replaced);
        if !bag.holds(&path)
            && let Some(bytes) = files::read_unlinked(&config.root.join(replaced))?
        {
            bag.add(&path, &bytes)?;
        }
    }
    Ok(())
}

/// Lab files that could not be read, or that count once under another name: the report on the inbox speaks of them, and
/// whoever runs a bag again is to be told the same.
fn add_unread(bag: &mut Bag, decided: &Decided, config: &Config) -> Result<()> {
    let inbox = config.inbox();
    let read: BTreeSet<PathBuf> = decided
        .lab_files
        .iter()
        .map(|file| file.real_path(&config.root))
        .collect();
    for listed in files::list(&inbox)? {
        let real = inbox.join(&listed.path);
        let path = private(&format!("inbox/{}", listed.path));
        let is_litter = listed.path.split('/').any(files::is_litter);
        let is_small = files::length(&real).is_some_and(|length| length <= LARGEST_FILE);
        if listed.is_plain_file
            && is_small
            && !is_litter
            && inbox::has_lab_ending(&real)
            && !read.contains(&real)
            && !bag.holds(&path)
        {
            bag.add(&path, &files::read(&real)?)?;
        }
    }
    Ok(())
}

/// The photographs of packages, as they were read; one that another part of the bag has already stands there once.
fn add_photographs(bag: &mut Bag, decided: &Decided, config: &Config) -> Result<()> {
    let packages = decided.registers.packages.iter();
    for photograph in packages.flat_map(|package| &package.photographs) {
        let path = private(&photograph.path);
        if bag.holds(&path) {
            continue;
        }
        let bytes = files::read(&config.root.join(&photograph.path))?;
        if files::sha256_of(&bytes) != photograph.sha256 {
            bail!(
                "nothing was issued: {} was changed meanwhile. Try again",
                photograph.path
            );
        }
        bag.add(&path, &bytes)?;
    }
    Ok(())
}

/// What else the lab or a shop gave: certificates and photographs in the inbox, by their path, with their bytes.
fn certificates(config: &Config) -> Result<Vec<(String, Vec<u8>)>> {
    let inbox = config.inbox();
    if !inbox.is_dir() {
        return Ok(Vec::new());
    }
    let mut found = Vec::new();
    for listed in files::list(&inbox)? {
        let path = &listed.path;
        let name = path.rsplit('/').next().unwrap_or(path);
        if listed.is_plain_file && exhibits::is_one(name) && !files::is_litter(name) {
            found.push((format!("inbox/{path}"), files::read(&inbox.join(path))?));
        }
    }
    Ok(found)
}

fn private(path: &str) -> String {
    format!("private/{path}")
}

/// Letters about what is published; what belongs to a proof is nobody's yet.
fn is_letter(path: &str, published: &BTreeSet<String>) -> bool {
    let Some((folder, name)) = path.split_once('/') else {
        return false;
    };
    let stem = name.rsplit_once('.').map_or(name, |(stem, _)| stem);
    matches!(folder, "notices" | "drafts") && published.contains(stem)
}

fn add_folder(bag: &mut Bag, root: &Path, folder: &str) -> Result<()> {
    let path = root.join(folder);
    if !path.is_dir() {
        return Ok(());
    }
    for listed in files::list(&path)? {
        let name = listed.path.rsplit('/').next().unwrap_or_default();
        let whole = format!("{folder}/{}", listed.path);
        if !listed.is_plain_file && files::leads_out(root, &path.join(&listed.path)) {
            bail!(
                "nothing was issued: {whole} is a link that leads out of the programme folder. Put a copy of the file in its place"
            );
        }
        // Litter is nobody's record; the register is added as it will be.
        if !files::is_litter(name)
            && whole != issued::FILE_NAME
            && path.join(&listed.path).is_file()
        {
            bag.add(&private(&whole), &files::read(&path.join(&listed.path))?)?;
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
