//! What was decided becomes charts and documents, all in memory: nothing here writes a file.
//!
//! A document is a [`Job`]: a template, its facts as JSON, its charts and attachments. [`typeset`] turns jobs into PDFs.

pub mod addresses;
pub mod charts;
pub mod documents;
pub mod engine;
pub mod explain;
pub mod facts;
mod glyphs;
pub mod job;
pub mod listing;
pub mod newsletter;
pub mod numbers;
pub mod overrun;
mod photographs;
pub mod tally;
pub mod terms;
pub mod web;
pub mod words;
mod world;

pub use documents::{Failure, Typeset, typeset};
pub use engine::Engine;
pub use job::{Job, JobFile, chart_name};
