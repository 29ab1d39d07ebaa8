//! The limit that a claim must keep, and how results are held against it.

use crate::model::extraction::Interval;
use crate::model::ppm::Ppm;
use std::cmp::Ordering;

/// The rule that governs the claim.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Regime {
    /// United States, 21 CFR 101.91: below 20 ppm.
    Us,
    /// Codex Alimentarius, CXS 118-1979: not above 20 mg/kg.
    Codex,
    /// European Union, Regulation (EU) No 828/2014: not above 20 mg/kg.
    Eu,
    /// United Kingdom, the retained text of Regulation (EU) No 828/2014.
    Uk,
    /// Canada, Food and Drug Regulations B.24.018: cross-contact not above 20 ppm.
    Canada,
    /// Argentina, Resolución Conjunta 32/2023: at most 10 mg/kg.
    Argentina,
    /// Chile, Reglamento Sanitario de los Alimentos art. 518: not above 5 mg/kg.
    Chile,
    /// Australia and New Zealand, Food Standards Code 1.2.7: no detectable gluten.
    AuNz,
    /// A limit of the programme's own.
    Custom,
}

impl Regime {
    /// Every regime with the word that names it in the settings and the data.
    pub const ALL: &'static [(Regime, &'static str)] = &[
        (Regime::Us, "us"),
        (Regime::Codex, "codex"),
        (Regime::Eu, "eu"),
        (Regime::Uk, "uk"),
        (Regime::Canada, "canada"),
        (Regime::Argentina, "argentina"),
        (Regime::Chile, "chile"),
        (Regime::AuNz, "au-nz"),
        (Regime::Custom, "custom"),
    ];

    /// The word in the settings and the data.
    pub fn word(self) -> &'static str {
        Regime::ALL
            .iter()
            .find(|(regime, _)| *regime == self)
            .expect("ALL lists every regime")
            .1
    }

    /// The unit that the regime's rule is written in. One ppm is one mg/kg.
    pub fn unit(self) -> &'static str {
        match self {
            Regime::Us | Regime::Canada | Regime::Custom => "ppm",
            Regime::Codex
            | Regime::Eu
            | Regime::Uk
            | Regime::Argentina
            | Regime::Chile
            | Regime::AuNz => "mg/kg",
        }
    }

    /// The regime's own limit; none for [`Regime::Custom`].
    ///
    /// For Australia and New Zealand "no detectable gluten" is held at 3 ppm, the detection limit of the sandwich R5
    /// assay (Méndez and others 2005: 1.5 ppm gliadin), and reaching it is a detection.
    pub fn limit(self) -> Option<Limit> {
        let (ppm, passes) = match self {
            Regime::Us => (20.0, false),
            Regime::Codex | Regime::Eu | Regime::Uk | Regime::Canada => (20.0, true),
            Regime::Argentina => (10.0, true),
            Regime::Chile => (5.0, true),
            Regime::AuNz => (3.0, false),
            Regime::Custom => return None,
        };
        Some(Limit {
            ppm: Ppm(ppm),
            passes,
            detection: self == Regime::AuNz,
        })
    }
}

/// A limit and what exactly reaching it means.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limit {
    /// The figure.
    pub ppm: Ppm,
    /// Whether exactly this figure keeps the limit.
    pub passes: bool,
    /// There is no limit but detection (Food Standards Code 1.2.7: no detectable gluten): the figure is the assay's LOD,
    /// any figure that the lab gives is over, and only "below n" with n not above the LOD is within.
    pub detection: bool,
}

impl Limit {
    /// A limit on the amount.
    pub const fn amount(ppm: Ppm, passes: bool) -> Limit {
        Limit {
            ppm,
            passes,
            detection: false,
        }
    }

    /// The limit for one reading: where detection decides, the LOD in force for it.
    pub fn at(self, lod: Ppm) -> Limit {
        if self.detection {
            Limit { ppm: lod, ..self }
        } else {
            self
        }
    }

    /// Whether every value that a reading allows is over the limit. A lower bound that is itself left out is over the limit
    /// where it is the limit: ">20" is over 20.
    pub fn surely_over(self, reading: &Interval) -> bool {
        let reached = reading.lower.compare(self.ppm) != Ordering::Less;
        if self.detection {
            return reading.as_number().is_some() || reached;
        }
        self.over(reading.lower) || (reading.lower_open && reached)
    }

    /// Whether no value that a reading allows is over the limit.
    pub fn surely_within(self, reading: &Interval) -> bool {
        if self.detection {
            let below = reading.as_below();
            return below.is_some_and(|n| n.compare(self.ppm) != Ordering::Greater);
        }
        match reading.upper {
            Some(upper) if reading.upper_open => !self.over_open_above(upper),
            Some(upper) => !self.over(upper),
            None => false,
        }
    }

    /// Whether a figure is over the limit: `x >= L` where the limit itself does not pass, `x > L` where it does.
    pub fn over(self, x: Ppm) -> bool {
        match x.compare(self.ppm) {
            Ordering::Less => false,
            Ordering::Equal => !self.passes,
            Ordering::Greater => true,
        }
    }

    /// Whether values that come as near to `bound` as one likes from below, but never reach it, can be over the limit.
    ///
    /// "Below 20" is below a limit of 20 even where 20.0 itself is not within it.
    pub fn over_open_above(self, bound: Ppm) -> bool {
        bound.compare(self.ppm) == Ordering::Greater
    }
}

/// How the assay's uncertainty enters a decision.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Decision {
    /// The figure is held against the limit as it stands (simple acceptance, ILAC-G8:09/2019).
    Simple,
    /// A guard band of the expanded uncertainty on both sides of the limit; between them nothing is decided.
    Guarded {
        /// Relative expanded uncertainty, k = 2, as a fraction (0.30 is 30 %).
        relative_expanded_uncertainty: f64,
    },
}

impl Decision {
    /// The word in the settings and the data.
    pub fn word(self) -> &'static str {
        match self {
            Decision::Simple => "simple",
            Decision::Guarded { .. } => "guarded",
        }
    }
}

/// All that decides a verdict apart from the results.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rule {
    /// The rule that governs the claim.
    pub regime: Regime,
    /// Its limit, or the programme's own.
    pub limit: Limit,
    /// How uncertainty is taken into account.
    pub decision: Decision,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn exactly_at_the_limit_goes_by_the_regime() {
        let over = |regime: Regime, x| regime.limit().expect("has one").over(Ppm(x));
        assert!(over(Regime::Us, 20.0), "21 CFR 101.91: below 20 ppm");
        assert!(!over(Regime::Us, 19.96));
        assert!(!over(Regime::Eu, 20.0), "828/2014: no more than 20 mg/kg");
        assert!(over(Regime::Eu, 20.1));
        assert!(!over(Regime::Argentina, 10.0));
        assert!(!over(Regime::Chile, 5.0));
        assert!(over(Regime::AuNz, 3.0));
    }

    #[test]
    fn an_open_bound_at_the_limit_is_below_it() {
        let us = Regime::Us.limit().expect("has one");
        assert!(!us.over_open_above(Ppm(20.0)));
        assert!(us.over_open_above(Ppm(20.1)));
    }
}
