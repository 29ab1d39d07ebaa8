//! Results below quantification summarised without pretending to know them.

mod likelihood;
mod order_statistics;

pub use likelihood::lognormal;
pub use order_statistics::ordered_mean;

use crate::judge::{grouped, paper};
use crate::model::package::ResultKind;
use crate::model::pair::PairState;
use crate::model::ppm::Ppm;
use crate::model::statistics::CensoredSummary;
use crate::model::verdict::ProductVerdict;

/// A result: measured, or known only to be below a limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Observation {
    /// The figure, or the limit.
    pub value: f64,
    /// Whether it is only a limit.
    pub censored: bool,
}

/// The group of products whose register names none.
const NO_CATEGORY: &str = "no category";

/// Results that a regression on order statistics needs at least (common practice: 20 to 50).
const ENOUGH_FOR_ROS: usize = 20;

/// Results that a maximum likelihood fit needs at least: its mean is fragile in small sets.
const ENOUGH_FOR_MLE: usize = 30;

/// Measured results below which no curve is drawn through them.
const ENOUGH_MEASURED: usize = 5;

/// The largest part that may be below quantification for either.
const MOST_CENSORED: f64 = 0.8;

/// All agreeing packages' results, then each food group's; nothing where there are none, and no groups where there is one.
///
/// Packages of every round are in: a mean says what was found in packages, not how products are.
pub fn summarise(verdicts: &[ProductVerdict]) -> Vec<CensoredSummary> {
    let by_group = grouped(verdicts, |verdict| {
        let category = verdict.product.category.as_deref();
        (category.is_none(), category.unwrap_or(NO_CATEGORY))
    });
    let all = summary("all".to_owned(), verdicts.iter());
    let groups: Vec<CensoredSummary> = by_group
        .into_iter()
        .filter_map(|((_, name), group)| summary(name.to_owned(), group.into_iter()))
        .collect();
    let told = if groups.len() > 1 { groups } else { Vec::new() };
    all.into_iter().chain(told).collect()
}

/// One set of agreeing packages' results; none where there are none.
///
/// Lower, middle and upper bound put 0, half the limit or the limit for each result below quantification. A package whose
/// extractions leave a bounded range counts with its ends, and as measured with its middle; one without an upper end is
/// left out, since it has no upper bound.
fn summary<'a>(
    of: String,
    verdicts: impl Iterator<Item = &'a ProductVerdict>,
) -> Option<CensoredSummary> {
    let results: Vec<Bounded> = verdicts
        .flat_map(|verdict| &verdict.packages)
        .filter(|package| package.pair.state == PairState::Agree)
        .filter_map(|package| bounded(&package.result))
        .collect();
    let observations: Vec<Observation> = results.iter().map(observation).collect();
    let n = results.len();
    let censored = results.iter().filter(|result| result.below).count();
    let measured = n - censored;
    let sound = measured >= ENOUGH_MEASURED && censored as f64 <= MOST_CENSORED * n as f64;
    let mean = |of: &dyn Fn(&Bounded) -> f64| {
        let figures: Vec<Ppm> = results.iter().map(|result| Ppm(of(result))).collect();
        paper::mean(&figures)
    };
    Some(CensoredSummary {
        of,
        n,
        censored,
        lower_bound: mean(&|result| result.lower)?,
        middle_bound: mean(&Bounded::middle)?,
        upper_bound: mean(&|result| result.upper)?,
        ros_mean: (sound && n >= ENOUGH_FOR_ROS)
            .then(|| ordered_mean(&observations))
            .flatten(),
        mle: (sound && n >= ENOUGH_FOR_MLE)
            .then(|| lognormal(&observations))
            .flatten(),
    })
}

/// A result with both ends known.
struct Bounded {
    lower: f64,
    upper: f64,
    below: bool,
}

impl Bounded {
    fn middle(&self) -> f64 {
        (self.lower + self.upper) / 2.0
    }
}

fn bounded(result: &ResultKind) -> Option<Bounded> {
    let (lower, upper, below) = match *result {
        ResultKind::Below { upper } => (0.0, upper.0, true),
        ResultKind::Value { mean } => (mean.0, mean.0, false),
        ResultKind::Range(range) => (range.lower.0, range.upper?.0, false),
        ResultKind::None => return None,
    };
    Some(Bounded {
        lower,
        upper,
        below,
    })
}

fn observation(result: &Bounded) -> Observation {
    Observation {
        value: if result.below {
            result.upper
        } else {
            result.middle()
        },
        censored: result.below,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Six results, two of them below 5.
    fn worked() -> Vec<Observation> {
        let figures = [
            (5.0, true),
            (5.0, true),
            (6.1, false),
            (7.3, false),
            (8.0, false),
            (12.4, false),
        ];
        figures
            .map(|(value, censored)| Observation { value, censored })
            .to_vec()
    }

    #[test]
    fn the_worked_set_comes_out_as_by_hand() {
        let ros = ordered_mean(&worked()).expect("four measured");
        assert_eq!(format!("{:.3}", ros.0), "6.816");
        let fit = lognormal(&worked()).expect("four measured");
        assert_eq!(format!("{:.4} {:.4}", fit.mu, fit.sigma), "1.8426 0.4395");
        assert_eq!(
            format!("{:.3} {:.3}", fit.mean.0, fit.median.0),
            "6.953 6.313"
        );
    }

    #[test]
    fn one_measured_result_carries_no_curve() {
        let figures = [(5.0, true), (5.0, true), (6.1, false)];
        let few = figures.map(|(value, censored)| Observation { value, censored });
        assert_eq!(ordered_mean(&few), None);
        assert_eq!(lognormal(&few), None);
        assert_eq!(lognormal(&[]), None);
    }
}
