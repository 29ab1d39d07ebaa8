//! Texts that a spreadsheet program takes for formulas when it opens a register.

/// Whether a text would be taken for a formula: it begins like one, and is no figure.
pub fn is_one(text: &str) -> bool {
    text.starts_with(['=', '+', '-', '@']) && text.len() > 1 && text.parse::<f64>().is_err()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_begins_like_a_formula_is_one_unless_it_is_a_figure() {
        for formula in ["=1+1", "@SUM(A1)", "+cmd|' /C calc'!A0", "-new lot"] {
            assert!(is_one(formula), "{formula}");
        }
        for text in ["-5", "+12.4", "-", "New lot", ""] {
            assert!(!is_one(text), "{text}");
        }
    }
}
