//! The feed of sheets: new, amended, corrected, and those that do not stand any more (Atom, RFC 4287).

use crate::config::Config;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::label::LabelFinding;
use crate::model::publication::UnderRevision;
use crate::model::registers::IssuedRevision;
use crate::model::verdict::Verdict;
use crate::render::addresses::link;
use crate::render::facts::sheet::sheet_number;
use crate::render::web::{page, sheet};
use crate::render::words::{self, digest::why_revised};
use crate::words::say;
use chrono::NaiveDate;
use serde::Serialize;
use serde_json::{Value, json};

/// More than these a reader of feeds has seen before.
const ENTRIES: usize = 200;

/// One entry.
#[derive(Debug, Serialize)]
struct Entry {
    id: String,
    title: String,
    published: String,
    updated: String,
    /// `new`, `amended`, `corrected` or `under-revision`.
    kind: &'static str,
    page: String,
    pdf: Option<String>,
    summary: String,
}

/// Whether there is anything to tell: an empty feed would need a day on which it changed.
pub(super) fn is_any(view: &Decided) -> bool {
    !(view.products.is_empty() && view.under_revision.is_empty())
}

/// The feed's facts, the newest entry first.
pub(super) fn facts(view: &Decided, config: &Config, has_sheet: &dyn Fn(&str) -> bool) -> Value {
    let of_products = view.products.iter();
    let mut entries: Vec<Entry> = of_products
        .flat_map(|judged| entries(judged, config, has_sheet))
        .chain(view.under_revision.iter().map(|one| withdrawn(one, config)))
        .collect();
    entries.sort_by(|a, b| (&b.updated, &b.id).cmp(&(&a.updated, &a.id)));
    entries.truncate(ENTRIES);
    json!({
        "id": tag(config, None, "sheets"),
        "updated": entries.first().map(|entry| entry.updated.clone()),
        "entries": entries,
    })
}

/// An entry a revision; what an earlier one said is not said again.
fn entries(
    judged: &JudgedProduct,
    config: &Config,
    has_sheet: &dyn Fn(&str) -> bool,
) -> Vec<Entry> {
    let verdict = &judged.verdict;
    let number = sheet_number(verdict, config);
    let stem = verdict.stem();
    let product = named(
        verdict.product.brand.as_deref(),
        &verdict.product.name,
        config,
    );
    let issued = &verdict.issued;
    let entry = |(at, row): (usize, &IssuedRevision)| {
        let before = at.checked_sub(1).map(|before| &issued[before]);
        let next = issued.get(at + 1);
        let kind = kind(before, row);
        let (name, revision) = (product.as_str(), row.revision.to_string());
        let title = match kind {
            "new" => say::web_entry_new(name, number.as_str()),
            "amended" => say::web_entry_amended(name, number.as_str(), revision),
            _ => say::web_entry_corrected(name, number.as_str(), revision),
        };
        let summary = match next {
            Some(next) => {
                let day = config.words.day(next.issued_on);
                let said = say::web_entry_replaced(next.revision.to_string(), day);
                config.words.say(&said)
            }
            None => {
                let words = words::verdict::headline(verdict.verdict, verdict.rule, &config.words);
                let asked_for = config.testing.packages_per_product;
                let count = words::verdict::rests_on(verdict, asked_for, &config.words);
                format!("{words}. {count}{}", why_revised(row))
            }
        };
        let pdf = next.is_none() && has_sheet(&stem);
        Entry {
            id: revision_tag(config, row.issued_on, &number, row.revision),
            title: config.words.say(&title),
            published: instant(row.issued_on),
            updated: instant(next.map_or(row.issued_on, |next| next.issued_on)),
            kind,
            page: link(&page(&stem)),
            pdf: pdf.then(|| link(&sheet(&stem))),
            summary,
        }
    };
    issued.iter().enumerate().map(entry).collect()
}

/// Whether a revision is the first, and whether it takes back an accusation or makes one.
fn kind(before: Option<&IssuedRevision>, row: &IssuedRevision) -> &'static str {
    let accuses = |row: &IssuedRevision| {
        let (verdict, label) = (row.verdict.as_deref()?, row.label.as_deref()?);
        Some(verdict == Verdict::OverLimit.word() || label == LabelFinding::GlutenSource.word())
    };
    match before {
        None => "new",
        Some(before) => match (accuses(before), accuses(row)) {
            (Some(said), Some(says)) if said != says => "corrected",
            _ => "amended",
        },
    }
}

fn withdrawn(one: &UnderRevision, config: &Config) -> Entry {
    let name = named(one.brand.as_deref(), &one.name, config);
    let title = say::web_entry_under_revision(name, one.sheet_number.as_str());
    let id = revision_tag(config, one.issued_on, &one.sheet_number, one.revision);
    Entry {
        id: format!("{id}/under-revision"),
        title: config.words.say(&title),
        published: instant(one.issued_on),
        updated: instant(one.issued_on),
        kind: "under-revision",
        page: link(&page(&format!("{}--{}", one.product_id, one.round))),
        pdf: None,
        summary: one.said.clone(),
    }
}

fn named(brand: Option<&str>, product: &str, config: &Config) -> String {
    match brand {
        Some(brand) => config.words.say(&say::web_named(brand, product)),
        None => product.to_owned(),
    }
}

/// A day of issue as a moment: its beginning (RFC 3339). The register knows no hour.
fn instant(day: NaiveDate) -> String {
    format!("{day}T00:00:00Z")
}

fn revision_tag(config: &Config, on: NaiveDate, number: &str, revision: u32) -> String {
    tag(config, Some(on), &format!("{number}/{revision}"))
}

/// A name for good (RFC 4151): of the programme's short name, which is letters, digits and hyphens, a day, and what it
/// names. The feed itself has the same day always.
fn tag(config: &Config, on: Option<NaiveDate>, what: &str) -> String {
    let authority = config.programme.short_name.to_ascii_lowercase();
    let authority = match authority.trim_matches('-') {
        "" => "programme",
        letters => letters,
    };
    let day = on.map_or("2000".to_owned(), |day| day.to_string());
    format!("tag:{authority},{day}:{}", link(what))
}
