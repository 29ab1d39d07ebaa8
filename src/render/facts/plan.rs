//! The plan of a round: what to buy and why, what it costs, what it can show.

use crate::config::Config;
use crate::model::planning::{PlannedProduct, RoundPlan, Variant};
use crate::model::registers::Product;
use crate::render::charts::{Chart, chances};
use crate::render::facts::{DocumentFacts, ProgrammeFacts};
use crate::render::numbers::{NBSP, money, plain};
use crate::render::words::limit::LimitWords;
use crate::render::words::plan as words;
use crate::render::words::{breakable, counted, listed, sentence_case};
use crate::render::{Job, JobFile, chart_name};
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
    let captions = [
        "The chance of finding at least one package over, if this share of all packages is",
        "The chance of each verdict, if this is the product’s true mean",
    ];
    let read = charts
        .iter()
        .zip(captions)
        .enumerate()
        .map(|(index, (chart, caption))| ChartFacts {
            read: chart_name(index + 1),
            alt: chart.alt.clone(),
            caption: caption.to_owned(),
            width_mm: chart.width_mm,
            height_mm: chart.height_mm,
        })
        .collect();
    let facts = facts(plan, config, read);
    Ok(Job {
        path: "plan/plan.pdf".to_owned(),
        template: "plan.typ",
        ident: format!("plan {} {}", config.programme.short_name, plan.round),
        date: made_on.unwrap_or_default(),
        facts: serde_json::to_vec(&facts)?,
        files: JobFile::charts(charts.into_iter().map(|chart| chart.svg)),
    })
}

fn facts(plan: &RoundPlan, config: &Config, charts: Vec<ChartFacts>) -> PlanFacts {
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
            format!("Plan of round {}", plan.round),
            format!(
                "{} to test, what they cost and what they can show",
                counted(plan.chosen.len(), "product", "products")
            ),
            vec![config.programme.short_name.clone()],
        ),
        programme: ProgrammeFacts::new(&config.programme),
        round: breakable(&plan.round, 30),
        lede: words::lede(plan, config),
        products: plan
            .chosen
            .iter()
            .map(|planned| product(planned, plan.packages, currency))
            .collect(),
        later: plan
            .later
            .iter()
            .map(|later| reason(&later.product, sentence_case(&words::why(later))))
            .collect(),
        write: plan
            .decided_by_label
            .iter()
            .map(|label| {
                let terms: Vec<String> =
                    label.terms.iter().map(|term| format!("“{term}”")).collect();
                reason(
                    &label.product,
                    format!("The label names {}.", listed(&terms)),
                )
            })
            .collect(),
        left_out: plan
            .left_out
            .iter()
            .map(|left| reason(&left.product, words::why_not(&left.why)))
            .collect(),
        blinds: words::blinds(&plan.blinds),
        variants: plan.variants.iter().map(words::design).collect(),
        comparison: comparison(plan, currency),
        grid_heads: grid_heads(plan),
        grid: grid(plan, config),
        statements: plan
            .shows
            .statements
            .iter()
            .map(|statement| StatementRow {
                statement: format!(
                    "Fewer than {} of all packages are over",
                    words::share(statement.share)
                ),
                packages: statement.packages.to_string(),
                cost: statement
                    .cost
                    .map_or("–".to_owned(), |cost| money(cost, currency)),
            })
            .collect(),
        next: words::next_money(&plan.shows.next, plan, currency),
        assumptions: words::assumptions(&plan.shows, config),
        charts,
    }
}

fn product(planned: &PlannedProduct, packages: usize, currency: Option<&str>) -> ProductRow {
    let product = &planned.candidate.product;
    // A figure and its unit stay on one line.
    let content = product.net_content.as_ref();
    let content = content.map(|text| text.replace(' ', "\u{a0}"));
    let detail: Vec<String> = [product.brand.clone(), content]
        .into_iter()
        .flatten()
        .collect();
    ProductRow {
        id: breakable(&product.product_id, 12),
        name: breakable(&product.name, 30),
        detail: breakable(&detail.join(", "), 30),
        why: sentence_case(&words::why(&planned.candidate)),
        price: words::price(planned.price.as_ref(), currency),
        lots: breakable(&words::lots(&planned.candidate, packages), 40),
        codes: planned.codes.clone(),
    }
}

fn comparison(plan: &RoundPlan, currency: Option<&str>) -> Vec<LabelledRow> {
    let row = |label: &str, cell: &dyn Fn(&Variant) -> String| LabelledRow {
        label: label.to_owned(),
        cells: plan.variants.iter().map(cell).collect(),
    };
    let sum = |of: Option<f64>| of.map_or("–".to_owned(), |sum| money(sum, currency));
    let mut rows = vec![
        row("Packages", &|variant| sum(variant.costs.packages)),
        row("Lab", &|variant| sum(variant.costs.lab)),
        row("Sending", &|variant| sum(variant.costs.shipping)),
        row("All that is known", &|variant| {
            money(variant.costs.total, currency)
        }),
    ];
    if plan.budget.is_some() {
        let of = plan.chosen.len() + plan.later.len();
        rows.push(row("Products that the budget carries", &|variant| {
            format!("{} of {of}", variant.products_in_budget.unwrap_or_default())
        }));
    }
    rows.extend([
        row(
            "Finds one over, where 10 % of all packages are",
            &|variant| words::share(variant.finds_a_tenth),
        ),
        row("Says “over” at twice the limit", &|variant| {
            words::share(variant.at_double.over)
        }),
        row("Says “within” at half the limit", &|variant| {
            words::share(variant.at_half.within)
        }),
        row("Standard error of a product’s mean", &|variant| {
            words::share(variant.standard_error)
        }),
    ]);
    rows
}

fn grid_heads(plan: &RoundPlan) -> Vec<String> {
    let first = plan.shows.grid.first().map(|cell| cell.extractions);
    let of_first = plan
        .shows
        .grid
        .iter()
        .filter(|cell| Some(cell.extractions) == first);
    of_first.map(|cell| cell.packages.to_string()).collect()
}

fn grid(plan: &RoundPlan, config: &Config) -> Vec<GridBlock> {
    let limit = LimitWords::of(config.rule);
    let at = |factor: f64| {
        let level = crate::model::ppm::Ppm(config.rule.limit.ppm.0 * factor);
        format!("{}{NBSP}{}", plain(level), limit.unit())
    };
    let mut extractions: Vec<usize> = plan
        .shows
        .grid
        .iter()
        .map(|cell| cell.extractions)
        .collect();
    extractions.dedup();
    let rows = |of: &dyn Fn(&crate::model::planning::GridCell) -> f64| {
        extractions
            .iter()
            .map(|count| LabelledRow {
                label: counted(*count, "extraction", "extractions"),
                cells: plan
                    .shows
                    .grid
                    .iter()
                    .filter(|cell| cell.extractions == *count)
                    .map(|cell| words::share(of(cell)))
                    .collect(),
            })
            .collect()
    };
    vec![
        GridBlock {
            head: format!("Found {}, true mean {}", limit.over_the_limit(), at(2.0)),
            rows: rows(&|cell| cell.over_at_double),
        },
        GridBlock {
            head: format!("Found {}, true mean {}", limit.within_the_limit(), at(0.5)),
            rows: rows(&|cell| cell.within_at_half),
        },
    ]
}

fn charts(plan: &RoundPlan, config: &Config) -> Result<Vec<Chart>> {
    let limit = LimitWords::of(config.rule);
    let finding = chances::finding(
        &plan.shows.finds,
        plan.packages,
        &chances::FindingWords {
            up: "chance of finding one".to_owned(),
            along: "share of all packages that is over the limit".to_owned(),
            alt: words::finding_alt(plan),
        },
        &config.words,
    )?;
    let verdicts = chances::verdicts(
        &plan.shows.curve,
        config.rule.limit.ppm.0,
        &chances::VerdictWords {
            up: "chance of the verdict".to_owned(),
            along: format!("true mean of the product, {}", limit.unit()),
            limit: format!("limit {}", limit.figure()),
            over: limit.over_the_limit(),
            within: limit.within_the_limit(),
            undecided: "no verdict".to_owned(),
            alt: words::verdicts_alt(plan, &limit),
        },
    )?;
    Ok(vec![finding, verdicts])
}
