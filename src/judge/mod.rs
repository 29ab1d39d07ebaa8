//! What the readings come to: pairs, package results, verdicts, label reviews, statistics.
//!
//! Everything here is a function of its arguments: no file, clock, environment or printing. A reading goes one way:
//! extractions -> pairs -> package results -> verdicts -> statistics, a file a step.

mod blinds;
pub mod claims;
pub mod close_call;
pub mod followups;
pub mod labels;
pub mod packages;
pub mod pairs;
pub mod paper;
pub mod planning;
pub mod plausibility;
pub mod publication;
pub mod statistics;
pub mod verdicts;

pub use verdicts::method_notes;

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::extraction::Extraction;
use crate::model::problem::Problems;
use crate::model::registers::Registers;
use crate::model::statistics::ProgrammeStatistics;
use chrono::NaiveDate;
use std::borrow::Cow;
use std::collections::BTreeMap;

/// Everything that the readings come to.
#[derive(Clone, Debug)]
pub struct Judged {
    /// By product id and round; only those with a package that counts.
    pub products: Vec<JudgedProduct>,
    /// All of them taken together.
    pub statistics: ProgrammeStatistics,
}

/// Decides everything that can be decided of the readings of registered packages.
///
/// `as_of` is the day on which an answer counts as overdue; without it none does.
pub fn judge(
    registers: &Registers,
    extractions: Vec<Extraction>,
    config: &Config,
    as_of: Option<NaiveDate>,
    problems: &mut Problems,
) -> Judged {
    let extractions = blinds::set_apart(registers, extractions, problems);
    plausibility::look_over(registers, &extractions, problems);
    let pairs = pairs::pair_up(extractions, registers, config, problems);
    let packages = packages::accept(pairs, &|package| {
        let product = registers.products.get(&package.product_id)?;
        let rule = claims::claim(&product.claim, config.rule).rule(config.rule);
        Some((rule, product))
    });
    let terms = terms(registers, problems);
    claims::ask(registers, config.rule.regime, problems);
    verdicts::ask_about_processing(registers, problems);
    let verdicts = verdicts::decide(packages, registers, &terms, config);
    plausibility::claims(&verdicts, problems);
    let statistics = statistics::summarise(&verdicts, config);
    let of_products = statistics::of_products(&verdicts, config);
    let before: Vec<_> = verdicts
        .iter()
        .map(|verdict| verdicts::earlier(verdict, &verdicts))
        .collect();
    let circumstances = publication::Circumstances {
        programme: &config.programme,
        doubts: &registers.doubts,
        as_of,
    };
    let products = verdicts
        .into_iter()
        .zip(of_products)
        .zip(before)
        .map(|((verdict, statistics), before)| JudgedProduct {
            statistics,
            follow_up: followups::state(&verdict, config.programme.reply_days, as_of),
            cautions: method_notes(&verdict),
            before: before.clone(),
            earlier: before,
            later: Vec::new(),
            next_round: verdicts::next_round(&verdict, registers),
            publication: publication::publication(&verdict, &circumstances, false),
            // What is printed is known later.
            publication_said: String::new(),
            exhibits: Vec::new(),
            sheet: None,
            verdict,
        })
        .collect();
    Judged {
        products,
        statistics,
    }
}

/// The rows of a table by what they have in common, each group in the order of the rows.
fn grouped<'a, T, K: Ord>(
    rows: impl IntoIterator<Item = &'a T>,
    key: impl Fn(&'a T) -> K,
) -> BTreeMap<K, Vec<&'a T>> {
    let mut groups: BTreeMap<K, Vec<&T>> = BTreeMap::new();
    for row in rows {
        groups.entry(key(row)).or_default().push(row);
    }
    groups
}

/// The table of label terms with the programme's own rows.
fn terms(registers: &Registers, problems: &mut Problems) -> Cow<'static, labels::Terms> {
    let built_in = labels::Terms::built_in();
    match registers.terms.as_slice() {
        [] => Cow::Borrowed(built_in),
        own => Cow::Owned(built_in.extended(own, problems)),
    }
}
