//! Package codes: drawn, with a check character, and free of meaning.

use sha2::{Digest, Sha256};
use std::collections::BTreeSet;

/// The characters of the check system, by value.
const ALPHABET: &[u8; 36] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/// The characters of codes: none that is taken for another in handwriting or over the telephone, no vowel (so that no word
/// comes out), no E (so that no spreadsheet takes a code for a figure).
const DRAWN: &[u8; 25] = b"2346789CDFGHJKLMNPQRTVWXY";

/// Where the letters begin in [`DRAWN`].
const FIRST_LETTER: u8 = 7;

/// Characters before the check character.
const LENGTH: usize = 6;

/// The check character of ISO/IEC 7064:2003, MOD 37,36, for a text of 0 to 9 and A to Z; none where it has another one.
///
/// P = 36; for each character of value a: S = (P + a) mod 36, 36 where that is 0; P = 2 S mod 37. The check character is the
/// one of value c with (P + c) mod 36 = 1.
pub fn check_character(text: &str) -> Option<char> {
    let mut product = 36;
    for byte in text.bytes() {
        let value = ALPHABET.iter().position(|known| *known == byte)?;
        let sum = match (product + value) % 36 {
            0 => 36,
            sum => sum,
        };
        product = sum * 2 % 37;
    }
    Some(char::from(ALPHABET[(37 - product) % 36]))
}

/// Whether the last character is the check character of those before it.
pub fn is_sound(code: &str) -> bool {
    let Some(last) = code.chars().next_back() else {
        return false;
    };
    let body = &code[..code.len() - last.len_utf8()];
    !body.is_empty() && check_character(body) == Some(last)
}

/// Draws codes that stand in none of the `taken` texts (which are in lower case) and are all different.
///
/// A code is two letters, four letters or digits and the check character. It is made of the bytes of SHA-256 of the seed and
/// a running number, and of nothing else: it says nothing about a product or an order. One that can be had only with a check
/// character outside of [`DRAWN`] is drawn again.
pub struct Codes<'a> {
    seed: [u8; 32],
    block: u64,
    bytes: Vec<u8>,
    taken: &'a [String],
    drawn: BTreeSet<String>,
}

impl<'a> Codes<'a> {
    /// Codes from this seed.
    pub fn new(seed: [u8; 32], taken: &'a [String]) -> Codes<'a> {
        Codes {
            seed,
            block: 0,
            bytes: Vec::new(),
            taken,
            drawn: BTreeSet::new(),
        }
    }

    /// So many further codes.
    pub fn draw(&mut self, count: usize) -> Vec<String> {
        (0..count).map(|_| self.next_code()).collect()
    }

    fn next_code(&mut self) -> String {
        loop {
            let mut code: String = (0..LENGTH)
                .map(|at| char::from(self.character(if at < 2 { FIRST_LETTER } else { 0 })))
                .collect();
            let check = check_character(&code).expect("codes are drawn from the alphabet");
            if !DRAWN.contains(&(check as u8)) {
                continue;
            }
            code.push(check);
            let lower = code.to_ascii_lowercase();
            let free = !self.taken.iter().any(|text| text.contains(&lower));
            if free && self.drawn.insert(lower) {
                return code;
            }
        }
    }

    /// One of the characters from `first` on, each as likely as the others.
    fn character(&mut self, first: u8) -> u8 {
        let count = DRAWN.len() as u8 - first;
        let fair = u8::MAX - u8::MAX % count;
        loop {
            let byte = self.byte();
            if byte < fair {
                return DRAWN[usize::from(first + byte % count)];
            }
        }
    }

    fn byte(&mut self) -> u8 {
        if let Some(byte) = self.bytes.pop() {
            return byte;
        }
        let mut hash = Sha256::new();
        hash.update(self.seed);
        hash.update(self.block.to_be_bytes());
        self.block += 1;
        self.bytes = hash.finalize().to_vec();
        self.bytes.pop().expect("a hash has bytes")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_single_slip_and_swap_of_neighbours_is_seen() {
        for code in Codes::new([7; 32], &[]).draw(40) {
            assert!(is_sound(&code), "{code}");
            let bytes = code.as_bytes();
            for at in 0..bytes.len() {
                for other in ALPHABET {
                    let mut slip = bytes.to_vec();
                    slip[at] = *other;
                    let slip = String::from_utf8(slip).expect("is ASCII");
                    assert_eq!(is_sound(&slip), slip == code, "{slip} for {code}");
                }
            }
        }
    }

    #[test]
    fn codes_differ_and_avoid_what_is_taken() {
        let first = Codes::new([1; 32], &[]).draw(500);
        let distinct: BTreeSet<&String> = first.iter().collect();
        assert_eq!(distinct.len(), first.len());
        let taken = vec![format!("a row;{};", first[3].to_lowercase())];
        let second = Codes::new([1; 32], &taken).draw(500);
        assert!(!second.contains(&first[3]));
        assert_eq!(second[..3], first[..3], "the same seed, the same codes");
        assert_ne!(Codes::new([2; 32], &[]).draw(3), first[..3]);
    }
}
