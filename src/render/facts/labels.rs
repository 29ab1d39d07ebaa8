//! The labels of a round's packages: each code in large type and as a QR code.

use crate::config::Config;
use crate::model::planning::RoundPlan;
use crate::render::Job;
use crate::render::facts::{DocumentFacts, qr};
use crate::render::words::breakable;
use crate::words::say;
use anyhow::{Result, bail};
use chrono::NaiveDate;
use serde::Serialize;

/// How labels stand on a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LabelGrid {
    /// Side by side.
    pub columns: usize,
    /// One below the other.
    pub rows: usize,
}

/// The most labels that a sheet takes in either direction so that code and square can still be read.
const MOST_COLUMNS: usize = 5;
const MOST_ROWS: usize = 13;

impl LabelGrid {
    /// Reads "3x8".
    ///
    /// # Errors
    /// Where it is none, or the labels would be too small to be read.
    pub fn parse(text: &str) -> Result<LabelGrid> {
        let parts = text.split_once(['x', '×']);
        let number = |part: &str| part.trim().parse::<usize>().ok().filter(|n| *n > 0);
        let grid = parts.and_then(|(columns, rows)| Some((number(columns)?, number(rows)?)));
        match grid {
            Some((columns, rows)) if columns <= MOST_COLUMNS && rows <= MOST_ROWS => {
                Ok(LabelGrid { columns, rows })
            }
            _ => bail!(
                "`{text}` is no sheet of labels: write columns x rows, such as 3x8, with at most {MOST_COLUMNS} columns and {MOST_ROWS} rows"
            ),
        }
    }
}

/// Everything that the template of labels may see.
#[derive(Clone, Debug, Serialize)]
pub struct LabelFacts {
    /// What the PDF says about itself.
    pub document: DocumentFacts,
    /// The programme's short name.
    pub short_name: String,
    /// Labels side by side.
    pub columns: usize,
    /// Labels one below the other.
    pub rows: usize,
    /// The labels.
    pub labels: Vec<Label>,
}

/// One label.
#[derive(Clone, Debug, Serialize)]
pub struct Label {
    /// The code.
    pub code: String,
    /// The same as a QR code, drawn.
    pub svg: String,
    /// What the drawing is, for who cannot see it.
    pub alt: String,
}

/// The labels of a plan's packages and blinds, by code: their order says nothing.
///
/// # Errors
/// None that data can cause: facts are text.
pub fn job(
    plan: &RoundPlan,
    config: &Config,
    grid: LabelGrid,
    made_on: Option<NaiveDate>,
) -> Result<Job> {
    let codes = all_codes(plan);
    let facts = LabelFacts {
        document: DocumentFacts::new(
            config,
            &["plan"],
            config.words.say(&say::labels_title(&plan.round)),
            config.words.say(&say::labels_about(codes.len() as u64)),
            vec![config.programme.short_name.clone()],
        ),
        short_name: breakable(&config.programme.short_name, 20),
        columns: grid.columns,
        rows: grid.rows,
        labels: codes
            .into_iter()
            .map(|code| Label {
                svg: qr::svg(&code),
                alt: config.words.say(&say::labels_square(&code)),
                code,
            })
            .collect(),
    };
    Ok(Job {
        path: "plan/labels.pdf".to_owned(),
        template: "labels.typ",
        one_page: false,
        ident: format!("labels {} {}", config.programme.short_name, plan.round),
        date: made_on.unwrap_or_default(),
        facts: serde_json::to_vec(&facts)?,
        files: Vec::new(),
    })
}

/// Every code of a plan, in the order of the codes.
fn all_codes(plan: &RoundPlan) -> Vec<String> {
    let packages = plan.chosen.iter().flat_map(|planned| &planned.codes);
    let blinds = plan.blinds.iter().map(|blind| &blind.code);
    let mut codes: Vec<String> = packages.chain(blinds).cloned().collect();
    codes.sort();
    codes
}
