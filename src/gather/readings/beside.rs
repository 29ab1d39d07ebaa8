//! What stands beside a result on a row without a code of its own: the line may be a footer's or a control's, and no further
//! result of the package above.
//!
//! The words that count stand before the results or in a column of numbers, where a lab names what a line is of.
//! What the package's own row says as well, such as its lot, says nothing of this one.

use crate::gather::books::{Content, Row};
use crate::gather::readings::marks;
use crate::gather::tables::finding::Table;
use crate::gather::tables::headings::{self, Role};
use crate::gather::tables::plan::Plan;
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::tables::wordings;
use crate::gather::text;

/// What a word says of its row.
pub enum Word {
    /// A statistic of the rows above, as it is compared.
    Statistic(String),
    /// A control, a blank, a standard.
    Control,
    /// The label of a figure that is no result: "LOQ", "Limit".
    Particulars,
    /// Something from which it cannot be told; as written.
    Unclear(String),
}

/// What the words on a row say that it is; nothing where it plainly goes on with the package whose code stands on the row
/// `named`.
pub fn word(table: &Table, plan: &Plan, row: &Row, named: Option<&Row>) -> Option<Word> {
    let is_result = |column: u32| {
        plan.means.contains(&column) || plan.results.iter().any(|one| one.column == column)
    };
    let first_result = plan.results.iter().map(|one| one.column).min();
    let mut found = None;
    for (at, (column, content)) in table.cells(row).enumerate() {
        let shown = content.shown();
        let words = text::words(&shown);
        let own = named.and_then(|named| named.at(column));
        let own = own.map(|content| text::words(&content.shown()));
        let is_number = vocabulary::ordinal(&words).is_some();
        if is_number || own.as_ref() == Some(&words) {
            continue;
        }
        let counts = plan.counters.contains(&column);
        let leads = at == 0 || counts || first_result.is_some_and(|first| column < first);
        if leads && vocabulary::means(&words, Meaning::Statistic) {
            return Some(Word::Statistic(words));
        }
        if is_result(column) || !matches!(content, Content::Text(_)) {
            continue;
        }
        let is_control = marks::is_control(&words);
        if leads && is_control {
            return Some(Word::Control);
        }
        if leads && is_label(&shown) {
            return Some(Word::Particulars);
        }
        let is_unclear = if counts {
            !counts_like(&words, own.as_deref())
        } else if leads {
            let differs = may_name(table, column) && !is_like(&words, own.as_deref());
            differs || says_otherwise(&words)
        } else {
            is_control && !is_outcome(&words) && may_say_what(table, column)
        };
        if is_unclear && found.is_none() {
            found = Some(Word::Unclear(shown.into_owned()));
        }
    }
    found
}

/// Whether a text is a known label of something that is no result.
fn is_label(written: &str) -> bool {
    let label = written.trim_end_matches([':', '=', ' ']);
    let label = label.split([':', '=']).next().unwrap_or(label);
    let known = headings::may_be_heading(label).then(|| headings::read(label));
    known.flatten().is_some_and(|heading| {
        matches!(
            heading.role,
            Role::Lloq | Role::Uloq | Role::Lod | Role::Uncertainty | Role::Unit | Role::Ignored
        )
    })
}

/// Whether any word says that a figure is no result: a limit, a recovery, a target.
fn says_otherwise(words: &str) -> bool {
    words.split(' ').any(wordings::denies)
}

/// Whether a column at the left may name what a line is of: not one for days, remarks and the like.
fn may_name(table: &Table, column: u32) -> bool {
    let role = table.column(column).and_then(|column| column.role());
    role.is_none_or(|role| {
        matches!(
            role,
            Role::Ignored | Role::Dilution | Role::LabSample | Role::Added
        )
    })
}

/// Whether a column may say what a row is: one that is unknown, or of which nothing is used, or for remarks.
fn may_say_what(table: &Table, column: u32) -> bool {
    let role = table.column(column).and_then(|column| column.role());
    role.is_none_or(|role| matches!(role, Role::Ignored | Role::Remark))
}

/// Words that say how a test came out as well as which control it was.
fn is_outcome(words: &str) -> bool {
    words
        .split(' ')
        .all(|word| word.starts_with("pos") || word.starts_with("neg"))
}

/// Whether a text numbers an extraction in the way in which the package's own row does: `E1` and `E2`, `1 of 2` and `2 of 2`.
fn counts_like(words: &str, own: Option<&str>) -> bool {
    let Some(own) = own else {
        return marks::gives_number(words);
    };
    is_like(words, Some(own)) || (marks::gives_number(words) && vocabulary::ordinal(own).is_none())
}

/// Whether a text differs from the one of the package's own row by its figures alone: `L-77` and `L-78`.
fn is_like(words: &str, own: Option<&str>) -> bool {
    let letters = |words: &str| -> String {
        let kept = words.chars().filter(|c| !c.is_ascii_digit());
        kept.collect()
    };
    let has_letters = words.contains(char::is_alphabetic);
    !has_letters || own.is_some_and(|own| letters(own) == letters(words))
}
