//! Mail addresses as people keep them.

/// The addresses in a register's cell, split at commas, semicolons and spaces; none where any of them is no address.
pub fn addresses(cell: &str) -> Option<Vec<String>> {
    let parts: Vec<&str> = cell
        .split([',', ';', ' ', '\t', '\r', '\n', '\u{a0}'])
        .filter(|part| !part.is_empty())
        .collect();
    let all_sound = parts.iter().all(|part| is_address(part));
    (all_sound && !parts.is_empty()).then(|| parts.into_iter().map(str::to_owned).collect())
}

/// The plain form of an address (RFC 5322 `dot-atom`, a domain with a dot): what every mail program takes. Each is at most
/// 254 characters long (RFC 5321).
fn is_address(text: &str) -> bool {
    let Some((local, domain)) = text.split_once('@') else {
        return false;
    };
    let atoms = |text: &str, allowed: fn(char) -> bool| {
        text.split('.')
            .all(|atom| !atom.is_empty() && atom.chars().all(allowed))
    };
    text.len() <= 254
        && domain.contains('.')
        && atoms(local, |c| {
            c.is_ascii_alphanumeric() || "!#$%&'*+-/=?^_`{|}~".contains(c)
        })
        && atoms(domain, |c| c.is_ascii_alphanumeric() || c == '-')
}
