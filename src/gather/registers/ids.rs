//! Names that also become names of files: what they may be made of, and which of them no file can have.

use crate::gather::codes;
use crate::gather::registers::fields::{Field, Fields, Unusable};
use crate::gather::text;
use crate::model::problem::Problems;
use crate::words::say;

/// Reads a `product_id`, `round` or `package_code`: unusable, with a fault, where something else stands there.
pub fn read(fields: &Fields<'_>, column: &str, problems: &mut Problems) -> Field<String> {
    if fields.is_cleaned(column) {
        fields.fault(
            column,
            say::found_control_characters_in(text::short(&fields.written(column)), "row"),
            say::do_type_anew("always"),
            problems,
        );
        return Err(Unusable);
    }
    if fields.is_date(column) {
        fields.fault(
            column,
            say::found_id_is_day(text::short(&fields.written(column)), column),
            say::do_format_column(),
            problems,
        );
        return Err(Unusable);
    }
    match fields.field(column, problems)? {
        None => Ok(None),
        Some(written) => check(fields, column, &written, problems)
            .map(Some)
            .ok_or(Unusable),
    }
}

/// As [`read`], where it must be there.
pub fn needed(fields: &Fields<'_>, column: &str, problems: &mut Problems) -> Option<String> {
    let id = read(fields, column, problems);
    if id == Ok(None) {
        fields.needed(column, problems);
    }
    id.ok().flatten()
}

fn check(
    fields: &Fields<'_>,
    column: &str,
    written: &str,
    problems: &mut Problems,
) -> Option<String> {
    let id = plain_id(written);
    let allowed = (1..=64).contains(&id.len())
        && !id.starts_with('.')
        && id
            .bytes()
            .all(|b| b.is_ascii_alphanumeric() || matches!(b, b'.' | b'_' | b'-'));
    let since = if !allowed {
        "letters"
    } else if no_file_name(&id) {
        "file_name"
    } else {
        return Some(id);
    };
    fields.fault(
        column,
        say::found_bad_id(text::short(written), column, since),
        say::do_mend_id(since),
        problems,
    );
    None
}

/// As registered, but with plain dashes and letters: what a word processor has made of `A-1` is `A-1`.
fn plain_id(written: &str) -> String {
    use unicode_normalization::UnicodeNormalization;
    let composed: String = text::plain(written).nfkc().collect();
    composed.trim().to_owned()
}

/// What makes two ids the same for a file system that ignores case.
pub fn key(id: &str) -> String {
    codes::key(id)
}

/// Names that Windows keeps for devices, with any ending, and names that end in a dot.
fn no_file_name(id: &str) -> bool {
    const DEVICES: [&str; 4] = ["con", "prn", "aux", "nul"];
    let stem = id.split('.').next().unwrap_or(id).to_lowercase();
    let port = ["com", "lpt"].iter().any(|port| {
        stem.strip_prefix(port)
            .is_some_and(|rest| rest.len() == 1 && rest.bytes().all(|b| b.is_ascii_digit()))
    });
    id.ends_with('.') || DEVICES.contains(&stem.as_str()) || port
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_that_no_file_can_have() {
        for id in ["CON", "nul.x", "Com1", "LPT9.csv", "A."] {
            assert!(no_file_name(id), "{id}");
        }
        for id in ["CONE", "COM10", "A.1", "nula"] {
            assert!(!no_file_name(id), "{id}");
        }
    }
}
