//! The parts of a ZIP archive, each inflated only within a bound.
//!
//! A workbook of some kilobytes can hold terabytes of nothing. What is unpacked is counted as it comes out, whatever sizes
//! the archive claims, and a part that is used twice counts twice.

use crate::gather::books::bounds::{Bound, LARGEST_PART, LARGEST_WORKBOOK, MOST_PARTS};
use std::collections::BTreeMap;
use std::io::{Cursor, Read};
use zip::ZipArchive;
use zip::result::ZipError;

/// Why something cannot be unpacked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// More comes out than is read.
    TooLarge(Bound),
    /// It is not what it should be, or is cut short.
    Damaged,
    /// A password is needed.
    Password,
}

/// An archive, and how much more of it may be unpacked.
pub struct Archive<'a> {
    zip: ZipArchive<Cursor<&'a [u8]>>,
    /// Places by name, in small letters and with `/`; of equal names the last counts.
    places: BTreeMap<String, usize>,
    room: u64,
}

impl<'a> Archive<'a> {
    /// Opens an archive; nothing is unpacked yet.
    pub fn open(bytes: &'a [u8]) -> Result<Archive<'a>, Fault> {
        // Each entry of the directory takes memory before any can be looked at.
        if entries(bytes) > MOST_PARTS {
            return Err(Fault::TooLarge(Bound::Parts));
        }
        let zip = ZipArchive::new(Cursor::new(bytes)).map_err(|_| Fault::Damaged)?;
        let mut places = BTreeMap::new();
        for (name, place) in zip.file_names().zip(0..) {
            let name = name.map_err(|_| Fault::Damaged)?;
            places.insert(name.replace('\\', "/").to_ascii_lowercase(), place);
        }
        Ok(Archive {
            zip,
            places,
            room: LARGEST_WORKBOOK,
        })
    }

    /// Whether there is a part of this name.
    pub fn has(&self, name: &str) -> bool {
        self.places.contains_key(&name.to_ascii_lowercase())
    }

    /// Whether there is a part in this folder.
    pub fn has_folder(&self, folder: &str) -> bool {
        self.places.keys().any(|name| name.starts_with(folder))
    }

    /// The content of a part; none where there is no such part.
    pub fn content(&mut self, name: &str) -> Result<Option<Vec<u8>>, Fault> {
        let Some(place) = self.places.get(&name.to_ascii_lowercase()).copied() else {
            return Ok(None);
        };
        let part = self.zip.by_index(place).map_err(|error| match error {
            ZipError::UnsupportedArchive(ZipError::PASSWORD_REQUIRED) => Fault::Password,
            _ => Fault::Damaged,
        })?;
        let most = self.room.min(LARGEST_PART);
        let mut content = Vec::new();
        // The size that the archive claims is a hint: only what comes out counts.
        content
            .try_reserve_exact(part.size().min(most) as usize)
            .map_err(|_| Fault::TooLarge(Bound::Unpacked))?;
        part.take(most + 1)
            .read_to_end(&mut content)
            .map_err(|_| Fault::Damaged)?;
        let size = content.len() as u64;
        if size > most {
            return Err(Fault::TooLarge(Bound::Unpacked));
        }
        self.room -= size;
        Ok(Some(content))
    }
}

/// The most entries that the directory can have: each starts with the same four bytes.
fn entries(bytes: &[u8]) -> usize {
    bytes
        .windows(4)
        .filter(|four| *four == b"PK\x01\x02")
        .count()
}
