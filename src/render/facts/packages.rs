//! A package's row in a table of results.

use crate::model::extraction::Extraction;
use crate::model::package::{PackageResult, Standing};
use crate::model::pair::{Comparison, PairedExtraction, Usage};
use crate::model::rule::Rule;
use crate::model::sheet::{
    BlockState, ExtractionCell, ExtractionRow, Heads, PackageRow, PackageTable,
};
use crate::render::charts::style::{INK, Type, text_width};
use crate::render::numbers;
use crate::render::words::chapters::{Chapter, Event, chapters};
use crate::render::words::{self, breakable, breakable_to};
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
    let lines = rows.iter().flat_map(|package| &package.rows);
    let mut cells = lines.flat_map(|row| &row.cells).flatten();
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
    PackageRow {
        code: breakable_to(&bought.package_code, code_room, Type::strong(8.6, INK)),
        lot: bought.lot.as_deref().map(|lot| fitted(lot, 41.0, 8.6)),
        best_by: bought.best_by.as_deref().map(|day| fitted(day, 46.0, 8.6)),
        bought_on,
        bought: Some(where_and_when).filter(|text| !text.is_empty()),
        rows: story_rows(package, rule, columns, words),
        result: numbers::result_said(&package.result, rule.limit, words),
        state: BlockState::of(package.standing),
    }
}

/// How far extractions are apart, as a row says it.
fn difference(usable: &[&Extraction], comparison: &Comparison, words: &Catalogue) -> ExtractionRow {
    let (found, allowed) = match words::packages::all_beyond(usable, words) {
        Some(beyond) => (beyond, None),
        None => {
            let apart = numbers::apart(comparison);
            let has_bounds = words::packages::has_bounds(usable);
            let least = if has_bounds { "≥" } else { "" };
            let figure = |written: &str| words.locale().figure(written);
            let gap = match apart.gap.as_str() {
                "0.0" if has_bounds => "≥0".to_owned(),
                gap => format!("{least}{}", figure(gap)),
            };
            (gap, Some(figure(&apart.allowed)))
        }
    };
    ExtractionRow {
        found: Some(found),
        found_is_figure: allowed.is_some(),
        allowed,
        compared: true,
        ..ExtractionRow::default()
    }
}

/// How far the extractions of a chapter are apart that are compared there: all that count where the result stands.
fn difference_in(
    chapter: &Chapter<'_>,
    package: &PackageResult,
    words: &Catalogue,
) -> Option<ExtractionRow> {
    if chapter.has_result {
        let usable: Vec<&Extraction> = package.pair.usable().collect();
        let comparison = package.pair.comparison.as_ref();
        let found = comparison.map(|comparison| difference(&usable, comparison, words));
        let alone = ExtractionRow {
            compared: true,
            ..ExtractionRow::default()
        };
        return Some(found.unwrap_or(alone));
    }
    let first = package.pair.first?.comparison?;
    let usable: Vec<&Extraction> = chapter.usable().collect();
    (chapter.event == Event::First).then(|| difference(&usable, &first, words))
}

/// The rows of a package: a row or more a chapter, why it came about before it, and what was set aside of it below.
fn story_rows(
    package: &PackageResult,
    rule: Rule,
    columns: usize,
    words: &Catalogue,
) -> Vec<ExtractionRow> {
    let mut rows = Vec::new();
    for chapter in chapters(package) {
        let told = words::packages::told(&chapter, package, rule, words);
        let sentence = |said: String| ExtractionRow {
            told: Some(breakable(&said, 50)),
            ..ExtractionRow::default()
        };
        rows.extend(told.before.into_iter().map(sentence));
        let is_first = rows.is_empty();
        rows.extend(extraction_rows(
            &chapter, package, rule, columns, is_first, words,
        ));
        rows.extend(told.after.into_iter().map(sentence));
    }
    rows
}

/// Every extraction of a chapter in the column of its own number: a line for as many numbers as there are columns, and one
/// more where a number was reported more than once.
fn extraction_rows(
    chapter: &Chapter<'_>,
    package: &PackageResult,
    rule: Rule,
    columns: usize,
    is_first: bool,
    words: &Catalogue,
) -> Vec<ExtractionRow> {
    // By how far the numbers run, then by how often a number was reported.
    let mut lines: BTreeMap<(usize, usize), Vec<Option<&PairedExtraction>>> = BTreeMap::new();
    let mut times: BTreeMap<usize, usize> = BTreeMap::new();
    for paired in chapter.listed() {
        let place = (paired.extraction.number as usize).saturating_sub(1);
        let (block, column) = (place / columns, place % columns);
        let time = times.entry(place).or_insert(0);
        let line = lines.entry((block, *time));
        line.or_insert_with(|| vec![None; columns])[column] = Some(paired);
        *time += 1;
    }
    // What several lines give together has a line of its own, as has a chapter without extractions.
    let counting = |line: &&Vec<Option<&PairedExtraction>>| {
        let mut places = line.iter().flatten();
        places.any(|paired| paired.usage == Usage::Used)
    };
    if lines.is_empty() || (chapter.has_result && lines.values().filter(counting).count() > 1) {
        lines.insert((usize::MAX, 0), vec![None; columns]);
    }
    let last = lines.len() - 1;
    let mut difference = difference_in(chapter, package, words);
    let lines = lines.into_values().enumerate();
    lines
        .map(|(number, line)| ExtractionRow {
            label: (number > 0 || !is_first)
                .then(|| line_label(chapter, package, &line, number, words)),
            cells: line
                .into_iter()
                .map(|place| place.map(|paired| cell(paired, rule, words)))
                .collect(),
            ..difference.take_if(|_| number == last).unwrap_or_default()
        })
        .collect()
}

/// "JF-787, repeat: extractions 3, 4".
fn line_label(
    chapter: &Chapter<'_>,
    package: &PackageResult,
    line: &[Option<&PairedExtraction>],
    number: usize,
    words: &Catalogue,
) -> String {
    let numbers: Vec<u32> = line
        .iter()
        .flatten()
        .map(|one| one.extraction.number)
        .collect();
    let is_beyond = numbers.iter().all(|number| *number as usize > line.len());
    let event = match chapter.event {
        _ if numbers.is_empty() => Event::Together,
        // More numbers than there are columns.
        Event::First if number > 0 && is_beyond => Event::Further,
        event => event,
    };
    let count = match event {
        Event::Together => package.pair.usable().count(),
        _ => numbers.len(),
    };
    let numbers: Vec<String> = numbers.iter().map(u32::to_string).collect();
    let code = &package.pair.package.package_code;
    words.say(&say::row_chapter(
        code,
        event.word(),
        count as u64,
        numbers.join(", "),
    ))
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
