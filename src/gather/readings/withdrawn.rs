//! Rows that the lab itself says to be no results of the package: something was added to the sample, or the run was not valid.
//! They are told and never used, since no heading of the results says what their figures are worth.

use crate::gather::books::{Content, Row};
use crate::gather::numbers::Marks;
use crate::gather::readings::signs::Loose;
use crate::gather::readings::values::{self, Said};
use crate::gather::tables::finding::Table;
use crate::gather::tables::plan::Plan;
use crate::gather::tables::roles::Role;
use crate::gather::tables::vocabulary::{self, Meaning};
use crate::gather::text;

/// Why a row is no result of the package.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// Something was added to the sample.
    Spiked,
    /// The lab does not stand by it.
    Invalid,
}

impl Why {
    /// The word by which the message that tells of it chooses.
    pub fn word(self) -> &'static str {
        match self {
            Why::Spiked => "spiked",
            Why::Invalid => "invalid",
        }
    }
}

/// What a column may say of the rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Speaks {
    /// At any length: remarks.
    Freely,
    /// In a word or some: a type, a status, a column whose heading is not known.
    Briefly,
    /// With "no": whether the row is valid.
    OfValidity,
    /// With a figure: how much was added.
    OfSpike,
}

/// The columns of a table that may say that a row is no result.
#[derive(Debug, Default)]
pub struct Columns(Vec<(u32, Speaks)>);

impl Columns {
    /// Of a table; a column without a heading is among them.
    pub fn of(table: &Table, plan: &Plan, rows: &[Row]) -> Columns {
        const TRIED: usize = 200;
        let is_taken = |column: u32| {
            column == plan.sample
                || plan.extraction == Some(column)
                || plan.results.iter().any(|result| result.column == column)
        };
        let headed = table.columns.iter().map(|column| column.column);
        let cells = rows.iter().take(TRIED).flat_map(|row| table.cells(row));
        let mut columns: Vec<u32> = headed.chain(cells.map(|(column, _)| column)).collect();
        columns.sort_unstable();
        columns.dedup();
        let speaking = columns.into_iter().filter(|column| !is_taken(*column));
        Columns(
            speaking
                .filter_map(|column| Some((column, speaks(table, column)?)))
                .collect(),
        )
    }

    /// What on this row says that it is no result.
    pub fn on(&self, row: &Row) -> Option<(Why, Loose)> {
        self.0.iter().find_map(|(column, speaks)| {
            let content = row.at(*column)?;
            let why = says(content, *speaks)?;
            let written = content.shown().into_owned();
            let column = *column;
            Some((why, Loose { column, written }))
        })
    }
}

fn speaks(table: &Table, column: u32) -> Option<Speaks> {
    let Some(headed) = table.column(column) else {
        return Some(Speaks::Briefly);
    };
    let words = text::words(&headed.heading);
    let any = |stems: &[&str]| {
        words
            .split(' ')
            .any(|word| stems.iter().any(|stem| word.starts_with(stem)))
    };
    let of_spike = any(&["spike", "fortif", "aufstock", "dotier", "dopage"]);
    let of_recovery = any(&["recover", "wiederfind", "recuper", "rate"]) || words.contains('%');
    if of_spike && !of_recovery {
        return Some(Speaks::OfSpike);
    }
    if any(&["valid", "gultig", "accepted", "akzeptiert"]) {
        return Some(Speaks::OfValidity);
    }
    match headed.role() {
        Some(Role::Remark) => Some(Speaks::Freely),
        Some(Role::Analyte | Role::Assay) | None => Some(Speaks::Briefly),
        Some(Role::Ignored) => any(&[
            "type",
            "typ",
            "tipo",
            "art",
            "probenart",
            "status",
            "stat",
            "estado",
            "zustand",
            "qc",
            "bewert",
            "beurteil",
            "conclu",
            "evaluat",
        ])
        .then_some(Speaks::Briefly),
        _ => None,
    }
}

fn says(content: &Content, speaks: Speaks) -> Option<Why> {
    const BRIEF: usize = 4;
    if speaks == Speaks::OfSpike {
        let value = values::read(content, Marks::Unsettled).ok()?;
        let added = match value.said {
            Said::Number(figure) => figure.value > 0.0,
            _ => false,
        };
        return added.then_some(Why::Spiked);
    }
    let Content::Text(written) = content else {
        return None;
    };
    let words = text::words(written);
    if speaks == Speaks::OfValidity {
        const NO: [&str; 7] = ["no", "n", "nein", "false", "non", "falsch", "0"];
        if NO.contains(&words.as_str()) {
            return Some(Why::Invalid);
        }
    }
    let listed: Vec<&str> = words.split(' ').collect();
    if speaks != Speaks::Freely && listed.len() > BRIEF {
        return None;
    }
    [
        (Meaning::Spiked, Why::Spiked),
        (Meaning::Withdrawn, Why::Invalid),
    ]
    .into_iter()
    .find(|(meaning, _)| named(&listed, *meaning))
    .map(|(_, why)| why)
}

/// Whether any run of words means this, and no word right before denies it.
fn named(words: &[&str], meaning: Meaning) -> bool {
    const LONGEST: usize = 4;
    const NOT: [&str; 12] = [
        "not", "no", "non", "nicht", "kein", "keine", "sin", "sans", "senza", "without", "ohne",
        "never",
    ];
    (0..words.len()).any(|at| {
        let denied = at > 0 && NOT.contains(&words[at - 1]);
        (1..=LONGEST.min(words.len() - at))
            .any(|length| !denied && vocabulary::means(&words[at..at + length].join(" "), meaning))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(written: &str, speaks: Speaks) -> Option<Why> {
        says(&Content::Text(written.into()), speaks)
    }

    #[test]
    fn words_that_take_a_row_out_are_known_and_their_denials_too() {
        for written in [
            "spiked",
            "Matrix spike",
            "aufgestockt",
            "muestra fortificada",
        ] {
            assert_eq!(of(written, Speaks::Briefly), Some(Why::Spiked), "{written}");
        }
        for written in [
            "Rejected",
            "invalid",
            "not valid",
            "ungültig",
            "verworfen",
            "no válido",
            "do not use",
        ] {
            assert_eq!(
                of(written, Speaks::Briefly),
                Some(Why::Invalid),
                "{written}"
            );
        }
        let long = "the curve was out of range, run rejected by the analyst";
        assert_eq!(of(long, Speaks::Freely), Some(Why::Invalid));
        assert_eq!(of("nein", Speaks::OfValidity), Some(Why::Invalid));
        for written in [
            "not spiked",
            "no invalid wells",
            "valid",
            "fortified rice drink",
            "ok",
        ] {
            assert_eq!(of(written, Speaks::Briefly), None, "{written}");
        }
        assert_eq!(of("yes", Speaks::OfValidity), None);
    }
}
