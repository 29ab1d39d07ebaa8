//! Texts that a spreadsheet program takes for formulas when it opens a register.

/// What a formula begins with, also in the full width that spreadsheet programs of East Asia take for the same.
pub const BEGINNINGS: [char; 8] = ['=', '+', '-', '@', '＝', '＋', '－', '＠'];

/// Whether a text would be taken for a formula: it begins like one, and is no figure.
pub fn is_one(text: &str) -> bool {
    text.starts_with(BEGINNINGS) && text.chars().nth(1).is_some() && text.parse::<f64>().is_err()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_begins_like_a_formula_is_one_unless_it_is_a_figure() {
        for formula in [
            "=1+1",
            "@SUM(A1)",
            "+cmd|' /C calc'!A0",
            "-new lot",
            "＝1+1",
            "＋cmd",
            "－new lot",
            "＠SUM(A1)",
        ] {
            assert!(is_one(formula), "{formula}");
        }
        for text in ["-5", "+12.4", "-", "＝", "New lot", ""] {
            assert!(!is_one(text), "{text}");
        }
    }
}
