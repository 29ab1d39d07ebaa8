//! The parts of a statement that declare no ingredient: what is denied, and what may only be there by accident.
//!
//! In doubt a part is read as ingredients: a needless question does less harm than a missed source.

use crate::judge::labels::phrases::{
    AFTERTHOUGHTS, ALLERGENS, ALLERGENS_JOINED, DENIALS, PRECAUTIONS,
};
use crate::judge::labels::talk;
use crate::judge::labels::terms::Match;
use crate::judge::labels::words::{Kind, Token, is_in};
use std::ops::Range;

/// Tokens, by their place in the list.
pub type Span = Range<usize>;

/// The place of the bracket that closes the one at `open`, or the end.
pub fn close_of(tokens: &[Token], open: usize) -> usize {
    let mut depth = 0_usize;
    for (at, token) in tokens.iter().enumerate().skip(open) {
        match token.kind {
            Kind::Open => depth += 1,
            Kind::Close if depth <= 1 => return at,
            Kind::Close => depth -= 1,
            _ => {}
        }
    }
    tokens.len()
}

/// What is denied: "free from wheat, rye or barley", "contains no malt", "wheat-free", "weizenfrei".
pub fn negated(tokens: &[Token], matches: &[Match<'_>]) -> Vec<Span> {
    let before = (0..tokens.len()).filter_map(|at| {
        let start = at + DENIALS.begin(&tokens[at..])?;
        // "No-GMO wheat flour" is wheat flour.
        let of_another = tokens.get(start).is_some_and(|token| token.is("gmo"));
        (!of_another).then(|| start..end_of_denial(tokens, start, matches))
    });
    let tested = (0..tokens.len())
        .filter(|at| talk::asks_for(tokens, *at))
        .map(|at| at + 1..end_of_denial(tokens, at + 1, matches));
    let after = matches
        .iter()
        .filter(|found| denied_by_ending(tokens, found))
        .map(|found| found.first..found.last + 1);
    before.chain(tested).chain(after).collect()
}

/// What may only be there by accident, each from the first to the last word of its clause.
pub fn precautions(tokens: &[Token], matches: &[Match<'_>]) -> Vec<Span> {
    let mut spans: Vec<Span> = Vec::new();
    for at in 0..tokens.len() {
        let afterthought = AFTERTHOUGHTS.begin(&tokens[at..]).is_some();
        if !afterthought && PRECAUTIONS.begin(&tokens[at..]).is_none() && !can_contain(tokens, at) {
            continue;
        }
        let mut start = start_of_clause(tokens, at);
        if !afterthought {
            // A term before "may contain" is still an ingredient.
            let term = matches
                .iter()
                .rfind(|found| (start..at).contains(&found.last));
            start = term.map_or(start, |found| found.last + 1);
        }
        let end = end_of_precaution(tokens, at);
        match spans.last_mut() {
            Some(last) if start < last.end => last.end = last.end.max(end),
            _ => spans.push(start..end),
        }
    }
    spans
}

/// "Kann Weizen enthalten": the verb stands at the end of the clause.
fn can_contain(tokens: &[Token], at: usize) -> bool {
    (tokens[at].is("kann") || tokens[at].is("konnen"))
        && tokens[at..end_of_sentence(tokens, at)]
            .iter()
            .any(|token| token.is("enthalten") || token.is("vorkommen"))
}

/// A denial reaches to the next comma, over brackets; over commas only along a list of allergens that "or" or "and"
/// closes, and to the end of the sentence after a colon. So "no added sugar, wheat flour" denies no wheat.
fn end_of_denial(tokens: &[Token], start: usize, matches: &[Match<'_>]) -> usize {
    let after_colon = tokens
        .get(start)
        .is_some_and(|token| token.kind == Kind::Colon);
    if after_colon {
        return end_of_sentence(tokens, start + 1);
    }
    let item = |from| {
        end_of(tokens, from, |kind| {
            matches!(kind, Kind::Item | Kind::Sentence | Kind::Colon)
        })
    };
    let first = item(start);
    let mut end = first;
    let mut from = start;
    let mut reached = first;
    while all_allergens(&tokens[from..end], from, matches) {
        if closes_list(&tokens[from..end]) {
            reached = end;
        }
        if tokens.get(end).is_none_or(|token| token.kind != Kind::Item) {
            break;
        }
        from = end + 1;
        end = item(from);
    }
    reached
}

fn all_allergens(item: &[Token], from: usize, matches: &[Match<'_>]) -> bool {
    !item.is_empty()
        && item.iter().enumerate().all(|(at, token)| {
            let in_term = matches
                .iter()
                .any(|found| (found.first..=found.last).contains(&(from + at)));
            in_term || may_be_listed(token)
        })
}

/// Whether an item begins with, or holds, the "or" that announces the last of a list.
fn closes_list(item: &[Token]) -> bool {
    item.iter()
        .any(|token| matches!(&token.kind, Kind::Word(text, _) if joins(text)))
}

fn joins(text: &str) -> bool {
    is_in(text, ALLERGENS_JOINED)
}

/// Whether a word may stand in a list of allergens and is no term.
fn may_be_listed(token: &Token) -> bool {
    matches!(&token.kind, Kind::Word(text, singular) if joins(text) || is_in(singular, ALLERGENS))
}

/// "wheat-free", "wheat and dairy free", "weizenfrei"; not "wheat and gluten-free oats", where wheat stands alone.
fn denied_by_ending(tokens: &[Token], found: &Match<'_>) -> bool {
    let compound = matches!(
        &tokens[found.last].kind,
        Kind::Word(text, _) if text != "free" && text.ends_with("free") || text.contains("frei") && !text.starts_with("frei")
    );
    let rest = &tokens[found.last + 1..];
    let next_is_free = rest.first().is_some_and(|token| token.is("free"));
    let list = rest
        .iter()
        .take(4)
        .position(|token| token.is("free"))
        .is_some_and(|free| {
            let between = rest[..free].iter().all(may_be_listed);
            let last = rest
                .get(free + 1)
                .is_none_or(|token| !matches!(token.kind, Kind::Word(..)));
            // "Wheat starch gluten free" declares; "wheat and gluten free" denies.
            let declares = free == 1 && rest[0].is("gluten");
            between && last && !declares
        });
    compound || next_is_free || list
}

/// The end of the item that begins at `from`.
pub fn end_of_item(tokens: &[Token], from: usize) -> usize {
    end_of(tokens, from, |kind| {
        matches!(kind, Kind::Item | Kind::Sentence)
    })
}

/// The end of the sentence that goes on at `from`.
pub fn end_of_sentence(tokens: &[Token], from: usize) -> usize {
    end_of(tokens, from, |kind| *kind == Kind::Sentence)
}

/// The beginning of the sentence that a token stands in.
pub fn start_of_sentence(tokens: &[Token], at: usize) -> usize {
    tokens[..at]
        .iter()
        .rposition(|token| token.kind == Kind::Sentence)
        .map_or(0, |before| before + 1)
}

/// The beginning of the clause, or of the item, that ends before `at`.
pub fn start_of_clause(tokens: &[Token], at: usize) -> usize {
    tokens[..at]
        .iter()
        .rposition(|token| !matches!(token.kind, Kind::Word(..)))
        .map_or(0, |before| before + 1)
}

/// To the end of the sentence, or to a "contains" that declares.
fn end_of_precaution(tokens: &[Token], at: usize) -> usize {
    let end = end_of_sentence(tokens, at);
    let declares = (at..end).find(|at| {
        let word = tokens.get(at + 1);
        tokens[*at].kind == Kind::Item
            && word.is_some_and(|word| word.is("contains") || word.is("ingredients"))
    });
    declares.unwrap_or(end)
}

/// The next token outside further brackets that ends a part; a closing bracket of the surrounding pair always does.
fn end_of(tokens: &[Token], from: usize, ends: impl Fn(&Kind) -> bool) -> usize {
    let mut at = from;
    while let Some(token) = tokens.get(at) {
        match &token.kind {
            Kind::Open => at = close_of(tokens, at),
            Kind::Close => return at,
            kind if ends(kind) => return at,
            _ => {}
        }
        at += 1;
    }
    tokens.len()
}
