//! Which revision a sheet is: issued where its content is that of the last published revision, else a proof of the next.

use crate::model::registers::IssuedRevision;
use crate::render::numbers;
use chrono::NaiveDate;
use serde::Serialize;

/// Which revision a sheet is, apart from what it says.
#[derive(Clone, Debug, Serialize)]
pub struct Edition {
    /// `TKW-FH-01-1`.
    pub sheet_number: String,
    /// From 1.
    pub revision: u32,
    /// `issued` or `proof`.
    pub status: Status,
    /// Day of issue, in words.
    pub issued_on: Option<String>,
    /// A proof's day, in words, where it is known.
    pub made_on: Option<String>,
    /// The header's last words: `revision 2 · 6 May 2031`, or what the proof is.
    pub line: String,
    /// `It replaces revision 1 of 22 April 2031.`; a proof replaces nothing.
    pub replaces: Option<String>,
    /// The published revisions that this one builds on and itself where it is issued, newest first.
    pub revisions: Vec<RevisionLine>,
    /// The day of issue, as a date.
    #[serde(skip)]
    pub day: Option<NaiveDate>,
}

/// Whether a sheet may be published.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Status {
    /// It may.
    Issued,
    /// It may not.
    Proof,
}

/// One revision in the list.
#[derive(Clone, Debug, Serialize)]
pub struct RevisionLine {
    /// From 1.
    pub number: u32,
    /// `6 May 2031`.
    pub date: String,
    /// Why it was issued, and what changed.
    pub note: String,
}

impl Edition {
    /// The edition of a sheet with this content. `made_on` is printed on a proof, where it is known.
    pub fn of(
        sheet_number: String,
        content_sha256: &str,
        issued: &[IssuedRevision],
        made_on: Option<NaiveDate>,
    ) -> Edition {
        match issued.last() {
            Some(last) if last.content_sha256 == content_sha256 => {
                Edition::published(sheet_number, issued, last)
            }
            _ => Edition::proof(sheet_number, issued, made_on),
        }
    }

    fn published(
        sheet_number: String,
        issued: &[IssuedRevision],
        last: &IssuedRevision,
    ) -> Edition {
        let before = issued.iter().rev().nth(1);
        Edition {
            sheet_number,
            revision: last.revision,
            status: Status::Issued,
            issued_on: Some(numbers::date(last.issued_on)),
            made_on: None,
            line: line(last.revision, last.issued_on),
            replaces: before.map(replaces),
            revisions: issued.iter().rev().map(revision_line).collect(),
            day: Some(last.issued_on),
        }
    }

    fn proof(
        sheet_number: String,
        issued: &[IssuedRevision],
        made_on: Option<NaiveDate>,
    ) -> Edition {
        let revision = issued.last().map_or(1, |last| last.revision + 1);
        let made_on = made_on.map(numbers::date);
        let made = made_on.as_ref().map(|day| format!(", made {day}"));
        Edition {
            sheet_number,
            revision,
            status: Status::Proof,
            issued_on: None,
            line: format!(
                "Proof of revision {revision}{}, not for publication",
                made.unwrap_or_default()
            ),
            made_on,
            replaces: None,
            revisions: issued.iter().rev().map(revision_line).collect(),
            day: None,
        }
    }
}

fn line(revision: u32, on: NaiveDate) -> String {
    format!("revision {revision} · {}", numbers::date(on))
}

fn replaces(before: &IssuedRevision) -> String {
    format!(
        "It replaces revision {} of {}.",
        before.revision,
        numbers::date(before.issued_on)
    )
}

fn revision_line(revision: &IssuedRevision) -> RevisionLine {
    RevisionLine {
        number: revision.revision,
        date: numbers::date(revision.issued_on),
        note: note(
            revision.revision,
            [&revision.early, &revision.reason, &revision.changed],
        ),
    }
}

/// What a revision did not wait for, why it was issued, and what changed.
fn note(revision: u32, parts: [&Option<String>; 3]) -> String {
    let parts = parts
        .into_iter()
        .flatten()
        .map(|part| part.trim())
        .filter(|part| !part.is_empty());
    let said: Vec<String> = parts
        .map(|part| format!("{}.", part.trim_end_matches('.')))
        .collect();
    match said.as_slice() {
        [] if revision == 1 => "First issue.".to_owned(),
        _ => said.join(" "),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(d: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(2031, 5, d).expect("a date")
    }

    fn first() -> IssuedRevision {
        IssuedRevision {
            sheet_number: "TKW-A-1".into(),
            product_id: "A".into(),
            round: "1".into(),
            revision: 1,
            issued_on: day(6),
            content_sha256: "same".into(),
            reason: None,
            changed: None,
            ..IssuedRevision::default()
        }
    }

    fn edition(content: &str, issued: &[IssuedRevision], made_on: Option<NaiveDate>) -> Edition {
        Edition::of("TKW-A-1".into(), content, issued, made_on)
    }

    #[test]
    fn an_unchanged_sheet_is_its_last_revision_on_whatever_day_it_is_made() {
        for made_on in [None, Some(day(9))] {
            let edition = edition("same", &[first()], made_on);
            assert_eq!((edition.revision, edition.status), (1, Status::Issued));
            assert_eq!(edition.line, "revision 1 · 6\u{a0}May\u{a0}2031");
        }
    }

    #[test]
    fn a_changed_sheet_is_a_proof_of_the_next_revision() {
        let edition = edition("other", &[first()], None);
        assert_eq!((edition.revision, edition.status), (2, Status::Proof));
        assert_eq!(edition.line, "Proof of revision 2, not for publication");
        assert_eq!(edition.replaces, None);
    }

    #[test]
    fn an_issued_change_says_why_and_names_what_it_replaces() {
        let second = IssuedRevision {
            revision: 2,
            issued_on: day(9),
            content_sha256: "other".into(),
            reason: Some("The lab corrected its report".into()),
            changed: Some("B-2: 12.4 before, 14.2 now".into()),
            ..first()
        };
        let edition = edition("other", &[first(), second], None);
        assert_eq!(edition.status, Status::Issued);
        assert_eq!(
            edition.replaces.as_deref(),
            Some("It replaces revision 1 of 6\u{a0}May\u{a0}2031.")
        );
        assert_eq!(
            edition.revisions[0].note,
            "The lab corrected its report. B-2: 12.4 before, 14.2 now."
        );
        assert_eq!(edition.revisions[1].note, "First issue.");
    }
}
