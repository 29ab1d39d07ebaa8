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

/// The days from and to, where a text names a day or a span of days: `21.-22.09.2031`, `21 to 22 September 2031`.
pub fn span(written: &str) -> Option<(NaiveDate, NaiveDate)> {
    if let Some(one) = day(written) {
        return Some((one, one));
    }
    const LONGEST: i64 = 90;
    const BETWEEN: [&str; 9] = [
        " - ", " to ", " bis ", " au ", " al ", " a ", ".-", "-", "/",
    ];
    let plain = text::plain(written);
    for mark in BETWEEN {
        for (at, _) in plain.match_indices(mark) {
            let (first, last) = (plain[..at].trim(), plain[at + mark.len()..].trim());
            let days = ends(first, last)
                .filter(|(from, to)| from <= to && (*to - *from).num_days() <= LONGEST);
            if days.is_some() {
                return days;
            }
        }
    }
    None
}

/// Both days of a span, of which the first leaves out what it shares with the last: `21.`, `21.09.`, `September 21`.
fn ends(first: &str, last: &str) -> Option<(NaiveDate, NaiveDate)> {
    let bare = first.trim_end_matches('.');
    if let Some(to) = day(last) {
        let behind = last
            .find(|c: char| !c.is_ascii_digit())
            .unwrap_or(last.len());
        let year: String = to.format("%Y").to_string();
        let from = day(first)
            .or_else(|| day(&format!("{bare}{}", &last[behind..])))
            .or_else(|| day(&format!("{bare}.{year}")))
            .or_else(|| day(&format!("{bare} {year}")))?;
        return Some((from, to));
    }
    // "September 21-22, 2031"
    let (month, _) = first.rsplit_once(' ')?;
    let to = day(&format!("{month} {last}"))?;
    let from = day(&format!("{first} {}", to.format("%Y")))?;
    Some((from, to))
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
    fn a_span_has_two_days() {
        for text in [
            "21.-22.09.2031",
            "21.09.2031 - 22.09.2031",
            "21.09. - 22.09.2031",
            "21-22 September 2031",
            "21 September to 22 September 2031",
            "September 21-22, 2031",
            "2031-09-21 to 2031-09-22",
            "21. bis 22.09.2031",
            "du 21 au 22 septembre 2031".trim_start_matches("du "),
            "21/22.09.2031",
        ] {
            let days = span(text).map(|(from, to)| (from.to_string(), to.to_string()));
            let wanted = ("2031-09-21".to_owned(), "2031-09-22".to_owned());
            assert_eq!(days, Some(wanted), "{text}");
        }
        assert_eq!(span("22.09.2031 - 21.09.2031"), None);
        assert_eq!(span("2031-02-30"), None);
    }

    #[test]
    fn a_day_that_depends_on_the_country_is_none() {
        for text in ["03/07/2031", "2031-02-30", "soon", "7", "7 jui 2031", ""] {
            assert_eq!(written(text), None, "{text}");
        }
    }
}
