//! What each row of a table is: a package, a control, a mean, a footnote, a code that nobody knows.

use crate::gather::books::{Content, Row};
use crate::gather::codes::{self, Codes, Mangled};
use crate::gather::numbers::Marks;
use crate::gather::readings::beside::{self, Word};
use crate::gather::readings::marks;
use crate::gather::readings::values;
use crate::gather::tables::finding::Table;
use crate::gather::tables::headings::{self, Role};
use crate::gather::tables::plan::Plan;
use crate::gather::tables::units;
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;
use std::collections::BTreeSet;

/// What a row is.
#[derive(Clone, Debug, PartialEq)]
pub enum Standing {
    /// Results of this package, as the register spells it.
    Package(String),
    /// A mean of this package's results.
    Mean(String),
    /// Not used, and no problem; in words.
    Passed(&'static str),
    /// Nothing in it.
    Blank,
    /// The headings of another table: this one has ended.
    End,
    /// A row that may be headings of another table or a remark; what is below can be read in two ways.
    Doubtful,
    /// A result without a code of its own, beside a word from which it cannot be told whether it is a further result of the
    /// package above: that package, and the word.
    Unclear(String, String),
    /// Results of a code that is not in the register.
    Unknown(String),
    /// Results without a usable code.
    BadCode(BadCode),
}

/// Why there is no usable code.
#[derive(Clone, Debug, PartialEq)]
pub enum BadCode {
    /// None on this row or above.
    None,
    /// A registered code in another column, as written.
    Astray(String),
    /// As written, and what a spreadsheet has done.
    Mangled(String, Mangled),
}

/// Goes down a table and keeps in mind the code that blank cells continue.
pub struct Walker<'a> {
    table: &'a Table,
    plan: &'a Plan,
    codes: &'a Codes,
    analytes: Analytes,
    /// The code of this row or of the last one that had one, as it is compared.
    sample: String,
    current: Option<Standing>,
    /// The row that names it.
    named: Option<&'a Row>,
}

/// Which samples of a table have rows of gluten, where a column names what was measured.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Analytes {
    /// Whether any row says gluten or gliadin: then the others measure something else.
    named: bool,
    /// The codes of those with a row of gluten, for which gliadin is not needed.
    with_gluten: BTreeSet<String>,
}

/// Looks which analytes the rows of a table name.
pub fn analytes(plan: &Plan, rows: &[Row]) -> Analytes {
    let mut found = Analytes::default();
    let Some(column) = plan.of(Role::Analyte) else {
        return found;
    };
    let mut sample = String::new();
    for row in rows {
        if let Some(content) = row.at(plan.sample) {
            sample = codes::key(&content.shown());
        }
        match row
            .at(column)
            .and_then(|content| units::quantity(&content.shown()))
        {
            Some(units::Quantity::Gluten) => {
                found.named = true;
                found.with_gluten.insert(sample.clone());
            }
            Some(units::Quantity::Gliadin) => found.named = true,
            None => {}
        }
    }
    found
}

impl<'a> Walker<'a> {
    /// Starts above the first row.
    pub fn new(
        table: &'a Table,
        plan: &'a Plan,
        codes: &'a Codes,
        analytes: Analytes,
    ) -> Walker<'a> {
        Walker {
            table,
            plan,
            codes,
            analytes,
            sample: String::new(),
            current: None,
            named: None,
        }
    }

    /// What the next row is.
    pub fn standing(&mut self, row: &'a Row, next: Option<&Row>) -> Standing {
        let results: Vec<&Content> = self
            .plan
            .results
            .iter()
            .filter_map(|result| row.at(result.column))
            .collect();
        let sample = row.at(self.plan.sample);
        let key = sample.map(|content| codes::key(&content.shown()));
        let registered = key.as_deref().and_then(|key| self.codes.with_key(key));
        if registered.is_none() {
            match self.other_headings(row, next) {
                Some(OtherHeadings::Known) => return Standing::End,
                Some(OtherHeadings::Repeated) => {
                    return Standing::Passed("not used: the headings again");
                }
                Some(OtherHeadings::Doubtful) => return Standing::Doubtful,
                None => {}
            }
        }
        self.sample = key.unwrap_or_else(|| std::mem::take(&mut self.sample));
        if self.is_other_analyte(row) {
            return Standing::Passed("not used: another analyte");
        }
        let standing = match sample {
            Some(content) => self.named(content, registered, &results, row),
            None => self.continued(&results, row),
        };
        if sample.is_some() && !matches!(standing, Standing::Mean(_)) {
            self.current = Some(standing.clone());
            self.named = Some(row);
        }
        standing
    }

    fn is_other_analyte(&self, row: &Row) -> bool {
        let Some(content) = self
            .plan
            .of(Role::Analyte)
            .and_then(|column| row.at(column))
        else {
            return false;
        };
        // A figure names no substance: the row is laid out otherwise.
        if values::is_figure(content) {
            return false;
        }
        match units::quantity(&content.shown()) {
            Some(units::Quantity::Gluten) => false,
            Some(units::Quantity::Gliadin) => self.analytes.with_gluten.contains(&self.sample),
            None => self.analytes.named,
        }
    }

    /// A row with something in the cell for the code.
    fn named(
        &self,
        content: &Content,
        registered: Option<&str>,
        results: &[&Content],
        row: &Row,
    ) -> Standing {
        let is_date = matches!(content, Content::Date { .. });
        if let Some(code) = registered
            && !is_date
        {
            return self.of_package(code, row);
        }
        let shown = content.shown();
        let words = text::words(&shown);
        if vocabulary::means(&words, Meaning::Statistic) {
            return self.mean_or_passed(&words);
        }
        if marks::is_control(&words) {
            return Standing::Passed(CONTROL);
        }
        let readable = results
            .iter()
            .any(|content| values::read(content, Marks::Point).is_ok());
        if !readable && let Some(astray) = self.astray(row) {
            return astray;
        }
        if results.is_empty() {
            return Standing::Passed("not used: no result, and no code of the register");
        }
        if is_sentence(&shown) && !readable {
            return Standing::Passed("not used: a note");
        }
        let mangled = if is_date {
            Some(Mangled::Date)
        } else {
            self.codes.mangled(&shown)
        };
        match mangled {
            Some(how) => Standing::BadCode(BadCode::Mangled(shown.into_owned(), how)),
            // A heading of a group, a signature: no result is lost, unless the code is a registered one mistyped.
            None if !readable && self.codes.nearest(&shown).is_none() => Standing::Passed(
                "not used: no result that can be read, and no code of the register",
            ),
            None => Standing::Unknown(shown.into_owned()),
        }
    }

    /// A row of a known package: its results, or a mean of them.
    fn of_package(&self, code: &str, row: &Row) -> Standing {
        for content in self
            .plan
            .counters
            .iter()
            .filter_map(|column| row.at(*column))
        {
            let words = text::words(&content.shown());
            if vocabulary::means(&words, Meaning::Mean) {
                return Standing::Mean(code.to_owned());
            }
            if vocabulary::ordinal(&words).is_none()
                && vocabulary::means(&words, Meaning::Statistic)
            {
                return Standing::Passed(STATISTIC);
            }
        }
        Standing::Package(code.to_owned())
    }

    /// A row with nothing in the cell for the code: it continues the code above.
    fn continued(&mut self, results: &[&Content], row: &Row) -> Standing {
        if results.is_empty() {
            if let Some(astray) = self.astray(row) {
                return astray;
            }
            return if self.table.cells(row).next().is_none() {
                Standing::Blank
            } else {
                Standing::Passed("not used: no result")
            };
        }
        let package = match &self.current {
            Some(Standing::Package(code)) => Some(code.clone()),
            _ => None,
        };
        match beside::word(self.table, self.plan, row, self.named) {
            Some(Word::Statistic(words)) => return self.mean_or_passed(&words),
            // What stands below such a line without a code belongs to nobody.
            Some(Word::Control) => {
                self.current = Some(Standing::BadCode(BadCode::None));
                return Standing::Passed(CONTROL);
            }
            Some(Word::Particulars) => {
                self.current = Some(Standing::BadCode(BadCode::None));
                return Standing::Passed("not used: a line of particulars, and no package");
            }
            Some(Word::Unclear(written)) => {
                if let Some(code) = package {
                    return Standing::Unclear(code, written);
                }
            }
            None => {}
        }
        match &self.current {
            Some(Standing::Package(code)) => self.of_package(code, row),
            Some(Standing::Passed(why)) if *why == CONTROL => Standing::Passed(why),
            Some(Standing::Unknown(code)) => Standing::Unknown(code.clone()),
            Some(Standing::BadCode(found)) => Standing::BadCode(found.clone()),
            _ if results
                .iter()
                .any(|content| values::read(content, Marks::Point).is_ok()) =>
            {
                Standing::BadCode(BadCode::None)
            }
            _ => Standing::Passed("not used: no code, and no result that can be read"),
        }
    }

    /// A row whose registered code and figure stand in columns that are neither the codes' nor the results'.
    fn astray(&self, row: &Row) -> Option<Standing> {
        let is_code = |content: &Content| self.codes.find(&content.shown()).is_some();
        let (_, code) = self
            .table
            .cells(row)
            .find(|(_, content)| is_code(content))?;
        let figure = self.table.cells(row).any(|(_, content)| {
            !is_code(content)
                && values::read(content, Marks::Point)
                    .is_ok_and(|value| value.said != values::Said::NotReported)
        });
        figure.then(|| Standing::BadCode(BadCode::Astray(code.shown().into_owned())))
    }

    /// Whether a row holds headings: the same again, those of another table, or what may be such.
    fn other_headings(&self, row: &Row, next: Option<&Row>) -> Option<OtherHeadings> {
        let cells: Vec<(u32, &Content)> = self.table.cells(row).collect();
        if cells.len() < 2 {
            return None;
        }
        let again = cells.iter().all(|(column, content)| {
            let heading = self.table.column(*column).map(|column| &column.heading);
            heading.is_some_and(|heading| same_words(heading, &content.shown()))
        });
        if again {
            return Some(OtherHeadings::Repeated);
        }
        let may_be = |content: &Content| {
            let shown = content.shown();
            matches!(content, Content::Text(_))
                && headings::may_be_heading(&shown)
                && self.codes.find(&shown).is_none()
                && values::read_text(&shown, Marks::Point).is_err()
        };
        let names_samples = |content: &Content| {
            headings::read(&content.shown()).is_some_and(|heading| heading.role.names_sample())
        };
        let known = cells
            .iter()
            .filter(|(_, content)| {
                let shown = content.shown();
                headings::may_be_heading(&shown) && headings::read(&shown).is_some()
            })
            .count();
        let first = row.at(self.plan.sample);
        let figures_below = |column: u32| {
            next.and_then(|next| next.at(column))
                .filter(|content| self.codes.find(&content.shown()).is_none())
                .is_some_and(|content| {
                    values::read(content, Marks::Point)
                        .is_ok_and(|value| value.said != values::Said::NotReported)
                })
        };
        // Figures under headings that are unknown, or that name results: nobody can say whose and what they are.
        let results = cells.iter().any(|(column, content)| {
            figures_below(*column) && !headings::says_otherwise(&content.shown())
        });
        let elsewhere = if results {
            OtherHeadings::Doubtful
        } else {
            OtherHeadings::Known
        };
        if first.is_some_and(names_samples) && known >= 2 {
            return Some(elsewhere);
        }
        if !cells.iter().all(|(_, content)| may_be(content)) {
            return None;
        }
        // A remark beside a group's name is no heading; a word such as "OD" or "Weight" over figures is one.
        let known_over_figures = cells.iter().any(|(column, content)| {
            figures_below(*column)
                && headings::may_be_heading(&content.shown())
                && headings::read(&content.shown()).is_some()
        });
        if known_over_figures {
            return Some(elsewhere);
        }
        let filled =
            |row: &Row| -> Vec<u32> { self.table.cells(row).map(|(column, _)| column).collect() };
        let covers_result = self
            .plan
            .results
            .iter()
            .any(|result| row.at(result.column).is_some());
        let is_over_all = next.is_some_and(|next| filled(next) == filled(row));
        let wordy = first.is_some_and(|content| {
            let shown = content.shown();
            !shown.contains(|c: char| c.is_ascii_digit()) && !is_sentence(&shown)
        });
        (covers_result && is_over_all && wordy).then_some(OtherHeadings::Doubtful)
    }

    fn mean_or_passed(&self, words: &str) -> Standing {
        match &self.current {
            Some(Standing::Package(code)) if vocabulary::means(words, Meaning::Mean) => {
                Standing::Mean(code.clone())
            }
            _ => Standing::Passed(STATISTIC),
        }
    }
}

/// What a row of headings below a table's own is.
enum OtherHeadings {
    Known,
    Repeated,
    Doubtful,
}

/// Why a row of a control is not used.
const CONTROL: &str = "not used: a control, blank or standard";

/// Why a row of a statistic is not used.
const STATISTIC: &str = "not used: a statistic of the rows above";

fn same_words(a: &str, b: &str) -> bool {
    text::words(a) == text::words(b)
}

/// A code is short; a note has several words.
fn is_sentence(text: &str) -> bool {
    text.split_whitespace().count() >= 5
}
