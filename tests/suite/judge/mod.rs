//! What the readings come to, from values built by hand.

/// One product, its packages and its readings, as a lab might report them.
pub mod bench;

/// Every rule and claim at and around its limit.
mod regimes;

/// Readings to verdicts.
mod decisions;

/// Where things stand with the maker, and what to bear in mind of the assay.
mod circumstances;

/// Ingredient statements.
mod labels;

/// What must hold of any readings.
mod properties;

/// The reasoning in plain text.
mod reasoning;

/// What can hardly be so.
mod plausibility;

/// The programme's figures.
mod summaries;

/// Statistics that stay true.
mod truths;

/// Cases worked by hand.
mod worked;
