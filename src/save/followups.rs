//! `registers/followups.csv` with one row more. What stands in it stays, byte for byte.

use crate::model::registers::{Followup, FollowupKind};
use anyhow::{Result, bail};

/// The register's name in a programme folder.
pub const FILE_NAME: &str = "registers/followups.csv";

/// The columns that a new register gets.
const COLUMNS: [&str; 7] = [
    "product_id",
    "round",
    "on",
    "kind",
    "due_on",
    "statement",
    "note",
];

/// The register with a row at its end: in its own order of columns, with its own delimiter and line ends.
///
/// # Errors
/// Where the register is not UTF-8 text, or has no column for something that the row holds.
pub fn with_row(existing: Option<&[u8]>, row: &Followup) -> Result<Vec<u8>> {
    let existing = existing.filter(|bytes| !bytes.trim_ascii().is_empty());
    let Some(existing) = existing else {
        let mut whole = COLUMNS.join(",").into_bytes();
        whole.push(b'\n');
        let columns: Vec<String> = COLUMNS.map(str::to_owned).to_vec();
        whole.extend(line(row, &columns, b',', "\n")?);
        return Ok(whole);
    };
    let Ok(text) = std::str::from_utf8(existing) else {
        bail!("{FILE_NAME} is not UTF-8 text: save it as “CSV UTF-8” first");
    };
    let text = text.trim_start_matches('\u{feff}');
    let first_line = text.lines().next().unwrap_or_default();
    let delimiter = [b',', b';', b'\t']
        .into_iter()
        .max_by_key(|delimiter| {
            // The comma wins where none of them stands.
            let count = first_line.bytes().filter(|byte| byte == delimiter).count();
            (count, *delimiter == b',')
        })
        .unwrap_or(b',');
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter)
        .flexible(true)
        .from_reader(text.as_bytes());
    let headings = reader.headers()?;
    let columns: Vec<String> = headings
        .iter()
        .map(|heading| heading.trim().to_lowercase().replace([' ', '-'], "_"))
        .collect();
    let ends = if first_line_ends_with_return(text) {
        "\r\n"
    } else {
        "\n"
    };
    let mut whole = existing.to_vec();
    if !whole.ends_with(b"\n") {
        whole.extend(ends.as_bytes());
    }
    whole.extend(line(row, &columns, delimiter, ends)?);
    Ok(whole)
}

/// The row as one would type it into the register.
pub fn as_typed(row: &Followup) -> String {
    let cells = COLUMNS
        .iter()
        .filter(|column| **column != "note")
        .filter_map(|column| Some(format!("{column} {}", cell(row, column)?)));
    cells.collect::<Vec<_>>().join(", ")
}

fn first_line_ends_with_return(text: &str) -> bool {
    text.find('\n').is_some_and(|at| text[..at].ends_with('\r'))
}

fn line(row: &Followup, columns: &[String], delimiter: u8, ends: &str) -> Result<Vec<u8>> {
    for column in COLUMNS {
        if cell(row, column).is_some() && !columns.iter().any(|one| one == column) {
            bail!("{FILE_NAME} has no column {column}: add it to the first line, then try again");
        }
    }
    let mut writer = csv::WriterBuilder::new()
        .delimiter(delimiter)
        .terminator(if ends == "\r\n" {
            csv::Terminator::CRLF
        } else {
            csv::Terminator::Any(b'\n')
        })
        .from_writer(Vec::new());
    let cells = columns
        .iter()
        .map(|column| cell(row, column).unwrap_or_default());
    writer.write_record(cells)?;
    Ok(writer.into_inner()?)
}

fn cell(row: &Followup, column: &str) -> Option<String> {
    let kind = FollowupKind::ALL.iter().find(|(kind, _)| *kind == row.kind);
    match column {
        "product_id" => Some(row.product_id.clone()),
        "round" => row.round.clone(),
        "on" => Some(row.on.to_string()),
        "kind" => kind.map(|(_, word)| (*word).to_owned()),
        "due_on" => row.due_on.map(|day| day.to_string()),
        "statement" => row.statement.clone(),
        "note" => row.note.clone(),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::place::Place;
    use chrono::NaiveDate;

    fn row(statement: Option<&str>) -> Followup {
        Followup {
            product_id: "FH-01".to_owned(),
            round: Some("2".to_owned()),
            on: NaiveDate::from_ymd_opt(2031, 3, 2).expect("a date"),
            kind: FollowupKind::Reply,
            due_on: None,
            statement: statement.map(str::to_owned),
            note: None,
            place: Place::default(),
        }
    }

    fn text(existing: Option<&str>, statement: Option<&str>) -> String {
        let whole = with_row(existing.map(str::as_bytes), &row(statement));
        String::from_utf8(whole.expect("it can be added")).expect("is text")
    }

    #[test]
    fn what_stands_in_the_register_stays_and_the_row_follows_its_shape() {
        let begun =
            "\u{feff}kind;On;product_id;statement;round;who\r\nreply;2031-03-01;\"A; B\";;1;Ann";
        assert_eq!(
            text(Some(begun), Some("We \"recalled\"; sorry")),
            format!("{begun}\r\nreply;2031-03-02;FH-01;\"We \"\"recalled\"\"; sorry\";2;\r\n")
        );
        assert_eq!(
            text(None, None),
            "product_id,round,on,kind,due_on,statement,note\nFH-01,2,2031-03-02,reply,,,\n"
        );
    }

    #[test]
    fn a_cell_without_a_column_is_not_lost_in_silence() {
        let told = with_row(Some(b"product_id,round,on,kind\n"), &row(Some("x")));
        let told = told.expect_err("there is no place for it").to_string();
        assert!(told.contains("no column statement"), "{told}");
    }
}
