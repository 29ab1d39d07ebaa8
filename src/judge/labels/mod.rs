//! Ingredient words -> label review, by regime and claim.
//!
//! A screen reads words, not recipes: it finds what a label names, and says where a person must ask.

mod classes;
mod context;
mod languages;
mod phrases;
mod spans;
mod talk;
mod terms;
mod words;

pub use terms::{Terms, built_in_text};
pub use words::squeezed;

use crate::judge::claims;
use crate::model::claim::ClaimClass;
use crate::model::label::{LabelFinding, LabelReview, LabelTerm, StatementPiece, TermClass};
use crate::model::registers::{Oats, Product};
use crate::model::rule::Regime;
use classes::Circumstances;
use context::Context;
use terms::Match;
use words::{Kind, Token};

/// Screens a product's ingredient statement for words that name gluten sources.
///
/// Words inside "free from …" and the like are no ingredients; "may contain …" and the like are kept apart. A register
/// that says "unverified" oats counts even where the statement names none.
pub fn review(product: &Product, regime: Regime, terms: &Terms) -> LabelReview {
    let statement = product.ingredients.as_deref().unwrap_or_default();
    let tokens = words::tokens(statement);
    let matches = terms.find(&tokens);
    let context = Context::of(&tokens, &matches);
    let claim = claims::class(&product.claim, regime);
    let mut bearing: Vec<(&Match<'_>, LabelTerm)> = matches
        .iter()
        .filter(|found| context.is_ingredient(found))
        .filter_map(|found| {
            let class = classes::class(&Circumstances {
                regime,
                claim,
                oats: product.oats,
                found,
                context: &context,
            })?;
            let term = LabelTerm {
                term: found.spelling.to_owned(),
                printed: statement[printed(found, &tokens)].to_owned(),
                grain: found.term.grain.clone(),
                class,
                why: found.term.why.clone(),
                source: found.term.source.clone(),
            };
            Some((found, term))
        })
        .collect();
    // "Wheat starch, water. Contains: wheat." names no second source.
    let asked: Vec<(String, String)> = bearing
        .iter()
        .filter(|(_, term)| term.class == TermClass::Depends)
        .map(|(_, term)| (term.grain.clone(), words::squeezed(&term.printed)))
        .collect();
    for (found, term) in &mut bearing {
        let name = words::squeezed(&term.printed);
        let named_before = asked
            .iter()
            .any(|(grain, printed)| *grain == term.grain && printed.contains(&name));
        if term.class == TermClass::Always && named_before && context.is_pointer(found) {
            term.class = TermClass::Depends;
        }
    }
    let marks: Vec<_> = bearing
        .iter()
        .map(|(found, _)| printed(found, &tokens))
        .collect();
    let terms: Vec<LabelTerm> = bearing.into_iter().map(|(_, term)| term).collect();
    let reading = languages::read(&tokens, &matches);
    LabelReview {
        finding: finding(product, claim, reading.unread, &terms),
        statement: pieces(statement, &marks),
        precautionary: context.precautionary(statement),
        languages: reading.languages,
        unread: reading.unread,
        terms,
    }
}

/// A statement that nobody here could read decides nothing, and where it is not known what the package claims, nothing is
/// held against it.
fn finding(
    product: &Product,
    claim: ClaimClass,
    unread: bool,
    terms: &[LabelTerm],
) -> LabelFinding {
    let any = |of: &dyn Fn(&LabelTerm) -> bool| terms.iter().any(of);
    let verified = matches!(product.oats, Oats::Certified | Oats::PurityProtocol);
    let oats =
        product.oats == Oats::Unverified || !verified && any(&|term| term.grain == terms::OATS);
    let statement = product.ingredients.as_deref().unwrap_or_default();
    if unread || claim == ClaimClass::Unknown && (oats || !terms.is_empty()) {
        LabelFinding::NeedsReview
    } else if claim == ClaimClass::Unknown {
        LabelFinding::None
    } else if any(&|term| term.class == TermClass::Always) {
        LabelFinding::GlutenSource
    } else if oats {
        LabelFinding::UnverifiedOats
    } else if !terms.is_empty() {
        LabelFinding::NeedsReview
    } else if statement.trim().is_empty() {
        LabelFinding::NoIngredients
    } else {
        LabelFinding::None
    }
}

/// Where the words of a match stand in the statement, with the bracket that closes one of theirs.
fn printed(found: &Match<'_>, tokens: &[Token]) -> std::ops::Range<usize> {
    let first = &tokens[found.first];
    let open = tokens[found.first..=found.last]
        .iter()
        .any(|token| token.kind == Kind::Open);
    let close = tokens
        .get(found.last + 1)
        .filter(|next| open && next.kind == Kind::Close);
    first.range.start..close.unwrap_or(&tokens[found.last]).range.end
}

/// The statement cut at the marks: joined again, it is the statement.
fn pieces(statement: &str, marks: &[std::ops::Range<usize>]) -> Vec<StatementPiece> {
    let mut pieces = Vec::new();
    let mut at = 0;
    let mut push = |text: &str, marked| {
        if !text.is_empty() {
            pieces.push(StatementPiece {
                text: text.to_owned(),
                marked,
            });
        }
    };
    for mark in marks {
        push(&statement[at..mark.start], false);
        push(&statement[mark.clone()], true);
        at = mark.end;
    }
    push(&statement[at..], false);
    pieces
}
