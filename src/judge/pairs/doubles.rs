//! One extraction reported twice: equal reports count once, unequal ones not at all until a person decides.

use crate::model::extraction::{Extraction, Interval};
use crate::model::pair::{PairedExtraction, Usage};
use crate::model::place::Source;
use crate::model::problem::{Code, Problems};
use crate::words::say;

/// The rows of one package in the order of their numbers and cells, with every double settled.
pub fn settle(mut rows: Vec<PairedExtraction>, problems: &mut Problems) -> Vec<PairedExtraction> {
    rows.sort_by(|a, b| order(a).cmp(&order(b)));
    let number = |row: &PairedExtraction| row.extraction.number;
    if rows
        .windows(2)
        .all(|two| number(&two[0]) != number(&two[1]))
    {
        return rows;
    }
    // One reading in each of two files could be the two halves of a pair that the lab has not numbered.
    let alone = rows.iter().all(|row| number(row) == number(&rows[0]));
    let mut settled: Vec<PairedExtraction> = Vec::with_capacity(rows.len());
    let mut rest = rows.into_iter().peekable();
    while let Some(first) = rest.next() {
        let number = first.extraction.number;
        let mut same_number = vec![first];
        while let Some(next) = rest.next_if(|row| row.extraction.number == number) {
            same_number.push(next);
        }
        settled.extend(settle_number(same_number, alone, problems));
    }
    settled
}

fn order(row: &PairedExtraction) -> (u32, &Source) {
    (row.extraction.number, &row.extraction.source)
}

/// Rows that report the same extraction.
fn settle_number(
    mut rows: Vec<PairedExtraction>,
    alone: bool,
    problems: &mut Problems,
) -> Vec<PairedExtraction> {
    let readings: Vec<(usize, Interval)> = rows
        .iter()
        .enumerate()
        .filter(|(_, row)| row.usage == Usage::Used)
        .filter_map(|(at, row)| Some((at, row.extraction.outcome.reading()?)))
        .collect();
    let Some(((first, reading), doubles)) = readings.split_first() else {
        return rows;
    };
    if let Some((other, _)) = doubles.iter().find(|(_, other)| !equal(reading, other)) {
        name_conflict(&rows[*first], &rows[*other], problems);
        for (at, _) in &readings {
            rows[*at].usage = Usage::InConflict;
        }
        return rows;
    }
    for (at, _) in doubles {
        tell_of_double(
            &rows[*first].extraction,
            &rows[*at].extraction,
            alone,
            problems,
        );
        let source = rows[*at].extraction.source.clone();
        // The larger quantification limit is the safer one of two that are stated for one reading.
        let lloq = rows[*at].extraction.lloq;
        let kept = &mut rows[*first];
        kept.extraction.lloq = kept.extraction.lloq.max(lloq);
        kept.also_reported.push(source);
    }
    let mut at = 0..;
    rows.retain(|_| {
        let at = at.next();
        !doubles.iter().any(|(double, _)| Some(*double) == at)
    });
    rows
}

/// Equal as on paper.
fn equal(a: &Interval, b: &Interval) -> bool {
    let same_upper = match (a.upper, b.upper) {
        (Some(a), Some(b)) => a.same(b),
        (a, b) => a.is_none() && b.is_none(),
    };
    same_upper
        && a.lower.same(b.lower)
        && (a.lower_open, a.upper_open) == (b.lower_open, b.upper_open)
}

fn name_conflict(one: &PairedExtraction, other: &PairedExtraction, problems: &mut Problems) {
    let (one, other) = (&one.extraction, &other.extraction);
    problems.add(
        Code::Conflict,
        other.source.place(),
        say::found_conflict(
            one.number.to_string(),
            one.package_code.as_str(),
            one.reported.as_str(),
            one.source.place(),
            other.reported.as_str(),
            other.source.place(),
        ),
        say::do_settle_conflict(),
    );
}

/// That a double counts once; or, where it may be the other half of a pair that the lab has not numbered, that it may be.
fn tell_of_double(kept: &Extraction, double: &Extraction, alone: bool, problems: &mut Problems) {
    let (code, place) = (kept.package_code.as_str(), kept.source.place());
    let at = double.source.place();
    if alone {
        let found = say::found_halves(code, place);
        problems.add(Code::Suspicious, at, found, say::do_number_extractions());
    } else {
        let found = say::found_counted_once(kept.number.to_string(), code, place);
        problems.add(Code::CountedOnce, at, found, None);
    }
}
