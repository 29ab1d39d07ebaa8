//! The words of lab files: `vocabulary.txt`, which anyone can read, as a table to look things up in.

use crate::gather::text;
use std::borrow::Cow;
use std::collections::{HashMap, HashSet};
use std::sync::LazyLock;

macro_rules! meanings {
    ($($(#[$doc:meta])* $meaning:ident = $name:literal,)*) => {
        /// What a wording means.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub enum Meaning {
            $($(#[$doc])* $meaning,)*
        }

        /// The name of each meaning in `vocabulary.txt`.
        const NAMES: &[(&str, Meaning)] = &[$(($name, Meaning::$meaning)),*];
    };
}

meanings! {
    /// The package code.
    Sample = "sample",
    /// A number that the lab gave itself.
    LabSample = "labsample",
    /// A word of a result's heading.
    Result = "result",
    /// Gluten, gliadin, and words for the method that stand beside them.
    Quantity = "quantity",
    /// One test portion taken through extraction.
    Extraction = "extraction",
    /// A word that some labs use for extractions and others for wells.
    Replicate = "replicate",
    /// One reading of one extract.
    Well = "well",
    /// A mean: not a reading.
    Mean = "mean",
    /// A final result: a mean beside others, a reading where it stands alone.
    Final = "final",
    /// A small word in a heading.
    Filler = "filler",
    /// The unit.
    Unit = "unit",
    /// The lowest quantity reported as a number.
    Lloq = "lloq",
    /// The highest quantity reported as a number.
    Uloq = "uloq",
    /// The lowest quantity that the assay detects.
    Lod = "lod",
    /// The uncertainty of a result.
    Uncertainty = "uncertainty",
    /// Day on which the report was issued.
    IssuedOn = "issued",
    /// Day on which the lab received the packages.
    ReceivedOn = "received",
    /// Day of the test.
    TestedOn = "tested_on",
    /// The lab's report number.
    Report = "report",
    /// The assay.
    Assay = "assay",
    /// The dilution.
    Dilution = "dilution",
    /// A remark.
    Remark = "remark",
    /// The lab's name.
    Lab = "lab",
    /// What was measured, where a table holds several analytes.
    Analyte = "analyte",
    /// What was put into the sample before the test: no result, and a row with it is none of a package.
    Added = "added",
    /// A column that is known and not used.
    Ignored = "ignored",
    /// A row that is a control, a blank or a standard.
    Control = "control",
    /// A row that holds a statistic of the rows above.
    Statistic = "statistic",
    /// A result: too little to put a number on.
    Below = "below",
    /// A result: not detected.
    Undetected = "undetected",
    /// A result: more than the assay can put a number on.
    Above = "above",
    /// Words before a figure: below it.
    Less = "less",
    /// Words before a figure: above it.
    More = "more",
    /// A result: there is none.
    Unreported = "unreported",
    /// A number in words.
    Ordinal = "ordinal",
    /// Words that speak of a second analysis of the same samples.
    Again = "again",
    /// A substance other than gluten that labs measure in food.
    OtherAnalyte = "otheranalyte",
    /// A food that is an allergen too: other than gluten where a word for a test stands with it.
    OtherFood = "otherfood",
    /// A word of a title that says what was measured, besides the name of it.
    Titling = "titling",
    /// A row is no result of the package: something was added to the sample.
    Spiked = "spiked",
    /// A row is no result of the package: the lab itself takes it out.
    Withdrawn = "withdrawn",
    /// Words for the signal of a plate: no result, but what results are worked out from.
    Absorbance = "absorbance",
}

static TABLE: LazyLock<HashMap<String, Vec<Meaning>>> = LazyLock::new(|| {
    let mut table: HashMap<String, Vec<Meaning>> = HashMap::new();
    for (meaning, wording) in entries() {
        let wording = wording.split('=').next().unwrap_or(wording);
        let meanings = table
            .entry(one_number(&text::words(wording)).into_owned())
            .or_default();
        if !meanings.contains(&meaning) {
            meanings.push(meaning);
        }
    }
    table
});

static ORDINALS: LazyLock<HashMap<String, u32>> = LazyLock::new(|| {
    entries()
        .filter(|(meaning, _)| *meaning == Meaning::Ordinal)
        .filter_map(|(_, wording)| {
            let (word, number) = wording.split_once('=')?;
            Some((text::words(word), number.parse().ok()?))
        })
        .collect()
});

/// Every word of every wording, and the letters that stand for one before a number (`e1`, `r2`, `w3`).
static WORDS: LazyLock<HashSet<String>> = LazyLock::new(|| {
    let wordings = TABLE.keys().flat_map(|wording| wording.split(' '));
    let others = NUMBER.into_iter().chain(["e", "r", "w"]);
    let words = wordings.chain(others).filter(|word| !word.is_empty());
    words.map(str::to_owned).collect()
});

/// Whether any of these words (as [`text::words`] leaves them) stands in a wording, with the number behind it or without.
/// Where none does, a text has no meaning here.
pub fn has_a_word(words: &str) -> bool {
    let known = |word: &str| WORDS.contains(word);
    words
        .split(' ')
        .any(|word| known(word) || known(word.trim_end_matches(|c: char| c.is_ascii_digit())))
}

/// Each meaning with each of its wordings.
fn entries() -> impl Iterator<Item = (Meaning, &'static str)> {
    include_str!("vocabulary.txt")
        .lines()
        .filter(|line| !line.starts_with('#'))
        .filter_map(|line| line.split_once(':'))
        .flat_map(|(head, wordings)| {
            let name = head.split(' ').next().unwrap_or(head);
            let meaning = NAMES
                .iter()
                .find(|(known, _)| *known == name)
                .map(|(_, meaning)| *meaning);
            wordings
                .split(';')
                .filter_map(move |wording| Some((meaning?, wording.trim())))
        })
}

/// Whether words (as [`text::words`] leaves them) have this meaning as a whole.
pub fn means(words: &str, meaning: Meaning) -> bool {
    known(words).is_some_and(|meanings| meanings.contains(&meaning))
}

/// Whether one of these words, or two beside one another, has this meaning by itself.
pub fn has_one_that_means(words: &str, meaning: Meaning) -> bool {
    let single: Vec<&str> = words.split(' ').collect();
    single.iter().any(|word| means(word, meaning))
        || single.windows(2).any(|two| means(&two.join(" "), meaning))
}

/// The first of these meanings that words have as a whole.
pub fn first(words: &str, among: &[Meaning]) -> Option<Meaning> {
    let known = known(words)?;
    among
        .iter()
        .copied()
        .find(|meaning| known.contains(meaning))
}

fn known(words: &str) -> Option<&'static Vec<Meaning>> {
    TABLE.get(one_number(words).as_ref())
}

/// How "number" is shortened.
const NUMBER: [&str; 8] = ["#", "n", "nr", "num", "number", "numero", "nummer", "nro"];

/// One word for "number" in whatever way it is shortened: `sample nr`, `sample #` and `sample number` are the same.
fn one_number(words: &str) -> Cow<'_, str> {
    if !words.split(' ').any(|word| NUMBER.contains(&word)) {
        return Cow::Borrowed(words);
    }
    let one: Vec<&str> = words
        .split(' ')
        .map(|word| if NUMBER.contains(&word) { "no" } else { word })
        .collect();
    Cow::Owned(one.join(" "))
}

/// The number that a word stands for: `2`, `second`, `B`, `II`.
pub fn ordinal(word: &str) -> Option<u32> {
    let digits = word.trim_start_matches('#');
    if (1..=2).contains(&digits.len()) && digits.bytes().all(|b| b.is_ascii_digit()) {
        return digits.parse().ok().filter(|n| *n > 0);
    }
    ORDINALS.get(word).copied()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_line_of_the_table_has_a_known_meaning() {
        for line in include_str!("vocabulary.txt")
            .lines()
            .filter(|line| !line.is_empty() && !line.starts_with('#'))
        {
            let head = line.split(' ').next().unwrap_or_default();
            assert!(NAMES.iter().any(|(name, _)| *name == head), "{line}");
        }
    }

    #[test]
    fn each_column_that_is_used_has_25_wordings_or_more() {
        for wanted in [
            Meaning::Sample,
            Meaning::Extraction,
            Meaning::Result,
            Meaning::Unit,
            Meaning::Lloq,
            Meaning::TestedOn,
            Meaning::Report,
            Meaning::Assay,
            Meaning::Dilution,
            Meaning::Remark,
        ] {
            let count = TABLE
                .values()
                .filter(|meanings| meanings.contains(&wanted))
                .count();
            assert!(count >= 25, "{wanted:?} has {count}");
        }
    }

    #[test]
    fn words_are_looked_up_without_case_and_accents() {
        assert!(means(&text::words("Échantillon"), Meaning::Sample));
        assert!(means(&text::words("n.n."), Meaning::Undetected));
        assert!(means(&text::words("< LOQ"), Meaning::Below));
        assert_eq!(ordinal("ii"), Some(2));
        assert_eq!(ordinal("12"), Some(12));
        assert_eq!(ordinal("450"), None);
    }
}
