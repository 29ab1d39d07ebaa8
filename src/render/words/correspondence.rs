//! What passed between the programme and the maker: as the sheet tells it, with replies quoted whole, and as lists do.

use crate::model::followup::FollowUpState;
use crate::model::registers::{Followup, FollowupKind};
use crate::model::verdict::ProductVerdict;
use crate::render::words::breakable;
use crate::words::{Catalogue, Said, say};
use serde::Serialize;

/// What was said in the correspondence about a product, one sentence an event; none where nobody has said anything. The days
/// alone stand in the story.
pub fn told(product: &ProductVerdict, words: &Catalogue) -> Vec<String> {
    let with_words = product.followups.iter().filter_map(event);
    with_words.map(|said| words.say(&said(words))).collect()
}

/// An event with words of its own: a notice has none.
fn event(followup: &Followup) -> Option<impl Fn(&Catalogue) -> Said> {
    let statement = followup.statement.as_deref().unwrap_or_default().trim();
    let message = match followup.kind {
        FollowupKind::NoticeSent => return None,
        FollowupKind::Reply => say::told_reply,
        FollowupKind::Action => say::told_action,
        FollowupKind::Closed => say::told_closed,
    };
    (!statement.is_empty())
        .then_some(move |words: &Catalogue| message(words.day(followup.on), statement))
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
pub fn standing(state: &FollowUpState, followups: &[Followup], words: &Catalogue) -> Standing {
    let day = |day| words.day(day);
    let (head, days) = match *state {
        FollowUpState::NotNeeded => (say::maker_not_needed(), None),
        FollowUpState::ToSend => (say::maker_to_send(), None),
        FollowUpState::Waiting { told_on, due_on } => (
            say::maker_waiting(),
            Some(say::maker_days_due(day(told_on), day(due_on))),
        ),
        FollowUpState::Overdue { told_on, due_on } => (
            say::maker_overdue(),
            Some(say::maker_days_was_due(day(told_on), day(due_on))),
        ),
        FollowUpState::Replied {
            told_on,
            replied_on,
            late,
        } => (
            say::maker_replied(if late { "yes" } else { "no" }),
            Some(match told_on {
                Some(told_on) => say::maker_days_replied(day(told_on), day(replied_on)),
                None => say::maker_days_replied_untold(day(replied_on)),
            }),
        ),
        FollowUpState::Closed { closed_on } => (
            say::maker_closed(),
            Some(say::maker_days_since(day(closed_on))),
        ),
    };
    Standing {
        head: words.say(&head),
        days: days.map(|said| words.say(&said)).unwrap_or_default(),
        notes: last_words(followups, words),
    }
}

/// The last reply, and the last that was done.
fn last_words(followups: &[Followup], words: &Catalogue) -> Vec<Quote> {
    let last = |kinds: &[FollowupKind]| {
        let mut latest_first = followups.iter().rev();
        latest_first.find_map(|one| {
            let said = one
                .statement
                .as_deref()
                .filter(|_| kinds.contains(&one.kind))?;
            quote(said, one.kind == FollowupKind::Reply, words)
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

fn quote(text: &str, reply: bool, words: &Catalogue) -> Option<Quote> {
    let text = text.trim();
    if text.is_empty() {
        return None;
    }
    if text.chars().count() > LONGEST_QUOTE {
        return Some(Quote {
            text: words.say(&say::maker_long_text()),
            reply: false,
        });
    }
    Some(Quote {
        text: breakable(text, 22),
        reply,
    })
}
