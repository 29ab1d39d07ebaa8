//! The pages for a web site: an index of what is published, and its corrections. Plain pages without scripts, that can be
//! put on a server as they are.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::document::Document;
use crate::render::facts::sheet::sheet_number;
use crate::render::listing;
use crate::render::words::{self, digest::why_revised, method};
use crate::words::{Said, say};
use std::fmt::Write;

/// The pages; `view` holds published products alone.
pub fn pages(view: &Decided, config: &Config) -> Vec<Document> {
    vec![
        Document::text("web/index.html", index(view, config)),
        Document::text("web/corrections.html", corrections(view, config)),
    ]
}

/// A message as HTML has it.
fn said(said: &Said, config: &Config) -> String {
    escaped(&config.words.say(said))
}

fn index(view: &Decided, config: &Config) -> String {
    let mut body = String::new();
    if view.products.is_empty() {
        add(&mut body, "p", &said(&say::web_none(), config));
    } else {
        let heads = [
            say::web_product(),
            say::web_verdict(),
            say::web_sheet(),
            say::web_issued(),
        ];
        let heads = heads.map(|head| format!("<th scope=\"col\">{}</th>", said(&head, config)));
        write!(
            body,
            "<table>\n<caption>{}</caption>\n<thead><tr>{}</tr></thead>\n<tbody>\n",
            said(&say::web_published(), config),
            heads.concat()
        )
        .expect("a string takes any text");
        for judged in &view.products {
            body.push_str(&row(judged, config));
        }
        body.push_str("</tbody>\n</table>\n");
    }
    body.push_str(&under_revision(view, config));
    add(
        &mut body,
        "p",
        &link("corrections.html", &say::web_corrections(), config),
    );
    let head = say::web_sheets_of(&config.programme.name);
    page(&say::web_sheets(), &head, &body, config)
}

/// A paragraph or a heading of its own.
fn add(body: &mut String, element: &str, html: &str) {
    writeln!(body, "<{element}>{html}</{element}>").expect("a string takes any text");
}

fn link(to: &str, words: &Said, config: &Config) -> String {
    format!("<a href=\"{to}\">{}</a>", said(words, config))
}

fn row(judged: &JudgedProduct, config: &Config) -> String {
    let verdict = &judged.verdict;
    let brand = verdict.product.brand.as_deref();
    let brand = brand.map_or(String::new(), |brand| format!("{}: ", escaped(brand)));
    let (revision, day) = verdict.issued.last().map_or((1, String::new()), |last| {
        (last.revision, last.issued_on.to_string())
    });
    format!(
        "<tr><th scope=\"row\">{brand}{}</th><td>{}</td><td><a href=\"sheets/{}.pdf\">{}</a>, {}</td><td>{day}</td></tr>\n",
        escaped(&listing::name(judged, &config.words)),
        escaped(&listing::of_its_limit(
            verdict.verdict,
            &verdict.rule,
            &config.words
        )),
        escaped(&verdict.stem()),
        escaped(&sheet_number(verdict, config)),
        said(&say::web_revision(revision.to_string()), config),
    )
}

fn under_revision(view: &Decided, config: &Config) -> String {
    if view.under_revision.is_empty() {
        return String::new();
    }
    let mut text = String::new();
    add(&mut text, "h2", &said(&say::web_under_revision(), config));
    text.push_str("<ul>\n");
    for one in &view.under_revision {
        add(&mut text, "li", &escaped(&one.said));
    }
    text.push_str("</ul>\n");
    text
}

/// Every published sheet that replaces another one, those that took back or made an accusation first.
fn corrections(view: &Decided, config: &Config) -> String {
    let amended = view
        .products
        .iter()
        .filter(|judged| judged.verdict.issued.len() > 1);
    let mut amended: Vec<&JudgedProduct> = amended.collect();
    amended.sort_by_key(|judged| judged.publication.correction.is_none());
    let mut body = String::new();
    if amended.is_empty() && view.under_revision.is_empty() {
        add(&mut body, "p", &said(&say::web_no_corrections(), config));
    }
    for judged in amended {
        let number = sheet_number(&judged.verdict, config);
        let name = judged.verdict.product.name.as_str();
        let head = say::web_correction_of(name, number.as_str());
        add(&mut body, "h2", &said(&head, config));
        if let Some(corrected) = words::publication::corrected(judged, &number) {
            add(&mut body, "p", &escaped(&corrected));
        }
        body.push_str(&revisions(judged, config));
    }
    body.push_str(&under_revision(view, config));
    add(
        &mut body,
        "p",
        &link("index.html", &say::web_sheets(), config),
    );
    let head = say::web_corrections_of(&config.programme.name);
    page(&say::web_corrections(), &head, &body, config)
}

/// The revisions of a sheet, the last one first, each with what it replaces, what was changed and why.
fn revisions(judged: &JudgedProduct, config: &Config) -> String {
    let mut list = "<ul>\n".to_owned();
    let issued = &judged.verdict.issued;
    for (before, row) in issued.iter().zip(issued.iter().skip(1)).rev() {
        let replaces = config.words.say(&say::web_replaces(
            row.revision.to_string(),
            config.words.day(row.issued_on),
            before.revision.to_string(),
            config.words.day(before.issued_on),
        ));
        let text = format!("{replaces}{}", why_revised(row));
        add(&mut list, "li", &escaped(&text));
    }
    list.push_str("</ul>\n");
    list
}

fn page(title: &Said, head: &Said, body: &str, config: &Config) -> String {
    let programme = &config.programme;
    let title = say::web_title(config.words.say(title), programme.name.as_str());
    let address = programme.corrections.as_ref().or(programme.email.as_ref());
    let mistakes = address
        .map(|address| said(&say::web_mistake(address), config))
        .map(|mistake| format!("<p>{mistake}</p>\n"))
        .unwrap_or_default();
    format!(
        "<!DOCTYPE html>\n<html lang=\"{}-{}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>{}</title>\n</head>\n<body>\n\
         <h1>{}</h1>\n{body}<p>{}</p>\n{mistakes}</body>\n</html>\n",
        programme.language.tag(),
        programme.language.region(),
        said(&title, config),
        said(head, config),
        escaped(&method::caution(config)),
    )
    .replace('\u{200b}', "")
}

/// A text as HTML has it.
fn escaped(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => escaped.push_str("&amp;"),
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '"' => escaped.push_str("&quot;"),
            c => escaped.push(c),
        }
    }
    escaped
}
