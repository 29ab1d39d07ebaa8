//! Who gets what: a draft to each maker that is to be told, with notice and sheet, and one to the lab with our questions.
//!
//! How a mail is put together stands in report-templates/ (`mail-maker.txt`, `mail-correction.txt`, `mail-lab.txt`,
//! `mail.html`), its sentences in the catalogue; a file of the same name in the programme folder replaces one.

mod newsletter;

use crate::config::{Config, Programme};
use crate::files;
use crate::model::address::addresses;
use crate::model::decided::JudgedProduct;
use crate::model::document::{Document, Filled};
use crate::model::package::Standing;
use crate::save::mail::{self, Enclosed, Letter, Mailbox, Recipient};
use crate::words::letters::{self, is_over, names_source};
use crate::words::{Said, say, side, yes_or_no};
use anyhow::{Context, Result, anyhow};
use chrono::NaiveDate;
use minijinja::{Environment, ErrorKind, UndefinedBehavior, context};
pub use newsletter::newsletter;
use std::error::Error as _;

/// The templates of all mails, checked.
pub struct Wording {
    templates: Environment<'static>,
    /// Of the page that a mail is.
    lang: &'static str,
}

const MAKER: (&str, &str) = (
    "mail-maker.txt",
    include_str!("../../../report-templates/mail-maker.txt"),
);
const CORRECTION: (&str, &str) = (
    "mail-correction.txt",
    include_str!("../../../report-templates/mail-correction.txt"),
);
const LAB: (&str, &str) = (
    "mail-lab.txt",
    include_str!("../../../report-templates/mail-lab.txt"),
);
const PAGE: (&str, &str) = (
    "mail.html",
    include_str!("../../../report-templates/mail.html"),
);

/// Codes that the subject of a mail to a lab names.
const NAMED_AT_MOST: usize = 3;

/// Steps that the template of one mail may take: ours takes some thousand.
const FUEL: u64 = 1_000_000;

impl Wording {
    /// The programme's own words where it has some, else ours.
    ///
    /// # Errors
    /// Where a template is not well formed: file, line and what is wrong.
    pub fn read(config: &Config) -> Result<Wording> {
        let mut environment = Environment::new();
        environment.set_undefined_behavior(UndefinedBehavior::Strict);
        environment.set_fuel(Some(FUEL));
        for (name, ours) in [MAKER, CORRECTION, LAB, PAGE] {
            let path = config.root.join("report-templates").join(name);
            let text = match files::read_unlinked(&path)? {
                Some(bytes) => String::from_utf8(bytes)
                    .with_context(|| format!("{} is not UTF-8 text", path.display()))?,
                None => ours.to_owned(),
            };
            environment
                .add_template_owned(name, text)
                .map_err(|error| fault(&error))?;
        }
        Ok(Wording {
            templates: environment,
            lang: config.programme.language.tag(),
        })
    }

    /// The text and the same as a page.
    fn fill(
        &self,
        template: &str,
        subject: &str,
        facts: minijinja::Value,
    ) -> Result<(String, String)> {
        let render = |name: &str, facts: minijinja::Value| {
            let template = self
                .templates
                .get_template(name)
                .expect("every template was added");
            let mut filled = Filled::default();
            match template.render_captured_to(facts, &mut filled) {
                Ok(_) => Ok(filled.text()),
                Err(error) => Err(fault_in(&error, name)),
            }
        };
        let text = tidy(&render(template, facts)?);
        let paragraphs: Vec<Vec<String>> = text
            .split("\n\n")
            .map(|paragraph| {
                paragraph
                    .trim_end()
                    .split('\n')
                    .map(str::to_owned)
                    .collect()
            })
            .collect();
        let html = render(PAGE.0, context! { subject, paragraphs, lang => self.lang })?;
        Ok((text, html))
    }
}

/// The draft to a product's maker: `drafts/<product>--<round>.eml`.
///
/// `made_on` is the day of the run, where one is given; without it the mail bears the day of the last test and asks for
/// an answer within days of its receipt. `over_packages`: each package over the limit, a line each, in the figures of the
/// letter.
///
/// # Errors
/// Where a template of the programme's own cannot be filled.
pub fn to_maker(
    judged: &JudgedProduct,
    config: &Config,
    made_on: Option<NaiveDate>,
    over_packages: &[String],
    wording: &Wording,
    enclosed: Vec<Enclosed<'_>>,
) -> Result<Document> {
    let verdict = &judged.verdict;
    let product = &verdict.product;
    let programme = &config.programme;
    let sheet_number = programme.sheet_number(&product.product_id, &verdict.round);
    let words = &config.words;
    let days = programme.notice_days(&verdict.followups, made_on);
    let reply_by = days.map(|days| words.day(days.reply_by));
    let publish_on = days.map(|days| words.day(days.publish));
    let subject = subject(judged, &sheet_number, reply_by.as_deref(), config);
    let one_line = |text: &Option<String>| text.as_deref().map(mail::one_line);
    let line = |said: Said| mail::one_line(&words.say(&said));
    let lines =
        |all: &[String]| -> Vec<String> { all.iter().map(|one| mail::one_line(one)).collect() };
    let brand = product.brand.as_deref();
    let regulator = programme.regulator.as_deref().map(without_article);
    let over = verdict
        .packages
        .iter()
        .filter(|package| package.standing == Standing::Over);
    let terms = letters::terms(verdict, words);
    let label = say::mail_label(yes_or_no(is_over(verdict)), words.list(&terms));
    let reply = say::mail_reply(
        yes_or_no(days.is_some()),
        reply_by.clone().unwrap_or_default(),
        u64::from(programme.reply_days),
        publish_on.clone().unwrap_or_default(),
    );
    let facts = context! {
        maker => one_line(&product.maker),
        brand => one_line(&product.brand),
        name => mail::one_line(&product.name),
        claim => mail::one_line(&product.claim),
        sheet_number => sheet_number.as_str(),
        packages => verdict.packages.len(),
        over => over.count(),
        over_words => line(say::side_over(side(verdict.rule.limit), words.limit(&verdict.rule))),
        terms => lines(&terms),
        reply_by,
        reply_days => programme.reply_days,
        publish_on,
        kept => one_line(&config.kept()),
        regulator => regulator.as_deref(),
        greeting => greeting(judged, config),
        who => line(say::mail_who(
            &programme.name,
            &product.claim,
            &product.name,
            brand.unwrap_or_default(),
            yes_or_no(brand.is_some()),
            &sheet_number,
        )),
        bought => line(letters::bought(verdict)),
        found => line(letters::found(verdict, words)),
        over_packages => lines(over_packages),
        label => line(label),
        reply => line(reply),
        says_not => line(say::mail_says_not(
            regulator.as_deref().unwrap_or_default(),
            yes_or_no(regulator.is_some()),
        )),
        words => words.fixed(&["letters"]),
        ..signature(programme)
    };
    let (text, html) = wording.fill(MAKER.0, &subject, facts)?;
    let letter = Letter {
        stem: verdict.stem(),
        from: sender(&config.programme),
        to: maker(judged, config),
        subject,
        date: made_on.or_else(|| verdict.day()).unwrap_or_default(),
        text,
        html,
        enclosed,
    };
    Ok(Document {
        path: format!("drafts/{}.eml", verdict.stem()),
        bytes: mail::draft(&letter),
    })
}

/// What a correction says, a paragraph or more each.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Corrected {
    /// What we said.
    pub said: String,
    /// What we say now.
    pub says: Vec<String>,
    /// Why.
    pub why: String,
    /// What we do about it.
    pub does: Vec<String>,
    /// Day of the letter, where it is known.
    pub on: Option<NaiveDate>,
}

/// The draft of a correction to a product's maker: `drafts/<product>--<round>.eml`.
///
/// # Errors
/// Where a template of the programme's own cannot be filled.
pub fn correction(
    judged: &JudgedProduct,
    config: &Config,
    corrected: &Corrected,
    wording: &Wording,
    enclosed: Vec<Enclosed<'_>>,
) -> Result<Document> {
    let verdict = &judged.verdict;
    let product = &verdict.product;
    let programme = &config.programme;
    let sheet_number = programme.sheet_number(&product.product_id, &verdict.round);
    let words = &config.words;
    let subject =
        mail::one_line(&words.say(&say::mail_correction_subject(&product.name, &sheet_number)));
    let one_line = |text: &Option<String>| text.as_deref().map(mail::one_line);
    let brand = product.brand.as_deref();
    let who = words.say(&say::mail_correction_who(
        &programme.name,
        &product.name,
        brand.unwrap_or_default(),
        yes_or_no(brand.is_some()),
        &sheet_number,
    ));
    let plain = |text: &String| mail::one_line(&text.replace('\u{200b}', ""));
    let facts = context! {
        maker => one_line(&product.maker),
        brand => one_line(&product.brand),
        name => mail::one_line(&product.name),
        sheet_number,
        said => plain(&corrected.said),
        says => corrected.says.iter().map(plain).collect::<Vec<_>>(),
        why => plain(&corrected.why),
        does => corrected.does.iter().map(plain).collect::<Vec<_>>(),
        greeting => greeting(judged, config),
        who => mail::one_line(&who),
        words => words.fixed(&["letters"]),
        ..signature(programme)
    };
    let (text, html) = wording.fill(CORRECTION.0, &subject, facts)?;
    let letter = Letter {
        stem: verdict.stem(),
        from: sender(programme),
        to: maker(judged, config),
        subject,
        date: corrected.on.or_else(|| verdict.day()).unwrap_or_default(),
        text,
        html,
        enclosed,
    };
    Ok(Document {
        path: format!("drafts/{}.eml", verdict.stem()),
        bytes: mail::draft(&letter),
    })
}

/// One question to the lab.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// The package that it is about.
    pub package: String,
    /// What we ask, one sentence or more.
    pub asked: String,
    /// Whether the lab has reported anything of it.
    pub reported: bool,
}

/// A query, as far as its mail needs it.
#[derive(Clone, Copy, Debug)]
pub struct Query<'a> {
    /// Of its file.
    pub stem: &'a str,
    /// By which an answer can cite it.
    pub number: &'a str,
    /// Whom to.
    pub lab: &'a str,
    /// Where the settings know it.
    pub email: Option<&'a str>,
    /// One a package.
    pub questions: &'a [Question],
}

/// The draft to a lab: `drafts/<stem>.eml`. Where its address is not known the draft has a gap for it.
///
/// # Errors
/// Where a template of the programme's own cannot be filled.
pub fn to_lab(
    query: &Query<'_>,
    config: &Config,
    date: Option<NaiveDate>,
    wording: &Wording,
    enclosed: Vec<Enclosed<'_>>,
) -> Result<Document> {
    let words = &config.words;
    let Query {
        stem,
        number,
        email,
        questions,
        ..
    } = *query;
    let lab = mail::one_line(query.lab);
    let named = questions.iter().take(NAMED_AT_MOST);
    let mut codes = named
        .map(|question| question.package.as_str())
        .collect::<Vec<_>>()
        .join(", ");
    if questions.len() > NAMED_AT_MOST {
        codes.push_str(" …");
    }
    let subject = mail::one_line(&words.say(&say::lab_mail_subject(codes, number)));
    let reported = questions.iter().any(|question| question.reported);
    let opening = say::lab_mail_opening(questions.len() as u64, yes_or_no(reported));
    let questions: Vec<minijinja::Value> = questions
        .iter()
        .map(|question| {
            let (package, asked) = (question.package.as_str(), question.asked.as_str());
            let said = words.say(&say::lab_mail_question(package, asked));
            context! { package, asked, said }
        })
        .collect();
    let facts = context! {
        lab => lab.as_str(),
        questions,
        greeting => words.say(&say::lab_mail_dear(lab.as_str(), yes_or_no(!lab.is_empty()))),
        opening => words.say(&opening),
        words => words.fixed(&["lab"]),
        ..signature(&config.programme)
    };
    let (text, html) = wording.fill(LAB.0, &subject, facts)?;
    let letter = Letter {
        stem: stem.to_owned(),
        from: sender(&config.programme),
        to: match email {
            Some(email) => Recipient::Known {
                name: Some(lab),
                addresses: vec![email.to_owned()],
            },
            None => Recipient::Missing {
                gap: words.say(&say::lab_mail_no_address()),
            },
        },
        subject,
        date: date.unwrap_or_default(),
        text,
        html,
        enclosed,
    };
    Ok(Document {
        path: format!("drafts/{stem}.eml"),
        bytes: mail::draft(&letter),
    })
}

fn subject(
    judged: &JudgedProduct,
    sheet_number: &str,
    reply_by: Option<&str>,
    config: &Config,
) -> String {
    let product = &judged.verdict.product;
    let about = match (is_over(&judged.verdict), names_source(&judged.verdict)) {
        (true, true) => "both",
        (false, true) => "label",
        _ => "results",
    };
    let brand = product.brand.as_deref();
    mail::one_line(&config.words.say(&say::mail_subject(
        about,
        &product.name,
        brand.unwrap_or_default(),
        yes_or_no(brand.is_some()),
        sheet_number,
        yes_or_no(reply_by.is_some()),
        reply_by.unwrap_or_default(),
    )))
}

fn greeting(judged: &JudgedProduct, config: &Config) -> String {
    let maker = judged.verdict.product.maker.as_deref();
    mail::one_line(&config.words.say(&say::mail_dear(
        maker.unwrap_or_default(),
        yes_or_no(maker.is_some()),
    )))
}

fn maker(judged: &JudgedProduct, config: &Config) -> Recipient {
    let product = &judged.verdict.product;
    let name = product.maker.clone();
    let cell = product.maker_email.as_deref();
    match cell.and_then(addresses) {
        Some(addresses) => Recipient::Known { name, addresses },
        None => Recipient::Missing {
            gap: config
                .words
                .say(&say::mail_no_maker(yes_or_no(cell.is_some()))),
        },
    }
}

fn sender(programme: &Programme) -> Mailbox {
    let known = programme.email.as_deref().and_then(addresses);
    // RFC 5322 wants a sender; the mail program puts the user's own in its place. `.invalid` is nobody's.
    let address = known
        .and_then(|addresses| addresses.into_iter().next())
        .unwrap_or_else(|| "no-address@programme.invalid".to_owned());
    Mailbox {
        name: programme.name.clone(),
        address,
    }
}

fn signature(programme: &Programme) -> minijinja::Value {
    context! {
        programme => mail::one_line(&programme.name),
        director => programme.director.as_deref().map(mail::one_line),
        email => programme.email.as_deref().map(mail::one_line),
    }
}

/// A regulator's name as it follows “the”.
fn without_article(name: &str) -> String {
    let name = mail::one_line(name);
    let bare = name
        .strip_prefix("the ")
        .or_else(|| name.strip_prefix("The "));
    bare.unwrap_or(&name).to_owned()
}

/// No line ends with a space, no more than one blank line stands together, one line feed stands at the end.
fn tidy(text: &str) -> String {
    let lines: Vec<&str> = text.lines().map(str::trim_end).collect();
    let mut tidy = lines.join("\n");
    while tidy.contains("\n\n\n") {
        tidy = tidy.replace("\n\n\n", "\n\n");
    }
    format!("{}\n", tidy.trim())
}

/// A fault of a template, with its file and line.
fn fault(error: &minijinja::Error) -> anyhow::Error {
    fault_in(error, "a mail template")
}

/// The same, where the fault may not know its file.
fn fault_in(error: &minijinja::Error, name: &str) -> anyhow::Error {
    let name = error.name().unwrap_or(name);
    let line = error
        .line()
        .map(|line| format!(", line {line}"))
        .unwrap_or_default();
    match (error.kind(), error.source()) {
        (ErrorKind::WriteFailure, Some(why)) => anyhow!("report-templates/{name}{line}: {why}"),
        _ => anyhow!("report-templates/{name}{line}: {error}"),
    }
}

#[cfg(test)]
mod tests;
