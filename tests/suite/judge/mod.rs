//! What the readings come to, from values built by hand.

/// One product, its packages and its readings, as a lab might report them.
mod bench;

/// Readings to verdicts.
mod decisions;

/// Ingredient statements.
mod labels;
