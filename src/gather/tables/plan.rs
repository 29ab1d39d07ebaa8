//! A table's columns -> how its rows are read: long or wide, wells or extractions, which of several columns; or that this
//! can be understood in two ways.

use crate::gather::books::Row;
use crate::gather::codes::Codes;
use crate::gather::numbers::Marks;
use crate::gather::readings::values::{self, Said};
use crate::gather::tables::doubts;
use crate::gather::tables::finding::{Column, Table};
use crate::gather::tables::headings::{Part, Role};
use crate::gather::tables::units::{Quantity, Scale};

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
    /// Two columns that could be the same thing and differ: nothing of the table can be used.
    pub ambiguous: Option<Ambiguous>,
    /// The other columns that are used, each role once.
    used: Vec<(Role, u32)>,
}

/// Two columns between which nothing decides.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ambiguous {
    /// What both could be.
    pub what: Doubtful,
    /// The columns, from the left.
    pub columns: (u32, u32),
}

/// What two columns could be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubtful {
    /// The code of the package.
    Package,
    /// The gluten, of which one says twice the gliadin of the other.
    Gluten,
    /// The result.
    Result,
    /// A result, of which the second column may hold the decimals.
    Decimals,
}

impl Doubtful {
    /// The word by which the message that tells of it chooses.
    pub fn word(self) -> &'static str {
        match self {
            Doubtful::Package => "package",
            Doubtful::Gluten => "gluten",
            Doubtful::Result => "result",
            Doubtful::Decimals => "decimals",
        }
    }
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

    /// The column that has this role.
    pub fn of(&self, role: Role) -> Option<u32> {
        self.used
            .iter()
            .find(|(known, _)| *known == role)
            .map(|(_, column)| *column)
    }
}

/// A table whose columns of results are means, if any: there is no reading in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoResults {
    /// Whether it has a mean.
    pub has_mean: bool,
}

/// Plans the reading of a table, which a layout may describe, in a file whose cells commas may part.
pub fn plan(
    table: &Table,
    rows: &[Row],
    codes: &Codes,
    (by_layout, parted_by_commas): (bool, bool),
) -> Result<Plan, NoResults> {
    let only = |wanted: Role| {
        table
            .columns
            .iter()
            .find(|column| column.role() == Some(wanted))
            .map(|column| column.column)
    };
    let rows: &[Row] = &rows[table.rows.clone()];
    let extraction = only(Role::Extraction);
    let replicate = only(Role::Replicate);
    let well = only(Role::Well);
    let (sample, two_samples) = sample_column(table, rows, codes);
    let mut used = Vec::new();
    for column in &table.columns {
        if let Some(role) = column.role()
            && !used.iter().any(|(known, _)| *known == role)
        {
            used.push((role, column.column));
        }
    }
    let mut plan = Plan {
        sample,
        extraction: extraction.or(replicate),
        wells: well.is_some() || (extraction.is_some() && replicate.is_some()),
        counters: [extraction, replicate, well]
            .into_iter()
            .flatten()
            .collect(),
        replicates_as_extractions: replicate.filter(|_| extraction.is_none()),
        means: columns_of(table, Role::Mean),
        ambiguous: two_samples.filter(|_| !by_layout),
        used,
        ..Plan::default()
    };
    choose_results(table, rows, &mut plan);
    if plan.results.is_empty() {
        return Err(NoResults {
            has_mean: !plan.means.is_empty(),
        });
    }
    if plan.ambiguous.is_none() && !by_layout {
        plan.ambiguous = doubts::unheaded(table, rows, &plan, codes)
            .or_else(|| doubts::added(table, rows, &plan, codes))
            .or_else(|| {
                let doubt = || doubts::parted_decimals(table, rows, &plan, codes);
                parted_by_commas.then(doubt).flatten()
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

/// Of several columns that could name the package, the one that holds most of the register's codes; and whether another one
/// names other packages on the same rows.
fn sample_column(table: &Table, rows: &[Row], codes: &Codes) -> (u32, Option<Ambiguous>) {
    let registered = |row: &Row, column: u32| {
        let content = row.at(column)?;
        codes.find(&content.shown()).map(str::to_owned)
    };
    let samples = columns_of(table, Role::Sample);
    let candidates: Vec<u32> = samples
        .iter()
        .copied()
        .chain(columns_of(table, Role::LabSample))
        .collect();
    let mut best = (0, None);
    if candidates.len() > 1 {
        for column in &candidates {
            let found = rows
                .iter()
                .filter(|row| registered(row, *column).is_some())
                .count();
            if best.1.is_none() || found > best.0 {
                best = (found, Some(*column));
            }
        }
    }
    let chosen = best
        .1
        .or(candidates.first().copied())
        .expect("a table has a column that names the package");
    let other = samples
        .iter()
        .filter(|column| **column != chosen)
        .find(|column| {
            rows.iter().any(|row| {
                let (ours, theirs) = (registered(row, chosen), registered(row, **column));
                // A blank would continue the code above it, though another one stands beside.
                theirs.is_some() && ours != theirs && (ours.is_some() || row.at(chosen).is_none())
            })
        });
    let ambiguous = other.map(|column| Ambiguous {
        what: Doubtful::Package,
        columns: (chosen.min(*column), chosen.max(*column)),
    });
    (chosen, ambiguous)
}

/// A column that could hold results.
type Candidate<'a> = (&'a Column, Part);

/// Chooses the columns that hold readings, and says what stands side by side in them.
fn choose_results(table: &Table, rows: &[Row], plan: &mut Plan) {
    let candidates: Vec<Candidate<'_>> = table
        .columns
        .iter()
        .filter_map(|column| match column.role() {
            Some(Role::Result(part)) => Some((column, part)),
            _ => None,
        })
        .collect();
    let mut doubt = contradiction(&candidates, rows);
    let candidates = of_gluten_in_food(of_one_quantity(candidates));
    let (numbered, plain): (Vec<Candidate<'_>>, Vec<Candidate<'_>>) = candidates
        .iter()
        .copied()
        .partition(|(_, part)| part.is_numbered());
    if numbered.len() > 1 || (numbered.len() == 1 && plain.is_empty()) {
        // A result without a number beside numbered ones sums them up.
        plan.means
            .extend(plain.iter().map(|(column, _)| column.column));
        let mut chosen: Vec<Candidate<'_>> = Vec::new();
        for candidate in numbered {
            match chosen.iter().find(|(_, part)| *part == candidate.1) {
                // Two columns say that they are the same extraction.
                Some(known) => doubt = doubt.or_else(|| differ(known.0, candidate.0, rows)),
                None => chosen.push(candidate),
            }
        }
        let chosen: Vec<(u32, Part)> = chosen
            .iter()
            .map(|(column, part)| (column.column, *part))
            .collect();
        side_by_side(&chosen, plan);
    } else if candidates.len() > 1
        && plan.counters.is_empty()
        && are_extractions(table, &candidates)
    {
        plan.results = candidates
            .iter()
            .zip(1..)
            .map(|((column, _), number)| ResultColumn {
                column: column.column,
                extraction: Some(number),
                numbered: false,
            })
            .collect();
    } else if let Some(best) = best_of(&candidates, rows) {
        let mut others = candidates
            .iter()
            .filter(|(column, _)| column.column != best.column);
        doubt = doubt.or_else(|| others.find_map(|(column, _)| differ(best, column, rows)));
        plan.results = vec![single(best.column)];
    }
    let finals = columns_of(table, Role::Final);
    if plan.results.is_empty() {
        plan.results = finals
            .first()
            .map(|column| single(*column))
            .into_iter()
            .collect();
        for other in finals.iter().skip(1) {
            let both = (table.column(finals[0]), table.column(*other));
            if let (Some(a), Some(b)) = both {
                doubt = doubt.or_else(|| differ(a, b, rows));
            }
        }
    } else {
        plan.means.extend(finals);
    }
    plan.ambiguous = plan.ambiguous.or(doubt);
}

fn single(column: u32) -> ResultColumn {
    ResultColumn {
        column,
        extraction: None,
        numbered: false,
    }
}

fn quantity(column: &Column) -> Option<Quantity> {
    column.meaning.as_ref().and_then(|meaning| meaning.quantity)
}

fn scale(column: &Column) -> Option<Scale> {
    let unit = column.meaning.as_ref().and_then(|meaning| meaning.unit)?;
    Some(unit.ppm)
}

fn is_foreign(column: &Column) -> bool {
    let meaning = column.meaning.as_ref();
    meaning.is_some_and(|meaning| meaning.foreign.is_some())
}

/// Where a table gives both gluten and gliadin, gluten is read: no convention is needed for it.
fn of_one_quantity(candidates: Vec<Candidate<'_>>) -> Vec<Candidate<'_>> {
    let says = |wanted| {
        candidates
            .iter()
            .any(|(column, _)| quantity(column) == Some(wanted) && !is_foreign(column))
    };
    if says(Quantity::Gluten) && says(Quantity::Gliadin) {
        return candidates
            .into_iter()
            .filter(|(column, _)| quantity(column) != Some(Quantity::Gliadin))
            .collect();
    }
    candidates
}

/// A gluten and a gliadin column of the same extraction that contradict each other: gluten is twice the gliadin (CXS 118-1979,
/// 5.2). Where either is in other units than it says, or by another factor, the gluten is not known.
fn contradiction(candidates: &[Candidate<'_>], rows: &[Row]) -> Option<Ambiguous> {
    let of = |wanted| {
        candidates
            .iter()
            .filter(move |(column, _)| quantity(column) == Some(wanted) && !is_foreign(column))
    };
    let pairs = of(Quantity::Gluten).flat_map(|gluten| {
        of(Quantity::Gliadin)
            .filter(|gliadin| gliadin.1 == gluten.1)
            .map(|gliadin| (gluten.0, gliadin.0))
    });
    let figures = |row: &Row, column: &Column| match figure(row, column)? {
        Said::Number(figure) => Some((
            scale(column).unwrap_or(Scale::One).to_ppm(figure.value),
            scale(column)
                .unwrap_or(Scale::One)
                .to_ppm(0.5 / 10f64.powi(figure.decimals as i32)),
        )),
        _ => None,
    };
    pairs
        .into_iter()
        .find(|(gluten, gliadin)| {
            rows.iter().any(|row| {
                let both = figures(row, gluten).zip(figures(row, gliadin));
                both.is_some_and(|((gluten, rounded), (gliadin, halved))| {
                    (gluten - 2.0 * gliadin).abs() > (rounded + 2.0 * halved) * (1.0 + 1e-9)
                })
            })
        })
        .map(|(gluten, gliadin)| Ambiguous {
            what: Doubtful::Gluten,
            columns: (
                gluten.column.min(gliadin.column),
                gluten.column.max(gliadin.column),
            ),
        })
}

/// A column that names gluten with a unit that converts goes before one without a unit; and any before one whose unit does
/// not convert. Of numbered columns only those give way whose number another one has.
fn of_gluten_in_food(candidates: Vec<Candidate<'_>>) -> Vec<Candidate<'_>> {
    let rank = |column: &Column| {
        if is_foreign(column) {
            2
        } else {
            usize::from(quantity(column).is_none() && scale(column).is_none())
        }
    };
    let plainly = |column: &Column| quantity(column).is_some() && scale(column).is_some();
    let gives_way = |(column, part): &Candidate<'_>| {
        candidates.iter().any(|(other, theirs)| {
            let same = !part.is_numbered() || part == theirs;
            let better = (plainly(other) && scale(column).is_none())
                || (is_foreign(column) && !is_foreign(other));
            same && better && rank(other) <= rank(column) && other.column != column.column
        })
    };
    candidates
        .iter()
        .copied()
        .filter(|candidate| !gives_way(candidate))
        .collect()
}

/// Columns with the same heading, each its own, are extractions, unless another column counts those. Those that one heading
/// covers are alike by accident, and across a column without a heading another table may begin.
fn are_extractions(table: &Table, candidates: &[Candidate<'_>]) -> bool {
    candidates.windows(2).all(|pair| {
        let (a, b) = (pair[0].0, pair[1].0);
        let is_whole = (a.column..b.column).all(|column| table.column(column).is_some());
        a.heading == b.heading && !a.spread && !b.spread && is_whole
    })
}

/// The first of several single results that holds anything.
fn best_of<'a>(candidates: &[Candidate<'a>], rows: &[Row]) -> Option<&'a Column> {
    let is_filled = |column: &Column| rows.iter().any(|row| figure(row, column).is_some());
    candidates
        .iter()
        .map(|(column, _)| *column)
        .find(|column| is_filled(column))
        .or_else(|| candidates.first().map(|(column, _)| *column))
}

/// What a cell says, where it is a result at all, its figures in the unit of the heading.
fn figure(row: &Row, column: &Column) -> Option<Said> {
    let value = values::read(row.at(column.column)?, Marks::Point).ok()?;
    (value.said != Said::NotReported).then_some(value.said)
}

/// Two columns that could be the result and say different things, or of which only one speaks of some sample.
fn differ(a: &Column, b: &Column, rows: &[Row]) -> Option<Ambiguous> {
    let in_ppm = |said: Said, column: &Column| match said {
        Said::Number(figure) => {
            let ppm = scale(column).unwrap_or(Scale::One).to_ppm(figure.value);
            Said::Number(crate::gather::numbers::Figure {
                value: values::fifteen_digits(ppm),
                decimals: 0,
            })
        }
        other => other,
    };
    let says = |row: &Row, column: &Column| figure(row, column).map(|said| in_ppm(said, column));
    let pairs = || rows.iter().map(|row| (says(row, a), says(row, b)));
    let is_blank = pairs().all(|(a, _)| a.is_none()) || pairs().all(|(_, b)| b.is_none());
    let differs = !is_blank && pairs().any(|(a, b)| a != b);
    differs.then(|| Ambiguous {
        what: Doubtful::Result,
        columns: (a.column.min(b.column), a.column.max(b.column)),
    })
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
