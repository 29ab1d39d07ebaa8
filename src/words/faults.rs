//! What can be wrong with a catalogue, told at its line.

use std::fmt;

/// Something wrong with a catalogue's file.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct WordFault {
    /// Path below the template folder: `words/de/verdict.ftl`.
    pub file: String,
    /// Line, from 1.
    pub line: usize,
    /// What is wrong and what to do.
    pub message: String,
}

impl fmt::Display for WordFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}, line {}: {}", self.file, self.line, self.message)
    }
}

/// The line of a byte, from 1.
pub fn line_of(text: &str, at: usize) -> usize {
    let before = text.get(..at).unwrap_or(text);
    before.matches('\n').count() + 1
}

/// The line on which a message begins, from 1.
pub fn line_of_message(text: &str, id: &str) -> usize {
    let begins = |line: &str| {
        line.strip_prefix(id)
            .is_some_and(|rest| rest.trim_start().starts_with('='))
    };
    text.lines().position(begins).map_or(1, |index| index + 1)
}
