//! An edition: what one bag of the archive told its readers. And what changed from one edition to another.

use crate::archive::{bag, issued};
use crate::files;
use crate::model::registers::IssuedRevision;
use crate::model::results::{Figures, Label, Package, Product, Results, Rule, UNDER_REVISION};
use crate::words::{Catalogue, NBSP, Said, say};
use anyhow::{Context, Result};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// Where a bag keeps what it told its readers; the second place is that of bags of earlier versions.
const RESULTS: [&str; 2] = [
    "data/public/data/results.json",
    "data/out/data/results.json",
];

/// What one bag told its readers.
#[derive(Clone, Debug, Default)]
pub struct Edition {
    /// The results, as published.
    pub products: BTreeMap<SheetKey, Product<'static>>,
    /// Every revision issued up to then, oldest first.
    pub issued: Vec<IssuedRevision>,
    /// The regime's word and its limit, as published; none where nothing was.
    pub rule: Option<Rule<'static>>,
}

/// How amounts are printed.
pub struct Print<'a> {
    /// A figure in ppm as the sheet prints it, without its unit.
    pub figure: &'a dyn Fn(f64) -> String,
    /// `ppm` or `mg/kg`, as the regime writes it.
    pub unit: &'a str,
    /// The language in which all of it is told.
    pub words: &'a Catalogue,
}

/// A product and a round: one results sheet.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct SheetKey {
    /// Which product.
    pub product_id: String,
    /// Which round.
    pub round: String,
}

/// Reads what a bag told its readers.
///
/// # Errors
/// Where the folder is no bag with results in it.
pub fn read(bag: &Path) -> Result<Edition> {
    let results = RESULTS.map(|path| bag.join(path));
    let there = results.iter().find(|path| path.exists());
    let results = files::read(there.unwrap_or(&results[0]))
        .with_context(|| format!("{} is not an archive that `issue` wrote", bag.display()))?;
    let issued = files::read_if_there(&bag::programme(bag).join(issued::FILE_NAME))?;
    let results: Results<'static> = serde_json::from_slice(&results)
        .with_context(|| format!("cannot read the results in {}", bag.display()))?;
    Ok(Edition {
        products: keyed(results.products),
        issued: issued::rows(&issued.unwrap_or_default())?,
        rule: Some(results.rule),
    })
}

/// These products by their sheets. What is under revision is named in the data, and nothing is said of it.
pub fn keyed<'a>(products: Vec<Product<'a>>) -> BTreeMap<SheetKey, Product<'a>> {
    let told = |product: &Product<'_>| product.publication.state != UNDER_REVISION;
    let keyed = products.into_iter().filter(told).map(|product| {
        let key = SheetKey {
            product_id: product.product_id.to_string(),
            round: product.round.to_string(),
        };
        (key, product)
    });
    keyed.collect()
}

/// One printed thing that is not what it was.
#[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
pub struct Change {
    /// What it is: "package B7, result".
    pub what: String,
    /// What was printed.
    pub old: String,
    /// What is printed now.
    pub new: String,
}

impl Change {
    /// All of it in a sentence: "Verdict: now over the limit; before within the limit."
    pub fn said(&self, words: &Catalogue) -> String {
        words.say(&say::amended_change(&self.what, &self.new, &self.old))
    }
}

/// What a sheet's reader must know: verdict, each package's result and extractions, the label finding.
pub fn changes(before: &Product<'_>, after: &Product<'_>, print: &Print<'_>) -> Vec<Change> {
    let words = print.words;
    let mut changes = Vec::new();
    let mut note = |what: Said, old: String, new: String| {
        if old != new {
            let what = words.say(&what);
            changes.push(Change { what, old, new });
        }
    };
    note(
        say::amended_of_product("name"),
        before.name.to_string(),
        after.name.to_string(),
    );
    let verdict = |product: &Product<'_>| {
        known(VERDICTS, &product.verdict).map_or_else(
            || product.verdict.to_string(),
            |verdict| words.say(&say::amended_verdict(verdict)),
        )
    };
    note(
        say::amended_of_product("verdict"),
        verdict(before),
        verdict(after),
    );
    let (old, new) = (by_code(before), by_code(after));
    let codes: BTreeSet<&str> = old.keys().chain(new.keys()).copied().collect();
    for code in codes {
        let (old, new) = (old.get(code).copied(), new.get(code).copied());
        let shown = |package: Option<&Package<'_>>| match package {
            Some(package) => printed(&package.series.result, print),
            None => words.say(&say::amended_not_listed()),
        };
        let what = say::amended_of_package(code, "result");
        note(what, shown(old), shown(new));
        let shown = |package: Option<&Package<'_>>| {
            package.map_or_else(String::new, |package| reported(package, words))
        };
        let what = say::amended_of_package(code, "extractions");
        note(what, shown(old), shown(new));
    }
    note(
        say::amended_of_product("label"),
        label(&before.label, words),
        label(&after.label, words),
    );
    changes
}

/// The words of verdicts in the data.
const VERDICTS: &[&str] = &["over_limit", "within_limit", "no_verdict"];

/// The words of label findings in the data.
const FINDINGS: &[&str] = &[
    "none",
    "gluten_source",
    "unverified_oats",
    "needs_review",
    "no_ingredients",
];

/// The word, where it is one of these; an archive of another version may have others.
fn known(words: &[&'static str], word: &str) -> Option<&'static str> {
    words.iter().copied().find(|one| *one == word)
}

fn by_code<'a>(product: &'a Product<'_>) -> BTreeMap<&'a str, &'a Package<'a>> {
    let packages = product.packages.iter();
    packages
        .map(|package| (package.package_code.as_ref(), package))
        .collect()
}

fn printed(result: &Figures<'_>, print: &Print<'_>) -> String {
    let Print {
        figure,
        unit,
        words,
    } = print;
    let amount = |written: String| words.quantity(&written, unit).replace(NBSP, " ");
    match (result.kind.as_ref(), result.lower_ppm, result.upper_ppm) {
        ("value", Some(mean), _) => amount(figure(mean)),
        ("below", _, Some(upper)) => amount(format!("<{upper}")),
        ("range", Some(0.0), Some(upper)) => words.say(&say::amended_up_to(amount(figure(upper)))),
        ("range", Some(lower), Some(upper)) => {
            amount(format!("{}–{}", figure(lower), figure(upper)))
        }
        ("range", Some(lower), None) => amount(format!(">{}", figure(lower))),
        _ => words.say(&say::amended_no_value()),
    }
}

fn reported(package: &Package<'_>, words: &Catalogue) -> String {
    let texts = package.series.extractions.iter().map(|extraction| {
        let text = extraction
            .reported
            .split_whitespace()
            .collect::<Vec<_>>()
            .join(" ");
        match extraction.excluded {
            true => words.say(&say::amended_set_aside(text)),
            false => text,
        }
    });
    texts.collect::<Vec<_>>().join(", ")
}

fn label(label: &Label<'_>, words: &Catalogue) -> String {
    let Some(finding) = known(FINDINGS, &label.finding) else {
        return label.finding.to_string();
    };
    words.say(&match label.terms.is_empty() {
        true => say::amended_finding(finding),
        false => say::amended_finding_terms(finding, label.terms.join(", ")),
    })
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::model::results::{Extraction, Series};
    use crate::words::english;

    /// One decimal, in ppm, in English.
    pub fn plain() -> Print<'static> {
        Print {
            figure: &|ppm| format!("{ppm:.1}"),
            unit: "ppm",
            words: english(),
        }
    }

    /// A product with one package of this result.
    pub fn product(id: &str, verdict: &str, ppm: f64) -> Product<'static> {
        let result = Figures {
            kind: "value".into(),
            lower_ppm: Some(ppm),
            upper_ppm: Some(ppm),
            ..Figures::default()
        };
        let extraction = Extraction {
            number: 1,
            reported: format!("{ppm}").into(),
            ..Extraction::default()
        };
        Product {
            product_id: id.to_owned().into(),
            round: "1".into(),
            name: "Oat Biscuits".into(),
            verdict: verdict.to_owned().into(),
            label: Label {
                finding: "none".into(),
                terms: vec![],
            },
            packages: vec![Package {
                package_code: "B7".into(),
                series: Series {
                    standing: "within".into(),
                    result,
                    extractions: vec![extraction],
                    ..Series::default()
                },
                other_series: None,
            }],
            ..Product::default()
        }
    }

    #[test]
    fn each_figure_is_named_with_its_old_and_new_value() {
        let before = product("FH-01", "within_limit", 18.25);
        let mut after = product("FH-01", "over_limit", 22.44);
        after.label.finding = "gluten_source".into();
        after.label.terms = vec!["malt extract".into()];
        let told: Vec<String> = changes(&before, &after, &plain())
            .iter()
            .map(|change| change.said(english()))
            .collect();
        assert_eq!(
            told,
            [
                "Verdict: now over the limit; before within the limit.",
                "Package B7, result: now 22.4 ppm; before 18.2 ppm.",
                "Package B7, extractions: now 22.44; before 18.25.",
                "Label: now gluten source (malt extract); before nothing found.",
            ]
        );
        assert!(changes(&before, &before, &plain()).is_empty());
    }

    #[test]
    fn a_package_that_is_new_has_no_old_value() {
        let mut before = product("FH-01", "no_verdict", 3.0);
        let after = before.clone();
        before.packages.clear();
        let told = changes(&before, &after, &plain());
        assert_eq!(told[0].old, "not listed");
        assert_eq!(told[0].new, "3.0 ppm");
    }

    #[test]
    fn results_of_an_earlier_version_lack_what_came_later() {
        let json = r#"{"schema": "galleyproof.results/1",
            "rule": {"regime": "us", "limit_ppm": 20, "limit_passes": false, "decision": "simple"}, "products": [{"product_id": "A", "round": "2", "name": "n",
            "verdict": "within_limit", "grade": "quantified", "reasons": [], "label": {"finding": "none", "terms": []},
            "notify_maker": false, "packages": [{"package_code": "p", "state": "agree", "standing": "within",
            "straddles_limit": false, "gap_ppm": 0.5, "allowed_ppm": 2, "result": {"kind": "below", "ppm": null,
            "lower_ppm": 0, "upper_ppm": 5}, "extractions": []}]}], "counts": {}, "problems": []}"#;
        let results: Results<'static> = serde_json::from_str(json).expect("reads");
        let products = keyed(results.products);
        let product = products.values().next().expect("has one");
        let package = &product.packages[0];
        assert_eq!(printed(&package.series.result, &plain()), "<5 ppm");
        assert_eq!(package.series.allowed_ppm, Some(2.0));
    }
}
