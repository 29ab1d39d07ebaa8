//! Which products are worth testing next, and in what order.

use crate::config::Config;
use crate::judge::verdicts::stands_under_way;
use crate::judge::{claims, grouped, labels};
use crate::model::claim::ClaimClass;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::extraction::AssayKind;
use crate::model::followup::FollowUpState;
use crate::model::label::{LabelFinding, TermClass};
use crate::model::planning::{Candidate, LabelDecides, LeftOut, PlanWanted, Why, WhyNot};
use crate::model::registers::{Bars, Package, Processing, Product};
use crate::model::rule::Regime;
use crate::model::verdict::Verdict;
use chrono::NaiveDate;
use std::collections::BTreeSet;

/// Every product of the register, or of those asked for, in its place.
#[derive(Debug, Default)]
pub struct Choice {
    /// Worth testing, in their order.
    pub candidates: Vec<Candidate>,
    /// Their label already decides.
    pub decided_by_label: Vec<LabelDecides>,
    /// Not to be bought now.
    pub left_out: Vec<LeftOut>,
}

/// Chooses for a round.
///
/// The order: never tested; without a verdict; over the limit and answered; the others, longest untested first. A product
/// whose label names a gluten source is never tested: its maker is written to. One that no assay, or not the usual one,
/// sees rightly is left out, or marked for the assay that does. What the register leaves open is never filled by a guess.
pub fn choose(
    decided: &Decided,
    terms: &labels::Terms,
    round: &str,
    wanted: &PlanWanted,
    config: &Config,
) -> Choice {
    let rounds = grouped(&decided.products, |judged| {
        judged.verdict.product.product_id.as_str()
    });
    let packages = grouped(&decided.registers.packages, |package| {
        package.product_id.as_str()
    });
    let mut choice = Choice::default();
    let mut ranked = Vec::new();
    for (id, product) in &decided.registers.products {
        let asked = wanted.only.iter().any(|only| only == id);
        if !wanted.only.is_empty() && !asked {
            continue;
        }
        let history = History {
            judged: rounds.get(id.as_str()).map_or(&[], Vec::as_slice),
            packages: packages.get(id.as_str()).map_or(&[], Vec::as_slice),
        };
        let review = labels::review(product, config.rule.regime, terms);
        if review.finding == LabelFinding::GlutenSource {
            choice.decided_by_label.push(LabelDecides {
                product: product.clone(),
                terms: review
                    .terms
                    .iter()
                    .filter(|term| term.class == TermClass::Always)
                    .map(|term| term.printed.clone())
                    .collect(),
            });
            continue;
        }
        let unfit = unfit(product, decided, config);
        match unfit.map_or_else(|| worth(&history, round, asked), Err) {
            Ok((why, since)) => ranked.push((
                why.rank(),
                since,
                Candidate {
                    product: product.clone(),
                    why,
                    needs_competitive: product.processing != Processing::None
                        && config.lab.assay_kind == AssayKind::Sandwich,
                    known_lots: history.lots(),
                },
            )),
            Err(why) => choice.left_out.push(LeftOut {
                product: product.clone(),
                why,
            }),
        }
    }
    // Within a rank the longest ago comes first, an unknown day before all; else the order of the ids stands.
    ranked.sort_by_key(|(rank, since, _)| (*rank, *since));
    choice.candidates = ranked
        .into_iter()
        .map(|(_, _, candidate)| candidate)
        .collect();
    choice
}

impl Why {
    /// The place in the order of what is worth testing.
    fn rank(&self) -> u8 {
        match self {
            Why::NeverTested => 0,
            Why::NoVerdict { .. } => 1,
            Why::OverAndAnswered { .. } => 2,
            Why::TestedBefore { .. } => 3,
            Why::AskedFor => 4,
        }
    }
}

/// Why no test of this product can decide, where that is known before it is bought.
fn unfit(product: &Product, decided: &Decided, config: &Config) -> Option<WhyNot> {
    let open = decided.registers.doubts.iter().any(|doubt| {
        doubt.bars == Bars::Verdict
            && doubt.round.is_none()
            && doubt
                .product_id
                .as_ref()
                .is_none_or(|id| *id == product.product_id)
    });
    match product.processing {
        Processing::Unknown => Some(WhyNot::ProcessingUnknown),
        _ if claims::class(&product.claim, config.rule.regime) == ClaimClass::Unknown => {
            Some(WhyNot::ClaimUnknown)
        }
        _ if open => Some(WhyNot::RegisterLeavesOpen),
        Processing::Fermented | Processing::Hydrolysed if config.rule.regime == Regime::Us => {
            Some(WhyNot::NoAssayDecides)
        }
        _ => None,
    }
}

/// What happened to a product so far.
struct History<'a> {
    judged: &'a [&'a JudgedProduct],
    packages: &'a [&'a Package],
}

impl History<'_> {
    /// Its last round that was judged.
    fn last(&self) -> Option<&JudgedProduct> {
        let last = self.judged.iter().max_by_key(|judged| judged.verdict.day());
        last.copied()
    }

    fn lots(&self) -> Vec<String> {
        let lots = self
            .packages
            .iter()
            .filter_map(|package| package.lot.clone());
        lots.collect::<BTreeSet<String>>().into_iter().collect()
    }

    /// A round whose packages are bought and have no result yet.
    fn under_way(&self) -> Option<&str> {
        let is_open = |round: &str| {
            let mut judged = self.judged.iter().map(|judged| &judged.verdict);
            let of_round = judged.find(|verdict| verdict.round == round);
            of_round.is_none_or(stands_under_way)
        };
        let mut rounds = self.packages.iter().map(|package| package.round.as_str());
        rounds.find(|round| is_open(round))
    }
}

/// Why a product is worth testing and since when, or why it is not just now.
fn worth(
    history: &History<'_>,
    round: &str,
    asked: bool,
) -> Result<(Why, Option<NaiveDate>), WhyNot> {
    let mut packages = history.packages.iter();
    if packages.any(|package| package.round == round) {
        return Err(WhyNot::InThisRound);
    }
    if let Some(round) = history.under_way() {
        let round = round.to_owned();
        return Err(WhyNot::UnderWay { round });
    }
    let Some(last) = history.last() else {
        return Ok((Why::NeverTested, None));
    };
    let round = last.verdict.round.clone();
    let since = last.verdict.day();
    let answered = matches!(
        last.follow_up,
        FollowUpState::Replied { .. } | FollowUpState::Closed { .. }
    );
    let why = match last.verdict.verdict {
        Verdict::NoVerdict => Why::NoVerdict { round },
        Verdict::OverLimit if answered => Why::OverAndAnswered { round },
        Verdict::OverLimit if asked => Why::AskedFor,
        Verdict::OverLimit => return Err(WhyNot::NotAnswered { round }),
        Verdict::WithinLimit(_) => Why::TestedBefore { on: since },
    };
    Ok((why, since))
}
