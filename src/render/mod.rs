//! What was decided becomes charts and documents, all in memory: nothing here writes a file.
//!
//! A document is a [`Job`]: a template, its facts as JSON, its charts and attachments. [`typeset`] turns jobs into PDFs.

/// Figures and dates as they are printed: the one place that rounds.
pub mod numbers;

/// The words of the limit and of the bands.
pub mod terms;

/// Counts that several documents print.
pub mod tally;

/// Products as lists show them.
pub mod listing;

/// The sentences of the documents.
pub mod words;

/// One document to be made.
pub mod job;

/// What a template may see, one view a document.
pub mod facts;

/// Where the pages for a web site are read.
pub mod addresses;

/// Figures as SVG.
pub mod charts;

/// Photographs of packages, drawn small.
mod photographs;

/// Templates and fonts, loaded once a run.
pub mod engine;

mod glyphs;

mod world;

/// The newsletter beside its PDF: HTML, text and the charts.
pub mod newsletter;

/// The pages for a web site: an index of what is published, and its corrections.
pub mod web;

/// A job becomes a PDF; many jobs, on all cores.
pub mod documents;

/// One verdict’s reasoning in plain text.
pub mod explain;

/// A bound on what a template of the programme’s own may take.
pub mod overrun;

pub use documents::{Failure, Typeset, typeset};
pub use engine::Engine;
pub use job::{Job, JobFile, chart_name};
