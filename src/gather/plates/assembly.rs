//! The wells of a plate, brought together by what they hold: standards, blanks, controls, samples.

use super::contents::Contents;
use super::{Fault, RawPlate, RawWell, Reading};
use crate::model::plate::{
    Absorbance, Concentration, Control, Plate, Sample, Standard, Well, Wells,
};
use crate::model::problem::Problems;
use std::collections::{BTreeMap, BTreeSet};

/// A plate of its wells; none where what was fitted to them would not be what the lab fitted, which is told.
pub(super) fn plate(
    raw: RawPlate<'_>,
    number: usize,
    reading: &Reading<'_>,
    problems: &mut Problems,
) -> Option<Plate> {
    let lost = lost(&raw, reading, problems)?;
    let mut plate = Plate {
        file: reading.file.clone(),
        sheet: raw.sheet.name.clone(),
        name: raw.name.unwrap_or_else(|| number.to_string()),
        row: raw.row,
        standards: Vec::new(),
        blanks: Wells::default(),
        controls: Vec::new(),
        samples: Vec::new(),
        others: 0,
    };
    for raw in raw.wells {
        let Ok(absorbance) = raw.absorbance else {
            continue;
        };
        let well = Well {
            name: raw.name,
            absorbance: Absorbance(absorbance),
            row: raw.row,
            column: raw.column,
        };
        plate.take(well, raw.contents, &lost);
    }
    plate
        .standards
        .sort_by(|a, b| a.concentration.0.total_cmp(&b.concentration.0));
    Some(plate)
}

/// Package and extraction.
type Extracted = (String, Option<u32>);

/// What of the samples is not read, since a well of theirs is not understood. None where the plate as a whole is not read.
fn lost(
    raw: &RawPlate<'_>,
    reading: &Reading<'_>,
    problems: &mut Problems,
) -> Option<BTreeSet<Extracted>> {
    let (mut lost, mut whole) = (BTreeSet::new(), true);
    let mut names: BTreeSet<&str> = BTreeSet::new();
    let mut unnumbered: BTreeMap<&str, &RawWell> = BTreeMap::new();
    let place = |well: &RawWell| reading.place(raw.sheet, well.row, Some(well.column));
    for well in &raw.wells {
        if !names.insert(&well.name) {
            whole = false;
            Fault::new("twice", &well.name, "").tell("plate", place(well), problems);
            break;
        }
        if let Contents::Unclear(fault) = &well.contents {
            let is_sample = fault.is_of_a_sample();
            whole &= is_sample;
            let what = if is_sample { "sample" } else { "plate" };
            fault.clone().tell(what, place(well), problems);
        } else if let Contents::Sample {
            code,
            extraction: None,
            ..
        } = &well.contents
        {
            unnumbered.entry(code).or_insert(well);
        } else if let Contents::Other(written) = &well.contents
            && let Some(code) = reading.nearest(written)
        {
            let fault = Fault::new("code", &well.name, &**written).and(code);
            fault.tell("sample", place(well), problems);
        }
        if let Err(written) = &well.absorbance {
            let (what, is_used) = match &well.contents {
                Contents::Sample {
                    code, extraction, ..
                } => {
                    lost.insert((code.clone(), *extraction));
                    ("sample", true)
                }
                Contents::Standard { .. } | Contents::Blank | Contents::Control { .. } => {
                    whole = false;
                    ("plate", true)
                }
                Contents::Other(_) | Contents::Empty | Contents::Unclear(_) => ("", false),
            };
            if is_used {
                let fault = Fault::new("absorbance", &well.name, &**written);
                fault.tell(what, place(well), problems);
            }
        }
    }
    if let Some(well) = numbered_only(raw) {
        whole = false;
        let fault = Fault::new("numbers", &well.name, "");
        fault.tell("plate", place(well), problems);
    }
    if !raw
        .wells
        .iter()
        .any(|well| matches!(well.contents, Contents::Standard { .. }))
        && whole
    {
        whole = false;
        let place = reading.place(raw.sheet, raw.row, None);
        Fault::new("no_standards", "", "").tell("plate", place, problems);
    }
    if let (true, Some((code, well))) = (whole, unnumbered.iter().next()) {
        let fault = Fault::new("unnumbered", &well.name, *code);
        fault.tell("nothing", place(well), problems);
    }
    whole.then_some(lost)
}

/// A well of standards whose figures are 1, 2, 3 … without a unit: they can as well be the numbers of the standards.
fn numbered_only<'a>(raw: &'a RawPlate<'_>) -> Option<&'a RawWell> {
    let standards = || {
        raw.wells.iter().filter_map(|well| match well.contents {
            Contents::Standard {
                concentration,
                numbered,
            } => Some((well, concentration, numbered)),
            _ => None,
        })
    };
    let mut figures: Vec<f64> = standards().map(|(_, figure, _)| figure).collect();
    figures.sort_by(f64::total_cmp);
    figures.dedup();
    let counts = |from: f64| {
        let numbered = figures.iter().enumerate();
        numbered
            .map(|(index, figure)| figure - index as f64)
            .all(|rest| rest == from)
    };
    let are_numbers = !figures.is_empty() && (counts(0.0) || counts(1.0));
    let all = standards().all(|(_, _, numbered)| numbered);
    standards()
        .next()
        .filter(|_| are_numbers && all)
        .map(|(well, ..)| well)
}

impl Plate {
    /// Puts a well to those that hold the same.
    fn take(&mut self, well: Well, contents: Contents, lost: &BTreeSet<Extracted>) {
        match contents {
            Contents::Standard { concentration, .. } => {
                let concentration = Concentration(concentration);
                let known = self
                    .standards
                    .iter_mut()
                    .find(|one| one.concentration == concentration);
                match known {
                    Some(known) => known.wells.0.push(well),
                    None => self.standards.push(Standard {
                        concentration,
                        wells: Wells(vec![well]),
                    }),
                }
            }
            Contents::Blank => self.blanks.0.push(well),
            Contents::Control {
                name,
                stated,
                dilution,
            } => {
                let known = self.controls.iter_mut().find(|one| {
                    one.name == name && one.stated == stated && one.dilution == dilution
                });
                match known {
                    Some(known) => known.wells.0.push(well),
                    None => self.controls.push(Control {
                        name,
                        stated,
                        dilution,
                        wells: Wells(vec![well]),
                    }),
                }
            }
            Contents::Sample {
                code,
                extraction,
                dilution,
            } => {
                if lost.contains(&(code.clone(), extraction)) {
                    return;
                }
                let known = self.samples.iter_mut().find(|one| {
                    one.package_code == code
                        && one.extraction == extraction
                        && one.dilution == dilution
                });
                match known {
                    Some(known) => known.wells.0.push(well),
                    None => self.samples.push(Sample {
                        package_code: code,
                        extraction,
                        dilution,
                        wells: Wells(vec![well]),
                    }),
                }
            }
            Contents::Other(_) => self.others += 1,
            Contents::Empty | Contents::Unclear(_) => {}
        }
    }
}
