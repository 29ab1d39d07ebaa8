//! The newsletter as a mail: the page and the plain text beside each other, for the programme to send to its readers.

use crate::config::Config;
use crate::model::document::Document;
use crate::save::drafts::sender;
use crate::save::mail::{self, Letter, Recipient};
use crate::words::say;
use chrono::NaiveDate;

/// The mail that lies beside the newsletter's page and plain text, which are among `files`: a draft without an address,
/// since no register holds those of the readers. `subject` says of a proof that it is one.
pub fn newsletter(files: &[Document], subject: &str, date: NaiveDate, config: &Config) -> Document {
    let text = |ending| {
        let found = files.iter().find(|file| file.path.ends_with(ending));
        let file = found.expect("the newsletter has a page and plain text");
        String::from_utf8_lossy(&file.bytes).into_owned()
    };
    let letter = Letter {
        stem: format!("newsletter-{date}"),
        from: sender(&config.programme),
        to: Recipient::Missing {
            gap: config.words.say(&say::newsletter_no_readers()),
        },
        subject: mail::one_line(&subject.replace('\u{200b}', "")),
        date,
        text: text(".txt"),
        html: text(".html"),
        enclosed: Vec::new(),
    };
    Document {
        path: "newsletter/digest.eml".to_owned(),
        bytes: mail::draft(&letter),
    }
}
