//! The plan of a round: what to buy and why, what it costs, what it can show.

use crate::config::Config;
use crate::model::planning::{GridCell, PlannedProduct, RoundPlan, Variant};
use crate::model::ppm::Ppm;
use crate::model::registers::Product;
use crate::model::sheet::ProgrammeFacts;
use crate::render::charts::{Chart, chances};
use crate::render::facts::DocumentFacts;
use crate::render::numbers::plain;
use crate::render::words::breakable;
use crate::render::words::plan as said;
use crate::render::{Job, JobFile, chart_name};
use crate::words::{Catalogue, Said, say, side};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;

/// Everything that the plan's template may see.
#[derive(Clone, Debug, Serialize)]
pub struct PlanFacts {
    /// What the PDF says about itself.
    pub document: DocumentFacts,
    /// Who plans.
    pub programme: ProgrammeFacts,
    /// The first line.
    pub title: String,
    /// The round.
    pub round: String,
    /// What the round is.
    pub lede: String,
    /// The products to buy.
    pub products: Vec<ProductRow>,
    /// What the budget leaves for later.
    pub later: Vec<ReasonRow>,
    /// Write, do not test.
    pub write: Vec<ReasonRow>,
    /// Not to be bought now.
    pub left_out: Vec<ReasonRow>,
    /// What blinds are, where there are some.
    pub blinds: Option<String>,
    /// Heads of the variants; the plan itself first.
    pub variants: Vec<String>,
    /// What is told of each: a label and a cell a variant.
    pub comparison: Vec<LabelledRow>,
    /// Heads of the grid: numbers of packages.
    pub grid_heads: Vec<String>,
    /// By extractions: the chance of "over" at twice the limit, then of "within" at half of it.
    pub grid: Vec<GridBlock>,
    /// Packages that a statement needs.
    pub statements: Vec<StatementRow>,
    /// Where the next money is best spent.
    pub next: String,
    /// What the figures rest on.
    pub assumptions: Vec<String>,
    /// The charts.
    pub charts: Vec<ChartFacts>,
}

/// A product to buy.
#[derive(Clone, Debug, Serialize)]
pub struct ProductRow {
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Brand and content.
    pub detail: String,
    /// Why it is worth testing.
    pub why: String,
    /// What a package is expected to cost.
    pub price: String,
    /// What its packages should not be.
    pub lots: String,
    /// A code a package.
    pub codes: Vec<String>,
}

/// A product and a reason.
#[derive(Clone, Debug, Serialize)]
pub struct ReasonRow {
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The reason.
    pub why: String,
}

/// A label and its cells.
#[derive(Clone, Debug, Serialize)]
pub struct LabelledRow {
    /// What the cells are.
    pub label: String,
    /// A cell a column.
    pub cells: Vec<String>,
}

/// A part of the grid of designs.
#[derive(Clone, Debug, Serialize)]
pub struct GridBlock {
    /// What its chances are of.
    pub head: String,
    /// A row a number of extractions.
    pub rows: Vec<LabelledRow>,
}

/// A statement and what it needs.
#[derive(Clone, Debug, Serialize)]
pub struct StatementRow {
    /// The statement.
    pub statement: String,
    /// Packages.
    pub packages: String,
    /// What they cost.
    pub cost: String,
}

/// A chart on the page.
#[derive(Clone, Debug, Serialize)]
pub struct ChartFacts {
    /// The name by which the template reads it.
    pub read: String,
    /// What it says, for who cannot see it.
    pub alt: String,
    /// Its head.
    pub caption: String,
    /// Width on the page.
    pub width_mm: f64,
    /// Height on the page.
    pub height_mm: f64,
}

/// A plan's facts and drawings.
///
/// # Errors
/// Where a chart cannot be drawn.
pub fn job(plan: &RoundPlan, config: &Config, made_on: Option<NaiveDate>) -> Result<Job> {
    let charts = charts(plan, config)?;
    let captions = [say::plan_finding(), say::plan_verdicts()];
    let read = charts
        .iter()
        .zip(captions)
        .enumerate()
        .map(|(index, (chart, caption))| ChartFacts {
            read: chart_name(index + 1),
            alt: chart.alt.clone(),
            caption: config.words.say(&caption),
            width_mm: chart.width_mm,
            height_mm: chart.height_mm,
        })
        .collect();
    let facts = facts(plan, config, read);
    Ok(Job {
        path: "plan/plan.pdf".to_owned(),
        template: "plan.typ",
        one_page: false,
        ident: format!("plan {} {}", config.programme.short_name, plan.round),
        date: made_on.unwrap_or_default(),
        facts: serde_json::to_vec(&facts)?,
        files: JobFile::charts(charts.into_iter().map(|chart| chart.svg)),
    })
}

fn facts(plan: &RoundPlan, config: &Config, charts: Vec<ChartFacts>) -> PlanFacts {
    let words = &config.words;
    let currency = config.planning.currency.as_deref();
    let reason = |product: &Product, why: String| ReasonRow {
        id: breakable(&product.product_id, 12),
        name: breakable(&product.name, 30),
        why,
    };
    PlanFacts {
        document: DocumentFacts::new(
            config,
            &["plan"],
            words.say(&say::plan_title(&plan.round)),
            words.say(&say::plan_about(plan.chosen.len() as u64)),
            vec![config.programme.short_name.clone()],
        ),
        programme: ProgrammeFacts::new(&config.programme),
        title: words.say(&say::plan_title(breakable(&plan.round, 30))),
        round: breakable(&plan.round, 30),
        lede: said::lede(plan, config, words),
        products: plan
            .chosen
            .iter()
            .map(|planned| product(planned, plan.packages, currency, words))
            .collect(),
        later: plan
            .later
            .iter()
            .map(|later| reason(&later.product, said::why(later, words)))
            .collect(),
        write: plan
            .decided_by_label
            .iter()
            .map(|label| reason(&label.product, said::label_names(&label.terms, words)))
            .collect(),
        left_out: plan
            .left_out
            .iter()
            .map(|left| reason(&left.product, said::why_not(&left.why, words)))
            .collect(),
        blinds: (!plan.blinds.is_empty())
            .then(|| words.say(&say::plan_blinds(plan.blinds.len() as u64))),
        variants: plan
            .variants
            .iter()
            .map(|variant| said::design(variant, words))
            .collect(),
        comparison: comparison(plan, currency, words),
        grid_heads: grid_heads(plan),
        grid: grid(plan, config),
        statements: plan
            .shows
            .statements
            .iter()
            .map(|statement| StatementRow {
                statement: words.say(&say::plan_statement(said::share(statement.share, words))),
                packages: statement.packages.to_string(),
                cost: sum(statement.cost, currency, words),
            })
            .collect(),
        next: said::next_money(&plan.shows.next, plan, currency, words),
        assumptions: said::assumptions(&plan.shows, config),
        charts,
    }
}

/// A sum of money, or a dash where it is not known.
fn sum(of: Option<f64>, currency: Option<&str>, words: &Catalogue) -> String {
    of.map_or("–".to_owned(), |sum| said::money(sum, currency, words))
}

fn product(
    planned: &PlannedProduct,
    packages: usize,
    currency: Option<&str>,
    words: &Catalogue,
) -> ProductRow {
    let product = &planned.candidate.product;
    // A figure and its unit stay on one line.
    let content = product.net_content.as_ref();
    let content = content.map(|text| text.replace(' ', "\u{a0}"));
    let detail = [product.brand.clone(), content].into_iter().flatten();
    let detail: Vec<String> = detail.collect();
    ProductRow {
        id: breakable(&product.product_id, 12),
        name: breakable(&product.name, 30),
        detail: breakable(&detail.join(", "), 30),
        why: said::why(&planned.candidate, words),
        price: said::price(planned.price.as_ref(), currency, words),
        lots: breakable(&said::lots(&planned.candidate, packages, words), 40),
        codes: planned.codes.clone(),
    }
}

fn comparison(plan: &RoundPlan, currency: Option<&str>, words: &Catalogue) -> Vec<LabelledRow> {
    let row = |label: Said, cell: &dyn Fn(&Variant) -> String| LabelledRow {
        label: words.say(&label),
        cells: plan.variants.iter().map(cell).collect(),
    };
    let sum = |of| sum(of, currency, words);
    let share = |of| said::share(of, words);
    let mut rows = vec![
        row(say::plan_row_packages(), &|variant| {
            sum(variant.costs.packages)
        }),
        row(say::plan_row_lab(), &|variant| sum(variant.costs.lab)),
        row(say::plan_row_shipping(), &|variant| {
            sum(variant.costs.shipping)
        }),
        row(say::plan_row_total(), &|variant| sum(variant.costs.total)),
    ];
    if plan.budget.is_some() {
        let all = (plan.chosen.len() + plan.later.len()).to_string();
        rows.push(row(say::plan_row_budget(), &|variant| {
            let carried = variant.products_in_budget.unwrap_or_default();
            words.say(&say::plan_of(carried.to_string(), &all))
        }));
    }
    rows.extend([
        row(say::plan_row_tenth(), &|variant| {
            share(variant.finds_a_tenth)
        }),
        row(say::plan_row_double(), &|variant| {
            share(variant.at_double.over)
        }),
        row(say::plan_row_half(), &|variant| {
            share(variant.at_half.within)
        }),
        row(say::plan_row_error(), &|variant| {
            share(variant.standard_error)
        }),
    ]);
    rows
}

fn grid_heads(plan: &RoundPlan) -> Vec<String> {
    let mut by_extractions = plan.shows.grid.chunk_by(of_one_row);
    let first = by_extractions.next().unwrap_or_default();
    first.iter().map(|cell| cell.packages.to_string()).collect()
}

fn grid(plan: &RoundPlan, config: &Config) -> Vec<GridBlock> {
    let (words, rule) = (&config.words, config.rule);
    let mean = |factor: f64| {
        let level = Ppm(rule.limit.ppm.0 * factor);
        words.quantity(&plain(level), rule.regime.unit())
    };
    let side = side(rule.limit);
    let block = |head: Said, of: &dyn Fn(&GridCell) -> f64| GridBlock {
        head: words.say(&head),
        rows: grid_rows(plan, of, words),
    };
    vec![
        block(say::plan_grid_over(side, mean(2.0)), &|cell| {
            cell.over_at_double
        }),
        block(say::plan_grid_within(side, mean(0.5)), &|cell| {
            cell.within_at_half
        }),
    ]
}

/// Whether two neighbours of the grid stand in one row: it is ordered by extractions.
fn of_one_row(a: &GridCell, b: &GridCell) -> bool {
    a.extractions == b.extractions
}

/// A row a number of extractions, a cell a number of packages.
fn grid_rows(
    plan: &RoundPlan,
    of: &dyn Fn(&GridCell) -> f64,
    words: &Catalogue,
) -> Vec<LabelledRow> {
    let rows = plan.shows.grid.chunk_by(of_one_row);
    rows.map(|row| LabelledRow {
        label: words.say(&say::plan_extractions(row[0].extractions as u64)),
        cells: row
            .iter()
            .map(|cell| said::share(of(cell), words))
            .collect(),
    })
    .collect()
}

fn charts(plan: &RoundPlan, config: &Config) -> Result<Vec<Chart>> {
    let (words, rule) = (&config.words, config.rule);
    let side = side(rule.limit);
    let finding = chances::finding(
        &plan.shows.finds,
        plan.packages,
        &chances::FindingWords {
            up: words.say(&say::plan_finding_up()),
            along: words.say(&say::plan_finding_along()),
            alt: said::finding_alt(plan, words),
        },
        &config.words,
    )?;
    let verdicts = chances::verdicts(
        &plan.shows.curve,
        rule.limit.ppm.0,
        &chances::VerdictWords {
            up: words.say(&say::plan_verdicts_up()),
            along: words.say(&say::plan_verdicts_along(rule.regime.unit())),
            limit: words.say(&say::plan_chart_limit(side, words.limit(&rule))),
            over: words.say(&say::plan_over(side)),
            within: words.say(&say::plan_within(side)),
            undecided: words.say(&say::plan_undecided()),
            alt: said::verdicts_alt(plan, config),
        },
    )?;
    Ok(vec![finding, verdicts])
}
