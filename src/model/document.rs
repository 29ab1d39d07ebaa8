//! What a run makes, in memory, before anything is written.

/// One file to be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Document {
    /// Path below the folder of outputs, with `/`: `sheets/FH-01--1.pdf`.
    pub path: String,
    /// Its whole content.
    pub bytes: Vec<u8>,
}

impl Document {
    /// A file of text.
    pub fn text(path: impl Into<String>, text: impl Into<String>) -> Document {
        Document {
            path: path.into(),
            bytes: text.into().into_bytes(),
        }
    }
}
