//! Every message that there is, with what it is given: the one table that code, catalogues and tests share, a file a group.
//!
//! A row makes a function of the message's name, so that a message without its figures does not compile; a catalogue that
//! lacks a message, or uses a figure that the message is not given, is refused with its line.

use super::catalogue::CatalogueFile;
use crate::model::language::Language;
use crate::model::place::Place;
use crate::model::said::{Item, Said, Value};

/// What a message is given under one name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Words from elsewhere or a figure that is already written: a name, a code, "20 ppm".
    Text,
    /// A whole number, to be counted in the language's own plural.
    Count,
    /// A figure of ours with a point, printed with the language's decimal mark.
    Figure,
    /// Where something stands.
    Place,
    /// Words from elsewhere, each in quotation marks.
    Items,
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
    (figure) => { Kind::Figure };
    (place) => { Kind::Place };
    (items) => { Kind::Items };
    ([$($word:literal)+]) => { Kind::Choice(&[$($word),+]) };
}

macro_rules! kind_type {
    (text) => { impl Into<String> };
    (count) => { impl Into<u64> };
    (figure) => { impl Into<String> };
    (place) => { Place };
    (items) => { Vec<Item> };
    ([$($word:literal)+]) => { &'static str };
}

macro_rules! value {
    (text, $value:ident) => { Value::Text($value.into()) };
    (count, $value:ident) => { Value::Count($value.into()) };
    (figure, $value:ident) => { Value::Figure($value.into()) };
    (place, $value:ident) => { Value::Place(Box::new($value)) };
    (items, $value:ident) => { Value::Items($value) };
    ([$($word:literal)+], $value:ident) => {{
        assert!([$($word),+].contains(&$value), "{} is none of the words", $value);
        Value::Text($value.to_owned())
    }};
}

macro_rules! messages {
    ($group:literal $( $(#[$doc:meta])* $id:ident ( $($name:ident : $kind:tt),* $(,)? ) ; )*) => {
        /// The messages of this group, in the order in which a reader meets them.
        pub const MESSAGES: &[Message] = &[$(Message {
            group: $group,
            id: stringify!($id),
            given: &[$((stringify!($name), kind!($kind))),*],
        }),*];

        /// One function a message.
        pub mod say {
            #[allow(unused_imports)] // A group may be empty.
            use super::*;
            $(
                $(#[$doc])*
                // A sentence needs as many figures as it needs, each under its own name.
                #[allow(clippy::too_many_arguments)]
                pub fn $id($($name: kind_type!($kind)),*) -> Said {
                    Said { id: stringify!($id), values: vec![$((stringify!($name), value!($kind, $name))),*] }
                }
            )*
        }
    };
}

/// The groups in the order in which a reader meets them: a file of messages here, and one in each catalogue. What only
/// commands say on the screen is English whatever the documents are written in: it stands in the English catalogue alone.
macro_rules! groups {
    (documents: $($group:ident),*; screen: $($screen:ident),* $(,)?) => {
        $(mod $group;)*
        $(mod $screen;)*

        /// The tables of the groups that every language has.
        const TABLES: &[&[Message]] = &[$($group::MESSAGES),*];

        /// Those that English alone has.
        const SCREEN_TABLES: &[&[Message]] = &[$($screen::MESSAGES),*];

        /// One function a message.
        pub mod say {
            #[allow(unused_imports)] // A group may be empty.
            pub use {$(super::$group::say::*),*, $(super::$screen::say::*),*};
        }

        /// The built-in catalogues: each language with its files, path and text.
        pub const BUILT_IN: &[(Language, &[CatalogueFile<'static>])] = &[
            (
                Language::English,
                &[$(catalogue_file!("en", $group)),*, $(catalogue_file!("en", $screen)),*],
            ),
            (Language::German, &[$(catalogue_file!("de", $group)),*]),
            (Language::Spanish, &[$(catalogue_file!("es", $group)),*]),
        ];
    };
}

macro_rules! catalogue_file {
    ($tag:literal, $group:ident) => {
        (
            concat!("words/", $tag, "/", stringify!($group), ".ftl"),
            include_str!(concat!(
                "../../../report-templates/words/",
                $tag,
                "/",
                stringify!($group),
                ".ftl"
            )),
        )
    };
}

groups!(
    documents: common, sheet, amended, reasons, label, method, charts, letters, lab, plan, plate, summary, newsletter, web, problems, registers;
    screen: explain
);

/// Every message, group by group.
pub fn messages() -> impl Iterator<Item = &'static Message> {
    let tables = TABLES.iter().chain(SCREEN_TABLES);
    tables.flat_map(|table| table.iter())
}

/// Every message that a language has: what commands say on the screen is English alone.
pub fn messages_in(language: Language) -> impl Iterator<Item = &'static Message> {
    let screen: &[&[Message]] = match language {
        Language::English => SCREEN_TABLES,
        Language::German | Language::Spanish => &[],
    };
    let tables = TABLES.iter().chain(screen);
    tables.flat_map(|table| table.iter())
}
