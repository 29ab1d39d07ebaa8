//! What passed between the programme and the maker: as the sheet tells it, with replies quoted whole, and as lists do.

use crate::model::followup::FollowUpState;
use crate::model::registers::{Followup, FollowupKind};
use crate::model::verdict::ProductVerdict;
use crate::render::numbers;
use crate::render::words::breakable;
use serde::Serialize;

/// The correspondence about a product, one sentence an event; none where there is nothing to tell.
pub fn told(product: &ProductVerdict) -> Vec<String> {
    if product.followups.is_empty() {
        let said = "No notice to the maker is on record yet.";
        return if product.notify_maker {
            vec![said.to_owned()]
        } else {
            Vec::new()
        };
    }
    let mut said: Vec<String> = product.followups.iter().map(event).collect();
    let has = |kind| {
        product
            .followups
            .iter()
            .any(|followup| followup.kind == kind)
    };
    if has(FollowupKind::NoticeSent) && !has(FollowupKind::Reply) {
        said.push("No statement from the maker is on record.".to_owned());
    }
    said
}

fn event(followup: &Followup) -> String {
    let on = numbers::date(followup.on);
    let said = followup
        .statement
        .as_deref()
        .map(str::trim)
        .filter(|said| !said.is_empty());
    match (followup.kind, said) {
        (FollowupKind::NoticeSent, _) => match followup.due_on {
            Some(due) => format!(
                "The maker was told on {on} and asked to answer by {}.",
                numbers::date(due)
            ),
            None => format!("The maker was told on {on}."),
        },
        (FollowupKind::Reply, Some(said)) => format!("The maker answered on {on}: “{said}”"),
        (FollowupKind::Reply, None) => format!("The maker answered on {on}."),
        (FollowupKind::Action, Some(said)) => {
            format!("On {on} a step of the maker’s was noted: {said}")
        }
        (FollowupKind::Action, None) => format!("The maker took a step on {on}."),
        (FollowupKind::Closed, Some(said)) => format!("Closed on {on}: {said}"),
        (FollowupKind::Closed, None) => format!("Closed on {on}."),
    }
}

/// Where a product stands with its maker.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Standing {
    /// In a few words.
    pub head: String,
    /// The days.
    pub days: String,
    /// The maker's own words, and what was done; as written.
    pub notes: Vec<Quote>,
}

/// What a person wrote into the register.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Quote {
    /// As written.
    pub text: String,
    /// Whether it is the maker's reply, which is set in quotation marks.
    pub reply: bool,
}

/// A reply longer than this is printed on the product's own sheet alone.
const LONGEST_QUOTE: usize = 260;

/// Where a product stands with its maker.
pub fn standing(state: &FollowUpState, followups: &[Followup]) -> Standing {
    let date = numbers::date;
    let (head, days) = match *state {
        FollowUpState::NotNeeded => ("Nothing to tell the maker".to_owned(), String::new()),
        FollowUpState::ToSend => ("The maker has not been told yet".to_owned(), String::new()),
        FollowUpState::Waiting { told_on, due_on } => (
            "Waiting for a reply".to_owned(),
            format!("Told {}, reply due {}.", date(told_on), date(due_on)),
        ),
        FollowUpState::Overdue { told_on, due_on } => (
            "No reply by the due date".to_owned(),
            format!("Told {}, reply was due {}.", date(told_on), date(due_on)),
        ),
        FollowUpState::Replied {
            told_on,
            replied_on,
            late,
        } => (
            if late {
                "Reply came late"
            } else {
                "The maker replied"
            }
            .to_owned(),
            match told_on {
                Some(told_on) => format!("Told {}, replied {}.", date(told_on), date(replied_on)),
                None => format!("Replied {}.", date(replied_on)),
            },
        ),
        FollowUpState::Closed { closed_on } => {
            ("Closed".to_owned(), format!("Since {}.", date(closed_on)))
        }
    };
    Standing {
        head,
        days,
        notes: last_words(followups),
    }
}

/// The last reply, and the last that was done.
fn last_words(followups: &[Followup]) -> Vec<Quote> {
    let last = |kinds: &[FollowupKind]| {
        let mut latest_first = followups.iter().rev();
        latest_first.find_map(|one| {
            let said = one
                .statement
                .as_deref()
                .filter(|_| kinds.contains(&one.kind))?;
            quote(said, one.kind == FollowupKind::Reply)
        })
    };
    [
        last(&[FollowupKind::Reply]),
        last(&[FollowupKind::Action, FollowupKind::Closed]),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn quote(text: &str, reply: bool) -> Option<Quote> {
    let text = text.trim();
    if text.is_empty() {
        return None;
    }
    if text.chars().count() > LONGEST_QUOTE {
        return Some(Quote {
            text: "The whole text is on the product’s sheet.".to_owned(),
            reply: false,
        });
    }
    Some(Quote {
        text: breakable(text, 22),
        reply,
    })
}
