//! A row of a table -> its outcome: what it is, what its cells say, and what is wrong with it. Nothing here is shared.

use crate::gather::books::{Content, Row};
use crate::gather::facts::{self, Facts};
use crate::gather::readings::extractions::Context;
use crate::gather::readings::intervals::Reading;
use crate::gather::readings::limits::Limits;
use crate::gather::readings::marks;
use crate::gather::readings::nearby::{self, Nearby};
use crate::gather::readings::refusals;
use crate::gather::readings::rows::{self, Standing};
use crate::gather::readings::signs::Signs;
use crate::gather::readings::subject;
use crate::gather::readings::withdrawn;
use crate::gather::tables::finding::Table;
use crate::gather::tables::headings::Role;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::units::Unit;
use crate::gather::text;
use crate::model::place::Source;
use crate::model::problem::{Problem, Problems};
use std::cell::OnceCell;
use std::collections::BTreeMap;
use std::sync::Arc;

/// A row, understood.
pub struct RowOutcome<'a> {
    /// The row.
    pub row: &'a Row,
    /// What it is.
    pub kind: Kind,
    /// Its cells that hold results.
    pub cells: Vec<CellRead>,
    /// What is wrong; a problem with a column is told once for that column.
    pub problems: Vec<(Option<u32>, Problem)>,
}

/// What a row is.
pub enum Kind {
    /// Results of a registered package.
    Package {
        /// As the register spells it.
        code: String,
        /// What the row says besides.
        facts: Arc<RowFacts>,
    },
    /// A mean of this package's results.
    Mean(String),
    /// Not used; why, in words.
    Passed(&'static str),
    /// Nothing in it.
    Blank,
}

/// A cell that holds a result, or should.
pub struct CellRead {
    /// What it says; none where it cannot be read.
    pub reading: Option<Reading>,
    /// Its text.
    pub reported: String,
    /// Where it stands.
    pub source: Source,
    /// Its row, as the sheet is turned.
    pub row: u32,
    /// The number of its extraction, where one is given.
    pub number: Option<u32>,
    /// Whether the lab gave that number.
    pub numbered: bool,
    /// The footnote that its mark stands for.
    pub footnote: Option<Arc<str>>,
    /// The limits of the assay that are in force for it.
    pub limits: Limits,
    /// Whether the table can be understood in two ways, so that nothing is read.
    pub ambiguous: bool,
    /// Whether it is a well of no other cell's extraction.
    pub apart: bool,
}

/// What a row says besides its results, and the file where the row is silent.
#[derive(Clone, PartialEq)]
pub struct RowFacts {
    /// The assay, the programme's where the file names none.
    pub assay: Arc<str>,
    /// The lab, likewise.
    pub lab: Arc<str>,
    /// All that is known as text.
    pub facts: Facts,
    /// The lab's remark.
    pub remark: Option<Arc<str>>,
}

/// Goes down a table and gives each row's outcome.
pub struct RowReader<'a> {
    pub(super) table: &'a Table,
    pub(super) plan: &'a Plan,
    pub(super) context: &'a Context<'a>,
    walker: rows::Walker<'a>,
    numbers: marks::Numbers,
    rows: &'a [Row],
    at: usize,
    pub(super) doubtful: bool,
    ended: bool,
    /// The programme's own assay and lab.
    otherwise: (Arc<str>, Arc<str>),
    /// What the row before said: most rows say the same, and share it.
    before: Option<Arc<RowFacts>>,
    /// The unit of the table's headings.
    pub(super) unit: Option<Unit>,
    /// Units right below the headings of results.
    pub(super) below: BTreeMap<u32, Nearby>,
    /// Signs in columns of their own.
    pub(super) signs: Signs,
    /// Where a row may say that it is no result.
    pub(super) withdrawing: withdrawn::Columns,
    /// Columns of analytes without a known heading.
    unheaded: Vec<u32>,
    /// The last row that names a registered package, once it was asked for.
    last_code: OnceCell<Option<usize>>,
}

impl<'a> RowReader<'a> {
    /// Starts above the first row.
    pub fn new(table: &'a Table, plan: &'a Plan, context: &'a Context<'a>) -> RowReader<'a> {
        let rows = context.rows(table);
        let analytes = rows::analytes(plan, rows);
        RowReader {
            table,
            plan,
            context,
            walker: rows::Walker::new(table, plan, context.codes, analytes),
            numbers: marks::extraction_numbers(plan, rows),
            rows,
            at: 0,
            doubtful: context.subject.refuses(),
            ended: false,
            otherwise: (
                context.config.lab.assay.as_str().into(),
                context.config.lab.name.as_str().into(),
            ),
            before: None,
            unit: table.unit(),
            below: nearby::below_headings(plan, rows),
            signs: Signs::of(table, plan, rows, context.codes),
            withdrawing: withdrawn::Columns::of(table, plan, rows),
            unheaded: subject::unheaded(table, rows),
            last_code: OnceCell::new(),
        }
    }

    fn outcome(&mut self, row: &'a Row, next: Option<&'a Row>) -> RowOutcome<'a> {
        let mut outcome = RowOutcome {
            row,
            kind: Kind::Blank,
            cells: Vec::new(),
            problems: Vec::new(),
        };
        if self.ended {
            if self.table.cells(row).next().is_some() {
                outcome.kind =
                    Kind::Passed("not used: it stands below the headings of another table");
            }
            return outcome;
        }
        let mut told = Problems::default();
        outcome.kind = match self.walker.standing(row, next) {
            Standing::Package(code) => return self.package(outcome, code),
            Standing::Mean(code) => Kind::Mean(code),
            Standing::Passed(why) => Kind::Passed(why),
            Standing::Blank => Kind::Blank,
            Standing::End => {
                self.ended = true;
                Kind::Passed("not used: the headings of another table; this one ends here")
            }
            Standing::Doubtful => {
                if self.codes_follow() {
                    self.doubtful = true;
                    refusals::ambiguous_row(row, self.table, self.context, &mut told);
                } else {
                    self.ended = true;
                }
                Kind::Passed("not used: headings of another table, or a remark")
            }
            Standing::Unclear(code, written) => {
                refusals::unclear_row(row, (&code, &written), self.plan, self.context, &mut told);
                outcome.tell(None, told);
                return self.unclear(outcome, code);
            }
            Standing::Unknown(written) => {
                refusals::unknown(row, &written, self.plan, self.context, &mut told);
                Kind::Passed("not used: the code is not in the register of packages")
            }
            Standing::BadCode(found) => {
                refusals::bad_code(row, &found, self.plan, self.context, &mut told);
                Kind::Passed("not used: no usable package code")
            }
        };
        outcome.tell(None, told);
        outcome
    }

    /// Whether any row from here on names a registered package.
    fn codes_follow(&self) -> bool {
        let last = self.last_code.get_or_init(|| {
            self.rows.iter().rposition(|row| {
                let mut cells = self.table.cells(row);
                cells.any(|(_, content)| self.context.codes.find(&content.shown()).is_some())
            })
        });
        last.is_some_and(|last| last >= self.at)
    }

    /// The outcome of a row of a registered package.
    fn package(&mut self, mut outcome: RowOutcome<'a>, code: String) -> RowOutcome<'a> {
        let (row, plan) = (outcome.row, self.plan);
        let mut told = Problems::default();
        if let Some((column, written)) = subject::other_on(self.table, plan, row, &self.unheaded) {
            if !self.context.names_gluten {
                let place = self.context.place(row.number, column);
                refusals::other_analyte(place, &written, "row", &mut told);
            }
            outcome.tell(None, told);
            outcome.kind = Kind::Passed("not used: another analyte");
            return outcome;
        }
        let is_refused = !self.doubtful && self.refuse_row(row, &mut told);
        outcome.tell(None, std::mem::take(&mut told));
        let facts = self.shared(row, &mut told);
        outcome.tell(plan.of(Role::TestedOn), std::mem::take(&mut told));
        let given = plan
            .extraction
            .and_then(|column| self.numbers.of(row, column));
        let results = plan.results.iter();
        let blank = results
            .clone()
            .all(|result| row.at(result.column).is_none());
        // A package with nothing but its code in a wide row is a row that says "not reported".
        for result in results {
            if row.at(result.column).is_none() && !blank && plan.wells {
                continue;
            }
            let mut cell = match is_refused {
                true => self.without_reading(row, result, &facts),
                false => self.cell(row, result, &facts, &mut told),
            };
            cell.number = result.extraction.or(given);
            cell.numbered = match result.extraction {
                Some(_) => result.numbered,
                None => given.is_some(),
            };
            if cell
                .reading
                .as_ref()
                .is_some_and(|reading| reading.assumed_unit)
            {
                let mut once = Problems::default();
                refusals::no_unit(
                    self.context.place(self.table.heading_row, result.column),
                    &mut once,
                );
                // Of several columns the first is told.
                outcome.tell(Some(0), once);
            }
            outcome.cells.push(cell);
        }
        if !is_refused {
            self.hold_against_remarks(row, &mut outcome.cells, &mut told);
        }
        if let Some((column, other)) = self.second_code(row, &code) {
            refusals::second_code(
                self.context.place(row.number, column),
                &code,
                other,
                &mut told,
            );
        }
        if row.hidden && !blank {
            refusals::hidden_row(row, plan, self.context, &mut told);
        }
        outcome.tell(None, told);
        outcome.kind = Kind::Package { code, facts };
        outcome
    }

    /// The outcome of a row that may be a further result of a package, or none: no other one is given its number, and
    /// the package has a result that cannot be read.
    fn unclear(&mut self, outcome: RowOutcome<'a>, code: String) -> RowOutcome<'a> {
        let mut outcome = self.package(outcome, code);
        for cell in &mut outcome.cells {
            (cell.reading, cell.number, cell.numbered) = (None, None, false);
            cell.apart = true;
        }
        outcome
    }

    /// Another registered code on the row of a package, in a column of which nothing is known, or that names samples too.
    fn second_code<'c>(&'c self, row: &Row, code: &str) -> Option<(u32, &'c str)> {
        if self.plan.ambiguous.is_some() {
            return None;
        }
        self.table
            .cells(row)
            .filter(|(column, _)| *column != self.plan.sample)
            .filter(|(column, _)| {
                let role = self.table.column(*column).and_then(|column| column.role());
                role.is_none_or(|role| role == Role::Sample)
            })
            .find_map(|(column, content)| {
                let other = self.context.codes.find(&content.shown())?;
                (other != code && other.bytes().any(|b| !b.is_ascii_digit()))
                    .then_some((column, other))
            })
    }

    pub(super) fn at_role<'r>(&self, row: &'r Row, role: Role) -> Option<&'r Content> {
        row.at(self.plan.of(role)?)
    }

    /// The facts of a row; those of the row before where it says the same.
    fn shared(&mut self, row: &Row, problems: &mut Problems) -> Arc<RowFacts> {
        let facts = self.row_facts(row, problems);
        match &self.before {
            Some(before) if **before == facts => Arc::clone(before),
            _ => {
                let facts = Arc::new(facts);
                self.before = Some(Arc::clone(&facts));
                facts
            }
        }
    }

    /// What a row says of itself, and the file where the row is silent.
    fn row_facts(&self, row: &Row, problems: &mut Problems) -> RowFacts {
        let shown = |role: Role| -> Option<Arc<str>> {
            self.at_role(row, role)
                .map(|content| Arc::from(text::plain(&content.shown())))
        };
        let limit = |role: Role| {
            let column = self.plan.of(role)?;
            let known = self.table.column(column);
            let unit = known.and_then(|column| column.meaning.as_ref()?.unit);
            facts::limit(unit, row.at(column)?, self.context.marks)
        };
        let own = Facts {
            lab: shown(Role::Lab),
            report: shown(Role::Report),
            tested: refusals::day(row, self.plan, self.context, problems),
            assay: shown(Role::Assay),
            lloq: limit(Role::Lloq),
            uloq: limit(Role::Uloq),
            lod: limit(Role::Lod),
            uncertainty: shown(Role::Uncertainty),
            dilution: shown(Role::Dilution),
            ..Facts::default()
        };
        let all = self.context.stated.clone().or(&own).or(self.context.facts);
        RowFacts {
            remark: shown(Role::Remark),
            assay: all
                .assay
                .clone()
                .unwrap_or_else(|| self.otherwise.0.clone()),
            lab: all.lab.clone().unwrap_or_else(|| self.otherwise.1.clone()),
            facts: all,
        }
    }
}

impl<'a> Iterator for RowReader<'a> {
    type Item = RowOutcome<'a>;

    fn next(&mut self) -> Option<RowOutcome<'a>> {
        let row = self.rows.get(self.at)?;
        self.at += 1;
        let next = self.rows.get(self.at);
        Some(self.outcome(row, next))
    }
}

impl RowOutcome<'_> {
    /// Adds what was told; once for a column, where one is given.
    fn tell(&mut self, once: Option<u32>, problems: Problems) {
        self.problems
            .extend(problems.each().map(|problem| (once, problem)));
    }
}
