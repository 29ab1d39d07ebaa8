//! The story of a sheet in days: from the shop to the maker's answer, to its issue, and what comes next.

use crate::model::decided::JudgedProduct;
use crate::model::followup::FollowUpState;
use crate::model::package::PackageResult;
use crate::model::publication::PublicationState;
use crate::model::reason::Reason;
use crate::model::registers::{Followup, FollowupKind, IssuedRevision};
use crate::model::sheet::StoryLine;
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::words::verdict::{Cause, cause};
use crate::render::words::{Named, NamedMessage, breakable};
use crate::words::{Catalogue, Said, say};
use chrono::NaiveDate;
use std::collections::BTreeSet;

/// What is on record of the packages and of the maker; what should be there and is not is said to be missing.
pub fn told(product: &ProductVerdict, words: &Catalogue) -> Vec<StoryLine> {
    let bought = product.bought();
    let packages = || product.packages.iter();
    let sent = span(packages().filter_map(|one| one.pair.package.sent_on));
    let extractions = packages().flat_map(|one| &one.pair.extractions);
    let tested = span(extractions.filter_map(|one| one.extraction.tested_on));
    let mut lines = vec![
        on_days("bought", bought, words),
        on_days("sent", sent, words),
        on_days("tested", tested, words),
    ];
    lines.extend(with_the_maker(product, words));
    lines
}

/// What passed between the programme and the maker; nothing where there is nothing to tell.
fn with_the_maker(product: &ProductVerdict, words: &Catalogue) -> Vec<StoryLine> {
    let of = |kind| product.followups.iter().filter(move |one| one.kind == kind);
    let notices: Vec<&Followup> = of(FollowupKind::NoticeSent).collect();
    if product.followups.is_empty() && !product.notify_maker {
        return Vec::new();
    }
    let day = |day| words.day(day);
    let told = distinct(notices.iter().map(|notice| match notice.due_on {
        Some(due) => words.say(&say::story_told(day(notice.on), day(due), "yes")),
        None => day(notice.on),
    }));
    let answered = distinct(of(FollowupKind::Reply).map(|reply| day(reply.on)));
    let mut lines = Vec::new();
    if !told.is_empty() || product.notify_maker {
        lines.push(match told.is_empty() {
            true => open("told", words.say(&say::story_no_notice()), words),
            false => line("told", words.list(&told), words),
        });
    }
    if !answered.is_empty() {
        lines.push(line("answered", words.list(&answered), words));
    } else if !notices.is_empty() {
        lines.push(open("answered", words.say(&say::story_no_answer()), words));
    }
    let closed = of(FollowupKind::Closed).map(|one| one.on).max();
    lines.extend(closed.map(|on| line("closed", day(on), words)));
    lines
}

/// On which days the sheet was issued and amended.
pub fn issued(issued: &[IssuedRevision], words: &Catalogue) -> Vec<StoryLine> {
    let Some((first, amended)) = issued.split_first() else {
        return vec![open("issued", words.say(&say::story_not_yet()), words)];
    };
    let mut lines = vec![line("issued", words.day(first.issued_on), words)];
    if !amended.is_empty() {
        let days = distinct(amended.iter().map(|one| words.day(one.issued_on)));
        lines.push(line("amended", words.list(&days), words));
    }
    lines
}

/// What comes next, of what is on record; nothing where nothing is open. It stands beside what the sheet says, since it moves
/// with the days and with other rounds.
pub fn next(judged: &JudgedProduct, asked_for: usize, words: &Catalogue) -> Option<StoryLine> {
    let mut said: Vec<Said> = Vec::new();
    if judged.verdict.verdict == Verdict::NoVerdict {
        said.extend(towards_a_verdict(judged, asked_for, words));
    }
    match judged.follow_up {
        FollowUpState::ToSend => said.push(say::story_next_tell()),
        FollowUpState::Waiting(told) => {
            said.push(say::story_next_answer(words.day(told.due_on)));
        }
        FollowUpState::NotNeeded
        | FollowUpState::Overdue(_)
        | FollowUpState::Replied { .. }
        | FollowUpState::Closed { .. } => {}
    }
    let publication = &judged.publication;
    if let (PublicationState::Held, Some(day)) = (publication.state, publication.may_publish_on) {
        said.push(say::story_next_issue(words.day(day)));
    }
    (!said.is_empty()).then(|| open("next", words.text(said), words))
}

/// What it would take to come to a verdict, and whether it is on record.
fn towards_a_verdict(judged: &JudgedProduct, asked_for: usize, words: &Catalogue) -> Vec<Said> {
    let product = &judged.verdict;
    let mut said = Vec::new();
    let unsettled = product.reasons.iter().any(Reason::comes_first);
    if unsettled {
        said.push(say::story_next_settle());
    }
    let waits: [(&[Cause], NamedMessage); 4] = [
        (&[Cause::Conflict], say::story_next_conflict),
        (&[Cause::Incomplete, Cause::Missing], say::story_next_lab),
        (&[Cause::Disagree], say::story_next_repeat),
        // What is too close to call is known once it is settled which limit holds.
        (&[Cause::EitherSide, Cause::TooClose], say::story_next_finer),
    ];
    for (causes, message) in &waits[..if unsettled { 3 } else { 4 }] {
        let waits = |one: &&PackageResult| cause(one).is_some_and(|why| causes.contains(&why));
        let of = product.packages.iter().filter(waits);
        said.extend(Named::of(of, words).map(|named| named.said(*message)));
    }
    let lacking = asked_for.saturating_sub(product.packages.len());
    if lacking > 0 {
        said.push(say::story_next_buy(lacking as u64));
    }
    if product.method_unfit.is_some() {
        said.push(say::story_next_unfit());
    }
    if let Some(round) = &judged.next_round {
        said.push(say::story_next_round(round));
    }
    said
}

/// Each once, in their order.
fn distinct(said: impl Iterator<Item = String>) -> Vec<String> {
    let mut all: Vec<String> = said.collect();
    all.dedup();
    all
}

fn line(what: &'static str, when: String, words: &Catalogue) -> StoryLine {
    StoryLine {
        what: words.say(&say::story_what(what)),
        when: breakable(&when, 24),
        done: true,
    }
}

/// What is not on record, or is to come.
fn open(what: &'static str, when: String, words: &Catalogue) -> StoryLine {
    StoryLine {
        done: false,
        ..line(what, when, words)
    }
}

fn on_days(
    what: &'static str,
    span: Option<(NaiveDate, NaiveDate)>,
    words: &Catalogue,
) -> StoryLine {
    match span {
        Some((first, last)) => line(what, words.days(first, last), words),
        None => open(what, words.say(&say::story_no_day()), words),
    }
}

fn span(days: impl Iterator<Item = NaiveDate>) -> Option<(NaiveDate, NaiveDate)> {
    let days: BTreeSet<NaiveDate> = days.collect();
    Some((*days.first()?, *days.last()?))
}
