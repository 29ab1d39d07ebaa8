//! What to test next, what it costs and what it can show: pure, from the registers and what was decided so far.

pub mod bounds;
pub mod chances;
mod choose;
pub mod codes;
pub mod first_days;
mod prices;
mod quadrature;
pub mod scatter;

use crate::config::Config;
use crate::judge::statistics::binomial::{CONFIDENCE, needed_to_exclude};
use crate::model::decided::Decided;
use crate::model::planning::{
    Blind, CurvePoint, FindingLine, FindingPoint, GridCell, NextMoney, PlanWanted, PlannedProduct,
    Price, RoundPlan, Shows, Statement, Step, Variant,
};
use crate::model::problem::Problems;
use chances::{Design, Ruling};
use codes::Codes;
use prices::{Prices, costs, fits};
use scatter::Scatters;
use std::collections::BTreeSet;

/// Shares that a statement may be wanted about.
const STATEMENTS: [f64; 6] = [0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

/// Of about so many packages one is a blind.
const BLIND_IN: usize = 20;

/// Plans a round.
pub fn plan(decided: &Decided, wanted: &PlanWanted, config: &Config) -> RoundPlan {
    let planning = &config.planning;
    let registers = &decided.registers;
    let round = wanted.round.clone().unwrap_or_else(|| next_round(decided));
    // Rows of label terms that cannot be used were told when the folder was judged.
    let terms = super::terms(registers, &mut Problems::default());
    let choice = choose::choose(decided, &terms, &round, wanted, config);
    let prices = Prices::paid(&registers.packages, &registers.products, planning);
    let expected: Vec<Option<Price>> = choice
        .candidates
        .iter()
        .map(|candidate| prices.of(&candidate.product))
        .collect();
    let blinds_of = |products: usize, packages: usize| {
        if wanted.blinds {
            blinds_for(products * packages)
        } else {
            0
        }
    };
    let cost_of = |products: usize, packages: usize, extractions: usize| {
        let blinds = blinds_of(products, packages);
        costs(
            &expected[..products],
            packages,
            extractions,
            blinds,
            planning,
        )
    };
    let carried = |packages: usize, extractions: usize| {
        let budget = wanted.budget?;
        let affordable = |n: &usize| {
            fits(
                cost_of(*n, packages, extractions).total.unwrap_or(0.0),
                budget,
            )
        };
        (0..=expected.len()).rev().find(affordable).or(Some(0))
    };
    let (packages, extractions) = (wanted.packages, wanted.extractions);
    let count = carried(packages, extractions).unwrap_or(expected.len());

    let mut candidates = choice.candidates;
    let later = candidates.split_off(count);
    let mut codes = Codes::new(wanted.seed, &wanted.taken);
    let chosen: Vec<PlannedProduct> = candidates
        .into_iter()
        .zip(&expected)
        .map(|(candidate, price)| PlannedProduct {
            candidate,
            codes: codes.draw(packages),
            price: *price,
        })
        .collect();
    let blinds = codes.draw(blinds_of(count, packages)).into_iter();
    let blinds = blinds.zip([false, true].into_iter().cycle());
    let blinds = blinds
        .map(|(code, spiked)| Blind { code, spiked })
        .collect();

    let verdicts: Vec<_> = decided
        .products
        .iter()
        .map(|judged| &judged.verdict)
        .collect();
    let scatters = scatter::scatters(&verdicts, config.testing.relative_repeatability);
    let designs = [
        (packages, extractions),
        (packages + 1, extractions),
        (packages, extractions + 1),
    ];
    let ruling = Ruling::of(config);
    let limit = config.rule.limit.ppm.0;
    let variants = designs
        .into_iter()
        .map(|(packages, extractions)| {
            let design = scatters.design(packages, extractions);
            Variant {
                packages,
                extractions,
                costs: cost_of(count, packages, extractions),
                products_in_budget: carried(packages, extractions),
                finds_a_tenth: chances::at_least_one(0.1, packages),
                standard_error: chances::standard_error(&design),
                at_half: chances::verdict(limit / 2.0, &design, &ruling),
                at_double: chances::verdict(limit * 2.0, &design, &ruling),
            }
        })
        .collect();
    let typical = prices.typical(&expected[..count]);
    RoundPlan {
        round,
        packages,
        extractions,
        blinds,
        costs: cost_of(count, packages, extractions),
        budget: wanted.budget,
        variants,
        shows: shows(&scatters, typical, wanted, config),
        chosen,
        later,
        decided_by_label: choice.decided_by_label,
        left_out: choice.left_out,
    }
}

/// Blinds for so many packages: about one in twenty, and of each kind one.
fn blinds_for(packages: usize) -> usize {
    match packages {
        0 => 0,
        _ => packages.div_ceil(BLIND_IN).max(2),
    }
}

/// The number after the largest of the rounds that are numbers; where none is, 1.
fn next_round(decided: &Decided) -> String {
    let rounds = decided.registers.packages.iter();
    let numbers = rounds.filter_map(|package| package.round.parse::<u32>().ok());
    numbers
        .max()
        .map_or(1, |last| last.saturating_add(1))
        .to_string()
}

impl Scatters {
    fn design(&self, packages: usize, extractions: usize) -> Design {
        Design {
            packages,
            extractions,
            between: self.between.log_sd,
            within: self.within.log_sd,
        }
    }
}

fn shows(
    scatters: &Scatters,
    package_price: Option<f64>,
    wanted: &PlanWanted,
    config: &Config,
) -> Shows {
    const POINTS: i32 = 24;
    const MOST_PACKAGES: usize = 6;
    const EXTRACTIONS: [usize; 3] = [2, 3, 4];
    let ruling = Ruling::of(config);
    let limit = config.rule.limit.ppm.0;
    let plan = scatters.design(wanted.packages, wanted.extractions);
    // From a tenth of the limit to ten times it, in equal steps of the logarithm.
    let curve = (-POINTS..=POINTS).map(|step| {
        let mean = limit * 10f64.powf(f64::from(step) / f64::from(POINTS));
        CurvePoint {
            mean,
            chances: chances::verdict(mean, &plan, &ruling),
        }
    });
    let grid = EXTRACTIONS.into_iter().flat_map(|extractions| {
        (1..=MOST_PACKAGES).map(move |packages| {
            let design = scatters.design(packages, extractions);
            GridCell {
                packages,
                extractions,
                over_at_double: chances::verdict(limit * 2.0, &design, &ruling).over,
                within_at_half: chances::verdict(limit / 2.0, &design, &ruling).within,
            }
        })
    });
    let of_package = |extractions: usize| {
        let lab = config.planning.extraction_price?;
        Some(package_price? + lab * extractions as f64)
    };
    let statements = STATEMENTS.into_iter().filter_map(|share| {
        let packages = needed_to_exclude(share, CONFIDENCE)?;
        Some(Statement {
            share,
            packages,
            cost: of_package(wanted.extractions).map(|cost| cost * packages as f64),
        })
    });
    let lab = config.planning.extraction_price;
    Shows {
        between: scatters.between,
        within: scatters.within,
        finds: finds(wanted.packages),
        curve: curve.collect(),
        grid: grid.collect(),
        statements: statements.collect(),
        next: next_money(
            scatters,
            &plan,
            of_package(wanted.extractions),
            lab.map(|lab| lab * wanted.packages as f64),
        ),
    }
}

/// The chance that 1, 2, 3, 6 and `own` packages hold at least one over, where up to half of all are.
fn finds(own: usize) -> Vec<FindingLine> {
    const STEPS: u32 = 100;
    let counts: BTreeSet<usize> = [1, 2, 3, 6, own].into();
    let line = |packages| FindingLine {
        packages,
        points: (0..=STEPS)
            .map(|step| f64::from(step) / f64::from(2 * STEPS))
            .map(|share| FindingPoint {
                share,
                chance: chances::at_least_one(share, packages),
            })
            .collect(),
    };
    counts.into_iter().map(line).collect()
}

/// What a further package, or a further extraction of each, does to the standard error of a product's mean: the larger fall
/// of its square for the same money goes first, the larger fall itself where prices are not known.
fn next_money(
    scatters: &Scatters,
    plan: &Design,
    package_cost: Option<f64>,
    extraction_cost: Option<f64>,
) -> NextMoney {
    let now = chances::standard_error(plan);
    let step = |design: Design, cost| Step {
        standard_error: chances::standard_error(&design),
        cost,
    };
    let package = step(
        scatters.design(plan.packages + 1, plan.extractions),
        package_cost,
    );
    let extraction = step(
        scatters.design(plan.packages, plan.extractions + 1),
        extraction_cost,
    );
    let gain = |step: &Step| now.powi(2) - step.standard_error.powi(2);
    let package_first = match (package.cost, extraction.cost) {
        // Gain for money, multiplied out: no price may be nothing.
        (Some(of_package), Some(of_extraction)) => {
            gain(&package) * of_extraction >= gain(&extraction) * of_package
        }
        _ => gain(&package) >= gain(&extraction),
    };
    NextMoney {
        package,
        extraction,
        package_first,
    }
}
