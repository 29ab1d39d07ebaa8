//! One extraction reported twice: equal reports count once, unequal ones not at all until a person decides.

use crate::model::extraction::Interval;
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
        if alone {
            warn_of_halves(&rows[*first], &rows[*at], problems);
        } else {
            note_double(&rows[*first], &rows[*at], problems);
        }
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
        (None, None) => true,
        _ => false,
    };
    same_upper
        && a.lower.same(b.lower)
        && (a.lower_open, a.upper_open) == (b.lower_open, b.upper_open)
}

fn name_conflict(one: &PairedExtraction, other: &PairedExtraction, problems: &mut Problems) {
    problems.add(
        Code::Conflict,
        other.extraction.source.place(),
        say::found_conflict(
            one.extraction.number.to_string(),
            one.extraction.package_code.as_str(),
            one.extraction.reported.as_str(),
            one.extraction.source.place(),
            other.extraction.reported.as_str(),
            other.extraction.source.place(),
        ),
        say::do_settle_conflict(),
    );
}

fn warn_of_halves(kept: &PairedExtraction, double: &PairedExtraction, problems: &mut Problems) {
    problems.add(
        Code::Suspicious,
        double.extraction.source.place(),
        say::found_halves(
            kept.extraction.package_code.as_str(),
            kept.extraction.source.place(),
        ),
        say::do_number_extractions(),
    );
}

fn note_double(kept: &PairedExtraction, double: &PairedExtraction, problems: &mut Problems) {
    problems.add(
        Code::CountedOnce,
        double.extraction.source.place(),
        say::found_counted_once(
            kept.extraction.number.to_string(),
            kept.extraction.package_code.as_str(),
            kept.extraction.source.place(),
        ),
        None,
    );
}
