//! Gluten named for its absence, removal, amount or test: a statement about the food, and no ingredient.

use crate::judge::labels::spans::{Span, close_of};
use crate::judge::labels::terms::Match;
use crate::judge::labels::words::{Kind, Token};
use crate::model::label::TermClass;

/// Words of absence, amount and test; "*" stands for every word that begins so. Five languages, without accents.
const TALK: &str = "free frei no not never none zero nil nein neant nada ninguno nessuno without devoid absence \
    absent ohne kein* nicht sans pas sin senza exempt* exent* libre* privo priva \
    less below under fewer maximum max most level* content amount limit threshold ppm mg mgkg \
    weniger unter unterhalb gehalt hochstens grenzwert moins teneur inferieur* menos inferior* contenido meno contenuto \
    tenore maxim* massim* glutengehalt* low faible bajo basso \
    test* getestet analy* analis* analiz* analys* check* screen* measur* monitor* verif* certif* zertifiz* gepruft \
    prufung kontroll* control* untersuch* gemessen nachweis* nachgewiesen nachweisbar detect* detekt* detectad* rilev* \
    standard* requirement* regulation* definition* cfr fda \
    intoleran* unvertraglich* celiac* coeliac* zoliakie celiaqu* celiachia celiaci sensitiv* sensib*";

/// Words of removal.
const REMOVAL: &str = "remov* taken entfern* entzogen entzug retir* elimin* rimoss* rimuov* rimozione extraid* enlev* \
    deglut* reduc* reduz* reduit* ridott* quitad* quitar tolto sottratt*";

/// Words that say that there is more than an amount.
const EXCESS: &str = "more over above exceeds exceeding mehr uber plus mas piu";

/// Words that turn those round: "no more than".
const NEGATION: &str = "no not never nicht pas non ne";

/// Words between gluten and the grain that it is of.
const OF: &str = "from of in aus von de du des d da dal di del dell della";

/// The places where gluten is only spoken of; with "less than 20 ppm gluten from wheat" the grain as well.
pub fn spoken_of(tokens: &[Token], matches: &[Match<'_>]) -> Vec<Span> {
    let mut spans = Vec::new();
    for found in matches {
        if !tokens[found.first..=found.last].iter().any(is_gluten) {
            continue;
        }
        let part = part(tokens, found.first, found.last);
        if found.term.class == TermClass::LookAlike {
            continue;
        }
        let bare = found.first == found.last;
        let before = &tokens[part.start..found.first];
        let after = &tokens[found.last + 1..part.end];
        let says = |words: &[Token]| any(words, TALK) || any(words, REMOVAL) || amounts(words);
        let spoken = match bare {
            true => {
                says(before)
                    || says(after)
                    || any(&tokens[found.first..=found.last], "glutengehalt*")
            }
            // "Less than 20 ppm of wheat gluten" and "wheat gluten removed", but not "wheat gluten (tested)" and not
            // "non-GMO wheat gluten".
            false => amounts(before) || after.iter().take(3).any(|token| token.is_any(REMOVAL)),
        };
        let words = &tokens[part.clone()];
        let exceeds = any(words, EXCESS) && !any(words, NEGATION);
        if spoken && !exceeds {
            let of_grain = after
                .first()
                .is_some_and(|token| token.kind == Kind::Open || token.is_any(OF));
            let end = if of_grain { part.end } else { found.last + 1 };
            spans.push(found.first..end);
        }
    }
    spans
}

/// Whether these words say that gluten, or the protein, was removed.
pub fn removes(tokens: &[Token]) -> bool {
    let named = tokens
        .iter()
        .any(|token| is_gluten(token) || token.is_any("protein* eiweiss protei*"));
    (named && any(tokens, REMOVAL)) || any(tokens, "deglut*")
}

/// Words that say that a food was tested.
const TEST: &str = "test tests tested testing getestet gepruft untersucht analyzed analysed analyse analyzes checked checks \
    screened screen teste testes testee analysee analiza analizan analizado analizada analizzato analizzata testato testata";

/// "For" behind a test, in a sentence without brackets: "each lot is tested for wheat, barley and gluten"; in German the
/// verb may come last.
pub fn asks_for(tokens: &[Token], at: usize) -> bool {
    let german = tokens[at].is("auf");
    if !german && !tokens[at].is_any("for para per pour") {
        return false;
    }
    let ends = |token: &Token| !matches!(token.kind, Kind::Word(..) | Kind::Item);
    let start = tokens[..at].iter().rposition(ends).map_or(0, |at| at + 1);
    let near = at.saturating_sub(6).max(start);
    let end = tokens[at..].iter().position(ends);
    let end = end.map_or(tokens.len(), |length| at + length);
    any(&tokens[near..at], TEST) || german && any(&tokens[at..end], TEST)
}

/// Words of processing.
const PROCESSED: &str = "processed verarbeitet traite trattato tratado procesado";

/// "The wheat has been processed to …": what a footnote says of a grain that the list names.
pub fn processed(tokens: &[Token], last: usize) -> bool {
    tokens[last + 1..]
        .iter()
        .take_while(|token| matches!(token.kind, Kind::Word(..)))
        .take(4)
        .any(|token| token.is_any(PROCESSED))
}

/// The part of the list that a term stands in, from comma to comma, with the brackets after it.
fn part(tokens: &[Token], first: usize, last: usize) -> Span {
    let before = tokens[..first].iter().rposition(|token| {
        matches!(
            token.kind,
            Kind::Item | Kind::Sentence | Kind::Open | Kind::Close
        )
    });
    let mut end = last + 1;
    while let Some(token) = tokens.get(end) {
        match token.kind {
            Kind::Item | Kind::Sentence | Kind::Close => break,
            Kind::Open => {
                end = close_of(tokens, end);
                break;
            }
            Kind::Word(..) | Kind::Colon => end += 1,
        }
    }
    before.map_or(0, |at| at + 1)..end
}

fn is_gluten(token: &Token) -> bool {
    matches!(&token.kind, Kind::Word(text, _) if text.starts_with("gluten") || text == "glutine")
}

/// "20 ppm", or "20ppm" in one word.
fn amounts(tokens: &[Token]) -> bool {
    tokens.iter().any(|token| {
        let Kind::Word(text, _) = &token.kind else {
            return false;
        };
        let number = text.trim_end_matches("ppm").trim_end_matches("mg");
        number.len() < text.len() && number.chars().all(|c| c.is_ascii_digit())
    })
}

fn any(tokens: &[Token], list: &str) -> bool {
    tokens.iter().any(|token| token.is_any(list))
}
