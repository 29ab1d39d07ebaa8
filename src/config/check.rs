//! From what was typed to what a run may rely on: every fault is collected, none is replaced by a default.

use super::raw::{Raw, RawLayout, RawProgramme, RawRule, RawTesting};
use super::{Config, Lab, Layout, LayoutColumn, Paper, Programme, Testing, unknown};
use crate::model::extraction::AssayKind;
use crate::model::ppm::Ppm;
use crate::model::rule::{Decision, Limit, Regime, Rule};
use serde::Deserialize;
use std::path::Path;

type Faults = Vec<String>;

/// Checks the text of a `programme.toml`.
pub fn check(text: &str, root: &Path) -> Result<Config, Faults> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let table = toml::de::DeTable::parse(text).map_err(|error| vec![describe(text, &error)])?;
    let mut faults = unknown::faults(text, table.get_ref());
    let raw = match Raw::deserialize(toml::de::Deserializer::from(table)) {
        Ok(raw) => raw,
        Err(error) => {
            faults.push(describe(text, &error));
            return Err(faults);
        }
    };
    let programme = programme(raw.programme, &mut faults);
    let rule = rule(&raw.rule, &mut faults);
    let testing = testing(&raw.testing, &mut faults);
    let lab = Lab {
        name: given(raw.lab.name).unwrap_or_else(|| "the laboratory".to_owned()),
        assay: given(raw.lab.assay)
            .unwrap_or_else(|| "sandwich R5 ELISA, cocktail extraction".to_owned()),
        assay_kind: assay_kind(raw.lab.assay_kind.as_deref(), &mut faults),
    };
    let layouts = raw
        .layout
        .iter()
        .enumerate()
        .map(|(index, raw)| layout(index + 1, raw, &mut faults))
        .collect();
    if !faults.is_empty() {
        return Err(faults);
    }
    Ok(Config {
        root: root.to_owned(),
        programme,
        rule,
        testing,
        lab,
        layouts,
    })
}

fn describe(text: &str, error: &toml::de::Error) -> String {
    match error.span() {
        Some(span) => format!(
            "line {}: {}",
            unknown::line_of(text, span.start),
            error.message()
        ),
        None => error.message().to_owned(),
    }
}

/// A text that says something.
fn given(text: Option<String>) -> Option<String> {
    text.map(|text| text.trim().to_owned())
        .filter(|text| !text.is_empty())
}

fn programme(raw: RawProgramme, faults: &mut Faults) -> Programme {
    let required = |key: &str, value: Option<String>, faults: &mut Faults| {
        given(value).unwrap_or_else(|| {
            faults.push(format!("[programme] needs `{key}`"));
            String::new()
        })
    };
    let short_name = required("short_name", raw.short_name, faults);
    if !short_name
        .chars()
        .all(|c| c.is_ascii_alphanumeric() || c == '-')
    {
        faults.push(format!("[programme] short_name is `{short_name}`: only letters A to Z, digits and '-' can be used"));
    }
    Programme {
        name: required("name", raw.name, faults),
        short_name,
        email: given(raw.email),
        address: given(raw.address),
        website: given(raw.website),
        director: given(raw.director),
        regulator: given(raw.regulator),
        corrections: given(raw.corrections),
        reply_days: days("reply_days", raw.reply_days, 15, faults),
        publish_days: days("publish_days", raw.publish_days, 22, faults),
        statement: given(raw.statement),
        retained: given(raw.retained),
        paper: word(
            "[programme] paper",
            raw.paper.as_deref(),
            &[(Paper::A4, "a4"), (Paper::UsLetter, "us-letter")],
            faults,
        ),
    }
}

fn days(key: &str, value: Option<i64>, default: u32, faults: &mut Faults) -> u32 {
    let Some(value) = value else { return default };
    u32::try_from(value)
        .ok()
        .filter(|days| (1..=3650).contains(days))
        .unwrap_or_else(|| {
            faults.push(format!(
                "[programme] {key} is {value}: a number of days from 1 to 3650 is needed"
            ));
            default
        })
}

/// One of several words; the first where nothing is said.
fn word<T: Copy>(key: &str, found: Option<&str>, words: &[(T, &str)], faults: &mut Faults) -> T {
    let Some(found) = found else {
        return words[0].0;
    };
    match words.iter().find(|(_, word)| *word == found) {
        Some((value, _)) => *value,
        None => {
            let known: Vec<&str> = words.iter().map(|(_, word)| *word).collect();
            faults.push(format!(
                "{key} is `{found}`: it can be {}",
                known.join(", ")
            ));
            words[0].0
        }
    }
}

fn assay_kind(found: Option<&str>, faults: &mut Faults) -> AssayKind {
    let words = [
        (AssayKind::Sandwich, "sandwich"),
        (AssayKind::Competitive, "competitive"),
    ];
    word("[lab] assay_kind", found, &words, faults)
}

fn rule(raw: &RawRule, faults: &mut Faults) -> Rule {
    let regime = word("[rule] regime", raw.regime.as_deref(), Regime::ALL, faults);
    let ppm = positive("[rule] limit_ppm", raw.limit_ppm, faults).map(Ppm);
    let limit = match (regime.limit(), ppm) {
        (Some(own), ppm) => Limit {
            ppm: ppm.unwrap_or(own.ppm),
            passes: own.passes,
        },
        (None, Some(ppm)) => Limit {
            ppm,
            passes: raw.limit_passes.unwrap_or(false),
        },
        (None, None) => {
            if raw.limit_ppm.is_none() {
                faults.push("[rule] regime is `custom`: then `limit_ppm` is needed".to_owned());
            }
            Limit {
                ppm: Ppm(20.0),
                passes: false,
            }
        }
    };
    if raw.limit_passes.is_some() && regime != Regime::Custom {
        faults.push(format!(
            "[rule] limit_passes can be given with regime `custom` only: `{}` settles it itself",
            regime.word()
        ));
    }
    Rule {
        regime,
        limit,
        decision: decision(raw, faults),
    }
}

fn decision(raw: &RawRule, faults: &mut Faults) -> Decision {
    let uncertainty = positive(
        "[rule] relative_expanded_uncertainty",
        raw.relative_expanded_uncertainty,
        faults,
    );
    match raw.decision.as_deref() {
        None | Some("simple") => Decision::Simple,
        Some("guarded") => match uncertainty {
            Some(fraction) if fraction < 1.0 => Decision::Guarded {
                relative_expanded_uncertainty: fraction,
            },
            Some(fraction) => {
                faults.push(format!(
                    "[rule] relative_expanded_uncertainty is {fraction}: a fraction below 1 is needed (0.30 is 30 %)"
                ));
                Decision::Simple
            }
            None => {
                faults.push(
                    "[rule] decision is `guarded`: then `relative_expanded_uncertainty` is needed, as a fraction (0.30 is 30 %, k = 2)"
                        .to_owned(),
                );
                Decision::Simple
            }
        },
        Some(found) => {
            faults.push(format!(
                "[rule] decision is `{found}`: it can be simple, guarded"
            ));
            Decision::Simple
        }
    }
}

/// A number above 0, where one is given.
fn positive(key: &str, found: Option<f64>, faults: &mut Faults) -> Option<f64> {
    let found = found?;
    if found.is_finite() && found > 0.0 {
        return Some(found);
    }
    faults.push(format!("{key} is {found}: a number above 0 is needed"));
    None
}

fn testing(raw: &RawTesting, faults: &mut Faults) -> Testing {
    let lloq = positive("[testing] lloq_ppm", raw.lloq_ppm, faults).unwrap_or(5.0);
    let uloq =
        positive("[testing] uloq_ppm", raw.uloq_ppm, faults).unwrap_or(f64::max(80.0, lloq * 2.0));
    if uloq <= lloq {
        faults.push(format!(
            "[testing] uloq_ppm is {uloq}: it must be above lloq_ppm ({lloq})"
        ));
    }
    let repeatability = positive(
        "[testing] relative_repeatability",
        raw.relative_repeatability,
        faults,
    );
    if let Some(fraction) = repeatability.filter(|fraction| *fraction >= 1.0) {
        faults.push(format!(
            "[testing] relative_repeatability is {fraction}: a fraction below 1 is needed (0.15 is 15 %)"
        ));
    }
    Testing {
        packages_per_product: whole(
            "packages_per_product",
            raw.packages_per_product,
            1,
            3,
            faults,
        ),
        extractions_per_package: whole(
            "extractions_per_package",
            raw.extractions_per_package,
            2,
            2,
            faults,
        ),
        lloq: Ppm(lloq),
        lod: Ppm(positive("[testing] lod_ppm", raw.lod_ppm, faults).unwrap_or(3.0)),
        uloq: Ppm(uloq),
        relative_repeatability: repeatability.unwrap_or(0.15),
    }
}

fn whole(
    key: &str,
    found: Option<i64>,
    least: usize,
    default: usize,
    faults: &mut Faults,
) -> usize {
    let Some(found) = found else { return default };
    usize::try_from(found)
        .ok()
        .filter(|n| (least..=1000).contains(n))
        .unwrap_or_else(|| {
            let why = if key == "extractions_per_package" {
                ": nothing is decided on one extraction"
            } else {
                ""
            };
            faults.push(format!(
                "[testing] {key} is {found}: a whole number from {least} to 1000 is needed{why}"
            ));
            default
        })
}

fn layout(number: usize, raw: &RawLayout, faults: &mut Faults) -> Layout {
    let at = format!("[[layout]] number {number}");
    let files = given(raw.files.clone()).unwrap_or_else(|| {
        faults.push(format!(
            "{at} needs `files`: a pattern such as \"FH-*.xlsx\""
        ));
        String::new()
    });
    let mut columns = Vec::new();
    for (key, heading) in &raw.columns {
        match layout_column(key) {
            Some(column) => columns.push((column, heading.clone())),
            None => {
                let nearest = unknown::nearest(key, &LAYOUT_WORDS.map(|(_, word)| word));
                faults.push(format!(
                    "{at}: unknown column `{key}`; the nearest known one is `{nearest}`"
                ));
            }
        }
    }
    let has = |wanted: fn(&LayoutColumn) -> bool| columns.iter().any(|(column, _)| wanted(column));
    if !has(|column| *column == LayoutColumn::Sample) {
        faults.push(format!("{at} needs the column `sample`"));
    }
    if !has(|column| matches!(column, LayoutColumn::Result | LayoutColumn::ResultOf(_))) {
        faults.push(format!("{at} needs the column `result`, or `result_1`, `result_2` … where extractions stand side by side"));
    }
    let header_row = raw.header_row.and_then(|row| {
        u32::try_from(row).ok().filter(|row| *row > 0).or_else(|| {
            faults.push(format!(
                "{at}: header_row is {row}: rows are counted from 1"
            ));
            None
        })
    });
    Layout {
        files,
        sheet: given(raw.sheet.clone()),
        header_row,
        columns,
    }
}

const LAYOUT_WORDS: [(LayoutColumn, &str); 10] = [
    (LayoutColumn::Sample, "sample"),
    (LayoutColumn::Extraction, "extraction"),
    (LayoutColumn::Result, "result"),
    (LayoutColumn::Unit, "unit"),
    (LayoutColumn::Lloq, "lloq"),
    (LayoutColumn::TestedOn, "tested_on"),
    (LayoutColumn::Report, "report"),
    (LayoutColumn::Assay, "assay"),
    (LayoutColumn::Dilution, "dilution"),
    (LayoutColumn::Remark, "remark"),
];

fn layout_column(key: &str) -> Option<LayoutColumn> {
    if let Some(number) = key.strip_prefix("result_") {
        return number
            .parse()
            .ok()
            .filter(|n| (1..=99).contains(n))
            .map(LayoutColumn::ResultOf);
    }
    LAYOUT_WORDS
        .iter()
        .find(|(_, word)| *word == key)
        .map(|(column, _)| *column)
}

#[cfg(test)]
mod tests {
    use super::*;

    const LEAST: &str = "[programme]\nname = \"Tidewater Kitchen Watch\"\nshort_name = \"TKW\"\n";

    fn parse(rest: &str) -> Result<Config, Faults> {
        check(&format!("{LEAST}{rest}"), Path::new("."))
    }

    #[test]
    fn the_least_that_is_needed_gives_the_defaults() {
        let config = parse("").expect("is enough");
        assert_eq!(config.rule.regime, Regime::Us);
        assert_eq!(config.testing.packages_per_product, 3);
        assert_eq!(config.testing.lloq, Ppm(5.0));
        assert_eq!(config.programme.reply_days, 15);
    }

    #[test]
    fn an_unknown_key_is_named_with_its_line_and_the_nearest() {
        let faults = parse("[rule]\nlimit_pmm = 20.0\n[tests]\n").expect_err("two unknown words");
        assert_eq!(
            faults,
            [
                "line 5: unknown key in [rule]: `limit_pmm`; the nearest known one is `limit_ppm`",
                "line 6: unknown section or key: `tests`; the nearest known one is `testing`",
            ]
        );
    }

    #[test]
    fn all_faults_are_named_at_once() {
        let faults = parse("[rule]\nregime = \"custom\"\ndecision = \"guarded\"\n[testing]\nextractions_per_package = 1\n")
            .expect_err("three faults");
        assert_eq!(faults.len(), 3, "{faults:#?}");
    }

    #[test]
    fn a_regime_brings_its_limit_and_custom_its_own() {
        let eu = parse("[rule]\nregime = \"eu\"\n").expect("reads");
        assert!(eu.rule.limit.passes);
        let own = parse("[rule]\nregime = \"custom\"\nlimit_ppm = 10\nlimit_passes = true\n")
            .expect("reads");
        assert_eq!(
            own.rule.limit,
            Limit {
                ppm: Ppm(10.0),
                passes: true
            }
        );
    }

    #[test]
    fn layout_columns_are_checked() {
        let layout = "[[layout]]\nfiles = \"*.xlsx\"\ncolumns = { sample = \"Ref\", result_1 = \"A\", result_2 = \"B\" }\n";
        let config = parse(layout).expect("reads");
        assert_eq!(config.layouts[0].columns.len(), 3);
        let faults = parse("[[layout]]\nfiles = \"*\"\ncolumns = { sampel = \"Ref\" }\n")
            .expect_err("faults");
        assert!(
            faults[0].contains("nearest known one is `sample`"),
            "{faults:#?}"
        );
    }
}
