//! `registers/issued.csv`: one row a published revision, written by `issue` alone and only ever added to.
//!
//! The archive holds a copy in each bag. A bag moves into place before the register is written, so a run that is cut off
//! between the two leaves a bag that knows more than the register; [`missing_from`] finds what to put back.

use crate::model::registers::IssuedRevision;
use anyhow::{Context, Result};
use std::collections::BTreeSet;

/// The register's name in a programme folder.
pub const FILE_NAME: &str = "registers/issued.csv";

/// The columns that `issue` writes; a person's further columns are kept.
pub const COLUMNS: [&str; 11] = [
    "sheet_number",
    "product_id",
    "round",
    "revision",
    "issued_on",
    "content_sha256",
    "reason",
    "changed",
    "verdict",
    "label",
    "early",
];

/// The register with further rows at its end. What stands in it stays: columns in any order, further columns, the
/// delimiter that a spreadsheet program chose.
///
/// # Errors
/// Where the register is there and cannot be read as a table.
pub fn with_rows(existing: Option<&[u8]>, rows: &[IssuedRevision]) -> Result<Vec<u8>> {
    let table = Table::read(existing.unwrap_or_default())?;
    let mut headings = table.headings.clone();
    for column in COLUMNS {
        if table.column(column).is_none() {
            headings.push(column.to_owned());
        }
    }
    let mut writer = csv::WriterBuilder::new()
        .delimiter(table.delimiter)
        .from_writer(Vec::new());
    let width = headings.len();
    let padded = |mut record: Vec<String>| {
        record.resize(width.max(record.len()), String::new());
        record
    };
    writer.write_record(&headings)?;
    for record in table.records {
        writer.write_record(padded(record))?;
    }
    for row in rows {
        let cells: Vec<String> = headings.iter().map(|heading| cell(row, heading)).collect();
        writer.write_record(cells)?;
    }
    writer.into_inner().context("a register is built in memory")
}

/// The rows of a register that can be read whole; a row that cannot is left to the reader of registers to name.
pub fn rows(bytes: &[u8]) -> Result<Vec<IssuedRevision>> {
    let table = Table::read(bytes)?;
    let columns = COLUMNS.map(|column| table.column(column));
    let rows = table.records.iter().filter_map(|record| {
        let text = |index: usize| {
            let cell = columns[index].and_then(|column| record.get(column))?.trim();
            (!cell.is_empty()).then(|| cell.to_owned())
        };
        Some(IssuedRevision {
            sheet_number: text(0)?,
            product_id: text(1)?,
            round: text(2)?,
            revision: text(3)?.parse().ok()?,
            issued_on: text(4)?.parse().ok()?,
            content_sha256: text(5)?,
            reason: text(6),
            changed: text(7),
            verdict: text(8),
            label: text(9),
            early: text(10),
        })
    });
    Ok(rows.collect())
}

/// The revisions that an archived register holds and the living one does not.
pub fn missing_from(living: &[IssuedRevision], archived: &[IssuedRevision]) -> Vec<IssuedRevision> {
    let key = |row: &IssuedRevision| (row.sheet_number.clone(), row.revision);
    let known: BTreeSet<_> = living.iter().map(key).collect();
    let missing = archived.iter().filter(|row| !known.contains(&key(row)));
    missing.cloned().collect()
}

fn cell(row: &IssuedRevision, heading: &str) -> String {
    match normal(heading).as_str() {
        "sheet_number" => row.sheet_number.clone(),
        "product_id" => row.product_id.clone(),
        "round" => row.round.clone(),
        "revision" => row.revision.to_string(),
        "issued_on" => row.issued_on.to_string(),
        "content_sha256" => row.content_sha256.clone(),
        "reason" => row.reason.clone().unwrap_or_default(),
        "changed" => row.changed.clone().unwrap_or_default(),
        "verdict" => row.verdict.clone().unwrap_or_default(),
        "label" => row.label.clone().unwrap_or_default(),
        "early" => row.early.clone().unwrap_or_default(),
        _ => String::new(),
    }
}

fn normal(heading: &str) -> String {
    heading.trim().to_lowercase().replace([' ', '-'], "_")
}

/// The register as it stands.
struct Table {
    delimiter: u8,
    headings: Vec<String>,
    records: Vec<Vec<String>>,
}

impl Table {
    fn read(bytes: &[u8]) -> Result<Table> {
        let text = decode(bytes);
        let first_line = text.lines().next().unwrap_or_default();
        let delimiter = [b',', b';', b'\t']
            .into_iter()
            .max_by_key(|delimiter| {
                // The comma wins where none of them stands.
                let count = first_line.bytes().filter(|byte| byte == delimiter).count();
                (count, *delimiter == b',')
            })
            .expect("there are three");
        let mut reader = csv::ReaderBuilder::new()
            .delimiter(delimiter)
            .has_headers(false)
            .flexible(true)
            .from_reader(text.as_bytes());
        let mut records = Vec::new();
        for record in reader.records() {
            let record = record.with_context(|| format!("cannot read {FILE_NAME} as a table"))?;
            records.push(record.iter().map(str::to_owned).collect::<Vec<_>>());
        }
        let headings = match records.is_empty() {
            true => Vec::new(),
            false => records.remove(0),
        };
        Ok(Table {
            delimiter,
            headings,
            records,
        })
    }

    fn column(&self, name: &str) -> Option<usize> {
        self.headings
            .iter()
            .position(|heading| normal(heading) == name)
    }
}

/// We write UTF-8; a spreadsheet program may have saved it again in something else.
fn decode(bytes: &[u8]) -> String {
    if let Some((encoding, mark)) = encoding_rs::Encoding::for_bom(bytes) {
        return encoding
            .decode_without_bom_handling(&bytes[mark..])
            .0
            .into_owned();
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => text.to_owned(),
        Err(_) => encoding_rs::WINDOWS_1252.decode(bytes).0.into_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;

    fn row(product: &str, revision: u32, reason: Option<&str>) -> IssuedRevision {
        IssuedRevision {
            sheet_number: format!("TKW-{product}-1"),
            product_id: product.to_owned(),
            round: "1".to_owned(),
            revision,
            issued_on: NaiveDate::from_ymd_opt(2031, 4, 22).expect("a date"),
            content_sha256: "ab12".to_owned(),
            reason: reason.map(str::to_owned),
            changed: reason.map(|_| "result of A: 18.2 -> 22.4 ppm".to_owned()),
            verdict: Some("over_limit".to_owned()),
            label: Some("none".to_owned()),
            early: None,
        }
    }

    #[test]
    fn rows_come_back_as_they_were_written() {
        let written = [
            row("FH-01", 1, None),
            row(
                "FH-01",
                2,
                Some("Lot, misread; \"B\" for 8\nsee letter — Ωμέγα"),
            ),
        ];
        let first = with_rows(None, &written[..1]).expect("writes");
        let both = with_rows(Some(&first), &written[1..]).expect("writes");
        assert!(both.starts_with(&first), "only ever added to");
        assert_eq!(rows(&both).expect("reads"), written);
    }

    #[test]
    fn what_a_person_made_of_the_register_stays() {
        let edited = "\u{feff}product_id;sheet_number;Round;revision;issued_on;content_sha256;note\r\n\
                      FH-01;TKW-FH-01-1;1;1;2031-04-22;ab12;posted\r\n";
        let grown = with_rows(Some(edited.as_bytes()), &[row("FH-02", 2, Some("new lot"))]);
        let text = String::from_utf8(grown.expect("writes")).expect("UTF-8");
        let mut lines = text.lines();
        assert_eq!(
            lines.next(),
            Some(
                "product_id;sheet_number;Round;revision;issued_on;content_sha256;note;reason;changed;verdict;label;early"
            )
        );
        assert_eq!(
            lines.next(),
            Some("FH-01;TKW-FH-01-1;1;1;2031-04-22;ab12;posted;;;;;")
        );
        assert!(
            lines
                .next()
                .is_some_and(|line| line.contains("2031-04-22;ab12;;new lot;"))
        );
        assert_eq!(rows(text.as_bytes()).expect("reads").len(), 2);
    }

    #[test]
    fn what_a_cut_off_run_left_out_is_found() {
        let living = [row("FH-01", 1, None)];
        let archived = [
            row("FH-01", 1, None),
            row("FH-01", 2, Some("amended")),
            row("FH-02", 1, None),
        ];
        assert_eq!(missing_from(&living, &archived), archived[1..]);
        assert!(missing_from(&archived, &living).is_empty());
    }
}
