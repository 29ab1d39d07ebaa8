//! What to bear in mind about an assay and a food.

/// What to bear in mind about the assay and this food; nothing of it decides.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Caution {
    /// The label names barley as grain, and a sandwich assay gave a figure: it reads barley too high.
    BarleyReadHigh,
    /// The food holds oats, which the assay does not see; other grain in them is unevenly spread.
    OatsUnseen,
    /// Tannins bind gluten, and the lab does not say what it did against that.
    Tannins,
    /// The lab does not name the cocktail extraction.
    NoCocktail,
    /// A competitive assay was used for a food whose proteins are whole.
    CompetitiveOnWhole,
    /// The label names these fermented or hydrolysed ingredients, though the register says that the food is neither: a
    /// sandwich assay can miss their gluten.
    MayBeInPieces(Vec<String>),
}

impl Caution {
    /// A word for it, for text without sentences.
    pub fn word(&self) -> &'static str {
        match self {
            Caution::BarleyReadHigh => "barley is read too high",
            Caution::OatsUnseen => "oats are not seen",
            Caution::Tannins => "tannins bind gluten",
            Caution::NoCocktail => "no cocktail extraction named",
            Caution::CompetitiveOnWhole => "competitive assay on whole proteins",
            Caution::MayBeInPieces(_) => "gluten may be in pieces",
        }
    }
}
