//! The form that goes to the lab with samples: codes, kinds of food, and what is asked for. No name of a product is on it.

use crate::config::Config;
use crate::model::extraction::AssayKind;
use crate::model::matrix::Matrix;
use crate::model::registers::{Oats, Package, Processing, Product, Registers};
use crate::render::facts::{DocumentFacts, ProgrammeFacts};
use crate::render::words::{breakable, sentence_case};
use crate::render::{Job, numbers};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;
use std::collections::BTreeSet;

/// Everything that the form's template may see.
#[derive(Clone, Debug, Serialize)]
pub struct RequestFacts {
    /// What the PDF says about itself.
    pub document: DocumentFacts,
    /// Who sends.
    pub programme: ProgrammeFacts,
    /// Whom to.
    pub lab: String,
    /// The round of testing; none for all that are open.
    pub round: Option<String>,
    /// Day of sending, where it is known.
    pub date: Option<String>,
    /// The samples, by code.
    pub samples: Vec<SampleRow>,
    /// What is asked for, one line each.
    pub asked: Vec<String>,
    #[serde(skip)]
    day: Option<NaiveDate>,
}

/// One sample.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SampleRow {
    /// The package's code.
    pub code: String,
    /// The kind of food, as a lab needs to know it.
    pub kind: String,
    /// As printed on the package.
    pub net_content: String,
    /// Cocoa, coffee, tea, buckwheat, chestnut and the like hold tannins, which bind gluten.
    pub tannin: bool,
    /// Soy or other legumes.
    pub legume: bool,
    /// Contains oats.
    pub oats: bool,
    /// Fermented or hydrolysed: a sandwich assay reads too low.
    pub fermented: bool,
}

/// The packages that the lab has not reported on, of one round or of all, by code.
pub fn open<'a>(
    registers: &'a Registers,
    reported: &BTreeSet<String>,
    round: Option<&str>,
) -> Vec<&'a Package> {
    let wanted = |package: &&Package| {
        round.is_none_or(|round| package.round == round)
            && !reported.contains(&package.package_code)
    };
    registers.packages.iter().filter(wanted).collect()
}

/// The facts of a form for these packages.
pub fn facts(
    packages: &[&Package],
    registers: &Registers,
    config: &Config,
    round: Option<&str>,
    made_on: Option<NaiveDate>,
) -> RequestFacts {
    let nobody = Product::default();
    let product = |package: &Package| {
        registers
            .products
            .get(&package.product_id)
            .unwrap_or(&nobody)
    };
    let samples: Vec<SampleRow> = packages
        .iter()
        .map(|package| sample(package, product(package)))
        .collect();
    let fermented = samples.iter().any(|sample| sample.fermented);
    RequestFacts {
        document: DocumentFacts::new(
            config,
            match round {
                Some(round) => format!("Samples for gluten testing, round {round}"),
                None => "Samples for gluten testing".to_owned(),
            },
            format!("{} samples for {}", samples.len(), config.lab.name),
            vec![config.programme.short_name.clone()],
        ),
        programme: ProgrammeFacts::new(&config.programme),
        lab: breakable(&config.lab.name, 40),
        round: round.map(|round| breakable(round, 30)),
        date: made_on.map(|day| day.to_string()),
        samples,
        asked: asked(config, fermented),
        day: made_on.or_else(|| {
            packages
                .iter()
                .filter_map(|package| package.sent_on.or(package.bought_on))
                .max()
        }),
    }
}

fn sample(package: &Package, product: &Product) -> SampleRow {
    let food = Matrix::of(product);
    SampleRow {
        code: breakable(&package.package_code, 14),
        kind: breakable(
            product
                .matrix
                .as_deref()
                .or(product.category.as_deref())
                .unwrap_or("not stated"),
            30,
        ),
        net_content: breakable(product.net_content.as_deref().unwrap_or("–"), 12),
        tannin: !food.tannin.is_empty(),
        legume: !food.legume.is_empty(),
        oats: product.oats != Oats::None || !food.oats.is_empty(),
        fermented: product.processing != Processing::None,
    }
}

fn asked(config: &Config, fermented: bool) -> Vec<String> {
    let n = config.testing.extractions_per_package;
    let mut asked = vec![
        format!("{}.", sentence_case(config.lab.assay.trim_end_matches('.'))),
        format!(
            "Grind each whole package; then {n} separate extractions of it, each a test portion of its own. Wells of one extract \
             are not extractions."
        ),
        format!(
            "Report every extraction as gluten in mg/kg, “<” and the quantification limit (at most {}) where it is below, and \
             dilute what is above range.",
            numbers::plain(config.testing.lloq)
        ),
        "Send the results as a table file (CSV or XLSX), a row for each extraction: code, number of the extraction, result, \
         unit, quantification limit, dilution, day of the test, report number."
            .to_owned(),
        "Do not average, round or leave out an extraction, and give no statement of conformity.".to_owned(),
        "If extractions of one sample disagree, extract the same ground sample twice more and report numbers 3 and 4.".to_owned(),
    ];
    if fermented && config.lab.assay_kind == AssayKind::Sandwich {
        asked.insert(
            1,
            "For samples marked fermented or hydrolysed, a competitive assay as well: a sandwich assay reads too low there."
                .to_owned(),
        );
    }
    if let Some(kept) = config.programme.kept() {
        asked.push(kept.replacen("We keep ", "Please keep ", 1));
    }
    asked
}

/// The form as rows of a CSV file, headings first.
pub fn csv_rows(facts: &RequestFacts) -> Vec<Vec<String>> {
    const HEADINGS: [&str; 7] = [
        "package_code",
        "kind_of_food",
        "net_content",
        "tannin",
        "legume",
        "oats",
        "fermented_or_hydrolysed",
    ];
    let word = |flag: bool| if flag { "yes" } else { "no" }.to_owned();
    let plain = |text: &str| text.replace('\u{200b}', "");
    let row = |sample: &SampleRow| {
        vec![
            plain(&sample.code),
            plain(&sample.kind),
            plain(&sample.net_content),
            word(sample.tannin),
            word(sample.legume),
            word(sample.oats),
            word(sample.fermented),
        ]
    };
    std::iter::once(HEADINGS.map(str::to_owned).to_vec())
        .chain(facts.samples.iter().map(row))
        .collect()
}

/// The job of typesetting a form.
///
/// # Errors
/// None that data can cause: facts are text.
pub fn job(facts: &RequestFacts) -> Result<Job> {
    let round = facts
        .round
        .as_deref()
        .map(|round| format!("-{}", round.replace('\u{200b}', "")))
        .unwrap_or_default();
    Ok(Job {
        path: format!("requests/samples{round}.pdf"),
        template: "request.typ",
        ident: format!(
            "request {} {}",
            facts.programme.short_name, facts.document.title
        ),
        date: facts.day.unwrap_or_default(),
        facts: serde_json::to_vec(facts)?,
        files: Vec::new(),
    })
}
