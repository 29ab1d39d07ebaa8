//! What a run makes, in memory, before anything is written.

use std::io;

/// What a template writes, up to the most that a page or a mail may have.
#[derive(Debug, Default)]
pub struct Filled(Vec<u8>);

impl Filled {
    /// The most bytes: a page of ten thousand products has some of them.
    pub const MOST: usize = 16 << 20;

    /// The text.
    pub fn text(self) -> String {
        String::from_utf8(self.0).expect("a template writes whole texts")
    }
}

impl io::Write for Filled {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        if self.0.len() + bytes.len() > Filled::MOST {
            let most = Filled::MOST >> 20;
            return Err(io::Error::other(format!("it writes more than {most} MB")));
        }
        self.0.extend_from_slice(bytes);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

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
