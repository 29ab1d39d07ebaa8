//! What the label itself says, whatever the test found.

use crate::model::place::Place;

/// The review of one product's label.
#[derive(Clone, Debug, PartialEq)]
pub struct LabelReview {
    /// What it comes to.
    pub finding: LabelFinding,
    /// The terms that bear on the finding, in the order of the statement.
    pub terms: Vec<LabelTerm>,
    /// The statement cut into plain and marked pieces: joined, they are the statement as printed.
    pub statement: Vec<StatementPiece>,
    /// "May contain" and the like, as printed: not ingredients, kept apart.
    pub precautionary: Vec<String>,
    /// The languages in which the statement was read; none where there was nothing to read, or it could not be read.
    pub languages: Vec<LabelLanguage>,
    /// Whether there is a statement that could not be read: it is in none of the languages, and a person must read it.
    pub unread: bool,
}

/// A language in which the table of terms has words.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LabelLanguage {
    /// English.
    English,
    /// German.
    German,
    /// Spanish.
    Spanish,
    /// French.
    French,
    /// Italian.
    Italian,
}

/// What a label review comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LabelFinding {
    /// A declared ingredient that the regime forbids in a food with this claim.
    GlutenSource,
    /// Oats of which the register says nothing good.
    UnverifiedOats,
    /// A term that depends on how it was made: a person must ask.
    NeedsReview,
    /// No term names a gluten source.
    None,
    /// Nothing to screen.
    NoIngredients,
}

impl LabelFinding {
    /// The word in the data files.
    pub fn word(self) -> &'static str {
        match self {
            LabelFinding::GlutenSource => "gluten_source",
            LabelFinding::UnverifiedOats => "unverified_oats",
            LabelFinding::NeedsReview => "needs_review",
            LabelFinding::None => "none",
            LabelFinding::NoIngredients => "no_ingredients",
        }
    }
}

/// A term of the statement that names, or may name, a gluten source.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LabelTerm {
    /// As the table of terms has it: "malt extract".
    pub term: String,
    /// As printed.
    pub printed: String,
    /// The grain, in words: "barley", "oats", "wheat or barley".
    pub grain: String,
    /// How the table classes it under this regime.
    pub class: TermClass,
    /// Why, in one sentence.
    pub why: String,
    /// Where that is from.
    pub source: String,
}

/// How a term bears on a claim, under one regime.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TermClass {
    /// Always a gluten source.
    Always,
    /// Always a gluten source, and not forbidden here.
    NotForbidden(Leave),
    /// Depends on how it was made.
    Depends,
    /// Exempt under a named rule.
    Exempt,
    /// Looks like one and is not.
    LookAlike,
}

/// Why a gluten source is not forbidden in a food with this claim.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Leave {
    /// The rule for the claim asks for the amount of gluten alone (Regulation (EU) No 828/2014, Annex A).
    AmountAlone,
    /// The claim is made of foods whose grain was processed to reduce gluten.
    Processed,
    /// The programme's own rule says nothing about ingredients.
    Unsaid,
    /// It is not known what the package claims.
    UnknownClaim,
}

/// A piece of the statement.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StatementPiece {
    /// As printed.
    pub text: String,
    /// Whether it is one of the terms.
    pub marked: bool,
}

/// A row of the table of terms: words that name a gluten source, or look as if they did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TermRow {
    /// One or more spellings, divided by ";", as the head of the built-in table explains.
    pub term: String,
    /// The grain, in words; "other" for a plant without gluten, "none" for no plant at all.
    pub grain: String,
    /// always, depends, exempt or look-alike.
    pub class: String,
    /// "regime=class", "named=class", "listed=class", "grain=class", "gluten-free=class", divided by ";".
    pub exceptions: String,
    /// Why, in one sentence.
    pub why: String,
    /// Where that is from.
    pub source: String,
    /// Where the register says so; empty in the built-in table.
    pub place: Place,
}

impl TermClass {
    /// Every class that the table of terms can give, with its word there.
    pub const ALL: &'static [(TermClass, &'static str)] = &[
        (TermClass::Always, "always"),
        (TermClass::Depends, "depends"),
        (TermClass::Exempt, "exempt"),
        (TermClass::LookAlike, "look-alike"),
    ];

    /// The class that this word names.
    pub fn from_word(word: &str) -> Option<TermClass> {
        let (class, _) = TermClass::ALL.iter().find(|(_, name)| *name == word)?;
        Some(*class)
    }
}
