//! What a cell beside the results says of its row: that it is a control, which extraction it is.

use crate::gather::books::Row;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::units;
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;

/// Whether a sample's name is that of a control: `Blank 2`, `PC`, `Std 3 (20 ppb)`, `QC high`.
pub fn is_control(words: &str) -> bool {
    if vocabulary::means(words, Meaning::Control) {
        return true;
    }
    let parts: Vec<&str> = words.split(' ').collect();
    let bare = |word: &str| {
        word.trim_end_matches(|c: char| c.is_ascii_digit())
            .to_owned()
    };
    let named = |word: &str| word.len() > 1 && vocabulary::means(word, Meaning::Control);
    let beside = |word: &str| {
        const BESIDE: [&str; 16] = [
            "ppb", "ng", "ml", "low", "high", "mid", "medium", "level", "kit", "gluten", "gliadin",
            "sample", "solution", "lot", "range", "extract",
        ];
        word.bytes().all(|b| b.is_ascii_digit())
            || word.chars().count() <= 2
            || BESIDE.contains(&word)
            || units::read(word).is_some()
    };
    let leads = (1..=parts.len().min(3)).any(|length| {
        named(&parts[..length].join(" ")) && parts[length..].iter().all(|word| beside(word))
    });
    let says = parts.iter().any(|word| named(word) || named(&bare(word)));
    leads
        || (says
            && parts
                .iter()
                .all(|word| named(word) || named(&bare(word)) || beside(word)))
}

/// The numbers that a column gives to extractions.
#[derive(Clone, Copy, Debug)]
pub struct Numbers {
    usable: bool,
}

/// Looks whether the column of extractions holds numbers, or the lab's own marks from which none can be told.
pub fn extraction_numbers(plan: &Plan, rows: &[Row]) -> Numbers {
    const ROWS_TRIED: usize = 200;
    let Some(column) = plan.extraction else {
        return Numbers { usable: false };
    };
    let mut cells = rows
        .iter()
        .filter_map(|row| row.at(column))
        .take(ROWS_TRIED);
    Numbers {
        usable: cells.any(|content| number_in(&content.shown()).is_some()),
    }
}

impl Numbers {
    /// The number of the extraction on this row.
    pub fn of(&self, row: &Row, column: u32) -> Option<u32> {
        if !self.usable {
            return None;
        }
        row.at(column)
            .and_then(|content| number_in(&content.shown()))
    }
}

/// Whether an extraction is numbered as none: `0`, `Ext. 0`.
pub fn is_zero(written: &str) -> bool {
    const LETTERS: usize = 12;
    let words = text::words(written);
    let digits = words.trim_start_matches(|c: char| c.is_alphabetic() || matches!(c, ' ' | '#'));
    let letters = words.chars().count() - digits.chars().count();
    !digits.is_empty() && digits.bytes().all(|b| b == b'0') && letters <= LETTERS
}

/// Whether a text gives the number of an extraction.
pub fn gives_number(written: &str) -> bool {
    number_in(written).is_some()
}

/// The number in `2`, `Ext. 2`, `B`, `E2`, `II`, `2 of 2`, `extraction no. 2`.
fn number_in(written: &str) -> Option<u32> {
    if (1..=2).contains(&written.len()) && written.bytes().all(|b| b.is_ascii_digit()) {
        return written.parse().ok().filter(|n| *n > 0);
    }
    // "1ª" and "2º" are first and second.
    let words = text::words(&written.replace(['ª', 'º', '°'], " "));
    let parts: Vec<&str> = words.split(' ').filter(|word| !word.is_empty()).collect();
    if let Some(number) = parts.iter().find_map(|word| digits_behind_letters(word)) {
        return Some(number);
    }
    parts
        .iter()
        .rev()
        .find_map(|word| vocabulary::ordinal(word))
}

fn digits_behind_letters(word: &str) -> Option<u32> {
    let digits = word.trim_start_matches(|c: char| c.is_alphabetic() || c == '#');
    let letters = word.chars().count() - digits.chars().count();
    let short = (1..=2).contains(&digits.len())
        && digits.bytes().all(|b| b.is_ascii_digit())
        && letters <= 12;
    short
        .then(|| digits.parse().ok())
        .flatten()
        .filter(|n| *n > 0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn extractions_are_numbered_in_many_ways() {
        for written in [
            "2",
            "Ext. 2",
            "B",
            "E2",
            "II",
            "2 of 2",
            "Extraction no. 2",
            "#2",
            "2nd",
            "2ª",
            "zweite",
            "02",
        ] {
            assert_eq!(number_in(written), Some(2), "{written}");
        }
        for written in ["EX-2031-0044", "", "mean", "240012"] {
            assert_eq!(number_in(written), None, "{written}");
        }
    }

    #[test]
    fn controls_are_told_by_their_names() {
        for name in [
            "QC: low control",
            "Blank",
            "blank 2",
            "QC-1",
            "Std 3 (20 ppb)",
            "PC",
            "Positive control",
            "Blindwert",
            "Std1",
            "QC high",
        ] {
            assert!(is_control(&text::words(name)), "{name}");
        }
        for name in ["TKW-1", "PCX-7", "Blanket 5 rolls of oats", "QX-9"] {
            assert!(!is_control(&text::words(name)), "{name}");
        }
    }
}
