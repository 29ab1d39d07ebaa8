//! Inflating (RFC 1951) with a bound on what comes out: a workbook of some kilobytes can hold terabytes of nothing.
//!
//! The spreadsheet reader inflates for itself and without a bound; a file goes to it only once this has seen that it
//! stays small. What is inflated here also shows what that reader does not tell: hidden rows, formulas without result.

/// Why something cannot be inflated.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// More comes out than is allowed.
    TooLarge,
    /// It is not compressed data, or is cut short.
    Damaged,
}

/// Inflates at most `most` bytes.
pub fn inflate(bytes: &[u8], most: usize) -> Result<Vec<u8>, Fault> {
    let mut bits = Bits {
        bytes,
        at: 0,
        held: 0,
        count: 0,
    };
    let mut out = Vec::new();
    loop {
        let last = bits.take(1)? == 1;
        match bits.take(2)? {
            0 => stored(&mut bits, &mut out, most)?,
            1 => {
                let (literals, distances) = fixed_codes();
                compressed(&mut bits, &literals, &distances, &mut out, most)?;
            }
            2 => {
                let (literals, distances) = dynamic_codes(&mut bits)?;
                compressed(&mut bits, &literals, &distances, &mut out, most)?;
            }
            _ => return Err(Fault::Damaged),
        }
        if last {
            return Ok(out);
        }
    }
}

/// Bits from the low end of each byte.
struct Bits<'a> {
    bytes: &'a [u8],
    at: usize,
    held: u64,
    count: u32,
}

impl Bits<'_> {
    fn fill(&mut self) {
        while self.count <= 56 {
            let Some(byte) = self.bytes.get(self.at) else {
                return;
            };
            self.held |= u64::from(*byte) << self.count;
            self.at += 1;
            self.count += 8;
        }
    }

    fn take(&mut self, n: u32) -> Result<usize, Fault> {
        if self.count < n {
            self.fill();
        }
        if self.count < n {
            return Err(Fault::Damaged);
        }
        let value = self.held & ((1 << n) - 1);
        self.drop(n);
        Ok(value as usize)
    }

    fn drop(&mut self, n: u32) {
        self.held >>= n;
        self.count -= n;
    }

    /// Goes to the next whole byte of the input.
    fn align(&mut self) {
        self.drop(self.count % 8);
        self.at -= (self.count / 8) as usize;
        self.held = 0;
        self.count = 0;
    }
}

/// A canonical Huffman code as a table from the next bits to symbol and length.
struct Code {
    table: Vec<(u16, u8)>,
    longest: u32,
}

impl Code {
    fn new(lengths: &[u8]) -> Result<Code, Fault> {
        let longest = u32::from(lengths.iter().copied().max().unwrap_or(0)).max(1);
        let mut table = vec![(0, 0); 1 << longest];
        let mut next = 0_u32;
        for length in 1..=longest {
            next <<= 1;
            for (symbol, _) in lengths
                .iter()
                .enumerate()
                .filter(|(_, own)| u32::from(**own) == length)
            {
                if next >> length != 0 {
                    return Err(Fault::Damaged);
                }
                let reversed = next.reverse_bits() >> (32 - length);
                for index in (reversed as usize..table.len()).step_by(1 << length) {
                    table[index] = (symbol as u16, length as u8);
                }
                next += 1;
            }
        }
        Ok(Code { table, longest })
    }

    fn read(&self, bits: &mut Bits<'_>) -> Result<usize, Fault> {
        if bits.count < self.longest {
            bits.fill();
        }
        let (symbol, length) = self.table[(bits.held & ((1 << self.longest) - 1)) as usize];
        if length == 0 || u32::from(length) > bits.count {
            return Err(Fault::Damaged);
        }
        bits.drop(u32::from(length));
        Ok(usize::from(symbol))
    }
}

fn stored(bits: &mut Bits<'_>, out: &mut Vec<u8>, most: usize) -> Result<(), Fault> {
    bits.align();
    let (length, check) = (bits.take(16)?, bits.take(16)?);
    if length ^ check != 0xffff {
        return Err(Fault::Damaged);
    }
    bits.align();
    let bytes = bits
        .bytes
        .get(bits.at..bits.at + length)
        .ok_or(Fault::Damaged)?;
    if out.len() + length > most {
        return Err(Fault::TooLarge);
    }
    out.extend_from_slice(bytes);
    bits.at += length;
    Ok(())
}

fn fixed_codes() -> (Code, Code) {
    let mut lengths = [8; 288];
    lengths[144..256].fill(9);
    lengths[256..280].fill(7);
    let fixed =
        |lengths: &[u8]| Code::new(lengths).expect("the fixed codes of the standard are sound");
    (fixed(&lengths), fixed(&[5; 30]))
}

fn dynamic_codes(bits: &mut Bits<'_>) -> Result<(Code, Code), Fault> {
    const ORDER: [usize; 19] = [
        16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15,
    ];
    let literals = bits.take(5)? + 257;
    let distances = bits.take(5)? + 1;
    let count = bits.take(4)? + 4;
    let mut lengths = [0; 19];
    for index in &ORDER[..count] {
        lengths[*index] = bits.take(3)? as u8;
    }
    let code = Code::new(&lengths)?;
    let mut lengths: Vec<u8> = Vec::with_capacity(literals + distances);
    while lengths.len() < literals + distances {
        let (length, times) = match code.read(bits)? {
            16 => (*lengths.last().ok_or(Fault::Damaged)?, 3 + bits.take(2)?),
            17 => (0, 3 + bits.take(3)?),
            18 => (0, 11 + bits.take(7)?),
            length => (length as u8, 1),
        };
        lengths.extend(std::iter::repeat_n(length, times));
    }
    if lengths.len() > literals + distances {
        return Err(Fault::Damaged);
    }
    Ok((
        Code::new(&lengths[..literals])?,
        Code::new(&lengths[literals..])?,
    ))
}

fn compressed(
    bits: &mut Bits<'_>,
    literals: &Code,
    distances: &Code,
    out: &mut Vec<u8>,
    most: usize,
) -> Result<(), Fault> {
    const LENGTHS: [usize; 29] = [
        3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115,
        131, 163, 195, 227, 258,
    ];
    const LENGTH_BITS: [u32; 29] = [
        0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0,
    ];
    const DISTANCES: [usize; 30] = [
        1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537,
        2049, 3073, 4097, 6145, 8193, 12289, 16385, 24577,
    ];
    loop {
        match literals.read(bits)? {
            256 => return Ok(()),
            symbol if symbol < 256 => {
                if out.len() >= most {
                    return Err(Fault::TooLarge);
                }
                out.push(symbol as u8);
            }
            symbol => {
                let index = symbol - 257;
                let length =
                    LENGTHS.get(index).ok_or(Fault::Damaged)? + bits.take(LENGTH_BITS[index])?;
                let index = distances.read(bits)?;
                let distance = DISTANCES.get(index).ok_or(Fault::Damaged)?
                    + bits.take((index as u32 / 2).saturating_sub(1))?;
                let start = out.len().checked_sub(distance).ok_or(Fault::Damaged)?;
                if out.len() + length > most {
                    return Err(Fault::TooLarge);
                }
                // The copy may overlap what it writes.
                for at in start..start + length {
                    out.push(out[at]);
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// "hello hello hello hello\n" and nothing else, as a common compressor writes it (fixed codes, one repeat).
    const HELLO: [u8; 11] = [
        0xcb, 0x48, 0xcd, 0xc9, 0xc9, 0x57, 0xc8, 0x40, 0x27, 0xb9, 0x00,
    ];

    #[test]
    fn a_stored_block() {
        let bytes = [1, 3, 0, 0xfc, 0xff, b'a', b'b', b'c'];
        assert_eq!(inflate(&bytes, 10), Ok(b"abc".to_vec()));
        assert_eq!(inflate(&bytes, 2), Err(Fault::TooLarge));
        assert_eq!(inflate(&bytes[..6], 10), Err(Fault::Damaged));
    }

    #[test]
    fn fixed_codes_with_a_repeat() {
        let out = inflate(&HELLO, 100).expect("is sound");
        assert!(
            out.starts_with(b"hello hello hello"),
            "{:?}",
            String::from_utf8_lossy(&out)
        );
        assert_eq!(inflate(&HELLO, 8), Err(Fault::TooLarge));
    }

    #[test]
    fn anything_at_all_is_refused_and_never_panics() {
        for seed in 0..2000_u32 {
            let bytes: Vec<u8> = (0..40)
                .map(|at| (seed.wrapping_mul(2_654_435_761).rotate_left(at) >> 7) as u8)
                .collect();
            let _ = inflate(&bytes, 1000);
        }
    }
}
