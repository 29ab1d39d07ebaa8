//! The parts of a ZIP archive, each inflated only within a bound.
//!
//! A workbook of some kilobytes can hold terabytes of nothing, and the spreadsheet reader inflates without a bound. A file
//! goes to it only once this has seen that it stays small. Both stand on the same library, so that what is seen here is
//! what is read there.

use std::collections::BTreeMap;
use std::io::{Cursor, Read};
use zip::ZipArchive;
use zip::result::ZipError;

/// Bytes that one part of a workbook may inflate to.
const LARGEST_PART: u64 = 256 * 1024 * 1024;

/// Bytes that the parts of one workbook may inflate to together, a part that is used twice counted twice.
const LARGEST_WORKBOOK: u64 = 512 * 1024 * 1024;

/// Parts of one archive. A large workbook has hundreds.
const MOST_PARTS: usize = 10_000;

/// Why something cannot be unpacked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// More comes out than is allowed.
    TooLarge,
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
    /// What each part inflates to.
    sizes: Vec<u64>,
    room: u64,
}

impl<'a> Archive<'a> {
    /// Opens an archive and inflates every part once within the bounds.
    pub fn open(bytes: &'a [u8]) -> Result<Archive<'a>, Fault> {
        // Each entry of the directory takes memory before any can be looked at.
        if entries(bytes) > MOST_PARTS {
            return Err(Fault::TooLarge);
        }
        let zip = ZipArchive::new(Cursor::new(bytes)).map_err(|_| Fault::Damaged)?;
        let mut places = BTreeMap::new();
        for (name, place) in zip.file_names().zip(0..) {
            let name = name.map_err(|_| Fault::Damaged)?;
            places.insert(name.replace('\\', "/").to_ascii_lowercase(), place);
        }
        let mut archive = Archive {
            zip,
            places,
            sizes: Vec::new(),
            room: LARGEST_WORKBOOK,
        };
        for place in 0..archive.zip.len() {
            let size = archive.inflate(place, &mut std::io::sink())?;
            archive.sizes.push(size);
        }
        archive.room = LARGEST_WORKBOOK;
        Ok(archive)
    }

    /// Whether there is a part of this name.
    pub fn has(&self, name: &str) -> bool {
        self.places.contains_key(&name.to_ascii_lowercase())
    }

    /// Whether there is a part in this folder.
    pub fn has_folder(&self, folder: &str) -> bool {
        self.places.keys().any(|name| name.starts_with(folder))
    }

    /// Finds out whether these parts may be inflated together, one that is named twice counted twice.
    pub fn together<'n>(&self, names: impl Iterator<Item = &'n str>) -> Result<(), Fault> {
        let sizes = names.filter_map(|name| self.places.get(&name.to_ascii_lowercase()));
        let total: u64 = sizes.map(|place| self.sizes[*place]).sum();
        if total > LARGEST_WORKBOOK {
            Err(Fault::TooLarge)
        } else {
            Ok(())
        }
    }

    /// The content of a part; none where there is no such part.
    pub fn content(&mut self, name: &str) -> Result<Option<Vec<u8>>, Fault> {
        let Some(place) = self.places.get(&name.to_ascii_lowercase()).copied() else {
            return Ok(None);
        };
        let size = usize::try_from(self.sizes[place]).map_err(|_| Fault::TooLarge)?;
        let mut content = Vec::with_capacity(size);
        self.inflate(place, &mut content)?;
        Ok(Some(content))
    }

    fn inflate(&mut self, place: usize, out: &mut dyn std::io::Write) -> Result<u64, Fault> {
        let part = self.zip.by_index(place).map_err(|error| match error {
            ZipError::UnsupportedArchive(ZipError::PASSWORD_REQUIRED) => Fault::Password,
            _ => Fault::Damaged,
        })?;
        let most = self.room.min(LARGEST_PART);
        let copied = std::io::copy(&mut part.take(most + 1), out).map_err(|_| Fault::Damaged)?;
        self.room = self.room.checked_sub(copied).ok_or(Fault::TooLarge)?;
        if copied > most {
            return Err(Fault::TooLarge);
        }
        Ok(copied)
    }
}

/// The most entries that the directory can have: each starts with the same four bytes.
fn entries(bytes: &[u8]) -> usize {
    bytes
        .windows(4)
        .filter(|four| *four == b"PK\x01\x02")
        .count()
}
