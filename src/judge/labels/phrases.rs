//! The phrases that deny an ingredient or make a precaution of it, in five languages, without accents.

use crate::judge::labels::words::{Kind, Token};
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// Words that deny what follows them.
pub static DENIALS: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "free from; free of; does not contain; do not contain; doesnt contain; contains no; contain no; containing no; \
         not containing; without; no; not from; not derived from; non; \
         ohne; frei von; kein; keine; keinen; \
         sans; ne contient pas; exempt de; \
         sin; no contiene; libre de; exento de; \
         senza; non contiene; privo di",
    )
});

/// Words that make a precaution of the clause they stand in.
pub static PRECAUTIONS: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "may contain; may also contain; might contain; can contain; could contain; trace of; traces of; trace amounts of; \
         not suitable for; unsuitable for; cannot guarantee; facility; factory; equipment; premises; production line; \
         shared line; shared lines; same line; same lines; on lines; on a line; in a bakery; in a plant; in a kitchen; \
         cross contact; cross contamination; \
         kann spuren; spuren von; kann enthalten; kann auch; \
         peut contenir; peut aussi contenir; traces de; traces eventuelles; \
         puede contener; trazas de; \
         puo contenere; tracce di",
    )
});

/// Precautions whose subject stands before them.
pub static AFTERTHOUGHTS: LazyLock<Phrases> =
    LazyLock::new(|| Phrases::of("may be present; can be present; enthalten sein"));

/// "Gluten-free"; German forms are one word and are looked for by how it begins.
pub static GLUTEN_FREE: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "gluten free; glutenfree; sans gluten; sin gluten; senza glutine; \
         glutenfrei; glutenfreie; glutenfreier; glutenfreies; glutenfreien; glutenfreiem",
    )
});

/// Phrases by their first word.
pub struct Phrases(BTreeMap<&'static str, Vec<Vec<&'static str>>>);

impl Phrases {
    fn of(list: &'static str) -> Phrases {
        let mut phrases: BTreeMap<&str, Vec<Vec<&str>>> = BTreeMap::new();
        for phrase in list.split(';') {
            let words: Vec<&str> = phrase.split_whitespace().collect();
            if let Some(first) = words.first() {
                phrases.entry(first).or_default().push(words);
            }
        }
        Phrases(phrases)
    }

    /// How many tokens the longest phrase that begins here takes.
    pub fn begin(&self, tokens: &[Token]) -> Option<usize> {
        let Kind::Word(first, _) = &tokens.first()?.kind else {
            return None;
        };
        let same_start = self.0.get(first.as_str())?.iter();
        same_start
            .filter(|words| words.len() <= tokens.len())
            .filter(|words| words.iter().zip(tokens).all(|(word, token)| token.is(word)))
            .map(Vec::len)
            .max()
    }
}
