//! `issue`: give each changed sheet its number, revision and date, and archive what it rests on.

use crate::cli::args::{Date, Format, IssueArguments};
use crate::cli::print::{self, Meter};
use crate::cli::{self, Ending};
use crate::config::Config;
use crate::model::letters::in_line;
use crate::pipeline::issue::{self, Issued, Order};
use crate::pipeline::{self, healing};
use anyhow::Result;
use serde_json::json;
use std::fmt::Write;
use std::path::Path;

/// Issues every sheet that differs from its last revision.
pub fn issue(dir: &Path, what: &IssueArguments, quiet: bool) -> Result<Ending> {
    let config = Config::read(dir)?;
    let date = Date { date: what.date };
    let (made_on, on) = (date.given()?, date.or_today()?);
    let _lock = cli::lock(&config.root.join("out"), "issue")?;
    print::tell_unfinished(&config.root.join("out"));
    put_back(&config)?;
    let meter = Meter::new(quiet);
    let listener = |progress| meter.note(progress);
    let decided = pipeline::decide(&config, Some(on), &listener)?;
    let ending = Ending::of(&decided);
    let order = Order {
        only: &what.only,
        on,
        made_on,
        early: what.early,
        reasons: &what.reason,
        large_print: what.large_print,
    };
    let issued = issue::issue(decided, &config, &order, &listener)?;
    drop(meter);
    match what.format {
        Format::Json => print::result(&as_json(&issued))?,
        Format::Text if quiet => {}
        Format::Text => print::result(&as_text(&issued))?,
    }
    for fault in &issued.unfinished {
        print::say(&format!(
            "galleyproof: the sheets are issued and archived, but {fault}. Then `galleyproof run` finishes it."
        ));
    }
    Ok(match issued.unfinished.is_empty() {
        true => ending,
        false => Ending::LookAtErrors,
    })
}

/// Finishes an issue that was cut off, mends the register of what was issued from the archive, and says so.
pub fn put_back(config: &Config) -> Result<()> {
    let healed = healing::heal(config)?;
    let register = "registers/issued.csv";
    for bag in &healed.doubted {
        print::say(&format!(
            "{}: its copy of {register} is not as it was archived; nothing is taken from it. `galleyproof verify {0}` names what has changed.",
            bag.display()
        ));
    }
    let told = [
        (
            &healed.added,
            "lacked what the archive holds, since an issue was cut off or rows were taken out. They stand there again",
        ),
        (
            &healed.mended,
            "said something else than the archive, which has it as it was issued. That stands there again",
        ),
        (
            &healed.unarchived,
            "has revisions that no archive has. Copy archive/ back if it was moved; take the rows out if nobody issued them",
        ),
    ];
    for (rows, what) in told {
        if !rows.is_empty() {
            print::say(&format!("{register} {what}: {}.", healing::few(rows)));
        }
    }
    Ok(())
}

fn as_text(issued: &Issued) -> String {
    let mut text = String::new();
    let Some(bag) = &issued.bag else {
        text.push_str(match issued.held.is_empty() {
            true => "Nothing to issue: every sheet is as it was last issued.\n",
            false => "Nothing to issue: what is not published yet is held.\n",
        });
        text.push_str(&held(issued));
        return text;
    };
    for row in &issued.revisions {
        write!(text, "  {} revision {}", row.sheet_number, row.revision)
            .expect("a string takes all");
        if let Some(changed) = &row.changed {
            write!(text, "   {}", in_line(changed)).expect("a string takes all");
        }
        text.push('\n');
    }
    let count = match issued.revisions.len() {
        1 => "1 sheet".to_owned(),
        n => format!("{n} sheets"),
    };
    writeln!(text, "{count} issued and archived in {}.", bag.display())
        .expect("a string takes all");
    text.push_str(&held(issued));
    text
}

/// What is not issued, with what it waits for.
fn held(issued: &Issued) -> String {
    let mut text = String::new();
    if !issued.held.is_empty() {
        text.push_str("\nNot issued\n");
    }
    for one in &issued.held {
        writeln!(
            text,
            "  {} ({}): {}",
            one.sheet_number,
            in_line(&one.name),
            in_line(&one.standing)
        )
        .expect("a string takes all");
    }
    text
}

fn as_json(issued: &Issued) -> String {
    let sheets: Vec<_> = issued
        .revisions
        .iter()
        .map(|row| {
            json!({
                "sheet_number": row.sheet_number,
                "product_id": row.product_id,
                "round": row.round,
                "revision": row.revision,
                "issued_on": row.issued_on.to_string(),
                "content_sha256": row.content_sha256,
                "reason": row.reason,
                "changed": row.changed,
            })
        })
        .collect();
    let held: Vec<_> = issued
        .held
        .iter()
        .map(|one| {
            json!({
                "sheet_number": one.sheet_number,
                "product_id": one.product_id,
                "round": one.round,
                "state": one.state.word(),
                "may_publish_on": one.may_publish_on,
                "why": one.standing,
            })
        })
        .collect();
    let bag = issued.bag.as_ref().map(|bag| bag.display().to_string());
    format!(
        "{:#}\n",
        json!({ "bag": bag, "issued": sheets, "held": held, "unfinished": issued.unfinished })
    )
}
