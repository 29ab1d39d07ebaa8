//! The page of corrections: every published sheet that replaces another one.

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::render::addresses::link;
use crate::render::facts::sheet::sheet_number;
use crate::render::web::{page, under_revision};
use crate::render::words::{self, digest::why_revised};
use crate::words::say;
use serde_json::{Value, json};

/// The facts of the page: those that took back or made an accusation come first.
pub(super) fn facts(view: &Decided, config: &Config) -> Value {
    let amended = view
        .products
        .iter()
        .filter(|judged| judged.verdict.issued.len() > 1);
    let mut amended: Vec<&JudgedProduct> = amended.collect();
    amended.sort_by_key(|judged| judged.publication.correction.is_none());
    let sheets = amended.iter().map(|judged| {
        let number = sheet_number(&judged.verdict, config);
        let name = judged.verdict.product.name.as_str();
        json!({
            "head": config.words.say(&say::web_correction_of(name, number.as_str())),
            "page": link(&page(&judged.verdict.stem())),
            "correction": words::publication::corrected(judged, &number, &config.words),
            "revisions": revisions(judged, config),
        })
    });
    json!({
        "sheets": sheets.collect::<Vec<Value>>(),
        "under_revision": under_revision(view),
    })
}

/// The revisions of a sheet, the last one first, each with what it replaces, what was changed and why.
fn revisions(judged: &JudgedProduct, config: &Config) -> Vec<String> {
    let issued = &judged.verdict.issued;
    let replacing = issued.iter().zip(issued.iter().skip(1)).rev();
    replacing
        .map(|(before, row)| {
            let replaces = config.words.say(&say::web_replaces(
                row.revision.to_string(),
                config.words.day(row.issued_on),
                before.revision.to_string(),
                config.words.day(before.issued_on),
            ));
            format!("{replaces}{}", why_revised(row))
        })
        .collect()
}
