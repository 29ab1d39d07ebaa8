//! How a term bears on a claim, under one regime and in its surroundings.

use crate::judge::labels::context::Context;
use crate::judge::labels::terms::{Match, OATS, When};
use crate::model::claim::ClaimClass;
use crate::model::label::{Leave, TermClass};
use crate::model::registers::Oats;
use crate::model::rule::Regime;

/// All that decides how a term bears on a claim.
#[derive(Clone, Copy)]
pub struct Circumstances<'a> {
    /// The rule that governs the claim.
    pub regime: Regime,
    /// What the package claims.
    pub claim: ClaimClass,
    /// What is known of the product's oats.
    pub oats: Oats,
    /// The term, as the statement names it.
    pub found: &'a Match<'a>,
    /// What surrounds it.
    pub context: &'a Context<'a>,
}

/// The class of a term that bears on the finding; none where it doesn't.
pub fn class(at: &Circumstances<'_>) -> Option<TermClass> {
    match surrounded(at) {
        TermClass::Exempt | TermClass::LookAlike => None,
        TermClass::Depends if at.found.term.grain == OATS => oats(at),
        TermClass::Always => Some(leave(at).map_or(TermClass::Always, TermClass::NotForbidden)),
        class => Some(class),
    }
}

/// The class by the table: what stands beside the term first, then the regime.
fn surrounded(at: &Circumstances<'_>) -> TermClass {
    let (found, context) = (at.found, at.context);
    let term = found.term;
    let exception = |when: When| {
        let mut exceptions = term.exceptions.iter();
        exceptions
            .find(|(condition, _)| *condition == when)
            .map(|(_, class)| *class)
    };
    let named = exception(When::Named).filter(|_| context.other_plant_named(found));
    let listed = exception(When::Listed).filter(|_| context.other_plant_listed(found));
    let grain = exception(When::Grain).filter(|_| context.grain_named(found));
    if let Some(class) = named.or(listed).or(grain) {
        return class;
    }
    let class = exception(When::Under(at.regime)).unwrap_or(term.class);
    // What is declared gluten-free although it names the grain was processed: ask how.
    let asked = match class {
        TermClass::Always if term.grain != OATS => TermClass::Depends,
        class => class,
    };
    if asked != class && context.processed(found) {
        asked
    } else if context.declared_gluten_free(found) {
        exception(When::GlutenFree).unwrap_or(asked)
    } else {
        class
    }
}

/// Why a gluten source is not forbidden here; none where it is.
fn leave(at: &Circumstances<'_>) -> Option<Leave> {
    match (at.regime, at.claim) {
        (_, ClaimClass::Unknown) => Some(Leave::UnknownClaim),
        (_, ClaimClass::VeryLow | ClaimClass::Reduced | ClaimClass::Low) => Some(Leave::Processed),
        (Regime::Eu | Regime::Uk, ClaimClass::GlutenFree) => Some(Leave::AmountAlone),
        (Regime::Custom, ClaimClass::GlutenFree) => Some(Leave::Unsaid),
        (_, ClaimClass::GlutenFree) => None,
    }
}

/// Oats that a regime allows under conditions: kept apart from other grain, as the register must know.
fn oats(at: &Circumstances<'_>) -> Option<TermClass> {
    match at.oats {
        // Whether Chile's rule allows them could not be settled.
        Oats::Certified | Oats::PurityProtocol if at.regime == Regime::Chile => {
            Some(TermClass::Depends)
        }
        Oats::Certified | Oats::PurityProtocol => None,
        Oats::Unverified | Oats::None => Some(TermClass::Depends),
    }
}
