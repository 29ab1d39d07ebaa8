//! Reads a page as a browser does, far enough to hold what must be true of each.

use quick_xml::Reader;
use quick_xml::events::{BytesStart, Event};
use std::collections::BTreeSet;

/// Elements that have no end.
const VOID: [&str; 5] = ["meta", "link", "input", "img", "br"];

/// One element as it begins.
#[derive(Clone, Debug)]
pub struct Element {
    /// Its name.
    pub name: String,
    /// Its attributes, with what they hold, unescaped.
    pub attributes: Vec<(String, String)>,
}

impl Element {
    /// What an attribute holds.
    pub fn attribute(&self, name: &str) -> Option<&str> {
        let mut all = self.attributes.iter();
        all.find(|(is, _)| is == name)
            .map(|(_, value)| value.as_str())
    }
}

/// A page: its elements in order, and its text.
pub struct Page {
    /// Every element.
    pub elements: Vec<Element>,
    /// What is read, tags apart, unescaped.
    pub text: String,
}

impl Page {
    /// Reads a page, and holds that every element that begins ends in its place.
    pub fn read(path: &str, html: &str) -> Page {
        assert!(html.starts_with("<!DOCTYPE html>\n<html lang=\""), "{path}");
        let mut reader = Reader::from_str(html);
        reader.config_mut().check_end_names = false;
        let mut open: Vec<String> = Vec::new();
        let (mut elements, mut text) = (Vec::new(), String::new());
        loop {
            let event = reader
                .read_event()
                .unwrap_or_else(|error| panic!("{path}: {error}"));
            match event {
                Event::Start(start) => {
                    let element = element(&start);
                    if !VOID.contains(&element.name.as_str()) {
                        open.push(element.name.clone());
                    }
                    elements.push(element);
                }
                Event::End(end) => {
                    let name = end.name().as_ref().to_string();
                    assert_eq!(open.pop().as_deref(), Some(name.as_str()), "{path}");
                    text.push(' ');
                }
                Event::Text(words) => text.push_str(&words),
                Event::GeneralRef(name) => {
                    let name = name.to_string();
                    text.push_str(&unescaped(&format!("&{name};")));
                }
                Event::Eof => break,
                Event::DocType(_) => {}
                other => panic!("{path} has {other:?}"),
            }
        }
        assert!(open.is_empty(), "{path} leaves open {open:?}");
        let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
        Page { elements, text }
    }

    /// The elements of a name.
    pub fn named<'a>(&'a self, name: &'a str) -> impl Iterator<Item = &'a Element> {
        self.elements
            .iter()
            .filter(move |element| element.name == name)
    }

    /// Everything that the page leads to or loads.
    pub fn links(&self) -> Vec<&str> {
        let of =
            |element: &'_ Element| ["href", "src"].map(|name| element.attribute(name).is_some());
        let linked = self.elements.iter().filter(|one| of(one).contains(&true));
        linked
            .filter_map(|one| one.attribute("href").or_else(|| one.attribute("src")))
            .collect()
    }

    /// Holds what a reader who sees nothing, and a browser that runs nothing, need of every page.
    pub fn is_whole(&self, path: &str) {
        let count = |name| self.named(name).count();
        for once in ["title", "h1", "main", "header", "nav", "footer"] {
            assert_eq!(count(once), 1, "{path}: {once}");
        }
        let policy = self.named("meta").find_map(|meta| {
            (meta.attribute("http-equiv") == Some("Content-Security-Policy"))
                .then(|| meta.attribute("content"))
        });
        let strict = "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'";
        assert_eq!(policy.flatten(), Some(strict), "{path}");
        let mut ids = BTreeSet::new();
        for element in &self.elements {
            for (name, value) in &element.attributes {
                let runs = name.starts_with("on") || name == "style";
                assert!(!runs, "{path}: {element:?} holds code");
                if name == "id" {
                    assert!(ids.insert(value.clone()), "{path}: {value} twice");
                }
            }
        }
        for element in &self.elements {
            let has = |name| {
                element
                    .attribute(name)
                    .is_some_and(|value| !value.is_empty())
            };
            let is_sound = match element.name.as_str() {
                "th" => has("scope"),
                "img" => has("alt") && has("width") && has("height"),
                "script" => has("src"),
                "label" => element.attribute("for").is_some_and(|id| ids.contains(id)),
                "nav" => has("aria-label"),
                _ => true,
            };
            assert!(is_sound, "{path}: {element:?}");
            for named in ["aria-labelledby", "for"] {
                let id = element.attribute(named);
                assert!(id.is_none_or(|id| ids.contains(id)), "{path}: {element:?}");
            }
        }
        let first = self.named("a").next().expect("it has a link");
        assert_eq!(first.attribute("href"), Some("#content"), "{path}");
        let labels: Vec<_> = self
            .named("label")
            .map(|one| one.attribute("for"))
            .collect();
        for field in self
            .elements
            .iter()
            .filter(|one| ["input", "select"].contains(&one.name.as_str()))
        {
            assert!(labels.contains(&field.attribute("id")), "{path}: {field:?}");
        }
    }
}

fn element(start: &BytesStart<'_>) -> Element {
    let attributes = start.html_attributes().map(|attribute| {
        let attribute = attribute.expect("an attribute");
        (
            attribute.key.as_ref().to_string(),
            unescaped(&attribute.value),
        )
    });
    Element {
        name: start.name().as_ref().to_string(),
        attributes: attributes.collect(),
    }
}

/// A text as it was before it was escaped.
pub fn unescaped(text: &str) -> String {
    let mut text = text.to_owned();
    for (mark, letter) in [
        ("&lt;", "<"),
        ("&gt;", ">"),
        ("&quot;", "\""),
        ("&#x27;", "'"),
        ("&#x2f;", "/"),
        ("&amp;", "&"),
    ] {
        text = text.replace(mark, letter);
    }
    text
}
