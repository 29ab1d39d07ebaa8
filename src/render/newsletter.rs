//! The newsletter beside its PDF: a page for mail programs, plain text, and the charts as files of their own.
//!
//! The page is one file: its pictures are inside it. Its templates are `digest.html` and `digest.txt`.

use crate::model::document::Document;
use crate::render::charts::Chart;
use crate::render::documents::{self, Failure, Fault, LineColumn};
use crate::render::engine::{Engine, TEMPLATE_FOLDER};
use crate::render::facts::digest::DigestFacts;
use crate::render::{Job, JobFile};
use minijinja::syntax::SyntaxConfig;
use minijinja::{AutoEscape, Environment, Error, UndefinedBehavior, Value};
use std::collections::BTreeMap;

/// Pixels of a picture in a point of the page: 1,233 across, sharp on any screen.
const PIXELS_A_POINT: f64 = 2.5;

/// The paths of all files of the newsletter apart from its PDF.
pub fn paths(facts: &DigestFacts) -> Vec<String> {
    let charts = facts
        .charts
        .iter()
        .flat_map(|chart| ["png", "svg"].map(|ending| format!("{}.{ending}", chart.name)));
    let names = charts.chain(["digest.html".to_owned(), "digest.txt".to_owned()]);
    names.map(|name| path(&name)).collect()
}

/// All files of the newsletter apart from its PDF.
///
/// # Errors
/// Where a template has a mistake: the file that is missing and what is wrong.
pub fn files(facts: &DigestFacts, engine: &Engine) -> Result<Vec<Document>, Failure> {
    let mut files = vec![text(facts, engine)?];
    let mut pictures = BTreeMap::new();
    for chart in &facts.charts {
        let png = picture(chart, facts, engine)?;
        pictures.insert(chart.name.clone(), Value::from_safe_string(data_uri(&png)));
        files.push(Document {
            path: path(&format!("{}.png", chart.name)),
            bytes: png,
        });
        files.push(Document::text(
            path(&format!("{}.svg", chart.name)),
            chart.svg.clone(),
        ));
    }
    files.push(html(facts, pictures, engine)?);
    files.sort_by(|a, b| a.path.cmp(&b.path));
    Ok(files)
}

/// The newsletter as plain text.
///
/// # Errors
/// Where the template has a mistake.
pub fn text(facts: &DigestFacts, engine: &Engine) -> Result<Document, Failure> {
    render(
        "digest.txt",
        minijinja::context! { facts => facts_of(facts) },
        engine,
    )
}

/// The newsletter as one page for mail programs; `pictures` has a data URI by a chart's name.
///
/// # Errors
/// Where the template has a mistake.
pub fn html(
    facts: &DigestFacts,
    pictures: BTreeMap<String, Value>,
    engine: &Engine,
) -> Result<Document, Failure> {
    render(
        "digest.html",
        minijinja::context! { facts => facts_of(facts), images => pictures },
        engine,
    )
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

fn render(name: &'static str, context: Value, engine: &Engine) -> Result<Document, Failure> {
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
    let text = template.render(context).map_err(|error| fail(&error))?;
    // Places to break long words serve narrow columns of paper; here they would spoil searching and copying.
    Ok(Document::text(path(name), text.replace('\u{200b}', "")))
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
    let detail = error
        .detail()
        .map_or_else(|| error.kind().to_string(), str::to_owned);
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

fn data_uri(png: &[u8]) -> String {
    format!("data:image/png;base64,{}", base64(png))
}

/// Base 64 with padding (RFC 4648, section 4).
fn base64(bytes: &[u8]) -> String {
    const ALPHABET: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut text = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for group in bytes.chunks(3) {
        let bits = group
            .iter()
            .fold(0u32, |bits, byte| bits << 8 | u32::from(*byte))
            << (8 * (3 - group.len()));
        for place in 0..4 {
            let letter = ALPHABET[(bits >> (18 - 6 * place) & 63) as usize];
            text.push(if place <= group.len() {
                char::from(letter)
            } else {
                '='
            });
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn base_64_is_that_of_the_standard() {
        // The test vectors of RFC 4648, section 10.
        let coded =
            ["", "f", "fo", "foo", "foob", "fooba", "foobar"].map(|plain| base64(plain.as_bytes()));
        assert_eq!(
            coded,
            [
                "", "Zg==", "Zm8=", "Zm9v", "Zm9vYg==", "Zm9vYmE=", "Zm9vYmFy"
            ]
        );
    }
}
