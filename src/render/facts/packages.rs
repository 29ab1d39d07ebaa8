//! A package's row in a table of results.

use crate::model::package::{PackageResult, Standing};
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::rule::Rule;
use crate::model::sheet::{
    BlockState, ExtractionCell, ExtractionRow, Heads, PackageRow, PackageTable,
};
use crate::render::charts::style::{INK, Type, text_width};
use crate::render::numbers;
use crate::render::words::{self, breakable_to};
use crate::words::{Catalogue, say};
use std::collections::BTreeMap;

impl BlockState {
    /// The ink of a standing.
    pub fn of(standing: Standing) -> BlockState {
        match standing {
            Standing::Over => BlockState::Over,
            Standing::BelowQuantification | Standing::Within => BlockState::Within,
            Standing::Unresolved | Standing::Inconclusive => BlockState::None,
        }
    }
}

/// More columns of extractions than this leave no room for the shop.
const MOST_COLUMNS: usize = 4;

/// The column of codes is as wide as the widest code, between these widths in points.
const NARROWEST_CODES: f64 = 46.0;
const WIDEST_CODES: f64 = 84.0;

/// The table of these packages.
pub fn table(
    packages: &[PackageResult],
    rule: Rule,
    extractions_per_package: usize,
    words: &Catalogue,
) -> PackageTable {
    let columns = extractions_per_package.clamp(2, MOST_COLUMNS);
    let width = |package: &PackageResult| {
        text_width(&package.pair.package.package_code, Type::strong(8.6, INK))
    };
    let widest = packages.iter().map(width).fold(0.0, f64::max);
    let code_width = (widest + 4.0).clamp(NARROWEST_CODES, WIDEST_CODES);
    let rows: Vec<PackageRow> = packages
        .iter()
        .map(|package| row(package, rule, columns, code_width - 2.0, words))
        .collect();
    let mut cells = rows
        .iter()
        .flat_map(|package| &package.rows)
        .flat_map(|row| &row.cells)
        .flatten();
    let unit = rule.regime.unit();
    PackageTable {
        unit,
        columns,
        code_width,
        has_unused: cells.any(|cell| !cell.used && cell.is_reading),
        heads: Heads {
            extractions: words.say(&say::head_extractions(unit)),
            difference: words.say(&say::head_difference(unit)),
            result: words.say(&say::head_result(unit)),
        },
        packages: rows,
    }
}

fn row(
    package: &PackageResult,
    rule: Rule,
    columns: usize,
    code_room: f64,
    words: &Catalogue,
) -> PackageRow {
    let bought = &package.pair.package;
    let fitted =
        |text: &str, room: f64, size: f64| breakable_to(text, room, Type::plain(size, INK));
    let day = bought.bought_on.map(|day| day.to_string());
    let bought_on = day.clone();
    let where_and_when: Vec<String> = [day, bought.shop.clone()].into_iter().flatten().collect();
    let where_and_when = fitted(&where_and_when.join(", "), 100.0, 8.2);
    let difference = Difference::of(package, words);
    PackageRow {
        code: breakable_to(&bought.package_code, code_room, Type::strong(8.6, INK)),
        lot: bought.lot.as_deref().map(|lot| fitted(lot, 41.0, 8.6)),
        best_by: bought
            .best_by
            .as_deref()
            .map(|best_by| fitted(best_by, 46.0, 8.6)),
        bought_on,
        bought: Some(where_and_when).filter(|text| !text.is_empty()),
        rows: extraction_rows(&package.pair.extractions, rule, columns, words),
        found: difference.found,
        found_is_figure: difference.is_figure,
        allowed: difference.allowed,
        result: numbers::result_said(&package.result, rule.limit, words),
        state: BlockState::of(package.standing),
    }
}

/// How far a package's extractions are apart, as its row says it.
struct Difference {
    found: Option<String>,
    is_figure: bool,
    allowed: Option<String>,
}

impl Difference {
    fn of(package: &PackageResult, words: &Catalogue) -> Difference {
        let comparison = package.pair.comparison.as_ref();
        let all_beyond = comparison.and_then(|_| words::packages::all_beyond(package, words));
        let apart = comparison
            .filter(|_| all_beyond.is_none())
            .map(numbers::apart);
        let least = if words::packages::has_bounds(package) {
            "≥"
        } else {
            ""
        };
        let figure = |written: &str| words.locale().figure(written);
        Difference {
            is_figure: apart.is_some(),
            found: match &apart {
                Some(apart) if apart.gap == "0.0" && !least.is_empty() => Some("≥0".to_owned()),
                Some(apart) => Some(format!("{least}{}", figure(&apart.gap))),
                None => all_beyond,
            },
            allowed: apart.map(|apart| figure(&apart.allowed)),
        }
    }
}

/// Every extraction in the column of its own number. The lines after the first hold higher numbers, and those that were
/// reported again under a number that has been set aside: what was set aside stands before what came in its place.
fn extraction_rows(
    extractions: &[PairedExtraction],
    rule: Rule,
    columns: usize,
    words: &Catalogue,
) -> Vec<ExtractionRow> {
    // By how far the numbers run, then by how often a number was reported.
    let mut lines: BTreeMap<(usize, usize), Vec<Option<&PairedExtraction>>> = BTreeMap::new();
    lines.insert((0, 0), vec![None; columns]);
    let mut times: BTreeMap<usize, usize> = BTreeMap::new();
    let is_set_aside = |paired: &&PairedExtraction| matches!(paired.usage, Usage::Excluded { .. });
    let first = extractions.iter().filter(is_set_aside);
    let then = extractions.iter().filter(|paired| !is_set_aside(paired));
    for paired in first.chain(then) {
        let place = (paired.extraction.number as usize).saturating_sub(1);
        let (block, column) = (place / columns, place % columns);
        let time = times.entry(place).or_insert(0);
        let line = lines.entry((block, *time));
        line.or_insert_with(|| vec![None; columns])[column] = Some(paired);
        *time += 1;
    }
    let lines = lines.into_iter();
    lines
        .map(|((block, time), line)| ExtractionRow {
            label: (block + time > 0).then(|| line_label(&line, time > 0, words)),
            cells: line
                .into_iter()
                .map(|place| place.map(|paired| cell(paired, rule, words)))
                .collect(),
        })
        .collect()
}

/// "further extractions 3, 4", "reported again: extraction 2".
fn line_label(line: &[Option<&PairedExtraction>], again: bool, words: &Catalogue) -> String {
    let numbers: Vec<String> = line
        .iter()
        .flatten()
        .map(|paired| paired.extraction.number.to_string())
        .collect();
    let (extractions, numbers) = (numbers.len() as u64, numbers.join(", "));
    words.say(&match again {
        true => say::row_again(extractions, numbers),
        false => say::row_further(extractions, numbers),
    })
}

fn cell(paired: &PairedExtraction, rule: Rule, words: &Catalogue) -> ExtractionCell {
    let reading = paired.extraction.outcome.reading();
    ExtractionCell {
        figure: match reading {
            Some(reading) => numbers::interval_said(reading, rule.limit, words),
            None => words.say(&say::no_reading()),
        },
        is_reading: reading.is_some(),
        used: paired.usage == Usage::Used,
    }
}
