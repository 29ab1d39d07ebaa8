//! The plates of `results.json`.

use crate::model::decided::Decided;
use crate::model::plate::{Allowed, MeasuredPlate, ReadSample, Recomputed, Sample, Wells};
use crate::model::results::{Plate, PlateAllowed, PlateCheck, PlateSample, PlateStandard};
use std::borrow::Cow;
use std::collections::BTreeMap;

/// Every plate, by file and place.
pub fn plates(decided: &Decided) -> Vec<Plate<'_>> {
    decided.plates.iter().map(plate).collect()
}

fn plate(measured: &MeasuredPlate) -> Plate<'_> {
    let plate = &measured.plate;
    let both = plate.standards.iter().zip(&measured.standards);
    let standards = both.map(|(standard, back)| PlateStandard {
        concentration: standard.concentration.0,
        absorbances: absorbances(&standard.wells),
        back_calculated: back.back_calculated.map(|back| back.0),
        ok: back.ok,
    });
    let checks = measured.checks.iter().map(|check| PlateCheck {
        name: check.kind.word().into(),
        ok: check.ok,
        value: check.value,
        allowed: match check.allowed {
            Allowed::Most(bound) | Allowed::Least(bound) => PlateAllowed::Bound(bound),
            Allowed::Between(low, high) => PlateAllowed::Between([low, high]),
        },
    });
    let samples = plate.samples.iter().zip(&measured.samples);
    Plate {
        file: plate.file.path.as_str().into(),
        sheet: plate.sheet.as_deref().map(Into::into),
        plate: plate.name.as_str().into(),
        curve: measured.kind.word().into(),
        parameters: parameters(measured),
        residual_sd: measured.curve.as_ref().and_then(|curve| curve.residual_sd),
        standards: standards.collect(),
        checks: checks.collect(),
        samples: samples.map(|(sample, read)| row(sample, read)).collect(),
    }
}

fn absorbances(wells: &Wells) -> Vec<f64> {
    wells.0.iter().map(|well| well.absorbance.0).collect()
}

fn parameters(measured: &MeasuredPlate) -> BTreeMap<Cow<'_, str>, f64> {
    let Some(found) = measured.curve.as_ref().and_then(|curve| curve.parameters) else {
        return BTreeMap::new();
    };
    let four = [
        ("A", found.a),
        ("B", found.b),
        ("C", found.c),
        ("D", found.d),
    ];
    let fifth = found.g.map(|g| ("G", g));
    let all = four.into_iter().chain(fifth);
    all.map(|(name, value)| (name.into(), value)).collect()
}

fn row<'a>(sample: &'a Sample, read: &'a ReadSample) -> PlateSample<'a> {
    let (ppm, lower, upper) = match read.recomputed {
        Some(Recomputed::Figure(ppm)) => (Some(ppm), Some(ppm), Some(ppm)),
        Some(Recomputed::Below(ppm)) => (None, Some(Default::default()), Some(ppm)),
        Some(Recomputed::Above(ppm)) => (None, Some(ppm), None),
        None => (None, None, None),
    };
    let reported = read.reported.as_ref();
    PlateSample {
        package_code: sample.package_code.as_str().into(),
        extraction: sample.extraction,
        dilution: sample.dilution,
        absorbances: absorbances(&sample.wells),
        ppm: ppm.map(|ppm| ppm.0),
        lower_ppm: lower.map(|ppm| ppm.0),
        upper_ppm: upper.map(|ppm| ppm.0),
        reported_ppm: reported.and_then(|reported| reported.ppm).map(|ppm| ppm.0),
        agrees: reported.map(|reported| reported.agrees),
    }
}
