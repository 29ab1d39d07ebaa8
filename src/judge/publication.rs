//! The registers, the readings and the day -> whether a sheet may be published.
//!
//! The first state that holds decides, in the order with the lab, waiting, held, ready. What was issued as it now stands
//! is published, whatever holds: that cannot be taken back by waiting. An accusing sheet waits until the maker has
//! answered or has had the time to; without a day no time has passed.

use crate::config::Programme;
use crate::model::extraction::Outcome;
use crate::model::glob::path_fits;
use crate::model::label::LabelFinding;
use crate::model::package::{PackageResult, Standing};
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::place::Place;
use crate::model::publication::{Accusation, Correction, Publication, PublicationState, Why};
use crate::model::reason::Reason;
use crate::model::registers::{Doubt, DoubtKind, Followup, FollowupKind, IssuedRevision};
use crate::model::verdict::{ProductVerdict, Verdict};
use chrono::{Days, NaiveDate};
use std::collections::BTreeSet;

/// What the state of a sheet is decided by, beside what it says itself.
#[derive(Clone, Copy, Debug)]
pub struct Circumstances<'a> {
    /// Days that the maker has.
    pub programme: &'a Programme,
    /// What the registers leave open.
    pub doubts: &'a [Doubt],
    /// The day to look from; without one nothing has come due.
    pub as_of: Option<NaiveDate>,
}

/// Whether a sheet may be published.
///
/// `as_issued`: the last issued revision says the same as the proof.
pub fn publication(
    verdict: &ProductVerdict,
    circumstances: &Circumstances<'_>,
    as_issued: bool,
) -> Publication {
    let correction = correction(verdict, as_issued);
    let told = Told::of(&verdict.followups, circumstances);
    let last = verdict.issued.last();
    let (state, why) = match last {
        Some(last) if as_issued => (PublicationState::Published, Why::Issued(last.issued_on)),
        _ => state(verdict, circumstances, told, correction),
    };
    Publication {
        state,
        why,
        may_publish_on: told.map(|told| told.may_publish_on()),
        revision: last.map_or(1, |last| last.revision + u32::from(!as_issued)),
        correction,
    }
}

/// What a sheet says against the product.
pub fn accusation(verdict: &ProductVerdict) -> Accusation {
    Accusation {
        over_limit: verdict.verdict == Verdict::OverLimit,
        gluten_source: verdict.label.finding == LabelFinding::GlutenSource,
    }
}

fn state(
    verdict: &ProductVerdict,
    circumstances: &Circumstances<'_>,
    told: Option<Told>,
    correction: Option<Correction>,
) -> (PublicationState, Why) {
    let unreported: Vec<String> = verdict
        .packages
        .iter()
        .filter(|package| package.pair.extractions.is_empty() && package.other_series.is_none())
        .map(|package| package.pair.package.package_code.clone())
        .collect();
    if unreported.len() == verdict.packages.len() {
        return (PublicationState::WithLab, Why::NothingReported);
    }
    let is_over = |package: &PackageResult| package.standing == Standing::Over;
    if !unreported.is_empty() && !verdict.packages.iter().any(is_over) {
        return (PublicationState::Waiting, Why::NotReported(unreported));
    }
    let mut open = open_in_registers(verdict, circumstances.doubts);
    // What is unknown is settled in the product's own row before anything is published.
    if open.is_empty() && verdict.reasons.iter().any(Reason::comes_first) {
        open.push(verdict.product.place.clone());
    }
    if !open.is_empty() {
        return (PublicationState::Held, Why::Register(open));
    }
    let faulty = faulty_readings(verdict);
    if !faulty.is_empty() {
        return (PublicationState::Held, Why::Reading(faulty));
    }
    if !verdict.notify_maker {
        return (PublicationState::Ready, Why::NothingToTell);
    }
    if correction.is_some() {
        return (PublicationState::Ready, Why::Corrects);
    }
    let Some(told) = told else {
        return (PublicationState::Held, Why::NoNotice);
    };
    let (told_on, until) = (told.on, told.may_publish_on());
    if let Some(day) = told.answered_on {
        return (PublicationState::Ready, Why::Answered(day));
    }
    if circumstances.as_of.is_some_and(|day| day >= until) {
        let since = until;
        return (PublicationState::Ready, Why::TimeIsOver { told_on, since });
    }
    (PublicationState::Held, Why::NoReply { told_on, until })
}

/// Where the registers leave something open about this product and round.
fn open_in_registers(verdict: &ProductVerdict, doubts: &[Doubt]) -> Vec<Place> {
    let bears = |doubt: &&Doubt| match &doubt.what {
        // A row about a lab's report bears on the products that have a reading of its file.
        DoubtKind::Report { file } => {
            extractions(verdict).any(|paired| path_fits(file, &paired.extraction.source.file.path))
        }
        _ => doubt.is_about(&verdict.product.product_id, &verdict.round),
    };
    each_once(doubts.iter().filter(bears).map(|doubt| doubt.place.clone()))
}

/// Its extractions, by either kind of assay.
fn extractions(verdict: &ProductVerdict) -> impl Iterator<Item = &PairedExtraction> {
    let series = verdict.packages.iter().flat_map(PackageResult::both_series);
    series.flat_map(|package| &package.pair.extractions)
}

/// Where its readings cannot be used as they stand, and no person has set them aside.
fn faulty_readings(verdict: &ProductVerdict) -> Vec<Place> {
    let faulty = extractions(verdict).filter(|paired| match &paired.usage {
        Usage::InConflict => true,
        Usage::NoReading => paired.extraction.outcome == Outcome::Unreadable,
        Usage::Used | Usage::Excluded { .. } => false,
    });
    each_once(faulty.map(|paired| paired.extraction.source.place()))
}

fn each_once(places: impl Iterator<Item = Place>) -> Vec<Place> {
    places.collect::<BTreeSet<Place>>().into_iter().collect()
}

/// The latest notice to the maker, and what came of it by the day to look from.
#[derive(Clone, Copy, Debug)]
struct Told {
    on: NaiveDate,
    until: NaiveDate,
    answered_on: Option<NaiveDate>,
}

impl Told {
    fn of(followups: &[Followup], circumstances: &Circumstances<'_>) -> Option<Told> {
        // What is entered for a later day has not happened yet.
        let has_happened =
            |event: &&Followup| circumstances.as_of.is_none_or(|day| event.on <= day);
        let events = || followups.iter().filter(has_happened);
        let notice = events().rfind(|event| event.kind == FollowupKind::NoticeSent)?;
        let answers = [FollowupKind::Reply, FollowupKind::Action];
        let answered_on = events()
            .filter(|event| answers.contains(&event.kind) && event.on >= notice.on)
            .map(|event| event.on)
            .min();
        let waited = Days::new(circumstances.programme.publish_days.into());
        let until = notice.on.checked_add_days(waited).unwrap_or(NaiveDate::MAX);
        Some(Told {
            on: notice.on,
            // Whoever was given longer to answer has longer.
            until: notice.due_on.map_or(until, |due_on| until.max(due_on)),
            answered_on,
        })
    }

    fn may_publish_on(self) -> NaiveDate {
        self.answered_on
            .map_or(self.until, |day| day.min(self.until))
    }
}

/// The accusation that was made or taken back since the revision before: that before the last one, where the proof says
/// what the last one said, else the last one.
fn correction(verdict: &ProductVerdict, as_issued: bool) -> Option<Correction> {
    let issued = &verdict.issued;
    let (before, issued_on) = match (as_issued, issued.as_slice()) {
        (true, [.., before, last]) => (before, Some(last.issued_on)),
        (false, [.., last]) => (last, None),
        _ => return None,
    };
    let said = said(before)?;
    let says = accusation(verdict);
    (said.accuses() != says.accuses()).then_some(Correction {
        of_revision: before.revision,
        of_day: before.issued_on,
        issued_on,
        said,
        says,
    })
}

/// What an issued revision said against the product, where the register knows.
fn said(revision: &IssuedRevision) -> Option<Accusation> {
    let (verdict, label) = (revision.verdict.as_deref()?, revision.label.as_deref()?);
    Some(Accusation {
        over_limit: verdict == Verdict::OverLimit.word(),
        gluten_source: label == LabelFinding::GlutenSource.word(),
    })
}
