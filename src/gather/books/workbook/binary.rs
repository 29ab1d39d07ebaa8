//! What the binary workbooks have in common: numbers with the low byte first, texts of two-byte letters, errors.

/// A byte at a place.
pub fn byte(bytes: &[u8], at: usize) -> Option<u8> {
    bytes.get(at).copied()
}

/// Two bytes at a place.
pub fn short(bytes: &[u8], at: usize) -> Option<u16> {
    let two = bytes.get(at..at.checked_add(2)?)?;
    Some(u16::from_le_bytes(two.try_into().ok()?))
}

/// Four bytes at a place.
pub fn long(bytes: &[u8], at: usize) -> Option<u32> {
    let four = bytes.get(at..at.checked_add(4)?)?;
    Some(u32::from_le_bytes(four.try_into().ok()?))
}

/// As many four bytes as there are.
pub fn longs(bytes: &[u8]) -> Vec<u32> {
    bytes
        .chunks_exact(4)
        .map(|four| u32::from_le_bytes([four[0], four[1], four[2], four[3]]))
        .collect()
}

/// A floating number at a place.
pub fn double(bytes: &[u8], at: usize) -> Option<f64> {
    let eight = bytes.get(at..at.checked_add(8)?)?;
    Some(f64::from_le_bytes(eight.try_into().ok()?))
}

/// A number in four bytes ([MS-XLS] 2.5.217): whole or the upper half of a floating one, perhaps in hundredths.
pub fn packed(bytes: &[u8], at: usize) -> Option<f64> {
    let raw = long(bytes, at)?;
    let number = if raw & 2 != 0 {
        f64::from(raw as i32 >> 2)
    } else {
        f64::from_bits(u64::from(raw & !3) << 32)
    };
    Some(if raw & 1 != 0 { number / 100.0 } else { number })
}

/// A text of two-byte letters.
pub fn wide(bytes: &[u8]) -> String {
    let units: Vec<u16> = bytes
        .chunks_exact(2)
        .map(|two| u16::from_le_bytes([two[0], two[1]]))
        .collect();
    String::from_utf16_lossy(&units)
}

/// An error in a cell, as spreadsheet programs show it.
pub fn error_name(code: u8) -> &'static str {
    match code {
        0x00 => "#NULL!",
        0x07 => "#DIV/0!",
        0x0f => "#VALUE!",
        0x17 => "#REF!",
        0x1d => "#NAME?",
        0x24 => "#NUM!",
        0x2a => "#N/A",
        _ => "#ERROR!",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_in_four_bytes() {
        let of = |raw: u32| packed(&raw.to_le_bytes(), 0);
        assert_eq!(of((1240 << 2) | 3), Some(12.4));
        assert_eq!(of((77 << 2) | 2), Some(77.0));
        assert_eq!(of(((-5_i32) << 2) as u32 | 2), Some(-5.0));
        assert_eq!(of(0x3ff0_0000), Some(1.0));
        assert_eq!(of(0x3ff0_0001), Some(0.01));
        assert_eq!(packed(&[1, 2], 0), None);
    }
}
