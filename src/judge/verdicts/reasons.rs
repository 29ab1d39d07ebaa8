//! A verdict's reasons, as data.

use crate::config::Config;
use crate::judge::packages::over_by_itself;
use crate::model::claim::Claim;
use crate::model::extraction::Extraction;
use crate::model::package::{PackageResult, ResultKind, Standing};
use crate::model::pair::{PairState, Usage};
use crate::model::ppm::Ppm;
use crate::model::reason::Reason;
use crate::model::registers::{Bars, Doubt, Processing, Product, Registers};
use crate::model::rule::{Decision, Rule};
use crate::model::verdict::{Grade, Verdict};

/// What keeps anything from being decided, whatever the packages say: an unknown claim, an unknown processing, a register that
/// leaves something open. Nothing of it may ever count as a pass.
pub fn undecided(
    product: &Product,
    round: &str,
    claim: &Claim,
    registers: &Registers,
) -> Vec<Reason> {
    let mut reasons = Vec::new();
    if !claim.is_known() {
        reasons.push(if claim.text.trim().is_empty() {
            Reason::NoClaim
        } else {
            Reason::UnknownClaim {
                text: claim.text.clone(),
            }
        });
    }
    if product.processing == Processing::Unknown {
        reasons.push(Reason::UnknownProcessing);
    }
    for doubt in &registers.doubts {
        let bears = doubt.bars == Bars::Verdict && doubt.is_about(&product.product_id, round);
        let reason = Reason::Doubt(doubt.what.clone());
        if bears && !reasons.contains(&reason) {
            reasons.push(reason);
        }
    }
    reasons
}

impl Doubt {
    /// Whether it is about this product and round: what names none is about every one.
    pub(in crate::judge) fn is_about(&self, product_id: &str, round: &str) -> bool {
        let names = |of: &Option<String>, this: &str| of.as_deref().is_none_or(|of| of == this);
        names(&self.product_id, product_id) && names(&self.round, round)
    }
}

/// Why the verdict is what it is; never empty. `rule` is the one that the product is judged by.
pub fn reasons(
    verdict: Verdict,
    packages: &[PackageResult],
    method_unfit: Option<&Reason>,
    rule: &Rule,
    config: &Config,
) -> Vec<Reason> {
    if let Verdict::WithinLimit(grade) = verdict {
        return vec![within(grade, packages, rule)];
    }
    let is_open = |standing| matches!(standing, Standing::Unresolved | Standing::Inconclusive);
    let over = packages
        .iter()
        .filter(|package| package.standing == Standing::Over)
        .map(|package| over(package, rule));
    let open = packages
        .iter()
        .filter(|package| is_open(package.standing))
        .map(|package| open(package, config));
    let mut reasons: Vec<Reason> = over.chain(open).collect();
    if verdict == Verdict::NoVerdict {
        let asked = config.testing.packages_per_product;
        if packages.len() < asked {
            reasons.push(Reason::TooFewPackages {
                tested: packages.len(),
                asked,
            });
        }
        reasons.extend(method_unfit.cloned());
    }
    reasons
}

fn within(grade: Grade, packages: &[PackageResult], rule: &Rule) -> Reason {
    let below = packages
        .iter()
        .filter_map(|package| match package.result {
            ResultKind::Below { upper } => Some(upper),
            _ => None,
        })
        .fold(Ppm::ZERO, Ppm::max);
    match grade {
        Grade::BelowQuantification => Reason::NoneMeasured {
            packages: packages.len(),
            below,
        },
        Grade::Quantified => Reason::AllWithin {
            packages: packages.len(),
            guarded: matches!(rule.decision, Decision::Guarded { .. }),
        },
    }
}

fn over(result: &PackageResult, rule: &Rule) -> Reason {
    let package = result.pair.package.package_code.clone();
    if let Some(other) = &result.other_series
        && other.standing == Standing::Over
        && !over_by_itself(result, rule)
    {
        return Reason::OverBySandwich {
            package,
            result: other.result,
        };
    }
    if result.pair.state == PairState::Disagree {
        return if each_over(result, rule) {
            Reason::EachOver { package }
        } else {
            Reason::MedianOver { package }
        };
    }
    Reason::Over {
        package,
        result: result.result,
    }
}

fn each_over(result: &PackageResult, rule: &Rule) -> bool {
    result.pair.usable().all(|extraction| {
        let reading = extraction.outcome.reading();
        reading.is_some_and(|reading| rule.limit.at(extraction.lod).surely_over(&reading))
    })
}

/// Why a package decides nothing.
fn open(result: &PackageResult, config: &Config) -> Reason {
    let package = result.pair.package.package_code.clone();
    let asked = config.testing.extractions_per_package;
    let usable = result.pair.usable().count();
    let mut rows = result.pair.extractions.iter();
    let in_conflict = rows.any(|row| row.usage == Usage::InConflict);
    match result.pair.state {
        PairState::Missing => Reason::Missing { package },
        PairState::Incomplete if in_conflict => Reason::Conflict {
            package,
            usable,
            asked,
        },
        PairState::Incomplete => Reason::TooFewExtractions {
            package,
            usable,
            asked,
        },
        PairState::Disagree => {
            let comparison = result.pair.comparison.as_ref();
            let comparison = comparison.expect("what disagrees was compared");
            Reason::Disagree {
                package,
                gap: comparison.gap,
                allowed: comparison.allowed,
                exact: result.pair.usable().all(Extraction::is_figure),
            }
        }
        PairState::Agree if result.standing == Standing::Inconclusive => Reason::TooClose {
            package,
            result: result.result,
        },
        PairState::Agree => Reason::EitherSide {
            package,
            result: result.result,
        },
    }
}
