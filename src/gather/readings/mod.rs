//! A row of a table -> what it comes to; and passes over what the rows come to.

/// What stands beside a result that has no code of its own.
mod beside;

/// A table's rows as extractions.
pub mod extractions;

/// A cell as an interval in ppm gluten.
pub mod intervals;

/// What is read of a cell of results.
mod cells;

/// The limits of the assay that are in force.
mod limits;

/// What a row is beside its results.
mod marks;

/// The lab's means, recomputed.
pub mod means;

/// What to say where no table was recognised.
pub mod missing;

/// Files that hold no results, and lose none.
mod no_results;

/// What each row comes to.
mod outcomes;

/// Tables over several pages.
pub mod pages;

/// A sign in a column of its own.
mod signs;

/// A cell that stores a number.
mod stored;

/// A unit beside the results, or below their heading.
mod nearby;

/// Rows that the lab itself takes out.
mod withdrawn;

/// What was measured: gluten, gliadin, something else.
pub mod subject;

/// Cells that give no reading, and why.
mod refusals;

/// What each row of a table is.
pub mod rows;

/// What stands behind a figure.
pub mod tails;

/// One cell and what the lab said.
pub mod values;
