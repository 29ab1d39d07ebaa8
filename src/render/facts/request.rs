//! The form that goes to the lab with samples: codes, kinds of food, and what is asked for. No name of a product is on it.

use crate::config::{Config, Retained};
use crate::files::sha256_of;
use crate::model::extraction::AssayKind;
use crate::model::matrix::Matrix;
use crate::model::ppm::Ppm;
use crate::model::registers::{Oats, Package, Processing, Product, Registers};
use crate::model::sheet::ProgrammeFacts;
use crate::render::facts::DocumentFacts;
use crate::render::words::{breakable, sentence_case};
use crate::render::{Job, numbers};
use crate::words::{Catalogue, Said, say, yes_or_no};
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
    /// Whom to, and that no name is on the form.
    pub to: String,
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

/// The packages that a form is for, in an order drawn from their codes: those that the lab has not reported on; of a round that is reported whole all
/// of it, so that its form can be printed again. Without a round those that were not sent yet go before all that are open.
pub fn open<'a>(
    registers: &'a Registers,
    reported: &BTreeSet<String>,
    round: Option<&str>,
) -> Vec<&'a Package> {
    let of = |wanted: &dyn Fn(&Package) -> bool| -> Vec<&'a Package> {
        let packages = registers.packages.iter();
        packages.filter(|package| wanted(package)).collect()
    };
    let is_open = |package: &Package| !reported.contains(&package.package_code);
    let was_sent = |package: &Package| package.sent_on.is_some() || package.sent_on_unreadable;
    let (first, else_) = match round {
        Some(round) => (
            of(&|package| package.round == round && is_open(package)),
            of(&|package| package.round == round),
        ),
        None => (
            of(&|package| is_open(package) && !was_sent(package)),
            of(&is_open),
        ),
    };
    let mut open = if first.is_empty() { else_ } else { first };
    // In an order that says nothing: neither of products nor of when they were bought.
    open.sort_by_cached_key(|package| sha256_of(package.package_code.as_bytes()));
    open
}

/// A package of known content that goes along.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BlindSample {
    /// Its code.
    pub code: String,
    /// The food that it looks like, where the key says so.
    pub food: Option<String>,
}

/// The row of a package of known content: nothing in it is unlike the others. Where the key names no food, it is given the
/// kind of one of them.
fn blind(blind: &BlindSample, others: &[SampleRow], words: &Catalogue) -> SampleRow {
    let lot = sha256_of(blind.code.as_bytes());
    let at = usize::from_str_radix(&lot[..7], 16).unwrap_or_default();
    let other = others.get(at % others.len().max(1));
    let package = Package {
        package_code: blind.code.clone(),
        ..Package::default()
    };
    let product = Product {
        matrix: blind.food.clone(),
        ..Product::default()
    };
    match (other, &blind.food) {
        (Some(other), None) => SampleRow {
            code: breakable(&blind.code, 14),
            ..other.clone()
        },
        (Some(other), Some(_)) => SampleRow {
            net_content: other.net_content.clone(),
            ..sample(&package, &product, words)
        },
        (None, _) => sample(&package, &product, words),
    }
}

impl RequestFacts {
    /// With packages of known content in among the others.
    pub fn with_blinds(mut self, blinds: &[BlindSample], config: &Config) -> RequestFacts {
        let rows: Vec<SampleRow> = blinds
            .iter()
            .map(|one| blind(one, &self.samples, &config.words))
            .collect();
        self.samples.extend(rows);
        self.samples
            .sort_by_cached_key(|sample| sha256_of(plain_text(&sample.code).as_bytes()));
        self
    }

    /// The codes in the order of the form.
    pub fn codes(&self) -> Vec<String> {
        let samples = self.samples.iter();
        samples.map(|sample| plain_text(&sample.code)).collect()
    }
}

/// A text without the places where a line may break in it.
fn plain_text(text: &str) -> String {
    text.replace('\u{200b}', "")
}

/// The facts of a form for these packages.
pub fn facts(
    packages: &[&Package],
    registers: &Registers,
    config: &Config,
    round: Option<&str>,
    made_on: Option<NaiveDate>,
) -> RequestFacts {
    let (words, nobody) = (&config.words, Product::default());
    let of = |package: &&Package| {
        let product = registers.products.get(&package.product_id);
        sample(package, product.unwrap_or(&nobody), words)
    };
    let samples: Vec<SampleRow> = packages.iter().map(of).collect();
    let fermented = samples.iter().any(|sample| sample.fermented);
    RequestFacts {
        document: DocumentFacts::new(
            config,
            &["lab"],
            words.say(&say::request_document(
                round.unwrap_or_default(),
                yes_or_no(round.is_some()),
            )),
            words.say(&say::request_about(samples.len() as u64, &config.lab.name)),
            vec![config.programme.short_name.clone()],
        ),
        programme: ProgrammeFacts::new(&config.programme),
        to: words.say(&say::request_to(breakable(&config.lab.name, 40))),
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

fn sample(package: &Package, product: &Product, words: &Catalogue) -> SampleRow {
    let unknown = words.say(&say::request_kind_unknown());
    let kind = product.matrix.as_deref().or(product.category.as_deref());
    let food = Matrix::of(product);
    SampleRow {
        code: breakable(&package.package_code, 14),
        kind: breakable(kind.unwrap_or(&unknown), 30),
        net_content: breakable(product.net_content.as_deref().unwrap_or("–"), 12),
        tannin: !food.tannin.is_empty(),
        legume: !food.legume.is_empty(),
        oats: product.oats != Oats::None || !food.oats.is_empty(),
        fermented: product.processing != Processing::None,
    }
}

fn asked(config: &Config, fermented: bool) -> Vec<String> {
    let words = &config.words;
    let lloq = words.quantity(&numbers::plain(config.testing.lloq), "mg/kg");
    let competitive = fermented && config.lab.assay_kind == AssayKind::Sandwich;
    let assay = sentence_case(config.lab.assay.trim_end_matches('.'));
    let said = competitive.then(say::request_competitive).into_iter();
    let said = said.chain([
        say::request_grind(config.testing.extractions_per_package as u64),
        say::request_report(lloq),
        say::request_table(),
        say::request_as_measured(),
        pair_rule(config),
        say::request_state(),
    ]);
    std::iter::once(format!("{assay}."))
        .chain(said.map(|said| words.say(&said)))
        .chain(keep(config))
        .collect()
}

/// What is to be kept, as the settings have it.
fn keep(config: &Config) -> Option<String> {
    Some(match config.programme.retains()? {
        Retained::Sentence(sentence) => sentence,
        Retained::Thing(kept) => config.words.say(&say::request_keep(kept)),
    })
}

/// When extractions disagree, as it will be decided, and what is asked for then.
fn pair_rule(config: &Config) -> Said {
    let (words, locale) = (&config.words, config.words.locale());
    let q = config.testing.lloq;
    let r = config.testing.relative_repeatability;
    // The factor of two extractions: they are what a repeat is asked of.
    let allowed = |mean: f64| 2.8 * (q.0 / 10.0).hypot(r * mean);
    let limit = config.rule.limit;
    let at_limit = Ppm(allowed(limit.ppm.0));
    say::request_pair_rule(
        locale.figure(&numbers::plain(q)),
        words.quantity(&numbers::percent(r), "%"),
        locale.figure(&numbers::figure(at_limit, limit)),
        locale.figure(&numbers::plain(limit.ppm)),
    )
}

/// The form as rows of a CSV file, headings first.
pub fn csv_rows(facts: &RequestFacts) -> Vec<Vec<String>> {
    const HEADINGS: &str =
        "package_code,kind_of_food,net_content,tannin,legume,oats,fermented_or_hydrolysed";
    let row = |sample: &SampleRow| {
        let texts = [&sample.code, &sample.kind, &sample.net_content];
        let flags = [sample.tannin, sample.legume, sample.oats, sample.fermented];
        let flags = flags.map(|flag| yes_or_no(flag).to_owned());
        let texts = texts.map(|text| plain_text(text));
        texts.into_iter().chain(flags).collect()
    };
    let headings = HEADINGS.split(',').map(str::to_owned).collect();
    std::iter::once(headings)
        .chain(facts.samples.iter().map(row))
        .collect()
}

/// The job of typesetting a form.
///
/// # Errors
/// None that data can cause: facts are text.
pub fn job(facts: &RequestFacts) -> Result<Job> {
    let round = facts.round.as_deref();
    let round = round.map(|round| format!("-{}", plain_text(round)));
    let round = round.unwrap_or_default();
    Ok(Job {
        path: format!("requests/samples{round}.pdf"),
        template: "request.typ",
        one_page: false,
        ident: format!(
            "request {} {}",
            facts.programme.short_name, facts.document.title
        ),
        date: facts.day.unwrap_or_default(),
        facts: serde_json::to_vec(facts)?,
        files: Vec::new(),
    })
}
