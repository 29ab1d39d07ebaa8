//! `diary.ics`: the days to come, for a calendar program (RFC 5545). Each is a day without a time, and takes none.

use crate::config::Config;
use crate::files;
use crate::model::decided::{Decided, JudgedProduct};
use crate::model::followup::FollowUpState;
use crate::model::publication::PublicationState;
use crate::words::{Catalogue, NBSP, say};
use chrono::{Days, NaiveDate};
use std::collections::BTreeMap;

/// Days after its last test on which a product is due again.
const RETEST_DAYS: u64 = 365;

/// One day to come.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Entry {
    day: NaiveDate,
    /// What it is about, the same from run to run.
    key: String,
    summary: String,
    description: String,
}

/// The diary's text: lines end as the RFC wants, and none is longer than 75 octets.
pub fn text(decided: &Decided, config: &Config) -> String {
    let words = &config.words;
    let of_products = decided.products.iter();
    let mut entries: Vec<Entry> = of_products
        .flat_map(|judged| of_product(judged, words))
        .collect();
    entries.extend(reports(decided, config));
    entries.extend(retests(decided, words));
    entries.sort();
    let mut text = String::new();
    let mut line = |line: &str| push(&mut text, line);
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    let language = words.language().tag().to_uppercase();
    line(&format!("PRODID:-//galleyproof//diary//{language}"));
    line("CALSCALE:GREGORIAN");
    for entry in &entries {
        let day = entry.day.format("%Y%m%d");
        let number = files::sha256_of(entry.key.as_bytes());
        line("BEGIN:VEVENT");
        line(&format!("UID:{}@galleyproof", &number[..32]));
        // No clock has a say in what is made: the stamp is the day itself.
        line(&format!("DTSTAMP:{day}T000000Z"));
        line(&format!("DTSTART;VALUE=DATE:{day}"));
        line(&format!("SUMMARY:{}", escaped(&entry.summary)));
        if !entry.description.is_empty() {
            line(&format!("DESCRIPTION:{}", escaped(&entry.description)));
        }
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    text
}

/// The maker's answer, and the first day of publication.
fn of_product(judged: &JudgedProduct, words: &Catalogue) -> Vec<Entry> {
    let verdict = &judged.verdict;
    let (name, id) = (&verdict.product.name, &verdict.product.product_id);
    let stem = verdict.stem();
    let mut entries = Vec::new();
    if let FollowUpState::Waiting(told) | FollowUpState::Overdue(told) = judged.follow_up {
        entries.push(Entry {
            day: told.due_on,
            key: format!("reply {stem} {}", told.on),
            summary: words.say(&say::diary_reply(name, id)),
            description: words.say(&say::diary_told(words.day(told.on))),
        });
    }
    let publication = &judged.publication;
    if let (PublicationState::Held, Some(day)) = (publication.state, publication.may_publish_on) {
        entries.push(Entry {
            day,
            key: format!("publish {stem} {}", publication.revision),
            summary: words.say(&say::diary_publish(name, id)),
            description: judged.publication_said.clone(),
        });
    }
    entries
}

/// The days on which the lab's reports are due, one a day of sending.
fn reports(decided: &Decided, config: &Config) -> Vec<Entry> {
    let mut sent: BTreeMap<NaiveDate, Vec<&str>> = BTreeMap::new();
    let packages = decided
        .products
        .iter()
        .flat_map(|judged| &judged.verdict.packages);
    for package in packages.filter(|package| package.pair.extractions.is_empty()) {
        if let Some(day) = package.pair.package.sent_on {
            let code = package.pair.package.package_code.as_str();
            sent.entry(day).or_default().push(code);
        }
    }
    let words = &config.words;
    let patience = Days::new(config.publishing.report_days.into());
    let entries = sent.into_iter().filter_map(|(day, codes)| {
        Some(Entry {
            day: day.checked_add_days(patience)?,
            key: format!("report {day}"),
            summary: words.say(&say::diary_report(words.day(day))),
            description: words.say(&say::diary_not_reported(codes.join(", "))),
        })
    });
    entries.collect()
}

/// The days on which products are due again.
fn retests(decided: &Decided, words: &Catalogue) -> Vec<Entry> {
    let mut last: BTreeMap<&str, (NaiveDate, &str)> = BTreeMap::new();
    for judged in &decided.products {
        let product = &judged.verdict.product;
        if let Some(day) = judged.verdict.tested_on() {
            let known = last
                .entry(&product.product_id)
                .or_insert((day, &product.name));
            known.0 = known.0.max(day);
        }
    }
    let entries = last.into_iter().filter_map(|(id, (day, name))| {
        Some(Entry {
            day: day.checked_add_days(Days::new(RETEST_DAYS))?,
            key: format!("retest {id}"),
            summary: words.say(&say::diary_retest(name, id)),
            description: words.say(&say::diary_last(words.day(day))),
        })
    });
    entries.collect()
}

/// A text as a value: RFC 5545, section 3.3.11.
fn escaped(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\\' | ';' | ',' => {
                escaped.push('\\');
                escaped.push(c);
            }
            '\n' => escaped.push_str("\\n"),
            c if c.is_control() => {}
            NBSP => escaped.push(' '),
            c => escaped.push(c),
        }
    }
    escaped
}

/// A line, folded at 75 octets: RFC 5545, section 3.1. No letter is torn.
fn push(text: &mut String, line: &str) {
    const LONGEST: usize = 75;
    let mut room = LONGEST;
    for c in line.chars() {
        if c.len_utf8() > room {
            text.push_str("\r\n ");
            room = LONGEST - 1;
        }
        text.push(c);
        room -= c.len_utf8();
    }
    text.push_str("\r\n");
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_line_is_folded_and_no_letter_is_torn() {
        let mut text = String::new();
        push(&mut text, &format!("SUMMARY:{}", "é".repeat(90)));
        assert!(text.split("\r\n").all(|line| line.len() <= 75), "{text}");
        let unfolded = text.replace("\r\n ", "");
        assert_eq!(unfolded, format!("SUMMARY:{}\r\n", "é".repeat(90)));
        assert_eq!(escaped("a;b,c\\d\ne\u{7}"), "a\\;b\\,c\\\\d\\ne");
    }
}
