//! Random tables, pasted together and damaged: every row with a registered code gives a reading or a problem, and no
//! reading is given to the code of another row.

use super::folder::{Folder, Read};
use galleyproof::model::extraction::Outcome;
use proptest::prelude::*;
use proptest::sample::select;
use std::collections::BTreeMap;

/// Cells by row and column, from 0.
type Grid = Vec<Vec<String>>;

/// How a table of results is laid out.
#[derive(Clone, Debug)]
struct Shape {
    headings: &'static [&'static str],
    /// What stands under each heading: `s` the sample, `e` a number, `r` a result, `d` another figure, `m` the mean,
    /// `q` a sign, `u` a unit, `t` what sort of a row it is, `a` what was measured.
    holds: &'static str,
}

const SHAPES: [Shape; 21] = [
    Shape {
        headings: &["Sample", "Gluten (ppm)"],
        holds: "sr",
    },
    Shape {
        headings: &["Sample", "Extraction", "Gluten (mg/kg)"],
        holds: "ser",
    },
    Shape {
        headings: &["Probe", "Extraktion", "Gluten (mg/kg)"],
        holds: "ser",
    },
    Shape {
        headings: &["Muestra", "Gluten ext. 1 (ppm)", "Gluten ext. 2 (ppm)"],
        holds: "srr",
    },
    Shape {
        headings: &["Sample", "Ext 1 (ppm)", "Ext 2 (ppm)", "Mean (ppm)"],
        holds: "srrm",
    },
    Shape {
        headings: &["Sample", "Value", "Gluten in food (mg/kg)"],
        holds: "sdr",
    },
    Shape {
        headings: &["Sample", "Gluten in extract (ppm)", "Gluten in food (ppm)"],
        holds: "sdr",
    },
    Shape {
        headings: &["Sample", "Gluten (ppm)", "LOD (ppm)", "Uncertainty"],
        holds: "srdd",
    },
    Shape {
        headings: &["Kennwort", "Extraction", "Gluten (ppm)"],
        holds: "ser",
    },
    Shape {
        headings: &["Campione", "Risultato (mg/kg)", "OD 450"],
        holds: "srd",
    },
    Shape {
        headings: &["Échantillon", "Teneur en gluten (mg/kg)"],
        holds: "sr",
    },
    Shape {
        headings: &["Lab no.", "Client ref.", "Result (ppm)"],
        holds: "dsr",
    },
    Shape {
        headings: &["Sample", "Quux"],
        holds: "sr",
    },
    Shape {
        headings: &["Result (ppm)", "Sample"],
        holds: "rs",
    },
    Shape {
        headings: &["Sample", "Extraction", "Qualifier", "Gluten (mg/kg)"],
        holds: "seqr",
    },
    Shape {
        headings: &["Probe", "Gluten (mg/kg)", "Vorzeichen"],
        holds: "srq",
    },
    Shape {
        headings: &["Sample", "Sign", "Ext 1 (ppm)", "Sign", "Ext 2 (ppm)"],
        holds: "sqrqr",
    },
    Shape {
        headings: &["Sample", "Extraction", "Gluten", "Quantity in"],
        holds: "seru",
    },
    Shape {
        headings: &["Sample", "Type", "Gluten (ppm)"],
        holds: "str",
    },
    Shape {
        headings: &["Probe", "Extraktion", "Gluten (mg/kg)", "Bemerkung"],
        holds: "sert",
    },
    Shape {
        headings: &["Sample", "Analyte", "Result (ppm)"],
        holds: "sar",
    },
];

/// What stands between rows.
const BETWEEN: [&[&str]; 7] = [
    &[],
    &["Batch two"],
    &["Second batch", "", "received 9 May"],
    &["Page 1 of 2"],
    &["ZZ-9", "1", "see note"],
    &["Negative control", "1", "0.4"],
    &["Approved by: Q. Marsh"],
];

/// Cells without which a row says something else.
const SAYING: [&str; 12] = [
    "<",
    ">",
    "spiked",
    "verworfen",
    "not valid",
    "Casein",
    "Soja",
    "Egg",
    "Gluten",
    "ppm",
    "mg/kg",
    "µg/g",
];

/// Tables that hold no results.
const FOREIGN: [&[&[&str]]; 4] = [
    &[
        &["Standard", "OD"],
        &["Std 1", "0.25"],
        &["TKW-101", "0.51"],
    ],
    &[
        &["Curve"],
        &["Calibrator", "ng/mL", "OD"],
        &["C0", "0", "0.05"],
    ],
    &[&["Sample", "Weight (g)"], &["TKW-102", "0.25"]],
    &[&["Notes: results apply to the samples as received"]],
];

/// One table: its shape, how many packages with how many rows, and what stands between them.
#[derive(Clone, Debug)]
struct Part {
    shape: usize,
    packages: Vec<usize>,
    between: Vec<usize>,
    gap: bool,
}

fn part() -> impl Strategy<Value = Part> {
    (
        0..SHAPES.len(),
        prop::collection::vec(0..6_usize, 1..4),
        prop::collection::vec(0..BETWEEN.len(), 4),
        any::<bool>(),
    )
        .prop_map(|(shape, packages, between, gap)| Part {
            shape,
            packages,
            between,
            gap,
        })
}

/// Figures that are told apart, and whose each is.
#[derive(Default)]
struct Ledger {
    next: u32,
    /// The package of each result, as it is written.
    results: BTreeMap<String, String>,
    /// Whether no table stands beside another one: the column of remarks of a lower one could not be told from its neighbour's.
    alone: bool,
    /// The sign that stands with each.
    signs: BTreeMap<String, &'static str>,
}

impl Ledger {
    fn figure(&mut self) -> String {
        self.next += 1;
        format!("{}.{:02}", 6 + self.next / 7, self.next * 13 % 100)
    }
}

fn grid(part: &Part, ledger: &mut Ledger) -> Grid {
    let shape = &SHAPES[part.shape];
    let owned = |cells: &[&str]| cells.iter().map(|cell| (*cell).to_owned()).collect();
    let mut rows: Grid = vec![owned(shape.headings)];
    for (at, package) in part.packages.iter().enumerate() {
        let between: Vec<String> = owned(BETWEEN[part.between[at % part.between.len()]]);
        if at > 0 && !between.is_empty() {
            if part.gap {
                rows.push(Vec::new());
            }
            rows.push(between);
        }
        let code = format!("TKW-{}", 101 + package);
        for number in 1..=2 {
            // A row that is taken out, or of another substance, has figures that are nobody's.
            let turn = (ledger.next as usize + at) % 5;
            let is_out = ledger.alone && turn == 1 && shape.holds.contains(['t', 'a']);
            let row = shape.holds.chars().map(|what| match what {
                'q' => ["", "<", ">", "=", ""][turn].to_owned(),
                'u' => ["ppm", "mg/kg", "µg/g", "ppm", "mg/kg"][turn].to_owned(),
                't' if is_out => ["spiked", "verworfen", "not valid"][package % 3].to_owned(),
                't' => ["ok", "", "food"][package % 3].to_owned(),
                'a' if is_out => ["Casein", "Soja", "Egg"][package % 3].to_owned(),
                'a' => "Gluten".to_owned(),
                'r' if is_out => format!("9{}", ledger.figure()),
                's' => code.clone(),
                'e' => number.to_string(),
                'r' => {
                    let figure = ledger.figure();
                    let sign = match shape.holds.contains('q') {
                        true => ["", "<", ">", "", ""][turn],
                        false => "",
                    };
                    ledger.results.insert(figure.clone(), code.clone());
                    ledger.signs.insert(figure.clone(), sign);
                    figure
                }
                'd' => format!("0.{:03}", ledger.next * 7 % 1000),
                _ => String::new(),
            });
            rows.push(row.collect());
        }
    }
    rows
}

/// One grid beside another.
fn beside(left: Grid, right: Grid, (gap, lower): (usize, usize)) -> Grid {
    let width = left.iter().map(Vec::len).max().unwrap_or(0) + gap;
    let height = left.len().max(right.len() + lower);
    (0..height)
        .map(|at| {
            let mut row = left.get(at).cloned().unwrap_or_default();
            if let Some(more) = at.checked_sub(lower).and_then(|at| right.get(at)) {
                row.resize(width, String::new());
                row.extend(more.iter().cloned());
            }
            row
        })
        .collect()
}

fn csv(rows: &Grid) -> String {
    rows.iter().map(|row| row.join(",") + "\n").collect()
}

/// Whether a row is accounted for: by a problem on it, or by one that is of its whole table or file.
fn is_told(read: &Read, row: u32) -> bool {
    read.problems.sorted().iter().any(|problem| {
        let above = problem.place.row.is_none_or(|at| at <= row);
        match problem.code.word() {
            "no_table" => true,
            "no_result_column" => above || read.gathered.extractions.is_empty(),
            "ambiguous_table" => above,
            _ => problem.place.row == Some(row),
        }
    })
}

/// How many cases the suite tries; `GALLEYPROOF_CASES` raises it.
pub fn cases() -> u32 {
    let wanted = std::env::var("GALLEYPROOF_CASES").ok();
    wanted.and_then(|wanted| wanted.parse().ok()).unwrap_or(300)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: cases(), failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_row_with_a_registered_code_is_accounted_for(
        parts in prop::collection::vec(part(), 1..4),
        sides in prop::collection::vec(select(vec![None, None, Some((0, 0)), Some((1, 0)), Some((1, 2)), Some((2, 3))]), 3),
        foreign in prop::option::of(0..FOREIGN.len()),
        damaged in prop::option::weighted(0.3, (0..40_usize, 0..4_usize)),
    ) {
        let alone = sides.iter().all(Option::is_none);
        let mut ledger = Ledger { alone, ..Ledger::default() };
        let mut rows: Grid = Vec::new();
        for (part, side) in parts.iter().zip(&sides) {
            let next = grid(part, &mut ledger);
            // Results at the left of their codes, close to a table at their left: nobody could tell whose they are.
            let is_mirrored = SHAPES[part.shape].holds == "rs";
            let side = side.filter(|(gap, _)| *gap > 0 || !is_mirrored);
            match &side {
                Some(at) if !rows.is_empty() => rows = beside(rows, next, *at),
                _ => {
                    if !rows.is_empty() {
                        rows.push(Vec::new());
                    }
                    rows.extend(next);
                }
            }
        }
        if let Some(foreign) = foreign {
            rows.push(Vec::new());
            rows.extend(FOREIGN[foreign].iter().map(|row| row.iter().map(|cell| (*cell).to_owned()).collect::<Vec<_>>()));
        }
        // A cell that is lost: a heading as well as any other, but no code and no result.
        if let Some((row, column)) = damaged
            && let Some(cell) = rows.get_mut(row).and_then(|row| row.get_mut(column))
            && !ledger.results.contains_key(cell)
            && !cell.starts_with("TKW-")
            && !SAYING.contains(&cell.as_str())
        {
            *cell = "Quux".to_owned();
        }
        let text = csv(&rows);
        let read = Folder::new().with("inbox/a.csv", text.as_bytes()).gather();
        for one in &read.gathered.extractions {
            let Outcome::Reading(interval) = one.outcome else {
                continue;
            };
            let (sign, number) = match (interval.as_number(), interval.as_below(), interval.as_above()) {
                (Some(number), ..) => ("", number),
                // Below the lowest quantity is what another figure may be taken for, which a lost heading has left.
                (_, Some(number), _) if number.0 != 5.0 => ("<", number),
                (_, _, Some(number)) => (">", number),
                _ => continue,
            };
            let owner = ledger.results.iter().find(|(figure, _)| figure.parse::<f64>() == Ok(number.0));
            prop_assert_eq!(owner.map(|(_, code)| code), Some(&one.package_code), "{}\n{}", text, number.0);
            let written = owner.and_then(|(figure, _)| ledger.signs.get(figure));
            prop_assert_eq!(written, Some(&sign), "{}\n{}", text, number.0);
        }
        for (figure, code) in &ledger.results {
            let at = rows.iter().position(|row| row.contains(figure)).expect("is written");
            let row = u32::try_from(at + 1).expect("is small");
            let is_read = read.gathered.extractions.iter().any(|one| {
                one.package_code == *code && one.source.row == row
            });
            prop_assert!(is_read || is_told(&read, row), "{figure} of {code} in row {row}:\n{text}\n{:?}", read.problems());
        }
    }
}
