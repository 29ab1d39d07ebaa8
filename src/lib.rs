//! galleyproof turns a lab's gluten results into results sheets that can be published.
//!
//! Data flows one way: gather, measure, judge, render, save. The modules stand in reading order.

/// The nouns that cross a border between stages.
pub mod model;

/// `programme.toml`: as typed, then as checked.
pub mod config;

/// The one place that opens or writes a file.
pub mod files;

/// Where the program itself may fail.
pub mod guard;

/// The words of the documents: catalogues of whole messages, a language each.
pub mod words;

/// Files -> tables -> registers and extractions.
pub mod gather;

/// Plates -> curves fitted again, beside what was reported.
pub mod measure;

/// Extractions -> pairs -> package results -> verdicts -> statistics.
pub mod judge;

/// What was decided -> facts and charts -> documents, in memory.
pub mod render;

/// Documents -> the outputs folder, mail drafts.
pub mod save;

/// The dated archive of what was issued, and the register of it.
pub mod archive;

/// The whole run: start reading here.
pub mod pipeline;

/// The program as typed: a file a command.
pub mod cli;
