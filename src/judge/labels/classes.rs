//! How a term bears on a claim, under one regime and in its surroundings.

use crate::judge::labels::terms::{OATS, Term, When};
use crate::model::claim::ClaimClass;
use crate::model::label::{Leave, TermClass};
use crate::model::registers::Oats;
use crate::model::rule::Regime;

/// All that decides how a term bears on a claim.
#[derive(Clone, Copy, Debug)]
pub struct Circumstances {
    /// The rule that governs the claim.
    pub regime: Regime,
    /// What the package claims.
    pub claim: ClaimClass,
    /// What is known of the product's oats.
    pub oats: Oats,
    /// The term is declared gluten-free where it stands.
    pub gluten_free: bool,
    /// Another plant is named with it.
    pub named: bool,
    /// Another plant is listed in the brackets after it.
    pub listed: bool,
    /// A grain is named with it, or follows it.
    pub grain: bool,
    /// It is said that gluten was removed from it.
    pub processed: bool,
}

/// The class of a term that bears on the finding; none where it doesn't.
pub fn class(term: &Term, at: &Circumstances) -> Option<TermClass> {
    match surrounded(term, at) {
        TermClass::Exempt | TermClass::LookAlike => None,
        TermClass::Depends if term.grain == OATS => oats(at),
        TermClass::Always => Some(leave(at).map_or(TermClass::Always, TermClass::NotForbidden)),
        class => Some(class),
    }
}

/// The class by the table: what stands beside the term first, then the regime.
fn surrounded(term: &Term, at: &Circumstances) -> TermClass {
    let exception = |when: When| {
        let mut exceptions = term.exceptions.iter();
        exceptions
            .find(|(condition, _)| *condition == when)
            .map(|(_, class)| *class)
    };
    let named = at.named.then(|| exception(When::Named)).flatten();
    let listed = at.listed.then(|| exception(When::Listed)).flatten();
    let grain = at.grain.then(|| exception(When::Grain)).flatten();
    if let Some(class) = named.or(listed).or(grain) {
        return class;
    }
    let class = exception(When::Under(at.regime)).unwrap_or(term.class);
    if at.processed && class == TermClass::Always && term.grain != OATS {
        return TermClass::Depends;
    }
    match (at.gluten_free, class) {
        (false, class) => class,
        (true, class) => exception(When::GlutenFree).unwrap_or(match class {
            // What is declared gluten-free although it names the grain was processed: ask how.
            TermClass::Always if term.grain != OATS => TermClass::Depends,
            class => class,
        }),
    }
}

/// Why a gluten source is not forbidden here; none where it is.
fn leave(at: &Circumstances) -> Option<Leave> {
    match (at.regime, at.claim) {
        (_, ClaimClass::Unknown) => Some(Leave::UnknownClaim),
        (_, ClaimClass::VeryLow | ClaimClass::Reduced | ClaimClass::Low) => Some(Leave::Processed),
        (Regime::Eu | Regime::Uk, ClaimClass::GlutenFree) => Some(Leave::AmountAlone),
        (Regime::Custom, ClaimClass::GlutenFree) => Some(Leave::Unsaid),
        (_, ClaimClass::GlutenFree) => None,
    }
}

/// Oats that a regime allows under conditions: kept apart from other grain, as the register must know.
fn oats(at: &Circumstances) -> Option<TermClass> {
    match at.oats {
        // Whether Chile's rule allows them could not be settled.
        Oats::Certified | Oats::PurityProtocol if at.regime == Regime::Chile => {
            Some(TermClass::Depends)
        }
        Oats::Certified | Oats::PurityProtocol => None,
        Oats::Unverified | Oats::None => Some(TermClass::Depends),
    }
}
