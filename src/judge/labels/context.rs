//! What surrounds a term: whether it is an ingredient at all, and what stands beside it or in the brackets after it.

use crate::judge::labels::phrases::{GLUTEN_FREE, JOINING, POINTING};
use crate::judge::labels::spans::{self, Span};
use crate::judge::labels::talk;
use crate::judge::labels::terms::{Match, OATS, OTHER};
use crate::judge::labels::words::{Kind, Token, is_in};
use std::ops::Range;

/// What a general word can be of.
const GRAINS: &[&str] = &["wheat", "rye", "barley", "triticale", OATS, OTHER];

/// A statement's words with what is no ingredient among them.
pub struct Context<'a> {
    tokens: &'a [Token],
    matches: &'a [Match<'a>],
    /// "Free from …" and the like.
    negated: Vec<Span>,
    /// "May contain …" and the like.
    precautions: Vec<Span>,
}

impl<'a> Context<'a> {
    /// Reads the surroundings of all terms of a statement.
    pub fn of(tokens: &'a [Token], matches: &'a [Match<'a>]) -> Context<'a> {
        Context {
            negated: [
                spans::negated(tokens, matches),
                talk::spoken_of(tokens, matches),
            ]
            .concat(),
            precautions: spans::precautions(tokens, matches),
            tokens,
            matches,
        }
    }

    /// Whether a term is declared as an ingredient: neither denied nor only a precaution.
    pub fn is_ingredient(&self, found: &Match<'_>) -> bool {
        let inside = |span: &Span| span.contains(&found.first);
        !self.negated.iter().any(inside) && !self.precautions.iter().any(inside)
    }

    /// The precautions, as printed.
    pub fn precautionary(&self, statement: &str) -> Vec<String> {
        self.precautions
            .iter()
            .filter_map(|span| {
                let tokens = self.tokens.get(span.clone())?;
                let (first, last) = (tokens.first()?, tokens.last()?);
                Some(statement[first.range.start..last.range.end].to_owned())
            })
            .collect()
    }

    /// "Gluten-free" stands before it, after it, or alone in the brackets after it.
    pub fn declared_gluten_free(&self, found: &Match<'_>) -> bool {
        let item = self.item(found);
        let in_item = item
            .clone()
            .any(|at| GLUTEN_FREE.begin(&self.tokens[at..item.end]).is_some());
        in_item
            || self.brackets(found).is_some_and(|inside| {
                let rest = &self.tokens[inside.clone()];
                let certified =
                    usize::from(rest.first().is_some_and(|token| token.is("certified")));
                GLUTEN_FREE.begin(&rest[certified..]) == Some(rest.len() - certified)
            })
    }

    /// It is said that gluten was removed: beside it, in the brackets after it, or in a clause of its own after the comma.
    pub fn processed(&self, found: &Match<'_>) -> bool {
        let item = self.item(found);
        let removes = |range: Range<usize>| talk::removes(&self.tokens[range]);
        let mut end = item.end;
        let inside = self.brackets(found);
        if let Some(inside) = &inside {
            end = (inside.end + 1).min(self.tokens.len());
        }
        let next = self
            .tokens
            .get(end)
            .filter(|token| token.kind == Kind::Item)
            .map(|_| end + 1..spans::end_of_item(self.tokens, end + 1))
            .filter(|next| {
                let ingredient =
                    |other: &Match<'_>| next.contains(&other.first) && self.is_ingredient(other);
                !self.matches.iter().any(ingredient)
            });
        talk::processed(self.tokens, found.last)
            || removes(found.first..item.end.max(found.last + 1))
            || removes(item.start..found.first)
            || inside.is_some_and(removes)
            || next.is_some_and(removes)
    }

    /// A grain's name alone in a sentence that begins with "contains" or "allergens": it points to what the list names.
    pub fn is_pointer(&self, found: &Match<'_>) -> bool {
        let start = spans::start_of_sentence(self.tokens, found.first);
        let points = self
            .tokens
            .get(start)
            .is_some_and(|token| token.is_any(POINTING));
        found.first == found.last && points
    }

    /// A grain is named in its item, in the brackets after it, after its colon, or before the brackets that it stands in.
    pub fn grain_named(&self, found: &Match<'_>) -> bool {
        let item = self.item(found);
        let after_colon = self
            .tokens
            .get(item.end)
            .filter(|token| token.kind == Kind::Colon)
            .map(|_| item.end + 1..spans::end_of_sentence(self.tokens, item.end + 1));
        let before_brackets = item
            .start
            .checked_sub(1)
            .filter(|open| self.tokens[*open].kind == Kind::Open)
            .map(|open| spans::start_of_clause(self.tokens, open)..open);
        let places = [
            Some(item),
            self.brackets(found),
            after_colon,
            before_brackets,
        ];
        let is_grain = |other: &Match<'_>| {
            GRAINS.contains(&other.term.grain.as_str()) && !other.term.is_general()
        };
        let mut places = places.into_iter().flatten();
        places.any(|place| self.names_other(found, place, is_grain))
    }

    /// A plant without gluten is named beside it, or in the brackets after it.
    pub fn other_plant_named(&self, found: &Match<'_>) -> bool {
        self.other_plant_in(found, self.item(found)) || self.other_plant_listed(found)
    }

    /// A plant without gluten is listed in the brackets after it.
    pub fn other_plant_listed(&self, found: &Match<'_>) -> bool {
        self.brackets(found)
            .is_some_and(|inside| self.other_plant_in(found, inside))
    }

    fn other_plant_in(&self, found: &Match<'_>, place: Range<usize>) -> bool {
        self.names_other(found, place, |other| other.term.grain == OTHER)
    }

    /// Whether another ingredient of this kind is named in a place.
    fn names_other(
        &self,
        found: &Match<'_>,
        place: Range<usize>,
        is_wanted: impl Fn(&Match<'_>) -> bool,
    ) -> bool {
        self.matches.iter().any(|other| {
            is_wanted(other)
                && other.first != found.first
                && place.contains(&other.first)
                && self.is_ingredient(other)
        })
    }

    /// The item of the list that a term stands in.
    fn item(&self, found: &Match<'_>) -> Range<usize> {
        let before = self.tokens[..found.first].iter().rposition(ends_item);
        let after = self.tokens[found.last + 1..].iter().position(ends_item);
        before.map_or(0, |at| at + 1)..after.map_or(self.tokens.len(), |at| found.last + 1 + at)
    }

    /// What is between the brackets after the item.
    fn brackets(&self, found: &Match<'_>) -> Option<Range<usize>> {
        let open = self.item(found).end;
        (self.tokens.get(open)?.kind == Kind::Open)
            .then(|| open + 1..spans::close_of(self.tokens, open))
    }
}

fn ends_item(token: &Token) -> bool {
    match &token.kind {
        Kind::Word(text, _) => is_in(text, JOINING),
        Kind::Open | Kind::Close | Kind::Item | Kind::Colon | Kind::Sentence => true,
    }
}
