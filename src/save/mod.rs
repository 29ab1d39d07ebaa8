//! What was made -> files: staged beside their place, then moved in together.

/// The outputs folder: staging, moving in, clearing what an earlier run left.
pub mod out;

/// Files that are written by themselves.
pub mod alone;

/// `results.json`.
pub mod results;

/// Its plates.
mod plates;

/// The same figures as tables for a spreadsheet, with their data dictionary.
pub mod tables;

/// `inbox-report.txt`: every problem in words.
pub mod report;

/// The register of what passed between the programme and the makers, with a row more.
pub mod followups;

/// The days to come, for a calendar program.
pub mod diary;

/// One run at a time.
pub mod lock;

/// One mail as the bytes of a draft.
pub mod mail;

/// Who gets which draft.
pub mod drafts;

/// A round's plan as tables.
pub mod planning;

/// The empty table for the lab.
pub mod forms;
