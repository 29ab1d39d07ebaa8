//! Whether a results sheet may be published, since when, and what it waits for.

use crate::model::place::Place;
use chrono::NaiveDate;

/// Whether one product and round may be published.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Publication {
    /// The state.
    pub state: PublicationState,
    /// From which day the maker has had the time to answer; none where no notice has been sent.
    pub may_publish_on: Option<NaiveDate>,
    /// The revision that is published, or that the proof is one of; from 1.
    pub revision: u32,
    /// What the state rests on.
    pub why: Why,
    /// A letter that says that an accusation was made or taken back.
    pub correction: Option<Correction>,
}

/// Whether one product and round may be published; a later state has passed what holds the earlier ones.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum PublicationState {
    /// The lab has reported nothing.
    WithLab,
    /// The lab has reported a part, and that shows nothing over the limit.
    Waiting,
    /// Something must happen first.
    Held,
    /// It may be issued.
    Ready,
    /// The last issued revision says the same as the proof.
    Published,
}

impl PublicationState {
    /// Every state with its word in the data files.
    pub const ALL: &'static [(PublicationState, &'static str)] = &[
        (PublicationState::WithLab, "with_lab"),
        (PublicationState::Waiting, "waiting"),
        (PublicationState::Held, "held"),
        (PublicationState::Ready, "ready"),
        (PublicationState::Published, "published"),
    ];

    /// The word in the data files.
    pub fn word(self) -> &'static str {
        let mut all = Self::ALL.iter();
        all.find(|(state, _)| *state == self)
            .map_or("", |(_, word)| word)
    }
}

/// What a state rests on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Why {
    /// No lab file has a row for any of its packages.
    NothingReported,
    /// No lab file has a row for these packages.
    NotReported(Vec<String>),
    /// These places in the registers leave something open.
    Register(Vec<Place>),
    /// These cells of lab files give no result, or contradict another one.
    Reading(Vec<Place>),
    /// The maker has not been told.
    NoNotice,
    /// The maker was told, has not answered, and has until this day.
    NoReply {
        /// Day of the notice.
        told_on: NaiveDate,
        /// The first day on which the sheet may be published without an answer.
        until: NaiveDate,
    },
    /// Nothing is to be told the maker first.
    NothingToTell,
    /// The maker answered.
    Answered(NaiveDate),
    /// The maker was told and had the time to answer.
    TimeIsOver {
        /// Day of the notice.
        told_on: NaiveDate,
        /// The first day on which the sheet may be published without an answer.
        since: NaiveDate,
    },
    /// What was published is corrected; that waits for nobody.
    Corrects,
    /// It was issued on this day.
    Issued(NaiveDate),
}

/// An accusation that was made after a sheet without one, or taken back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Correction {
    /// The revision that said otherwise.
    pub of_revision: u32,
    /// Its day of issue.
    pub of_day: NaiveDate,
    /// Day of issue of the revision that corrects it; none while that is a proof.
    pub issued_on: Option<NaiveDate>,
    /// What the earlier revision said.
    pub said: Accusation,
    /// What is said now.
    pub says: Accusation,
}

/// What a sheet says against a product: its verdict and its label, in the words of the data files.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Accusation {
    /// A package is over the limit.
    pub over_limit: bool,
    /// The label names a source of gluten.
    pub gluten_source: bool,
}

impl Accusation {
    /// Whether the maker is to be told.
    pub fn accuses(self) -> bool {
        self.over_limit || self.gluten_source
    }
}

impl Publication {
    /// Before anything is known of it.
    pub fn of_nothing() -> Publication {
        Publication {
            state: PublicationState::WithLab,
            may_publish_on: None,
            revision: 1,
            why: Why::NothingReported,
            correction: None,
        }
    }

    /// Whether a sheet and letters are made of it.
    pub fn is_reported(&self) -> bool {
        self.state != PublicationState::WithLab
    }

    /// Whether it may stand in what is given to anyone.
    pub fn is_public(&self) -> bool {
        self.state == PublicationState::Published
    }
}

/// Who may see what is made.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Audience {
    /// The programme itself: everything, as proofs.
    #[default]
    Programme,
    /// Anyone: what was issued, and nothing of anything else.
    Anyone,
}

/// A sheet that was issued and now reads otherwise: what it said is not repeated until it is issued again.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UnderRevision {
    /// The programme's own name for the product.
    pub product_id: String,
    /// The round of testing.
    pub round: String,
    /// As on the front of the package.
    pub name: String,
    /// As on the front of the package.
    pub brand: Option<String>,
    /// The number of the sheet.
    pub sheet_number: String,
    /// The last issued revision.
    pub revision: u32,
    /// Its day of issue.
    pub issued_on: NaiveDate,
    /// That it does not stand any more, in words.
    pub said: String,
}
