//! Words that every document shares.

use super::*;

messages! {
    "common"
    /// The name of a month, from 1.
    month_name(month: count);
    /// A day in full.
    day(day: count, month: count, year: text);
    /// From one day to another of the same month; the last in full.
    days_of_month(first: count, last: text);
    /// Of the same year.
    days_of_year(day: count, month: count, last: text);
    /// Of different years, both in full.
    days_of_years(first: text, last: text);
    /// A count in words, up to nine.
    spelt(n: count);
    /// The same where a sentence begins with it.
    spelt_first(n: count);
    /// Two things in one.
    list_of_two(first: text, last: text);
    /// Several, the last one after "and".
    list_of_more(others: text, last: text);
}
