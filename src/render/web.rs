//! The pages for a web site: an index of what is published, and its corrections. Plain pages without scripts, that can be
//! put on a server as they are.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::document::Document;
use crate::render::facts::sheet::sheet_number;
use crate::render::numbers;
use crate::render::words::{self, method};
use std::fmt::Write;

/// The pages; `view` holds published products alone.
pub fn pages(view: &Decided, config: &Config) -> Vec<Document> {
    vec![
        Document::text("web/index.html", index(view, config)),
        Document::text("web/corrections.html", corrections(view, config)),
    ]
}

fn index(view: &Decided, config: &Config) -> String {
    let mut body = String::new();
    if view.products.is_empty() {
        body.push_str("<p>No results sheet is published at present.</p>\n");
    } else {
        body.push_str(
            "<table>\n<caption>Published results sheets</caption>\n<thead><tr><th scope=\"col\">Product</th>\
             <th scope=\"col\">Verdict</th><th scope=\"col\">Sheet</th><th scope=\"col\">Issued</th></tr></thead>\n<tbody>\n",
        );
        for judged in &view.products {
            body.push_str(&row(judged, config));
        }
        body.push_str("</tbody>\n</table>\n");
    }
    body.push_str(&under_revision(view));
    body.push_str("<p><a href=\"corrections.html\">Corrections</a></p>\n");
    page("Results sheets", &body, config)
}

fn row(judged: &JudgedProduct, config: &Config) -> String {
    let verdict = &judged.verdict;
    let product = &verdict.product;
    let brand = product.brand.as_deref();
    let brand = brand.map_or(String::new(), |brand| format!("{}: ", escaped(brand)));
    let round = match verdict.round.as_str() {
        "1" => String::new(),
        round => format!(", round {}", escaped(round)),
    };
    let (revision, day) = verdict.issued.last().map_or((1, String::new()), |last| {
        (last.revision, last.issued_on.to_string())
    });
    format!(
        "<tr><th scope=\"row\">{brand}{}{round}</th><td>{}</td><td><a href=\"sheets/{}.pdf\">{}</a>, revision {revision}</td><td>{day}</td></tr>\n",
        escaped(&product.name),
        escaped(&words::verdict::words(verdict.verdict, verdict.rule)),
        escaped(&verdict.stem()),
        escaped(&sheet_number(verdict, config)),
    )
}

fn under_revision(view: &Decided) -> String {
    if view.under_revision.is_empty() {
        return String::new();
    }
    let mut text = "<h2>Under revision</h2>\n<ul>\n".to_owned();
    for one in &view.under_revision {
        writeln!(text, "<li>{}</li>", escaped(&one.said)).expect("a string takes any text");
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
        body.push_str("<p>No published sheet has been corrected.</p>\n");
    }
    for judged in amended {
        let number = sheet_number(&judged.verdict, config);
        writeln!(
            body,
            "<h2>{}, sheet {}</h2>",
            escaped(&judged.verdict.product.name),
            escaped(&number)
        )
        .expect("a string takes any text");
        if let Some(said) = words::publication::corrected(judged, &number) {
            writeln!(body, "<p>{}</p>", escaped(&said)).expect("a string takes any text");
        }
        body.push_str("<ul>\n");
        let issued = &judged.verdict.issued;
        for (before, row) in issued.iter().zip(issued.iter().skip(1)).rev() {
            let said = [row.reason.as_deref(), row.changed.as_deref()]
                .into_iter()
                .flatten()
                .map(|said| format!(" {}.", said.trim().trim_end_matches('.')))
                .collect::<String>();
            writeln!(
                body,
                "<li>Revision {} of {} replaces revision {} of {}.{}</li>",
                row.revision,
                numbers::date(row.issued_on),
                before.revision,
                numbers::date(before.issued_on),
                escaped(&said)
            )
            .expect("a string takes any text");
        }
        body.push_str("</ul>\n");
    }
    body.push_str(&under_revision(view));
    body.push_str("<p><a href=\"index.html\">Results sheets</a></p>\n");
    page("Corrections", &body, config)
}

fn page(title: &str, body: &str, config: &Config) -> String {
    let name = escaped(&config.programme.name);
    let mistakes = config
        .programme
        .corrections
        .as_ref()
        .or(config.programme.email.as_ref())
        .map(|address| format!("<p>Found a mistake? {}</p>\n", escaped(address)))
        .unwrap_or_default();
    format!(
        "<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>{title}: {name}</title>\n</head>\n<body>\n\
         <h1>{name}: {}</h1>\n{body}<p>{}</p>\n{mistakes}</body>\n</html>\n",
        title.to_lowercase(),
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
