//! What a lab reported of a sample, held against what its absorbances come to.

use crate::model::extraction::{AssayKind, Extraction, Interval};
use crate::model::plate::{Plate, Recomputed, Reported, Sample};
use crate::model::ppm::{Ppm, SAME_FIGURE};
use crate::model::registers::{Correction, CorrectionAction};
use std::collections::BTreeMap;

/// What two figures may differ by, as a fraction of the reported one.
const ALLOWED: f64 = 0.05;

/// The extractions with a reading, by package and number.
pub struct ByExtraction<'a> {
    by: BTreeMap<(&'a str, u32), Vec<&'a Extraction>>,
    set_aside: Vec<&'a Correction>,
}

impl<'a> ByExtraction<'a> {
    /// Of all that was read, and what was set aside of it.
    pub fn new(extractions: &'a [Extraction], corrections: &'a [Correction]) -> ByExtraction<'a> {
        let mut by: BTreeMap<(&str, u32), Vec<&Extraction>> = BTreeMap::new();
        let read = extractions
            .iter()
            .filter(|one| one.outcome.reading().is_some());
        for one in read {
            let own = (one.package_code.as_str(), one.number);
            by.entry(own).or_default().push(one);
        }
        let set_aside = corrections
            .iter()
            .filter(|one| one.action == CorrectionAction::Exclude);
        ByExtraction {
            by,
            set_aside: set_aside.collect(),
        }
    }

    /// What was reported of a sample: in the plate's own file where that says something, else what was not set aside; and by
    /// its kind of assay.
    fn of(&self, sample: &Sample, plate: &Plate, kind: AssayKind) -> Vec<&'a Extraction> {
        let number = sample.extraction;
        let all = number.and_then(|number| self.by.get(&(sample.package_code.as_str(), number)));
        let narrowed = |all: Vec<&'a Extraction>, keep: &dyn Fn(&Extraction) -> bool| {
            let kept: Vec<&Extraction> = all.iter().copied().filter(|one| keep(one)).collect();
            if kept.is_empty() { all } else { kept }
        };
        let all = all.cloned().unwrap_or_default();
        let of_kind = narrowed(all, &|one| one.assay_kind == kind);
        let standing = narrowed(of_kind, &|one| !self.is_set_aside(one));
        narrowed(standing, &|one| one.source.file.path == plate.file.path)
    }

    fn is_set_aside(&self, one: &Extraction) -> bool {
        let below = |path: &str| path.strip_prefix("inbox/").unwrap_or(path).to_owned();
        self.set_aside.iter().any(|correction| {
            correction.package_code == one.package_code
                && below(&correction.file) == below(&one.source.file.path)
                && correction
                    .extraction
                    .is_none_or(|number| number == one.number)
        })
    }

    /// The same, held against what the absorbances come to. Where two reports of an extraction differ (one is a repeat), it is
    /// not known of which the plate is: only that it agrees with one of them is said.
    pub fn held_against(
        &self,
        sample: &Sample,
        plate: &Plate,
        kind: AssayKind,
        recomputed: Recomputed,
    ) -> Option<Reported> {
        let all: Vec<Reported> = self
            .of(sample, plate, kind)
            .into_iter()
            .filter_map(|extraction| {
                let reading = extraction.outcome.reading()?;
                Some(Reported {
                    ppm: reading.as_number(),
                    text: extraction.reported.clone(),
                    place: extraction.source.place(),
                    agrees: agrees(reading, &extraction.reported, recomputed),
                })
            })
            .collect();
        let first = all.first()?;
        let is_one = all
            .iter()
            .all(|one| one.agrees == first.agrees && one.ppm == first.ppm);
        match is_one {
            true => Some(first.clone()),
            false => all.into_iter().find(|one| one.agrees),
        }
    }
}

/// Whether a report and what was recomputed can be the same, but for 5 % of the report and half a unit of its last digit.
fn agrees(reported: Interval, written: &str, recomputed: Recomputed) -> bool {
    let (low, high) = match recomputed {
        Recomputed::Figure(ppm) => (ppm.0, ppm.0),
        Recomputed::Below(ppm) => (0.0, ppm.0),
        Recomputed::Above(ppm) => (ppm.0, f64::INFINITY),
    };
    let upper = reported.upper.map_or(f64::INFINITY, |upper| upper.0);
    let gap = (reported.lower.0 - high).max(low - upper);
    let size = reported.as_below().unwrap_or(reported.lower);
    let allowed = ALLOWED * size.0 + half_a_unit(written, size);
    gap <= allowed + SAME_FIGURE * size.0
}

/// Half a unit of the last digit of a figure, in ppm; nothing where no figure was written.
///
/// The figure is read with its last mark as a decimal one. Where that was one of thousands, both the figure and its unit come
/// out too small by the same factor, and what is asked for is right again.
fn half_a_unit(written: &str, ppm: Ppm) -> f64 {
    let of = |written: &str| -> Option<f64> {
        let from = written.find(|c: char| c.is_ascii_digit())?;
        let figure = &written[from..];
        let end = figure.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',')));
        let figure = figure[..end.unwrap_or(figure.len())].trim_end_matches(['.', ',']);
        let (whole, tenths) = figure.rsplit_once(['.', ',']).unwrap_or((figure, ""));
        let digits: String = whole.chars().filter(char::is_ascii_digit).collect();
        let value: f64 = format!("{digits}.{tenths}0").parse().ok()?;
        let unit = (0..tenths.len().min(30)).fold(0.5, |unit, _| unit / 10.0);
        (value > 0.0).then_some(unit * ppm.0 / value)
    };
    // Wells of one extraction are joined: their mean is as fine as the finest of them.
    let finest = written.split('|').filter_map(of).reduce(f64::min);
    finest.unwrap_or(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_a_unit_is_that_of_the_figure_as_written() {
        for (written, ppm, expected) in [
            ("12.4", 12.4, 0.05),
            ("12,4 ± 3.7", 12.4, 0.05),
            ("< 5", 5.0, 0.5),
            ("6.2", 12.4, 0.1),
            ("1,234", 1234.0, 0.5),
            ("0.0012", 12.0, 0.5),
            ("12.40 | 12.6", 12.5, 0.005),
            ("ND", 5.0, 0.0),
            ("", 5.0, 0.0),
        ] {
            let found = half_a_unit(written, Ppm(ppm));
            assert!(
                (found - expected).abs() < 0.01 * expected + 1e-12,
                "{written}: {found}"
            );
        }
    }

    #[test]
    fn a_report_may_differ_by_a_twentieth_and_half_a_unit() {
        let number = Interval::number(Ppm(20.0));
        let figure = |ppm| Recomputed::Figure(Ppm(ppm));
        for (ppm, expected) in [(21.05, true), (21.06, false), (18.95, true), (18.94, false)] {
            assert_eq!(agrees(number, "20.0", figure(ppm)), expected, "{ppm}");
        }
        assert!(agrees(number, "20", figure(21.5)));
        let below = Interval::below(Ppm(5.0));
        assert!(agrees(below, "<5.0", Recomputed::Below(Ppm(5.0))));
        assert!(agrees(below, "<5.0", figure(5.2)));
        assert!(!agrees(below, "<5.0", figure(6.0)));
        assert!(!agrees(number, "20.0", Recomputed::Below(Ppm(5.0))));
        assert!(!agrees(number, "20.0", Recomputed::Above(Ppm(80.0))));
        assert!(agrees(
            Interval::above(Ppm(80.0)),
            ">80",
            Recomputed::Above(Ppm(80.0))
        ));
        assert!(!agrees(Interval::above(Ppm(80.0)), ">80", figure(60.0)));
    }
}
