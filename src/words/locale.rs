//! How a language writes figures, days and lists.

use crate::model::language::Language;
use chrono::{Datelike, NaiveDate};

/// The space that no line breaks at: between a figure and its unit, in a date. A search for "20 ppm" still finds it, which it
/// does not where the space is a narrow one.
pub const NBSP: char = '\u{a0}';

/// How a language writes figures and lists. What is words (months, "and") stands in the catalogue.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Locale(pub Language);

impl Locale {
    /// A figure written with a point, as this language writes it: `12.4` and `1234.5` are `12,4` and `1234,5` in German and
    /// Spanish. Thousands are not parted: a lab's figure is printed as it stands.
    pub fn figure(self, written: &str) -> String {
        match self.0 {
            Language::English => written.to_owned(),
            Language::German | Language::Spanish => {
                let is_point = |before: Option<char>, after: Option<char>| {
                    before.is_some_and(|c| c.is_ascii_digit())
                        && after.is_some_and(|c| c.is_ascii_digit())
                };
                let letters: Vec<char> = written.chars().collect();
                let at = |index: usize| letters.get(index).copied();
                (0..letters.len())
                    .map(|index| {
                        let before = index.checked_sub(1).and_then(at);
                        if letters[index] == '.' && is_point(before, at(index + 1)) {
                            ','
                        } else {
                            letters[index]
                        }
                    })
                    .collect()
            }
        }
    }

    /// A figure and its unit, kept together.
    pub fn with_unit(self, figure: &str, unit: &str) -> String {
        format!("{}{NBSP}{unit}", self.figure(figure))
    }

    /// The numbers of a day, for the message that words it: day of the month, month from 1, year.
    pub fn day(day: NaiveDate) -> (u32, u32, i32) {
        (day.day(), day.month(), day.year())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decimal_marks_follow_the_language_and_sentences_keep_their_stops() {
        assert_eq!(Locale(Language::English).figure("12.4"), "12.4");
        assert_eq!(Locale(Language::German).figure("<12.4"), "<12,4");
        assert_eq!(Locale(Language::Spanish).figure("3.0–5.6"), "3,0–5,6");
        assert_eq!(Locale(Language::German).figure("20."), "20.");
    }
}
