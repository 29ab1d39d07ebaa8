//! Words that every document shares.

use super::*;

messages! {
    "common"
    /// A day in full.
    day(day: count, month: count, year: text);
    /// Two things in one.
    list_of_two(first: text, last: text);
    /// Several, the last one after "and".
    list_of_more(others: text, last: text);
}
