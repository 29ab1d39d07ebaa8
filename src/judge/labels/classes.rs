//! How a term bears on a claim, under one regime and in its surroundings.

use crate::judge::labels::terms::{OATS, Term, When};
use crate::judge::labels::words;
use crate::model::label::{Leave, TermClass};
use crate::model::registers::Oats;
use crate::model::rule::Regime;

/// What a package claims of gluten.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Claim {
    /// Gluten-free, in whatever words of the regime.
    GlutenFree,
    /// Low, very low or reduced gluten: made of gluten grains that were processed.
    LowGluten,
    /// Nothing that the regime knows as a claim about gluten.
    Unknown,
}

/// Gluten-free in the languages of labels.
const GLUTEN_FREE: &[&str] = &[
    "glutenfree",
    "glutenfrei",
    "singluten",
    "libredegluten",
    "sintacc",
    "sansgluten",
    "senzaglutine",
];

/// Further words of one rule (21 CFR 101.91 (b)).
const UNITED_STATES: &[&str] = &["nogluten", "freeofgluten", "withoutgluten"];

/// Very low gluten, in the languages of Regulation (EU) No 828/2014.
const VERY_LOW: &[&str] = &[
    "verylowgluten",
    "sehrgeringerglutengehalt",
    "tresfaibleteneurengluten",
    "muybajoengluten",
    "concontenutodiglutinemoltobasso",
];

impl Claim {
    /// What these words claim under a regime; case, hyphens, spaces and marks do not matter. Under a programme's own rule
    /// every claim is one and the same.
    pub fn of(words: &str, regime: Regime) -> Claim {
        let words = words::squeezed(words);
        let is = |list: &[&str]| list.contains(&words.as_str());
        let low = match regime {
            Regime::Eu | Regime::Uk => is(VERY_LOW),
            Regime::Codex => is(&["reducedgluten", "glutenreduced"]),
            Regime::AuNz => is(&["lowgluten"]),
            _ => false,
        };
        let own = regime == Regime::Custom && !words.is_empty();
        if own || is(GLUTEN_FREE) || regime == Regime::Us && is(UNITED_STATES) {
            Claim::GlutenFree
        } else if low {
            Claim::LowGluten
        } else {
            Claim::Unknown
        }
    }
}

/// All that decides how a term bears on a claim.
#[derive(Clone, Copy, Debug)]
pub struct Circumstances {
    /// The rule that governs the claim.
    pub regime: Regime,
    /// What the package claims.
    pub claim: Claim,
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
        (_, Claim::Unknown) => Some(Leave::UnknownClaim),
        (_, Claim::LowGluten) => Some(Leave::Processed),
        (Regime::Eu | Regime::Uk, Claim::GlutenFree) => Some(Leave::AmountAlone),
        (Regime::Custom, Claim::GlutenFree) => Some(Leave::Unsaid),
        (_, Claim::GlutenFree) => None,
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
