//! The notice to a maker: what was found, what we ask, and by when, before anything is published.

use crate::config::{Attach, Config};
use crate::model::decided::JudgedProduct;
use crate::model::followup::NoticeDays;
use crate::model::verdict::ProductVerdict;
use crate::render::facts::packages::{self, PackageTable};
use crate::render::facts::sheet::{latest_day, sheet_number};
use crate::render::facts::{DocumentFacts, ProgrammeFacts, lines};
use crate::render::words::{self, breakable};
use crate::render::{Job, numbers};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;

/// Everything that the notice's template may see.
#[derive(Clone, Debug, Serialize)]
pub struct NoticeFacts {
    /// What the PDF says about itself.
    pub document: DocumentFacts,
    /// Who writes.
    pub programme: ProgrammeFacts,
    /// Whom to, a line each.
    pub addressee: Vec<String>,
    /// The sheet that it is about.
    pub sheet_number: String,
    /// The first line.
    pub title: String,
    /// Day of the letter, where it is known.
    pub date: Option<String>,
    /// What the largest item of the letter is headed.
    pub reply_head: &'static str,
    /// By when an answer is asked for: a day, or a number of days.
    pub reply_by: String,
    /// Why we write.
    pub opening: String,
    /// The results.
    pub table: PackageTable,
    /// What a reader of the table must know beyond its figures.
    pub notes: Vec<String>,
    /// What the results and the label come to, a paragraph each.
    pub findings: Vec<String>,
    /// What we ask.
    pub ask: Vec<String>,
    /// What the maker can have.
    pub offer: String,
    /// What happens next, in order.
    pub steps: Vec<Step>,
    /// What happens without an answer.
    pub without_reply: String,
    /// What the letter does not say.
    pub says_not: String,
    /// Facts beside the letter.
    pub beside: Vec<Labelled>,
    #[serde(skip)]
    day: Option<NaiveDate>,
}

/// One step of what happens next.
#[derive(Clone, Debug, Serialize)]
pub struct Step {
    /// `15 April`, or `day 15`.
    pub when: String,
    /// What happens then.
    pub what: &'static str,
}

/// A fact with its name.
#[derive(Clone, Debug, Serialize)]
pub struct Labelled {
    /// What it is.
    pub label: &'static str,
    /// The fact.
    pub text: String,
}

/// The facts of the notice about a product. `made_on` dates a letter that is not in the register of follow-ups yet.
pub fn facts(product: &JudgedProduct, config: &Config, made_on: Option<NaiveDate>) -> NoticeFacts {
    let verdict = &product.verdict;
    let programme = &config.programme;
    let days = programme.notice_days(&verdict.followups, made_on);
    let number = sheet_number(verdict, config);
    let title = title(verdict);
    let document = DocumentFacts::new(
        config,
        &["letters"],
        format!("{title}. Notice to the maker, sheet {number}"),
        words::verdict::count(verdict, verdict.rule, config.testing.packages_per_product),
        vec![number.clone()],
    );
    NoticeFacts {
        document,
        programme: ProgrammeFacts::new(&config.programme),
        addressee: addressee(verdict),
        date: days.map(|days| numbers::date(days.written)),
        reply_head: if days.is_some() {
            "Please reply by"
        } else {
            "Please reply within"
        },
        reply_by: match days {
            Some(days) => numbers::date(days.reply_by),
            None => words::counted(config.programme.reply_days as usize, "day", "days"),
        },
        opening: breakable(&words::notice::opening(verdict, config), 30),
        table: packages::table(
            &verdict.packages,
            verdict.rule,
            config.testing.extractions_per_package,
        ),
        notes: words::packages::notes(&verdict.packages, verdict.rule)
            .iter()
            .map(|note| breakable(note, 30))
            .collect(),
        findings: words::notice::findings(product, config)
            .iter()
            .map(|said| breakable(said, 30))
            .collect(),
        ask: words::notice::ask(verdict),
        offer: words::notice::offer(config),
        steps: steps(days, config),
        without_reply: words::notice::without_reply(days, config),
        says_not: words::notice::says_not(verdict.rule),
        beside: beside(verdict, config, &number, days),
        title: breakable(&title, 22),
        sheet_number: number,
        day: days
            .map(|days| days.written)
            .or_else(|| latest_day(verdict)),
    }
}

/// The job of typesetting a notice.
///
/// # Errors
/// None that data can cause: facts are text.
pub fn job(verdict: &ProductVerdict, facts: &NoticeFacts) -> Result<Job> {
    Ok(Job {
        path: format!("notices/{}.pdf", verdict.stem()),
        template: "notice.typ",
        ident: format!("notice {}", facts.sheet_number),
        date: facts.day.unwrap_or_default(),
        facts: serde_json::to_vec(facts)?,
        files: Vec::new(),
    })
}

fn title(verdict: &ProductVerdict) -> String {
    let net = verdict
        .product
        .net_content
        .as_deref()
        .map(|net| format!(", {net}"))
        .unwrap_or_default();
    format!("Results for your {}{net}", verdict.product.name)
}

/// Whom a letter is to, a line each.
pub fn addressee(verdict: &ProductVerdict) -> Vec<String> {
    let product = &verdict.product;
    let mut addressee = vec!["The quality manager".to_owned()];
    addressee.extend(
        product
            .maker
            .as_deref()
            .or(product.brand.as_deref())
            .map(|name| breakable(name, 30)),
    );
    addressee.extend(lines(product.maker_address.as_deref()));
    addressee
}

fn steps(days: Option<NoticeDays>, config: &Config) -> Vec<Step> {
    let programme = &config.programme;
    let when = match days {
        Some(days) => [days.written, days.reply_by, days.publish].map(numbers::date),
        None => [
            "today".to_owned(),
            format!("day {}", programme.reply_days),
            format!("day {}", programme.publish_days),
        ],
    };
    let what = ["this letter", "your reply is due", "we publish"];
    when.into_iter()
        .zip(what)
        .map(|(when, what)| Step { when, what })
        .collect()
}

fn beside(
    verdict: &ProductVerdict,
    config: &Config,
    number: &str,
    days: Option<NoticeDays>,
) -> Vec<Labelled> {
    let mut beside = Vec::new();
    let mut say = |label, text: String| {
        if !text.is_empty() {
            beside.push(Labelled {
                label,
                text: breakable(&text, 18),
            });
        }
    };
    let publish = days.map_or_else(
        || format!("{} days after this letter", config.programme.publish_days),
        |days| numbers::date(days.publish),
    );
    say("Planned day of issue", publish);
    say("Sheet", format!("{number}, draft enclosed"));
    say(
        "Limit",
        words::sentence_case(
            words::limit::LimitWords::of(verdict.rule)
                .source()
                .trim_start_matches("Limit: ")
                .trim_end_matches('.'),
        ),
    );
    say(
        "Method",
        words::sentence_case(&words::method::assays(verdict, config)),
    );
    let sources = words::source::provenance(verdict, &config.words).into_iter();
    let sources = sources.zip(words::source::places(verdict, &config.words));
    let sources: Vec<String> = sources
        .map(|(said, place)| format!("{said} {place}"))
        .collect();
    say("Laboratory", sources.join(" "));
    say(
        "Reply to",
        config.programme.email.clone().unwrap_or_default(),
    );
    say(
        "Enclosed",
        match config.publishing.attach {
            Attach::None => format!("Draft of sheet {number}"),
            Attach::Whole => {
                format!("Draft of sheet {number}, with the laboratory’s files attached to it")
            }
            Attach::Excerpt => {
                format!("Draft of sheet {number}, with the laboratory’s cells attached to it")
            }
        },
    );
    beside
}
