//! The nouns that cross a border between stages, a file each, in the order in which the run meets them.
//!
//! Nothing here reads, decides, prints or imports a stage. One unit is used throughout: parts per million.

pub mod figures;
pub mod ppm;

pub mod place;

pub mod glob;

/// Letters that command.
pub mod letters;

/// Mail addresses.
pub mod address;

/// What a spreadsheet program takes for a formula.
pub mod formula;

pub mod said;

pub mod problem;

pub mod rule;

pub mod claim;

pub mod registers;

/// What each register is for, column by column.
pub mod guide;

pub mod exhibit;

pub mod extraction;

pub mod plate;

pub mod understanding;

pub mod pair;

pub mod package;

pub mod language;

pub mod label;

pub mod matrix;

pub mod caution;

pub mod reason;

pub mod verdict;

pub mod statistics;

pub mod followup;

pub mod publication;

pub mod sheet;

pub mod decided;

pub mod results;

pub mod document;

pub mod planning;
