//! Publishing: each sheet that may be published and differs from its last revision gets a number, a revision and a day,
//! and goes into the archive. What may not is named, with what it waits for.
//!
//! The order makes every moment safe to be cut off at. Everything is made beside its place; then the bag moves into the
//! archive, which is the moment of publication; then the register is written; then the outputs move. A bag carries the
//! register as it will be, so that [`healing`] can finish what was cut off between the second step and the third; the fourth
//! is a plain run.

use crate::archive::edition::{self, SheetKey};
use crate::archive::issued;
use crate::archive::published::{Published, Sought};
use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::formula;
use crate::model::problem::{Problem, Severity};
use crate::model::publication::PublicationState;
use crate::model::registers::IssuedRevision;
use crate::pipeline::making::{self, Wanted, prepare};
use crate::pipeline::{self, Listener, bagging, healing, states};
use crate::render::facts::sheet;
use crate::render::words;
use crate::save::out::Outcome;
use crate::save::{alone, results};
use crate::words::{english, say};
use anyhow::{Result, bail};
use chrono::NaiveDate;
use std::collections::BTreeSet;
use std::path::PathBuf;

/// What is to be issued.
#[derive(Clone, Debug)]
pub struct Order<'a> {
    /// These products only; none means all.
    pub only: &'a [String],
    /// Issue them although they are held, or wait for the lab.
    pub early: bool,
    /// Day of issue.
    pub on: NaiveDate,
    /// The day that a proof of the rest bears, where one is given.
    pub made_on: Option<NaiveDate>,
    /// Why; needed from the second revision of a sheet on, and with `early`.
    pub reasons: &'a [String],
    /// Make and archive the sheets in large print as well.
    pub large_print: bool,
}

/// What was issued.
#[derive(Clone, Debug)]
pub struct Issued {
    /// The new bag; none where nothing was ready.
    pub bag: Option<PathBuf>,
    /// The new revisions.
    pub revisions: Vec<IssuedRevision>,
    /// What is not issued, and what it waits for.
    pub held: Vec<Held>,
    /// What became of the outputs.
    pub outcome: Outcome,
    /// What could not be written once the bag stood in the archive: the sheets are issued, and the next run finishes it.
    pub unfinished: Vec<String>,
}

/// A sheet that is not issued.
#[derive(Clone, Debug)]
pub struct Held {
    /// Its number.
    pub sheet_number: String,
    /// Which product.
    pub product_id: String,
    /// Which round.
    pub round: String,
    /// The product's name.
    pub name: String,
    /// Its state.
    pub state: PublicationState,
    /// From which day it may be issued, where that is known.
    pub may_publish_on: Option<NaiveDate>,
    /// Its state, from when it may be issued where that is known, and why.
    pub standing: String,
}

/// Issues what may be issued, and leaves the outputs as a run would.
///
/// # Errors
/// Where the order is not one that can be carried out (a held product without `early`, an amended sheet without a
/// reason, a name that is still a placeholder, a product that is not there), a template has a mistake, or a file cannot be
/// read or written: then nothing is issued, or the next run finishes what was.
pub fn issue(
    mut decided: Decided,
    config: &Config,
    order: &Order<'_>,
    listener: Listener<'_>,
) -> Result<Issued> {
    refuse_placeholders(config)?;
    let register = healing::read(config)?;
    refuse_unreadable_history(&decided)?;
    refuse_earlier_day(&decided, order.on)?;
    let selection = select(&decided, order)?;
    let held = selection.held.iter().map(|one| held(one, config)).collect();
    let mut revisions = revisions(&selection.issued, &decided, config, order)?;
    enter(&mut decided, &mut revisions, config, order.on);
    let wanted = Wanted {
        made_on: order.made_on,
        only: &[],
        force: false,
        large_print: order.large_print,
    };
    let out = config.root.join("out");
    let prepared = prepare(&decided, config, &wanted, &out, listener)?;
    if let Some(failure) = prepared.failures.first() {
        bail!("nothing was issued, since a document could not be made. {failure}");
    }
    if revisions.is_empty() {
        return Ok(Issued {
            bag: None,
            revisions,
            held,
            outcome: prepared.finish()?.outcome,
            unfinished: Vec::new(),
        });
    }
    let path = config.root.join(issued::FILE_NAME);
    alone::refuse_open(&path)?;
    let register = issued::with_rows(register.as_deref(), &revisions)?;
    let bag = bagging::archive(&decided, config, order.on, &prepared, &register)?;
    // From here on the sheets are issued, whatever else cannot be written.
    let mut unfinished = Vec::new();
    if let Err(fault) = alone::register(&path, &register) {
        unfinished.push(format!("{fault:#}"));
    }
    let outcome = match prepared.finish() {
        Ok(made) => made.outcome,
        Err(fault) => {
            unfinished.push(format!("{fault:#}"));
            Outcome::default()
        }
    };
    Ok(Issued {
        bag: Some(bag),
        revisions,
        held,
        outcome,
        unfinished,
    })
}

/// A sheet cannot replace one of a later day, and bags stand in the order of their days.
fn refuse_earlier_day(decided: &Decided, on: NaiveDate) -> Result<()> {
    let last = decided.registers.issued.iter();
    let last = last.max_by_key(|row| row.issued_on);
    if let Some(last) = last.filter(|last| on < last.issued_on) {
        bail!(
            "nothing was issued: {on} is before {}, the day on which {} revision {} was issued. Set the clock of this \
             machine right, or give the day with --date",
            last.issued_on,
            last.sheet_number,
            last.revision
        );
    }
    Ok(())
}

/// Which revision comes next is known from the register alone: a row that cannot be read could be the last one.
fn refuse_unreadable_history(decided: &Decided) -> Result<()> {
    let is_of_history = |problem: &&&Problem| {
        problem.severity() == Severity::Error && problem.place.file == issued::FILE_NAME
    };
    let problems = decided.problems.sorted();
    let mut faults = problems.iter().filter(is_of_history);
    let Some(first) = faults.next() else {
        return Ok(());
    };
    let cell = first.place.cell();
    bail!(
        "nothing was issued: {} has rows that cannot be read, so that nobody knows which revision comes next. {}: {} Copy \
         archive/ back if it was moved, and run again, which mends the register from it; or restore the register from a copy",
        issued::FILE_NAME,
        cell.map_or_else(|| "Its headings".to_owned(), |cell| format!("Cell {cell}")),
        english().found(first)
    )
}

/// What a folder has from `init` and nobody has replaced is not to be printed on a sheet.
fn refuse_placeholders(config: &Config) -> Result<()> {
    let placeholders = config.placeholders();
    if !placeholders.is_empty() {
        bail!(
            "nothing was issued: programme.toml still has what `init` wrote for {}. Put your own there",
            placeholders.join(", ")
        );
    }
    Ok(())
}

/// What is issued and what is not, of all that was asked for and is not published as it now stands.
struct Selection<'a> {
    issued: Vec<&'a JudgedProduct>,
    held: Vec<&'a JudgedProduct>,
}

fn select<'a>(decided: &'a Decided, order: &Order<'_>) -> Result<Selection<'a>> {
    if order.early && order.only.is_empty() {
        bail!(
            "nothing was issued: --early is for products that are named. Add --only ID, and --reason \"…\", which is printed on the sheet"
        );
    }
    let chosen = making::chosen(decided, order.only)?;
    let open: Vec<&JudgedProduct> = chosen
        .into_iter()
        .filter(|judged| !judged.publication.is_public())
        .collect();
    let may = |judged: &&JudgedProduct| match judged.publication.state {
        PublicationState::Ready => true,
        PublicationState::Held | PublicationState::Waiting => order.early,
        PublicationState::WithLab | PublicationState::Published => false,
    };
    let (issued, held): (Vec<_>, Vec<_>) = open.into_iter().partition(may);
    for id in order.only {
        let of = |judged: &&&JudgedProduct| judged.verdict.product.product_id == *id;
        if let (0, Some(first)) = (issued.iter().filter(of).count(), held.iter().find(of)) {
            let how = match first.publication.state {
                PublicationState::WithLab => "There is nothing to issue yet",
                _ => {
                    "To issue it all the same, add --early and --reason \"…\", which is printed on the sheet"
                }
            };
            bail!(
                "nothing was issued: {id}, round {} is {}. {} {how}",
                first.verdict.round,
                words::publication::state(first.publication.state),
                first.publication_said
            );
        }
    }
    Ok(Selection { issued, held })
}

fn held(judged: &JudgedProduct, config: &Config) -> Held {
    let verdict = &judged.verdict;
    Held {
        sheet_number: sheet::sheet_number(verdict, config),
        product_id: verdict.product.product_id.clone(),
        round: verdict.round.clone(),
        name: verdict.product.name.clone(),
        state: judged.publication.state,
        may_publish_on: judged.publication.may_publish_on,
        standing: states::standing(judged),
    }
}

/// The reason for a product: its own (`ID=TEXT`), else that for all.
fn reason<'a>(id: &str, reasons: &'a [String], ids: &BTreeSet<&str>) -> Option<&'a str> {
    let of_product = |reason: &'a String| {
        let (name, text) = reason.split_once('=')?;
        ids.contains(name.trim()).then(|| (name.trim(), text))
    };
    let own = reasons
        .iter()
        .filter_map(of_product)
        .find(|(name, _)| *name == id)
        .map(|(_, text)| text);
    let of_all = || {
        reasons
            .iter()
            .find(|reason| of_product(reason).is_none())
            .map(String::as_str)
    };
    own.or_else(of_all)
        .map(str::trim)
        .filter(|reason| !reason.is_empty())
}

/// The rows for the register.
fn revisions(
    selected: &[&JudgedProduct],
    decided: &Decided,
    config: &Config,
    order: &Order<'_>,
) -> Result<Vec<IssuedRevision>> {
    let ids: BTreeSet<&str> = decided
        .products
        .iter()
        .map(|judged| judged.verdict.product.product_id.as_str())
        .collect();
    let is_early = |judged: &JudgedProduct| judged.publication.state != PublicationState::Ready;
    let reason =
        |judged: &JudgedProduct| reason(&judged.verdict.product.product_id, order.reasons, &ids);
    let wanting: Vec<String> = selected
        .iter()
        .filter(|judged| judged.publication.revision > 1 || is_early(judged))
        .filter(|judged| reason(judged).is_none())
        .map(|judged| {
            let number = sheet::sheet_number(&judged.verdict, config);
            format!("{number} (revision {})", judged.publication.revision)
        })
        .collect();
    if !wanting.is_empty() || (order.early && order.reasons.is_empty()) {
        bail!(
            "nothing was issued: a sheet that is amended, or issued before its time, says why. Give the reason with --reason \"…\", or --reason ID=\"…\" for one product: {}",
            wanting.join(", ")
        );
    }
    // It goes into a register that people open in a spreadsheet program.
    let live = selected.iter().filter_map(|judged| reason(judged));
    if let Some(text) = live.into_iter().find(|text| formula::is_one(text)) {
        bail!(
            "nothing was issued: the reason “{text}” begins as a formula does, and a spreadsheet program that opens {} would run it. Begin with a word",
            issued::FILE_NAME
        );
    }
    let now = edition::keyed(results::view(decided, config).products);
    let mut sought = Sought::new();
    for judged in selected.iter().filter(|one| one.publication.revision > 1) {
        let number = sheet::sheet_number(&judged.verdict, config);
        sought.insert((number, judged.publication.revision - 1), key(judged));
    }
    let decide = |folder: &std::path::Path| {
        let config = Config::read(folder)?;
        let decided = pipeline::decide(&config, None, &|_| ())?;
        Ok((config, decided.products))
    };
    let before = Published::read(&config.root.join("archive"), sought, &decide)?;
    let mut selected = selected.to_vec();
    // A sheet names the earlier rounds that were published before it: of rounds that are issued together the earliest
    // stands first.
    selected.sort_by_key(|judged| {
        let id = judged.verdict.product.product_id.clone();
        (id, judged.verdict.day())
    });
    let revisions = selected.into_iter().map(|judged| {
        let verdict = &judged.verdict;
        let key = key(judged);
        let amends = judged.publication.revision > 1;
        let early = is_early(judged);
        IssuedRevision {
            sheet_number: sheet::sheet_number(verdict, config),
            revision: judged.publication.revision,
            issued_on: order.on,
            // Which earlier rounds the sheet names is known once the rows are entered.
            content_sha256: String::new(),
            reason: reason(judged)
                .filter(|_| amends || early)
                .map(str::to_owned),
            changed: amends.then(|| {
                let told = before.changed(&key, now.get(&key), judged, config);
                let former = judged.publication.revision - 1;
                let unknown = || config.words.say(&say::amended_unknown(former.to_string()));
                told.unwrap_or_else(unknown)
            }),
            verdict: Some(verdict.verdict.word().to_owned()),
            label: Some(verdict.label.finding.word().to_owned()),
            early: early.then(|| words::publication::early(&judged.publication, &config.words)),
            product_id: key.product_id,
            round: key.round,
        }
    });
    Ok(revisions.collect())
}

fn key(judged: &JudgedProduct) -> SheetKey {
    SheetKey {
        product_id: judged.verdict.product.product_id.clone(),
        round: judged.verdict.round.clone(),
    }
}

/// Enters the new rows as a fresh look at the register would find them, and notes in each what its sheet says.
fn enter(decided: &mut Decided, rows: &mut [IssuedRevision], config: &Config, on: NaiveDate) {
    decided.registers.issued.extend(rows.iter().cloned());
    let mut issuing = BTreeSet::new();
    for row in rows.iter() {
        let own = decided
            .products
            .iter_mut()
            .filter(|judged| is_of(row, judged));
        own.for_each(|judged| judged.verdict.issued.push(row.clone()));
        issuing.insert((row.product_id.clone(), row.round.clone()));
    }
    states::note_issuing(decided, config, Some(on), &issuing);
    let before = decided.registers.issued.len() - rows.len();
    for (at, row) in rows.iter_mut().enumerate() {
        for judged in &mut decided.products {
            if is_of(row, judged) {
                row.content_sha256 = judged.sheet().sha256.clone();
                if let Some(last) = judged.verdict.issued.last_mut() {
                    last.content_sha256 = row.content_sha256.clone();
                }
            }
        }
        decided.registers.issued[before + at] = row.clone();
    }
}

fn is_of(row: &IssuedRevision, judged: &JudgedProduct) -> bool {
    row.product_id == judged.verdict.product.product_id && row.round == judged.verdict.round
}
