//! The headings of results, word by word: which words make one up, and which other words say that it is none.

use crate::gather::tables::headings::{Part, Role};
use crate::gather::tables::units::{self, Quantity, Unit};
use crate::gather::tables::vocabulary::{self, Meaning};

/// A heading that names gluten with a unit that converts is one of results, whatever other words stand in it; unless one of
/// those says that it is a limit, an uncertainty, a statistic or another thing that is known.
pub fn gluten_in_other_words(
    words: &str,
    quantity: Option<Quantity>,
    unit: Option<Unit>,
) -> Option<Role> {
    quantity?;
    unit?;
    let listed: Vec<&str> = words.split(' ').collect();
    let runs = || {
        (1..=listed.len().min(4))
            .rev()
            .flat_map(|length| listed.windows(length).map(|run| run.join(" ")))
    };
    if runs().any(|run| vocabulary::means(&run, Meaning::Mean)) {
        return Some(Role::Mean);
    }
    if listed.iter().any(|word| adds(word)) {
        return Some(Role::Added);
    }
    const ELSE: [Meaning; 5] = [
        Meaning::Lloq,
        Meaning::Uloq,
        Meaning::Lod,
        Meaning::Uncertainty,
        Meaning::Control,
    ];
    // A result that is corrected for recovery is one, and so is one that is not.
    let corrected = listed.iter().any(|word| corrects(word));
    let other = runs()
        .filter(|run| run.len() > 2 && !(corrected && run.split(' ').any(recovers)))
        .find_map(|run| vocabulary::first(&run, &ELSE))
        .or_else(|| {
            listed
                .iter()
                .any(|word| denies(word) && !(corrected && recovers(word)))
                .then_some(Meaning::Ignored)
        });
    match other {
        Some(Meaning::Lloq) => Some(Role::Lloq),
        Some(Meaning::Uloq) => Some(Role::Uloq),
        Some(Meaning::Lod) => Some(Role::Lod),
        Some(Meaning::Uncertainty) => Some(Role::Uncertainty),
        Some(_) => Some(Role::Ignored),
        None => Some(Role::Result(part_in(&listed))),
    }
}

/// Whether a word says that a figure of gluten is no result: a limit, a spread, a recovery, a target, a claim.
pub fn denies(word: &str) -> bool {
    const WHOLE: [&str; 16] = [
        "sd", "cv", "rsd", "vk", "dp", "od", "do", "max", "min", "range", "sin", "sans", "senza",
        "free", "frei", "diff",
    ];
    const STEMS: [&str; 27] = [
        "limit",
        "grenz",
        "specif",
        "spezif",
        "threshold",
        "schwelle",
        "umbral",
        "soglia",
        "hochst",
        "recover",
        "wiederfind",
        "recuper",
        "deviat",
        "abweich",
        "desviac",
        "deviaz",
        "ecart",
        "stdev",
        "median",
        "absor",
        "extinkt",
        "target",
        "sollwert",
        "nominal",
        "expected",
        "assigned",
        "spike",
    ];
    WHOLE.contains(&word) || STEMS.iter().any(|stem| word.starts_with(stem))
}

/// Whether a word says that what a column holds was put into the sample.
fn adds(word: &str) -> bool {
    const STEMS: [&str; 11] = [
        "zugesetzt",
        "zugegeben",
        "dotiert",
        "aufgestockt",
        "ajoute",
        "anadid",
        "adicionad",
        "agregad",
        "aggiunt",
        "spiked",
        "fortifi",
    ];
    vocabulary::means(word, Meaning::Added) || STEMS.iter().any(|stem| word.starts_with(stem))
}

/// Whether a word says that a result was corrected, or that it was not.
fn corrects(word: &str) -> bool {
    const STEMS: [&str; 7] = [
        "correct",
        "uncorrect",
        "korrig",
        "unkorrig",
        "corrig",
        "correg",
        "corrett",
    ];
    // German joins it to the recovery: "wiederfindungskorrigiert".
    word.contains("korrig") || STEMS.iter().any(|stem| word.starts_with(stem))
}

/// Whether a word speaks of a recovery.
fn recovers(word: &str) -> bool {
    const STEMS: [&str; 3] = ["recover", "wiederfind", "recuper"];
    STEMS.iter().any(|stem| word.starts_with(stem))
}

/// The number of an extraction or a well among other words.
fn part_in(words: &[&str]) -> Part {
    let mut part = Part::default();
    for pair in words.windows(2) {
        let thing = vocabulary::first(
            pair[0],
            &[Meaning::Extraction, Meaning::Replicate, Meaning::Well],
        );
        if let (Some(thing), Some(number)) = (thing, vocabulary::ordinal(pair[1])) {
            count(&mut part, Some(thing), number);
        }
    }
    part
}

/// The words that make up the heading of a result.
#[derive(Default)]
struct Composed {
    result: bool,
    quantity: bool,
    extraction: bool,
    replicate: bool,
    well: bool,
    mean: bool,
    last: bool,
    part: Part,
}

/// A heading of which every word is one that headings of results are made of.
pub fn composed(words: &str, has_unit: bool) -> Option<Role> {
    let words = parted_from_figures(words);
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let mut seen = Composed::default();
    // What the next number counts: the last countable thing named before it.
    let mut counted: Option<Meaning> = None;
    let mut pending: Option<u32> = None;
    let mut at = 0;
    while at < words.len() {
        let (meaning, length) = longest(&words[at..], at + 1 == words.len())?;
        match meaning {
            Meaning::Result => seen.result = true,
            Meaning::Quantity => {
                seen.quantity |= units::quantity(words[at]).is_some() || words[at] != "protein"
            }
            Meaning::Extraction => seen.extraction = true,
            Meaning::Replicate => seen.replicate = true,
            Meaning::Well => seen.well = true,
            Meaning::Mean => seen.mean = true,
            Meaning::Final => seen.last = true,
            _ => {}
        }
        if matches!(
            meaning,
            Meaning::Extraction | Meaning::Replicate | Meaning::Well
        ) {
            counted = Some(meaning);
            // "1st extraction"
            if let Some(number) = pending.take() {
                count(&mut seen.part, counted, number);
                counted = None;
            }
        }
        if meaning == Meaning::Ordinal {
            let number = vocabulary::ordinal(words[at])?;
            match counted.take() {
                Some(thing) => count(&mut seen.part, Some(thing), number),
                None => pending = Some(number),
            }
        }
        at += length;
    }
    if let Some(number) = pending {
        count(&mut seen.part, None, number);
    }
    seen.role(has_unit)
}

fn count(part: &mut Part, thing: Option<Meaning>, number: u32) {
    match thing {
        Some(Meaning::Extraction) => part.extraction = Some(number),
        Some(Meaning::Replicate) => part.replicate = Some(number),
        Some(Meaning::Well) => part.well = Some(number),
        _ => part.number = Some(number),
    }
}

impl Composed {
    fn role(&self, has_unit: bool) -> Option<Role> {
        let content = self.result || self.quantity || has_unit;
        if self.mean {
            return Some(Role::Mean);
        }
        if self.last && content {
            return Some(Role::Final);
        }
        if self.part.is_numbered() {
            let something = content || self.extraction || self.replicate || self.well;
            return something.then_some(Role::Result(self.part));
        }
        match (content, self.extraction, self.replicate, self.well) {
            (true, ..) => Some(Role::Result(Part::default())),
            (false, true, _, false) => Some(Role::Extraction),
            (false, false, true, _) => Some(Role::Replicate),
            (false, _, _, true) => Some(Role::Well),
            _ => None,
        }
    }
}

/// The longest run of words from here that is one of the parts of a result's heading.
fn longest(words: &[&str], is_last: bool) -> Option<(Meaning, usize)> {
    const PARTS: [Meaning; 8] = [
        Meaning::Quantity,
        Meaning::Result,
        Meaning::Extraction,
        Meaning::Replicate,
        Meaning::Well,
        Meaning::Mean,
        Meaning::Final,
        Meaning::Filler,
    ];
    for length in (1..=words.len().min(3)).rev() {
        let run = words[..length].join(" ");
        if length == 1 && vocabulary::ordinal(&run).is_some() {
            // A single letter counts only at the end: "Result A", not "a result".
            let letter = run.len() == 1 && run.bytes().all(|b| b.is_ascii_alphabetic());
            if !letter || is_last {
                return Some((Meaning::Ordinal, 1));
            }
        }
        if let Some(meaning) = vocabulary::first(&run, &PARTS) {
            return Some((meaning, length));
        }
    }
    None
}

/// `ext1` as two words; `r5` stays, since it is a word of its own.
fn parted_from_figures(words: &str) -> Vec<String> {
    let mut out = Vec::new();
    for word in words.split(' ') {
        let letters = word.trim_end_matches(|c: char| c.is_ascii_digit());
        let known = vocabulary::means(word, Meaning::Quantity)
            || letters.is_empty()
            || letters.len() == word.len();
        if known || vocabulary::ordinal(word).is_some() {
            out.push(word.to_owned());
            continue;
        }
        // "E1" and "R1" are what some labs call the first extraction and the first replicate.
        let name = match letters {
            "e" => "extraction",
            "r" => "replicate",
            "w" => "well",
            letters => letters,
        };
        out.push(name.to_owned());
        out.push(word[letters.len()..].to_owned());
    }
    out
}
