//! The XML parts of a workbook, piece by piece, without building anything.

use crate::gather::books::workbook::archive::Fault;
use encoding_rs::Encoding;
use quick_xml::events::attributes::Attribute;
use quick_xml::events::{BytesRef, BytesStart, Event};
use quick_xml::{Reader, XmlVersion};
use std::borrow::Cow;
use std::str::FromStr;

/// Elements one inside another. Spreadsheets need a dozen, and the reader keeps each in mind.
const DEEPEST: usize = 1_000;

/// A piece of a text in XML. An element without content is an opening and a closing one.
pub enum Piece<'a> {
    /// An element opens.
    Open(Tag<'a>),
    /// An element of this name closes.
    Close(&'a str),
    /// Text between two tags, or a part of it.
    Text(Cow<'a, str>),
}

/// An opening tag.
pub struct Tag<'a>(&'a BytesStart<'a>);

/// Passes every piece of a part. Names are without a namespace; comments and declarations are passed over. A part that ends
/// within an element is damaged, and so is one with a reference that is not known: it would leave a hole in a figure.
pub fn walk(
    content: &[u8],
    mut pass: impl FnMut(Piece<'_>) -> Result<(), Fault>,
) -> Result<(), Fault> {
    let content = decoded(content)?;
    let mut reader = Reader::from_str(&content);
    let config = reader.config_mut();
    // As lenient as spreadsheet programs.
    config.check_end_names = false;
    config.check_comments = false;
    config.expand_empty_elements = true;
    let mut depth = 0_usize;
    loop {
        match reader.read_event().map_err(|_| Fault::Damaged)? {
            Event::Start(start) => {
                depth += 1;
                if depth > DEEPEST {
                    return Err(Fault::Damaged);
                }
                pass(Piece::Open(Tag(&start)))?;
            }
            Event::End(end) => {
                depth = depth.saturating_sub(1);
                pass(Piece::Close(end.local_name().as_ref()))?;
            }
            Event::Text(text) => pass(Piece::Text(text.xml10_content()))?,
            Event::CData(text) => pass(Piece::Text(text.xml10_content()))?,
            Event::GeneralRef(reference) => {
                pass(Piece::Text(referred(&reference).ok_or(Fault::Damaged)?))?;
            }
            Event::Eof if depth > 0 => return Err(Fault::Damaged),
            Event::Eof => return Ok(()),
            _ => {}
        }
    }
}

/// A part as text: UTF-8, UTF-16 by its mark, or the encoding that its first line names.
fn decoded(content: &[u8]) -> Result<Cow<'_, str>, Fault> {
    let content = content.strip_prefix(b"\xef\xbb\xbf").unwrap_or(content);
    if let Some((encoding, _)) = Encoding::for_bom(content) {
        return Ok(encoding.decode(content).0);
    }
    if let Ok(text) = std::str::from_utf8(content) {
        return Ok(Cow::Borrowed(text));
    }
    let line = String::from_utf8_lossy(&content[..content.len().min(200)]);
    let named = line.split_once("encoding=").and_then(|(_, rest)| {
        let mut letters = rest.chars();
        let mark = letters.next()?;
        letters.as_str().split(mark).next()
    });
    let encoding = named
        .and_then(|name| Encoding::for_label(name.as_bytes()))
        .ok_or(Fault::Damaged)?;
    encoding
        .decode_without_bom_handling_and_without_replacement(content)
        .ok_or(Fault::Damaged)
}

/// What a reference such as `&amp;` or `&#65;` stands for.
fn referred(reference: &BytesRef<'_>) -> Option<Cow<'static, str>> {
    if let Ok(Some(letter)) = reference.resolve_char_ref() {
        return Some(Cow::Owned(letter.to_string()));
    }
    quick_xml::escape::resolve_predefined_entity(reference).map(Cow::Borrowed)
}

impl Tag<'_> {
    /// Its name without a namespace.
    pub fn name(&self) -> &str {
        self.0.local_name().into_inner()
    }

    /// An attribute by its name; where there is none of just this name, by its name without a namespace.
    pub fn attribute(&self, wanted: &str) -> Option<String> {
        let find = |is_wanted: &dyn Fn(&Attribute<'_>) -> bool| {
            self.0
                .attributes()
                .with_checks(false)
                .flatten()
                .find(|attribute| is_wanted(attribute))
        };
        let attribute = find(&|attribute| attribute.key.as_ref() == wanted)
            .or_else(|| find(&|attribute| attribute.key.local_name().as_ref() == wanted))?;
        let value = attribute.normalized_value(XmlVersion::Implicit1_0).ok()?;
        Some(value.into_owned())
    }

    /// Passes the attributes in their order, names without a namespace. One whose value is not sound is passed over.
    pub fn attributes(&self, mut pass: impl FnMut(&str, &str)) {
        for attribute in self.0.attributes().with_checks(false).flatten() {
            if let Ok(value) = attribute.normalized_value(XmlVersion::Implicit1_0) {
                pass(attribute.key.local_name().as_ref(), &value);
            }
        }
    }

    /// Whether an attribute of this name, in any namespace, has this value.
    pub fn says(&self, name: &str, value: &str) -> bool {
        self.0
            .attributes()
            .with_checks(false)
            .flatten()
            .any(|attribute| {
                attribute.key.local_name().as_ref() == name && attribute.value == value
            })
    }

    /// An attribute that counts something.
    pub fn number<T: FromStr>(&self, wanted: &str) -> Option<T> {
        self.attribute(wanted)?.trim().parse().ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_part_that_is_cut_short_or_has_a_hole_is_damaged() {
        let passes = |text: &[u8]| walk(text, |_| Ok(()));
        assert_eq!(passes(b"<a><v>2&e;5</v></a>"), Err(Fault::Damaged));
        assert_eq!(passes(b"<a><v>2"), Err(Fault::Damaged));
        assert_eq!(passes(b"<a>\xff</a>"), Err(Fault::Damaged));
        let latin = b"<?xml version='1.0' encoding='iso-8859-1'?><a>\xb5</a>";
        assert_eq!(decoded(latin).map(|text| text.contains('\u{b5}')), Ok(true));
        let wide: Vec<u8> = "\u{feff}<a/>"
            .encode_utf16()
            .flat_map(u16::to_le_bytes)
            .collect();
        assert_eq!(passes(&wide), Ok(()));
    }

    #[test]
    fn tags_with_their_attributes_and_text() {
        let text = "<?xml version=\"1.0\"?><x:row r='5' note=\"a > b\" x:hidden=\"1\"><!-- <no/> --><v>1&lt;2</v><e/></x:row>";
        let mut told = Vec::new();
        walk(text.as_bytes(), |piece| {
            told.push(match piece {
                Piece::Open(tag) => format!(
                    "{} {:?} {:?}",
                    tag.name(),
                    tag.number::<u32>("r"),
                    tag.attribute("hidden")
                ),
                Piece::Close(name) => format!("/{name}"),
                Piece::Text(text) => text.into_owned(),
            });
            Ok(())
        })
        .expect("is sound");
        assert_eq!(
            told,
            [
                "row Some(5) Some(\"1\")",
                "v None None",
                "1",
                "<",
                "2",
                "/v",
                "e None None",
                "/e",
                "/row"
            ]
        );
    }
}
