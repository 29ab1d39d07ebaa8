//! Where a product stands between the programme and its maker.

use chrono::NaiveDate;

/// Where a product stands between the programme and its maker.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FollowUpState {
    /// Nothing to tell the maker.
    NotNeeded,
    /// The maker is to be told and has not been.
    ToSend,
    /// Told; an answer is awaited.
    Waiting {
        /// Day of the notice.
        told_on: NaiveDate,
        /// By when an answer is asked for.
        due_on: NaiveDate,
    },
    /// Told, and the day of answer has passed. Only a run that is given a date can know.
    Overdue {
        /// Day of the notice.
        told_on: NaiveDate,
        /// By when an answer was asked for.
        due_on: NaiveDate,
    },
    /// The maker answered.
    Replied {
        /// Day of the notice, where one is registered.
        told_on: Option<NaiveDate>,
        /// Day of the answer.
        replied_on: NaiveDate,
        /// Whether it came after the day asked for.
        late: bool,
    },
    /// Nothing further is expected.
    Closed {
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
            FollowUpState::Waiting { .. } => "waiting",
            FollowUpState::Overdue { .. } => "overdue",
            FollowUpState::Replied { .. } => "replied",
            FollowUpState::Closed { .. } => "closed",
        }
    }
}
