//! The story of a sheet in days: from the shop to the maker's answer, to its issue, and what comes next.

use crate::model::decided::JudgedProduct;
use crate::model::followup::FollowUpState;
use crate::model::package::{PackageResult, Standing};
use crate::model::pair::{PairState, Usage};
use crate::model::publication::PublicationState;
use crate::model::reason::Reason;
use crate::model::registers::{Followup, FollowupKind, IssuedRevision};
use crate::model::sheet::StoryLine;
use crate::model::verdict::{ProductVerdict, Verdict};
use crate::render::words::{Named, breakable};
use crate::words::{Catalogue, Said, say};
use chrono::NaiveDate;
use std::collections::BTreeSet;

/// What is on record of the packages and of the maker; what should be there and is not is said to be missing.
pub fn told(product: &ProductVerdict, words: &Catalogue) -> Vec<StoryLine> {
    let bought = product.bought();
    let sent = span(
        product
            .packages
            .iter()
            .filter_map(|one| one.pair.package.sent_on),
    );
    let tested = span(product.packages.iter().flat_map(|one| {
        let extractions = one.pair.extractions.iter();
        extractions.filter_map(|paired| paired.extraction.tested_on)
    }));
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
    let told: Vec<String> = distinct(notices.iter().map(|notice| match notice.due_on {
        Some(due) => words.say(&say::story_told(
            words.day(notice.on),
            words.day(due),
            "yes",
        )),
        None => words.day(notice.on),
    }));
    let answered: Vec<String> = distinct(of(FollowupKind::Reply).map(|reply| words.day(reply.on)));
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
    let last = |kind| of(kind).map(|one| one.on).max();
    let closed = last(FollowupKind::Closed).map(|day| line("closed", words.day(day), words));
    lines.extend(closed);
    lines
}

/// On which days the sheet was issued and amended.
pub fn issued(issued: &[IssuedRevision], words: &Catalogue) -> Vec<StoryLine> {
    let Some((first, amended)) = issued.split_first() else {
        return vec![open("issued", words.say(&say::story_not_yet()), words)];
    };
    let mut lines = vec![line("issued", words.day(first.issued_on), words)];
    if !amended.is_empty() {
        let days: Vec<String> = distinct(amended.iter().map(|one| words.day(one.issued_on)));
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
        FollowUpState::Waiting { due_on, .. } => {
            said.push(say::story_next_answer(words.day(due_on)));
        }
        FollowUpState::NotNeeded
        | FollowUpState::Overdue { .. }
        | FollowUpState::Replied { .. }
        | FollowUpState::Closed { .. } => {}
    }
    let publication = &judged.publication;
    if let (PublicationState::Held, Some(day)) = (publication.state, publication.may_publish_on) {
        said.push(say::story_next_issue(words.day(day)));
    }
    let said: Vec<String> = said.iter().map(|said| words.say(said)).collect();
    (!said.is_empty()).then(|| open("next", said.join(" "), words))
}

/// What it would take to come to a verdict, and whether it is on record.
fn towards_a_verdict(judged: &JudgedProduct, asked_for: usize, words: &Catalogue) -> Vec<Said> {
    let product = &judged.verdict;
    let mut said = Vec::new();
    let unsettled = product.reasons.iter().any(Reason::comes_first);
    if unsettled {
        said.push(say::story_next_settle());
    }
    let waits = [
        (Wait::Conflict, say::story_next_conflict as NamedMessage),
        (Wait::Lab, say::story_next_lab),
        (Wait::Repeat, say::story_next_repeat),
        (Wait::Finer, say::story_next_finer),
    ];
    // What is too close to call is known once it is settled which limit holds.
    let asked = waits
        .into_iter()
        .filter(|(wait, _)| !unsettled || *wait != Wait::Finer);
    for (wait, message) in asked {
        let of = product
            .packages
            .iter()
            .filter(|one| waits_for(one) == Some(wait));
        if let Some(named) = Named::of(of, words) {
            said.push(message(named.packages, named.by, named.named));
        }
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

/// A message about packages that are named, or counted where they are many.
type NamedMessage = fn(u64, &'static str, String) -> Said;

#[derive(Clone, Copy, PartialEq, Eq)]
enum Wait {
    Conflict,
    Lab,
    Repeat,
    Finer,
}

fn waits_for(package: &PackageResult) -> Option<Wait> {
    let pair = &package.pair;
    let conflict = |usage: &Usage| *usage == Usage::InConflict;
    match (package.standing, pair.state) {
        (Standing::Unresolved, _) if pair.extractions.iter().any(|one| conflict(&one.usage)) => {
            Some(Wait::Conflict)
        }
        (Standing::Unresolved, PairState::Incomplete | PairState::Missing) => Some(Wait::Lab),
        (Standing::Unresolved, PairState::Disagree) => Some(Wait::Repeat),
        (Standing::Unresolved, PairState::Agree) | (Standing::Inconclusive, _) => Some(Wait::Finer),
        _ => None,
    }
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
