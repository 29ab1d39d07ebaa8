//! How was tested and decided, where the numbers come from, and the caution that every sheet carries.

use crate::config::Config;
use crate::model::caution::Caution;
use crate::model::decided::JudgedProduct;
use crate::model::exhibit::{Exhibit, ExhibitKind};
use crate::model::extraction::Extraction;
use crate::model::package::PackageResult;
use crate::model::pair::PairState;
use crate::model::place::LabFile;
use crate::model::rule::{Decision, Rule};
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::numbers::{self, NBSP};
use crate::render::words::duplicates::false_alarm;
use crate::render::words::limit::LimitWords;
use crate::render::words::summary::number;
use crate::render::words::{listed, once, sentence_case};
use crate::words::reason_in_words;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// How was tested and decided: sentences for one paragraph.
pub fn method(judged: &JudgedProduct, config: &Config) -> Vec<String> {
    let product = &judged.verdict;
    let limit = LimitWords::of(product.rule);
    let mut said = vec![
        format!(
            "{}; each package extracted {}.",
            sentence_case(assays(product, config).trim_end_matches('.')),
            times(config.testing.extractions_per_package)
        ),
        allowed_difference(judged, config),
        "A package’s result is the mean of its extractions; “<n” is any value below n.".to_owned(),
        format!(
            "Nothing is rounded first. One package {} decides.",
            limit.over_the_limit()
        ),
        decision(product.rule),
        limit.source(),
    ];
    // Where there is no verdict, the sentence beside it has said this already.
    let unfit = product.method_unfit.as_ref();
    if let Some(unfit) = unfit.filter(|_| product.verdict != Verdict::NoVerdict) {
        said.push(reason_in_words(unfit, &product.rule, &config.words));
    }
    said.extend(judged.cautions.iter().map(bear_in_mind));
    said
}

/// A caution as a sentence.
pub fn bear_in_mind(caution: &Caution) -> String {
    match caution {
        Caution::BarleyReadHigh => {
            "Such an assay reports barley gluten too high, about two to six times.".to_owned()
        }
        Caution::OatsUnseen => "In oats the test sees other grain, unevenly spread.".to_owned(),
        Caution::Tannins => "Polyphenols of cocoa, chestnut, buckwheat and the like bind gluten and can lower a figure; the lab \
             does not say that it added skimmed milk powder against that."
            .to_owned(),
        Caution::NoCocktail => "The lab does not name the cocktail extraction, without which heated food can give figures that \
             are too low."
            .to_owned(),
        Caution::CompetitiveOnWhole => {
            "A competitive assay is made for proteins in pieces, not for whole gluten.".to_owned()
        }
        Caution::MayBeInPieces(named) => {
            let shown = named.iter().take(3).map(|words| format!("“{words}”"));
            format!(
                "The label names {}: in what is fermented or hydrolysed a sandwich assay can miss gluten, so that a low figure \
                 shows less than it seems to.",
                listed(&shown.collect::<Vec<_>>())
            )
        }
    }
}

fn times(n: usize) -> String {
    match n {
        2 => "twice".to_owned(),
        n => format!("{n} times"),
    }
}

/// The assays of the readings, in the lab’s words; the programme’s where there is no reading.
pub fn assays(product: &ProductVerdict, config: &Config) -> String {
    let assays: BTreeSet<&str> = extractions(product)
        .map(|extraction| extraction.assay.as_ref())
        .collect();
    let assays: Vec<&str> = once(assays)
        .into_iter()
        .filter(|assay| !assay.is_empty())
        .collect();
    if assays.is_empty() {
        config.lab.assay.clone()
    } else {
        listed(&assays)
    }
}

/// The rule of agreement; for more than two extractions only where a package has them.
///
/// Where a package disagrees, it is said how often a sound one does.
fn allowed_difference(judged: &JudgedProduct, config: &Config) -> String {
    let packages = &judged.verdict.packages;
    let comparisons = packages.iter();
    let more: BTreeMap<usize, String> = comparisons
        .filter_map(|package| package.pair.comparison.as_ref())
        .filter(|comparison| comparison.n > 2)
        .map(|comparison| (comparison.n, format!("{:.1}", comparison.factor)))
        .collect();
    let more: String = more
        .iter()
        .map(|(n, factor)| format!("{}: {factor}{NBSP}s, ", number(*n as u64)))
        .collect();
    let disagree = |package: &PackageResult| package.pair.state == PairState::Disagree;
    let by_chance = if packages.iter().any(disagree) {
        let chance = judged.statistics.false_alarm;
        format!(" {}", false_alarm(chance, packages.len()))
    } else {
        String::new()
    };
    let mut readings = packages.iter().flat_map(|package| package.pair.usable());
    let bounds = readings.any(|one| {
        let reading = one.outcome.reading();
        reading.is_some_and(|reading| reading.as_number().is_none())
    });
    let of_bounds = if bounds {
        "; in the mean a bound stands at its point nearest to the others"
    } else {
        ""
    };
    format!(
        "Two extractions agree if no more than 2.8{NBSP}s apart ({}ISO{NBSP}5725-6), where s² = (q/10)² + \
         ({}{NBSP}% of the mean)² and q is the test’s lowest figure{of_bounds}.{by_chance}",
        more.trim_end_matches(", ").to_owned() + if more.is_empty() { "" } else { "; " },
        numbers::percent(config.testing.relative_repeatability)
    )
}

fn decision(rule: Rule) -> String {
    if rule.limit.detection {
        return "Every figure that the laboratory gives counts as a detection, however uncertain it is.".to_owned();
    }
    match rule.decision {
        Decision::Simple => {
            "No uncertainty is added or taken off (simple acceptance, ILAC-G8): a result at the limit itself is on the wrong side in up to half of all cases.".to_owned()
        }
        Decision::Guarded {
            relative_expanded_uncertainty,
        } => format!(
            "A result decides only where it still does with {}{NBSP}% added or taken off: the test’s expanded uncertainty, k = 2 (ILAC-G8).",
            numbers::percent(relative_expanded_uncertainty)
        ),
    }
}

fn extractions(product: &ProductVerdict) -> impl Iterator<Item = &Extraction> {
    let packages = product.packages.iter();
    packages
        .flat_map(|package| &package.pair.extractions)
        .map(|paired| &paired.extraction)
}

/// The same with those of the other assay, which are printed beside.
fn both_series(product: &ProductVerdict) -> impl Iterator<Item = &Extraction> {
    let packages = product.packages.iter();
    let series = packages.flat_map(PackageResult::both_series);
    series
        .flat_map(|package| &package.pair.extractions)
        .map(|paired| &paired.extraction)
}

/// The lab files that a product rests on, by path.
pub fn lab_files(product: &ProductVerdict) -> Vec<Arc<LabFile>> {
    let files: BTreeSet<Arc<LabFile>> = both_series(product)
        .map(|extraction| Arc::clone(&extraction.source.file))
        .collect();
    files.into_iter().collect()
}

/// Where the numbers come from: a sentence a lab file. Which rows of it these are, and what else stands in it, is no part
/// of what a sheet says: see [`places`].
pub fn provenance(product: &ProductVerdict) -> Vec<String> {
    lab_files(product)
        .iter()
        .map(|file| source(product, file))
        .collect()
}

/// Where in each of these files the numbers stand, and the file's checksum: "Rows 3 to 8. SHA-256 …".
pub fn places(product: &ProductVerdict) -> Vec<String> {
    lab_files(product)
        .iter()
        .map(|file| place(product, file))
        .collect()
}

fn from_file<'a>(product: &'a ProductVerdict, file: &LabFile) -> Vec<&'a Extraction> {
    both_series(product)
        .filter(|extraction| extraction.source.file.as_ref() == file)
        .collect()
}

fn place(product: &ProductVerdict, file: &LabFile) -> String {
    let rows: BTreeSet<u32> = from_file(product, file)
        .iter()
        .map(|extraction| extraction.source.row)
        .collect();
    let rows = match (rows.first(), rows.last()) {
        (Some(first), Some(last)) if first == last => format!("Row {first}"),
        (Some(first), Some(last)) => format!("Rows {first} to {last}"),
        _ => "No rows".to_owned(),
    };
    format!("{rows}. SHA-256 {}.", short_hash(&file.sha256))
}

fn source(product: &ProductVerdict, file: &LabFile) -> String {
    let from = from_file(product, file);
    let distinct = |value: fn(&Extraction) -> Option<String>| -> Vec<String> {
        let values: BTreeSet<String> = from
            .iter()
            .filter_map(|extraction| value(extraction))
            .collect();
        values.into_iter().collect()
    };
    let labs = listed(&distinct(|extraction| Some(extraction.lab.to_string())));
    let reports = distinct(|extraction| extraction.report.as_deref().map(str::to_owned));
    let days = distinct(|extraction| extraction.tested_on.map(|day| day.to_string()));
    let report = if reports.is_empty() {
        String::new()
    } else {
        format!(", report {}", listed(&reports))
    };
    let tested = match days.as_slice() {
        [] => String::new(),
        [day] => format!(", tested {day}"),
        [first, .., last] => format!(", tested {first} to {last}"),
    };
    let name = file.path.rsplit('/').next().unwrap_or(&file.path);
    format!("{}{report}{tested}. File {name}.", sentence_case(&labs))
}

/// A certificate or a photograph, as the sheet names it.
pub fn exhibit(exhibit: &Exhibit) -> String {
    let path = &exhibit.path;
    let name = path.rsplit('/').next().unwrap_or(path);
    let kind = match exhibit.kind {
        ExhibitKind::Certificate => "Certificate",
        ExhibitKind::Photograph => "Photograph",
    };
    format!("{kind} {name}. SHA-256 {}.", short_hash(&exhibit.sha256))
}

/// A hash that can be compared by eye: its first eight and last four digits.
pub fn short_hash(sha256: &str) -> String {
    match (
        sha256.get(..4),
        sha256.get(4..8),
        sha256.get(sha256.len().saturating_sub(4)..),
    ) {
        (Some(first), Some(second), Some(last)) if sha256.len() > 12 => {
            format!("{first} {second} … {last}")
        }
        _ => sha256.to_owned(),
    }
}

/// What every sheet says last.
pub fn caution(config: &Config) -> String {
    let regulator = config
        .programme
        .regulator
        .as_deref()
        .unwrap_or("authorities");
    let its = if config.programme.regulator.is_some() {
        "its"
    } else {
        "their"
    };
    format!(
        "This is not medical advice. Ask your physician or dietitian what it means for you. A gluten test is no test for wheat \
         allergy. Whether a food may be sold as gluten-free is for the {} to decide; {its} word goes before ours.",
        regulator
            .trim_start_matches("the ")
            .trim_start_matches("The ")
    )
}
