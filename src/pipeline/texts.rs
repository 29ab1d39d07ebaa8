//! The files of a run that need no typesetting: data, tables, the report on the inbox, the diary.

use crate::config::Config;
use crate::model::decided::Decided;
use crate::model::document::Document;
use crate::model::publication::Audience;
use crate::save::{diary, report, results, tables};

/// The files that need no typesetting.
pub fn texts(decided: &Decided, config: &Config) -> Vec<Document> {
    let mut texts = vec![Document::text(
        "data/results.json",
        results::json(decided, config),
    )];
    if decided.audience == Audience::Programme {
        texts.push(Document::text(
            "inbox-report.txt",
            report::text(decided, &config.words),
        ));
        texts.push(Document::text("diary.ics", diary::text(decided, config)));
    }
    texts.extend(tables::documents(decided, config));
    texts
}
