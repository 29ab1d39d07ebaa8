//! The summary's plots: every package on the scale, shares and quarters, duplicates.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::package::Standing;
use crate::model::ppm::Ppm;
use crate::model::statistics::{
    CensoredSummary, Group, GroupedBy, Grouping, ProgrammeStatistics, RangeChart, RangePoint,
};
use crate::render::charts::agreement::agreement;
use crate::render::charts::products::products;
use crate::render::charts::quarters::quarters;
use crate::render::charts::range::range;
use crate::render::charts::shares::{by_word, shares};
use crate::render::charts::strip::{StripRow, rows, strip};
use crate::render::facts::summary::{Charts, Figure};
use crate::render::listing;
use crate::render::numbers;
use crate::render::tally::Tally;
use crate::render::terms::Terms;
use crate::render::words::{breakable, duplicates, summary as texts};
use crate::words::{Catalogue, say};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;
use std::collections::BTreeMap;

/// Quarters in one chart: a page of them.
const QUARTERS_A_CHART: usize = 24;

/// More products than this are in the register alone: their rows would fill more than six pages.
const PRODUCTS_AT_MOST: usize = 120;

/// Every package on the scale.
#[derive(Clone, Debug, Serialize)]
pub struct Strip {
    /// The lede.
    pub lede: String,
    /// The plot, a page of food groups each.
    pub charts: Vec<Figure>,
    /// What the marks mean.
    pub note: String,
    /// Every product by itself, a row each; none where there are too many to be taken in.
    pub products: Vec<Figure>,
    /// What the rows show, and how they are ordered.
    pub products_lede: String,
    /// Products whose packages fall on both sides, where there are any.
    pub uneven: Option<String>,
}

/// Shares and quarters.
#[derive(Clone, Debug, Serialize)]
pub struct Groups {
    /// The lede.
    pub lede: String,
    /// A head and its charts for each way of grouping.
    pub groupings: Vec<GroupingFigures>,
    /// Mean package results: group, packages, of these too little to measure, mean, estimates.
    pub means: Vec<[String; 6]>,
    /// Products by quarter.
    pub quarters: Vec<Figure>,
    /// What the quarters say taken together.
    pub trend: String,
    /// How many packages would say more; none where nothing is tested yet.
    pub needed: Option<Needed>,
}

/// How many packages would have to be tested, and none of them be over the limit, to say more of a product.
#[derive(Clone, Debug, Serialize)]
pub struct Needed {
    /// What is to be shown, and what so many packages as are tested show.
    pub lede: String,
    /// A share of the product's packages, and how many it takes to show that fewer are over the limit.
    pub columns: Vec<[String; 2]>,
}

/// One way of grouping products.
#[derive(Clone, Debug, Serialize)]
pub struct GroupingFigures {
    /// The head.
    pub head: String,
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
    /// Repeatability: of which pairs, how many, how many flagged ones are left out, how large, and by the median.
    pub repeatability: Vec<[String; 5]>,
    /// How flagged pairs are treated, and what the settings assume.
    pub notes: Vec<String>,
    /// Early against late.
    pub drift: Vec<String>,
}

/// The strip plot and what it shows.
pub fn strip_page(
    decided: &Decided,
    tally: &Tally,
    terms: &Terms,
    config: &Config,
    charts: &mut Charts,
) -> Result<Strip> {
    let groups = listing::ChartedGroups::of(&decided.products);
    let rows = rows(&decided.products, groups.names(), |product| {
        groups.name_of(product)
    });
    let over = |row: &&StripRow| {
        let mut packages = row.packages.iter();
        packages.any(|package| package.standing == Standing::Over)
    };
    let groups_over = rows.iter().filter(over).count();
    let drawn = strip(&rows, terms)?;
    let figures = charts.all(drawn.charts);
    let mixed = |product: &&JudgedProduct| {
        let has = |standings: &[Standing]| {
            let mut packages = product.verdict.packages.iter();
            packages.any(|package| standings.contains(&package.standing))
        };
        has(&[Standing::Over]) && has(&[Standing::Within, Standing::BelowQuantification])
    };
    let mixed = decided.products.iter().filter(mixed).count() as u64;
    let all: Vec<&JudgedProduct> = decided.products.iter().collect();
    let shown = match all.len() {
        n if n <= PRODUCTS_AT_MOST => products("products", &all, config.programme.paper, terms)?,
        _ => Vec::new(),
    };
    Ok(Strip {
        products: charts.all(shown),
        products_lede: terms.words.say(&say::summary_products_lede()),
        lede: texts::strip_lede(tally, rows.len(), groups_over, terms),
        charts: figures,
        note: texts::strip_note(drawn.crowded, terms),
        uneven: texts::uneven(tally.over, mixed, terms),
    })
}

/// Shares by group, and products by quarter.
pub fn groups_page(
    decided: &Decided,
    terms: &Terms,
    config: &Config,
    charts: &mut Charts,
) -> Result<Groups> {
    let statistics = &decided.statistics;
    let mut groupings = Vec::new();
    // A single group has nothing to be held against.
    let told =
        |grouping: &&Grouping| grouping.groups.len() > 1 || grouping.by == GroupedBy::Category;
    let any = |grouping: &&Grouping| !grouping.groups.is_empty();
    for grouping in statistics.groups.iter().filter(any).filter(told) {
        groupings.push(grouping_figures(grouping, decided, terms, charts)?);
    }
    let mut quarter_figures = Vec::new();
    for (number, part) in statistics.quarters.chunks(QUARTERS_A_CHART).enumerate() {
        quarter_figures.push(charts.add(quarters(part, terms, number + 1)?));
    }
    Ok(Groups {
        lede: texts::groups_lede(&statistics.contrasts, &config.words),
        groupings,
        means: statistics
            .censored
            .iter()
            .map(|of| means(of, terms))
            .collect(),
        quarters: quarter_figures,
        trend: texts::trend(
            statistics.trend.as_ref(),
            &statistics.quarters,
            &config.words,
        ),
        needed: needed(statistics, config.testing.packages_per_product, terms),
    })
}

/// A group's mean package result: as bounds, and as two ways to estimate it where the data carry them.
fn means(of: &CensoredSummary, terms: &Terms) -> [String; 6] {
    let words = &terms.words;
    let figure = |x: Ppm| words.locale().figure(&numbers::figure(x, terms.rule));
    let estimate = |x: Option<Ppm>| x.map_or("–".to_owned(), figure);
    let name = match of.of.as_str() {
        "all" => words.say(&say::summary_means_all()),
        name => breakable(&texts::group_name(name, words), 30),
    };
    let mean = if of.lower_bound.same(of.upper_bound) {
        figure(of.upper_bound)
    } else {
        words.say(&say::summary_means_between(
            figure(of.lower_bound),
            figure(of.upper_bound),
        ))
    };
    [
        name,
        of.n.to_string(),
        of.censored.to_string(),
        mean,
        estimate(of.ros_mean),
        of.mle.map_or("–".to_owned(), |fit| {
            words.say(&say::summary_means_fit(
                figure(fit.mean),
                figure(fit.median),
            ))
        }),
    ]
}

fn needed(statistics: &ProgrammeStatistics, packages: usize, terms: &Terms) -> Option<Needed> {
    let columns = statistics.packages_needed.iter();
    let columns: Vec<[String; 2]> = columns
        .map(|needed| {
            [
                terms.words.quantity(&numbers::percent(needed.share), "%"),
                needed.packages.to_string(),
            ]
        })
        .collect();
    (!columns.is_empty()).then(|| Needed {
        lede: texts::needed(packages, terms),
        columns,
    })
}

fn grouping_figures(
    grouping: &Grouping,
    decided: &Decided,
    terms: &Terms,
    charts: &mut Charts,
) -> Result<GroupingFigures> {
    let words = &terms.words;
    let groups: Vec<Group> = grouping
        .groups
        .iter()
        .map(|group| named(group, grouping.by, words))
        .collect();
    // All products stand once, under the last of the food groups.
    let all = decided
        .statistics
        .over_limit
        .as_ref()
        .filter(|_| grouping.by == GroupedBy::Category);
    let drawn = shares(grouping.by, &groups, all, terms)?;
    Ok(GroupingFigures {
        head: words.say(&say::summary_shares_title(by_word(grouping.by))),
        charts: charts.all(drawn),
    })
}

/// A group under the name that charts print.
fn named(group: &Group, by: GroupedBy, words: &Catalogue) -> Group {
    let name = match (by, group.name.as_str()) {
        (GroupedBy::Category, name) => texts::group_name(name, words),
        (GroupedBy::Certification, "certified") => {
            words.say(&say::chart_certification("certified"))
        }
        (GroupedBy::Certification, _) => words.say(&say::chart_certification("not")),
        (GroupedBy::Oats, "no oats") => words.say(&say::chart_oats("none")),
        (GroupedBy::Oats, "certified oats") => words.say(&say::chart_oats("certified")),
        (GroupedBy::Oats, "purity-protocol oats") => words.say(&say::chart_oats("purity")),
        (GroupedBy::Oats, _) => words.say(&say::chart_oats("unverified")),
    };
    Group {
        name,
        ..group.clone()
    }
}

/// How well the extractions agree.
pub fn duplicates_page(
    decided: &Decided,
    tally: &Tally,
    terms: &Terms,
    config: &Config,
    charts: &mut Charts,
) -> Result<Duplicates> {
    let statistics = &decided.statistics;
    let (chart, words) = (statistics.range_chart.as_ref(), &config.words);
    let agreement = match chart {
        Some(chart) => agreement(chart, &config.testing, terms)?,
        None => None,
    };
    let range = match chart {
        Some(chart) => range(chart, &tested_on(decided), words)?,
        None => None,
    };
    Ok(Duplicates {
        lede: duplicates::lede(tally, words),
        pairs: chart.map_or(0, |chart| chart.points.len()),
        agreement: agreement.map(|chart| charts.add(chart)),
        range: range.map(|chart| charts.add(chart)),
        range_note: chart
            .filter(|chart| chart.lines.is_some())
            .map_or(String::new(), |chart| duplicates::range_note(chart, words)),
        flagged: chart.map_or(Vec::new(), |chart| flagged(chart, terms)),
        repeatability: statistics
            .repeatability
            .iter()
            .map(|found| {
                let [pairs, flagged, size, median] = duplicates::repeatability(found, words);
                let of = duplicates::pairs_of(&found.of, terms);
                [breakable(&of, 40), pairs, flagged, size, median]
            })
            .collect(),
        notes: duplicates::notes(statistics, config.testing.packages_per_product, words),
        drift: statistics
            .drift
            .iter()
            .map(|drift| duplicates::drift(drift, words))
            .collect(),
    })
}

/// The day of each package's test, by its code.
fn tested_on(decided: &Decided) -> BTreeMap<&str, NaiveDate> {
    let packages = decided
        .products
        .iter()
        .flat_map(|product| &product.verdict.packages);
    packages
        .filter_map(|package| {
            let days = package
                .pair
                .usable()
                .filter_map(|extraction| extraction.tested_on);
            Some((package.pair.package.package_code.as_str(), days.max()?))
        })
        .collect()
}

/// Pairs beyond the control line or in disagreement.
fn flagged(chart: &RangeChart, terms: &Terms) -> Vec<[String; 5]> {
    let words = &terms.words;
    let told = |point: &RangePoint| {
        let [range, allowed] = duplicates::range_and_allowed(point, words);
        let mean = numbers::figure(point.mean, terms.rule);
        [
            breakable(&point.package_code, 14),
            words.locale().figure(&mean),
            range,
            allowed,
            duplicates::became(point, words),
        ]
    };
    let points = chart.points.iter();
    points
        .filter(|point| point.beyond || !point.agrees)
        .map(told)
        .collect()
}
