//! A table's columns -> the plan by which its rows are read: long or wide, wells or extractions, which of several.

use crate::gather::books::Row;
use crate::gather::codes::Codes;
use crate::gather::finding::{Column, Table};
use crate::gather::headings::{Part, Role};
use crate::gather::units::Quantity;

/// How the rows of a table are read. Columns count from 1.
#[derive(Clone, Debug, Default)]
pub struct Plan {
    /// The package code.
    pub sample: u32,
    /// The results of a row.
    pub results: Vec<ResultColumn>,
    /// The number of the extraction.
    pub extraction: Option<u32>,
    /// Columns that number extractions, replicates or wells: "Mean" in one of them makes a row a mean.
    pub counters: Vec<u32>,
    /// Wells: rows, or cells of a row, that are averaged into one reading.
    pub wells: bool,
    /// Where a note must say that replicates were taken for extractions: the heading's column.
    pub replicates_as_extractions: Option<u32>,
    /// Means, to be checked.
    pub means: Vec<u32>,
    /// The unit.
    pub unit: Option<u32>,
    /// The lowest quantity reported as a number.
    pub lloq: Option<u32>,
    /// The highest one.
    pub uloq: Option<u32>,
    /// Day of the test.
    pub tested_on: Option<u32>,
    /// The lab's report number.
    pub report: Option<u32>,
    /// The assay.
    pub assay: Option<u32>,
    /// The dilution.
    pub dilution: Option<u32>,
    /// A remark.
    pub remark: Option<u32>,
    /// The lab's name.
    pub lab: Option<u32>,
    /// What was measured.
    pub analyte: Option<u32>,
}

/// A column of results.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ResultColumn {
    /// From 1.
    pub column: u32,
    /// The extraction it holds; none where rows or another column say.
    pub extraction: Option<u32>,
    /// Whether the heading gave that number.
    pub numbered: bool,
}

impl Plan {
    /// Whether a row holds several extractions.
    pub fn is_wide(&self) -> bool {
        self.results
            .iter()
            .any(|result| result.extraction.is_some())
    }
}

/// A table whose columns of results are means, if any: there is no reading in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoResults {
    /// Whether it has a mean.
    pub has_mean: bool,
}

/// Plans the reading of a table.
pub fn plan(table: &Table, rows: &[Row], codes: &Codes) -> Result<Plan, NoResults> {
    let only = |wanted: Role| {
        table
            .columns
            .iter()
            .find(|column| column.role() == Some(wanted))
            .map(|column| column.column)
    };
    let extraction = only(Role::Extraction);
    let replicate = only(Role::Replicate);
    let well = only(Role::Well);
    let mut plan = Plan {
        sample: sample_column(table, rows, codes),
        extraction: extraction.or(replicate),
        wells: well.is_some() || (extraction.is_some() && replicate.is_some()),
        counters: [extraction, replicate, well]
            .into_iter()
            .flatten()
            .collect(),
        replicates_as_extractions: replicate.filter(|_| extraction.is_none()),
        means: columns_of(table, Role::Mean),
        unit: only(Role::Unit),
        lloq: only(Role::Lloq),
        uloq: only(Role::Uloq),
        tested_on: only(Role::TestedOn),
        report: only(Role::Report),
        assay: only(Role::Assay),
        dilution: only(Role::Dilution),
        remark: only(Role::Remark),
        lab: only(Role::Lab),
        analyte: only(Role::Analyte),
        ..Plan::default()
    };
    choose_results(table, &mut plan);
    if plan.results.is_empty() {
        return Err(NoResults {
            has_mean: !plan.means.is_empty(),
        });
    }
    Ok(plan)
}

fn columns_of(table: &Table, wanted: Role) -> Vec<u32> {
    table
        .columns
        .iter()
        .filter(|column| column.role() == Some(wanted))
        .map(|column| column.column)
        .collect()
}

/// Of several columns that could name the package, the one that holds most of the register's codes.
fn sample_column(table: &Table, rows: &[Row], codes: &Codes) -> u32 {
    const ROWS_TRIED: usize = 500;
    let candidates = columns_of(table, Role::Sample)
        .into_iter()
        .chain(columns_of(table, Role::LabSample));
    let known = |column: u32| {
        rows[table.rows.clone()]
            .iter()
            .take(ROWS_TRIED)
            .filter_map(|row| row.at(column))
            .filter(|content| codes.find(&content.shown()).is_some())
            .count()
    };
    let mut best = (0, None);
    for column in candidates {
        let found = known(column);
        if best.1.is_none() || found > best.0 {
            best = (found, Some(column));
        }
    }
    best.1.expect("a table has a column that names the package")
}

/// Chooses the columns that hold readings, and says what stands side by side in them.
fn choose_results(table: &Table, plan: &mut Plan) {
    let candidates: Vec<(&Column, Part)> = table
        .columns
        .iter()
        .filter_map(|column| match column.role() {
            Some(Role::Result(part)) => Some((column, part)),
            _ => None,
        })
        .collect();
    let candidates = of_one_quantity(candidates);
    let numbered: Vec<&(&Column, Part)> = candidates
        .iter()
        .filter(|(_, part)| part.is_numbered())
        .collect();
    if numbered.len() > 1 || (numbered.len() == 1 && candidates.len() == 1) {
        // A result without a number beside numbered ones sums them up.
        plan.means.extend(
            candidates
                .iter()
                .filter(|(_, part)| !part.is_numbered())
                .map(|(column, _)| column.column),
        );
        let chosen: Vec<(u32, Part)> = numbered
            .iter()
            .map(|(column, part)| (column.column, *part))
            .collect();
        side_by_side(&chosen, plan);
    } else if candidates.len() > 1 && same_headings(&candidates) {
        plan.results = candidates
            .iter()
            .zip(1..)
            .map(|((column, _), number)| ResultColumn {
                column: column.column,
                extraction: Some(number),
                numbered: false,
            })
            .collect();
    } else if let Some((column, _)) = candidates
        .iter()
        .max_by_key(|(column, _)| plainness(column))
    {
        plan.results = vec![single(column.column)];
    }
    let finals = columns_of(table, Role::Final);
    if plan.results.is_empty() {
        plan.results = finals
            .first()
            .map(|column| single(*column))
            .into_iter()
            .collect();
    } else {
        plan.means.extend(finals);
    }
}

fn single(column: u32) -> ResultColumn {
    ResultColumn {
        column,
        extraction: None,
        numbered: false,
    }
}

/// Where a table gives both gluten and gliadin, gluten is read: no convention is needed for it.
fn of_one_quantity(candidates: Vec<(&Column, Part)>) -> Vec<(&Column, Part)> {
    let quantity = |column: &Column| column.meaning.as_ref().and_then(|meaning| meaning.quantity);
    let says = |wanted| {
        candidates
            .iter()
            .any(|(column, _)| quantity(column) == Some(wanted))
    };
    if says(Quantity::Gluten) && says(Quantity::Gliadin) {
        return candidates
            .into_iter()
            .filter(|(column, _)| quantity(column) != Some(Quantity::Gliadin))
            .collect();
    }
    candidates
}

fn same_headings(candidates: &[(&Column, Part)]) -> bool {
    candidates
        .windows(2)
        .all(|pair| pair[0].0.heading == pair[1].0.heading)
}

/// Which of several single results is the one to read: gluten by name, then one with a unit, then the leftmost.
fn plainness(column: &Column) -> (bool, bool, std::cmp::Reverse<u32>) {
    let meaning = column.meaning.as_ref();
    (
        meaning.is_some_and(|meaning| meaning.quantity == Some(Quantity::Gluten)),
        meaning.is_some_and(|meaning| meaning.unit.is_some()),
        std::cmp::Reverse(column.column),
    )
}

/// Results side by side: extractions, or the wells of one.
fn side_by_side(chosen: &[(u32, Part)], plan: &mut Plan) {
    let any = |of: fn(&Part) -> Option<u32>| chosen.iter().any(|(_, part)| of(part).is_some());
    let extractions = any(|part| part.extraction);
    let replicates = any(|part| part.replicate);
    let wells = any(|part| part.well);
    // Wells of the extraction that a column names, or of the row.
    let of_row = plan.extraction.is_some() || (wells && !extractions && !replicates);
    let number = |part: &Part| {
        if of_row {
            None
        } else if extractions {
            part.extraction.or(part.number)
        } else {
            part.replicate.or(part.number)
        }
    };
    plan.wells |= of_row || wells || (extractions && replicates);
    if !of_row && !extractions && replicates {
        plan.replicates_as_extractions = chosen.first().map(|(column, _)| *column);
    }
    plan.results = chosen
        .iter()
        .map(|(column, part)| ResultColumn {
            column: *column,
            extraction: number(part),
            numbered: number(part).is_some(),
        })
        .collect();
}
