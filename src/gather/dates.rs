//! Days as people write them. Only what can be read in one way is read.

use crate::gather::text;
use chrono::NaiveDate;

/// The day that a text names, where it can be only one: `2031-03-07`, `7 March 2031`, `07.03.2031`, `31/12/2031`.
///
/// With dots the day comes first everywhere; with slashes it depends on the country, so `03/07/2031` is none.
pub fn day(text: &str) -> Option<NaiveDate> {
    let text = text::plain(text).to_lowercase();
    let text = text
        .split_once('t')
        .filter(|(day, time)| day.ends_with(|c: char| c.is_ascii_digit()) && time.contains(':'))
        .map_or(text.as_str(), |(day, _)| day);
    let text = text
        .split_once(' ')
        .filter(|(_, time)| time.contains(':'))
        .map_or(text, |(day, _)| day);
    let parts: Vec<&str> = text
        .split([' ', '-', '/', '.', ','])
        .filter(|part| !part.is_empty() && !matches!(*part, "de" | "of"))
        .collect();
    let [a, b, c] = parts.as_slice() else {
        return None;
    };
    if a.len() == 4 {
        let month = number(b).or_else(|| month(b))?;
        return NaiveDate::from_ymd_opt(year(a)?, month, number(c)?);
    }
    if let Some(month) = month(b) {
        return NaiveDate::from_ymd_opt(year(c)?, month, ordinal(a)?);
    }
    if let Some(month) = month(a) {
        return NaiveDate::from_ymd_opt(year(c)?, month, ordinal(b)?);
    }
    let (first, second, year) = (number(a)?, number(b)?, year(c)?);
    if text.contains('.') || first > 12 || first == second {
        return NaiveDate::from_ymd_opt(year, second, first);
    }
    if second > 12 {
        return NaiveDate::from_ymd_opt(year, first, second);
    }
    None
}

fn number(text: &str) -> Option<u32> {
    let short = text.len() <= 2 && text.bytes().all(|b| b.is_ascii_digit());
    short.then(|| text.parse().ok()).flatten()
}

/// A day of the month: `7`, `7th`, `1er`.
fn ordinal(text: &str) -> Option<u32> {
    number(text.trim_end_matches(|c: char| c.is_alphabetic() || c == 'º' || c == 'ª'))
}

/// Two-digit years are of this century: nobody tests food of the last one.
fn year(text: &str) -> Option<i32> {
    if !text.bytes().all(|b| b.is_ascii_digit()) {
        return None;
    }
    match text.len() {
        4 => text.parse().ok(),
        2 => text.parse::<i32>().ok().map(|year| 2000 + year),
        _ => None,
    }
}

fn month(text: &str) -> Option<u32> {
    let word = text::words(text);
    if word.chars().count() < 3 {
        return None;
    }
    MONTHS
        .iter()
        .position(|names| {
            names.split(' ').any(|name| {
                name == word
                    || (word.len() <= 4
                        && name.starts_with(&word)
                        && !AMBIGUOUS.contains(&word.as_str()))
            })
        })
        .and_then(|index| u32::try_from(index + 1).ok())
}

/// Short forms that fit two months of one language (French juin and juillet).
const AMBIGUOUS: [&str; 1] = ["jui"];

/// English, German, French, Spanish, Italian; without accents, as [`text::words`] leaves them.
const MONTHS: [&str; 12] = [
    "january januar janvier enero gennaio jan",
    "february februar fevrier febrero febbraio feb",
    "march marz mars marzo mar mrz",
    "april avril abril aprile apr",
    "may mai mayo maggio",
    "june juni juin junio giugno jun",
    "july juli juillet julio luglio jul",
    "august aout agosto aug",
    "september septembre septiembre settembre sep sept",
    "october oktober octobre octubre ottobre oct okt",
    "november novembre noviembre nov",
    "december dezember decembre diciembre dicembre dec dez",
];

#[cfg(test)]
mod tests {
    use super::*;

    fn written(text: &str) -> Option<String> {
        day(text).map(|day| day.to_string())
    }

    #[test]
    fn days_are_read_where_they_can_be_only_one() {
        for text in [
            "2031-03-07",
            "2031-03-07 14:30:00",
            "2031-03-07T00:00:00",
            "7 March 2031",
            "March 7, 2031",
            "07.03.2031",
            "7. März 2031",
            "7-Mar-31",
            "7 mars 2031",
            "7 de marzo de 2031",
            "2031/03/07",
        ] {
            assert_eq!(written(text).as_deref(), Some("2031-03-07"), "{text}");
        }
        assert_eq!(written("31/12/2030").as_deref(), Some("2030-12-31"));
        assert_eq!(written("12/31/2030").as_deref(), Some("2030-12-31"));
    }

    #[test]
    fn a_day_that_depends_on_the_country_is_none() {
        for text in ["03/07/2031", "2031-02-30", "soon", "7", "7 jui 2031", ""] {
            assert_eq!(written(text), None, "{text}");
        }
    }
}
