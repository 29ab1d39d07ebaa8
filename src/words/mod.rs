//! The words of the documents: a catalogue of whole messages for each language, and what each message is given.
//!
//! The catalogues are in the format of Project Fluent, since its messages hold their own choices: plurals, and which side of
//! a limit a figure lies on, are settled in the sentence, where a translator sees them, and not in the code. Rust chooses a
//! message and gives it figures; it holds no sentence.

mod catalogue;
mod faults;
/// What a maker is told first, in letter and mail alike.
pub mod letters;
mod locale;
mod messages;
mod problems;
mod reasons;
mod trees;

pub use crate::model::said::{Item, Said, Value};
pub use catalogue::{CATALOGUE_FOLDER, Catalogue, CatalogueFile, built_in, english};
pub use faults::WordFault;
pub use locale::{Locale, NBSP};
pub use messages::{Kind, Message, messages, messages_in, say};
pub use reasons::{plain_reasons, reason_in_words, reasons, side};

/// Whether something is so, for a message that chooses by it.
pub fn yes_or_no(it_is: bool) -> &'static str {
    if it_is { "yes" } else { "no" }
}
