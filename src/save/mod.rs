//! What was made -> files: staged beside their place, then moved in together.

/// The outputs folder: staging, moving in, clearing what an earlier run left.
pub mod out;

/// `results.json` and its shape.
pub mod results;

/// The same figures as tables for a spreadsheet, with their data dictionary.
pub mod tables;

/// `inbox-report.txt`: every problem in words.
pub mod report;

/// The dated archive.
pub mod bag;

/// Whether an archive is still what it was.
pub mod verify;

/// The register of what was issued.
pub mod issued;

/// One run at a time.
pub mod lock;

/// What a bag told its readers, and how two differ for one sheet.
pub mod edition;

/// What a reader of one bag must know of another.
pub mod compare;

/// One mail as the bytes of a draft.
pub mod mail;

/// Who gets which draft.
pub mod drafts;

/// A round's plan as tables.
pub mod planning;

/// The empty table for the lab.
pub mod forms;
