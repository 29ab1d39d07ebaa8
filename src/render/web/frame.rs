//! Pages from templates: what is put into them is escaped, and what no page can hold is left out of it first.

use crate::model::document::Document;
use crate::render::documents::Failure;
use crate::render::engine::Engine;
use crate::render::newsletter::{FUEL, failure, fill, value, whole_lines};
use crate::render::overrun::{ToMake, watched};
use minijinja::{AutoEscape, Environment, UndefinedBehavior};
use serde_json::{Map, Value as Json, json};

/// The templates of the pages; the first is the frame of all others.
const TEMPLATES: [&str; 7] = [
    "web-page.html",
    "web-index.html",
    "web-product.html",
    "web-withdrawn.html",
    "web-corrections.html",
    "web-how.html",
    "web-feed.xml",
];

/// Files that are put beside the pages as they are: the file of the template folder, and its name there.
const PLAIN: [(&str, &str); 3] = [
    ("web.css", "web/web.css"),
    ("web.js", "web/web.js"),
    ("web-icon.svg", "web/icon.svg"),
];

/// All templates of the pages, and what every page is given.
pub(super) struct Frame<'a> {
    environment: Environment<'a>,
    engine: &'a Engine,
    site: Map<String, Json>,
}

/// Where a page stands, and what it is called.
pub(super) struct Place<'a> {
    /// Path below the outputs folder: `web/products/FH-01--1.html`.
    pub path: String,
    /// The template.
    pub template: &'static str,
    /// Its title in the browser.
    pub title: String,
    /// Its head.
    pub head: String,
    /// What it says in a sentence, for a search engine.
    pub about: String,
    /// Which of the pages that every page leads to it is.
    pub here: &'a str,
}

impl<'a> Frame<'a> {
    /// Reads the templates.
    ///
    /// # Errors
    /// Where one of them has a mistake.
    pub(super) fn new(engine: &'a Engine, site: Json) -> Result<Frame<'a>, Failure> {
        let mut environment = Environment::new();
        environment.set_undefined_behavior(UndefinedBehavior::Strict);
        environment.set_fuel(Some(FUEL));
        environment.set_syntax(whole_lines());
        environment.set_auto_escape_callback(|_| AutoEscape::Html);
        for name in TEMPLATES {
            let template = engine.assets.get(name).map(|bytes| bytes.as_slice());
            let template = String::from_utf8_lossy(template.unwrap_or_default()).into_owned();
            environment
                .add_template_owned(name, template)
                .map_err(|error| failure(name, format!("web/{name}"), &error))?;
        }
        let Json::Object(site) = site else {
            unreachable!("what every page is given has names")
        };
        Ok(Frame {
            environment,
            engine,
            site,
        })
    }

    /// The files that are put beside the pages as they are.
    pub(super) fn plain(&self) -> Vec<Document> {
        let file = |(name, path): (&str, &str)| Document {
            path: path.to_owned(),
            bytes: self
                .engine
                .assets
                .get(name)
                .map(|bytes| bytes.to_vec())
                .unwrap_or_default(),
        };
        PLAIN.map(file).into()
    }

    /// A page with these facts.
    ///
    /// # Errors
    /// Where its template, or the frame, has a mistake.
    pub(super) fn page(&self, place: Place<'_>, facts: Json) -> Result<Document, Failure> {
        // A page is as many folders below the site's own as its path has slashes after the first.
        let depth = place.path.matches('/').count().saturating_sub(1);
        let mut site = self.site.clone();
        site.insert("root".into(), json!("../".repeat(depth)));
        let page = json!({
            "title": place.title,
            "head": place.head,
            "about": place.about,
            "here": place.here,
        });
        let context = json!({ "site": site, "page": page, "facts": facts });
        let fail = |error: &minijinja::Error| {
            // A mistake of the frame is told as one.
            let at = TEMPLATES
                .into_iter()
                .find(|name| error.name() == Some(*name));
            failure(at.unwrap_or(place.template), place.path.clone(), error)
        };
        let template = self
            .environment
            .get_template(place.template)
            .map_err(|error| fail(&error))?;
        let context = value(context, &|text| clean(&text));
        let wanted = ToMake {
            path: &place.path,
            template: place.template,
            is_long: false,
        };
        let text = watched(self.engine, wanted, || fill(&template, context))
            .map_err(|error| fail(&error))?;
        Ok(Document::text(place.path, text))
    }
}

/// A text without what HTML and XML cannot hold, and without marks that turn the direction of what follows them: from a
/// register, they could put another product's words into a row. Places to break long words serve narrow columns of paper;
/// here they would spoil searching and copying.
fn clean(text: &str) -> String {
    let is_kept = |c: &char| {
        let turns = matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
        let is_none = (u32::from(*c) & 0xfffe) == 0xfffe || matches!(c, '\u{fdd0}'..='\u{fdef}');
        !(turns || is_none || c.is_control() || *c == '\u{200b}')
    };
    text.replace(['\t', '\n', '\r'], " ")
        .chars()
        .filter(is_kept)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_no_page_can_hold_is_left_out() {
        assert_eq!(clean("a\u{0}b\u{7}c\u{fffe}\u{200b}d"), "abcd");
        assert_eq!(clean("a\nb\tc"), "a b c");
        assert_eq!(clean("\u{202e}evil\u{2066}"), "evil");
        assert_eq!(clean("Käse & <b>"), "Käse & <b>");
    }
}
