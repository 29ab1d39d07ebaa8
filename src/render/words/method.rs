//! How was tested and decided, where the numbers come from, and the caution that every sheet carries.

use crate::config::Config;
use crate::model::extraction::Extraction;
use crate::model::place::LabFile;
use crate::model::rule::Decision;
use crate::model::verdict::ProductVerdict;
use crate::render::numbers::{self, NBSP};
use crate::render::words::limit::LimitWords;
use crate::render::words::{full_stop, listed, sentence_case};
use std::collections::BTreeSet;
use std::sync::Arc;

/// How was tested and decided: sentences for one paragraph.
pub fn method(product: &ProductVerdict, config: &Config) -> Vec<String> {
    let limit = LimitWords::of(config.rule);
    let mut said = vec![
        format!(
            "{}; each package extracted {}.",
            sentence_case(assays(product, config).trim_end_matches('.')),
            times(config.testing.extractions_per_package)
        ),
        allowed_difference(config),
        "A package’s result is the mean of its extractions; “<n” stands for any value below n."
            .to_owned(),
        format!(
            "Nothing is rounded first. One package {} decides the product.",
            limit.over_the_limit()
        ),
        decision(config.rule.decision),
        limit.source(),
    ];
    if let Some(unfit) = &product.method_unfit {
        said.push(full_stop(&sentence_case(unfit.trim())));
    }
    said
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
    let assays: Vec<&str> = assays
        .into_iter()
        .filter(|assay| !assay.is_empty())
        .collect();
    if assays.is_empty() {
        config.lab.assay.clone()
    } else {
        listed(&assays)
    }
}

fn allowed_difference(config: &Config) -> String {
    format!(
        "Two extractions agree if they differ by no more than 2.8 s (three: 3.3 s, four: 3.6 s; ISO 5725-6), where s² = \
         (q/10)² + ({}{NBSP}% of the mean)² and q is the lowest figure that the test reports.",
        numbers::percent(config.testing.relative_repeatability)
    )
}

fn decision(decision: Decision) -> String {
    match decision {
        Decision::Simple => {
            "No uncertainty is added or taken off (simple acceptance, ILAC-G8).".to_owned()
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

/// The lab files that a product rests on, by path.
pub fn lab_files(product: &ProductVerdict) -> Vec<Arc<LabFile>> {
    let files: BTreeSet<Arc<LabFile>> = extractions(product)
        .map(|extraction| Arc::clone(&extraction.source.file))
        .collect();
    files.into_iter().collect()
}

/// Where the numbers come from: a sentence a lab file.
pub fn provenance(product: &ProductVerdict) -> Vec<String> {
    lab_files(product)
        .iter()
        .map(|file| source(product, file))
        .collect()
}

fn source(product: &ProductVerdict, file: &LabFile) -> String {
    let from: Vec<&Extraction> = extractions(product)
        .filter(|extraction| extraction.source.file.as_ref() == file)
        .collect();
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
    let rows: BTreeSet<u32> = from
        .iter()
        .map(|extraction| extraction.source.row)
        .collect();
    let rows = match (rows.first(), rows.last()) {
        (Some(first), Some(last)) if first == last => format!("row {first}"),
        (Some(first), Some(last)) => format!("rows {first} to {last}"),
        _ => "no rows".to_owned(),
    };
    format!(
        "{}{report}{tested}. File {name}, {rows}. SHA-256 {}.",
        sentence_case(&labs),
        short_hash(&file.sha256)
    )
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
