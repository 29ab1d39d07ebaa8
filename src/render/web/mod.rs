//! The pages for a web site: an index of what is published, a page a product, the corrections, how is tested, and a feed.
//!
//! All of it can be put on a server as it is: every link is relative, nothing is loaded from elsewhere, and what works by
//! a script works without it as well. The templates are `web-*.html`, `web-feed.xml`, `web.css` and `web.js`.

mod corrections;
mod feed;
mod frame;
mod index;
mod picture;
mod product;

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::document::Document;
use crate::model::sheet::ProgrammeFacts;
use crate::render::addresses::page;
use crate::render::documents::Failure;
use crate::render::engine::Engine;
use crate::render::terms::terms;
use crate::render::web::frame::{Frame, Place};
use crate::render::words::{method, practice};
use crate::words::{Said, say};
use anyhow::Result;
use rayon::prelude::*;
use serde_json::{Value, json};

/// What was made of the site.
pub struct Site {
    /// Its files, the sheets apart.
    pub documents: Vec<Document>,
    /// The pages that could not be made, since a template has a mistake: the first of each template.
    pub failures: Vec<Failure>,
}

/// A page, or the mistake of a template.
type Page = Result<Document, Failure>;

/// Where the sheet of a product and round lies, below the outputs folder.
pub fn sheet_of(stem: &str) -> String {
    format!("web/{}", sheet(stem))
}

fn sheet(stem: &str) -> String {
    format!("sheets/{stem}.pdf")
}

/// Where its page lies, likewise.
fn page_of(stem: &str) -> String {
    format!("web/{}", page(stem))
}

/// The site; `view` holds published products alone, and `has_sheet` says whether the PDF of a stem is there.
///
/// # Errors
/// Where a ruler cannot be drawn.
pub fn pages(
    view: &Decided,
    config: &Config,
    engine: &Engine,
    has_sheet: &(dyn Fn(&str) -> bool + Sync),
) -> Result<Site> {
    let frame = match Frame::new(engine, site(view, config)) {
        Ok(frame) => frame,
        Err(failure) => {
            return Ok(Site {
                documents: Vec::new(),
                failures: vec![failure],
            });
        }
    };
    let mut site = Site {
        documents: frame.plain(),
        failures: Vec::new(),
    };
    let mut made = vec![
        frame.page(
            place(
                "web/index.html",
                "web-index.html",
                (
                    &say::web_sheets(),
                    &say::web_sheets_of(&config.programme.name),
                ),
                config,
            ),
            index::facts(view, config, has_sheet),
        ),
        frame.page(
            place(
                "web/corrections.html",
                "web-corrections.html",
                (
                    &say::web_corrections(),
                    &say::web_corrections_of(&config.programme.name),
                ),
                config,
            ),
            corrections::facts(view, config),
        ),
        frame.page(
            place(
                "web/how-we-test.html",
                "web-how.html",
                (&say::web_how(), &say::web_how_of(&config.programme.name)),
                config,
            ),
            how(view, config),
        ),
    ];
    if feed::is_any(view) {
        let what = (
            &say::web_sheets(),
            &say::web_sheets_of(&config.programme.name),
        );
        let place = place("web/feed.xml", "web-feed.xml", what, config);
        made.push(frame.page(place, feed::facts(view, config, has_sheet)));
    }
    let of_products: Vec<(Page, Vec<Document>)> = view
        .products
        .par_iter()
        .map(|judged| product::page(judged, view, config, &frame, has_sheet))
        .collect::<Result<_>>()?;
    for (page, rulers) in of_products {
        made.push(page);
        site.documents.extend(rulers);
    }
    let withdrawn = view.under_revision.iter();
    made.extend(withdrawn.filter_map(|one| product::withdrawn(one, config, &frame)));
    for page in made {
        match page {
            Ok(page) => site.documents.push(page),
            Err(failure)
                if site
                    .failures
                    .iter()
                    .all(|told| told.faults != failure.faults) =>
            {
                site.failures.push(failure);
            }
            Err(_) => {}
        }
    }
    Ok(site)
}

/// A page at the top of the site: `what` is its title and its head.
fn place<'a>(
    path: &'a str,
    template: &'static str,
    what: (&Said, &Said),
    config: &Config,
) -> Place<'a> {
    let programme = config.programme.name.as_str();
    let (title, head) = what;
    Place {
        path: path.to_owned(),
        template,
        title: config
            .words
            .say(&say::web_title(config.words.say(title), programme)),
        head: config.words.say(head),
        about: config.words.say(&say::web_about(programme)),
        here: path.rsplit('/').next().unwrap_or(path),
    }
}

/// What every page is given.
fn site(view: &Decided, config: &Config) -> Value {
    let programme = &config.programme;
    let address = programme.corrections.as_ref().or(programme.email.as_ref());
    let mistake = address.map(|address| config.words.say(&say::web_mistake(address)));
    json!({
        "lang": format!("{}-{}", programme.language.tag(), programme.language.region()),
        "programme": ProgrammeFacts::new(programme),
        "words": config.words.fixed(&["web"]),
        "about": config.words.say(&say::web_about(&programme.name)),
        "caution": method::caution(config),
        "mistake": mistake,
        "feed": feed::is_any(view),
    })
}

/// How the programme tests and decides: the same that the summary says.
fn how(view: &Decided, config: &Config) -> Value {
    let terms = terms(&view.products, config);
    json!({ "passages": practice::passages(view, config, &terms) })
}

/// Sheets that do not stand any more, in words.
fn under_revision(view: &Decided) -> Vec<&str> {
    let all = view.under_revision.iter();
    all.map(|one| one.said.as_str()).collect()
}

/// The day of a sheet's last revision, and its number.
fn last_issued(judged: &JudgedProduct) -> (String, u32) {
    let last = judged.verdict.issued.last();
    last.map_or((String::new(), 1), |last| {
        (last.issued_on.to_string(), last.revision)
    })
}
