//! Names that also become names of files: what they may be made of, and which of them no file can have.

use crate::gather::codes;
use crate::gather::registers::fields::{Field, Fields, Unusable};
use crate::gather::text;
use crate::model::problem::Problems;

/// Reads a `product_id`, `round` or `package_code`: unusable, with a fault, where something else stands there.
pub fn read(fields: &Fields<'_>, column: &str, problems: &mut Problems) -> Field<String> {
    if fields.is_cleaned(column) {
        fields.fault(
            column,
            format!(
                "“{}” holds characters that steer a device and show nothing; the row is not used",
                text::short(&fields.written(column))
            ),
            "Type it anew.",
            problems,
        );
        return Err(Unusable);
    }
    if fields.is_date(column) {
        fields.fault(
            column,
            format!(
                "“{}” is a day that a spreadsheet program has made of a {column}; the row is not used",
                text::short(&fields.written(column))
            ),
            "Set the column's format to text, and type it anew.",
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
    let hint =
        "Use 1 to 64 of the letters A to Z, digits, '.', '_' and '-', not starting with '.'.";
    let allowed = (1..=64).contains(&id.len())
        && !id.starts_with('.')
        && id
            .bytes()
            .all(|b| b.is_ascii_alphanumeric() || matches!(b, b'.' | b'_' | b'-'));
    if !allowed {
        let message = format!(
            "“{}” cannot be a {column}; the row is not used",
            text::short(written)
        );
        fields.fault(column, message, hint, problems);
        return None;
    }
    if no_file_name(&id) {
        let message = format!(
            "“{id}” cannot be a {column}, since no file can have that name on every computer; the row is not used"
        );
        fields.fault(
            column,
            message,
            "Choose another one; it must not end in '.' or be CON, NUL, COM1 and the like.",
            problems,
        );
        return None;
    }
    Some(id)
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
