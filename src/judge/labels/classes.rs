//! How a term bears on a claim, under one regime and in its surroundings.

use crate::judge::labels::terms::{OATS, Term, When};
use crate::model::label::TermClass;
use crate::model::registers::Oats;
use crate::model::rule::Regime;

/// What a package claims of gluten.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Claim {
    /// Gluten-free, in whatever words.
    GlutenFree,
    /// Low, very low or reduced gluten: made of gluten grains that were processed.
    LowGluten,
    /// Nothing about gluten; "wheat-free" is no claim about rye or barley.
    Nothing,
}

impl Claim {
    /// What these words claim. Words that are not known are taken for a claim of gluten-free, the strictest.
    pub fn of(words: &str) -> Claim {
        let words = words.to_lowercase();
        let has = |part: &str| words.contains(part);
        if has("gluten")
            && ["low", "reduced", "faible", "bajo", "basso"]
                .iter()
                .any(|w| has(w))
        {
            Claim::LowGluten
        } else if has("wheat") && !has("gluten")
            || ["none", "no claim", "n/a", "-"].contains(&words.trim())
        {
            Claim::Nothing
        } else {
            Claim::GlutenFree
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
}

/// The class of a term that bears on the finding, with the reason in words; none where it doesn't.
pub fn class(term: &Term, at: &Circumstances) -> Option<(TermClass, String)> {
    let class = surrounded(term, at);
    if term.grain == OATS && class == TermClass::Depends {
        return oats(term, at);
    }
    match class {
        TermClass::Exempt | TermClass::LookAlike => None,
        TermClass::Depends => Some((class, term.why.clone())),
        TermClass::Always => match forbids(at) {
            None => Some((class, term.why.clone())),
            Some(why) => Some((TermClass::Depends, format!("{} {why}", term.why))),
        },
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
    if let Some(class) = named.or(listed) {
        return class;
    }
    let class = exception(When::Under(at.regime)).unwrap_or(term.class);
    match (at.gluten_free, class) {
        (false, class) => class,
        (true, class) => exception(When::GlutenFree).unwrap_or(match class {
            // What is declared gluten-free although it names the grain was processed: ask how.
            TermClass::Always if term.grain != OATS => TermClass::Depends,
            class => class,
        }),
    }
}

/// Why the regime does not forbid a gluten source here; none where it does.
fn forbids(at: &Circumstances) -> Option<&'static str> {
    match (at.regime, at.claim) {
        (Regime::Eu | Regime::Uk, _) => Some(
            "Here the rule for the claim asks for the amount of gluten alone, not for the ingredients: ask how it was processed.",
        ),
        (_, Claim::LowGluten) => {
            Some("This claim allows it where it was processed to reduce gluten: ask how.")
        }
        (_, Claim::Nothing) => Some("The package makes no claim about gluten."),
        (_, Claim::GlutenFree) => None,
    }
}

/// Oats that a regime allows under conditions: kept apart from other grain, as the register must know.
fn oats(term: &Term, at: &Circumstances) -> Option<(TermClass, String)> {
    match at.oats {
        Oats::Certified | Oats::PurityProtocol if at.regime == Regime::Chile => Some((
            TermClass::Depends,
            format!(
                "{} Whether Chile's rule allows them is to be asked.",
                term.why
            ),
        )),
        Oats::Certified | Oats::PurityProtocol => None,
        Oats::Unverified | Oats::None => Some((TermClass::Depends, term.why.clone())),
    }
}
