//! What stands beside the lab's files in the inbox and bears on a product: named by its content, and read by nobody here.

/// A certificate or a photograph in the inbox.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Exhibit {
    /// What it is.
    pub kind: ExhibitKind,
    /// Path below the programme folder, with `/`: `inbox/…`.
    pub path: String,
    /// SHA-256 of the bytes, lower-case hexadecimal.
    pub sha256: String,
}

/// What an exhibit is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ExhibitKind {
    /// A lab's report, as a document.
    Certificate,
    /// A picture of a package.
    Photograph,
}

impl ExhibitKind {
    /// The word in the data.
    pub fn word(self) -> &'static str {
        match self {
            ExhibitKind::Certificate => "certificate",
            ExhibitKind::Photograph => "photograph",
        }
    }
}
