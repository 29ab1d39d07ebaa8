//! The letter of correction to a maker: what we said, what we say now, why, and what we do about it.

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::publication::Correction;
use crate::render::facts::notice::Labelled;
use crate::render::facts::sheet::{latest_day, sheet_number};
use crate::render::facts::{DocumentFacts, ProgrammeFacts, notice};
use crate::render::words::{self, breakable};
use crate::render::{Job, numbers};
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
    pub head: &'static str,
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
    let verdict = &product.verdict;
    let number = sheet_number(verdict, config);
    let title = format!(
        "Correction of what we published on your {}",
        verdict.product.name
    );
    let day = correction.issued_on.or(made_on);
    let part = |head, said: Vec<String>| Part {
        head,
        said: said.iter().map(|said| breakable(said, 30)).collect(),
    };
    CorrectionFacts {
        document: DocumentFacts::new(
            config,
            &["letters"],
            format!("{title}. Sheet {number}"),
            "Letter of correction to the maker".to_owned(),
            vec![number.clone()],
        ),
        programme: ProgrammeFacts::new(&config.programme),
        addressee: notice::addressee(verdict),
        date: day.map(numbers::date),
        parts: vec![
            part(
                "What we said",
                vec![words::correction::said(product, correction, &number)],
            ),
            part(
                "What we say now",
                words::correction::says(product, correction, config),
            ),
            part("Why", vec![words::correction::why(product, correction)]),
            part(
                "What we do about it",
                words::correction::does(correction, config),
            ),
            part(
                "What this letter does not say",
                vec![words::notice::says_not(verdict.rule)],
            ),
        ],
        beside: beside(product, correction, config, &number),
        title: breakable(&title, 22),
        sheet_number: number,
        day: day.or_else(|| latest_day(verdict)),
    }
}

fn beside(
    product: &JudgedProduct,
    correction: Correction,
    config: &Config,
    number: &str,
) -> Vec<Labelled> {
    let state = match correction.issued_on {
        Some(day) => format!("issued {}", numbers::date(day)),
        None => "draft enclosed".to_owned(),
    };
    let facts = [
        (
            "Corrected",
            format!(
                "Sheet {number}, revision {} of {}",
                correction.of_revision,
                numbers::date(correction.of_day)
            ),
        ),
        (
            "Replaced by",
            format!("Revision {}, {state}", product.publication.revision),
        ),
        (
            "Reply to",
            config.programme.email.clone().unwrap_or_default(),
        ),
    ];
    let facts = facts.into_iter().filter(|(_, text)| !text.is_empty());
    facts
        .map(|(label, text)| Labelled {
            label,
            text: breakable(&text, 18),
        })
        .collect()
}

/// The job of typesetting the letter; it stands where a notice would.
///
/// # Errors
/// None that data can cause: facts are text.
pub fn job(product: &JudgedProduct, facts: &CorrectionFacts) -> Result<Job> {
    Ok(Job {
        path: format!("notices/{}.pdf", product.verdict.stem()),
        template: "correction.typ",
        ident: format!("correction {}", facts.sheet_number),
        date: facts.day.unwrap_or_default(),
        facts: serde_json::to_vec(facts)?,
        files: Vec::new(),
    })
}
