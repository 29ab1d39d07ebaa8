//! The page of a product and round: what its sheet says, for a screen of any width.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::document::Document;
use crate::model::publication::UnderRevision;
use crate::render::addresses::link;
use crate::render::charts::ruler::Ruler;
use crate::render::facts::sheet::{self, SheetFacts, sheet_number};
use crate::render::listing;
use crate::render::web::frame::{Frame, Place};
use crate::render::web::picture::stacked;
use crate::render::web::{Page, page as page_below, page_of, sheet as sheet_below};
use crate::render::words;
use crate::words::{Catalogue, say};
use anyhow::Result;
use serde_json::{Value, json};

/// The page and the pictures of its ruler.
///
/// # Errors
/// Where the ruler cannot be drawn.
pub(super) fn page(
    judged: &JudgedProduct,
    view: &Decided,
    config: &Config,
    frame: &Frame<'_>,
    has_sheet: &dyn Fn(&str) -> bool,
) -> Result<(Page, Vec<Document>)> {
    let stem = judged.verdict.stem();
    let words = &config.words;
    let facts = sheet::facts(judged, config, None);
    let rulers = rulers(judged, &stem, words)?;
    let pictures = rulers.iter().zip(&facts.content.rulers);
    let pictures: Vec<Value> = pictures
        .map(|((name, width, height, _), said)| {
            json!({ "file": link(name), "width": width, "height": height, "alt": said })
        })
        .collect();
    let number = facts.edition.sheet_number.as_str();
    let count = facts.content.table.columns;
    let heads = (1..=count).map(|n| words.say(&say::web_extraction(n.to_string())));
    let more = json!({
        "sheet": facts,
        "number": words.say(&say::web_number(number, facts.edition.line.as_str())),
        "correction": words::publication::corrected(judged, number, words),
        "pictures": pictures,
        "packages": words.say(&say::web_packages(facts.content.table.unit)),
        "extractions": heads.collect::<Vec<String>>(),
        "precautionary": facts.content.label.precautionary,
        "has_marks": facts.content.label.statement.iter().any(|piece| piece.marked),
        "sources": sources(&facts),
        "revisions": revisions(judged, &facts, config),
        "rounds": rounds(judged, view, config),
        "pdf": has_sheet(&stem).then(|| link(&sheet_below(&stem))),
        "pdf_words": words.say(&say::web_pdf(number)),
    });
    let name = listing::name(judged, words);
    let title = say::web_title(name.as_str(), config.programme.name.as_str());
    let place = Place {
        path: page_of(&stem),
        template: "web-product.html",
        title: words.say(&title),
        head: name,
        about: facts.document.description.clone(),
        here: "",
    };
    let svgs = rulers
        .into_iter()
        .map(|(name, _, _, svg)| Document::text(format!("web/{name}"), svg));
    Ok((frame.page(place, more), svgs.collect()))
}

/// The pictures: each with its path below the site, its width and height in points, and its drawing.
fn rulers(
    judged: &JudgedProduct,
    stem: &str,
    words: &Catalogue,
) -> Result<Vec<(String, u32, u32, String)>> {
    let drawings = Ruler::of(judged, words).draw()?;
    let pictures = drawings.iter().enumerate().map(|(index, drawings)| {
        let (svg, width, height) = stacked(drawings);
        let name = format!("rulers/{stem}/{}.svg", index + 1);
        (name, width, height, svg)
    });
    Ok(pictures.collect())
}

/// Where the numbers come from: each report with the places in its file, then certificates and photographs.
fn sources(facts: &SheetFacts<'_>) -> Vec<String> {
    let of_reports = facts.content.provenance.iter().zip(&facts.places);
    let of_reports = of_reports.map(|(report, places)| format!("{report} {places}"));
    of_reports.chain(facts.exhibits.iter().cloned()).collect()
}

/// The revisions, the last one first: a head, and why it was made.
fn revisions(judged: &JudgedProduct, facts: &SheetFacts<'_>, config: &Config) -> Vec<Value> {
    let rows = judged.verdict.issued.iter().rev();
    rows.zip(&facts.edition.revisions)
        .map(|(row, line)| {
            let day = config.words.day(row.issued_on);
            let head = say::web_revision_of(row.revision.to_string(), day);
            json!({ "head": config.words.say(&head), "note": line.note })
        })
        .collect()
}

/// The same product's other published rounds.
fn rounds(judged: &JudgedProduct, view: &Decided, config: &Config) -> Vec<Value> {
    let own = &judged.verdict;
    let others = view.products.iter().filter(|other| {
        let other = &other.verdict;
        other.product.product_id == own.product.product_id && other.round != own.round
    });
    others
        .map(|other| {
            let other = &other.verdict;
            let verdict = listing::of_its_limit(other.verdict, &other.rule, &config.words);
            let number = sheet_number(other, config);
            let said = say::web_round(other.round.as_str(), verdict, number);
            json!({
                "page": link(&page_below(&other.stem())),
                "said": config.words.say(&said),
            })
        })
        .collect()
}

/// What stands at a sheet's address while it is under revision: that it does, and no more. None where its name could not
/// be one of a file.
pub(super) fn withdrawn(one: &UnderRevision, config: &Config, frame: &Frame<'_>) -> Option<Page> {
    let stem = format!("{}--{}", one.product_id, one.round);
    let is_plain = |c: char| c.is_ascii_alphanumeric() || "-._".contains(c);
    if !stem.chars().all(is_plain) {
        return None;
    }
    let words = &config.words;
    let title = say::web_title(one.name.as_str(), config.programme.name.as_str());
    let place = Place {
        path: page_of(&stem),
        template: "web-withdrawn.html",
        title: words.say(&title),
        head: one.name.clone(),
        about: one.said.clone(),
        here: "",
    };
    Some(frame.page(place, json!({ "brand": one.brand, "said": one.said })))
}
