//! Too close to the limit to call: one band round it, for the drawing and for the sentence beside a verdict.
//!
//! Where the rule guards, it is the guard band: an agreeing package in it is undecided. Under simple decisions a figure in it
//! is held against the limit as it stands; the band says how far two extractions of one package whose content is the limit
//! may lie apart and still agree, half to either side of it. About 95 of 100 means of two of such a package lie in it, since
//! half of 2.8 s is 1.98 s / sqrt(2).

use crate::judge::pairs::{characteristic, range_factor};
use crate::judge::paper::twelve_digits;
use crate::model::package::PackageResult;
use crate::model::ppm::Ppm;
use crate::model::rule::{Decision, Rule};
use crate::model::statistics::CloseBand;

/// The band of a product's packages, with the largest quantification limit in force among their readings, else `own`.
pub fn of_packages(
    packages: &[PackageResult],
    rule: &Rule,
    relative_repeatability: f64,
    own: Ppm,
) -> Option<CloseBand> {
    let usable = packages.iter().flat_map(|package| package.pair.usable());
    let q = usable.map(|extraction| extraction.lloq).reduce(Ppm::max);
    band(rule, q.unwrap_or(own), relative_repeatability)
}

/// The band round the limit of a rule; none where detection decides, since there is no amount to be near to.
///
/// - guarded: from L / (1 + R) to L / (1 - R), R being the relative expanded uncertainty;
/// - simple: L -+ f(2) s(L) / 2, the allowed difference of a pair at the limit ([`characteristic`] with q), never below 0.
///
/// All in ppm, to 12 significant digits.
pub fn band(rule: &Rule, q: Ppm, relative_repeatability: f64) -> Option<CloseBand> {
    if rule.limit.detection {
        return None;
    }
    let limit = rule.limit.ppm;
    let (from, to) = match rule.decision {
        Decision::Guarded {
            relative_expanded_uncertainty: r,
        } => (limit.0 / (1.0 + r), limit.0 / (1.0 - r)),
        Decision::Simple => {
            let half = range_factor(2)? * characteristic(limit, q, relative_repeatability).0 / 2.0;
            ((limit.0 - half).max(0.0), limit.0 + half)
        }
    };
    Some(CloseBand {
        from: Ppm(twelve_digits(from)),
        to: Ppm(twelve_digits(to)),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::rule::{Limit, Regime};

    fn of(regime: Regime, decision: Decision, q: f64) -> Option<String> {
        let limit = regime.limit().expect("it has one");
        let rule = Rule {
            regime,
            limit,
            decision,
        };
        let band = band(&rule, Ppm(q), 0.15)?;
        Some(format!("{:.4} {:.4}", band.from.0, band.to.0))
    }

    const GUARDED: Decision = Decision::Guarded {
        relative_expanded_uncertainty: 0.3,
    };

    #[test]
    fn a_simple_band_is_as_wide_as_a_pair_at_the_limit_may_differ() {
        // s(20) = sqrt(0.5^2 + 3^2) = 3.04138; 2.8 s = 8.51587; half of it to either side.
        let at_20 = Some("15.7421 24.2579".to_owned());
        assert_eq!(of(Regime::Us, Decision::Simple, 5.0), at_20);
        assert_eq!(of(Regime::Eu, Decision::Simple, 5.0), at_20);
        // s(5) = sqrt(0.5^2 + 0.75^2) = 0.901388; 2.8 s = 2.523886.
        let at_5 = Some("3.7381 6.2619".to_owned());
        assert_eq!(of(Regime::Chile, Decision::Simple, 5.0), at_5);
        // A larger quantification limit makes it wider: sqrt(1 + 9) = 3.16228; 2.8 s / 2 = 4.42719.
        let wider = Some("15.5728 24.4272".to_owned());
        assert_eq!(of(Regime::Us, Decision::Simple, 10.0), wider);
    }

    #[test]
    fn a_guarded_band_is_the_guard_band() {
        // 20 / 1.3 and 20 / 0.7.
        assert_eq!(
            of(Regime::Us, GUARDED, 5.0),
            Some("15.3846 28.5714".to_owned())
        );
        assert_eq!(
            of(Regime::Argentina, GUARDED, 5.0),
            Some("7.6923 14.2857".to_owned())
        );
    }

    #[test]
    fn there_is_no_band_where_detection_decides() {
        assert_eq!(of(Regime::AuNz, Decision::Simple, 5.0), None);
        assert_eq!(of(Regime::AuNz, GUARDED, 5.0), None);
        // A claim of a low content has an amount for its limit, there as well: 200 -+ 1.4 sqrt(0.25 + 900).
        let low = Rule {
            regime: Regime::AuNz,
            limit: Limit::amount(Ppm(200.0), true),
            decision: Decision::Simple,
        };
        let band = band(&low, Ppm(5.0), 0.15).expect("an amount");
        assert_eq!(
            format!("{:.4} {:.4}", band.from.0, band.to.0),
            "157.9942 242.0058"
        );
    }

    #[test]
    fn both_ends_are_in_the_band() {
        let band = CloseBand {
            from: Ppm(15.0),
            to: Ppm(25.0),
        };
        assert!(band.holds(Ppm(15.0)) && band.holds(Ppm(20.0)) && band.holds(Ppm(25.0)));
        assert!(!band.holds(Ppm(14.9)) && !band.holds(Ppm(25.1)));
    }
}
