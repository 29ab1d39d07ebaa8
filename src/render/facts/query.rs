//! The questions to a lab: a pair that disagrees, an extraction that is missing, two reports that differ.
//!
//! It names package codes alone: the lab works blind.

use crate::config::{Config, Lab};
use crate::files;
use crate::model::decided::JudgedProduct;
use crate::model::package::PackageResult;
use crate::model::sheet::ProgrammeFacts;
use crate::render::Job;
use crate::render::facts::{DocumentFacts, lines};
use crate::render::words::breakable;
use crate::render::words::query::{Question, QuestionKind, question};
use crate::words::{say, yes_or_no};
use anyhow::Result;
use chrono::{Days, NaiveDate};
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};

/// Everything that the query's template may see.
#[derive(Clone, Debug, Serialize)]
pub struct QueryFacts {
    /// What the PDF says about itself.
    pub document: DocumentFacts,
    /// Who writes.
    pub programme: ProgrammeFacts,
    /// Whom to.
    pub lab: String,
    /// Where that is and how it is reached, a line each, as the settings have it.
    pub lab_address: Vec<String>,
    /// By which an answer can cite it: other questions have another.
    pub number: String,
    /// Day of the letter, where it is known.
    pub date: Option<String>,
    /// The first line.
    pub title: String,
    /// Why we write.
    pub opening: String,
    /// The questions, by package code.
    pub questions: Vec<QueryRow>,
    /// What we ask of every answer.
    pub closing: Vec<String>,
    #[serde(skip)]
    day: Option<NaiveDate>,
}

/// One package's question.
#[derive(Clone, Debug, Serialize)]
pub struct QueryRow {
    /// The package's code.
    pub code: String,
    /// The lab's report numbers.
    pub report: String,
    /// What kind of question.
    pub kind: String,
    /// What we found.
    pub found: String,
    /// What we ask.
    pub ask: String,
    /// Whether the lab has reported anything of the package.
    #[serde(skip)]
    pub reported: bool,
}

/// The questions that are open, by lab; packages without any report go to the programme's own lab.
///
/// `as_of` is the day to look from: without one no report is late.
pub fn open(
    products: &[JudgedProduct],
    config: &Config,
    as_of: Option<NaiveDate>,
) -> BTreeMap<String, Vec<QueryRow>> {
    let mut open: BTreeMap<String, Vec<QueryRow>> = BTreeMap::new();
    // What is with the lab whole is asked after as a whole, once it is late; by status, not by a letter a package.
    let reported = products
        .iter()
        .filter(|product| product.publication.is_reported());
    let packages = reported.flat_map(|product| {
        let packages = product.verdict.packages.iter();
        packages.map(move |package| (package, product.verdict.rule))
    });
    let patience = Days::new(config.publishing.report_days.into());
    for (package, rule) in packages {
        let sent_on = package.pair.package.sent_on;
        let due = sent_on.and_then(|sent| sent.checked_add_days(patience));
        let is_late = due.zip(as_of).is_some_and(|(due, day)| day > due);
        if let Some(asked) = question(package, rule, config, is_late) {
            let first = package.pair.extractions.first();
            let lab = first.map_or(config.lab.name.as_str(), |first| &first.extraction.lab);
            let of_lab = open.entry(lab.to_owned()).or_default();
            of_lab.push(row(package, asked, config));
        }
    }
    for rows in open.values_mut() {
        rows.sort_by(|a, b| a.code.cmp(&b.code));
    }
    open
}

fn row(package: &PackageResult, asked: Question, config: &Config) -> QueryRow {
    let rows = package.pair.extractions.iter();
    let reports = rows.filter_map(|paired| paired.extraction.report.as_deref());
    let reports: Vec<&str> = reports.collect::<BTreeSet<_>>().into_iter().collect();
    QueryRow {
        code: breakable(&package.pair.package.package_code, 12),
        report: breakable(&reports.join(", "), 12),
        kind: asked.kind.words(&config.words),
        reported: asked.kind != QuestionKind::MissingResult,
        found: breakable(&asked.found, 24),
        ask: asked.ask,
    }
}

/// The facts of a letter to one lab with its open questions.
pub fn facts(
    lab: &str,
    questions: Vec<QueryRow>,
    config: &Config,
    made_on: Option<NaiveDate>,
) -> QueryFacts {
    let words = &config.words;
    let packages = questions.len() as u64;
    let reported = questions.iter().any(|question| question.reported);
    let title = words.say(&say::lab_query_title(packages));
    let number = number(&questions, config);
    let patience = Days::new(config.publishing.report_days.into());
    let by = made_on.and_then(|day| day.checked_add_days(patience));
    let by = say::lab_answer_by(
        yes_or_no(by.is_some()),
        by.map(|day| words.day(day)).unwrap_or_default(),
        &number,
    );
    QueryFacts {
        document: DocumentFacts::new(
            config,
            &["lab"],
            words.say(&say::lab_query_document(&title, lab)),
            words.say(&say::lab_query_about()),
            vec![number.clone()],
        ),
        programme: ProgrammeFacts::new(&config.programme),
        lab: breakable(lab, 40),
        lab_address: address(lab, &config.lab),
        number,
        date: made_on.map(|day| words.day(day)),
        opening: words.say(&say::lab_query_opening(packages, yes_or_no(reported))),
        title,
        questions,
        closing: [say::lab_answer(), say::lab_answer_extraction(), by]
            .iter()
            .map(|said| words.say(said))
            .collect(),
        day: made_on,
    }
}

/// The number of a query, `TKW-Q-3F9A61`: the same questions have the same.
pub fn number(questions: &[QueryRow], config: &Config) -> String {
    let asked: Vec<&str> = questions
        .iter()
        .flat_map(|row| [&row.code, &row.found, &row.ask].map(String::as_str))
        .collect();
    let digest = files::sha256_of(asked.join("\n").as_bytes()).to_uppercase();
    format!("{}-Q-{}", config.programme.short_name, &digest[..6])
}

/// The mail address of a lab, where the settings know it.
pub fn email<'a>(lab: &str, known: &'a Lab) -> Option<&'a str> {
    known.email.as_deref().filter(|_| is_known(lab, known))
}

/// Whether a lab is that of the settings.
fn is_known(lab: &str, known: &Lab) -> bool {
    let (lab, known) = (lab.to_lowercase(), known.name.to_lowercase());
    lab.split_whitespace().eq(known.split_whitespace())
}

/// Postal and mail address of a lab. The settings know those of one lab; a letter to another goes without.
fn address(lab: &str, known: &Lab) -> Vec<String> {
    if !is_known(lab, known) {
        return Vec::new();
    }
    let postal = lines(known.address.as_deref()).into_iter();
    let all = postal.chain(known.email.clone());
    all.map(|line| breakable(&line, 40)).collect()
}

/// The job of typesetting a letter to a lab. `latest` is the latest date in the results, for a letter without a date.
///
/// # Errors
/// None that data can cause: facts are text.
pub fn job(facts: &QueryFacts, latest: Option<NaiveDate>) -> Result<Job> {
    let words: Vec<String> = facts
        .lab
        .split(|c: char| !c.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_ascii_lowercase)
        .collect();
    let name = match words.as_slice() {
        [] => "laboratory".to_owned(),
        words => words.join("-"),
    };
    Ok(Job {
        path: format!("queries/{name}.pdf"),
        template: "query.typ",
        one_page: false,
        ident: format!("query {name}"),
        date: facts.day.or(latest).unwrap_or_default(),
        facts: serde_json::to_vec(facts)?,
        files: Vec::new(),
    })
}
