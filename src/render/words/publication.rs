//! Why a sheet may be published, or what it waits for.

use crate::model::decided::JudgedProduct;
use crate::model::place::Place;
use crate::model::publication::{Accusation, Publication, PublicationState, UnderRevision, Why};
use crate::render::numbers;
use crate::render::words::counted;
use crate::render::words::limit::LimitWords;

/// What the state rests on, in a sentence.
pub fn why(publication: &Publication) -> String {
    let date = numbers::date;
    let correction = match publication.correction {
        Some(one) if one.issued_on.is_none() => format!(
            " Revision {} said otherwise: a letter of correction is due at once.",
            one.of_revision
        ),
        _ => String::new(),
    };
    let why = match &publication.why {
        Why::NothingReported => "The lab has reported nothing yet.".to_owned(),
        Why::NotReported(codes) => format!(
            "The lab has not reported {} yet: {}.",
            counted(codes.len(), "package", "packages"),
            few(codes)
        ),
        Why::Register(places) => format!(
            "The registers leave something open that bears on it: {}. Mend that first.",
            few(&shown(places))
        ),
        Why::Reading(places) => format!(
            "A reading of its own cannot be used as it stands: {}. Have it mended, or set it aside in corrections.csv.",
            few(&shown(places))
        ),
        Why::NoNotice => "The maker has not been told: no notice is on record.".to_owned(),
        Why::NoReply { told_on, until } => format!(
            "The maker was told on {} and has not answered: it may be published from {} on.",
            date(*told_on),
            date(*until)
        ),
        Why::NothingToTell => "Nothing is to be told the maker first.".to_owned(),
        Why::Answered(day) => format!("The maker answered on {}.", date(*day)),
        Why::TimeIsOver { told_on, since } => format!(
            "The maker was told on {} and had until {} to answer.",
            date(*told_on),
            date(*since)
        ),
        Why::Corrects => "It corrects what was published, and that waits for nobody.".to_owned(),
        Why::Issued(day) => format!(
            "Revision {} was issued on {} and says the same.",
            publication.revision,
            date(*day)
        ),
    };
    format!("{why}{correction}")
}

/// State, day and reason: "held until 2031-03-15. The maker was told on …".
pub fn standing(publication: &Publication) -> String {
    let until = match (publication.state, &publication.why) {
        (PublicationState::Held, Why::NoReply { until, .. }) => format!(" until {until}"),
        _ => String::new(),
    };
    format!("{}{until}. {}", state(publication.state), why(publication))
}

/// The state as one would say it.
pub fn state(state: PublicationState) -> &'static str {
    match state {
        PublicationState::WithLab => "with the lab",
        PublicationState::Waiting => "waiting for the lab",
        PublicationState::Held => "held",
        PublicationState::Ready => "ready",
        PublicationState::Published => "published",
    }
}

/// What a sheet did not wait for, as it is printed on it.
pub fn early(publication: &Publication) -> String {
    match &publication.why {
        Why::NotReported(codes) => format!(
            "Issued before the lab had reported {}",
            counted(codes.len(), "package", "packages")
        ),
        Why::NoNotice => "Issued before the maker was told".to_owned(),
        Why::NoReply { until, .. } => format!(
            "Issued before the maker’s time to answer was over on {}",
            numbers::date(*until)
        ),
        _ => "Issued before its time".to_owned(),
    }
}

/// What is said of a sheet that does not stand any more.
pub fn under_revision(one: &UnderRevision) -> String {
    let brand = one
        .brand
        .as_deref()
        .map(|brand| format!(" ({brand})"))
        .unwrap_or_default();
    format!(
        "{}{brand}, sheet {}: under revision. Revision {} of {} is not to be relied on any more; a new one is not issued yet.",
        one.name,
        one.sheet_number,
        one.revision,
        numbers::date(one.issued_on)
    )
}

/// What a sheet said, or says, against a product.
pub fn accusation(said: Accusation, over_the_limit: &str) -> String {
    match (said.over_limit, said.gluten_source) {
        (true, true) => format!(
            "at least one package tested {over_the_limit}, and the list of ingredients names a source of gluten"
        ),
        (true, false) => format!("at least one package tested {over_the_limit}"),
        (false, true) => "the list of ingredients names a source of gluten".to_owned(),
        (false, false) => format!(
            "no package is known to be {over_the_limit}, and the list of ingredients names no source of gluten"
        ),
    }
}

/// The first of many, and how many more there are.
fn few(all: &[String]) -> String {
    const SHOWN: usize = 4;
    match all.len().saturating_sub(SHOWN) {
        0 => all.join(", "),
        more => format!("{} and {more} more", all[..SHOWN].join(", ")),
    }
}

fn shown(places: &[Place]) -> Vec<String> {
    places.iter().map(Place::to_string).collect()
}

/// What the programme got wrong, or has found out since, and why: that leads what is published next.
pub fn corrected(judged: &JudgedProduct, sheet_number: &str) -> Option<String> {
    let correction = judged.publication.correction?;
    let over = LimitWords::of(judged.verdict.rule).over_the_limit();
    let product = &judged.verdict.product;
    let brand = product
        .brand
        .as_deref()
        .map(|brand| format!(" ({brand})"))
        .unwrap_or_default();
    let now = match correction.issued_on {
        Some(day) => format!("Since {} it", numbers::date(day)),
        None => "The next revision, which is not issued yet,".to_owned(),
    };
    let reason = judged
        .verdict
        .issued
        .last()
        .filter(|_| correction.issued_on.is_some())
        .and_then(|row| row.reason.as_deref())
        .map(|reason| format!(" Why: {}.", reason.trim().trim_end_matches('.')))
        .unwrap_or_default();
    Some(format!(
        "Correction: {}{brand}, sheet {sheet_number}. Revision {} of {} said that {}. {now} says that {}.{reason}",
        product.name,
        correction.of_revision,
        numbers::date(correction.of_day),
        accusation(correction.said, &over),
        accusation(correction.says, &over),
    ))
}

/// What stands on every page that is not for publication.
pub const PROOF: &str = "Proof, not for publication";
