//! What a programme's first days ask for: the step that comes after what was done so far.

use crate::model::registers::Registers;
use chrono::{Days, NaiveDate};
use std::collections::BTreeSet;

/// The next step of a programme.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NextStep {
    /// No product is listed yet.
    ListProducts,
    /// Products are listed, and no package is: plan a round.
    Plan {
        /// Products listed.
        products: usize,
    },
    /// Packages are listed and not sent: make the form for the lab.
    Request {
        /// Their round.
        round: String,
        /// How many.
        packages: usize,
    },
    /// Packages are with the lab.
    Await {
        /// Their round.
        round: String,
        /// How many.
        packages: usize,
        /// The day on which they were sent, the first of them.
        sent_on: NaiveDate,
        /// The day on which the lab's answer is due.
        due_on: NaiveDate,
    },
}

/// What comes next, one step a round, and one where there is nothing yet. `reported` are the codes that a lab file has a row
/// for; a package sent `report_days` ago is due.
///
/// A package without a `sent_on` in a register that has the column is not sent; in one that has not, nobody can tell, and it
/// is asked whether the form was made.
pub fn next_steps(
    registers: &Registers,
    reported: &BTreeSet<String>,
    report_days: u32,
) -> Vec<NextStep> {
    if registers.products.is_empty() {
        return vec![NextStep::ListProducts];
    }
    if registers.packages.is_empty() {
        let products = registers.products.len();
        return vec![NextStep::Plan { products }];
    }
    let open = || {
        registers
            .packages
            .iter()
            .filter(|package| !reported.contains(&package.package_code))
    };
    let rounds: BTreeSet<&str> = open().map(|package| package.round.as_str()).collect();
    let mut steps = Vec::new();
    for round in rounds {
        let of_round = || open().filter(|package| package.round == round);
        // A spare on the shelf of a round that was sent is no task.
        let sent: Vec<NaiveDate> = of_round().filter_map(|package| package.sent_on).collect();
        let any_reported = registers
            .packages
            .iter()
            .any(|package| package.round == round && reported.contains(&package.package_code));
        let unreadable = of_round().any(|package| package.sent_on_unreadable);
        if let Some(sent_on) = sent.iter().min().copied() {
            steps.push(NextStep::Await {
                round: round.to_owned(),
                packages: sent.len(),
                sent_on,
                due_on: sent_on
                    .checked_add_days(Days::new(report_days.into()))
                    .unwrap_or(sent_on),
            });
        } else if !any_reported && !unreadable {
            steps.push(NextStep::Request {
                round: round.to_owned(),
                packages: of_round().count(),
            });
        }
    }
    steps
}
