//! Why a sheet may be published, or what it waits for.

use crate::model::decided::JudgedProduct;
use crate::model::place::Place;
use crate::model::publication::{Accusation, Publication, PublicationState, UnderRevision, Why};
use crate::model::rule::Rule;
use crate::words::{Catalogue, english, say, side, yes_or_no};
use std::iter::once;

/// What the state rests on, in English.
pub fn why(publication: &Publication) -> String {
    rests_on(publication, english())
}

/// What the state rests on, in a sentence or two.
pub fn rests_on(publication: &Publication, words: &Catalogue) -> String {
    let day = |day| words.day(day);
    let why = match &publication.why {
        Why::NothingReported => say::why_nothing_reported(),
        Why::NotReported(codes) => say::why_not_reported(codes.len() as u64, few(codes, words)),
        Why::Register(places) => say::why_register(few(&shown(places), words)),
        Why::Reading(places) => say::why_reading(few(&shown(places), words)),
        Why::NoNotice => say::why_no_notice(),
        Why::NoReply { told_on, until } => say::why_no_reply(day(*told_on), day(*until)),
        Why::NothingToTell => say::why_nothing_to_tell(),
        Why::Answered(on) => say::why_answered(day(*on)),
        Why::TimeIsOver { told_on, since } => say::why_time_is_over(day(*told_on), day(*since)),
        Why::Corrects => say::why_corrects(),
        Why::Issued(on) => say::why_issued(publication.revision.to_string(), day(*on)),
    };
    let due = publication.correction.filter(|one| one.issued_on.is_none());
    let due = due.map(|one| say::why_letter_due(one.of_revision.to_string()));
    words.text(once(why).chain(due))
}

/// State, day and reason in English: "held until 2031-03-15. The maker was told on …".
pub fn standing(publication: &Publication) -> String {
    let (until, dated) = match (publication.state, &publication.why) {
        (PublicationState::Held, Why::NoReply { until, .. }) => (until.to_string(), "yes"),
        _ => (String::new(), "no"),
    };
    english().say(&say::publication_standing(
        state(publication.state),
        why(publication),
        until,
        dated,
    ))
}

/// The state as one would say it, in English.
pub fn state(state: PublicationState) -> String {
    english().say(&match state {
        PublicationState::WithLab => say::state_with_lab(),
        PublicationState::Waiting => say::state_waiting(),
        PublicationState::Held => say::state_held(),
        PublicationState::Ready => say::state_ready(),
        PublicationState::Published => say::state_published(),
    })
}

/// What a sheet did not wait for, as it is printed on it.
pub fn early(publication: &Publication, words: &Catalogue) -> String {
    words.say(&match &publication.why {
        Why::NotReported(codes) => say::early_not_reported(codes.len() as u64),
        Why::NoNotice => say::early_no_notice(),
        Why::NoReply { until, .. } => say::early_no_reply(words.day(*until)),
        _ => say::early_other(),
    })
}

/// What is said of a sheet that does not stand any more.
pub fn under_revision(one: &UnderRevision, words: &Catalogue) -> String {
    words.say(&say::under_revision(
        &one.name,
        one.brand.as_deref().unwrap_or_default(),
        yes_or_no(one.brand.is_some()),
        &one.sheet_number,
        one.revision.to_string(),
        words.day(one.issued_on),
    ))
}

/// What a sheet said, or says, against a product, as the end of a sentence.
pub fn accused(said: Accusation, rule: Rule, words: &Catalogue) -> String {
    words.say(&say::accused(
        yes_or_no(said.over_limit),
        yes_or_no(said.gluten_source),
        side(rule.limit),
    ))
}

/// The first of many, and how many more there are.
fn few(all: &[String], words: &Catalogue) -> String {
    const SHOWN: usize = 4;
    match all.len().saturating_sub(SHOWN) {
        0 => all.join(", "),
        more => words.say(&say::some_and_more(all[..SHOWN].join(", "), more as u64)),
    }
}

fn shown(places: &[Place]) -> Vec<String> {
    places.iter().map(Place::to_string).collect()
}

/// What the programme got wrong, or has found out since, and why: that leads what is published next.
pub fn corrected(judged: &JudgedProduct, sheet_number: &str, words: &Catalogue) -> Option<String> {
    let correction = judged.publication.correction?;
    let (product, rule) = (&judged.verdict.product, judged.verdict.rule);
    let then = say::corrected(
        &product.name,
        product.brand.as_deref().unwrap_or_default(),
        yes_or_no(product.brand.is_some()),
        sheet_number,
        correction.of_revision.to_string(),
        words.day(correction.of_day),
        accused(correction.said, rule, words),
    );
    let says = accused(correction.says, rule, words);
    let issued_on = correction.issued_on.map(|day| words.day(day));
    let issued = yes_or_no(issued_on.is_some());
    let now = say::corrected_now(issued, issued_on.unwrap_or_default(), says);
    let last = judged.verdict.issued.last();
    let reason = last
        .filter(|_| correction.issued_on.is_some())
        .and_then(|row| row.reason.as_deref())
        .map(|reason| say::corrected_why(reason.trim().trim_end_matches('.')));
    Some(words.text([then, now].into_iter().chain(reason)))
}
