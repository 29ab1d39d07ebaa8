//! Package codes: what makes two of them the same, and how to tell one that a spreadsheet has mangled.

use crate::gather::text::{is_dash, is_space};
use std::collections::BTreeMap;
use unicode_normalization::UnicodeNormalization;

/// A code as it is compared: Unicode compatibility form, lower case, no spaces around, one kind of dash.
/// A space inside stays: it is not a dash.
pub fn key(code: &str) -> String {
    if code.is_ascii() {
        return code.trim().to_ascii_lowercase();
    }
    let folded: String = code
        .nfkc()
        .map(|c| if is_dash(c) { '-' } else { c })
        .flat_map(char::to_lowercase)
        .collect();
    folded
        .trim_matches(|c: char| is_space(c) || c == '\u{feff}')
        .to_owned()
}

/// The codes of the register, by what makes them equal.
#[derive(Debug, Default)]
pub struct Codes {
    by_key: BTreeMap<String, String>,
}

impl Codes {
    /// From the codes as the register spells them.
    pub fn new<'a>(codes: impl Iterator<Item = &'a str>) -> Codes {
        Codes {
            by_key: codes.map(|code| (key(code), code.to_owned())).collect(),
        }
    }

    /// The register's spelling of this code.
    pub fn find(&self, written: &str) -> Option<&str> {
        self.with_key(&key(written))
    }

    /// The register's spelling of the code that has this [`key`].
    pub fn with_key(&self, key: &str) -> Option<&str> {
        self.by_key.get(key).map(String::as_str)
    }

    /// The registered code that is most like what was written, where one is like it at all.
    pub fn nearest(&self, written: &str) -> Option<&str> {
        const LONGEST: usize = 64;
        let wanted = key(written);
        if wanted.is_empty() || wanted.chars().count() > LONGEST {
            return None;
        }
        let most = 1 + wanted.chars().count() / 5;
        self.by_key
            .iter()
            .map(|(key, code)| (strsim::damerau_levenshtein(&wanted, key), code))
            .filter(|(distance, _)| *distance <= most)
            .min()
            .map(|(_, code)| code.as_str())
    }

    /// How a spreadsheet has changed this code, where that is what has happened. Never asked for a code that is known.
    pub fn mangled(&self, written: &str) -> Option<Mangled> {
        let text = key(written);
        if looks_scientific(&text) {
            return Some(Mangled::Scientific);
        }
        if looks_like_a_date(&text) {
            return Some(Mangled::Date);
        }
        let (whole, fraction) = text.split_once('.').unwrap_or((&text, ""));
        if whole.is_empty() || !digits(whole) || !(fraction.is_empty() || digits(fraction)) {
            return None;
        }
        let bare = whole.trim_start_matches('0');
        let original = self
            .by_key
            .iter()
            .find(|(key, _)| digits(key) && key.trim_start_matches('0') == bare)
            .map(|(_, code)| code.clone());
        match original {
            Some(code) if fraction.trim_matches('0').is_empty() => Some(Mangled::Zeros(code)),
            _ => None,
        }
    }
}

/// What a spreadsheet does to a code that it takes for a figure or a day.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Mangled {
    /// `3-1` becomes `03-Jan`.
    Date,
    /// `12E7` becomes `1.2E+08`.
    Scientific,
    /// `0012` becomes `12`; the registered code that it looks like.
    Zeros(String),
}

fn digits(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit())
}

/// `1.2e+08`, `1,2e8`, `2e10`.
fn looks_scientific(text: &str) -> bool {
    let Some((mantissa, exponent)) = text.split_once('e') else {
        return false;
    };
    let exponent = exponent.trim_start_matches(['+', '-']);
    let (whole, fraction) = mantissa
        .split_once(['.', ','])
        .map_or((mantissa, None), |(whole, fraction)| {
            (whole, Some(fraction))
        });
    digits(whole) && fraction.is_none_or(digits) && digits(exponent) && exponent.len() <= 3
}

/// `03-jan`, `jan-26`, `2026-03-01`, `01/03/2026`, `1.3.26`, with or without a time.
fn looks_like_a_date(text: &str) -> bool {
    let day = text
        .split_once([' ', 't'])
        .filter(|(_, time)| time.contains(':'))
        .map_or(text, |(day, _)| day);
    let parts: Vec<&str> = day
        .split(['-', '/', '.', ' '])
        .filter(|part| !part.is_empty())
        .collect();
    let month = |part: &str| part.len() >= 3 && MONTHS.iter().any(|m| part.starts_with(m));
    let number = |part: &str, most: u32| digits(part) && part.parse().is_ok_and(|n: u32| n <= most);
    let year = |part: &str| digits(part) && (part.len() == 4 || part.len() == 2);
    match parts.as_slice() {
        [a, b] => {
            let separated = !day.contains('.') && !day.contains(' ');
            separated && ((number(a, 31) && month(b)) || (month(a) && year(b)))
        }
        [a, b, c] => {
            (number(a, 31) && (month(b) || number(b, 31)) && year(c))
                || (a.len() == 4 && digits(a) && number(b, 12) && number(c, 31))
        }
        _ => false,
    }
}

/// The first letters of the months in the languages that labs write in, without accents that fold away.
const MONTHS: [&str; 30] = [
    "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov",
    "dec", // English
    "mär", "mrz", "mai", "okt", "dez", // German
    "fév", "fev", "avr", "jui", "aoû", "aou", "déc", // French
    "ene", "abr", "ago", "dic", // Spanish
    "gen", "set", // Italian
];

#[cfg(test)]
mod tests {
    use super::*;

    fn codes() -> Codes {
        Codes::new(["TKW-101", "00123", "A 7"].into_iter())
    }

    #[test]
    fn case_spaces_around_and_dashes_make_no_difference() {
        assert_eq!(codes().find(" tkw\u{2013}101\u{a0}"), Some("TKW-101"));
        assert_eq!(codes().find("ＴＫＷ－101"), Some("TKW-101"));
        assert_eq!(codes().find("TKW 101"), None, "a space is not a dash");
        assert_eq!(codes().find("TKW101"), None);
    }

    #[test]
    fn a_mangled_code_is_told_and_never_matched() {
        assert_eq!(codes().find("123"), None);
        assert_eq!(
            codes().mangled("123"),
            Some(Mangled::Zeros("00123".to_owned()))
        );
        assert_eq!(codes().mangled("1.2E+08"), Some(Mangled::Scientific));
        for date in [
            "03-Jan",
            "Jan-26",
            "2026-03-01",
            "2026-03-01 00:00:00",
            "1/3/2026",
            "3.1.26",
            "1-Mär",
        ] {
            assert_eq!(codes().mangled(date), Some(Mangled::Date), "{date}");
        }
        for other in ["TKW-102", "77", "A-7-1", "blank", "12-99", "mar", "E12"] {
            assert_eq!(codes().mangled(other), None, "{other}");
        }
    }

    #[test]
    fn the_nearest_code_is_named_only_where_it_is_near() {
        assert_eq!(codes().nearest("TKW-10I"), Some("TKW-101"));
        assert_eq!(codes().nearest("QX-9"), None);
    }
}
