//! Barcodes as GS1 numbers them: GTIN-8, -12, -13 and -14, each with a check digit.

/// What is wrong with a barcode.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// Something in it is no digit.
    Letters,
    /// So many digits.
    Length(usize),
    /// The last digit, and the one that the others ask for.
    Check(u32, u32),
}

/// What is wrong with a barcode; none where it is sound or empty.
///
/// Spaces and dashes are how people group the digits.
pub fn fault(barcode: &str) -> Option<Fault> {
    let digits: Vec<char> = barcode
        .chars()
        .filter(|letter| {
            !letter.is_whitespace() && !matches!(letter, '-' | '\u{2010}'..='\u{2014}')
        })
        .collect();
    if digits.is_empty() {
        return None;
    }
    let values: Option<Vec<u32>> = digits.iter().map(|digit| digit.to_digit(10)).collect();
    let Some(values) = values else {
        return Some(Fault::Letters);
    };
    if ![8, 12, 13, 14].contains(&values.len()) {
        return Some(Fault::Length(values.len()));
    }
    let (check, body) = values.split_last()?;
    let wanted = check_digit(body);
    (*check != wanted).then_some(Fault::Check(*check, wanted))
}

/// The GS1 check digit: from the right, digits count three times and once by turns, and the sum with the check digit is a
/// multiple of ten (GS1 General Specifications, 7.9.1).
fn check_digit(body: &[u32]) -> u32 {
    let weights = [3, 1].into_iter().cycle();
    let sum: u32 = body
        .iter()
        .rev()
        .zip(weights)
        .map(|(digit, w)| digit * w)
        .sum();
    (10 - sum % 10) % 10
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The worked example of the GS1 General Specifications: 629104150021 has the check digit 3.
    #[test]
    fn the_check_digit_is_that_of_the_published_example() {
        assert_eq!(fault("6291041500213"), None);
        assert_eq!(fault("6291 0415 0021-3"), None);
        assert_eq!(fault("6291041500214"), Some(Fault::Check(4, 3)));
    }

    #[test]
    fn every_single_wrong_digit_is_found() {
        let sound = "6291041500213";
        for at in 0..sound.len() {
            for digit in ('0'..='9').filter(|digit| !sound[at..].starts_with(*digit)) {
                let mut wrong = sound.to_owned();
                wrong.replace_range(at..=at, &digit.to_string());
                assert!(fault(&wrong).is_some(), "{wrong}");
            }
        }
    }

    #[test]
    fn what_is_no_barcode_is_said_to_be_none() {
        assert_eq!(fault("1."), Some(Fault::Letters));
        assert_eq!(fault("712"), Some(Fault::Length(3)));
        assert_eq!(fault("  "), None);
        assert_eq!(fault("96385074"), None, "a GTIN-8");
        assert_eq!(fault("036000291452"), None, "a GTIN-12");
    }
}
