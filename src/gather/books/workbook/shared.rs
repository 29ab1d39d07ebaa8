//! The texts that the cells of an .xls share ([MS-XLS] 2.4.265): one after another over several records, at whose borders
//! a text may go on in letters of another width.

use crate::gather::books::workbook::archive::Fault;
use crate::gather::books::workbook::binary::wide;
use crate::gather::books::{Bound, MOST_CELLS};

/// The texts in these records.
pub fn shared_strings(parts: Vec<&[u8]>) -> Result<Vec<Box<str>>, Fault> {
    let mut parts = Parts {
        parts,
        part: 0,
        at: 0,
    };
    let mut strings = Vec::new();
    while parts.more() {
        strings.push(parts.string().ok_or(Fault::Damaged)?.into());
        if strings.len() > MOST_CELLS {
            return Err(Fault::TooLarge(Bound::Cells));
        }
    }
    Ok(strings)
}

struct Parts<'a> {
    parts: Vec<&'a [u8]>,
    part: usize,
    at: usize,
}

impl Parts<'_> {
    /// Goes on to a part that has something left.
    fn more(&mut self) -> bool {
        while let Some(part) = self.parts.get(self.part) {
            if self.at < part.len() {
                return true;
            }
            self.part += 1;
            self.at = 0;
        }
        false
    }

    fn byte(&mut self) -> Option<u8> {
        self.more().then(|| {
            self.at += 1;
            self.parts[self.part][self.at - 1]
        })
    }

    fn short(&mut self) -> Option<usize> {
        Some(usize::from(u16::from_le_bytes([
            self.byte()?,
            self.byte()?,
        ])))
    }

    fn skip(&mut self, count: usize) -> Option<()> {
        let mut left = count;
        while left > 0 {
            if !self.more() {
                return None;
            }
            let step = left.min(self.parts[self.part].len() - self.at);
            self.at += step;
            left -= step;
        }
        Some(())
    }

    fn string(&mut self) -> Option<String> {
        let count = self.short()?;
        let flags = self.byte()?;
        let runs = if flags & 8 != 0 { self.short()? } else { 0 };
        let extra = if flags & 4 != 0 {
            self.short()? | self.short()? << 16
        } else {
            0
        };
        let string = self.letters(count, flags & 1 != 0)?;
        // How parts of the text look, and how it is spoken.
        self.skip(4 * runs)?;
        self.skip(extra)?;
        Some(string)
    }

    fn letters(&mut self, count: usize, two_bytes: bool) -> Option<String> {
        let mut two_bytes = two_bytes;
        let mut string = String::new();
        let mut left = count;
        while left > 0 {
            let part = self.parts.get(self.part)?;
            if self.at >= part.len() {
                self.part += 1;
                self.at = 1;
                two_bytes = self.parts.get(self.part)?.first()? & 1 != 0;
                continue;
            }
            let rest = &part[self.at..];
            let width = if two_bytes { 2 } else { 1 };
            let letters = left.min(rest.len() / width);
            if letters == 0 {
                return None;
            }
            let bytes = &rest[..letters * width];
            if two_bytes {
                string.push_str(&wide(bytes));
            } else {
                string.extend(bytes.iter().map(|byte| char::from(*byte)));
            }
            self.at += bytes.len();
            left -= letters;
        }
        Some(string)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_goes_on_in_the_next_record_in_another_width() {
        let first = b"\x05\0\0abc";
        let second = b"\x01d\0e\0\x01\0\x08\x01\0x\0\0";
        let third = b"\0\0\x00\0\0";
        let strings = shared_strings(vec![first, second, third]).expect("is sound");
        assert_eq!(strings, ["abcde".into(), "x".into(), "".into()]);
        assert_eq!(shared_strings(vec![b"\x05\0\0abc"]), Err(Fault::Damaged));
    }
}
