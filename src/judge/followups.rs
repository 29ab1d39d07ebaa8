//! Correspondence with a maker -> where things stand.

use crate::model::followup::{FollowUpState, Told};
use crate::model::registers::{Followup, FollowupKind};
use crate::model::verdict::ProductVerdict;
use chrono::{Days, NaiveDate};

/// Where a product stands between the programme and its maker.
///
/// What came after the latest notice decides; a notice without a day of answer asks for one within `reply_days`. An
/// action of the maker's is an answer too. Only a given day (`as_of`) can make an answer overdue; what is entered for a later
/// day has not happened yet.
pub fn state(verdict: &ProductVerdict, reply_days: u32, as_of: Option<NaiveDate>) -> FollowUpState {
    let has_happened = |event: &&Followup| as_of.is_none_or(|day| event.on <= day);
    let events: Vec<&Followup> = verdict.followups.iter().filter(has_happened).collect();
    let notice_at = events
        .iter()
        .rposition(|event| event.kind == FollowupKind::NoticeSent);
    let told = notice_at.map(|at| Told {
        on: events[at].on,
        due_on: due_on(events[at], reply_days),
    });
    let since = &events[notice_at.map_or(0, |at| at + 1)..];
    let last = |kind| since.iter().rfind(|event| event.kind == kind);
    let answer = since
        .iter()
        .find(|event| matches!(event.kind, FollowupKind::Reply | FollowupKind::Action));

    if let Some(closed) = last(FollowupKind::Closed) {
        return FollowUpState::Closed {
            told,
            replied_on: answer.map(|answer| answer.on),
            closed_on: closed.on,
        };
    }
    match (answer, told) {
        (Some(answer), told) => FollowUpState::Replied {
            told,
            replied_on: answer.on,
            late: told.is_some_and(|told| answer.on > told.due_on),
        },
        (None, Some(told)) if as_of.is_some_and(|day| day > told.due_on) => {
            FollowUpState::Overdue(told)
        }
        (None, Some(told)) => FollowUpState::Waiting(told),
        (None, None) if verdict.notify_maker => FollowUpState::ToSend,
        (None, None) => FollowUpState::NotNeeded,
    }
}

/// The day of answer that a notice asks for.
fn due_on(notice: &Followup, reply_days: u32) -> NaiveDate {
    let usual = notice.on.checked_add_days(Days::new(reply_days.into()));
    notice.due_on.or(usual).unwrap_or(NaiveDate::MAX)
}
