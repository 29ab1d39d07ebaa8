//! Letters that command what shows them instead of being read.

/// Whether a letter commands: control characters except tab and the ends of lines, marks that turn the direction of what
/// follows, and what is no character at all.
pub fn commands(letter: char) -> bool {
    match letter {
        '\t' | '\n' | '\r' => false,
        '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{fffe}' | '\u{ffff}' => true,
        letter => letter.is_control(),
    }
}
