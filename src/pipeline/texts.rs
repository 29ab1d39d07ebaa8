//! The files of a run that need no typesetting: data, tables, the report on the inbox, the diary.

use crate::config::Config;
use crate::model::decided::Decided;
use crate::model::document::Document;
use crate::model::publication::Audience;
use crate::save::{diary, report, results, tables};
use anyhow::Result;

/// Gives the files that need no typesetting to `put`, each as soon as it is made, so that memory holds one.
///
/// # Errors
/// Where `put` fails.
pub fn texts(
    decided: &Decided,
    config: &Config,
    put: &dyn Fn(Document) -> Result<()>,
) -> Result<()> {
    let data = results::json(decided, config);
    put(Document::text("data/results.json", data))?;
    if decided.audience == Audience::Programme {
        let report = report::text(decided, &config.words);
        put(Document::text("inbox-report.txt", report))?;
        put(Document::text("diary.ics", diary::text(decided, config)))?;
    }
    tables::documents(decided, config, put)
}
