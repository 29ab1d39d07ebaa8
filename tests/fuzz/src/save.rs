//! Mails by templates, which a programme can replace.

#[path = "../../../src/save/mail.rs"]
pub mod mail;

#[path = "../../../src/save/drafts/mod.rs"]
pub mod drafts;
