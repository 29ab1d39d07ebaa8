//! Delimited text -> cells: encoding and delimiter are found out, nothing is assumed of the file's name.

use crate::gather::books::bounds::{Bound, LONGEST_RECORD, MOST_TEXT, WIDEST_RECORD};
use crate::gather::books::letters::is_space;
use crate::gather::books::{Book, Cell, Content, Likeness, Room, Row, Sheet, Unreadable};
use crate::words::say;
use encoding_rs::{UTF_16BE, UTF_16LE, WINDOWS_1252};
use std::borrow::Cow;
use std::cmp::Reverse;

/// The delimiters that are tried, each with its name; the first wins a tie. The comma stands last, since it alone is
/// also at home inside a cell: in `Sample;Gluten, ppm` and `TKW-1;5,00` both part each row alike.
const DELIMITERS: [(u8, &str); 4] = [
    (b'\t', "tab"),
    (b'|', "bar"),
    (b';', "semicolon"),
    (b',', "comma"),
];

/// Records that are looked at to find the delimiter: headings stand below letterheads, not below thousands of rows.
const RECORDS_TRIED: usize = 300;

/// Cells that are looked at to find the delimiter, of all those records together.
const CELLS_TRIED: usize = 20_000;

/// Of how many letters one may be a control character, where the file is text all the same.
const LETTERS_A_CONTROL: usize = 10;

/// Of how many bytes one may be zero, or a control character among letters that are no Unicode.
const BYTES_A_CONTROL: usize = 100;

/// Whether these bytes can be text at all: UTF-16, or with hardly any of the control characters that text does not hold.
/// One that has slipped into a text is left out of its cell; bytes that are no text hold one in ten.
pub fn looks_like_text(bytes: &[u8]) -> bool {
    if utf16(bytes).is_some() {
        return true;
    }
    let is_control = |b: &u8| {
        (*b < 0x20 && !matches!(b, b'\t' | b'\n' | b'\r' | 0x0c | 0x1a | 0x1b)) || *b == 0x7f
    };
    let zeros = bytes.iter().filter(|b| **b == 0).count();
    let controls = bytes.iter().filter(|b| is_control(b)).count();
    let a_control = if controls == 0 || std::str::from_utf8(bytes).is_ok() {
        LETTERS_A_CONTROL
    } else {
        BYTES_A_CONTROL
    };
    controls * a_control <= bytes.len() && (zeros <= 1 || zeros * BYTES_A_CONTROL <= bytes.len())
}

/// Reads delimited text.
pub fn read(bytes: &[u8], likeness: Likeness<'_>) -> Result<Book, Unreadable> {
    let decoded = decode(bytes);
    if decoded.text.len() > MOST_TEXT {
        return Err(Unreadable::beyond(Bound::Text));
    }
    let text = if decoded.text.contains('\r') && !decoded.text.contains('\n') {
        Cow::Owned(decoded.text.replace('\r', "\n"))
    } else {
        decoded.text
    };
    let (declared, start) = declared_delimiter(&text);
    let (delimiter, name) = declared.unwrap_or_else(|| find_delimiter(&text, likeness));
    let lines_before = usize::from(start > 0);
    let rest = &text[start..];
    if let Some(line) = bounded(rest, delimiter, lines_before, usize::MAX)? {
        return Err(unclosed(line));
    }
    let rows = records(rest, delimiter, lines_before, usize::MAX)?;
    Ok(Book {
        format: format!("{name}-delimited text, {}", decoded.encoding),
        sheets: vec![Sheet {
            rows,
            ..Sheet::default()
        }],
        guessed_encoding: decoded.guessed,
        ..Book::default()
    })
}

struct Decoded<'a> {
    text: Cow<'a, str>,
    encoding: &'static str,
    guessed: bool,
}

/// UTF-8 and UTF-16 say what they are; text that is neither is taken for Windows-1252, and a note says so.
fn decode(bytes: &[u8]) -> Decoded<'_> {
    if let Some(encoding) = utf16(bytes) {
        let (text, _, _) = encoding.decode(bytes);
        return Decoded {
            text,
            encoding: "UTF-16",
            guessed: false,
        };
    }
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    match std::str::from_utf8(bytes) {
        Ok(text) => Decoded {
            text: Cow::Borrowed(text),
            encoding: "UTF-8",
            guessed: false,
        },
        Err(_) => Decoded {
            text: WINDOWS_1252.decode_without_bom_handling(bytes).0,
            encoding: "Windows-1252",
            guessed: true,
        },
    }
}

/// UTF-16 by its mark, or by every other byte being zero at the start, as some programs write it without the mark.
fn utf16(bytes: &[u8]) -> Option<&'static encoding_rs::Encoding> {
    match bytes {
        [0xff, 0xfe, ..] => return Some(UTF_16LE),
        [0xfe, 0xff, ..] => return Some(UTF_16BE),
        _ => {}
    }
    let head = &bytes[..bytes.len().min(64)];
    let zeros = |from: usize| {
        let picked: Vec<u8> = head.iter().skip(from).step_by(2).copied().collect();
        (
            picked.len() >= 4,
            picked.iter().all(|b| *b == 0),
            picked.contains(&0),
        )
    };
    match (zeros(0), zeros(1)) {
        ((true, _, false), (true, true, _)) => Some(UTF_16LE),
        ((true, true, _), (true, _, false)) => Some(UTF_16BE),
        _ => None,
    }
}

/// A first line `sep=;`, which one spreadsheet program writes and obeys; and the byte after that line.
fn declared_delimiter(text: &str) -> (Option<(u8, &'static str)>, usize) {
    let line = text.split('\n').next().unwrap_or_default();
    let said = line
        .trim_end()
        .to_ascii_lowercase()
        .strip_prefix("sep=")
        .and_then(|rest| rest.bytes().next());
    match DELIMITERS.iter().find(|(byte, _)| Some(*byte) == said) {
        Some(found) => (Some(*found), (line.len() + 1).min(text.len())),
        None => (None, 0),
    }
}

/// The delimiter under which headings appear; of several, the one that leaves fewest others within cells, then the one
/// under which rows are most alike.
fn find_delimiter(text: &str, likeness: Likeness<'_>) -> (u8, &'static str) {
    /// Different headings, delimiters left within cells, rows of one width.
    type Score = (usize, Reverse<usize>, usize);
    const NONE: Score = (0, Reverse(usize::MAX), 0);
    let score = |delimiter: u8| -> Score {
        if !text.as_bytes().contains(&delimiter) {
            return NONE;
        }
        // A quotation mark that is not closed is told once it is known how the file is delimited.
        let rows = bounded(text, delimiter, 0, RECORDS_TRIED)
            .and_then(|_| records(text, delimiter, 0, RECORDS_TRIED));
        let Ok(rows) = rows else {
            return NONE;
        };
        let mut left = CELLS_TRIED;
        let tried = rows.iter().take_while(|row| {
            let some_left = left > 0;
            left = left.saturating_sub(row.cells.len());
            some_left
        });
        let headings = tried.map(likeness).max().unwrap_or(0);
        (headings, Reverse(left_over(&rows)), evenness(&rows))
    };
    let [.., comma] = DELIMITERS;
    let mut best = (comma, NONE);
    for candidate in DELIMITERS {
        let found = score(candidate.0);
        if found > best.1 {
            best = (candidate, found);
        }
    }
    best.0
}

/// How many cells hold what delimits other files: not a comma in a figure, nor what stands before a space, as in a text.
fn left_over(rows: &[Row]) -> usize {
    let delimits = |cell: &Cell| {
        let text = cell.content.shown();
        let bytes = text.as_bytes();
        bytes.windows(3).any(|three| match three {
            [_, b',', after] if after.is_ascii_digit() => !three[0].is_ascii_digit(),
            [_, byte, after] => {
                DELIMITERS.iter().any(|(one, _)| one == byte) && !after.is_ascii_whitespace()
            }
            _ => false,
        })
    };
    rows.iter()
        .flat_map(|row| &row.cells)
        .filter(|cell| delimits(cell))
        .count()
}

/// How many rows have the most frequent width, where that is more than one cell.
fn evenness(rows: &[Row]) -> usize {
    let mut widths = std::collections::BTreeMap::new();
    for row in rows {
        let width = row.cells.last().map_or(0, |cell| cell.column);
        if width > 1 {
            *widths.entry(width).or_insert(0_usize) += 1;
        }
    }
    widths.into_values().max().unwrap_or(0)
}

/// The records of a text as rows, each at the line on which it starts.
fn records(
    text: &str,
    delimiter: u8,
    lines_before: usize,
    most: usize,
) -> Result<Vec<Row>, Unreadable> {
    let mut reader = ::csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(delimiter)
        .from_reader(text.as_bytes());
    let mut record = ::csv::ByteRecord::new();
    let mut rows = Vec::new();
    let mut room = Room::default();
    while rows.len() < most {
        let start = reader.position().clone();
        let more = reader
            .read_byte_record(&mut record)
            .expect("text in memory is read without fail, whatever is in it");
        if !more {
            break;
        }
        let line = start.line() as usize + lines_before + blank_lines(text, start.byte());
        let cells: Vec<Cell> = record
            .iter()
            .zip(1..)
            .filter_map(|(field, column)| cell(field, column))
            .collect();
        for cell in &cells {
            room.take(&cell.content, 1)?;
        }
        if !cells.is_empty() {
            rows.push(Row {
                number: u32::try_from(line).unwrap_or(u32::MAX),
                hidden: false,
                cells,
            });
        }
    }
    Ok(rows)
}

/// Finds out whether every record stays within bounds before one is made; and the line of a quotation mark that opens a
/// cell and is not closed, where there is one: all that follows would be taken for that one cell.
fn bounded(
    text: &str,
    delimiter: u8,
    lines_before: usize,
    most: usize,
) -> Result<Option<usize>, Unreadable> {
    /// Where in a cell.
    enum At {
        Start,
        Bare,
        Quoted,
        /// Behind a quotation mark within quotes: the end, or the first of two that stand for one.
        Mark,
    }
    let (mut at, mut records) = (At::Start, 0);
    let (mut line, mut opened) = (lines_before + 1, 0);
    let (mut length, mut width) = (0, 1);
    for byte in text.bytes() {
        let ends = byte == b'\n' || byte == b'\r';
        at = match at {
            At::Start if byte == b'"' => {
                opened = line;
                At::Quoted
            }
            At::Quoted if byte == b'"' => At::Mark,
            At::Quoted => At::Quoted,
            At::Mark if byte == b'"' => At::Quoted,
            At::Start | At::Bare | At::Mark if ends => {
                records += 1;
                (length, width) = (0, 1);
                At::Start
            }
            At::Start | At::Bare | At::Mark if byte == delimiter => {
                width += 1;
                At::Start
            }
            At::Start | At::Bare | At::Mark => At::Bare,
        };
        length += 1;
        line += usize::from(byte == b'\n');
        if length > LONGEST_RECORD || width > WIDEST_RECORD {
            return Err(if matches!(at, At::Quoted) {
                unclosed(opened)
            } else {
                Unreadable::new(
                    say::found_long_line(line.to_string()),
                    say::do_ask_for_table(),
                )
            });
        }
        if records >= most {
            return Ok(None);
        }
    }
    Ok(matches!(at, At::Quoted).then_some(opened))
}

fn unclosed(line: usize) -> Unreadable {
    Unreadable::new(
        say::found_open_quote(line.to_string()),
        say::do_send_again_or_workbook(),
    )
}

/// The reader passes over blank lines, yet gives the position before them.
fn blank_lines(text: &str, byte: u64) -> usize {
    let start = usize::try_from(byte).unwrap_or(usize::MAX).min(text.len());
    text.as_bytes()[start..]
        .iter()
        .take_while(|b| matches!(b, b'\n' | b'\r'))
        .filter(|b| **b == b'\n')
        .count()
}

fn cell(field: &[u8], column: u32) -> Option<Cell> {
    let written = String::from_utf8_lossy(field);
    let trimmed = written.trim_matches(is_space);
    (!trimmed.is_empty()).then(|| Cell {
        column,
        content: Content::Text(trimmed.into()),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::english;

    /// As many headings as there are words that a table of results begins its columns with.
    fn likeness(row: &Row) -> usize {
        let is_heading = |cell: &&Cell| {
            let shown = cell.content.shown();
            let known = [
                "Sample",
                "Extraction",
                "Result",
                "Gluten, ppm",
                "Gluten; ppm",
            ];
            known.iter().any(|word| shown.starts_with(word))
        };
        row.cells.iter().filter(is_heading).count()
    }

    fn shown(bytes: &[u8]) -> (String, Vec<(u32, Vec<String>)>) {
        let book = read(bytes, &likeness).expect("reads");
        let rows = book.sheets[0]
            .rows
            .iter()
            .map(|row| {
                let cells = row
                    .cells
                    .iter()
                    .map(|cell| cell.content.shown().into_owned());
                (row.number, cells.collect())
            })
            .collect();
        (book.format, rows)
    }

    #[test]
    fn the_delimiter_is_the_one_that_shows_headings() {
        let (format, rows) = shown(b"Sample;Extraction;Result, mg/kg\nTKW-1;1;12,4\n");
        assert_eq!(format, "semicolon-delimited text, UTF-8");
        assert_eq!(rows[1].1, ["TKW-1", "1", "12,4"]);
        assert!(shown(b"Sample\tResult\nTKW-1\t12,4\n").0.starts_with("tab"));
        let (format, _) = shown(b"Sample;Gluten, ppm\nTKW-1;5,00\nTKW-1;5,00\n");
        assert_eq!(
            format, "semicolon-delimited text, UTF-8",
            "as many headings with commas"
        );
        let (format, _) = shown(b"Sample,Gluten; ppm\nTKW-1,5\nTKW-1,5\n");
        assert_eq!(
            format, "comma-delimited text, UTF-8",
            "as many headings with semicolons"
        );
        assert!(shown(b"Sample|Result\nTKW-1|12.4\n").0.starts_with("bar"));
        assert!(shown(b"sep=;\nSample;Result\nTKW-1;5\n").1[0].0 == 2);
    }

    #[test]
    fn a_decimal_comma_is_no_delimiter_where_a_semicolon_parts_the_rows_too() {
        let (format, rows) = shown(b"Sample;Gluten, ppm 1;Gluten, ppm 2\r\nTKW-101;5,00;5,00\r\n");
        assert!(format.starts_with("semicolon"), "{format}");
        assert_eq!(rows[1].1, ["TKW-101", "5,00", "5,00"]);
        let (format, _) = shown(b"Sample,Result\nTKW-1,5\n");
        assert!(format.starts_with("comma"), "{format}");
    }

    #[test]
    fn a_record_is_at_the_line_where_it_starts() {
        let (_, rows) = shown(b"a,b\n\n\"c\nd\",e\n\n\nf,g\n");
        let lines: Vec<u32> = rows.iter().map(|row| row.0).collect();
        assert_eq!(lines, [1, 3, 7]);
    }

    #[test]
    fn encodings_are_told_apart() {
        let utf16: Vec<u8> = "\u{feff}Sample\tµg/g\n"
            .encode_utf16()
            .flat_map(u16::to_le_bytes)
            .collect();
        assert_eq!(shown(&utf16).0, "tab-delimited text, UTF-16");
        let unmarked: Vec<u8> = "Sample,Result\nTKW-1,5\n"
            .encode_utf16()
            .flat_map(u16::to_be_bytes)
            .collect();
        assert_eq!(shown(&unmarked).0, "comma-delimited text, UTF-16");
        let (format, rows) = shown(b"Sample,Result (\xb5g/g)\nTKW-1,5\n");
        assert_eq!(format, "comma-delimited text, Windows-1252");
        assert_eq!(rows[0].1[1], "Result (µg/g)");
        assert_eq!(shown(b"\xef\xbb\xbfSample,Result\n").1[0].1[0], "Sample");
    }

    #[test]
    fn a_quotation_mark_that_is_not_closed_is_told_with_its_line() {
        let told =
            read(b"Sample,Result (ppm)\nTKW-1,\"5\nTKW-2,6\n", &likeness).expect_err("is refused");
        assert!(english().say(&told.message).contains("line 2"), "{told:?}");
        let (_, rows) = shown(b"Sample,Pan\nTKW-1,12\" pan\n\"TKW-2\",\"a \"\"b\"\"\nc\"\n");
        assert_eq!(rows[1].1, ["TKW-1", "12\" pan"]);
        assert_eq!(rows[2].1, ["TKW-2", "a \"b\"\nc"]);
    }

    #[test]
    fn lines_beyond_any_table_are_refused() {
        let wide = |text: &str| bounded(&text.repeat(WIDEST_RECORD), b',', 0, usize::MAX);
        assert!(wide(",").is_err() && wide("\"\n\",").is_err());
        assert_eq!(wide("a,\n"), Ok(None));
        let long = [&b"a\n\""[..], &b"b\n".repeat(LONGEST_RECORD)].concat();
        for (text, word) in [
            (b"a".repeat(LONGEST_RECORD + 1), "line 1"),
            (b",".repeat(LONGEST_RECORD + 1), "line 1"),
            (long, "line 2"),
        ] {
            let told = read(&text, &likeness).expect_err("is refused");
            let said = english().say(&told.message);
            assert!(said.contains(word), "{word}: {said}");
        }
    }

    #[test]
    fn old_line_ends_count_too() {
        let (_, rows) = shown(b"Sample,Result\rTKW-1,5\r");
        assert_eq!(rows[1].0, 2);
    }
}
