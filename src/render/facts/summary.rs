//! What the template of the programme summary may see.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::label::LabelFinding;
use crate::model::package::Standing;
use crate::model::statistics::{GroupedBy, Grouping};
use crate::model::verdict::Verdict;
use crate::render::charts::Chart;
use crate::render::charts::agreement::agreement;
use crate::render::charts::bands::{BandRow, bands};
use crate::render::charts::key::key;
use crate::render::charts::quarters::quarters;
use crate::render::charts::range::range;
use crate::render::charts::shares::shares;
use crate::render::charts::squares::squares;
use crate::render::charts::strip::{rows, strip};
use crate::render::facts::listing::{self, Cell, LabelLine, Line};
use crate::render::facts::tally::{self, Tally};
use crate::render::facts::terms::{Terms, terms};
use crate::render::facts::{DocumentFacts, ProgrammeFacts};
use crate::render::numbers;
use crate::render::words::methods::{Passage, methods};
use crate::render::words::{breakable, counted, sentence_case, summary as words};
use crate::render::{Job, JobFile, chart_name};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};

/// Quarters in one chart, groups in one chart: a page of them.
const ROWS_A_CHART: usize = 24;

/// Everything that the summary prints, charts apart.
#[derive(Clone, Debug, Serialize)]
pub struct SummaryFacts {
    /// The document's own data.
    pub document: DocumentFacts,
    /// The programme.
    pub programme: ProgrammeFacts,
    /// "January to December 2030", as the header has it.
    pub period: String,
    /// Day of making, where the run was given one.
    pub made_on: Option<String>,
    /// The words of the limit.
    pub terms: Terms,
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

/// Page one.
#[derive(Clone, Debug, Serialize)]
pub struct Cover {
    /// The title.
    pub title: String,
    /// What this is, and of which time.
    pub subtitle: String,
    /// The three verdicts.
    pub blocks: Vec<Block>,
    /// A square for each product.
    pub squares: Option<Figure>,
    /// What the squares mean.
    pub squares_note: String,
    /// How it was done, in a few words.
    pub how: String,
}

/// One of the three verdicts on the cover.
#[derive(Clone, Debug, Serialize)]
pub struct Block {
    /// "over", "within" or "none".
    pub state: &'static str,
    /// "Below 20 ppm".
    pub words: String,
    /// "83 of 96 products".
    pub count: String,
    /// "83 products".
    pub head: String,
    /// What that means.
    pub text: String,
}

/// Everything by band.
#[derive(Clone, Debug, Serialize)]
pub struct Bands {
    /// The lede.
    pub lede: String,
    /// Heads of the columns.
    pub heads: Vec<String>,
    /// The counts.
    pub rows: Vec<BandRow>,
    /// The bars.
    pub chart: Figure,
    /// The inks of the bars.
    pub note: String,
    /// What the numbers say.
    pub says: String,
    /// What they do not say.
    pub does_not_say: String,
    /// The marks of the plots.
    pub key: Figure,
    /// Words and their meanings.
    pub glossary: Vec<[String; 2]>,
}

/// Every package on the scale.
#[derive(Clone, Debug, Serialize)]
pub struct Strip {
    /// The lede.
    pub lede: String,
    /// The plot, a page of food groups each.
    pub charts: Vec<Figure>,
    /// What the marks mean.
    pub note: String,
    /// Products whose packages fall on both sides.
    pub uneven: String,
}

/// Shares and quarters.
#[derive(Clone, Debug, Serialize)]
pub struct Groups {
    /// The lede.
    pub lede: String,
    /// A head and its charts for each way of grouping.
    pub groupings: Vec<GroupingFigures>,
    /// Products by quarter.
    pub quarters: Vec<Figure>,
    /// What the quarters say taken together.
    pub trend: String,
    /// How many packages would say more.
    pub needed: Vec<String>,
}

/// One way of grouping products.
#[derive(Clone, Debug, Serialize)]
pub struct GroupingFigures {
    /// The head.
    pub head: &'static str,
    /// The charts.
    pub charts: Vec<Figure>,
}

/// Duplicates.
#[derive(Clone, Debug, Serialize)]
pub struct Duplicates {
    /// The lede.
    pub lede: String,
    /// How many pairs the charts show.
    pub pairs: usize,
    /// Difference against mean.
    pub agreement: Option<Figure>,
    /// The control chart.
    pub range: Option<Figure>,
    /// What the control chart shows.
    pub range_note: String,
    /// Pairs beyond the control line or in disagreement: package, mean, range, allowed, what became of it.
    pub flagged: Vec<[String; 5]>,
    /// Repeatability: of which pairs, and how large.
    pub repeatability: Vec<[String; 2]>,
    /// Early against late.
    pub drift: Vec<String>,
}

/// Labels.
#[derive(Clone, Debug, Serialize)]
pub struct Labels {
    /// Findings and how many products have each.
    pub rows: Vec<LabelRow>,
    /// Products with something to ask about.
    pub lines: Vec<LabelLine>,
}

/// One finding.
#[derive(Clone, Debug, Serialize)]
pub struct LabelRow {
    /// In words.
    pub finding: &'static str,
    /// As printed on one package.
    pub example: Option<String>,
    /// Products.
    pub products: u64,
    /// Of these over the limit.
    pub over: u64,
}

/// A food group of the register.
#[derive(Clone, Debug, Serialize)]
pub struct RegisterGroup {
    /// Its name.
    pub name: String,
    /// Its products.
    pub rows: Vec<RegisterRow>,
}

/// A product in the register, its packages three to a line.
#[derive(Clone, Debug, Serialize)]
pub struct RegisterRow {
    /// Number.
    pub number: String,
    /// Brand.
    pub brand: Option<String>,
    /// Name.
    pub name: String,
    /// "over", "within" or "none".
    pub state: &'static str,
    /// The verdict's word.
    pub verdict: String,
    /// Whether a test was repeated.
    pub repeated: bool,
    /// Results, three to a line.
    pub results: Vec<Vec<Cell>>,
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
    let title = words::title(tally.products(), claim(&decided.products).as_deref());
    let subtitle = words::subtitle(decided.statistics.days);
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
        period: decided
            .statistics
            .days
            .map_or(String::new(), |(first, last)| numbers::dates(first, last)),
        made_on: made_on.map(numbers::date),
        cover: cover(&tally, &terms, config, title, subtitle, &mut charts)?,
        bands: bands_page(decided, &tally, &terms, config, &mut charts)?,
        strip: strip_page(decided, &tally, &terms, &mut charts)?,
        groups: groups_page(decided, &terms, &mut charts)?,
        duplicates: duplicates_page(decided, &tally, &terms, config, &mut charts)?,
        over: listed(|verdict| verdict == Verdict::OverLimit),
        undecided: listed(|verdict| verdict == Verdict::NoVerdict),
        labels: labels(&decided.products, &terms),
        methods: methods(&decided.products, config, &terms),
        register: register(&decided.products, &terms),
        date: made_on.unwrap_or_else(|| latest_day(decided)),
        charts: charts.0,
        terms,
    })
}

/// The summary as a job for the typesetter.
///
/// # Errors
/// Where the facts cannot be written as JSON.
pub fn job(facts: &SummaryFacts) -> Result<Job> {
    let numbered = facts.charts.iter().enumerate();
    Ok(Job {
        path: "summary.pdf".to_owned(),
        template: "summary.typ",
        ident: format!("{} summary {}", facts.programme.name, facts.period),
        date: facts.date,
        facts: serde_json::to_vec(facts)?,
        files: numbered
            .map(|(number, chart)| JobFile::chart(number + 1, chart.svg.clone()))
            .collect(),
    })
}

/// The charts that were drawn so far: a figure refers to one by its number.
#[derive(Default)]
struct Charts(Vec<Chart>);

impl Charts {
    fn add(&mut self, chart: Chart) -> Figure {
        let figure = Figure {
            file: chart_name(self.0.len() + 1),
            alt: chart.alt.clone(),
        };
        self.0.push(chart);
        figure
    }
}

fn about(config: &Config, title: &str, subtitle: &str) -> DocumentFacts {
    DocumentFacts::new(
        config,
        format!("{title}. {subtitle}"),
        format!("Programme summary of {}.", config.programme.name),
        ["gluten", "test results", "programme summary"]
            .map(str::to_owned)
            .to_vec(),
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

/// The latest day that the data know: of a test, a purchase, a letter, an issue.
fn latest_day(decided: &Decided) -> NaiveDate {
    let of = |product: &JudgedProduct| {
        let followups = product.verdict.followups.iter().map(|followup| followup.on);
        let issued = product
            .verdict
            .issued
            .iter()
            .map(|revision| revision.issued_on);
        product
            .verdict
            .day()
            .into_iter()
            .chain(followups)
            .chain(issued)
            .max()
    };
    // A PDF/A needs a date; where the data know no day at all, the first that its format can tell stands for none.
    decided
        .products
        .iter()
        .filter_map(of)
        .max()
        .unwrap_or_default()
}

fn cover(
    tally: &Tally,
    terms: &Terms,
    config: &Config,
    title: String,
    subtitle: String,
    charts: &mut Charts,
) -> Result<Cover> {
    let block = |state, words: &str, n: u64, text: String| Block {
        state,
        words: words.to_owned(),
        count: format!(
            "{n} of {}",
            counted(tally.products() as usize, "product", "products")
        ),
        head: sentence_case(&words::number_of(n, "product")),
        text,
    };
    let blocks = vec![
        block(
            "within",
            &terms.within,
            tally.within,
            words::within_text(tally, terms),
        ),
        block(
            "over",
            &terms.over,
            tally.over,
            words::over_text(tally, terms),
        ),
        block(
            "none",
            "No verdict",
            tally.none,
            words::none_text(tally, terms),
        ),
    ];
    Ok(Cover {
        title,
        subtitle,
        blocks: if tally.products() == 0 {
            Vec::new()
        } else {
            blocks
        },
        squares: squares(tally, terms)?.map(|chart| charts.add(chart)),
        squares_note: words::squares_note(tally, terms),
        how: format!(
            "{} packages of each product, bought in shops. {} extractions of each package, measured on their own. Every figure can be followed back to the lab’s file.",
            sentence_case(&words::number(config.testing.packages_per_product as u64)),
            sentence_case(&words::number(
                config.testing.extractions_per_package as u64
            )),
        ),
    })
}

fn bands_page(
    decided: &Decided,
    tally: &Tally,
    terms: &Terms,
    config: &Config,
    charts: &mut Charts,
) -> Result<Bands> {
    let rows = tally::bands(decided, tally);
    let over = terms.over.to_lowercase();
    Ok(Bands {
        lede: words::bands_lede(tally, terms),
        heads: vec![
            terms.below.clone(),
            terms.measured.clone(),
            over.clone(),
            "undecided".to_owned(),
            "in all".to_owned(),
        ],
        chart: charts.add(bands(&rows, terms)?),
        rows: rows.to_vec(),
        note: format!(
            "White: {}. Grey: {}. Black: {over}. Dashed: no result, or one that does not decide. A product counts once for each round of testing: by its highest package, or as undecided where it has no verdict.",
            terms.below, terms.measured
        ),
        says: words::says(tally, decided.statistics.over_limit.as_ref(), terms),
        does_not_say: words::does_not_say(config.testing.packages_per_product, terms),
        key: charts.add(key(terms)?),
        glossary: glossary(terms),
    })
}

fn glossary(terms: &Terms) -> Vec<[String; 2]> {
    let unit_meaning = if terms.unit == "ppm" {
        "Parts per million: milligrams of gluten in a kilogram of food."
    } else {
        "Milligrams of gluten in a kilogram of food, the same as parts per million (ppm)."
    };
    [
        (terms.unit.to_owned(), unit_meaning.to_owned()),
        (sentence_case(&terms.below), "Too little to put a number on. It does not mean zero.".to_owned()),
        ("Extraction".to_owned(), "One portion of a package, ground, extracted and measured on its own.".to_owned()),
        (terms.over.clone(), format!("The verdict for a product when at least one package tests {}.", terms.over_the_limit)),
        (terms.within.clone(), format!("The verdict for a product when every package tests {}.", terms.within_the_limit)),
        (
            "No verdict".to_owned(),
            format!(
                "No package tests {}, but at least one has no sound result, packages are missing, or no test decides for this food.",
                terms.over_the_limit
            ),
        ),
    ]
    .map(|(word, meaning)| [word, meaning])
    .to_vec()
}

fn strip_page(
    decided: &Decided,
    tally: &Tally,
    terms: &Terms,
    charts: &mut Charts,
) -> Result<Strip> {
    let names = listing::categories(&decided.products);
    let rows = rows(&decided.products, &names, listing::category);
    let over = |row: &&crate::render::charts::strip::StripRow| {
        row.packages
            .iter()
            .any(|package| package.standing == Standing::Over)
    };
    let groups_over = rows.iter().filter(over).count();
    let figures = strip(&rows, terms)?
        .into_iter()
        .map(|chart| charts.add(chart))
        .collect();
    let mixed = |product: &&JudgedProduct| {
        let has = |standings: &[Standing]| {
            product
                .verdict
                .packages
                .iter()
                .any(|package| standings.contains(&package.standing))
        };
        has(&[Standing::Over]) && has(&[Standing::Within, Standing::BelowQuantification])
    };
    let mixed = decided.products.iter().filter(mixed).count() as u64;
    Ok(Strip {
        lede: words::strip_lede(tally, names.len(), groups_over, terms),
        charts: figures,
        note: format!(
            "Arrows at the left: {}, with their number in front. Arrow on the scale: below that figure. Open circle: {}. Filled: {}. Dashed, at the right: the results do not decide. Circles are moved up or down only so that they do not touch. A column of equal steps, with the highest number on top, takes the place of circles that would.",
            terms.below,
            terms.measured,
            terms.over.to_lowercase()
        ),
        uneven: match (tally.over, mixed) {
            (0, _) | (_, 0) => String::new(),
            (over, mixed) => format!(
                "In {} of the {} {}, some packages were {} and some were not. That is why more than one package is bought, and why one package alone cannot clear a product.",
                words::number(mixed),
                counted(over as usize, "product", "products"),
                terms.over_the_limit,
                terms.within_the_limit
            ),
        },
    })
}

fn groups_page(decided: &Decided, terms: &Terms, charts: &mut Charts) -> Result<Groups> {
    let statistics = &decided.statistics;
    let mut groupings = Vec::new();
    for grouping in statistics
        .groups
        .iter()
        .filter(|grouping| !grouping.groups.is_empty())
    {
        groupings.push(grouping_figures(grouping, decided, terms, charts)?);
    }
    let mut quarter_figures = Vec::new();
    for (number, part) in statistics.quarters.chunks(ROWS_A_CHART).enumerate() {
        quarter_figures.push(charts.add(quarters(part, terms, number + 1)?));
    }
    let needed = statistics.packages_needed.iter().map(|needed| {
        format!(
            "To show with 95 % confidence that fewer than {} % of a product’s packages are {}, {} would have to be tested and none of them be so.",
            numbers::percent(needed.share),
            terms.over_the_limit,
            counted(needed.packages as usize, "package", "packages")
        )
    });
    Ok(Groups {
        lede: words::groups_lede(&statistics.contrasts),
        groupings,
        quarters: quarter_figures,
        trend: words::trend(statistics.trend.as_ref(), &statistics.quarters),
        needed: needed.collect(),
    })
}

fn grouping_figures(
    grouping: &Grouping,
    decided: &Decided,
    terms: &Terms,
    charts: &mut Charts,
) -> Result<GroupingFigures> {
    let (head, column, stem) = match grouping.by {
        GroupedBy::Category => ("Share by food group", "Food group", "shares-food-group"),
        GroupedBy::Certification => (
            "Share by certification",
            "Certification",
            "shares-certification",
        ),
        GroupedBy::Oats => ("Share by oats", "Oats", "shares-oats"),
    };
    let parts: Vec<_> = grouping.groups.chunks(ROWS_A_CHART).collect();
    let mut figures = Vec::new();
    for (number, part) in parts.iter().enumerate() {
        let all = decided
            .statistics
            .over_limit
            .as_ref()
            .filter(|_| number + 1 == parts.len());
        let name = if number == 0 {
            stem.to_owned()
        } else {
            format!("{stem}-{}", number + 1)
        };
        figures.push(charts.add(shares(&name, column, part, all, terms)?));
    }
    Ok(GroupingFigures {
        head,
        charts: figures,
    })
}

fn duplicates_page(
    decided: &Decided,
    tally: &Tally,
    terms: &Terms,
    config: &Config,
    charts: &mut Charts,
) -> Result<Duplicates> {
    let statistics = &decided.statistics;
    let tested: BTreeMap<&str, NaiveDate> = decided
        .products
        .iter()
        .flat_map(|product| &product.verdict.packages)
        .filter_map(|package| {
            let day = package
                .pair
                .usable()
                .filter_map(|extraction| extraction.tested_on)
                .max()?;
            Some((package.pair.package.package_code.as_str(), day))
        })
        .collect();
    let chart = statistics.range_chart.as_ref();
    let agreement = match chart {
        Some(chart) => agreement(chart, &config.testing, terms)?,
        None => None,
    };
    let range = match chart {
        Some(chart) => range(chart, &tested)?,
        None => None,
    };
    let percent = |x: f64| format!("{:.0}{}%", x, numbers::NBSP);
    let flagged = chart
        .iter()
        .flat_map(|chart| &chart.points)
        .filter(|point| point.beyond || !point.agrees);
    Ok(Duplicates {
        lede: words::duplicates_lede(tally),
        pairs: chart.map_or(0, |chart| chart.points.len()),
        agreement: agreement.map(|chart| charts.add(chart)),
        range: range.map(|chart| charts.add(chart)),
        range_note: chart.map_or(String::new(), words::range_note),
        flagged: flagged
            .map(|point| {
                [
                    breakable(&point.package_code, 14),
                    numbers::figure(point.mean, terms.rule),
                    percent(point.signed_percent.abs()),
                    percent(point.allowed_percent),
                    if point.agrees {
                        "within what is allowed"
                    } else {
                        "disagrees"
                    }
                    .to_owned(),
                ]
            })
            .collect(),
        repeatability: statistics
            .repeatability
            .iter()
            .map(|found| [sentence_case(&found.of), words::repeatability(found)])
            .collect(),
        drift: statistics.drift.iter().map(words::drift).collect(),
    })
}

fn labels(products: &[JudgedProduct], terms: &Terms) -> Labels {
    const ORDER: [LabelFinding; 5] = [
        LabelFinding::GlutenSource,
        LabelFinding::UnverifiedOats,
        LabelFinding::NeedsReview,
        LabelFinding::None,
        LabelFinding::NoIngredients,
    ];
    let over = |found: &[&JudgedProduct]| {
        found
            .iter()
            .filter(|product| product.verdict.verdict == Verdict::OverLimit)
            .count() as u64
    };
    let mut rows: Vec<LabelRow> = ORDER
        .iter()
        .map(|finding| {
            let found: Vec<&JudgedProduct> = products
                .iter()
                .filter(|product| product.verdict.label.finding == *finding)
                .collect();
            let example = found
                .iter()
                .find_map(|product| product.verdict.label.terms.first());
            LabelRow {
                finding: listing::finding(*finding),
                example: example
                    .filter(|_| *finding != LabelFinding::None)
                    .map(|term| term.printed.clone()),
                products: found.len() as u64,
                over: over(&found),
            }
        })
        .collect();
    let warned: Vec<&JudgedProduct> = products
        .iter()
        .filter(|product| !product.verdict.label.precautionary.is_empty())
        .collect();
    rows.push(LabelRow {
        finding: "Beside any of these: a precautionary statement",
        example: warned
            .first()
            .and_then(|product| product.verdict.label.precautionary.first().cloned()),
        products: warned.len() as u64,
        over: over(&warned),
    });
    let asked = |product: &&JudgedProduct| {
        !matches!(
            product.verdict.label.finding,
            LabelFinding::None | LabelFinding::NoIngredients
        )
    };
    let lines = products.iter().filter(asked).map(|product| LabelLine {
        line: listing::line(product, terms),
        finding: listing::finding(product.verdict.label.finding),
        terms: product
            .verdict
            .label
            .terms
            .iter()
            .map(|term| term.printed.clone())
            .collect(),
    });
    Labels {
        rows,
        lines: lines.collect(),
    }
}

fn register(products: &[JudgedProduct], terms: &Terms) -> Vec<RegisterGroup> {
    let row = |product: &&JudgedProduct| {
        let line = listing::line(product, terms);
        RegisterRow {
            number: line.number,
            brand: line.brand,
            name: line.name,
            state: line.state,
            verdict: line.verdict,
            repeated: line.repeated,
            results: line.results.chunks(3).map(<[Cell]>::to_vec).collect(),
        }
    };
    listing::by_category(products)
        .into_iter()
        .map(|(name, members)| RegisterGroup {
            name,
            rows: members.iter().map(row).collect(),
        })
        .collect()
}
