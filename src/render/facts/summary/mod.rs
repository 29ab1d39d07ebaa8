//! What the template of the programme summary may see.

mod captions;
mod front;
mod lists;
mod plots;

pub use captions::Captions;
pub use front::{Bands, Block, Cover};
pub use lists::{LabelLine, LabelRow, Labels, RegisterGroup, RegisterRow};
pub use plots::{Duplicates, GroupingFigures, Groups, Needed, Strip};

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::publication::Audience;
use crate::model::sheet::ProgrammeFacts;
use crate::model::verdict::Verdict;
use crate::render::charts::Chart;
use crate::render::facts::DocumentFacts;
use crate::render::facts::sheet;
use crate::render::listing::{self, Line};
use crate::render::tally;
use crate::render::terms::terms;
use crate::render::words::practice::{self, Passage};
use crate::render::words::summary as texts;
use crate::render::{Job, JobFile, chart_name};
use crate::words::say;
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;
use std::collections::BTreeSet;

/// Everything that the summary prints, charts apart.
#[derive(Clone, Debug, Serialize)]
pub struct SummaryFacts {
    /// The document's own data.
    pub document: DocumentFacts,
    /// The programme.
    pub programme: ProgrammeFacts,
    /// "January to December 2030", as the header has it.
    pub period: String,
    /// That it is not for publication, where it is not.
    pub proof: Option<String>,
    /// Published sheets that do not stand any more.
    pub under_revision: Vec<String>,
    /// Titles, heads and notes that name a limit, a unit or a day.
    pub captions: Captions,
    /// Page one.
    pub cover: Cover,
    /// Everything by band.
    pub bands: Bands,
    /// Every package on the scale.
    pub strip: Strip,
    /// Shares and quarters.
    pub groups: Groups,
    /// Duplicates.
    pub duplicates: Duplicates,
    /// Products over the limit.
    pub over: Vec<Line>,
    /// Products without a verdict.
    pub undecided: Vec<Line>,
    /// Labels.
    pub labels: Labels,
    /// Methods and decision rule.
    pub methods: Vec<Passage>,
    /// All results, by food group.
    pub register: Vec<RegisterGroup>,
    /// The charts' drawings, in the order of their numbers.
    #[serde(skip)]
    pub charts: Vec<Chart>,
    /// The PDF's own date.
    #[serde(skip)]
    pub date: NaiveDate,
}

/// A chart as the template places it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Figure {
    /// The file to read.
    pub file: String,
    /// Its message in words.
    pub alt: String,
}

/// The facts of the summary, with its charts.
///
/// # Errors
/// Where a chart cannot be drawn.
pub fn summary(
    decided: &Decided,
    config: &Config,
    made_on: Option<NaiveDate>,
) -> Result<SummaryFacts> {
    let terms = terms(&decided.products, config);
    let tally = tally::tally(&decided.products);
    let mut charts = Charts::default();
    let (words, days) = (&config.words, decided.statistics.days);
    let title = texts::title(tally.foods, claim(&decided.products).as_deref(), words);
    let subtitle = texts::subtitle(days, words);
    let listed = |wanted: fn(Verdict) -> bool| -> Vec<Line> {
        let of = decided
            .products
            .iter()
            .filter(|product| wanted(product.verdict.verdict));
        of.map(|product| listing::line(product, &terms)).collect()
    };
    Ok(SummaryFacts {
        document: about(config, &title, &subtitle),
        programme: ProgrammeFacts::new(&config.programme),
        period: days.map_or(String::new(), |(first, last)| words.days(first, last)),
        proof: (decided.audience == Audience::Programme).then(|| words.say(&say::summary_proof())),
        under_revision: decided
            .under_revision
            .iter()
            .map(|one| one.said.clone())
            .collect(),
        captions: Captions::new(decided, config, &terms, made_on),
        cover: front::cover(decided, &tally, &terms, config, title, &mut charts)?,
        bands: front::bands_page(decided, &tally, &terms, config, &mut charts)?,
        strip: plots::strip_page(decided, &tally, &terms, config, &mut charts)?,
        groups: plots::groups_page(decided, &terms, config, &mut charts)?,
        duplicates: plots::duplicates_page(decided, &tally, &terms, config, &mut charts)?,
        over: listed(|verdict| verdict == Verdict::OverLimit),
        undecided: listed(|verdict| verdict == Verdict::NoVerdict),
        labels: lists::labels(&decided.products, &terms),
        methods: practice::passages(decided, config, &terms),
        register: lists::register(&decided.products, &terms),
        date: made_on.unwrap_or_else(|| latest_day(decided)),
        charts: charts.0,
    })
}

/// The summary as a job for the typesetter.
///
/// # Errors
/// Where the facts cannot be written as JSON.
pub fn job(facts: &SummaryFacts) -> Result<Job> {
    Ok(Job {
        path: "summary.pdf".to_owned(),
        template: "summary.typ",
        one_page: false,
        ident: format!("{} summary {}", facts.programme.name, facts.period),
        date: facts.date,
        facts: serde_json::to_vec(facts)?,
        files: JobFile::charts(facts.charts.iter().map(|chart| chart.svg.as_str())),
    })
}

/// The charts that were drawn so far: a figure refers to one by its number.
#[derive(Default)]
pub(crate) struct Charts(Vec<Chart>);

impl Charts {
    pub(crate) fn add(&mut self, chart: Chart) -> Figure {
        let figure = Figure {
            file: chart_name(self.0.len() + 1),
            alt: chart.alt.clone(),
        };
        self.0.push(chart);
        figure
    }

    pub(crate) fn all(&mut self, drawn: Vec<Chart>) -> Vec<Figure> {
        drawn.into_iter().map(|chart| self.add(chart)).collect()
    }
}

fn about(config: &Config, title: &str, subtitle: &str) -> DocumentFacts {
    let keywords = [
        say::summary_keyword_gluten(),
        say::summary_keyword_results(),
        say::summary_name(),
    ];
    let of = say::summary_of(&config.programme.name);
    DocumentFacts::new(
        config,
        &["summary"],
        format!("{title}. {subtitle}"),
        config.words.say(&of),
        keywords.map(|said| config.words.say(&said)).to_vec(),
    )
}

/// The one claim that all packages bear, where there is one.
fn claim(products: &[JudgedProduct]) -> Option<String> {
    let claims: BTreeSet<String> = products
        .iter()
        .map(|product| product.verdict.product.claim.trim().to_lowercase())
        .collect();
    let mut claims = claims.into_iter();
    claims
        .next()
        .filter(|claim| claims.next().is_none() && !claim.is_empty())
}

/// The latest day that the data know: a PDF's own date where the run has none.
pub(crate) fn latest_day(decided: &Decided) -> NaiveDate {
    let days = decided
        .products
        .iter()
        .filter_map(|product| sheet::latest_day(&product.verdict));
    // A PDF/A needs a date; where the data know no day at all, 1 January 1970 stands for none.
    days.max().unwrap_or_default()
}
