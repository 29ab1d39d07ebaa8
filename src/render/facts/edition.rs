//! Which revision a sheet is: issued where its content is that of the last published revision, else a proof of the next.

use crate::model::registers::IssuedRevision;
use crate::words::{Catalogue, say};
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
        words: &Catalogue,
    ) -> Edition {
        match issued.last() {
            Some(last) if last.content_sha256 == content_sha256 => {
                Edition::published(sheet_number, issued, last, words)
            }
            _ => Edition::proof(sheet_number, issued, made_on, words),
        }
    }

    fn published(
        sheet_number: String,
        issued: &[IssuedRevision],
        last: &IssuedRevision,
        words: &Catalogue,
    ) -> Edition {
        let before = issued.iter().rev().nth(1);
        let (revision, day) = (last.revision.to_string(), words.day(last.issued_on));
        Edition {
            sheet_number,
            revision: last.revision,
            status: Status::Issued,
            issued_on: Some(day.clone()),
            made_on: None,
            line: words.say(&say::edition_line(revision, day)),
            replaces: before.map(|before| replaces(before, words)),
            revisions: revision_lines(issued, words),
            day: Some(last.issued_on),
        }
    }

    fn proof(
        sheet_number: String,
        issued: &[IssuedRevision],
        made_on: Option<NaiveDate>,
        words: &Catalogue,
    ) -> Edition {
        let revision = issued.last().map_or(1, |last| last.revision + 1);
        let made_on = made_on.map(|day| words.day(day));
        let dated = if made_on.is_some() { "yes" } else { "no" };
        let day = made_on.clone().unwrap_or_default();
        Edition {
            sheet_number,
            revision,
            status: Status::Proof,
            issued_on: None,
            line: words.say(&say::edition_proof(revision.to_string(), day, dated)),
            made_on,
            replaces: None,
            revisions: revision_lines(issued, words),
            day: None,
        }
    }
}

fn replaces(before: &IssuedRevision, words: &Catalogue) -> String {
    words.say(&say::edition_replaces(
        before.revision.to_string(),
        words.day(before.issued_on),
    ))
}

/// The latest first.
fn revision_lines(issued: &[IssuedRevision], words: &Catalogue) -> Vec<RevisionLine> {
    let latest_first = issued.iter().rev();
    let line = |revision: &IssuedRevision| RevisionLine {
        number: revision.revision,
        date: words.day(revision.issued_on),
        note: note(revision, words),
    };
    latest_first.map(line).collect()
}

/// What a revision did not wait for, why it was issued, and what changed.
fn note(of: &IssuedRevision, words: &Catalogue) -> String {
    let parts = [&of.early, &of.reason, &of.changed].into_iter().flatten();
    let said: Vec<String> = parts
        .map(|part| part.trim())
        .filter(|part| !part.is_empty())
        .map(|part| format!("{}.", part.trim_end_matches('.')))
        .collect();
    match said.as_slice() {
        [] if of.revision == 1 => words.say(&say::edition_first()),
        [] => words.say(&say::edition_unexplained()),
        _ => said.join(" "),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::english;

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
        Edition::of("TKW-A-1".into(), content, issued, made_on, english())
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
