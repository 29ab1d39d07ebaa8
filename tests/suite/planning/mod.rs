//! Planning a round: what it can show against figures from elsewhere, and the command as a programme uses it.

/// Chances, ranges and check characters, computed elsewhere.
mod figures;

/// The command: products in order, codes, costs, labels.
mod command;

/// Photographs and custody of packages.
mod photographs;

/// A newcomer's first season, from the list of foods to results.
mod season;
