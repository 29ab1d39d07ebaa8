//! Where tables stand, and what each column is: understood once, before any row is read.

/// The limits that a heading gives in passing.
pub mod asides;

/// Tables side by side, and columns of codes.
pub mod blocks;

/// Columns beside the results that throw doubt on them.
mod doubts;
/// What headings say of their figures besides a unit.
pub mod factors;

/// A sheet and its tables.
pub mod finding;

/// One heading and its meaning.
pub mod headings;

/// Tables that a person has described.
pub mod layouts;

/// Where the tables of a file are.
pub mod location;

/// How a table is read, or why it can be understood in two ways.
pub mod plan;

/// What a column can be.
pub mod roles;

/// Headings over several rows.
mod stacked;

/// Tables that stand upright.
pub mod turned;

/// Units and quantities.
pub mod units;

/// The words of lab files.
pub mod vocabulary;

/// The words of a heading of results.
pub mod wordings;
