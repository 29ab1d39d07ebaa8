//! Where the pages for a web site are read, for documents that name them and for the pages themselves.

use crate::config::Programme;

/// Where the page of a product and round lies, below the site.
pub fn page(stem: &str) -> String {
    format!("products/{stem}.html")
}

/// The programme's address in a browser: that of its pages, else its own; none where neither could be opened.
pub fn home(programme: &Programme) -> Option<String> {
    let written = programme.site.as_deref().or(programme.website.as_deref());
    let site = written?.trim().trim_end_matches('/');
    let (scheme, place) = site.split_once("://").unwrap_or(("https", site));
    let host = place.split('/').next().unwrap_or_default();
    let is_host = host.contains('.') && host.split('.').all(|part| !part.is_empty());
    let is_plain = |c: char| c.is_ascii_alphanumeric() || "-._~/:%".contains(c);
    let is_address = matches!(scheme, "https" | "http") && is_host && place.chars().all(is_plain);
    is_address.then(|| format!("{scheme}://{place}"))
}

/// Where the page of a product and round is read; none where the settings do not say where the pages lie.
pub fn address_of(stem: &str, programme: &Programme) -> Option<String> {
    let site = programme.site.as_ref()?;
    Some(format!("{site}/{}", link(&page(stem))))
}

/// A path as a link has it: what is no plain letter of a file name is written in percent.
pub fn link(path: &str) -> String {
    let is_plain = |b: u8| b.is_ascii_alphanumeric() || b"-._~/".contains(&b);
    path.bytes()
        .map(|b| match is_plain(b) {
            true => char::from(b).to_string(),
            false => format!("%{b:02X}"),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn links_hold_plain_letters_alone() {
        assert_eq!(link("products/P-1--a b.html"), "products/P-1--a%20b.html");
        assert_eq!(link("é\"?#"), "%C3%A9%22%3F%23");
    }
}
