//! The index: every published sheet in one table, and what a reader can choose by.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::sheet::LabelJudged;
use crate::model::verdict::Verdict;
use crate::render::addresses::link;
use crate::render::facts::sheet::sheet_number;
use crate::render::listing;
use crate::render::web::{last_issued, page, sheet, under_revision};
use crate::render::words::label;
use crate::words::{say, side};
use serde::Serialize;
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// A row of the table.
#[derive(Debug, Serialize)]
struct Row {
    brand: Option<String>,
    name: String,
    group: Option<String>,
    /// `over`, `within` or `none`.
    state: &'static str,
    verdict: String,
    label: LabelJudged,
    number: String,
    revision: String,
    year: String,
    page: String,
    pdf: Option<String>,
}

/// What can be chosen of one kind: what a row has, and what the reader is shown.
#[derive(Debug, Serialize)]
struct Choice {
    value: String,
    label: String,
}

/// The facts of the index.
pub(super) fn facts(view: &Decided, config: &Config, has_sheet: &dyn Fn(&str) -> bool) -> Value {
    let mut rows: Vec<Row> = view
        .products
        .iter()
        .map(|judged| row(judged, config, has_sheet))
        .collect();
    let order = |row: &Row| {
        let brand = row.brand.as_deref().unwrap_or_default();
        (
            brand.to_lowercase(),
            row.name.to_lowercase(),
            row.number.clone(),
        )
    };
    rows.sort_by_cached_key(order);
    let words = &config.words;
    let shown = |shown: &str, all: &str| words.say(&say::web_shown(shown, all));
    json!({
        "brands": named(rows.iter().filter_map(|row| row.brand.as_deref())),
        "groups": named(rows.iter().filter_map(|row| row.group.as_deref())),
        "verdicts": verdicts(&rows, config),
        "years": named(rows.iter().map(|row| row.year.as_str())),
        // The script puts the figures in the place of these two.
        "count": shown("{shown}", "{all}"),
        "under_revision": under_revision(view),
        "rows": rows,
    })
}

fn row(judged: &JudgedProduct, config: &Config, has_sheet: &dyn Fn(&str) -> bool) -> Row {
    let verdict = &judged.verdict;
    let words = &config.words;
    let stem = verdict.stem();
    let (issued, revision) = last_issued(judged);
    Row {
        brand: verdict.product.brand.clone(),
        name: listing::name(judged, words),
        group: verdict.product.category.clone(),
        state: state(verdict.verdict),
        verdict: listing::of_its_limit(verdict.verdict, &verdict.rule, words),
        label: label::judged(verdict, words),
        number: sheet_number(verdict, config),
        year: issued.split('-').next().unwrap_or_default().to_owned(),
        revision: words.say(&say::web_revision_of(revision.to_string(), issued)),
        page: link(&page(&stem)),
        pdf: has_sheet(&stem).then(|| link(&sheet(&stem))),
    }
}

/// The ink of a verdict.
fn state(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::OverLimit => "over",
        Verdict::WithinLimit(_) => "within",
        Verdict::NoVerdict => "none",
    }
}

/// Names, each once, in order.
fn named<'a>(names: impl Iterator<Item = &'a str>) -> Vec<Choice> {
    let names: BTreeSet<&str> = names.filter(|name| !name.is_empty()).collect();
    let choice = |name: &str| Choice {
        value: name.to_owned(),
        label: name.to_owned(),
    };
    names.into_iter().map(choice).collect()
}

/// The verdicts that there are.
fn verdicts(rows: &[Row], config: &Config) -> Vec<Choice> {
    let all = ["over", "within", "none"];
    let found = all
        .into_iter()
        .filter(|state| rows.iter().any(|row| row.state == *state));
    found
        .map(|state| Choice {
            value: state.to_owned(),
            label: config
                .words
                .say(&say::web_choice(state, side(config.rule.limit))),
        })
        .collect()
}
