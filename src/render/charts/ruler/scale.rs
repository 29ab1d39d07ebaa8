//! The log scale of the gluten ruler, and where everything stands on its width.

use crate::model::extraction::Interval;
use crate::model::package::PackageResult;
use crate::model::ppm::Ppm;
use crate::model::rule::Rule;
use crate::render::numbers;
use crate::words::{Catalogue, say};

/// Left and right of the cell for what is too little to measure, in points.
pub(super) const CELL: Span = Span {
    from: 56.0,
    to: 99.0,
};
/// First and last figure of the scale.
pub(super) const SCALE: Span = Span {
    from: 114.0,
    to: 344.0,
};
/// Where the words at a row's end begin.
pub(super) const WORDS: f64 = 360.0;
/// Where the side that is over the limit ends.
pub(super) const ZONE_END: f64 = 352.0;

/// From here to there, in points from the left.
pub(super) struct Span {
    pub(super) from: f64,
    pub(super) to: f64,
}

impl Span {
    /// Its middle.
    pub(super) fn middle(&self) -> f64 {
        (self.from + self.to) / 2.0
    }
}

/// The log scale: from a round figure below all measured ones and the limit, to one above them.
pub(super) struct Scale {
    pub(super) start: f64,
    pub(super) end: f64,
    /// Whether every reading below quantification is below the start of the scale, and so has its place in the cell.
    pub(super) cell: bool,
}

impl Scale {
    /// The scale that holds all readings of these packages.
    pub(super) fn of(packages: &[PackageResult], rule: Rule) -> Scale {
        let readings: Vec<Interval> = packages.iter().flat_map(readings).collect();
        let lowest = |least: f64, reading: &Interval| {
            least.min(reading.as_below().unwrap_or(reading.lower).0)
        };
        let highest =
            |most: f64, reading: &Interval| most.max(reading.upper.unwrap_or(reading.lower).0);
        let limit = rule.limit.ppm.0;
        let least = readings.iter().fold(5.0_f64, lowest);
        // The limit needs room on both sides: at the very end of the scale its two sides would not show.
        let start = round_down(if limit <= least { limit * 0.8 } else { least });
        let most = readings.iter().fold(limit * 2.0, highest);
        let end = if most * 1.2 > 100.0 {
            round_up(most * 1.2)
        } else {
            100.0
        };
        let below: Vec<f64> = readings
            .iter()
            .filter_map(|reading| reading.as_below())
            .map(|n| n.0)
            .collect();
        Scale {
            start,
            end,
            cell: below.iter().all(|n| Ppm(*n).same(Ppm(start))) && limit > start,
        }
    }

    /// Its first and last figure in words.
    pub(super) fn words(&self, words: &Catalogue) -> String {
        let figure = |x| words.locale().figure(&numbers::plain(Ppm(x)));
        words.say(&say::range_in_text(figure(self.start), figure(self.end)))
    }

    /// Where a figure stands, in points from the left.
    pub(super) fn x(&self, figure: f64) -> f64 {
        let share = (figure.max(self.start) / self.start).ln() / (self.end / self.start).ln();
        SCALE.from + (SCALE.to - SCALE.from) * share.min(1.0)
    }

    /// The figures that stand at a tick with a number: 1, 2 and 5 times each power of ten.
    pub(super) fn numbered(&self) -> Vec<f64> {
        self.ticks()
            .into_iter()
            .filter(|tick| [1.0, 2.0, 5.0].contains(&leading(*tick)))
            .collect()
    }

    /// Every figure that has a tick: 1 to 9 times each power of ten.
    pub(super) fn ticks(&self) -> Vec<f64> {
        let mut ticks = Vec::new();
        let mut decade = 10_f64.powi(self.start.log10().floor() as i32);
        while decade <= self.end {
            let within = |tick: &f64| *tick >= self.start * 0.999 && *tick <= self.end * 1.001;
            ticks.extend((1..10).map(|i| f64::from(i) * decade).filter(within));
            decade *= 10.0;
        }
        ticks
    }
}

/// The first digit of a round figure.
fn leading(figure: f64) -> f64 {
    (figure / 10_f64.powi((figure * 1.000_001).log10().floor() as i32)).round()
}

fn round_down(figure: f64) -> f64 {
    let decade = 10_f64.powi((figure * 1.000_001).max(1e-6).log10().floor() as i32);
    [5.0, 2.0]
        .into_iter()
        .map(|i| i * decade)
        .find(|round| *round <= figure * 1.000_001)
        .unwrap_or(decade)
}

fn round_up(figure: f64) -> f64 {
    let decade = 10_f64.powi(figure.log10().floor() as i32);
    [1.0, 2.0, 5.0]
        .into_iter()
        .map(|i| i * decade)
        .find(|round| *round >= figure)
        .unwrap_or(10.0 * decade)
}

/// Every reading that the lab gave, used or not.
pub(super) fn readings(package: &PackageResult) -> impl Iterator<Item = Interval> + '_ {
    let extractions = package.pair.extractions.iter();
    extractions.filter_map(|paired| paired.extraction.outcome.reading())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn round_figures_hold_what_they_round() {
        assert_eq!(round_down(5.0), 5.0);
        assert_eq!(round_down(2.4), 2.0);
        assert_eq!(round_down(0.9), 0.5);
        assert_eq!(round_up(108.0), 200.0);
        assert_eq!(round_up(200.0), 200.0);
        assert_eq!(round_up(560.0), 1000.0);
    }
}
