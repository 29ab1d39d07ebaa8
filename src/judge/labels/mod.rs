//! Ingredient words -> label review, by regime and claim.
//!
//! A screen reads words, not recipes: it finds what a label names, and says where a person must ask.

mod classes;
mod context;
mod phrases;
mod spans;
mod terms;
mod words;

pub use terms::Terms;

use crate::model::label::{LabelFinding, LabelReview, LabelTerm, StatementPiece, TermClass};
use crate::model::registers::{Oats, Product};
use crate::model::rule::Regime;
use classes::{Circumstances, Claim};
use context::Context;
use terms::Match;
use words::Token;

/// Screens a product's ingredient statement for words that name gluten sources.
///
/// Words inside "free from …" and the like are no ingredients; "may contain …" and the like are kept apart. A register
/// that says "unverified" oats counts even where the statement names none.
pub fn review(product: &Product, regime: Regime, terms: &Terms) -> LabelReview {
    let statement = product.ingredients.as_deref().unwrap_or_default();
    let tokens = words::tokens(statement);
    let matches = terms.find(&tokens);
    let context = Context::of(&tokens, &matches);
    let claim = Claim::of(&product.claim);
    let bearing: Vec<(&Match<'_>, LabelTerm)> = matches
        .iter()
        .filter(|found| context.is_ingredient(found))
        .filter_map(|found| {
            let circumstances = Circumstances {
                regime,
                claim,
                oats: product.oats,
                gluten_free: context.declared_gluten_free(found),
                named: context.other_plant_named(found),
                listed: context.other_plant_listed(found),
            };
            let (class, why) = classes::class(found.term, &circumstances)?;
            let term = LabelTerm {
                term: found.spelling.to_owned(),
                printed: statement[printed(found, &tokens)].to_owned(),
                grain: found.term.grain.clone(),
                class,
                why,
                source: found.term.source.clone(),
            };
            Some((found, term))
        })
        .collect();
    let marks: Vec<_> = bearing
        .iter()
        .map(|(found, _)| printed(found, &tokens))
        .collect();
    let terms: Vec<LabelTerm> = bearing.into_iter().map(|(_, term)| term).collect();
    LabelReview {
        finding: finding(product, statement, &terms),
        statement: pieces(statement, &marks),
        precautionary: context.precautionary(statement),
        terms,
    }
}

fn finding(product: &Product, statement: &str, terms: &[LabelTerm]) -> LabelFinding {
    let unverified = matches!(product.oats, Oats::Unverified | Oats::None);
    let any = |of: &dyn Fn(&LabelTerm) -> bool| terms.iter().any(of);
    if any(&|term| term.class == TermClass::Always) {
        LabelFinding::GlutenSource
    } else if product.oats == Oats::Unverified
        || (unverified && any(&|term| term.grain == terms::OATS))
    {
        LabelFinding::UnverifiedOats
    } else if !terms.is_empty() {
        LabelFinding::NeedsReview
    } else if statement.trim().is_empty() {
        LabelFinding::NoIngredients
    } else {
        LabelFinding::None
    }
}

/// Where the words of a match stand in the statement.
fn printed(found: &Match<'_>, tokens: &[Token]) -> std::ops::Range<usize> {
    tokens[found.first].range.start..tokens[found.last].range.end
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
