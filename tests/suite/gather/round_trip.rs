//! Random readings, written in a random layout and format, read back as themselves.

use super::folder::Folder;
use crate::make_binary::{BinarySheet, xls, xlsb};
use crate::make_ods::{OdsSheet, ods};
use proptest::prelude::*;
use proptest::sample::select;

/// What a lab reports of one extraction.
#[derive(Clone, Debug)]
enum Reported {
    Number(u32, u32),
    Below(u32),
    Above(u32),
    Nothing,
}

impl Reported {
    /// As our reading shows it. Tenths and hundredths are given as whole numbers, so that no binary float enters.
    fn shown(&self) -> String {
        match self {
            Reported::Number(whole, hundredths) if *hundredths == 0 => whole.to_string(),
            Reported::Number(whole, hundredths) if hundredths % 10 == 0 => {
                format!("{whole}.{}", hundredths / 10)
            }
            Reported::Number(whole, hundredths) => format!("{whole}.{hundredths:02}"),
            Reported::Below(n) => format!("<{n}"),
            Reported::Above(n) => format!(">{n}"),
            Reported::Nothing => "not reported".to_owned(),
        }
    }

    /// As this lab writes it.
    fn written(&self, style: &Style) -> String {
        match self {
            Reported::Number(whole, hundredths) => {
                let grouped = match style.thousands {
                    Some(mark) if *whole >= 1000 => {
                        format!("{}{mark}{:03}", whole / 1000, whole % 1000)
                    }
                    _ => whole.to_string(),
                };
                format!("{grouped}{}{hundredths:02}{}", style.decimal, style.after)
            }
            Reported::Below(n) => format!("<{}{n}{}", style.gap, style.after),
            Reported::Above(n) => format!(">{}{n}{}", style.gap, style.after),
            Reported::Nothing => style.nothing.to_owned(),
        }
    }
}

/// How a lab writes figures.
#[derive(Clone, Debug)]
struct Style {
    decimal: char,
    thousands: Option<char>,
    gap: &'static str,
    after: &'static str,
    nothing: &'static str,
}

/// How a lab lays out a file.
#[derive(Clone, Debug)]
struct Layout {
    wide: bool,
    numbered: bool,
    above: usize,
    left: usize,
    sample: &'static str,
    result: &'static str,
    format: Format,
}

#[derive(Clone, Copy, Debug)]
enum Format {
    Csv(char),
    Utf16,
    Windows1252,
    Xlsx,
    Xls,
    Xlsb,
    Ods,
}

fn reported() -> impl Strategy<Value = Reported> {
    prop_oneof![
        4 => (5_u32..20_000, 0_u32..100).prop_map(|(whole, hundredths)| Reported::Number(whole, hundredths)),
        2 => (1_u32..50).prop_map(Reported::Below),
        1 => (50_u32..500).prop_map(Reported::Above),
        1 => Just(Reported::Nothing),
    ]
}

fn style() -> impl Strategy<Value = Style> {
    (
        select(vec![
            ('.', None),
            ('.', Some(',')),
            ('.', Some('\'')),
            (',', None),
            (',', Some('.')),
            (',', Some('\u{a0}')),
            (',', Some('\u{202f}')),
        ]),
        select(vec!["", " ", "\u{a0}"]),
        select(vec!["", " ppm", " mg/kg", "mg/kg", " µg/g"]),
        select(vec![
            "-",
            "–",
            "n/a",
            "insufficient sample",
            "cancelled",
            "not tested",
        ]),
    )
        .prop_map(|((decimal, thousands), gap, after, nothing)| Style {
            decimal,
            thousands,
            gap,
            after,
            nothing,
        })
}

fn layout() -> impl Strategy<Value = Layout> {
    (
        any::<bool>(),
        any::<bool>(),
        0_usize..6,
        0_usize..4,
        select(vec![
            "Sample",
            "Sample ID",
            "Your reference",
            "Client ref.",
            "Probennummer",
            "Échantillon",
            "Código de muestra",
            "Codice campione",
        ]),
        select(vec![
            "Result (ppm)",
            "Gluten (mg/kg)",
            "Gluten, ppm",
            "Ergebnis [mg/kg]",
            "Teneur en gluten (mg/kg)",
            "Resultado (ppm)",
            "Glutine mg/kg",
        ]),
        select(vec![
            Format::Csv(','),
            Format::Csv(';'),
            Format::Csv('\t'),
            Format::Csv('|'),
            Format::Utf16,
            Format::Windows1252,
            Format::Xlsx,
            Format::Xls,
            Format::Xlsb,
            Format::Ods,
        ]),
    )
        .prop_map(
            |(wide, numbered, above, left, sample, result, format)| Layout {
                wide,
                numbered,
                above,
                left,
                sample,
                result,
                format,
            },
        )
}

/// The rows of a file, title lines included.
fn rows(readings: &[(usize, Vec<Reported>)], style: &Style, layout: &Layout) -> Vec<Vec<String>> {
    let mut rows: Vec<Vec<String>> = (0..layout.above)
        .map(|line| match line {
            0 => vec!["Harrow & Vane Analytical".to_owned()],
            1 => vec!["Report no.".to_owned(), "HV-77".to_owned()],
            _ => Vec::new(),
        })
        .collect();
    let mut add = |cells: Vec<String>| {
        rows.push(
            vec![String::new(); layout.left]
                .into_iter()
                .chain(cells)
                .collect(),
        )
    };
    let most = readings.iter().map(|(_, all)| all.len()).max().unwrap_or(1);
    if layout.wide {
        let parts = (1..=most).map(|n| format!("{} {n}", layout.result));
        add([layout.sample.to_owned()]
            .into_iter()
            .chain(parts)
            .collect());
    } else if layout.numbered {
        add(vec![
            layout.sample.to_owned(),
            "Extraction".to_owned(),
            layout.result.to_owned(),
        ]);
    } else {
        add(vec![layout.sample.to_owned(), layout.result.to_owned()]);
    }
    for (code, all) in readings {
        let code = format!("TKW-{code}");
        if layout.wide {
            add([code]
                .into_iter()
                .chain(all.iter().map(|one| one.written(style)))
                .collect());
            continue;
        }
        for (one, number) in all.iter().zip(1..) {
            let mut cells = vec![code.clone(), one.written(style)];
            if layout.numbered {
                cells.insert(1, number.to_string());
            }
            add(cells);
        }
    }
    rows
}

fn file(rows: &[Vec<String>], format: Format) -> (&'static str, Vec<u8>) {
    let delimited = |delimiter: char| -> String {
        let quoted = |cell: &String| {
            if cell.contains(delimiter) {
                format!("\"{cell}\"")
            } else {
                cell.clone()
            }
        };
        rows.iter()
            .map(|row| {
                row.iter()
                    .map(quoted)
                    .collect::<Vec<_>>()
                    .join(&delimiter.to_string())
                    + "\r\n"
            })
            .collect()
    };
    match format {
        Format::Csv(delimiter) => ("inbox/a.csv", delimited(delimiter).into_bytes()),
        Format::Utf16 => (
            "inbox/a.txt",
            format!("\u{feff}{}", delimited('\t'))
                .encode_utf16()
                .flat_map(u16::to_le_bytes)
                .collect(),
        ),
        Format::Windows1252 => {
            // Every letter used here has one byte there, apart from the thin space, which that encoding lacks.
            let text = delimited(';')
                .replace('\u{202f}', "\u{a0}")
                .replace('–', "-");
            (
                "inbox/a.csv",
                text.chars()
                    .map(|c| u8::try_from(c as u32).expect("is in Latin-1"))
                    .collect(),
            )
        }
        Format::Xlsx => {
            let mut book = rust_xlsxwriter::Workbook::new();
            let sheet = book.add_worksheet();
            for (row, cells) in (0..).zip(rows) {
                for (column, cell) in (0..).zip(cells).filter(|(_, cell)| !cell.is_empty()) {
                    match cell.parse::<f64>() {
                        Ok(number) => sheet.write(row, column, number).map(|_| ()),
                        Err(_) => sheet.write(row, column, cell).map(|_| ()),
                    }
                    .expect("can be written");
                }
            }
            (
                "inbox/a.xlsx",
                book.save_to_buffer().expect("can be written"),
            )
        }
        Format::Xls => ("inbox/a.xls", xls(&[BinarySheet::of("Results", rows)])),
        Format::Xlsb => ("inbox/a.xlsb", xlsb(&[BinarySheet::of("Results", rows)])),
        Format::Ods => {
            let cells: Vec<Vec<&str>> = rows
                .iter()
                .map(|row| row.iter().map(String::as_str).collect())
                .collect();
            let rows: Vec<&[&str]> = cells.iter().map(Vec::as_slice).collect();
            ("inbox/a.ods", ods(&[OdsSheet::of("Results", &rows)]))
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 160, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn readings_come_back_as_themselves(
        all in prop::collection::vec(prop::collection::vec(reported(), 2..=2), 1..=6),
        style in style(),
        layout in layout(),
    ) {
        let readings: Vec<(usize, Vec<Reported>)> = (101..).zip(all).collect();
        let (name, bytes) = file(&rows(&readings, &style, &layout), layout.format);
        let read = Folder::new().with(name, &bytes).gather();
        let expected: Vec<String> = readings
            .iter()
            .flat_map(|(code, all)| (1..).zip(all).map(move |(number, one)| format!("TKW-{code} {number} {}", one.shown())))
            .collect();
        prop_assert_eq!(read.readings(), expected, "{:?}", read.problems());
        let errors = read.problems.count(galleyproof::model::problem::Severity::Error);
        prop_assert_eq!(errors, 0, "{:?}", read.problems());
    }
}
