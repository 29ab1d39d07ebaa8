//! The feed, read by a parser of XML and held against what RFC 4287 asks of every feed.

use quick_xml::Reader;
use quick_xml::events::Event;
use std::collections::BTreeSet;

/// An element of the feed or of an entry: its name, its text, its attributes.
#[derive(Clone, Debug, Default)]
pub struct Part {
    /// Its name.
    pub name: String,
    /// Its text.
    pub text: String,
    /// Its attributes.
    pub attributes: Vec<(String, String)>,
}

/// A feed: what it says of itself, and its entries.
pub struct Feed {
    /// Its own elements.
    pub own: Vec<Part>,
    /// Its entries.
    pub entries: Vec<Vec<Part>>,
}

/// The text of an element, which must be there once.
pub fn text<'a>(parts: &'a [Part], name: &str) -> &'a str {
    let all: Vec<&Part> = parts.iter().filter(|part| part.name == name).collect();
    assert_eq!(all.len(), 1, "{name}: {parts:?}");
    &all[0].text
}

/// Where an entry, or the feed, leads to.
pub fn links(parts: &[Part]) -> Vec<(&str, &str)> {
    let links = parts.iter().filter(|part| part.name == "link");
    let of = |part: &'_ Part, name: &str| {
        let mut all = part.attributes.iter();
        all.position(|(is, _)| is == name)
    };
    links
        .map(|part| {
            let value = |name| of(part, name).map_or("", |at| part.attributes[at].1.as_str());
            (value("rel"), value("href"))
        })
        .collect()
}

impl Feed {
    /// Reads a feed.
    pub fn read(xml: &str) -> Feed {
        assert!(
            xml.starts_with("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n"),
            "{xml}"
        );
        let mut reader = Reader::from_str(xml);
        let (mut own, mut entries) = (Vec::new(), Vec::new());
        let mut open: Vec<String> = Vec::new();
        let mut part = Part::default();
        loop {
            match reader.read_event().expect("well-formed XML") {
                Event::Start(start) => {
                    let name = start.name().as_ref().to_string();
                    if open.is_empty() {
                        let space = start.try_get_attribute("xmlns").expect("attributes");
                        let space = space.expect("the feed has a namespace").value;
                        assert_eq!(&*space, "http://www.w3.org/2005/Atom");
                        assert_eq!(name, "feed");
                    }
                    if name == "entry" {
                        entries.push(Vec::new());
                    }
                    part = Part {
                        name: name.clone(),
                        ..Part::default()
                    };
                    open.push(name);
                }
                Event::Empty(empty) => {
                    let attributes = empty.attributes().map(|attribute| {
                        let attribute = attribute.expect("an attribute");
                        let key = attribute.key.as_ref().to_string();
                        (key, attribute.value.to_string())
                    });
                    let part = Part {
                        name: empty.name().as_ref().to_string(),
                        text: String::new(),
                        attributes: attributes.collect(),
                    };
                    match open.last().map(String::as_str) {
                        Some("entry") => entries.last_mut().expect("it is open").push(part),
                        _ => own.push(part),
                    }
                }
                Event::Text(words) => part.text.push_str(&words),
                Event::GeneralRef(name) => {
                    let name = format!("&{};", &*name);
                    part.text.push_str(&super::html::unescaped(&name));
                }
                Event::End(_) => {
                    let name = open.pop().expect("it began");
                    if part.name == name && name != "entry" {
                        let done = std::mem::take(&mut part);
                        match open.contains(&"entry".to_owned()) {
                            true => entries.last_mut().expect("it is open").push(done),
                            false => own.push(done),
                        }
                    }
                }
                Event::Eof => break,
                Event::Decl(_) => {}
                other => panic!("the feed has {other:?}"),
            }
        }
        Feed { own, entries }
    }

    /// What RFC 4287 asks for: sections 4.1.1 and 4.1.2, and that no two things have one name.
    pub fn is_whole(&self) {
        let mut ids = BTreeSet::new();
        for parts in self.entries.iter().chain([&self.own]) {
            let id = text(parts, "id");
            // RFC 4151: tag:authority,date:specific.
            let rest = id.strip_prefix("tag:").unwrap_or_else(|| panic!("{id}"));
            let (entity, specific) = rest.split_once(':').expect("a specific part");
            let (authority, date) = entity.split_once(',').expect("a date");
            let is_plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
            assert!(
                !authority.is_empty() && authority.chars().all(is_plain),
                "{id}"
            );
            let is_date =
                date.len() == 4 || chrono::NaiveDate::parse_from_str(date, "%Y-%m-%d").is_ok();
            assert!(is_date && !specific.is_empty() && !id.contains(' '), "{id}");
            assert!(ids.insert(id.to_owned()), "{id} twice");
            assert!(!text(parts, "title").is_empty());
            let updated = text(parts, "updated");
            chrono::DateTime::parse_from_rfc3339(updated)
                .unwrap_or_else(|error| panic!("{updated}: {error}"));
        }
        // An author of the feed is that of every entry that has none.
        assert!(!text(&self.own, "name").is_empty());
        let own = links(&self.own);
        assert!(own.contains(&("self", "feed.xml")) && own.contains(&("alternate", "index.html")));
        for entry in &self.entries {
            let alternates = links(entry)
                .iter()
                .filter(|(rel, _)| *rel == "alternate")
                .count();
            assert_eq!(alternates, 1, "{entry:?}");
            assert!(!text(entry, "summary").is_empty());
        }
        let mut days: Vec<&str> = self
            .entries
            .iter()
            .map(|entry| text(entry, "updated"))
            .collect();
        assert_eq!(days.first().copied(), Some(text(&self.own, "updated")));
        days.dedup();
        assert!(days.is_sorted_by(|a, b| a > b), "{days:?}");
    }
}
