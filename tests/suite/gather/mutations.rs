//! Sound files with random damage: nothing may panic or run away, and no reading may be of an unknown package.

use crate::make_binary::{BinarySheet, xls, xlsb};
use crate::make_ods::{OdsSheet, ods};
use galleyproof::config::Config;
use galleyproof::gather::codes::Codes;
use galleyproof::gather::lab_file::{Taken, understand};
use galleyproof::gather::numbers::Marks;
use galleyproof::gather::readings::values;
use galleyproof::gather::tables::{headings, units};
use galleyproof::gather::{books, dates};
use galleyproof::model::place::LabFile;
use std::path::Path;
use std::sync::Arc;

/// How often each file is damaged: a second or two in all. `tests/fuzz` goes on for as long as one likes.
const ROUNDS: u64 = 120;

/// A small generator (splitmix64, Steele and others 2014), so that every run damages in the same way.
struct Random(u64);

impl Random {
    fn next(&mut self, below: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        usize::try_from((z ^ (z >> 31)) % below.max(1) as u64).expect("is below a size")
    }
}

/// Pieces that files are made of, and some that they should not be.
const PIECES: [&str; 24] = [
    "Sample",
    "Gluten (ppm)",
    "Extraction 1",
    "Mean",
    "TKW-101",
    "<5",
    ">",
    "1,234",
    "1.2E+05",
    "\"",
    ",",
    ";",
    "\n",
    "\r",
    "\t",
    "\0",
    "99999999999999999999",
    "µg/kg",
    "\u{202e}",
    "=cmd|' /C calc'!A0",
    "#REF!",
    "<row hidden=\"1\">",
    "\u{1f9ea}",
    "Blank",
];

fn damage(bytes: &[u8], random: &mut Random) -> Vec<u8> {
    let mut bytes = bytes.to_vec();
    for _ in 0..=random.next(6) {
        let at = random.next(bytes.len());
        match random.next(5) {
            0 => bytes.truncate(at.max(1)),
            1 => bytes[at] = random.next(256) as u8,
            2 => {
                let piece = PIECES[random.next(PIECES.len())].bytes();
                bytes.splice(at..at, piece);
            }
            3 => {
                let end = (at + random.next(40)).min(bytes.len());
                bytes.drain(at..end);
            }
            _ => {
                let end = (at + random.next(200)).min(bytes.len());
                let copy = bytes[at..end].to_vec();
                bytes.splice(at..at, copy);
            }
        }
        if bytes.is_empty() {
            bytes.push(b' ');
        }
    }
    bytes
}

fn read(bytes: &[u8], config: &Config) {
    let Ok(book) = books::read(bytes, &headings::likeness_of) else {
        return;
    };
    let file = Arc::new(LabFile {
        path: "inbox/a".to_owned(),
        sha256: String::new(),
        ..LabFile::default()
    });
    let codes = Codes::new(["TKW-101", "TKW-102"].into_iter());
    let mut taken = Taken::default();
    understand(
        &file,
        &book,
        &codes,
        (config, &galleyproof::gather::record::Reports::default()),
        &mut taken,
    );
    for extraction in &taken.extractions {
        assert!(codes.find(&extraction.package_code).is_some());
        if let Some(interval) = extraction.outcome.reading() {
            assert!(
                interval.lower.0.is_finite() && interval.lower.0 >= 0.0,
                "{extraction:?}"
            );
            assert!(
                interval
                    .upper
                    .is_none_or(|upper| upper.0 >= interval.lower.0),
                "{extraction:?}"
            );
        }
    }
}

fn sound_files() -> Vec<Vec<u8>> {
    let rows: [&[&str]; 6] = [
        &["Report no.: 77"],
        &[],
        &[
            "Sample",
            "Extraction",
            "Well",
            "Gluten (ppm)",
            "Mean",
            "LOQ",
            "Date",
        ],
        &["TKW-101", "1", "A1", "12.4", "12.7", "5", "2031-03-07"],
        &["", "1", "A2", "13,0", "", "", ""],
        &["TKW-102", "2", "B1", "<5", "BLQ", "5 ppm", "07.03.2031"],
    ];
    let csv: String = rows.iter().map(|row| row.join(",") + "\n").collect();
    let mut book = rust_xlsxwriter::Workbook::new();
    let sheet = book.add_worksheet();
    for (row, cells) in (0..).zip(rows) {
        sheet
            .write_row(row, 0, cells.iter().copied())
            .expect("can be written");
    }
    let xlsx = book.save_to_buffer().expect("can be written");
    let binary = [BinarySheet::of("Results", &rows.map(<[&str]>::to_vec))];
    vec![
        csv.into_bytes(),
        xlsx,
        xls(&binary),
        xlsb(&binary),
        ods(&[OdsSheet::of("Results", &rows)]),
    ]
}

#[test]
fn damaged_files_are_read_or_refused() {
    let config = Config::parse(
        "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n",
        Path::new("."),
    )
    .expect("the settings are right");
    let mut random = Random(7);
    for sound in sound_files() {
        for _ in 0..ROUNDS {
            let damaged = damage(&sound, &mut random);
            // A reader that panics is caught in `take`; here it is looked for in our own code.
            let outcome =
                std::panic::catch_unwind(|| books::read(&damaged, &headings::likeness_of).is_ok());
            if outcome.is_ok() {
                read(&damaged, &config);
            }
        }
    }
}

#[test]
fn any_text_is_a_result_or_none() {
    let mut random = Random(11);
    for _ in 0..ROUNDS * 20 {
        let count = 1 + random.next(6);
        let text: String = (0..count)
            .map(|_| match random.next(3) {
                0 => PIECES[random.next(PIECES.len())].to_owned(),
                1 => random.next(100_000).to_string(),
                _ => char::from_u32(random.next(0x3000) as u32)
                    .unwrap_or('?')
                    .to_string(),
            })
            .collect();
        for marks in [Marks::Unsettled, Marks::Comma] {
            if let Ok(value) = values::read_text(&text, marks)
                && let values::Said::Number(figure) = value.said
            {
                assert!(figure.value.is_finite() && figure.value >= 0.0, "{text:?}");
            }
        }
        let _ = (headings::read(&text), units::read(&text), dates::day(&text));
    }
}
