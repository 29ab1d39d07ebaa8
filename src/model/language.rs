//! The language that documents are made in.

/// A language that documents are made in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Language {
    /// English, spelt as in Britain.
    #[default]
    English,
    /// German.
    German,
    /// Spanish.
    Spanish,
}

impl Language {
    /// Every language with the word that names it in the settings: its tag in BCP 47.
    pub const ALL: &'static [(Language, &'static str)] = &[
        (Language::English, "en"),
        (Language::German, "de"),
        (Language::Spanish, "es"),
    ];

    /// Its tag in BCP 47.
    pub fn tag(self) -> &'static str {
        match self {
            Language::English => "en",
            Language::German => "de",
            Language::Spanish => "es",
        }
    }

    /// The region whose spelling and quotation marks are used (ISO 3166-1).
    pub fn region(self) -> &'static str {
        match self {
            Language::English => "GB",
            Language::German => "DE",
            Language::Spanish => "ES",
        }
    }
}
