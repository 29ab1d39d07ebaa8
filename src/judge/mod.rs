//! What the readings come to: pairs, package results, verdicts, label reviews, statistics.
//!
//! Everything here is a function of its arguments: no file, clock, environment or printing. A reading goes one way:
//! extractions -> pairs -> package results -> verdicts -> statistics, a file a step.

/// Arithmetic as on paper.
pub mod paper;

/// Extractions -> pairs.
pub mod pairs;

/// Pairs -> one result and standing a package.
pub mod packages;

/// Words on the package -> claim and limit.
pub mod claims;

/// Ingredient words -> label review.
pub mod labels;

/// Packages -> one verdict a product and round.
pub mod verdicts;

/// Packages of known content -> whether the lab found what they hold.
mod blinds;

/// Registers and readings -> what can hardly be so.
pub mod plausibility;

/// Correspondence -> where things stand with the maker.
pub mod followups;

/// Registers, readings and the day -> whether a sheet may be published.
pub mod publication;

/// Rules -> the band round a limit that is too close to call.
pub mod close_call;

/// Verdicts -> what they say together.
pub mod statistics;

/// What to test next, what it costs, what it can show.
pub mod planning;

pub use verdicts::method_notes;

use crate::config::Config;
use crate::model::decided::JudgedProduct;
use crate::model::extraction::Extraction;
use crate::model::problem::{Code, Problems};
use crate::model::registers::Registers;
use crate::model::statistics::ProgrammeStatistics;
use crate::words::say;
use chrono::NaiveDate;
use std::borrow::Cow;

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

/// The table of label terms with the programme's own rows.
fn terms(registers: &Registers, problems: &mut Problems) -> Cow<'static, labels::Terms> {
    let built_in = labels::Terms::built_in();
    if registers.terms.is_empty() {
        return Cow::Borrowed(built_in);
    }
    let extension = built_in.extended(&registers.terms);
    for fault in extension.faults {
        problems.add(
            Code::RegisterError,
            fault.place,
            fault.message,
            say::do_mend_row(),
        );
    }
    Cow::Owned(extension.terms)
}
