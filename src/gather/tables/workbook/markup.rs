//! The tags of a workbook's XML, one after another: enough to see attributes, without building anything.

/// A tag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tag<'a> {
    /// Its name without a namespace.
    pub name: &'a str,
    /// What stands behind the name.
    attributes: &'a str,
    /// Whether it closes an element.
    pub closes: bool,
    /// Whether it opens and closes one at once.
    pub empty: bool,
    /// The text between this tag and the next.
    pub text: &'a str,
}

/// The tags of a text. Comments and declarations are passed over.
pub fn tags(text: &str) -> impl Iterator<Item = Tag<'_>> {
    let mut rest = text;
    std::iter::from_fn(move || {
        loop {
            let start = rest.find('<')?;
            let after = &rest[start + 1..];
            if let Some(comment) = after.strip_prefix("!--") {
                rest = &comment[comment.find("-->")? + 3..];
                continue;
            }
            let end = end_of_tag(after)?;
            let inner = &after[..end];
            rest = &after[end + 1..];
            if inner.starts_with(['?', '!']) {
                continue;
            }
            let closes = inner.starts_with('/');
            let empty = inner.ends_with('/');
            let inner = inner.trim_matches('/');
            let (name, attributes) = inner
                .split_once(|c: char| c.is_ascii_whitespace())
                .unwrap_or((inner, ""));
            let text = &rest[..rest.find('<').unwrap_or(rest.len())];
            return Some(Tag {
                name: name.rsplit(':').next().unwrap_or(name),
                attributes,
                closes,
                empty,
                text,
            });
        }
    })
}

/// A `>` that stands in no quotes.
fn end_of_tag(text: &str) -> Option<usize> {
    let mut quote = None;
    text.bytes().position(|b| match (quote, b) {
        (None, b'>') => true,
        (None, b'"' | b'\'') => {
            quote = Some(b);
            false
        }
        (Some(open), b) if open == b => {
            quote = None;
            false
        }
        _ => false,
    })
}

impl<'a> Tag<'a> {
    /// An attribute by its name without a namespace.
    pub fn attribute(&self, wanted: &str) -> Option<&'a str> {
        let mut rest = self.attributes;
        loop {
            let equals = rest.find('=')?;
            let name = rest[..equals].trim();
            let after = rest[equals + 1..].trim_start();
            let quote = after.chars().next().filter(|c| matches!(c, '"' | '\''))?;
            let value = &after[1..];
            let end = value.find(quote)?;
            if name.rsplit(':').next() == Some(wanted) {
                return Some(&value[..end]);
            }
            rest = &value[end + 1..];
        }
    }

    /// An attribute that counts something.
    pub fn number(&self, wanted: &str) -> Option<u64> {
        self.attribute(wanted)?.trim().parse().ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tags_with_their_attributes_and_text() {
        let text = "<?xml version=\"1.0\"?><x:row r='5' note=\"a > b\" x:hidden=\"1\"><!-- <no/> --><v>12</v><e/></x:row>";
        let all: Vec<Tag<'_>> = tags(text).collect();
        let names: Vec<(&str, bool)> = all.iter().map(|tag| (tag.name, tag.closes)).collect();
        assert_eq!(
            names,
            [
                ("row", false),
                ("v", false),
                ("v", true),
                ("e", false),
                ("row", true)
            ]
        );
        assert_eq!(all[0].number("r"), Some(5));
        assert_eq!(all[0].attribute("hidden"), Some("1"));
        assert_eq!(all[1].text, "12");
        assert!(all[3].empty);
    }
}
