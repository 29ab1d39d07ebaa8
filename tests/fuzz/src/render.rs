//! What templates read, as far as it is made without the typesetter.

#[path = "../../../src/render/numbers.rs"]
pub mod numbers;

#[path = "../../../src/render/terms.rs"]
pub mod terms;

#[path = "../../../src/render/tally.rs"]
pub mod tally;

#[path = "../../../src/render/listing.rs"]
pub mod listing;

#[path = "../../../src/render/words/mod.rs"]
pub mod words;

#[path = "../../../src/render/job.rs"]
pub mod job;

#[path = "../../../src/render/addresses.rs"]
pub mod addresses;

#[path = "../../../src/render/facts/mod.rs"]
pub mod facts;

#[path = "../../../src/render/charts/mod.rs"]
pub mod charts;

#[path = "../../../src/render/explain/mod.rs"]
pub mod explain;

pub use job::{Job, JobFile, chart_name};

/// Photographs are drawn by the typesetter's reader of pictures.
pub mod photographs {
    /// Never drawn here.
    ///
    /// # Errors
    /// Always.
    pub fn small(_: Vec<u8>) -> Result<(u32, u32, Vec<u8>), &'static str> {
        Err("unread")
    }
}
