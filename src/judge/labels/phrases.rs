//! The phrases that deny an ingredient or make a precaution of it, and the words beside them, in five languages, without accents.

use crate::judge::labels::words::{Kind, Token};
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// Words that deny what follows them.
pub static DENIALS: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "free from; free of; does not contain; do not contain; doesnt contain; contains no; contain no; containing no; \
         not containing; without; no; not from; not derived from; \
         free of any; contains neither; contain neither; tested for; test for; tests for; analyzed for; analysed for; checked for; \
         screened for; instead of; not made from; not made with; made without; absence of; \
         ohne; frei von; kein; keine; keinen; keinerlei; ohne zusatz von; enthalt kein; enthalt keine; enthalt keinen; weder; getestet auf; \
         gepruft auf; untersucht auf; statt; anstelle von; \
         sans; ne contient pas; ne contient pas de; ne contient ni; exempt de; exempte de; exempts de; sans ajout de; teste pour; a la place de; \
         sin; no contiene; no contienen; libre de; libres de; exento de; exenta de; sin adicion de; en lugar de; \
         senza; non contiene; non contengono; privo di; priva di; privi di; esente da; senza aggiunta di; al posto di",
    )
});

/// Words that make a precaution of the clause they stand in.
pub static PRECAUTIONS: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "may contain; may also contain; might contain; can contain; could contain; trace of; traces of; trace amounts of; \
         not suitable for; unsuitable for; cannot guarantee; facility; factory; equipment; premises; production line; \
         shared line; shared lines; same line; same lines; on lines; on a line; in a bakery; in a plant; in a kitchen; \
         cross contact; cross contamination; might be present; line that also; lines that also; also processes; also handles; \
         packed in; manufactured alongside; processed alongside; possible traces; may have come into contact; \
         kann spuren; spuren von; kann enthalten; kann auch; konnen spuren; spuren; betrieb; produktionsstatte; \
         produktionslinie; produktionsanlage; produktionsanlagen; anlage; anlagen; \
         peut contenir; peut aussi contenir; peuvent contenir; peut egalement contenir; traces de; trace de; traces possibles; traces d; \
         traces eventuelles; presence possible de; presence eventuelle de; presence fortuite; usine; atelier; site de production; \
         puede contener; puede tambien contener; pueden contener; trazas de; trazas; posibles trazas; instalacion; instalaciones; misma linea; \
         en una fabrica; en una planta; \
         puo contenere; possono contenere; puo anche contenere; tracce di; tracce; possibili tracce; stabilimento; stessa linea",
    )
});

/// Precautions whose subject stands before them.
pub static AFTERTHOUGHTS: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "may be present; can be present; might be present; could be present; enthalten sein; kann enthalten; konnen enthalten",
    )
});

/// "Gluten-free"; German forms are one word and are looked for by how it begins.
pub static GLUTEN_FREE: LazyLock<Phrases> = LazyLock::new(|| {
    Phrases::of(
        "gluten free; glutenfree; free from gluten; free of gluten; without gluten; no gluten; deglutenized; gluten removed; \
         sans gluten; sin gluten; libre de gluten; sin tacc; senza glutine; deglutinato; ohne gluten; frei von gluten; \
         glutenfrei; glutenfreie; glutenfreier; glutenfreies; glutenfreien; glutenfreiem",
    )
});

/// Words that may stand in a list of allergens and are no term.
pub const ALLERGENS: &str = "gepruft getestet untersucht weizen roggen gerste milch lait leche latte oeuf ei huevo uova lactosa lattosio \
    laktose trace de du la le les di el l d milk dairy lactose casein egg nut tree shellfish crustacean mollusc \
    mustard celery sulphite sulfite gluten any other added grain ingredient product derivative";

/// Words that join the items of a list of allergens.
pub const ALLERGENS_JOINED: &str = "or nor and oder und noch ou et ni o y e ne";

/// Words that end one item of a list and begin the next.
pub const JOINING: &str = "and or nor with plus und oder mit et ou avec y e o con";

/// Words that begin a sentence which points to what the list names.
pub const POINTING: &str = "contains contain allergens allergen allergy enthalt allergene contient allergenes contiene alergenos \
    allergeni";

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
