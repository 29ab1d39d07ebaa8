//! `registers/issued.csv`: one row a published revision, written by `issue` alone and only ever added to.
//!
//! The archive holds a copy in each bag. A bag moves into place before the register is written, so a run that is cut off
//! between the two leaves a bag that knows more than the register; [`mended`] puts that back, and what a person changed.

use crate::model::registers::IssuedRevision;
use anyhow::{Context, Result};
use std::collections::{BTreeMap, BTreeSet};

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
    Table::read(existing.unwrap_or_default())?.with_rows(rows)
}

/// The rows of a register that can be read whole; a row that cannot is left to the reader of registers to name.
pub fn rows(bytes: &[u8]) -> Result<Vec<IssuedRevision>> {
    let table = Table::read(bytes)?;
    let rows = (0..table.records.len()).filter_map(|at| table.row(at));
    Ok(rows.collect())
}

/// What holding a register against the archive came to.
#[derive(Clone, Debug, Default)]
pub struct Mended {
    /// The register as it should be; none where it is so already.
    pub register: Option<Vec<u8>>,
    /// Rows that it lacked.
    pub added: Vec<IssuedRevision>,
    /// Rows that said something else.
    pub mended: Vec<IssuedRevision>,
    /// Its rows that can be read and that no bag has.
    pub unarchived: Vec<IssuedRevision>,
}

/// Holds a register against what the archive has: rows that were changed since are as they were again, rows that it lacks
/// stand at its end. A person's further columns, and rows that no bag has, stay.
///
/// # Errors
/// Where the register cannot be read as a table.
pub fn mended(living: &[u8], archived: Vec<IssuedRevision>) -> Result<Mended> {
    let mut table = Table::read(living)?;
    let mut found = Mended::default();
    let mut seen = BTreeSet::new();
    let archived_at: BTreeMap<_, _> = archived
        .iter()
        .map(|row| ((row.sheet_number.clone(), row.revision), row))
        .collect();
    for at in 0..table.records.len() {
        let Some(key) = table.key(at) else { continue };
        let Some(row) = archived_at.get(&key) else {
            found.unarchived.extend(table.row(at));
            continue;
        };
        seen.insert(key);
        if !table.says(at, row) {
            table.set(at, row);
            found.mended.push((*row).clone());
        }
    }
    // Of two rows about one revision the last counts, as above.
    let lacks = |row: &&IssuedRevision| {
        let key = (row.sheet_number.clone(), row.revision);
        !seen.contains(&key) && std::ptr::eq(archived_at[&key], *row)
    };
    found.added = archived.iter().filter(lacks).cloned().collect();
    if !found.mended.is_empty() || !found.added.is_empty() {
        found.register = Some(table.with_rows(&found.added)?);
    }
    Ok(found)
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

    /// A cell of one of our columns, without the blanks round it; empty where there is none.
    fn text(&self, at: usize, column: &str) -> &str {
        let place = self.column(column);
        let cell = place.and_then(|place| self.records[at].get(place));
        cell.map_or("", |cell| cell.trim())
    }

    /// A row that can be read whole.
    fn row(&self, at: usize) -> Option<IssuedRevision> {
        let text = |column: &str| {
            let cell = self.text(at, column);
            (!cell.is_empty()).then(|| cell.to_owned())
        };
        Some(IssuedRevision {
            sheet_number: text("sheet_number")?,
            product_id: text("product_id")?,
            round: text("round")?,
            revision: text("revision")?.parse().ok()?,
            issued_on: text("issued_on")?.parse().ok()?,
            content_sha256: text("content_sha256")?,
            reason: text("reason"),
            changed: text("changed"),
            verdict: text("verdict"),
            label: text("label"),
            early: text("early"),
        })
    }

    /// Which revision a row is of, also where a spreadsheet program wrote `1.0` or `1,0`.
    fn key(&self, at: usize) -> Option<(String, u32)> {
        let number = self.text(at, "sheet_number");
        let revision = self.text(at, "revision");
        let whole = revision
            .split_once(['.', ','])
            .map_or(revision, |(whole, rest)| {
                match rest.bytes().all(|digit| digit == b'0') {
                    true => whole,
                    false => revision,
                }
            });
        (!number.is_empty()).then_some((number.to_owned(), whole.parse().ok()?))
    }

    /// Whether a row says what was issued. Line ends and double blanks say nothing.
    fn says(&self, at: usize, row: &IssuedRevision) -> bool {
        COLUMNS.iter().all(|column| {
            let written = self.text(at, column).split_whitespace();
            written.eq(cell(row, column).split_whitespace())
        })
    }

    /// Has a row say what was issued.
    fn set(&mut self, at: usize, row: &IssuedRevision) {
        self.complete();
        for (place, heading) in self.headings.iter().enumerate() {
            if COLUMNS.contains(&normal(heading).as_str()) {
                let record = &mut self.records[at];
                record.resize(record.len().max(self.headings.len()), String::new());
                record[place] = cell(row, heading);
            }
        }
    }

    /// Adds the columns of ours that are not there, behind every cell that stands: what a row has beyond the headings must
    /// not come to stand under one of ours.
    fn complete(&mut self) {
        let lacks: Vec<&str> = COLUMNS
            .into_iter()
            .filter(|column| self.column(column).is_none())
            .collect();
        if lacks.is_empty() {
            return;
        }
        let filled = |record: &Vec<String>| {
            let last = record.iter().rposition(|cell| !cell.trim().is_empty());
            last.map_or(0, |last| last + 1)
        };
        let widest = self.records.iter().map(filled).max().unwrap_or(0);
        self.headings
            .resize(self.headings.len().max(widest), String::new());
        self.headings.extend(lacks.into_iter().map(str::to_owned));
    }

    fn with_rows(mut self, rows: &[IssuedRevision]) -> Result<Vec<u8>> {
        self.complete();
        let mut writer = csv::WriterBuilder::new()
            .delimiter(self.delimiter)
            // A person's row may be longer than the headings are.
            .flexible(true)
            .from_writer(Vec::new());
        let width = self.headings.len();
        let padded = |mut record: Vec<String>| {
            record.resize(width.max(record.len()), String::new());
            record
        };
        writer.write_record(&self.headings)?;
        for record in self.records {
            writer.write_record(padded(record))?;
        }
        for row in rows {
            let cells = self.headings.iter().map(|heading| cell(row, heading));
            writer.write_record(cells)?;
        }
        writer.into_inner().context("a register is built in memory")
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
    fn a_row_that_is_longer_than_the_headings_stops_nothing() {
        let first = with_rows(None, &[row("FH-01", 1, None)]).expect("writes");
        let text = String::from_utf8(first).expect("UTF-8");
        let longer = format!("{},posted,,,by hand\n", text.trim_end());
        let grown = with_rows(Some(longer.as_bytes()), &[row("FH-02", 1, None)]);
        let grown = String::from_utf8(grown.expect("writes")).expect("UTF-8");
        assert!(grown.starts_with(&longer), "{grown}");
        assert_eq!(rows(grown.as_bytes()).expect("reads").len(), 2);
    }

    #[test]
    fn a_cell_beyond_the_headings_never_stands_under_a_column_that_is_added() {
        let without = "sheet_number,product_id,round,revision,issued_on\nTKW-FH-01-1,FH-01,1,1,2031-04-22,cd34,posted\n";
        assert!(rows(without.as_bytes()).expect("reads").is_empty());
        let grown = with_rows(Some(without.as_bytes()), &[row("FH-02", 1, None)]).expect("writes");
        assert_eq!(
            rows(&grown).expect("reads"),
            [row("FH-02", 1, None)],
            "{}",
            String::from_utf8_lossy(&grown)
        );
    }

    #[test]
    fn what_a_cut_off_run_left_out_is_put_back() {
        let archived = vec![
            row("FH-01", 1, None),
            row("FH-01", 2, Some("amended")),
            row("FH-02", 1, None),
        ];
        let living = with_rows(None, &archived[..1]).expect("writes");
        let healed = mended(&living, archived.clone()).expect("reads");
        assert_eq!(healed.added, archived[1..]);
        let whole = healed.register.expect("is written");
        assert!(whole.starts_with(&living) && healed.mended.is_empty());
        assert_eq!(rows(&whole).expect("reads"), archived);
        let again = mended(&whole, archived).expect("reads");
        assert!(again.register.is_none() && again.unarchived.is_empty());
        let alone = mended(&whole, Vec::new()).expect("reads");
        assert!(alone.register.is_none() && alone.unarchived.len() == 3);
    }

    #[test]
    fn of_two_archived_rows_about_one_revision_the_last_is_put_back() {
        let mut other = row("FH-01", 1, None);
        other.content_sha256 = "cd34".to_owned();
        let archived = vec![row("FH-01", 1, None), other.clone()];
        let healed = mended(b"", archived.clone()).expect("reads");
        assert_eq!(healed.added, [other]);
        let again = mended(&healed.register.expect("is written"), archived).expect("reads");
        assert!(again.register.is_none());
    }

    #[test]
    fn what_a_spreadsheet_program_or_a_person_changed_is_as_it_was() {
        let archived = vec![row("FH-01", 1, None), row("FH-02", 1, Some("new lot"))];
        let whole = String::from_utf8(with_rows(None, &archived).expect("writes")).expect("UTF-8");
        for (from, to) in [
            ("2031-04-22", "22.4.2031"),
            ("2031-04-22", "2031-04-22 00:00:00"),
            (",1,1,", ",1,1.0,"),
            ("ab12", "ab13"),
            ("over_limit", "within_limit"),
            ("new lot", ""),
        ] {
            let changed = whole.replace(from, to);
            assert_ne!(changed, whole);
            let healed = mended(changed.as_bytes(), archived.clone()).expect("reads");
            assert!(healed.added.is_empty(), "{to}: {:?}", healed.added);
            assert_eq!(healed.register.as_deref(), Some(whole.as_bytes()), "{to}");
        }
        // Another delimiter, a mark at the beginning and a column of a person's own say nothing else.
        let own: String = whole
            .lines()
            .map(|line| format!("{};posted\r\n", line.replace(',', ";")))
            .collect();
        let healed = mended(format!("\u{feff}{own}").as_bytes(), archived).expect("reads");
        assert!(healed.register.is_none());
    }
}
