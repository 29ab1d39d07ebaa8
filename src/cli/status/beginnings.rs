//! The steps before a lab's file is there: list products, plan, send, wait.

use crate::cli::status::agenda::{Kind, Task};
use crate::pipeline::planning::NextStep;
use chrono::NaiveDate;

/// A step as a thing to do; none where it is told as something overdue.
pub fn task(step: NextStep, today: NaiveDate) -> Option<Task> {
    let (kind, subject, what, since) = match step {
        NextStep::ListProducts => (
            Kind::Plan,
            "the programme".to_owned(),
            "list the foods to test in the register of products, a row each".to_owned(),
            None,
        ),
        NextStep::Plan { products } => (
            Kind::Plan,
            "the first round".to_owned(),
            format!(
                "{} listed and no package bought: `galleyproof plan` says what to buy, what it costs and what it can show",
                counted(products, "product is", "products are")
            ),
            None,
        ),
        NextStep::Request { round, packages } => (
            Kind::Request,
            format!("round {round}"),
            format!(
                "{} listed and not sent: `galleyproof request --round {round}` makes the form for the lab; put the day of sending into \
                 sent_on",
                counted(packages, "package is", "packages are")
            ),
            None,
        ),
        NextStep::Await {
            round,
            packages,
            sent_on,
            due_on,
        } => {
            if due_on <= today {
                return None;
            }
            (
                Kind::Await,
                format!("round {round}"),
                format!(
                    "{} sent on {sent_on}; the lab’s answer is due by {due_on}",
                    counted(packages, "package was", "packages were")
                ),
                Some(sent_on),
            )
        }
    };
    Some(Task {
        kind,
        subject,
        name: None,
        what,
        since,
    })
}

fn counted(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}
