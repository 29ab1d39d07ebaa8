//! What a package claims of gluten, and the limit that goes with the claim.

use crate::model::rule::{Limit, Rule};

/// The kind of claim, as rules part them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ClaimClass {
    /// "Gluten-free", in whatever words of the regime.
    GlutenFree,
    /// "Very low gluten": Regulation (EU) No 828/2014, Annex, part A.
    VeryLow,
    /// "Reduced gluten": CXS 118-1979, 2.1.2.
    Reduced,
    /// "Low gluten": Food Standards Code, Schedule 4.
    Low,
    /// Nothing that the regime knows as a claim about gluten.
    Unknown,
}

impl ClaimClass {
    /// The word in the data files.
    pub fn word(self) -> &'static str {
        match self {
            ClaimClass::GlutenFree => "gluten_free",
            ClaimClass::VeryLow => "very_low",
            ClaimClass::Reduced => "reduced",
            ClaimClass::Low => "low",
            ClaimClass::Unknown => "unknown",
        }
    }
}

/// A product's claim.
#[derive(Clone, Debug, PartialEq)]
pub struct Claim {
    /// As on the package; empty where the register has none.
    pub text: String,
    /// What it comes to.
    pub class: ClaimClass,
    /// The limit that goes with it; none where the class is unknown.
    pub limit: Option<Limit>,
}

impl Claim {
    /// The claim that a food is gluten-free, under this limit.
    pub fn gluten_free(limit: Limit) -> Claim {
        Claim {
            text: "gluten-free".to_owned(),
            class: ClaimClass::GlutenFree,
            limit: Some(limit),
        }
    }

    /// The rule by which a product with this claim is judged: the programme's, with the claim's own limit. A claim that is
    /// unknown has none; what is drawn beside it then is the programme's.
    pub fn rule(&self, programme: Rule) -> Rule {
        Rule {
            limit: self.limit.unwrap_or(programme.limit),
            ..programme
        }
    }

    /// Whether anything can be decided about it.
    pub fn is_known(&self) -> bool {
        self.class != ClaimClass::Unknown
    }
}
