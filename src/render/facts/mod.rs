//! What a template may see, one view a document: serialised facts, apart from the model, so that neither binds the other.

pub mod bars;
pub mod carried;
pub mod case;
pub mod check;
pub mod contact_sheet;
pub mod correction;
pub mod digest;
pub mod edition;
pub mod labels;
pub mod notice;
pub mod packages;
pub mod plan;
pub mod plate;
pub mod qr;
pub mod query;
pub mod request;
pub mod sheet;
pub mod summary;

use crate::config::{Config, Programme};
use crate::model::sheet::ProgrammeFacts;
use crate::render::words::breakable;
use crate::words::say;
use serde::Serialize;
use std::collections::BTreeMap;

/// What every document says about itself.
#[derive(Clone, Debug, Serialize)]
pub struct DocumentFacts {
    /// The PDF's title.
    pub title: String,
    /// The PDF's author: the programme.
    pub author: String,
    /// The PDF's description.
    pub description: String,
    /// Sheet number, revision and the like, for catalogues.
    pub keywords: Vec<String>,
    /// Language of the text.
    pub lang: &'static str,
    /// Its region, for the way it is spelt.
    pub region: &'static str,
    /// `a4` or `us-letter`.
    pub paper: &'static str,
    /// The number of a page, with `<page>` and `<pages>` where the figures go.
    pub page: String,
    /// Headings and whatever else a template prints as it is, by the name of the message.
    pub words: BTreeMap<&'static str, String>,
}

impl DocumentFacts {
    /// A document of this programme, whose template prints fixed messages of these groups.
    pub fn new(
        config: &Config,
        groups: &[&str],
        title: String,
        description: String,
        keywords: Vec<String>,
    ) -> DocumentFacts {
        DocumentFacts {
            title,
            author: config.programme.name.clone(),
            description,
            keywords,
            lang: config.programme.language.tag(),
            region: config.programme.language.region(),
            paper: config.programme.paper.word(),
            page: config.words.say(&say::page_of("<page>", "<pages>")),
            words: config.words.fixed(groups),
        }
    }
}

impl ProgrammeFacts {
    /// From the settings.
    pub fn new(programme: &Programme) -> ProgrammeFacts {
        ProgrammeFacts {
            name: programme.name.clone(),
            short_name: programme.short_name.clone(),
            email: programme.email.clone(),
            address: lines(programme.address.as_deref()),
            website: programme.website.clone(),
            director: programme.director.clone(),
            corrections: programme
                .corrections
                .clone()
                .or_else(|| programme.email.clone()),
            statement: programme.statement.clone(),
            retained: programme.retained.clone(),
        }
    }
}

/// An address as lines: as written, or at its commas where it is one line.
pub fn lines(address: Option<&str>) -> Vec<String> {
    let address = address.unwrap_or_default();
    let breaks = if address.contains('\n') { '\n' } else { ',' };
    let lines = address
        .split(breaks)
        .map(str::trim)
        .filter(|line| !line.is_empty());
    lines.map(|line| breakable(line, 40)).collect()
}

/// A file that the PDF carries.
#[derive(Clone, Debug, Serialize)]
pub struct Attachment {
    /// The name by which the template reads it.
    pub read: String,
    /// Its name in the PDF.
    pub name: String,
    /// What it is.
    pub mime_type: &'static str,
    /// What it is to the document: `source` or `data`.
    pub relationship: &'static str,
    /// In words.
    pub description: String,
}

/// The type of a lab file, by its name.
pub fn mime_type(name: &str) -> &'static str {
    let extension = name
        .rsplit('.')
        .next()
        .unwrap_or_default()
        .to_ascii_lowercase();
    match extension.as_str() {
        "csv" => "text/csv",
        "tsv" => "text/tab-separated-values",
        "txt" => "text/plain",
        "xlsx" => "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
        "xlsm" => "application/vnd.ms-excel.sheet.macroEnabled.12",
        "xlsb" => "application/vnd.ms-excel.sheet.binary.macroEnabled.12",
        "xls" => "application/vnd.ms-excel",
        "ods" => "application/vnd.oasis.opendocument.spreadsheet",
        _ => "application/octet-stream",
    }
}
