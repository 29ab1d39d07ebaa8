//! What a reader of an amended sheet can see that is not what it was, beyond its figures, its verdict and its label.
//!
//! A bag is a programme folder, so that what the sheet said can be worked out again from it.

use crate::archive::bag;
use crate::archive::edition::{Change, SheetKey};
use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::verdict::ProductVerdict;
use crate::words::{Catalogue, Said, say};
use anyhow::Result;
use serde_json::Value;
use std::collections::BTreeMap;
use std::path::Path;

/// Decides a programme folder anew: its settings and its sheets.
pub type Decide<'a> = &'a dyn Fn(&Path) -> Result<(Config, Vec<JudgedProduct>)>;

/// A sheet as a bag's own files give it.
pub struct Former {
    judged: JudgedProduct,
    content: Value,
    sha256: String,
}

/// The sheets of a bag, worked out again; none where its folder cannot be read as a programme.
pub fn former(bag: &Path, decide: Decide<'_>) -> BTreeMap<SheetKey, Former> {
    let Ok((_, products)) = decide(&bag::programme(bag)) else {
        return BTreeMap::new();
    };
    let sheets = products.into_iter().map(|judged| {
        let key = SheetKey {
            product_id: judged.verdict.product.product_id.clone(),
            round: judged.verdict.round.clone(),
        };
        (key, Former::of(judged))
    });
    sheets.collect()
}

impl Former {
    fn of(judged: JudgedProduct) -> Former {
        Former {
            sha256: judged.sheet().sha256.clone(),
            content: content(&judged),
            judged,
        }
    }

    /// What else is not what it was, a sentence each: short facts with their new and old text, then the parts of the sheet
    /// that read otherwise.
    pub fn against(&self, now: &JudgedProduct, config: &Config) -> Vec<String> {
        let words = &config.words;
        let mut told: Vec<String> = facts(&self.judged.verdict, &now.verdict, words)
            .iter()
            .map(|change| change.said(words))
            .collect();
        let new = content(now);
        let differs = |part: &str| self.content.get(part) != new.get(part);
        let (before, after) = (&self.judged.verdict.product, &now.verdict.product);
        let published = now.verdict.issued.last();
        let parts = [
            (
                "ingredients",
                before.ingredients != after.ingredients || before.oats != after.oats,
            ),
            ("correspondence", differs("correspondence")),
            ("method", differs("method")),
            ("provenance", differs("provenance")),
            ("earlier", self.judged.earlier != now.earlier),
            ("programme", differs("programme") || differs("caution")),
            // The same files give other words than were published: the program words them otherwise now.
            (
                "wording",
                published.is_some_and(|last| last.content_sha256 != self.sha256),
            ),
        ];
        let parts = parts.iter().filter(|(_, differs)| *differs);
        let parts: Vec<String> = parts
            .map(|(part, _)| words.say(&say::amended_part(part)))
            .collect();
        let named = (!parts.is_empty()).then(|| words.list(&parts));
        told.extend(named.map(|parts| words.say(&say::amended_parts(parts))));
        told
    }
}

/// What the sheet says, part by part.
fn content(judged: &JudgedProduct) -> Value {
    let content = serde_json::to_value(&judged.sheet().content);
    content.expect("facts are text, numbers and lists")
}

/// Short facts of the product and its packages.
fn facts(before: &ProductVerdict, after: &ProductVerdict, words: &Catalogue) -> Vec<Change> {
    let mut changes = Vec::new();
    let mut note = |what: Said, old: Option<&str>, new: Option<&str>| {
        if old != new {
            let shown = |text: Option<&str>| {
                text.map_or_else(|| words.say(&say::amended_no_value()), str::to_owned)
            };
            changes.push(Change {
                what: words.say(&what),
                old: shown(old),
                new: shown(new),
            });
        }
    };
    let (old, new) = (&before.product, &after.product);
    let of_product = [
        ("claim", Some(old.claim.as_str()), Some(new.claim.as_str())),
        ("brand", old.brand.as_deref(), new.brand.as_deref()),
        (
            "net_content",
            old.net_content.as_deref(),
            new.net_content.as_deref(),
        ),
        (
            "certifier",
            old.certifier.as_deref(),
            new.certifier.as_deref(),
        ),
        ("barcode", old.barcode.as_deref(), new.barcode.as_deref()),
    ];
    for (part, old, new) in of_product {
        note(say::amended_of_product(part), old, new);
    }
    for result in &after.packages {
        let new = &result.pair.package;
        let mut known = before.packages.iter().map(|result| &result.pair.package);
        let Some(old) = known.find(|old| old.package_code == new.package_code) else {
            continue;
        };
        let day = |day: Option<chrono::NaiveDate>| day.map(|day| day.to_string());
        let (old_day, new_day) = (day(old.bought_on), day(new.bought_on));
        let of_package = [
            ("lot", old.lot.as_deref(), new.lot.as_deref()),
            ("best_by", old.best_by.as_deref(), new.best_by.as_deref()),
            ("bought_on", old_day.as_deref(), new_day.as_deref()),
            ("shop", old.shop.as_deref(), new.shop.as_deref()),
        ];
        for (part, old, now) in of_package {
            note(say::amended_of_package(&new.package_code, part), old, now);
        }
    }
    changes
}
