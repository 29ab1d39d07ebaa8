//! Where a product stands between the programme and its maker.

use crate::model::registers::{Followup, FollowupKind};
use chrono::{Days, NaiveDate};

/// A notice to a maker.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Told {
    /// Its day.
    pub on: NaiveDate,
    /// By when it asks for an answer.
    pub due_on: NaiveDate,
}

/// Where a product stands between the programme and its maker.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FollowUpState {
    /// Nothing to tell the maker.
    NotNeeded,
    /// The maker is to be told and has not been.
    ToSend,
    /// Told; an answer is awaited.
    Waiting(Told),
    /// Told, and the day of answer has passed. Only a run that is given a date can know.
    Overdue(Told),
    /// The maker answered.
    Replied {
        /// The notice, where one is registered.
        told: Option<Told>,
        /// Day of the answer.
        replied_on: NaiveDate,
        /// Whether it came after the day asked for.
        late: bool,
    },
    /// Nothing further is expected.
    Closed {
        /// The notice, where one is registered.
        told: Option<Told>,
        /// Day of the answer, where there was one.
        replied_on: Option<NaiveDate>,
        /// Since when.
        closed_on: NaiveDate,
    },
}

impl FollowUpState {
    /// The word in the data files.
    pub fn word(&self) -> &'static str {
        match self {
            FollowUpState::NotNeeded => "not_needed",
            FollowUpState::ToSend => "to_send",
            FollowUpState::Waiting(_) => "waiting",
            FollowUpState::Overdue(_) => "overdue",
            FollowUpState::Replied { .. } => "replied",
            FollowUpState::Closed { .. } => "closed",
        }
    }
}

/// The days that a notice to a maker turns on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoticeDays {
    /// Day of the letter.
    pub written: NaiveDate,
    /// By when an answer is asked for.
    pub reply_by: NaiveDate,
    /// The planned day of issue.
    pub publish: NaiveDate,
}

impl NoticeDays {
    /// From the latest notice that the register has, else from the day given; none where neither is known. A maker who is
    /// told again has the whole time again; what is entered for a day after the one given is not sent yet.
    pub fn of(
        followups: &[Followup],
        reply_days: u32,
        publish_days: u32,
        made_on: Option<NaiveDate>,
    ) -> Option<NoticeDays> {
        let is_sent = |event: &&Followup| made_on.is_none_or(|day| event.on <= day);
        let sent = followups
            .iter()
            .filter(is_sent)
            .rfind(|event| event.kind == FollowupKind::NoticeSent);
        let written = sent.map(|sent| sent.on).or(made_on)?;
        let after = |days: u32| written.checked_add_days(Days::new(days.into()));
        let reply_by = sent
            .and_then(|sent| sent.due_on)
            .or_else(|| after(reply_days))?;
        Some(NoticeDays {
            written,
            reply_by,
            publish: after(publish_days)?.max(reply_by),
        })
    }
}
