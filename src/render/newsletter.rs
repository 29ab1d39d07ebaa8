//! The newsletter beside its PDF: a page for mail programs, plain text, and the charts as files of their own.
//!
//! The page is one file without pictures, as mail programs show it: figures and bars stand in its cells. Its templates are
//! `digest.html` and `digest.txt`; both go into the mail that `save` puts together.

use crate::model::document::{Document, Filled};
use crate::render::charts::Chart;
use crate::render::documents::{self, Failure, Fault, LineColumn};
use crate::render::engine::{Engine, TEMPLATE_FOLDER};
use crate::render::facts::digest::DigestFacts;
use crate::render::overrun::{ToMake, watched};
use crate::render::{Job, JobFile};
use minijinja::syntax::SyntaxConfig;
use minijinja::{AutoEscape, Environment, Error, ErrorKind, Template, UndefinedBehavior, Value};
use std::collections::BTreeMap;
use std::error::Error as _;

/// Pixels of a picture in a point of the page: 1,233 across, sharp on any screen.
const PIXELS_A_POINT: f64 = 2.5;

/// Letters in a line of plain text: what every mail program shows without breaking it anew.
const COLUMNS: usize = 72;

/// The paths of all files of the newsletter apart from its PDF, with that of the mail.
pub fn paths(facts: &DigestFacts) -> Vec<String> {
    let charts = facts
        .charts
        .iter()
        .flat_map(|chart| ["png", "svg"].map(|ending| format!("{}.{ending}", chart.name)));
    let texts = ["digest.html", "digest.txt", "digest.eml"].map(str::to_owned);
    charts.chain(texts).map(|name| path(&name)).collect()
}

/// All files of the newsletter apart from its PDF and the mail.
///
/// # Errors
/// Where a template has a mistake: the file that is missing and what is wrong.
pub fn files(facts: &DigestFacts, engine: &Engine) -> Result<Vec<Document>, Failure> {
    let mut files = vec![text(facts, engine)?, html(facts, engine)?];
    for chart in &facts.charts {
        let png = picture(chart, facts, engine)?;
        files.push(Document {
            path: path(&format!("{}.png", chart.name)),
            bytes: png,
        });
        files.push(Document::text(
            path(&format!("{}.svg", chart.name)),
            chart.svg.clone(),
        ));
    }
    files.sort_by(|a, b| a.path.cmp(&b.path));
    Ok(files)
}

/// The newsletter as plain text, in lines of at most [`COLUMNS`] letters.
///
/// # Errors
/// Where the template has a mistake.
pub fn text(facts: &DigestFacts, engine: &Engine) -> Result<Document, Failure> {
    let name = "digest.txt";
    let text = render(name, facts, engine)?;
    Ok(Document::text(path(name), wrapped(&text, COLUMNS)))
}

/// The newsletter as one page for mail programs.
///
/// # Errors
/// Where the template has a mistake.
pub fn html(facts: &DigestFacts, engine: &Engine) -> Result<Document, Failure> {
    let name = "digest.html";
    Ok(Document::text(path(name), render(name, facts, engine)?))
}

/// Lines broken at spaces, so that none is longer than `columns` letters, but for a word that is. What belongs to a line
/// keeps its indent.
fn wrapped(text: &str, columns: usize) -> String {
    let mut out = String::with_capacity(text.len() + text.len() / 40);
    for line in text.lines() {
        let rest = line.trim_start_matches(' ');
        let indent = &line[..line.len() - rest.len()];
        let mut used = 0;
        for word in rest.split(' ').filter(|word| !word.is_empty()) {
            let letters = word.chars().count();
            if used > 0 && used + 1 + letters > columns {
                out.push('\n');
                used = 0;
            }
            out.push_str(if used == 0 { indent } else { " " });
            used += letters + if used == 0 { indent.len() } else { 1 };
            out.push_str(word);
        }
        out.push('\n');
    }
    out
}

/// The facts as a template sees them: the same JSON that the PDF's template gets.
fn facts_of(facts: &DigestFacts) -> Value {
    let facts = serde_json::to_value(facts).expect("facts are text, numbers and lists");
    value(facts, &|text| text)
}

/// JSON as a template takes it, each of its texts as `text` leaves it.
pub(super) fn value(json: serde_json::Value, text: &dyn Fn(String) -> String) -> Value {
    use serde_json::Value as Json;
    match json {
        Json::Null => Value::from(()),
        Json::Bool(yes) => Value::from(yes),
        Json::Number(number) => match number.as_i64() {
            Some(whole) => Value::from(whole),
            None => Value::from(number.as_f64()),
        },
        Json::String(said) => Value::from(text(said)),
        Json::Array(items) => items.into_iter().map(|item| value(item, text)).collect(),
        Json::Object(fields) => {
            let fields = fields
                .into_iter()
                .map(|(name, field)| (name, value(field, text)));
            Value::from(fields.collect::<BTreeMap<String, Value>>())
        }
    }
}

/// Steps that a template of the newsletter or of a page may take: ours takes some hundred a product.
pub(super) const FUEL: u64 = 50_000_000;

fn path(name: &str) -> String {
    format!("newsletter/{name}")
}

fn render(name: &'static str, facts: &DigestFacts, engine: &Engine) -> Result<String, Failure> {
    let fail = |error: &Error| failure(name, path(name), error);
    let template = engine
        .assets
        .get(name)
        .map(|bytes| bytes.as_slice())
        .unwrap_or_default();
    let template = String::from_utf8_lossy(template);
    let mut environment = Environment::new();
    environment.set_undefined_behavior(UndefinedBehavior::Strict);
    environment.set_fuel(Some(FUEL));
    environment.set_syntax(whole_lines());
    environment.set_auto_escape_callback(|name| {
        if name.ends_with(".html") {
            AutoEscape::Html
        } else {
            AutoEscape::None
        }
    });
    environment
        .add_template(name, &template)
        .map_err(|error| fail(&error))?;
    let template = environment
        .get_template(name)
        .map_err(|error| fail(&error))?;
    let context = minijinja::context! { facts => facts_of(facts) };
    let wanted = ToMake {
        path: &path(name),
        template: name,
        is_long: false,
    };
    let text =
        watched(engine, wanted, || fill(&template, context)).map_err(|error| fail(&error))?;
    // Places to break long words serve narrow columns of paper; here they would spoil searching and copying.
    Ok(text.replace('\u{200b}', ""))
}

/// A template with these facts, no longer than a page may be.
pub(super) fn fill(template: &Template<'_, '_>, facts: Value) -> Result<String, Error> {
    let mut filled = Filled::default();
    template.render_captured_to(facts, &mut filled)?;
    Ok(filled.text())
}

/// A line that holds a statement alone leaves nothing behind, so that templates can be indented as code is.
pub(super) fn whole_lines() -> SyntaxConfig {
    SyntaxConfig::builder()
        .trim_blocks(true)
        .lstrip_blocks(true)
        .keep_trailing_newline(true)
        .build()
        .expect("the delimiters are the usual ones")
}

/// A mistake of a template, which keeps a file from being made.
pub(super) fn failure(name: &str, path: String, error: &Error) -> Failure {
    let detail = match (error.kind(), error.source(), error.detail()) {
        (ErrorKind::WriteFailure, Some(why), _) => why.to_string(),
        (_, _, Some(detail)) => detail.to_owned(),
        (kind, _, None) => kind.to_string(),
    };
    Failure {
        path,
        faults: vec![Fault {
            file: Some(format!("{TEMPLATE_FOLDER}/{name}")),
            at: error.line().map(|line| LineColumn { line, column: 1 }),
            message: detail,
            hints: Vec::new(),
        }],
    }
}

/// A chart as pixels, on paper white.
fn picture(chart: &Chart, facts: &DigestFacts, engine: &Engine) -> Result<Vec<u8>, Failure> {
    let job = Job {
        path: path(&format!("{}.png", chart.name)),
        template: "picture.typ",
        one_page: false,
        ident: chart.name.clone(),
        date: facts.date,
        facts: b"{}".to_vec(),
        files: JobFile::charts([chart.svg.as_str()]),
    };
    documents::png(engine, &job, PIXELS_A_POINT).map_err(|faults| Failure {
        path: job.path.clone(),
        faults,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_broken_at_spaces_and_keep_their_indent() {
        assert_eq!(wrapped("a bb ccc dddd\n", 8), "a bb ccc\ndddd\n");
        assert_eq!(
            wrapped("  a bb ccc dddd\n\nx\n", 8),
            "  a bb\n  ccc\n  dddd\n\nx\n"
        );
        assert_eq!(wrapped("a 12\u{a0}ppm äöü\n", 8), "a 12\u{a0}ppm\näöü\n");
        assert_eq!(
            wrapped("to https://a.example/long here\n", 8),
            "to\nhttps://a.example/long\nhere\n"
        );
    }
}
