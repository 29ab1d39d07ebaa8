//! A table's rows -> extractions: each row an outcome, and then passes over the outcomes: wells, numbers, means, words.

use crate::config::Config;
use crate::gather::books::{Row, Sheet};
use crate::gather::codes::Codes;
use crate::gather::facts::Facts;
use crate::gather::numbers::{self, Marks};
use crate::gather::readings::intervals;
use crate::gather::readings::limits::Limits;
use crate::gather::readings::means;
use crate::gather::readings::outcomes::{CellRead, Kind, RowFacts, RowOutcome, RowReader};
use crate::gather::readings::refusals;
use crate::gather::readings::subject::Subject;
use crate::gather::tables::finding::Table;
use crate::gather::tables::plan::Plan;
use crate::gather::text;
use crate::model::extraction::{AssayKind, Extraction, LabRecord, Outcome};
use crate::model::place::{LabFile, Place, Source};
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::model::understanding::UnderstoodRow;
use crate::words::say;
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
    /// What the register of reports says, which goes before all of it.
    pub stated: &'a Facts,
    /// What the report says of itself.
    pub record: &'a Arc<LabRecord>,
    /// What the results are of, where neither their heading nor their row says so.
    pub subject: Subject,
    /// Whether another table of the file says that it is of gluten: then rows of other substances are passed over.
    pub names_gluten: bool,
}

impl Context<'_> {
    /// A cell of the sheet, where it really stands.
    pub fn place(&self, row: u32, column: u32) -> Place {
        self.source(row, column).place()
    }

    /// The same, as the source of a reading.
    pub fn source(&self, row: u32, column: u32) -> Source {
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

    /// The rows of a table.
    pub fn rows(&self, table: &Table) -> &[Row] {
        &self.sheet.rows[table.rows.clone()]
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
    refusals::headings(table, plan, context, problems);
    refusals::subject(table, plan, context, problems);
    if let Some(doubt) = plan.ambiguous {
        refusals::ambiguous_columns(table, doubt, context, problems);
    }
    let mut walk = Walk {
        plan,
        context,
        groups: Vec::new(),
        extractions: Vec::new(),
        counts: BTreeMap::new(),
        means: means::Claims::default(),
        said_once: BTreeSet::new(),
        rows: Vec::new(),
    };
    for outcome in RowReader::new(table, plan, context) {
        walk.take(outcome, problems);
    }
    if plan.ambiguous.is_none() {
        walk.means.check(table, plan, context, problems);
    }
    walk.finish()
}

/// What the outcomes of the rows so far come to.
struct Walk<'a> {
    plan: &'a Plan,
    context: &'a Context<'a>,
    /// Extractions of which a further well may come: none in a table without wells.
    groups: Vec<Group>,
    extractions: Vec<Extraction>,
    counts: BTreeMap<String, u32>,
    means: means::Claims,
    said_once: BTreeSet<(Code, u32)>,
    rows: Vec<UnderstoodRow>,
}

/// The cells that make one reading: one, or the wells of an extraction.
struct Group {
    code: String,
    number: u32,
    numbered: bool,
    cells: Vec<CellRead>,
    facts: Arc<RowFacts>,
}

impl Walk<'_> {
    fn take(&mut self, outcome: RowOutcome<'_>, problems: &mut Problems) {
        for (once, problem) in outcome.problems {
            if once.is_none_or(|column| self.said_once.insert((problem.code, column))) {
                problems.add(problem.code, problem.place, problem.message, problem.hint);
            }
        }
        match outcome.kind {
            Kind::Package { code, facts } => {
                if let [cell] = outcome.cells.as_slice()
                    && self.is_like_a_mean(&code, outcome.row, cell)
                {
                    problems.add(
                        Code::Suspicious,
                        cell.source.place(),
                        say::found_like_a_mean(text::short(&cell.reported), text::short(&code)),
                        say::do_ask_whether_mean(),
                    );
                }
                for cell in outcome.cells {
                    self.place_reading(&code, cell, &facts);
                }
                self.means.cells(&code, outcome.row, self.plan);
            }
            Kind::Mean(code) => {
                self.means.row(&code, outcome.row, self.plan);
                self.note(
                    outcome.row,
                    format!("mean of {code}: checked, not a reading"),
                );
            }
            Kind::Passed(why) => self.note(outcome.row, why.to_owned()),
            Kind::Blank => {}
        }
    }

    /// Whether a figure without a code and a number of its own is the mean of the two results and more above it, as far as
    /// it is written out: then it may be none.
    fn is_like_a_mean(&self, code: &str, row: &Row, cell: &CellRead) -> bool {
        // Nobody sums up more than this: the rows of a long table are not gone over again for each of them.
        const MOST: usize = 100;
        let is_bare = row.at(self.plan.sample).is_none() && cell.number.is_none();
        let above = self.means.of(code);
        if !is_bare || above.len() > MOST {
            return false;
        }
        let raw = cell.reading.as_ref().and_then(|reading| reading.raw);
        let figure = numbers::read(&cell.reported, self.context.marks).ok();
        let (Some(own), Some(figure)) = (raw.and_then(|raw| raw.as_number()), figure) else {
            return false;
        };
        let figures: Vec<f64> = above
            .iter()
            .filter_map(|part| part.interval.as_number())
            .map(|number| number.0)
            .collect();
        if figures.len() < 2 || figures.len() < above.len() || figure.value <= 0.0 {
            return false;
        }
        let mean = figures.iter().sum::<f64>() / figures.len() as f64;
        // Half of the last digit, in ppm.
        let half = 0.5 / 10f64.powi(figure.decimals as i32) * own.0 / figure.value;
        (own.0 - mean).abs() <= half * (1.0 + 1e-9)
    }

    /// Accounts for a row that gives no reading.
    fn note(&mut self, row: &Row, outcome: String) {
        let sample = row
            .at(self.plan.sample)
            .map(|content| content.shown().into_owned())
            .unwrap_or_default();
        self.rows.push(UnderstoodRow {
            row: self.context.source(row.number, self.plan.sample).row,
            sample,
            outcome,
            source: None,
        });
    }

    /// Puts a reading to its extraction: a new one, or a further well of one that is there.
    fn place_reading(&mut self, code: &str, cell: CellRead, facts: &Arc<RowFacts>) {
        let raw = cell.reading.as_ref().and_then(|reading| reading.raw);
        let row = cell.row;
        let number = if let Some(at) = self.group_of(code, &cell) {
            let group = &mut self.groups[at];
            group.cells.push(cell);
            group.number
        } else {
            let group = self.begin(code, cell, facts);
            let number = group.number;
            if self.plan.wells {
                self.groups.push(group);
            } else {
                self.end(group);
            }
            number
        };
        if let Some(interval) = raw {
            let part = means::Part {
                row,
                number,
                interval,
            };
            self.means.reading(code, part);
        }
    }

    /// A new extraction, with its first cell.
    fn begin(&mut self, code: &str, cell: CellRead, facts: &Arc<RowFacts>) -> Group {
        let count = match self.counts.get_mut(code) {
            Some(count) => count,
            None => self.counts.entry(code.to_owned()).or_insert(0),
        };
        *count += 1;
        Group {
            code: code.to_owned(),
            number: cell.number.unwrap_or(*count),
            numbered: cell.numbered,
            cells: vec![cell],
            facts: Arc::clone(facts),
        }
    }

    /// An extraction to which nothing more is added.
    fn end(&mut self, group: Group) {
        self.rows.extend(in_words(&group, self.plan.wells));
        self.extractions.push(assemble(group, self.context));
    }

    /// The extraction that is there already and that a cell is a well of.
    fn group_of(&self, code: &str, cell: &CellRead) -> Option<usize> {
        if !self.plan.wells || cell.apart {
            return None;
        }
        let same = |group: &Group| {
            group.code == code
                && match cell.number {
                    Some(number) => group.number == number,
                    // Without numbers, the cells of one row are wells of one extraction; so are the rows where a column
                    // counts wells.
                    None => {
                        self.plan.results.len() == 1
                            || group.cells.last().is_some_and(|last| last.row == cell.row)
                    }
                }
        };
        let back = self.groups.len().saturating_sub(WELLS_BACK);
        self.groups[back..]
            .iter()
            .rposition(same)
            .map(|at| back + at)
    }

    fn finish(mut self) -> Given {
        for group in std::mem::take(&mut self.groups) {
            self.end(group);
        }
        self.rows.sort_by_key(|row| row.row);
        Given {
            extractions: self.extractions,
            rows: self.rows,
        }
    }
}

/// How far back the wells of an extraction are looked for: a plate has 96.
const WELLS_BACK: usize = 400;

/// What became of the cells of an extraction, for a person who wants to follow the reading.
fn in_words(group: &Group, wells: bool) -> impl Iterator<Item = UnderstoodRow> {
    group.cells.iter().map(move |cell| UnderstoodRow {
        row: cell.source.row,
        sample: group.code.clone(),
        outcome: if cell.ambiguous {
            format!(
                "not used: the table can be read in two ways; “{}” stands here",
                text::short(&cell.reported)
            )
        } else {
            intervals::in_words(group.number, cell.reading.as_ref(), &cell.reported, wells)
        },
        source: cell
            .reading
            .as_ref()
            .and_then(|reading| reading.interval)
            .map(|_| group.cells[0].source.clone()),
    })
}

/// The cells of a reading as one extraction.
fn assemble(group: Group, context: &Context<'_>) -> Extraction {
    let joined = |texts: Vec<&str>| texts.join(" | ");
    let read = || group.cells.iter().filter_map(|cell| cell.reading.as_ref());
    let outcome = if group.cells.iter().any(|cell| cell.ambiguous) {
        Outcome::Unreadable
    } else {
        intervals::together(group.cells.iter().map(|cell| cell.reading.as_ref()))
    };
    let reported = joined(group.cells.iter().map(|cell| &*cell.reported).collect());
    let from_gliadin = read().any(|reading| reading.from_gliadin);
    let stated: Vec<&str> = read()
        .filter_map(|reading| reading.uncertainty.as_deref())
        .collect();
    let uncertainty = match stated.is_empty() {
        true => group.facts.facts.uncertainty.clone(),
        false => Some(joined(stated).into()),
    };
    let mut remarks: Vec<&str> = group.facts.remark.as_deref().into_iter().collect();
    for note in group
        .cells
        .iter()
        .filter_map(|cell| cell.footnote.as_deref())
    {
        if !remarks.contains(&note) {
            remarks.push(note);
        }
    }
    let remark = (!remarks.is_empty()).then(|| Arc::from(remarks.join("; ")));
    let lod = read().find_map(|reading| reading.lod);
    let limits = limits_of(&group);
    let facts = &group.facts.facts;
    let source = group
        .cells
        .into_iter()
        .next()
        .expect("a group starts with a cell")
        .source;
    Extraction {
        package_code: group.code,
        number: group.number,
        numbered_by_lab: group.numbered,
        outcome,
        reported,
        from_gliadin,
        lloq: limits.lloq,
        lod: lod.unwrap_or(limits.lod),
        assay_kind: assay_kind(&group.facts.assay, context.config.lab.assay_kind),
        assay: group.facts.assay.clone(),
        lab: group.facts.lab.clone(),
        report: facts.report.clone(),
        record: context.record.clone(),
        tested_on: facts.tested.map(|(_, to)| to),
        tested_from: facts
            .tested
            .filter(|(from, to)| from < to)
            .map(|(from, _)| from),
        uncertainty,
        dilution: facts.dilution.clone(),
        remark,
        source,
    }
}

/// The limits in force for the wells of an extraction together: the greatest of each.
fn limits_of(group: &Group) -> Limits {
    let greater = |a: Ppm, b: Ppm| if a.0 >= b.0 { a } else { b };
    let each = group.cells.iter().map(|cell| cell.limits);
    each.reduce(|a, b| Limits {
        lloq: greater(a.lloq, b.lloq),
        uloq: greater(a.uloq, b.uloq),
        lod: greater(a.lod, b.lod),
    })
    .expect("a group starts with a cell")
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
