//! What headings say of their figures besides a unit: factors, logarithms, twice the gliadin.

use crate::gather::tables::units::fold;
use crate::gather::text;

/// What a heading or a sentence says to have been done to its figures besides a unit: a factor (`ppm x 10`, `x1000 ppm`,
/// `10^3 ppm`), a logarithm (`log ppm`). No figure under it is what was found. Twice the gliadin is gluten, and no factor.
pub fn worked_on(written: &str) -> Option<String> {
    if !may_be(written) {
        return None;
    }
    let folded = multiplied(written);
    let folded = twice_gliadin(&folded).map_or(folded.clone(), |(from, to)| {
        format!("{} {}", &folded[..from], &folded[to..])
    });
    let words = text::words(&folded);
    const LOGARITHMS: [&str; 8] = [
        "log",
        "log10",
        "ln",
        "lg",
        "loge",
        "log2",
        "logarithm",
        "logarithmus",
    ];
    let by_log = words.split(' ').find(|word| LOGARITHMS.contains(word));
    if let Some(log) = by_log {
        return Some(log.to_owned());
    }
    const MANY: [&str; 8] = [
        "thousands",
        "thousand",
        "hundreds",
        "millions",
        "tausend",
        "miles",
        "milliers",
        "migliaia",
    ];
    let by_word = words.split(' ').find(|word| MANY.contains(word));
    by_word.map(str::to_owned).or_else(|| factor(&folded))
}

/// A number with a sign of multiplication, division or power before it or behind it.
fn factor(folded: &str) -> Option<String> {
    let letters: Vec<char> = folded.chars().collect();
    let number_from = |at: usize| -> Option<usize> {
        let start = at + letters[at..].iter().take_while(|c| **c == ' ').count();
        let digits = letters[start..].iter().take_while(|c| c.is_ascii_digit());
        let end = start + digits.count();
        let is_whole = letters.get(end).is_none_or(|c| !c.is_alphanumeric());
        (end > start && is_whole).then_some(end)
    };
    let before = |at: usize| letters[..at].iter().rev().find(|c| **c != ' ').copied();
    let stands_alone = |at: usize| {
        let beside = at.checked_sub(1).map(|at| letters[at]);
        beside.is_none_or(|c| !c.is_alphabetic())
    };
    if let Some(power) = ["10²", "10³", "10⁴", "10⁶", "10⁻"]
        .iter()
        .find(|power| folded.contains(*power))
    {
        return Some((*power).to_owned());
    }
    for (at, sign) in letters.iter().enumerate() {
        let is_sign = match sign {
            'x' => stands_alone(at),
            '*' | '÷' => true,
            // "1/2" counts something.
            '/' => before(at).is_some_and(char::is_alphabetic),
            '^' if before(at).is_some_and(|c| c.is_ascii_digit()) => {
                return Some("10^".to_owned());
            }
            _ => false,
        };
        if !is_sign {
            continue;
        }
        let taken = |from: usize, to: usize| letters[from..to].iter().collect::<String>();
        if let Some(end) = number_from(at + 1) {
            return Some(taken(at, end));
        }
        let back: Vec<char> = letters[..at].iter().rev().copied().collect();
        let blanks = back.iter().take_while(|c| **c == ' ').count();
        let digits = back[blanks..]
            .iter()
            .take_while(|c| c.is_ascii_digit())
            .count();
        let whole = back
            .get(blanks + digits)
            .is_none_or(|c| !c.is_alphanumeric());
        let next = letters.get(at + 1);
        let multiplies = match sign {
            'x' => next.is_none_or(|c| !c.is_alphanumeric()),
            '*' => next.is_some_and(|c| c.is_alphabetic()),
            _ => false,
        };
        if digits > 0 && whole && multiplies {
            return Some(taken(at - blanks - digits, at + 1));
        }
    }
    None
}

/// Where a folded text says "gliadin x 2" or "2 x gliadin", outside of brackets: that is gluten already.
fn twice_gliadin(folded: &str) -> Option<(usize, usize)> {
    const WORDS: [&str; 6] = [
        "gliadin",
        "gliadine",
        "gliadina",
        "prolamin",
        "prolamine",
        "prolamina",
    ];
    WORDS.iter().find_map(|word| {
        [
            "{} x 2", "{} x2", "{}x2", "2 x {}", "2x {}", "2x{}", "{} * 2", "{}*2", "2 * {}",
            "2*{}",
        ]
        .iter()
        .map(|form| form.replace("{}", word))
        .find_map(|form| {
            let from = folded.find(&form)?;
            let to = from + form.len();
            let is_apart = |c: Option<char>| c.is_none_or(|c| !(c.is_alphanumeric() || c == '.'));
            (is_apart(folded[..from].chars().next_back()) && is_apart(folded[to..].chars().next()))
                .then_some((from, to))
        })
    })
}

/// A quick look: "no" is certain.
fn may_be(written: &str) -> bool {
    const PARTS: [&str; 9] = [
        "log", "ln", "lg", "thous", "hundr", "million", "tausend", "mil", "migl",
    ];
    let is_telling = |c: char| c.is_ascii_digit() || matches!(c, '²' | '³' | '⁴' | '⁶' | '⁻');
    written.contains(is_telling) || {
        let lower = written.to_lowercase();
        PARTS.iter().any(|part| lower.contains(part))
    }
}

/// Folded, with one sign of multiplication.
fn multiplied(written: &str) -> String {
    fold(written).replace(['×', '✕', '·'], "x")
}

/// Whether a text says "gliadin x 2" or "2 x gliadin": that is gluten.
pub fn is_twice_gliadin(written: &str) -> bool {
    twice_gliadin(&multiplied(written)).is_some()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_factor_or_a_logarithm_is_no_unit() {
        for written in [
            "Gluten (ppm x 10)",
            "Gluten (x1000 ppm)",
            "Gluten (log ppm)",
            "Gluten, ppm × 10",
            "Gluten (10^3 ppm)",
            "Gluten (ppm*100)",
            "Gluten (ppm / 10)",
            "log10 Gluten (mg/kg)",
            "Gliadin (x 2) (mg/kg)",
            "Gluten 10x (ppm)",
            "ppm (Tausend)",
        ] {
            assert!(worked_on(written).is_some(), "{written}");
        }
        for written in [
            "Gluten (mg/kg)",
            "Gluten (mg/100 g)",
            "Gluten mg kg-1",
            "Gluten mg·kg⁻¹",
            "Gluten mg*kg-1",
            "Gliadin x 2 (mg/kg)",
            "Gluten (2 x gliadin), mg/kg",
            "Extraction 2 (ppm)",
            "Gluten ext. 1/2 (ppm)",
            "Ext 2 of 2",
            "Extrakt 1 (mg/kg)",
            "Max. 20 ppm",
        ] {
            assert_eq!(worked_on(written), None, "{written}");
        }
    }
}
