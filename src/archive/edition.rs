//! An edition: what one bag of the archive told its readers. And what changed from one edition to another.

use crate::archive::{bag, issued};
use crate::files;
use crate::model::registers::IssuedRevision;
use anyhow::{Context, Result};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::fmt;
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
    pub products: BTreeMap<SheetKey, Product>,
    /// Every revision issued up to then, oldest first.
    pub issued: Vec<IssuedRevision>,
    /// The regime's word and its limit, as published; none where nothing was.
    pub rule: Option<PublishedRule>,
}

/// The rule of a `results.json`, as far as figures are printed by it.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct PublishedRule {
    /// `us`, `codex` …
    pub regime: String,
    /// The limit in ppm.
    pub limit_ppm: f64,
    /// Whether exactly the limit is within it.
    pub limit_passes: bool,
}

/// How amounts are printed.
pub struct Print<'a> {
    /// A figure in ppm as the sheet prints it, without its unit.
    pub figure: &'a dyn Fn(f64) -> String,
    /// `ppm` or `mg/kg`, as the regime writes it.
    pub unit: &'a str,
}

/// A product and a round: one results sheet.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct SheetKey {
    /// Which product.
    pub product_id: String,
    /// Which round.
    pub round: String,
}

/// One product of `results.json`, as far as readers are told of it.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct Product {
    /// The programme's own name for it.
    pub product_id: String,
    /// The round of testing.
    pub round: String,
    /// As on the front of the package.
    pub name: String,
    /// `over_limit`, `within_limit`, `no_verdict`.
    pub verdict: String,
    /// What the label says.
    pub label: Label,
    /// Whether it is published; none in a bag of an earlier version.
    #[serde(default)]
    pub publication: Option<PublicationOf>,
    /// By code.
    pub packages: Vec<Package>,
}

/// The state of a sheet.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct PublicationOf {
    /// `published`, `under_revision` …
    pub state: String,
}

/// The word for a sheet that was issued and does not stand any more.
pub const UNDER_REVISION: &str = "under_revision";

/// What a label said.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct Label {
    /// `gluten_source`, `none` …
    pub finding: String,
    /// The terms, as printed.
    pub terms: Vec<String>,
}

/// One package of `results.json`.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct Package {
    /// What the lab is given.
    pub package_code: String,
    /// `within`, `over` …
    pub standing: String,
    /// What its extractions give together.
    pub result: Figures,
    /// As the lab reported them.
    pub extractions: Vec<Extraction>,
}

/// A package's result, in ppm.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct Figures {
    /// `value`, `below`, `range`, `none`.
    pub kind: String,
    /// The lowest that the reports allow.
    pub lower_ppm: Option<f64>,
    /// The highest that they allow.
    pub upper_ppm: Option<f64>,
}

/// One extraction of `results.json`.
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct Extraction {
    /// 1, 2, …
    pub number: u32,
    /// The text of the cell.
    pub reported: String,
    /// Set aside by a person.
    pub excluded: bool,
}

#[derive(Deserialize)]
struct Results {
    rule: PublishedRule,
    products: Vec<Product>,
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
    let results: Results = serde_json::from_slice(&results)
        .with_context(|| format!("cannot read the results in {}", bag.display()))?;
    Ok(Edition {
        products: keyed(results.products),
        issued: issued::rows(&issued.unwrap_or_default())?,
        rule: Some(results.rule),
    })
}

/// The products of a `results.json`.
///
/// # Errors
/// Where it is not one.
pub fn products(json: &[u8]) -> Result<BTreeMap<SheetKey, Product>> {
    let results: Results = serde_json::from_slice(json)?;
    Ok(keyed(results.products))
}

fn keyed(products: Vec<Product>) -> BTreeMap<SheetKey, Product> {
    // What is under revision is named, and nothing is said of it.
    let told = |product: &Product| {
        let publication = product.publication.as_ref();
        publication.is_none_or(|publication| publication.state != UNDER_REVISION)
    };
    let keyed = products.into_iter().filter(told).map(|product| {
        let key = SheetKey {
            product_id: product.product_id.clone(),
            round: product.round.clone(),
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

impl fmt::Display for Change {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {} → {}", self.what, self.old, self.new)
    }
}

/// What a sheet's reader must know: verdict, each package's result and extractions, the label finding.
pub fn changes(before: &Product, after: &Product, print: &Print<'_>) -> Vec<Change> {
    let mut changes = Vec::new();
    let mut note = |what: String, old: String, new: String| {
        if old != new {
            changes.push(Change { what, old, new });
        }
    };
    note(
        "product name".to_owned(),
        before.name.clone(),
        after.name.clone(),
    );
    note(
        "verdict".to_owned(),
        words(&before.verdict),
        words(&after.verdict),
    );
    let by_code = |product: &Product| -> BTreeMap<String, Package> {
        let packages = product.packages.iter();
        packages
            .map(|package| (package.package_code.clone(), package.clone()))
            .collect()
    };
    let (old, new) = (by_code(before), by_code(after));
    let codes: std::collections::BTreeSet<&String> = old.keys().chain(new.keys()).collect();
    for code in codes {
        let (old, new) = (old.get(code), new.get(code));
        let shown = |package: Option<&Package>| match package {
            Some(package) => printed(&package.result, print),
            None => "not listed".to_owned(),
        };
        note(format!("package {code}, result"), shown(old), shown(new));
        let shown = |package: Option<&Package>| package.map(reported).unwrap_or_default();
        note(
            format!("package {code}, extractions"),
            shown(old),
            shown(new),
        );
    }
    note(
        "label".to_owned(),
        label(&before.label),
        label(&after.label),
    );
    changes
}

/// A state's word in the data as one would say it: `over_limit` is "over limit".
pub fn words(state: &str) -> String {
    match state {
        "over_limit" => "over the limit".to_owned(),
        "within_limit" => "within the limit".to_owned(),
        other => other.replace('_', " "),
    }
}

fn printed(result: &Figures, print: &Print<'_>) -> String {
    let Print { figure, unit } = print;
    match (result.kind.as_str(), result.lower_ppm, result.upper_ppm) {
        ("value", Some(mean), _) => format!("{} {unit}", figure(mean)),
        ("below", _, Some(upper)) => format!("<{upper} {unit}"),
        ("range", Some(0.0), Some(upper)) => format!("up to {} {unit}", figure(upper)),
        ("range", Some(lower), Some(upper)) => {
            format!("{}–{} {unit}", figure(lower), figure(upper))
        }
        ("range", Some(lower), None) => format!(">{} {unit}", figure(lower)),
        _ => "none".to_owned(),
    }
}

fn reported(package: &Package) -> String {
    let texts = package.extractions.iter().map(|extraction| {
        let text = extraction
            .reported
            .split_whitespace()
            .collect::<Vec<_>>()
            .join(" ");
        match extraction.excluded {
            true => format!("{text} (set aside)"),
            false => text,
        }
    });
    texts.collect::<Vec<_>>().join(", ")
}

fn label(label: &Label) -> String {
    match label.terms.is_empty() {
        true => words(&label.finding),
        false => format!("{} ({})", words(&label.finding), label.terms.join(", ")),
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;

    /// One decimal, in ppm.
    pub const PLAIN: Print<'static> = Print {
        figure: &|ppm| format!("{ppm:.1}"),
        unit: "ppm",
    };

    /// A product with one package of this result.
    pub fn product(id: &str, verdict: &str, ppm: f64) -> Product {
        Product {
            product_id: id.to_owned(),
            round: "1".to_owned(),
            name: "Oat Biscuits".to_owned(),
            verdict: verdict.to_owned(),
            label: Label {
                finding: "none".to_owned(),
                terms: vec![],
            },
            publication: None,
            packages: vec![Package {
                package_code: "B7".to_owned(),
                standing: "within".to_owned(),
                result: Figures {
                    kind: "value".to_owned(),
                    lower_ppm: Some(ppm),
                    upper_ppm: Some(ppm),
                },
                extractions: vec![Extraction {
                    number: 1,
                    reported: format!("{ppm}"),
                    excluded: false,
                }],
            }],
        }
    }

    #[test]
    fn each_figure_is_named_with_its_old_and_new_value() {
        let before = product("FH-01", "within_limit", 18.25);
        let mut after = product("FH-01", "over_limit", 22.44);
        after.label.finding = "gluten_source".to_owned();
        after.label.terms = vec!["malt extract".to_owned()];
        let told: Vec<String> = changes(&before, &after, &PLAIN)
            .iter()
            .map(Change::to_string)
            .collect();
        assert_eq!(
            told,
            [
                "verdict: within the limit → over the limit",
                "package B7, result: 18.2 ppm → 22.4 ppm",
                "package B7, extractions: 18.25 → 22.44",
                "label: none → gluten source (malt extract)",
            ]
        );
        assert!(changes(&before, &before, &PLAIN).is_empty());
    }

    #[test]
    fn a_package_that_is_new_has_no_old_value() {
        let mut before = product("FH-01", "no_verdict", 3.0);
        let after = before.clone();
        before.packages.clear();
        let told = changes(&before, &after, &PLAIN);
        assert_eq!(told[0].old, "not listed");
        assert_eq!(told[0].new, "3.0 ppm");
    }

    #[test]
    fn results_are_read_as_they_are_written() {
        let json = r#"{"schema": "galleyproof.results/1",
            "rule": {"regime": "us", "limit_ppm": 20, "limit_passes": false, "decision": "simple"}, "products": [{"product_id": "A", "round": "2", "name": "n",
            "verdict": "within_limit", "grade": "quantified", "reasons": [], "label": {"finding": "none", "terms": []},
            "notify_maker": false, "packages": [{"package_code": "p", "state": "agree", "standing": "within",
            "straddles_limit": false, "gap_ppm": 0.5, "allowed_ppm": 2, "result": {"kind": "below", "ppm": null,
            "lower_ppm": 0, "upper_ppm": 5}, "extractions": []}]}], "counts": {}, "problems": []}"#;
        let products = products(json.as_bytes()).expect("reads");
        let product = products.values().next().expect("has one");
        assert_eq!(printed(&product.packages[0].result, &PLAIN), "<5 ppm");
    }
}
