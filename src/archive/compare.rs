//! What a reader of one edition must know of another: sheets that are new, amended or withdrawn, and changed verdicts.

use crate::archive::edition::{Change, Edition, Print, SheetKey, changes};
use crate::model::registers::IssuedRevision;
use crate::model::results::Product;
use serde::Serialize;
use std::collections::BTreeMap;

/// What a reader of the first edition must know of the second.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Comparison {
    /// Sheets that the first edition did not have.
    pub new: Vec<Sheet>,
    /// Sheets of which the second has a later revision.
    pub amended: Vec<Amended>,
    /// Sheets of the first that the second no longer stands by.
    pub withdrawn: Vec<Sheet>,
    /// Verdicts that readers of the first have read and that are others now.
    pub verdicts: Vec<VerdictChange>,
}

/// One sheet of an edition.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Sheet {
    /// Its number.
    pub sheet_number: String,
    /// Which product.
    pub product_id: String,
    /// Which round.
    pub round: String,
    /// The product's name.
    pub name: Option<String>,
    /// The latest revision in that edition.
    pub revision: u32,
    /// The verdict, as the data files have it.
    pub verdict: Option<String>,
}

/// A sheet with a later revision.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Amended {
    /// The sheet as it is now.
    #[serde(flatten)]
    pub sheet: Sheet,
    /// The revision that readers of the first have.
    pub replaces: u32,
    /// Why, for each revision since.
    pub reasons: Vec<String>,
    /// Each printed figure that is not what it was.
    pub changes: Vec<Change>,
}

/// A verdict that is not what it was.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct VerdictChange {
    /// The sheet's number.
    pub sheet_number: String,
    /// The product's name.
    pub name: String,
    /// As the data files have it.
    pub old: String,
    /// As the data files have it.
    pub new: String,
}

/// Compares two editions, sheet by sheet in the order of their numbers.
pub fn compare(first: &Edition, second: &Edition, print: &Print<'_>) -> Comparison {
    let (before, after) = (latest(first), latest(second));
    let mut comparison = Comparison::default();
    for (number, old) in &before {
        let key = key(old);
        let gone = first.products.contains_key(&key) && !second.products.contains_key(&key);
        if gone || !after.contains_key(number) {
            comparison.withdrawn.push(sheet(old, first));
        }
    }
    for (number, new) in &after {
        let Some(old) = before.get(number) else {
            comparison.new.push(sheet(new, second));
            continue;
        };
        let products = (
            first.products.get(&key(old)),
            second.products.get(&key(new)),
        );
        if new.revision > old.revision {
            comparison.amended.push(Amended {
                sheet: sheet(new, second),
                replaces: old.revision,
                reasons: reasons(second, number, old.revision),
                changes: match products {
                    (Some(old), Some(new)) => changes(old, new, print),
                    _ => Vec::new(),
                },
            });
        }
        if let (Some(old), Some(new)) = products
            && old.verdict != new.verdict
        {
            comparison.verdicts.push(verdict_change(number, old, new));
        }
    }
    comparison
}

/// The latest revision of each sheet.
fn latest(edition: &Edition) -> BTreeMap<&str, &IssuedRevision> {
    let mut latest: BTreeMap<&str, &IssuedRevision> = BTreeMap::new();
    for row in &edition.issued {
        let known = latest.entry(&row.sheet_number).or_insert(row);
        if row.revision > known.revision {
            *known = row;
        }
    }
    latest
}

fn key(row: &IssuedRevision) -> SheetKey {
    SheetKey {
        product_id: row.product_id.clone(),
        round: row.round.clone(),
    }
}

fn sheet(row: &IssuedRevision, edition: &Edition) -> Sheet {
    let product = edition.products.get(&key(row));
    Sheet {
        sheet_number: row.sheet_number.clone(),
        product_id: row.product_id.clone(),
        round: row.round.clone(),
        name: product.map(|product| product.name.to_string()),
        revision: row.revision,
        verdict: product.map(|product| product.verdict.to_string()),
    }
}

fn reasons(edition: &Edition, number: &str, after_revision: u32) -> Vec<String> {
    let since = edition
        .issued
        .iter()
        .filter(|row| row.sheet_number == number && row.revision > after_revision);
    since.filter_map(|row| row.reason.clone()).collect()
}

fn verdict_change(number: &str, old: &Product<'_>, new: &Product<'_>) -> VerdictChange {
    VerdictChange {
        sheet_number: number.to_owned(),
        name: new.name.to_string(),
        old: old.verdict.to_string(),
        new: new.verdict.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::archive::edition::tests::{plain, product};
    use crate::words::english;
    use chrono::NaiveDate;

    fn revision(id: &str, revision: u32) -> IssuedRevision {
        IssuedRevision {
            sheet_number: format!("TKW-{id}-1"),
            product_id: id.to_owned(),
            round: "1".to_owned(),
            revision,
            issued_on: NaiveDate::from_ymd_opt(2031, 4, 22).expect("a date"),
            content_sha256: String::new(),
            reason: (revision > 1).then(|| format!("reason {revision}")),
            changed: None,
            ..IssuedRevision::default()
        }
    }

    fn edition(products: &[Product<'static>], issued: &[IssuedRevision]) -> Edition {
        let keyed = products.iter().map(|product| {
            let key = SheetKey {
                product_id: product.product_id.to_string(),
                round: product.round.to_string(),
            };
            (key, product.clone())
        });
        Edition {
            products: keyed.collect(),
            issued: issued.to_vec(),
            rule: None,
        }
    }

    #[test]
    fn the_second_edition_tells_the_story_of_the_first() {
        let first = edition(
            &[
                product("A", "within_limit", 18.0),
                product("B", "within_limit", 3.0),
                product("C", "within_limit", 4.0),
            ],
            &[revision("A", 1), revision("B", 1), revision("C", 1)],
        );
        let second = edition(
            &[
                product("A", "over_limit", 23.0),
                product("B", "within_limit", 3.0),
                product("D", "no_verdict", 9.0),
            ],
            &[1, 2, 3]
                .map(|n| revision("A", n))
                .into_iter()
                .chain([revision("B", 1), revision("C", 1), revision("D", 1)])
                .collect::<Vec<_>>(),
        );
        let told = compare(&first, &second, &plain());
        let numbers = |sheets: &[Sheet]| -> Vec<String> {
            sheets
                .iter()
                .map(|sheet| sheet.sheet_number.clone())
                .collect()
        };
        assert_eq!(numbers(&told.new), ["TKW-D-1"]);
        assert_eq!(numbers(&told.withdrawn), ["TKW-C-1"]);
        let [amended] = told.amended.as_slice() else {
            panic!("one is amended: {told:?}")
        };
        assert_eq!((amended.replaces, amended.sheet.revision), (1, 3));
        assert_eq!(amended.reasons, ["reason 2", "reason 3"]);
        assert_eq!(
            amended.changes[1].said(english()),
            "Package B7, result: now 23.0 ppm; before 18.0 ppm."
        );
        let [verdict] = told.verdicts.as_slice() else {
            panic!("one verdict: {told:?}")
        };
        assert_eq!(
            (verdict.old.as_str(), verdict.new.as_str()),
            ("within_limit", "over_limit")
        );
    }

    #[test]
    fn an_edition_holds_nothing_new_for_its_own_readers() {
        let one = edition(&[product("A", "within_limit", 18.0)], &[revision("A", 1)]);
        assert_eq!(compare(&one, &one, &plain()), Comparison::default());
    }
}
