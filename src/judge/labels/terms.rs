//! The table of terms, and where its words stand in a statement.

use crate::judge::labels::words::{self, Kind, Token};
use crate::model::label::{TermClass, TermRow};
use crate::model::place::Place;
use crate::model::problem::{Code, Problems};
use crate::model::rule::Regime;
use crate::model::said::Said;
use crate::words::say;
use std::collections::HashMap;
use std::sync::LazyLock;

/// The grain of oats, which some regimes allow.
pub const OATS: &str = "oats";

/// The grain of a plant without gluten: before flour, pasta or malt it says that these are not of wheat or barley.
pub const OTHER: &str = "other";

const BUILT_IN: &str = include_str!("terms.csv");

/// The built-in table as it is written down.
pub fn built_in_text() -> &'static str {
    BUILT_IN
}

static TERMS: LazyLock<Terms> =
    LazyLock::new(|| Terms::default().extended(&rows(BUILT_IN), &mut Problems::default()));

/// What one row of the table says.
#[derive(Clone, Debug)]
pub struct Term {
    /// In words.
    pub grain: String,
    /// Where no exception applies.
    pub class: TermClass,
    /// In the order of the table.
    pub exceptions: Vec<(When, TermClass)>,
    /// In one sentence.
    pub why: String,
    /// Where that is from.
    pub source: String,
}

/// When an exception applies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// Under this regime.
    Under(Regime),
    /// Another plant is named with the term.
    Named,
    /// Another plant is listed in the brackets after the term.
    Listed,
    /// A grain is named with the term, or follows it: whole grain oats.
    Grain,
    /// It is declared gluten-free.
    GlutenFree,
}

impl Term {
    /// Whether it is a general word, which is judged by the grain that is named with it.
    pub fn is_general(&self) -> bool {
        self.exceptions.iter().any(|(when, _)| *when == When::Grain)
    }
}

/// The table of terms, ordered for finding.
#[derive(Clone, Debug, Default)]
pub struct Terms {
    terms: Vec<Term>,
    /// By the singular of their first word; the longest first.
    spellings: HashMap<String, Vec<Spelling>>,
    /// Those that stand for every word that begins so, by its first letter; the longest first.
    beginnings: HashMap<char, Vec<Spelling>>,
}

#[derive(Clone, Debug)]
struct Spelling {
    /// As the table has it.
    text: String,
    parts: Vec<Part>,
    term: usize,
}

impl Spelling {
    /// In words, then in letters: "gluten free oat" before "gluten free", "weizenstarke*" before "weizen*".
    fn length(&self) -> (usize, usize) {
        (self.parts.len(), self.text.chars().count())
    }
}

#[derive(Clone, Debug, PartialEq, Eq)]
enum Part {
    Singular(String),
    Beginning(String),
    Open,
}

/// A term found in a statement.
#[derive(Clone, Debug)]
pub struct Match<'a> {
    /// Its row.
    pub term: &'a Term,
    /// The spelling that fits, as the table has it.
    pub spelling: &'a str,
    /// Its first token.
    pub first: usize,
    /// Its last token.
    pub last: usize,
}

impl Terms {
    /// The table that comes with the program.
    pub fn built_in() -> &'static Terms {
        &TERMS
    }

    /// This table with further rows; where both have a spelling, the further one stands. Rows that cannot be used are left
    /// out, and each is named.
    pub fn extended(&self, rows: &[TermRow], problems: &mut Problems) -> Terms {
        let mut terms = self.clone();
        for row in rows {
            match term(row) {
                Ok(term) => terms.add(term, &row.term),
                Err(found) => problems.add(
                    Code::RegisterError,
                    row.place.clone(),
                    found,
                    say::do_mend_row(),
                ),
            }
        }
        terms
    }

    fn add(&mut self, term: Term, spellings: &str) {
        let at = self.terms.len();
        self.terms.push(term);
        for text in spellings.split(';').flat_map(spelled_out) {
            let text = text.trim();
            let parts = parts(text);
            let same_start = match parts.first() {
                Some(Part::Singular(word)) => self.spellings.entry(word.clone()).or_default(),
                Some(Part::Beginning(start)) => {
                    let first = start.chars().next().unwrap_or_default();
                    self.beginnings.entry(first).or_default()
                }
                Some(Part::Open) | None => continue,
            };
            let spelling = Spelling {
                text: text.trim_end_matches('*').to_owned(),
                parts,
                term: at,
            };
            // The longest first; of equally long ones the later row, which overrules.
            let place = same_start.partition_point(|other| other.length() > spelling.length());
            same_start.insert(place, spelling);
        }
    }

    /// Every term in a statement: at each word the longest spelling, and no word in two of them.
    pub fn find<'a>(&'a self, tokens: &[Token]) -> Vec<Match<'a>> {
        let mut found = Vec::new();
        let mut at = 0;
        while at < tokens.len() {
            match self.longest(&tokens[at..]) {
                Some(spelling) => {
                    let last = at + spelling.parts.len() - 1;
                    found.push(Match {
                        term: &self.terms[spelling.term],
                        spelling: &spelling.text,
                        first: at,
                        last,
                    });
                    at = last + 1;
                }
                None => at += 1,
            }
        }
        found
    }

    fn longest(&self, tokens: &[Token]) -> Option<&Spelling> {
        let Kind::Word(text, singular) = &tokens.first()?.kind else {
            return None;
        };
        let whole = self.spellings.get(singular).into_iter().flatten();
        let beginnings = self.beginnings.get(&text.chars().next()?);
        whole
            .chain(beginnings.into_iter().flatten())
            .find(|spelling| fits(&spelling.parts, tokens))
    }
}

fn fits(parts: &[Part], tokens: &[Token]) -> bool {
    parts.len() <= tokens.len()
        && parts
            .iter()
            .zip(tokens)
            .all(|(part, token)| match (part, &token.kind) {
                (Part::Singular(word), Kind::Word(_, singular)) => word == singular,
                (Part::Beginning(start), Kind::Word(text, _)) => text.starts_with(start),
                (Part::Open, Kind::Open) => true,
                _ => false,
            })
}

/// A spelling with each of its alternatives: "{glucose|maize} syrup" is two.
fn spelled_out(spelling: &str) -> Vec<String> {
    let braces = spelling.split_once('{').and_then(|(before, rest)| {
        let (alternatives, after) = rest.split_once('}')?;
        Some((before, alternatives, after))
    });
    let Some((before, alternatives, after)) = braces else {
        return vec![spelling.to_owned()];
    };
    alternatives
        .split('|')
        .flat_map(|word| spelled_out(&format!("{before}{word}{after}")))
        .collect()
}

fn parts(text: &str) -> Vec<Part> {
    let beginning = text.ends_with('*');
    let kinds = words::spelling(text.trim_end_matches('*'));
    let last = kinds.len().saturating_sub(1);
    kinds
        .into_iter()
        .enumerate()
        .filter_map(|(at, kind)| match kind {
            Kind::Word(text, _) if beginning && at == last => Some(Part::Beginning(text)),
            Kind::Word(_, singular) => Some(Part::Singular(singular)),
            Kind::Open => Some(Part::Open),
            Kind::Close | Kind::Item | Kind::Colon | Kind::Sentence => None,
        })
        .collect()
}

/// The rows of the built-in table, whose shape a test holds.
fn rows(text: &str) -> Vec<TermRow> {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    reader
        .records()
        .filter_map(Result::ok)
        .map(|record| {
            let cell = |at| record.get(at).unwrap_or_default().to_owned();
            TermRow {
                term: cell(0),
                grain: cell(1),
                class: cell(2),
                exceptions: cell(3),
                why: cell(4),
                source: cell(5),
                place: Place::default(),
            }
        })
        .collect()
}

/// Understands one row, or says what in it cannot be used.
fn term(row: &TermRow) -> Result<Term, Said> {
    let fault = |kind, written: &str| say::found_bad_term(kind, row.term.as_str(), written.trim());
    let class = |word: &str| TermClass::from_word(word.trim()).ok_or_else(|| fault("class", word));
    if row
        .term
        .split(';')
        .all(|spelling| parts(spelling).is_empty())
    {
        return Err(fault("term", ""));
    }
    let exceptions = row
        .exceptions
        .split(';')
        .filter(|exception| !exception.trim().is_empty())
        .map(|exception| {
            let (condition, word) = exception
                .split_once('=')
                .ok_or_else(|| fault("exception", exception))?;
            let when = when(condition.trim()).ok_or_else(|| fault("condition", condition))?;
            Ok((when, class(word)?))
        })
        .collect::<Result<_, Said>>()?;
    Ok(Term {
        grain: row.grain.trim().to_owned(),
        class: class(&row.class)?,
        exceptions,
        why: row.why.trim().to_owned(),
        source: row.source.trim().to_owned(),
    })
}

fn when(word: &str) -> Option<When> {
    match word {
        "named" => Some(When::Named),
        "listed" => Some(When::Listed),
        "grain" => Some(When::Grain),
        "gluten-free" => Some(When::GlutenFree),
        _ => Regime::ALL
            .iter()
            .find(|(_, name)| *name == word)
            .map(|(regime, _)| When::Under(*regime)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_built_in_table_is_whole() {
        let rows = rows(BUILT_IN);
        let lines = BUILT_IN.lines().filter(|line| !line.starts_with('#'));
        assert_eq!(
            rows.len(),
            lines.count() - 1,
            "every line but the heading is a row"
        );
        let mut problems = Problems::default();
        Terms::default().extended(&rows, &mut problems);
        assert!(problems.sorted().is_empty(), "{problems:?}");
        let incomplete = rows
            .iter()
            .find(|row| row.grain.is_empty() || row.why.is_empty() || row.source.is_empty());
        assert_eq!(incomplete, None);
    }

    #[test]
    fn a_programme_can_add_rows_and_overrule_ours() {
        let row = |term: &str, class: &str| TermRow {
            term: term.into(),
            grain: "barley".into(),
            class: class.into(),
            exceptions: "eu=exempt".into(),
            why: "We asked.".into(),
            source: "the maker's letter".into(),
            place: Place::default(),
        };
        let rows = [
            row("harbour crumb; malt extract", "depends"),
            row("x", "sometimes"),
            row("", "always"),
        ];
        let mut problems = Problems::default();
        let terms = Terms::built_in().extended(&rows, &mut problems);
        assert_eq!(problems.sorted().len(), 2, "{problems:?}");
        let found = terms.find(&words::tokens("Harbour Crumbs, malt extract"));
        let classes: Vec<_> = found.iter().map(|found| found.term.class).collect();
        assert_eq!(classes, [TermClass::Depends, TermClass::Depends]);
    }
}
