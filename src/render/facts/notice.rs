//! The notice to a maker: what was found, what we ask, and by when, before anything is published.

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::followup::NoticeDays;
use crate::model::rule::Rule;
use crate::model::sheet::{PackageTable, ProgrammeFacts};
use crate::model::verdict::ProductVerdict;
use crate::render::Job;
use crate::render::facts::packages;
use crate::render::facts::sheet::{latest_day, sheet_number};
use crate::render::facts::{DocumentFacts, lines};
use crate::render::words::notice as said;
use crate::render::words::{self, breakable};
use crate::words::{Said, say, side, yes_or_no};
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
    pub reply_head: String,
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
    /// `15 April 2031`, or `day 15`.
    pub when: String,
    /// What happens then.
    pub what: String,
}

/// A fact with its name.
#[derive(Clone, Debug, Serialize)]
pub struct Labelled {
    /// What it is.
    pub label: String,
    /// The fact.
    pub text: String,
}

/// The facts of the notice about a product. `made_on` dates a letter that is not in the register of follow-ups yet.
pub fn facts(product: &JudgedProduct, config: &Config, made_on: Option<NaiveDate>) -> NoticeFacts {
    let (verdict, words) = (&product.verdict, &config.words);
    let programme = &config.programme;
    let days = programme.notice_days(&verdict.followups, made_on);
    let number = sheet_number(verdict, config);
    let title = title(verdict, config);
    let document = DocumentFacts::new(
        config,
        &["letters"],
        words.say(&say::letter_notice_document(&title, &number)),
        said::found_in_short(verdict, config),
        vec![number.clone()],
    );
    let broken = |all: Vec<String>| all.iter().map(|said| breakable(said, 30)).collect();
    let reply_days = u64::from(programme.reply_days);
    NoticeFacts {
        document,
        programme: ProgrammeFacts::new(programme),
        addressee: addressee(verdict, config),
        date: days.map(|days| words.day(days.written)),
        reply_head: words.say(&match days {
            Some(_) => say::letter_reply_by(),
            None => say::letter_reply_within(),
        }),
        reply_by: match days {
            Some(days) => words.day(days.reply_by),
            None => words.say(&say::letter_days(reply_days)),
        },
        opening: breakable(&said::opening(verdict, config), 30),
        table: packages::table(
            &verdict.packages,
            verdict.rule,
            config.testing.extractions_per_package,
            words,
        ),
        notes: broken(words::packages::remarks(
            &verdict.packages,
            verdict.rule,
            config,
        )),
        findings: broken(said::findings(product, config)),
        ask: said::ask(verdict, config),
        offer: said::offer(verdict, config),
        steps: steps(days, config),
        without_reply: said::without_reply(days, config),
        says_not: said::notice_says_not(verdict, config),
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
        one_page: false,
        ident: format!("notice {}", facts.sheet_number),
        date: facts.day.unwrap_or_default(),
        facts: serde_json::to_vec(facts)?,
        files: Vec::new(),
    })
}

fn title(verdict: &ProductVerdict, config: &Config) -> String {
    let product = &verdict.product;
    let net = product.net_content.as_deref();
    config.words.say(&say::letter_title(
        &product.name,
        net.unwrap_or_default(),
        yes_or_no(net.is_some()),
    ))
}

/// Whom a letter is to, a line each.
pub fn addressee(verdict: &ProductVerdict, config: &Config) -> Vec<String> {
    let product = &verdict.product;
    let mut addressee = vec![config.words.say(&say::letter_addressee())];
    let name = product.maker.as_deref().or(product.brand.as_deref());
    addressee.extend(name.map(|name| breakable(name, 30)));
    addressee.extend(lines(product.maker_address.as_deref()));
    addressee
}

fn steps(days: Option<NoticeDays>, config: &Config) -> Vec<Step> {
    let (programme, words) = (&config.programme, &config.words);
    let when = match days {
        Some(days) => [days.written, days.reply_by, days.publish].map(|day| words.day(day)),
        None => [
            say::letter_today(),
            say::letter_day(u64::from(programme.reply_days)),
            say::letter_day(u64::from(programme.publish_days)),
        ]
        .map(|said| words.say(&said)),
    };
    let what = [
        say::letter_step_letter(),
        say::letter_step_reply(),
        say::letter_step_publish(),
    ];
    when.into_iter()
        .zip(what)
        .map(|(when, what)| Step {
            when,
            what: words.say(&what),
        })
        .collect()
}

fn beside(
    verdict: &ProductVerdict,
    config: &Config,
    number: &str,
    days: Option<NoticeDays>,
) -> Vec<Labelled> {
    let words = &config.words;
    let publish = match days {
        Some(days) => words.day(days.publish),
        None => words.say(&say::letter_publish_after(u64::from(
            config.programme.publish_days,
        ))),
    };
    let assays = words::sentence_case(&words::method::assays(verdict, config));
    let attach = said::attached(config.publishing.attach);
    let email = config.programme.email.clone().unwrap_or_default();
    labelled(
        [
            (say::letter_publish_label(), publish),
            (
                say::letter_sheet_label(),
                words.say(&say::letter_sheet(number)),
            ),
            (say::letter_limit_label(), limit(verdict.rule, config)),
            (say::letter_method_label(), assays),
            (say::letter_lab_label(), sources(verdict, config)),
            (say::letter_reply_label(), email),
            (
                say::letter_enclosed_label(),
                words.say(&say::letter_enclosed(attach, number)),
            ),
        ],
        config,
    )
}

/// Facts with their names; none where a fact is not known.
pub fn labelled(facts: impl IntoIterator<Item = (Said, String)>, config: &Config) -> Vec<Labelled> {
    let known = facts.into_iter().filter(|(_, text)| !text.is_empty());
    known
        .map(|(label, text)| Labelled {
            label: config.words.say(&label),
            text: breakable(&text, 18),
        })
        .collect()
}

fn limit(rule: Rule, config: &Config) -> String {
    config.words.say(&say::letter_limit(
        side(rule.limit),
        config.words.limit(&rule),
        rule.regime.word(),
    ))
}

/// The lab files with where the figures stand in them.
fn sources(verdict: &ProductVerdict, config: &Config) -> String {
    let files = words::source::provenance(verdict, &config.words).into_iter();
    let sources: Vec<String> = files
        .zip(words::source::places(verdict, &config.words))
        .map(|(said, place)| format!("{said} {place}"))
        .collect();
    sources.join(" ")
}
