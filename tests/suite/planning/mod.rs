//! Planning a round: what it can show against figures from elsewhere, and the command as a programme uses it.

/// Chances, ranges and check characters, computed elsewhere.
mod figures;
