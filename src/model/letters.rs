//! Letters that command what shows them instead of being read, and ends of lines where there is one line.

use std::borrow::Cow;

/// Whether a letter commands: control characters except tab and the ends of lines, marks that turn the direction of what
/// follows, and what is no character at all.
pub fn commands(letter: char) -> bool {
    match letter {
        '\t' | '\n' | '\r' => false,
        '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{fffe}' | '\u{ffff}' => true,
        letter => letter.is_control(),
    }
}

/// A text from elsewhere as a part of one line: each end of a line in it, with the blanks round it, is a blank. What would
/// come to stand on a line of its own could be taken for a line of ours.
pub fn in_line(text: &str) -> Cow<'_, str> {
    if !text.contains(['\n', '\r']) {
        return Cow::Borrowed(text);
    }
    let parts = text.split(['\n', '\r']).map(str::trim);
    let parts: Vec<&str> = parts.filter(|part| !part.is_empty()).collect();
    Cow::Owned(parts.join(" "))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_had_several_lines_has_one() {
        assert_eq!(in_line("k\r\nBcc: a\r\n\r\nX "), "k Bcc: a X");
        assert!(matches!(in_line(" a  b"), Cow::Borrowed(" a  b")));
    }
}
