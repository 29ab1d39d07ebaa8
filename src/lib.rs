//! galleyproof turns a lab's gluten results into results sheets that can be published.
//!
//! Data flows one way: gather, judge, render, save. The modules stand in reading order.

/// The nouns that cross a border between stages.
pub mod model;

/// `programme.toml`: as typed, then as checked.
pub mod config;

/// The one place that opens or writes a file.
pub mod files;

/// Documents -> the outputs folder, the data files.
pub mod save;
