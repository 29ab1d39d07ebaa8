//! The texts of an .xlsx, which stand in runs of one look each, in cells and in the list that cells share.

use crate::gather::books::MOST_CELLS;
use crate::gather::books::bounds::{Bound, LONGEST_TEXT, MOST_TEXT};
use crate::gather::books::workbook::archive::Fault;
use crate::gather::books::workbook::markup::{self, Piece};

/// Text that is being put together: in runs of one look each, and beside them how it is spoken, which is no part of it.
#[derive(Default)]
pub struct Runs {
    /// What has been put together.
    pub text: String,
    in_text: bool,
    spoken: bool,
}

impl Runs {
    /// An element opens.
    pub fn open(&mut self, name: &str) {
        match name {
            "t" => self.in_text = !self.spoken,
            "rPh" => self.spoken = true,
            _ => {}
        }
    }

    /// An element closes.
    pub fn close(&mut self, name: &str) {
        match name {
            "t" => self.in_text = false,
            "rPh" => self.spoken = false,
            _ => {}
        }
    }

    /// Text is passed.
    pub fn say(&mut self, text: &str) -> Result<(), Fault> {
        if self.in_text {
            add(&mut self.text, text)?;
        }
        Ok(())
    }
}

/// Adds to a text, which stays within what a cell may hold.
pub fn add(text: &mut String, more: &str) -> Result<(), Fault> {
    text.push_str(more);
    if text.len() > LONGEST_TEXT {
        return Err(Fault::TooLarge(Bound::CellText));
    }
    Ok(())
}

/// The texts that the cells of a workbook share.
pub fn shared_strings(content: &[u8]) -> Result<Vec<Box<str>>, Fault> {
    let mut strings: Vec<Box<str>> = Vec::new();
    let mut runs = Runs::default();
    let mut left = MOST_TEXT;
    markup::walk(content, |piece| {
        match piece {
            // Early versions have another name for it.
            Piece::Open(tag) if matches!(tag.name(), "si" | "sstItem") => runs = Runs::default(),
            Piece::Open(tag) => runs.open(tag.name()),
            Piece::Text(text) => runs.say(&text)?,
            Piece::Close("si" | "sstItem") => {
                if strings.len() >= MOST_CELLS {
                    return Err(Fault::TooLarge(Bound::Cells));
                }
                let text = unescaped(std::mem::take(&mut runs.text));
                left = left
                    .checked_sub(text.len())
                    .ok_or(Fault::TooLarge(Bound::Text))?;
                strings.push(text.into());
            }
            Piece::Close(name) => runs.close(name),
        }
        Ok(())
    })?;
    Ok(strings)
}

/// A text in which letters that XML cannot hold are written as `_x000D_` ([ECMA-376] part 1, 22.9.2.19).
pub fn unescaped(text: String) -> String {
    if !text.contains("_x") {
        return text;
    }
    let escape = |rest: &str| {
        let digits = rest.strip_prefix("_x")?.get(..5)?.strip_suffix('_')?;
        digits
            .bytes()
            .all(|byte| byte.is_ascii_hexdigit())
            .then(|| u16::from_str_radix(digits, 16).ok())?
    };
    let mut units: Vec<u16> = Vec::with_capacity(text.len());
    let mut rest = text.as_str();
    while let Some(letter) = rest.chars().next() {
        if let Some(unit) = escape(rest) {
            units.push(unit);
            rest = &rest[7..];
        } else {
            units.extend_from_slice(letter.encode_utf16(&mut [0; 2]));
            rest = &rest[letter.len_utf8()..];
        }
    }
    String::from_utf16_lossy(&units)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_that_xml_cannot_hold() {
        let told = |text: &str| unescaped(text.to_owned());
        assert_eq!(told("a_x000D__x005F_x0041_"), "a\r_x0041_");
        assert_eq!(
            told("_xD83D__xDE00_ _x12_ _xé000_ é_x"),
            "😀 _x12_ _xé000_ é_x"
        );
    }

    #[test]
    fn more_shared_strings_than_cells_are_refused() {
        let many = [
            b"<sst>".to_vec(),
            b"<si/>".repeat(MOST_CELLS + 1),
            b"</sst>".to_vec(),
        ]
        .concat();
        assert_eq!(shared_strings(&many), Err(Fault::TooLarge(Bound::Cells)));
    }
}
