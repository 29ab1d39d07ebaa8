//! Patterns of paths below the inbox, as settings and registers have them.

/// Whether a pattern fits the path below `inbox/`, or, without a folder in it, the name.
pub fn path_fits(pattern: &str, path: &str) -> bool {
    let below = path.strip_prefix("inbox/").unwrap_or(path).to_lowercase();
    let pattern = pattern.trim_start_matches("inbox/").to_lowercase();
    let name = below.rsplit('/').next().unwrap_or(&below);
    fits(&pattern, &below) || (!pattern.contains('/') && fits(&pattern, name))
}

/// A pattern with `*` (anything but a folder's end), `**` (anything) and `?` (one letter).
fn fits(pattern: &str, text: &str) -> bool {
    let pattern: Vec<char> = pattern.chars().collect();
    let text: Vec<char> = text.chars().collect();
    // Which lengths of the text are reached by the pattern so far: linear in both, whatever the stars.
    let mut reached = vec![false; text.len() + 1];
    reached[0] = true;
    let mut at = 0;
    while at < pattern.len() {
        let deep = pattern[at] == '*' && pattern.get(at + 1) == Some(&'*');
        let mut next = vec![false; text.len() + 1];
        for end in 0..=text.len() {
            let before = end.checked_sub(1);
            next[end] = match pattern[at] {
                '*' => {
                    reached[end]
                        || before
                            .is_some_and(|before| next[before] && (deep || text[before] != '/'))
                }
                '?' => before.is_some_and(|before| reached[before] && text[before] != '/'),
                c => before.is_some_and(|before| reached[before] && text[before] == c),
            };
        }
        reached = next;
        at += if deep { 2 } else { 1 };
    }
    reached[text.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn patterns_fit_as_in_a_shell() {
        for (pattern, path, expected) in [
            ("FH-*.xlsx", "fh-12.xlsx", true),
            ("*.xlsx", "2031/a.xlsx", false),
            ("2031/*.xlsx", "2031/a.xlsx", true),
            ("**/*.xlsx", "2031/03/a.xlsx", true),
            ("fh-?.csv", "fh-12.csv", false),
        ] {
            assert_eq!(
                fits(&pattern.to_lowercase(), path),
                expected,
                "{pattern} {path}"
            );
        }
        assert!(!fits(
            &"*a".repeat(50),
            &"a".repeat(5000)[..4999].replace('a', "b")
        ));
    }
}
