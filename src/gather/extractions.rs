//! A table's rows -> extractions: code, number, interval, source; and a problem for each cell that gives none.

use crate::config::Config;
use crate::gather::books::{Content, Row, Sheet};
use crate::gather::codes::Codes;
use crate::gather::facts::{self, Facts};
use crate::gather::finding::Table;
use crate::gather::means;
use crate::gather::numbers::Marks;
use crate::gather::plan::{Plan, ResultColumn};
use crate::gather::readings::{self, InForce, Reading};
use crate::gather::refusals;
use crate::gather::rows::{self, Standing};
use crate::gather::text;
use crate::gather::units::{self, Quantity, Unit};
use crate::model::extraction::{AssayKind, Extraction};
use crate::model::place::{LabFile, Place, Source};
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::model::understanding::UnderstoodRow;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// All that reading a table needs to know besides the table.
pub struct Context<'a> {
    /// The file.
    pub file: &'a Arc<LabFile>,
    /// The sheet; turned round where its rows are fields.
    pub sheet: &'a Sheet,
    /// Whether rows and columns of `sheet` have changed places.
    pub turned: bool,
    /// The register's codes.
    pub codes: &'a Codes,
    /// The settings.
    pub config: &'a Config,
    /// The file's decimal mark.
    pub marks: Marks,
    /// What the file says of all its results.
    pub facts: &'a Facts,
}

impl Context<'_> {
    /// A cell of the sheet, where it really stands.
    pub fn place(&self, row: u32, column: u32) -> Place {
        let source = self.source(row, column);
        source.place()
    }

    fn source(&self, row: u32, column: u32) -> Source {
        let (row, column) = if self.turned {
            (column, row)
        } else {
            (row, column)
        };
        Source {
            file: self.file.clone(),
            sheet: self.sheet.name.clone(),
            row,
            column,
        }
    }
}

/// What a table gave.
#[derive(Debug, Default)]
pub struct Given {
    /// Its extractions, in the order of their first cells.
    pub extractions: Vec<Extraction>,
    /// What became of each row.
    pub rows: Vec<UnderstoodRow>,
}

/// Reads the rows of a table.
pub fn extract(
    table: &Table,
    plan: &Plan,
    context: &Context<'_>,
    problems: &mut Problems,
) -> Given {
    let mut state = State {
        groups: Vec::new(),
        counts: BTreeMap::new(),
        given: Given::default(),
        means: means::Claims::default(),
        said_once: BTreeSet::new(),
    };
    refusals::headings(table, plan, context, problems);
    let numbers = rows::extraction_numbers(plan, &context.sheet.rows[table.rows.clone()]);
    let has_gluten = rows::analytes(plan, &context.sheet.rows[table.rows.clone()]);
    let mut walker = rows::Walker::new(plan, context.codes, has_gluten);
    for row in &context.sheet.rows[table.rows.clone()] {
        match walker.standing(row) {
            Standing::Package(code) => read_row(
                row, &code, &numbers, table, plan, context, &mut state, problems,
            ),
            Standing::Mean(code) => state.means.row(&code, row, plan),
            Standing::Passed(why) => state.note_row(row, plan, context, why),
            Standing::End => break,
            Standing::Blank => {}
            Standing::Unknown(written) => {
                refusals::unknown(row, &written, plan, context, problems);
                let why = "not used: the code is not in the register of packages";
                state.note_row(row, plan, context, why.to_owned());
            }
            Standing::BadCode(found) => {
                refusals::bad_code(row, &found, plan, context, problems);
                let why = "not used: no usable package code";
                state.note_row(row, plan, context, why.to_owned());
            }
        }
    }
    state.means.check(table, plan, context, problems);
    state.finish(plan, context)
}

struct State {
    groups: Vec<Group>,
    counts: BTreeMap<String, u32>,
    given: Given,
    means: means::Claims,
    said_once: BTreeSet<(Code, u32)>,
}

/// The cells that make one reading: one, or the wells of an extraction.
struct Group {
    code: String,
    number: u32,
    numbered: bool,
    cells: Vec<Read>,
    row: RowFacts,
}

struct Read {
    reading: Option<Reading>,
    reported: String,
    source: Source,
    row: u32,
}

/// What a row says besides its results.
#[derive(Clone)]
struct RowFacts {
    lloq: Ppm,
    facts: Facts,
    remark: Option<Arc<str>>,
}

impl State {
    fn note_row(&mut self, row: &Row, plan: &Plan, context: &Context<'_>, why: String) {
        let sample = row
            .at(plan.sample)
            .map(|content| content.shown().into_owned())
            .unwrap_or_default();
        self.given.rows.push(UnderstoodRow {
            row: context.source(row.number, plan.sample).row,
            sample,
            outcome: why,
            source: None,
        });
    }

    fn finish(mut self, plan: &Plan, context: &Context<'_>) -> Given {
        for group in self.groups {
            let extraction = assemble(group, context, &mut self.given.rows, plan.wells);
            self.given.extractions.push(extraction);
        }
        self.given.rows.sort_by_key(|row| row.row);
        self.given
    }
}

#[allow(
    clippy::too_many_arguments,
    reason = "one step of the loop above, named"
)]
fn read_row(
    row: &Row,
    code: &str,
    numbers: &rows::Numbers,
    table: &Table,
    plan: &Plan,
    context: &Context<'_>,
    state: &mut State,
    problems: &mut Problems,
) {
    let row_facts = row_facts(row, table, plan, context, state, problems);
    let given = plan.extraction.and_then(|column| numbers.of(row, column));
    let blank = plan
        .results
        .iter()
        .all(|result| row.at(result.column).is_none());
    // A package with nothing but its code in a wide row is a row that says "not reported".
    for result in &plan.results {
        let content = row.at(result.column);
        if content.is_none() && !blank && plan.wells {
            continue;
        }
        let read = read_cell(
            row, content, result, table, plan, context, &row_facts, state, problems,
        );
        let number = result.extraction.or(given);
        let numbered = (result.numbered && result.extraction.is_some())
            || (result.extraction.is_none() && given.is_some());
        place_reading(code, number, numbered, read, row_facts.clone(), plan, state);
    }
    state.means.cells(code, row, plan);
    if row.hidden && !blank {
        problems.add(
            Code::Hidden,
            Place {
                column: None,
                ..context.place(row.number, plan.sample)
            },
            "the row is hidden in the spreadsheet program; its results are read",
            "Ask the lab whether they were meant to be sent. A correction can set them aside.",
        );
    }
}

/// Puts a reading to its extraction: a new one, or a further well of one that is there.
fn place_reading(
    code: &str,
    number: Option<u32>,
    numbered: bool,
    read: Read,
    row: RowFacts,
    plan: &Plan,
    state: &mut State,
) {
    let row_number = read.row;
    if let Some(raw) = read.reading.as_ref().and_then(|reading| reading.raw) {
        state.means.reading(code, row_number, raw);
    }
    if plan.wells {
        let same = |group: &&mut Group| {
            group.code == code
                && match number {
                    Some(number) => group.number == number,
                    // Without numbers, the cells of one row are wells of one extraction; so are the rows where a
                    // column counts wells.
                    None => {
                        plan.results.len() == 1
                            || group
                                .cells
                                .last()
                                .is_some_and(|cell| cell.row == row_number)
                    }
                }
        };
        if let Some(group) = state.groups.iter_mut().rev().take(WELLS_BACK).find(same) {
            group.cells.push(read);
            return;
        }
    }
    let count = state.counts.entry(code.to_owned()).or_insert(0);
    *count += 1;
    state.groups.push(Group {
        code: code.to_owned(),
        number: number.unwrap_or(*count),
        numbered,
        cells: vec![read],
        row,
    });
}

/// How far back the wells of an extraction are looked for: a plate has 96.
const WELLS_BACK: usize = 400;

#[allow(
    clippy::too_many_arguments,
    reason = "one step of the loop above, named"
)]
fn read_cell(
    row: &Row,
    content: Option<&Content>,
    result: &ResultColumn,
    table: &Table,
    plan: &Plan,
    context: &Context<'_>,
    row_facts: &RowFacts,
    state: &mut State,
    problems: &mut Problems,
) -> Read {
    let source = context.source(row.number, result.column);
    let reported = content
        .map(|content| content.shown().into_owned())
        .unwrap_or_default();
    let mut read = Read {
        reading: None,
        reported,
        source,
        row: row.number,
    };
    let Some(content) = content else {
        read.reading = Some(Reading::not_reported());
        return read;
    };
    let meaning = table
        .column(result.column)
        .and_then(|column| column.meaning.as_ref());
    let unit_cell = plan
        .unit
        .and_then(|column| row.at(column).map(|content| (column, content)));
    let analyte = plan.analyte.and_then(|column| row.at(column));
    let analyte = analyte.map(|content| units::part(&content.shown()));
    let analyte_quantity = plan
        .analyte
        .and_then(|column| row.at(column))
        .and_then(|content| units::quantity(&content.shown()));
    let own = meaning.and_then(|meaning| meaning.unit);
    let foreign = meaning.is_some_and(|meaning| meaning.foreign.is_some());
    let in_force = InForce {
        heading: own
            .or(analyte.and_then(|parted| parted.unit))
            .or(table.unit().filter(|_| !foreign)),
        foreign,
        quantity: meaning
            .and_then(|meaning| meaning.quantity)
            .or(analyte_quantity)
            .or(row_facts.facts.quantity),
        unit_cell: unit_cell.map(|(_, content)| content.shown().into_owned()),
        facts: row_facts.facts.unit,
        lloq: row_facts.lloq,
        uloq: limit_in_force(
            row_facts.facts.uloq,
            context.config.testing.uloq,
            row_facts.facts.unit,
            None,
        ),
    };
    let place = read.source.place();
    let unit_place = unit_cell.map(|(column, _)| context.place(row.number, column));
    let heading_place = context.place(table.heading_row, result.column);
    let mut report = readings::Report {
        place,
        unit_place,
        heading_place,
        first_without_unit: !state.said_once.contains(&(Code::AssumedUnit, 0)),
        problems,
    };
    read.reading = readings::read(content, context.marks, &in_force, &mut report);
    if let Some(reading) = &read.reading {
        if reading.assumed_unit {
            state.said_once.insert((Code::AssumedUnit, 0));
        }
        if let Some(shown) = &reading.reported {
            read.reported.clone_from(shown);
        }
    }
    read
}

/// A limit of the assay as ppm gluten: what the file says, in its own unit or the results', else the settings'.
fn limit_in_force(
    said: Option<(f64, Option<Unit>)>,
    otherwise: Ppm,
    results: Option<Unit>,
    quantity: Option<Quantity>,
) -> Ppm {
    match said {
        None => otherwise,
        Some((figure, unit)) => {
            let scale = unit.or(results).map_or(units::Scale::One, |unit| unit.ppm);
            let quantity = unit.and_then(|unit| unit.quantity).or(quantity);
            readings::gluten(scale.to_ppm(figure), quantity)
        }
    }
}

/// What a row says of itself, and the file where the row is silent.
fn row_facts(
    row: &Row,
    table: &Table,
    plan: &Plan,
    context: &Context<'_>,
    state: &mut State,
    problems: &mut Problems,
) -> RowFacts {
    let shown = |column: Option<u32>| -> Option<Arc<str>> {
        column
            .and_then(|column| row.at(column))
            .map(|content| Arc::from(text::plain(&content.shown())))
    };
    let limit = |column: Option<u32>| {
        let column = column?;
        let label = table.column(column).map_or("", |column| &column.heading);
        facts::limit(label, row.at(column)?, context.marks)
    };
    let own = Facts {
        lab: shown(plan.lab),
        report: shown(plan.report),
        tested_on: refusals::day(row, plan, context, &mut state.said_once, problems),
        assay: shown(plan.assay),
        lloq: limit(plan.lloq),
        uloq: limit(plan.uloq),
        dilution: shown(plan.dilution),
        ..Facts::default()
    };
    let all = own.or(context.facts);
    let result = plan
        .results
        .first()
        .and_then(|result| table.column(result.column))
        .and_then(|column| column.meaning.as_ref());
    let unit = shown(plan.unit)
        .and_then(|unit| units::read(&unit))
        .or_else(|| result.and_then(|meaning| meaning.unit))
        .or_else(|| table.unit())
        .or(all.unit);
    let quantity = unit
        .and_then(|unit| unit.quantity)
        .or_else(|| result.and_then(|meaning| meaning.quantity))
        .or(all.quantity);
    RowFacts {
        lloq: limit_in_force(all.lloq, context.config.testing.lloq, unit, quantity),
        facts: all,
        remark: shown(plan.remark),
    }
}

/// The cells of a reading as one extraction.
fn assemble(
    group: Group,
    context: &Context<'_>,
    rows: &mut Vec<UnderstoodRow>,
    wells: bool,
) -> Extraction {
    let outcome = readings::together(group.cells.iter().map(|cell| cell.reading.as_ref()));
    let reported = group
        .cells
        .iter()
        .map(|cell| cell.reported.as_str())
        .collect::<Vec<_>>()
        .join(" | ");
    let from_gliadin = group
        .cells
        .iter()
        .filter_map(|cell| cell.reading.as_ref())
        .any(|reading| reading.from_gliadin);
    for cell in &group.cells {
        rows.push(UnderstoodRow {
            row: cell.source.row,
            sample: group.code.clone(),
            outcome: readings::in_words(group.number, cell.reading.as_ref(), &cell.reported, wells),
            source: cell
                .reading
                .as_ref()
                .and_then(|reading| reading.interval)
                .map(|_| group.cells[0].source.clone()),
        });
    }
    let source = group
        .cells
        .into_iter()
        .next()
        .expect("a group starts with a cell")
        .source;
    let facts = group.row.facts;
    let assay = facts
        .assay
        .unwrap_or_else(|| context.config.lab.assay.clone().into());
    Extraction {
        package_code: group.code,
        number: group.number,
        numbered_by_lab: group.numbered,
        outcome,
        reported,
        from_gliadin,
        lloq: group.row.lloq,
        lod: context.config.testing.lod,
        assay_kind: assay_kind(&assay, context.config.lab.assay_kind),
        assay,
        lab: facts
            .lab
            .unwrap_or_else(|| context.config.lab.name.clone().into()),
        report: facts.report,
        record: Arc::default(),
        tested_on: facts.tested_on,
        tested_from: None,
        uncertainty: None,
        dilution: facts.dilution,
        remark: group.row.remark,
        source,
    }
}

/// How an assay works, by its name.
fn assay_kind(assay: &str, otherwise: AssayKind) -> AssayKind {
    let words = text::words(assay);
    if words.contains("competiti") || words.contains("kompetitiv") {
        AssayKind::Competitive
    } else if words.contains("sandwich") {
        AssayKind::Sandwich
    } else {
        otherwise
    }
}
