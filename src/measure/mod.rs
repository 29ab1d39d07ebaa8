//! Plates -> curves fitted again, and what each well comes to: beside what the lab reported, and never in its place.
//!
//! Pure: no files, no clock. Logarithms and powers are those of the `libm` crate, which are the same on every machine.

/// Least squares.
pub mod least_squares;

/// Curves of four and five parameters.
pub mod logistic;

/// Cubic splines.
pub mod spline;

/// The curve through the standards.
pub mod curve;

/// Whether a plate is a good one.
pub mod checks;

/// What the lab reported, held against it.
mod reported;

use crate::config::{Config, PlateRules};
use crate::model::extraction::{AssayKind, Extraction};
use crate::model::plate::{
    Allowed, Check, CheckKind, MeasuredPlate, Plate, ReadSample, Recomputed, Reported, Sample,
    Wells,
};
use crate::model::ppm::Ppm;
use crate::model::problem::{Code, Problems};
use crate::model::registers::Correction;
use crate::model::said::Said;
use crate::words::say;
use checks::in_food;
use curve::{Level, NoCurve};
use reported::ByExtraction;

/// Fits the curve of each plate again and reads its wells. What does not agree, or is no good plate, is a warning.
pub fn measure(
    plates: Vec<Plate>,
    (extractions, corrections): (&[Extraction], &[Correction]),
    config: &Config,
    problems: &mut Problems,
) -> Vec<MeasuredPlate> {
    if plates.is_empty() {
        return Vec::new();
    }
    let reported = ByExtraction::new(extractions, corrections);
    plates
        .into_iter()
        .map(|plate| {
            let measured = one(plate, &reported, &config.plate, problems);
            tell(&measured, config.rule.regime.unit(), problems);
            measured
        })
        .collect()
}

fn one(
    plate: Plate,
    reported: &ByExtraction<'_>,
    rules: &PlateRules,
    problems: &mut Problems,
) -> MeasuredPlate {
    let levels: Vec<Level> = plate
        .standards
        .iter()
        .filter_map(|standard| {
            Some(Level {
                concentration: standard.concentration,
                absorbance: standard.wells.mean()?,
            })
        })
        .collect();
    let curve = curve::fit(rules.curve, rules.weights, &levels);
    let curve = curve.map_err(|why| tell_of_no_curve(&plate, why, levels.len(), rules, problems));
    let curve = curve.ok();
    let kind = match curve::rises(&levels) {
        true => AssayKind::Sandwich,
        false => AssayKind::Competitive,
    };
    let read = |wells: &Wells, dilution: f64| -> Option<Recomputed> {
        let reading = curve.as_ref()?.read(wells.mean()?);
        Some(in_food(reading, rules.standards, dilution))
    };
    let standards = checks::read_back(&plate, curve.as_ref(), rules);
    let controls: Vec<_> = plate
        .controls
        .iter()
        .map(|control| read(&control.wells, control.dilution))
        .collect();
    let samples = plate.samples.iter().map(|sample| {
        let recomputed = read(&sample.wells, sample.dilution);
        let held = |found| reported.held_against(sample, &plate, kind, found);
        ReadSample {
            recomputed,
            reported: recomputed.and_then(held),
        }
    });
    MeasuredPlate {
        kind: rules.curve,
        weights: rules.weights,
        unit: rules.standards,
        samples: samples.collect(),
        checks: match &curve {
            Some(_) => checks::checks(&plate, &levels, &standards, &controls, rules),
            None => checks::without_curve(&plate, &levels, rules),
        },
        curve: curve.as_ref().map(curve::Curve::told),
        standards,
        controls,
        plate,
    }
}

fn tell_of_no_curve(
    plate: &Plate,
    why: NoCurve,
    standards: usize,
    rules: &PlateRules,
    problems: &mut Problems,
) {
    let curve = rules.curve.word();
    let found = match why {
        NoCurve::TooFew(needed) => {
            say::found_plate_standards(&*plate.name, standards as u64, curve, needed as u64)
        }
        NoCurve::NotMonotone => say::found_plate_no_curve(&*plate.name, "monotone", curve),
        NoCurve::NotFitted => say::found_plate_no_curve(&*plate.name, "fitted", curve),
        NoCurve::NoWeight => say::found_plate_no_curve(&*plate.name, "weights", curve),
    };
    problems.add(
        Code::PlateUnreadable,
        plate.place(),
        found,
        say::do_plate_curve(),
    );
}

/// Checks that failed, and samples that were reported otherwise.
fn tell(measured: &MeasuredPlate, unit: &str, problems: &mut Problems) {
    for check in measured.checks.iter().filter(|check| !check.ok) {
        problems.add(
            Code::PlateQuality,
            check.place.clone(),
            failed(measured, check, unit),
            say::do_plate_quality(),
        );
    }
    let samples = measured.plate.samples.iter().zip(&measured.samples);
    for (sample, read) in samples {
        if let (Some(found), Some(reported)) = (read.recomputed, &read.reported)
            && !reported.agrees
        {
            problems.add(
                Code::PlateDiffers,
                measured.plate.place_of(&sample.wells),
                differs(sample, found, reported, unit),
                say::do_plate_differs(),
            );
        }
    }
}

/// A check that failed, in words: each names its check, what was found and what is allowed.
fn failed(measured: &MeasuredPlate, check: &Check, unit: &str) -> Said {
    let (plate, of) = (measured.plate.name.as_str(), check.of.as_str());
    let read = if check.value.is_some() { "yes" } else { "no" };
    let found = check.value.unwrap_or_default();
    let (low, high) = match check.allowed {
        Allowed::Most(bound) | Allowed::Least(bound) => (bound, bound),
        Allowed::Between(low, high) => (low, high),
    };
    let percent = |share: f64| short(share * 100.0);
    match check.kind {
        CheckKind::Monotone => say::found_plate_monotone(plate, found as u64),
        CheckKind::Blank => say::found_plate_blank(plate, of, short(found), short(high)),
        CheckKind::Top => say::found_plate_top(plate, of, short(found), short(low)),
        CheckKind::WellCv => say::found_plate_wells(plate, of, percent(found), percent(high)),
        CheckKind::BackCalculated => {
            say::found_plate_standard(plate, of, read, percent(found), percent(high))
        }
        CheckKind::Recovery => {
            let (stated, shown): (_, &dyn Fn(f64) -> String) = match check.in_ppm {
                true => ("range", &short),
                false => ("value", &percent),
            };
            let [found, low, high] = [found, low, high].map(shown);
            say::found_plate_control(plate, of, read, stated, found, low, high, unit)
        }
    }
}

fn differs(sample: &Sample, found: Recomputed, reported: &Reported, unit: &str) -> Said {
    let (is, ppm) = match found {
        Recomputed::Figure(ppm) => ("figure", ppm),
        Recomputed::Below(ppm) => ("below", ppm),
        Recomputed::Above(ppm) => ("above", ppm),
    };
    let number = sample.extraction.map(|number| number.to_string());
    say::found_plate_differs(
        &*sample.package_code,
        number.unwrap_or_default(),
        is,
        ppm_words(ppm),
        unit,
        &*reported.text,
        reported.place.clone(),
    )
}

/// A figure of ppm with one decimal, which is what most labs report.
fn ppm_words(ppm: Ppm) -> String {
    match ppm.0.fract() == 0.0 || ppm.0 >= 1000.0 {
        true => format!("{:.0}", ppm.0),
        false => format!("{:.1}", ppm.0),
    }
}

/// A figure in three digits, and without zeros at its end.
fn short(figure: f64) -> String {
    let rounded: f64 = format!("{figure:.2e}").parse().unwrap_or(figure);
    format!("{rounded}")
}
