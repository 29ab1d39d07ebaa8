//! Every message that there is, with what it is given: the one table that code, catalogues and tests share.
//!
//! A row makes a function of the message's name, so that a message without its figures does not compile; a catalogue that
//! lacks a message, or uses a figure that the message is not given, is refused with its line.

use super::catalogue::{Said, Value};

/// What a message is given under one name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Words from elsewhere or a figure that is already written: a name, a code, "20 ppm".
    Text,
    /// A whole number, to be counted in the language's own plural.
    Count,
    /// One of these words, which choose between wordings.
    Choice(&'static [&'static str]),
}

/// A message: its group (the file of the catalogue that holds it), its name there, and what it is given.
#[derive(Clone, Copy, Debug)]
pub struct Message {
    /// The file that holds it: `verdict` for `words/en/verdict.ftl`.
    pub group: &'static str,
    /// Its name in the catalogue.
    pub id: &'static str,
    /// What it is given.
    pub given: &'static [(&'static str, Kind)],
}

macro_rules! kind {
    (text) => { Kind::Text };
    (count) => { Kind::Count };
    ([$($word:literal)+]) => { Kind::Choice(&[$($word),+]) };
}

macro_rules! kind_type {
    (text) => { impl Into<String> };
    (count) => { impl Into<u64> };
    ([$($word:literal)+]) => { &'static str };
}

macro_rules! value {
    (text, $value:ident) => { Value::Text($value.into()) };
    (count, $value:ident) => { Value::Count($value.into()) };
    ([$($word:literal)+], $value:ident) => {{
        debug_assert!([$($word),+].contains(&$value), "{} is none of the words", $value);
        Value::Text($value.to_owned())
    }};
}

macro_rules! messages {
    ($($group:literal { $( $(#[$doc:meta])* $id:ident ( $($name:ident : $kind:tt),* $(,)? ) ; )* })*) => {
        /// Every message, in the order in which a reader meets them.
        pub const MESSAGES: &[Message] = &[$($(Message {
            group: $group,
            id: stringify!($id),
            given: &[$((stringify!($name), kind!($kind))),*],
        }),*),*];

        /// One function a message.
        pub mod say {
            use super::*;
            $($(
                $(#[$doc])*
                pub fn $id($($name: kind_type!($kind)),*) -> Said {
                    Said { id: stringify!($id), values: vec![$((stringify!($name), value!($kind, $name))),*] }
                }
            )*)*
        }
    };
}

messages! {
    "common" {
        /// A day in full.
        day(day: count, month: count, year: text);
        /// Two things in one.
        list_of_two(first: text, last: text);
        /// Several, the last one after "and".
        list_of_more(others: text, last: text);
    }
    "reasons" {
        /// On which side of the limit a result is, taken in by the reasons.
        side_over(rule: ["fails" "passes" "detection"], limit: text);
        /// The other side.
        side_within(rule: ["fails" "passes" "detection"], limit: text);
        /// What a package holds.
        held(kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text);
        /// The claim is none that the rule knows.
        reason_unknown_claim(claim: text);
        /// The register has no claim.
        reason_no_claim();
        /// The word for processing is none of the known ones.
        reason_unknown_processing();
        /// A heading is nearly one that is missing.
        reason_heading(found: text, meant: text);
        /// A field cannot be read.
        reason_field(column: text, written: text);
        /// A row cannot be used.
        reason_row();
        /// A row about a lab's report cannot be used.
        reason_report(file: text);
        /// A file is nearly named as a register.
        reason_misnamed(meant: text);
        /// Every package had too little to measure.
        reason_none_measured(packages: count, below: text, rule: ["fails" "passes" "detection"], limit: text);
        /// Every package is within the limit.
        reason_all_within(packages: count, guarded: ["yes" "no"], rule: ["fails" "passes" "detection"], limit: text);
        /// A package is over the limit.
        reason_over(package: text, kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text, rule: ["fails" "passes" "detection"], limit: text);
        /// Extractions that disagree are all over.
        reason_each_over(package: text, rule: ["fails" "passes" "detection"], limit: text);
        /// Their median is over.
        reason_median_over(package: text, rule: ["fails" "passes" "detection"], limit: text);
        /// The sandwich assay alone finds a fermented food over.
        reason_over_by_sandwich(package: text, kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text, rule: ["fails" "passes" "detection"], limit: text);
        /// Nothing reported of a package.
        reason_missing(package: text);
        /// Too few usable extractions.
        reason_too_few_extractions(package: text, usable: count, asked: count);
        /// The lab's reports differ.
        reason_conflict(package: text, usable: count, asked: count);
        /// Extractions disagree.
        reason_disagree(package: text, gap: text, allowed: text);
        /// Too near the limit for the assay's uncertainty.
        reason_too_close(package: text, kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text, limit: text);
        /// The result may lie on either side.
        reason_either_side(package: text, kind: ["mean" "below" "range" "above" "detected" "nothing"], figure: text, upper: text, rule: ["fails" "passes" "detection"], limit: text);
        /// Too few packages.
        reason_too_few_packages(tested: count, asked: count);
        /// A sandwich assay is not fit for the food.
        reason_sandwich_unfit(food: ["fermented" "hydrolysed"]);
        /// No assay decides for the food.
        reason_records_decide(food: ["fermented" "hydrolysed"]);
    }
}
