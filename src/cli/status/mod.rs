//! `status`: what needs a person now.

mod agenda;
mod beginnings;

use crate::cli::Ending;
use crate::cli::args::{Date, Format, StatusArguments};
use crate::cli::print::{self, Meter};
use crate::config::Config;
use crate::model::letters::in_line;
use crate::pipeline::{self, planning};
use agenda::{Kind, Patience, Task, agenda};
use anyhow::Result;
use chrono::NaiveDate;
use serde_json::json;
use std::fmt::Write;
use std::path::Path;

/// Lists what needs a person; writes nothing.
pub fn status(dir: &Path, what: &StatusArguments, quiet: bool) -> Result<Ending> {
    let config = Config::read(dir)?;
    let today = Date { date: what.date }.or_today()?;
    print::tell_unfinished(&config.root.join("out"));
    let meter = Meter::new(quiet);
    let decided = pipeline::decide(&config, Some(today), &|progress| meter.note(progress))?;
    drop(meter);
    let patience = Patience {
        report_days: what.report_days.unwrap_or(config.publishing.report_days),
        retest_days: what.retest_days,
    };
    let mut tasks = agenda(&decided, today, patience);
    let steps = planning::next_steps(&decided, config.publishing.report_days);
    tasks.extend(
        steps
            .into_iter()
            .filter_map(|step| beginnings::task(step, today)),
    );
    print::result(&match what.format {
        Format::Text => as_text(&tasks, today),
        Format::Json => as_json(&tasks, today),
    })?;
    Ok(Ending::of(&decided))
}

fn as_text(tasks: &[Task], today: NaiveDate) -> String {
    if tasks.is_empty() {
        return format!("Nothing needs a person on {today}.\n");
    }
    let mut text = format!("What needs a person on {today}\n");
    if !tasks.iter().any(|task| task.kind == Kind::IssueSheet) {
        text.push_str("\nNothing may be published now\n");
    }
    for (kind, heading) in Kind::ALL {
        let mut own = tasks.iter().filter(|task| task.kind == *kind).peekable();
        if own.peek().is_none() {
            continue;
        }
        writeln!(text, "\n{heading}").expect("a string takes all");
        for task in own {
            let name = task
                .name
                .as_deref()
                .map(|name| format!(" ({})", in_line(name)))
                .unwrap_or_default();
            let (subject, what) = (in_line(&task.subject), in_line(&task.what));
            writeln!(text, "  {subject}{name}: {what}").expect("a string takes all");
        }
    }
    text
}

fn as_json(tasks: &[Task], today: NaiveDate) -> String {
    let tasks: Vec<_> = tasks
        .iter()
        .map(|task| {
            json!({
                "kind": task.kind.word(),
                "subject": task.subject,
                "name": task.name,
                "what": task.what,
                "since": task.since.map(|day| day.to_string()),
            })
        })
        .collect();
    let value =
        json!({ "schema": "galleyproof.status/1", "date": today.to_string(), "tasks": tasks });
    format!("{value:#}\n")
}
