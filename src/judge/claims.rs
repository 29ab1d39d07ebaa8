//! The words on a package -> what they claim, and the limit that goes with the claim.

use crate::judge::labels;
use crate::model::claim::{Claim, ClaimClass};
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::model::registers::Registers;
use crate::model::rule::{Decision, Limit, Regime, Rule};
use crate::words::say;

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

/// Very low gluten, in the languages of Regulation (EU) No 828/2014; the words other than the English ones are from memory.
const VERY_LOW: &[&str] = &[
    "verylowgluten",
    "sehrgeringerglutengehalt",
    "tresfaibleteneurengluten",
    "muybajoengluten",
    "concontenutodiglutinemoltobasso",
];

/// The table of limits as text: a line for each regime and claim that it knows, with the figure, whether exactly it passes,
/// and whether detection decides.
pub fn table() -> String {
    const CLAIMS: [&str; 4] = [
        "gluten-free",
        "very low gluten",
        "reduced gluten",
        "low gluten",
    ];
    let mut table = String::new();
    for (regime, word) in Regime::ALL {
        let Some(limit) = regime.limit() else {
            continue;
        };
        let rule = Rule {
            regime: *regime,
            limit,
            decision: Decision::Simple,
        };
        for text in CLAIMS {
            if let Some(limit) = claim(text, rule).limit {
                let (ppm, passes) = (limit.ppm.0, limit.passes);
                let detection = limit.detection;
                let limit = format!("{ppm} {passes} {detection}");
                table.push_str(&format!("{word}, {text}: {limit}\n"));
            }
        }
    }
    table
}

/// What these words claim under the programme's rule; case, hyphens, spaces and marks do not matter. Under a limit of the
/// programme's own every claim has that limit.
///
/// Limits of the claims beside gluten-free: very low 100 mg/kg, passing (Regulation (EU) No 828/2014, Annex A); reduced
/// 100 mg/kg, passing (CXS 118-1979, 2.1.2); low 20 mg in 100 g, passing (Food Standards Code, Schedule 4).
pub fn claim(text: &str, rule: Rule) -> Claim {
    let class = class(text, rule.regime);
    let limit = match class {
        ClaimClass::GlutenFree => Some(rule.limit),
        ClaimClass::VeryLow | ClaimClass::Reduced => Some(Limit::amount(Ppm(100.0), true)),
        ClaimClass::Low => Some(Limit::amount(Ppm(200.0), true)),
        ClaimClass::Unknown => None,
    };
    Claim {
        text: text.to_owned(),
        class,
        limit,
    }
}

/// The class of a claim under a regime.
pub fn class(text: &str, regime: Regime) -> ClaimClass {
    let words = labels::squeezed(text);
    let is = |list: &[&str]| list.contains(&words.as_str());
    if words.is_empty() {
        return ClaimClass::Unknown;
    }
    match regime {
        _ if is(GLUTEN_FREE) => ClaimClass::GlutenFree,
        Regime::Us if is(UNITED_STATES) => ClaimClass::GlutenFree,
        Regime::Eu | Regime::Uk if is(VERY_LOW) => ClaimClass::VeryLow,
        Regime::Codex if is(&["reducedgluten", "glutenreduced"]) => ClaimClass::Reduced,
        Regime::AuNz if is(&["lowgluten"]) => ClaimClass::Low,
        Regime::Custom => ClaimClass::GlutenFree,
        _ => ClaimClass::Unknown,
    }
}

/// Asks about every claim that the rule doesn't know: nothing is decided on it, and that may be a slip of the pen. A blank one
/// is told where the register is read.
pub fn ask(registers: &Registers, regime: Regime, problems: &mut Problems) {
    for product in registers.products.values() {
        let text = product.claim.trim();
        if text.is_empty() || class(text, regime) != ClaimClass::Unknown {
            continue;
        }
        problems.add(
            Code::Suspicious,
            product.place.clone(),
            say::found_unknown_claim(text, product.product_id.as_str(), regime.word()),
            say::do_look_at_package(),
        );
    }
}
