//! What needs a person now, in the order in which it should be done.

use crate::model::decided::{Decided, JudgedProduct};
use crate::model::followup::{FollowUpState, Told};
use crate::model::pair::PairState;
use crate::model::place::Place;
use crate::model::problem::{Code, Problem, Severity};
use crate::model::publication::PublicationState;
use crate::model::registers::FollowupKind;
use crate::pipeline::states;
use crate::words::english;
use chrono::{Days, NaiveDate};

/// One thing to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Task {
    /// What kind of thing.
    pub kind: Kind,
    /// What it is about: a package, a product and round, a place in a file.
    pub subject: String,
    /// The product's name, where it is about one.
    pub name: Option<String>,
    /// What is to be done, in words.
    pub what: String,
    /// The day from which it counts, where there is one.
    pub since: Option<NaiveDate>,
}

/// Kinds of things to do, in their order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// A sheet may be published now.
    IssueSheet,
    /// A letter that takes back an accusation, or makes one after a sheet without.
    SendCorrection,
    /// Two reports of one extraction differ.
    Conflict,
    /// Something in a file could not be used.
    Error,
    /// Something in a register looks wrong and can only be settled by asking.
    Question,
    /// A pair disagrees or is not complete.
    RepeatPair,
    /// A maker is to be told.
    SendNotice,
    /// A maker's answer is overdue.
    ReplyOverdue,
    /// A package was sent and nothing has been reported.
    NotReported,
    /// A day that will come: an answer is due, a sheet may be published.
    Coming,
    /// A sheet is held, or waits for the lab.
    Held,
    /// The last test was long ago.
    TestAgain,
    /// Nothing is bought yet: plan a round.
    Plan,
    /// Packages are listed and not sent.
    Request,
    /// Packages are with the lab; nothing is to be done until its answer is due.
    Await,
}

impl Kind {
    /// Every kind with the heading above it, in order.
    pub const ALL: &'static [(Kind, &'static str)] = &[
        (Kind::IssueSheet, "May be published now"),
        (
            Kind::SendCorrection,
            "Letters of correction to send at once",
        ),
        (Kind::Conflict, "Conflicts to settle"),
        (Kind::Error, "Other errors in files"),
        (Kind::Question, "Questions about the registers"),
        (Kind::RepeatPair, "Pairs to repeat"),
        (Kind::SendNotice, "Notices to send"),
        (Kind::ReplyOverdue, "Replies overdue"),
        (Kind::NotReported, "Packages sent and not reported"),
        (Kind::Coming, "Coming up, by day"),
        (Kind::Held, "Held, or waiting for the lab"),
        (Kind::TestAgain, "Products due again"),
        (Kind::Plan, "Rounds to plan"),
        (Kind::Request, "Packages to send"),
        (Kind::Await, "With the lab"),
    ];

    /// The word in the data.
    pub fn word(self) -> &'static str {
        match self {
            Kind::Conflict => "conflict",
            Kind::Error => "error",
            Kind::Question => "question",
            Kind::RepeatPair => "repeat_pair",
            Kind::SendNotice => "send_notice",
            Kind::ReplyOverdue => "reply_overdue",
            Kind::NotReported => "not_reported",
            Kind::IssueSheet => "issue_sheet",
            Kind::SendCorrection => "send_correction",
            Kind::Coming => "coming",
            Kind::Held => "held",
            Kind::TestAgain => "test_again",
            Kind::Plan => "plan",
            Kind::Request => "request",
            Kind::Await => "await",
        }
    }
}

/// How long is too long.
#[derive(Clone, Copy, Debug)]
pub struct Patience {
    /// Days from sending a package after which a report is missed.
    pub report_days: u32,
    /// Days from a product's last test after which it is due again.
    pub retest_days: u32,
}

/// Everything that needs a person on this day, in the order in which it should be done.
pub fn agenda(decided: &Decided, today: NaiveDate, patience: Patience) -> Vec<Task> {
    let mut tasks = Vec::new();
    tasks.extend(decided.problems.sorted().into_iter().filter_map(error));
    for judged in &decided.products {
        tasks.extend(repeats(judged));
        if judged.publication.is_reported() {
            tasks.extend(correspondence(judged));
        }
        tasks.extend(publication(judged));
        tasks.extend(coming(judged, today));
    }
    tasks.extend(unreported(decided, today, patience.report_days));
    tasks.extend(due_again(decided, today, patience.retest_days));
    tasks.sort_by_key(|task| (task.kind, task.since));
    tasks
}

/// Whether it is about what the programme keeps itself, and not about what a lab sent.
fn is_of_the_programme(problem: &Problem) -> bool {
    let mut kept = ["registers/", "archive/"].into_iter();
    kept.any(|folder| problem.place.file.starts_with(folder))
}

fn error(problem: &Problem) -> Option<Task> {
    let kind = match (problem.code, problem.severity()) {
        (Code::Conflict, _) => Kind::Conflict,
        (_, Severity::Error) => Kind::Error,
        (Code::Suspicious, _) if is_of_the_programme(problem) => Kind::Question,
        _ => return None,
    };
    let what = format!("{} {}", english().found(problem), english().to_do(problem));
    let subject = if problem.place == Place::default() {
        "the folder".to_owned()
    } else {
        problem.place.to_string()
    };
    Some(Task {
        kind,
        subject,
        name: None,
        what: what.trim_end().to_owned(),
        since: None,
    })
}

fn repeats(judged: &JudgedProduct) -> Vec<Task> {
    let name = &judged.verdict.product.name;
    let packages = judged.verdict.packages.iter();
    let asked = packages.filter_map(|package| {
        let what = match package.pair.state {
            PairState::Disagree => "its extractions disagree: ask the lab to repeat them",
            PairState::Incomplete => "an extraction is missing: ask the lab to complete the pair",
            PairState::Agree | PairState::Missing => return None,
        };
        Some(Task {
            kind: Kind::RepeatPair,
            subject: package.pair.package.package_code.clone(),
            name: Some(name.clone()),
            what: what.to_owned(),
            since: package
                .pair
                .extractions
                .iter()
                .filter_map(|paired| paired.extraction.tested_on)
                .max(),
        })
    });
    asked.collect()
}

fn correspondence(judged: &JudgedProduct) -> Option<Task> {
    let verdict = &judged.verdict;
    let (kind, what, since) = match judged.follow_up {
        FollowUpState::ToSend => {
            let gap = match verdict.product.maker_email {
                Some(_) => "",
                None => " The register has no address for the maker.",
            };
            (
                Kind::SendNotice,
                format!(
                    "the maker is to be told: drafts/{}.eml is ready.{gap}",
                    verdict.stem()
                ),
                None,
            )
        }
        FollowUpState::Overdue(Told { on, due_on }) => {
            let what = format!(
                "the maker was told on {on} and asked to answer by {due_on}; no answer is registered"
            );
            (Kind::ReplyOverdue, what, Some(due_on))
        }
        FollowUpState::NotNeeded
        | FollowUpState::Waiting(_)
        | FollowUpState::Replied { .. }
        | FollowUpState::Closed { .. } => return None,
    };
    Some(Task {
        kind,
        subject: subject(judged),
        name: Some(verdict.product.name.clone()),
        what,
        since,
    })
}

/// Packages without a single reported result, as many days after they were sent.
fn unreported(decided: &Decided, today: NaiveDate, days: u32) -> Vec<Task> {
    let packages = decided.products.iter().flat_map(|judged| {
        let name = &judged.verdict.product.name;
        judged
            .verdict
            .packages
            .iter()
            .map(move |package| (name, &package.pair))
    });
    let late = packages.filter_map(|(name, pair)| {
        let sent_on = pair.package.sent_on?;
        let waited = today.signed_duration_since(sent_on).num_days();
        (pair.state == PairState::Missing && waited >= i64::from(days)).then(|| Task {
            kind: Kind::NotReported,
            subject: pair.package.package_code.clone(),
            name: Some(name.clone()),
            what: format!("sent on {sent_on}, {waited} days ago; ask the lab"),
            since: Some(sent_on),
        })
    });
    late.collect()
}

/// What may be issued, what is held, and a correction that is owed.
fn publication(judged: &JudgedProduct) -> Vec<Task> {
    let publication = &judged.publication;
    let kind = match publication.state {
        PublicationState::Ready => Some(Kind::IssueSheet),
        PublicationState::Held | PublicationState::Waiting => Some(Kind::Held),
        PublicationState::WithLab | PublicationState::Published => None,
    };
    let task = |kind, what: String, since| Task {
        kind,
        subject: subject(judged),
        name: Some(judged.verdict.product.name.clone()),
        what,
        since,
    };
    let reason = match (kind, publication.revision) {
        (Some(Kind::IssueSheet), 2..) => {
            format!(" Revision {} needs a reason.", publication.revision)
        }
        _ => String::new(),
    };
    let mut tasks: Vec<Task> = kind
        .map(|kind| {
            let [amount, label] = states::judgements(judged);
            let what = format!("{}{reason} [{amount}; {label}]", states::standing(judged));
            task(kind, what, publication.may_publish_on)
        })
        .into_iter()
        .collect();
    tasks.extend(publication.correction.and_then(|correction| {
        let since = correction.issued_on.unwrap_or(correction.of_day);
        let letters = judged.verdict.followups.iter();
        let is_told = letters
            .filter(|event| event.kind == FollowupKind::NoticeSent)
            .any(|event| event.on > correction.of_day && event.on >= since);
        let what = format!(
            "drafts/{}.eml corrects revision {} of {}. When it is sent: `galleyproof log notice-sent {}`",
            judged.verdict.stem(),
            correction.of_revision,
            correction.of_day,
            judged.verdict.product.product_id
        );
        (!is_told).then(|| task(Kind::SendCorrection, what, Some(since)))
    }));
    tasks
}

/// The days to come: an answer is due, a held sheet may be published.
fn coming(judged: &JudgedProduct, today: NaiveDate) -> Vec<Task> {
    let task = |what: &str, day: NaiveDate| Task {
        kind: Kind::Coming,
        subject: subject(judged),
        name: Some(judged.verdict.product.name.clone()),
        what: format!("{day}: {what}"),
        since: Some(day),
    };
    let mut tasks = Vec::new();
    if let FollowUpState::Waiting(told) = judged.follow_up {
        tasks.push(task("the maker’s answer is due", told.due_on));
    }
    let publication = &judged.publication;
    if let (PublicationState::Held, Some(day)) = (publication.state, publication.may_publish_on)
        && day > today
    {
        tasks.push(task("it may be published", day));
    }
    tasks
}

/// Products of which every round was tested long ago, and of which no package is under way.
fn due_again(decided: &Decided, today: NaiveDate, days: u32) -> Vec<Task> {
    let products = decided.registers.products.values();
    let due = products.filter_map(|product| {
        let rounds: Vec<&JudgedProduct> = decided
            .products
            .iter()
            .filter(|judged| judged.verdict.product.product_id == product.product_id)
            .collect();
        let last = rounds
            .iter()
            .filter_map(|judged| judged.verdict.tested_on())
            .max()?;
        let under_way = rounds
            .iter()
            .flat_map(|judged| &judged.verdict.packages)
            .any(|package| {
                package.pair.state == PairState::Missing
                    && package.pair.package.sent_on > Some(last)
            });
        let due_on = last.checked_add_days(Days::new(days.into()))?;
        (due_on <= today && !under_way).then(|| Task {
            kind: Kind::TestAgain,
            subject: product.product_id.clone(),
            name: Some(product.name.clone()),
            what: format!("last tested on {last}"),
            since: Some(due_on),
        })
    });
    due.collect()
}

fn subject(judged: &JudgedProduct) -> String {
    format!(
        "{}, round {}",
        judged.verdict.product.product_id, judged.verdict.round
    )
}

#[cfg(test)]
mod tests;
