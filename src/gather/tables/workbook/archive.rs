//! The parts of a ZIP archive, by its directory at the end (APPNOTE.TXT 4.3), each inflated only within a bound.

use crate::gather::tables::workbook::inflate::{self, Fault};

/// Bytes that one part of a workbook may inflate to.
pub const LARGEST_PART: usize = 256 * 1024 * 1024;

/// A part of an archive.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Part<'a> {
    /// Its path in the archive.
    pub name: String,
    compressed: &'a [u8],
    stored: bool,
    /// Its size, as the directory claims it.
    claimed: usize,
}

/// Lists the parts; none where there is no directory.
pub fn parts(bytes: &[u8]) -> Option<Vec<Part<'_>>> {
    const MOST: usize = 10_000;
    let end = find_end(bytes)?;
    let count = short(bytes, end + 10)?.min(MOST);
    let mut at = long(bytes, end + 16)?;
    let mut parts = Vec::new();
    for _ in 0..count {
        if bytes.get(at..at + 4)? != b"PK\x01\x02" {
            return None;
        }
        let (method, compressed, claimed) = (
            short(bytes, at + 10)?,
            long(bytes, at + 20)?,
            long(bytes, at + 24)?,
        );
        let (name, extra, comment) = (
            short(bytes, at + 28)?,
            short(bytes, at + 30)?,
            short(bytes, at + 32)?,
        );
        let local = long(bytes, at + 42)?;
        let written = bytes.get(at + 46..at + 46 + name)?;
        let start = local + 30 + short(bytes, local + 26)? + short(bytes, local + 28)?;
        parts.push(Part {
            name: String::from_utf8_lossy(written).replace('\\', "/"),
            compressed: bytes.get(start..start.checked_add(compressed)?)?,
            stored: method == 0,
            claimed,
        });
        at += 46 + name + extra + comment;
    }
    Some(parts)
}

/// The record at the end stands before a comment of at most 65,535 bytes.
fn find_end(bytes: &[u8]) -> Option<usize> {
    let least = bytes.len().saturating_sub(22 + 65_535);
    (least..=bytes.len().checked_sub(22)?)
        .rev()
        .find(|at| bytes[*at..].starts_with(b"PK\x05\x06"))
}

fn short(bytes: &[u8], at: usize) -> Option<usize> {
    let two: [u8; 2] = bytes.get(at..at + 2)?.try_into().ok()?;
    Some(usize::from(u16::from_le_bytes(two)))
}

fn long(bytes: &[u8], at: usize) -> Option<usize> {
    let four: [u8; 4] = bytes.get(at..at + 4)?.try_into().ok()?;
    usize::try_from(u32::from_le_bytes(four)).ok()
}

impl Part<'_> {
    /// Its content, where it stays within the bound.
    pub fn content(&self) -> Result<Vec<u8>, Fault> {
        // A part that is larger than it claims is not what any program writes.
        let most = self.claimed.min(LARGEST_PART);
        if self.claimed > LARGEST_PART {
            return Err(Fault::TooLarge);
        }
        if self.stored {
            return Ok(self.compressed.to_vec());
        }
        inflate::inflate(self.compressed, most)
    }
}
