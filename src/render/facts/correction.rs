//! The letter of correction to a maker: what we said, what we say now, why, and what we do about it.

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::publication::Correction;
use crate::model::sheet::ProgrammeFacts;
use crate::render::Job;
use crate::render::facts::notice::{Labelled, labelled};
use crate::render::facts::sheet::{latest_day, sheet_number};
use crate::render::facts::{DocumentFacts, notice};
use crate::render::words::{self, breakable};
use crate::words::{Said, say, yes_or_no};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;

/// Everything that the letter's template may see.
#[derive(Clone, Debug, Serialize)]
pub struct CorrectionFacts {
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
    /// The letter's parts: a head and its paragraphs.
    pub parts: Vec<Part>,
    /// Facts beside the letter.
    pub beside: Vec<Labelled>,
    #[serde(skip)]
    day: Option<NaiveDate>,
}

/// A part of the letter.
#[derive(Clone, Debug, Serialize)]
pub struct Part {
    /// Its head.
    pub head: String,
    /// Its paragraphs.
    pub said: Vec<String>,
}

/// The facts of the letter. `made_on` dates it where it is a proof.
pub fn facts(
    product: &JudgedProduct,
    correction: Correction,
    config: &Config,
    made_on: Option<NaiveDate>,
) -> CorrectionFacts {
    let (verdict, words) = (&product.verdict, &config.words);
    let number = sheet_number(verdict, config);
    let title = words.say(&say::letter_correction_title(&verdict.product.name));
    let day = correction.issued_on.or(made_on);
    CorrectionFacts {
        document: DocumentFacts::new(
            config,
            &["letters"],
            words.say(&say::letter_correction_document(&title, &number)),
            words.say(&say::letter_correction_about()),
            vec![number.clone()],
        ),
        programme: ProgrammeFacts::new(&config.programme),
        addressee: notice::addressee(verdict, config),
        date: day.map(|day| words.day(day)),
        parts: parts(product, correction, config, &number),
        beside: beside(product, correction, config, &number),
        title: breakable(&title, 22),
        sheet_number: number,
        day: day.or_else(|| latest_day(verdict)),
    }
}

fn parts(
    product: &JudgedProduct,
    correction: Correction,
    config: &Config,
    number: &str,
) -> Vec<Part> {
    let part = |head: Said, said: Vec<String>| Part {
        head: config.words.say(&head),
        said: said.iter().map(|said| breakable(said, 30)).collect(),
    };
    let says = correction.says;
    let says_not = words::notice::says_not(
        says.over_limit,
        says.gluten_source,
        product.verdict.rule,
        config,
    );
    vec![
        part(
            say::letter_said_head(),
            vec![words::correction::said(product, correction, number, config)],
        ),
        part(
            say::letter_says_head(),
            words::correction::says(product, correction, config),
        ),
        part(
            say::letter_why_head(),
            vec![words::correction::why(product, correction, config)],
        ),
        part(
            say::letter_does_head(),
            words::correction::does(correction, config),
        ),
        part(say::letter_says_not_head(), vec![says_not]),
    ]
}

fn beside(
    product: &JudgedProduct,
    correction: Correction,
    config: &Config,
    number: &str,
) -> Vec<Labelled> {
    let words = &config.words;
    let issued_on = correction.issued_on.map(|day| words.day(day));
    let corrected = say::letter_corrected(
        number,
        correction.of_revision.to_string(),
        words.day(correction.of_day),
    );
    let replaced = say::letter_replaced(
        product.publication.revision.to_string(),
        yes_or_no(issued_on.is_some()),
        issued_on.unwrap_or_default(),
    );
    let email = config.programme.email.clone().unwrap_or_default();
    labelled(
        [
            (say::letter_corrected_label(), words.say(&corrected)),
            (say::letter_replaced_label(), words.say(&replaced)),
            (say::letter_reply_label(), email),
        ],
        config,
    )
}

/// The job of typesetting the letter; it stands where a notice would.
///
/// # Errors
/// None that data can cause: facts are text.
pub fn job(product: &JudgedProduct, facts: &CorrectionFacts) -> Result<Job> {
    Ok(Job {
        path: format!("notices/{}.pdf", product.verdict.stem()),
        template: "correction.typ",
        one_page: false,
        ident: format!("correction {}", facts.sheet_number),
        date: facts.day.unwrap_or_default(),
        facts: serde_json::to_vec(facts)?,
        files: Vec::new(),
    })
}
