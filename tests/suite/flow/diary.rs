//! The diary, held against the grammar of its format (RFC 5545) by a reader that forgives nothing.

use crate::flow::OVER;
use crate::workspace::Workspace;
use std::collections::BTreeMap;

/// The events of a calendar, each as its properties by name; whatever the RFC does not allow is a failure.
pub fn events(text: &str) -> Vec<BTreeMap<String, String>> {
    assert!(text.ends_with("\r\n"), "the last line ends as the others");
    let lines: Vec<&str> = text.trim_end_matches("\r\n").split("\r\n").collect();
    let mut unfolded: Vec<String> = Vec::new();
    for line in lines {
        assert!(line.len() <= 75 && !line.contains(['\r', '\n']), "{line:?}");
        match line.strip_prefix([' ', '\t']) {
            Some(rest) => unfolded.last_mut().expect("a line to go on").push_str(rest),
            None => unfolded.push(line.to_owned()),
        }
    }
    let mut open: Vec<String> = Vec::new();
    let mut events: Vec<BTreeMap<String, String>> = Vec::new();
    let mut calendar = BTreeMap::new();
    for line in &unfolded {
        let (name, value) = line.split_once(':').unwrap_or_else(|| panic!("{line}"));
        let letters = |part: &str| {
            !part.is_empty() && part.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-')
        };
        for (index, part) in name.split(';').enumerate() {
            let (key, parameter) = part.split_once('=').unwrap_or((part, "x"));
            assert!(letters(key) && !parameter.is_empty(), "{line}");
            assert_eq!(index > 0, part.contains('='), "{line}");
        }
        assert!(!value.chars().any(char::is_control), "{line:?}");
        match (name, value) {
            ("BEGIN", kind) => {
                assert_eq!(open.len(), usize::from(kind == "VEVENT"), "{line}");
                open.push(kind.to_owned());
                if kind == "VEVENT" {
                    events.push(BTreeMap::new());
                }
            }
            ("END", kind) => assert_eq!(open.pop().as_deref(), Some(kind)),
            (name, value) => {
                let into = match open.last().map(String::as_str) {
                    Some("VEVENT") => events.last_mut().expect("one is open"),
                    Some("VCALENDAR") => &mut calendar,
                    other => panic!("{line} stands in {other:?}"),
                };
                let before = into.insert(name.to_owned(), value.to_owned());
                assert!(before.is_none(), "{name} stands twice");
            }
        }
    }
    assert!(open.is_empty());
    assert_eq!(calendar["VERSION"], "2.0");
    assert!(calendar.contains_key("PRODID"));
    let mut uids: Vec<&String> = events.iter().map(|event| &event["UID"]).collect();
    uids.sort();
    uids.dedup();
    assert_eq!(uids.len(), events.len(), "a UID is one event's");
    for event in &events {
        let stamp = &event["DTSTAMP"];
        assert!(
            stamp.len() == 16 && stamp.ends_with('Z') && &stamp[8..9] == "T",
            "{stamp}"
        );
        let day = &event["DTSTART;VALUE=DATE"];
        assert!(
            chrono::NaiveDate::parse_from_str(day, "%Y%m%d").is_ok(),
            "{day}"
        );
        for text in [Some(&event["SUMMARY"]), event.get("DESCRIPTION")]
            .into_iter()
            .flatten()
        {
            let mut letters = text.chars();
            while let Some(letter) = letters.next() {
                assert!(!matches!(letter, ';' | ','), "{text} is not escaped");
                if letter == '\\' {
                    let next = letters.next();
                    assert!(matches!(next, Some('\\' | ';' | ',' | 'n' | 'N')), "{text}");
                }
            }
        }
    }
    events
}

#[test]
fn the_diary_has_the_days_to_come() {
    let workspace = Workspace::new();
    workspace.with(
        "registers/products.csv",
        "product_id,name,claim,ingredients\n\
         P1,\"Harbour Loaf; dark, \\ sliced\",gluten-free,Rice.\nP2,Lantern Rolls,gluten-free,Rice.\n",
    );
    workspace.with(
        "registers/packages.csv",
        "package_code,product_id,sent_on\nA1,P1,2031-02-01\nA2,P1,2031-02-01\nA3,P1,2031-02-01\nB1,P2,2031-03-01\n",
    );
    workspace.with(
        "inbox/a.csv",
        OVER.replace("Sample", "Tested on,Sample")
            .replace("\nA", "\n2031-02-20,A"),
    );
    workspace.with(
        "registers/followups.csv",
        "product_id,round,on,kind,due_on,statement,note\nP1,1,2031-03-02,notice-sent,,,Private words\n",
    );
    workspace.run(&["run", "--date", "2031-03-05"]).exits(0);
    let text = workspace.text("out/diary.ics");
    assert!(!text.contains("Private"), "{text}");
    let found: Vec<(String, String)> = events(&text)
        .into_iter()
        .map(|event| {
            let summary = event["SUMMARY"]
                .split(':')
                .next()
                .unwrap_or_default()
                .to_owned();
            (event["DTSTART;VALUE=DATE"].clone(), summary)
        })
        .collect();
    let wanted = [
        ("20310317", "Reply due"),
        ("20310324", "May be published"),
        ("20310331", "Lab report due"),
        ("20320220", "Test again"),
    ];
    assert_eq!(
        found,
        wanted.map(|(day, what)| (day.to_owned(), what.to_owned()))
    );
    let (first, again) = (text, {
        workspace.run(&["run", "--date", "2031-03-06"]).exits(0);
        workspace.text("out/diary.ics")
    });
    assert_eq!(first, again, "the day of the run has no say in it");
}
