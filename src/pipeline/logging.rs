//! An entry in the register of what passed between the programme and a maker, checked before it is made.

use crate::config::Config;
use crate::files;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::formula;
use crate::model::place::Place;
use crate::model::publication::PublicationState;
use crate::model::registers::{Followup, FollowupKind};
use crate::pipeline;
use crate::render::words;
use crate::save::{alone, followups};
use crate::words::english;
use anyhow::{Result, bail};
use chrono::NaiveDate;
use std::fmt::Write;

/// What is to be entered, as typed.
#[derive(Clone, Debug)]
pub struct Entry<'a> {
    /// `notice-sent`, `reply`, `action`, `closed`.
    pub kind: &'a str,
    /// Whose product.
    pub product: &'a str,
    /// The round of testing; needed where the product has several.
    pub round: Option<&'a str>,
    /// Day on which it happened.
    pub on: NaiveDate,
    /// By when an answer is asked for.
    pub due: Option<NaiveDate>,
    /// What may be printed.
    pub statement: Option<&'a str>,
    /// What is never printed.
    pub note: Option<&'a str>,
}

/// Enters it, and tells what follows.
///
/// # Errors
/// Where product, round, kind or the order of days is wrong, or the register cannot be written: then it is as it was.
pub fn log(config: &Config, entry: &Entry<'_>) -> Result<String> {
    let decided = pipeline::decide(config, Some(entry.on), &|_| ())?;
    let row = checked(&decided, entry)?;
    refuse_workbook(config, &row)?;
    let path = config.root.join(followups::FILE_NAME);
    alone::refuse_open(&path)?;
    let whole = followups::with_row(files::read_if_there(&path)?.as_deref(), &row)?;
    alone::register(&path, &whole)?;
    let decided = pipeline::decide(config, Some(entry.on), &|_| ())?;
    let mut told = format!(
        "Entered in {}: {}.\n",
        followups::FILE_NAME,
        followups::as_typed(&row)
    );
    let concerned = decided.products.iter().filter(|judged| {
        judged.verdict.product.product_id == row.product_id
            && Some(&judged.verdict.round) == row.round.as_ref()
    });
    for judged in concerned {
        told.push_str(&follows(judged, config, &row));
    }
    Ok(told)
}

/// What follows from the entry for the sheet.
fn follows(judged: &JudgedProduct, config: &Config, row: &Followup) -> String {
    let publication = &judged.publication;
    let mut told = String::new();
    if row.kind == FollowupKind::NoticeSent
        && let Some(days) = config
            .programme
            .notice_days(std::slice::from_ref(row), None)
    {
        writeln!(
            told,
            "An answer is due by {}.",
            english().day(days.reply_by)
        )
        .expect("a string takes any text");
    }
    let state = match (publication.state, publication.may_publish_on) {
        (PublicationState::Held, Some(day)) => format!(
            "Without an answer it may be published from {}.",
            english().day(day)
        ),
        (PublicationState::Ready, _) => "It may be published now.".to_owned(),
        (PublicationState::Published, _) => "It is published as it stands.".to_owned(),
        (state, _) => format!(
            "It is {}. {}",
            words::publication::state(state),
            judged.publication_said
        ),
    };
    writeln!(told, "{state}").expect("a string takes any text");
    told.replace('\u{a0}', " ")
}

fn checked(decided: &Decided, entry: &Entry<'_>) -> Result<Followup> {
    let kind = kind(entry.kind)?;
    let products = &decided.registers.products;
    let Some(product) = products.get(entry.product) else {
        let nearest = products
            .keys()
            .min_by_key(|id| strsim::damerau_levenshtein(id, entry.product));
        let nearest = nearest.map_or(String::new(), |id| format!(". The nearest name is {id}"));
        bail!("the register of products has no {}{nearest}", entry.product);
    };
    let round = round(decided, &product.product_id, entry.round)?;
    if let Some(due) = entry.due {
        if kind != FollowupKind::NoticeSent {
            bail!("--due is for notice-sent alone: it is the day by which an answer is asked for");
        }
        if due < entry.on {
            bail!(
                "an answer cannot be due on {due}, before the notice of {}",
                entry.on
            );
        }
    }
    let earlier = decided.registers.followups.iter().filter(|event| {
        event.product_id == product.product_id && event.round.as_ref().is_none_or(|of| *of == round)
    });
    let earlier: Vec<&Followup> = earlier.collect();
    if let Some(last) = earlier.iter().max_by_key(|event| event.on)
        && last.on > entry.on
    {
        bail!(
            "{} is before the last entry about {}, round {round}, of {}. Give the right day with --date, or enter it in {} by hand",
            entry.on,
            product.product_id,
            last.on,
            followups::FILE_NAME
        );
    }
    let was_told = earlier
        .iter()
        .any(|event| event.kind == FollowupKind::NoticeSent);
    if kind == FollowupKind::Reply && !was_told {
        bail!(
            "no notice about {}, round {round} is on record, so that nothing can be answered yet: enter notice-sent first",
            product.product_id
        );
    }
    // It goes into a register that people open in a spreadsheet program.
    let written = [entry.statement, entry.note].into_iter().flatten();
    if let Some(text) = written.map(str::trim).find(|text| formula::is_one(text)) {
        bail!(
            "nothing was entered: “{text}” begins as a formula does, and a spreadsheet program that opens {} would run it. Begin with a word, or with a quotation mark",
            followups::FILE_NAME
        );
    }
    let text = |text: Option<&str>| {
        text.map(str::trim)
            .filter(|text| !text.is_empty())
            .map(str::to_owned)
    };
    Ok(Followup {
        product_id: product.product_id.clone(),
        round: Some(round),
        on: entry.on,
        kind,
        due_on: entry.due,
        statement: text(entry.statement),
        note: text(entry.note),
        place: Place::default(),
    })
}

fn kind(word: &str) -> Result<FollowupKind> {
    let known = FollowupKind::ALL.iter().find(|(_, known)| *known == word);
    match known {
        Some((kind, _)) => Ok(*kind),
        None => {
            let words: Vec<&str> = FollowupKind::ALL.iter().map(|(_, word)| *word).collect();
            bail!("{word} is no kind of entry: it can be {}", words.join(", "))
        }
    }
}

/// The round that is meant: the one that was asked for, or the only one there is.
fn round(decided: &Decided, product_id: &str, asked: Option<&str>) -> Result<String> {
    let mut rounds: Vec<&str> = decided
        .registers
        .packages
        .iter()
        .filter(|package| package.product_id == product_id)
        .map(|package| package.round.as_str())
        .collect();
    rounds.sort_unstable();
    rounds.dedup();
    match (asked, rounds.as_slice()) {
        (_, []) => bail!("the register of packages has no package of {product_id}"),
        (Some(asked), rounds) if rounds.contains(&asked) => Ok(asked.to_owned()),
        (Some(asked), rounds) => bail!(
            "{product_id} has no round {asked}: its rounds are {}",
            rounds.join(", ")
        ),
        (None, [only]) => Ok((*only).to_owned()),
        (None, rounds) => bail!(
            "{product_id} has several rounds: say which with --round ({})",
            rounds.join(", ")
        ),
    }
}

/// A register that is kept as a workbook is not written to: a person enters the row.
fn refuse_workbook(config: &Config, row: &Followup) -> Result<()> {
    let workbooks = ["xlsx", "xls", "ods"];
    let names = ["followups", "registers"].into_iter();
    let mut paths = names.flat_map(|name| {
        workbooks.map(|ending| config.registers().join(format!("{name}.{ending}")))
    });
    let own = config.root.join(followups::FILE_NAME);
    let workbook = paths.find(|path| {
        path.exists() && (path.file_stem() != Some("registers".as_ref()) || !own.exists())
    });
    match workbook {
        None => Ok(()),
        Some(workbook) => bail!(
            "{} is a workbook, and `log` writes {} alone. Add this row to it by hand: {}",
            workbook.display(),
            followups::FILE_NAME,
            followups::as_typed(row)
        ),
    }
}
