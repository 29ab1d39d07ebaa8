//! A compound file ([MS-CFB]): a small file system of named streams, in chains of sectors. Chains may lead in a circle
//! and sizes may lie; no stream is taken to be longer than the file.

use crate::gather::books::workbook::binary::{long, longs, short, wide};

/// Numbers from here on are marks, such as the end of a chain.
const MARKS: u32 = 0xffff_fffa;
/// Streams shorter than this stand in a stream of their own, in sectors of 64 bytes.
const SHORT: usize = 4096;
const SHORT_SECTOR: usize = 64;

/// A compound file.
pub struct Compound<'a> {
    bytes: &'a [u8],
    sector: usize,
    /// The sector that follows each sector.
    next: Vec<u32>,
    short: Vec<u8>,
    next_short: Vec<u32>,
    entries: Vec<Entry>,
}

struct Entry {
    name: String,
    start: u32,
    size: usize,
}

impl<'a> Compound<'a> {
    /// Opens a compound file; none where it is damaged.
    pub fn open(bytes: &'a [u8]) -> Option<Compound<'a>> {
        let sector = match short(bytes, 30)? {
            9 => 512,
            12 => 4096,
            _ => return None,
        };
        let mut file = Compound {
            bytes,
            sector,
            next: Vec::new(),
            short: Vec::new(),
            next_short: Vec::new(),
            entries: Vec::new(),
        };
        file.next = file.all_next()?;
        let most = bytes.len();
        let directory = file.chain(long(bytes, 48)?, most);
        file.entries = directory.chunks_exact(128).filter_map(entry).collect();
        let root = file.entries.first()?;
        file.short = file.chain(root.start, root.size);
        file.next_short = longs(&file.chain(long(bytes, 60)?, most));
        Some(file)
    }

    /// Whether there is a stream or a storage of this name.
    pub fn has(&self, name: &str) -> bool {
        self.entries
            .iter()
            .any(|entry| entry.name.eq_ignore_ascii_case(name))
    }

    /// A stream by its name.
    pub fn stream(&self, name: &str) -> Option<Vec<u8>> {
        let entry = self
            .entries
            .iter()
            .find(|entry| entry.name.eq_ignore_ascii_case(name))?;
        Some(if entry.size < SHORT {
            follow(entry.start, entry.size, &self.next_short, |at| {
                part(&self.short, at * SHORT_SECTOR, SHORT_SECTOR)
            })
        } else {
            self.chain(entry.start, entry.size)
        })
    }

    /// The table of what follows what: its own sectors are named in the header and, beyond 109, in a chain of sectors.
    fn all_next(&self) -> Option<Vec<u32>> {
        let sectors = self.bytes.len() / self.sector;
        let mut named = longs(self.bytes.get(76..512)?);
        let mut more = long(self.bytes, 68)?;
        let mut passed = 0;
        while more < MARKS && passed <= sectors {
            let mut numbers = longs(self.sector_at(more as usize));
            more = numbers.pop()?;
            named.extend(numbers);
            passed += 1;
        }
        let mut next = Vec::new();
        for number in named.into_iter().filter(|number| *number < MARKS) {
            // More than the file has sectors says nothing.
            if next.len() > sectors {
                break;
            }
            next.extend(longs(self.sector_at(number as usize)));
        }
        Some(next)
    }

    /// The bytes of a sector, as far as the file has them. The header takes the place of one sector.
    fn sector_at(&self, number: usize) -> &'a [u8] {
        let start = (number + 1).saturating_mul(self.sector);
        part(self.bytes, start, self.sector)
    }

    fn chain(&self, start: u32, size: usize) -> Vec<u8> {
        let size = size.min(self.bytes.len());
        follow(start, size, &self.next, |number| self.sector_at(number))
    }
}

/// At most `size` bytes of a chain.
fn follow<'s>(
    start: u32,
    size: usize,
    next: &[u32],
    sector: impl Fn(usize) -> &'s [u8],
) -> Vec<u8> {
    let mut out = Vec::new();
    let mut number = start;
    while number < MARKS && out.len() < size {
        let bytes = sector(number as usize);
        if bytes.is_empty() {
            break;
        }
        out.extend_from_slice(&bytes[..bytes.len().min(size - out.len())]);
        match next.get(number as usize) {
            Some(after) => number = *after,
            None => break,
        }
    }
    out
}

fn entry(bytes: &[u8]) -> Option<Entry> {
    let length = usize::from(short(bytes, 64)?).clamp(2, 64);
    Some(Entry {
        name: wide(&bytes[..length - 2]),
        start: long(bytes, 116)?,
        size: long(bytes, 120)? as usize,
    })
}

fn part(bytes: &[u8], start: usize, length: usize) -> &[u8] {
    let start = start.min(bytes.len());
    &bytes[start..start.saturating_add(length).min(bytes.len())]
}
