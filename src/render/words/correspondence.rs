//! What passed between the programme and the maker: as the sheet tells it, with replies quoted whole, and as lists do.

use crate::model::followup::FollowUpState;
use crate::model::registers::{Followup, FollowupKind};
use crate::model::verdict::ProductVerdict;
use crate::render::words::breakable;
use crate::words::{Catalogue, Said, say, yes_or_no};
use chrono::NaiveDate;
use serde::Serialize;

/// What was said in the correspondence about a product, one sentence an event; none where nobody has said anything. The days
/// alone stand in the story.
pub fn told(product: &ProductVerdict, words: &Catalogue) -> Vec<String> {
    let with_words = product.followups.iter();
    words.each(with_words.filter_map(|one| event(one, words)))
}

/// An event with words of its own: a notice has none.
fn event(followup: &Followup, words: &Catalogue) -> Option<Said> {
    let statement = followup.statement.as_deref().unwrap_or_default().trim();
    let message = match followup.kind {
        FollowupKind::NoticeSent => return None,
        FollowupKind::Reply => say::told_reply,
        FollowupKind::Action => say::told_action,
        FollowupKind::Closed => say::told_closed,
    };
    (!statement.is_empty()).then(|| message(words.day(followup.on), statement))
}

/// Where a product stands with its maker.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Standing {
    /// In a few words.
    pub head: String,
    /// The day of the notice.
    pub told: Option<String>,
    /// By when it asks for an answer.
    pub due: Option<String>,
    /// The day of the answer.
    pub replied: Option<String>,
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
    let (head, told, replied_on) = match *state {
        FollowUpState::NotNeeded => (say::maker_not_needed(), None, None),
        FollowUpState::ToSend => (say::maker_to_send(), None, None),
        FollowUpState::Waiting(told) => (say::maker_waiting(), Some(told), None),
        FollowUpState::Overdue(told) => (say::maker_overdue(), Some(told), None),
        FollowUpState::Replied {
            told,
            replied_on,
            late,
        } => (say::maker_replied(yes_or_no(late)), told, Some(replied_on)),
        FollowUpState::Closed {
            told,
            replied_on,
            closed_on,
        } => (say::maker_closed(words.day(closed_on)), told, replied_on),
    };
    // Short, as in every column of days.
    let day = |day: Option<NaiveDate>| day.map(|day| day.to_string());
    Standing {
        head: words.say(&head),
        told: day(told.map(|told| told.on)),
        due: day(told.map(|told| told.due_on)),
        replied: day(replied_on),
        notes: last_words(followups, words),
    }
}

/// The last reply, and the last that was done.
fn last_words(followups: &[Followup], words: &Catalogue) -> Vec<Quote> {
    let last = |kinds: &[FollowupKind]| {
        let mut latest_first = followups.iter().rev();
        latest_first.find_map(|one| {
            let said = one.statement.as_deref();
            let said = said.filter(|_| kinds.contains(&one.kind))?;
            quote(said, one.kind == FollowupKind::Reply, words)
        })
    };
    let reply = last(&[FollowupKind::Reply]);
    let done = last(&[FollowupKind::Action, FollowupKind::Closed]);
    reply.into_iter().chain(done).collect()
}

fn quote(text: &str, reply: bool, words: &Catalogue) -> Option<Quote> {
    let text = text.trim();
    let is_long = text.chars().count() > LONGEST_QUOTE;
    (!text.is_empty()).then(|| Quote {
        text: match is_long {
            true => words.say(&say::maker_long_text()),
            false => breakable(text, 22),
        },
        reply: reply && !is_long,
    })
}
