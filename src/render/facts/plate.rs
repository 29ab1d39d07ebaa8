//! A plate: its curve fitted again, and what its wells come to beside what the lab reported.

use crate::config::Config;
use crate::model::plate::{
    Allowed, Check, CheckKind, CurveKind, MeasuredPlate, Recomputed, StandardUnit, Stated, Weights,
    Wells,
};
use crate::model::ppm::Ppm;
use crate::model::sheet::ProgrammeFacts;
use crate::render::charts;
use crate::render::facts::DocumentFacts;
use crate::render::numbers::{NBSP, absorbance, plain, read_on_curve, short_percent, significant};
use crate::render::words::breakable;
use crate::render::{Job, JobFile, chart_name};
use crate::words::{Catalogue, say, yes_or_no};
use anyhow::Result;
use chrono::NaiveDate;
use serde::Serialize;

/// Digits of what is read on a curve.
const READ: u32 = 3;

/// Digits of the parameters of a curve.
const FITTED: u32 = 5;

/// Everything that a plate's template may see.
#[derive(Clone, Debug, Serialize)]
pub struct PlateFacts {
    /// What the PDF says about itself.
    pub document: DocumentFacts,
    /// Whose programme it is.
    pub programme: ProgrammeFacts,
    /// The first line.
    pub title: String,
    /// The plate's name.
    pub name: String,
    /// Where it stands, and what the page is worth.
    pub lede: Vec<String>,
    /// Heads of columns that name the unit.
    pub heads: PlateHeads,
    /// The curve in words, a paragraph each.
    pub curve: Vec<String>,
    /// The chart.
    pub chart: PlateChart,
    /// Concentration, wells, absorbances, mean, read back, near enough.
    pub standards: Vec<Vec<String>>,
    /// Name, wells, absorbances, stated, recomputed; empty where there are none.
    pub controls: Vec<Vec<String>>,
    /// Package, extraction, dilution, wells, absorbances, recomputed, reported, agree.
    pub samples: Vec<Vec<String>>,
    /// By row of the samples: whether it differs from what was reported.
    pub differing: Vec<bool>,
    /// Below the samples: wells of others.
    pub others: Option<String>,
    /// Check, found, allowed, near enough.
    pub checks: Vec<Vec<String>>,
}

/// Heads of columns that name the unit of the law.
#[derive(Clone, Debug, Serialize)]
pub struct PlateHeads {
    /// What a control is said to hold.
    pub stated: String,
    /// What was read on the curve.
    pub recomputed: String,
}

/// The chart on the page.
#[derive(Clone, Debug, Serialize)]
pub struct PlateChart {
    /// The name by which the template reads it.
    pub read: String,
    /// What it says, for who cannot see it.
    pub alt: String,
    /// What its marks are.
    pub key: String,
    /// Width on the page.
    pub width_mm: f64,
    /// Height on the page.
    pub height_mm: f64,
}

/// The job of typesetting a plate. `name` is that of its file; `latest` is the latest date in the results.
///
/// # Errors
/// None that data can cause: facts are text, and its chart can be drawn.
pub fn job(
    measured: &MeasuredPlate,
    name: &str,
    config: &Config,
    latest: Option<NaiveDate>,
) -> Result<Job> {
    let chart = charts::plate::plate(measured, config.rule.regime.unit(), &config.words)?;
    let shown = PlateChart {
        read: chart_name(1),
        alt: chart.alt,
        key: key(measured, &config.words),
        width_mm: chart.width_mm,
        height_mm: chart.height_mm,
    };
    let facts = facts(measured, config, shown);
    Ok(Job {
        path: format!("plates/{name}.pdf"),
        template: "plate.typ",
        one_page: false,
        ident: format!("plate {name}"),
        date: latest.unwrap_or_default(),
        facts: serde_json::to_vec(&facts)?,
        files: JobFile::charts([chart.svg]),
    })
}

fn facts(measured: &MeasuredPlate, config: &Config, chart: PlateChart) -> PlateFacts {
    let (words, unit) = (&config.words, config.rule.regime.unit());
    let plate = &measured.plate;
    let title = words.say(&say::plate_title(&*plate.name));
    let (sheet_is, sheet) = match plate.sheet.as_deref() {
        Some(sheet) => ("named", sheet),
        None => ("none", ""),
    };
    let source = say::plate_source(
        breakable(&plate.file.path, 30),
        sheet_is,
        sheet,
        plate.row.to_string(),
    );
    let others = match (plate.samples.is_empty(), plate.others) {
        (true, 0) => Some(words.say(&say::plate_no_samples())),
        (_, 0) => None,
        (_, others) => Some(words.say(&say::plate_others(others as u64))),
    };
    PlateFacts {
        document: DocumentFacts::new(
            config,
            &["plate"],
            title.clone(),
            words.say(&say::plate_about(&*plate.file.path)),
            vec![plate.name.clone()],
        ),
        programme: ProgrammeFacts::new(&config.programme),
        title,
        name: breakable(&plate.name, 40),
        lede: vec![words.say(&source), words.say(&say::plate_stands())],
        heads: PlateHeads {
            stated: words.say(&say::plate_stated(unit)),
            recomputed: words.say(&say::plate_recomputed(unit)),
        },
        curve: curve(measured, unit, words),
        chart,
        standards: standards(measured, words),
        controls: controls(measured, words),
        samples: samples(measured, words),
        differing: measured
            .samples
            .iter()
            .map(|one| one.reported.as_ref().is_some_and(|one| !one.agrees))
            .collect(),
        others,
        checks: measured
            .checks
            .iter()
            .map(|check| self::check(check, unit, words))
            .collect(),
    }
}

fn key(measured: &MeasuredPlate, words: &Catalogue) -> String {
    let has_controls = measured.controls.iter().any(Option::is_some);
    let mut samples = measured.samples.iter();
    let has_samples = samples.clone().any(|one| one.recomputed.is_some());
    let is_figure = |one: &crate::model::plate::ReadSample| {
        one.reported
            .as_ref()
            .is_some_and(|reported| reported.ppm.is_some())
    };
    words.say(&say::plate_key(
        yes_or_no(has_controls),
        yes_or_no(has_samples),
        yes_or_no(samples.any(is_figure)),
    ))
}

fn curve(measured: &MeasuredPlate, amount: &str, words: &Catalogue) -> Vec<String> {
    let unit = match measured.unit {
        StandardUnit::PpmGluten => say::plate_unit("food", amount, ""),
        StandardUnit::NgMlGliadin { factor } => {
            say::plate_unit("extract", amount, plain(Ppm(factor)))
        }
    };
    let Some(fitted) = &measured.curve else {
        return vec![words.say(&say::plate_no_curve()), words.say(&unit)];
    };
    let kind = match measured.kind {
        CurveKind::FourParameters => "four",
        CurveKind::FiveParameters => "five",
        CurveKind::CubicSpline => "spline",
        CurveKind::PointToPoint => "straight",
    };
    let weights = match measured.weights {
        Weights::None => "none",
        Weights::InverseSquare => "square",
    };
    let shown = |figure: f64| significant(figure, FITTED);
    let parameters = fitted.parameters.map(|found| {
        say::plate_parameters(
            shown(found.a),
            shown(found.b),
            shown(found.c),
            shown(found.d),
            yes_or_no(found.g.is_some()),
            found.g.map(shown).unwrap_or_default(),
        )
    });
    let residual = fitted
        .residual_sd
        .map(|sd| say::plate_residual(significant(sd, READ)));
    let all = [
        Some(say::plate_curve(kind, weights)),
        Some(unit),
        parameters,
        residual,
    ];
    all.iter().flatten().map(|said| words.say(said)).collect()
}

fn standards(measured: &MeasuredPlate, words: &Catalogue) -> Vec<Vec<String>> {
    let plate = &measured.plate;
    let figure = |shown: String| words.locale().figure(&shown);
    let both = plate.standards.iter().zip(&measured.standards);
    let mut rows: Vec<Vec<String>> = both
        .map(|(standard, back)| {
            let is_zero = standard.concentration.0 <= 0.0;
            let read = back
                .back_calculated
                .map(|found| figure(read_on_curve(found.0)));
            let ok = match is_zero || measured.curve.is_none() {
                true => dash(),
                false => words.say(&say::plate_ok(yes_or_no(back.ok))),
            };
            let mut row = vec![figure(plain(Ppm(standard.concentration.0)))];
            row.extend(wells(&standard.wells, words));
            row.extend([read.unwrap_or_else(dash), ok]);
            row
        })
        .collect();
    if !plate.blanks.0.is_empty() {
        let mut row = vec![words.say(&say::plate_blanks())];
        row.extend(wells(&plate.blanks, words));
        row.extend([dash(), dash()]);
        rows.push(row);
    }
    rows
}

/// Names, absorbances and their mean.
fn wells(wells: &Wells, words: &Catalogue) -> [String; 3] {
    let figure = |y: f64| words.locale().figure(&absorbance(y));
    let each: Vec<String> = wells
        .0
        .iter()
        .map(|well| figure(well.absorbance.0))
        .collect();
    [
        wells.names().collect::<Vec<_>>().join(" "),
        each.join(" "),
        wells.mean().map_or_else(dash, |mean| figure(mean.0)),
    ]
}

fn controls(measured: &MeasuredPlate, words: &Catalogue) -> Vec<Vec<String>> {
    let both = measured.plate.controls.iter().zip(&measured.controls);
    both.map(|(control, found)| {
        let figure = |ppm: Ppm| words.locale().figure(&plain(ppm));
        let stated = match control.stated {
            Some(Stated::Value(ppm)) => figure(ppm),
            Some(Stated::Range(low, high)) => format!("{}–{}", figure(low), figure(high)),
            None => dash(),
        };
        let [names, each, mean] = wells(&control.wells, words);
        let name = breakable(&control.name, 24);
        vec![name, names, each, mean, stated, recomputed(*found, words)]
    })
    .collect()
}

fn samples(measured: &MeasuredPlate, words: &Catalogue) -> Vec<Vec<String>> {
    let both = measured.plate.samples.iter().zip(&measured.samples);
    both.map(|(sample, found)| {
        let reported = found.reported.as_ref();
        let agrees = match reported.map(|reported| reported.agrees) {
            Some(agrees) => yes_or_no(agrees),
            None => "unsaid",
        };
        let number = sample.extraction.map(|number| number.to_string());
        let dilution = format!("1:{}", plain(Ppm(sample.dilution)));
        let [names, each, _] = wells(&sample.wells, words);
        vec![
            breakable(&sample.package_code, 12),
            number.unwrap_or_else(dash),
            words.locale().figure(&dilution),
            names,
            each,
            recomputed(found.recomputed, words),
            reported.map_or_else(dash, |reported| breakable(&reported.text, 14)),
            words.say(&say::plate_agrees(agrees)),
        ]
    })
    .collect()
}

fn recomputed(found: Option<Recomputed>, words: &Catalogue) -> String {
    let shown = match found {
        Some(Recomputed::Figure(ppm)) => read_on_curve(ppm.0),
        Some(Recomputed::Below(ppm)) => format!("<{}", plain(ppm)),
        Some(Recomputed::Above(ppm)) => format!(">{}", plain(ppm)),
        None => return dash(),
    };
    words.locale().figure(&shown)
}

fn check(check: &Check, unit: &str, words: &Catalogue) -> Vec<String> {
    let is_share = match check.kind {
        CheckKind::WellCv | CheckKind::BackCalculated => true,
        CheckKind::Recovery => !check.in_ppm,
        CheckKind::Monotone | CheckKind::Blank | CheckKind::Top => false,
    };
    let shown = |value: f64| {
        let figure = match (is_share, check.in_ppm) {
            (true, _) => format!("{}{NBSP}%", short_percent(value)),
            (_, true) => format!("{}{NBSP}{unit}", read_on_curve(value)),
            _ => significant(value, READ),
        };
        words.locale().figure(&figure)
    };
    let allowed = match check.allowed {
        Allowed::Most(most) => words.say(&say::plate_at_most(shown(most))),
        Allowed::Least(least) => words.say(&say::plate_at_least(shown(least))),
        Allowed::Between(low, high) => words.say(&say::range_in_text(shown(low), shown(high))),
    };
    let found = check.value.map_or_else(dash, shown);
    let of = match check.kind {
        CheckKind::BackCalculated => words.locale().figure(&check.of),
        _ => breakable(&check.of, 24),
    };
    let found = if of.is_empty() {
        found
    } else {
        format!("{found} ({of})")
    };
    vec![
        words.say(&say::plate_check_name(check.kind.word())),
        found,
        allowed,
        words.say(&say::plate_ok(yes_or_no(check.ok))),
    ]
}

/// In the place of a figure.
fn dash() -> String {
    "–".to_owned()
}
