//! One mail as the bytes of an .eml file (RFC 5322, MIME) that mail programs open as a draft; nothing is ever sent.
//!
//! The same letter gives the same bytes: identifier, date and boundaries are made from the letter. Text from registers is
//! data: no line break in it can start a header, no length breaks a line.

use crate::files;
use chrono::{NaiveDate, NaiveTime};
use mail_builder::MessageBuilder;
use mail_builder::headers::address::Address;
use mail_builder::headers::content_type::ContentType;
use mail_builder::headers::date::Date;
use mail_builder::headers::raw::Raw;
use mail_builder::headers::{Header, HeaderType};
use mail_builder::mime::MimePart;

/// A letter with what is attached to it.
#[derive(Clone, Debug)]
pub struct Letter<'a> {
    /// What makes this letter this letter: it becomes part of its identifier. ASCII.
    pub stem: String,
    /// Who writes.
    pub from: Mailbox,
    /// To whom.
    pub to: Recipient,
    /// What it is about.
    pub subject: String,
    /// The day that it bears.
    pub date: NaiveDate,
    /// The text, paragraphs with a blank line between them.
    pub text: String,
    /// The same as a page.
    pub html: String,
    /// PDFs, if any.
    pub enclosed: Vec<Enclosed<'a>>,
}

/// A name and an address.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mailbox {
    /// In full.
    pub name: String,
    /// `someone@example.org`.
    pub address: String,
}

/// To whom a letter goes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Recipient {
    /// To these addresses, under this name.
    Known {
        /// In full, where it is known.
        name: Option<String>,
        /// One or more.
        addresses: Vec<String>,
    },
    /// Nobody's address is known. The draft says so where the address would stand: a group without members, which no
    /// mail program will send to.
    Missing {
        /// What to fill in, in words; ASCII, since some programs cannot read the name of a group in anything else.
        gap: String,
    },
}

/// A PDF that goes with a letter.
#[derive(Clone, Debug)]
pub struct Enclosed<'a> {
    /// File name in ASCII: others reach some mail programs as "untitled".
    pub name: String,
    /// Its whole content.
    pub bytes: &'a [u8],
}

/// The bytes of the draft.
pub fn draft(letter: &Letter<'_>) -> Vec<u8> {
    let digest = digest(letter);
    let boundary = |part: &str| format!("galleyproof-{part}-{}", &digest[..24]);
    let alternative = MimePart::new(
        ContentType::new("multipart/alternative").attribute("boundary", boundary("text")),
        vec![
            MimePart::new("text/plain", whole_lines(&letter.text)),
            MimePart::new("text/html", whole_lines(&letter.html)),
        ],
    );
    let enclosed = letter.enclosed.iter().map(|enclosed| {
        MimePart::new("application/pdf", enclosed.bytes).attachment(enclosed.name.clone())
    });
    let body = match letter.enclosed.is_empty() {
        true => alternative,
        false => MimePart::new(
            ContentType::new("multipart/mixed").attribute("boundary", boundary("mixed")),
            std::iter::once(alternative)
                .chain(enclosed)
                .collect::<Vec<_>>(),
        ),
    };
    let midnight = letter.date.and_time(NaiveTime::MIN).and_utc().timestamp();
    MessageBuilder::new()
        .from(Address::new_address(
            Some(display_name(&letter.from.name)),
            letter.from.address.clone(),
        ))
        .to(recipient(&letter.to))
        .subject(one_line(&letter.subject))
        .date(Date::new(midnight))
        // `.invalid` (RFC 2606) is nobody's domain; a mail program gives its own identifier when it sends.
        .message_id(format!(
            "{}.{}@galleyproof.invalid",
            letter.stem,
            &digest[..16]
        ))
        .header("X-Unsent", HeaderType::Raw(Raw::new("1")))
        .body(body)
        .write_to_vec()
        .expect("a mail is built in memory")
}

fn recipient(to: &Recipient) -> Address<'static> {
    match to {
        Recipient::Known { name, addresses } => Address::new_list(
            addresses
                .iter()
                .map(|address| {
                    Address::new_address(name.as_deref().map(display_name), address.clone())
                })
                .collect(),
        ),
        Recipient::Missing { gap } => Address::new_group(Some(one_line(gap)), Vec::new()),
    }
}

/// Text as one line: white space of any kind is a space, other control characters are gone, and what would read as
/// encoded words (RFC 2047) reads as it stands.
pub fn one_line(text: &str) -> String {
    let visible: String = text
        .chars()
        .map(|c| if c.is_whitespace() { ' ' } else { c })
        .filter(|c| !c.is_control() && !is_invisible_direction(*c))
        .collect();
    let words: Vec<&str> = visible.split(' ').filter(|word| !word.is_empty()).collect();
    words.join(" ").replace("=?", "= ?")
}

/// Text whose lines end in one way only, without control characters: RFC 5322 knows no bare CR and no NUL.
fn whole_lines(text: &str) -> String {
    let lines = text.replace("\r\n", "\n").replace('\r', "\n");
    lines
        .chars()
        .filter(|c| !c.is_control() || matches!(c, '\n' | '\t'))
        .collect()
}

/// A name beside an address, cut so that it is one encoded word: mail programs join the words of a long name in
/// different ways. The letter has it whole.
fn display_name(name: &str) -> String {
    let name = one_line(name);
    if is_one_word(&name) {
        return name;
    }
    let ends = name.char_indices().map(|(end, _)| end).take(60);
    let mut shorter: Vec<String> = ends
        .map(|end| format!("{}…", name[..end].trim_end()))
        .collect();
    shorter.reverse();
    shorter
        .into_iter()
        .find(|name| is_one_word(name))
        .unwrap_or_default()
}

/// Whether a name beside an address takes no more than one encoded word.
fn is_one_word(name: &str) -> bool {
    let mut header = Vec::new();
    Address::new_address(Some(name), "a@b.example").write_header(&mut header, "From: ".len());
    let starts = header.windows(3).filter(|start| start == b"=?u").count();
    starts <= 1 && name.len() <= 200
}

/// Marks that turn the direction of text: in a subject they could make one name look like another.
fn is_invisible_direction(c: char) -> bool {
    matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// SHA-256 over everything in the letter.
fn digest(letter: &Letter<'_>) -> String {
    let mut all = Vec::new();
    let mut part = |bytes: &[u8]| {
        all.extend_from_slice(&(bytes.len() as u64).to_le_bytes());
        all.extend_from_slice(bytes);
    };
    let to = format!("{:?} {:?}", letter.from, letter.to);
    for text in [
        &letter.stem,
        &to,
        &letter.subject,
        &letter.date.to_string(),
        &letter.text,
        &letter.html,
    ] {
        part(text.as_bytes());
    }
    for enclosed in &letter.enclosed {
        part(enclosed.name.as_bytes());
        part(files::sha256_of(enclosed.bytes).as_bytes());
    }
    files::sha256_of(&all)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::address::addresses;
    use proptest::prelude::*;

    fn letter(name: &str, to: Recipient) -> Letter<'static> {
        Letter {
            stem: "FH-01--1".to_owned(),
            from: Mailbox {
                name: name.to_owned(),
                address: "results@tidewater.example".to_owned(),
            },
            to,
            subject: format!("Results for {name}"),
            date: NaiveDate::from_ymd_opt(2031, 4, 7).expect("a date"),
            text: format!("Dear quality manager,\n\n{name}\n.\nFrom here on"),
            html: format!("<p>{name}</p>"),
            enclosed: vec![Enclosed {
                name: "sheet.pdf".to_owned(),
                bytes: b"%PDF-1.7 not really",
            }],
        }
    }

    fn known(name: &str) -> Recipient {
        Recipient::Known {
            name: Some(name.to_owned()),
            addresses: vec!["quality@maker.example".to_owned()],
        }
    }

    /// The header lines of a message, unfolded.
    fn headers(message: &[u8]) -> Vec<String> {
        let text = String::from_utf8(message.to_vec()).expect("a mail is ASCII");
        let (head, _) = text.split_once("\r\n\r\n").expect("has a body");
        let unfolded = head.replace("\r\n ", " ").replace("\r\n\t", " ");
        unfolded.split("\r\n").map(str::to_owned).collect()
    }

    const HEADERS: [&str; 8] = [
        "From",
        "To",
        "Subject",
        "Date",
        "Message-ID",
        "X-Unsent",
        "MIME-Version",
        "Content-Type",
    ];

    fn assert_sound(message: &[u8]) {
        let names: Vec<String> = headers(message)
            .iter()
            .map(|line| line.split(':').next().unwrap_or_default().to_owned())
            .collect();
        assert_eq!(names, HEADERS, "{}", String::from_utf8_lossy(message));
        assert!(message.is_ascii());
        let text = String::from_utf8_lossy(message);
        for line in text.split("\r\n") {
            assert!(
                line.len() <= 998,
                "RFC 5322, section 2.1.1: {} characters",
                line.len()
            );
            assert!(!line.contains(['\r', '\n']), "a line ends with CR LF only");
        }
    }

    #[test]
    fn a_draft_is_a_draft_with_both_texts_and_what_is_enclosed() {
        let message = draft(&letter("Oat Biscuits", known("Maker")));
        assert_sound(&message);
        let lines = headers(&message);
        assert!(lines.contains(&"X-Unsent: 1".to_owned()), "{lines:?}");
        assert!(
            lines.contains(&"Date: Mon, 7 Apr 2031 00:00:00 +0000".to_owned()),
            "{lines:?}"
        );
        let text = String::from_utf8(message).expect("ASCII");
        let order = [
            "multipart/mixed",
            "multipart/alternative",
            "text/plain",
            "text/html",
            "application/pdf",
        ];
        let places: Vec<_> = order
            .iter()
            .map(|kind| text.find(kind).expect(kind))
            .collect();
        assert!(places.is_sorted(), "{places:?}");
        assert!(text.contains("filename=\"sheet.pdf\""), "{text}");
    }

    #[test]
    fn the_same_letter_is_the_same_bytes() {
        let one = letter("Oat Biscuits", known("Maker"));
        assert_eq!(draft(&one), draft(&one));
        let other = letter("Rice Crackers", known("Maker"));
        assert_ne!(
            headers(&draft(&one))[4],
            headers(&draft(&other))[4],
            "identifiers differ"
        );
    }

    #[test]
    fn no_name_can_start_a_header() {
        for name in [
            "x\r\nBcc: all@example.org",
            "x\nX-Forged: 1",
            "x\r\n\r\nbody",
            "\"; Bcc: a@b.c",
            "x\u{2028}y\u{85}Bcc: z",
            "=?utf-8?Q?=0D=0ABcc:_a?=",
        ] {
            let message = draft(&letter(name, known(name)));
            assert_sound(&message);
        }
    }

    #[test]
    fn a_missing_address_is_a_gap_that_cannot_be_sent_to() {
        let gap = "Address of the maker goes here".to_owned();
        let message = draft(&letter("Oat Biscuits", Recipient::Missing { gap }));
        assert_sound(&message);
        let lines = headers(&message);
        assert!(
            lines[1].starts_with("To: ") && lines[1].ends_with(":;"),
            "{}",
            lines[1]
        );
        assert!(!lines[1].contains('@'), "{}", lines[1]);
    }

    #[test]
    fn only_plain_addresses_are_taken() {
        let one = |text: &str| addresses(text).map(|found| found.join(" "));
        assert_eq!(
            one(" qa@maker.example "),
            Some("qa@maker.example".to_owned())
        );
        assert_eq!(
            one("a@b.example; c+d@e.example"),
            Some("a@b.example c+d@e.example".to_owned())
        );
        for bad in [
            "",
            "maker",
            "a@b",
            "a@@b.c",
            "a@b.c\r\nBcc: x@y.z",
            "Maker <a@b.c>",
            "a..b@c.d",
            "ä@b.c",
            "a@b..c",
        ] {
            assert_eq!(one(bad), None, "{bad:?}");
        }
        assert_eq!(one(&format!("{}@b.example", "a".repeat(260))), None);
    }

    proptest! {
        #[test]
        fn any_name_gives_a_sound_mail(name in "(\\PC|[\r\n\t\0\"=?<>,;:@]){0,40}", times in 1usize..60) {
            let name = name.repeat(times);
            let message = draft(&letter(&name, known(&name)));
            assert_sound(&message);
            let lines = headers(&message);
            prop_assert!(lines[..2].iter().all(|line| line.matches(" =?").count() <= 1), "{:?}", &lines[..2]);
        }
    }
}
