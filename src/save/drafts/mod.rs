//! Who gets what: a draft to each maker that is to be told, with notice and sheet, and one to the lab with our questions.
//!
//! The words stand in report-templates/ (`mail-maker.txt`, `mail-correction.txt`, `mail-lab.txt`,
//! `mail.html`); a file of the same name in the
//! programme folder replaces one.

use crate::config::{Config, Programme};
use crate::files;
use crate::model::decided::JudgedProduct;
use crate::model::document::Document;
use crate::model::label::{LabelFinding, TermClass};
use crate::model::package::Standing;
use crate::model::rule::{Regime, Rule};
use crate::save::mail::{self, Enclosed, Letter, Mailbox, Recipient};
use anyhow::{Context, Result, anyhow};
use chrono::NaiveDate;
use minijinja::{Environment, UndefinedBehavior, context};

/// The words of all mails, checked.
pub struct Wording(Environment<'static>);

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
        Ok(Wording(environment))
    }

    /// The text and the same as a page.
    fn fill(
        &self,
        template: &str,
        subject: &str,
        facts: minijinja::Value,
    ) -> Result<(String, String)> {
        let render = |name: &str, facts: minijinja::Value| {
            let template = self.0.get_template(name).expect("every template was added");
            template.render(facts).map_err(|error| fault(&error))
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
        let html = render(PAGE.0, context! { subject, paragraphs })?;
        Ok((text, html))
    }
}

/// The draft to a product's maker: `drafts/<product>--<round>.eml`.
///
/// `made_on` is the day of the run, where one is given; without it the mail bears the day of the last test and asks for
/// an answer within days of its receipt.
///
/// # Errors
/// Where a template of the programme's own cannot be filled.
pub fn to_maker(
    judged: &JudgedProduct,
    config: &Config,
    made_on: Option<NaiveDate>,
    wording: &Wording,
    enclosed: Vec<Enclosed<'_>>,
) -> Result<Document> {
    let verdict = &judged.verdict;
    let product = &verdict.product;
    let programme = &config.programme;
    let sheet_number = programme.sheet_number(&product.product_id, &verdict.round);
    let days = programme.notice_days(&verdict.followups, made_on);
    let reply_by = days.map(|days| in_words(days.reply_by));
    let subject = subject(judged, &sheet_number, reply_by.as_deref());
    let one_line = |text: &Option<String>| text.as_deref().map(mail::one_line);
    let facts = context! {
        maker => one_line(&product.maker),
        brand => one_line(&product.brand),
        name => mail::one_line(&product.name),
        claim => mail::one_line(&product.claim),
        sheet_number,
        packages => verdict.packages.len(),
        over => verdict.packages.iter().filter(|package| package.standing == Standing::Over).count(),
        over_words => over_words(verdict.rule),
        terms => terms(judged),
        reply_by,
        reply_days => config.programme.reply_days,
        publish_on => days.map(|days| in_words(days.publish)),
        kept => one_line(&config.programme.kept()),
        regulator => config.programme.regulator.as_deref().map(without_article),
        ..signature(&config.programme)
    };
    let (text, html) = wording.fill(MAKER.0, &subject, facts)?;
    let letter = Letter {
        stem: verdict.stem(),
        from: sender(&config.programme),
        to: maker(judged),
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
    let subject = mail::one_line(&format!(
        "Correction of our sheet {sheet_number} on {}",
        product.name
    ));
    let one_line = |text: &Option<String>| text.as_deref().map(mail::one_line);
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
        ..signature(programme)
    };
    let (text, html) = wording.fill(CORRECTION.0, &subject, facts)?;
    let letter = Letter {
        stem: verdict.stem(),
        from: sender(programme),
        to: maker(judged),
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
}

/// The draft to a lab: `drafts/<stem>.eml`. No register holds a lab's address, so that the draft has a gap for it.
///
/// # Errors
/// Where a template of the programme's own cannot be filled.
pub fn to_lab(
    stem: &str,
    lab: &str,
    questions: &[Question],
    config: &Config,
    date: Option<NaiveDate>,
    wording: &Wording,
    enclosed: Vec<Enclosed<'_>>,
) -> Result<Document> {
    let lab = mail::one_line(lab);
    let codes: Vec<&str> = questions
        .iter()
        .map(|question| question.package.as_str())
        .take(3)
        .collect();
    let more = if questions.len() > 3 { " …" } else { "" };
    let subject = format!("Questions about your results: {}{more}", codes.join(", "));
    let questions: Vec<minijinja::Value> = questions
        .iter()
        .map(|question| context! { package => question.package.as_str(), asked => question.asked.as_str() })
        .collect();
    let facts = context! { lab => lab.as_str(), questions, ..signature(&config.programme) };
    let (text, html) = wording.fill(LAB.0, &subject, facts)?;
    let letter = Letter {
        stem: stem.to_owned(),
        from: sender(&config.programme),
        to: Recipient::Missing {
            gap: "Address of the lab goes here",
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

fn subject(judged: &JudgedProduct, sheet_number: &str, reply_by: Option<&str>) -> String {
    let product = &judged.verdict.product;
    let brand = product
        .brand
        .as_deref()
        .map(|brand| format!(" ({brand})"))
        .unwrap_or_default();
    let over = judged
        .verdict
        .packages
        .iter()
        .any(|package| package.standing == Standing::Over);
    let about = match (
        over,
        judged.verdict.label.finding == LabelFinding::GlutenSource,
    ) {
        (true, true) => "Test results and the label of",
        (false, true) => "The label of",
        _ => "Test results for",
    };
    let reply = reply_by
        .map(|day| format!(", please reply by {day}"))
        .unwrap_or_default();
    mail::one_line(&format!(
        "{about} {}{brand}, sheet {sheet_number}{reply}",
        product.name
    ))
}

fn maker(judged: &JudgedProduct) -> Recipient {
    let product = &judged.verdict.product;
    let name = product.maker.clone();
    match product.maker_email.as_deref() {
        None => Recipient::Missing {
            gap: "Address of the maker goes here",
        },
        Some(cell) => match mail::addresses(cell) {
            Some(addresses) => Recipient::Known { name, addresses },
            None => Recipient::Missing {
                gap: "Address of the maker goes here: the register has none that can be used",
            },
        },
    }
}

fn sender(programme: &Programme) -> Mailbox {
    let known = programme.email.as_deref().and_then(mail::addresses);
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

/// The terms that make the label finding, each with its grain: "barley malt (barley)".
fn terms(judged: &JudgedProduct) -> Vec<String> {
    let label = &judged.verdict.label;
    if label.finding != LabelFinding::GlutenSource {
        return Vec::new();
    }
    let always = label
        .terms
        .iter()
        .filter(|term| term.class == TermClass::Always);
    always
        .map(|term| mail::one_line(&format!("“{}” ({})", term.printed, term.grain)))
        .collect()
}

/// "at or above 20 ppm", "above 20 mg/kg": as each regime writes its rule.
fn over_words(rule: Rule) -> String {
    let word = if rule.limit.passes {
        "above"
    } else {
        "at or above"
    };
    let unit = match rule.regime {
        Regime::Us | Regime::Canada | Regime::Custom => "ppm",
        _ => "mg/kg",
    };
    format!("{word} {} {unit}", rule.limit.ppm.0)
}

/// A regulator's name as it follows “the”.
fn without_article(name: &str) -> String {
    let name = mail::one_line(name);
    let bare = name
        .strip_prefix("the ")
        .or_else(|| name.strip_prefix("The "));
    bare.unwrap_or(&name).to_owned()
}

fn in_words(day: NaiveDate) -> String {
    day.format("%-d %B %Y").to_string()
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
    let name = error.name().unwrap_or("a mail template");
    let line = error
        .line()
        .map(|line| format!(", line {line}"))
        .unwrap_or_default();
    anyhow!("report-templates/{name}{line}: {error}")
}

#[cfg(test)]
mod tests;
