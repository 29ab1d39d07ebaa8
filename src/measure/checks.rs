//! Whether a plate is a good one: what laboratories look at before they use its figures.

use super::curve::{Curve, Level, rises, wrong_steps};
use crate::config::PlateRules;
use crate::model::plate::{
    Allowed, Check, CheckKind, Plate, ReadBack, Recomputed, StandardUnit, Stated, Wells,
};
use crate::model::ppm::twelve_digits;

/// What a well without any of the food may show at most, where more of it shows more (common practice).
const BLANK_AT_MOST: f64 = 0.2;

/// What the highest standard must show at least (common practice).
const TOP_AT_LEAST: f64 = 1.0;

/// What the zero standard must show at least where more of the food shows less (common practice for competitive assays).
const ZERO_AT_LEAST: f64 = 0.8;

/// Each standard read back on its own curve.
pub fn read_back(plate: &Plate, curve: Option<&Curve>, rules: &PlateRules) -> Vec<ReadBack> {
    let standards = plate.standards.iter().enumerate();
    standards
        .map(|(index, standard)| {
            let seen = standard.wells.mean();
            let back = curve.and_then(|curve| curve.inverse(seen?));
            let is_zero = standard.concentration.0 <= 0.0;
            let allowed = back_allowed(plate, index, rules);
            let ok = back.is_some_and(|back| {
                Allowed::Most(allowed).allows(deviation(back.0, standard.concentration.0))
            });
            ReadBack {
                back_calculated: back,
                ok: curve.is_some() && (is_zero || ok),
            }
        })
        .collect()
}

fn deviation(found: f64, stated: f64) -> f64 {
    twelve_digits((found - stated).abs() / stated)
}

/// What a standard may differ by; at both ends, zero apart, it is more.
fn back_allowed(plate: &Plate, index: usize, rules: &PlateRules) -> f64 {
    let lowest = plate
        .standards
        .iter()
        .position(|standard| standard.concentration.0 > 0.0);
    let is_end = Some(index) == lowest || index + 1 == plate.standards.len();
    match is_end {
        true => rules.back_calculated_at_ends(),
        false => rules.back_calculated,
    }
}

/// Every check that the plate has something for.
pub fn checks(
    plate: &Plate,
    levels: &[Level],
    standards: &[ReadBack],
    controls: &[Option<Recomputed>],
    rules: &PlateRules,
) -> Vec<Check> {
    let mut checks = without_curve(plate, levels, rules);
    checks.extend(back_calculated(plate, standards, rules));
    checks.extend(recovery(plate, controls, rules));
    checks
}

/// Those that need no curve.
pub fn without_curve(plate: &Plate, levels: &[Level], rules: &PlateRules) -> Vec<Check> {
    let mut checks = vec![monotone(plate, levels)];
    checks.extend(blank(plate, levels));
    checks.extend(top(plate, levels));
    checks.extend(well_cv(plate, rules));
    checks
}

fn check(
    kind: CheckKind,
    value: Option<f64>,
    allowed: Allowed,
    of: impl Into<String>,
    plate: &Plate,
    wells: &Wells,
) -> Check {
    let value = value.map(twelve_digits);
    Check {
        kind,
        ok: value.is_some_and(|value| allowed.allows(value)),
        value,
        allowed,
        in_ppm: false,
        of: of.into(),
        place: plate.place_of(wells),
    }
}

/// How many standards do not go the way of the others.
fn monotone(plate: &Plate, levels: &[Level]) -> Check {
    let wrong = wrong_steps(levels) as f64;
    let wells = Wells::default();
    check(
        CheckKind::Monotone,
        Some(wrong),
        Allowed::Most(0.0),
        "",
        plate,
        &wells,
    )
}

/// The strongest of what holds nothing: blanks, and the zero standard where more of the food shows more.
fn blank(plate: &Plate, levels: &[Level]) -> Option<Check> {
    let zero = plate
        .standards
        .first()
        .filter(|standard| rises(levels) && standard.concentration.0 <= 0.0)
        .map(|standard| (&standard.wells, named(&standard.wells)));
    let blanks = (&plate.blanks, named(&plate.blanks));
    let (wells, of, mean) = [Some(blanks), zero]
        .into_iter()
        .flatten()
        .filter_map(|(wells, of)| Some((wells, of, wells.mean()?.0)))
        .max_by(|a, b| a.2.total_cmp(&b.2))?;
    let allowed = Allowed::Most(BLANK_AT_MOST);
    Some(check(
        CheckKind::Blank,
        Some(mean),
        allowed,
        of,
        plate,
        wells,
    ))
}

/// The standard that must show most: the highest, or zero where more of the food shows less.
fn top(plate: &Plate, levels: &[Level]) -> Option<Check> {
    let (standard, least) = match rises(levels) {
        true => (plate.standards.last()?, TOP_AT_LEAST),
        false => (plate.standards.first()?, ZERO_AT_LEAST),
    };
    let mean = standard.wells.mean().map(|mean| mean.0);
    let of = named(&standard.wells);
    Some(check(
        CheckKind::Top,
        mean,
        Allowed::Least(least),
        of,
        plate,
        &standard.wells,
    ))
}

/// The wells that differ most among all that hold the same.
fn well_cv(plate: &Plate, rules: &PlateRules) -> Option<Check> {
    let standards = plate.standards.iter().map(|one| &one.wells);
    let controls = plate.controls.iter().map(|one| &one.wells);
    let samples = plate.samples.iter().map(|one| &one.wells);
    let (wells, worst) = standards
        .chain([&plate.blanks])
        .chain(controls)
        .chain(samples)
        .filter_map(|wells| Some((wells, wells.relative_deviation()?)))
        .fold(None, |worst: Option<(&Wells, f64)>, one| match worst {
            Some(worst) if worst.1 >= one.1 => Some(worst),
            _ => Some(one),
        })?;
    let allowed = Allowed::Most(rules.well_cv);
    let of = named(wells);
    Some(check(
        CheckKind::WellCv,
        Some(worst),
        allowed,
        of,
        plate,
        wells,
    ))
}

/// The standard that is farthest beyond what it may differ by, or nearest to it.
fn back_calculated(plate: &Plate, standards: &[ReadBack], rules: &PlateRules) -> Option<Check> {
    let both = plate.standards.iter().zip(standards).enumerate();
    let above_zero = both.filter(|(_, (standard, _))| standard.concentration.0 > 0.0);
    let all = above_zero.map(|(index, (standard, back))| {
        let allowed = back_allowed(plate, index, rules);
        let found = back.back_calculated;
        let differs = found.map(|found| deviation(found.0, standard.concentration.0));
        let share = differs.map_or(f64::INFINITY, |differs| differs / allowed);
        (share, differs, allowed, standard)
    });
    let (_, differs, allowed, standard) = all.reduce(|worst, one| match worst.0 >= one.0 {
        true => worst,
        false => one,
    })?;
    let of = format!("{}", standard.concentration.0);
    Some(check(
        CheckKind::BackCalculated,
        differs,
        Allowed::Most(allowed),
        of,
        plate,
        &standard.wells,
    ))
}

/// The control that is farthest beyond what it may be, or nearest to it.
fn recovery(plate: &Plate, controls: &[Option<Recomputed>], rules: &PlateRules) -> Option<Check> {
    let both = plate.controls.iter().zip(controls);
    let all = both.filter_map(|(control, read)| {
        let found = match read {
            Some(Recomputed::Figure(ppm)) => Some(ppm.0),
            _ => None,
        };
        let (value, low, high) = match control.stated? {
            Stated::Value(stated) => {
                let (low, high) = rules.recovery;
                (found.map(|found| found / stated.0), low, high)
            }
            Stated::Range(low, high) => (found, low.0, high.0),
        };
        // How far it lies from the middle, in parts of what is allowed.
        let (middle, half) = ((low + high) / 2.0, (high - low) / 2.0);
        let share = value.map_or(f64::INFINITY, |value| (value - middle).abs() / half);
        Some((share, value, Allowed::Between(low, high), control))
    });
    let (_, value, allowed, control) = all.reduce(|worst, one| match worst.0 >= one.0 {
        true => worst,
        false => one,
    })?;
    let recovered = check(
        CheckKind::Recovery,
        value,
        allowed,
        &*control.name,
        plate,
        &control.wells,
    );
    Some(Check {
        in_ppm: matches!(control.stated, Some(Stated::Range(..))),
        ..recovered
    })
}

/// The names of wells: "A1, A2".
fn named(wells: &Wells) -> String {
    wells.names().collect::<Vec<_>>().join(", ")
}

/// A reading on the curve as it is of the food.
pub fn in_food(reading: super::curve::Reading, unit: StandardUnit, dilution: f64) -> Recomputed {
    use super::curve::Reading;
    use crate::model::ppm::Ppm;
    let ppm = |concentration| Ppm(twelve_digits(unit.ppm(concentration).0 * dilution));
    match reading {
        Reading::At(found) => Recomputed::Figure(ppm(found)),
        Reading::Below(low) => Recomputed::Below(ppm(low)),
        Reading::Above(high) => Recomputed::Above(ppm(high)),
    }
}
